#include "systems/cooling/cooling.hpp"

namespace sw::cooling {
namespace {

constexpr FieldInfo radiator_table[] = {
    quantity<&Radiator::core_width>("core_width", "core width", kind::length)
        .may_grow()
        .in("in")
        .from(6, 48)
        .spread(Source::measured, {.absolute = 0.06})
        .says("Width of the finned face."),
    quantity<&Radiator::core_height>("core_height", "core height", kind::length)
        .may_grow()
        .in("in")
        .from(6, 40)
        .spread(Source::measured, {.absolute = 0.06})
        .says("Height of the finned face."),
    quantity<&Radiator::conductance>("conductance", "conductance", kind::thermal_conductance)
        .may_grow()
        .in("kW/K")
        .above(0.1, 8)
        .spread(Source::data_sheet, {.share = 0.08})
        .spread(Source::stated, {.share = 0.08})
        .says("UA of the whole core at the air speed below; from the maker's rated heat and temperatures."),
    quantity<&Radiator::conductance_speed>("conductance_speed", "at air speed", kind::speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("m/s")
        .from(0.5, 20)
        .or_else(5, Source::chosen)
        .spread({})
        .says("Face air speed the conductance is meant at."),
    number<&Radiator::conductance_exponent>("conductance_exponent", "exponent of air speed")
        .from(0.2, 0.8)
        .or_else(0.45)
        .spread(Source::typical, {.absolute = 0.05})
        .says("Conductance goes with air speed to this power.")
        .after("common practice: louvred fins 0.4 to 0.5"),
    number<&Radiator::blocked_share>("blocked_share", "blocked share")
        .with(Tool::eye)
        .may_change()
        .from(0, 0.9)
        .or_else(0, Source::chosen)
        .says("Share of the tubes silted up."),
    curve<&Radiator::airflow_loss>("airflow_loss", "airflow loss", kind::speed, kind::pressure_difference)
        .in("m/s", "Pa")
        .from(0, 5000)
        .says("Pressure lost in core, condenser and grille against face air speed; without it a usual core. It counts "
              "where a fan's curve is given."),
    number<&Radiator::usual_loss>("usual_loss", "usual airflow loss")
        .from(0.2, 5)
        .or_else(1)
        .spread(Source::typical, {.share = 0.35})
        .says("Airflow loss over that of a usual core with condenser and grille; stands in, with its doubt, for a "
              "curve nobody gave.")
        .after("common practice: 130 Pa at 4 m/s"),
    quantity<&Radiator::volume>("volume", "radiator volume", kind::volume)
        .in("L")
        .above(0.3, 20)
        .or_else(4)
        .spread(Source::typical, {.share = 0.25})
        .says("Coolant in the radiator."),
    yes_no<&Radiator::isolated>("isolated", "isolated")
        .may_change()
        .or_else(0, Source::chosen)
        .says("Whether the core stands on rubber and touches no metal of the support."),
};
static_assert(std::size(radiator_table) == member_count<Radiator>());

constexpr FieldInfo pump_table[] = {
    quantity<&Pump::flow>("flow", "flow", kind::volume_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_grow()
        .in("gal/min")
        .above(1, 300)
        .says("Flow through this car's circuit, thermostat open, at the pump speed below."),
    quantity<&Pump::at_speed>("at_speed", "at pump speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .from(300, 10000)
        .spread({})
        .says("Pump speed the flow and power are meant at."),
    quantity<&Pump::power>("power", "power", kind::power)
        .found(Station::desk)
        .in("hp")
        .from(0, 10)
        .or_else(1)
        .says("Shaft power at that speed.")
        .after("common practice"),
    choice<&Pump::rotation>("rotation", "rotation", rotation_names).says("Which way the impeller must turn."),
    number<&Pump::reversed_share>("reversed_share", "flow when reversed")
        .from(0, 1)
        .or_else(0.25)
        .says("Share of the flow an impeller gives turned the wrong way.")
        .after("common practice"),
    quantity<&Pump::needed_at_idle>("needed_at_idle", "flow needed at idle", kind::volume_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("gal/min")
        .above(0.5, 60)
        .spread({})
        .says("Least flow at idle the engine or radiator maker asks for."),
};
static_assert(std::size(pump_table) == member_count<Pump>());

constexpr FieldInfo thermostat_table[] = {
    quantity<&Thermostat::opens>("opens", "opens", kind::temperature)
        .found(Station::bench)
        .with(Tool::eye)
        .may_change()
        .in("degC")
        .from(60, 105)
        .or_else(88)
        .spread(Source::typical, {.absolute = 6})
        .spread(Source::data_sheet, {.absolute = 1.5})
        .spread(Source::stated, {.absolute = 1.5})
        .says("Temperature at which it begins to open."),
    quantity<&Thermostat::fully_open>("fully_open", "fully open", kind::temperature)
        .found(Station::bench)
        .in("degC")
        .from(65, 120)
        .spread(Source::data_sheet, {.absolute = 1.5})
        .spread(Source::stated, {.absolute = 1.5})
        .says("Temperature at which it is fully open; without it opening plus travel."),
    quantity<&Thermostat::travel>("travel", "travel", kind::temperature_step)
        .found(Station::bench)
        .in("K")
        .from(2, 30)
        .or_else(12)
        .spread(Source::typical, {.absolute = 3})
        .says("From beginning to open to fully open; not used where that is given.")
        .after("common practice"),
    quantity<&Thermostat::lag>("lag", "lag", kind::time)
        .found(Station::bench)
        .with(Tool::watch)
        .in("s")
        .from(1, 120)
        .or_else(15)
        .says("Time constant of the wax.")
        .after("common practice"),
};
static_assert(std::size(thermostat_table) == member_count<Thermostat>());

constexpr FieldInfo fan_table[] = {
    choice<&Fan::drive>("drive", "drive", drive_names)
        .or_else(0, Source::chosen)
        .says("Electric, or turned by the engine's belt."),
    quantity<&Fan::flow>("flow", "installed flow", kind::volume_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_grow()
        .in("cfm")
        .above(50, 8000)
        .spread(Source::data_sheet, {.share = 0.08})
        .spread(Source::stated, {.share = 0.08})
        .says(
            "Air through this core and shroud, standing, not the free-air figure of the box; not used where the curve "
            "below is given."),
    curve<&Fan::curve>("curve", "fan curve", kind::volume_flow, kind::pressure_difference)
        .may_grow()
        .in("cfm", "Pa")
        .from(0, 2000)
        .says("Pressure against flow of the fan itself at its rated volts or speed, from its maker's sheet; with the "
              "core's airflow loss it gives the installed flow."),
    quantity<&Fan::at_voltage>("at_voltage", "at volts", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .from(4, 16)
        .spread({})
        .says("Volts at the motor that flow and current are meant at; without it 13.5 V in a 12 V car, 6.75 V in a 6 V "
              "car."),
    quantity<&Fan::current>("current", "current", kind::current)
        .in("A")
        .above(0.5, 120)
        .says("Current of the motor at those volts."),
    quantity<&Fan::at_speed>("at_speed", "at fan speed", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .from(300, 6000)
        .spread({})
        .says("Speed of an engine-driven fan that the flow is meant at."),
    quantity<&Fan::power>("power", "power", kind::power)
        .in("hp")
        .from(0, 20)
        .or_else(1.5)
        .says("Shaft power of an engine-driven fan at that speed.")
        .after("common practice"),
    number<&Fan::free_flow_ratio>("free_flow_ratio", "free flow")
        .from(1.05, 3)
        .or_else(1.35)
        .says("Free-air flow over installed flow; not used where the fan's curve is given.")
        .after("common practice"),
    quantity<&Fan::on>("on", "on at", kind::temperature)
        .found(Station::running)
        .may_change()
        .in("degC")
        .from(60, 125)
        .spread(Source::stated, {.absolute = 1})
        .says("Coolant temperature that switches it on."),
    quantity<&Fan::off>("off", "off at", kind::temperature)
        .found(Station::running)
        .in("degC")
        .from(50, 120)
        .spread(Source::stated, {.absolute = 1})
        .says("Coolant temperature that switches it off."),
    yes_no<&Fan::with_air_conditioning>("with_air_conditioning", "on with air conditioning")
        .or_else(0, Source::chosen)
        .says("Whether the controller keeps it on while the compressor is."),
    choice<&Fan::blows>("blows", "blows", blows_names)
        .or_else(0, Source::chosen)
        .says("Direction of its air at the core."),
    number<&Fan::reversed_share>("reversed_share", "flow when reversed")
        .from(0, 1)
        .or_else(0.65)
        .says("Share of the flow the blades give turned backwards.")
        .after("common practice"),
};
static_assert(std::size(fan_table) == member_count<Fan>());

constexpr FieldInfo cap_table[] = {
    quantity<&Cap::pressure>("pressure", "cap", kind::gauge_pressure)
        .with(Tool::eye)
        .may_change()
        .in("psi")
        .from(0, 30)
        .spread(Source::stated, {.absolute = 0.5})
        .decides_harm()
        .says("Pressure at which the cap opens."),
    quantity<&Cap::weakest_part>("weakest_part", "weakest part", kind::gauge_pressure)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .above(0, 60)
        .spread({})
        .decides_harm()
        .says("Lowest pressure rating of radiator, heater core and hoses."),
    quantity<&Cap::expansion_tank>("expansion_tank", "recovery bottle", kind::volume)
        .may_grow()
        .in("L")
        .from(0, 5)
        .spread({})
        .says("Room in the recovery bottle or tank above the cold mark."),
};
static_assert(std::size(cap_table) == member_count<Cap>());

constexpr FieldInfo table[] = {
    group<&Input::radiator>("radiator", "radiator").shelf("radiator").says("The radiator."),
    group<&Input::pump>("pump", "coolant pump").shelf("coolant pump").says("The coolant pump."),
    group<&Input::thermostat>("thermostat", "thermostat").shelf("thermostat").says("The thermostat."),
    group<&Input::cap>("cap", "cap").says("Cap and what the system stands."),
    list<&Input::fan>("fan", "fans").shelf("fan").says("Fans, by any names."),
    quantity<&Input::coolant>("coolant", "coolant", kind::volume)
        .in("L")
        .above(2, 40)
        .spread(Source::stated, {.share = 0.05})
        .says("Coolant in the whole system."),
    number<&Input::glycol>("glycol", "glycol")
        .with(Tool::fluid_tester)
        .may_change()
        .from(0, 0.57)
        .or_else(0.5, Source::chosen)
        .spread({.absolute = 0.03})
        .says("Share of ethylene glycol by volume; the fluid tables end at 60 % by mass."),
    number<&Input::shroud_cover>("shroud_cover", "shroud cover")
        .with(Tool::rule)
        .may_change()
        .from(0.2, 1)
        .or_else(0.85)
        .spread(Source::typical, {.absolute = 0.1})
        .says("Share of the core the fans draw through, standing."),
    number<&Input::ram_share>("ram_share", "ram air")
        .from(0.02, 0.6)
        .or_else(0.18)
        .spread(Source::typical, {.absolute = 0.04})
        .says("Face air speed over road speed, fans turning freely.")
        .after("common practice: 0.12 to 0.25"),
    quantity<&Input::recirculation>("recirculation", "hot-air return", kind::temperature_step)
        .found(Station::running)
        .may_change()
        .in("K")
        .from(0, 25)
        .or_else(4)
        .spread(Source::typical, {.absolute = 2})
        .says("Rise of the air before the core by hot air coming round, standing.")
        .after("common practice: 3 to 6 K"),
    quantity<&Input::highest_coolant>("highest_coolant", "highest coolant temperature", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(80, 125)
        .or_else(105, Source::chosen)
        .spread({})
        .says("Highest coolant temperature wanted.")
        .after("common practice"),
    quantity<&Input::bay_temperature>("bay_temperature", "engine bay at hot idle", kind::temperature)
        .found(Station::running)
        .in("degC")
        .from(20, 130)
        .says("Air at the alternator after a long idle on a 40 degC day, where it was measured (on another day: its "
              "rise over that day's air, put on 40 degC); takes the place of the computed one while the car stands."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Radiator::fields() { return radiator_table; }
std::span<const FieldInfo> Pump::fields() { return pump_table; }
std::span<const FieldInfo> Thermostat::fields() { return thermostat_table; }
std::span<const FieldInfo> Fan::fields() { return fan_table; }
std::span<const FieldInfo> Cap::fields() { return cap_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::cooling
