#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "physics/atmosphere.hpp"
#include "physics/manifold.hpp"
#include "quantity/customary.hpp"
#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

constexpr double sea_pa = physics::standard_pressure_pa;
constexpr Port manifold_port{"vacuum.manifold", &kind::vacuum, "inHg", "manifold vacuum"};
constexpr Port booster_port{"vacuum.booster", &kind::vacuum, "inHg", "vacuum at the booster"};
constexpr Port applied_port{"vacuum.applied", &kind::number, "", "how far the booster is applied"};
constexpr Port pump_port{"vacuum.pump_on", &kind::number, "", "vacuum pump running"};

/// Absolute pressure at idle, with the compressor's drop of speed or its own figure.
double idle_pressure(const Model& m, double idle_speed, double idle_speed_now, bool compressor) {
  const double alone = sea_pa - m.idle_pa;
  if (!compressor) return alone;
  if (m.idle_ac_pa) return sea_pa - *m.idle_ac_pa;
  // The same air at fewer turns fills the strokes more; idle raised on purpose opens the throttle and gains nothing.
  return alone * std::max(1.0, idle_speed / idle_speed_now);
}

namespace manifold {
enum Read { r_running, r_pressure, r_pull, r_speed, r_idle, r_idle_now, r_drive, r_full, r_ac, read_count };
constexpr Port reads[] = {outside::running,
                          outside::pressure,
                          outside::pull,
                          {"engine.speed", &kind::shaft_speed},
                          {"engine.plain_idle_speed", &kind::shaft_speed},
                          {"engine.idle_speed", &kind::shaft_speed},
                          {"driveline.power", &kind::power},
                          {"engine.full_power", &kind::power},
                          {"air_conditioning.on", &kind::number}};
static_assert(std::size(reads) == read_count);
enum Write { w_manifold, w_idle, write_count };
constexpr Port writes[] = {manifold_port, {"vacuum.idle", &kind::vacuum, "inHg", "manifold vacuum of this idle"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_idle, std::max(0.0, v.in(r_pressure)-idle_pressure(m, 1, 1, false)));
  if (!(v.in(r_running) > 0)) return v.set(w_manifold, 0);
  const double idle = idle_pressure(m, v.in(r_idle), v.in(r_idle_now), v.in(r_ac) > 0);
  const double share = v.in(r_pull) > 0 ? 1.0 : v.in(r_full) > 0 ? v.in(r_drive) / v.in(r_full) : 0.0;
  v.set(w_manifold,
        v.in(r_pressure)-physics::manifold_pressure(idle, v.in(r_idle_now), v.in(r_speed), share, v.in(r_pressure))
            .pressure_pa);
}
}  // namespace manifold

