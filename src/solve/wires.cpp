// Which wire, which fuse: of the sizes sold, for every load, run and the fans' feed, the thinnest that carries what the
// duties ask in its bundle and zone and loses no more than it may, with the smallest fuse that carries its load. What
// is drawn and does is left as it is.
#include <algorithm>
#include <cmath>
#include <set>

#include "physics/fuse.hpp"
#include "physics/wire.hpp"
#include "proof/trade_size.hpp"
#include "quantity/print.hpp"
#include "solve/list.hpp"
#include "solve/wire_load.hpp"
#include "systems/charging/checks.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"
#include "systems/wiring/states.hpp"

namespace sw {
namespace {

using wiring::Conductor;

/// A starter cable may lose nearly half of what both may; any other feed as much as a charge lead (common practice).
constexpr double one_way = 0.45;
constexpr double fill_m2 = 33.6e-6;     ///< 2 AWG: what stands in until a first choice is made
constexpr double thinnest_m2 = 0.8e-6;  ///< 18 AWG: the table's first
constexpr int most_rounds = 6;

enum class Kind : std::uint8_t { load, charge, crank, ground, feed };

struct Wanted {
  const Conductor* wire;
  std::string path;  ///< of its table
  Kind kind;
  WireLoad load;
  double lasting_a = 0;  ///< what its fuse is chosen by
  double stall_a = 0, inrush_a = 0, inrush_s = 0;
  bool fuse = false;  ///< whether it must have one
};

struct Choice {
  std::string path;
  double area_m2, fuse_a;  ///< fuse 0: none
};

const FieldInfo& field_at(const std::string& path) { return *find_field(build_fields(), path); }

class Choosing {
 public:
  Choosing(const CarWires& wires, double nominal_v) : wires_(wires), per_12_(nominal_v / 12) {}

  std::vector<Wanted> wanted() const {
    auto& m = wires_.model();
    std::vector<Wanted> all;
    for (std::size_t i = 0; i < m.runs.size(); ++i)
      if (auto w = run(i)) all.push_back(std::move(*w));
    for (auto& l : m.loads) {
      Wanted w{&l.wire, "wiring.load." + l.wire.place, Kind::load, wires_.load_of(l.wire, l.share)};
      w.lasting_a = std::max(l.rated_a, w.load.running_a);
      w.stall_a = l.stall_a, w.inrush_a = l.inrush_a, w.inrush_s = l.inrush_s;
      w.fuse = true;
      all.push_back(std::move(w));
    }
    Wanted fans{&m.fan_feed, "wiring.fans", Kind::load, wires_.load_of(m.fan_feed)};
    fans.lasting_a = fans.load.running_a;
    fans.fuse = true;
    if (fans.lasting_a > 0) all.push_back(std::move(fans));
    return all;
  }

  /// What is drawn where it does; else the first that does; empty where none up to 4/0 does.
  std::optional<Choice> choose(const Wanted& w) const {
    const FieldInfo &gauge = field_at(w.path + ".gauge"), &fuse = field_at(w.path + ".fuse");
    const auto sold = fuse_for(w, fuse);
    if (!sold) return std::nullopt;
    const double rating = *sold;
    if (w.wire->sized && fits(w, w.wire->area_m2, rating)) return Choice{w.path, w.wire->area_m2, rating};
    for (double at = thinnest_m2;;) {
      const auto size = trade_size(gauge, at, true);
      if (!size) return std::nullopt;
      if (fits(w, *size, rating)) return Choice{w.path, *size, rating};
      at = *size * 1.02;
    }
  }

  std::string why_none(const Wanted& w) const {
    const double lost = w.load.before_v + w.load.after_v;
    if (w.kind == Kind::load && lost >= wiring::feed_drop_v * per_12_)
      return w.wire->place + ": " + print(lost, kind::voltage, "V", 2) +
             " are lost before its own feed begins: a relay near it, fed from the bus, with a contact that loses less";
    if (w.fuse && !fuse_for(w, field_at(w.path + ".fuse")))
      return w.wire->place + ": no fuse that is sold carries " + print(w.lasting_a, kind::current, "A", 3) +
             ": two feeds, or a machine that gives less";
    return w.wire->place + ": no wire up to 4/0 AWG carries " + print(w.load.running_a, kind::current, "A", 3) +
           " in its bundle and zone with what it may lose: a shorter or cooler way, or two wires";
  }

