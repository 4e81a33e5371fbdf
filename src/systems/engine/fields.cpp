#include "systems/engine/engine.hpp"

namespace sw::engine {
namespace {

constexpr FieldInfo table[] = {
    quantity<&Input::displacement>("displacement", "displacement", kind::volume)
        .found(Station::engine_bay)
        .with(Tool::eye)
        .in("in3")
        .above(10, 700)
        .says("Swept volume of all cylinders."),
    quantity<&Input::idle_speed>("idle_speed", "hot idle speed", kind::shaft_speed)
        .found(Station::running)
        .may_change()
        .in("rpm")
        .from(400, 1500)
        .spread(Source::measured, {.absolute = 15})
        .says("Idle speed hot, as the car is held at a light (in gear with an automatic)."),
    quantity<&Input::idle_speed_air_conditioning>("idle_speed_air_conditioning", "idle speed with air conditioning",
                                                  kind::shaft_speed)
        .found(Station::running)
        .may_change()
        .in("rpm")
        .from(400, 1500)
        .spread(Source::measured, {.absolute = 15})
        .says("The same with the compressor engaged; where it is not given the idle speed is taken to hold."),
    quantity<&Input::red_line>("red_line", "red line", kind::shaft_speed)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("rpm")
        .from(2500, 12000)
        .spread({})
        .says("Greatest engine speed the driver will use."),
    curve<&Input::torque_curve>("torque_curve", "torque curve", kind::shaft_speed, kind::torque)
        .in("rpm", "lb-ft")
        .above(0, 1500)
        .says("Full-throttle torque against engine speed."),
    quantity<&Input::bsfc>("bsfc", "specific fuel consumption", kind::specific_consumption)
        .in("lb/(hp h)")
        .from(0.33, 0.8)
        .or_else(0.5)
        .spread(Source::typical, {.share = 0.08})
        .says("Fuel for shaft power at full throttle.")
        .after("common practice: 0.45 to 0.55 lb/(hp h)"),
    quantity<&Input::idle_fuel>("idle_fuel", "fuel at idle", kind::mass_flow)
        .found(Station::running)
        .with(Tool::jug_and_watch)
        .in("lb/h")
        .from(0.5, 15)
        .says("Fuel burnt at hot idle without load."),
    number<&Input::usual_idle_fuel>("usual_idle_fuel", "usual fuel at idle")
        .from(0.4, 2.5)
        .or_else(1)
        .spread(Source::typical, {.share = 0.35})
        .says("Fuel at idle over the usual 0.6 lb/h a litre; stands in, with its doubt, for an idle fuel nobody "
              "measured.")
        .after("common practice"),
    number<&Input::coolant_share>("coolant_share", "share of heat to coolant at load")
        .from(0.1, 0.5)
        .or_else(0.22)
        .spread(Source::typical, {.share = 0.18})
        .says("Share of the heat of the fuel burnt for power that goes into the coolant.")
        .after("with idle_coolant_share it comes to about 21 % at full power: Heywood, Internal Combustion Engine "
               "Fundamentals, Table 12.1, 17 to 26 % (from memory)"),
    number<&Input::idle_coolant_share>("idle_coolant_share", "share of heat to coolant at idle")
        .from(0.15, 0.75)
        .or_else(0.45)
        .spread(Source::typical, {.share = 0.25})
        .says("Share of the heat of the fuel burnt at idle without load that goes into the coolant; measure "
              "`coolant_heat` where an idle duty is close.")
        .after("common practice: 40 to 50 %"),
    curve<&Input::coolant_heat>("coolant_heat", "heat to coolant", kind::power, kind::power)
        .in("hp", "kW")
        .from(0, 400)
        .says("Heat to the coolant against shaft power, where it is known; takes the place of the share."),
    number<&Input::oil_share>("oil_share", "share of heat to oil")
        .from(0, 0.15)
        .or_else(0.03)
        .says("Share of the fuel's heat that friction puts into the oil.")
        .after("common practice"),
    number<&Input::bay_share>("bay_share", "share of heat to the engine bay")
        .from(0, 0.2)
        .or_else(0.04)
        .says("Share of the fuel's heat that manifolds and block give to the air under the bonnet.")
        .after("common practice"),
    quantity<&Input::metal_mass>("metal_mass", "engine mass that warms", kind::mass)
        .found(Station::desk)
        .with(Tool::scales)
        .in("lb")
        .from(50, 1200)
        .or_else(300)
        .spread(Source::typical, {.share = 0.4})
        .says("Mass of block and heads; about two thirds of the dressed engine.")
        .after("common practice"),
    quantity<&Input::oil_volume>("oil_volume", "oil", kind::volume)
        .found(Station::engine_bay)
        .in("L")
        .from(1, 20)
        .or_else(5)
        .spread({})
        .says("Oil in the sump.")
        .after("common practice"),
    quantity<&Input::metal_rise>("metal_rise", "hottest metal above coolant", kind::temperature_step)
        .found(Station::running)
        .in("K")
        .from(2, 80)
        .or_else(18)
        .spread(Source::typical, {.absolute = 6})
        .says("How far the hottest coolant-side metal lies above the coolant at a third of full power.")
        .after("common practice"),
    quantity<&Input::highest_oil>("highest_oil", "highest oil temperature", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(90, 180)
        .or_else(135, Source::chosen)
        .says("Highest sump temperature wanted.")
        .after("common practice, mineral oil"),
    quantity<&Input::motoring_pressure>("motoring_pressure", "motoring mean pressure", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("bar")
        .from(0.3, 5)
        .or_else(1.7)
        .spread(Source::typical, {.share = 0.3})
        .says("Mean pressure that drags the engine round on the overrun, throttle closed, over the whole displacement.")
        .after("rubbing and accessories about 1 bar at low speed, pumping against a closed throttle 0.7 bar: Heywood, "
               "Internal Combustion Engine Fundamentals, ch. 13 (from memory)"),
    quantity<&Input::oil_delay>("oil_delay", "cranking until oil pressure", kind::time)
        .found(Station::running)
        .with(Tool::watch)
        .in("s")
        .from(0, 60)
        .or_else(6)
        .spread(Source::typical, {.share = 0.6})
        .says("How long it is cranked after weeks of standing until the oil has pressure.")
        .after("common practice: 3 to 12 s"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::engine