/// The booster's store: the check valve lets it fill and never empty; the foot presses its air together as it goes down
/// and lets the rear chambers' air in as it comes up (physics/vacuum_store, taken along the stroke).
namespace store {
constexpr double full_rate_m_s2 = 0.8 * standard_gravity_m_s2;  ///< braking that works the booster to run-out
constexpr double foot_s = 0.3;          ///< in which a foot goes down or comes up (common practice)
constexpr double nearly_none_pa = 500;  ///< below which what takes vacuum finds less and less to take
enum Read { r_manifold, r_booster, r_applied, r_acceleration, r_pump, r_running, r_pressure, read_count };
constexpr Port reads[] = {manifold_port, booster_port,     applied_port,     outside::acceleration,
                          pump_port,     outside::running, outside::pressure};
static_assert(std::size(reads) == read_count);
constexpr Port writes[] = {{"vacuum.pump_current", &kind::current, "A", "current of the vacuum pump"}};

/// What a pump can pull down to under that air.
double dead_end_pa(const PumpModel& pump, double air_pa) { return dead_end * pump.cut_out_pa * air_pa / sea_pa; }

double start_booster(const void* model, const Duty& d) {
  auto& m = *static_cast<const Model*>(model);
  // With the compressor on and nobody's gauge at it the run itself must say what the idle leaves: it begins with none.
  const double compressor = !d.air_conditioning.value_or(false) ? m.idle_pa : m.idle_ac_pa.value_or(0);
  const double air = d.altitude ? physics::standard_atmosphere(d.altitude->si).pressure_pa : sea_pa;
  const double pumped = m.pump ? std::min(m.pump->cut_in_pa, dead_end_pa(*m.pump, air)) : 0.0;
  return std::max({0.0, pumped, compressor - (sea_pa - air)});
}
double start_applied(const void*, const Duty&) { return 0; }
enum StateIndex { s_booster, s_applied, state_count };
constexpr StateInfo states[] = {{booster_port, start_booster, 2e3, in_thermal},
                                {applied_port, start_applied, 1.0, in_thermal}};
static_assert(std::size(states) == state_count);

double pump_start(const void*, const Duty&) { return 0; }
/// Positive: wants to change over, as a share of the vacuum it is judged by.
double pump_guard(const void* model, const View& v, double now) {
  auto& m = *static_cast<const Model*>(model);
  if (!m.pump) return -1;
  if (!(v.in(r_running) > 0)) return now > 0 ? 1 : -1;
  return now > 0 ? v.in(r_booster) / m.pump->cut_out_pa - 1 : 1 - v.in(r_booster) / m.pump->cut_in_pa;
}
double pump_next(const void* model, const View& v, double now) { return pump_guard(model, v, now) > 0 ? 1 - now : now; }
constexpr SwitchInfo switches[] = {{pump_port, pump_start, pump_next, pump_guard}};

/// Vacuum lost for each whole stroke of the foot downwards, below nothing: d(p V) = 0 with V = S - r_0 - a (r - r_0).
double pressed_pa(const StoreModel& s, double applied, double pressure_pa) {
  const double swept = s.rear_m3 - s.rear_at_rest_m3;
  return -pressure_pa * swept / (s.total_m3 - s.rear_at_rest_m3 - applied * swept);
}
/// Vacuum lost for each whole stroke upwards: d(p V) = p_a dV with V = S - a r, what is at rest behind spread along it.
double let_in_pa(const StoreModel& s, double applied, double vacuum_pa) {
  return vacuum_pa * s.rear_m3 / (s.total_m3 - applied * s.rear_m3);
}

void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double now = v.in(r_booster), air = v.in(r_pressure);
  const bool pumping = m.pump && v.in(r_pump) > 0;
  const double held = std::clamp(now / nearly_none_pa, 0.0, 1.0);
  double rate = std::max(0.0, v.in(r_manifold)-now) / m.fill_s - held * m.leak_pa_s;
  if (pumping) rate += std::max(0.0, dead_end_pa(*m.pump, air) - now) / m.pump->time_constant_s;
  double foot = 0;
  if (m.store) {
    // Most of a pedal's way is clearance: the stroke grows about as the root of the rate (regression: brake_travel's
    // law on an invented car, within a tenth of the whole).
    const double share = std::clamp(-v.in(r_acceleration) / full_rate_m_s2, 0.0, 1.0);
    foot = (std::sqrt(share) - v.in(r_applied)) / foot_s;
    rate *= m.store->total_m3 / (m.store->total_m3 - v.in(r_applied)*m.store->rear_m3);
    rate += foot > 0 ? held * pressed_pa(*m.store, v.in(r_applied), air - now) * foot
                     : let_in_pa(*m.store, v.in(r_applied), now) * foot;
  }
  v.rate(s_booster, rate);
  v.rate(s_applied, foot);
  v.set(0, pumping ? m.pump->current_a : 0.0);
}
}  // namespace store

/// Its volumes, told to whoever counts stops with nothing to fill it.
namespace volumes {
enum Write { w_total, w_rear, w_rest, write_count };
constexpr Port writes[] = {{"vacuum.store_volume", &kind::volume, "in3", "air in the booster's store at rest"},
                           {"vacuum.rear_volume", &kind::volume, "in3", "rear chambers with the brakes hard on"},
                           {"vacuum.rear_at_rest", &kind::volume, "in3", "rear chambers at rest"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const StoreModel s = m.store.value_or(StoreModel{});
  v.set(w_total, s.total_m3);
  v.set(w_rear, s.rear_m3);
  v.set(w_rest, s.rear_at_rest_m3);
}
}  // namespace volumes

constexpr Block all[] = {
    {"vacuum.manifold", manifold::reads, manifold::writes, {}, {}, manifold::evaluate},
    {"vacuum.store", store::reads, store::writes, store::states, store::switches, store::evaluate},
    {"vacuum.volumes", {}, volumes::writes, {}, {}, volumes::evaluate},
};

}  // namespace

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::vacuum
