// Words of a command line against the table of commands.
#include <algorithm>

#include "cli/command.hpp"
#include "field/tree.hpp"

namespace sw::cli {
namespace {

std::string quoted(std::string_view text) { return '"' + std::string(text) + '"'; }

std::string did_you_mean(std::string_view given, const std::vector<std::string_view>& names, std::string otherwise) {
  const auto near = nearest(given, names);
  return near.empty() ? std::move(otherwise) : "did you mean " + std::string(near) + "?";
}

std::string list_of(std::span<const std::string_view> names) {
  std::string all;
  for (auto& name : names) all += (all.empty() ? "" : ", ") + std::string(name);
  return all;
}

/// `-10 degC` is a value, `-h` an option, `-` a file.
bool is_option(std::string_view word) {
  return word.size() > 1 && word[0] == '-' && !(word[1] >= '0' && word[1] <= '9') && word[1] != '.';
}

class Reader {
 public:
  Reader(const Command& command, std::span<const std::string> words) : words_(words) { args_.command = &command; }

  std::variant<Args, UsageFault> read() {
    bool only_operands = false;
    while (!words_.empty() && !fault_) {
      const std::string& word = words_.front();
      words_ = words_.subspan(1);
      if (!only_operands && word == "--")
        only_operands = true;
      else if (!only_operands && is_option(word))
        option(word);
      else
        operand(word);
    }
    if (!fault_ && !args_.has("--help")) missing();
    if (fault_) return *fault_;
    return args_;
  }

 private:
  const Command& command() const { return *args_.command; }
  void fail(std::string problem, std::string hint) {
    if (!fault_) fault_ = {std::string(command().name) + ": " + std::move(problem), std::move(hint)};
  }
  std::string see_help() const { return "see streetwright help " + std::string(command().name); }

  void option(std::string_view word) {
    const auto equals = word.find('=');
    const std::string_view name = word.substr(0, equals);
    std::vector<std::string_view> names;
    const Option* found = nullptr;
    for (auto* o : options_of(command())) {
      names.push_back(o->name);
      if (o->name == name || (!o->letter.empty() && o->letter == name)) found = o;
    }
    if (!found) return fail("there is no option " + quoted(name), did_you_mean(name, names, see_help()));
    if (!found->many && args_.has(found->name)) return fail(std::string(found->name) + " is given twice", "keep one");
    if (found->value.empty()) {
      if (equals != std::string_view::npos) return fail(std::string(found->name) + " takes no value", "leave it out");
      args_.options.emplace_back(found->name, "");
      return;
    }
    value(*found, equals == std::string_view::npos ? std::nullopt : std::optional(word.substr(equals + 1)));
  }

  void value(const Option& o, std::optional<std::string_view> given) {
    std::string text;
    if (given) {
      text = *given;
    } else if (words_.empty() || is_option(words_.front())) {
      return fail(std::string(o.name) + " needs a value",
                  "write " + std::string(o.name) + " " + (o.words.empty() ? std::string(o.value) : list_of(o.words)));
    } else {
      text = words_.front();
      words_ = words_.subspan(1);
    }
    check_word(o.name, text, o.words);
    args_.options.emplace_back(o.name, std::move(text));
  }

  void operand(const std::string& word) {
    const auto operands = command().operands;
    const std::size_t at = args_.operands.size();
    if (operands.empty() || (at >= operands.size() && !operands.back().many))
      return fail(quoted(word) + " is one word too many", "write " + usage_of(command()));
    check_word(operands[std::min(at, operands.size() - 1)].name, word,
               operands[std::min(at, operands.size() - 1)].words);
    args_.operands.push_back(word);
  }

  void check_word(std::string_view what, std::string_view word, std::span<const std::string_view> words) {
    if (words.empty() || std::find(words.begin(), words.end(), word) != words.end()) return;
    fail(std::string(what) + " cannot be " + quoted(word),
         did_you_mean(word, {words.begin(), words.end()}, "it is one of " + list_of(words)));
  }

  void missing() {
    const auto operands = command().operands;
    for (std::size_t i = args_.operands.size(); i < operands.size(); ++i)
      if (operands[i].needed && !excused())
        return fail(std::string(operands[i].name) + " is missing", "write " + usage_of(command()));
  }
  bool excused() const {
    auto alone = [&](const Option& o) { return o.alone && args_.has(o.name); };
    return std::any_of(command().options.begin(), command().options.end(), alone);
  }

  std::span<const std::string> words_;
  Args args_;
  std::optional<UsageFault> fault_;
};

std::variant<Args, UsageFault> no_command(std::span<const std::string> words) {
  const std::string& word = words.front();
  if (word == "--help" || word == "-h") return Reader(*find_command("help"), words.subspan(1)).read();
  if (word == "--version") return Reader(*find_command("version"), words.subspan(1)).read();
  std::vector<std::string_view> names;
  for (auto& c : commands()) names.push_back(c.name);
  const std::string see = "streetwright help lists the commands";
  if (is_option(word)) return UsageFault{"a command comes first, before " + quoted(word), see};
  return UsageFault{"there is no command " + quoted(word), did_you_mean(word, names, see)};
}

}  // namespace

bool Args::has(std::string_view option) const {
  return std::any_of(options.begin(), options.end(), [&](auto& o) { return o.first == option; });
}

std::optional<std::string> Args::value(std::string_view option) const {
  const auto all = values(option);
  return all.empty() ? std::nullopt : std::optional(all.back());
}

std::vector<std::string> Args::values(std::string_view option) const {
  std::vector<std::string> all;
  for (auto& [name, value] : options)
    if (name == option) all.push_back(value);
  return all;
}

Colour colour_of(const Args& args) {
  const auto value = args.value("--color");
  return !value || *value == "auto" ? Colour::automatic : *value == "always" ? Colour::always : Colour::never;
}

std::variant<Args, UsageFault> parse_args(std::span<const std::string> words) {
  if (words.empty()) return Args{.command = find_command("help"), .operands = {}, .options = {}};
  const Command* command = find_command(words.front());
  if (!command) return no_command(words);
  auto read = Reader(*command, words.subspan(1)).read();
  auto* args = std::get_if<Args>(&read);
  if (!args || !args->has("--help") || command->name == "help") return read;
  // `check --help` is `help check`.
  Args help{.command = find_command("help"), .operands = {std::string(command->name)}, .options = args->options};
  return help;
}

}  // namespace sw::cli
