#pragma once
// The cars of the certification list.
#include <filesystem>
#include <map>

#include "drive.hpp"

namespace sw::validation {

struct TestedCar {
  double mass_kg = 0, displacement_m3 = 0, power_w = 0, axle = 0, top_rad_m = 0;
  int gears = 0;
  bool automatic = true, hybrid = false;
  Coefficients road;
  double city_mpg = 0, highway_mpg = 0;              ///< as measured, unadjusted
  double cold_mpg = 0, steady_mpg = 0, hot_mpg = 0;  ///< bags 1 to 3 of the city test; 0 where not told
};
std::vector<TestedCar> tested_cars(const std::filesystem::path& data);

/// The middle one of each figure of the listed cars of 2.4 to 2.6 litre and 170 to 230 hp, no hybrids.
TestedCar middle_car(const std::filesystem::path& data);

/// The generic car of today with the weight, engine and gears of a tested one, and its road load if wanted.
Build build_of(const TestedCar& car, const Build& generic, bool its_road_load);

}  // namespace sw::validation
