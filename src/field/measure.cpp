#include "field/measure.hpp"

#include <cassert>
#include <cmath>

#include "quantity/print.hpp"
#include "quantity/unit.hpp"

namespace sw {

namespace {

Unit unit_for(const Kind& kind, std::string_view unit) {
  auto found = parse_unit_for(unit, kind);
  assert(std::holds_alternative<Unit>(found) && "a field table names a unit that does not fit its kind");
  auto* known = std::get_if<Unit>(&found);
  return known ? *known : Unit{};
}

bool has_zero(const Kind& kind) { return kind.reference == Reference::absolute && kind.dimension == dim::temperature; }

}  // namespace

double to_si(double value, const Kind& kind, std::string_view unit) { return to_si(value, unit_for(kind, unit)); }

double from_si(double si, const Kind& kind, std::string_view unit) { return in_unit(si, unit_for(kind, unit), kind); }

double step_to_si(double step, const Kind& kind, std::string_view unit) { return step * unit_for(kind, unit).factor; }

const Kind& step_kind(const Kind& kind) {
  if (kind.wire_gauge) return kind::area;
  if (kind.reference == Reference::none) return kind;
  return kind.dimension == dim::temperature ? kind::temperature_step : kind::pressure_difference;
}

bool in_range(double si, const FieldInfo& f) {
  if (!f.range.set) return true;
  double value = from_si(si, *f.kind, unit_of(f));
  // A zero end needs an amount of its own where the unit's zero is shifted.
  auto slack = [&](double end) { return 1e-9 * std::abs(end) + (has_zero(*f.kind) ? 1e-9 : 0.0); };
  bool low = f.range.low_open ? value > f.range.low : value >= f.range.low - slack(f.range.low);
  bool high = f.range.high_open ? value < f.range.high : value <= f.range.high + slack(f.range.high);
  return low && high;
}

double usual_half_width(const FieldInfo& f, Source s, double si) {
  auto [share, absolute] = f.spreads[static_cast<std::size_t>(s)];
  if (f.type == FieldType::curve) return share;
  double step = absolute == 0 ? 0 : step_to_si(absolute, *f.kind, unit_of(f));
  return share * std::abs(si) + step;
}

}  // namespace sw
