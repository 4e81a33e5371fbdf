// What fits what: rod, reservoirs, residual valves, valves in series, fluid, hoses, circuits.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "systems/brakes/checks.hpp"

namespace sw::brakes {
namespace {

constexpr double least_gap_m = 0.010 * inch_m, most_gap_m = 0.030 * inch_m;  ///< common practice
constexpr double most_angle = 5 * std::numbers::pi / 180;                    ///< common practice
constexpr double usable_share = 0.8;                                         ///< of a reservoir: the lamp at a fifth
constexpr double most_disc_pa = 2.5 * psi_pa;                                ///< a 2 psi valve with its tolerance
constexpr double least_drum_pa = 8 * psi_pa, most_drum_pa = 12 * psi_pa;     ///< a 10 psi valve with its tolerance
constexpr double most_expanded_pa = most_drum_pa;
constexpr double least_slack_m = 0.5 * inch_m;  ///< common practice

bool silicone(double grade) { return grade == static_cast<double>(Fluid::dot_5); }

std::string grade_words(double grade) {
  return std::string(fluid_names[static_cast<std::size_t>(grade)]) + (silicone(grade) ? " (silicone)" : " (glycol)");
}

}  // namespace

void rod_gap(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!has_booster(m, out)) return;
  Verdict v{.fix_hint =
                "set the output rod by the same straight-edge over rod and socket to 0.020 in, gasket in place"};
  if (all_given({&m.rod_gap_m}, v)) {
    v.predicted = m.rod_gap_m.value;
    v.low = least_gap_m;
    v.high = most_gap_m;
    v.scale = most_gap_m - least_gap_m;
  }
  out.push_back(std::move(v));
}

void rod_angle(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "the pedal hole made for a booster, a bracket that lowers and tilts it, or a bellcrank"};
  if (all_given({&m.rod_length_m, &m.rod_offset_m}, v)) {
    const double sine = m.rod_offset_m.value / m.rod_length_m.value;
    v.predicted = std::asin(sine);
    v.high = most_angle;
    v.scale = most_angle;
    v.because.push_back(told("side load, of the rod's force", sine, kind::number, "%"));
  }
  out.push_back(std::move(v));
}

void reservoir(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_axle(of(model), [&](const char* place, const AxleModel& a) {
    if (a.make.given() && a.drum) return;  // shoes are taken up by their adjuster, not by fluid
    Verdict v{.place = place, .fix_hint = "a master with a reservoir made for calipers on this axle"};
    if (all_given({&a.make, &a.area_m2, &a.wear_m, &a.reservoir_m3}, v)) {
      v.predicted = 2 * a.area_m2.value * a.wear_m.value;
      v.high = usable_share * a.reservoir_m3.value;
      v.scale = *v.high;
      v.because.push_back(told("the reservoir holds", a.reservoir_m3.value, kind::volume, "cm3"));
    }
    out.push_back(std::move(v));
  });
}

void residual_disc(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  each_axle(m, [&](const char* place, const AxleModel& a) {
    if (!a.make.given() || a.drum) return;
    Verdict v{.place = place,
              .fix_hint = "take the drum's residual valve out, also where it hides in the master's port"};
    const AxleModel& other = &a == &m.front ? m.rear : m.front;
    if (other.drum && other.residual_pa.given() && other.residual_pa.value < least_drum_pa)
      v.fix_hint = "the two axles' lines, or their residual valves, look changed over: see which port feeds which axle";
    if (all_given({&a.residual_pa}, v)) {
      v.predicted = a.residual_pa.value;
      v.high = most_disc_pa;
      v.scale = most_disc_pa;
    }
    out.push_back(std::move(v));
  });
}

