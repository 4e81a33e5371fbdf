#include "systems/throttle/throttle.hpp"

namespace sw::throttle {
namespace {

constexpr Spread by_rule{.absolute = 0.02}, by_protractor{.absolute = 1};  ///< in, deg

constexpr FieldInfo pedal_table[] = {
    quantity<&Pedal::turns>("turns", "pedal turns by", kind::angle)
        .decides_harm()
        .in("deg")
        .above(2, 60)
        .spread(Source::measured, {.absolute = 0.3})
        .says("From released to its own stop, or to the floor, at its pivot."),
    quantity<&Pedal::pad>("pad", "pad's arm", kind::length)
        .in("in")
        .above(1, 20)
        .spread(Source::measured, {.absolute = 0.1})
        .says("From the pedal's pivot to the middle of its pad."),
};
static_assert(std::size(pedal_table) == member_count<Pedal>());

constexpr FieldInfo link_table[] = {
    choice<&Link::by>("by", "pulls by", by_names).decides_harm().says("A rod, or a cable in a sheath."),
    yes_no<&Link::to_engine>("to_engine", "from body to engine")
        .may_change()
        .decides_harm()
        .says(
            "Whether it leads from the body to the engine: a rod to the carburettor, a cable whose sheath is last held "
            "by the body. A sheath held beside the throttle, on the engine, goes with it."),
    yes_no<&Link::pushes>("pushes", "pushes").or_else(0, Source::chosen).says("Whether a rod opens by a push."),
    yes_no<&Link::pins_opposite>("pins_opposite", "pins on opposite sides")
        .or_else(0, Source::chosen)
        .says("Whether a rod's two pins stand on opposite sides of the line from pivot to pivot."),
    quantity<&Link::arm>("arm", "first lever's arm", kind::length)
        .may_change()
        .decides_harm()
        .in("in")
        .above(0.2, 15)
        .spread(Source::measured, by_rule)
        .says("Pivot to pin of the lever that moves it."),
    quantity<&Link::driven_arm>("driven_arm", "second lever's arm", kind::length)
        .may_change()
        .decides_harm()
        .in("in")
        .above(0.2, 15)
        .spread(Source::measured, by_rule)
        .says("Pivot to pin of the lever it moves."),
    quantity<&Link::apart>("apart", "pivot to pivot", kind::length)
        .decides_harm()
        .in("in")
        .above(0.5, 80)
        .spread(Source::measured, {.absolute = 0.05})
        .says("Of a rod: between the pivots of its two levers."),
    quantity<&Link::rod>("rod", "rod's length", kind::length)
        .may_change()
        .in("in")
        .above(0.5, 80)
        .spread(Source::measured, by_rule)
        .says("From pin to pin; without it the rod is taken to be set so that both levers stand as told."),
    quantity<&Link::slack>("slack", "cable's slack", kind::length)
        .may_change()
        .decides_harm()
        .in("in")
        .from(-1, 2)
        .spread(Source::measured, {.absolute = 0.01})
        .says("Free play of a cable with pedal released and throttle closed; below nothing where it is short and holds "
              "the throttle open."),
    quantity<&Link::roll>("roll", "engine's roll along it", kind::length)
        .decides_harm()
        .in("in")
        .from(0, 3)
        .spread(Source::measured, {.absolute = 0.05})
        .says("How far engine roll moves its far end along it at full torque, either way; only from body to engine."),
    quantity<&Link::start>("start", "first lever stands at", kind::angle)
        .may_change()
        .decides_harm()
        .in("deg")
        .from(5, 175)
        .spread(Source::measured, by_protractor)
        .says("Angle between the first lever, pedal released, and the line it pulls along: the cable's, or that from "
              "pivot to pivot. 90 is square; a pull makes it grow."),
    quantity<&Link::driven_start>("driven_start", "second lever stands at", kind::angle)
        .may_change()
        .decides_harm()
        .in("deg")
        .from(5, 175)
        .spread(Source::measured, by_protractor)
        .says("The same of the second lever and the line back to the first, throttle closed; a pull makes it shrink."),
    quantity<&Link::slope>("slope", "rises toward the engine by", kind::angle)
        .in("deg")
        .from(-90, 90)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_protractor)
        .says("Of one from body to engine: its line against level; an engine that is lifted pulls by that."),
};
static_assert(std::size(link_table) == member_count<Link>());

constexpr FieldInfo spring_table[] = {
    choice<&Spring::on>("on", "sits on", sits_on_names)
        .may_change()
        .decides_harm()
        .says("The lever it pulls on. One at the pedal closes the throttle only through rods."),
    quantity<&Spring::force>("force", "force, closed", kind::force)
        .may_grow()
        .decides_harm()
        .in("lbf")
        .from(0, 100)
        .spread(Source::measured, {.share = 0.05})
        .says("By a pull scale with the throttle on its closed stop, the other springs off."),
    quantity<&Spring::force_open>("force_open", "force, wide open", kind::force)
        .decides_harm()
        .in("lbf")
        .from(0, 200)
        .spread(Source::measured, {.share = 0.05})
        .says("The same with the throttle held wide open."),
    quantity<&Spring::arm>("arm", "arm, closed", kind::length)
        .may_change()
        .decides_harm()
        .in("in")
        .from(-10, 10)
        .spread(Source::measured, by_rule)
        .says("Square from the shaft to the spring's line, throttle closed; below nothing where its pull opens."),
    quantity<&Spring::arm_open>("arm_open", "arm, wide open", kind::length)
        .may_change()
        .decides_harm()
        .in("in")
        .from(-10, 10)
        .spread(Source::measured, by_rule)
        .says("The same with the throttle held wide open: below nothing where the spring has swung past the shaft and "
              "holds it open."),
};
static_assert(std::size(spring_table) == member_count<Spring>());

constexpr FieldInfo table[] = {
    group<&Input::pedal>("pedal", "pedal").found(Station::seat).says("The accelerator pedal."),
    list<&Input::link>("link", "links")
        .says("Rods and cables in order from the pedal on, by any names: a bell-crank "
              "stands between two of them, the throttle's lever after the last."),
    quantity<&Input::opens>("opens", "throttle opens by", kind::angle)
        .decides_harm()
        .in("deg")
        .above(10, 120)
        .spread(Source::measured, by_protractor)
        .says("From its closed to its open stop, at its shaft."),
    quantity<&Input::friction>("friction", "friction", kind::torque)
        .with(Tool::spring_balance)
        .decides_harm()
        .in("lb-in")
        .from(0, 50)
        .spread(Source::measured, {.share = 0.15})
        .says(
            "Of throttle shaft and cable at the throttle's shaft: pull at the lever that keeps it moving, springs off, "
            "times its arm; cold, and with the engine's vacuum on it where that can be had."),
    quantity<&Input::ahead>("ahead", "ahead of the front mounts", kind::length)
        .in("in")
        .from(-60, 60)
        .or_else(0)
        .spread(Source::typical, {.absolute = 8})
        .spread(Source::measured, {.absolute = 0.5})
        .says("Throttle ahead of the engine's front mounts, below nothing behind them: how far they lift it.")
        .after("common practice"),
    list<&Input::spring>("spring", "springs").says("The springs that close it, by any names."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Pedal::fields() { return pedal_table; }
std::span<const FieldInfo> Link::fields() { return link_table; }
std::span<const FieldInfo> Spring::fields() { return spring_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::throttle
