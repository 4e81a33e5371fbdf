#include "systems/fuel/fuel.hpp"

namespace sw::fuel {

Model System::resolve(const Input&, Resolver&) { return {}; }
std::span<const Block> System::blocks() { return {}; }
std::span<const Requirement> System::requirements() { return {}; }

}  // namespace sw::fuel
