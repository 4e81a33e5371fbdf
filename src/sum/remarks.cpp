#include <algorithm>

#include "sum/sum.hpp"

namespace sw {

bool Remarks::given(std::string_view key) const { return std::find(keys_.begin(), keys_.end(), key) != keys_.end(); }

void Remarks::fault(std::string_view key, std::string problem, std::string hint) {
  faults_.push_back({std::string(key), std::move(problem), std::move(hint)});
}

void Remarks::need(std::string_view key, std::string why) {
  if (!given(key)) fault(key, "missing: " + why);
}

void Remarks::outside(std::string sentence) { outside_.push_back(std::move(sentence)); }
void Remarks::note(std::string sentence) { notes_.push_back(std::move(sentence)); }

}  // namespace sw
