#pragma once
// The rules of the throttle-valve cable and the ports they read.
#include "systems/transmission/checks.hpp"

namespace sw::transmission {
namespace cable {

enum TravelNeed { n_opened, n_reaches, travel_need_count };
inline constexpr Port travel_needs[] = {{"throttle.opened", &kind::angle}, {"throttle.reaches", &kind::number}};
static_assert(std::size(travel_needs) == travel_need_count);
enum HoldNeed { n_torque, n_pedal_opens, n_pedal_reaches, hold_need_count };
inline constexpr Port needs[] = {
    {"engine.full_torque", &kind::torque}, {"throttle.opened", &kind::angle}, {"throttle.reaches", &kind::number}};
static_assert(std::size(needs) == hold_need_count);
inline constexpr Port stop_needs[] = {{"throttle.open_stop", &kind::angle}};
inline constexpr Port line_needs[] = {{"mounts.intake_raised", &kind::length}};
inline constexpr std::string_view pulls[] = {"full-throttle"};
inline constexpr std::string_view chain[] = {"engine.full_torque"};

}  // namespace cable

void judge_cable_travel(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_one_throttle(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_clutch_hold(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_cable_line(const void* model, const Evidenced& run, std::vector<Verdict>& out);

}  // namespace sw::transmission
