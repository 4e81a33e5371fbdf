#include "cli/solve_page.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "cli/command.hpp"
#include "cli/figures.hpp"
#include "cli/page.hpp"
#include "cli/proof_json.hpp"
#include "field/measure.hpp"
#include "quantity/print.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

constexpr int margin = 2;

/// Whether it is a finding of one of the requirements, their ids a space apart.
bool is_of(const Finding& f, std::string_view requirements) {
  while (!requirements.empty()) {
    const std::string_view one = requirements.substr(0, requirements.find(' '));
    requirements.remove_prefix(std::min(requirements.size(), one.size() + 1));
    if (f.id.starts_with(one) && (f.id.size() == one.size() || f.id[one.size()] == '[' || f.id[one.size()] == '@'))
      return true;
  }
  return false;
}

std::string state_words(const Finding* f) {
  if (!f) return "not judged";
  const std::string state(state_names[static_cast<std::size_t>(f->state)]);
  return (f->state == State::fails ? harm(state) : strong(state)) + (f->predicted ? " at " + with_doubt(*f) : "");
}

/// Beyond so many lines those that hold with and without the settings are counted and not told.
constexpr std::size_t most_told = 12;

bool holds_throughout(const BeforeAfter& pair) {
  const auto holds = [](const Finding* f) { return !f || f->state == State::holds; };
  return holds(pair.before) && holds(pair.after);
}

void findings(Page& page, std::string_view heading, const std::vector<BeforeAfter>& all) {
  if (all.empty()) return;
  page.space();
  page.line(strong(heading));
  std::size_t untold = 0;
  for (auto& pair : all) {
    const Finding& f = pair.any();
    if (all.size() > most_told && holds_throughout(pair)) {
      ++untold;
      continue;
    }
    page.text(touch(clean(f.id)), margin, margin);
    const std::string limit = limit_words(f);
    const bool same = pair.before && pair.after && state_words(pair.before) == state_words(pair.after);
    page.text((same ? "" : state_words(pair.before) + " → ") + state_words(pair.after) + (same ? ", as before" : "") +
                  (limit.empty() ? "" : ", " + limit + " wanted"),
              2 * margin, 2 * margin);
  }
  if (untold > 0)
    page.text(std::to_string(untold) + (untold < all.size() ? " more hold" : " hold") + ", before and with it", margin);
}

/// A table to key in, a row a line.
void rows_of(Page& page, const SettingText& s) {
  page.text(s.label + "  " + strong(std::to_string(s.curve->x.size()) + " rows") + "  " + touch(s.path), margin,
            2 * margin);
  for (std::size_t at = 0; at < s.text.size();) {
    const std::size_t end = std::min(s.text.find("; ", at), s.text.size());
    page.line(std::string(2 * margin, ' ') + strong(s.text.substr(at, end - at)));
    at = end + 2;
  }
}

/// Beside the settings themselves, lest someone takes them from the page and leaves what they break.
void warning(Page& page, const SolveTold& told) {
  constexpr std::size_t told_at_most = 3;
  const auto harmed = told.harmed();
  if (harmed.empty()) return;
  std::string ids;
  for (std::size_t i = 0; i < std::min(harmed.size(), told_at_most); ++i) ids += (i ? ", " : "") + clean(harmed[i]->id);
  if (harmed.size() > told_at_most) ids += " and " + std::to_string(harmed.size() - told_at_most) + " more";
  page.text(harm("Not by itself") + ": with this set and nothing else, " + ids +
                " would lie past a limit that keeps people from harm, or close to it, or no longer be told (below)",
            margin, margin);
}

void settings(Page& page, const SolveTold& told) {
  page.space();
  page.line(strong("SET"));
  warning(page, told);
  int label = 0;
  for (auto& s : told.settings) label = std::max(label, seen(s.label));
  for (auto& s : told.settings) {
    if (s.curve && s.changes()) {
      rows_of(page, s);
      continue;
    }
    const std::string change = !s.changes() ? (s.curve ? std::string("as it is") : together(s.text) + ", as it is")
                               : s.was_text.empty() ? together(s.text)
                                                    : together(s.was_text) + " → " + strong(together(s.text));
    page.text(pad(s.label, label) + "  " + change + "  " + touch(s.path), margin, label + 2 * margin);
  }
}

