#include <algorithm>
#include <cmath>
#include <map>

#include "model/duty.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/laid.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

constexpr double regulation_ohm =
    0.001;  ///< fall of the regulated voltage with current: 0.1 V over 100 A (common practice)

/// Current goes with volts to this power. A filament's: Fink and Beaty, Standard Handbook for Electrical Engineers,
/// 11th ed. (1978), p. 22-8, as quoted by an encyclopedia (Lamp rerating). A fan or pump motor's lies between a torque
/// that stays (0) and one that goes with the square of a speed that goes with the volts (2): common practice.
constexpr double lamp_power = 0.55, motor_power = 1.5;
/// Share of its rated volts down to which a load keeps its constant current or power (common practice for regulated
/// electronics), and of the nominal volts for the starter, whose current the engine's torque holds.
constexpr double current_kept_from = 0.45, power_kept_from = 0.6, starter_kept_from = 0.4;

/// Share of the nominal volts that closes any sound relay (common practice: 8 V of 12 V).
constexpr double pull_in_share = 2.0 / 3;
/// Current of a cold filament over that of a hot one (common practice: 10 to 15).
constexpr double cold_filament = 10;
/// Until the inrush has fallen to half: a filament warms, a motor turns (common practice).
constexpr double filament_s = 0.01, spin_up_s = 0.1;
/// The machine's own ways to its exciter: the three small diodes that feed the field once it turns, and the winding
/// itself while it stands (common practice).
constexpr double trio_ohm = 0.2, field_ohm = 4;

/// Feed and ground of a load whose wire nobody gave: one wire hardly moves the bus, and its own findings wait for the
/// gauge (common practice: 2 m each way of 14 AWG with its joints).
constexpr double usual_feed_ohm = 0.04;

/// Node of the alternator's exciter. The machine itself holds it at its own volts once it turns; loads reach it.
constexpr std::string_view exciter = "exciter";

class Builder {
 public:
  Builder(Model& m, Resolver& r) : m_(m), r_(r) {
    nodes_["ground"] = dc::ground;
    m_.node_names.push_back("ground");
  }

  dc::NodeIndex node(const std::string& name) {
    auto it = nodes_.find(name);
    if (it != nodes_.end()) return it->second;
    if (m_.network.node_count == dc::most_nodes) {
      r_.fault_at("wiring.run", "at most " + std::to_string(dc::most_nodes) + " nodes can be joined; \"" + name +
                                    "\" is one too many");
      return dc::ground;
    }
    m_.node_names.push_back(name);
    return nodes_[name] = m_.network.add_node();
  }
  bool joined(const std::string& name) const { return nodes_.contains(name); }
  /// The node a load hangs on: one that a run reaches, else a fault at `member`.
  dc::NodeIndex known(const std::string& given, const char* usual, const void* member) {
    const std::string name = given.empty() ? usual : given;
    // A run that could not be read may be the one that reaches it.
    if (!joined(name) && !given.empty() && name != exciter && !r_.spoilt("wiring.run") && !r_.spoilt("wiring.switch")) {
      std::vector<std::string_view> all;
      for (auto& [n, index] : nodes_) all.push_back(n);
      const auto near = nearest(name, all);
      r_.fault(member, "no run reaches a node \"" + name + "\"",
               near.empty() ? "" : "did you mean \"" + std::string(near) + "\"?");
    }
    return node(name);
  }

  /// The node a switch hangs on, which something else must reach as well: a mistyped name would be a node of its own.
  dc::NodeIndex shared(const std::string& name, const void* member) {
    const auto at = node(name);
    shared_.push_back({at, name, member});
    return at;
  }
  void check_shared() {
    for (auto list : {"wiring.run", "wiring.switch", "wiring.load", "wiring.fans"})
      if (r_.spoilt(list)) return;
    for (auto& s : shared_) {
      int ends = 0;
      for (auto& b : m_.network.all()) ends += (b.from == s.at) + (b.to == s.at);
      if (ends > 1 || s.at == dc::ground) continue;
      std::vector<std::string_view> others;
      for (auto& [n, index] : nodes_)
        if (n != s.name) others.push_back(n);
      const auto near = nearest(s.name, others);
      r_.fault(s.member, "nothing else reaches the node \"" + s.name + "\"",
               near.empty() ? "" : "did you mean \"" + std::string(near) + "\"?");
    }
  }

  std::size_t add(const dc::Branch& b) {
    // One is kept for what a fault adds (faults.cpp).
    if (m_.network.branch_count + 1 < dc::most_branches) return m_.network.add(b);
    r_.fault_at("wiring", "at most " + std::to_string(dc::most_branches - 1) + " runs, switches and loads together");
    return 0;
  }

