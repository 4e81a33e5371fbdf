// Where each load is grounded: loads that lift the ground of the gauges or the metal the radiator touches are moved,
// and ground runs that lose too much are made thicker.
#include <algorithm>
#include <cmath>

#include "proof/trade_size.hpp"
#include "quantity/print.hpp"
#include "solve/list.hpp"
#include "solve/wire_load.hpp"
#include "systems/charging/checks.hpp"
#include "systems/cooling/checks.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"
#include "systems/wiring/states.hpp"

namespace sw {
namespace {

/// Volts between the gauges' ground and the block, where most senders are grounded (common practice: some 20 mV move a
/// needle by a hundredth of its scale); and a starter cable's share of what both may lose.
constexpr double dash_v = 0.02, one_way = 0.45;
constexpr double moves_from_a = 0.5;  ///< loads below that are left where they are
constexpr int most_rounds = 8;

struct Move {
  std::string path, name, was, to;
  double amps;
};

/// A load or the fans' feed that hangs on a ground node.
struct Hung {
  std::string path, name;
  const wiring::Conductor* wire;
  double share;
};
std::vector<Hung> hung_on(const wiring::Model& m, wiring::dc::NodeIndex node) {
  std::vector<Hung> all;
  for (auto& l : m.loads)
    if (m.network.branches[l.wire.branch].to == node)
      all.push_back({"wiring.load." + l.wire.place + ".to", l.wire.place, &l.wire, l.share});
  if (m.network.branches[m.fans].to == node) all.push_back({"wiring.fans.to", "fans", &m.fan_feed, 1});
  return all;
}

void put(Build& b, const std::string& path, const std::string& words) {
  const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&b), path);
  *leaf.field->access.text_to(leaf.owner) = words;
}
void put(Build& b, const std::string& path, double value) {
  const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&b), path);
  leaf.field->access.set(leaf.owner, value);
}

std::string volts(double v) { return print(v, kind::voltage, "V", 2); }

class Grounds {
 public:
  Grounds(const Build& build, const DutySet& set) : build_(build), tried_(build), set_(set) {}

  Solution solve() {
    Solution out;
    {
      const CarWires wires(tried_, set_);
      if (!wires.usable()) {
        out.trouble = "no duty comes through with the car as it is: streetwright check says why";
        return out;
      }
      out.trouble = adrift(wires.model());
      if (!out.trouble.empty()) return out;
      tell(wires, "before: ", out);
    }
    for (int round = 0; round < most_rounds; ++round) {
      const CarWires wires(tried_, set_);
      if (!move(wires) && !thicken(wires, out)) break;
      if (!out.trouble.empty()) return out;
    }
    tell(CarWires(tried_, set_), "then: ", out);
    for (auto& m : moves_) out.settings.push_back({.path = m.path, .words = m.to});
    for (auto& [path, area] : gauges_) out.settings.push_back({path, area});
    out.says = out.settings.empty() ? "Every ground stands within what it may: nothing to move." : says();
    return out;
  }

 private:
  /// The metal whose potential the coolant takes: the support, where it has a ground of its own and the core touches
  /// it.
  static bool coolant_counts(const Build& b, const wiring::Model& m) {
    return m.n_support != m.n_body && !std::get<cooling::Input>(b.inputs).radiator.isolated.value_or(false);
  }
  /// What keeps grounds from being moved about: block or body that no strap joins to the earthed post.
  static std::string adrift(const wiring::Model& m) {
    std::vector<bool> joined(m.network.node_count, false);
    joined[wiring::dc::ground] = true;
    for (bool grows = true; grows;) {
      grows = false;
      for (auto& c : m.runs) {
        auto& b = m.network.branches[c.branch];
        if (c.stray || joined[b.from] == joined[b.to]) continue;
        joined[b.from] = joined[b.to] = grows = true;
      }
    }
    for (auto [node, name] : {std::pair{m.n_block, "block"}, std::pair{m.n_body, "body"}})
      if (!joined[node])
        return std::string("no strap joins the ") + name +
               " to the battery's earthed post: its current goes through metal that is not meant to carry it. Fit a "
               "strap first";
    return {};
  }
  static double dash_of(const CarWires& w) {
    auto& m = w.model();
    return m.n_dash == m.n_body ? 0 : w.between_v(m.n_dash, m.n_block);
  }
  double coolant_of(const CarWires& w) const {
    auto& m = w.model();
    return coolant_counts(build_, m) ? w.between_v(m.n_support, m.n_block) : 0;
  }

