#include "systems/fuel/fuel.hpp"

namespace sw::fuel {
namespace {

constexpr FieldInfo table[] = {
    quantity<&Input::tank>("tank", "tank", kind::volume).in("gal").above(1, 100).says("What the tank holds when full."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::fuel