  /// Resistance from gauge, length and joints at the zone's temperature, or as measured; without a gauge `usual_ohm`,
  /// where one is allowed.
  Conductor conductor(const std::string& place, const Wire& w, const std::optional<Resistance>& measured,
                      std::optional<double> usual_ohm = std::nullopt) {
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
    if (c.unfused && w.fuse)
      r_.fault(&w.unfused, "a fuse is given and said not to be there", "take one of the two out");
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

 private:
  Model& m_;
  Resolver& r_;
  std::map<std::string, dc::NodeIndex> nodes_;
  struct Shared {
    dc::NodeIndex at;
    std::string name;
    const void* member;
  };
  std::vector<Shared> shared_;
};

/// `member` is the list of lines itself, `path` where it is missing.
Logic logic_of(const std::vector<std::string>& lines, const std::string& path, Resolver& r) {
  auto read = read_logic(lines);
  for (auto& problem : read.problems) r.fault(&lines, problem.what, problem.hint);
  if (lines.empty()) r.lacks(path);
  return std::move(read.logic);
}

/// Both ends named; else what is missing is told.
bool has_ends(const std::string& from, const std::string& to, const std::string& path, Resolver& r) {
  if (from.empty()) r.lacks(path + ".from");
  if (to.empty()) r.lacks(path + ".to");
  return !from.empty() && !to.empty();
}

/// What stands for a diode in a run, besides its wire: a silicon rectifier of some amperes (common practice).
constexpr physics::dc::Diode run_diode{};

void add_runs(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, run] : in.run) {
    if (!has_ends(run.from, run.to, "wiring.run." + name, r)) continue;
    Conductor c = b.conductor(name, run.wire, run.resistance);
    c.limit_a = r.get(run.limit, 0);
    c.stray = run.stray.value_or(false);
    const double ohm = std::max(c.resistance_ohm, 1e-5);
    dc::Branch branch{.from = b.node(run.from), .to = b.node(run.to), .law = dc::Resistor{ohm}};
    if (run.one_way.value_or(false)) branch.law = run_diode, branch.series_ohm = ohm;
    c.branch = b.add(branch);
    m.runs.push_back(std::move(c));
  }
}

void add_switches(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, given] : in.switches) {
    const std::string path = "wiring.switch." + name;
    if (!has_ends(given.from, given.to, path, r)) continue;
    SwitchModel s{.place = name, .closed = logic_of(given.closed, path + ".closed", r)};
    s.limit_a = r.get(given.limit, 0);
    s.limit_path = r.path_of(&given.limit);
    s.pull_in_v = r.get(given.pull_in, pull_in_share * m.nominal_v);
    s.branch = b.add({.from = b.shared(given.from, &given.from),
                      .to = b.shared(given.to, &given.to),
                      .law = dc::Resistor{std::max(r.need(given.contact), 1e-4)}});
    if (!given.coil_from.empty())
      s.coil = b.add({.from = b.shared(given.coil_from, &given.coil_from),
                      .to = given.coil_to.empty() ? b.node("body") : b.shared(given.coil_to, &given.coil_to),
                      .law = dc::Resistor{r.need(given.coil)}});
    else if (!given.coil_to.empty())
      r.fault(&given.coil_to, "a coil that is grounded and fed from nowhere", "say coil_from, or take coil_to out");
    m.switches.push_back(std::move(s));
  }
}

