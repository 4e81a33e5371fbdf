// Sums of belts and pulleys.
#include <algorithm>

#include "physics/belt.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view belts_and_pulleys =
    "belts and pulleys catch fingers, hair and sleeves, and an electric fan may start by itself: engine off, key out, "
    "before hands go near; tension as the belt maker instructs";

struct RunIn {
  std::optional<Length> large_diameter, small_diameter, centre_distance;
  std::optional<bool> crossed;
};
struct RunOut {
  std::optional<Length> length;
  std::optional<Angle> wrap_small, wrap_large;
};
constexpr Argument run_in[] = {
    positive<&RunIn::large_diameter>("large_diameter", "of the larger pulley, on the pitch line", kind::length, "mm"),
    positive<&RunIn::small_diameter>("small_diameter", "of the smaller pulley, on the pitch line", kind::length, "mm"),
    positive<&RunIn::centre_distance>("centre_distance", "between the shafts", kind::length, "mm"),
    yes_no<&RunIn::crossed>("crossed", "belt crossed between the pulleys").or_else(0, Source::chosen),
};
constexpr Argument run_out[] = {
    result<&RunOut::length>("length", "of the belt on its pitch line", kind::length, "mm"),
    result<&RunOut::wrap_small>("wrap_small", "on the smaller pulley", kind::angle, "deg"),
    result<&RunOut::wrap_large>("wrap_large", "on the larger pulley", kind::angle, "deg"),
};

void order(const std::optional<Length>& large, const std::optional<Length>& small, Remarks& say) {
  if (large && small && large->si < small->si)
    say.fault("large_diameter", "is less than small_diameter", "change them round");
}
void run_check(const RunIn& in, Remarks& say) {
  order(in.large_diameter, in.small_diameter, say);
  if (in.large_diameter && in.small_diameter && in.centre_distance &&
      in.centre_distance->si < (in.large_diameter->si + in.small_diameter->si) / 2)
    say.fault("centre_distance", "lets the pulleys run into each other", "at least half the sum of the diameters");
}

void belt_length(const RunIn& in, RunOut& out, Remarks&) {
  const auto run =
      *physics::belt_run(in.large_diameter->si, in.small_diameter->si, in.centre_distance->si, *in.crossed);
  out.length = Length{run.length_m};
  out.wrap_small = Angle{run.wrap_small};
  out.wrap_large = Angle{run.wrap_large};
}

struct CentreIn {
  std::optional<Length> large_diameter, small_diameter, length;
  std::optional<bool> crossed;
};
struct CentreOut {
  std::optional<Length> centre_distance;
};
constexpr Argument centre_in[] = {
    positive<&CentreIn::large_diameter>("large_diameter", "of the larger pulley, on the pitch line", kind::length,
                                        "mm"),
    positive<&CentreIn::small_diameter>("small_diameter", "of the smaller pulley, on the pitch line", kind::length,
                                        "mm"),
    positive<&CentreIn::length>("length", "of the belt on its pitch line", kind::length, "mm"),
    yes_no<&CentreIn::crossed>("crossed", "belt crossed between the pulleys").or_else(0, Source::chosen),
};
constexpr Argument centre_out[] = {
    result<&CentreOut::centre_distance>("centre_distance", "between the shafts", kind::length, "mm")};

void centre_check(const CentreIn& in, Remarks& say) { order(in.large_diameter, in.small_diameter, say); }

void belt_centre(const CentreIn& in, CentreOut& out, Remarks& say) {
  const auto c = physics::belt_centre(in.large_diameter->si, in.small_diameter->si, in.length->si, *in.crossed);
  if (!c) return say.fault("length", "is too short to go round both pulleys");
  out.centre_distance = Length{*c};
}

