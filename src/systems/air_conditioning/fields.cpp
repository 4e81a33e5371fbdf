#include "systems/air_conditioning/air_conditioning.hpp"

namespace sw::air_conditioning {
namespace {

constexpr FieldInfo condenser_table[] = {
    number<&Condenser::effectiveness>("effectiveness", "effectiveness")
        .from(0.3, 0.95)
        .or_else(0.65)
        .spread(Source::typical, {.absolute = 0.08})
        .says("Of the condenser at the air flow of an idle.")
        .after("common practice: 0.6 to 0.75"),
    number<&Condenser::air_share>("air_share", "share of the air")
        .may_change()
        .from(0.2, 1.2)
        .or_else(1)
        .spread(Source::typical, {.absolute = 0.1})
        .says(
            "Air through the condenser over that through the radiator: less where it covers a part of it or the sides "
            "between them are open.")
        .after("common practice"),
    choice<&Condenser::refrigerant>("refrigerant", "refrigerant", refrigerant_names)
        .or_else(0, Source::chosen)
        .says("What the label under the bonnet names; pressures are known for R134a alone."),
    quantity<&Condenser::cut_out>("cut_out", "high pressure switch", kind::gauge_pressure)
        .in("psi")
        .from(250, 550)
        .or_else(430)
        .spread(Source::typical, {.absolute = 30})
        .says("Pressure at which it takes the compressor's clutch off.")
        .after("common practice: 380 to 470 psi"),
    quantity<&Condenser::most_idle>("most_idle", "most pressure at idle", kind::gauge_pressure)
        .in("psi")
        .from(150, 450)
        .or_else(300, Source::chosen)
        .spread({})
        .says("High side wanted at a hot idle at most.")
        .after("common practice"),
};
static_assert(std::size(condenser_table) == member_count<Condenser>());

constexpr FieldInfo heater_table[] = {
    choice<&Heater::valve>("valve", "heater valve in", valve_names)
        .may_change()
        .says("The hose that brings the coolant (from the intake), the one that takes it back, or no valve."),
    quantity<&Heater::leak>("leak", "heat of the heater while cooling", kind::power)
        .in("kW")
        .from(0, 12)
        .says("What the heater core gives to the air with the lever on cold."),
    quantity<&Heater::air>("air", "air through the box", kind::mass_flow)
        .in("kg/s")
        .above(0.01, 0.4)
        .says("Air to the vents, blower as used when cooling."),
    quantity<&Heater::cooling>("cooling", "cooling of the evaporator", kind::power)
        .in("kW")
        .from(0.5, 12)
        .says("What the evaporator takes from that air at idle; tells what is left."),
};
static_assert(std::size(heater_table) == member_count<Heater>());

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
    group<&Input::condenser>("condenser", "condenser").says("How it gives its heat away."),
    group<&Input::heater>("heater", "heater").says("The heater beside the evaporator."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Condenser::fields() { return condenser_table; }
std::span<const FieldInfo> Heater::fields() { return heater_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::air_conditioning
