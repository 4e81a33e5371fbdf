#include "systems/transmission/transmission.hpp"

namespace sw::transmission {
namespace {

constexpr Spread by_feeler{.absolute = 0.003}, by_dial{.absolute = 0.0005};  ///< in

constexpr FieldInfo converter_table[] = {
    quantity<&Converter::gap>("gap", "flexplate to converter", kind::length)
        .with(Tool::feeler)
        .in("in")
        .from(-0.5, 1)
        .spread(Source::measured, by_feeler)
        .says("Feeler between pads and flexplate with the bell tight and the hub pushed fully home, at three pads."),
    quantity<&Converter::least_gap>("least_gap", "least gap", kind::length)
        .in("in")
        .from(0, 0.5)
        .or_else(0.100, Source::chosen)
        .spread({})
        .says("Least gap by the gearbox's maker.")
        .after("common practice"),
    quantity<&Converter::most_gap>("most_gap", "greatest gap", kind::length)
        .in("in")
        .from(0, 0.8)
        .or_else(0.188, Source::chosen)
        .spread({})
        .says("Greatest gap: beyond it the hub leaves the pump's drive.")
        .after("common practice"),
    quantity<&Converter::end_play>("end_play", "crankshaft's end play and growth", kind::length)
        .with(Tool::dial_gauge)
        .in("in")
        .from(0, 0.2)
        .or_else(0.020)
        .spread(Source::typical, {.absolute = 0.005})
        .says("End play of the crankshaft and what heat lengthens.")
        .after("common practice"),
    quantity<&Converter::ballooning>("ballooning", "ballooning", kind::length)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("in")
        .from(0, 0.3)
        .or_else(0.050)
        .spread(Source::typical, {.absolute = 0.02})
        .says("By how much pressure at speed blows the converter up.")
        .after("common practice"),
    quantity<&Converter::stall>("stall", "stall speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .above(500, 6000)
        .spread(Source::measured, {.absolute = 50})
        .says(
            "Engine speed at which it holds the engine with the car held, by its maker for an engine of this torque."),
};
static_assert(std::size(converter_table) == member_count<Converter>());

constexpr FieldInfo bell_table[] = {
    quantity<&Bell::bore_run_out>("bore_run_out", "bore run-out", kind::length)
        .with(Tool::dial_gauge)
        .in("in")
        .from(0, 0.2)
        .spread(Source::measured, by_dial)
        .says("Total reading of a dial on the crankshaft over a turn, in the bell's bore, mean of three."),
    quantity<&Bell::bore_most>("bore_most", "greatest bore run-out", kind::length)
        .in("in")
        .above(0, 0.05)
        .or_else(0.005, Source::chosen)
        .spread({})
        .says("What the gearbox's maker allows.")
        .after("common practice"),
    quantity<&Bell::face_run_out>("face_run_out", "face run-out", kind::length)
        .with(Tool::dial_gauge)
        .in("in")
        .from(0, 0.2)
        .spread(Source::measured, by_dial)
        .says("The same on the bell's face."),
    quantity<&Bell::face_most>("face_most", "greatest face run-out", kind::length)
        .in("in")
        .above(0, 0.05)
        .or_else(0.004, Source::chosen)
        .spread({})
        .says("What the gearbox's maker allows.")
        .after("common practice"),
};
static_assert(std::size(bell_table) == member_count<Bell>());

constexpr FieldInfo selector_table[] = {
    names<&Selector::gates>("gates", "gates")
        .says("The box's gates in order, by the letters of its indicator; N among "
              "them."),
    quantity<&Selector::shifter_step>("shifter_step", "shifter's step", kind::angle)
        .found(Station::seat)
        .in("deg")
        .above(0, 60)
        .spread(Source::measured, {.absolute = 0.5})
        .says("From detent to detent at column or shifter's own lever."),
    quantity<&Selector::box_step>("box_step", "box's step", kind::angle)
        .in("deg")
        .above(0, 60)
        .spread(Source::measured, {.absolute = 0.5})
        .says("From detent to detent at the lever on the box."),
    quantity<&Selector::neutral_window>("neutral_window", "neutral switch's window", kind::angle)
        .decides_harm()
        .in("deg")
        .from(0, 30)
        .spread(Source::measured, {.absolute = 0.5})
        .says("How far to each side of its middle the neutral switch stays closed, at the lever it sits on: by an "
              "ohmmeter "
              "and a protractor."),
    number<&Selector::linkage>("linkage", "linkage ratio")
        .may_change()
        .decides_harm()
        .from(0.2, 5)
        .spread(Source::measured, {.share = 0.02})
        .says("Turning of the box's lever for one of the shifter's: shifter's lever arm over the box's."),
    text<&Selector::set_at>("set_at", "set at").says("The gate the linkage is set in; without it the first."),
    choice<&Selector::neutral_switch>("neutral_switch", "neutral switch on", switch_on_names)
        .may_change()
        .decides_harm()
        .says("Where the switch sits that lets the engine start."),
};
static_assert(std::size(selector_table) == member_count<Selector>());

constexpr FieldInfo cable_table[] = {
    quantity<&ThrottleCable::radius>("radius", "lever's radius", kind::length)
        .with(Tool::calliper)
        .may_change()
        .in("in")
        .above(0.1, 5)
        .spread(Source::measured, {.absolute = 0.01})
        .says("From the throttle's shaft to the cable's pin."),
    quantity<&ThrottleCable::radius_wanted>("radius_wanted", "radius wanted", kind::length)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("in")
        .above(0.1, 5)
        .spread({})
        .says("The radius the gearbox is made for; its maker's figure or the lever it left the works with."),
    quantity<&ThrottleCable::throttle>("throttle", "throttle opens by", kind::angle)
        .in("deg")
        .above(10, 120)
        .spread(Source::measured, {.absolute = 1})
        .says("From closed to wide open, at the throttle's shaft, pedal to the floor."),
    quantity<&ThrottleCable::start>("start", "lever's start", kind::angle)
        .may_change()
        .in("deg")
        .from(-90, 90)
        .spread(Source::measured, {.absolute = 2})
        .says(
            "Where the pin stands with the throttle closed, from square to the cable's line, below nothing before it; "
            "without it by `before_square`."),
    number<&ThrottleCable::before_square>("before_square", "share of its way before square")
        .from(0, 1)
        .or_else(0.5)
        .spread(Source::typical, {.absolute = 0.1})
        .says(
            "Where `start` is not told: the share of the throttle's way at which the lever stands square to the cable; "
            "half where it swings alike to both sides.")
        .after("common practice"),
    curve<&ThrottleCable::travel_wanted>("travel_wanted", "travel wanted", kind::angle, kind::length)
        .in("deg", "in")
        .from(0, 5)
        .spread({})
        .says("Cable's travel against throttle angle from closed to wide open, by the gearbox's maker; instead of the "
              "radius, or beside it."),
    quantity<&ThrottleCable::travel_within>("travel_within", "travel within", kind::length)
        .in("in")
        .above(0, 0.5)
        .or_else(0.06, Source::chosen)
        .spread({})
        .says("How far the travel may lie off the curve to either side.")
        .after("common practice"),
    quantity<&ThrottleCable::pressure_closed>("pressure_closed", "line pressure, no travel", kind::gauge_pressure)
        .found(Station::running)
        .in("psi")
        .from(0, 400)
        .spread(Source::measured, {.absolute = 3})
        .says("By its maker for no travel, or read at the port at 1000 rpm."),
    quantity<&ThrottleCable::pressure_open>("pressure_open", "line pressure, full travel", kind::gauge_pressure)
        .found(Station::running)
        .in("psi")
        .above(0, 500)
        .spread(Source::measured, {.absolute = 3})
        .says("The same at the travel the box is made for."),
    quantity<&ThrottleCable::clutch_holds>("clutch_holds", "clutch holds", kind::torque)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("lb-ft")
        .above(0, 2000)
        .says("Engine torque its weakest clutch holds at full line pressure, by its maker."),
    quantity<&ThrottleCable::bracket_arm>("bracket_arm", "bracket's arm", kind::length)
        .in("in")
        .above(0.5, 30)
        .spread(Source::measured, {.absolute = 0.1})
        .says("From where the cable's sheath is held to the pin."),
    yes_no<&ThrottleCable::bracket_on_intake>("bracket_on_intake", "bracket on the intake")
        .may_change()
        .or_else(0, Source::chosen)
        .says("Whether a spacer under throttle body or carburettor lifts the bracket with the lever; one that stays "
              "below pulls askew."),
    quantity<&ThrottleCable::off_line>("off_line", "off its line", kind::angle)
        .in("deg")
        .from(0, 45)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 0.5})
        .says("Angle between cable and lever's plane as it was set up, before any spacer."),
};
static_assert(std::size(cable_table) == member_count<ThrottleCable>());

constexpr FieldInfo table[] = {
    group<&Input::converter>("converter", "converter").says("The torque converter between flexplate and pump."),
    group<&Input::bell>("bell", "bell").says("The bell as it sits on the block."),
    group<&Input::selector>("selector", "selector").says("Shifter, linkage and gates."),
    group<&Input::throttle_cable>("throttle_cable", "throttle-valve cable")
        .found(Station::engine_bay)
        .says("The cable that sets line pressure and shift points by the throttle."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Converter::fields() { return converter_table; }
std::span<const FieldInfo> Bell::fields() { return bell_table; }
std::span<const FieldInfo> Selector::fields() { return selector_table; }
std::span<const FieldInfo> ThrottleCable::fields() { return cable_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::transmission
