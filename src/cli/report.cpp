#include "cli/report.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <set>

#include "cli/figures.hpp"
#include "cli/page.hpp"
#include "cli/ruler.hpp"
#include "field/tree.hpp"

namespace sw::cli {
namespace {

constexpr int margin = 2, gap = 2;
constexpr std::size_t most_next = 5, most_figures = 4, most_parts = 3, longest_cause = 4;
constexpr long most_waiting = 6;  ///< findings drawn one by one though a figure of theirs is missing

/// Findings of one requirement at one place, the worst first.
using Group = std::vector<const Finding*>;

bool listed(const Finding& f, const std::vector<std::string>& systems) {
  return systems.empty() || std::find(systems.begin(), systems.end(), f.system) != systems.end();
}

/// Groups of one state, in the order of their first finding; what fails in the order of its story, cause before effect.
/// What only follows from another finding stands under that one and in no group of its own.
std::vector<Group> groups_of(const Proof& proof, State state, const std::vector<std::string>& systems) {
  std::vector<const Finding*> sequence;
  for (std::size_t i : proof.story.order) sequence.push_back(&proof.findings[i]);
  const std::set<const Finding*> told(sequence.begin(), sequence.end());
  for (auto& f : proof.findings)
    if (!told.contains(&f)) sequence.push_back(&f);
  std::vector<Group> groups;
  std::map<std::string_view, std::size_t> index;
  for (auto* f : sequence) {
    if (f->state != state || !f->follows.empty() || !listed(*f, systems)) continue;
    const auto [at, fresh] = index.emplace(without_duty(f->id), groups.size());
    if (fresh) groups.emplace_back();
    groups[at->second].push_back(f);
  }
  for (auto& g : groups) std::stable_sort(g.begin(), g.end(), [](auto* a, auto* b) { return a->share() < b->share(); });
  return groups;
}

/// The line told of a part alone carries the path of the port that was cut, which stands in the chain before it. Then
/// only the cut figure, the one after it, and what came of it are kept; else the chain as it is.
std::vector<const Because*> around_cut(const std::vector<const Because*>& chain) {
  for (std::size_t k = 2; k < chain.size(); ++k)
    for (std::size_t cut = 0; cut + 1 < k; ++cut) {
      if (chain[k]->role != Role::alone || chain[cut]->path != chain[k]->path) continue;
      std::vector<const Because*> kept = {chain[cut], chain[cut + 1], chain[k - 1], chain[k]};
      kept.erase(std::unique(kept.begin(), kept.end()), kept.end());
      return kept;
    }
  return chain;
}

/// A choice before a doubt; of two alike the weightier.
bool heavier(const Because& a, const Because& than) {
  return a.role == than.role ? std::abs(a.weight) > std::abs(than.weight) : a.role == Role::choice;
}

class Report {
 public:
  Report(const Proof& proof, const Look& look, const ReportOptions& options)
      : proof_(proof), options_(options), page_(look), reach_(ruler_reach(look.width)) {}

  std::string write() {
    head();
    section("FAILS", State::fails);
    section("TIGHT", State::tight);
    section("UNPROVEN", State::unproven);
    if (options_.all)
      section("HOLDS", State::holds);
    else
      held();
    others();
    left_out();
    cautions();
    next();
    legend();
    page_.space();
    page_.text(strong(count_line(proof_)));
    return page_.take();
  }

 private:
  int column() const { return margin + 2 * reach_ + 1 + gap; }
  std::string ruler(const Finding& f) const {
    const std::string drawn = draw_ruler(ruler_mark(f), reach_, page_.look().unicode);
    return std::string(margin, ' ') + (f.state == State::fails ? harm(drawn) : drawn);
  }

  void head() {
    const std::string title = clean(options_.title), build = clean(options_.build);
    page_.text(strong(title.empty() ? build : title) + (title.empty() || build.empty() ? "" : "   " + faint(build)));
    story();
  }

  /// What happened, in a sentence, and the parts and settings that turn it most.
  void story() {
    if (!proof_.story.opening.empty()) page_.text(strong(clean(proof_.story.opening)), 0, 2);
    const auto parts = heavy_parts(proof_.findings);
    if (parts.empty()) return;
    std::string text = "Of what can be chosen, a tenth more or less moves what fails most at: ";
    for (std::size_t i = 0; i < std::min(parts.size(), most_parts); ++i) {
      std::string labels;
      for (auto& label : parts[i].labels) labels += (labels.empty() ? "" : ", ") + clean(label);
      text += (i == 0 ? "" : "; then ") + labels + " (" + touch(clean(parts[i].path)) + ")";
    }
    page_.text(text, 0, 2);
  }

