// Sums of the parts between the foot and the wheel: pedal, booster, fluid, disc, drum.
#include <array>

#include "physics/brake_disc.hpp"
#include "physics/brake_drum.hpp"
#include "physics/brake_fluid.hpp"
#include "physics/brake_hydraulic.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view brakes_stop_a_car =
    "loss of braking kills: a figure here replaces neither the maker's instructions nor the law of the place nor a "
    "test by someone licensed for it";
constexpr std::string_view fluid_caution =
    "brake fluid hurts eyes and paint; never mix silicone with glycol fluid, never reuse it, take it from a sealed "
    "can; "
    "the car maker's grade goes before any figure here";

struct PressureIn {
  std::optional<Force> pedal_force;
  std::optional<double> pedal_ratio;
  std::optional<Length> bore;
  std::optional<Force> boost_force;
};
struct PressureOut {
  std::optional<PressureDifference> pressure;
};
constexpr Argument pressure_in[] = {
    quantity<&PressureIn::pedal_force>("pedal_force", "of the foot", kind::force).in("lbf").from(0, 1e4),
    ratio<&PressureIn::pedal_ratio>("pedal_ratio", "foot travel over push-rod travel", 100),
    positive<&PressureIn::bore>("bore", "of the master cylinder", kind::length, "in", 100),
    quantity<&PressureIn::boost_force>("boost_force", "added by the booster", kind::force)
        .in("lbf")
        .from(0, 1e5)
        .or_else(0, Source::chosen),
};
constexpr Argument pressure_out[] = {
    result<&PressureOut::pressure>("pressure", "in the lines", kind::pressure_difference, "psi")};

void line_pressure(const PressureIn& in, PressureOut& out, Remarks&) {
  out.pressure = PressureDifference{
      physics::line_pressure_pa(in.pedal_force->si, *in.pedal_ratio, in.bore->si, in.boost_force->si).value};
}

struct BoosterIn {
  std::optional<Length> diameter;
  std::optional<VacuumPressure> vacuum;
  std::optional<int> diaphragms;
  std::optional<Length> second_diameter;
  std::optional<double> ratio;
};
struct BoosterOut {
  std::optional<Force> force, knee;
};
constexpr Argument booster_in[] = {
    positive<&BoosterIn::diameter>("diameter", "effective, of the first diaphragm", kind::length, "in", 100),
    quantity<&BoosterIn::vacuum>("vacuum", "below ambient", kind::vacuum).in("inHg").from(0, 30),
    integer<&BoosterIn::diaphragms>("diaphragms", "one behind the other").from(1, 2).or_else(1, Source::chosen),
    may(positive<&BoosterIn::second_diameter>("second_diameter", "effective, of the second diaphragm", kind::length,
                                              "in", 100)),
    may(number<&BoosterIn::ratio>("ratio", "output over input before run-out").above(1, 100)),
};
constexpr Argument booster_out[] = {
    result<&BoosterOut::force>("force", "added at run-out", kind::force, "lbf"),
    result<&BoosterOut::knee>("knee", "push-rod force at run-out", kind::force, "lbf"),
};

void booster_check(const BoosterIn& in, Remarks& say) {
  if (in.second_diameter && in.diaphragms.value_or(1) == 1)
    say.fault("second_diameter", "belongs to a second diaphragm", "diaphragms=2");
}

void booster(const BoosterIn& in, BoosterOut& out, Remarks&) {
  const double first = in.diameter->si, second = in.second_diameter ? in.second_diameter->si : first;
  const std::array diameters{first, second};
  const double area = physics::booster_area_m2(std::span(diameters).first(static_cast<std::size_t>(*in.diaphragms)));
  const double force = physics::booster_assist_n(in.vacuum->si, area).value;
  out.force = Force{force};
  if (in.ratio) out.knee = Force{physics::booster_knee_n(force, *in.ratio).value};
}

struct GradeIn {
  std::optional<physics::BrakeFluid> grade;
};
struct GradeOut {
  std::optional<Temperature> boiling_dry, boiling_wet;
};
constexpr std::string_view grades[] = {"dot-3", "dot-4", "dot-5", "dot-5.1"};
constexpr Argument grade_in[] = {choice<&GradeIn::grade>("grade", "of the fluid", grades)};
constexpr Argument grade_out[] = {
    result<&GradeOut::boiling_dry>("boiling_dry", "least allowed, fresh", kind::temperature, "degC"),
    result<&GradeOut::boiling_wet>("boiling_wet", "least allowed, with 3.7 % of water", kind::temperature, "degC"),
};

void brake_fluid(const GradeIn& in, GradeOut& out, Remarks&) {
  const auto points = physics::least_boiling(*in.grade);
  out.boiling_dry = Temperature{points.dry_k};
  out.boiling_wet = Temperature{points.wet_k};
}

struct DiscIn {
  std::optional<double> friction;
  std::optional<PressureDifference> pressure;
  std::optional<Area> piston_area;
  std::optional<Length> radius;
};
struct DiscOut {
  std::optional<Torque> torque;
};
constexpr Argument disc_in[] = {
    ratio<&DiscIn::friction>("friction", "of the pad", 2),
    quantity<&DiscIn::pressure>("pressure", "in the line", kind::pressure_difference).in("psi").from(0, 1e5),
    positive<&DiscIn::piston_area>("piston_area", "of one side", kind::area, "in2", 1e4),
    positive<&DiscIn::radius>("radius", "effective", kind::length, "in", 1e3),
};
constexpr Argument disc_out[] = {result<&DiscOut::torque>("torque", "of both faces", kind::torque, "N m")};

