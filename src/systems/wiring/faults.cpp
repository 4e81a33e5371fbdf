#include "systems/wiring/faults.hpp"

#include <algorithm>
#include <cmath>
#include <functional>

#include "physics/fuse.hpp"
#include "quantity/print.hpp"
#include "systems/wiring/carries.hpp"
#include "systems/wiring/states.hpp"

namespace sw::wiring {
namespace {

/// Current over which a run is said to have taken it over, and its least share of what was there (common practice).
constexpr double told_from_a = 2.0, told_share = 0.25;
/// Volts that electronics of a 12 V car stand for a minute (ISO 16750-2 section 4.3.1.2: 18 V, from memory), as a share
/// of the nominal.
constexpr double most_share = 1.5;
/// A machine that gave that much and is cut off surges (common practice).
constexpr double surges_from_a = 10;
/// Two diodes of a rectifier in series, cold (common practice).
constexpr dc::Diode rectifier{.threshold_v = 1.5, .resistance_ohm = 0.006, .leakage_s = 1e-6};

struct Fault {
  Broken what;
  std::string name;
  std::function<void(dc::Network&)> apply;
  std::size_t made = dc::most_branches;  ///< a branch whose own current is the fault, not told
};

std::vector<Fault> faults_of(const Model& m, const dc::Network& healthy) {
  std::vector<Fault> all;
  const auto set = [](std::size_t branch, bool closed) {
    return [=](dc::Network& n) { n.branches[branch].closed = closed; };
  };
  for (auto& c : m.runs)
    all.push_back(
        {Broken::run, c.place + (c.fused ? " open, or its fuse blown" : " open"), set(c.branch, false), c.branch});
  for (auto& s : m.switches) {
    const bool closed = healthy.branches[s.branch].closed;
    // A contact that sticks does so whatever its coil does.
    const auto stick = [branch = s.branch, coil = s.coil, closed](dc::Network& n) {
      n.branches[branch].closed = !closed;
      if (coil && !closed) n.branches[*coil].closed = false;
    };
    all.push_back({Broken::contact, s.place + (closed ? " stuck open" : " stuck closed"), stick, s.branch});
  }
  if (healthy.branches[m.alternator].closed)
    all.push_back({Broken::battery_off, "battery off its posts", set(m.battery, false), m.battery});
  else if (!healthy.branches[m.starter].closed)
    all.push_back({Broken::battery_reversed, "battery the wrong way round", [&m](dc::Network& n) {
                     auto& b = std::get<dc::Battery>(n.branches[m.battery].law);
                     b.emf_v = -b.emf_v;
                     n.add({.from = m.n_case, .to = m.n_alternator, .law = rectifier});
                   }});
  return all;
}

struct Seen {
  const dc::Network& network;
  const dc::Solution& solution;
  double amps(const Conductor& c) const {
    return network.branches[c.branch].closed ? std::abs(solution.current_a[c.branch]) : 0.0;
  }
  /// Signed as the load is meant to be fed.
  double volts(std::size_t branch) const { return network.branches[branch].closed ? solution.load_v[branch] : 0.0; }
};

/// The network with one fault, followed until no further fuse opens.
class Trying {
 public:
  Trying(const Model& m, const Seen& healthy, const Fault& fault)
      : m_(m), healthy_(healthy), broken_(healthy.network), solution_(healthy.solution) {
    run_.what = fault.what;
    run_.fault = fault.name;
    fault.apply(broken_);
    settle(m_, broken_, solution_);
    while (usable() && open_a_fuse()) settle(m_, broken_, solution_);
    run_.solved = usable();
  }

  FaultRun told(const Fault& fault, double seconds, std::optional<double> bay_k) && {
    if (!run_.solved) return std::move(run_);
    each_wire(m_, [&](const Conductor& c) {
      if (c.branch != fault.made) wire(c, seconds, bay_k);
    });
    for (auto& l : m_.loads) load(l.wire.place, l.wire.branch, works_from_v(m_, l), l.behaviour);
    load("starter", m_.starter, dead_below_v(m_), Behaviour::motor);
    battery();
    machine();
    std::stable_sort(run_.happens.begin(), run_.happens.end(), [](auto& a, auto& b) { return a.what < b.what; });
    return std::move(run_);
  }

 private:
  Seen now() const { return {broken_, solution_}; }
  bool usable() const { return solution_.summary.usable(); }

  /// The fuse that is furthest over its rating, and was not before, opens first.
  bool open_a_fuse() {
    const Conductor* first = nullptr;
    double most = 0;
    each_wire(m_, [&](const Conductor& c) {
      if (!c.fused || now().amps(c) <= healthy_.amps(c) + told_from_a) return;
      const double share = now().amps(c) / c.fuse_a;
      if (share > most && physics::blade_fuse_time(share).longest_s) most = share, first = &c;
    });
    if (!first) return false;
    run_.happens.push_back(
        {Effect::fuse_opens, first->place, healthy_.amps(*first), now().amps(*first), first->fuse_a});
    broken_.branches[first->branch].closed = false;
    return true;
  }

  void wire(const Conductor& c, double seconds, std::optional<double> bay_k) {
    const double was = healthy_.amps(c), is = now().amps(c);
    if (is <= was + 0.01) return;
    const auto limit = carries_for(c, seconds, bay_k);
    const bool burns = limit && is > *limit && (was <= *limit || is > 2 * was),
               loads = load_named(m_, c.place).has_value();
    // A load's own wire that carries more only because the load does is told by the load.
    const bool takes_over = !loads && is > was + told_from_a && is > (1 + told_share) * was;
    if (burns || takes_over)
      run_.happens.push_back({burns   ? Effect::burns
                              : limit ? Effect::carries
                                      : Effect::unknown,
                              c.place, was, is, limit});
  }

