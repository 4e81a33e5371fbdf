#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

constexpr FieldInfo table[] = {
    quantity<&Input::idle>("idle", "idle vacuum", kind::vacuum)
        .in("inHg")
        .from(0, 25)
        .says("Manifold vacuum at a hot idle, in gear where the gearbox is automatic."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::vacuum
