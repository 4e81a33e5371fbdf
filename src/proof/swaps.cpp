#include "proof/swaps.hpp"

#include <algorithm>
#include <set>

#include "document/shelf.hpp"
#include "field/words.hpp"
#include "proof/changed.hpp"

namespace sw {
namespace {

/// A place a part of the shelf can fill, and what stands there now.
struct Socket {
  std::string path;
  std::string_view category;
  std::string part;
};

/// Whether a figure is the part's own and goes out with it.
bool is_the_parts(const Evidence& e) {
  return e.defaulted || !e.part.empty() || (e.source != Source::stated && e.source != Source::chosen);
}

/// The groups of the build that hold figures somebody gave and that the shelf can fill.
std::vector<Socket> sockets(const Build& build) {
  std::vector<Socket> all;
  for (auto& [path, evidence] : build.evidence) {
    if (evidence.defaulted) continue;
    for (auto dot = path.find('.'); dot != std::string::npos; dot = path.find('.', dot + 1)) {
      std::string group = path.substr(0, dot);
      auto* f = find_field(build_fields(), group);
      // An entry of a list is filled, not the list; find_field names the list for both.
      const auto above = group.rfind('.');
      auto* list = above == std::string::npos ? nullptr : find_field(build_fields(), group.substr(0, above));
      if (!f) f = list;
      if (!f || f->part.empty() || (f->type == FieldType::list && f != list)) continue;
      auto at = std::find_if(all.begin(), all.end(), [&](auto& s) { return s.path == group; });
      if (at == all.end()) at = all.insert(all.end(), {group, f->part, {}});
      if (!evidence.part.empty()) at->part = evidence.part;
    }
  }
  return all;
}

std::optional<double> price_of(const Node& part) {
  auto* price = part.find("price");
  const bool number = price && (price->type == Node::Type::integer || price->type == Node::Type::real);
  return number ? std::optional(price->number) : std::nullopt;
}

/// Leaves of the group that the build gives itself and the part stands in place of.
std::vector<std::string> own_keys(const Build& build, const Build& fitted, const std::string& group) {
  std::vector<std::string> keys;
  const std::string front = group + ".";
  each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) {
    if (!leaf.path.starts_with(front)) return;
    const auto own = build.evidence.find(leaf.path), now = fitted.evidence.find(leaf.path);
    if (own == build.evidence.end() || own->second.defaulted || !own->second.part.empty()) return;
    const bool gone = now == fitted.evidence.end() || now->second.defaulted;
    if (!gone && now->second.part.empty()) return;  // the part has none: the shop's own stays
    const bool curve = leaf.field->type == FieldType::curve;
    if (!gone && !curve && value_at(build, leaf.path) == value_at(fitted, leaf.path) &&
        own->second.half_width == now->second.half_width)
      return;
    keys.push_back(leaf.path.substr(front.size()));
  });
  return keys;
}

/// Electric or turned by the belt: the other is not another part but another installation.
bool other_kind(const Build& build, const Build& fitted, const std::string& group) {
  return value_at(build, group + ".drive") != value_at(fitted, group + ".drive");
}

}  // namespace

std::string words(const Swap& s) {
  std::string text = s.part + " as " + s.group;
  for (std::size_t i = 0; i < s.in_place_of.size(); ++i)
    text += (i == 0 ? " in place of its own " : i + 1 < s.in_place_of.size() ? ", " : " and ") + s.in_place_of[i];
  return text;
}

bool fit(Build& build, const std::string& group, const std::string& name, const Node& part) {
  std::vector<std::string> gone;
  for (auto& [path, evidence] : build.evidence)
    if (path.starts_with(group + ".") && is_the_parts(evidence)) gone.push_back(path);
  for (auto& path : gone) {
    if (auto leaf = find_leaf(build_fields(), &build, path); leaf.field) clear_leaf(*leaf.field, leaf.owner);
    build.evidence.erase(path);
  }
  Node table = part;
  mark_part(table, name);
  std::erase_if(table.entries, [&](auto& e) {
    return std::find(shop_keys.begin(), shop_keys.end(), e.key) != shop_keys.end() &&
           !find_field(build_fields(), below(group, e.key));
  });
  for (std::size_t end = group.size(); end != std::string::npos;) {
    const auto dot = group.rfind('.', end - 1);
    const std::size_t from = dot == std::string::npos ? 0 : dot + 1;
    Node outer;
    outer.entries.push_back({group.substr(from, end - from), {}, std::move(table)});
    table = std::move(outer);
    end = dot;
  }
  Diagnostics faults;
  read(table, build_fields(), &build, "", build.evidence, faults, Source::data_sheet);
  fill_defaults(build_fields(), &build, "", build.evidence);
  return !faults.any_fault();
}

std::vector<Swap> swaps(const Build& build, const DutySet& set, const std::vector<bool>& wanted) {
  std::vector<Swap> all;
  if (!build.shelf) return all;
  for (auto& socket : sockets(build)) {
    std::set<std::string> tried = {socket.part};
    for (auto& shelf : *build.shelf) {
      auto* parts = shelf.find(socket.category);
      if (!parts || parts->type != Node::Type::table) continue;
      for (auto& [name, place, part] : parts->entries) {
        if (part.type != Node::Type::table || !tried.insert(name).second) continue;
        Build changed = build;
        if (!fit(changed, socket.path, name, part) || other_kind(build, changed, socket.path)) continue;
        auto judged = judge_changed(changed, set, wanted);
        if (!judged) continue;
        auto own = own_keys(build, changed, socket.path);
        all.push_back(
            {socket.path, name, price_of(part), std::move(own), &part, std::move(changed), std::move(*judged)});
      }
    }
  }
  std::stable_sort(all.begin(), all.end(),
                   [](auto& a, auto& b) { return a.price.value_or(1e300) < b.price.value_or(1e300); });
  return all;
}

}  // namespace sw
