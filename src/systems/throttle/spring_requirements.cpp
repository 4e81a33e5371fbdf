// The springs that close the throttle, on its closed stop and wide open, and what the pedal then asks of a foot.
#include <algorithm>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "systems/throttle/judging.hpp"

namespace sw::throttle {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

constexpr int wanted = 2;
/// Whether it closes the throttle wherever that stands; one that has swung past the centre holds it open.
bool closes(const Model& m, const SpringModel& s) {
  return s.closed_nm() > 0 && s.open_nm() > 0 && (s.on == SitsOn::throttle || m.all_rods());
}

/// Torque of each spring at the throttle's shaft in one place of the throttle; empty where the linkage does not reach.
using Torques = std::vector<double>;
std::optional<Torques> torques_at(const Model& m, double pedal, double (SpringModel::*own)() const) {
  Torques each;
  for (auto& s : m.springs) {
    if (s.on == SitsOn::throttle) {
      each.push_back((s.*own)());
    } else if (!m.all_rods()) {
      each.push_back(0);
    } else {
      const auto ratio = m.ratio(pedal);
      if (!ratio || *ratio <= 0) return std::nullopt;
      each.push_back((s.*own)() / *ratio);
    }
  }
  return each;
}
double sum(const Torques& each) {
  double all = 0;
  for (const double t : each) all += t;
  return all;
}
bool at_the_pedal(const Model& m) {
  return std::any_of(m.springs.begin(), m.springs.end(), [](auto& s) { return s.on == SitsOn::pedal; });
}
constexpr double reserve = 2;
Because torque(std::string what, double nm) { return told(std::move(what), nm, kind::torque, "lb-in"); }

void judge_lost(const Model& m, std::size_t lost, Verdict& v) {
  const bool by_pedal = at_the_pedal(m) && m.told();
  const auto closed = torques_at(m, 0, &SpringModel::closed_nm),
             open = torques_at(m, by_pedal ? m.wide_open_rad() : 0, &SpringModel::open_nm);
  if (!closed || !open) {
    v.reason = out_of_reach;
    return;
  }
  const double left_closed = sum(*closed) - (*closed)[lost], left_open = sum(*open) - (*open)[lost];
  v.predicted = std::min(left_closed, left_open);
  v.low = reserve * *m.friction_nm;
  v.scale = std::max({sum(*closed), sum(*open), *v.low, 1e-3});
  v.because.push_back(torque("left on the closed stop", left_closed));
  v.because.push_back(torque("left wide open", left_open));
  v.because.push_back(torque("friction", *m.friction_nm));
}

constexpr double least_n = 2 * lbf_n, most_n = 15 * lbf_n;
std::optional<double> pedal_force_n(const Model& m, double pedal, double (SpringModel::*own_nm)() const) {
  double throttle = *m.friction_nm, own = 0;
  for (auto& s : m.springs) (s.on == SitsOn::throttle ? throttle : own) += (s.*own_nm)();
  const auto ratio = m.ratio(pedal);
  return ratio ? std::optional((throttle * *ratio + own) / *m.pad_m) : std::nullopt;
}

}  // namespace

void judge_springs(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "two springs on the throttle's own lever, each of its own hooks, either enough alone"};
  v.missing = m.spring_missing;
  if (!m.springs_told) v.missing.push_back("throttle.spring: the springs that close it");
  if (m.links.empty()) v.missing.insert(v.missing.end(), m.missing.begin(), m.missing.end());
  if (v.missing.empty()) {
    const auto there = std::count_if(m.springs.begin(), m.springs.end(), [&](auto& s) { return closes(m, s); });
    v.rule = there >= wanted;
    v.reason =
        std::to_string(there) + (there == 1 ? " spring closes" : " springs close") +
        " the throttle by itself, closed and wide open, two are wanted; one at the pedal does not through a cable";
  }
  out.push_back(std::move(v));
}

void judge_return(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.springs_told) return;
  std::vector<std::string> missing = m.spring_missing;
  if (!m.friction_nm) missing.push_back(m.friction_path);
  if (at_the_pedal(m)) missing.insert(missing.end(), m.missing.begin(), m.missing.end());
  for (std::size_t i = 0; i < m.springs.size(); ++i) {
    Verdict v{
        .place = m.springs[i].name,
        .fix_hint =
            "a second spring on the throttle's lever, its hook where it does not swing past the shaft; or friction "
            "found: shaft, cable's bends, a sheath that was melted"};
    v.missing = missing;
    if (v.missing.empty()) judge_lost(m, i, v);
    out.push_back(std::move(v));
  }
}

void judge_pedal_force(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!m.pad_m || !m.springs_told) return;
  std::vector<std::string> missing = m.missing;
  missing.insert(missing.end(), m.spring_missing.begin(), m.spring_missing.end());
  if (!m.friction_nm) missing.push_back(m.friction_path);
  if (!missing.empty()) return out.push_back({.missing = missing});
  const auto judge_at = [&](const char* place, double pedal, double (SpringModel::*own)() const) {
    Verdict v{.place = place,
              .low = least_n,
              .high = most_n,
              .scale = most_n - least_n,
              .fix_hint = "springs of other force or arm, both kept; never one taken off for a lighter pedal"};
    v.predicted = pedal_force_n(m, pedal, own);
    if (!v.predicted) v.reason = out_of_reach;
    out.push_back(std::move(v));
  };
  judge_at("off its stop", m.off_stop_rad(), &SpringModel::closed_nm);
  judge_at("wide open", m.wide_open_rad(), &SpringModel::open_nm);
}

}  // namespace sw::throttle
