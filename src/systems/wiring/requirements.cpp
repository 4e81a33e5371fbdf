#include "systems/wiring/checks.hpp"

namespace sw::wiring {
namespace {

constexpr std::string_view every_running[] = {"*running"};
constexpr std::string_view ampacity_source = "33 CFR 183.425 Table 5 and notes";

constexpr Requirement all[] = {
    {.id = "wiring.wire-current",
     .title = "wire carries its current",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = "33 CFR 183.425 Table 5 and notes; air hotter than its: NFPA 70 310.15(B) (from memory)",
     .formula = "network current at the end of the duty with all electric fans on, against table ampacity by size, "
                "insulation, zone and bundle, in the bay times sqrt((insulation - bay air) / (insulation - 50 degC))",
     .duties = every_running,
     .needs = heat::needs,
     .chain = heat::chain,
     .evaluate = heat::evaluate},
    {.id = "wiring.feed-drop",
     .title = "volts lost in the feed",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "FAA AC 43.13-1B ch. 11: 0.5 V on a 14 V bus, continuous (from memory)",
     .formula = "current times resistance of the load's own feed, ground and joints",
     .duties = every_running,
     .needs = bus_needs,
     .evaluate = feed::evaluate},
    {.id = "wiring.least-voltage",
     .title = "volts the load needs",
     .kind = RequirementKind::least,
     .hazard = Hazard::nuisance,
     .quantity = &kind::voltage,
     .unit = "V",
     .source = "the part's data sheet",
     .formula = "network solved at the duty's lowest bus voltage",
     .duties = every_running,
     .needs = bus_needs,
     .evaluate = least::evaluate},
    {.id = "wiring.fuse-wire",
     .title = "fuse protects the wire",
     .kind = RequirementKind::rule,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .source = ampacity_source,
     .formula = "fuse rating at most the wire's ampacity in its bundle and zone",
     .needs = protects::needs,
     .evaluate = protects::evaluate},
    {.id = "wiring.fuse-load",
     .title = "fuse carries the load",
     .kind = RequirementKind::most,
     .hazard = Hazard::nuisance,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = "common practice: a blade fuse is loaded to 70 to 80 % of its rating for good",
     .formula = "1.25 times the load's current (80 %)",
     .needs = protects::needs,
     .evaluate = carries::evaluate},
    {.id = "wiring.charge-path",
     .title = "charge path carries the machine's output",
     .kind = RequirementKind::most,
     .hazard = Hazard::harm,
     .caution = Caution::electrical_fire,
     .quantity = &kind::current,
     .unit = "A",
     .source = ampacity_source,
     .formula = "greatest output of the machine against ampacity or rating of each run from its stud to the battery",
     .needs = path::needs,
     .evaluate = path::evaluate},
};

}  // namespace

std::span<const Requirement> System::requirements() { return all; }

}  // namespace sw::wiring