  void section(std::string_view name, State state) {
    auto groups = groups_of(proof_, state, options_.systems);
    if (groups.empty()) return;
    if (state == State::unproven && !options_.all) groups = without_missing(std::move(groups));
    if (groups.empty()) return;
    // What fails stands cause before effect; anything else by what it could do.
    if (state != State::fails)
      std::stable_sort(groups.begin(), groups.end(),
                       [](auto& a, auto& b) { return a.front()->hazard < b.front()->hazard; });
    page_.space();
    page_.line(strong(name));
    std::vector<std::pair<std::string_view, int>> idle;
    if (state == State::holds) idle = without_idle(groups);
    for (auto& g : groups) {
      if (state != State::holds) page_.space();
      group(g);
    }
    for (auto& [system, count] : idle)
      page_.text(clean(system) + ": " + std::to_string(count) + " more where nothing flows: what is off in that duty",
                 margin, 2);
  }

  /// Takes out the findings of what is off, which hold because nothing flows, and counts them by system.
  static std::vector<std::pair<std::string_view, int>> without_idle(std::vector<Group>& groups) {
    std::vector<std::pair<std::string_view, int>> counts;
    for (auto& g : groups)
      std::erase_if(g, [&](const Finding* f) {
        if (!flows_nothing(*f)) return false;
        auto at = std::find_if(counts.begin(), counts.end(), [&](auto& c) { return c.first == f->system; });
        if (at == counts.end()) at = counts.insert(at, {f->system, 0});
        ++at->second;
        return true;
      });
    std::erase_if(groups, [](auto& g) { return g.empty(); });
    return counts;
  }

  /// A build not filled in yet: where many findings wait for figures, the figures are listed once, those that most
  /// waits for first, in place of every finding by itself. Returns the groups still to be drawn.
  std::vector<Group> without_missing(std::vector<Group> groups) {
    const auto waits = [](const Group& g) { return !g.front()->missing.empty(); };
    if (std::count_if(groups.begin(), groups.end(), waits) <= most_waiting) return groups;
    std::vector<std::pair<std::string_view, int>> figures;
    for (auto& f : proof_.findings)
      for (auto& path : f.missing) {
        auto at = std::find_if(figures.begin(), figures.end(), [&](auto& x) { return x.first == path; });
        if (at == figures.end()) at = figures.insert(figures.end(), {path, 0});
        ++at->second;
      }
    std::stable_sort(figures.begin(), figures.end(), [](auto& a, auto& b) { return a.second > b.second; });
    page_.space();
    page_.line(strong("MISSING") + "  (--all draws what waits for each)");
    for (auto& [path, count] : figures)
      page_.text(
          touch(clean(path)) + "  " + faint(std::to_string(count) + (count == 1 ? " finding waits" : " findings wait")),
          margin, margin + 2);
    for (auto& g : groups)
      if (waits(g) && g.front()->caution != Caution::none) cautions_.insert(g.front()->caution);
    std::erase_if(groups, waits);
    return groups;
  }

  void group(const Group& g) {
    const Finding& f = *g.front();
    page_.beside(ruler(f), column(), title(f), 2);
    if (f.state == State::holds) {
      page_.text(faint(holding(f)), column(), 2);
    } else {
      figures(f);
      if (f.state == State::fails) cause(f);
      if (f.state != State::unproven && !f.fix_hint.empty()) label("change", touch(clean(f.fix_hint)));
      if (f.caution != Caution::none) label("care", harm(caution_name(f.caution)));
      label("id", faint(clean(f.id)));
    }
    rest(g);
    follow(g);
    if (f.caution != Caution::none) cautions_.insert(f.caution);
  }

  std::string title(const Finding& f) const {
    const bool past = f.state == State::tight && f.margin && *f.margin < 0;
    const std::string state =
        std::string(state_names[static_cast<std::size_t>(f.state)]) + (past ? ", past its limit" : "");
    const std::string at = clean(where(f));
    return (f.state == State::fails || (past && f.hazard == Hazard::harm) ? harm(state) : strong(state)) + "  " +
           strong(clean(f.title)) + (at.empty() ? "" : " · " + at);
  }

  /// Later lines of a finding: a short word, then the text it names.
  void label(std::string_view word, const std::string& text) {
    static constexpr int word_columns = 8, roomy = 44;
    page_.text(pad(word, word_columns) + text, column(), page_.look().width - column() < roomy ? margin : word_columns);
  }