void add_loads(const Input& in, Model& m, Builder& b, Resolver& r) {
  for (auto& [name, load] : in.load) {
    LoadModel l;
    l.when = logic_of(load.when, "wiring.load." + name + ".when", r);
    l.rated_a = r.need(load.current);
    l.wire = b.conductor(name, load.wire, std::nullopt, usual_feed_ohm);
    l.rated_v = r.get(load.at_voltage, r.usual_rated_v());
    l.share = r.get(load.share, 1);
    l.least_v = r.get(load.least_voltage, 0);
    l.behaviour = load.behaviour.value_or(Behaviour::resistance);
    l.stall_a = r.get(load.stall, 0);
    l.inrush_a = r.get(load.inrush, l.stall_a > 0                    ? l.stall_a
                                    : l.behaviour == Behaviour::lamp ? cold_filament * l.rated_a
                                                                     : 0);
    l.inrush_s = r.get(load.inrush_time, l.behaviour == Behaviour::lamp ? filament_s : spin_up_s);
    const double a = l.rated_a * l.share, v = l.rated_v;
    dc::Branch branch{.from = b.known(load.from, "bus", &load.from),
                      .to = b.known(load.to, "body", &load.to),
                      .series_ohm = l.wire.resistance_ohm};
    switch (l.behaviour) {
      case Behaviour::current:
        branch.law = dc::ConstantCurrent{a, current_kept_from * v};
        break;
      case Behaviour::resistance:
        branch.law = dc::PowerLaw{a, v, 1.0};
        break;
      case Behaviour::power:
        branch.law = dc::ConstantPower{a * v, power_kept_from * v};
        break;
      case Behaviour::motor:
        branch.law = dc::PowerLaw{a, v, motor_power};
        break;
      case Behaviour::lamp:
        branch.law = dc::PowerLaw{a, v, lamp_power};
        break;
    }
    l.wire.branch = b.add(branch);
    if (load.to == exciter) m.exciter_feeds.push_back(m.loads.size());
    m.loads.push_back(std::move(l));
  }
}

/// Where a load reaches the exciter the machine holds it at its own volts while it turns.
void add_exciter(Model& m, Builder& b) {
  if (!b.joined(std::string(exciter))) return;
  const auto node = b.node(std::string(exciter));
  m.to_exciter = b.add({.from = m.n_alternator, .to = node, .closed = false, .law = dc::Resistor{trio_ohm}});
  m.field = b.add({.from = node, .to = m.n_case, .law = dc::Resistor{field_ohm}});
}

/// Findings are told apart by the name of the run, switch or load they stand for.
void check_names(const Input& in, Model& m, Resolver& r) {
  auto twice = [&](const std::string& path, const std::string& name, const char* as) {
    m.named_twice = true;
    r.fault_at(path, "\"" + name + "\" is the name of " + as + " already",
               "findings are told apart by it: take another");
  };
  for (auto& [name, load] : in.load)
    if (in.run.find(name) || name == "fans")
      twice("wiring.load." + name, name, name == "fans" ? "the fan feed" : "a run");
  for (auto& [name, contact] : in.switches)
    if (in.run.find(name) || in.load.find(name) || name == "fans")
      twice("wiring.switch." + name, name, name == "fans" ? "the fan feed" : in.run.find(name) ? "a run" : "a load");
  if (in.run.find("fans")) twice("wiring.run.fans", "fans", "the fan feed");
}

void add_sources(const Input& in, Model& m, Builder& b) {
  m.battery = b.add({.from = dc::ground, .to = m.n_battery, .law = dc::Battery{12.6, 0.01}});
  dc::Branch machine{.from = m.n_case, .to = m.n_alternator, .law = dc::RegulatedSource{14.0, 0.0}};
  const Sense sense = in.sense.value_or(Sense::own);
  machine.sense_plus = sense == Sense::own ? m.n_alternator : sense == Sense::bus ? m.n_bus : m.n_battery;
  machine.sense_minus = sense == Sense::own ? m.n_case : dc::ground;
  m.alternator = b.add(machine);
  m.starter = b.add({.from = m.n_starter,
                     .to = m.n_block,
                     .closed = false,
                     .law = dc::ConstantCurrent{0, starter_kept_from * m.nominal_v}});
}

