#pragma once
// What a figure of a system can change: the requirements of its own system and those that read, over the graph of
// ports, something that comes of it, and the duties they are looked at in. Nothing else need be run or judged again
// when it is moved.
#include <map>
#include <set>
#include <string>
#include <vector>

#include "duty/duties.hpp"

namespace sw {

/// The requirements, of whatever system, that read a port whose value can come of the figures of `origin`.
std::set<const Requirement*> requirements_fed_by(const Car& car, const SystemOf& origin);

class Touched {
 public:
  struct Reach {
    std::vector<bool> duties;
    std::set<const Requirement*> requirements;  ///< its own and those fed by it
  };
  /// `wanted`: duties looked at. `first`: the one static rules read, always among those touched.
  Touched(const Car& car, const DutySet& set, const std::vector<bool>& wanted, std::size_t first);
  /// By the path of a figure; null where its system is not known: then anything may change.
  const Reach* by(std::string_view path) const;

 private:
  std::map<std::string, Reach, std::less<>> by_system_;
};

}  // namespace sw
