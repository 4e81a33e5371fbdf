// validate DATA PLOTS: runs every study against the data and writes docs/validation.md and the plots' scripts.
#include <cstdio>
#include <ctime>
#include <exception>
#include <fstream>

#include "studies.hpp"

namespace sw::validation {
namespace {

std::string today() {
  const std::time_t now = std::time(nullptr);
  char text[16];
  std::strftime(text, sizeof text, "%Y-%m-%d", std::gmtime(&now));
  return text;
}

void write(const Report& report, const std::filesystem::path& plots) {
  const std::filesystem::path docs = "docs";
  std::filesystem::create_directories(docs / "validation");
  std::ofstream(docs / "validation.md", std::ios::binary) << page(report, today());
  for (auto& s : report.sections)
    for (auto& p : s.plots) write_plot(p, plots, docs / "validation" / (p.name + ".svg"));
}

void study(const std::filesystem::path& data, const std::filesystem::path& plots) {
  Report report;
  for (auto* one : {fan_cycles, warm_ups, cranking, road_load, old_cars, fuel_use, fuel_flow, battery, single_points})
    one(data, report);
  write(report, plots);
}

}  // namespace
}  // namespace sw::validation

int main(int count, char** words) {
  if (count != 3) {
    std::fputs("usage: validate DATA_FOLDER PLOT_FOLDER, from the root of the source\n", stderr);
    return 2;
  }
  try {
    sw::validation::study(words[1], words[2]);
  } catch (const std::exception& e) {
    std::fprintf(stderr, "validate: %s\n", e.what());
    return 1;
  }
}
