#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

constexpr Spread by_rule{.absolute = 0.02};  ///< of a rule, a feeler or clay, in

constexpr FieldInfo gap_table[] = {
    choice<&Gap::between>("between", "between", between_names)
        .decides_harm()
        .says(
            "What it keeps apart: moving parts (that turn, roll with the engine or go with the axle), a wire where it "
            "has a heat sleeve; asked for unless `wanted` is told."),
    quantity<&Gap::gap>("gap", "gap", kind::length)
        .decides_harm()
        .in("in")
        .from(-5, 40)
        .spread(Source::measured, by_rule)
        .says("At ride height, the car's weight on its wheels, wheels straight, engine at rest."),
    quantity<&Gap::wanted>("wanted", "gap wanted", kind::length)
        .in("in")
        .from(0, 20)
        .says("Least gap with everything against it; without it 1/2 in to what moves, 1/4 in to a steering link, 2 in "
              "from a bare wire to what is hot and 1/2 in from a sleeved one, 1/8 in else.")
        .after("common practice"),
    choice<&Gap::engine>("engine", "engine's part", engine_names)
        .decides_harm()
        .says("Whether one side belongs to the engine, and whether it lies above or below the other."),
    quantity<&Gap::ahead>("ahead", "ahead of the front mounts", kind::length)
        .in("in")
        .from(-100, 60)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Where along the engine it lies; below nothing behind the front mounts."),
    quantity<&Gap::roll>("roll", "closes with the engine's roll", kind::length)
        .in("in")
        .from(-3, 3)
        .decides_harm()
        .spread(Source::measured, {.absolute = 0.05})
        .says("By how much full torque closes it: engine power-braked, wheels chocked, or by clay. Of parts that move "
              "this, "
              "`bump`, `droop`, `lock` or `engine` is asked for, 0 in where nothing closes it."),
    quantity<&Gap::bump>("bump", "closes at full bump", kind::length)
        .in("in")
        .from(-10, 10)
        .decides_harm()
        .spread(Source::measured, {.absolute = 0.1})
        .says("By how much full bump closes it, springs out."),
    quantity<&Gap::droop>("droop", "closes at full droop", kind::length)
        .in("in")
        .from(-10, 10)
        .decides_harm()
        .spread(Source::measured, {.absolute = 0.1})
        .says("By how much a hanging axle closes it."),
    quantity<&Gap::lock>("lock", "closes at full lock", kind::length)
        .in("in")
        .from(-10, 10)
        .decides_harm()
        .spread(Source::measured, {.absolute = 0.1})
        .says("By how much either lock closes it, the worse of the two."),
    yes_no<&Gap::sleeved>("sleeved", "heat sleeve")
        .may_change()
        .or_else(0, Source::chosen)
        .says("Whether the wire has a sleeve made for the heat, fastened at both ends."),
    quantity<&Gap::comes_to>("comes_to", "comes to", kind::temperature)
        .found(Station::running)
        .in("degC")
        .from(-40, 900)
        .says("How hot the colder side gets there: thermo-labels after a hard drive and ten minutes of standing."),
    quantity<&Gap::stands>("stands", "stands", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(40, 900)
        .spread({})
        .says("What the colder side is made for: data sheet of its seal, hose or insulation."),
};
static_assert(std::size(gap_table) == member_count<Gap>());

constexpr FieldInfo piece_table[] = {
    quantity<&Piece::size>("size", "size", kind::length)
        .may_change()
        .in("in")
        .from(-20, 40)
        .spread(Source::measured, by_rule)
        .says("What it adds to the stack; below nothing where it drops into the piece before it."),
};
static_assert(std::size(piece_table) == member_count<Piece>());

constexpr FieldInfo stack_table[] = {
    list<&Stack::piece>("piece", "pieces").says("What stands one on the other, by any names."),
    quantity<&Stack::space>("space", "space", kind::length)
        .in("in")
        .above(0, 60)
        .spread(Source::measured, by_rule)
        .says(
            "What there is for it, measured as the car stands: clay under the latched bonnet, a rod through the port."),
    quantity<&Stack::roll>("roll", "lifted by the engine's roll", kind::length)
        .in("in")
        .from(0, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 0.05})
        .says("By how much full torque lifts its top."),
    quantity<&Stack::shims>("shims", "shims in it", kind::length)
        .may_grow()
        .in("in")
        .from(0, 5)
        .or_else(0, Source::chosen)
        .spread({.absolute = 0.002})
        .says("Thickness of all shims or spacers that fill it up, for `streetwright solve stack` to choose."),
    quantity<&Stack::wanted>("wanted", "gap wanted", kind::length)
        .in("in")
        .from(0, 5)
        .or_else(0.5)
        .spread({})
        .says("Least gap that is to be left.")
        .after("common practice"),
    quantity<&Stack::most>("most", "most left", kind::length)
        .in("in")
        .above(0, 10)
        .spread({})
        .says("Most that may be left, where it may be too loose as well: end play, a fan in its shroud."),
    yes_no<&Stack::on_intake>("on_intake", "on the intake")
        .or_else(0, Source::chosen)
        .says("Whether a spacer under the intake (`mounts.intake_raised`) lifts it."),
};
static_assert(std::size(stack_table) == member_count<Stack>());

