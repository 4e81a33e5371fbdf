#include "systems/wheels/wheels.hpp"

namespace sw::wheels {
namespace {

constexpr Spread by_rule{.absolute = 0.02};  ///< of a rule or a template held by hand, in

constexpr FieldInfo axle_table[] = {
    quantity<&Axle::barrel_radius>("barrel_radius", "barrel inside", kind::length)
        .found(Station::wheels_off)
        .decides_harm()
        .in("in")
        .above(3, 15)
        .spread(Source::measured, by_rule)
        .says("Inside radius of the wheel where the caliper sits, balance weights in it counted; the rim's nominal "
              "diameter does not tell it."),
    quantity<&Axle::caliper_radius>("caliper_radius", "caliper outside", kind::length)
        .found(Station::wheels_off)
        .decides_harm()
        .in("in")
        .above(2, 15)
        .spread(Source::measured, by_rule)
        .says("From the hub's centre to the outermost point of the caliper, bridge and bolts counted."),
    quantity<&Axle::spoke_gap>("spoke_gap", "caliper to spokes", kind::length)
        .found(Station::wheels_off)
        .in("in")
        .from(-3, 6)
        .spread(Source::measured, by_rule)
        .says("From the caliper's outer face to the back of the spokes, wheel on its hub; below nothing they meet."),
    quantity<&Axle::lip_gap>("lip_gap", "tyre to lip before", kind::length)
        .found(Station::standing)
        .with(Tool::rule)
        .in("in")
        .from(-2, 12)
        .spread(Source::measured, {.absolute = 0.05})
        .says("Least gap of tyre to fender lip at full bump, before any of the changes below."),
    quantity<&Axle::lock_gap>("lock_gap", "the same at full lock", kind::length)
        .found(Station::standing)
        .with(Tool::rule)
        .in("in")
        .from(-2, 12)
        .spread(Source::measured, {.absolute = 0.05})
        .says("Least gap of tyre to anything at full lock and half bump, before the changes."),
    quantity<&Axle::hub_outward>("hub_outward", "hub moved out", kind::length)
        .may_change()
        .in("in")
        .from(-3, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_rule)
        .says("How far a rotor's hat, a spacer or another hub moves the wheel's face out on one side."),
    quantity<&Axle::lip_inward>("lip_inward", "lip come nearer", kind::length)
        .in("in")
        .from(-3, 6)
        .or_else(0, Source::chosen)
        .says("How much nearer tyre and lip come because the car stands lower."),
    quantity<&Axle::wheel_outward>("wheel_outward", "wheel farther out", kind::length)
        .may_change()
        .in("in")
        .from(-4, 4)
        .or_else(0, Source::chosen)
        .spread(Source::measured, by_rule)
        .says("How much farther out the new wheel and tyre reach: less back spacing, more width."),
};
static_assert(std::size(axle_table) == member_count<Axle>());

constexpr FieldInfo tyre_table[] = {
    text<&Tyre::size>("size", "size").says("As it stands on the tyre: 205/70R14, 31x10.5R15."),
    quantity<&Tyre::load>("load", "load each", kind::mass)
        .with(Tool::eye)
        .decides_harm()
        .in("lb")
        .above(200, 5000)
        .says("Greatest load of one tyre, as it stands on it or by its load index."),
    choice<&Tyre::speed>("speed", "speed letter", speed_names).decides_harm().says("The letter after the load index."),
    quantity<&Tyre::age>("age", "age", kind::time)
        .with(Tool::eye)
        .decides_harm()
        .in("year")
        .from(0, 60)
        .spread({})
        .says("By the week and year in its date code; that of the oldest, the spare too."),
};
static_assert(std::size(tyre_table) == member_count<Tyre>());

constexpr FieldInfo table[] = {
    group<&Input::front>("front", "front wheels").says("What the front wheels go over and pass by."),
    group<&Input::rear>("rear", "rear wheels").says("The same behind."),
    group<&Input::tyre>("tyre", "tyres").says("The tyres, alike on all wheels."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Axle::fields() { return axle_table; }
std::span<const FieldInfo> Tyre::fields() { return tyre_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::wheels
