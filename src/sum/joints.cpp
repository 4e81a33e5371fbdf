// Sums of universal joints: one, two with a shaft between them, and the angle two views of a shaft give.
#include <cmath>
#include <numbers>

#include "physics/joint.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double usual_most = pi / 4;  // most joints bind between 25 and 45 deg (common practice)
constexpr std::string_view shafts_turn =
    "a steering shaft that binds or lets go takes the steering with it, and a propeller shaft out of phase shakes and "
    "can break loose: angles, yokes and balance as the makers of joint and car instruct";

enum class Start { across, in_plane };
constexpr std::string_view starts[] = {"across", "in-plane"};
struct JointIn {
  std::optional<Angle> angle;
  std::optional<double> fluctuation;
  std::optional<ShaftSpeed> shaft_speed;
  std::optional<Angle> input_angle;
  std::optional<Start> start;
};
struct JointOut {
  std::optional<double> fluctuation;
  std::optional<Angle> angle;
  std::optional<ShaftSpeed> slowest, fastest;
  std::optional<Angle> output_angle, equal_angle;
};
constexpr Argument joint_in[] = {
    quantity<&JointIn::angle>("angle", "between the shafts, 0 in line", kind::angle).in("deg").from(0, 89),
    number<&JointIn::fluctuation>("fluctuation", "fastest less slowest over input").from(0, 50),
    may(quantity<&JointIn::shaft_speed>("shaft_speed", "of the driving shaft", kind::shaft_speed)
            .in("rpm")
            .from(0, 1e6)),
    may(quantity<&JointIn::input_angle>("input_angle", "of the driving shaft, from its start", kind::angle)
            .in("deg")
            .from(-36000, 36000)),
    choice<&JointIn::start>("start", "driving yoke's pin at input angle 0, against the plane of both shafts", starts)
        .or_else(0, Source::chosen),
};
constexpr Argument joint_out[] = {
    number<&JointOut::fluctuation>("fluctuation", "fastest less slowest over input"),
    result<&JointOut::angle>("angle", "between the shafts", kind::angle, "deg"),
    result<&JointOut::slowest>("slowest", "of the driven shaft", kind::shaft_speed, "rpm"),
    result<&JointOut::fastest>("fastest", "of the driven shaft", kind::shaft_speed, "rpm"),
    result<&JointOut::output_angle>("output_angle", "of the driven shaft, from its start", kind::angle, "deg"),
    result<&JointOut::equal_angle>("equal_angle", "first input angle at which both turn equally fast", kind::angle,
                                   "deg"),
};
constexpr Rule joint_rules[] = {one_of("angle", "fluctuation")};

void steep(double angle, Remarks& say) {
  if (angle > usual_most)
    say.note("most joints bind before 45 deg (common practice): the joint maker's greatest angle goes before this");
}

void joint(const JointIn& in, JointOut& out, Remarks& say) {
  const double angle = in.angle ? in.angle->si : physics::joint_angle_for(*in.fluctuation).value;
  if (in.angle)
    out.fluctuation = physics::joint_fluctuation(angle).value;
  else
    out.angle = Angle{angle};
  const auto chain = physics::joint_bend(angle);
  if (in.shaft_speed) {
    const auto range = physics::swing(chain);
    out.slowest = ShaftSpeed{range.slowest * in.shaft_speed->si};
    out.fastest = ShaftSpeed{range.fastest * in.shaft_speed->si};
  }
  const auto pin = *in.start == Start::across ? physics::PinAt::across : physics::PinAt::in_plane;
  if (in.input_angle) out.output_angle = Angle{physics::joint_output(angle, in.input_angle->si, pin).value};
  if (angle > 0) out.equal_angle = Angle{physics::joint_equal_angle(angle, pin).value};
  steep(angle, say);
}

