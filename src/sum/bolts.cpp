// The sum of bolts.
#include "physics/bolt.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

using physics::BoltGrade;

struct BoltIn {
  std::string thread;
  std::optional<BoltGrade> grade;
  std::optional<Force> preload;
  std::optional<double> share, nut_factor, thread_friction, head_friction;
};
struct BoltOut {
  std::optional<Area> stress_area;
  std::optional<PressureDifference> proof_strength;
  std::optional<Force> proof_load;
  std::optional<PressureDifference> tensile_strength;
  std::optional<Force> breaking_load, preload;
  std::optional<PressureDifference> preload_stress;
  std::optional<Torque> torque;
};
constexpr std::string_view grades[] = {"2", "5", "8", "8.8", "10.9", "12.9"};
constexpr Argument bolt_in[] = {
    text<&BoltIn::thread>("thread", "thread, as 1/4-20 or M6x1"),
    may(choice<&BoltIn::grade>("grade", "SAE grade of an inch bolt, ISO class of a metric one", grades)),
    may(quantity<&BoltIn::preload>("preload", "tension left by tightening", kind::force).in("lbf").from(0, 1e7)),
    may(number<&BoltIn::share>("share", "preload over proof load").above(0, 2)),
    may(number<&BoltIn::nut_factor>("nut_factor",
                                    "torque over preload and diameter, of thread and head together; 0.2 "
                                    "where no friction is given")
            .above(0, 1)),
    may(number<&BoltIn::thread_friction>("thread_friction", "coefficient in the thread").from(0, 1)),
    may(number<&BoltIn::head_friction>("head_friction", "coefficient under head or nut").from(0, 1)),
};
constexpr Argument bolt_out[] = {
    result<&BoltOut::stress_area>("stress_area", "that carries the tension", kind::area, "in2"),
    result<&BoltOut::proof_strength>("proof_strength", "least, stress at the proof load", kind::stress, "psi"),
    result<&BoltOut::proof_load>("proof_load", "least, carried without lasting stretch", kind::force, "lbf"),
    result<&BoltOut::tensile_strength>("tensile_strength", "least", kind::stress, "psi"),
    result<&BoltOut::breaking_load>("breaking_load", "least", kind::force, "lbf"),
    result<&BoltOut::preload>("preload", "tension left by tightening", kind::force, "lbf"),
    result<&BoltOut::preload_stress>("preload_stress", "preload over stress area", kind::stress, "psi"),
    result<&BoltOut::torque>("torque", "to tighten to the preload", kind::torque, "lb-ft"),
};
constexpr Rule bolt_rules[] = {at_most_one_of("preload", "share"), at_most_one_of("nut_factor", "thread_friction"),
                               all_or_none_of("thread_friction", "head_friction")};

void bolt_check(const BoltIn& in, Remarks& say) {
  if (in.share && !in.grade) say.need("grade", "a share of the proof load needs the bolt's grade or class");
  if (in.thread.empty()) return;
  const auto thread = physics::thread_of(in.thread);
  if (!thread)
    return say.fault("thread", "expected a thread such as 1/4-20 or M6x1, got \"" + in.thread + "\"",
                     "diameter and threads an inch, or diameter and pitch in mm");
  if (in.grade && physics::is_inch(*in.grade) != thread->inch)
    say.fault("grade", thread->inch ? "is a class of metric bolts" : "is a grade of inch bolts",
              thread->inch ? "2, 5 or 8" : "8.8, 10.9 or 12.9");
}

void bolt(const BoltIn& in, BoltOut& out, Remarks& say) {
  const auto thread = *physics::thread_of(in.thread);
  const double area = physics::stress_area_m2(thread).value;
  out.stress_area = Area{area};
  const auto strength = in.grade ? physics::bolt_strength(*in.grade, thread) : std::nullopt;
  if (in.grade && !strength) say.outside("the standard of this grade has no bolt of that size");
  if (strength) {
    out.proof_strength = PressureDifference{strength->proof_pa};
    out.proof_load = Force{strength->proof_pa * area};
    out.tensile_strength = PressureDifference{strength->tensile_pa};
    out.breaking_load = Force{strength->tensile_pa * area};
  }
  if (in.preload)
    out.preload = in.preload;
  else if (in.share && strength)
    out.preload = Force{*in.share * out.proof_load->si};
  if (!out.preload) return;
  const double preload = out.preload->si;
  out.preload_stress = PressureDifference{preload / area};
  if (strength && preload > out.proof_load->si)
    say.outside("the preload lies above the proof load: the bolt stretches");
  const auto torque =
      in.thread_friction
          ? physics::torque_by_friction_n_m(thread, *in.thread_friction, *in.head_friction, preload)
          : physics::torque_by_factor_n_m(thread, in.nut_factor.value_or(physics::dry_nut_factor), preload);
  out.torque = Torque{torque.value};
  if (!in.thread_friction && !in.nut_factor)
    say.note(
        "nut factor 0.2: dry steel as it comes; oil, plating and paste take a quarter off it and more (common "
        "practice)");
}

constexpr Sum sums[] = {
    entry<bolt, bolt_check>(
        {.name = "bolt",
         .title = "Strength, preload and torque of a bolt",
         .inputs = bolt_in,
         .outputs = bolt_out,
         .rules = bolt_rules,
         .range = "SAE J429 1/4 to 1 1/2 in, ISO 898-1 M1.6 to M39, preload up to the proof load; torque scatters the "
                  "preload by a quarter and more (common practice)",
         .source = "stress areas ASME B1.1 and ISO 898-1; SAE J429 as in Shigley and Mischke, Mechanical Engineering "
                   "Design, 5th ed., p. 341; classes of ISO 898-1 and torque by Shigley from memory",
         .caution =
             "a bolt of brakes, steering, wheels, belts or seats that lets go can kill: the maker's bolt, thread "
             "treatment and torque go before any figure here; never reuse a bolt meant for one tightening"}),
};

}  // namespace

std::span<const Sum> bolt_sums() { return sums; }

}  // namespace sw
