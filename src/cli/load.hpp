#pragma once
// A build named on the command line, read with its duties. All faults at once.
#include <memory>
#include <string>

#include "cli/command.hpp"
#include "duty/duties.hpp"

namespace sw::cli {

struct Loaded {
  Opened opened;
  std::unique_ptr<DutySet> duties;  ///< null where a text of the build could not be had
  bool good() const { return !opened.faults.any_fault() && duties && !duties->faults.any_fault(); }
};
/// `open` finds the build, its base, shelves and traces.
Loaded load(const std::string& file, const OpenText& open);
/// Warnings, and where it is not good the faults: lines on `err`, or as JSON on `out`. Gives the exit code.
int tell_faults(const Loaded& loaded, bool json, Console& console);
/// The position of a duty, or a complaint with the nearest name.
std::optional<std::size_t> find_duty(const DutySet& set, std::string_view name, Console& console);
/// What the build calls the car; empty where it says nothing.
std::string car_title(const Build& build);

}  // namespace sw::cli
