#pragma once
// Text laid out for a terminal: wrapped by what is seen, not by bytes; styles marked inside the text and turned into
// colour only at the end; in ASCII surroundings every sign of ours has its plain spelling.
#include <string>
#include <string_view>
#include <vector>

#include "cli/look.hpp"

namespace sw::cli {

/// Styles: a byte that takes no room, put before the text; `plain` ends it.
namespace style {
inline constexpr std::string_view strong = "\x01", faint = "\x02", harm = "\x03", touch = "\x04", plain = "\x05";
}
std::string strong(std::string_view text);
std::string faint(std::string_view text);
/// What hurts or fails.
std::string harm(std::string_view text);
/// What the reader can take hold of: a path, an id, a part to change.
std::string touch(std::string_view text);

/// Text in which no line may break: a number and its unit.
std::string together(std::string_view text);

/// Text of the user's or of a file, fit to be shown: without control characters.
std::string clean(std::string_view text);
/// Our signs spelled plainly (`±` as `+/-`), anything else beyond ASCII as `?`.
std::string to_ascii(std::string_view text);
/// Columns the text takes on a terminal; style bytes take none.
int seen(std::string_view text);
/// Padded with blanks to `columns`, on the right or on the left; longer text stays as it is.
std::string pad(std::string_view text, int columns);
std::string pad_left(std::string_view text, int columns);
/// Lines of at most `columns`, broken at blanks; a word longer than a line is cut, after a dot
/// where it has one. Later lines begin with `hang`
/// blanks. Never empty.
std::vector<std::string> wrap(std::string_view text, int columns, int hang = 0);

class Page {
 public:
  explicit Page(const Look& look) : look_(look) {}
  const Look& look() const { return look_; }

  /// An empty line; never two of them together.
  void space();
  /// Text wrapped from column `indent` on.
  void text(std::string_view text, int indent = 0, int hang = 0);
  /// `left` in front, and text wrapped from column `column` on beside and below it.
  void beside(std::string_view left, int column, std::string_view text, int hang = 0);
  /// As it is, whatever its width: tables already laid out.
  void line(std::string_view text);
  /// The page, styles turned into colour or taken out.
  std::string take();

 private:
  std::string fit(std::string_view text) const { return look_.unicode ? std::string(text) : to_ascii(text); }

  Look look_;
  std::string out_;
};

}  // namespace sw::cli
