#include "field/stock.hpp"

namespace sw {

std::string_view stock_text(std::string_view name) {
  for (auto& t : stock_texts())
    if (t.name == name) return t.text;
  return {};
}

}  // namespace sw
