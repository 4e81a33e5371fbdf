#include "systems/mass/mass.hpp"

namespace sw::mass {
namespace {

constexpr FieldInfo axle_table[] = {
    quantity<&Axle::rating>("rating", "axle's rating", kind::mass)
        .with(Tool::eye)
        .decides_harm()
        .in("lb")
        .above(200, 20000)
        .spread({})
        .says("What it may carry, by the plate or the maker's book: the least of axle, springs and wheels."),
    quantity<&Axle::wheel_rate>("wheel_rate", "rate at the wheel", kind::spring_rate)
        .in("lbf/in")
        .above(20, 3000)
        .spread(Source::measured, {.share = 0.05})
        .says("Force on one wheel for its rise: spring's rate x (spring's travel over the wheel's) squared; read it by "
              "adding weight over the axle."),
};
static_assert(std::size(axle_table) == member_count<Axle>());

constexpr FieldInfo table[] = {
    group<&Input::front>("front", "front axle").says("What the front axle may carry, and its springs."),
    group<&Input::rear>("rear", "rear axle").says("The same of the rear axle."),
    quantity<&Input::height_within>("height_within", "height within", kind::length)
        .in("in")
        .above(0, 6)
        .or_else(0.5, Source::chosen)
        .spread({})
        .says("How far the car may sink or rise at an axle from the height everything was measured at.")
        .after("common practice"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Axle::fields() { return axle_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::mass
