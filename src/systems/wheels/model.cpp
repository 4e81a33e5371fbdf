#include "physics/tyre.hpp"
#include "systems/wheels/wheels.hpp"

namespace sw::wheels {
namespace {

/// Speed letters, km/h (ECE R30 and T&RA, from memory).
constexpr double letter_km_h[] = {150, 160, 170, 180, 190, 200, 210, 240, 270, 300};
static_assert(std::size(letter_km_h) == std::size(speed_names));

AxleModel axle_of(const Axle& in, Resolver& r) {
  return {.barrel_m = given(in.barrel_radius),
          .caliper_m = given(in.caliper_radius),
          .spoke_m = given(in.spoke_gap),
          .barrel_path = r.path_of(&in.barrel_radius),
          .caliper_path = r.path_of(&in.caliper_radius),
          .lip_m = given(in.lip_gap),
          .lock_m = given(in.lock_gap),
          .hub_m = r.get(in.hub_outward, 0),
          .inward_m = r.get(in.lip_inward, 0),
          .wheel_m = r.get(in.wheel_outward, 0)};
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m{.front = axle_of(in.front, r),
          .rear = axle_of(in.rear, r),
          .load_path = r.path_of(&in.tyre.load),
          .speed_path = r.path_of(&in.tyre.speed),
          .age_path = r.path_of(&in.tyre.age)};
  if (!in.tyre.size.empty()) {
    if (const auto size = physics::tyre_size(in.tyre.size))
      m.free_m = size->diameter_m;
    else
      r.fault(&in.tyre.size, "\"" + in.tyre.size + "\" is no tyre size", "as 205/70R14 or 31x10.5R15");
  }
  m.load_kg = given(in.tyre.load);
  m.age_s = given(in.tyre.age);
  if (in.tyre.speed) {
    const auto letter = static_cast<std::size_t>(*in.tyre.speed);
    m.top_m_s = letter_km_h[letter] / 3.6;
    m.speed_name = speed_names[letter];
  }
  return m;
}

std::span<const Block> System::blocks() { return {}; }

}  // namespace sw::wheels
