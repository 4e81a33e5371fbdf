#include "cli/run.hpp"

#include <algorithm>
#include <array>
#include <exception>

#include "cli/page.hpp"
#include "field/tree.hpp"

namespace sw::cli {

int complain(Console& console, std::string_view problem, std::string_view hint) {
  Page page(console.err_look);
  std::string line = "streetwright: " + clean(problem);
  if (!hint.empty()) line += "; " + clean(hint);
  page.line(line);
  console.err += page.take();
  return exit_code::bad_input;
}

int unknown_command(std::string_view name, Console& console) {
  std::vector<std::string_view> names;
  for (auto& c : commands()) names.push_back(c.name);
  const auto near = nearest(name, names);
  return complain(console, "there is no command \"" + std::string(name) + "\"",
                  near.empty() ? "streetwright help lists the commands" : "did you mean " + std::string(near) + "?");
}

int own_fault(Console& console, std::string_view what) {
  Page page(console.err_look);
  page.line("streetwright: a fault of the program itself, please report this line: " + clean(what));
  console.err += page.take();
  return exit_code::own_fault;
}

int gravest(int a, int b) {
  static constexpr std::array rising = {exit_code::good, exit_code::unproven, exit_code::fails, exit_code::bad_input,
                                        exit_code::own_fault};
  const auto rank = [](int code) { return std::find(rising.begin(), rising.end(), code) - rising.begin(); };
  return rank(a) >= rank(b) ? a : b;
}

int run(const std::vector<std::string>& words, const Surroundings& out, const Surroundings& err, Console& console) {
  console.look = look_for(out);
  console.err_look = look_for(err);
  const auto read = parse_args(words);
  if (auto* fault = std::get_if<UsageFault>(&read)) return complain(console, fault->problem, fault->hint);
  const Args& args = std::get<Args>(read);
  const bool ascii = args.has("--ascii");
  console.look = look_for(out, colour_of(args), ascii);
  console.err_look = look_for(err, colour_of(args), ascii);
  try {
    return args.command->run(args, console);
  } catch (const std::exception& e) {
    return own_fault(console, std::string(args.command->name) + ": " + e.what());
  } catch (...) {
    return own_fault(console, std::string(args.command->name) + ": unknown exception");
  }
}

}  // namespace sw::cli
