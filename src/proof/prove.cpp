#include <algorithm>
#include <cmath>
#include <thread>
#include <tuple>

#include "proof/because.hpp"
#include "proof/offers.hpp"
#include "proof/proof.hpp"
#include "proof/which_part.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

constexpr double counts_from = 0.05;  ///< share of the doubt from which an input's evidence speaks for the whole

/// What the moves of all uncertain inputs make of a judgement together.
struct Doubt {
  double toward = 0, away = 0;    ///< half-widths of the margin's band: on its limit's side, which decides, and beyond
  bool flips = false;             ///< a rule that some move turns
  std::vector<std::string> lost;  ///< inputs inside whose doubt the car gives no figure here
};

Doubt doubt_of(const Study& study, const Judged& j, std::size_t index) {
  Doubt d;
  const int limit = j.margin().value_or(0) >= 0 ? -1 : 1;
  Together toward(j.verdict), away(j.verdict);
  for (auto& m : study.moves) {
    if (!m.has_doubt()) continue;
    const double change = m.change(index);
    if (!std::isfinite(change)) {
      if (j.margin()) d.lost.push_back(m.path);
    } else if (j.verdict.rule) {
      d.flips |= change != 0;
    } else {
      toward.add(m.reach(index, limit));
      away.add(m.reach(index, -limit));
    }
  }
  d.toward = toward.all();
  d.away = away.all();
  return d;
}

State state_of(const Judged& j, const Doubt& d) {
  const auto margin = j.margin();
  if (!margin) return State::unproven;
  if (d.flips) return State::tight;
  // Where some of the doubt gives no figure nothing is known to hold; what fails by more than its doubt still fails.
  if (!d.lost.empty() && *margin >= 0) return State::tight;
  if (j.verdict.rule || d.toward <= 0) return *margin >= 0 ? State::holds : State::fails;
  return std::abs(*margin) <= d.toward ? State::tight : *margin > 0 ? State::holds : State::fails;
}

/// The weakest evidence among the inputs that make the doubt; `exact` where none does.
std::string confidence_of(const Study& study, std::size_t index, double half_width) {
  static constexpr Source weakest_first[] = {Source::typical, Source::stated, Source::data_sheet, Source::measured,
                                             Source::road_test};
  for (Source s : weakest_first)
    for (auto& m : study.moves) {
      const double change = m.has_doubt() && m.evidence.source == s ? m.change(index) : 0.0;
      if (std::isfinite(change) && change != 0 && change * change > counts_from * half_width * half_width)
        return std::string(name_of(s));
    }
  return "exact";
}

class Prover {
 public:
  Prover(const Build& build, const DutySet& set, const ProofOptions& options)
      : build_(build), set_(set), options_(options), car_(build) {}

  Proof run() {
    for (auto& c : set_.courses) wanted_.push_back(options_.duty.empty() || c.key == options_.duty);
    traces_ = run_duties(car_, set_, wanted_);
    base_ = judge(car_, set_, traces_, wanted_);
    if (options_.doubt) {
      const unsigned machine = std::max(1u, std::thread::hardware_concurrency());
      const Touched touched(car_, set_, wanted_, static_rules_read(traces_));
      const BaseRuns runs(car_, set_, traces_);
      study_ = study(build_, set_, base_,
                     {.wanted = wanted_,
                      .touched = &touched,
                      .runs = &runs,
                      .threads = options_.threads ? options_.threads : machine,
                      .progress = [&](double share) { tell(share, "doubt"); }});
    }
    Proof p;
    for (std::size_t d = 0; d < wanted_.size(); ++d)
      if (wanted_[d]) p.duties.push_back(set_.courses[d].key);
    for (auto& s : car_.systems())
      if (!s.described) p.left_out.emplace_back(s.key);
    for (std::size_t i = 0; i < base_.size(); ++i) p.findings.push_back(finding(i));
    std::string part;
    if (options_.doubt && options_.remedies) part = explain(p);
    p.story = tell_story(car_.graph(), base_, p.findings);
    if (!part.empty()) p.story.opening += (p.story.opening.empty() ? "" : " ") + part;
    rank_measures(p);
    return p;
  }

