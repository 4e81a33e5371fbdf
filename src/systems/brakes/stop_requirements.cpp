// What a stop shows: pedal force, lock order, grip put to use, distance, lamps, pressure in the lines.
#include <algorithm>
#include <cmath>
#include <cstdio>

#include "physics/brake_stop.hpp"
#include "systems/brakes/checks.hpp"
#include "systems/brakes/travel.hpp"

namespace sw::brakes {
namespace road {

Stopped car_at(const Evidenced& run, std::size_t row, bool laden) {
  auto at = [&](Need light, Need heavy) { return run.at(row, laden ? heavy : light); };
  return stopped(at(n_mass, n_laden_mass), at(n_share, n_laden_share), at(n_height, n_laden_height),
                 run.at(row, n_wheelbase), run.at(row, n_radius), laden);
}

bool laden_known(const Evidenced& run) { return run.at(0, n_laden) > 0; }

bool foot_known(const Model& m, const Evidenced& run) {
  if (m.fitted.given() && !m.assisted) return m.ratio.given() && m.bore_area_m2.given();
  return !run.lacks(n_vacuum) && !run.lacks(n_pedal);
}

std::size_t hardest_row(const Evidenced& run) { return run.trace->lowest(run.slot(n_acceleration)); }

std::size_t weakest_row(const Evidenced& run) {
  std::size_t row = hardest_row(run);
  if (!(run.at(row, n_acceleration) < 0)) return run.last();
  for (std::size_t i = 0; i < run.trace->rows(); ++i)
    if (run.at(i, n_acceleration) < 0 && run.at(i, n_vacuum) < run.at(row, n_vacuum)) row = i;
  return row;
}

}  // namespace road

std::string words(const char* format, double a, double b) {
  char text[200];
  std::snprintf(text, sizeof text, format, a, b);
  return text;
}

bool all_given(std::initializer_list<const Known*> needed, Verdict& v) {
  for (auto* k : needed)
    if (!k->given() && std::find(v.missing.begin(), v.missing.end(), k->path) == v.missing.end())
      v.missing.push_back(k->path);
  return v.missing.empty();
}

bool locks_at(const Model& m, double rate, const Stopped& s) { return !(rate < first_lock(m, m.dry, s).rate - 1e-6); }

bool has_booster(const Model& m, std::vector<Verdict>& out) {
  if (!m.fitted.given()) out.push_back({.missing = {m.fitted.path}});
  return m.assisted;
}

namespace {

constexpr double least_assisted_n = 30 * lbf_n, most_assisted_n = 65 * lbf_n, most_unassisted_n = 100 * lbf_n;
constexpr double lamp_rate = 0.05;
constexpr double most_pumped_pa = 20 * in_hg_pa;   ///< where a car's electric pump is switched off (common practice)
constexpr double most_working_vacuum_pa = 81.3e3;  ///< a fully evacuated booster: 24 inHg (common practice)

std::string axle_word(bool rear) { return rear ? "rear" : "front"; }

/// Line that tells the first axle to lock on a road.
Because lock_told(const Model& m, const char* road, double adhesion, const Stopped& s) {
  const Lock lock = first_lock(m, adhesion, s);
  return told_rate(std::string(road) + ", the " + axle_word(lock.rear) + " axle locks first, at", lock.rate);
}

/// What helps a foot that must press too hard, by the vacuum that would do.
std::string more_assist(std::optional<double> vacuum_pa) {
  if (!vacuum_pa) return "a booster of more gain, a longer pedal ratio or a smaller master bore: no vacuum is enough";
  if (*vacuum_pa > most_pumped_pa)
    return "more diaphragm area or a smaller master bore: no pump or engine holds the vacuum it would take";
  return words(
      "vacuum held at %.0f inHg or more at the booster (a pump with its switch set there; a long camshaft gives "
      "less), more diaphragm area, or a smaller master bore",
      std::ceil(*vacuum_pa / in_hg_pa));
}

/// Both states of load a build gives, each with its place.
template <class F>
void as_driven_and_laden(const Evidenced& run, F&& look) {
  look("as driven", false);
  if (road::laden_known(run)) look("laden", true);
}

}  // namespace

void pedal_force(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!road::foot_known(m, run)) return out.push_back({});
  const std::size_t row = road::weakest_row(run);
  const Stopped s = road::car_at(run, row, false);
  const double vacuum = run.at(row, road::n_vacuum);
  const Lock lock = first_lock(m, m.dry, s);
  // A car whose first axle locks before 0.8 g is judged there, by its share of the force allowed.
  const double rate = std::min(hard_rate, lock.rate), share = rate / hard_rate;
  auto pedal = [&](double z, const Stopped& car) {
    return pedal_at_pressure(m, line_pressure_for(m, z * car.weight_n, car), vacuum);
  };
  Verdict v{.predicted = pedal(rate, s),
            .low = m.assisted ? least_assisted_n * share : 0.0,
            .high = (m.assisted ? most_assisted_n : most_unassisted_n) * share,
            .scale = (m.assisted ? most_assisted_n : most_unassisted_n) * share,
            .row = row};
  std::optional<double> would_do_pa;
  v.because.push_back(told_rate("judged at", rate));
  v.because.push_back(
      told("line pressure there", line_pressure_for(m, rate * s.weight_n, s), kind::gauge_pressure, "psi"));
  if (m.assisted) {
    const double needed = line_pressure_for(m, rate * s.weight_n, s) * m.bore_area_m2.value;
    v.because.push_back(told("force asked of the booster", needed, kind::force, "lbf"));
    v.because.push_back(told("assist at run-out", assist_at(m, vacuum), kind::force, "lbf"));
    // The push rod may have the foot's greatest share; the diaphragms give the rest.
    // Before it runs out a booster gives no more than its gain: beyond that no vacuum helps.
    const double rod_n = *v.high * m.ratio.value, short_n = needed - rod_n + m.booster.spring_n;
    if (needed <= m.booster.gain * rod_n)
      would_do_pa = std::max(0.0, short_n) / (m.booster.efficiency * m.booster.area_m2);
    if (would_do_pa) v.because.push_back(told("vacuum that would do", *would_do_pa, kind::vacuum, "inHg"));
  }
  for (const double z : {0.3, 0.6})
    v.because.push_back(told(words("pedal force at %.1f g", z), pedal(z, s), kind::force, "lbf"));
  if (road::laden_known(run)) {
    const Stopped heavy = road::car_at(run, row, true);
    v.because.push_back(told("pedal force at that rate, laden", pedal(rate, heavy), kind::force, "lbf"));
  }
  const bool heavy_foot = *v.predicted - *v.low > *v.high - *v.predicted;  // the nearer end of the band
  v.fix_hint = !m.assisted  ? "a smaller master bore or a longer pedal ratio as far as travel allows, or a booster"
               : heavy_foot ? more_assist(would_do_pa)
                            : "a shorter pedal ratio (the lower hole) or a larger master bore";
  out.push_back(std::move(v));
}

