#include <algorithm>
#include <cmath>

#include "model/needed.hpp"
#include "systems/throttle/throttle.hpp"

namespace sw::throttle {
namespace {

constexpr std::string_view linkage_block = "throttle.linkage";

namespace linkage {
enum Read { r_rise, r_pitch, r_intake, read_count };
constexpr Port reads[] = {
    {"mounts.front_rise", &kind::length}, {"mounts.pitch", &kind::angle}, {"mounts.intake_raised", &kind::length}};
static_assert(std::size(reads) == read_count);
enum Write { w_lift, w_opened, w_reaches, w_stop, write_count };
constexpr Port writes[] = {
    {"throttle.lift", &kind::length, "in", "throttle lifted since the linkage was set"},
    {"throttle.opened", &kind::angle, "deg", "throttle with the pedal at its stop"},
    {"throttle.reaches", &kind::number, "", "whether the linkage reaches with the pedal released"},
    {"throttle.open_stop", &kind::angle, "deg", "throttle's turn from stop to stop"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double lift = v.in(r_rise) + v.in(r_intake)-m.ahead_m * std::tan(v.in(r_pitch));
  v.set(w_lift, lift);
  const auto opened = m.opened_rad({.lift_m = lift});
  v.set(w_opened, opened.value_or(0));  // read with the next one alone
  v.set(w_reaches, opened ? 1 : 0);
  v.set(w_stop, m.opens_rad);
}
}  // namespace linkage

constexpr Block all[] = {{linkage_block, linkage::reads, linkage::writes, {}, {}, linkage::evaluate}};

/// Reads a figure the geometry cannot do without: its own findings tell of it, and so does whoever reads the port.
class Geometry {
 public:
  Geometry(Model& m, Resolver& r) : m_(m), r_(r) {}
  template <class T>
  double need(const std::optional<T>& member) {
    r_.need(member, linkage_block);
    return needed(member, m_.missing, r_);
  }

  void link(const std::string& name, const Link& in) {
    const bool whole = m_.missing.empty();
    LinkModel l{.name = name};
    need(in.by), need(in.to_engine);
    l.shape = {.cable = in.by == By::cable,
               .pushes = in.pushes.value_or(false),
               .pins_opposite = in.pins_opposite.value_or(false)};
    l.shape.arm_m = need(in.arm), l.shape.start_rad = need(in.start);
    l.shape.driven_arm_m = need(in.driven_arm), l.shape.driven_start_rad = need(in.driven_start);
    l.to_engine = in.to_engine.value_or(false);
    if (l.to_engine) l.roll_m = need(in.roll);
    l.slope_rad = r_.get(in.slope, 0);
    if (in.by) (l.shape.cable ? cable(in, l.shape) : rod(in, l.shape, whole));
    m_.links.push_back(std::move(l));
  }

 private:
  void cable(const Link& in, LinkGeometry& shape) {
    shape.slack_m = need(in.slack);
    if (shape.pushes) r_.fault(&in.pushes, "a cable pulls and does not push", "a rod, or the arm's other side");
    if (in.rod) r_.fault(&in.rod, "a cable has no rod", "by = \"rod\"", {&in.by});
  }
  void rod(const Link& in, LinkGeometry& shape, bool whole) {
    shape.apart_m = need(in.apart);
    if (in.slack)
      r_.fault(&in.slack, "a rod has no slack of its own", "the rod's length, `rod`; its end's play is none", {&in.by});
    if (!whole || !m_.missing.empty()) return;
    shape.rod_m = r_.get(in.rod, rod_between_m(shape));
    if (const auto crossed = stands_crossed(shape))
      shape.crossed = *crossed;
    else
      r_.fault(&in.rod, "the rod does not reach from pin to pin as both levers stand", "measure from pin to pin",
               {&in.pins_opposite});
  }
  Model& m_;
  Resolver& r_;
};

SpringModel spring_of(const std::string& name, const Spring& in, Model& m, Resolver& r) {
  SpringModel s{.name = name, .on = in.on.value_or(SitsOn::throttle)};
  needed(in.on, m.spring_missing, r);
  s.force_n = needed(in.force, m.spring_missing, r);
  s.arm_m = needed(in.arm, m.spring_missing, r);
  s.force_open_n = needed(in.force_open, m.spring_missing, r);
  s.arm_open_m = needed(in.arm_open, m.spring_missing, r);
  return s;
}

}  // namespace

MovedApart LinkModel::apart(const EngineMoved& moved) const {
  if (!to_engine) return {};
  return {moved.roll * roll_m + moved.lift_m * std::sin(slope_rad), moved.lift_m * std::cos(slope_rad)};
}

bool Model::all_rods() const {
  return std::none_of(links.begin(), links.end(), [](auto& l) { return l.shape.cable; });
}

std::optional<double> Model::opening_rad(double pedal, const EngineMoved& moved) const {
  double turn = pedal;
  for (auto& l : links) {
    const auto at = link_at(l.shape, turn, l.apart(moved));
    if (!at) return std::nullopt;
    turn = at->driven_rad;
  }
  return turn;
}

std::optional<double> Model::ratio(double pedal, const EngineMoved& moved) const {
  constexpr double step = 1e-5;
  const auto on = opening_rad(pedal + step, moved), back = opening_rad(pedal - step, moved);
  return on && back ? std::optional((*on - *back) / (2 * step)) : std::nullopt;
}

double Model::pedal_at_rad(double opening, const EngineMoved& moved) const {
  constexpr int steps = 200;
  double last = 0;
  for (int i = 0; i <= steps; ++i) {
    const double pedal = turns_rad * i / steps;
    const auto at = opening_rad(pedal, moved);
    if (!at) return last;
    if (*at < opening) {
      last = pedal;
      continue;
    }
    double low = last, high = pedal;  // it is met in between
    for (int k = 0; k < 40; ++k) {
      const double middle = 0.5 * (low + high);
      const auto there = opening_rad(middle, moved);
      (there && *there < opening ? low : high) = middle;
    }
    return high;
  }
  return turns_rad;
}

std::optional<double> Model::opened_rad(const EngineMoved& moved) const {
  const auto at = opening_rad(pedal_at_rad(opens_rad, moved), moved);
  return at ? std::optional(std::clamp(*at, 0.0, opens_rad)) : std::nullopt;
}

std::span<const Block> System::blocks() { return all; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m{.ahead_m = r.get(in.ahead, 0),
          .friction_nm = given(in.friction),
          .pad_m = given(in.pedal.pad),
          .friction_path = r.path_of(&in.friction)};
  Geometry geometry(m, r);
  m.turns_rad = geometry.need(in.pedal.turns);
  m.opens_rad = geometry.need(in.opens);
  for (auto& [name, link] : in.link) geometry.link(name, link);
  if (in.link.empty()) {
    m.missing.push_back("throttle.link: rods and cables from the pedal on");
    r.lacks(m.missing.back());
  }
  for (auto& [name, spring] : in.spring) m.springs.push_back(spring_of(name, spring, m, r));
  m.springs_told = !in.spring.empty() || r.spoilt("throttle.spring");
  return m;
}

}  // namespace sw::throttle