 private:
  static bool starter_end(const wiring::Model& m, const wiring::dc::Branch& b) {
    return b.from == m.n_starter || b.to == m.n_starter;
  }
  /// Runs of wire; measured ones and metal nobody chose are as they are.
  std::optional<Wanted> run(std::size_t i) const {
    auto& m = wires_.model();
    auto& c = m.runs[i];
    auto& b = m.network.branches[c.branch];
    if (c.stray || !c.sized || c.length_m <= 0) return std::nullopt;
    Wanted w{&c, "wiring.run." + c.place, Kind::feed, wires_.load_of(c)};
    w.lasting_a = w.load.running_a;
    const bool charges = std::find(m.charge_path.begin(), m.charge_path.end(), i) != m.charge_path.end();
    if (charges) {
      w.kind = Kind::charge;
      w.lasting_a = std::max(w.lasting_a, wires_.machine_a() / wiring::fuse_loading);
    } else if (starter_end(m, b)) {
      w.kind = Kind::crank;
    } else if (wiring::is_ground(m, b.from) && wiring::is_ground(m, b.to)) {
      w.kind = Kind::ground;
    }
    w.fuse = w.kind == Kind::charge || w.kind == Kind::feed;
    return w;
  }

  /// Empty where none that is sold carries it.
  std::optional<double> fuse_for(const Wanted& w, const FieldInfo& field) const {
    if (!w.fuse) return w.wire->fused ? w.wire->fuse_a : 0;
    const auto carries = [&](double rating) {
      return wiring::fuse_loading * w.lasting_a <= rating * (1 + 1e-9) &&
             (w.inrush_a <= 0 || physics::shortest_melting(w.inrush_a / rating) >= w.inrush_s);
    };
    if (w.wire->fused && carries(w.wire->fuse_a)) return w.wire->fuse_a;
    for (double at = wiring::fuse_loading * w.lasting_a;;) {
      const auto rating = trade_size(field, at, true);
      if (!rating) return std::nullopt;
      if (carries(*rating)) return *rating;
      at = *rating * 1.01;
    }
  }

  bool fits(const Wanted& w, double area_m2, double rating) const {
    Conductor c = *w.wire;
    c.area_m2 = area_m2;
    c.ampacity_a = wiring::ampacity(c).current_a;
    const double hot = wiring::ampacity(c, wires_.hottest_bay_k()).current_a;
    if (rating > 0 && rating > c.ampacity_a) return false;
    if (hot < w.load.running_a) return false;
    if (w.stall_a > 0 && hot < std::min(w.stall_a, rating)) return false;  // the fuse may hold it for good
    c.sized = true;
    if (w.load.cranking_a > *wiring::carries_for(c, wiring::start_s)) return false;
    return loses(w, area_m2);
  }

  bool loses(const Wanted& w, double area_m2) const {
    const double ohm = w.wire->joints_ohm + w.wire->length_m * wiring::ohm_per_m(w.wire->laid.zone, area_m2);
    const double running = w.load.running_a * ohm, cranking = w.load.cranking_a * ohm;
    switch (w.kind) {
      case Kind::load:
        return running + w.load.before_v + w.load.after_v <= wiring::feed_drop_v * per_12_;
      case Kind::charge:
        return running <= charging::lead_drop_v * per_12_ / static_cast<double>(wires_.model().charge_path.size());
      case Kind::crank:
        return cranking <= one_way * charging::loop_drop_v * per_12_;
      case Kind::ground:
        return running <= charging::ground_drop_v * per_12_ && cranking <= one_way * charging::loop_drop_v * per_12_;
      case Kind::feed:
        return running <= charging::lead_drop_v * per_12_;
    }
    return true;
  }

  const CarWires& wires_;
  double per_12_;
};

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
      Wanted fresh = w;
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