 private:
  void tell(double share, const std::string& what) const {
    if (options_.progress) options_.progress(share, what);
  }

  Finding finding(std::size_t i) const {
    const Judged& j = base_[i];
    const Requirement& r = *j.requirement;
    Finding f;
    f.id = id_of(j, set_);
    f.system = car_.systems()[j.system].key;
    f.duty = j.duty >= 0 ? set_.courses[static_cast<std::size_t>(j.duty)].key : "";
    f.place = j.verdict.place;
    f.title = r.title;
    f.kind = r.kind;
    f.hazard = r.hazard;
    f.caution = r.caution;
    f.quantity = r.quantity;
    f.unit = r.unit;
    f.source = r.source;
    f.formula = r.formula;
    f.predicted = j.verdict.predicted;
    f.low_limit = j.verdict.low;
    f.high_limit = j.verdict.high;
    f.scale = j.verdict.scale > 0 ? j.verdict.scale : 1.0;
    if (!j.verdict.rule) f.margin = j.margin();
    const Doubt doubt = doubt_of(study_, j, i);
    f.half_width = doubt.toward;
    f.far_width = doubt.away;
    f.state = state_of(j, doubt);
    f.confidence = f.state == State::unproven ? "" : confidence_of(study_, i, std::max(doubt.toward, doubt.away));
    f.missing = j.verdict.missing;
    f.reason = j.verdict.reason;
    if (doubt.flips) f.reason += "; within the doubt of its figures it may turn";
    if (!doubt.lost.empty())
      f.reason += (f.reason.empty() ? "" : "; ") + std::string("within the doubt of ") + doubt.lost.front() +
                  " the car gives no figure here";
    if (f.state == State::unproven && f.reason.empty()) f.reason = "a needed figure is missing";
    if (f.state != State::holds) f.fix_hint = j.verdict.fix_hint;
    because(i, f);
    return f;
  }

  const Trace& trace_of(const Judged& j) const {
    static const Trace none;
    if (j.duty >= 0) return traces_[static_cast<std::size_t>(j.duty)];
    auto run = std::find_if(traces_.begin(), traces_.end(), [](auto& t) { return t.rows() > 0; });
    return run == traces_.end() ? none : *run;
  }

  void because(std::size_t i, Finding& f) const {
    const Judged& j = base_[i];
    if (f.state == State::unproven) return;
    const Trace& trace = trace_of(j);
    if (trace.rows() > 0) f.time = trace.time[std::min(j.verdict.row, trace.rows() - 1)];
    f.mean_share = j.verdict.mean_share;
    f.because = chain_of(car_, j, trace);
    f.because.insert(f.because.end(), j.verdict.because.begin(), j.verdict.because.end());
    for (Role role : {Role::choice, Role::doubt})
      for (auto& b : weights_of(build_, study_, i, f.scale, role)) {
        // With its weight it says more.
        std::erase_if(f.because, [&](auto& told) { return told.role == Role::given && told.path == b.path; });
        f.because.push_back(b);
      }
  }

  /// What is dearer to find out and only told where something is wrong: the part alone, and what would make it hold.
  /// Gives the part to change, where one mends more than one finding.
  std::string explain(Proof& p) const {
    std::vector<double> widths;
    std::vector<bool> fails;
    for (auto& f : p.findings) widths.push_back(f.half_width), fails.push_back(f.state == State::fails);
    std::optional<std::vector<Swap>> tried;  // shelf parts in the car, for all findings at once
    for (std::size_t i = 0; i < p.findings.size(); ++i) {
      Finding& f = p.findings[i];
      if (f.state != State::fails && f.state != State::tight) continue;
      tell(static_cast<double>(i) / static_cast<double>(p.findings.size()), "remedies");
      alone(base_[i], f);
      if (f.state != State::fails) continue;
      if (!tried) tried = swaps(build_, set_, wanted_);
      const double width = std::max(f.half_width, f.far_width);
      const std::string offer = offers({build_, set_, base_, i, width, study_, widths}, *tried);
      if (!offer.empty()) f.fix_hint += (f.fix_hint.empty() ? "" : ". ") + offer;
    }
    return tried ? which_part({build_, set_, wanted_, base_, study_, widths, fails}, *tried) : std::string();
  }

