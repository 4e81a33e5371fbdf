#include <algorithm>

#include "model/needed.hpp"
#include "quantity/customary.hpp"
#include "systems/fasteners/fasteners.hpp"

namespace sw::fasteners {
namespace {

constexpr double factors[] = {0.20, 0.30, 0.20, 0.18, 0.16, 0.12};  ///< in the order of `Threads`
static_assert(std::size(factors) == std::size(threads_names));

/// What is tapped, by its least strength; a nut is as strong as the bolt it is made for.
double tapped_pa(const Joint& in, const JointModel& j) {
  if (in.strength) return in.strength->si;
  constexpr double steel = 60 * ksi_pa, iron = 31 * ksi_pa, aluminium = 27 * ksi_pa;
  switch (in.into.value_or(Into::nut)) {
    case Into::steel:
      return steel;
    case Into::iron:
      return iron;
    case Into::aluminium:
      return aluminium;
    case Into::nut:
      break;
  }
  return j.strength ? j.strength->tensile_pa : 0;
}

std::optional<physics::Thread> thread_in(const std::string& text, Resolver& r) {
  if (text.empty()) return std::nullopt;
  const auto t = physics::thread_of(text);
  if (!t) r.fault(&text, "\"" + text + "\" is no thread", "diameter and threads an inch, 1/2-20, or M12x1.5");
  return t;
}

JointModel joint_of(const std::string& name, const Joint& in, Resolver& r) {
  JointModel j{.name = name,
               .scatter = r.get(in.scatter, 1),
               .torque_nm = given(in.torque),
               .clamp_n = given(in.clamp),
               .load_n = given(in.load),
               .share = r.get(in.share, 0.75),
               .count = in.count.value_or(1),
               .to_yield = in.to_yield.value_or(false),
               .used_before = in.used_before,
               .used_path = r.path_of(&in.used_before),
               .torque_path = r.path_of(&in.torque),
               .scatter_path = r.path_of(&in.scatter),
               .thread_path = r.path_of(&in.thread)};
  j.thread = thread_in(in.thread, r);
  j.hole = thread_in(in.hole, r);
  if (!j.thread) j.bolt_missing.push_back(r.path_of(&in.thread));
  needed(in.grade, j.bolt_missing, r);
  j.grade_known = in.grade.has_value();
  if (j.thread && in.grade) {
    if (physics::is_inch(*in.grade) != j.thread->inch)
      r.fault(&in.grade, j.thread->inch ? "is a class of metric bolts" : "is a grade of inch bolts",
              j.thread->inch ? "2, 5 or 8" : "8.8, 10.9 or 12.9");
    j.strength = physics::bolt_strength(*in.grade, *j.thread);
    j.outside = !j.strength;
  }
  j.factor = r.get(in.nut_factor, factors[static_cast<std::size_t>(in.threads.value_or(Threads::as_they_come))]);
  j.tapped_pa = tapped_pa(in, j);
  if (!in.engaged && !in.into && !in.strength) return j;
  if (!in.strength) needed(in.into, j.engaged_missing, r);
  const double engaged = needed(in.engaged, j.engaged_missing, r);
  if (j.engaged_missing.empty()) j.engaged_m = engaged - r.get(in.shims, 0);
  return j;
}

}  // namespace

std::optional<double> JointModel::strips_n() const {
  if (!engaged_m || !told()) return std::nullopt;
  return physics::strips_at_n(*thread, std::max(0.0, *engaged_m), strength->tensile_pa, tapped_pa);
}

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  for (auto& [name, joint] : in.joint) m.joints.push_back(joint_of(name, joint, r));
  return m;
}

}  // namespace sw::fasteners
