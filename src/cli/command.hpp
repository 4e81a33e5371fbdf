#pragma once
// The commands and their options, declared once (commands.cpp): parsing, help, man pages, completion and docs/cli.md
// are made from this table and from nothing else.
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "cli/look.hpp"

namespace sw::cli {

/// What can stand in an operand or an option's value, for completion.
enum class Fill : unsigned char { word, file, folder, command, duty, sum, words, unit, solver };

struct Option {
  std::string_view name;        ///< `--duty`
  std::string_view value = {};  ///< `DUTY`; empty: it takes none
  std::string_view says = {};
  Fill fill = Fill::word;
  std::span<const std::string_view> words = {};  ///< the only values there are, with Fill::words
  bool many = false;                             ///< may stand more than once
  std::string_view letter = {};                  ///< `-h`
  bool alone = false;                            ///< with it no operand is needed
  bool needed = false;                           ///< the command says so where it is missing
};

struct Operand {
  std::string_view name, says;
  Fill fill = Fill::word;
  bool needed = true, many = false;
  std::span<const std::string_view> words = {};
};

struct Exit {
  int code;
  std::string_view says;
};

struct Args;
struct Console;

struct Command {
  std::string_view name, summary;
  std::span<const Operand> operands = {};
  std::span<const Option> options = {};
  std::string_view text = {};  ///< paragraphs, apart by an empty line
  std::span<const std::string_view> examples = {};
  std::span<const Exit> exits = {};
  int (*run)(const Args&, Console&) = nullptr;
};

std::span<const Command> commands();
/// Options every command takes.
std::span<const Option> common_options();
/// Exit codes every command can end with.
std::span<const Exit> common_exits();
const Command* find_command(std::string_view name);
/// Its own options, then the common ones.
std::vector<const Option*> options_of(const Command& c);
/// Its own exit codes with the common ones it does not name, by code.
std::vector<Exit> exits_of(const Command& c);
/// `streetwright check BUILD [--json] [--duty DUTY] …`
std::string usage_of(const Command& c);

/// A command line, read: only what the table allows.
struct Args {
  const Command* command = nullptr;
  std::vector<std::string> operands;
  std::vector<std::pair<std::string_view, std::string>> options;  ///< by the table's name, in order

  bool has(std::string_view option) const;
  /// The value of the last one given.
  std::optional<std::string> value(std::string_view option) const;
  std::vector<std::string> values(std::string_view option) const;
};

/// What is wrong with a command line and what to do, in words.
struct UsageFault {
  std::string problem, hint;
};

/// `words` are those after the program's own name. Empty, or only `--help`: the help command; `--version`: that one.
std::variant<Args, UsageFault> parse_args(std::span<const std::string> words);
Colour colour_of(const Args& args);

/// Where a command writes. All of it is kept and written at the end, so that tests read it, a reader that went away is
/// noticed once, and nothing comes half.
struct Console {
  Look look;      ///< of `out`
  Look err_look;  ///< of `err`
  std::string out, err;
  /// A line on the terminal that is replaced by the next and does not stay; empty: erase. Null where nobody looks.
  void (*progress)(std::string_view line) = nullptr;
};

/// Exit codes. Of several, the gravest counts: our own fault, bad input, something fails, something unproven.
namespace exit_code {
inline constexpr int good = 0, fails = 1, bad_input = 2, unproven = 3, own_fault = 70;
}
int gravest(int a, int b);

}  // namespace sw::cli
