#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

constexpr std::string_view shop_rule = "common practice";

struct Words {
  std::string_view source, formula;
};
consteval Requirement rule_of(std::string_view id, std::string_view title, Hazard hazard, Caution caution, Words words,
                              void (*evaluate)(const void*, const Evidenced&, Verdicts&)) {
  return {.id = id,
          .title = title,
          .kind = RequirementKind::rule,
          .hazard = hazard,
          .caution = caution,
          .source = words.source,
          .formula = words.formula,
          .own_missing = true,
          .evaluate = evaluate};
}
consteval Requirement figure(std::string_view id, std::string_view title, RequirementKind kind, Hazard hazard,
                             Caution caution, const Kind& quantity, std::string_view unit, Words words,
                             void (*evaluate)(const void*, const Evidenced&, Verdicts&)) {
  return {.id = id,
          .title = title,
          .kind = kind,
          .hazard = hazard,
          .caution = caution,
          .quantity = &quantity,
          .unit = unit,
          .source = words.source,
          .formula = words.formula,
          .own_missing = true,
          .evaluate = evaluate};
}

constexpr auto most = RequirementKind::most, least = RequirementKind::least;
constexpr auto harm = Hazard::harm, damage = Hazard::damage, nuisance = Hazard::nuisance;
constexpr auto brakes_fail = Caution::braking_loss, fuel_burns = Caution::fuel_fire, nobody = Caution::none;

constexpr Words bend{
    "FAA AC 43.13-1B, chapter 9, table of tube data, for steel and aluminium of its sizes (from memory); common "
    "practice: three diameters for all other",
    "radius to the centre line over outside diameter"};
constexpr Words thinning{
    "ASME B31.1, table 102.4.5: no more than 1.25 times the wall wanted is asked for before bending",
    "1/(1 + outside/(2 radius)): what the outer side is stretched it thins by"};
constexpr Words clips{
    "US MIL-H-8891A, table II, and FAA AC 43.13-1B (from memory): 14 in for 3/16 in of steel, 20 in for 3/8 in",
    "longest free span; of clips evenly spread, length over their count and one"};
constexpr Words heat{
    "common practice: bare 3 in for brake fluid and fuel, 2 in for vacuum, 1 in else; 1 in behind a shield",
    "least distance of the bent centre line to the hot part's middle, less both radii"};
constexpr Words apart{"common practice: 1/4 in between tubes that share no clip",
                      "least distance of the bent centre lines, less both radii"};
constexpr Words burst{"SAE J1065 rates tube at a quarter of its burst pressure (from memory)",
                      "2 wall x tensile strength over outside (Barlow), the wall thinned by the bend, over the working "
                      "pressure"};
constexpr Words hose_bend{"the hose maker's least radius", "tightest bend as it lies"};
constexpr Words hose_slack{"FAA AC 43.13-1B, chapter 9 (from memory): 5 to 8 % of its length",
                           "1 - longest way between its ends over its free length"};

