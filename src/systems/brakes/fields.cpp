#include "systems/brakes/brakes.hpp"

namespace sw::brakes {
namespace {

constexpr FieldInfo table[] = {
    number<&Input::pedal_ratio>("pedal_ratio", "pedal ratio").may_change().from(1, 10).says("Foot travel over push-rod travel."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::brakes
