#include "cli/survey_page.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>
#include <set>

#include "cli/page.hpp"
#include "cli/report.hpp"
#include "field/words.hpp"

namespace sw::cli {
namespace {

using Json = nlohmann::ordered_json;

constexpr int margin = 2, under = 6, tool_at = 40;

std::string tool_words(const ToMeasure& t) {
  const std::string to = to_within(*t.field);
  return std::string(name_of(t.tool)) + (to.empty() ? "" : ", " + together("to ± " + to));
}

/// What stands there, and what the figure decides.
std::string why(const ToMeasure& t) {
  std::string text = t.now.empty() ? "" : "now " + clean(t.now);
  const auto add = [&](const std::string& more) { text += (text.empty() ? "" : "; ") + more; };
  if (t.decides == 0) return text;
  if (t.worst == Hazard::harm) add(harm("harm"));
  add("decides " + clean(t.finding) + (t.decides > 1 ? " and " + std::to_string(t.decides - 1) + " more" : ""));
  return text;
}

std::string_view group_of(std::string_view path) { return path.substr(0, path.rfind('.')); }

/// Of whatever does not hold.
std::set<Caution> cautions_of(const Proof& proof) {
  std::set<Caution> all;
  for (auto& f : proof.findings)
    if (f.state != State::holds && f.caution != Caution::none) all.insert(f.caution);
  return all;
}

Json caution_json(const std::set<Caution>& cautions) {
  Json all = Json::array();
  for (Caution c : cautions) all.push_back({{"name", caution_name(c)}, {"text", caution_text(c)}});
  return all;
}

class SurveyPage {
 public:
  SurveyPage(const SurveyTold& told, const Look& look) : told_(told), page_(look) {}

  std::string take() {
    page_.text(strong((told_.title.empty() ? "" : clean(told_.title) + "   ") + clean(told_.build)));
    page_.text(headline());
    for (auto& t : told_.walk.figures) figure(t);
    to_tell();
    undescribed();
    care();
    return page_.take();
  }

 private:
  std::string headline() const {
    const auto& all = told_.walk.figures;
    if (all.empty()) return "Nothing is left to measure: no figure that is missing or in doubt decides anything.";
    const auto harms =
        std::count_if(all.begin(), all.end(), [](auto& t) { return t.decides > 0 && t.worst == Hazard::harm; });
    return std::to_string(all.size()) + " figures to measure, in the order of walking round the car" +
           (harms ? "; " + std::to_string(harms) + " decide whether somebody can be hurt" : "") +
           ". --form prints them as a file to fill in.";
  }

  void figure(const ToMeasure& t) {
    if (t.station != at_) {
      at_ = t.station;
      group_ = {};
      page_.space();
      page_.line(strong(std::string(name_of(at_))));
      std::string names;
      for (Caution c : cautions_at(at_)) {
        cautions_.insert(c);
        names += (names.empty() ? "" : ", ") + std::string(caution_name(c));
      }
      if (!names.empty()) page_.text("care: " + harm(names), margin, margin);
    }
    if (t.caution != Caution::none) cautions_.insert(t.caution);
    if (group_of(t.path) != group_) {
      group_ = group_of(t.path);
      page_.space();
      page_.text(touch(clean(group_)), margin, margin);
    }
    page_.beside("  [ ] " + strong(std::string(t.field->label)), tool_at, tool_words(t));
    // What is alike of each wire or tube is said at the first.
    const bool said = !said_.insert(t.field).second;
    const std::string reason = why(t), key = touch(clean(std::string_view(t.path).substr(group_.size() + 1)));
    page_.text(key + (reason.empty() ? "" : "  " + reason), under, 2);
    if (!said) page_.text(faint(std::string(t.field->doc)), under, 0);
  }

  void to_tell() {
    if (told_.walk.to_tell.empty()) return;
    page_.space();
    page_.line(strong("to be told in the build first"));
    for (auto& what : told_.walk.to_tell) page_.text(touch(clean(what)), margin, margin);
  }

  void undescribed() {
    std::string keys;
    for (auto& key : told_.walk.undescribed) keys += (keys.empty() ? "" : ", ") + touch(key);
    if (keys.empty()) return;
    page_.space();
    page_.text("Not asked for, the build says nothing of them: " + keys +
                   ". An empty table in it, such as [wheels.tyre], is enough.",
               0, 2);
  }

  void care() {
    if (told_.walk.figures.empty()) return;
    page_.space();
    tell_cautions(page_, cautions_);
    page_.text(std::string(proof_limits()), margin);
  }

