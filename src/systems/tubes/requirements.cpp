#include <cmath>

#include "model/told.hpp"
#include "physics/forming.hpp"
#include "systems/tubes/tubes.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
std::string name_of(Form f) { return std::string(form_names[static_cast<std::size_t>(f)]); }

template <class Look>
void each_end(const Model& m, Look look) {
  for (auto& t : m.tubes)
    for (auto& e : t.ends) look(t, e);
}

namespace seat {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel&, const EndModel& e) {
    if (!e.flare && !e.seat) return;
    Verdict v{.place = e.place,
              .fix_hint =
                  "one kind of flare in the whole circuit, said on the sheet; an adapter with the other seat, or "
                  "the end cut off and made anew"};
    if (!e.flare) v.missing.push_back(e.flare_path);
    if (!e.seat) v.missing.push_back(e.seat_path);
    if (v.missing.empty()) {
      v.rule = *e.flare == *e.seat;
      v.reason = "a flare of " + name_of(*e.flare) + " on a seat of " + name_of(*e.seat) +
                 (*v.rule ? "" : ": they touch in a line, and tightening splits the flare");
    }
    out.push_back(std::move(v));
  });
}
}  // namespace seat

namespace nut {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel&, const EndModel& e) {
    if (!e.nut || !e.flare) return;
    Verdict v{.place = e.place, .fix_hint = "the nut that belongs to the flare, said on the sheet beside each"};
    v.rule = *e.nut == *e.flare;
    v.reason = "a nut for " + name_of(*e.nut) + " on a flare of " + name_of(*e.flare) +
               (*v.rule ? "" : ": it presses a ring where it should press a cone");
    out.push_back(std::move(v));
  });
}

/// What a nut of another kind does to the flare it presses.
void shear(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  constexpr double shear_share = 0.577;  // of the yield stress, von Mises
  each_end(of(model), [&](const TubeModel& t, const EndModel& e) {
    if (!e.nut || !e.flare || *e.nut == *e.flare) return;
    Verdict v{.place = e.place, .fix_hint = "the nut that belongs to the flare; the end that was pressed is cut off"};
    const auto need = [&](const std::optional<double>& figure, const std::string& path) {
      if (!figure) v.missing.push_back(path);
    };
    need(e.torque_nm, e.torque_path);
    need(e.thread_m, e.thread_path);
    need(e.ring_m, e.ring_path);
    need(t.wall_m, t.wall_path);
    need(t.yield_pa, t.yield_path);
    if (v.missing.empty()) {
      v.predicted = physics::ring_shear_pa(*e.torque_nm, *e.thread_m, *e.ring_m, *t.wall_m);
      v.high = shear_share * *t.yield_pa;
      v.scale = *v.high;
    }
    out.push_back(std::move(v));
  });
}
}  // namespace nut

namespace strain {
constexpr double share_of_elongation = 0.8;
void flare(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel& t, const EndModel& e) {
    if (!e.flared_m) return;
    Verdict v{.place = e.place,
              .scale = share_of_elongation * t.elongation,
              .fix_hint =
                  "annealed tube with 37 deg and a sleeve, or nickel-copper with a double flare; every flare "
                  "under a glass, cracks thrown away"};
    if (!t.outside_m) v.missing.push_back(t.outside_path);
    if (v.missing.empty()) {
      v.predicted = physics::flare_strain(*t.outside_m, *e.flared_m);
      v.high = share_of_elongation * t.elongation;
      v.because.push_back(told("stretch to the break", t.elongation, kind::number, "%"));
    }
    out.push_back(std::move(v));
  });
}
void again(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel&, const EndModel& e) {
    if (e.attempts < 2) return;
    out.push_back({.place = e.place,
                   .reason = "flared " + std::to_string(e.attempts) + " times",
                   .fix_hint = "cut off what was formed and make it anew: cold work has used up the stretch",
                   .rule = false});
  });
}
void bend(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  constexpr double least_ratio = 3.0;
  for (auto& t : of(model).tubes) {
    if (!t.bend_m) continue;
    Verdict v{.place = t.place,
              .scale = least_ratio,
              .fix_hint =
                  "a die of more radius, straight lengths planned for it; a ball of 0.8 of the bore passes a sound "
                  "bend"};
    if (!t.outside_m) v.missing.push_back(t.outside_path);
    if (v.missing.empty()) {
      v.predicted = *t.bend_m / *t.outside_m;
      v.low = least_ratio;
      v.because.push_back(
          told("stretch of the outer side", physics::bend_strain(*t.outside_m, *t.bend_m), kind::number, "%"));
    }
    out.push_back(std::move(v));
  }
}
}  // namespace strain

constexpr std::string_view shop_rule = "common practice";

constexpr Requirement all[] = {
    {.id = "tubes.seat",
     .title = "flare and seat of one kind",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .source = "SAE J512 and J514 (from memory): 45 deg and 37 deg seats are not made for each other",
     .formula = "kind of the flare against kind of the seat",
     .own_missing = true,
     .evaluate = seat::evaluate},
    {.id = "tubes.nut",
     .title = "nut for its flare",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .source = shop_rule,
     .formula = "kind of the nut against kind of the flare",
     .own_missing = true,
     .evaluate = nut::evaluate},
    {.id = "tubes.flare-shear",
     .title = "flare under a nut of another kind",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .quantity = &kind::stress,
     .unit = "ksi",
     .source = "0.577 of the yield stress (von Mises)",
     .formula = "torque / (0.2 x thread) over the wall under the ring it presses",
     .own_missing = true,
     .evaluate = nut::shear},
    {.id = "tubes.flare-strain",
     .title = "flare that does not crack",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .quantity = &kind::number,
     .unit = "%",
     .source = "common practice: 0.8 of the elongation",
     .formula = "ln(flare over tube)",
     .own_missing = true,
     .evaluate = strain::flare},
    {.id = "tubes.flared-once",
     .title = "one attempt an end",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::braking_loss,
     .source = shop_rule,
     .formula = "times it was flared",
     .own_missing = true,
     .evaluate = strain::again},
    {.id = "tubes.bend",
     .title = "bend that stays round",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .caution = Caution::fuel_fire,
     .quantity = &kind::number,
     .unit = "",
     .source = "common practice: three diameters to the centre line",
     .formula = "radius over outside diameter",
     .own_missing = true,
     .evaluate = strain::bend},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::tubes
