#include "systems/vehicle/vehicle.hpp"

namespace sw::vehicle {
namespace {

template <auto X>
consteval FieldInfo wheel(std::string_view key, std::string_view label) {
  return quantity<X>(key, label, kind::mass)
      .in("lb")
      .above(50, 6000)
      .spread(Source::measured, {.share = 0.01})
      .says("What stands on this wheel, all four scales level, as driven with driver and fuel; all four or none.");
}
constexpr FieldInfo corner_table[] = {
    wheel<&Corners::front_left>("front_left", "front left wheel"),
    wheel<&Corners::front_right>("front_right", "front right wheel"),
    wheel<&Corners::rear_left>("rear_left", "rear left wheel"),
    wheel<&Corners::rear_right>("rear_right", "rear right wheel"),
};
static_assert(std::size(corner_table) == member_count<Corners>());

constexpr Spread by_tape{.absolute = 1};  ///< in

constexpr FieldInfo part_table[] = {
    choice<&Part::moved>("moved", "moved", moved_names)
        .or_else(0, Source::chosen)
        .says("Put in or taken out since the car was weighed; one that changes its place is two parts, out here, in "
              "there."),
    quantity<&Part::mass>("mass", "weight", kind::mass)
        .found(Station::bench)
        .with(Tool::scales)
        .in("lb")
        .above(0, 4000)
        .says("Its weight, by scale or data sheet."),
    quantity<&Part::behind>("behind", "behind the front axle", kind::length)
        .may_change()
        .in("in")
        .from(-100, 400)
        .spread(Source::measured, by_tape)
        .says("Its centre to the rear from the front axle, below nothing ahead of it."),
    quantity<&Part::side>("side", "to the right", kind::length)
        .may_change()
        .in("in")
        .from(-60, 60)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_tape)
        .says("Its centre to the car's right of the middle, below nothing to the left."),
    quantity<&Part::height>("height", "over the road", kind::length)
        .in("in")
        .from(0, 120)
        .or_else(24)
        .spread(Source::typical, {.absolute = 10})
        .spread(Source::measured, by_tape)
        .says("Its centre over the road.")
        .after("common practice: what sits beside engine or under seats"),
};
static_assert(std::size(part_table) == member_count<Part>());

constexpr FieldInfo table[] = {
    text<&Input::title>("title", "title")
        .found(Station::desk)
        .with(Tool::eye)
        .says("What the car is called in the shop."),
    choice<&Input::system_voltage>("system_voltage", "system voltage", volts_names)
        .found(Station::electrics)
        .decides_harm()
        .says("Nominal voltage the whole car is wired for."),
    choice<&Input::earth>("earth", "earth", earth_names)
        .found(Station::electrics)
        .with(Tool::ohmmeter)
        .decides_harm()
        .says("Battery post that is joined to the body."),
    quantity<&Input::weight>("weight", "weight", kind::mass)
        .in("lb")
        .above(500, 20000)
        .says("Weight as driven, with driver and fuel, as weighed: before the parts under `part` were moved."),
    quantity<&Input::drag_area>("drag_area", "drag area", kind::area)
        .found(Station::desk)
        .with(Tool::road)
        .in("m2")
        .above(0.2, 4)
        .or_else(0.95)
        .says("Drag coefficient times frontal area.")
        .after("common practice: saloons of the 1950s to 1970s, 0.8 to 1.1 m2"),
    number<&Input::rolling>("rolling", "rolling resistance")
        .found(Station::desk)
        .with(Tool::road)
        .above(0.003, 0.06)
        .or_else(0.013)
        .says("Rolling resistance over weight.")
        .after("common practice: radial 0.011, cross-ply 0.015"),
    quantity<&Input::wheelbase>("wheelbase", "wheelbase", kind::length)
        .in("in")
        .above(50, 250)
        .spread(Source::measured, {.absolute = 0.25})
        .spread(Source::stated, {.absolute = 0.5})
        .says("Front to rear axle."),
    number<&Input::front_share>("front_share", "front's share")
        .found(Station::standing)
        .with(Tool::scales)
        .from(0.3, 0.75)
        .spread(Source::measured, {.absolute = 0.005})
        .spread(Source::stated, {.absolute = 0.01})
        .says("Share of the weight as driven that stands on the front axle."),
    quantity<&Input::centre_height>("centre_height", "height of the centre of mass", kind::length)
        .found(Station::standing)
        .with(Tool::scales)
        .in("in")
        .above(8, 60)
        .or_else(21)
        .spread(Source::typical, {.absolute = 2})
        .spread(Source::stated, {.absolute = 1})
        .spread(Source::measured, {.absolute = 0.5})
        .says("Centre of mass over the road, as driven: weigh the front axle level and with the rear lifted.")
        .after("common practice: saloons 19 to 23 in; pickups and vans stand higher, measure those"),
    quantity<&Input::laden_weight>("laden_weight", "weight laden", kind::mass)
        .in("lb")
        .above(500, 30000)
        .says("Weight with all it is meant to carry; without it only the car as driven is looked at."),
    number<&Input::laden_front_share>("laden_front_share", "front's share laden")
        .found(Station::standing)
        .with(Tool::scales)
        .from(0.2, 0.75)
        .spread(Source::measured, {.absolute = 0.005})
        .spread(Source::stated, {.absolute = 0.01})
        .says("Share of the laden weight that stands on the front axle."),
    quantity<&Input::laden_centre_height>("laden_centre_height", "its height laden", kind::length)
        .found(Station::standing)
        .with(Tool::scales)
        .in("in")
        .above(8, 80)
        .spread(Source::stated, {.absolute = 1})
        .says("Centre of mass over the road, laden; that as driven where it is not given."),
    group<&Input::corner>("corner", "wheels weighed")
        .says("What stands on each wheel: instead of weight and front's share."),
    quantity<&Input::track>("track", "track", kind::length)
        .in("in")
        .above(20, 100)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Middle of one tyre to middle of the other, mean of both axles: for parts beside the middle."),
    list<&Input::part>("part", "parts moved")
        .says("Parts put in or taken out since the car was weighed, by any names: engine, battery, tank, seat."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Corners::fields() { return corner_table; }
std::span<const FieldInfo> Part::fields() { return part_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::vehicle
