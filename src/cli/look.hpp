#pragma once
// How a page is shown: how wide, in which characters, in colour or not. Decided once, from the terminal and the
// environment, and handed to whatever draws.
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace sw::cli {

inline constexpr int usual_width = 80, least_width = 40, most_width = 200;

struct Look {
  int width = usual_width;  ///< columns
  bool unicode = true;      ///< else plain ASCII
  bool colour = false;      ///< never the only sign of anything
};

enum class Colour : unsigned char { automatic, always, never };

/// What the look depends on; in tests something else than this process.
struct Surroundings {
  std::function<std::optional<std::string>(std::string_view name)> variable;
  bool terminal = false;  ///< the page goes to one
  int columns = 0;        ///< of that terminal; 0: unknown
};
/// Of the file descriptor `fd` of this process.
Surroundings surroundings(int fd);

/// `COLUMNS` before the terminal's own width before 80; UTF-8 by LC_ALL, LC_CTYPE, LANG (the first that is set);
/// colour on a terminal unless NO_COLOR is set, or as asked for.
Look look_for(const Surroundings& around, Colour colour = Colour::automatic, bool ascii = false);

}  // namespace sw::cli
