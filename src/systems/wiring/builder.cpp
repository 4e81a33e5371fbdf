#include "systems/wiring/builder.hpp"

#include "systems/wiring/laid.hpp"

namespace sw::wiring {

Builder::Builder(Model& m, Resolver& r) : m_(m), r_(r) {
  nodes_["ground"] = dc::ground;
  m_.node_names.push_back("ground");
}

dc::NodeIndex Builder::node(const std::string& name) {
  auto it = nodes_.find(name);
  if (it != nodes_.end()) return it->second;
  if (m_.network.node_count == dc::most_nodes) {
    r_.fault_at("wiring.run",
                "at most " + std::to_string(dc::most_nodes) + " nodes can be joined; \"" + name + "\" is one too many");
    return dc::ground;
  }
  m_.node_names.push_back(name);
  return nodes_[name] = m_.network.add_node();
}

std::string Builder::meant(const std::string& name) const {
  std::vector<std::string_view> others;
  for (auto& [n, index] : nodes_)
    if (n != name) others.push_back(n);
  const auto near = nearest(name, others);
  return near.empty() ? "" : "did you mean \"" + std::string(near) + "\"?";
}

dc::NodeIndex Builder::known(const std::string& given, const char* usual, const void* member) {
  const std::string name = given.empty() ? usual : given;
  // A run that could not be read may be the one that reaches it.
  if (!joined(name) && !given.empty() && name != exciter && !r_.spoilt("wiring.run") && !r_.spoilt("wiring.switch"))
    r_.fault(member, "no run reaches a node \"" + name + "\"", meant(name));
  return node(name);
}

dc::NodeIndex Builder::shared(const std::string& name, const void* member) {
  const auto at = node(name);
  shared_.push_back({at, name, member});
  return at;
}

void Builder::check_shared() {
  for (auto list : {"wiring.run", "wiring.switch", "wiring.load", "wiring.fans"})
    if (r_.spoilt(list)) return;
  for (auto& s : shared_) {
    int ends = 0;
    for (auto& b : m_.network.all()) ends += (b.from == s.at) + (b.to == s.at);
    if (ends > 1 || s.at == dc::ground) continue;
    r_.fault(s.member, "nothing else reaches the node \"" + s.name + "\"", meant(s.name));
  }
}

std::size_t Builder::add(const dc::Branch& b) {
  // One is kept for what a fault adds (faults.cpp).
  if (m_.network.branch_count + 1 < dc::most_branches) return m_.network.add(b);
  r_.fault_at("wiring", "at most " + std::to_string(dc::most_branches - 1) + " runs, switches and loads together");
  return 0;
}

Conductor Builder::conductor(const std::string& place, const Wire& w, const std::optional<Resistance>& measured,
                             std::optional<double> usual_ohm) {
  Conductor c{.place = place};
  if (w.gauge) {
    c.sized = true;
    c.area_m2 = w.gauge->si;
    c.laid = laid(w, r_);
    c.ampacity_a = ampacity(c).current_a;
  } else {
    c.gauge_path = r_.path_of(&w.gauge);
  }
  c.unfused = w.unfused.value_or(false);
  if (c.unfused && w.fuse) r_.fault(&w.unfused, "a fuse is given and said not to be there", "take one of the two out");
  if (w.fuse) {
    c.fused = true;
    c.fuse_a = w.fuse->si;
  } else {
    c.fuse_path = r_.path_of(&w.fuse);
  }
  if (measured)
    c.resistance_ohm = measured->si;
  else if (!w.gauge && usual_ohm)
    c.resistance_ohm = *usual_ohm;
  else
    c.resistance_ohm =
        ohm_per_m(w.zone.value_or(Zone::engine_bay), r_.need(w.gauge)) * r_.need(w.length) + r_.get(w.joints, 0);
  if (!measured) {
    c.length_m = r_.get(w.length, 0);
    c.joints_ohm = r_.get(w.joints, 0);
  }
  return c;
}

}  // namespace sw::wiring
