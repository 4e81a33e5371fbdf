#pragma once
// A figure that one entry of a list needs and the others do without: what is missing is noted beside the entry, so that
// each is judged by itself.
#include <string>
#include <vector>

#include "model/resolver.hpp"

namespace sw {

/// The SI value; where it is missing its path goes to `missing` and 0 is returned, which nobody reads then.
template <class T>
double needed(const std::optional<T>& member, std::vector<std::string>& missing, const Resolver& r) {
  if (!member) missing.push_back(r.path_of(&member));
  return r.get(member, 0);
}

}  // namespace sw
