#include "solve/wire_choice.hpp"

#include <algorithm>
#include <cmath>

#include "physics/fuse.hpp"
#include "proof/trade_size.hpp"
#include "quantity/print.hpp"
#include "systems/charging/checks.hpp"
#include "systems/wiring/checks.hpp"
#include "systems/wiring/laid.hpp"
#include "systems/wiring/states.hpp"

namespace sw {
namespace {

/// A starter cable may lose nearly half of what both may; any other feed as much as a charge lead (common practice).
constexpr double one_way = 0.45;
constexpr double thinnest_m2 = 0.8e-6;  ///< 18 AWG: the table's first

const FieldInfo& field_at(const std::string& path) { return *find_field(build_fields(), path); }

}  // namespace

std::vector<Choosing::Wanted> Choosing::wanted() const {
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

std::optional<Choosing::Choice> Choosing::choose(const Wanted& w) const {
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

std::string Choosing::why_none(const Wanted& w) const {
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

bool Choosing::starter_end(const wiring::Model& m, const wiring::dc::Branch& b) {
  return b.from == m.n_starter || b.to == m.n_starter;
}

std::optional<Choosing::Wanted> Choosing::run(std::size_t i) const {
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

std::optional<double> Choosing::fuse_for(const Wanted& w, const FieldInfo& field) const {
  if (!w.fuse) return w.wire->fused ? w.wire->fuse_a : 0;
  const auto carries = [&](double rating) {
    return wiring::fuse_loading * w.lasting_a <= rating * (1 + 1e-9) &&
           (w.inrush_a <= 0 || physics::shortest_melting(w.inrush_a / rating) >= w.inrush_s);
  };
  // A fuse is kept where it protects the wire that is drawn: one that does not would only ask for a thicker wire.
  const bool protects = !w.wire->sized || w.wire->fuse_a <= w.wire->ampacity_a;
  if (w.wire->fused && protects && carries(w.wire->fuse_a)) return w.wire->fuse_a;
  for (double at = wiring::fuse_loading * w.lasting_a;;) {
    const auto rating = trade_size(field, at, true);
    if (!rating) return std::nullopt;
    if (carries(*rating)) return *rating;
    at = *rating * 1.01;
  }
}

bool Choosing::fits(const Wanted& w, double area_m2, double rating) const {
  wiring::Conductor c = *w.wire;
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

bool Choosing::loses(const Wanted& w, double area_m2) const {
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

}  // namespace sw
