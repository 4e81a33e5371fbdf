#include "proof/changed.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace sw {
namespace {

constexpr double counts_from = 0.1;  ///< share of the doubt from which an input is moved again in a changed car
constexpr std::size_t most_named = 2;

struct Nudge {
  std::string path;
  double up, down;
};

bool stands_in(const std::string& path, const std::vector<std::string>& groups) {
  return std::any_of(groups.begin(), groups.end(), [&](auto& g) { return path.starts_with(g + "."); });
}

/// Half-width of an input in the changed car; 0 where it is not there.
double half_width_in(const Build& build, const std::string& path) {
  auto it = build.evidence.find(path);
  return it == build.evidence.end() ? 0.0 : it->second.half_width;
}

std::vector<Nudge> nudges(const Question& q, const Build& changed, const std::vector<std::string>& fitted) {
  std::vector<Nudge> all;
  for (auto& m : q.study.moves) {
    const double width = half_width_in(changed, m.path);
    if (!m.has_doubt() || width <= 0 || stands_in(m.path, fitted)) continue;
    if (q.half_width > 0 && std::abs(m.change(q.index)) > counts_from * q.half_width)
      all.push_back({m.path, m.up, m.down});
  }
  if (q.half_width > 0)
    for (auto& [path, evidence] : changed.evidence)
      if (evidence.half_width > 0 && stands_in(path, fitted))
        all.push_back({path, evidence.half_width, -evidence.half_width});
  return all;
}

}  // namespace

std::string id_of(const Judged& j, const DutySet& set) {
  std::string id(j.requirement->id);
  if (!j.verdict.place.empty()) id += "[" + j.verdict.place + "]";
  return j.duty < 0 ? id : id + "@" + set.courses[static_cast<std::size_t>(j.duty)].key;
}

std::optional<double> margin_in(const std::vector<Judged>& judged, const Judged& target) {
  for (auto& j : judged)
    if (j.same_as(target)) return j.margin();
  return std::nullopt;
}

bool harms(const std::vector<Judged>& base, const std::vector<Judged>& changed, const Judged& target, bool worse) {
  for (auto& c : changed) {
    auto was = std::find_if(base.begin(), base.end(), [&](auto& b) { return b.same_as(c); });
    if (was == base.end() || c.same_as(target) || !was->margin()) continue;
    if (!c.margin()) return true;
    if (!worse && *was->margin() < 0) continue;
    const double slack = 0.01 * c.verdict.scale;
    if (*c.margin() < 0 && *c.margin() < *was->margin() - slack) return true;
  }
  return false;
}

bool only_scales(const Judged& target, const std::vector<Judged>& changed, double factor) {
  auto now = std::find_if(changed.begin(), changed.end(), [&](auto& j) { return j.same_as(target); });
  if (now == changed.end()) return false;
  const Verdict &was = target.verdict, &is = now->verdict;
  if (was.low != is.low || was.high != is.high || !(was.scale > 0)) return false;
  constexpr double hair = 1e-3;
  const double scale = is.scale / was.scale;
  return std::abs(scale - 1) > hair && std::abs(scale - factor) < hair;
}

std::optional<std::vector<Judged>> judge_changed(const Build& build, const DutySet& set,
                                                 const std::vector<bool>& wanted) {
  const Car car(build);
  if (car.faults().any_fault()) return std::nullopt;
  return judge(car, set, run_duties(car, set, wanted), wanted);
}

std::vector<Judged> judge_one_duty(const Question& q, const Build& build) {
  const int duty = q.base[q.index].duty;
  std::vector<bool> wanted(q.set.courses.size(), false);
  wanted[duty >= 0 ? static_cast<std::size_t>(duty) : 0] = true;
  return judge_changed(build, q.set, wanted).value_or(std::vector<Judged>());
}

double doubt_in(const Question& q, const Build& changed, double margin, const std::vector<std::string>& fitted) {
  Together sum(q.base[q.index].verdict);
  const double toward = margin >= 0 ? -1 : 1;
  for (auto& n : nudges(q, changed, fitted)) {
    double most = 0;
    for (double by : {n.up, n.down}) {
      Build moved = changed;
      if (by == 0 || !shift(moved, n.path, by)) continue;
      const auto got = margin_in(judge_one_duty(q, moved), q.base[q.index]);
      if (!got) return std::numeric_limits<double>::infinity();
      most = std::max(most, toward * (*got - margin));
    }
    sum.add(most);
  }
  return sum.all();
}

std::string leaves_failing(const Question& q, const std::vector<Judged>& changed) {
  std::vector<std::string> left;
  const Judged& target = q.base[q.index];
  for (std::size_t i = 0; i < q.base.size(); ++i) {
    auto& b = q.base[i];
    const double width = i < q.half_widths.size() ? q.half_widths[i] : 0.0;
    if (i == q.index || b.duty != target.duty || !b.margin() || *b.margin() >= -width) continue;
    if (const auto now = margin_in(changed, b); now && *now < -width) left.push_back(id_of(b, q.set));
  }
  if (left.empty()) return {};
  std::string text = ", but leaves " + left[0];
  if (left.size() == most_named) text += " and " + left[1];
  if (left.size() > most_named) text += " and " + std::to_string(left.size() - 1) + " more of it";
  return text + " failing";
}

}  // namespace sw
