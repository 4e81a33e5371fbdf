// The bend card of every tube that has points: where each bend begins on the cut tube, what the bender is drawn to so
// that the tube comes to the angle between its straights, and how far it is turned between them.
#include "solve/lines.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

using tubes::TubeModel;

const tubes::Model& lines_of(const Car& car) { return model_of<tubes::System>(car); }

std::vector<std::string> lacking(const TubeModel& t) {
  auto missing = tubes::card_lacks(t);
  if (!t.outside_m) missing.push_back(t.outside_path);
  return missing;
}

/// Why the die cannot make it, and what would; empty where it can.
std::string trouble_of(const TubeModel& t) {
  const auto straights = tubes::straights_of(t);
  for (std::size_t i = 0; i < straights.size(); ++i) {
    const auto& s = straights[i];
    if (s.enough()) continue;
    double tangents = 0;  // of a radius of 1
    if (i > 0) tangents += physics::bend_setback_m(1, t.shape.bends.bends[i - 1]).value;
    if (i < t.shape.bends.bends.size()) tangents += physics::bend_setback_m(1, t.shape.bends.bends[i]).value;
    const double leg = t.shape.bends.legs_m[i],
                 radius = tangents > 0 ? (leg - s.wanted_m) / tangents * t.springback.kept : 0;
    std::string way = "put " + *s.from + " and " + *s.to + " " + in_inches(s.wanted_m - s.there_m) + " farther apart";
    if (t.material && radius >= tubes::least_radius_m(*t.material, *t.outside_m))
      way += ", or bend it on a die of " + in_inches(radius) + " or less";
    return t.place + ": " + (s.there_m < 0 ? "its bends run into each other between " : "too little straight between ") +
           *s.from + " and " + *s.to + ", " + in_inches(std::max(s.there_m, 0.0)) + " where " + in_inches(s.wanted_m) +
           " are needed; " + way;
  }
  return {};
}

void card(const TubeModel& t, ByLine& out) {
  const auto rows = tubes::card_of(t);
  std::string says = t.place + ": cut " + in_inches(*t.to_cut_m());
  for (std::size_t i = 0; i < rows.size(); ++i) {
    const auto& c = t.corners[i + 1];
    out.set({c.path + ".mark", rows[i].mark_m});
    out.set({c.path + ".setting", rows[i].setting_rad});
    out.set({c.path + ".turn", rows[i].turn_rad});
    says += "; at " + in_inches(rows[i].mark_m) + (i > 0 ? " turn " + in_degrees(rows[i].turn_rad) + " and" : "") +
            " bend to " + in_degrees(rows[i].setting_rad) + " for " + in_degrees(rows[i].wanted_rad);
    out.because(t.place + " " + c.name + ", angle wanted", rows[i].wanted_rad, kind::angle, "deg");
  }
  out.set({t.cut_path, *t.to_cut_m()});
  out.add(says + ".");
  for (auto& straight : tubes::straights_of(t))
    out.because(t.place + " " + *straight.from + " to " + *straight.to + ", straight", straight.there_m, kind::length,
                "in");
  if (rows.empty()) return;
  out.because(t.place + ", kept of a setting, by " + t.springback.how, t.springback.kept, kind::number, "%");
  out.because(t.place + ", radius its bends come to", t.shape.radius_m, kind::length, "in");
}

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  ByLine out;
  bool drawn = false;
  for (auto& t : lines_of(car).tubes) {
    if (!t.shape.drawn) continue;
    drawn = true;
    const auto missing = lacking(t);
    out.lacks(missing);
    if (!missing.empty()) continue;
    if (!t.shape.bends.good()) {
      out.refuse(t.place + ": its points make no tube");
      continue;
    }
    out.concerns(t);
    if (const std::string why = trouble_of(t); !why.empty())
      out.refuse(why);
    else
      card(t, out);
  }
  if (!drawn) out.lacks({"tubes.tube.NAME.point: both ends and the corners between them"});
  return out.take();
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  std::vector<std::string> missing;
  bool ready = false;
  for (auto& t : lines_of(car).tubes) {
    if (!t.shape.drawn) continue;
    const auto of_this = lacking(t);
    ready |= of_this.empty();
    missing.insert(missing.end(), of_this.begin(), of_this.end());
  }
  if (ready) return {};
  if (missing.empty()) missing.push_back("tubes.tube.NAME.point: both ends and the corners between them");
  return missing;
}

}  // namespace

const Solver tube_bends{
    .key = "tube-bends",
    .title = "bend cards of the tubes",
    .judged_by = "tubes.straight tubes.bend tubes.brake-bend tubes.fuel-bend tubes.thinning tubes.brake-thinning "
                 "tubes.fuel-thinning tubes.card-angle tubes.card-turn tubes.card-mark tubes.cut-length",
    .formula =
        "straights, bends and turns from the points; each bend drawn to its angle over what a bend keeps: by a trial "
        "bend, else 1 - M R/(E I) of the round section; cut length is straights, arcs and what the flares take. Marks "
        "are where bends begin, counted along the cut tube from its start; turns are right-handed, looking along it",
    .source =
        "geometry; elastic recovery after plastic bending, any text on metal forming; a trial bend goes before it",
    .solve = solve,
    .needs = needs};

}  // namespace sw