void because(Page& page, const std::vector<Because>& lines, const WrittenUnits& units) {
  if (lines.empty()) return;
  page.space();
  page.line(strong("BECAUSE"));
  for (auto line : lines) {
    line.unit = units.of(*line.kind, line.unit);
    page.text(clean(line.what) + "  " + because_value(line), margin, 2 * margin);
  }
}

void field(Page& page, std::string_view name, std::string_view text) {
  static constexpr int columns = 12;
  if (!text.empty()) page.text(faint(pad(name, columns)) + std::string(text), margin, columns);
}

Json because_json(const Because& b) {
  const std::string_view unit = b.unit.empty() && !b.kind->units.empty() ? b.kind->units[0] : b.unit;
  if (!b.text.empty()) return {{"what", b.what}, {"value", b.text}, {"unit", nullptr}};
  return {{"what", b.what}, {"value", from_si(b.value, *b.kind, unit)}, {"unit", unit}};
}

Json finding_or_null(const Finding* f) { return f ? Json::parse(finding_json(*f)) : Json(nullptr); }

Json pairs_json(const std::vector<BeforeAfter>& all) {
  Json out = Json::array();
  for (auto& p : all)
    out.push_back({{"id", p.any().id}, {"before", finding_or_null(p.before)}, {"after", finding_or_null(p.after)}});
  return out;
}

Caution caution_of(const SolveTold& told) {
  return told.solution.caution != Caution::none ? told.solution.caution : told.solver->caution;
}

Json caution_json(Caution c) { return c == Caution::none ? Json(nullptr) : Json(caution_text(c)); }

}  // namespace

int SolveTold::exit_code() const {
  if (!solution.missing.empty()) return exit_code::unproven;
  if (!solution.trouble.empty()) return exit_code::fails;
  const auto now = [&](State s) {
    return std::any_of(concerned.begin(), concerned.end(), [&](auto& p) { return p.after && p.after->state == s; });
  };
  const bool broken = std::any_of(elsewhere.begin(), elsewhere.end(), [](auto& p) { return p.worse(); });
  return now(State::fails) || broken ? exit_code::fails : now(State::unproven) ? exit_code::unproven : exit_code::good;
}

std::vector<const Finding*> SolveTold::harmed() const {
  std::vector<const Finding*> all;
  for (auto* list : {&concerned, &elsewhere})
    for (auto& p : *list)
      if (p.harms()) all.push_back(p.after);
  return all;
}

void compare(const Proof& before, const Proof& after, std::string_view judged_by, SolveTold& told) {
  const auto in = [](const Proof& p, const std::string& id) {
    auto at = std::find_if(p.findings.begin(), p.findings.end(), [&](auto& f) { return f.id == id; });
    return at == p.findings.end() ? nullptr : &*at;
  };
  for (auto& f : after.findings) {
    const BeforeAfter pair{in(before, f.id), &f};
    if (is_of(f, judged_by))
      told.concerned.push_back(pair);
    else if (!pair.before || pair.before->state != f.state || pair.slips())
      told.elsewhere.push_back(pair);
  }
  for (auto& f : before.findings)
    if (!in(after, f.id)) (is_of(f, judged_by) ? told.concerned : told.elsewhere).push_back({&f, nullptr});
}

