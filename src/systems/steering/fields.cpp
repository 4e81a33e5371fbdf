#include "systems/steering/steering.hpp"

namespace sw::steering {
namespace {

constexpr FieldInfo joint_table[] = {
    point_x<&Joint::x>(),
    point_y<&Joint::y>(),
    point_z<&Joint::z>(),
    quantity<&Joint::angle>("angle", "angle", kind::angle)
        .decides_harm()
        .in("deg")
        .from(0, 60)
        .spread(Source::measured, {.absolute = 1})
        .says("Angle it works at, by inclinometer or bevel; instead of the points of all joints."),
    quantity<&Joint::plane>("plane", "plane", kind::angle)
        .decides_harm()
        .in("deg")
        .from(-180, 180)
        .spread(Source::measured, {.absolute = 3})
        .says("From the plane the joint before it bends in to its own, clockwise as seen from the steering wheel; 0 "
              "where "
              "all lies in one plane. Only beside `angle`; the first joint has none."),
    quantity<&Joint::phase>("phase", "yoke's phase", kind::angle)
        .may_change()
        .in("deg")
        .from(-180, 180)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 3})
        .says("Of the shaft above it: how far its lower yoke stands clockwise of its upper one, seen from the steering "
              "wheel; 0 in line, half a turn the same. The first joint's yoke is the column's own and has none."),
};
static_assert(std::size(joint_table) == member_count<Joint>());

constexpr FieldInfo slide_table[] = {
    quantity<&Slide::engaged>("engaged", "engaged", kind::length)
        .decides_harm()
        .in("in")
        .from(0, 20)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Length of double-D or spline that is inside the other part, at ride height."),
    quantity<&Slide::lost>("lost", "lost by movement", kind::length)
        .in("in")
        .from(0, 5)
        .or_else(0.4)
        .spread(Source::measured, {.absolute = 0.05})
        .says("How far it slides apart at full frame twist, engine roll and travel of the body's mounts.")
        .after("common practice"),
    quantity<&Slide::least>("least", "least engagement", kind::length)
        .in("in")
        .above(0, 6)
        .or_else(1.0, Source::chosen)
        .spread({})
        .says("What must be engaged at any time, by the shaft's maker.")
        .after("common practice"),
};
static_assert(std::size(slide_table) == member_count<Slide>());

constexpr FieldInfo table[] = {
    group<&Input::column>("column", "column").says("A point on the column's axis above its lower end."),
    group<&Input::box>("box", "box").says("A point on the axis of the box's input, below the last joint."),
    list<&Input::joint>("joint", "joints").says("The joints from the column down, by any names."),
    integer<&Input::bearings>("bearings", "support bearings")
        .may_grow()
        .decides_harm()
        .from(0, 4)
        .says("Bearings that hold the shaft between its joints."),
    group<&Input::slide>("slide", "sliding part").says("Where the shaft slides in itself."),
    quantity<&Input::collapse>("collapse", "gives way by", kind::length)
        .in("in")
        .from(0, 20)
        .spread(Source::measured, {.absolute = 0.1})
        .says("How far shaft and column give way before they push the wheel at the driver."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Joint::fields() { return joint_table; }
std::span<const FieldInfo> Slide::fields() { return slide_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::steering
