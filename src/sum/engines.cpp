// Sums of the engine: air, power, heat, vacuum. Fuel stands in fuels.cpp, ignition in ignitions.cpp.
#include "physics/atmosphere.hpp"
#include "physics/engine.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

struct AirIn {
  std::optional<Volume> displacement;
  std::optional<ShaftSpeed> engine_speed;
  std::optional<double> volumetric_efficiency;
  std::optional<Density> density;
};
struct AirOut {
  std::optional<VolumeFlow> flow;
  std::optional<MassFlow> mass_flow;
};
constexpr Argument air_in[] = {
    positive<&AirIn::displacement>("displacement", "swept by all cylinders", kind::volume, "in3"),
    positive<&AirIn::engine_speed>("engine_speed", "engine speed", kind::shaft_speed, "rpm"),
    ratio<&AirIn::volumetric_efficiency>("volumetric_efficiency", "air drawn over swept volume", 5),
    may(positive<&AirIn::density>("density", "of the air drawn", kind::density, "kg/m3")),
};
constexpr Argument air_out[] = {
    result<&AirOut::flow>("flow", "air drawn", kind::volume_flow, "cfm"),
    result<&AirOut::mass_flow>("mass_flow", "air drawn", kind::mass_flow, "kg/h"),
};

void engine_air(const AirIn& in, AirOut& out, Remarks&) {
  const double flow =
      physics::engine_air(in.displacement->si, in.engine_speed->si, *in.volumetric_efficiency).flow_m3_s;
  out.flow = VolumeFlow{flow};
  if (in.density) out.mass_flow = MassFlow{flow * in.density->si};
}

struct HeatIn {
  std::optional<Power> power;
  std::optional<double> share_coolant, share_shaft;
};
struct HeatOut {
  std::optional<Power> heat;
};
constexpr Argument heat_in[] = {
    positive<&HeatIn::power>("power", "at the shaft", kind::power, "kW"),
    ratio<&HeatIn::share_coolant>("share_coolant", "of the fuel's heat, to the coolant", 1),
    ratio<&HeatIn::share_shaft>("share_shaft", "of the fuel's heat, to the shaft", 1),
};
constexpr Argument heat_out[] = {result<&HeatOut::heat>("heat", "to the coolant", kind::power, "kW")};

void heat_check(const HeatIn& in, Remarks& say) {
  if (in.share_coolant && in.share_shaft && *in.share_coolant + *in.share_shaft > 1)
    say.fault("share_coolant, share_shaft", "make more than the whole", "both are shares of the fuel's heat");
}

void coolant_heat(const HeatIn& in, HeatOut& out, Remarks& say) {
  out.heat = Power{physics::coolant_heat(in.power->si, *in.share_coolant, *in.share_shaft).heat_w};
  if (*in.share_coolant < physics::least_coolant_share || *in.share_coolant > physics::greatest_coolant_share)
    say.note("at full power 17 to 26 % of a spark-ignition engine's fuel heat go to the coolant");
}

struct PowerIn {
  std::optional<Torque> torque;
  std::optional<ShaftSpeed> shaft_speed;
  std::optional<Power> power;
};
struct PowerOut {
  std::optional<Torque> torque;
  std::optional<ShaftSpeed> shaft_speed;
  std::optional<Power> power;
};
constexpr Argument power_in[] = {
    positive<&PowerIn::torque>("torque", "torque", kind::torque, "lb-ft"),
    positive<&PowerIn::shaft_speed>("shaft_speed", "turning speed", kind::shaft_speed, "rpm"),
    positive<&PowerIn::power>("power", "power", kind::power, "hp"),
};
constexpr Argument power_out[] = {
    result<&PowerOut::torque>("torque", "torque", kind::torque, "lb-ft"),
    result<&PowerOut::shaft_speed>("shaft_speed", "turning speed", kind::shaft_speed, "rpm"),
    result<&PowerOut::power>("power", "power", kind::power, "hp"),
};
constexpr Rule power_rules[] = {two_of("torque", "shaft_speed", "power")};

void power(const PowerIn& in, PowerOut& out, Remarks&) {
  if (!in.power)
    out.power = Power{physics::shaft_power_w(in.torque->si, in.shaft_speed->si)};
  else if (!in.torque)
    out.torque = Torque{in.power->si / in.shaft_speed->si};
  else
    out.shaft_speed = ShaftSpeed{in.power->si / in.torque->si};
}

struct MeanIn {
  std::optional<Torque> torque;
  std::optional<Volume> displacement;
};
struct MeanOut {
  std::optional<PressureDifference> pressure;
};
constexpr Argument mean_in[] = {
    positive<&MeanIn::torque>("torque", "at the crankshaft", kind::torque, "lb-ft"),
    positive<&MeanIn::displacement>("displacement", "swept by all cylinders", kind::volume, "in3"),
};
constexpr Argument mean_out[] = {
    result<&MeanOut::pressure>("pressure", "brake mean effective pressure", kind::pressure_difference, "kPa")};

void mean_pressure(const MeanIn& in, MeanOut& out, Remarks&) {
  out.pressure = PressureDifference{physics::mean_effective_pressure_pa(in.torque->si, in.displacement->si)};
}

