#pragma once
// The network as it is joined from what the build names: nodes by their names, conductors from gauge and length.
#include <map>

#include "systems/wiring/wiring.hpp"

namespace sw::wiring {

/// Node of the alternator's exciter. The machine itself holds it at its own volts once it turns; loads reach it.
inline constexpr std::string_view exciter = "exciter";

class Builder {
 public:
  Builder(Model& m, Resolver& r);

  /// The node of that name, a new one where there was none; one too many is a fault.
  dc::NodeIndex node(const std::string& name);
  bool joined(const std::string& name) const { return nodes_.contains(name); }
  /// The node a load hangs on: one that a run reaches, else a fault at `member`.
  dc::NodeIndex known(const std::string& given, const char* usual, const void* member);
  /// The node a switch hangs on, which something else must reach as well (check_shared): a mistyped name would be a
  /// node of its own.
  dc::NodeIndex shared(const std::string& name, const void* member);
  void check_shared();
  /// The index of the new branch; one too many is a fault.
  std::size_t add(const dc::Branch& b);
  /// Resistance from gauge, length and joints at the zone's temperature, or as measured; without a gauge `usual_ohm`,
  /// where one is allowed.
  Conductor conductor(const std::string& place, const Wire& w, const std::optional<Resistance>& measured,
                      std::optional<double> usual_ohm = std::nullopt);

 private:
  struct Shared {
    dc::NodeIndex at;
    std::string name;
    const void* member;
  };
  /// `did you mean "…"?` of the nodes there are, but for this one; empty where none is near.
  std::string meant(const std::string& name) const;

  Model& m_;
  Resolver& r_;
  std::map<std::string, dc::NodeIndex> nodes_;
  std::vector<Shared> shared_;
};

}  // namespace sw::wiring