struct SpeedIn {
  std::vector<double> drivers, driven;
  std::optional<Length> line_difference;
  std::optional<double> slip;
  std::optional<ShaftSpeed> shaft_speed;
};
struct SpeedOut {
  std::optional<double> ratio;
  std::optional<ShaftSpeed> driven_speed;
};
constexpr Argument speed_in[] = {
    values<&SpeedIn::drivers>("drivers", "driving diameters, one a stage", kind::length),
    values<&SpeedIn::driven>("driven", "driven diameters, one a stage", kind::length),
    quantity<&SpeedIn::line_difference>("line_difference", "pitch radius less given radius", kind::length)
        .in("mm")
        .from(0, 100)
        .or_else(0, Source::chosen),
    number<&SpeedIn::slip>("slip", "of each stage").from(0, 0.99).or_else(0, Source::chosen),
    may(quantity<&SpeedIn::shaft_speed>("shaft_speed", "of the first driver", kind::shaft_speed)
            .in("rpm")
            .from(0, 1e6)),
};
constexpr Argument speed_out[] = {
    number<&SpeedOut::ratio>("ratio", "speed out over in"),
    result<&SpeedOut::driven_speed>("driven_speed", "of the last driven pulley", kind::shaft_speed, "rpm"),
};

void speed_check(const SpeedIn& in, Remarks& say) {
  if (!in.drivers.empty() && !in.driven.empty() && in.drivers.size() != in.driven.size())
    say.fault("drivers, driven", "differ in number", "one of each a stage");
  for (auto* list : {&in.drivers, &in.driven})
    if (std::any_of(list->begin(), list->end(), [](double d) { return !(d > 0); }))
      say.fault(list == &in.drivers ? "drivers" : "driven", "must all be above 0 mm");
}

void belt_speed(const SpeedIn& in, SpeedOut& out, Remarks&) {
  out.ratio = physics::belt_speed_ratio(in.drivers, in.driven, in.line_difference->si, *in.slip);
  if (in.shaft_speed) out.driven_speed = ShaftSpeed{*out.ratio * in.shaft_speed->si};
}

struct GripIn {
  std::optional<double> friction;
  std::optional<Angle> groove_angle, wrap;
  std::optional<double> ratio;
  std::optional<Force> tight, slack;
  std::optional<Length> diameter;
  std::optional<ShaftSpeed> shaft_speed;
};
struct GripOut {
  std::optional<double> ratio;
  std::optional<Angle> wrap;
  std::optional<Force> slack, tight, force;
  std::optional<Torque> torque;
  std::optional<Power> power;
};
constexpr Argument grip_in[] = {
    ratio<&GripIn::friction>("friction", "of the belt on the pulley", 10),
    may(positive<&GripIn::groove_angle>("groove_angle", "whole angle of the groove, flat where left out", kind::angle,
                                        "deg", 180)),
    positive<&GripIn::wrap>("wrap", "angle of contact", kind::angle, "deg", 36000),
    number<&GripIn::ratio>("ratio", "tight over slack").from(1, 1e9),
    positive<&GripIn::tight>("tight", "tension of the tight side", kind::force, "N"),
    positive<&GripIn::slack>("slack", "tension of the slack side", kind::force, "N"),
    may(positive<&GripIn::diameter>("diameter", "of the pulley, on the pitch line", kind::length, "mm")),
    may(positive<&GripIn::shaft_speed>("shaft_speed", "of the pulley", kind::shaft_speed, "rpm")),
};
constexpr Argument grip_out[] = {
    number<&GripOut::ratio>("ratio", "tight over slack at the point of slip"),
    result<&GripOut::wrap>("wrap", "angle of contact", kind::angle, "deg"),
    result<&GripOut::slack>("slack", "tension of the slack side", kind::force, "N"),
    result<&GripOut::tight>("tight", "tension of the tight side", kind::force, "N"),
    result<&GripOut::force>("force", "tight less slack", kind::force, "N"),
    result<&GripOut::torque>("torque", "at the point of slip", kind::torque, "N m"),
    result<&GripOut::power>("power", "at the point of slip", kind::power, "kW"),
};
constexpr Rule grip_rules[] = {one_of("wrap", "ratio"), at_most_one_of("tight", "slack")};

