#pragma once
// A recorded or scheduled speed trace.
// Distance by trapezoids over the rows (exact for a speed that runs straight between them); acceleration row to row;
// idle: an interval that ends in a row at zero (40 CFR Part 86 Appendix I schedules are rows of whole seconds).
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "quantity/customary.hpp"

namespace sw::physics {

struct SpeedTrace {
  std::vector<double> time_s, speed_m_s;  ///< same length, time rising
};
/// The units a heading may name; the empty one is meant where it names none. Messages and docs are made from these.
struct HeadingUnit {
  std::string_view name;
  double factor;  ///< to SI
};
inline constexpr HeadingUnit trace_time_units[] = {{"", 1},        {"s", 1},     {"sec", 1},
                                                   {"seconds", 1}, {"ms", 1e-3}, {"min", 60}};
inline constexpr HeadingUnit trace_speed_units[] = {{"mph", mph_m_s},  {"mi/h", mph_m_s}, {"kmh", 1 / 3.6},
                                                    {"km/h", 1 / 3.6}, {"kph", 1 / 3.6},  {"kmph", 1 / 3.6},
                                                    {"m/s", 1}};
struct TraceFault {
  std::size_t line;  ///< from 1; 0 for the text as a whole
  std::string problem;
};
/// All that is wrong, row by row; after ten rows one more without a line counts the rest.
using TraceFaults = std::vector<TraceFault>;
/// What no car of the trade does: faster than 200 mph, or gaining or losing more than a tyre can hold (from memory: the
/// quickest road tyres brake at little over 1 g).
inline constexpr double fastest_row_m_s = 200 * mph_m_s, steepest_row_m_s2 = 12;
/// Text of a logger. The first line names the columns: `time` and `speed` in any case, their unit in brackets or after
/// an underscore (`time_s`, `Speed (km/h)`); other columns are passed over. Cells are parted by commas, or by
/// semicolons or tabs, and then a decimal may have a comma.
std::variant<SpeedTrace, TraceFaults> read_speed_trace(std::string_view csv);

/// The stretches of a trace from one time to another, driven one after the other without a pause. A stretch starts
/// and ends at any time within the trace; between rows the speed is on the straight line. Empty: the whole trace.
using Span = std::pair<double, double>;
struct TraceFigures {
  double duration_s = 0, distance_m = 0, mean_speed_m_s = 0, top_speed_m_s = 0, greatest_acceleration_m_s2 = 0;
  double idle_s = 0;
};
/// Spans must lie within the trace with from < to; the caller checks (`span_fits`).
TraceFigures trace_figures(const SpeedTrace& trace, const std::vector<Span>& spans = {});
bool span_fits(const SpeedTrace& trace, const Span& span);
/// Speed at a time; the ends hold outside.
double trace_speed(const SpeedTrace& trace, double time_s);

}  // namespace sw::physics
