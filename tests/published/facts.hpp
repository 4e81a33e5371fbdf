#pragma once
// Published figures that no sum gives: laws, constants and units of the program, each by its number and source, and
// what the program has in its place.
#include <limits>
#include <string_view>
#include <vector>

#include "physics/convection.hpp"
#include "physics/engine.hpp"
#include "physics/gasoline.hpp"
#include "physics/gauge.hpp"
#include "physics/road_load.hpp"
#include "physics/sender.hpp"
#include "physics/tube_strength.hpp"
#include "published/electric_facts.hpp"
#include "quantity/customary.hpp"
#include "quantity/parse.hpp"
#include "quantity/unit.hpp"
#include "systems/brakes/checks.hpp"

namespace sw::published {

enum class Held { near, at_least, at_most };

struct Fact {
  std::string_view area, id, what;
  double expected;
  std::string_view unit, tolerance;
  double (*computed)();
  std::string_view source, provenance;
  Held held = Held::near;
};

/// 0.50 lb/(hp h) in g/(kW h).
inline double consumption_in_metric() {
  const auto read = parse_quantity("0.50 lb/(hp h)", kind::specific_consumption);
  const auto metric = parse_unit_for("g/(kW h)", kind::specific_consumption);
  return std::get<Parsed>(read).si / std::get<Unit>(metric).factor;
}

inline double end_of(std::string_view family, bool high) {
  for (auto& f : physics::end_families)
    if (f.name == family) return high ? f.high_ohm : f.low_ohm;
  return std::numeric_limits<double>::quiet_NaN();
}

/// In inches, of 1/4 in tube with a 0.035 in wall.
inline double bore_left_by_a_bend() {
  return physics::least_bent_bore_m(0.25 * inch_m, 0.035 * inch_m, physics::BentTube::aluminium_6061).value() / inch_m;
}

inline const std::vector<Fact>& facts() {
  constexpr std::string_view lock = "49 CFR 571.135 S7.2, wheel lock sequence",
                             park = "49 CFR 571.135 S7.12; UN R13-H Annex 3", memory = "from memory",
                             seen = "published-seen", practice = "common practice",
                             navy = "US Navy training text on aviation hydraulics (NAVEDTRA 14018)";
  static const std::vector<Fact> all = {
      {"brakes", "BRK-08", "greatest pedal force of the cold stop", 500, "N", "exact", [] { return +brakes::panic_n; },
       "49 CFR 571.135 S7.5; UN R13-H Annex 3", memory},
      {"brakes", "BRK-09", "grade a parking brake holds", 20, "%", "exact", [] { return 100 * brakes::parking_grade; },
       park, memory},
      {"brakes", "BRK-09 hand", "the same, by at most this at a hand lever", 400, "N", "exact",
       [] { return +brakes::parking_hand_n; }, park, memory},
      {"brakes", "BRK-09 foot", "the same, by at most this at a pedal", 500, "N", "exact",
       [] { return +brakes::parking_foot_n; }, park, memory},
      {"brakes", "BRK-14", "front axle locks first from this rate", 0.15, "g", "exact",
       [] { return +brakes::lowest_rate; }, lock, memory},
      {"brakes", "BRK-14 up to", "the same, up to this rate", 0.80, "g", "exact", [] { return +brakes::highest_rate; },
       lock, memory},
      {"fluids", "FLU-21", "density of gasoline at 15 degC, lower end", 720, "kg/m3", "exact",
       [] { return +physics::gasoline(288.15).density_kg_m3; }, "EN 228", memory, Held::at_least},
      {"fluids", "FLU-21 up to", "the same, upper end", 775, "kg/m3", "exact",
       [] { return +physics::gasoline(288.15).density_kg_m3; }, "EN 228", memory, Held::at_most},
      {"fluids", "HTX-19", "Nusselt number, free convection on a vertical plate, Pr 0.69, Gr 2.63e9", 147, "-", "0.5%",
       [] { return +physics::nusselt_vertical_plate(0.69 * 2.63e9, 0.69).value; },
       "Incropera Example 9.2; printed in the documentation of an open-source heat transfer library", seen},
      {"tubes", "TUB-20", "bore left by a bend, 1/4 in of 0.035 in wall, 6061", 0.15, "in", "exact",
       bore_left_by_a_bend, "US Navy training text on aviation hydraulics (NAVEDTRA 14018), table 6-6", seen},
      {"tubes", "TUB-22", "proof over working pressure of a made-up tube", 2, "-", "exact",
       [] { return +physics::proof_over_working; }, navy, seen},
      {"tubes", "TUB-22 least", "the same, but at least this", 100, "psi", "1e-9",
       [] { return physics::least_proof_pa / psi_pa; }, navy, seen},
      {"senders", "SND-06", "fuel sender 240-33, empty", 240, "ohm", "exact", [] { return end_of("240-33", false); },
       "convention of the trade, in many public projects", practice},
      {"senders", "SND-07", "fuel sender 0-90, full", 90, "ohm", "exact", [] { return end_of("0-90", true); },
       "convention of the trade, in many public projects", practice},
      {"gears", "TYR-06", "turns of a speedometer cable for a mile", 1000, "rev/mile", "1e-9",
       [] { return physics::usual_head_turns_m * mile_m; }, "most heads; SAE J678 family", practice},
      {"gears", "TYR-13", "error of a commercial car's speedometer", 5, "mph", "1e-12",
       [] { return physics::us_speed_error_m_s / mph_m_s; }, "49 CFR 393.82", seen},
      {"gears", "TYR-13 at", "the same, at", 50, "mph", "1e-12", [] { return physics::us_speed_at_m_s / mph_m_s; },
       "49 CFR 393.82", seen},
      {"engine", "ENG-08", "0.50 lb/(hp h) in metric", 304.1, "g/(kW h)", "0.05%", consumption_in_metric,
       "units: 608.277", memory},
      {"engine", "ENG-11", "greatest share of fuel heat to coolant", 26, "%", "2",
       [] { return 100 * physics::greatest_coolant_share; }, "Heywood, table 12.1", memory},
      {"engine", "ENG-11 least", "least share of fuel heat to coolant", 17, "%", "2",
       [] { return 100 * physics::least_coolant_share; }, "Heywood, table 12.1", memory},
      {"engine", "ENG-15", "efficiency of an ideal Otto cycle, r 8, k 1.4", 0.565, "-", "0.1%",
       [] { return +physics::otto_efficiency(8, 1.4); }, "Cengel and Boles, Otto cycle example", memory},
      {"road", "RLD-17", "city 15 and highway 22 mpg combined", 17.5, "mpg", "0.01",
       [] { return +physics::combined_economy(15, 22); }, "40 CFR Part 600", memory},
      {"electric", "ELE-18", "continuous drop on a 14 V bus: what every feed is held to", 0.5, "V", "exact", feed_drop,
       "FAA AC 43.13-1B ch. 11, table of allowable voltage drop", memory},
      {"electric", "ELE-32", "continuous load as a share of a blade fuse's rating", 75, "%", "5",
       load_of_the_asked_fuse, "design practice for automotive blade fuses, 70 to 80 %", practice},
      {"electric", "ELE-33", "speed at which an alternator's rated current is stated", 6000, "rpm", "1e-6",
       speed_of_rated_current, "ISO 8854; SAE J56", memory},
      {"electric", "ELE-33 gives", "the usual shape of a 150 A alternator there", 150, "A", "1e-9",
       current_at_rated_speed, "ISO 8854; SAE J56", memory},
  };
  return all;
}

}  // namespace sw::published
