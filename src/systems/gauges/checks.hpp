#pragma once
// What the rules of gauges share: ports, limits, and the functions of each rule for the table in requirements.cpp.
#include <algorithm>
#include <cmath>
#include <string>

#include "model/told.hpp"
#include "systems/gauges/gauges.hpp"

namespace sw::gauges {

/// One of the three lists of dials: how its figures are told, and how far it may be off.
struct Terms {
  std::vector<DialModel> Model::*list;
  const Kind& kind;
  std::string_view unit;
  const Kind& step;
  std::string_view step_unit;
  double limit;        ///< SI; or
  double limit_share;  ///< of the scale where it is not 0
  double limit_of(const DialModel& m) const { return limit_share > 0 ? limit_share * m.span() : limit; }
};
inline constexpr double fuel_limit = 0.05, temperature_limit_k = 5 / 1.8, pressure_limit_share = 0.05;
inline constexpr Terms fuel_terms{&Model::fuel, kind::number, "%", kind::number, "%", fuel_limit, 0};
inline constexpr Terms temperature_terms{
    &Model::temperature, kind::temperature, "degF", kind::temperature_step, "degF", temperature_limit_k, 0};
inline constexpr Terms pressure_terms{
    &Model::pressure, kind::gauge_pressure, "psi", kind::pressure_difference, "psi", 0, pressure_limit_share};

inline const Model& of(const void* model) { return *static_cast<const Model*>(model); }
inline Because said(std::string what, std::string text) { return {.what = std::move(what), .text = std::move(text)}; }

/// The family of senders whose ends lie within a tenth of the larger of them: ` (family 73-10)`; empty where none does,
/// and for thermistors, whose ends are of no fixed temperature.
inline std::string family_words(const DialModel& m, double low_ohm, double high_ohm) {
  if (m.law == physics::SenderLaw::thermistor) return {};
  for (auto& f : physics::end_families) {
    const double near = 0.1 * std::max(f.low_ohm, f.high_ohm);
    if (std::abs(low_ohm - f.low_ohm) <= near && std::abs(high_ohm - f.high_ohm) <= near)
      return " (family " + std::string(f.name) + ")";
  }
  return {};
}

/// Reading over the range and at its usual value; the tank's shape comes by the ports.
namespace reading {
enum Need { n_quarter, n_half, n_three_quarters, need_count };
inline constexpr Port needs[] = {{"fuel.share_at_quarter", &kind::number},
                                 {"fuel.share_at_half", &kind::number},
                                 {"fuel.share_at_three_quarters", &kind::number}};
static_assert(std::size(needs) == need_count);
TankShape tank(const Evidenced& run, int first_need = n_quarter);
void fuel(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void temperature(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void pressure(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace reading

/// Where the needle stands when the pump begins to draw air.
namespace reserve {
enum Need { n_quarter, n_half, n_three_quarters, n_volume, n_out_of_reach, need_count };
inline constexpr Port needs[] = {{"fuel.share_at_quarter", &kind::number},
                                 {"fuel.share_at_half", &kind::number},
                                 {"fuel.share_at_three_quarters", &kind::number},
                                 {"fuel.tank_volume", &kind::volume},
                                 {"fuel.out_of_reach", &kind::volume}};
static_assert(std::size(needs) == need_count);
inline constexpr double most_shown = 0.10;
inline constexpr double needle = 0.02;  ///< of the scale: it stands on a mark within its own width
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace reserve

/// True value at which a lamp lights.
namespace lamp {
void fuel(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void temperature(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void pressure(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace lamp

/// Ohms in a sender's way to its ground.
namespace joint {
inline constexpr double most_ohm = 0.5;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace joint

/// How far the needle moves with the loads of a duty.
namespace steady {
enum Need {
  n_block,
  n_body,
  n_dash,
  n_support,
  n_cluster,
  n_battery,
  need_count,
};
inline constexpr Port needs[] = {{"ground.block", &kind::voltage},    {"ground.body", &kind::voltage},
                                 {"ground.dash", &kind::voltage},     {"ground.support", &kind::voltage},
                                 {"cluster.voltage", &kind::voltage}, {"battery.voltage", &kind::voltage}};
static_assert(std::size(needs) == need_count);
inline constexpr std::string_view running[] = {"*running"};
inline constexpr std::string_view chain[] = {"load.current"};
void fuel(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void temperature(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void pressure(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace steady

namespace volts {
enum Need { n_cluster, n_battery, need_count };
inline constexpr Port needs[] = {{"cluster.voltage", &kind::voltage}, {"battery.voltage", &kind::voltage}};
static_assert(std::size(needs) == need_count);
inline constexpr double most_v = 0.5;
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace volts

namespace signals {
inline constexpr double limit = 0.04;      ///< of the speed
inline constexpr double least_mph = 8;     ///< by which every reader of a coil sensor is alive
inline constexpr double told_at_mph = 60;  ///< shown there is told
enum Need { n_radius, n_axle, need_count };
inline constexpr Port needs[] = {{"driveline.wheel_radius", &kind::length}, {"driveline.axle", &kind::number}};
static_assert(std::size(needs) == need_count);
void engine_speed(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void level(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void road_speed(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void listeners(const void* model, const Evidenced& run, std::vector<Verdict>& out);
}  // namespace signals

}  // namespace sw::gauges
