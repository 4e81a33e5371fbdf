#include <algorithm>
#include <cmath>

#include "model/outside.hpp"
#include "systems/air_conditioning/air_conditioning.hpp"

namespace sw::air_conditioning {
namespace {

constexpr FieldInfo table[] = {
    yes_no<&Input::fitted>("fitted", "fitted").or_else(0, Source::chosen).says("Whether the car has it."),
    quantity<&Input::condenser_heat_idle>("condenser_heat_idle", "condenser heat at idle", kind::power)
        .in("kW")
        .from(0, 20)
        .or_else(6)
        .says("Heat the condenser gives to the air before the radiator, standing.")
        .after("common practice: 5 to 7 kW"),
    quantity<&Input::condenser_heat_road>("condenser_heat_road", "condenser heat on the road", kind::power)
        .in("kW")
        .from(0, 25)
        .or_else(7.5)
        .says("The same at road speed.")
        .after("common practice: 6 to 9 kW"),
    quantity<&Input::compressor_power_idle>("compressor_power_idle", "compressor power at idle", kind::power)
        .in("kW")
        .from(0, 8)
        .or_else(1.8)
        .says("Shaft power of the compressor at idle.")
        .after("common practice"),
    quantity<&Input::compressor_power_road>("compressor_power_road", "compressor power on the road", kind::power)
        .in("kW")
        .from(0, 12)
        .or_else(3.5)
        .says("Shaft power of the compressor at road speed.")
        .after("common practice"),
};
static_assert(std::size(table) == member_count<Input>());

constexpr Port on_port{"air_conditioning.on", &kind::number, "", "air conditioning on"};

namespace request {
enum Read { r_asked, read_count };
constexpr Port reads[] = {outside::air_conditioning};
static_assert(std::size(reads) == read_count);
enum Write { w_on, write_count };
constexpr Port writes[] = {on_port};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  v.set(w_on, static_cast<const Model*>(model)->fitted && v.in(r_asked) > 0 ? 1.0 : 0.0);
}
}  // namespace request

namespace load {
constexpr double blend_m_s = 15.0;  ///< road figures hold from here up; between, a straight line (common practice)
enum Read { r_on, r_speed, read_count };
constexpr Port reads[] = {on_port, {"road.speed", &kind::speed}};
static_assert(std::size(reads) == read_count);
enum Write { w_heat, w_power, write_count };
constexpr Port writes[] = {
    {"air_conditioning.condenser_heat", &kind::power, "kW", "condenser heat before the radiator"},
    {"air_conditioning.compressor_power", &kind::power, "kW", "compressor power"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  const double road = std::clamp(v.in(r_speed) / blend_m_s, 0.0, 1.0), on = v.in(r_on);
  v.set(w_heat, on * (m.heat_idle_w + road * (m.heat_road_w - m.heat_idle_w)));
  v.set(w_power, on * (m.power_idle_w + road * (m.power_road_w - m.power_idle_w)));
}
}  // namespace load

constexpr Block all[] = {
    {"air_conditioning.request", request::reads, request::writes, {}, {}, request::evaluate},
    {"air_conditioning.load", load::reads, load::writes, {}, {}, load::evaluate},
};

/// Heat and load are counted where the system is said to be there, whether or not anything turns its compressor: a car
/// described by halves would pass.
namespace drive {
constexpr Port needs[] = {{"belts.compressor_ratio", &kind::number}};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  auto& m = *static_cast<const Model*>(model);
  const double ratio = run.at(0, 0);
  const bool driven = ratio > 0;
  if (!m.fitted && !driven) return;
  Verdict v{.fix_hint =
                "the compressor's pulley on the belt that turns it (drives = \"compressor\"), or fitted = false"};
  if (!m.fitted && !m.said) {
    v.missing = {m.fitted_path};
  } else if (!std::isnan(ratio)) {
    // A compressor that stays on the belt of a car whose system was taken out turns free.
    v.rule = driven;
    v.reason = m.fitted ? driven ? "a belt drives the compressor"
                                 : "air conditioning is fitted and no pulley of any belt drives its compressor"
                        : "the compressor turns with its clutch open: the car is said to have no air conditioning";
  }
  out.push_back(std::move(v));
}
}  // namespace drive

constexpr Requirement requirements_all[] = {
    {.id = "air_conditioning.compressor-drive",
     .title = "a belt drives the compressor",
     .kind = RequirementKind::rule,
     .hazard = Hazard::nuisance,
     .caution = Caution::belts_pulleys,
     .source = "common practice",
     .formula = "where air conditioning is fitted one pulley drives its compressor; where one does, it is said whether "
                "the system is there",
     .needs = drive::needs,
     .own_missing = true,
     .evaluate = drive::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return requirements_all; }
std::span<const FieldInfo> Input::fields() { return table; }
std::span<const Block> System::blocks() { return all; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m;
  m.fitted = r.get(in.fitted, 0) > 0;
  m.fitted_path = r.path_of(&in.fitted);
  const Evidence* said = r.evidence_of(&in.fitted);
  m.said = said && !said->defaulted;
  if (!m.fitted) return m;
  m.heat_idle_w = r.need(in.condenser_heat_idle);
  m.heat_road_w = r.need(in.condenser_heat_road);
  m.power_idle_w = r.need(in.compressor_power_idle);
  m.power_road_w = r.need(in.compressor_power_road);
  return m;
}

}  // namespace sw::air_conditioning
