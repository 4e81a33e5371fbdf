#pragma once
// The American wire gauge. d = 0.005 in * 92^((36 - n)/39), the series ASTM B258 lays down from 4/0 (n = -3,
// 0.46 in) over 36 (0.005 in) to 56. Areas are those of the solid round wire.
#include <optional>
#include <string>
#include <string_view>

namespace sw {

inline constexpr int thickest_gauge = -3, thinnest_gauge = 56;  ///< 4/0 and 56

/// Metres and square metres of gauge `n`; 1/0 is 0, 2/0 is -1. Between whole numbers the series is continuous.
double gauge_diameter(double n);
double gauge_area(double n);
/// The (not whole) gauge number of an area in m2, which must be above zero.
double gauge_number(double area);
/// The gauge whose area is within `share` of `area`, if there is one.
std::optional<int> nearest_gauge(double area, double share);
/// `10`, `2/0`.
std::string gauge_text(int n);
/// Reads `10`, `2/0`, `00`; none where the series has no such gauge.
std::optional<int> parse_gauge(std::string_view text);

}  // namespace sw
