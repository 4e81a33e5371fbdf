// Brackets bent from a strip: bends that do not crack, flanges a brake can hold, holes that stay round.
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "physics/sheet_bend.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

/// Least inside radius in thicknesses, in the order of `Sheet`.
constexpr double least_radius[] = {1, 1, 1, 4};
static_assert(std::size(least_radius) == std::size(sheet_names));
constexpr double clear_thicknesses = 2;

}  // namespace

void judge_bracket_bend(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& b : of(model).brackets) {
    if (b.angles_rad.empty()) continue;
    Verdict v{.place = b.place,
              .missing = b.missing,
              .fix_hint = "a bend of more radius, across the grain of the sheet, its edges smooth"};
    if (v.missing.empty()) {
      v.predicted = b.radius_m / b.thickness_m;
      v.low = least_radius[static_cast<std::size_t>(b.material)];
      v.scale = *v.low;
    }
    out.push_back(std::move(v));
  }
}

void judge_bracket_flange(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& b : of(model).brackets) {
    if (b.angles_rad.empty()) continue;
    if (!b.missing.empty()) {
      out.push_back({.place = b.place, .missing = b.missing});
      continue;
    }
    const auto flat = flat_of(b);
    for (std::size_t i = 0; i < b.flanges.size(); ++i)
      out.push_back({.place = b.place + " " + b.flanges[i],
                     .predicted = flat.flats_m[i],
                     .low = clear_thicknesses * b.thickness_m,
                     .scale = clear_thicknesses * b.thickness_m,
                     .because = {inches("flange outside", b.flanges_m[i])},
                     .fix_hint = "a longer flange, cut back after bending, or a tighter bend the sheet still takes"});
  }
}

void judge_bracket_hole(const void* model, const Evidenced&, Verdicts& out) {
  for (auto& b : of(model).brackets)
    for (auto& h : b.holes) {
      if (!h.flange && h.missing.empty()) continue;  // a flange there is not: told as a fault
      Verdict v{.place = h.place,
                .missing = h.missing,
                .fix_hint = "the hole farther from the bend, or drilled after bending"};
      v.missing.insert(v.missing.end(), b.missing.begin(), b.missing.end());
      if (v.missing.empty()) {
        const std::size_t i = *h.flange;
        const auto setback = [&](std::size_t bend) {
          return physics::bend_setback_of_sheet_m(b.radius_m, b.thickness_m, b.angles_rad[bend]);
        };
        const double before = i > 0 ? h.along_m - setback(i - 1) - h.radius_m : HUGE_VAL;
        const double after = i < b.angles_rad.size() ? b.flanges_m[i] - h.along_m - setback(i) - h.radius_m : HUGE_VAL;
        const double nearest = std::min(before, after);
        if (nearest == HUGE_VAL) continue;  // nothing is bent beside it
        v.predicted = nearest;
        v.low = clear_thicknesses * b.thickness_m;
        v.scale = *v.low;
      }
      out.push_back(std::move(v));
    }
}

void judge_flat_length(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double off = inch_m / 32;
  for (auto& b : of(model).brackets) {
    if (!b.flat_m) continue;
    Verdict v{.place = b.place, .missing = b.missing, .fix_hint = "`solve flat-pattern` anew"};
    if (v.missing.empty()) {
      const double asked = flat_of(b).length_m;
      v.rule = std::abs(*b.flat_m - asked) <= off;
      v.reason = "cut to " + print(*b.flat_m, kind::length, "in", 4) + " where the flanges ask " +
                 print(asked, kind::length, "in", 4);
    }
    out.push_back(std::move(v));
  }
}

}  // namespace sw::tubes
