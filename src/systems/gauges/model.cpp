#include "systems/gauges/gauges.hpp"

namespace sw::gauges {

std::span<const FieldInfo> Input::fields() { return {}; }
Model System::resolve(const Input&, Resolver&) { return {}; }
std::span<const Block> System::blocks() { return {}; }
std::span<const Requirement> System::requirements() { return {}; }

}  // namespace sw::gauges
