// survey: what is still to be measured, and a filled-in survey put into the build.
#include "cli/figures.hpp"
#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/progress.hpp"
#include "cli/proof_json.hpp"
#include "cli/run.hpp"
#include "cli/survey_page.hpp"
#include "cli/write_back.hpp"
#include "field/tree.hpp"

namespace sw::cli {
namespace {

Proof proved(const Build& build, const DutySet& set, Console& console) {
  Progress progress(console);
  ProofOptions options;
  options.remedies = false;
  options.progress = [&](double share, const std::string& what) { progress(share, what); };
  return prove(build, set, options);
}

int tell_walk(const Args& args, const Loaded& loaded, Console& console) {
  const Build& build = loaded.opened.build;
  const Car car(build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());
  SurveyTold told{.title = car_title(build), .build = args.operands.front()};
  told.walk = walk_round(build, car, proved(build, *loaded.duties, console), loaded.opened.units);
  if (args.has("--form"))
    console.out += form_of(told.walk, told.title, told.build);
  else
    console.out += args.has("--json") ? survey_json(told) : survey_page(told, console.look);
  return exit_code::good;
}

/// Faults of the survey or of the build with it, each at its place in the survey where it has one there.
int tell(const Diagnostics& faults, const std::string& survey, const Node& root, bool json, Console& console) {
  Diagnostics here;
  for (auto& d : faults.all()) {
    Place place = d.place;
    if (const Node* at = find_node(root, d.path)) place = at->place;
    place.file = 0;
    d.severity == Severity::fault ? here.fault(place, d.path, d.problem, d.hint)
                                  : here.warn(place, d.path, d.problem, d.hint);
  }
  here.sort();
  if (json) {
    console.out += faults_json(here, {survey});
  } else {
    Page page(console.err_look);
    for (auto& d : here.all()) page.line(say(d, {survey}));
    page.line("nothing was written");
    console.err += page.take();
  }
  return exit_code::bad_input;
}

int take_in(const Args& args, const Loaded& loaded, Console& console) {
  const std::string &file = args.operands.front(), survey = *args.value("--read");
  const bool json = args.has("--json");
  if (is_json(file)) return complain(console, json_is_not_edited(file), "keep the build as TOML");
  const auto text = from_disk()(survey);
  if (!text) return complain(console, "cannot read \"" + survey + "\"", "see that it is there");
  const Build& build = loaded.opened.build;
  const Filled filled = read_filled(*text, build, loaded.opened.units);
  if (filled.faults.any_fault()) return tell(filled.faults, survey, filled.root, json, console);
  if (filled.taken.empty())
    return complain(console, "nothing is filled in in \"" + survey + "\"", "write between the quotation marks");

  const auto before_text = from_disk()(file);
  if (!before_text) return complain(console, "cannot read \"" + file + "\" again", "see that it is still there");
  Diagnostics faults;
  const auto edited = put_in(*before_text, filled, faults);
  if (!edited) return tell(faults, survey, filled.root, json, console);
  const Loaded after = load(file, with_text(file, *edited));
  if (after.opened.faults.any_fault()) return tell(after.opened.faults, survey, filled.root, json, console);
  if (!after.good()) return tell_faults(after, json, console);
  if (!reads_back(after.opened.build, filled))
    return own_fault(console, "the build with the survey in it does not read back as meant");
  if (const int code = put(file, *edited, console); code != exit_code::good) return code;

  const Proof was = proved(build, *loaded.duties, console);
  const Proof now = in_written_units(proved(after.opened.build, *after.duties, console), after.opened.units);
  const FilledTold told{car_title(after.opened.build), file, survey, filled, was, now};
  console.out += json ? filled_json(told) : filled_page(told, console.look);
  return exit_code::good;
}

}  // namespace

int run_survey(const Args& args, Console& console) {
  if (args.has("--form") && (args.has("--read") || args.has("--json")))
    return complain(console, "--form stands alone", "leave --read and --json out");
  const Loaded loaded = load(args.operands.front(), from_disk());
  if (const int code = tell_faults(loaded, args.has("--json"), console); code != exit_code::good) return code;
  return args.has("--read") ? take_in(args, loaded, console) : tell_walk(args, loaded, console);
}

}  // namespace sw::cli
