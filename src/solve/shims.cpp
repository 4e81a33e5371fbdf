// The shims under every bracket at once, so that every span of every belt lies in line.
#include <algorithm>
#include <cmath>

#include "physics/belt.hpp"
#include "physics/shim_stack.hpp"
#include "quantity/print.hpp"
#include "solve/drive.hpp"
#include "solve/list.hpp"
#include "solve/shim_words.hpp"

namespace sw {
namespace {

std::vector<physics::ShimKind> on_hand(const Build& build) {
  std::vector<physics::ShimKind> all;
  for (auto& [name, s] : std::get<belts::Input>(build.inputs).shim)
    if (s.thickness) all.push_back({s.thickness->si, s.count.value_or(1)});
  return all;
}

std::vector<std::string> lacking(const Build& build, const belts::Model& m) {
  std::vector<std::string> missing;
  bool any = false, room = false;
  for (auto& b : m.belt) {
    if (!belts::lined(b)) continue;
    any = true;
    missing.insert(missing.end(), b.missing.begin(), b.missing.end());
    if (!b.placed && b.missing.empty()) missing.push_back(b.path_of_table + ".pulley: where the pulleys are (x and y)");
    for (auto& p : b.pulley) {
      if (!p.depth_m.value) missing.push_back(p.depth_m.path);
      room |= p.room_m.has_value();
    }
  }
  if (!any) missing.push_back("belts.belt.NAME.pulley.NAME.depth");
  if (!room) missing.push_back("belts.belt.NAME.pulley.NAME.shim_room");
  if (on_hand(build).empty()) missing.push_back("belts.shim: thicknesses on hand");
  return missing;
}

std::vector<std::string> needs(const Build& build) {
  const Car car(build);
  return lacking(build, drive_of(car));
}

/// Places and spans of all belts; a place for each pulley in the order of belts and pulleys.
struct Problem {
  std::vector<physics::ShimPlace> places;
  std::vector<physics::ShimPair> pairs;
  std::vector<std::string> span_names;
  std::vector<const belts::OnBelt*> pulleys;
};
Problem problem_of(const belts::Model& m) {
  Problem q;
  for (auto& b : m.belt) {
    if (!belts::lined(b)) continue;
    const std::size_t first = q.places.size();
    for (auto& p : b.pulley) {
      q.places.push_back({*p.depth_m.value - p.shim_m, p.room_m.value_or(0.0)});
      // What is not to be moved stands where it is, its shims with it.
      if (!p.room_m) q.places.back().depth_m = *p.depth_m.value;
      q.pulleys.push_back(&p);
    }
    for (auto& s : belts::line_spans(b)) {
      q.pairs.push_back({first + s.from, first + s.to, physics::belt_line_offset(s.length_m, b.line_limit())});
      q.span_names.push_back(belts::on(b) + belts::between(b, s));
    }
  }
  return q;
}

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  const belts::Model& m = drive_of(car);
  Solution out;
  out.missing = lacking(build, m);
  if (!out.missing.empty()) return out;
  const Problem q = problem_of(m);
  const auto kinds = on_hand(build);
  const auto choice = physics::choose_shims(q.places, q.pairs, kinds);
  if (!choice) {
    out.trouble =
        "no stacks of the shims on hand, at most three in each, bring every span inside its limit with the "
        "room and thread there is: other thicknesses, a spacer machined, or a pulley that stands too far "
        "forward moved back";
    return out;
  }
  for (std::size_t i = 0; i < q.pulleys.size(); ++i) {
    if (!q.pulleys[i]->room_m) continue;
    out.settings.push_back({q.pulleys[i]->path + ".shim", choice->total_m[i]});
    out.says += (out.says.empty() ? "Under " : "; under ") + q.pulleys[i]->name + ": " + stack_words(choice->stack[i]);
  }
  out.says += ".";
  for (std::size_t k = 0; k < q.pairs.size(); ++k) {
    const auto& pair = q.pairs[k];
    const double offset =
        q.places[pair.b].depth_m + choice->total_m[pair.b] - q.places[pair.a].depth_m - choice->total_m[pair.a];
    out.because.push_back(
        {.what = q.span_names[k] + ", offset of the " + print(pair.allowance_m, kind::length, "in", 2) + " it may have",
         .value = offset,
         .kind = &kind::length,
         .unit = "in"});
  }
  return out;
}

}  // namespace

const Solver shims{.key = "shims",
                   .title = "shims under the brackets",
                   .judged_by = "belts.line",
                   .caution = Caution::belts_pulleys,
                   .formula =
                       "of all stacks of the shims on hand, three at most under one bracket, that bring every span "
                       "inside its limit and keep the bolts' thread: the fewest shims, then the straightest "
                       "line, then the thinnest",
                   .source = "the requirement named; search over every stack",
                   .solve = solve,
                   .needs = needs};

}  // namespace sw
