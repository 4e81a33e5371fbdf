// The joints: flare, seat and nut of one kind, a flare that does not crack.
#include "model/told.hpp"
#include "physics/forming.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
std::string name_of(Form f) { return std::string(form_names[static_cast<std::size_t>(f)]); }
constexpr double share_of_elongation = 0.8;

template <class Look>
void each_end(const Model& m, Look look) {
  for (auto& t : m.tubes)
    for (auto& e : t.ends) look(t, e);
}

}  // namespace

void judge_seat(const void* model, const Evidenced&, std::vector<Verdict>& out) {
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

void judge_nut(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel&, const EndModel& e) {
    if (!e.nut && !(e.flare && e.seat)) return;
    Verdict v{.place = e.place, .fix_hint = "the nut that belongs to the flare, said on the sheet beside each"};
    if (!e.nut) v.missing.push_back(e.nut_path);
    if (!e.flare) v.missing.push_back(e.flare_path);
    if (v.missing.empty()) {
      v.rule = *e.nut == *e.flare;
      v.reason = "a nut for " + name_of(*e.nut) + " on a flare of " + name_of(*e.flare) +
                 (*v.rule ? "" : ": it presses a ring where it should press a cone");
    }
    out.push_back(std::move(v));
  });
}

/// What a nut of another kind does to the flare it presses.
void judge_shear(const void* model, const Evidenced&, std::vector<Verdict>& out) {
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

void judge_flare(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel& t, const EndModel& e) {
    if (!e.flared_m && !(e.flare && t.elongation)) return;
    Verdict v{.place = e.place,
              .scale = share_of_elongation * t.elongation.value_or(1),
              .fix_hint =
                  "annealed tube with 37 deg and a sleeve, or nickel-copper with a double flare; every flare "
                  "under a glass, cracks thrown away"};
    if (!t.outside_m) v.missing.push_back(t.outside_path);
    if (!e.flared_m) v.missing.push_back(e.flared_path);
    if (!t.elongation) v.missing.push_back(t.material_path);
    if (v.missing.empty()) {
      v.predicted = physics::flare_strain(*t.outside_m, *e.flared_m);
      v.high = share_of_elongation * *t.elongation;
      v.because.push_back(told(t.usual_stretch ? "stretch to the break, usual of its material" : "stretch to the break",
                               *t.elongation, kind::number, "%"));
    }
    out.push_back(std::move(v));
  });
}

void judge_attempts(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  each_end(of(model), [&](const TubeModel&, const EndModel& e) {
    if (!e.attempts && !e.flared_m) return;
    Verdict v{.place = e.place,
              .fix_hint = "cut off what was formed and make it anew: cold work has used up the stretch"};
    if (!e.attempts) v.missing.push_back(e.attempts_path);
    if (e.attempts) {
      v.rule = *e.attempts < 2;
      v.reason = *v.rule ? "flared once" : "flared " + std::to_string(*e.attempts) + " times";
    }
    out.push_back(std::move(v));
  });
}

}  // namespace sw::tubes
