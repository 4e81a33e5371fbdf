#include "field/evidence.hpp"

namespace sw {

std::optional<Source> find_source(std::string_view name) {
  for (std::size_t i = 0; i < source_names.size(); ++i)
    if (source_names[i] == name) return static_cast<Source>(i);
  return std::nullopt;
}

std::string evidence_words(const Evidence& e) {
  std::string s(name_of(e.source));
  if (!e.part.empty()) s += " of " + e.part;
  if (e.defaulted) s += ", nobody gave it";
  return s;
}

}  // namespace sw
