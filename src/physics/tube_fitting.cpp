#include "physics/tube_fitting.hpp"

#include <numbers>
#include <span>

namespace sw::physics {
namespace {

constexpr double inch = 0.0254, sixteenth = inch / 16;
constexpr int made[] = {2, 3, 4, 5, 6, 8, 10, 12, 14, 16, 20, 24, 32};

struct Row {
  int dash;
  double thread;  ///< in
  int per_inch;
};
constexpr Row j514[] = {{2, 5.0 / 16, 24},      {3, 3.0 / 8, 24},       {4, 7.0 / 16, 20},     {5, 1.0 / 2, 20},
                        {6, 9.0 / 16, 18},      {8, 3.0 / 4, 16},       {10, 7.0 / 8, 14},     {12, 1 + 1.0 / 16, 12},
                        {14, 1 + 3.0 / 16, 12}, {16, 1 + 5.0 / 16, 12}, {20, 1 + 5.0 / 8, 12}, {24, 1 + 7.0 / 8, 12},
                        {32, 2 + 1.0 / 2, 12}};
constexpr Row j512[] = {{2, 5.0 / 16, 28}, {3, 3.0 / 8, 24},  {4, 7.0 / 16, 24},
                        {5, 1.0 / 2, 20},  {6, 5.0 / 8, 18},  {7, 11.0 / 16, 18},
                        {8, 3.0 / 4, 18},  {10, 7.0 / 8, 18}, {12, 1 + 1.0 / 16, 16}};

bool is_made(double od) {
  for (int dash : made)
    if (same_size(od, dash * sixteenth)) return true;
  return false;
}

}  // namespace

Slope dash_od_m(double dash) { return {dash * sixteenth, sixteenth, is_made(dash * sixteenth)}; }
Slope dash_of(double od) { return {od / sixteenth, 1 / sixteenth, is_made(od)}; }

double flare_angle(FlareStyle style) {
  return (style == FlareStyle::degrees_37 ? 2 * 37 : 2 * 45) * std::numbers::pi / 180;
}

std::optional<Flare> flare(FlareStyle style, double od) {
  const std::span<const Row> rows = style == FlareStyle::degrees_37 ? std::span<const Row>(j514) : j512;
  for (auto& row : rows)
    if (same_size(od, row.dash * sixteenth))
      return Flare{flare_angle(style), row.thread * inch, static_cast<double>(row.per_inch)};
  return std::nullopt;
}

}  // namespace sw::physics
