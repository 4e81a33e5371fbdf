#include "systems/mass/mass.hpp"

namespace sw::mass {
namespace {

AxleModel axle_of(const Axle& in) { return {given(in.rating), given(in.wheel_rate)}; }

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  return {axle_of(in.front), axle_of(in.rear), r.get(in.height_within, 0)};
}

}  // namespace sw::mass
