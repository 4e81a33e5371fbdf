#include "survey/walk.hpp"

#include <algorithm>
#include <map>
#include <set>

#include "field/words.hpp"
#include "proof/touched.hpp"

namespace sw {
namespace {

/// The station of the field itself, or of the nearest group above it that has one.
Station station_of(std::string_view path, const FieldInfo& field, Tool tool) {
  if (field.station != Station::inherited) return field.station;
  if (tool == Tool::data_sheet) return Station::desk;
  for (auto dot = path.rfind('.'); dot != std::string_view::npos; dot = path.rfind('.', dot - 1)) {
    const FieldInfo* above = find_field(build_fields(), path.substr(0, dot));
    if (above && above->station != Station::inherited) return above->station;
    if (dot == 0) break;
  }
  return Station::bench;
}

class Walker {
 public:
  Walker(const Build& build, const WrittenUnits& units) : build_(build), units_(units) {
    each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) { order_.emplace(leaf.path, order_.size()); });
  }

  /// False where the build has no such figure: it is to be told first.
  bool add(const NextMeasure& n, const Proof& proof) {
    const FieldInfo* field = find_field(build_fields(), n.path);
    const bool name = field && (field->type == FieldType::text || field->type == FieldType::names);
    if (!field || name || !stands_in_build(n.path)) return false;
    ToMeasure t = figure(n.path, *field);
    t.finding = n.finding, t.decides = n.decides, t.worst = n.worst;
    const auto at =
        std::find_if(proof.findings.begin(), proof.findings.end(), [&](auto& f) { return f.id == n.finding; });
    if (at != proof.findings.end()) t.caution = at->caution;
    add(std::move(t));
    return true;
  }
  void add_stand_in(const Leaf& leaf) {
    if (!on_it_.contains(leaf.path)) add(figure(leaf.path, *leaf.field));
  }

  std::vector<ToMeasure> take() {
    const auto rank = [&](const ToMeasure& t) {
      const auto at = order_.find(t.path);
      return std::tuple(t.station, at == order_.end() ? order_.size() : at->second, t.path);
    };
    std::sort(all_.begin(), all_.end(), [&](auto& a, auto& b) { return rank(a) < rank(b); });
    return std::move(all_);
  }

 private:
  /// A path through the entries the build has; an optional group may be missing, an entry of a list may not.
  bool stands_in_build(std::string_view path) const {
    if (order_.contains(path)) return true;
    const auto dot = path.rfind('.');
    if (dot == std::string_view::npos) return false;
    const FieldInfo* group = find_field(build_fields(), path.substr(0, dot));
    return group && group->type == FieldType::group && group->access.optional;
  }

  ToMeasure figure(const std::string& path, const FieldInfo& field) const {
    const Tool tool = tool_of(field);
    return {.path = path, .field = &field, .station = station_of(path, field, tool), .tool = tool, .now = now(path)};
  }

  std::string now(const std::string& path) const {
    const Leaf leaf = find_leaf(build_fields(), static_cast<const void*>(&build_), path);
    if (!leaf.field || !has_value(*leaf.field, leaf.owner)) return {};
    const auto evidence = build_.evidence.find(path);
    const std::string from = evidence == build_.evidence.end() ? "" : evidence_words(evidence->second);
    if (!leaf.field->access.get) return from;
    const std::string_view unit =
        has_unit(*leaf.field) ? units_.of(*leaf.field->kind, unit_of(*leaf.field)) : std::string_view();
    return figure_words(*leaf.field, *leaf.field->access.get(leaf.owner), unit) + (from.empty() ? "" : ", " + from);
  }

  void add(ToMeasure t) {
    on_it_.insert(t.path);
    all_.push_back(std::move(t));
  }

  const Build& build_;
  const WrittenUnits& units_;
  std::map<std::string, std::size_t, std::less<>> order_;
  std::set<std::string, std::less<>> on_it_;
  std::vector<ToMeasure> all_;
};

/// Systems whose figures, over the ports, weigh on something that is unproven. A rule on a system's own figures names
/// what it lacks by itself.
std::set<std::string, std::less<>> weigh_on_unproven(const Car& car, const Proof& proof) {
  std::set<std::string_view> unproven;
  for (auto& f : proof.findings)
    if (f.state == State::unproven) unproven.insert(requirement_of(f.id));
  std::set<std::string, std::less<>> weigh;
  for (auto& s : car.systems())
    for (auto* r : requirements_fed_by(car, s))
      if (unproven.contains(r->id)) weigh.insert(std::string(s.key));
  return weigh;
}

std::string_view system_of(std::string_view path) { return path.substr(0, path.find('.')); }

}  // namespace

std::string_view requirement_of(std::string_view finding) { return finding.substr(0, finding.find_first_of("[@")); }

Walk walk_round(const Build& build, const Car& car, const Proof& proof, const WrittenUnits& units) {
  Walk walk{.undescribed = proof.left_out};
  Walker walker(build, units);
  for (auto& n : proof.next)
    if (!walker.add(n, proof)) walk.to_tell.push_back(n.path);
  const auto weigh = weigh_on_unproven(car, proof);
  each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) {
    const auto e = build.evidence.find(leaf.path);
    const bool stands_in = e != build.evidence.end() && e->second.source == Source::typical && !e->second.defaulted &&
                           e->second.part.empty();
    if (stands_in && weigh.contains(system_of(leaf.path))) walker.add_stand_in(leaf);
  });
  walk.figures = walker.take();
  return walk;
}

std::string to_within(const FieldInfo& f) {
  const bool reading = f.type == FieldType::quantity || f.type == FieldType::number || f.type == FieldType::curve;
  if (!reading || tool_of(f) == Tool::eye) return {};
  const std::string spread = spread_words(f, Source::measured);
  return spread == "exact" ? "" : spread;
}

std::span<const Caution> cautions_at(Station station) {
  static constexpr Caution standing[] = {Caution::unintended_motion};
  static constexpr Caution moves[] = {Caution::unintended_motion, Caution::lift};
  static constexpr Caution electrics[] = {Caution::battery_gas, Caution::electrical_fire};
  static constexpr Caution front[] = {Caution::fans_start, Caution::belts_pulleys, Caution::hot_coolant};
  static constexpr Caution bay[] = {Caution::hot_coolant};
  static constexpr Caution wheels[] = {Caution::lift, Caution::old_linings};
  static constexpr Caution under[] = {Caution::lift, Caution::fuel_fire};
  static constexpr Caution tail[] = {Caution::fuel_fire, Caution::lift};
  static constexpr Caution running[] = {Caution::carbon_monoxide, Caution::unintended_motion, Caution::belts_pulleys,
                                        Caution::fans_start, Caution::hot_coolant};
  switch (station) {
    case Station::before_all:
      return moves;
    case Station::standing:
    case Station::seat:
      return standing;
    case Station::electrics:
      return electrics;
    case Station::front:
      return front;
    case Station::engine_bay:
      return bay;
    case Station::wheels_off:
      return wheels;
    case Station::underneath:
      return under;
    case Station::tail:
      return tail;
    case Station::running:
      return running;
    default:
      return {};
  }
}

}  // namespace sw
