#pragma once
// One command line from words to exit code, without touching the process: main.cpp does that.
#include <string>
#include <vector>

#include "cli/command.hpp"

namespace sw::cli {

/// Reads the words, runs the command, turns whatever goes wrong into a line and an exit code. `out` and `err` say what
/// the two streams go to.
int run(const std::vector<std::string>& words, const Surroundings& out, const Surroundings& err, Console& console);

/// Every command has one function, in the file of its name.
int run_check(const Args& args, Console& console);
int run_simulate(const Args& args, Console& console);
int run_solve(const Args& args, Console& console);
int run_survey(const Args& args, Console& console);
int run_faults(const Args& args, Console& console);
int run_states(const Args& args, Console& console);
int run_sum_command(const Args& args, Console& console);
int run_new(const Args& args, Console& console);
int run_fields(const Args& args, Console& console);
int run_schema(const Args& args, Console& console);
int run_duties_command(const Args& args, Console& console);
int run_convert(const Args& args, Console& console);
int run_ports(const Args& args, Console& console);
int run_help(const Args& args, Console& console);
int run_version(const Args& args, Console& console);
int run_man(const Args& args, Console& console);
int run_completion(const Args& args, Console& console);

/// Bad input, said on `err` as `streetwright: problem; hint`. Gives the exit code.
int complain(Console& console, std::string_view problem, std::string_view hint = {});
/// The same for a command that is not there, with the nearest name.
int unknown_command(std::string_view name, Console& console);
/// A fault of the program itself, in one line to report.
int own_fault(Console& console, std::string_view what);

}  // namespace sw::cli
