#pragma once
// The data the program ships (stock/), embedded at build time.
#include <span>
#include <string_view>

namespace sw {

struct StockText {
  std::string_view name;  ///< path below stock/: `duties/hot-idle.toml`
  std::string_view text;
};
std::span<const StockText> stock_texts();
/// The text of one stock file; empty where there is none.
std::string_view stock_text(std::string_view name);

}  // namespace sw
