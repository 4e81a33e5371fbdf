#include "systems/mass/mass.hpp"

namespace sw::mass {
namespace {

AxleModel axle_of(const Axle& in, const Resolver& r) {
  return {given(in.rating), given(in.wheel_rate), r.path_of(&in.rating)};
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  return {axle_of(in.front, r), axle_of(in.rear, r), r.get(in.height_within, 0)};
}

}  // namespace sw::mass
