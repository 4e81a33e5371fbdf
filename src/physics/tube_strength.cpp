#include "physics/tube_strength.hpp"

#include "physics/tube_fitting.hpp"

namespace sw::physics {
namespace {

constexpr double inch = 0.0254;
bool same(double m, double in) { return same_size(m, in * inch); }

/// Sizes in in; a radius of 0: the table has none.
struct BendRow {
  double od, aluminium, steel;
};
constexpr BendRow bend_rows[] = {{1.0 / 8, 3.0 / 8, 0},
                                 {3.0 / 16, 7.0 / 16, 21.0 / 32},
                                 {1.0 / 4, 9.0 / 16, 7.0 / 8},
                                 {5.0 / 16, 3.0 / 4, 1 + 1.0 / 8},
                                 {3.0 / 8, 15.0 / 16, 1 + 5.0 / 16},
                                 {1.0 / 2, 1 + 1.0 / 4, 1 + 3.0 / 4},
                                 {5.0 / 8, 1 + 1.0 / 2, 2 + 3.0 / 16},
                                 {3.0 / 4, 1 + 3.0 / 4, 2 + 5.0 / 8},
                                 {1, 3, 3 + 1.0 / 2},
                                 {1 + 1.0 / 4, 3 + 3.0 / 4, 4 + 3.0 / 8},
                                 {1 + 1.0 / 2, 5, 5 + 1.0 / 4},
                                 {2, 8, 7}};

struct SpanRow {
  double od, aluminium, steel;
};
constexpr SpanRow span_rows[] = {{1.0 / 8, 9.5, 11.5}, {3.0 / 16, 12, 14},  {1.0 / 4, 13.5, 16},
                                 {5.0 / 16, 15, 18},   {3.0 / 8, 16.5, 20}, {1.0 / 2, 19, 23},
                                 {5.0 / 8, 22, 25.5},  {3.0 / 4, 24, 27.5}, {1, 26.5, 30}};

struct BoreRow {
  double od;
  struct {
    double wall, bore;
  } metal[3];  ///< in the order of BentTube
};
constexpr BoreRow bore_rows[] = {
    {1.0 / 8, {{0.020, 0.060}, {0.016, 0.070}, {0.020, 0.060}}},
    {3.0 / 16, {{0.028, 0.095}, {0.018, 0.110}, {0.020, 0.115}}},
    {1.0 / 4, {{0.035, 0.150}, {0.020, 0.165}, {0.028, 0.155}}},
    {5.0 / 16, {{0.049, 0.180}, {0.022, 0.225}, {0.035, 0.225}}},
    {3.0 / 8, {{0.049, 0.240}, {0.025, 0.290}, {0.049, 0.270}}},
    {1.0 / 2, {{0.065, 0.330}, {0.028, 0.400}, {0.058, 0.380}}},
    {5.0 / 8, {{0.083, 0.420}, {0.035, 0.485}, {0.065, 0.475}}},
    {3.0 / 4, {{0.095, 0.530}, {0.042, 0.610}, {0.083, 0.590}}},
    {1, {{0.065, 0.830}, {0.065, 0.840}, {0.083, 0.800}}},
};

}  // namespace

HoopStress hoop_stress(double od, double wall, double pressure) {
  const double bore = od - 2 * wall;
  return {pressure * od / (2 * wall), pressure * (od - wall) / (2 * wall),
          pressure * (od * od + bore * bore) / (od * od - bore * bore)};
}

Slope hoop_pressure_pa(double od, double wall, double stress) {
  const double share = 2 * wall / od;
  return {stress * share, share};
}

std::optional<double> least_bend_radius_m(double od, TubeMetal metal) {
  for (auto& row : bend_rows)
    if (const double radius = metal == TubeMetal::aluminium ? row.aluminium : row.steel; same(od, row.od) && radius > 0)
      return radius * inch;
  return std::nullopt;
}

std::optional<double> longest_span_m(double od, TubeMetal metal) {
  std::optional<double> span;
  for (auto& row : span_rows)
    if (od > row.od * inch || same(od, row.od))
      span = (metal == TubeMetal::aluminium ? row.aluminium : row.steel) * inch;
  return span;
}

std::optional<double> least_bent_bore_m(double od, double wall, BentTube metal) {
  for (auto& row : bore_rows)
    if (auto& at = row.metal[static_cast<int>(metal)]; same(od, row.od) && same(wall, at.wall)) return at.bore * inch;
  return std::nullopt;
}

}  // namespace sw::physics
