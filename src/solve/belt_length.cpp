// The belt to order: of the lengths sold, the one that leaves the adjuster most room both ways.
#include <algorithm>
#include <cmath>

#include "proof/trade_size.hpp"
#include "quantity/print.hpp"
#include "solve/drive.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

std::string inches(double m) { return print(m, kind::length, "in", 4); }

/// How much longer than the path the belt may be: the requirement's own limits.
struct Over {
  double least, most;
  double middle() const { return 0.5 * (least + most); }
};
Over allowed(const belts::OneBelt& b) {
  const double stretches = belts::stretch * *b.path_m, on = -b.adjuster->let_on_m, up = b.adjuster->take_up_m;
  if (b.adjuster->kind == belts::Adjusts::arm) return {-std::min(on, up), std::min(on, up) - stretches};
  return {belts::fitting * *b.path_m - on, up - stretches};
}

void one(const belts::OneBelt& b, Solution& out) {
  const Over over = allowed(b);
  const std::string path = b.path_of_table + ".length";
  const FieldInfo& field = *find_field(build_fields(), path);
  const double wanted = *b.path_m + over.middle();
  std::optional<double> best;
  for (bool upward : {false, true}) {
    const auto size = trade_size(field, wanted, upward);
    if (!size || *size - *b.path_m < over.least || *size - *b.path_m > over.most) continue;
    if (!best || std::abs(*size - wanted) < std::abs(*best - wanted)) best = size;
  }
  if (!best) {
    out.trouble = "belt " + b.name + " wants a length from " + inches(*b.path_m + over.least) + " to " +
                  inches(*b.path_m + over.most) +
                  (over.least > over.most ? ": its adjuster has too little travel for any"
                                          : ", and none that is sold lies in between: move the adjuster's span");
    return;
  }
  const double surplus = *best - *b.path_m;
  out.settings.push_back({path, *best});
  out.says += (out.says.empty() ? "" : " ") + std::string("Belt ") + b.name + ": " + inches(*best) +
              " round a path of " + inches(*b.path_m) + "; new, the adjuster " +
              (surplus >= 0 ? "takes up " + inches(surplus) + " of its " + inches(b.adjuster->take_up_m)
                            : "lets on " + inches(-surplus) + " of its " + inches(-b.adjuster->let_on_m)) +
              ".";
  out.because.push_back(
      {.what = "path round the pulleys of " + b.name, .value = *b.path_m, .kind = &kind::length, .unit = "in"});
  out.because.push_back(
      {.what = "shortest belt it takes", .value = *b.path_m + over.least, .kind = &kind::length, .unit = "in"});
  out.because.push_back(
      {.what = "longest belt it takes", .value = *b.path_m + over.most, .kind = &kind::length, .unit = "in"});
}

std::vector<std::string> lacking(const belts::Model& m) {
  std::vector<std::string> missing;
  bool any = false;
  for (auto& b : m.belt) {
    if (!b.adjuster) continue;
    any = true;
    missing.insert(missing.end(), b.adjuster->missing.begin(), b.adjuster->missing.end());
    missing.insert(missing.end(), b.missing.begin(), b.missing.end());
    if (!b.path_m && b.missing.empty()) missing.push_back(b.path_of_table + ".path");
  }
  if (!any) missing.push_back((m.belt.empty() ? "belts.belt.NAME" : m.belt.front().path_of_table) + ".adjuster");
  return missing;
}

std::vector<std::string> needs(const Build& build) { return lacking(drive_of(Car(build))); }

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  const belts::Model& m = drive_of(car);
  Solution out;
  out.missing = lacking(m);
  if (!out.missing.empty()) return out;
  for (auto& b : m.belt) {
    if (!b.adjuster || !out.trouble.empty()) continue;
    if (std::isnan(b.adjuster->take_up_m + b.adjuster->let_on_m))
      out.trouble = "at an end of the adjuster of belt " + b.name + " the belt no longer lies on all its pulleys";
    else
      one(b, out);
  }
  return out;
}

}  // namespace

const Solver belt_length{.key = "belt-length",
                         .title = "belt to order",
                         .judged_by = "belts.length",
                         .caution = Caution::belts_pulleys,
                         .formula =
                             "of the lengths sold (half inches), the one nearest the middle of what the adjuster "
                             "takes up, stretch counted, and lets on",
                         .source = "plane geometry; lengths by the half inch, stretch and fitting: common practice",
                         .solve = solve,
                         .needs = needs};

}  // namespace sw
