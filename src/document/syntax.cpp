#include "document/syntax.hpp"

#include <algorithm>

#include "document/document.hpp"

namespace sw {

Lines::Lines(std::string_view text) : size_(text.size()) {
  starts_.push_back(text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0);
  for (std::size_t i = 0; i < text.size(); ++i)
    if (text[i] == '\n') starts_.push_back(i + 1);
}

std::size_t Lines::offset(std::uint32_t line, std::uint32_t column) const {
  if (line == 0 || column == 0) return 0;
  return std::min(start(line) + column - 1, size_);
}

Place Lines::place(std::size_t offset, int file) const {
  auto after = std::upper_bound(starts_.begin(), starts_.end(), offset);
  auto line = after == starts_.begin() ? std::size_t{1} : static_cast<std::size_t>(after - starts_.begin());
  auto column = offset < starts_[line - 1] ? std::size_t{1} : offset - starts_[line - 1] + 1;
  auto l = static_cast<std::uint32_t>(line), c = static_cast<std::uint32_t>(column);
  return {file, l, c, l, c};
}

Node parse_text(const std::string& text, int file, bool json, Diagnostics& faults) {
  if (text.size() > text_limit::bytes) {
    faults.fault({.file = file}, {}, "the text is larger than 4 MiB",
                 "a build is a few dozen kilobytes: is this the right file?");
    return {};
  }
  return json ? parse_json(text, file, faults) : parse_toml(text, file, faults);
}

}  // namespace sw
