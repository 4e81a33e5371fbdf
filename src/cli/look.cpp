#include "cli/look.hpp"

#include <sys/ioctl.h>
#include <unistd.h>

#include <algorithm>
#include <charconv>
#include <cstdlib>

namespace sw::cli {
namespace {

/// A variable that is set and not empty.
std::string set_text(const Surroundings& around, std::string_view name) { return around.variable(name).value_or(""); }

bool says_utf8(std::string locale) {
  for (char& c : locale)
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  return locale.find("utf-8") != std::string::npos || locale.find("utf8") != std::string::npos;
}

bool unicode_locale(const Surroundings& around) {
  for (auto* name : {"LC_ALL", "LC_CTYPE", "LANG"})
    if (const auto locale = set_text(around, name); !locale.empty()) return says_utf8(locale);
  return false;
}

int width_of(const Surroundings& around) {
  const std::string text = set_text(around, "COLUMNS");
  int columns = 0;
  const auto read = std::from_chars(text.data(), text.data() + text.size(), columns);
  if (read.ec != std::errc{} || read.ptr != text.data() + text.size() || columns <= 0) columns = around.columns;
  return columns > 0 ? std::clamp(columns, least_width, most_width) : usual_width;
}

bool coloured(const Surroundings& around, Colour colour) {
  if (colour != Colour::automatic) return colour == Colour::always;
  return around.terminal && set_text(around, "NO_COLOR").empty() && set_text(around, "TERM") != "dumb";
}

}  // namespace

Surroundings surroundings(int fd) {
  Surroundings around;
  around.variable = [](std::string_view name) -> std::optional<std::string> {
    const char* value = std::getenv(std::string(name).c_str());
    return value ? std::optional<std::string>(value) : std::nullopt;
  };
  around.terminal = isatty(fd) == 1;
  winsize size{};
  if (around.terminal && ioctl(fd, TIOCGWINSZ, &size) == 0) around.columns = size.ws_col;
  return around;
}

Look look_for(const Surroundings& around, Colour colour, bool ascii) {
  return {width_of(around), !ascii && unicode_locale(around), coloured(around, colour)};
}

}  // namespace sw::cli
