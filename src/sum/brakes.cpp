// Sums of braking at the axles: stop, balance, adhesion, heat. Pedal to wheel stands in brake_parts.cpp.
#include <cmath>

#include "physics/brake_balance.hpp"
#include "physics/brake_heat.hpp"
#include "physics/brake_stop.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view brakes_stop_a_car =
    "loss of braking kills: a figure here replaces neither the maker's instructions nor the law of the place nor a "
    "test by someone licensed for it";

struct StopIn {
  std::optional<Speed> speed;
  std::optional<Acceleration> deceleration;
  std::optional<Length> distance;
  std::optional<Time> delay;
};
struct StopOut {
  std::optional<Length> distance;
  std::optional<Acceleration> deceleration;
  std::optional<Time> time;
};
constexpr Argument stop_in[] = {
    positive<&StopIn::speed>("speed", "at the start", kind::speed, "mph", 1000),
    positive<&StopIn::deceleration>("deceleration", "steady", kind::acceleration, "m/s2", 1000),
    positive<&StopIn::distance>("distance", "to rest, the delay's in it", kind::length, "m"),
    quantity<&StopIn::delay>("delay", "before the brakes bite", kind::time)
        .in("s")
        .from(0, 1000)
        .or_else(0, Source::chosen),
};
constexpr Argument stop_out[] = {
    result<&StopOut::distance>("distance", "to rest, the delay's in it", kind::length, "m"),
    result<&StopOut::deceleration>("deceleration", "steady, after the delay", kind::acceleration, "m/s2"),
    result<&StopOut::time>("time", "to rest, the delay in it", kind::time, "s"),
};
constexpr Rule stop_rules[] = {one_of("deceleration", "distance")};

void stop_distance(const StopIn& in, StopOut& out, Remarks& say) {
  double a = in.deceleration ? in.deceleration->si : 0;
  if (in.distance) {
    const auto found = physics::stop_deceleration_m_s2(in.speed->si, in.distance->si, in.delay->si);
    if (!found) return say.fault("distance", "is used up by the delay alone", "a longer distance or a shorter delay");
    out.deceleration = Acceleration{a = found->value};
  } else {
    out.distance = Length{physics::stop_distance_m(in.speed->si, a, in.delay->si).value};
  }
  out.time = Time{physics::stop_time_s(in.speed->si, a, in.delay->si)};
}

struct LimitIn {
  std::optional<Speed> speed;
  std::optional<physics::StopTest> test;
};
struct LimitOut {
  std::optional<Length> distance;
  std::optional<Acceleration> deceleration;
};
constexpr std::string_view tests[] = {"cold", "high-speed", "hot", "failed-circuit"};
constexpr Argument limit_in[] = {
    positive<&LimitIn::speed>("speed", "at the start", kind::speed, "km/h", 1000),
    choice<&LimitIn::test>("test", "state of the brakes", tests),
};
constexpr Argument limit_out[] = {
    result<&LimitOut::distance>("distance", "greatest allowed to rest", kind::length, "m"),
    result<&LimitOut::deceleration>("deceleration", "mean fully developed, of the squared term alone",
                                    kind::acceleration, "m/s2"),
};

void stop_limit(const LimitIn& in, LimitOut& out, Remarks&) {
  const auto l = physics::stop_limit(*in.test, in.speed->si);
  out.distance = Length{l.distance_m};
  out.deceleration = Acceleration{l.deceleration_m_s2};
}

struct BalanceIn {
  std::optional<Length> wheelbase, cg_behind_front, cg_height;
  std::optional<double> front_share, adhesion, rolling, rate;
};
struct BalanceOut {
  std::optional<double> ideal_front_share, lock_front, lock_rear;
  std::string first_lock;
  std::optional<double> lock_both, front_weight_share, adhesion_front, adhesion_rear;
};
constexpr Argument balance_in[] = {
    positive<&BalanceIn::wheelbase>("wheelbase", "axle to axle", kind::length, "in"),
    positive<&BalanceIn::cg_behind_front>("cg_behind_front", "centre of gravity behind the front axle", kind::length,
                                          "in"),
    positive<&BalanceIn::cg_height>("cg_height", "centre of gravity above the road", kind::length, "in"),
    may(number<&BalanceIn::front_share>("front_share", "front axle's part of the braking force").from(0, 1)),
    may(number<&BalanceIn::adhesion>("adhesion", "greatest tyre-to-road coefficient").above(0, 3)),
    number<&BalanceIn::rolling>("rolling", "rolling resistance over weight").from(0, 1).or_else(0, Source::chosen),
    may(number<&BalanceIn::rate>("rate", "deceleration over 9.80665 m/s2").from(0, 3)),
};
constexpr Argument balance_out[] = {
    number<&BalanceOut::ideal_front_share>("ideal_front_share", "front axle's part of the weight at that adhesion"),
    number<&BalanceOut::lock_front>("lock_front", "rate at which the front by itself reaches the adhesion"),
    number<&BalanceOut::lock_rear>("lock_rear", "rate at which the rear by itself reaches the adhesion"),
    text<&BalanceOut::first_lock>("first_lock", "axle that locks first"),
    number<&BalanceOut::lock_both>("lock_both", "rate at which both lock together"),
    number<&BalanceOut::front_weight_share>("front_weight_share", "front axle's part of the weight at the rate"),
    number<&BalanceOut::adhesion_front>("adhesion_front", "adhesion the front uses at the rate"),
    number<&BalanceOut::adhesion_rear>("adhesion_rear", "adhesion the rear uses at the rate"),
};

