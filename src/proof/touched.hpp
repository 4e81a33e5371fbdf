#pragma once
// Which duties a figure of a system can change anything in: those of the requirements that read, over the graph of
// ports, something that comes of it. The others need not be run again when it is moved.
#include <map>
#include <string>
#include <vector>

#include "duty/duties.hpp"

namespace sw {

/// Ids of the requirements, of whatever system, that read a port whose value can come of the figures of `origin`.
std::vector<std::string_view> requirements_fed_by(const Car& car, const SystemOf& origin);

class Touched {
 public:
  /// `wanted`: duties looked at. `first`: the one static rules read, always among those touched.
  Touched(const Car& car, const DutySet& set, const std::vector<bool>& wanted, std::size_t first);
  /// By the path of a figure; all that is wanted where its system is not known.
  const std::vector<bool>& by(std::string_view path) const;

 private:
  std::vector<bool> wanted_;
  std::map<std::string, std::vector<bool>, std::less<>> by_system_;
};

}  // namespace sw