  void alone(const Judged& j, Finding& f) const {
    const Requirement& r = *j.requirement;
    if (r.alone_port.empty() || j.duty < 0) return;
    std::vector<bool> one(wanted_.size(), false);
    one[static_cast<std::size_t>(j.duty)] = true;
    const auto traces = run_duties(car_, set_, one, {.cut = Cut{r.alone_port, r.alone_as}});
    for (auto& other : judge(car_, set_, traces, one)) {
      if (!other.same_as(j) || !other.verdict.predicted || !other.margin()) continue;
      const bool turns = *other.margin() >= 0 && *j.margin() < 0;
      if (turns && !r.alone_fix.empty()) f.fix_hint = std::string(r.alone_fix) + "; else " + f.fix_hint;
      Because b{.what = "alone, " + std::string(r.alone_says) +
                        (turns                 ? " it would hold"
                         : *other.margin() < 0 ? " it would fail too"
                                               : ""),
                .value = *other.verdict.predicted,
                .kind = r.quantity,
                .unit = r.unit,
                .role = Role::alone,
                .path = std::string(r.alone_port)};
      f.because.insert(f.because.begin() + static_cast<std::ptrdiff_t>(chain_of(car_, j, trace_of(j)).size()),
                       std::move(b));
    }
  }

  /// Missing figures, and for each finding in doubt the input that makes most of it. A figure that decides whether
  /// somebody is hurt comes first; then the one that decides most findings.
  void rank_measures(Proof& p) const {
    auto add = [&](NextMeasure n) {
      auto same = std::find_if(p.next.begin(), p.next.end(), [&](auto& o) { return o.path == n.path; });
      if (same == p.next.end()) return void(p.next.push_back(std::move(n)));
      n.decides += same->decides;
      // The finding that is named is the one of most weight.
      if (std::tuple(n.worst, -n.share) < std::tuple(same->worst, -same->share)) return void(*same = std::move(n));
      same->decides = n.decides;
    };
    for (std::size_t i = 0; i < p.findings.size(); ++i) {
      auto& f = p.findings[i];
      for (auto& m : f.missing) add({m, std::nullopt, f.id, 1.0, 1, f.hazard});
      if (f.state != State::tight) continue;
      const int limit = f.margin.value_or(0) >= 0 ? -1 : 1;
      const Move* most = nullptr;
      for (auto& m : study_.moves)
        if (m.has_doubt() && m.reach(i, limit) > (most ? most->reach(i, limit) : 0.0)) most = &m;
      if (most && f.half_width > 0)
        add({most->path, most->evidence.source, f.id,
             Together(base_[i].verdict).share(most->reach(i, limit), f.half_width), 1, f.hazard});
    }
    std::stable_sort(p.next.begin(), p.next.end(), [](auto& a, auto& b) {
      return std::tuple(a.worst, -a.decides, -a.share) < std::tuple(b.worst, -b.decides, -b.share);
    });
  }

  const Build& build_;
  const DutySet& set_;
  const ProofOptions& options_;
  Car car_;
  std::vector<bool> wanted_;
  std::vector<Trace> traces_;
  std::vector<Judged> base_;
  Study study_;
};

}  // namespace

std::size_t Proof::count(State s) const {
  return static_cast<std::size_t>(
      std::count_if(findings.begin(), findings.end(), [s](auto& f) { return f.state == s; }));
}

int Proof::exit_code() const {
  // Where nothing was looked at nothing is proved.
  return count(State::fails) ? 1 : count(State::unproven) || findings.empty() ? 3 : 0;
}

Proof prove(const Build& build, const DutySet& set, const ProofOptions& options) {
  return Prover(build, set, options).run();
}

}  // namespace sw
