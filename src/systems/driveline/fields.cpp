#include "systems/driveline/driveline.hpp"

namespace sw::driveline {
namespace {

constexpr FieldInfo gear_table[] = {
    number<&Gear::ratio>("ratio", "ratio").from(0.4, 8).spread({}).says("Turns of the input for one of the output."),
};
static_assert(std::size(gear_table) == member_count<Gear>());

constexpr Spread by_inclinometer{.absolute = 0.2};  ///< deg

constexpr FieldInfo shaft_table[] = {
    quantity<&Shaft::length>("length", "length", kind::length)
        .in("in")
        .above(6, 100)
        .spread(Source::measured, {.absolute = 0.1})
        .says("From joint centre to joint centre at ride height."),
    quantity<&Shaft::diameter>("diameter", "tube outside", kind::length)
        .may_grow()
        .in("in")
        .above(1, 8)
        .spread(Source::measured, {.absolute = 0.01})
        .says("Outside diameter of its steel tube."),
    quantity<&Shaft::wall>("wall", "tube wall", kind::length)
        .in("in")
        .above(0.03, 0.5)
        .spread(Source::measured, {.absolute = 0.003})
        .says("Wall of its steel tube."),
    quantity<&Shaft::front_angle>("front_angle", "front joint", kind::angle)
        .in("deg")
        .from(0, 45)
        .spread(Source::measured, by_inclinometer)
        .says("Angle the front joint works at, at ride height with the car's weight on its wheels."),
    quantity<&Shaft::rear_angle>("rear_angle", "rear joint", kind::angle)
        .in("deg")
        .from(0, 45)
        .spread(Source::measured, by_inclinometer)
        .says("The same at the rear joint."),
    quantity<&Shaft::engine_slope>("engine_slope", "engine's slope", kind::angle)
        .in("deg")
        .from(-20, 20)
        .spread(Source::measured, by_inclinometer)
        .says("Inclinometer on a machined face square to the crankshaft, down to the rear; instead of the joints' "
              "angles."),
    quantity<&Shaft::shaft_slope>("shaft_slope", "shaft's slope", kind::angle)
        .in("deg")
        .from(-20, 20)
        .spread(Source::measured, by_inclinometer)
        .says("Inclinometer on the tube, down to the rear."),
    quantity<&Shaft::pinion_slope>("pinion_slope", "pinion's slope", kind::angle)
        .in("deg")
        .from(-20, 20)
        .spread(Source::measured, by_inclinometer)
        .says("Inclinometer on the pinion's flange, down to the rear: with a nose that looks up it falls to the rear."),
    quantity<&Shaft::wedge>("wedge", "wedge under the axle", kind::angle)
        .may_change()
        .in("deg")
        .from(-6, 6)
        .or_else(0, Source::chosen)
        .says("Wedge put in since the slopes were read; it turns the pinion's nose up."),
    quantity<&Shaft::plane_phase>("plane_phase", "between the joints' planes", kind::angle)
        .in("deg")
        .from(-180, 180)
        .or_else(0, Source::chosen)
        .says("Between the planes in which the two joints bend, seen along the shaft: 0 where all lies in one plane."),
    quantity<&Shaft::yoke_phase>("yoke_phase", "between the yokes", kind::angle)
        .may_change()
        .in("deg")
        .from(-180, 180)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 2})
        .says("Between the two yokes on the shaft: 0 in line."),
    number<&Shaft::of_critical>("of_critical", "share of the critical speed")
        .from(0.3, 1)
        .or_else(0.75, Source::chosen)
        .says("How much of its critical speed the shaft may be turned at.")
        .after("common practice"),
};
static_assert(std::size(shaft_table) == member_count<Shaft>());

constexpr FieldInfo table[] = {
    choice<&Input::gearbox>("gearbox", "gearbox", gearbox_names).says("Manual, or automatic with a torque converter."),
    list<&Input::gear>("gear", "gears").says("Forward gears, by any names."),
    number<&Input::axle>("axle", "axle ratio")
        .found(Station::underneath)
        .with(Tool::eye)
        .may_change()
        .from(1.5, 8)
        .spread({})
        .says("Turns of the propeller shaft for one of the wheels."),
    quantity<&Input::tyre_diameter>("tyre_diameter", "tyre diameter", kind::length)
        .found(Station::standing)
        .in("in")
        .from(15, 40)
        .spread(Source::measured, {.absolute = 0.1})
        .says("Twice the rolling radius under load."),
    number<&Input::efficiency>("efficiency", "efficiency")
        .found(Station::desk)
        .from(0.6, 1)
        .or_else(0.90)
        .spread({.absolute = 0.03})
        .says("Share of the engine's power that reaches the wheels, slip apart.")
        .after("common practice"),
    number<&Input::converter_slip>("converter_slip", "converter slip")
        .found(Station::desk)
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
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .from(600, 4000)
        .or_else(1400)
        .spread({})
        .says("Engine speed below which a gear is not held on the level.")
        .after("common practice"),
    group<&Input::shaft>("shaft", "propeller shaft").says("The shaft between gearbox and axle, in one piece."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Gear::fields() { return gear_table; }
std::span<const FieldInfo> Shaft::fields() { return shaft_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::driveline
