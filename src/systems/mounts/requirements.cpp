#include <cmath>
#include <numbers>

#include "model/told.hpp"
#include "systems/mounts/mounts.hpp"

namespace sw::mounts {
namespace {

constexpr double degree = std::numbers::pi / 180;

/// Sunk mounts: every measurement made on them is one of a car that will not be.
namespace sag {
constexpr double most_rad = 0.5 * degree;
constexpr Port needs[] = {{"mounts.pitch", &kind::angle}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  if (m.sag_m == 0) return;
  Verdict v{.scale = most_rad,
            .fix_hint = "new mounts before anything is measured or bought; damper and tail heights written down then"};
  if (!run.lacks(0)) {
    v.predicted = std::atan(m.sag_m / m.span_m);
    v.high = most_rad;
    v.because.push_back(told("front mounts sunk", m.sag_m, kind::length, "in"));
    v.because.push_back(told("front mounts to rear mount", m.span_m, kind::length, "in"));
  }
  out.push_back(std::move(v));
}
}  // namespace sag

constexpr Requirement all[] = {
    {.id = "mounts.sag",
     .title = "engine sits straight",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::lift,
     .quantity = &kind::angle,
     .unit = "deg",
     .source = "common practice: 0.5 deg",
     .formula = "atan(sag / distance of front and rear mounts)",
     .needs = sag::needs,
     .may_lack = 0,
     .own_missing = true,
     .evaluate = sag::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::mounts