/// The runs that carry the charging current: those on a shortest path from the alternator to the battery.
void find_charge_path(Model& m) {
  std::vector<int> via(dc::most_nodes, -1);
  std::vector<dc::NodeIndex> queue = {m.n_alternator};
  for (std::size_t head = 0; head < queue.size(); ++head)
    for (std::size_t i = 0; i < m.runs.size(); ++i) {
      auto& branch = m.network.branches[m.runs[i].branch];
      for (auto [from, to] : {std::pair{branch.from, branch.to}, std::pair{branch.to, branch.from}})
        if (from == queue[head] && to != m.n_alternator && via[to] < 0 && to != dc::ground) {
          via[to] = static_cast<int>(i);
          queue.push_back(to);
        }
    }
  for (dc::NodeIndex at = m.n_battery; at != m.n_alternator && via[at] >= 0;) {
    const auto i = static_cast<std::size_t>(via[at]);
    m.charge_path.push_back(i);
    auto& branch = m.network.branches[m.runs[i].branch];
    at = branch.to == at ? branch.from : branch.to;
  }
  std::reverse(m.charge_path.begin(), m.charge_path.end());
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.nominal_v = r.nominal_v;
  Builder b(m, r);
  check_names(in, m, r);
  add_runs(in, m, b, r);
  add_switches(in, m, b, r);
  for (auto name : {"battery", "alternator", "block", "bus", "body", "starter"})
    if (!b.joined(name)) r.lacks(std::string("wiring.run: a run that reaches \"") + name + "\"");
  m.n_battery = b.node("battery");
  m.n_alternator = b.node("alternator");
  m.n_block = b.node("block");
  m.n_bus = b.node("bus");
  m.n_body = b.node("body");
  m.n_dash = b.joined("dash") ? b.node("dash") : m.n_body;
  m.n_support = b.joined("support") ? b.node("support") : m.n_body;
  m.n_starter = b.node("starter");
  m.n_case = b.joined("case") ? b.node("case") : m.n_block;
  add_sources(in, m, b);
  // No electric fans, no feed needed: the wire is judged only where something is given or asked of it.
  auto& f = in.fans;
  if (f.wire.gauge) {
    m.fan_feed = b.conductor("fans", f.wire, std::nullopt);
  } else {
    m.fan_feed.place = "fans";
    m.fan_feed.gauge_path = r.path_of(&f.wire.gauge);
    m.fan_feed.fuse_path = r.path_of(&f.wire.fuse);
    m.fan_feed.unfused = f.wire.unfused.value_or(false);
    m.fan_feed.resistance_ohm = r.need(f.resistance);
  }
  m.fans = b.add({.from = b.known(f.from, "bus", &f.from),
                  .to = b.known(f.to, "body", &f.to),
                  .series_ohm = m.fan_feed.resistance_ohm,
                  .law = dc::PowerLaw{1, 13.5, 1}});
  m.fan_feed.branch = m.fans;
  add_loads(in, m, b, r);
  add_exciter(m, b);
  b.check_shared();
  m.fuel_pump = load_named(m, "fuel_pump");
  m.ignition = load_named(m, "ignition");
  m.cluster = load_named(m, "cluster");
  find_charge_path(m);
  if (m.charge_path.empty()) r.lacks("wiring.run: a way from \"alternator\" to \"battery\"");
  m.pump_fed = pump_fed(m);
  return m;
}

std::optional<std::size_t> load_named(const Model& m, std::string_view name) {
  for (std::size_t i = 0; i < m.loads.size(); ++i)
    if (m.loads[i].wire.place == name) return i;
  return std::nullopt;
}

std::string trouble(const Model& m, const dc::Summary& s) {
  if (s.usable()) return {};
  std::string text = "the car's electrical network (wiring) has no solution: " + std::string(s.reason);
  if (s.outcome == dc::Outcome::not_converged)
    return text + "; " + print(s.worst_residual_a, kind::current, "A", 3) + " are left over at " +
           m.node_names.at(s.worst_node);
  const auto named = [&](const Conductor& c) {
    if (s.worst_branch >= 0 && c.branch == static_cast<std::size_t>(s.worst_branch)) text += ", of " + c.place;
  };
  for (auto& c : m.runs) named(c);
  for (auto& l : m.loads) named(l.wire);
  for (auto& sw : m.switches)
    if (s.worst_branch >= 0 && sw.branch == static_cast<std::size_t>(s.worst_branch)) text += ", of " + sw.place;
  named(m.fan_feed);
  return text;
}

void set_feed(const Model& m, const Feed& feed, dc::Network& n) {
  n.branches[m.battery].law = dc::Battery{feed.emf_v, feed.battery_ohm};
  n.branches[m.alternator].law = dc::RegulatedSource{feed.set_v, std::max(0.0, feed.alternator_a), regulation_ohm};
  n.branches[m.alternator].closed = feed.alternator_a > 0;
  n.branches[m.starter].law = dc::ConstantCurrent{feed.starter_a, starter_kept_from * m.nominal_v};
  n.branches[m.starter].closed = feed.starter_a > 0;
  n.branches[m.fans].law = dc::PowerLaw{std::max(feed.fan_a, 1e-6), feed.fan_v, 1};
  n.branches[m.fans].closed = feed.fan_a > 0;
  for (auto& load : m.loads) n.branches[load.wire.branch].closed = load.when.holds(feed.state);
  for (auto& s : m.switches) {
    n.branches[s.branch].closed = s.closed.holds(feed.state);
    if (s.coil) n.branches[*s.coil].closed = n.branches[s.branch].closed;
  }
  if (!m.field) return;
  const bool gives = feed.alternator_a > 0;
  n.branches[*m.to_exciter].closed = gives;
  n.branches[*m.field].closed = !gives;
}

}  // namespace sw::wiring
