// solve: a setting found instead of guessed, tried on the car, and where asked for written into the build.
#include "cli/figures.hpp"
#include "cli/load.hpp"
#include "cli/progress.hpp"
#include "cli/run.hpp"
#include "cli/solve_page.hpp"
#include "cli/write_back.hpp"
#include "field/tree.hpp"

namespace sw::cli {
namespace {

namespace fs = std::filesystem;

const Solver* find_solver(const std::string& key, Console& console) {
  std::vector<std::string_view> names;
  std::string list;
  for (auto& s : solvers()) {
    if (s.key == key) return &s;
    names.push_back(s.key);
    list += (list.empty() ? "" : ", ") + std::string(s.key);
  }
  const auto near = nearest(key, names);
  complain(console, "there is nothing to solve called \"" + key + "\"",
           (near.empty() ? "" : "did you mean " + std::string(near) + "? ") + "There are " + list);
  return nullptr;
}

/// What a build lacks altogether: a system it says nothing of cannot be set.
std::vector<std::string> left_out(const Car& car, const Solver& solver) {
  for (auto& s : car.systems())
    if (!s.described && solver.judged_by.starts_with(std::string(s.key) + ".")) return s.missing;
  return {};
}

int list_keys(const Car& car, const Loaded& loaded, const std::string& file, bool json, Console& console) {
  std::vector<KeyLine> keys;
  const Build& build = loaded.opened.build;
  for (auto& s : solvers()) {
    auto missing = left_out(car, s);
    if (missing.empty()) missing = s.needs ? s.needs(build) : s.solve(build, *loaded.duties).missing;
    keys.push_back({&s, std::move(missing)});
  }
  const std::string title = car_title(build);
  console.out += json ? keys_json(keys, build.name) : keys_page(keys, title.empty() ? file : title, console.look);
  return exit_code::good;
}

/// Whether the new text reads as what was meant: no fault, and each setting with its value and evidence.
bool reads_back(const fs::path& file, const std::string& text, const std::vector<SettingText>& settings) {
  const Opened again = open(file, with_text(file, text));
  if (again.faults.any_fault()) return false;
  for (auto& s : settings) {
    const Leaf leaf = find_leaf(build_fields(), static_cast<const void*>(&again.build), s.path);
    const auto evidence = again.build.evidence.find(s.path);
    if (!stands(s, leaf)) return false;
    if (s.words) continue;
    if (evidence == again.build.evidence.end() || evidence->second.source != Source::solved) return false;
  }
  return true;
}

int write_into(const std::string& name, const std::vector<SettingText>& settings, Console& console) {
  const fs::path file = name;
  const auto text = from_disk()(file);
  if (!text) return complain(console, "cannot read \"" + name + "\" again", "see that it is still there");
  Diagnostics faults;
  const auto edited = write_settings(*text, settings, faults);
  if (!edited)
    return complain(console, faults.all().front().path + ": " + faults.all().front().problem,
                    "nothing was written; put the lines in by hand, as told without --write");
  if (!reads_back(file, *edited, settings))
    return complain(console, "the build with the settings in it does not read back as meant",
                    "nothing was written; put the lines in by hand, as told without --write");
  return put(file, *edited, console);
}

}  // namespace

int run_solve(const Args& args, Console& console) {
  const std::string& file = args.operands.front();
  const bool json = args.has("--json");
  const Solver* solver = nullptr;
  if (args.operands.size() > 1 && !(solver = find_solver(args.operands[1], console))) return exit_code::bad_input;
  if (!solver && args.has("--write"))
    return complain(console, "solve --write needs a KEY", "streetwright solve BUILD lists them");
  if (args.has("--write") && is_json(file))
    return complain(console, json_is_not_edited(file), "without --write the lines are told; put them in by hand");
  const Loaded loaded = load(file, from_disk());
  if (const int code = tell_faults(loaded, json, console); code != exit_code::good) return code;
  const Build& build = loaded.opened.build;
  const WrittenUnits& units = loaded.opened.units;
  const Car car(build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());
  if (!solver) return list_keys(car, loaded, file, json, console);

  SolveTold told{.title = car_title(build), .build = file, .solver = solver};
  told.solution.missing = left_out(car, *solver);
  if (told.solution.solved()) told.solution = solver->solve(build, *loaded.duties);
  Diagnostics faults;
  if (told.solution.solved()) told.settings = setting_texts(build, told.solution.settings, units, faults);
  if (faults.any_fault()) return own_fault(console, say(faults.all().front(), {}));
  const auto proved = [&](const Build& b) {
    ProofOptions options;
    options.remedies = false;
    Progress progress(console);
    options.progress = [&](double share, const std::string& what) { progress(share, what); };
    Proof p = prove(b, *loaded.duties, options);
    return json ? p : in_written_units(std::move(p), units);
  };
  const Proof before = proved(build);
  told.tried = !told.settings.empty();
  const Proof after = told.tried ? proved(with_settings(build, told.settings)) : before;
  compare(before, after, solver->judged_by, told);
  told.kept_out = args.has("--write") && told.tried && !told.harmed().empty();
  if (args.has("--write") && told.tried && !told.kept_out) {
    if (const int code = write_into(file, told.settings, console); code != exit_code::good) return code;
    told.written = file;
  }
  console.out += json ? solve_json(told) : solve_page(told, units, console.look);
  return told.exit_code();
}

}  // namespace sw::cli
