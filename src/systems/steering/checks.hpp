#pragma once
// What the rules of the steering shaft share with the solver that phases its yokes.
#include "systems/steering/steering.hpp"

namespace sw::steering {

/// How much more the wheel turns the box in one place of a turn than in another; the pull at the rim goes with it.
namespace evenness {
double unevenness(const physics::Swing& swing);
/// What the shaft's count of joints allows.
double most(const Model& m);
}  // namespace evenness

}  // namespace sw::steering
