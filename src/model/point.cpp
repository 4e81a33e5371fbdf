#include "model/point.hpp"

namespace sw {
namespace {
constexpr FieldInfo table[] = {point_x<&Point::x>(), point_y<&Point::y>(), point_z<&Point::z>()};
static_assert(std::size(table) == member_count<Point>());
}  // namespace

std::span<const FieldInfo> Point::fields() { return table; }

}  // namespace sw
