// The strip each bracket is bent from: its length, the lines it is bent on, and where its holes are drilled.
#include "solve/lines.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

using tubes::BracketModel;

const tubes::Model& lines_of(const Car& car) { return model_of<tubes::System>(car); }

void strip(const BracketModel& b, ByLine& out) {
  const auto flat = tubes::flat_of(b);
  for (std::size_t i = 0; i < b.flanges.size(); ++i)
    if (flat.flats_m[i] < 0)
      return out.refuse(b.place + ": flange " + b.flanges[i] + " is shorter than its bends take, " +
                        in_inches(b.flanges_m[i] - flat.flats_m[i]) + "; a longer flange or a tighter bend");
  std::string says = b.place + ": a strip of " + in_inches(flat.length_m);
  for (std::size_t i = 0; i < flat.bend_lines_m.size(); ++i) {
    says +=
        std::string(i ? " and " : ", bent ") + in_degrees(b.angles_rad[i]) + " at " + in_inches(flat.bend_lines_m[i]);
    out.because(b.place + ", middle of the bend after " + b.flanges[i] + ", from the first edge", flat.bend_lines_m[i],
                kind::length, "in");
  }
  for (std::size_t i = 0; i < b.flanges.size(); ++i)
    out.because(b.place + " " + b.flanges[i] + ", flat", flat.flats_m[i], kind::length, "in");
  out.because(b.place + ", neutral line from the inside, of the thickness", b.k, kind::number, "%");
  for (auto& h : b.holes) {
    if (!h.flange || !h.missing.empty()) continue;
    const std::size_t i = *h.flange;
    const double before = i == 0 ? 0 : physics::bend_setback_of_sheet_m(b.radius_m, b.thickness_m, b.angles_rad[i - 1]);
    out.because(h.place + ", its middle from the first edge", flat.starts_m[i] + h.along_m - before, kind::length,
                "in");
  }
  out.set({b.path + ".flat_length", flat.length_m});
  out.add(says + ".");
}

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  ByLine out;
  const auto& brackets = lines_of(car).brackets;
  for (auto& b : brackets) {
    out.lacks(b.missing);
    if (b.missing.empty()) strip(b, out);
  }
  if (brackets.empty()) out.lacks({"tubes.bracket: brackets"});
  return out.take();
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  std::vector<std::string> missing;
  for (auto& b : lines_of(car).brackets) {
    if (b.missing.empty()) return {};
    missing.insert(missing.end(), b.missing.begin(), b.missing.end());
  }
  if (missing.empty()) missing.push_back("tubes.bracket: brackets");
  return missing;
}

}  // namespace

const Solver flat_pattern{.key = "flat-pattern",
                          .title = "strips the brackets are bent from",
                          .judged_by = "tubes.flat-length tubes.bracket-flange tubes.bracket-hole",
                          .formula =
                              "flats, each flange less (radius + thickness) tan(bend/2) at its bends, and bend "
                              "allowances, angle x (radius + k x thickness); k by a trial bend's deduction, else 0.45",
                          .source = "US Navy, aircraft structural work (bend allowance); FAA-H-8083-31 (layout)",
                          .solve = solve,
                          .needs = needs};

}  // namespace sw