constexpr FieldInfo shim_table[] = {
    quantity<&Shim::thickness>("thickness", "thickness", kind::length).in("in").above(0, 2).spread({}).says("Of one."),
    integer<&Shim::count>("count", "on hand")
        .from(1, 100)
        .or_else(usual_shims_on_hand, Source::chosen)
        .says("How many there are."),
};
static_assert(std::size(shim_table) == member_count<Shim>());

constexpr FieldInfo panel_table[] = {
    quantity<&Panel::moved>("moved", "moved", kind::length)
        .in("in")
        .from(-3, 3)
        .spread(Source::measured, by_rule)
        .says("How far what it hangs on was moved: old mount's thickness less the new one's."),
    quantity<&Panel::moved_at>("moved_at", "from the hinge to what was moved", kind::length)
        .in("in")
        .above(1, 120)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Distance from the fixed end (cowl, hinge) to where it was moved."),
    quantity<&Panel::seen_at>("seen_at", "from the hinge to the gap", kind::length)
        .in("in")
        .above(1, 120)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Distance from the fixed end to the gap that is looked at."),
    quantity<&Panel::shim>("shim", "one shim", kind::length)
        .in("in")
        .above(0, 1)
        .or_else(0.06, Source::chosen)
        .spread(Source::measured, {.absolute = 0.002})
        .says("Thickness of one shim at what was moved."),
    quantity<&Panel::within>("within", "within", kind::length)
        .in("mm")
        .above(0, 10)
        .or_else(1.0)
        .spread({})
        .says("How far a gap may be from what it was.")
        .after("common practice"),
    integer<&Panel::shims>("shims", "shims put in")
        .may_change()
        .from(0, 30)
        .or_else(0, Source::chosen)
        .says("How many of them, on one side."),
};
static_assert(std::size(panel_table) == member_count<Panel>());

constexpr FieldInfo table[] = {
    list<&Input::gap>("gap", "gaps").says("Gaps by any names: `header_to_steering`, `pan_to_link`, `fan_to_shroud`."),
    list<&Input::body>("body", "bodies").says("Solids by any names: `header_left`, `drag_link`, `pan`."),
    list<&Input::travel>("travel", "travels")
        .found(Station::underneath)
        .says("Axles and wheels that go up and down: `front_left`, `rear`."),
    group<&Input::roll>("roll", "engine's roll").says("What bodies that go with the engine roll about, and how far."),
    list<&Input::envelope>("envelope", "envelopes")
        .says("Pairs of bodies that must stay clear of each other wherever they stand, by any names."),
    list<&Input::stack>("stack", "stacks").says("Stacks of pieces in a space: `bonnet`, `tank_port`."),
    list<&Input::shim>("shim", "shims on hand")
        .found(Station::bench)
        .says("Shims and spacers for stacks, by any names."),
    list<&Input::panel>("panel", "panels").says("Panels whose gaps follow what was moved: `bonnet_front`."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Gap::fields() { return gap_table; }
std::span<const FieldInfo> Piece::fields() { return piece_table; }
std::span<const FieldInfo> Stack::fields() { return stack_table; }
std::span<const FieldInfo> Shim::fields() { return shim_table; }
std::span<const FieldInfo> Panel::fields() { return panel_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::clearance