void lock_order_verdicts(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const std::size_t row = road::hardest_row(run);
  as_driven_and_laden(run, [&](const char* place, bool laden) {
    const Stopped s = road::car_at(run, row, laden);
    const Order order = lock_order(m, s);
    const auto use = use_at(m, order.line_pa, s);
    Verdict v{.place = place,
              .predicted = order.least,
              .low = 0.0,
              .scale = 0.1,
              .row = row,
              .fix_hint = m.rear.reducing > 0
                              ? "a lower knee or slope of the rear's valve (`solve proportioning` finds it), a valve "
                                "that feels the load where light and laden ask for two"
                              : "a reducing valve in the rear's line, or smaller rear cylinders"};
    v.because.push_back(told_rate("least at", order.rate));
    v.because.push_back(told("line pressure there", order.line_pa, kind::gauge_pressure, "psi"));
    v.because.push_back(told("adhesion the front uses there", use.front, kind::number, ""));
    v.because.push_back(told("adhesion the rear uses there", use.rear, kind::number, ""));
    v.because.push_back(told("ideal share of the rear there",
                             1 - physics::ideal_front_share(s.balance, order.rate).value, kind::number, "%"));
    v.because.push_back(told("its share as built",
                             axle_force(m.rear, order.line_pa, s) / braking_force(m, order.line_pa, s), kind::number,
                             "%"));
    v.because.push_back(lock_told(m, "dry", m.dry, s));
    v.because.push_back(lock_told(m, "wet", m.wet, s));
    out.push_back(std::move(v));
  });
}

