// simulate: one duty through time, as a short table or as every port at every step.

#include "cli/load.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "cli/trace_table.hpp"

namespace sw::cli {

int run_simulate(const Args& args, Console& console) {
  const auto duty = args.value("--duty");
  if (!duty) return complain(console, "simulate: --duty is missing", "write " + usage_of(*args.command));
  const Loaded loaded = load(args.operands.front(), from_disk());
  if (const int code = tell_faults(loaded, false, console); code != exit_code::good) return code;
  const auto at = find_duty(*loaded.duties, *duty, console);
  if (!at) return exit_code::bad_input;
  const Car car(loaded.opened.build);
  if (!car.graph().faults.empty()) return own_fault(console, car.graph().faults.front());

  std::vector<bool> wanted(loaded.duties->courses.size(), false);
  wanted[*at] = true;
  const std::vector<Trace> traces = run_duties(car, *loaded.duties, wanted);
  const Trace& trace = traces[*at];
  if (args.has("--csv"))
    console.out += trace_csv(car.graph(), trace);
  else
    console.out += trace_page(car, trace, loaded.duties->courses[*at], console.look);
  if (trace.summary.usable()) return car.graph().unavailable.empty() ? exit_code::good : exit_code::unproven;
  complain(console, "the run of " + *duty + " ended early: " + trace.summary.reason);
  return exit_code::unproven;
}

}  // namespace sw::cli
