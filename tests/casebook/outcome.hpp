#pragma once
// A case put to the proof, and what came of it against what was expected.
#include <cmath>
#include <map>
#include <set>

#include "casebook/case.hpp"
#include "proof/proof.hpp"
#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw::casebook {

/// What was found for one expectation, in words for the page; `complaints` is empty where all is as it should be.
struct Found {
  std::string id, build, state, ours, theirs, better;
  std::vector<std::string> figures;  ///< further ones of the because-list
  bool as_expected = false;
};

struct Outcome {
  std::vector<Found> found;
  std::vector<std::string> false_alarms;  ///< on the right twin: what fails or is unproven
  std::vector<std::string> tight;         ///< on the right twin
  std::vector<std::string> complaints;
};

inline double si_of(const std::string& text, const Kind& kind) {
  auto parsed = parse_quantity(text, kind);
  if (auto* fault = std::get_if<TextFault>(&parsed)) throw std::runtime_error(fault->sentence());
  return std::get<Parsed>(parsed).si;
}

/// For the page: three digits, so that it is stale only where something moved, in the unit of the case's figure.
inline std::string said(double value, const Kind& kind, std::string_view unit, const std::string& theirs) {
  auto parsed = parse_quantity(theirs, kind);
  if (auto* p = std::get_if<Parsed>(&parsed)) unit = p->unit;
  return print(value, kind, unit, 3);
}

inline double share_of(Band b) { return b == Band::electrical ? 0.05 : 0.15; }

/// Half-width of the band about a figure of the case, SI.
inline double half_width(const Figure& f, double value, const Kind& kind) {
  if (!f.of.empty()) return share_of(f.band) * si_of(f.of, kind);
  if (kind.reference == Reference::absolute) {
    if (f.ambient.empty()) throw std::runtime_error("a temperature's band is of its rise: give ambient");
    return share_of(f.band) * std::abs(value - si_of(f.ambient, kind));
  }
  return share_of(f.band) * std::abs(value);
}

/// Proofs of one build, a duty at a time or all.
class Twin {
 public:
  explicit Twin(const std::filesystem::path& file) : opened_(open(file, from_disk())) {
    for (auto& d : opened_.faults.all()) faults += say(d, opened_.files) + "\n";
    set_ = duties_of(opened_.build, from_disk());
    for (auto& d : set_->faults.all()) faults += say(d, opened_.files) + "\n";
  }
  /// Of one duty, with the doubt of its figures; `alone`: the coupling cut as well where it fails.
  const Proof& proof(const std::string& duty, bool alone = false) {
    const std::string key = duty + (alone ? " alone" : "");
    auto it = proofs_.find(key);
    if (it == proofs_.end())
      it = proofs_.emplace(key, prove(opened_.build, *set_, {.duty = duty, .remedies = alone})).first;
    return it->second;
  }
  /// Of all duties, by the figures themselves.
  Proof plain() const { return prove(opened_.build, *set_, {.doubt = false}); }
  std::string faults;

 private:
  Opened opened_;
  std::unique_ptr<DutySet> set_;
  std::map<std::string, Proof> proofs_;
};

/// Static rules are looked at whatever duty is run: for a finding of theirs the one that takes least time will do.
inline const std::string shortest_duty = "cornering";

class Comparison {
 public:
  Comparison(const Case& c, Outcome& out) : case_(c), out_(out) {}

  void expected(const std::string& build, Twin& twin) {
    for (auto& e : case_.findings) {
      if (e.build != build) continue;
      const Proof& p = twin.proof(e.duty().empty() ? shortest_duty : e.duty(), e.alone_holds);
      auto f = std::find_if(p.findings.begin(), p.findings.end(), [&](auto& one) { return one.id == e.id; });
      if (f == p.findings.end()) {
        out_.found.push_back({.id = e.id,
                              .build = e.build,
                              .state = "missed",
                              .ours = "nothing",
                              .theirs = e.predicted.value,
                              .better = {}});
        complain(e.id + " is not there");
        continue;
      }
      one(e, *f);
    }
  }

  /// Every duty is looked at by the figures themselves; what does not hold by them, the case's own duties and the
  /// standing rules also with their doubt, which tells a false alarm from a figure that is not known well enough.
  void right(Twin& twin) {
    std::set<std::string> closely{shortest_duty};
    for (auto& e : case_.findings)
      if (!e.duty().empty()) closely.insert(e.duty());
    for (auto& f : twin.plain().findings)
      if (f.state != State::holds) closely.insert(f.duty.empty() ? shortest_duty : f.duty);
    for (auto& duty : closely) judge_right(twin.proof(duty), duty);
    for (auto& listed : case_.may_be_tight)
      if (std::none_of(out_.tight.begin(), out_.tight.end(),
                       [&](auto& id) { return id == listed || id.starts_with(listed + "@"); }))
        complain("right twin: listed as tight and is not: " + listed);
  }

