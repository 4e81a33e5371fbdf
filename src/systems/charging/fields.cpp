#include "systems/charging/charging.hpp"

namespace sw::charging {
namespace {

constexpr FieldInfo alternator_table[] = {
    choice<&Alternator::machine>("machine", "machine", machine_names)
        .or_else(0, Source::chosen)
        .says(
            "Alternator, or a generator with its regulator box. No usual curve of output stands in for a generator's."),
    choice<&Alternator::earth>("earth", "earth", earth_names)
        .with(Tool::ohmmeter)
        .decides_harm()
        .says("Which side of the machine is joined to its case."),
    quantity<&Alternator::rated_current>("rated_current", "rated current", kind::current)
        .with(Tool::eye)
        .may_grow()
        .in("A")
        .above(5, 400)
        .says("Current at 6000 rpm of its own, 13.5 V, cold.")
        .after("ISO 8854"),
    curve<&Alternator::output_curve>("output_curve", "output curve", kind::shaft_speed, kind::current)
        .may_grow()
        .in("rpm", "A")
        .from(0, 400)
        .says("Current against its own speed, cold; ask the supplier for it. Without it a usual shape is scaled from "
              "the rated current."),
    number<&Alternator::usual_shape>("usual_shape", "usual output shape")
        .from(0.5, 1.3)
        .or_else(1)
        .spread(Source::typical, {.share = 0.2})
        .says("Output over that of a usual machine of the same rating; stands in, with its doubt, for a curve nobody "
              "gave.")
        .after("common practice"),
    number<&Alternator::hot_share>("hot_share", "hot output")
        .from(0.4, 1)
        .or_else(physics::usual_hot_line.share)
        .spread(Source::typical, {.absolute = 0.05})
        .says("Output hot over output cold.")
        .after("common practice"),
    quantity<&Alternator::hot_air>("hot_air", "hot air", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(50, 130)
        .or_else(95, Source::chosen)
        .spread({})
        .says("Air temperature the hot output is meant at."),
    quantity<&Alternator::highest_speed>("highest_speed", "highest speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .above(3000, 25000)
        .spread({})
        .says("Continuous speed limit of the rotor."),
    number<&Alternator::efficiency>("efficiency", "efficiency")
        .from(0.3, 0.85)
        .or_else(0.55)
        .spread(Source::typical, {.absolute = 0.06})
        .says("Electric power over shaft power.")
        .after("common practice: 50 to 65 % for claw-pole machines"),
    quantity<&Alternator::temperature_rise>("temperature_rise", "winding rise", kind::temperature_step)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("K")
        .from(20, 150)
        .or_else(physics::usual_winding_rise_k)
        .says("Winding above the air it draws, at the most it can give.")
        .after("common practice"),
    quantity<&Alternator::highest_temperature>("highest_temperature", "highest winding temperature", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(120, 240)
        .or_else(200, Source::chosen)
        .spread({})
        .says("Limit of the insulation.")
        .after("IEC 60085 thermal class 200 (from memory)"),
    quantity<&Alternator::regulator_voltage>("regulator_voltage", "regulator voltage", kind::voltage)
        .found(Station::running)
        .in("V")
        .from(6.5, 15.5)
        .spread(Source::data_sheet, {.absolute = 0.1})
        .spread(Source::measured, {.absolute = 0.03})
        .spread(Source::stated, {.absolute = 0.1})
        .says("Set-point at 25 degC."),
    quantity<&Alternator::regulator_slope>("regulator_slope", "regulator slope", kind::voltage_per_temperature)
        .in("mV/K")
        .from(-30, 0)
        .or_else(-7)
        .spread(Source::typical, {.absolute = 3})
        .says("Change of the set-point with its temperature.")
        .after("common practice: 0 to -10 mV/K"),
    choice<&Alternator::excitation>("excitation", "woken by", excitation_names)
        .says("Current into its exciter terminal, through a charge lamp or resistor, or by itself (one wire); a load "
              "grounded to the node `exciter` under `wiring.load` is what feeds the terminal."),
    quantity<&Alternator::exciter_current>("exciter_current", "current that wakes it", kind::current)
        .found(Station::electrics)
        .in("mA")
        .from(1, 2000)
        .or_else(100)
        .spread(Source::typical, {.share = 0.3})
        .says("Into the exciter terminal, key on, engine standing.")
        .after("common practice: a lamp of 2 W, 80 to 170 mA"),
    quantity<&Alternator::wake_speed>("wake_speed", "wakes at, excited", kind::shaft_speed)
        .found(Station::running)
        .in("rpm")
        .above(300, 5000)
        .or_else(1500)
        .spread(Source::typical, {.share = 0.15})
        .says("Its own speed from which it charges with that current.")
        .after("common practice: 1000 to 1600 rpm"),
    quantity<&Alternator::own_wake_speed>("own_wake_speed", "wakes by itself at", kind::shaft_speed)
        .found(Station::running)
        .in("rpm")
        .above(500, 8000)
        .or_else(2900)
        .spread(Source::typical, {.share = 0.2})
        .says("Its own speed from which it charges on residual magnetism alone; a one-wire machine's data sheet gives "
              "it.")
        .after("common practice: 2500 to 3500 rpm where a lamp should have woken it"),
    yes_no<&Alternator::clamped>("clamped", "clamped rectifier")
        .found(Station::desk)
        .with(Tool::data_sheet)
        .says("Whether its diodes (or an arrester beside it) hold the surge when the battery is cut off."),
    choice<&Alternator::sense_lost>("sense_lost", "sense wire open", sense_lost_names)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .says("What a regulator with a sense wire does when that wire is open."),
};
static_assert(std::size(alternator_table) == member_count<Alternator>());

constexpr FieldInfo battery_table[] = {
    quantity<&Battery::voltage>("voltage", "rated volts", kind::voltage)
        .with(Tool::eye)
        .in("V")
        .above(2, 24)
        .spread({})
        .says("Stamped on it: 6 V or 12 V; not given, that of the car."),
    quantity<&Battery::capacity>("capacity", "capacity", kind::charge)
        .with(Tool::eye)
        .may_grow()
        .in("A h")
        .above(5, 300)
        .or_else(65)
        .spread(Source::typical, {.share = 0.4})
        .says("Charge at the 20 hour rate.")
        .after("common practice"),
    quantity<&Battery::cold_crank_current>("cold_crank_current", "cold cranking current", kind::current)
        .with(Tool::eye)
        .may_grow()
        .in("A")
        .above(50, 2000)
        .or_else(500)
        .spread(Source::typical, {.share = 0.4})
        .says("Current at -18 degC for 30 s, a cell not below 1.2 V; not used where the resistance is measured.")
        .after("SAE J537"),
    quantity<&Battery::resistance>("resistance", "internal resistance", kind::resistance)
        .found(Station::electrics)
        .with(Tool::data_sheet)
        .in("mohm")
        .above(1, 60)
        .says("Measured at about 25 degC, charged; without it, from the cold cranking current."),
};
static_assert(std::size(battery_table) == member_count<Battery>());

constexpr FieldInfo starter_table[] = {
    quantity<&Starter::current>("current", "cranking current", kind::current)
        .in("A")
        .above(20, 800)
        .or_else(180)
        .spread(Source::typical, {.share = 0.5})
        .says("Current while cranking the warm engine at 20 degC.")
        .after("common practice"),
    quantity<&Starter::voltage>("voltage", "at volts", kind::voltage)
        .with(Tool::voltmeter)
        .in("V")
        .above(2, 14)
        .says("Volts at the starter while it draws that; without it 10 V in a 12 V car, 5 V in a 6 V car."),
    quantity<&Starter::crank_speed>("crank_speed", "cranking speed", kind::shaft_speed)
        .in("rpm")
        .above(30, 500)
        .or_else(190)
        .spread(Source::typical, {.share = 0.25})
        .says("Engine speed it then turns.")
        .after("common practice"),
    quantity<&Starter::resistance>("resistance", "winding resistance", kind::resistance)
        .in("mohm")
        .above(1, 100)
        .or_else(12)
        .says("Resistance of winding and brushes.")
        .after("common practice"),
    quantity<&Starter::least_crank_speed>("least_crank_speed", "least cranking speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .from(30, 300)
        .or_else(80, Source::chosen)
        .spread({})
        .says("Slowest cranking it will start at.")
        .after("common practice"),
};
static_assert(std::size(starter_table) == member_count<Starter>());

constexpr FieldInfo table[] = {
    group<&Input::alternator>("alternator", "alternator").shelf("alternator").says("The machine that charges."),
    group<&Input::battery>("battery", "battery").shelf("battery").says("The battery."),
    group<&Input::starter>("starter", "starter").shelf("starter").says("The starter."),
    quantity<&Input::least_crank_voltage>("least_crank_voltage", "least volts while cranking", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .from(3, 11)
        .spread({})
        .says("Least volts at the battery while cranking; without it 9.6 V at 70 degF falling to 8.5 V at 0 degF, half "
              "of that in a 6 V car.")
        .after("common practice"),
    quantity<&Input::days_between_drives>("days_between_drives", "days between drives", kind::time)
        .found(Station::desk)
        .with(Tool::eye)
        .in("day")
        .from(1, 400)
        .or_else(14, Source::chosen)
        .spread({})
        .says("How long it must stand and still start."),
    quantity<&Input::electronics_stand>("electronics_stand", "surge the electronics stand", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .from(15, 150)
        .says("Of the most delicate electronics on the bus: the surge its maker allows for tenths of a second."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Alternator::fields() { return alternator_table; }
std::span<const FieldInfo> Battery::fields() { return battery_table; }
std::span<const FieldInfo> Starter::fields() { return starter_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::charging
