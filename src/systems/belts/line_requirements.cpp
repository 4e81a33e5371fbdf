// What the places of the pulleys tell without a run: line, length, rotation, smallest pulley, thread.
#include <algorithm>
#include <cmath>

#include "model/told.hpp"
#include "physics/belt.hpp"
#include "systems/belts/checks.hpp"

namespace sw::belts {
namespace {

/// The belt's own length against the path, once let on and once taken up.
void slide_length(const OneBelt& b, double over, std::vector<Verdict>& out) {
  const double needs = stretch * *b.path_m + over;
  Verdict up{.place = on(b) + "taking up",
             .predicted = needs,
             .high = b.adjuster->take_up_m,
             .scale = std::max(b.adjuster->take_up_m, 1e-3),
             .fix_hint = "the belt of the length `streetwright solve BUILD belt-length` finds"};
  up.because = {told("path round the pulleys", *b.path_m, kind::length, "in"),
                told("the belt is longer by", over, kind::length, "in"),
                told("it stretches by", stretch * *b.path_m, kind::length, "in")};
  Verdict let{.place = on(b) + "letting on",
              .predicted = fitting * *b.path_m - over,
              .high = -b.adjuster->let_on_m,
              .scale = std::max(-b.adjuster->let_on_m, 1e-3),
              .fix_hint = up.fix_hint};
  let.because = {told("path round the pulleys", *b.path_m, kind::length, "in"),
                 told("to get it over the rims", fitting * *b.path_m, kind::length, "in"),
                 told("the belt is longer by", over, kind::length, "in")};
  out.push_back(std::move(up));
  out.push_back(std::move(let));
}

void arm_length(const OneBelt& b, double over, std::vector<Verdict>& out) {
  const double half = std::min(b.adjuster->take_up_m, -b.adjuster->let_on_m);
  Verdict v{.place = on(b) + "tensioner",
            .predicted = std::max(over + stretch * *b.path_m, -over),
            .high = half,
            .scale = half > 0 ? half : 1e-3,
            .fix_hint =
                "order the belt by the path at mid window: `streetwright solve BUILD belt-length`; reckon again "
                "where a pulley's diameter changes"};
  v.because = {told("path round the pulleys, arm at mid window", *b.path_m, kind::length, "in"),
               told("the belt is longer by", over, kind::length, "in"),
               told("it stretches by", stretch * *b.path_m, kind::length, "in"),
               told("half the window takes up", half, kind::length, "in")};
  out.push_back(std::move(v));
}

}  // namespace

std::string on(const OneBelt& b) { return b.name + ", "; }

bool lined(const OneBelt& b) {
  return std::any_of(b.pulley.begin() + 1, b.pulley.end(), [](auto& p) { return p.depth_m.value.has_value(); });
}

std::vector<LineSpan> line_spans(const OneBelt& b) {
  std::vector<LineSpan> all;
  const std::size_t n = b.run.size();
  for (std::size_t i = 0; i < n; ++i) {
    const LineSpan s{b.run[i], b.run[(i + 1) % n], b.span_m(i)};
    // Two pulleys have two spans and one line.
    if (n == 2 && i == 1) break;
    all.push_back(s);
  }
  return all;
}

std::string between(const OneBelt& b, const LineSpan& s) {
  return b.pulley[s.from].name + " to " + b.pulley[s.to].name;
}

namespace line {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt) {
    if (!lined(b)) continue;
    if (!b.placed) {
      Verdict v{.place = b.name, .missing = b.missing};
      if (v.missing.empty()) v.missing = {b.path_of_table + ".pulley: where the pulleys are (x and y)"};
      out.push_back(std::move(v));
      continue;
    }
    for (auto& s : line_spans(b)) {
      Verdict v{.place = on(b) + between(b, s),
                .high = b.line_limit(),
                .scale = b.line_limit(),
                .fix_hint =
                    "shims under the bracket of the pulley behind, or its spacer machined: `streetwright solve "
                    "BUILD shims`; first see that no washer sits on the wrong side of pulley or bracket"};
      const Asked &from = b.pulley[s.from].depth_m, &to = b.pulley[s.to].depth_m;
      for (auto* a : {&from, &to})
        if (!a->value) v.missing.push_back(a->path);
      if (v.missing.empty()) {
        const double offset = *to.value - *from.value;
        v.predicted = std::abs(physics::belt_line_angle(s.length_m, offset));
        v.because = {
            told(b.pulley[s.to].name + " stands forward of " + b.pulley[s.from].name, offset, kind::length, "in"),
            told("over a free span of", s.length_m, kind::length, "in"),
            told("which allows", physics::belt_line_offset(s.length_m, b.line_limit()), kind::length, "in")};
      }
      out.push_back(std::move(v));
    }
  }
}
}  // namespace line

namespace length {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt) {
    if (!b.adjuster || (!b.length_m.value && !b.path_m)) continue;
    Verdict v{.place = b.name, .missing = b.adjuster->missing};
    v.missing.insert(v.missing.end(), b.missing.begin(), b.missing.end());
    if (!b.length_m.value) v.missing.push_back(b.length_m.path);
    if (!b.path_m && b.missing.empty()) v.missing.push_back(b.path_of_table + ".path");
    if (!v.missing.empty()) {
      out.push_back(std::move(v));
      continue;
    }
    const double over = *b.length_m.value - *b.path_m;
    if (std::isnan(b.adjuster->take_up_m + b.adjuster->let_on_m)) {
      v.reason = "at an end of its adjuster the belt no longer lies on all its pulleys";
      out.push_back(std::move(v));
    } else if (b.adjuster->kind == Adjusts::arm) {
      arm_length(b, over, out);
    } else {
      slide_length(b, over, out);
    }
  }
}
}  // namespace length

namespace turning {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt)
    for (auto& p : b.pulley) {
      if (!p.rotation) continue;
      const bool against = *p.rotation == static_cast<double>(Rotation::against_crank);
      out.push_back({.place = on(b) + p.name,
                     .reason = std::string("it turns ") + (p.back ? "against" : "with") + " the crank, on the belt's " +
                               (p.back ? "back" : "face") + ", and is made to turn " + (against ? "against" : "with") +
                               " it",
                     .fix_hint = "the accessory of the other rotation, or the belt routed over its other side",
                     .rule = p.back == against});
    }
}
}  // namespace turning

namespace smallest {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt)
    for (auto& p : b.pulley) {
      if (b.least_radius_m <= 0 || p.radius_m <= 0) continue;
      out.push_back({.place = on(b) + p.name,
                     .predicted = 2 * p.radius_m,
                     .low = 2 * b.least_radius_m,
                     .scale = 2 * b.least_radius_m,
                     .fix_hint = "a larger pulley: on a smaller one the belt bends itself to death"});
    }
}
}  // namespace smallest

namespace engagement {
void evaluate(const void* model, const Evidenced&, std::vector<Verdict>& out) {
  auto& m = of(model);
  for (auto& b : m.belt)
    for (auto& p : b.pulley) {
      if (!p.engagement_m) continue;
      Verdict v{.place = on(b) + p.name,
                .predicted = *p.engagement_m,
                .low = p.least_engagement_m,
                .scale = p.least_engagement_m,
                .fix_hint = "longer bolts of the same grade, where the hole is deep enough"};
      v.because = {told("shims the bolts go through", p.shim_m, kind::length, "in")};
      out.push_back(std::move(v));
    }
}
}  // namespace engagement

}  // namespace sw::belts
