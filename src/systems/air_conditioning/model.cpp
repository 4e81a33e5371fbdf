#include "systems/air_conditioning/air_conditioning.hpp"

namespace sw::air_conditioning {
Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.fitted = r.get(in.fitted, 0) > 0;
  m.fitted_path = r.path_of(&in.fitted);
  const Evidence* said = r.evidence_of(&in.fitted);
  m.said = said && !said->defaulted;
  m.valve = in.heater.valve;
  m.leak_w = given(in.heater.leak);
  m.vent_kg_s = given(in.heater.air);
  m.cooling_w = given(in.heater.cooling);
  m.valve_path = r.path_of(&in.heater.valve);
  m.leak_path = r.path_of(&in.heater.leak);
  m.vent_path = r.path_of(&in.heater.air);
  if (!m.fitted) return m;
  m.heat_idle_w = r.need(in.condenser_heat_idle);
  m.heat_road_w = r.need(in.condenser_heat_road);
  m.power_idle_w = r.need(in.compressor_power_idle);
  m.power_road_w = r.need(in.compressor_power_road);
  constexpr std::string_view high_side = "air_conditioning.high_side";
  m.effectiveness = r.need(in.condenser.effectiveness, high_side);
  m.air_share = r.need(in.condenser.air_share, high_side);
  m.cut_out_pa = r.need(in.condenser.cut_out, high_side);
  m.most_idle_pa = r.need(in.condenser.most_idle, high_side);
  m.known = in.condenser.refrigerant.value_or(Refrigerant::r134a) == Refrigerant::r134a;
  return m;
}

}  // namespace sw::air_conditioning
