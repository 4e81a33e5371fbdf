#include <algorithm>
#include <cmath>

#include "physics/manifold.hpp"
#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

constexpr double minute_s = 60;
constexpr std::string_view store_block = "vacuum.store", volumes_block = "vacuum.volumes";

PumpModel pump_of(const Pump& in, Resolver& r) {
  PumpModel p{.cut_in_pa = r.need(in.cut_in, store_block), .cut_out_pa = r.need(in.cut_out, store_block)};
  if (in.cut_in && in.cut_out && in.cut_in->si >= in.cut_out->si)
    r.fault(&in.cut_in, "the pump starts where it should have stopped", "`cut_in` lies below `cut_out`");
  p.time_constant_s = r.need(in.fill_time) / std::log(dead_end / (dead_end - 1));
  p.current_a = r.need(in.current);
  return p;
}

void resolve_store(const Store& in, Model& m, Resolver& r) {
  m.fill_s = r.need(in.fill_time);
  m.leak_pa_s = r.need(in.leak) / minute_s;
  // Without them neither its dips nor what it hands over can be told: a store that looks too good is no stand-in.
  const auto need = [&](auto& member) {
    r.need(member, volumes_block);
    return r.need(member, store_block);
  };
  const double booster = need(in.booster_volume), rear = need(in.rear_volume), rest = need(in.rear_at_rest);
  if (rear >= booster)
    r.fault(&in.rear_volume, "the rear chambers are as large as the whole booster",
            "`booster_volume` is that of all chambers");
  else if (rest >= rear)
    r.fault(
        &in.rear_volume, "the rear chambers hold no more with the brakes on than at rest",
        "`rear_volume` is what is there at rest and what the diaphragms sweep; `rear_at_rest` is the first of them");
  else if (!std::isnan(booster + rear + rest))
    m.store = StoreModel{{booster + r.get(in.reservoir, 0), rest}, rear};
}

void resolve_breathing(const Breathing& in, Model& m, Resolver& r) {
  if (in.valve_flow) {
    m.valve_flow = physics::Interpolant::make(*in.valve_flow);
    if (!m.valve_flow)
      r.fault(&in.valve_flow, "a curve of more than " + std::to_string(physics::Interpolant::max_points) + " points");
  }
  m.valve_path = r.path_of(&in.valve_flow);
  m.blow_by_m3_s = given(in.blow_by);
  m.idle_air_m3_s = given(in.idle_air);
  m.idle_air_path = r.path_of(&in.idle_air);
  m.throttle_leak_m3_s = r.get(in.throttle_leak, 0);
  m.hole_m = given(in.hole);
  m.hole_path = r.path_of(&in.hole);
  m.baffle_m2 = given(in.baffle_inlet);
  m.droplet_m = r.get(in.droplet, 0);
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  const double lost = in.cam_duration ? physics::cam_vacuum_lost_pa(in.cam_duration->si) : 0;
  m.idle_pa = in.idle ? in.idle->si : std::max(0.0, r.need(in.usual_idle) - lost);
  m.idle_ac_pa = given(in.idle_air_conditioning);
  if (in.pump) m.pump = pump_of(*in.pump, r);
  // A usual figure is no ground to stop a car on: the store wants the gauge's, or a pump.
  if (!m.pump) r.need(in.idle, store_block);
  resolve_store(in.store, m, r);
  resolve_breathing(in.breathing, m, r);
  return m;
}

}  // namespace sw::vacuum