  void load(const std::string& name, std::size_t branch, double works_v, Behaviour behaviour) {
    const bool electronics = behaviour == Behaviour::current || behaviour == Behaviour::power;
    const bool either_way = behaviour == Behaviour::lamp || behaviour == Behaviour::resistance;
    const auto seen = [&](double v) { return either_way ? std::abs(v) : v; };
    const double was = seen(healthy_.volts(branch)), is = seen(now().volts(branch)), dead = dead_below_v(m_);
    const auto add = [&](Effect what) {
      run_.happens.push_back({what, name, was, is, std::nullopt, consequence(name, what)});
    };
    if (is < -dead && was > -dead)
      add(Effect::backwards);
    else if (electronics && is > most_share * m_.nominal_v && is > was)
      add(Effect::over_volts);
    else if (was < dead && is >= dead)
      add(Effect::stays_on);
    else if (was >= dead && is < dead)
      add(Effect::dead);
    else if (was >= works_v && is < works_v)
      add(Effect::weak);
  }

  /// What a load of a known name does to the car.
  std::string_view consequence(std::string_view name, Effect what) const {
    const bool runs = healthy_.network.branches[m_.alternator].closed;
    if (runs && what == Effect::dead && (name == "ignition" || name == "injection")) return "the engine stops";
    if (runs && what == Effect::dead && name == "fuel_pump") return "the engine stops within seconds";
    if (runs && what == Effect::stays_on && name == "starter_solenoid")
      return "the running engine drags the starter round until it breaks";
    if (what == Effect::backwards && name != "starter") return "electronics in it do not live through that";
    return {};
  }

  /// A machine that gave and has no battery any more to give to.
  void machine() {
    const double was = std::abs(healthy_.solution.current_a[m_.alternator]);
    const auto& source = broken_.branches[m_.battery];
    const bool cut = !source.closed || std::abs(solution_.current_a[m_.alternator]) < 0.5 * was;
    if (healthy_.network.branches[m_.alternator].closed && was > surges_from_a && cut)
      run_.happens.push_back({Effect::surges, "alternator", was, std::abs(solution_.current_a[m_.alternator]),
                              std::nullopt, "what its diodes hold: charging.surge"});
  }

  /// A battery that did not give before and has to now.
  void battery() {
    const double was = healthy_.solution.current_a[m_.battery], is = solution_.current_a[m_.battery];
    if (is > told_from_a && was < told_from_a && broken_.branches[m_.battery].closed)
      run_.happens.push_back({Effect::drains, "battery", std::max(was, 0.0), is, std::nullopt});
  }

  const Model& m_;
  const Seen healthy_;
  dc::Network broken_;
  dc::Solution solution_;
  FaultRun run_;
};

}  // namespace

namespace {

/// What burns before anything is broken: the car as it stands.
FaultRun as_it_is(const Model& m, const Seen& healthy, double seconds, std::optional<double> bay_k) {
  FaultRun run{.what = Broken::nothing, .fault = "nothing broken, the car as it is", .solved = true, .happens = {}};
  each_wire(m, [&](const Conductor& c) {
    const double a = healthy.amps(c);
    if (const auto limit = carries_for(c, seconds, bay_k); limit && a > *limit)
      run.happens.push_back({Effect::burns, c.place, a, a, limit});
  });
  return run;
}

}  // namespace

std::vector<FaultRun> try_faults(const Model& m, const Feed& feed, std::optional<double> bay_k) {
  std::vector<FaultRun> all;
  dc::Network network = m.network;
  set_feed(m, feed, network);
  dc::Solution s;
  settle(m, network, s);
  if (!s.summary.usable()) return all;
  const double seconds = feed.state & bit(Condition::start) ? start_s : 0;
  const Seen healthy{network, s};
  if (auto run = as_it_is(m, healthy, seconds, bay_k); !run.happens.empty()) all.push_back(std::move(run));
  for (auto& fault : faults_of(m, network)) all.push_back(Trying(m, healthy, fault).told(fault, seconds, bay_k));
  return all;
}

namespace {

std::string happening(const Happens& h) {
  const auto amps = [](double a) { return print(a, kind::current, "A", 3); };
  const auto volts = [](double v) { return print(v, kind::voltage, "V", 3); };
  switch (h.what) {
    case Effect::burns:
      return h.place + " burns: " + amps(h.is) + " where it carries " + amps(h.limit.value_or(0));
    case Effect::fuse_opens:
      return "the fuse of " + h.place + " opens: " + amps(h.is) + " through " + amps(h.limit.value_or(0));
    case Effect::unknown:
      return amps(h.is) + " go through " + h.place + ", and nobody said what it carries";
    case Effect::carries:
      return amps(h.is) + " go through " + h.place + " (" + amps(h.was) + " before)";
    case Effect::backwards:
      return h.place + " gets " + volts(-h.is) + " the wrong way round";
    case Effect::over_volts:
      return h.place + " gets " + volts(h.is);
    case Effect::stays_on:
      return h.place + " is on at " + volts(h.is);
    case Effect::drains:
      return amps(h.is) + " come out of the battery, which nothing charges";
    case Effect::dead:
      return h.place + " is dead";
    case Effect::weak:
      return h.place + " gets only " + volts(h.is) + " (" + volts(h.was) + " before)";
    case Effect::surges:
      return "the machine gave " + amps(h.was) + " and is cut off: its volts rise at once";
  }
  return h.place;
}

}  // namespace

std::string tell(const Happens& h) { return happening(h) + (h.so.empty() ? "" : ", " + std::string(h.so)); }

}  // namespace sw::wiring
