// The hole of the throttle's lever at which the throttle-valve cable travels as the gearbox wants over the whole way.
#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "solve/list.hpp"
#include "solve/model_of.hpp"
#include "systems/transmission/checks.hpp"

namespace sw {
namespace {

using transmission::CableModel;

/// Holes that are drilled: by a twentieth of an inch and five degrees at first, then by a hundredth and a degree about
/// the best (common practice: what a drill press and a protractor hold).
constexpr double least_m = 0.3 * inch_m, most_m = 3 * inch_m, fine_m = 0.01 * inch_m;
constexpr double degree = std::numbers::pi / 180, widest_rad = 85 * degree;

std::vector<std::string> lacking(const CableModel& c) {
  std::vector<std::string> missing;
  for (auto& path : c.missing)
    if (!path.ends_with(".radius") && !path.ends_with(".radius_wanted")) missing.push_back(path);  // what is solved for
  if (!c.curve) missing.push_back(c.curve_path);
  if (!c.told) missing.push_back("transmission.throttle_cable.throttle");
  return missing;
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  return lacking(model_of<transmission::System>(car).cable);
}

struct Hole {
  double radius_m = 0, start_rad = 0, off_m = HUGE_VAL;
};

double off_of(CableModel& c, double radius, double start) {
  c.start_rad = start;
  return transmission::worst_on_the_way(c, radius).off_m();
}

Hole best_hole(CableModel c) {
  Hole best;
  const auto look = [&](double r0, double r1, double dr, double s0, double s1, double ds) {
    const int radii = static_cast<int>(std::lround((r1 - r0) / dr)),
              starts = static_cast<int>(std::lround((s1 - s0) / ds));
    for (int i = 0; i <= radii; ++i)
      for (int k = 0; k <= starts; ++k) {
        const double r = r0 + i * dr, s = s0 + k * ds;
        if (r < least_m - 1e-9 || r > most_m + 1e-9 || std::abs(s) > widest_rad + 1e-9) continue;
        if (const double off = off_of(c, r, s); off < best.off_m) best = {r, s, off};
      }
  };
  look(least_m, most_m, 5 * fine_m, -widest_rad, widest_rad, 5 * degree);
  const Hole coarse = best;
  look(coarse.radius_m - 10 * fine_m, coarse.radius_m + 10 * fine_m, fine_m, coarse.start_rad - 10 * degree,
       coarse.start_rad + 10 * degree, degree);
  return best;
}

std::string inches(double m) { return print(m, kind::length, "in", 3); }

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  const CableModel& c = model_of<transmission::System>(car).cable;
  Solution out;
  out.missing = lacking(c);
  if (!out.missing.empty()) return out;
  const Hole best = best_hole(c);
  if (best.off_m > c.within_m) {
    out.trouble = "no hole in a plain lever follows the travel wanted: the best, " + inches(best.radius_m) + " at " +
                  print(best.start_rad, kind::angle, "deg", 3) + ", lies " + inches(best.off_m) + " off where " +
                  inches(c.within_m) + " are allowed; a cam or the lever its maker sells for this throttle";
    return out;
  }
  const bool there = c.radius_m > 0;
  const double now = there ? transmission::worst_on_the_way(c, c.radius_m).off_m() : 0;
  if (there && now <= c.within_m && now - best.off_m < fine_m) {
    out.says = "The hole there is right: the travel stays within " + inches(now) + " of what is wanted.";
    return out;
  }
  if (there) out.because.push_back(told("furthest off the travel wanted, as it is", now, kind::length, "in"));
  out.because.push_back(told("furthest off with the hole found", best.off_m, kind::length, "in"));
  out.settings.push_back({"transmission.throttle_cable.radius", best.radius_m});
  out.settings.push_back({"transmission.throttle_cable.start", best.start_rad});
  out.says = "A hole " + inches(best.radius_m) + " from the throttle's shaft, " +
             print(best.start_rad, kind::angle, "deg", 3) +
             " from square with the throttle closed: the travel stays within " + inches(best.off_m) +
             " of what is wanted" + (there ? ", " + inches(now) + " off as it is" : "") + ".";
  return out;
}

}  // namespace

const Solver kick_down{
    .key = "kick-down",
    .title = "hole for the throttle-valve cable",
    .judged_by = "transmission.cable-travel",
    .caution = Caution::runaway_throttle,
    .formula =
        "of all holes from 0.3 to 3 in and 85 deg to either side of square, by 0.01 in and 1 deg, the one whose "
        "travel lies least off the curve wanted at its worst place",
    .source = "the requirement named; the lever's geometry",
    .solve = solve,
    .needs = needs};

}  // namespace sw
