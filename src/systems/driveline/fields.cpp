#include "systems/driveline/driveline.hpp"

namespace sw::driveline {
namespace {

constexpr FieldInfo gear_table[] = {
    number<&Gear::ratio>("ratio", "ratio").from(0.4, 8).spread({}).says("Turns of the input for one of the output."),
};
static_assert(std::size(gear_table) == member_count<Gear>());

constexpr FieldInfo table[] = {
    choice<&Input::gearbox>("gearbox", "gearbox", gearbox_names).says("Manual, or automatic with a torque converter."),
    list<&Input::gear>("gear", "gears").says("Forward gears, by any names."),
    number<&Input::axle>("axle", "axle ratio")
        .may_change()
        .from(1.5, 8)
        .spread({})
        .says("Turns of the propeller shaft for one of the wheels."),
    quantity<&Input::tyre_diameter>("tyre_diameter", "tyre diameter", kind::length)
        .in("in")
        .from(15, 40)
        .spread(Source::measured, {.absolute = 0.1})
        .says("Twice the rolling radius under load."),
    number<&Input::efficiency>("efficiency", "efficiency")
        .from(0.6, 1)
        .or_else(0.90)
        .spread({.absolute = 0.03})
        .says("Share of the engine's power that reaches the wheels, slip apart.")
        .after("common practice"),
    number<&Input::converter_slip>("converter_slip", "converter slip")
        .from(0, 0.4)
        .or_else(0.06)
        .spread(Source::typical, {.absolute = 0.03})
        .says("Turns lost in the unlocked converter at steady load, as a share of its output's.")
        .after("common practice"),
    yes_no<&Input::locks_in_top>("locks_in_top", "converter locks in top")
        .or_else(0, Source::chosen)
        .says("Whether the converter is locked in the top gear."),
    yes_no<&Input::cooler_in_radiator>("cooler_in_radiator", "gearbox cooler in the radiator")
        .or_else(0, Source::chosen)
        .says("Whether gearbox heat goes into the coolant."),
    quantity<&Input::lugging_speed>("lugging_speed", "lugging speed", kind::shaft_speed)
        .in("rpm")
        .from(600, 4000)
        .or_else(1400)
        .spread({})
        .says("Engine speed below which a gear is not held on the level.")
        .after("common practice"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Gear::fields() { return gear_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::driveline