  static std::string holding(const Finding& f) { return f.predicted ? measure_words(f) : clean(f.reason); }

  void figures(const Finding& f) {
    for (auto& path : f.missing) label("needs", touch(clean(path)));
    if (const auto words = measure_words(f); !words.empty()) page_.text(strong(words), column(), 2);
    if (!f.reason.empty() && f.missing.empty()) page_.text(clean(f.reason), column(), 2);
  }

  /// The because-list in short: where a coupling was cut, the figure it stands on and what came of it; else the end of
  /// its chain; then the choice that does most, or where none does the input that is most in doubt.
  void cause(const Finding& f) {
    std::vector<const Because*> chain;
    const Because* most = nullptr;
    for (auto& b : f.because) {
      if (!b.is_input())
        chain.push_back(&b);
      else if (b.weight != 0 && (!most || heavier(b, *most)))
        most = &b;
    }
    std::string text;
    chain = around_cut(chain);
    const std::size_t from = chain.size() > longest_cause ? chain.size() - longest_cause : 0;
    for (std::size_t i = from; i < chain.size(); ++i)
      text += (i == from ? "" : " → ") + clean(chain[i]->what) + " " + because_value(*chain[i]);
    if (most)
      text += (text.empty() ? "" : "; ") +
              std::string(most->role == Role::choice ? "to change, most by " : "in doubt most by ") +
              strong(clean(most->what) + (most->text.empty() ? " " + because_value(*most) : "")) + marks_.mark(*most) +
              " (" + touch(clean(most->path)) + ")";
    if (!text.empty()) label("because", text);
  }

  /// The same requirement in other duties: a ruler and a line each; where there are no numbers, their names.
  void rest(const Group& g) {
    std::string others;
    for (std::size_t i = 1; i < g.size(); ++i) {
      const Finding& f = *g[i];
      if (f.predicted)
        page_.beside(ruler(f), column(), "also " + clean(where(f)) + ": " + holding(f), 2);
      else
        others += (others.empty() ? "also in " : ", ") + clean(where(f));
    }
    if (!others.empty()) page_.text(others, column(), 2);
  }

  /// What comes of the group's findings and is no fault of its own, by requirement.
  void follow(const Group& g) {
    const Finding* first = nullptr;
    for (std::size_t i : proof_.story.order) {
      const Finding& f = proof_.findings[i];
      if (std::none_of(g.begin(), g.end(), [&](auto* cause) { return cause->id == f.follows; })) continue;
      if (!first || without_duty(first->id) != without_duty(f.id))
        page_.text("also follows: " + clean(f.title), column(), 2);
      page_.beside(ruler(f), column(), clean(where(f)) + ": " + holding(f), 2);
      first = &f;
      if (f.caution != Caution::none) cautions_.insert(f.caution);
    }
  }

  void held() {
    std::vector<std::pair<std::string_view, int>> systems;
    for (auto& f : proof_.findings) {
      if (f.state != State::holds || flows_nothing(f) || !listed(f, options_.systems)) continue;
      auto at = std::find_if(systems.begin(), systems.end(), [&](auto& s) { return s.first == f.system; });
      if (at == systems.end()) at = systems.insert(systems.end(), {f.system, 0});
      ++at->second;
    }
    if (systems.empty()) return;
    std::string text;
    for (auto& [name, count] : systems)
      text += (text.empty() ? "" : " · ") + together(clean(name) + " " + std::to_string(count));
    page_.space();
    page_.line(strong("HOLDS") + "  " + faint("(--all draws them)"));
    page_.text(text, margin);
  }

  /// What is not listed is counted, and what of it fails is never passed over.
  void others() {
    std::map<State, int> counts;
    for (auto& f : proof_.findings)
      if (!listed(f, options_.systems) && !(f.state == State::holds && flows_nothing(f))) ++counts[f.state];
    if (counts.empty()) return;
    std::string text;
    for (auto [state, word] : {std::pair{State::fails, "fail"}, std::pair{State::tight, "tight"},
                               std::pair{State::unproven, "unproven"}, std::pair{State::holds, "hold"}})
      if (counts[state] > 0) text += (text.empty() ? "" : " · ") + together(std::to_string(counts[state]) + " " + word);
    page_.space();
    page_.text("Not listed, of other systems: " + text, 0, 2);
  }