void balance_check(const BalanceIn& in, Remarks& say) {
  if (in.wheelbase && in.cg_behind_front && in.cg_behind_front->si >= in.wheelbase->si)
    say.fault("cg_behind_front", "lies behind the rear axle", "less than the wheelbase");
  if (in.rate && in.rolling && *in.rate < *in.rolling)
    say.fault("rate", "is less than rolling alone gives", "at least `rolling`");
}

/// Both rates to the last bits alike: both at once.
std::string first_of(const std::optional<physics::Slope>& front, const std::optional<physics::Slope>& rear) {
  constexpr double alike = 1e-9;
  if (front && rear && std::abs(front->value - rear->value) < alike) return "both";
  if (front && (!rear || front->value < rear->value)) return "front";
  return rear ? "rear" : "";
}

void lock_order(const physics::Balance& car, const BalanceIn& in, BalanceOut& out, Remarks& say) {
  const double k = *in.adhesion, p = *in.front_share;
  const auto front = physics::front_lock_rate(car, p, k, *in.rolling);
  const auto rear = physics::rear_lock_rate(car, p, k, *in.rolling);
  if (front) out.lock_front = front->value;
  if (rear) out.lock_rear = rear->value;
  out.first_lock = first_of(front, rear);
  if (!front) say.note("the front never reaches that adhesion by itself: weight comes to it faster than braking");
  if (!rear) say.note("the rear does no braking, so it never locks");
}

void brake_balance(const BalanceIn& in, BalanceOut& out, Remarks& say) {
  const physics::Balance car{in.wheelbase->si, in.cg_behind_front->si, in.cg_height->si};
  if (in.adhesion) {
    const auto ideal = physics::ideal_front_share(car, *in.adhesion, *in.rolling);
    out.ideal_front_share = ideal.value;
    if (!ideal.valid) say.outside("at that adhesion the rear wheels leave the road");
  }
  if (in.front_share) {
    out.lock_both = physics::both_lock_rate(car, *in.front_share);
    constexpr double best_road_tyre = 1.1;  // dry, common practice
    if (!out.lock_both) say.note("with that share the rear locks first at any adhesion");
    if (out.lock_both && *out.lock_both > best_road_tyre)
      say.note("both lock together only where no road tyre grips: on any road the front locks first");
  }
  if (in.front_share && in.adhesion) lock_order(car, in, out, say);
  if (!in.rate) return;
  const auto weight = physics::front_weight_share(car, *in.rate);
  out.front_weight_share = weight.value;
  if (!weight.valid) say.outside("at that rate the rear wheels leave the road");
  if (!in.front_share) return;
  const auto use = physics::adhesion_use(car, *in.front_share, *in.rate, *in.rolling);
  out.adhesion_front = use.front;
  out.adhesion_rear = use.rear;
}

struct HeatIn {
  std::optional<Mass> mass;
  std::optional<Speed> speed, end_speed;
  std::optional<double> share, rotors;
  std::optional<Mass> rotor_mass;
  std::optional<SpecificHeat> specific_heat;
};
struct HeatOut {
  std::optional<Torque> energy;  // the same dimension
  std::optional<TemperatureStep> rise;
};
constexpr Argument heat_in[] = {
    positive<&HeatIn::mass>("mass", "of the car", kind::mass, "kg"),
    positive<&HeatIn::speed>("speed", "at the start", kind::speed, "mph", 1000),
    quantity<&HeatIn::end_speed>("end_speed", "at the end", kind::speed)
        .in("mph")
        .from(0, 1000)
        .or_else(0, Source::chosen),
    number<&HeatIn::share>("share", "of the energy, into these rotors").from(0, 1),
    ratio<&HeatIn::rotors>("rotors", "how many share it", 100),
    positive<&HeatIn::rotor_mass>("rotor_mass", "of each", kind::mass, "kg"),
    positive<&HeatIn::specific_heat>("specific_heat", "of the rotors", kind::specific_heat, "J/(kg K)"),
};
constexpr Argument heat_out[] = {
    result<&HeatOut::energy>("energy", "of the whole car", kind::energy, "kJ"),
    result<&HeatOut::rise>("rise", "of each rotor", kind::temperature_step, "K"),
};

