// What fits what, whatever the drive.
#include <vector>

#include "systems/brakes/checks.hpp"
#include "systems/brakes/heat.hpp"

namespace sw::brakes {
namespace {

constexpr Requirement rule(std::string_view id, std::string_view title, std::string_view source,
                           std::string_view formula, Evaluate* evaluate, Caution caution = Caution::braking_loss) {
  return {.id = id,
          .title = title,
          .kind = RequirementKind::rule,
          .hazard = Hazard::harm,
          .caution = caution,
          .source = source,
          .formula = formula,
          .own_missing = true,
          .evaluate = evaluate};
}
constexpr Requirement figure(std::string_view id, std::string_view title, RequirementKind kind, const Kind& quantity,
                             std::string_view unit, std::string_view source, std::string_view formula,
                             Evaluate* evaluate) {
  Requirement r = rule(id, title, source, formula, evaluate);
  r.kind = kind;
  r.quantity = &quantity;
  r.unit = unit;
  return r;
}
/// What is done about it raises the dust of shoes or pads.
constexpr Requirement near_linings(Requirement r) {
  r.caution = Caution::old_linings;
  return r;
}
constexpr Requirement reading(Requirement r, std::span<const Port> needs) {
  r.needs = needs;
  return r;
}

constexpr auto most = RequirementKind::most, least = RequirementKind::least, band = RequirementKind::band;

constexpr Requirement parts[] = {
    figure("brakes.master-stroke", "stroke used at 900 psi", most, kind::number, "%", "common practice: 60 to 65 %",
           "fluid both axles take at 900 psi over the master's area, and the take-up, over the whole stroke",
           master_stroke),
    figure("brakes.chamber-stroke", "each chamber has stroke enough", most, kind::length, "in",
           "the master's own stroke", "fluid its circuit takes at 900 psi over the master's area", chamber_stroke),
    near_linings(figure("brakes.pedal-height", "pad over the floor at 900 psi", least, kind::length, "in",
                        "common practice: 1 1/2 in", "travel to the floor less stroke times pedal ratio",
                        pedal_height)),
    figure("brakes.drain-back", "pedal comes up after a night", most, kind::length, "in",
           "common practice: second press within 0.3 in of the first",
           "a reservoir below the calipers pulls their pistons back as far as the seals let them, unless a residual "
           "valve holds more: areas times retreat over the master's area, times the pedal ratio",
           drain_back),
    figure("brakes.residual-disc", "no residual pressure drags the pads", most, kind::gauge_pressure, "psi",
           "common practice: a 2 psi valve at most", "the residual valve's pressure", residual_disc),
    figure("brakes.residual-drum", "residual pressure holds the cups", band, kind::gauge_pressure, "psi",
           "common practice: 10 psi with plain cups",
           "the residual valve's pressure; cups held by expanders need none, or what keeps the fluid up where "
           "the reservoir stands lower",
           residual_drum),
    figure("brakes.rod-gap", "gap of the booster's rod", band, kind::length, "in", "common practice: 0.010 to 0.030 in",
           "output rod to the master's piston, at rest", rod_gap),
    figure("brakes.trapped-pressure", "nothing is shut in when hot", most, kind::gauge_pressure, "psi",
           "common practice: 2 psi drags",
           "where the rod holds the piston beyond its compensating port: fluid times expansion times rise over the "
           "circuit's give",
           trapped_pressure),
    figure("brakes.rod-angle", "input rod in line", most, kind::angle, "deg", "common practice: 5 deg",
           "offset over length of the rod, as a sine", rod_angle),
    figure("brakes.reservoir", "fluid enough for worn pads", most, kind::volume, "cm3",
           "common practice: four fifths of the reservoir", "piston areas of both wheels times the wear of a pair",
           reservoir),
    figure("brakes.hose-slack", "hoses long enough", least, kind::length, "in", "common practice: 1/2 in",
           "slack left at droop, lock and bump, at its least", hose_slack),
    reading(rule("brakes.reducing-valves", "one reducing valve in a line", "common practice",
                 "valves with a slope below 1 in one line", reducing_valves),
            std::span(road::ports)),
    rule("brakes.circuits", "two circuits", "49 CFR 571.135 S7.10", "the split of the master's lines", circuits),
    rule("brakes.difference-warning", "a lamp tells of a lost circuit", "49 CFR 571.135 S5.5 (from memory)",
         "whether a pressure-difference or level switch with a lamp is there", difference_warning),
    rule("brakes.fluid-mix", "no silicone with glycol fluid", "common practice; 49 CFR 571.116 keeps the kinds apart",
         "kind of the fluid against what stood in the parts kept", fluid_mix, Caution::brake_fluid),
};

std::vector<Requirement> joined() {
  std::vector<Requirement> both(stop_requirements().begin(), stop_requirements().end());
  both.insert(both.end(), engine_off_requirements().begin(), engine_off_requirements().end());
  both.insert(both.end(), heat_requirements().begin(), heat_requirements().end());
  both.insert(both.end(), std::begin(parts), std::end(parts));
  return both;
}

}  // namespace

std::span<const Requirement> parts_requirements() { return parts; }

std::span<const Requirement> System::requirements() {
  static const std::vector<Requirement> both = joined();
  return both;
}

}  // namespace sw::brakes