constexpr Requirement all[] = {
    rule_of("tubes.seat", "flare and seat of one kind", harm, brakes_fail,
            {"SAE J512 and J514 (from memory): 45 deg and 37 deg seats are not made for each other",
             "kind of the flare against kind of the seat"},
            judge_seat),
    rule_of("tubes.nut", "nut for its flare", harm, brakes_fail,
            {shop_rule, "kind of the nut against kind of the flare"}, judge_nut),
    figure("tubes.flare-shear", "flare under a nut of another kind", most, harm, brakes_fail, kind::stress, "ksi",
           {"0.577 of the yield stress (von Mises)",
            "torque / (nut factor of dry threads x thread) over the wall under the ring it presses"},
           judge_shear),
    figure("tubes.flare-strain", "flare that does not crack", most, harm, brakes_fail, kind::number, "%",
           {"common practice: 0.8 of the elongation", "ln(flare over tube); untold, the elongation usual of the material"}, judge_flare),
    rule_of("tubes.flared-once", "one attempt an end", harm, brakes_fail, {shop_rule, "times it was flared"},
            judge_attempts),
    figure("tubes.brake-bend", "brake line's bend stays round", least, nuisance, brakes_fail, kind::number, "", bend,
           judge_bend<Concern::brakes>),
    figure("tubes.fuel-bend", "fuel line's bend stays round", least, nuisance, fuel_burns, kind::number, "", bend,
           judge_bend<Concern::fuel>),
    figure("tubes.bend", "bend that stays round", least, nuisance, nobody, kind::number, "", bend,
           judge_bend<Concern::other>),
    figure("tubes.brake-thinning", "wall left in a brake line's bend", least, damage, brakes_fail, kind::number, "%",
           thinning, judge_thinning<Concern::brakes>),
    figure("tubes.fuel-thinning", "wall left in a fuel line's bend", least, damage, fuel_burns, kind::number, "%",
           thinning, judge_thinning<Concern::fuel>),
    figure("tubes.thinning", "wall left in a bend", least, damage, nobody, kind::number, "%", thinning,
           judge_thinning<Concern::other>),
    figure("tubes.straight", "straight enough for die, flare and nut", least, nuisance, nobody, kind::length, "in",
           {"the die's grip; tubes.tube.NAME.start.straight and .end.straight",
            "corner to corner, less radius x tan(bend/2) at each, on the radius it springs back to"},
           judge_straight),
    figure("tubes.brake-clips", "brake line's clips near enough", most, damage, brakes_fail, kind::length, "in", clips,
           judge_clips<Concern::brakes>),
    figure("tubes.fuel-clips", "fuel line's clips near enough", most, damage, fuel_burns, kind::length, "in", clips,
           judge_clips<Concern::fuel>),
    figure("tubes.clips", "clips near enough", most, damage, nobody, kind::length, "in", clips,
           judge_clips<Concern::other>),
    figure("tubes.brake-burst", "brake line stands its pressure", least, harm, brakes_fail, kind::number, "", burst,
           judge_burst<Concern::brakes>),
    figure("tubes.fuel-burst", "fuel line stands its pressure", least, harm, fuel_burns, kind::number, "", burst,
           judge_burst<Concern::fuel>),
    figure("tubes.burst", "line stands its pressure", least, damage, nobody, kind::number, "", burst,
           judge_burst<Concern::other>),
    figure("tubes.card-angle", "bends come to what the points ask", most, nuisance, nobody, kind::angle, "deg",
           {"common practice: 1 deg a bend", "setting x what a bend keeps, against the angle between the straights"},
           judge_card_angle),
    figure("tubes.card-turn", "turned between bends as the points ask", most, damage, nobody, kind::angle, "deg",
           {"common practice: 3 deg", "turn on the card against the turn from the points; the other way is the tube's "
                                      "mirror image"},
           judge_card_turn),
    rule_of("tubes.card-mark", "bends begin where the points ask", nuisance, nobody,
            {"common practice: 1/8 in", "mark on the card against straights and arcs before it"}, judge_card_mark),
    rule_of("tubes.cut-length", "cut to the length it needs", nuisance, nobody,
            {"common practice: 1/8 in", "straights, arcs and what both flares take"}, judge_cut_length),
    figure("tubes.sticks", "sticks long enough for what is cut from them", least, nuisance, nobody, kind::length, "in",
           {"tubes.stock.NAME.length", "stick, less its pieces and the cuts between them"}, judge_sticks),
    figure("tubes.brake-heat", "brake line clear of hot parts", least, harm, brakes_fail, kind::length, "in", heat,
           judge_heat<Concern::brakes>),
    figure("tubes.fuel-heat", "fuel line clear of hot parts", least, harm, fuel_burns, kind::length, "in", heat,
           judge_heat<Concern::fuel>),
    figure("tubes.heat", "line clear of hot parts", least, damage, nobody, kind::length, "in", heat,
           judge_heat<Concern::other>),
    figure("tubes.brake-apart", "brake line clear of other tubes", least, damage, brakes_fail, kind::length, "in",
           apart, judge_apart<Concern::brakes>),
    figure("tubes.fuel-apart", "fuel line clear of other tubes", least, damage, fuel_burns, kind::length, "in", apart,
           judge_apart<Concern::fuel>),
    figure("tubes.apart", "lines clear of one another", least, nuisance, nobody, kind::length, "in", apart,
           judge_apart<Concern::other>),
    figure("tubes.brake-hose-bend", "brake hose not bent too tightly", least, harm, brakes_fail, kind::length, "in",
           hose_bend, judge_hose_bend<Concern::brakes>),
    figure("tubes.fuel-hose-bend", "fuel hose not bent too tightly", least, harm, fuel_burns, kind::length, "in",
           hose_bend, judge_hose_bend<Concern::fuel>),
    figure("tubes.hose-bend", "hose not bent too tightly", least, damage, nobody, kind::length, "in", hose_bend,
           judge_hose_bend<Concern::other>),
    figure("tubes.brake-hose-slack", "hose whose use nobody said is long enough", least, harm, brakes_fail,
           kind::number, "%", hose_slack, judge_hose_slack<Concern::brakes>),
    figure("tubes.fuel-hose-slack", "fuel hose long enough", least, harm, fuel_burns, kind::number, "%", hose_slack,
           judge_hose_slack<Concern::fuel>),
    figure("tubes.hose-slack", "hose long enough", least, damage, nobody, kind::number, "%", hose_slack,
           judge_hose_slack<Concern::other>),
    figure("tubes.bracket-bend", "bracket's bend does not crack", least, damage, nobody, kind::number, "",
           {"FAA-H-8083-31: annealed sheet about its thickness; its chart gives 0.16 in for 0.040 in of hard aluminium",
            "inside radius over thickness"},
           judge_bracket_bend),
    figure("tubes.bracket-flange", "flange the brake can hold", least, nuisance, nobody, kind::length, "in",
           {"common practice: two thicknesses of flat",
            "flange outside, less (radius + thickness) tan(bend/2) at each end"},
           judge_bracket_flange),
    figure("tubes.bracket-hole", "hole clear of a bend", least, nuisance, nobody, kind::length, "in",
           {"common practice: two thicknesses from its edge to where the bend begins",
            "hole's edge to the nearer end of its flange's flat"},
           judge_bracket_hole),
    rule_of("tubes.flat-length", "strip cut to the length it needs", nuisance, nobody,
            {"common practice: 1/32 in", "flats and bend allowances, angle x (radius + k x thickness)"},
            judge_flat_length),
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::tubes
