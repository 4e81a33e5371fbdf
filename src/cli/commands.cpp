// The table of commands. Nothing else lists them.
#include <algorithm>
#include <array>

#include "car/systems.hpp"
#include "cli/run.hpp"

namespace sw::cli {
namespace {

using Text = std::string_view;

constexpr Text colour_words[] = {"always", "never", "auto"};
constexpr Option common[] = {
    {.name = "--color",
     .value = "WHEN",
     .says = "Colour always, never, or auto: on a terminal unless NO_COLOR is set.",
     .fill = Fill::words,
     .words = colour_words},
    {.name = "--ascii", .says = "Plain ASCII signs, whatever the locale."},
    {.name = "--help", .says = "This help.", .letter = "-h"},
};
constexpr Exit common_codes[] = {
    {exit_code::good, "Done."},
    {exit_code::bad_input, "The command line or what it names is wrong; every fault is told with what to do."},
    {exit_code::own_fault, "A fault of the program itself, with one line to report."},
};

template <class... S>
consteval std::array<Text, sizeof...(S)> keys_of(SystemList<S...>) {
  return {Text(S::key)...};
}
constexpr auto system_words = keys_of(Systems{});

constexpr Operand build[] = {{"BUILD", "The build: a TOML or JSON file.", Fill::file}};

constexpr Option check_options[] = {
    {.name = "--json",
     .says = "The proof as JSON, or the faults of the file where it has any. A failing finding that only comes of "
             "another one names it as `follows`."},
    {.name = "--duty",
     .value = "DUTY",
     .says = "This duty alone, and the rules that stand apart from any duty.",
     .fill = Fill::duty},
    {.name = "--because",
     .value = "ID",
     .says = "One finding, opened: the chain from cause to effect, inputs, formula, source. The start of an id is "
             "enough where only one begins so."},
    {.name = "--all", .says = "Every finding; otherwise those that hold are only counted."},
    {.name = "--system",
     .value = "NAME",
     .says = "List the findings of this system alone; may stand several times. All are proved all the same: the exit "
             "code and the last line are of the whole car, and what is not listed is counted.",
     .fill = Fill::words,
     .words = system_words,
     .many = true},
};
constexpr Exit check_exits[] = {
    {exit_code::good, "Nothing fails. What is tight is counted in the last line."},
    {exit_code::fails, "Something fails."},
    {exit_code::bad_input, "The build or the command line has faults; all of them are told."},
    {exit_code::unproven, "Nothing fails, but something could not be proven."},
    {exit_code::own_fault, "A fault of the program itself, with one line to report."},
};
constexpr Text check_examples[] = {
    "streetwright check car.toml",
    "streetwright check car.toml --duty hot-idle --all",
    "streetwright check car.toml --all --system cooling --system belts",
    "streetwright check car.toml --because cooling.coolant-temperature@hot-idle",
    "streetwright check car.toml --json",
};

constexpr Option simulate_options[] = {
    {.name = "--duty",
     .value = "DUTY",
     .says = "The duty to run; those it starts from are run before it.",
     .fill = Fill::duty,
     .needed = true},
    {.name = "--csv", .says = "Every port at every step as comma-separated values, its unit in the header."},
};
constexpr Exit simulate_exits[] = {
    {exit_code::good, "The duty was run to its end."},
    {exit_code::unproven, "The run ended early or could not be made; the reason is told."},
};
constexpr Text simulate_examples[] = {
    "streetwright simulate car.toml --duty cruise",
    "streetwright simulate car.toml --duty hot-idle --csv > hot-idle.csv",
};

constexpr Operand solve_operands[] = {
    {"BUILD", "The build: a TOML or JSON file.", Fill::file},
    {"KEY", "What to find. Without it, what can be found, and what the build lacks for each.", Fill::solver, false}};
constexpr Option solve_options[] = {
    {.name = "--json", .says = "What was found, the settings and the findings before and with them, as JSON."},
    {.name = "--write",
     .says = "Put the settings into the build, a TOML file: the values alone are changed, with `solved` as their "
             "evidence. A file it is laid over and shelf parts are never touched: the build gets its own line."},
};
constexpr Exit solve_exits[] = {
    {exit_code::good, "Found; tried on the car nothing it concerns fails. Without KEY: the list was told."},
    {exit_code::fails, "There is no solution, and why; or with it something fails that it should mend or not break."},
    {exit_code::unproven, "A figure is missing without which nothing can be found or proved."},
};
constexpr Text solve_examples[] = {"streetwright solve car.toml", "streetwright solve car.toml proportioning",
                                   "streetwright solve car.toml shims --write"};

constexpr Option survey_options[] = {
    {.name = "--form", .says = "The same as a file to fill in, on standard output."},
    {.name = "--read",
     .value = "FILE",
     .says = "A filled-in form: what stands in it is put into the build, a TOML file, as `measured`; what was left "
             "empty changes nothing.",
     .fill = Fill::file},
    {.name = "--json", .says = "The figures, or what was taken from the form, as JSON."},
};
constexpr Text survey_examples[] = {"streetwright survey car.toml", "streetwright survey car.toml --form > survey.toml",
                                    "streetwright survey car.toml --read survey.toml"};

constexpr Operand faults_operands[] = {{"BUILD", "The build: a TOML or JSON file.", Fill::file}};
constexpr Option faults_options[] = {
    {.name = "--duty",
     .value = "DUTY",
     .says = "Try them in this duty; may stand more than once. Without it night-rain, cold-crank and parked.",
     .fill = Fill::duty,
     .many = true},
    {.name = "--json", .says = "Every fault with what happens, as JSON."},
};
constexpr Exit faults_exits[] = {
    {exit_code::good, "Told; nothing burns by one fault."},
    {exit_code::fails, "By one fault alone a conductor carries more than it may and nothing opens."},
    {exit_code::unproven, "The network cannot be solved with what the build says."},
};
constexpr Text faults_examples[] = {"streetwright faults car.toml", "streetwright faults car.toml --duty hot-idle"};
constexpr Option states_options[] = {{.name = "--json", .says = "Every state with the volts at each load, as JSON."}};
constexpr Exit states_exits[] = {
    {exit_code::good, "Told."},
    {exit_code::unproven, "The network cannot be solved with what the build says."},
};
constexpr Text states_examples[] = {"streetwright states car.toml"};

constexpr Operand sum_operands[] = {
    {"NAME", "The sum.", Fill::sum},
    {"KEY=VALUE", "Its inputs, in any order; values with their units. With none, the sum is described.", Fill::word,
     false, true},
};
constexpr Option sum_options[] = {
    {.name = "--unit",
     .value = "KEY=UNIT",
     .says = "The unit an output is shown in; may stand several times.",
     .many = true},
    {.name = "--json", .says = "The result as JSON."},
    {.name = "--list", .says = "All sums, one a line.", .alone = true},
};
constexpr Exit sum_exits[] = {
    {exit_code::unproven, "The inputs lie outside the range the law is good for; the value is shown, marked."}};
constexpr Text sum_examples[] = {"streetwright sum --list", "streetwright sum lmtd"};

constexpr Operand new_operands[] = {{"FILE", "The build to write.", Fill::file}};
constexpr Option new_options[] = {
    {.name = "--template", .value = "NAME", .says = "The invented car to start from; without it, the first there is."},
    {.name = "--force", .says = "Write over a file that is there."},
};
constexpr Text new_examples[] = {"streetwright new car.toml --template saloon"};

constexpr Operand fields_operands[] = {
    {"PATH", "A field or group: cooling.radiator, wiring.load.NAME.current. Without it, the groups of a build.",
     Fill::word, false}};
constexpr Option fields_options[] = {{.name = "--markdown", .says = "The whole reference as Markdown."}};
constexpr Text fields_examples[] = {"streetwright fields cooling.radiator",
                                    "streetwright fields cooling.radiator.core_width"};

constexpr Option schema_options[] = {{.name = "--typescript", .says = "TypeScript types in place of JSON Schema."}};

constexpr Operand duties_operands[] = {{"BUILD", "A build whose own duties are listed too.", Fill::file, false}};
constexpr Option duties_options[] = {{.name = "--json", .says = "The duties with all their figures as JSON."}};

constexpr Operand convert_operands[] = {
    {"VALUE", "A value with its unit, in quotation marks: \"12.5 psi\", \"17 1/4 in\", \"10 AWG\"."},
    {"UNIT", "The unit wanted; without it, every unit offered for whatever the value may be.", Fill::unit, false},
};
constexpr Text convert_examples[] = {"streetwright convert \"12.5 psi\" kPa", "streetwright convert \"180 degF\""};

constexpr Operand help_operands[] = {{"COMMAND", "The command to explain.", Fill::command, false}};
constexpr Option help_options[] = {{.name = "--markdown", .says = "All commands as Markdown."}};

constexpr Operand man_operands[] = {
    {"COMMAND", "The command; without it, the page of the program itself.", Fill::command, false}};
constexpr Option man_options[] = {{.name = "--all",
                                   .value = "FOLDER",
                                   .says = "Write every page into this folder.",
                                   .fill = Fill::folder,
                                   .alone = true}};

constexpr Text shells[] = {"bash"};
constexpr Operand completion_operands[] = {{"SHELL", "The shell it is for.", Fill::words, true, false, shells}};
constexpr Text completion_examples[] = {"source <(streetwright completion bash)"};

constexpr Command table[] = {
    {.name = "check",
     .summary = "Prove a build: what holds, what fails and what to change",
     .operands = build,
     .options = check_options,
     .text = "Every requirement of every system is looked at in every duty the car will meet. A finding is drawn as a "
             "ruler: the "
             "limit is the tick, which always stands in the same column; the bar comes from the left and ends short of "
             "it by the "
             "margin, or beyond it; the whisker is the doubt. Distance is the margin as a share of the finding's own "
             "scale, in "
             "proportion up to half of it and pressed together beyond.\n\n"
             "holds: a solid bar short of the tick. tight: the whisker crosses it, so the figures do not say which "
             "side. fails: "
             "the bar goes through it, with a notch. unproven: an outline, with the figure that is missing.\n\n"
             "A proof is an aid to judgement and not a certificate.",
     .examples = check_examples,
     .exits = check_exits,
     .run = run_check},
    {.name = "simulate",
     .summary = "Run a build through one duty",
     .operands = build,
     .options = simulate_options,
     .text = "Without --csv: the ports that requirements look at and the states, at some instants, with their lowest "
             "and highest values.",
     .examples = simulate_examples,
     .exits = simulate_exits,
     .run = run_simulate},
    {.name = "survey",
     .summary = "What is still to be measured, in the order of walking round the car",
     .operands = build,
     .options = survey_options,
     .text = "The proof decides what is on it: figures it lacks, those whose doubt decides a finding, and, where "
             "something could not be proved yet, the typical figures it may hang on. Each is told with its tool, how "
             "finely it is to be measured, what stands there now and what it decides. Measured and read back, the "
             "proof is made again: the next survey is shorter.",
     .examples = survey_examples,
     .run = run_survey},
    {.name = "solve",
     .summary = "A setting found instead of guessed, tried on the car",
     .operands = solve_operands,
     .options = solve_options,
     .text = "The setting is looked for by the same functions that judge it, rounded to what a shop can set, and the "
             "car proved with it: what the findings it concerns come to before and after, and what else changes. "
             "Nothing is written unless asked for; without --write the lines to paste are told.",
     .examples = solve_examples,
     .exits = solve_exits,
     .run = run_solve},
    {.name = "faults",
     .summary = "One fault at a time in the wiring, and what it does",
     .operands = faults_operands,
     .options = faults_options,
     .text = "Each run open, each switch and relay stuck, the battery off its posts or the wrong way round: the whole "
             "network is solved with it, and what changed is told: where the current goes instead, which fuse opens, "
             "what burns, what is dead, what stays on.",
     .examples = faults_examples,
     .exits = faults_exits,
     .run = run_faults},
    {.name = "states",
     .summary = "Which load is fed in which state of key and engine",
     .operands = faults_operands,
     .options = states_options,
     .text = "The network solved in the states that strand a car or burn it: cranked, driving, key on with the engine "
             "stopped, key off with the engine turning, hit. What is fed by a way nobody meant shows here.",
     .examples = states_examples,
     .exits = states_exits,
     .run = run_states},
    {.name = "sum",
     .summary = "One law of the trade, alone, with units",
     .operands = sum_operands,
     .options = sum_options,
     .examples = sum_examples,
     .exits = sum_exits,
     .run = run_sum_command},
    {.name = "new",
     .summary = "Write a build to start from",
     .operands = new_operands,
     .options = new_options,
     .text = "The cars of the templates are invented, and every figure in them waits for yours.",
     .examples = new_examples,
     .run = run_new},
    {.name = "fields",
     .summary = "What can stand in a build, with units, range and default",
     .operands = fields_operands,
     .options = fields_options,
     .examples = fields_examples,
     .run = run_fields},
    {.name = "schema", .summary = "JSON Schema of a build", .options = schema_options, .run = run_schema},
    {.name = "duties",
     .summary = "What a car is put through",
     .operands = duties_operands,
     .options = duties_options,
     .run = run_duties_command},
    {.name = "convert",
     .summary = "A value in other units",
     .operands = convert_operands,
     .text = "A temperature and a difference of temperatures are two things: both are shown. Gauge pressure, absolute "
             "pressure and "
             "vacuum are never turned into one another, for that takes the air pressure of the day.",
     .examples = convert_examples,
     .run = run_convert},
    {.name = "ports", .summary = "Which system hands what to which, as Markdown", .run = run_ports},
    {.name = "help",
     .summary = "The commands, or one of them",
     .operands = help_operands,
     .options = help_options,
     .run = run_help},
    {.name = "version", .summary = "The version (also --version)", .run = run_version},
    {.name = "man", .summary = "Manual pages", .operands = man_operands, .options = man_options, .run = run_man},
    {.name = "completion",
     .summary = "Completion of commands and options for a shell",
     .operands = completion_operands,
     .examples = completion_examples,
     .run = run_completion},
};

}  // namespace

std::span<const Command> commands() { return table; }
std::span<const Option> common_options() { return common; }
std::span<const Exit> common_exits() { return common_codes; }

const Command* find_command(std::string_view name) {
  const auto* found = std::find_if(std::begin(table), std::end(table), [&](auto& c) { return c.name == name; });
  return found == std::end(table) ? nullptr : found;
}

std::vector<const Option*> options_of(const Command& c) {
  std::vector<const Option*> all;
  for (auto& o : c.options) all.push_back(&o);
  for (auto& o : common) all.push_back(&o);
  return all;
}

std::vector<Exit> exits_of(const Command& c) {
  std::vector<Exit> all(c.exits.begin(), c.exits.end());
  for (auto& e : common_codes)
    if (std::none_of(all.begin(), all.end(), [&](auto& own) { return own.code == e.code; })) all.push_back(e);
  std::sort(all.begin(), all.end(), [](auto& a, auto& b) { return a.code < b.code; });
  return all;
}

std::string usage_of(const Command& c) {
  std::string text = "streetwright " + std::string(c.name);
  for (auto& o : c.operands) {
    const std::string name = std::string(o.name) + (o.many ? "..." : "");
    text += o.needed ? " " + name : " [" + name + "]";
  }
  for (auto& o : c.options) {
    const std::string name = std::string(o.name) + (o.value.empty() ? "" : " " + std::string(o.value));
    text += (o.needed ? " " + name : " [" + name + "]") + (o.many ? "..." : "");
  }
  return text;
}

}  // namespace sw::cli