  const SurveyTold& told_;
  Page page_;
  Station at_ = Station::inherited;
  std::string_view group_;
  std::set<const FieldInfo*> said_;
  std::set<Caution> cautions_;
};

/// Findings of one requirement that changed alike.
struct Change {
  std::string requirement, first;
  State from, to;
  int count = 1;
};
std::vector<Change> changes(const Proof& before, const Proof& after) {
  std::vector<Change> all;
  for (auto& f : after.findings) {
    const auto was =
        std::find_if(before.findings.begin(), before.findings.end(), [&](auto& b) { return b.id == f.id; });
    if (was == before.findings.end() || was->state == f.state || f.state == State::holds) continue;
    const std::string requirement(requirement_of(f.id));
    const auto same = std::find_if(all.begin(), all.end(), [&](auto& c) {
      return c.requirement == requirement && c.from == was->state && c.to == f.state;
    });
    if (same != all.end())
      ++same->count;
    else
      all.push_back({requirement, f.id, was->state, f.state});
  }
  std::stable_sort(all.begin(), all.end(),
                   [](auto& a, auto& b) { return (a.to == State::fails) > (b.to == State::fails); });
  return all;
}
std::string change_words(const Change& c) {
  const auto name = [](State s) { return std::string(state_names[static_cast<std::size_t>(s)]); };
  return touch(clean(c.count == 1 ? c.first : c.requirement)) + "  " + name(c.from) + " → " +
         (c.to == State::fails ? harm(name(c.to)) : name(c.to)) +
         (c.count > 1 ? ", " + std::to_string(c.count) + " times" : "");
}

/// Readings far from what stood there, once more and together: a slip of the tape is seen before the wheels are back
/// on.
void suspects(Page& page, const Filled& filled) {
  std::string paths;
  for (auto& t : filled.taken)
    if (t.beyond_its_doubt) paths += (paths.empty() ? "" : ", ") + touch(clean(t.path));
  if (paths.empty()) return;
  page.space();
  page.text(harm("Measure once more") + ", they are far from what stood there: " + paths, 0, 2);
}

}  // namespace

std::string survey_page(const SurveyTold& told, const Look& look) { return SurveyPage(told, look).take(); }

std::string survey_json(const SurveyTold& told) {
  Json figures = Json::array();
  std::set<Caution> cautions;
  for (auto& t : told.walk.figures) {
    for (Caution c : cautions_at(t.station)) cautions.insert(c);
    if (t.caution != Caution::none) cautions.insert(t.caution);
    Json line = {{"path", t.path},
                 {"label", t.field->label},
                 {"says", t.field->doc},
                 {"station", name_of(t.station)},
                 {"tool", name_of(t.tool)},
                 {"within", to_within(*t.field)},
                 {"now", t.now},
                 {"decides", t.decides}};
    if (t.decides > 0) {
      line["finding"] = t.finding;
      line["hazard"] = hazard_names[static_cast<std::size_t>(t.worst)];
    }
    figures.push_back(std::move(line));
  }
  Json all = {{"build", told.build},
              {"title", told.title},
              {"figures", std::move(figures)},
              {"to_tell", told.walk.to_tell},
              {"left_out", told.walk.undescribed},
              {"cautions", caution_json(cautions)},
              {"limits", proof_limits()}};
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

std::string filled_page(const FilledTold& told, const Look& look) {
  Page page(look);
  page.text(strong((told.title.empty() ? "" : clean(told.title) + "   ") + clean(told.build)));
  const std::size_t count = told.filled.taken.size();
  page.text(std::to_string(count) + (count == 1 ? " figure" : " figures") + " taken from " + clean(told.survey) +
            (told.filled.blank ? ", " + std::to_string(told.filled.blank) + " left empty" : ""));
  page.space();
  for (auto& t : told.filled.taken) {
    page.text(touch(clean(t.path)), margin, margin);
    page.text((t.was.empty() ? "" : clean(t.was) + " → ") + strong(clean(t.now)) +
                  (t.beyond_its_doubt ? "; " + harm("beyond the doubt of what stood there") : ""),
              under, 2);
  }
  page.space();
  for (auto& c : changes(told.before, told.after)) page.text(change_words(c), margin, under);
  suspects(page, told.filled);
  page.space();
  page.text("before  " + count_line(told.before));
  page.text("now     " + count_line(told.after));
  page.space();
  page.text("streetwright check " + clean(told.build) + " tells them; streetwright survey " + clean(told.build) +
            " what is left to measure.");
  page.space();
  tell_cautions(page, cautions_of(told.after));
  page.text(std::string(proof_limits()));
  return page.take();
}

std::string filled_json(const FilledTold& told) {
  const auto counts = [](const Proof& p) {
    Json c;
    for (std::size_t s = 0; s < std::size(state_names); ++s)
      c[std::string(state_names[s])] = p.count(static_cast<State>(s));
    return c;
  };
  Json taken = Json::array();
  for (auto& t : told.filled.taken)
    taken.push_back({{"path", t.path}, {"was", t.was}, {"now", t.now}, {"beyond_its_doubt", t.beyond_its_doubt}});
  Json all = {{"build", told.build},
              {"survey", told.survey},
              {"taken", std::move(taken)},
              {"left_empty", told.filled.blank},
              {"before", counts(told.before)},
              {"after", counts(told.after)},
              {"cautions", caution_json(cautions_of(told.after))},
              {"limits", proof_limits()}};
  return all.dump(2, ' ', false, Json::error_handler_t::replace) + "\n";
}

}  // namespace sw::cli
