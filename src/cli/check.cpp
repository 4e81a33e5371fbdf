// check: a build proved, or one finding of it opened.
#include "cli/figures.hpp"
#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/progress.hpp"
#include "cli/proof_json.hpp"
#include "cli/report.hpp"
#include "cli/run.hpp"

namespace sw::cli {
namespace {

int exit_of(State s) {
  return s == State::fails ? exit_code::fails : s == State::unproven ? exit_code::unproven : exit_code::good;
}

/// The duty an id names, where the set has it: the proof is then made for that one alone.
std::string duty_in(const std::string& id, const DutySet& set) {
  const auto at = id.find('@');
  if (at == std::string::npos) return {};
  const std::string duty = id.substr(at + 1);
  return set.duty.find(duty) ? duty : std::string();
}

int open_finding(const Proof& proof, const std::string& id, const Args& args, Console& console) {
  std::string hint;
  const Finding* found = find_finding(proof, id, hint);
  if (!found) return complain(console, "there is no one finding \"" + id + "\"", hint);
  console.out += args.has("--json") ? finding_json(*found) : because_page(*found, console.look);
  return exit_of(found->state);
}

}  // namespace

int run_check(const Args& args, Console& console) {
  Loaded loaded = load(args.operands.front(), from_disk());
  const bool json = args.has("--json");
  if (const int code = tell_faults(loaded, json, console); code != exit_code::good) return code;
  Build& build = loaded.opened.build;
  const Car car(build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());

  ProofOptions options{.duty = args.value("--duty").value_or(""), .doubt = true, .threads = 0, .progress = {}};
  if (!options.duty.empty() && !find_duty(*loaded.duties, options.duty, console)) return exit_code::bad_input;
  const auto because = args.value("--because");
  if (because && options.duty.empty()) options.duty = duty_in(*because, *loaded.duties);
  Proof proof;
  {
    Progress progress(console);
    options.progress = [&](double share, const std::string& what) { progress(share, what); };
    proof = prove(build, *loaded.duties, options);
  }
  // JSON keeps the unit of each requirement, which no other way of writing the same car changes.
  if (!json) proof = in_written_units(std::move(proof), loaded.opened.units);
  if (because) return open_finding(proof, *because, args, console);
  console.out += json ? proof_json(proof, build.name, loaded.opened.faults, loaded.opened.files)
                      : report(proof, console.look,
                               {.all = args.has("--all"),
                                .title = car_title(build),
                                .build = build.name,
                                .systems = args.values("--system")});
  return proof.exit_code();
}

}  // namespace sw::cli