struct PairIn {
  std::optional<Angle> angle1, angle2, plane_phase, yoke_phase;
  std::optional<ShaftSpeed> shaft_speed;
};
struct PairOut {
  std::optional<Angle> equivalent_angle;
  std::optional<double> fluctuation;
  std::optional<ShaftSpeed> slowest, fastest;
};
constexpr Argument pair_in[] = {
    quantity<&PairIn::angle1>("angle1", "of the first joint, 0 in line", kind::angle).in("deg").from(0, 89),
    quantity<&PairIn::angle2>("angle2", "of the second joint, 0 in line", kind::angle).in("deg").from(0, 89),
    quantity<&PairIn::plane_phase>("plane_phase", "between the planes of the joints, about the middle shaft",
                                   kind::angle)
        .in("deg")
        .from(-360, 360)
        .or_else(0, Source::chosen),
    quantity<&PairIn::yoke_phase>("yoke_phase", "between the yokes of the middle shaft, the same way round; 0 in line",
                                  kind::angle)
        .in("deg")
        .from(-360, 360)
        .or_else(0, Source::chosen),
    may(quantity<&PairIn::shaft_speed>("shaft_speed", "of the driving shaft", kind::shaft_speed)
            .in("rpm")
            .from(0, 1e6)),
};
constexpr Argument pair_out[] = {
    result<&PairOut::equivalent_angle>("equivalent_angle", "of one joint that swings as much, for small angles",
                                       kind::angle, "deg"),
    number<&PairOut::fluctuation>("fluctuation", "fastest less slowest over input"),
    result<&PairOut::slowest>("slowest", "of the last shaft", kind::shaft_speed, "rpm"),
    result<&PairOut::fastest>("fastest", "of the last shaft", kind::shaft_speed, "rpm"),
};

void joint_pair(const PairIn& in, PairOut& out, Remarks& say) {
  const auto chain = physics::joint_pair(in.angle1->si, in.angle2->si, in.plane_phase->si, in.yoke_phase->si);
  const auto range = physics::swing(chain);
  out.equivalent_angle = Angle{physics::equivalent_angle(chain)};
  out.fluctuation = range.fastest - range.slowest;
  if (in.shaft_speed) {
    out.slowest = ShaftSpeed{range.slowest * in.shaft_speed->si};
    out.fastest = ShaftSpeed{range.fastest * in.shaft_speed->si};
  }
  steep(std::max(in.angle1->si, in.angle2->si), say);
}

struct CompoundIn {
  std::optional<Angle> side, plan;
};
struct CompoundOut {
  std::optional<Angle> angle;
};
constexpr Argument compound_in[] = {
    quantity<&CompoundIn::side>("side", "to the axis, seen from the side", kind::angle).in("deg").from(-89, 89),
    quantity<&CompoundIn::plan>("plan", "to the axis, seen from above", kind::angle).in("deg").from(-89, 89),
};
constexpr Argument compound_out[] = {
    result<&CompoundOut::angle>("angle", "between the shaft and the axis", kind::angle, "deg")};

void compound_angle(const CompoundIn& in, CompoundOut& out, Remarks&) {
  out.angle = Angle{physics::compound_angle(in.side->si, in.plan->si).angle};
}

constexpr Sum sums[] = {
    entry<joint>({.name = "joint",
                  .title = "One universal joint",
                  .inputs = joint_in,
                  .outputs = joint_out,
                  .rules = joint_rules,
                  .range = "below 90 deg, no play, stiff shafts",
                  .source = "Hooke's joint, any theory of machines, e.g. Khurmi and Gupta",
                  .caution = shafts_turn}),
    entry<joint_pair>({.name = "joint-pair",
                       .title = "Two universal joints and the shaft between them",
                       .inputs = pair_in,
                       .outputs = pair_out,
                       .range = "below 90 deg, no play, stiff shafts; the equivalent angle below some 15 deg",
                       .source = "exact rotation in space; equivalent angle by the Universal Joint and Driveshaft "
                                 "Design Manual, SAE AE-7 (from memory)",
                       .caution = shafts_turn,
                       .notes = "equal phases undo each other; a middle shaft whose yokes are a spline apart is not in "
                                "line"}),
    entry<compound_angle>({.name = "compound-angle",
                           .title = "True angle of a shaft from its side view and plan",
                           .inputs = compound_in,
                           .outputs = compound_out,
                           .range = "both angles measured to one axis, below 90 deg",
                           .source = "geometry: tan2 angle = tan2 side + tan2 plan",
                           .caution = shafts_turn}),
};

}  // namespace

std::span<const Sum> joint_sums() { return sums; }

}  // namespace sw
