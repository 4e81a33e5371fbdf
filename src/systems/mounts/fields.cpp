#include "systems/mounts/mounts.hpp"

namespace sw::mounts {
namespace {

constexpr Spread by_rule{.absolute = 0.02};  ///< of a rule, in

constexpr FieldInfo table[] = {
    quantity<&Input::span>("span", "front mounts to rear mount", kind::length)
        .in("in")
        .above(10, 100)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Along the car, from the front mounts' line to the mount under the gearbox."),
    quantity<&Input::sag>("sag", "sag of the front mounts", kind::length)
        .in("in")
        .from(0, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 0.05})
        .says("How far the engine sits below the height the gaps were measured or planned at: damper's centre against "
              "new mounts."),
    quantity<&Input::raised>("raised", "front mounts raised", kind::length)
        .may_change()
        .in("in")
        .from(-3, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_rule)
        .says("Spacers under the front mounts since the gaps were measured."),
    quantity<&Input::tail_lift>("tail_lift", "rear mount lifted", kind::length)
        .may_change()
        .in("in")
        .from(-3, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_rule)
        .says("Shims under the gearbox mount since the gaps were measured; below nothing where it was lowered."),
    quantity<&Input::intake_raised>("intake_raised", "intake raised", kind::length)
        .may_change()
        .in("in")
        .from(-2, 4)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_rule)
        .says("A spacer under carburettor or throttle body that was not there when stacks and cables were measured."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::mounts
