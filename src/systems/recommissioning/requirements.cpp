#include "model/told.hpp"
#include "physics/pipe.hpp"
#include "quantity/customary.hpp"
#include "systems/recommissioning/recommissioning.hpp"

namespace sw::recommissioning {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }

namespace before {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& s : of(model).steps) {
    Verdict v{.place = std::string(s.what), .fix_hint = "done and written down before the starter turns"};
    if (!s.done) {
      v.missing.push_back(s.path);
    } else {
      v.rule = *s.done;
      v.reason = std::string(s.what) + (*s.done ? ": done" : ": not done");
    }
    out.push_back(std::move(v));
  }
}
}  // namespace before

namespace hose {
constexpr double most_age_s = 6 * year_s, most_s = 1;
constexpr const char* fix = "new hoses all round; an old one is never clamped shut to try it";
void age(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& h : of(model).hoses) {
    Verdict v{.place = h.place, .scale = most_age_s, .fix_hint = fix};
    if (!h.age_s) {
      v.missing.push_back(h.age_path);
    } else {
      v.predicted = *h.age_s;
      v.high = most_age_s;
    }
    out.push_back(std::move(v));
  }
}

/// Brake fluid of a warm brake (common practice: 80 degC).
constexpr double warm_fluid_pa_s = 1.2e-3;
/// How long the fluid takes back through what is left of the bore.
void release(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& h : of(model).hoses) {
    if (!h.bore_m) continue;
    Verdict v{.place = h.place, .scale = most_s, .fix_hint = fix};
    if (!h.length_m) {
      v.missing.push_back(h.length_path);
    } else {
      const double flow =
          physics::laminar_flow_m3_s({.bore_m = *h.bore_m, .length_m = *h.length_m}, warm_fluid_pa_s, h.seal_pa);
      v.predicted = h.returns_m3 / flow;
      v.high = most_s;
      v.because.push_back(told("fluid that returns", h.returns_m3, kind::volume, "in3"));
      v.because.push_back(told("bore left", *h.bore_m, kind::length, "mm"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace hose

namespace loom {
constexpr double least_ohm = 2e6, most_w = 1.5;
constexpr const char* fix = "a new loom wherever there are marks of teeth; the old one is kept to copy from";
void insulation(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& f : of(model).feeds) {
    Verdict v{.place = f.place, .scale = least_ohm, .fix_hint = fix};
    if (!f.ohm) {
      v.missing.push_back(f.path);
    } else {
      v.predicted = *f.ohm;
      v.low = least_ohm;
    }
    out.push_back(std::move(v));
  }
}
void splice(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  for (auto& s : of(model).splices) {
    Verdict v{.place = s.place, .scale = most_w, .fix_hint = fix};
    if (!s.ohm) v.missing.push_back(s.ohm_path);
    if (!s.current_a) v.missing.push_back(s.current_path);
    if (v.missing.empty()) {
      v.predicted = *s.current_a * *s.current_a * *s.ohm;
      v.high = most_w;
      v.because.push_back(told("volts across it", *s.current_a * *s.ohm, kind::voltage, "mV"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace loom

constexpr Requirement all[] = {
    {.id = "recommissioning.before-start",
     .title = "done before the first start",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::fuel_fire,
     .source = "common practice",
     .formula = "as written down",
     .own_missing = true,
     .evaluate = before::evaluate},
    {.id = "recommissioning.hose-age",
     .title = "brake hose is not old",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .quantity = &kind::time,
     .unit = "year",
     .source = "common practice: six years",
     .formula = "by its date",
     .own_missing = true,
     .evaluate = hose::age},
    {.id = "recommissioning.hose-release",
     .title = "brake lets go at once",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .quantity = &kind::time,
     .unit = "s",
     .source = "common practice: one second",
     .formula = "fluid that returns over the laminar flow the seal drives through what is left of the bore",
     .own_missing = true,
     .evaluate = hose::release},
    {.id = "recommissioning.insulation",
     .title = "feed is insulated",
     .kind = RequirementKind::least,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::resistance,
     .unit = "ohm",
     .source = "common practice: 2 Mohm",
     .formula = "as measured, everything unplugged",
     .own_missing = true,
     .evaluate = loom::insulation},
    {.id = "recommissioning.splice-heat",
     .title = "splice stays cool",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::power,
     .unit = "W",
     .source = "common practice: 1.5 W",
     .formula = "square of the current x resistance",
     .own_missing = true,
     .evaluate = loom::splice},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::recommissioning