  void tell(const CarWires& wires, const std::string& when, Solution& out) const {
    auto& m = wires.model();
    const auto line = [&](const char* what, double v) {
      out.because.push_back({.what = when + what, .value = v, .kind = &kind::voltage, .unit = "V"});
    };
    line("body above the battery's post", wires.node_v(m.n_body, false));
    line("block above it", wires.node_v(m.n_block, false));
    if (m.n_dash != m.n_body) line("dash against the block", wires.between_v(m.n_dash, m.n_block));
    if (m.n_support != m.n_body) line("support against the block", wires.between_v(m.n_support, m.n_block));
  }

  /// The load that lifts the dash or the support most, to where it does no harm: the body, or the block for what sits
  /// by the engine.
  bool move(const CarWires& wires) {
    auto& m = wires.model();
    if (dash_of(wires) > dash_v && move_from(wires, m.n_dash, "dash", "body")) return true;
    return coolant_of(wires) > cooling::potential::most_v && move_from(wires, m.n_support, "support", "block");
  }
  bool move_from(const CarWires& wires, wiring::dc::NodeIndex node, const char* was, const char* to) {
    Move most{.amps = moves_from_a};
    for (auto& h : hung_on(wires.model(), node)) {
      const double a = wires.load_of(*h.wire, h.share).running_a;
      // The gauges keep their own ground.
      if (h.name != "cluster" && a > most.amps) most = {h.path, h.name, was, to, a};
    }
    if (most.path.empty()) return false;
    put(tried_, most.path, most.to);
    moves_.push_back(std::move(most));
    return true;
  }

  /// The ground run that loses most over what it may, one gauge up.
  bool thicken(const CarWires& wires, Solution& out) {
    auto& m = wires.model();
    const double per_12 = m.nominal_v / 12;
    for (auto& c : m.runs) {
      auto& b = m.network.branches[c.branch];
      if (c.stray || !c.sized || c.length_m <= 0 || !wiring::is_ground(m, b.from) || !wiring::is_ground(m, b.to))
        continue;
      const WireLoad load = wires.load_of(c);
      if (load.running_a * c.resistance_ohm <= charging::ground_drop_v * per_12 &&
          load.cranking_a * c.resistance_ohm <= one_way * charging::loop_drop_v * per_12)
        continue;
      const std::string path = "wiring.run." + c.place + ".gauge";
      const auto up = trade_size(*find_field(build_fields(), path), c.area_m2 * 1.02, true);
      if (!up) {
        out.trouble = c.place + " loses " + volts(load.running_a * c.resistance_ohm) +
                      " at 4/0 AWG: a second strap beside it, shorter ways, or bare joint faces";
        return true;
      }
      put(tried_, path, *up);
      gauges_[path] = *up;
      return true;
    }
    return false;
  }

  std::string says() const {
    std::string text;
    for (auto& m : moves_)
      text += (text.empty() ? "" : " ") + m.name + " from " + m.was + " to " + m.to + " (" +
              print(m.amps, kind::current, "A", 3) + ").";
    if (!gauges_.empty())
      text += (text.empty() ? "" : " ") + std::to_string(gauges_.size()) + " ground run" +
              (gauges_.size() == 1 ? "" : "s") + " thicker.";
    return text;
  }

  const Build& build_;
  Build tried_;
  const DutySet& set_;
  std::vector<Move> moves_;
  std::map<std::string, double> gauges_;
};

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  for (auto& s : car.systems())
    if (s.key == wiring::System::key) return s.missing;
  return {};
}

Solution solve(const Build& build, const DutySet& set) {
  Solution out;
  out.missing = needs(build);
  return out.missing.empty() ? Grounds(build, set).solve() : out;
}

}  // namespace

const Solver ground_points{
    .key = "ground-points",
    .title = "ground points",
    .judged_by =
        "cooling.coolant-volts charging.ground-drop charging.crank-loop gauges.fuel-steady "
        "gauges.temperature-steady gauges.pressure-steady",
    .caution = Caution::electrical_fire,
    .formula =
        "the network solved in every running and cranking duty; loads that lift the gauges' ground by more than "
        "20 mV, or the metal the coolant touches by more than 0.1 V against the block, are moved to body or "
        "block, the greatest first; ground runs that lose more than 0.1 V get the next gauge",
    .source = "common practice",
    .solve = solve,
    .needs = needs};

}  // namespace sw
