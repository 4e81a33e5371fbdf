#include "field/spoilt.hpp"

#include <algorithm>

#include "field/walk.hpp"
#include "field/words.hpp"

namespace sw {
namespace {

std::string_view take_step(std::string_view& path) {
  const auto dot = path.find('.');
  const auto step = path.substr(0, dot);
  path = dot == std::string_view::npos ? std::string_view{} : path.substr(dot + 1);
  return step;
}

/// Step by step the same as far as both go: then one holds the other.
bool meet(std::string_view a, std::string_view b) {
  while (!a.empty() && !b.empty()) {
    const auto x = take_step(a), y = take_step(b);
    if (x != y && x != "*" && y != "*") return false;
  }
  return true;
}

std::string with_stars(std::string path) {
  for (std::size_t at = 0; (at = path.find(".NAME", at)) != std::string::npos;) path.replace(at, 5, ".*");
  return path;
}

/// What an unknown key may have been meant to give: its neighbour of nearly the same name, all that a part would have
/// given, or what stands under this key elsewhere.
std::vector<std::string> meant_by(std::span<const FieldInfo> fields, const std::string& path) {
  const auto dot = path.rfind('.');
  const std::string holder = dot == std::string::npos ? std::string() : path.substr(0, dot);
  const std::string_view key =
      dot == std::string::npos ? std::string_view(path) : std::string_view(path).substr(dot + 1);
  if (key == "part") return {holder};
  const FieldInfo* group = holder.empty() ? nullptr : find_field(fields, holder);
  if (!holder.empty() && !(group && group->access.children)) return {};
  std::vector<std::string_view> keys;
  for (auto& f : group ? group->access.children() : fields) keys.push_back(f.key);
  if (const auto near = nearest(key, keys); !near.empty()) return {below(holder, near)};
  std::vector<std::string> all;
  for (auto& elsewhere : paths_of(fields, key)) all.push_back(with_stars(elsewhere));
  return all;
}

}  // namespace

Spoilt::Spoilt(std::span<const FieldInfo> fields, const Diagnostics& faults) {
  for (auto& d : faults.all()) {
    if (d.severity != Severity::fault || d.path.empty()) continue;
    paths_.push_back(d.path);
    if (find_field(fields, d.path)) continue;
    for (auto& path : meant_by(fields, d.path)) paths_.push_back(path);
  }
}

bool Spoilt::at(std::string_view path) const {
  return std::any_of(paths_.begin(), paths_.end(), [&](auto& p) { return meet(p, path); });
}

}  // namespace sw
