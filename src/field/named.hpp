#pragma once
// A list whose entries have names, so that paths stay put when lines move: `[wiring.run.fan_feed]`.
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace sw {

template <class T>
struct Named {
  std::vector<std::pair<std::string, T>> entries;  ///< in order of appearance

  const T* find(std::string_view name) const {
    for (auto& [n, value] : entries)
      if (n == name) return &value;
    return nullptr;
  }
  auto begin() const { return entries.begin(); }
  auto end() const { return entries.end(); }
  bool empty() const { return entries.empty(); }
  std::size_t size() const { return entries.size(); }
};

}  // namespace sw
