#include <algorithm>
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "physics/joint.hpp"
#include "physics/whirling.hpp"
#include "systems/driveline/driveline.hpp"

namespace sw::driveline {
namespace {

constexpr double degree = std::numbers::pi / 180;
const Model& of(const void* model) { return *static_cast<const Model*>(model); }
constexpr std::string_view running[] = {"*running"};

/// Greatest speed of the propeller shaft in the run, with its row.
struct Fastest {
  std::size_t row;
  double rad_s;
};
Fastest fastest(const Model& m, const Evidenced& run, int speed) {
  const std::size_t row = run.trace->highest(run.slot(speed));
  return {row, run.at(row, speed) * m.axle / m.wheel_radius_m};
}

namespace critical {
constexpr Port needs[] = {{"road.speed", &kind::speed}};
constexpr std::string_view chain[] = {"road.speed"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  auto& s = m.shaft;
  if (!s.length_m && !s.diameter_m && !s.wall_m) return;
  const Fastest at = fastest(m, run, 0);
  Verdict v{.row = at.row,
            .fix_hint = "a tube of more diameter, a shaft in two pieces with a bearing, or an axle of a lower ratio"};
  if (!s.length_m) v.missing.push_back(s.length_path);
  if (!s.diameter_m) v.missing.push_back(s.diameter_path);
  if (!s.wall_m) v.missing.push_back(s.wall_path);
  if (v.missing.empty()) {
    const double first = physics::tube_whirls_rad_s(*s.length_m, *s.diameter_m, *s.diameter_m - 2 * *s.wall_m);
    v.predicted = at.rad_s;
    v.high = s.of_critical * first;
    v.scale = *v.high;
    v.because.push_back(told("critical speed", first, kind::shaft_speed, "rpm"));
    v.because.push_back(told("axle ratio", m.axle, kind::number, ""));
  }
  out.push_back(std::move(v));
}
}  // namespace critical

enum MountNeed { n_pitch, n_lift, mount_need_count };
constexpr Port mount_needs[] = {{"mounts.pitch", &kind::angle}, {"mounts.tail_lift", &kind::length}};
static_assert(std::size(mount_needs) == mount_need_count);

struct Joints {
  std::optional<double> front, rear;
};
Joints joints_at(const ShaftModel& s, const Evidenced& run) {
  const double pitch = run.at(0, n_pitch), lift = run.at(0, n_lift);
  return {s.front(pitch, lift), s.rear(lift)};
}

void tell_mounts(const Evidenced& run, Verdict& v) {
  if (run.at(0, n_pitch) != 0) v.because.push_back(told("engine's nose down", run.at(0, n_pitch), kind::angle, "deg"));
  if (run.at(0, n_lift) != 0) v.because.push_back(told("gearbox lifted", run.at(0, n_lift), kind::length, "in"));
}

namespace angle {
constexpr double least = 0.5 * degree, most = 3.0 * degree;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const Joints j = joints_at(of(model).shaft, run);
  const auto judge = [&](const char* place, const std::optional<double>& angle) {
    if (!angle) return;
    Verdict v{.place = place,
              .predicted = *angle,
              .low = least,
              .high = most,
              .scale = most,
              .fix_hint =
                  "shims at the gearbox mount or a wedge under the axle, both joints and the pan looked at "
                  "together; slopes read anew at ride height"};
    tell_mounts(run, v);
    out.push_back(std::move(v));
  };
  judge("front", j.front);
  judge("rear", j.rear);
}
}  // namespace angle

namespace difference {
constexpr double most = 1.0 * degree;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const Joints j = joints_at(of(model).shaft, run);
  if (!j.front || !j.rear) return;
  Verdict v{.predicted = std::abs(*j.front - *j.rear),
            .high = most,
            .scale = most,
            .fix_hint =
                "gearbox and pinion parallel: a wedge under the axle turns the rear joint alone, a shim at the "
                "gearbox mount moves both"};
  v.because.push_back(told("front joint", *j.front, kind::angle, "deg"));
  v.because.push_back(told("rear joint", *j.rear, kind::angle, "deg"));
  tell_mounts(run, v);
  out.push_back(std::move(v));
}
}  // namespace difference

/// What the two joints leave: the one joint that would swing as much, at the shaft's greatest speed.
namespace residual {
constexpr double most_rad_s2 = 400;
constexpr Port needs[] = {
    {"mounts.pitch", &kind::angle}, {"mounts.tail_lift", &kind::length}, {"road.speed", &kind::speed}};
constexpr int n_speed = mount_need_count;
static_assert(std::size(needs) == n_speed + 1);
constexpr std::string_view chain[] = {"road.speed"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const Joints j = joints_at(m.shaft, run);
  if (!j.front || !j.rear) return;
  const Fastest at = fastest(m, run, n_speed);
  const double left = physics::equivalent_angle(
      physics::joint_pair(*j.front, *j.rear, m.shaft.plane_phase_rad, m.shaft.yoke_phase_rad));
  Verdict v{.predicted = at.rad_s * at.rad_s * left * left,
            .high = most_rad_s2,
            .scale = most_rad_s2,
            .row = at.row,
            .fix_hint = "equal angles at both joints, yokes in line"};
  v.because.push_back(told("front joint", *j.front, kind::angle, "deg"));
  v.because.push_back(told("rear joint", *j.rear, kind::angle, "deg"));
  v.because.push_back(told("one joint that would swing as much", left, kind::angle, "deg"));
  v.because.push_back(told("shaft turns at", at.rad_s, kind::shaft_speed, "rpm"));
  out.push_back(std::move(v));
}
}  // namespace residual

constexpr Requirement all[] = {
    {.id = "driveline.critical-speed",
     .title = "propeller shaft does not whirl",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::whirling_shaft,
     .quantity = &kind::shaft_speed,
     .unit = "rpm",
     .source = "driveline.shaft.of_critical; common practice: 0.75 of the first critical speed",
     .formula = "road speed x axle / rolling radius, greatest of the run, against a share of the first critical speed "
                "of a steel tube between two joints",
     .duties = running,
     .needs = critical::needs,
     .chain = critical::chain,
     .evaluate = critical::evaluate},
    {.id = "driveline.joint-angle",
     .title = "working angle of a joint",
     .kind = RequirementKind::band,
     .hazard = Hazard::damage,
     .caution = Caution::whirling_shaft,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 0.5 to 3 deg",
     .formula = "as measured, or engine's or pinion's slope less the shaft's, with what the mounts moved",
     .needs = mount_needs,
     .evaluate = angle::evaluate},
    {.id = "driveline.joint-difference",
     .title = "both joints work alike",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::whirling_shaft,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 1 deg",
     .formula = "front angle less rear angle",
     .needs = mount_needs,
     .evaluate = difference::evaluate},
    {.id = "driveline.residual",
     .title = "turning evenness behind both joints",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::whirling_shaft,
     .quantity = &kind::angular_acceleration,
     .unit = "rad/s2",
     .source = "common practice: 400 rad/s2",
     .formula = "square of the shaft's greatest speed x square of the equivalent angle of both joints",
     .duties = running,
     .needs = residual::needs,
     .chain = residual::chain,
     .evaluate = residual::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::driveline