std::string solve_page(const SolveTold& told, const WrittenUnits& units, const Look& look) {
  Page page(look);
  const Solution& s = told.solution;
  page.text(strong(clean(told.title.empty() ? told.build : told.title + " (" + told.build + ")")));
  page.space();
  page.text(strong(told.solver->title));
  if (!s.missing.empty()) {
    page.text("It cannot be told: figures are missing.", margin, margin);
    for (auto& path : s.missing) field(page, "needs", touch(clean(path)));
  } else if (!s.trouble.empty()) {
    page.text(harm("No solution: ") + clean(s.trouble), margin, margin);
  } else {
    page.text(clean(s.says), margin, margin);
    if (!told.settings.empty()) settings(page, told);
  }
  if (told.tried) {
    findings(page, "TRIED ON THE CAR", told.concerned);
    findings(page, "ELSEWHERE", told.elsewhere);
  } else {
    findings(page, "AS IT IS", told.concerned);
  }
  because(page, s.because, units);
  page.space();
  field(page, "formula", told.solver->formula);
  field(page, "source", told.solver->source);
  if (const Caution c = caution_of(told); c != Caution::none)
    field(page, "care", harm(caution_name(c)) + ": " + std::string(caution_text(c)));
  if (!told.tried) return page.take();
  page.space();
  if (!told.written.empty()) {
    page.text("Wrote into " + clean(told.written) + ":", 0, margin);
  } else if (told.kept_out) {
    page.text(
        harm("Not written") +
            ": with it these would lie past a limit that keeps people from harm, no longer clear of it, or no longer "
            "be told. Mend them first; what would have been written:",
        0, margin);
    for (auto* f : told.harmed()) page.text(touch(clean(f->id)), margin, margin);
  } else {
    page.text("To paste into the build, or written there with --write:", 0, margin);
  }
  const std::string lines = lines_to_paste(told.settings);
  for (std::size_t at = 0; at < lines.size();) {
    const std::size_t end = lines.find('\n', at);
    page.line(std::string(margin, ' ') + lines.substr(at, end - at));
    at = end + 1;
  }
  return page.take();
}

std::string solve_json(const SolveTold& told) {
  Json settings = Json::array(), because = Json::array();
  for (auto& s : told.settings)
    settings.push_back({{"path", s.path},
                        {"label", s.label},
                        {"old", s.was ? Json(s.was_text) : Json(nullptr)},
                        {"new", s.text},
                        {"changes", s.changes()},
                        {"toml", s.toml}});
  Json kept_out_by = Json::array();
  if (told.kept_out)
    for (auto* f : told.harmed()) kept_out_by.push_back(f->id);
  for (auto& b : told.solution.because) because.push_back(because_json(b));
  const Json out = {{"build", told.build},
                    {"key", told.solver->key},
                    {"title", told.solver->title},
                    {"solved", told.solution.solved()},
                    {"says", told.solution.says},
                    {"missing", told.solution.missing},
                    {"trouble", told.solution.trouble},
                    {"settings", std::move(settings)},
                    {"judged_by", told.solver->judged_by},
                    {"findings", pairs_json(told.concerned)},
                    {"elsewhere", pairs_json(told.elsewhere)},
                    {"because", std::move(because)},
                    {"formula", told.solver->formula},
                    {"source", told.solver->source},
                    {"caution", caution_json(caution_of(told))},
                    {"written", told.written.empty() ? Json(nullptr) : Json(told.written)},
                    {"kept_out_by", std::move(kept_out_by)}};
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string keys_page(const std::vector<KeyLine>& keys, const std::string& title, const Look& look) {
  Page page(look);
  page.text(strong(clean(title)));
  page.space();
  int column = 0;
  for (auto& k : keys) column = std::max(column, seen(k.solver->key) + margin);
  for (auto& k : keys) {
    std::string says(k.solver->title);
    if (k.missing.empty())
      says += ": ready";
    else
      says += ": needs " + touch(clean(k.missing.front())) +
              (k.missing.size() > 1 ? " and " + std::to_string(k.missing.size() - 1) + " more" : "");
    page.beside(strong(k.solver->key), column, says, 0);
  }
  return page.take();
}

std::string keys_json(const std::vector<KeyLine>& keys, const std::string& build) {
  Json all = Json::array();
  for (auto& k : keys) all.push_back({{"key", k.solver->key}, {"title", k.solver->title}, {"missing", k.missing}});
  const Json out = {{"build", build}, {"keys", std::move(all)}};
  return out.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace sw::cli
