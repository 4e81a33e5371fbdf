#pragma once
// The two syntaxes a text may stand in, each read into the same tree, and places in a text.
#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "field/tree.hpp"

namespace sw {

/// Limits that no build comes near; beyond them a text is refused, so that none can exhaust the stack or the patience.
namespace text_limit {
inline constexpr std::size_t bytes = std::size_t{4} << 20;
inline constexpr std::size_t nesting = 32;      ///< brackets one in another
inline constexpr std::size_t key_parts = 32;    ///< dots in one key
inline constexpr std::size_t entries = 20'000;  ///< of one table
}  // namespace text_limit

/// One syntax fault leaves an empty table.
Node parse_toml(std::string_view text, int file, Diagnostics& faults);
Node parse_json(std::string_view text, int file, Diagnostics& faults);

/// Lines and columns (from 1, in bytes; a byte order mark is not counted) to and from offsets.
class Lines {
 public:
  explicit Lines(std::string_view text);
  std::size_t offset(std::uint32_t line, std::uint32_t column) const;
  /// A place of no extent at an offset.
  Place place(std::size_t offset, int file) const;
  std::size_t start(std::uint32_t line) const { return line - 1 < starts_.size() ? starts_[line - 1] : size_; }

 private:
  std::vector<std::size_t> starts_;
  std::size_t size_;
};

inline constexpr std::string_view byte_order_mark = "\xEF\xBB\xBF";

}  // namespace sw
