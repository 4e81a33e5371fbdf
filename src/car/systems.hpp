#pragma once
// The one visible list of systems. Adding one is its folder and its line here.
#include <tuple>

#include "systems/air_conditioning/air_conditioning.hpp"
#include "systems/belts/belts.hpp"
#include "systems/brakes/brakes.hpp"
#include "systems/charging/charging.hpp"
#include "systems/clearance/clearance.hpp"
#include "systems/cooling/cooling.hpp"
#include "systems/driveline/driveline.hpp"
#include "systems/engine/engine.hpp"
#include "systems/fasteners/fasteners.hpp"
#include "systems/fuel/fuel.hpp"
#include "systems/gauges/gauges.hpp"
#include "systems/ignition/ignition.hpp"
#include "systems/mass/mass.hpp"
#include "systems/mounts/mounts.hpp"
#include "systems/recommissioning/recommissioning.hpp"
#include "systems/steering/steering.hpp"
#include "systems/throttle/throttle.hpp"
#include "systems/transmission/transmission.hpp"
#include "systems/tubes/tubes.hpp"
#include "systems/vacuum/vacuum.hpp"
#include "systems/vehicle/vehicle.hpp"
#include "systems/wheels/wheels.hpp"
#include "systems/wiring/wiring.hpp"

namespace sw {

template <class... S>
struct SystemList {
  using Inputs = std::tuple<typename S::Input...>;
  using Models = std::tuple<typename S::Model...>;
  static constexpr std::size_t count = sizeof...(S);
};

using Systems =
    SystemList<vehicle::System, engine::System, driveline::System, belts::System, charging::System, wiring::System,
               cooling::System, air_conditioning::System, fuel::System, vacuum::System, brakes::System, wheels::System,
               ignition::System, gauges::System, mounts::System, clearance::System, steering::System, throttle::System,
               transmission::System, tubes::System, fasteners::System, mass::System, recommissioning::System>;

}  // namespace sw
