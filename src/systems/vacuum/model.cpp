#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

/// What stands in the booster's reservoir, with the engine idling.
constexpr Port writes[] = {{"vacuum.booster", &kind::vacuum, "inHg", "vacuum at the booster"}};
void evaluate(const void* model, View& v) { v.set(0, static_cast<const Model*>(model)->idle_pa); }
constexpr Block all[] = {{"vacuum.supply", {}, writes, {}, {}, evaluate}};

}  // namespace

Model System::resolve(const Input& in, Resolver& r) { return {r.need(in.idle, "vacuum.supply")}; }
std::span<const Block> System::blocks() { return all; }
std::span<const Requirement> System::requirements() { return {}; }

}  // namespace sw::vacuum