void grip_tension(const GripIn& in, double ratio, GripOut& out) {
  const double tight = in.tight ? in.tight->si : in.slack->si * ratio, slack = tight / ratio;
  if (in.tight)
    out.slack = Force{slack};
  else
    out.tight = Force{tight};
  out.force = Force{tight - slack};
  if (!in.diameter) return;
  out.torque = Torque{(tight - slack) * in.diameter->si / 2};
  if (in.shaft_speed) out.power = Power{out.torque->si * in.shaft_speed->si};
}

void belt_grip(const GripIn& in, GripOut& out, Remarks&) {
  const auto groove = in.groove_angle ? std::optional(in.groove_angle->si) : std::nullopt;
  double ratio = in.ratio.value_or(1);
  if (in.wrap)
    out.ratio = ratio = physics::belt_grip_ratio(*in.friction, in.wrap->si, groove).ratio;
  else
    out.wrap = Angle{physics::belt_grip_wrap(*in.friction, ratio, groove)};
  if (in.tight || in.slack) grip_tension(in, ratio, out);
}

struct SpanIn {
  std::optional<Length> length;
  std::optional<Quantity<dim::mass_per_length>> mass_per_length;
  std::optional<Force> tension;
  std::optional<Frequency> frequency;
};
struct SpanOut {
  std::optional<Frequency> frequency;
  std::optional<Force> tension;
};
constexpr Argument span_in[] = {
    positive<&SpanIn::length>("length", "of the free span", kind::length, "mm"),
    positive<&SpanIn::mass_per_length>("mass_per_length", "of the belt", kind::mass_per_length, "kg/m"),
    positive<&SpanIn::tension>("tension", "of the span", kind::force, "N"),
    positive<&SpanIn::frequency>("frequency", "of the span, plucked", kind::frequency, "Hz"),
};
constexpr Argument span_out[] = {
    result<&SpanOut::frequency>("frequency", "of the span, plucked", kind::frequency, "Hz"),
    result<&SpanOut::tension>("tension", "of the span", kind::force, "N"),
};
constexpr Rule span_rules[] = {one_of("tension", "frequency")};

void span_frequency(const SpanIn& in, SpanOut& out, Remarks&) {
  if (in.tension)
    out.frequency =
        Frequency{physics::span_frequency(in.length->si, in.mass_per_length->si, in.tension->si).frequency_hz};
  else
    out.tension = Force{physics::span_tension(in.length->si, in.mass_per_length->si, in.frequency->si)};
}

struct LineIn {
  std::optional<Length> span, offset;
  std::optional<Angle> angle;
};
struct LineOut {
  std::optional<Angle> angle;
  std::optional<Length> offset;
};
constexpr Argument line_in[] = {
    positive<&LineIn::span>("span", "length of the span", kind::length, "mm"),
    quantity<&LineIn::offset>("offset", "out of line over the span", kind::length).in("mm"),
    quantity<&LineIn::angle>("angle", "out of line", kind::angle).in("deg").above(-90, 89.9999),
};
constexpr Argument line_out[] = {
    result<&LineOut::angle>("angle", "out of line", kind::angle, "deg"),
    result<&LineOut::offset>("offset", "out of line over the span", kind::length, "mm"),
};
constexpr Rule line_rules[] = {one_of("offset", "angle")};

void belt_line(const LineIn& in, LineOut& out, Remarks&) {
  if (in.offset)
    out.angle = Angle{physics::belt_line_angle(in.span->si, in.offset->si)};
  else
    out.offset = Length{physics::belt_line_offset(in.span->si, in.angle->si)};
}

