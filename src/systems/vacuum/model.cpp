#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {

Model System::resolve(const Input&, Resolver&) { return {}; }
std::span<const Block> System::blocks() { return {}; }
std::span<const Requirement> System::requirements() { return {}; }

}  // namespace sw::vacuum
