#pragma once
// The models of what stands beside the tubes.
#include "systems/tubes/tubes.hpp"

namespace sw::tubes {

std::vector<HotModel> hot_parts(const Input& in, Resolver& r);
std::vector<StockModel> sticks(const Input& in, Resolver& r);
std::vector<HoseModel> hoses(const Input& in, Resolver& r);
std::vector<BracketModel> brackets(const Input& in, Resolver& r);
/// The path a member's key hangs on: of `a.b.c` its `a.b`.
std::string group_of(const std::string& path);

}  // namespace sw::tubes
