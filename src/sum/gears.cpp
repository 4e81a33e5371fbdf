// Sums of tyre, gearing and speedometer.
#include <numbers>

#include "physics/tyre.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr double pi = std::numbers::pi;
using PerLength = Quantity<dim::per_length>;
constexpr std::string_view tyre_care =
    "a tyre of the wrong load, speed rating, rim or age can fail at speed: as the makers of tyre and car instruct";

struct TyreIn {
  std::string size;
  std::optional<Length> diameter;
  std::optional<double> rolling_factor;
};
struct TyreOut {
  std::optional<Length> diameter, circumference;
  std::optional<PerLength> turns;
};
constexpr Argument tyre_in[] = {
    text<&TyreIn::size>("size", "tyre size, as 205/70R14"),
    positive<&TyreIn::diameter>("diameter", "free diameter", kind::length, "mm", 1e5),
    ratio<&TyreIn::rolling_factor>("rolling_factor", "rolling over free circumference", 2).or_else(1, Source::chosen),
};
constexpr Argument tyre_out[] = {
    result<&TyreOut::diameter>("diameter", "free diameter", kind::length, "mm"),
    result<&TyreOut::circumference>("circumference", "rolling circumference", kind::length, "mm"),
    result<&TyreOut::turns>("turns", "wheel turns over distance", kind::per_length, "rev/mile"),
};
constexpr Rule tyre_rules[] = {one_of("size", "diameter")};

void tyre_check(const TyreIn& in, Remarks& say) {
  if (!in.size.empty() && !physics::tyre_size(in.size))
    say.fault("size", "expected a tyre size such as 205/70R14 or 31x10.5R15, got \"" + in.size + "\"");
}

void tyre(const TyreIn& in, TyreOut& out, Remarks&) {
  const double d = in.diameter ? in.diameter->si : physics::tyre_size(in.size)->diameter_m;
  out.diameter = Length{d};
  out.circumference = Length{pi * d * *in.rolling_factor};
  out.turns = PerLength{1 / out.circumference->si};
}

struct GearingIn {
  std::optional<double> axle, gear;
  std::optional<Length> diameter;
  std::optional<double> slip;
  std::optional<Speed> speed;
  std::optional<ShaftSpeed> engine_speed;
};
struct GearingOut {
  std::optional<ShaftSpeed> engine_speed;
  std::optional<Speed> speed;
};
constexpr Argument gearing_in[] = {
    ratio<&GearingIn::axle>("axle", "axle ratio", 100),
    ratio<&GearingIn::gear>("gear", "gear ratio", 100),
    positive<&GearingIn::diameter>("diameter", "rolling diameter of the tyre", kind::length, "mm", 1e5),
    number<&GearingIn::slip>("slip", "of converter and tyre, share of the speed put in")
        .from(0, 0.99)
        .or_else(0, Source::chosen),
    quantity<&GearingIn::speed>("speed", "of the car", kind::speed).in("mph").from(0, 1000),
    quantity<&GearingIn::engine_speed>("engine_speed", "engine speed", kind::shaft_speed).in("rpm").from(0, 1e6),
};
constexpr Argument gearing_out[] = {
    result<&GearingOut::engine_speed>("engine_speed", "engine speed", kind::shaft_speed, "rpm"),
    result<&GearingOut::speed>("speed", "of the car", kind::speed, "mph"),
};
constexpr Rule gearing_rules[] = {one_of("speed", "engine_speed")};

void gearing(const GearingIn& in, GearingOut& out, Remarks&) {
  const double turns = physics::gearing_rad_m(*in.axle, *in.gear, in.diameter->si, *in.slip);
  if (in.speed)
    out.engine_speed = ShaftSpeed{in.speed->si * turns};
  else
    out.speed = Speed{in.engine_speed->si / turns};
}

struct DriveIn {
  std::optional<double> axle;
  std::optional<Length> diameter;
  std::optional<PerLength> turns;
  std::optional<double> drive_teeth, driven_teeth, sensor_teeth;
};
struct DriveOut {
  std::optional<PerLength> shaft_turns, cable_turns, pulses;
};
constexpr Argument drive_in[] = {
    ratio<&DriveIn::axle>("axle", "axle ratio", 100),
    positive<&DriveIn::diameter>("diameter", "rolling diameter of the tyre", kind::length, "mm", 1e5),
    positive<&DriveIn::turns>("turns", "of the tyre over distance", kind::per_length, "rev/mile"),
    ratio<&DriveIn::drive_teeth>("drive_teeth", "teeth of the speedometer drive gear on the shaft", 1000),
    ratio<&DriveIn::driven_teeth>("driven_teeth", "teeth of the driven gear on the cable", 1000),
    may(ratio<&DriveIn::sensor_teeth>("sensor_teeth", "pulses a turn of the propeller shaft", 1000)),
};
constexpr Argument drive_out[] = {
    result<&DriveOut::shaft_turns>("shaft_turns", "of the propeller shaft", kind::per_length, "rev/mile"),
    result<&DriveOut::cable_turns>("cable_turns", "of the speedometer cable", kind::per_length, "rev/mile"),
    result<&DriveOut::pulses>("pulses", "of the sensor", kind::pulses_per_length, "pulse/mile"),
};
constexpr Rule drive_rules[] = {one_of("diameter", "turns"), all_or_none_of("drive_teeth", "driven_teeth")};