struct CorrectionIn {
  std::optional<AbsolutePressure> dry_pressure;
  std::optional<Temperature> temperature;
};
struct CorrectionOut {
  std::optional<double> factor;
};
constexpr Argument correction_in[] = {
    positive<&CorrectionIn::dry_pressure>("dry_pressure", "of the air drawn, without its vapour",
                                          kind::absolute_pressure, "kPa", 1000),
    quantity<&CorrectionIn::temperature>("temperature", "of the air drawn", kind::temperature)
        .in("degC")
        .from(-60, 100),
};
constexpr Argument correction_out[] = {number<&CorrectionOut::factor>("factor", "on the measured power")};

void power_correction(const CorrectionIn& in, CorrectionOut& out, Remarks& say) {
  out.factor = physics::power_correction(in.dry_pressure->si, in.temperature->si);
  if (in.dry_pressure->si < 90e3 || in.dry_pressure->si > 105e3)
    say.outside("the standard's tests are made at 90 to 105 kPa");
  if (in.temperature->si < 288.15 - 1e-9 || in.temperature->si > 308.15 + 1e-9)
    say.outside("the standard's tests are made at 15 to 35 degC");
}

struct SweptIn {
  std::optional<Length> bore, stroke;
  std::optional<int> cylinders;
};
struct SweptOut {
  std::optional<Volume> displacement;
};
constexpr Argument swept_in[] = {
    positive<&SweptIn::bore>("bore", "of a cylinder", kind::length, "in"),
    positive<&SweptIn::stroke>("stroke", "of a piston", kind::length, "in"),
    integer<&SweptIn::cylinders>("cylinders", "number of cylinders").from(1, 100),
};
constexpr Argument swept_out[] = {
    result<&SweptOut::displacement>("displacement", "swept by all cylinders", kind::volume, "in3")};

void displacement(const SweptIn& in, SweptOut& out, Remarks&) {
  out.displacement = Volume{physics::displacement_m3(in.bore->si, in.stroke->si, *in.cylinders)};
}

struct VacuumIn {
  std::optional<AbsolutePressure> manifold_pressure;
  std::optional<Length> altitude;
};
struct VacuumOut {
  std::optional<VacuumPressure> vacuum;
};
constexpr Argument vacuum_in[] = {
    positive<&VacuumIn::manifold_pressure>("manifold_pressure", "absolute", kind::absolute_pressure, "kPa", 1000),
    quantity<&VacuumIn::altitude>("altitude", "geometric", kind::length).in("ft").or_else(0, Source::chosen),
};
constexpr Argument vacuum_out[] = {result<&VacuumOut::vacuum>("vacuum", "as a gauge shows it", kind::vacuum, "inHg")};

void vacuum(const VacuumIn& in, VacuumOut& out, Remarks& say) {
  const auto air = physics::standard_atmosphere(in.altitude->si);
  if (!air.valid) say.outside("the standard atmosphere's lowest layer ends at 11 km");
  out.vacuum = VacuumPressure{air.pressure_pa - in.manifold_pressure->si};
  if (out.vacuum->si < 0) say.note("below zero: the manifold is above the air outside, which is boost");
}

constexpr Sum sums[] = {
    entry<engine_air>(
        {.name = "engine-air",
         .title = "Air an engine draws",
         .inputs = air_in,
         .outputs = air_out,
         .range = "four-stroke",
         .source =
             "displacement every two turns; Heywood, Internal Combustion Engine Fundamentals, eq. 2.27 (from memory)"}),
    entry<coolant_heat, heat_check>(
        {.name = "coolant-heat",
         .title = "Heat an engine puts into its coolant",
         .inputs = heat_in,
         .outputs = heat_out,
         .range = "full power: coolant 17 to 26 %, shaft 25 to 28 % of the fuel's heat",
         .source = "energy balance; Heywood, Internal Combustion Engine Fundamentals, table 12.1 (from memory)"}),
    entry<power>({.name = "power",
                  .title = "Torque, speed and power of a shaft",
                  .inputs = power_in,
                  .outputs = power_out,
                  .rules = power_rules,
                  .range = "any shaft",
                  .source = "P = T w; hp of 550 lbf ft/s"}),
    entry<mean_pressure>(
        {.name = "mean-pressure",
         .title = "Brake mean effective pressure",
         .inputs = mean_in,
         .outputs = mean_out,
         .range = "four-stroke",
         .source = "4 pi T / V; Heywood, Internal Combustion Engine Fundamentals, eq. 2.19 (from memory)"}),
    entry<power_correction>({.name = "power-correction",
                             .title = "Measured power brought to standard air",
                             .inputs = correction_in,
                             .outputs = correction_out,
                             .range = "spark ignition, naturally aspirated; 90 to 105 kPa, 15 to 35 degC (from memory)",
                             .source = "SAE J1349 (from memory)"}),
    entry<displacement>({.name = "displacement",
                         .title = "Displacement of an engine",
                         .inputs = swept_in,
                         .outputs = swept_out,
                         .range = "piston engines",
                         .source = "geometry"}),
    entry<vacuum>({.name = "vacuum",
                   .title = "Manifold vacuum at an altitude",
                   .inputs = vacuum_in,
                   .outputs = vacuum_out,
                   .range = "standard day, up to 11 km",
                   .source = "U.S. Standard Atmosphere 1976; ambient less absolute"}),
};

}  // namespace

std::span<const Sum> engine_sums() { return sums; }

}  // namespace sw
