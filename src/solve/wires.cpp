// Which wire, which fuse: of the sizes sold, for every load, run and the fans' feed, the thinnest that carries what the
// duties ask in its bundle and zone and loses no more than it may, with the smallest fuse that carries its load. What
// is drawn and does is left as it is.
#include <algorithm>
#include <set>

#include "quantity/print.hpp"
#include "solve/list.hpp"
#include "solve/wire_choice.hpp"

namespace sw {
namespace {

using wiring::Conductor;
using Choice = Choosing::Choice;

constexpr double fill_m2 = 33.6e-6;  ///< 2 AWG: what stands in until a first choice is made
constexpr int most_rounds = 6;

void set(Build& b, const std::string& path, double value) {
  const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&b), path);
  if (leaf.field) leaf.field->access.set(leaf.owner, value);
}

/// Wires nobody drew yet get one that carries all, so that the car can be run.
Build filled(Build b, std::set<std::string>& blank) {
  auto& in = std::get<wiring::Input>(b.inputs);
  const auto fill = [&](const std::string& table, const wiring::Wire& w) {
    if (!w.gauge) blank.insert(table), set(b, table + ".gauge", fill_m2);
  };
  for (auto& [name, run] : in.run)
    if (!run.resistance) fill("wiring.run." + name, run.wire);
  for (auto& [name, load] : in.load) fill("wiring.load." + name, load.wire);
  if (!in.fans.resistance) fill("wiring.fans", in.fans.wire);
  return b;
}

/// What wires alone do not mend, and what is joined where: relays wanted, splices made.
void tell_relays_and_splices(const CarWires& wires, Solution& out) {
  auto& m = wires.model();
  for (auto& s : m.switches) {
    Conductor contact{.place = s.place, .branch = s.branch};
    const double a = wires.load_of(contact).running_a;
    if (!s.coil && s.limit_a > 0 && a > s.limit_a)
      out.because.push_back({.what = "relay",
                             .text = s.place + " switches " + print(a, kind::current, "A", 3) + " and is made for " +
                                     print(s.limit_a, kind::current, "A", 3) +
                                     ": a relay near the load, its coil alone on the switch"});
  }
  for (std::size_t node = 1; node < m.node_names.size(); ++node) {
    std::string names;
    int count = 0;
    double together = 0;
    for (auto& l : m.loads)
      if (m.network.branches[l.wire.branch].from == node) {
        names += (count++ ? ", " : "") + l.wire.place;
        together += l.rated_a;
      }
    if (count < 2) continue;
    out.because.push_back({.what = "splice",
                           .text = "at " + m.node_names[node] + ": " + names + ", " +
                                   print(together, kind::current, "A", 3) + " if all are on"});
  }
}

std::vector<std::string> needs(const Build& build) {
  std::set<std::string> blank;
  const Car car(filled(build, blank));
  for (auto& s : car.systems())
    if (s.key == wiring::System::key) return s.missing;
  return {};
}

std::string count_of(std::size_t n, const char* what) { return std::to_string(n) + " " + what + (n == 1 ? "" : "s"); }

Solution solve(const Build& build, const DutySet& set_of_duties) {
  Solution out;
  out.missing = needs(build);
  if (!out.missing.empty()) return out;
  std::set<std::string> blank;
  Build tried = filled(build, blank);
  std::vector<Choice> last;
  for (int round = 0; round < most_rounds; ++round) {
    const CarWires wires(tried, set_of_duties);
    if (!wires.usable()) {
      out.trouble = "no duty comes through with the car as it is: streetwright check says why";
      return out;
    }
    const double nominal = wires.model().nominal_v;
    const Choosing choosing(wires, nominal);
    std::vector<Choice> chosen;
    for (auto& w : choosing.wanted()) {
      // A wire nobody drew is chosen from the thinnest up in every round.
      Choosing::Wanted fresh = w;
      Conductor bare = *w.wire;
      if (blank.contains(w.path)) bare.sized = false, fresh.wire = &bare;
      const auto choice = choosing.choose(fresh);
      if (!choice) {
        out.trouble = choosing.why_none(w);
        return out;
      }
      chosen.push_back(*choice);
    }
    const bool same = std::equal(chosen.begin(), chosen.end(), last.begin(), last.end(), [](auto& a, auto& b) {
      return a.path == b.path && a.area_m2 == b.area_m2 && a.fuse_a == b.fuse_a;
    });
    last = std::move(chosen);
    for (auto& c : last) {
      set(tried, c.path + ".gauge", c.area_m2);
      if (c.fuse_a > 0) set(tried, c.path + ".fuse", c.fuse_a);
    }
    if (same) {
      tell_relays_and_splices(wires, out);
      break;
    }
  }
  std::size_t sizes = 0, fuses = 0;
  for (auto& c : last) {
    const auto was = [&](const char* key) {
      const Leaf leaf = find_leaf(build_fields(), static_cast<const void*>(&build), c.path + key);
      return leaf.field ? leaf.field->access.get(leaf.owner) : std::nullopt;
    };
    if (was(".gauge") != c.area_m2) out.settings.push_back({c.path + ".gauge", c.area_m2}), ++sizes;
    if (c.fuse_a > 0 && was(".fuse") != c.fuse_a) out.settings.push_back({c.path + ".fuse", c.fuse_a}), ++fuses;
  }
  out.says = out.settings.empty() ? "All " + count_of(last.size(), "wire") + " and their fuses do as they are drawn."
                                  : "Of " + count_of(last.size(), "wire") + ": " + count_of(sizes, "size") + " and " +
                                        count_of(fuses, "fuse") + " to change; the others do as they are drawn.";
  return out;
}

}  // namespace

const Solver wires{
    .key = "wires",
    .title = "wires and fuses",
    .judged_by =
        "wiring.wire-current wiring.fuse-wire wiring.fuse-load wiring.fuse-run wiring.feed-drop "
        "wiring.lamp-feed wiring.stalled-motor wiring.fuse-inrush wiring.charge-path charging.lead-drop "
        "charging.ground-drop charging.crank-loop",
    .caution = Caution::electrical_fire,
    .formula =
        "for each wire of the solved network the thinnest gauge whose ampacity in its bundle and zone, in the "
        "hottest bay of the duties, carries the greatest current and its fuse, and whose drop stays within what "
        "its kind may lose; the smallest fuse rated 1.25 times the lasting current that outlasts switching on",
    .source = "33 CFR 183.425 Table 5; ISO 8820-3; drops and loading: common practice",
    .solve = solve,
    .needs = needs};

}  // namespace sw