void residual_drum(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_axle(of(model), [&](const char* place, const AxleModel& a) {
    if (!a.make.given() || !a.drum) return;
    Verdict v{.place = place, .fix_hint = "a 10 psi residual valve for plain cups, or cylinders with cup expanders"};
    if (all_given({&a.residual_pa, &a.cups, &a.above_m}, v)) {
      const double head = -physics::fluid_head(a.above_m.value).value;
      const bool plain = a.cups.value == static_cast<double>(Cups::plain);
      v.predicted = a.residual_pa.value;
      // Held cups need no more than keeps the fluid up; where nothing pulls a gauge may read a little under nothing.
      v.low = plain ? least_drum_pa : head > 0 ? head : -psi_pa;
      v.high = most_expanded_pa;
      v.scale = most_expanded_pa;
    }
    out.push_back(std::move(v));
  });
}

void reducing_valves(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  each_axle(m, [&](const char* place, const AxleModel& a) {
    if (a.reducing == 0) return;
    Verdict v{.place = place,
              .reason = a.reducing == 1 ? "one valve that reduces in its line"
                                        : words("%.0f valves that reduce in one line", static_cast<double>(a.reducing)),
              .fix_hint = "keep one: with the adjustable valve a distribution block that has no proportioning section",
              .rule = a.reducing < 2};
    if (run.trace->rows() > 0 && a.reducing > 1 && !std::isnan(run.at(0, road::n_share))) {
      Model one = m;
      const Stopped s = road::car_at(run, 0, false);
      AxleModel& line = &a == &m.front ? one.front : one.rear;
      // The last that reduces alone: what is adjusted is mostly that one.
      const auto reduces = [](const physics::BrakeValve& b) {
        return b.kind == physics::BrakeValveKind::reduces && b.slope < 1;
      };
      for (std::size_t i = 0; i < line.valves; ++i)
        if (reduces(line.light[i])) line.light[0] = line.light[i];
      line.valves = 1;
      const Lock both = first_lock(m, m.dry, s), alone = first_lock(one, m.dry, s);
      v.because.push_back(told_rate("as built an axle locks at", both.rate));
      v.because.push_back(told("and the other uses an adhesion of", both.other_use, kind::number, ""));
      v.because.push_back(told_rate("with the last valve alone it locks at", alone.rate));
    }
    out.push_back(std::move(v));
  });
}

void circuits(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "a tandem master cylinder with a line to each axle"};
  if (all_given({&m.split}, v)) {
    v.rule = m.two_circuits();
    v.reason = "circuits: " + std::string(split_names[static_cast<std::size_t>(m.split.value)]);
  }
  out.push_back(std::move(v));
}

void difference_warning(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.split.given() && !m.two_circuits()) return;
  Verdict v{.fix_hint =
                "a pressure-difference switch in the distribution block, or a level switch in the reservoir, with "
                "its lamp"};
  if (all_given({&m.warning}, v)) {
    v.rule = m.warning.value > 0;
    v.reason = *v.rule ? "a lamp tells of a lost circuit" : "nothing tells the driver that a circuit is lost";
  }
  out.push_back(std::move(v));
}

void fluid_mix(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint = "the fluid that was in it, or every kept part apart, washed with spirit and given new rubber"};
  if (all_given({&m.grade, &m.before}, v)) {
    v.rule = silicone(m.grade.value) == silicone(m.before.value) || m.cleaned;
    v.reason = grade_words(m.grade.value) + " where " + grade_words(m.before.value) + " stood" +
               (m.cleaned ? ", cleaned out between" : "");
  }
  out.push_back(std::move(v));
}

void hose_slack(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_axle(of(model), [&](const char* place, const AxleModel& a) {
    Verdict v{.place = place, .fix_hint = "longer hoses or another bracket; then again at droop, lock and bump"};
    if (all_given({&a.hose_slack_m}, v)) {
      v.predicted = a.hose_slack_m.value;
      v.low = least_slack_m;
      v.scale = least_slack_m;
    }
    out.push_back(std::move(v));
  });
}

}  // namespace sw::brakes
