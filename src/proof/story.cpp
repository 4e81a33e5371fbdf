#include "proof/story.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

#include "field/measure.hpp"
#include "proof/causes.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

/// Failing findings of one requirement at one place, the worst first.
struct Group {
  std::vector<std::size_t> members;
  Hazard hazard = Hazard::nuisance;
  std::size_t together = 0;  ///< the first group of those it is joined to
  bool placed = false;
};

class Teller {
 public:
  Teller(const Graph& graph, const std::vector<Judged>& base, std::vector<Finding>& findings)
      : causes_(graph, base), base_(base), findings_(findings) {}

  Story tell() {
    gather();
    join();
    Story story;
    for (std::size_t g : in_order())
      for (std::size_t i : groups_[g].members) story.order.push_back(i);
    fold(story.order);
    story.opening = opening(story.order);
    return story;
  }

 private:
  void gather() {
    for (std::size_t i = 0; i < findings_.size(); ++i) {
      if (findings_[i].state != State::fails) continue;
      auto at = std::find_if(groups_.begin(), groups_.end(), [&](auto& g) {
        return without_duty(findings_[g.members[0]].id) == without_duty(findings_[i].id);
      });
      if (at == groups_.end()) at = groups_.insert(groups_.end(), {{}, findings_[i].hazard, 0, false});
      at->members.push_back(i);
    }
    for (auto& g : groups_)
      std::stable_sort(g.members.begin(), g.members.end(),
                       [&](auto a, auto b) { return findings_[a].share() < findings_[b].share(); });
  }

  bool before(const Group& a, const Group& b) const {
    for (std::size_t i : a.members)
      for (std::size_t k : b.members)
        if (causes_.before(i, k, turned(k))) return true;
    return false;
  }

  void join() {
    const std::size_t n = groups_.size();
    edge_.assign(n, std::vector<bool>(n, false));
    for (std::size_t g = 0; g < n; ++g) groups_[g].together = g;
    for (std::size_t a = 0; a < n; ++a)
      for (std::size_t b = 0; b < n; ++b) {
        if (a == b || !before(groups_[a], groups_[b])) continue;
        edge_[a][b] = true;
        const auto [keep, lose] = std::minmax(groups_[a].together, groups_[b].together);
        const std::size_t kept = keep, lost = lose;
        for (auto& g : groups_)
          if (g.together == lost) g.together = kept;
      }
  }

  /// Of two sets of joined groups the one with the worse hazard, then the larger, then the earlier.
  bool set_first(std::size_t a, std::size_t b) const {
    auto weigh = [&](std::size_t set) {
      auto worst = Hazard::nuisance;
      std::ptrdiff_t size = 0;
      for (auto& g : groups_)
        if (g.together == set) worst = std::min(worst, g.hazard), size += static_cast<std::ptrdiff_t>(g.members.size());
      return std::tuple(worst, -size, set);
    };
    return weigh(a) < weigh(b);
  }

  /// Kahn's ordering; where effects run in a ring the first that is left goes.
  std::vector<std::size_t> in_order() {
    std::vector<std::size_t> sequence;
    auto ready = [&](std::size_t b) {
      for (std::size_t a = 0; a < groups_.size(); ++a)
        if (edge_[a][b] && !groups_[a].placed) return false;
      return true;
    };
    while (sequence.size() < groups_.size()) {
      std::optional<std::size_t> best;
      auto better = [&](std::size_t g, std::size_t than) {
        if (groups_[g].together != groups_[than].together)
          return set_first(groups_[g].together, groups_[than].together);
        if (ready(g) != ready(than)) return ready(g);
        return groups_[g].hazard < groups_[than].hazard;
      };
      for (std::size_t g = 0; g < groups_.size(); ++g)
        if (!groups_[g].placed && (!best || better(g, *best))) best = g;
      groups_[*best].placed = true;
      sequence.push_back(*best);
    }
    return sequence;
  }

  /// What a failing finding of the same duty and system, told in its own chain, already says.
  void fold(const std::vector<std::size_t>& order) {
    for (std::size_t b : order)
      for (std::size_t a : order) {
        Finding &cause = findings_[a], &f = findings_[b];
        if (a == b || cause.duty != f.duty || cause.system != f.system || f.hazard < cause.hazard ||
            !cause.follows.empty() || !f.follows.empty())
          continue;
        if (causes_.told(a, b)) f.follows = cause.id;
      }
  }

  /// The figure found once the coupling was cut, where it would hold so.
  const Because* cut_figure(std::size_t i) const {
    for (auto& b : findings_[i].because)
      if (b.role == Role::alone) return &b;
    return nullptr;
  }
  bool turned(std::size_t i) const {
    const Because* alone = cut_figure(i);
    const auto& f = findings_[i];
    return alone && (!f.high_limit || alone->value <= *f.high_limit) && (!f.low_limit || alone->value >= *f.low_limit);
  }

