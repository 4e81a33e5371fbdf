#pragma once
// A trace as text: all of it as comma-separated values, or key ports at some instants.
#include <string>

#include "car/car.hpp"
#include "cli/look.hpp"
#include "duty/course.hpp"
#include "model/trace.hpp"

namespace sw::cli {

/// One column a port, its unit in the header; one row an accepted step; the first column is time. RFC 4180 but for the
/// line ends, which are those of this system.
std::string trace_csv(const Graph& graph, const Trace& trace);
/// Road speed, the states that live in this duty, the switches, and the ports requirements look at, those left out that
/// stay at zero; then how the run ended and what figures are missing.
std::string trace_page(const Car& car, const Trace& trace, const Course& course, const Look& look);

}  // namespace sw::cli
