#include "systems/belts/belts.hpp"

namespace sw::belts {
namespace {

constexpr FieldInfo pulley_table[] = {
    choice<&Pulley::drives>("drives", "drives", drives_names).says("What the pulley turns."),
    quantity<&Pulley::diameter>("diameter", "diameter", kind::length)
        .with(Tool::calliper)
        .may_change()
        .in("in")
        .above(1, 20)
        .spread(Source::measured, {.absolute = 0.03})
        .spread(Source::stated, {.absolute = 0.03})
        .says("Pitch diameter: where the belt's cords run."),
    quantity<&Pulley::wrap>("wrap", "wrap", kind::angle)
        .with(Tool::rule)
        .may_change()
        .in("deg")
        .above(20, 300)
        .or_else(140)
        .spread(Source::typical, {.share = 0.1})
        .spread(Source::measured, {.absolute = 5})
        .says("Angle the belt lies on the pulley."),
    choice<&Pulley::side>("side", "side", side_names)
        .or_else(0, Source::chosen)
        .says("Whether it runs on the belt's face (ribs or grooves) or on its back."),
    integer<&Pulley::order>("order", "order")
        .from(1, 20)
        .says("Where the belt meets it after the crank, either way round; without it, in the order of the file."),
    text<&Pulley::shaft_of>("shaft_of", "on the shaft of")
        .says("The pulley of this belt that turns it, by its name, where two things sit on one shaft (a fan on the "
              "pump's): it then needs no place of its own."),
    quantity<&Pulley::x>("x", "across", kind::length)
        .in("in")
        .from(-60, 60)
        .spread(Source::measured, {.absolute = 0.06})
        .spread(Source::stated, {.absolute = 0.06})
        .says("Its centre to the right of the crank's, seen from the front of the engine."),
    quantity<&Pulley::y>("y", "above", kind::length)
        .in("in")
        .from(-60, 60)
        .spread(Source::measured, {.absolute = 0.06})
        .spread(Source::stated, {.absolute = 0.06})
        .says("Its centre above the crank's."),
    quantity<&Pulley::depth>("depth", "forward of the crank's plane", kind::length)
        .with(Tool::straight_edge)
        .in("in")
        .from(-6, 6)
        .spread(Source::measured, {.absolute = 0.01})
        .spread(Source::stated, {.absolute = 0.01})
        .says("How far its groove's middle, or the middle of its ribs, stands forward of the crank pulley's, without "
              "the shims told here; below 0 behind it. By a straight-edge or laser off the crank pulley's face."),
    choice<&Pulley::rotation>("rotation", "has to turn", rotation_names)
        .says("The way the accessory is made to turn, where it minds."),
    quantity<&Pulley::highest_speed>("highest_speed", "highest speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .above(0, 30000)
        .says("What its maker allows the accessory."),
    quantity<&Pulley::torque>("torque", "greatest torque", kind::torque)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("lb-ft")
        .from(0, 60)
        .says("The most it asks for; of a steering pump, at full lock. What other systems work out (alternator, "
              "compressor, coolant pump, fan) is taken from them."),
    quantity<&Pulley::shim>("shim", "shims under the bracket", kind::length)
        .in("in")
        .from(0, 2)
        .or_else(0, Source::chosen)
        .spread({})
        .says("Thickness of the shims that move it forward."),
    quantity<&Pulley::shim_room>("shim_room", "room for shims", kind::length)
        .in("in")
        .from(0, 2)
        .says("The thickest stack its bracket has room for; without it the bracket is not to be moved."),
    quantity<&Pulley::bolt>("bolt", "bracket bolt", kind::length)
        .in("in")
        .above(0, 1)
        .spread({})
        .says("Thread diameter of the bolts that go through the shims."),
    quantity<&Pulley::engagement>("engagement", "thread engaged", kind::length)
        .in("in")
        .from(0, 4)
        .spread(Source::measured, {.absolute = 0.02})
        .says("Length of thread the bolts have without any shims."),
    choice<&Pulley::thread>("thread", "thread in", thread_names)
        .or_else(0, Source::chosen)
        .says("What the bolts are screwed into: in aluminium they need more thread."),
};
static_assert(std::size(pulley_table) == member_count<Pulley>());

constexpr FieldInfo adjuster_table[] = {
    text<&Adjuster::pulley>("pulley", "moves").says("The pulley it moves, by its name on this belt."),
    choice<&Adjuster::kind>("kind", "kind", adjusts_names)
        .says("A slide (a straight slot), a pivot (swung and bolted), or an arm with a spring."),
    quantity<&Adjuster::direction>("direction", "slides towards", kind::angle)
        .in("deg")
        .from(-360, 360)
        .spread({})
        .says("Of a slide: the way that tightens, turned up from the right, seen from the front."),
    quantity<&Adjuster::pivot_x>("pivot_x", "pivot across", kind::length)
        .in("in")
        .from(-60, 60)
        .spread(Source::measured, {.absolute = 0.06})
        .says("Of a pivot or arm: its pivot to the right of the crank's centre."),
    quantity<&Adjuster::pivot_y>("pivot_y", "pivot above", kind::length)
        .in("in")
        .from(-60, 60)
        .spread(Source::measured, {.absolute = 0.06})
        .says("Its pivot above the crank's centre."),
    quantity<&Adjuster::arm>("arm", "arm", kind::length)
        .in("in")
        .above(0, 20)
        .spread({.absolute = 0.03})
        .says("Pivot to pulley centre, where the pivot's place is not given."),
    quantity<&Adjuster::loosen>("loosen", "lets on by", kind::length)
        .in("in")
        .from(0, 12)
        .spread({.absolute = 0.05})
        .says("Of a slide or pivot: travel of the pulley's centre from where it stands to its loose end."),
    quantity<&Adjuster::tighten>("tighten", "takes up by", kind::length)
        .in("in")
        .from(0, 12)
        .spread({.absolute = 0.05})
        .says("Travel of the pulley's centre from where it stands to its tight end."),
    quantity<&Adjuster::window>("window", "window", kind::angle)
        .in("deg")
        .above(0, 90)
        .spread({.absolute = 1})
        .says("Of an arm: angle between its marks; the pulley's place is meant at mid window."),
    number<&Adjuster::take_up>("take_up", "take-up")
        .above(0, 2)
        .says(
            "Belt taken up for the pulley centre's travel, where the geometry does not tell it: 2 where the belt goes "
            "half round it."),
};
static_assert(std::size(adjuster_table) == member_count<Adjuster>());

constexpr FieldInfo belt_table[] = {
    choice<&Belt::section>("section", "section", section_names)
        .says("V-belt or ribbed belt: how far its pulleys may be out of line and how small they may be."),
    integer<&Belt::count>("count", "belts side by side")
        .from(1, 4)
        .or_else(1, Source::chosen)
        .says("How many equal belts run side by side."),
    quantity<&Belt::crank_diameter>("crank_diameter", "crank pulley", kind::length)
        .with(Tool::calliper)
        .may_change()
        .in("in")
        .above(2, 20)
        .spread(Source::measured, {.absolute = 0.03})
        .spread(Source::stated, {.absolute = 0.03})
        .says("Pitch diameter of the crank pulley this belt runs on."),
    quantity<&Belt::tension>("tension", "tension", kind::force)
        .with(Tool::tension_gauge)
        .may_change()
        .in("lbf")
        .above(10, 500)
        .or_else(90)
        .spread(Source::typical, {.share = 0.25})
        .says("Tension of a strand at rest (fixed), or held in the slack strand (sprung).")
        .after("common practice: 80 to 100 lbf used, 110 to 140 lbf new"),
    choice<&Belt::tensioner>("tensioner", "tensioner", tensioner_names)
        .or_else(0, Source::chosen)
        .says("Fixed centres, or a sprung arm on the slack side."),
    number<&Belt::friction>("friction", "friction")
        .above(0.05, 1)
        .or_else(0.25)
        .spread(Source::typical, {.share = 0.15})
        .says("Belt on pulley.")
        .after("common practice, rubber on steel, warm"),
    quantity<&Belt::groove>("groove", "groove angle", kind::angle)
        .in("deg")
        .from(20, 180)
        .or_else(40, Source::chosen)
        .spread({})
        .says("Whole angle of the groove; 180 deg is flat.")
        .after("ISO 9981: 40 deg for ribbed belts; V-belts 36 to 40 deg"),
    integer<&Belt::ribs>("ribs", "ribs").from(2, 20).says("Of a ribbed belt: how many ribs."),
    quantity<&Belt::mass>("mass", "mass per length", kind::mass_per_length)
        .in("kg/m")
        .above(0, 1)
        .or_else(0.11)
        .spread(Source::typical, {.share = 0.2})
        .says("Of one belt.")
        .after("common practice: 0.1 to 0.12 kg/m for six ribs or a half-inch V-belt"),
    quantity<&Belt::length>("length", "length", kind::length)
        .in("in")
        .above(10, 200)
        .spread({.absolute = 0.05})
        .says("The belt's own, as it is sold."),
    quantity<&Belt::path>("path", "measured path", kind::length)
        .in("in")
        .above(10, 200)
        .spread({.absolute = 0.1})
        .says("Length round the pulleys by a string, adjuster where it is meant to stand; not needed where every "
              "pulley's place is given."),
    quantity<&Belt::line_difference>("line_difference", "cords above the length's line", kind::length)
        .in("mm")
        .from(0, 10)
        .spread({})
        .says(
            "How far the cords lie outside the line on which the length is told; without it 2 mm for a ribbed belt and "
            "none for a V-belt.")
        .after("ISO 9981:2020, 5.4: 2 mm for ribbed pulleys"),
    quantity<&Belt::least_diameter>("least_diameter", "smallest pulley", kind::length)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("in")
        .above(0, 20)
        .spread({})
        .says("Smallest diameter, on the cords, its maker allows; without it the standard's for a ribbed belt.")
        .after("ISO 9981:2020, 5.2: 45 mm effective, 49 mm on the cords"),
    group<&Belt::adjuster>("adjuster", "adjuster").says("What tightens it."),
    list<&Belt::pulley>("pulley", "pulleys").says("What this belt drives."),
};
static_assert(std::size(belt_table) == member_count<Belt>());

constexpr FieldInfo shim_table[] = {
    quantity<&ShimOnHand::thickness>("thickness", "thickness", kind::length)
        .found(Station::bench)
        .with(Tool::calliper)
        .in("in")
        .above(0, 1)
        .spread({})
        .says("Of one shim."),
    integer<&ShimOnHand::count>("count", "on hand")
        .found(Station::bench)
        .from(1, 100)
        .or_else(4, Source::chosen)
        .says("How many there are."),
};
static_assert(std::size(shim_table) == member_count<ShimOnHand>());

constexpr FieldInfo table[] = {
    choice<&Input::crank_turns>("crank_turns", "crank turns", turns_names)
        .or_else(0, Source::chosen)
        .says("Seen from the front of the engine, where the pulleys are."),
    list<&Input::belt>("belt", "belts").says("Belts, by any names."),
    list<&Input::shim>("shim", "shims on hand").says("Thicknesses to choose from, by any names."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Pulley::fields() { return pulley_table; }
std::span<const FieldInfo> Adjuster::fields() { return adjuster_table; }
std::span<const FieldInfo> ShimOnHand::fields() { return shim_table; }
std::span<const FieldInfo> Belt::fields() { return belt_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::belts