  /// A system the build says nothing of is not found sound: it was not looked at.
  void left_out() {
    std::string text;
    for (auto& key : proof_.left_out) text += (text.empty() ? "" : ", ") + touch(clean(key));
    if (text.empty()) return;
    page_.space();
    page_.text("Not looked at, the build says nothing of them: " + text, 0, 2);
  }

  void cautions() {
    page_.space();
    tell_cautions(page_, cautions_);
    page_.text(proof_limits(), cautions_.empty() ? 0 : margin);
  }

  /// `cooling.radiator`, `wiring.run`: where on the car a figure is measured.
  static std::string_view part_of(std::string_view path) {
    const auto last = path.rfind('.'), first = path.find('.');
    return path.substr(0, first == last ? last : std::min(last, path.find('.', first + 1)));
  }

  /// What is measured at one part of the car stands together, where its most deciding figure has its place.
  void next() {
    if (proof_.next.empty()) return;
    std::vector<std::pair<std::string_view, std::vector<const NextMeasure*>>> parts;
    for (auto& n : proof_.next) {
      const std::string_view part = part_of(n.path);
      auto at = std::find_if(parts.begin(), parts.end(), [&](auto& p) { return p.first == part; });
      if (at == parts.end()) at = parts.insert(at, {part, {}});
      at->second.push_back(&n);
    }
    const std::size_t shown = options_.all ? parts.size() : std::min(parts.size(), most_next);
    page_.space();
    for (std::size_t i = 0; i < shown; ++i) {
      auto& [part, figures] = parts[i];
      const bool alone = figures.size() == 1;
      page_.text("Measure next: " + (alone ? to_measure(*figures[0], figures[0]->path) : touch(clean(part))), 0, 2);
      if (alone) continue;
      const std::size_t told = options_.all ? figures.size() : std::min(figures.size(), most_figures);
      for (std::size_t k = 0; k < told; ++k)
        page_.text(to_measure(*figures[k], std::string_view(figures[k]->path).substr(part.size() + 1)), margin,
                   margin + 2);
      if (told < figures.size()) page_.text(faint("and " + std::to_string(figures.size() - told) + " more"), margin, 2);
    }
    if (shown < parts.size())
      page_.text(faint("and at " + std::to_string(parts.size() - shown) + " other parts of the car (--all tells them)"),
                 0, 2);
  }
  std::string to_measure(const NextMeasure& n, std::string_view name) {
    std::string text = touch(clean(name)) + (n.evidence ? marks_.mark(*n.evidence) : "");
    if (!n.evidence)
      text += ", missing for ";
    else
      text += ", " + std::to_string(std::lround(100 * std::clamp(n.share, 0.0, 1.0))) + " % of the doubt of ";
    text += clean(n.finding);
    if (n.decides > 1) text += " and decides " + std::to_string(n.decides - 1) + " more";
    if (n.worst == Hazard::harm) text += "; " + harm("harm");
    return text;
  }
  void legend() {
    const std::string text = marks_.legend();
    if (text.empty()) return;
    page_.space();
    page_.text(faint("Where a figure came from: " + text), 0, 2);
  }

  const Proof& proof_;
  const ReportOptions& options_;
  Page page_;
  int reach_;
  EvidenceMarks marks_;
  std::set<Caution> cautions_;
};

}  // namespace

std::string count_line(const Proof& proof) {
  std::string text;
  for (auto [state, word] : {std::pair{State::fails, "fail"}, std::pair{State::tight, "tight"},
                             std::pair{State::unproven, "unproven"}, std::pair{State::holds, "hold"}}) {
    std::size_t n = 0;
    for (auto& f : proof.findings) n += f.state == state && !(state == State::holds && flows_nothing(f));
    text += (text.empty() ? "" : " · ") + std::to_string(n) + " " + word;
  }
  // What is off in a duty has nothing to hold there.
  const auto idle = std::count_if(proof.findings.begin(), proof.findings.end(),
                                  [](auto& f) { return f.state == State::holds && flows_nothing(f); });
  if (idle > 0) text += " · " + std::to_string(idle) + " where nothing flows";
  return text;
}

void tell_cautions(Page& page, const std::set<Caution>& cautions) {
  if (!cautions.empty()) page.line(strong("CARE"));
  for (Caution c : cautions) page.text(harm(caution_name(c)) + ": " + std::string(caution_text(c)), margin, 2);
}

std::string report(const Proof& proof, const Look& look, const ReportOptions& options) {
  return Report(proof, look, options).write();
}

}  // namespace sw::cli
