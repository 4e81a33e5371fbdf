#pragma once
// Cautions: one table of them; a requirement names its own, and every finding and sheet carries the text.
#include <cstdint>
#include <string_view>

namespace sw {

enum class Hazard : std::uint8_t { harm, damage, nuisance };
inline constexpr std::string_view hazard_names[] = {"harm", "damage", "nuisance"};

enum class Caution : std::uint8_t {
  none,
  electrical_fire,
  battery_gas,
  fans_start,
  belts_pulleys,
  hot_coolant,
  carbon_monoxide,
  refrigerant,
  lift,
  fuel_fire,
  braking_loss,
  brake_fluid,
  old_linings,
  wheels_tyres,
  runaway_throttle,
  high_voltage,
  knock,
  steering_loss,
  whirling_shaft,
  unintended_motion,
  bolts_let_go,
};

/// Short words for the line beside a finding, and the whole caution in one or two sentences.
std::string_view caution_name(Caution c);
std::string_view caution_text(Caution c);
/// What a proof is not: stands with every one that is shown.
std::string_view proof_limits();

}  // namespace sw
