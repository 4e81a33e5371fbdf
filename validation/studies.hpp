#pragma once
// The studies. Each reads its data below the folder and adds its part to the report.
#include <filesystem>

#include "report.hpp"

namespace sw::validation {

void fan_cycles(const std::filesystem::path& data, Report& report);
void warm_ups(const std::filesystem::path& data, Report& report);
void cranking(const std::filesystem::path& data, Report& report);
void road_load(const std::filesystem::path& data, Report& report);
void old_cars(const std::filesystem::path& data, Report& report);
void fuel_use(const std::filesystem::path& data, Report& report);
void fuel_flow(const std::filesystem::path& data, Report& report);
void battery(const std::filesystem::path& data, Report& report);
void single_points(const std::filesystem::path& data, Report& report);

}  // namespace sw::validation
