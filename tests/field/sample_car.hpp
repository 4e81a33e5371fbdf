#pragma once
// An invented car small enough to be read at a glance, with every type of field. Used by the tests of field/ and
// document/ and by the fuzz target.
#include "field/field.hpp"

namespace sw::sample {

enum class Flow { down, across };
inline constexpr std::string_view flow_names[] = {"down-flow", "cross-flow"};

struct Radiator {
  std::optional<Length> core_width, core_height;
  std::optional<Temperature> thermostat;
  std::optional<GaugePressure> cap;
  std::optional<double> fin_share;
  std::optional<int> rows;
  std::optional<bool> shrouded;
  std::optional<Flow> flow;
  std::string colour;
  std::vector<std::string> marks;
  std::optional<Curve> airflow_loss;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo radiator_fields[] = {
    quantity<&Radiator::core_width>("core_width", "core width", kind::length)
        .from(4, 60)
        .says("Between the tanks.")
        .after("common practice"),
    quantity<&Radiator::core_height>("core_height", "core height", kind::length).from(4, 60).or_else(17),
    quantity<&Radiator::thermostat>("thermostat", "thermostat opens", kind::temperature)
        .in("degF")
        .from(140, 230)
        .or_else(180, Source::chosen),
    quantity<&Radiator::cap>("cap", "cap pressure", kind::gauge_pressure).above(0, 30).decides_harm(),
    number<&Radiator::fin_share>("fin_share", "share of fins").above(0, 1).spread(Source::measured, {.absolute = 0.01}),
    integer<&Radiator::rows>("rows", "rows of tubes").from(1, 6),
    yes_no<&Radiator::shrouded>("shrouded", "has a shroud").or_else(0),
    choice<&Radiator::flow>("flow", "flow", flow_names).or_else(0),
    text<&Radiator::colour>("colour", "colour"),
    names<&Radiator::marks>("marks", "marks on it"),
    curve<&Radiator::airflow_loss>("airflow_loss", "loss of the air through it", kind::speed, kind::pressure_difference)
        .in("m/s", "Pa")
        .from(0, 1000),
};
static_assert(std::size(radiator_fields) == member_count<Radiator>());
inline std::span<const FieldInfo> Radiator::fields() { return radiator_fields; }

struct Wire {
  std::optional<Area> gauge;
  std::optional<Length> length;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo wire_fields[] = {
    quantity<&Wire::gauge>("gauge", "wire size", kind::wire_size).in("mm2").above(0, 120),
    quantity<&Wire::length>("length", "length of the run", kind::length).in("ft").above(0, 100),
};
inline std::span<const FieldInfo> Wire::fields() { return wire_fields; }

struct Cooler {
  std::optional<Power> heat;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo cooler_fields[] = {quantity<&Cooler::heat>("heat", "heat taken out", kind::power)};
inline std::span<const FieldInfo> Cooler::fields() { return cooler_fields; }

struct Cooling {
  Radiator radiator;
  std::optional<Cooler> oil_cooler;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo cooling_fields[] = {
    group<&Cooling::radiator>("radiator", "radiator").shelf("radiator"),
    group<&Cooling::oil_cooler>("oil_cooler", "oil cooler"),
};
inline std::span<const FieldInfo> Cooling::fields() { return cooling_fields; }

struct Wiring {
  Named<Wire> run;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo wiring_fields[] = {list<&Wiring::run>("run", "wire runs").shelf("wire")};
inline std::span<const FieldInfo> Wiring::fields() { return wiring_fields; }

struct Car {
  Cooling cooling;
  Wiring wiring;
  static std::span<const FieldInfo> fields();
};
inline constexpr FieldInfo car_fields[] = {
    group<&Car::cooling>("cooling", "cooling"),
    group<&Car::wiring>("wiring", "wiring"),
};
inline std::span<const FieldInfo> Car::fields() { return car_fields; }

}  // namespace sw::sample