void disc_torque(const DiscIn& in, DiscOut& out, Remarks&) {
  out.torque = Torque{physics::disc_torque_n_m(*in.friction, in.pressure->si, in.piston_area->si, in.radius->si).value};
}

struct ShoeIn {
  std::optional<Length> radius, width;
  std::optional<double> friction;
  std::optional<PressureDifference> peak_pressure;
  std::optional<Angle> start_angle, end_angle, peak_angle;
  std::optional<Length> pivot_radius, lever;
};
struct ShoeOut {
  std::optional<Force> force;
  std::optional<Torque> torque_leading, torque_trailing;
  std::optional<double> ratio;
};
constexpr Argument shoe_in[] = {
    positive<&ShoeIn::radius>("radius", "of the drum", kind::length, "mm", 1e4),
    positive<&ShoeIn::width>("width", "of the lining", kind::length, "mm", 1e4),
    ratio<&ShoeIn::friction>("friction", "of the lining", 2),
    positive<&ShoeIn::peak_pressure>("peak_pressure", "greatest on the leading shoe's lining",
                                     kind::pressure_difference, "kPa"),
    quantity<&ShoeIn::start_angle>("start_angle", "lining begins, from the pivot", kind::angle).in("deg").from(0, 180),
    quantity<&ShoeIn::end_angle>("end_angle", "lining ends, from the pivot", kind::angle).in("deg").from(0, 180),
    positive<&ShoeIn::peak_angle>("peak_angle", "of the greatest pressure, from the pivot", kind::angle, "deg", 179),
    positive<&ShoeIn::pivot_radius>("pivot_radius", "pivot to drum centre", kind::length, "mm", 1e4),
    positive<&ShoeIn::lever>("lever", "pivot to line of force", kind::length, "mm", 1e4),
};
constexpr Argument shoe_out[] = {
    result<&ShoeOut::force>("force", "on each shoe's end", kind::force, "kN"),
    result<&ShoeOut::torque_leading>("torque_leading", "of the leading shoe", kind::torque, "N m"),
    result<&ShoeOut::torque_trailing>("torque_trailing", "of the trailing shoe at the same force", kind::torque, "N m"),
    number<&ShoeOut::ratio>("ratio", "leading torque over trailing"),
};

void shoe_check(const ShoeIn& in, Remarks& say) {
  if (in.start_angle && in.end_angle && in.end_angle->si <= in.start_angle->si)
    say.fault("end_angle", "is not above start_angle", "the lining ends farther from the pivot than it begins");
  if (in.radius && in.pivot_radius && in.pivot_radius->si >= in.radius->si)
    say.fault("pivot_radius", "puts the pivot outside the drum", "less than `radius`");
}

void drum_shoe(const ShoeIn& in, ShoeOut& out, Remarks& say) {
  const auto r = physics::drum_shoe({in.radius->si, in.width->si, *in.friction, in.start_angle->si, in.end_angle->si,
                                     in.peak_angle->si, in.pivot_radius->si, in.lever->si},
                                    in.peak_pressure->si);
  out.force = Force{r.force_n};
  out.torque_leading = Torque{r.leading_n_m};
  out.torque_trailing = Torque{r.trailing_n_m};
  if (!r.valid) return say.outside("the leading shoe grabs by itself: no force holds it back");
  out.ratio = r.leading_n_m / r.trailing_n_m;
}

constexpr Sum sums[] = {
    entry<line_pressure>({.name = "line-pressure",
                          .title = "Pressure a pedal force makes",
                          .inputs = pressure_in,
                          .outputs = pressure_out,
                          .range = "rigid lever, no friction, return springs left out",
                          .source = "Pascal with a lever; any hydraulics text",
                          .caution = brakes_stop_a_car}),
    entry<booster, booster_check>(
        {.name = "booster",
         .title = "What a vacuum booster adds at most",
         .inputs = booster_in,
         .outputs = booster_out,
         .range = "at run-out, return spring and losses left out (they take 5 to 10 %)",
         .source = "force = pressure difference x area; Limpert, ch. on boosters (from memory)",
         .caution = brakes_stop_a_car}),
    entry<brake_fluid>({.name = "brake-fluid",
                        .title = "Boiling points a brake fluid must reach",
                        .inputs = grade_in,
                        .outputs = grade_out,
                        .range = "least values of the standard; a fluid in use lies between or below",
                        .source = "49 CFR 571.116 S5.1.1, S5.1.2",
                        .caution = fluid_caution}),
    entry<disc_torque>({.name = "disc-torque",
                        .title = "Torque of a disc brake",
                        .inputs = disc_in,
                        .outputs = disc_out,
                        .range = "uniform pad pressure, friction steady",
                        .source = "Shigley, Mechanical Engineering Design, caliper brakes; Limpert (from memory)",
                        .caution = brakes_stop_a_car}),
    entry<drum_shoe, shoe_check>(
        {.name = "drum-shoe",
         .title = "A leading and a trailing shoe in a drum",
         .inputs = shoe_in,
         .outputs = shoe_out,
         .range = "rigid shoe on a fixed pivot, pressure as the sine from the pivot",
         .source = "Shigley, Mechanical Engineering Design, internal expanding rim brakes (from memory)",
         .caution = brakes_stop_a_car}),
};

}  // namespace

std::span<const Sum> brake_part_sums() { return sums; }

}  // namespace sw