 private:
  void judge_right(const Proof& p, const std::string& duty) {
    for (auto& f : p.findings) {
      if (f.duty.empty() ? duty != shortest_duty : f.duty != duty) continue;
      const std::string said = f.id + (f.predicted ? " at " + print(*f.predicted, *f.quantity, f.unit) : "") +
                               (f.reason.empty() ? "" : " (" + f.reason + ")");
      if (f.state == State::fails || f.state == State::unproven) {
        out_.false_alarms.push_back(said);
        complain("right twin: false alarm: " + said);
      } else if (f.state == State::tight) {
        out_.tight.push_back(f.id);
        const std::string requirement = f.id.substr(0, f.id.find('@'));
        if (std::find(case_.may_be_tight.begin(), case_.may_be_tight.end(), requirement) == case_.may_be_tight.end())
          complain("right twin: tight where it should hold: " + said);
      }
    }
  }

  void complain(const std::string& what) { out_.complaints.push_back(what); }

  void one(const Expected& e, const Finding& f) {
    const std::string state(state_names[static_cast<std::size_t>(f.state)]);
    const std::size_t before = out_.complaints.size();
    Found found{.id = e.id,
                .build = e.build,
                .state = state,
                .ours = f.predicted ? said(*f.predicted, *f.quantity, f.unit, e.predicted.value) : f.reason,
                .theirs = e.predicted.value,
                .better = e.predicted.better};
    if (std::find(e.states.begin(), e.states.end(), state) == e.states.end()) complain(e.id + " is " + state);
    if (!e.predicted.value.empty()) {
      if (f.predicted)
        agree(e.id, e.predicted, *f.predicted, *f.quantity, f.unit);
      else
        complain(e.id + " has no figure");
    }
    if (!e.limit.empty()) {
      const auto limit = f.low_limit ? f.low_limit : f.high_limit;
      if (limit)
        same_limit(e, *limit, *f.quantity, f.unit);
      else
        complain(e.id + " has no limit");
    }
    reasons(e, f, found);
    found.as_expected = out_.complaints.size() == before;
    out_.found.push_back(std::move(found));
  }

  /// A limit is no prediction: it is the case's own, to the digits it is given in.
  void same_limit(const Expected& e, double ours, const Kind& kind, std::string_view unit) {
    if (std::abs(ours - si_of(e.limit, kind)) > 1e-6 * std::abs(ours))
      complain(e.id + ", limit: " + print(ours, kind, unit, 6) + " against " + e.limit);
  }

  void reasons(const Expected& e, const Finding& f, Found& found) {
    auto line = [&](const std::string& path) {
      return std::find_if(f.because.begin(), f.because.end(),
                          [&](auto& b) { return b.path == path || b.what == path; });
    };
    for (auto& path : e.because)
      if (line(path) == f.because.end()) complain(e.id + ": \"" + path + "\" is not among its reasons");
    for (auto& figure : e.figures) {
      auto b = line(figure.path);
      if (b == f.because.end()) {
        complain(e.id + ": \"" + figure.path + "\" is not among its reasons");
        continue;
      }
      agree(e.id + ", " + figure.path, figure, b->value, *b->kind, b->unit);
      found.figures.push_back(b->what + " " + said(b->value, *b->kind, b->unit, figure.value) + " against " +
                              figure.value);
      if (!figure.better.empty()) found.better += (found.better.empty() ? "" : " ") + figure.better;
    }
    if (e.alone_holds && std::none_of(f.because.begin(), f.because.end(), [](auto& b) {
          return b.what.find("alone") != std::string::npos && b.what.ends_with("it would hold");
        }))
      complain(e.id + ": the because-list does not say that the part alone would hold");
  }

  /// Ours against the case's figure; where a better model gives another, against our own figure of that day.
  void agree(const std::string& what, const Figure& theirs, double ours, const Kind& kind, std::string_view unit) {
    const double value = si_of(theirs.value, kind), half = half_width(theirs, value, kind);
    const bool inside = std::abs(ours - value) <= half;
    if (theirs.regression.empty()) {
      if (!inside) complain(what + ": " + print(ours, kind, unit) + ", the case has " + theirs.value);
      return;
    }
    if (theirs.better.empty()) complain(what + ": another figure than the case's needs its reason");
    if (inside)
      complain(what + ": " + print(ours, kind, unit) + " is inside the case's band by now; take the regression out");
    const double own = si_of(theirs.regression, kind);
    if (std::abs(ours - own) > half_width(theirs, own, kind))
      complain(what + ": " + print(ours, kind, unit) + ", our own was " + theirs.regression);
  }

  const Case& case_;
  Outcome& out_;
};

inline Outcome run_case(const Case& c) {
  Outcome out;
  Comparison comparison(c, out);
  std::vector<std::string> builds;  // in the order of their first finding
  for (auto& e : c.findings)
    if (std::find(builds.begin(), builds.end(), e.build) == builds.end()) builds.push_back(e.build);
  auto with = [&](const std::string& build, auto look) {
    Twin twin(root() / c.name / build);
    if (twin.faults.empty())
      look(twin);
    else
      out.complaints.push_back(twin.faults);
  };
  for (auto& build : builds) with(build, [&](Twin& twin) { comparison.expected(build, twin); });
  with("right.toml", [&](Twin& twin) { comparison.right(twin); });
  return out;
}

/// Each case is put to the proof once a process.
inline const Outcome& outcome_of(const Case& c) {
  static std::map<std::string, Outcome> done;
  auto it = done.find(c.name);
  if (it == done.end()) it = done.emplace(c.name, run_case(c)).first;
  return it->second;
}

}  // namespace sw::casebook
