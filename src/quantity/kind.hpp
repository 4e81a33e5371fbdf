#pragma once
// A kind of quantity as a person means it: a dimension, what it is counted from, and the units offered for it.
// "length", "gauge pressure" and "shaft speed" are kinds. Fields, ports, sums and findings name a kind; parsing and
// printing need nothing else.
#include <span>
#include <string_view>

#include "quantity/quantity.hpp"

namespace sw {

struct Kind {
  std::string_view name;  ///< as said in a message: "gauge pressure"
  Dimension dimension;
  Reference reference = Reference::none;
  std::span<const std::string_view> units;  ///< offered units, the first is the one printed unless asked otherwise
  std::string_view example;                 ///< how one is written: "12.5 psi"
  bool wire_gauge = false;                  ///< an area that may be written `10 AWG`
};

namespace kind {
namespace unit_list {
inline constexpr std::string_view number[] = {"", "%"};
inline constexpr std::string_view length[] = {"in", "mm", "ft", "cm", "m", "km", "mile", "um", "thou"};
inline constexpr std::string_view area[] = {"in2", "cm2", "mm2", "ft2", "m2", "cmil"};
inline constexpr std::string_view wire_size[] = {"AWG", "mm2", "cmil", "in2"};
inline constexpr std::string_view volume[] = {"L", "gal", "in3", "cm3", "ft3", "m3", "qt"};
inline constexpr std::string_view mass[] = {"lb", "kg", "g", "oz", "slug"};
inline constexpr std::string_view time[] = {"s", "min", "h", "day", "week", "year", "ms"};
inline constexpr std::string_view current[] = {"A", "mA"};
inline constexpr std::string_view temperature[] = {"degC", "degF", "K", "degR"};
inline constexpr std::string_view temperature_step[] = {"K", "degC", "degF", "degR"};
inline constexpr std::string_view angle[] = {"deg", "rad", "rev"};
inline constexpr std::string_view speed[] = {"mph", "km/h", "m/s", "ft/s"};
inline constexpr std::string_view acceleration[] = {"m/s2", "ft/s2", "mph/s", "g"};
inline constexpr std::string_view shaft_speed[] = {"rpm", "rad/s", "rev/s"};
inline constexpr std::string_view angular_acceleration[] = {"rad/s2"};
inline constexpr std::string_view frequency[] = {"Hz", "1/s"};
inline constexpr std::string_view force[] = {"lbf", "N", "kN", "kip"};
inline constexpr std::string_view spring_rate[] = {"lbf/in", "N/mm", "N/m"};
inline constexpr std::string_view torque[] = {"lb-ft", "N m", "lb-in", "lbf ft", "lbf in"};
inline constexpr std::string_view energy[] = {"J", "kJ", "MJ", "mJ", "BTU", "Wh", "lbf ft"};
inline constexpr std::string_view power[] = {"hp", "kW", "W", "BTU/h"};
inline constexpr std::string_view pressure_difference[] = {"psi",  "kPa",   "bar", "Pa", "mbar",
                                                           "inHg", "inH2O", "MPa", "ksi"};
inline constexpr std::string_view absolute_pressure[] = {"kPa",  "psi", "psia", "bar", "Pa",
                                                         "mbar", "hPa", "inHg", "atm"};
inline constexpr std::string_view gauge_pressure[] = {"psi", "psig", "kPa", "bar", "Pa", "mbar", "inHg", "MPa"};
inline constexpr std::string_view vacuum[] = {"inHg", "kPa", "psi", "mbar", "inH2O"};
inline constexpr std::string_view volume_flow[] = {"cfm",   "gph",     "gal/min", "gpm",  "L/h",
                                                   "L/min", "cm3/min", "m3/h",    "m3/s", "ft3/s"};
inline constexpr std::string_view mass_flow[] = {"lb/h", "lb/min", "kg/h", "g/s", "kg/s"};
inline constexpr std::string_view density[] = {"kg/m3", "g/cm3", "lb/ft3", "lb/gal", "slug/ft3"};
inline constexpr std::string_view charge[] = {"A h", "Ah", "A s"};
inline constexpr std::string_view voltage[] = {"V", "mV", "uV"};
inline constexpr std::string_view resistance[] = {"ohm", "mohm", "kohm"};
inline constexpr std::string_view inductance[] = {"mH", "H"};
inline constexpr std::string_view resistance_per_length[] = {"mohm/ft", "mohm/m", "ohm/m", "ohm/ft"};
inline constexpr std::string_view thermal_conductance[] = {"W/K", "kW/K"};
inline constexpr std::string_view heat_capacity[] = {"kJ/K", "J/K"};
inline constexpr std::string_view specific_heat[] = {"J/(kg K)", "kJ/(kg K)", "BTU/(lb degF)"};
inline constexpr std::string_view conductivity[] = {"W/(m K)", "BTU/(h ft degF)"};
inline constexpr std::string_view heat_transfer[] = {"W/(m2 K)", "BTU/(h ft2 degF)"};
inline constexpr std::string_view viscosity[] = {"mPa s", "Pa s", "cP", "lb/(ft s)"};
inline constexpr std::string_view kinematic_viscosity[] = {"mm2/s", "m2/s", "cSt", "ft2/s"};
inline constexpr std::string_view specific_consumption[] = {"lb/(hp h)", "g/(kW h)"};
inline constexpr std::string_view specific_energy[] = {"MJ/kg", "BTU/lb"};
inline constexpr std::string_view inertia[] = {"kg m2", "lb in2"};
inline constexpr std::string_view mass_per_length[] = {"kg/m", "g/m", "lb/ft"};
inline constexpr std::string_view per_length[] = {"rev/mile", "rev/km", "1/mile", "1/km", "1/m"};
inline constexpr std::string_view displacement_flow[] = {"gal/min/rpm", "L/min/rpm", "in3/rev", "cm3/rev"};
inline constexpr std::string_view per_temperature[] = {"1/K", "%/K"};
inline constexpr std::string_view voltage_per_temperature[] = {"mV/K", "V/K"};
inline constexpr std::string_view irradiance[] = {"W/m2"};
inline constexpr std::string_view resistivity[] = {"ohm cmil/ft", "ohm mm2/m", "ohm m"};
inline constexpr std::string_view stress[] = {"psi", "ksi", "MPa", "kPa"};
inline constexpr std::string_view pulses_per_length[] = {"pulse/mile", "pulse/km", "1/m"};
inline constexpr std::string_view time_squared[] = {"day2", "h2", "week2", "s2"};
inline constexpr std::string_view fuel_economy[] = {"mpg", "km/L"};
}  // namespace unit_list

inline constexpr Kind number{"number", dim::none, Reference::none, unit_list::number, "0.35"};
inline constexpr Kind length{"length", dim::length, Reference::none, unit_list::length, "17 1/4 in"};
inline constexpr Kind area{"area", dim::area, Reference::none, unit_list::area, "6.79 in2"};
inline constexpr Kind wire_size{"wire size", dim::area, Reference::none, unit_list::wire_size, "10 AWG", true};
inline constexpr Kind volume{"volume", dim::volume, Reference::none, unit_list::volume, "302 in3"};
inline constexpr Kind mass{"mass", dim::mass, Reference::none, unit_list::mass, "3700 lb"};
inline constexpr Kind time{"time", dim::time, Reference::none, unit_list::time, "40 min"};
inline constexpr Kind current{"current", dim::current, Reference::none, unit_list::current, "30 A"};
inline constexpr Kind temperature{"temperature", dim::temperature, Reference::absolute, unit_list::temperature,
                                  "180 degF"};
inline constexpr Kind temperature_step{"temperature step", dim::temperature, Reference::none,
                                       unit_list::temperature_step, "8 degF"};
inline constexpr Kind angle{"angle", dim::angle, Reference::none, unit_list::angle, "165 deg"};
inline constexpr Kind speed{"speed", dim::speed, Reference::none, unit_list::speed, "55 mph"};
inline constexpr Kind acceleration{"acceleration", dim::acceleration, Reference::none, unit_list::acceleration,
                                   "3.3 mph/s"};
inline constexpr Kind shaft_speed{"shaft speed", dim::shaft_speed, Reference::none, unit_list::shaft_speed, "1500 rpm"};
inline constexpr Kind angular_acceleration{"angular acceleration", dim::angular_acceleration, Reference::none,
                                           unit_list::angular_acceleration, "300 rad/s2"};
inline constexpr Kind frequency{"frequency", dim::frequency, Reference::none, unit_list::frequency, "115 Hz"};
inline constexpr Kind force{"force", dim::force, Reference::none, unit_list::force, "70 lbf"};
inline constexpr Kind spring_rate{"spring rate", dim::spring_rate, Reference::none, unit_list::spring_rate,
                                  "300 lbf/in"};
inline constexpr Kind torque{"torque", dim::torque, Reference::none, unit_list::torque, "60 lb-ft"};
inline constexpr Kind energy{"energy", dim::energy, Reference::none, unit_list::energy, "64 mJ"};
inline constexpr Kind power{"power", dim::power, Reference::none, unit_list::power, "250 hp"};
inline constexpr Kind pressure_difference{"pressure difference", dim::pressure, Reference::none,
                                          unit_list::pressure_difference, "2 psi"};
inline constexpr Kind absolute_pressure{"absolute pressure", dim::pressure, Reference::absolute,
                                        unit_list::absolute_pressure, "101.3 kPa"};
inline constexpr Kind gauge_pressure{"gauge pressure", dim::pressure, Reference::gauge, unit_list::gauge_pressure,
                                     "12.5 psi"};
inline constexpr Kind vacuum{"vacuum", dim::pressure, Reference::vacuum, unit_list::vacuum, "15 inHg"};
inline constexpr Kind volume_flow{"volume flow", dim::volume_flow, Reference::none, unit_list::volume_flow, "850 cfm"};
inline constexpr Kind mass_flow{"mass flow", dim::mass_flow, Reference::none, unit_list::mass_flow, "23.4 lb/h"};
inline constexpr Kind density{"density", dim::density, Reference::none, unit_list::density, "745 kg/m3"};
inline constexpr Kind charge{"charge", dim::charge, Reference::none, unit_list::charge, "60 A h"};
inline constexpr Kind voltage{"voltage", dim::voltage, Reference::none, unit_list::voltage, "14.2 V"};
inline constexpr Kind resistance{"resistance", dim::resistance, Reference::none, unit_list::resistance, "6 mohm"};
inline constexpr Kind inductance{"inductance", dim::inductance, Reference::none, unit_list::inductance, "8 mH"};
inline constexpr Kind resistance_per_length{"resistance per length", dim::resistance_per_length, Reference::none,
                                            unit_list::resistance_per_length, "1.0 mohm/ft"};
inline constexpr Kind thermal_conductance{"heat per degree", dim::conductance_thermal, Reference::none,
                                          unit_list::thermal_conductance, "1.5 kW/K"};
inline constexpr Kind heat_capacity{"heat capacity", dim::heat_capacity, Reference::none, unit_list::heat_capacity,
                                    "60 kJ/K"};
inline constexpr Kind specific_heat{"specific heat", dim::specific_heat, Reference::none, unit_list::specific_heat,
                                    "3600 J/(kg K)"};
inline constexpr Kind conductivity{"thermal conductivity", dim::conductivity, Reference::none, unit_list::conductivity,
                                   "0.42 W/(m K)"};
inline constexpr Kind heat_transfer{"heat transfer coefficient", dim::heat_transfer, Reference::none,
                                    unit_list::heat_transfer, "45 W/(m2 K)"};
inline constexpr Kind viscosity{"dynamic viscosity", dim::viscosity, Reference::none, unit_list::viscosity,
                                "0.5 mPa s"};
inline constexpr Kind kinematic_viscosity{"kinematic viscosity", dim::kinematic_viscosity, Reference::none,
                                          unit_list::kinematic_viscosity, "10 mm2/s"};
inline constexpr Kind specific_consumption{"specific fuel consumption", dim::specific_consumption, Reference::none,
                                           unit_list::specific_consumption, "0.5 lb/(hp h)"};
inline constexpr Kind specific_energy{"heating value", dim::specific_energy, Reference::none,
                                      unit_list::specific_energy, "44 MJ/kg"};
inline constexpr Kind inertia{"moment of inertia", dim::inertia, Reference::none, unit_list::inertia, "0.003 kg m2"};
inline constexpr Kind mass_per_length{"mass per length", dim::mass_per_length, Reference::none,
                                      unit_list::mass_per_length, "0.12 kg/m"};
inline constexpr Kind per_length{"turns per length", dim::per_length, Reference::none, unit_list::per_length,
                                 "776 rev/mile"};
inline constexpr Kind displacement_flow{"flow per shaft speed", dim::displacement_flow, Reference::none,
                                        unit_list::displacement_flow, "0.02 gal/min/rpm"};
inline constexpr Kind per_temperature{"share per degree", dim::per_temperature, Reference::none,
                                      unit_list::per_temperature, "0.00393 1/K"};
inline constexpr Kind voltage_per_temperature{"voltage per degree", dim::voltage_per_temperature, Reference::none,
                                              unit_list::voltage_per_temperature, "-10 mV/K"};
inline constexpr Kind irradiance{"irradiance", dim::irradiance, Reference::none, unit_list::irradiance, "1000 W/m2"};
inline constexpr Kind resistivity{"resistivity", dim::resistivity, Reference::none, unit_list::resistivity,
                                  "10.371 ohm cmil/ft"};
inline constexpr Kind stress{"stress", dim::pressure, Reference::none, unit_list::stress, "30 ksi"};
inline constexpr Kind pulses_per_length{"pulses per length", dim::per_length, Reference::none,
                                        unit_list::pulses_per_length, "8000 pulse/mile"};
inline constexpr Kind time_squared{"variance of a time", dim::time_squared, Reference::none, unit_list::time_squared,
                                   "2.25 day2"};
inline constexpr Kind fuel_economy{"distance per fuel", dim::distance_per_volume, Reference::none,
                                   unit_list::fuel_economy, "14 mpg"};
}  // namespace kind

/// All kinds, in the order of their names above.
std::span<const Kind* const> all_kinds();
/// The kind of that name, or null.
const Kind* find_kind(std::string_view name);

}  // namespace sw