void adhesion_use_verdicts(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  constexpr double first = physics::adhesion_line_from, last = physics::adhesion_line_to, step = 0.05;
  auto& m = of(model);
  const std::size_t row = road::hardest_row(run);
  as_driven_and_laden(run, [&](const char* place, bool laden) {
    const Stopped s = road::car_at(run, row, laden);
    double least = HUGE_VAL, at = first;
    for (double k = first; k < last + step / 2; k += step) {
      const double over =
          first_lock(m, k, s).rate - physics::adhesion_line_rate(physics::AdhesionLine::un_r13h, k).value;
      if (over < least) least = over, at = k;
    }
    const Lock lock = first_lock(m, at, s);
    Verdict v{.place = place, .predicted = least, .low = 0.0, .scale = 0.1, .row = row};
    v.because.push_back(told("least on a road of adhesion", at, kind::number, ""));
    v.because.push_back(told_rate("there the " + axle_word(lock.rear) + " axle locks at", lock.rate));
    v.because.push_back(told("and the other uses an adhesion of", lock.other_use, kind::number, ""));
    v.fix_hint = "brake force moved to the axle that has grip left: piston areas, or the valve's knee";
    out.push_back(std::move(v));
  });
}

void stopping_distance(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  if (!road::foot_known(m, run)) return out.push_back({});
  const std::size_t row = road::weakest_row(run);
  as_driven_and_laden(run, [&](const char* place, bool laden) {
    const Stopped s = road::car_at(run, row, laden);
    const double rate = rate_at_pedal(m, panic_n, run.at(row, road::n_vacuum), s);
    const double cold_stop_m = physics::stop_limit(physics::StopTest::cold, hundred_km_h_m_s).distance_m;
    Verdict v{.place = place,
              .predicted = stop_m(hundred_km_h_m_s, rate),
              .high = cold_stop_m,
              .scale = cold_stop_m,
              .row = row,
              .fix_hint = locks_at(m, rate, s)
                              ? better_balance
                              : "more line pressure at that foot (bore, ratio, booster), or more torque a psi"};
    v.because.push_back(told_rate("rate at 500 N, or at the first lock", rate));
    v.because.push_back(lock_told(m, "dry", m.dry, s));
    v.because.push_back(told("and from 60 mph", stop_m(60 * mph_m_s, rate), kind::length, "ft"));
    out.push_back(std::move(v));
  });
}

void lamp(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  Verdict v{.fix_hint =
                "a switch worked by the arm's travel, set in the first quarter inch, or one made for assisted "
                "brakes"};
  if (!all_given({&m.lamp_by}, v)) return out.push_back(std::move(v));
  const std::size_t row = road::hardest_row(run);
  const Stopped s = road::car_at(run, row, false);
  const auto by = static_cast<Switch>(m.lamp_by.value);
  double line = 0;
  if (by == Switch::load && !road::foot_known(m, run)) return out.push_back({});
  if (by == Switch::load && all_given({&m.lamp_force_n}, v))
    line = pressure_at_pedal(m, m.lamp_force_n.value, run.at(row, road::n_vacuum));
  if (by == Switch::pressure && all_given({&m.lamp_pa}, v)) line = m.lamp_pa.value;
  if (by == Switch::travel && all_given({&m.lamp_travel_m, &m.front.clearance_m, &m.rear.clearance_m, &m.front.give_m,
                                         &m.rear.give_m, &m.front.line_give_m3, &m.rear.line_give_m3, &m.take_up_m},
                                        v))
    line = pressure_at_stroke(m, m.lamp_travel_m.value / m.ratio.value);
  if (!v.missing.empty()) return out.push_back(std::move(v));
  v.predicted = braking_force(m, line, s) / s.weight_n * standard_gravity_m_s2;
  v.high = lamp_rate * standard_gravity_m_s2;
  v.scale = *v.high;
  v.row = row;
  v.because.push_back(told("line pressure as the lamps come on", line, kind::gauge_pressure, "psi"));
  out.push_back(std::move(v));
}

void line_pressure(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = of(model);
  const double most = pressure_at_pedal(m, panic_n, most_working_vacuum_pa);
  if (std::isnan(most)) return out.push_back({});
  const std::size_t row = road::hardest_row(run);
  auto look = [&](const char* place, const Known& rating) {
    Verdict v{
        .place = place, .row = row, .fix_hint = "hoses and tubes rated for the pressure, or a larger master bore"};
    if (all_given({&rating}, v)) {
      v.predicted = most;
      v.high = rating.value;
      v.scale = rating.value;
    }
    out.push_back(std::move(v));
  };
  look("hoses", m.hose_pa);
  look("tubes", m.tube_pa);
}

}  // namespace sw::brakes