void speed_drive(const DriveIn& in, DriveOut& out, Remarks& say) {
  const double shaft = *in.axle * (in.turns ? in.turns->si : 1 / (pi * in.diameter->si));
  out.shaft_turns = PerLength{shaft};
  if (in.drive_teeth) {
    out.cable_turns = PerLength{shaft * *in.drive_teeth / *in.driven_teeth};
    say.note("most US speedometer heads want 1000 rev/mile; 940, 960 and 1020 exist: read the dial (common practice)");
  }
  if (in.sensor_teeth) out.pulses = PerLength{shaft * *in.sensor_teeth};
}

struct SignalIn {
  std::optional<Speed> speed;
  std::optional<PerLength> pulses, turns;
};
struct SignalOut {
  std::optional<Frequency> frequency;
  std::optional<ShaftSpeed> shaft_speed;
};
constexpr Argument signal_in[] = {
    quantity<&SignalIn::speed>("speed", "of the car", kind::speed).in("mph").from(0, 1000),
    positive<&SignalIn::pulses>("pulses", "of the sender over distance", kind::pulses_per_length, "pulse/mile"),
    positive<&SignalIn::turns>("turns", "of the cable over distance", kind::per_length, "rev/mile"),
};
constexpr Argument signal_out[] = {
    result<&SignalOut::frequency>("frequency", "of the sender", kind::frequency, "Hz"),
    result<&SignalOut::shaft_speed>("shaft_speed", "of the cable", kind::shaft_speed, "rpm"),
};
constexpr Rule signal_rules[] = {one_of("pulses", "turns")};

void speed_signal(const SignalIn& in, SignalOut& out, Remarks&) {
  if (in.pulses)
    out.frequency = Frequency{in.speed->si * in.pulses->si};
  else
    out.shaft_speed = ShaftSpeed{2 * pi * in.speed->si * in.turns->si};
}

struct ErrorIn {
  std::optional<Length> old_diameter, new_diameter;
  std::optional<Speed> indicated;
};
struct ErrorOut {
  std::optional<Speed> true_speed;
};
constexpr Argument error_in[] = {
    positive<&ErrorIn::old_diameter>("old_diameter", "of the tyre the speedometer was set for", kind::length, "mm",
                                     1e5),
    positive<&ErrorIn::new_diameter>("new_diameter", "of the tyre now fitted", kind::length, "mm", 1e5),
    quantity<&ErrorIn::indicated>("indicated", "speed shown", kind::speed).in("mph").from(0, 1000),
};
constexpr Argument error_out[] = {result<&ErrorOut::true_speed>("true_speed", "of the car", kind::speed, "mph")};

void speed_error(const ErrorIn& in, ErrorOut& out, Remarks&) {
  out.true_speed = Speed{in.indicated->si * in.new_diameter->si / in.old_diameter->si};
}

struct BandIn {
  std::optional<Speed> speed;
};
struct BandOut {
  std::optional<Speed> lowest, highest;
};
constexpr Argument band_in[] = {quantity<&BandIn::speed>("speed", "true speed", kind::speed).in("km/h").from(0, 1000)};
constexpr Argument band_out[] = {
    result<&BandOut::lowest>("lowest", "lowest indication allowed", kind::speed, "km/h"),
    result<&BandOut::highest>("highest", "highest indication allowed", kind::speed, "km/h"),
};

void speedometer_band(const BandIn& in, BandOut& out, Remarks&) {
  const auto b = physics::speedometer_band(in.speed->si);
  out.lowest = Speed{b.lowest_m_s};
  out.highest = Speed{b.highest_m_s};
}

constexpr Sum sums[] = {
    entry<tyre, tyre_check>({.name = "tyre",
                             .title = "Tyre diameter and turns",
                             .inputs = tyre_in,
                             .outputs = tyre_out,
                             .rules = tyre_rules,
                             .range = "free diameter from the size text; under load a tyre turns 3 to 4 % more often",
                             .source = "ETRTO and T&RA size definition: rim + 2 x width x aspect",
                             .caution = tyre_care}),
    entry<gearing>({.name = "gearing",
                    .title = "Engine speed and road speed",
                    .inputs = gearing_in,
                    .outputs = gearing_out,
                    .rules = gearing_rules,
                    .range = "rolling diameter; engine faster by 1/(1 - slip)",
                    .source = "kinematics"}),
    entry<speed_drive>({.name = "speed-drive",
                        .title = "Turns and pulses over a mile",
                        .inputs = drive_in,
                        .outputs = drive_out,
                        .rules = drive_rules,
                        .range = "sensor and drive gear on the propeller shaft side",
                        .source = "kinematics; SAE J678 family for the head (common practice)"}),
    entry<speed_signal>({.name = "speed-signal",
                         .title = "Signal at a speed",
                         .inputs = signal_in,
                         .outputs = signal_out,
                         .rules = signal_rules,
                         .range = "steady speed",
                         .source = "units: speed x pulses over distance"}),
    entry<speed_error>({.name = "speed-error",
                        .title = "True speed after a change of tyre",
                        .inputs = error_in,
                        .outputs = error_out,
                        .range = "the speedometer was right with the old tyre",
                        .source = "ratio of diameters",
                        .caution = tyre_care}),
    entry<speedometer_band>({.name = "speedometer-band",
                             .title = "Indication allowed at a true speed",
                             .inputs = band_in,
                             .outputs = band_out,
                             .range = "passenger cars; check the rule in force for the car",
                             .source = "UN Regulation No. 39, 5.3: 0 to 0.1 V + 4 km/h above the true speed"}),
};

}  // namespace

std::span<const Sum> gear_sums() { return sums; }

}  // namespace sw
