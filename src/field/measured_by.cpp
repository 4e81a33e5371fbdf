#include "field/measured_by.hpp"

#include <algorithm>

#include "field/measure.hpp"
#include "quantity/customary.hpp"

namespace sw {
namespace {

struct OfKind {
  const Kind* kind;
  Tool tool;
};
constexpr OfKind by_kind[] = {
    {&kind::mass, Tool::scales},
    {&kind::force, Tool::spring_balance},
    {&kind::torque, Tool::torque_wrench},
    {&kind::angle, Tool::angle_gauge},
    {&kind::shaft_speed, Tool::tachometer},
    {&kind::gauge_pressure, Tool::pressure_gauge},
    {&kind::absolute_pressure, Tool::pressure_gauge},
    {&kind::pressure_difference, Tool::pressure_gauge},
    {&kind::vacuum, Tool::vacuum_gauge},
    {&kind::temperature, Tool::thermometer},
    {&kind::temperature_step, Tool::thermometer},
    {&kind::voltage, Tool::voltmeter},
    {&kind::current, Tool::clamp_meter},
    {&kind::resistance, Tool::ohmmeter},
    {&kind::inductance, Tool::inductance_meter},
    {&kind::volume, Tool::jug},
    {&kind::volume_flow, Tool::jug_and_watch},
    {&kind::time, Tool::watch},
    {&kind::wire_size, Tool::eye},
};

constexpr double calliper_reads_m = 0.15e-3, rule_reads_m = 1e-3, rule_ends_m = 12 * inch_m;

/// The coarsest that reaches the field's own tolerance; where that is a share, by how long the thing can be.
Tool of_length(const FieldInfo& f) {
  const Spread spread = f.spreads[static_cast<std::size_t>(Source::measured)];
  if (spread.absolute > 0) {
    const double reads = step_to_si(spread.absolute, *f.kind, unit_of(f));
    return reads <= calliper_reads_m ? Tool::calliper : reads <= rule_reads_m ? Tool::rule : Tool::tape;
  }
  return f.range.set && to_si(f.range.high, *f.kind, unit_of(f)) <= rule_ends_m ? Tool::rule : Tool::tape;
}

}  // namespace

Tool tool_of(const FieldInfo& f) {
  if (f.tool != Tool::by_kind) return f.tool;
  switch (f.type) {
    case FieldType::quantity:
      break;
    case FieldType::number:
    case FieldType::curve:
      return Tool::data_sheet;
    default:
      return Tool::eye;
  }
  if (f.kind == &kind::length) return of_length(f);
  const auto at = std::find_if(std::begin(by_kind), std::end(by_kind), [&](auto& k) { return k.kind == f.kind; });
  return at == std::end(by_kind) ? Tool::data_sheet : at->tool;
}

}  // namespace sw
