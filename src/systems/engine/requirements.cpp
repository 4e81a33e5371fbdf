#include "model/outside.hpp"
#include "physics/atmosphere.hpp"
#include "systems/engine/engine.hpp"

namespace sw::engine {
namespace {

constexpr std::string_view every_running[] = {"*running"};

namespace oil {
enum Need { n_oil, n_ambient, need_count };
constexpr Port needs[] = {{"engine.oil_temperature", &kind::temperature}, outside::ambient};
static_assert(std::size(needs) == need_count);
constexpr std::string_view chain[] = {"engine.power", "engine.oil_heat", "cooling.engine_temperature",
                                      "engine.oil_temperature"};
void evaluate(const void* model, const Evidenced& run, std::vector<Verdict>& out) {
  const std::size_t row = run.trace->highest(run.slot(n_oil));
  const double limit = static_cast<const Model*>(model)->highest_oil_k;
  out.push_back({.predicted = run.at(row, n_oil),
                 .high = limit,
                 .scale = limit - run.at(row, n_ambient),
                 .row = row,
                 .fix_hint = "an oil cooler, or less load for longer"});
}
}  // namespace oil

namespace reserve {
constexpr double usable = 0.9;  ///< of full power: what a driver will use for long (common practice)
enum Need { n_drive, n_accessories, n_peak, n_density, need_count };
constexpr Port needs[] = {{"driveline.power", &kind::power},
                          {"accessories.power", &kind::power},
                          {"engine.peak_power", &kind::power},
                          outside::density};
static_assert(std::size(needs) == need_count);
constexpr std::string_view chain[] = {"road.speed", "duty.grade", "road.power", "accessories.power", "engine.power"};
void evaluate(const void*, const Evidenced& run, std::vector<Verdict>& out) {
  if (run.duty->method == Method::pull) return;  // there the engine gives all it has
  const std::size_t row = run.trace->highest(run.slot(n_drive));
  const double limit = usable * run.at(row, n_peak) * run.at(row, n_density) / physics::reference_air_density_kg_m3;
  out.push_back({.predicted = run.at(row, n_drive) + run.at(row, n_accessories),
                 .high = limit,
                 .scale = limit,
                 .row = row,
                 .fix_hint = "a slower climb, a lower gear or axle, or more engine"});
}
}  // namespace reserve

constexpr Requirement all[] = {
    {.id = "engine.oil-temperature",
     .title = "oil stays below its limit",
     .kind = RequirementKind::most,
     .hazard = Hazard::damage,
     .caution = Caution::hot_coolant,
     .quantity = &kind::temperature,
     .unit = "degC",
     .source = "engine.highest_oil; where it is not given that of a mineral oil (common practice)",
     .formula = "friction heat and block heat into the sump, less what the wind over it takes",
     .duties = every_running,
     .needs = oil::needs,
     .chain = oil::chain,
     .evaluate = oil::evaluate},
    {.id = "engine.power",
     .title = "power for the road",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .quantity = &kind::power,
     .unit = "hp",
     .source = "common practice: nine tenths of full power held for long",
     .formula = "road load through gearbox and axle, plus accessories, against nine tenths of full power in this air",
     .duties = every_running,
     .needs = reserve::needs,
     .chain = reserve::chain,
     .evaluate = reserve::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::engine