enum class Profile { pk };
struct RibbedIn {
  std::optional<Profile> profile;
};
struct RibbedOut {
  std::optional<Length> pitch;
  std::optional<Angle> groove_angle;
  std::optional<Length> line_difference, least_diameter, over_balls, run_out, groove_variation;
};
constexpr std::string_view profiles[] = {"pk"};
constexpr Argument ribbed_in[] = {choice<&RibbedIn::profile>("profile", "of the ribs", profiles)};
constexpr Argument ribbed_out[] = {
    result<&RibbedOut::pitch>("pitch", "rib to rib", kind::length, "mm"),
    result<&RibbedOut::groove_angle>("groove_angle", "whole angle of the groove", kind::angle, "deg"),
    result<&RibbedOut::line_difference>("line_difference", "pitch radius less effective radius", kind::length, "mm"),
    result<&RibbedOut::least_diameter>("least_diameter", "least effective diameter", kind::length, "mm"),
    result<&RibbedOut::over_balls>("over_balls", "over 2.5 mm balls less effective diameter", kind::length, "mm"),
    result<&RibbedOut::run_out>("run_out", "greatest run-out, radial and axial", kind::length, "mm"),
    result<&RibbedOut::groove_variation>("groove_variation", "greatest difference between grooves", kind::length, "mm"),
};

void ribbed_pulley(const RibbedIn&, RibbedOut& out, Remarks&) {
  const auto p = physics::ribbed_pk();
  out.pitch = Length{p.pitch_m};
  out.groove_angle = Angle{p.groove_angle};
  out.line_difference = Length{p.line_difference_m};
  out.least_diameter = Length{p.least_diameter_m};
  out.over_balls = Length{p.over_balls_m};
  out.run_out = Length{p.run_out_m};
  out.groove_variation = Length{p.groove_variation_m};
}

constexpr std::string_view geometry = "tangents on circles; any theory of machines, e.g. Khurmi and Gupta";
constexpr Sum sums[] = {
    entry<belt_length, run_check>({.name = "belt-length",
                                   .title = "Belt length and wraps over two pulleys",
                                   .inputs = run_in,
                                   .outputs = run_out,
                                   .range = "pitch-line diameters, a thin belt",
                                   .source = geometry,
                                   .caution = belts_and_pulleys}),
    entry<belt_centre, centre_check>({.name = "belt-centre",
                                      .title = "Centre distance for a belt",
                                      .inputs = centre_in,
                                      .outputs = centre_out,
                                      .range = "pitch-line diameters, a thin belt",
                                      .source = geometry,
                                      .caution = belts_and_pulleys}),
    entry<belt_speed, speed_check>({.name = "belt-speed",
                                    .title = "Speed through a train of belts",
                                    .inputs = speed_in,
                                    .outputs = speed_out,
                                    .range = "slip the same in each stage",
                                    .source = "ISO 9981:2020 5.4; slip as in Khurmi and Gupta",
                                    .caution = belts_and_pulleys}),
    entry<belt_grip>({.name = "belt-grip",
                      .title = "Tensions at the point of slip",
                      .inputs = grip_in,
                      .outputs = grip_out,
                      .rules = grip_rules,
                      .range = "tensions without their centrifugal part, m v^2",
                      .source = "Euler (1762); wedge of the groove as in any theory of machines",
                      .caution = belts_and_pulleys}),
    entry<span_frequency>({.name = "span-frequency",
                           .title = "Frequency of a belt span and its tension",
                           .inputs = span_in,
                           .outputs = span_out,
                           .rules = span_rules,
                           .range = "first mode of a standing belt, stiffness left out",
                           .source = "taut string; Rayleigh, Theory of Sound",
                           .caution = belts_and_pulleys}),
    entry<belt_line>({.name = "belt-line",
                      .title = "Pulleys out of line",
                      .inputs = line_in,
                      .outputs = line_out,
                      .rules = line_rules,
                      .range = "half a degree is the usual limit of V-belts (common practice)",
                      .source = "offset = span x tan(angle)",
                      .caution = belts_and_pulleys}),
    entry<ribbed_pulley>({.name = "ribbed-pulley",
                          .title = "Figures of a ribbed pulley",
                          .inputs = ribbed_in,
                          .outputs = ribbed_out,
                          .range = "automotive PK profile, tip radius 0.25 mm",
                          .source = "ISO 9981:2020 5.2 to 5.4; pitch, angle and balls of table 1 from memory",
                          .caution = belts_and_pulleys}),
};

}  // namespace

std::span<const Sum> belt_sums() { return sums; }

}  // namespace sw