  std::string opening(const std::vector<std::size_t>& order) const {
    std::optional<std::size_t> cause, effect;
    auto worth = [&](std::size_t i) {
      return std::tuple(!findings_[i].follows.empty(), !turned(i), findings_[i].hazard, findings_[i].share());
    };
    for (std::size_t b : order) {
      if (!findings_[b].predicted || (effect && worth(*effect) <= worth(b))) continue;
      for (std::size_t a : order)
        if (a != b && findings_[a].predicted && findings_[a].duty == findings_[b].duty && !findings_[b].duty.empty() &&
            causes_.told(a, b)) {
          cause = a, effect = b;
          break;
        }
    }
    return effect ? sentence(*cause, *effect) : std::string();
  }

  static std::string figure(const Because& b, std::string_view between) {
    return b.what + std::string(between) + print(b.value, *b.kind, b.unit, 3);
  }
  /// `62 A short`, `3.3 K over`.
  static std::string missed_by(const Finding& f) {
    const bool low = f.low_limit && *f.predicted < *f.low_limit;
    return print(std::abs(*f.margin), step_kind(*f.quantity), f.unit, 2) + (low ? " short" : " over");
  }
  static bool same_figure(double a, double b) { return std::abs(a - b) <= 0.02 * std::max(std::abs(a), std::abs(b)); }
  static const Because* line_of(const Finding& f, std::string_view port) {
    for (auto& b : f.because)
      if (b.role == Role::figure && b.path == port) return &b;
    return nullptr;
  }

  /// How a finding's figures are taken: a mean over the duty or its worst instant. Two that stand in one sentence need
  /// not be of the same.
  static std::string_view taken(const Finding& f) { return f.mean_share > 0 ? "in the mean" : "at worst"; }

  /// `At hot-idle it is 62 A short in the mean (…), which at worst brings … to 10.5 V and … to 108 degC, 3.3 K over;
  /// with … it would hold at 97 degC at worst.`
  std::string sentence(std::size_t a, std::size_t b) const {
    const Finding &cause = findings_[a], &effect = findings_[b];
    std::string joints, brings;
    for (auto& line : cause.because)
      if (causes_.joint(a, b, line.path)) joints += (joints.empty() ? "" : ", ") + figure(line, " ");
    const std::string_view cut = base_[b].requirement->alone_port;
    if (auto* line = cut.empty() ? nullptr : line_of(effect, cut)) brings = figure(*line, " to ");
    const auto chain = base_[b].requirement->chain;
    const Because* last = nullptr;
    for (auto port : chain)
      if (auto* line = line_of(effect, port)) last = line;
    // A chain may end in a figure the finding is only made from: then its own title stands for it.
    if (last && (last->kind != effect.quantity || !same_figure(last->value, *effect.predicted))) last = nullptr;
    brings += (brings.empty() ? "" : " and ") + std::string(last ? last->what : effect.title) + " to " +
              print(*effect.predicted, *effect.quantity, effect.unit, 3) + ", " + missed_by(effect);
    std::string text = "At " + effect.duty + " it is " + missed_by(cause) + " " + std::string(taken(cause)) +
                       (joints.empty() ? "" : " (" + joints + ")") + ", which " + std::string(taken(effect)) +
                       " brings " + brings;
    if (turned(b)) {
      const std::string_view with = base_[b].requirement->alone_says;
      const Because& alone = *cut_figure(b);
      text += "; " + std::string(with) + " it would hold at " + print(alone.value, *alone.kind, alone.unit, 3) + " " +
              std::string(taken(effect));
    }
    return text + ".";
  }

  const Causes causes_;
  const std::vector<Judged>& base_;
  std::vector<Finding>& findings_;
  std::vector<Group> groups_;
  std::vector<std::vector<bool>> edge_;
};

}  // namespace

Story tell_story(const Graph& graph, const std::vector<Judged>& base, std::vector<Finding>& findings) {
  return Teller(graph, base, findings).tell();
}

std::vector<HeavyPart> heavy_parts(const std::vector<Finding>& findings) {
  std::vector<const Finding*> worst;
  for (auto& f : findings) {
    if (f.state != State::fails) continue;
    auto at =
        std::find_if(worst.begin(), worst.end(), [&](auto* w) { return without_duty(w->id) == without_duty(f.id); });
    if (at == worst.end())
      worst.push_back(&f);
    else if (f.share() < (*at)->share())
      *at = &f;
  }
  std::vector<HeavyPart> parts;
  for (auto* f : worst)
    for (auto& b : f->because) {
      if (b.role != Role::choice) continue;
      const std::string path = b.path.substr(0, b.path.rfind('.'));
      auto at = std::find_if(parts.begin(), parts.end(), [&](auto& p) { return p.path == path; });
      if (at == parts.end()) at = parts.insert(parts.end(), {path, 0.0, {}});
      at->weight += std::abs(b.weight);
      if (std::find(at->labels.begin(), at->labels.end(), b.what) == at->labels.end()) at->labels.push_back(b.what);
    }
  std::stable_sort(parts.begin(), parts.end(), [](auto& a, auto& b) { return a.weight > b.weight; });
  return parts;
}

std::string_view without_duty(std::string_view id) { return id.substr(0, id.find('@')); }

}  // namespace sw
