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

std::vector<std::string_view> requirements_fed_by(const Car& car, const SystemOf& origin) {
  const Ports ports = reached_from(origin, car.systems());
  std::vector<std::string_view> ids;
  for (auto& s : car.systems())
    for (auto& r : s.requirements)
      if (reads(r.needs, ports)) ids.push_back(r.id);
  return ids;
}

Touched::Touched(const Car& car, const DutySet& set, const std::vector<bool>& wanted, std::size_t first)
    : wanted_(wanted) {
  for (auto& origin : car.systems()) {
    const Ports ports = reached_from(origin, car.systems());
    std::vector<bool> duties(set.courses.size(), false);
    if (first < duties.size()) duties[first] = true;
    for (auto& s : car.systems())
      for (auto& r : s.requirements) {
        if (s.key != origin.key && !reads(r.needs, ports)) continue;
        for (std::size_t d = 0; d < duties.size(); ++d)
          if (wanted[d] && looks_at(r, set.courses[d].key, *set.courses[d].duty)) duties[d] = true;
      }
    by_system_[std::string(origin.key)] = std::move(duties);
  }
}

const std::vector<bool>& Touched::by(std::string_view path) const {
  const auto at = by_system_.find(path.substr(0, path.find('.')));
  return at == by_system_.end() ? wanted_ : at->second;
}

}  // namespace sw
