#include "proof/touched.hpp"

#include <algorithm>
#include <set>

#include "proof/judge.hpp"

namespace sw {
namespace {

using Ports = std::set<std::string_view>;

/// Adds what a block writes; true where something of it was new.
bool add(Ports& ports, const Block& b) {
  const std::size_t before = ports.size();
  for (auto& p : b.writes) ports.insert(p.name);
  for (auto& s : b.states) ports.insert(s.port.name);
  for (auto& s : b.switches) ports.insert(s.port.name);
  return ports.size() > before;
}

bool reads(std::span<const Port> needs, const Ports& ports) {
  return std::any_of(needs.begin(), needs.end(), [&](auto& p) { return ports.contains(p.name); });
}

/// Every port whose value can come of a system's figures.
Ports reached_from(const SystemOf& origin, const std::vector<SystemOf>& systems) {
  Ports ports;
  for (auto& b : origin.blocks) add(ports, b);
  for (bool grew = true; grew;) {
    grew = false;
    for (auto& s : systems)
      for (auto& b : s.blocks)
        if (reads(b.reads, ports)) grew |= add(ports, b);
  }
  return ports;
}

}  // namespace

std::set<const Requirement*> requirements_fed_by(const Car& car, const SystemOf& origin) {
  const Ports ports = reached_from(origin, car.systems());
  std::set<const Requirement*> fed;
  for (auto& s : car.systems())
    for (auto& r : s.requirements)
      if (reads(r.needs, ports)) fed.insert(&r);
  return fed;
}

Touched::Touched(const Car& car, const DutySet& set, const std::vector<bool>& wanted, std::size_t first) {
  for (auto& origin : car.systems()) {
    Reach reach{.duties = std::vector<bool>(set.courses.size(), false),
                .requirements = requirements_fed_by(car, origin)};
    for (auto& r : origin.requirements) reach.requirements.insert(&r);
    if (first < reach.duties.size()) reach.duties[first] = true;
    for (auto* r : reach.requirements)
      for (std::size_t d = 0; d < reach.duties.size(); ++d)
        if (wanted[d] && looks_at(*r, set.courses[d].key, *set.courses[d].duty)) reach.duties[d] = true;
    by_system_[std::string(origin.key)] = std::move(reach);
  }
}

const Touched::Reach* Touched::by(std::string_view path) const {
  const auto at = by_system_.find(path.substr(0, path.find('.')));
  return at == by_system_.end() ? nullptr : &at->second;
}

}  // namespace sw
