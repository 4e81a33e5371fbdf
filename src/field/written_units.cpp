#include "field/written_units.hpp"

#include <algorithm>

#include "quantity/parse.hpp"
#include "quantity/unit.hpp"

namespace sw {
namespace {

constexpr double most_apart = 50;  ///< between two units of one size: psi and kPa are, mA and A are not
constexpr double road_m = 0.3;    ///< from here on a unit of length measures roads and stops, below it parts
constexpr double flows_apart = 5;  ///< the same of flows, for a car has three sizes of them: fuel, coolant and air

const Unit* unit_for(const std::variant<Unit, TextFault>& read) { return std::get_if<Unit>(&read); }

}  // namespace

WrittenUnits::WrittenUnits(const Node& root, std::span<const FieldInfo> fields) { table(root, fields); }

void WrittenUnits::table(const Node& node, std::span<const FieldInfo> fields) {
  for (auto& e : node.entries)
    for (auto& f : fields) {
      if (f.key != e.key) continue;
      if (f.type == FieldType::group) table(e.value, f.access.children());
      if (f.type == FieldType::list)
        for (auto& item : e.value.entries) table(item.value, f.access.children());
      if (f.type == FieldType::quantity || f.type == FieldType::curve) figure(e.value, f);
    }
}

void WrittenUnits::figure(const Node& leaf, const FieldInfo& f) {
  const Node* value = leaf.find("value");
  if (!value) value = &leaf;
  if (!value->part.empty()) return;
  if (f.type == FieldType::quantity) return count(*value, *f.kind);
  for (auto& row : value->items)
    if (row.items.size() == 2) count(row.items[0], *f.kind_x), count(row.items[1], *f.kind);
}

void WrittenUnits::count(const Node& value, const Kind& kind) {
  if (value.type != Node::Type::text) return;
  const auto read = parse_quantity(value.text, kind);
  const auto* parsed = std::get_if<Parsed>(&read);
  if (!parsed) return;
  const auto own = std::find(kind.units.begin(), kind.units.end(), parsed->unit);
  if (own == kind.units.end()) return;
  kinds_[kind.name] = &kind;
  auto& all = used_[kind.name];
  auto at = std::find_if(all.begin(), all.end(), [&](auto& u) { return u.unit == *own; });
  if (at == all.end()) at = all.insert(at, {*own, 0});
  ++at->times;
}

std::string_view WrittenUnits::of(const Kind& kind, std::string_view usual) const {
  const auto fits = [&](std::string_view unit) {
    const auto a = parse_unit_for(unit, kind), b = parse_unit_for(usual, kind);
    const Unit *mine = unit_for(a), *other = unit_for(b);
    if (!mine || !other || mine->gauge || other->gauge) return false;
    if (kind.name == kind::length.name && (mine->factor < road_m) != (other->factor < road_m)) return false;
    const double apart = mine->factor / other->factor,
                 most = kind.name == kind::volume_flow.name ? flows_apart : most_apart;
    return apart < most && apart > 1 / most;
  };
  const auto most = [](const std::vector<Used>& all) {
    return std::max_element(all.begin(), all.end(), [](auto& a, auto& b) { return a.times < b.times; })->unit;
  };
  // A step of temperature goes with the temperatures, in whatever else a few of them are written.
  const bool follows = kind.name == kind::temperature_step.name && used_.contains(kind::temperature.name);
  if (const auto at = used_.find(kind.name); at != used_.end() && !follows) {
    // The field's own unit is the trade's for that figure; but two scales of temperature in a report help nobody.
    const auto& all = at->second;
    const bool written = std::any_of(all.begin(), all.end(), [&](auto& u) { return u.unit == usual; });
    if (written && kind.name != kind::temperature.name) return usual;
    const auto unit = most(all);
    return fits(unit) ? unit : usual;
  }
  for (auto& [name, other] : kinds_) {
    if (!(other->dimension == kind.dimension)) continue;
    const auto unit = most(used_.at(name));
    const auto own = std::find(kind.units.begin(), kind.units.end(), unit);
    if (own == kind.units.end() || !fits(unit) || (follows && other != &kind::temperature)) continue;
    // Of a step K and degC are one, told by the first of its kind.
    const auto read = parse_unit_for(unit, kind);
    return *std::find_if(kind.units.begin(), kind.units.end(), [&](auto text) {
      const auto also = parse_unit_for(text, kind);
      return unit_for(also) && unit_for(also)->factor == unit_for(read)->factor;
    });
  }
  return usual;
}

}  // namespace sw
