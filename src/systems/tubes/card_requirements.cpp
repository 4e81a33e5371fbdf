// What was written down for the bench against what the points ask for now: settings, cut lengths, sticks.
#include <cmath>
#include <map>
#include <numbers>

#include "model/told.hpp"
#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "systems/tubes/checks.hpp"

namespace sw::tubes {
namespace {

const Model& of(const void* model) { return *static_cast<const Model*>(model); }
constexpr double degree = std::numbers::pi / 180;

/// The stick a tube names: `brake_line 2` is the second of that name, without a number the first.
const StockModel* stick_named(const Model& m, const std::string& words) {
  const std::string name = words.substr(0, words.find(' '));
  for (auto& s : m.stock)
    if (s.name == name) return &s;
  return nullptr;
}

}  // namespace

void judge_card_angle(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double most = 1 * degree;
  for (auto& t : of(model).tubes) {
    if (!t.shape.good()) continue;
    const auto rows = card_of(t);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const CornerModel& c = t.corners[i + 1];
      if (!c.setting_rad) continue;
      Verdict v{.place = t.place + " " + c.name,
                .scale = most,
                .fix_hint = "`solve tube-bends` anew; a trial bend where the springback was never measured"};
      v.missing = card_lacks(t);
      if (v.missing.empty()) {
        v.predicted = std::abs(*c.setting_rad * t.springback.kept - rows[i].wanted_rad);
        v.high = most;
        v.because.push_back(told("comes to", *c.setting_rad * t.springback.kept, kind::angle, "deg"));
        v.because.push_back(told("wanted by the points", rows[i].wanted_rad, kind::angle, "deg"));
      }
      out.push_back(std::move(v));
    }
  }
}

// A tube turned the wrong way comes out as its own mirror image: as long, and bent by the same angles.
void judge_card_turn(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double most = 3 * degree;
  for (auto& t : of(model).tubes) {
    if (!t.shape.good()) continue;
    const auto rows = card_of(t);
    for (std::size_t i = 1; i < rows.size(); ++i) {
      const CornerModel& c = t.corners[i + 1];
      if (!c.turn_rad) continue;
      const double off = std::remainder(*c.turn_rad - rows[i].turn_rad, 2 * std::numbers::pi);
      out.push_back({.place = t.place + " " + c.name,
                     .predicted = std::abs(off),
                     .high = most,
                     .scale = most,
                     .because = {told("turn on the card", *c.turn_rad, kind::angle, "deg"),
                                 told("turn the points ask", rows[i].turn_rad, kind::angle, "deg")},
                     .fix_hint = "`solve tube-bends` anew: points were moved since the card was written"});
    }
  }
}

/// Where a bend begins on the cut tube.
void judge_card_mark(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double off = inch_m / 8;
  for (auto& t : of(model).tubes) {
    if (!t.shape.good()) continue;
    const auto rows = card_of(t);
    for (std::size_t i = 0; i < rows.size(); ++i) {
      const CornerModel& c = t.corners[i + 1];
      if (!c.mark_m) continue;
      out.push_back({.place = t.place + " " + c.name,
                     .reason = "marked at " + print(*c.mark_m, kind::length, "in", 4) + " where the points ask " +
                               print(rows[i].mark_m, kind::length, "in", 4),
                     .fix_hint = "`solve tube-bends` anew: points, die or flares have changed since",
                     .rule = std::abs(*c.mark_m - rows[i].mark_m) <= off});
    }
  }
}

void judge_cut_length(const void* model, const Evidenced&, Verdicts& out) {
  constexpr double off = inch_m / 8;
  for (auto& t : of(model).tubes) {
    if (!t.cut_m || !t.shape.good()) continue;
    out.push_back({.place = t.place,
                   .reason = "cut to " + print(*t.cut_m, kind::length, "in", 4) + " where points and flares ask " +
                             print(*t.to_cut_m(), kind::length, "in", 4),
                   .fix_hint = "`solve tube-bends` anew: points, die or flares have changed since",
                   .rule = std::abs(*t.cut_m - *t.to_cut_m()) <= off});
  }
}

void judge_sticks(const void* model, const Evidenced&, Verdicts& out) {
  const Model& m = of(model);
  struct Used {
    double m = 0;
    int pieces = 0;
    std::vector<std::string> missing;
    bool fits = true;
  };
  std::map<std::string, Used> used;
  for (auto& t : m.tubes) {
    if (t.stick.empty()) continue;
    Used& u = used[t.stick];
    const auto length = t.cut_m ? t.cut_m : t.to_cut_m();
    if (!length) u.missing.push_back(t.cut_path);
    if (!t.material) u.missing.push_back(t.material_path);
    u.m += length.value_or(0) + (u.pieces++ > 0 ? m.kerf_m : 0);
    const StockModel* s = stick_named(m, t.stick);
    u.fits = u.fits && s && s->material == t.material;
  }
  for (auto& [words, u] : used) {
    Verdict v{.place = words, .scale = inch_m, .missing = u.missing, .fix_hint = "`solve cut-list` anew"};
    const StockModel* s = stick_named(m, words);
    if (!s) v.missing.push_back("tubes.stock." + words.substr(0, words.find(' ')));
    if (s) v.missing.insert(v.missing.end(), s->missing.begin(), s->missing.end());
    if (v.missing.empty() && !u.fits) v.reason = "a tube of another material is to be cut from it";
    if (v.missing.empty() && u.fits) {
      v.predicted = s->length_m - u.m;
      v.low = 0;
      v.because.push_back(told("stick", s->length_m, kind::length, "ft"));
      v.because.push_back(told("cut from it, with the cuts", u.m, kind::length, "ft"));
    }
    out.push_back(std::move(v));
  }
}

}  // namespace sw::tubes
