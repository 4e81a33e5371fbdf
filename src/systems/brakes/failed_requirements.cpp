// What is left when booster or a circuit fails, and the parking brake on a hill.
#include <algorithm>
#include <cmath>

#include "physics/brake_stop.hpp"
#include "systems/brakes/checks.hpp"
#include "systems/brakes/travel.hpp"

namespace sw::brakes {
namespace {

/// Mean deceleration that the stop from 100 km/h with something failed asks (49 CFR 571.135 S7.10 and S7.11: 168 m).
const double failed_m_s2 = physics::stop_limit(physics::StopTest::failed_circuit, hundred_km_h_m_s).deceleration_m_s2;
constexpr double barely = 0.01;  ///< a rate below which no distance is told

std::string lost_words(Split split, Lost lost, bool laden) {
  const std::string_view which = split == Split::diagonal
                                     ? (lost == Lost::first ? "one diagonal lost" : "other diagonal lost")
                                 : lost == Lost::first ? "front lost"
                                                       : "rear lost";
  return std::string(which) + (laden ? ", laden" : "");
}

/// Each circuit lost in turn, as driven and, where that is known, laden.
template <class F>
void each_lost(const Evidenced& run, F&& look) {
  for (const bool laden : {false, true})
    if (!laden || road::laden_known(run))
      for (const Lost lost : {Lost::first, Lost::second}) look(lost, laden);
}

void tell_stop(Verdict& v, double rate) {
  if (rate > barely) v.because.push_back(told("stop from 100 km/h", stop_m(hundred_km_h_m_s, rate), kind::length, "m"));
}

}  // namespace

void booster_failed(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!has_booster(m, out)) return;
  if (!road::foot_known(m, run)) return out.push_back({});
  const std::size_t row = road::hardest_row(run);
  const Stopped s = road::car_at(run, row, road::laden_known(run));
  const double rate = rate_at_pedal(m, panic_n, 0, s);
  Verdict v{.predicted = rate * standard_gravity_m_s2,
            .low = failed_m_s2,
            .scale = failed_m_s2,
            .row = row,
            .fix_hint = "a smaller master bore or a longer pedal ratio, or more torque a psi"};
  v.because.push_back(
      told("line pressure at 500 N without vacuum", pressure_at_pedal(m, panic_n, 0), kind::gauge_pressure, "psi"));
  tell_stop(v, rate);
  out.push_back(std::move(v));
}

void circuit_lost(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict unknown{};
  if (!all_given({&m.split}, unknown)) return out.push_back(std::move(unknown));
  const std::size_t row = road::weakest_row(run);
  if (!m.two_circuits()) {
    out.push_back({.place = "the only one lost",
                   .predicted = 0.0,
                   .low = failed_m_s2,
                   .scale = failed_m_s2,
                   .row = row,
                   .fix_hint = "a tandem master cylinder with a line to each axle"});
    return;
  }
  if (!road::foot_known(m, run)) return out.push_back({});
  const double line = pressure_at_pedal(m, panic_n, run.at(row, road::n_vacuum));
  each_lost(run, [&](Lost lost, bool laden) {
    const Stopped s = road::car_at(run, row, laden);
    const Model left = without(m, lost);
    const double rate = std::min(force_left(left, lost, line, s) / s.weight_n, lock_left(left, lost, s));
    Verdict v{.place = lost_words(static_cast<Split>(m.split.value), lost, laden),
              .predicted = rate * standard_gravity_m_s2,
              .low = failed_m_s2,
              .scale = failed_m_s2,
              .row = row,
              .fix_hint =
                  "more torque a psi on the axle that is left, or a valve that opens when the other circuit "
                  "fails"};
    v.because.push_back(told("line pressure at 500 N", line, kind::gauge_pressure, "psi"));
    tell_stop(v, rate);
    out.push_back(std::move(v));
  });
}

void travel_lost(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (m.split.given() && !m.two_circuits()) return;
  Verdict unknown{};
  if (!all_given({&m.split, &m.ratio, &m.pedal_m, &m.stroke_m, &m.front_chamber_m, &m.take_up_m, &m.front.clearance_m,
                  &m.rear.clearance_m, &m.front.give_m, &m.rear.give_m, &m.front.line_give_m3, &m.rear.line_give_m3},
                 unknown))
    return out.push_back(std::move(unknown));
  const std::size_t row = road::hardest_row(run);
  each_lost(run, [&](Lost lost, bool laden) {
    const Model left = without(m, lost);
    const Stopped s = road::car_at(run, row, laden);
    Verdict v{
        .place = lost_words(static_cast<Split>(m.split.value), lost, laden),
        .low = 0.0,
        .scale = m.pedal_m.value,
        .row = row,
        .fix_hint = "a larger master bore, a shorter pedal ratio, or a shorter chamber for the circuit that fails"};
    const auto line = pressure_left_for(left, lost, failed_m_s2 / standard_gravity_m_s2 * s.weight_n, s);
    if (!line) {
      v.reason =
          "what is left does not brake that hard at 14 MPa (2030 psi), where the law of what brakes take up ends";
      return out.push_back(std::move(v));
    }
    const double stroke = stroke_left_at(left, lost, *line, s.laden);
    v.predicted = m.pedal_m.value - stroke * m.ratio.value;
    v.because.push_back(told("line pressure asked of what is left", *line, kind::gauge_pressure, "psi"));
    v.because.push_back(told("stroke of the push rod then", stroke, kind::length, "in"));
    out.push_back(std::move(v));
  });
}

void parking(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  enum Need { n_mass, n_radius, n_laden, n_laden_mass };
  auto& m = of(model);
  const auto look = [&](const char* place, double mass_kg) {
    Verdict v{.place = place,
              .fix_hint = "more leverage, shoes or pads adjusted and bedded, a factor measured on the car"};
    if (all_given({&m.parking_by, &m.parking_leverage, &m.parking_factor, &m.parking_radius_m}, v)) {
      const double force = m.parking_by.value == static_cast<double>(Limb::hand) ? parking_hand_n : parking_foot_n;
      const double at_road =
          force * m.parking_leverage.value * m.parking_factor.value * m.parking_radius_m.value / run.at(0, n_radius);
      const double sine = at_road / (mass_kg * standard_gravity_m_s2);
      // More than holds on a wall is told as a grade of ten to one.
      v.predicted = sine < 0.995 ? std::tan(std::asin(sine)) : 10.0;
      if (std::isnan(sine)) v.predicted.reset();
      v.low = parking_grade;
      v.scale = parking_grade;
      if (v.predicted) v.because.push_back(told("force it holds at the road", at_road, kind::force, "lbf"));
    }
    out.push_back(std::move(v));
  };
  look("", run.at(0, n_mass));
  if (run.at(0, n_laden) > 0) look("laden", run.at(0, n_laden_mass));
}

}  // namespace sw::brakes
