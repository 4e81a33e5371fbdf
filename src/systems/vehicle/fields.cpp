#include "systems/vehicle/vehicle.hpp"

namespace sw::vehicle {
namespace {

constexpr FieldInfo table[] = {
    text<&Input::title>("title", "title").says("What the car is called in the shop."),
    choice<&Input::system_voltage>("system_voltage", "system voltage", volts_names)
        .decides_harm()
        .says("Nominal voltage the whole car is wired for."),
    choice<&Input::earth>("earth", "earth", earth_names)
        .decides_harm()
        .says("Battery post that is joined to the body."),
    quantity<&Input::weight>("weight", "weight", kind::mass)
        .in("lb")
        .above(500, 20000)
        .says("Weight as driven, with driver and fuel."),
    quantity<&Input::drag_area>("drag_area", "drag area", kind::area)
        .in("m2")
        .above(0.2, 4)
        .or_else(0.95)
        .says("Drag coefficient times frontal area.")
        .after("common practice: saloons of the 1950s to 1970s, 0.8 to 1.1 m2"),
    number<&Input::rolling>("rolling", "rolling resistance")
        .above(0.003, 0.06)
        .or_else(0.013)
        .says("Rolling resistance over weight.")
        .after("common practice: radial 0.011, cross-ply 0.015"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::vehicle