void heat_check(const HeatIn& in, Remarks& say) {
  if (in.speed && in.end_speed && in.end_speed->si >= in.speed->si)
    say.fault("end_speed", "is not below speed", "the car slows down");
}

void stop_heat(const HeatIn& in, HeatOut& out, Remarks&) {
  const double e = physics::stop_energy_j(in.mass->si, in.speed->si, in.end_speed->si);
  out.energy = Torque{e};
  out.rise =
      TemperatureStep{physics::stop_rise_k(e, *in.share, *in.rotors, in.rotor_mass->si, in.specific_heat->si).value};
}

struct LineIn {
  std::optional<double> rate, adhesion;
  std::optional<physics::AdhesionLine> line;
};
struct LineOut {
  std::optional<double> adhesion, rate;
};
constexpr std::string_view lines[] = {"un-r13h", "eec-71-320"};
constexpr Argument line_in[] = {
    number<&LineIn::rate>("rate", "deceleration over 9.80665 m/s2").from(0, 3),
    number<&LineIn::adhesion>("adhesion", "greatest tyre-to-road coefficient").from(0, 3),
    choice<&LineIn::line>("line", "rule", lines).or_else(0, Source::chosen),
};
constexpr Argument line_out[] = {
    number<&LineOut::adhesion>("adhesion", "at which that rate is the least allowed"),
    number<&LineOut::rate>("rate", "least allowed at that adhesion"),
};
constexpr Rule line_rules[] = {one_of("rate", "adhesion")};

void adhesion_line(const LineIn& in, LineOut& out, Remarks& say) {
  const auto r = in.adhesion ? physics::adhesion_line_rate(*in.line, *in.adhesion)
                             : physics::adhesion_line_adhesion(*in.line, *in.rate);
  (in.adhesion ? out.rate : out.adhesion) = r.value;
  if (!r.valid) say.outside("the line runs from an adhesion of 0.2 to 0.8");
}

constexpr Sum sums[] = {
    entry<stop_distance>({.name = "stop-distance",
                          .title = "Distance and time to stop",
                          .inputs = stop_in,
                          .outputs = stop_out,
                          .rules = stop_rules,
                          .range = "steady deceleration after the delay, level road",
                          .source = "closed form",
                          .caution = brakes_stop_a_car}),
    entry<stop_limit>({.name = "stop-limit",
                       .title = "Longest stop the rules allow a passenger car",
                       .inputs = limit_in,
                       .outputs = limit_out,
                       .range = "passenger cars; each rule names its own test speeds, 100 km/h for most",
                       .source = "49 CFR 571.135 S7.5, S7.6, S7.10, S7.14; UN R13-H Annex 3",
                       .caution = brakes_stop_a_car,
                       .notes = "check the text in force for the car's date and place"}),
    entry<brake_balance, balance_check>(
        {.name = "brake-balance",
         .title = "Ideal division of braking, and which axle locks first",
         .inputs = balance_in,
         .outputs = balance_out,
         .range = "level road, no lift, no pitch, both axles on the road; the division does not change with pressure",
         .source =
             "Limpert, Brake Design and Safety, straight-line braking; Mannering and Washburn, ch. 2 (from memory)",
         .caution = brakes_stop_a_car,
         .notes = "a rear axle that locks first turns the car round"}),
    entry<stop_heat, heat_check>({.name = "stop-heat",
                                  .title = "Heat of one stop",
                                  .inputs = heat_in,
                                  .outputs = heat_out,
                                  .range = "one stop, nothing shed, the rotor warm all through",
                                  .source = "Limpert, Brake Design and Safety, thermal chapter (from memory)",
                                  .caution = brakes_stop_a_car}),
    entry<adhesion_line>({.name = "adhesion-line",
                          .title = "Least braking rate at an adhesion",
                          .inputs = line_in,
                          .outputs = line_out,
                          .rules = line_rules,
                          .range = "adhesion 0.2 to 0.8, each load state",
                          .source = "UN R13-H Annex 5; Directive 71/320/EEC Annex II (from memory)",
                          .caution = brakes_stop_a_car}),
};

}  // namespace

std::span<const Sum> brake_sums() { return sums; }

}  // namespace sw
