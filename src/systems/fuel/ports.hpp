#pragma once
// Ports of the fuel system, named once for its blocks and requirements.
#include "model/outside.hpp"
#include "systems/fuel/fuel.hpp"

namespace sw::fuel {

inline constexpr Port demand_port{"fuel.demand", &kind::volume_flow, "L/h", "fuel the engine burns"};
inline constexpr Port volts_port{"fuel_pump.voltage", &kind::voltage, "V", "volts at the fuel pump"};
inline constexpr Port tank_k_port{"fuel.tank_temperature", &kind::temperature, "degC", "fuel in the tank"};
inline constexpr Port mass_port{"fuel.tank_mass", &kind::mass, "lb", "fuel in the tank"};
inline constexpr Port rail_k_port{"fuel.rail_temperature", &kind::temperature, "degC", "fuel in the rail"};
inline constexpr Port rail_port{"fuel.rail_pressure", &kind::gauge_pressure, "psi", "pressure at the rail"};
inline constexpr Port pump_port{"fuel.pump_pressure", &kind::gauge_pressure, "psi", "pressure behind the pump"};
inline constexpr Port pump_flow_port{"fuel.pump_flow", &kind::volume_flow, "L/h", "flow from the pump"};
inline constexpr Port return_flow_port{"fuel.return_flow", &kind::volume_flow, "L/h", "flow back to the tank"};
inline constexpr Port back_port{"fuel.return_pressure", &kind::gauge_pressure, "psi", "pressure behind the regulator"};
inline constexpr Port feed_drop_port{"fuel.feed_drop", &kind::pressure_difference, "psi", "lost from pump to rail"};
inline constexpr Port inlet_port{"fuel.pump_inlet", &kind::absolute_pressure, "psi", "pressure at the pump's inlet"};
inline constexpr Port vacuum_port{"fuel.tank_vacuum", &kind::pressure_difference, "psi", "vacuum in the tank"};
inline constexpr Port feed_rise_port{"fuel.feed_rise", &kind::temperature_step, "K", "warmed on the way to the rail"};
inline constexpr Port manifold_port{"vacuum.manifold", &kind::vacuum};
inline constexpr Port bay_port{"bay.temperature", &kind::temperature};
inline constexpr Port road_port{"road.speed", &kind::speed};

}  // namespace sw::fuel
