#include "systems/wheels/wheels.hpp"

namespace sw::wheels {
namespace {

constexpr FieldInfo table[] = {
    quantity<&Input::rim_width>("rim_width", "rim width", kind::length).in("in").above(3, 14).says("Width of the rim between its bead seats."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::wheels
