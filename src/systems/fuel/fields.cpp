#include "systems/fuel/fuel.hpp"

namespace sw::fuel {
namespace {

constexpr FieldInfo tank_table[] = {
    quantity<&Tank::volume>("volume", "tank", kind::volume)
        .in("gal")
        .above(1, 100)
        .says("What the tank holds when full."),
    quantity<&Tank::width>("width", "width", kind::length)
        .in("in")
        .from(4, 80)
        .says("Inside width, across the car; the tank is reckoned as a box."),
    quantity<&Tank::length>("length", "length", kind::length)
        .in("in")
        .from(4, 80)
        .says("Inside length, along the car."),
    curve<&Tank::strapping>("strapping", "strapping curve", kind::length, kind::volume)
        .with(Tool::jug)
        .in("in", "gal")
        .from(0, 120)
        .says("Fuel against depth, measured by filling; without it a box of that width, length and volume."),
    choice<&Tank::vent>("vent", "vent", vent_names)
        .says(
            "How air gets in as fuel goes out: an open line (to the air or a canister), a two-way cap, or not at all."),
    number<&Tank::vapour_share>("vapour_share", "vapour made up")
        .from(0, 1)
        .or_else(0.6)
        .spread(Source::typical, {.absolute = 0.15})
        .says("Share of a tank's falling pressure that fuel vapour makes good where no air comes in.")
        .after("common practice"),
    yes_no<&Tank::bonded>("bonded", "bonded")
        .with(Tool::ohmmeter)
        .decides_harm()
        .says("Whether tank and filler neck are joined to the body by a strap, so that no spark jumps in filling."),
    yes_no<&Tank::rollover_valve>("rollover_valve", "roll-over valve")
        .decides_harm()
        .says("Whether the vent has a valve that shuts when the car lies on its roof."),
    quantity<&Tank::start_rise>("start_rise", "above the air at the start", kind::temperature_step)
        .found(Station::running)
        .in("K")
        .from(-20, 30)
        .or_else(3)
        .spread(Source::typical, {.absolute = 2})
        .spread(Source::measured, {.absolute = 1})
        .says("How far the tank's fuel lies above the air when a warm car sets off.")
        .after("common practice"),
    quantity<&Tank::road_heat>("road_heat", "heat from exhaust and road", kind::power)
        .in("W")
        .from(0, 1000)
        .or_else(40)
        .spread(Source::typical, {.share = 0.6})
        .says("What exhaust and hot road give to the tank while driving.")
        .after("common practice"),
};
static_assert(std::size(tank_table) == member_count<Tank>());

constexpr FieldInfo pick_up_table[] = {
    quantity<&PickUp::from_side>("from_side", "from the side", kind::length)
        .in("in")
        .from(0, 80)
        .says("From the pick-up to the nearer side wall of the tank, inside."),
    quantity<&PickUp::from_front>("from_front", "from the front", kind::length)
        .in("in")
        .from(0, 80)
        .says("From the pick-up to the front wall of the tank, inside; without it braking is not looked at."),
    quantity<&PickUp::height>("height", "above the floor", kind::length)
        .in("in")
        .from(0, 6)
        .or_else(0.25)
        .spread(Source::typical, {.absolute = 0.15})
        .says("Depth of fuel there at which it begins to draw air.")
        .after("common practice"),
    quantity<&PickUp::cell_width>("cell_width", "baffled cell, width", kind::length)
        .in("in")
        .from(2, 80)
        .says("Width of the baffled cell it stands in, the pick-up in its middle; without it there is no baffle."),
    quantity<&PickUp::cell_length>("cell_length", "baffled cell, length", kind::length)
        .in("in")
        .from(2, 80)
        .says("Length of that cell along the car."),
    quantity<&PickUp::reserve>("reserve", "tray or surge pot", kind::volume)
        .may_grow()
        .in("L")
        .from(0, 10)
        .or_else(0, Source::chosen)
        .says("Fuel a tray or surge pot keeps at the pump when the tank's runs away from it."),
    yes_no<&PickUp::fed_by_return>("fed_by_return", "return leads into it")
        .or_else(0, Source::chosen)
        .says("Whether what the regulator sends back runs into the tray or pot: then the engine alone empties it."),
};
static_assert(std::size(pick_up_table) == member_count<PickUp>());

constexpr FieldInfo pump_table[] = {
    choice<&Pump::place>("place", "place", pump_place_names)
        .or_else(0, Source::chosen)
        .says("In the tank, or outside."),
    choice<&Pump::drive>("drive", "drive", drive_names)
        .or_else(0, Source::chosen)
        .says("Electric, or by the engine's cam."),
    quantity<&Pump::height>("height", "inlet above the tank's floor", kind::length)
        .in("in")
        .from(-20, 80)
        .or_else(1)
        .spread(Source::typical, {.absolute = 1})
        .says("Height of the pump's inlet over the tank's floor; below it a minus.")
        .after("common practice, in the tank"),
    curve<&Pump::curve>("curve", "curve", kind::pressure_difference, kind::volume_flow)
        .in("psi", "L/h")
        .from(0, 2000)
        .spread(Source::data_sheet, {.share = 0.05})
        .says("Flow against pressure at its rated volts."),
    quantity<&Pump::flow>("flow", "flow", kind::volume_flow)
        .found(Station::bench)
        .may_grow()
        .in("L/h")
        .above(5, 1500)
        .says("Flow at the pressure below, at its rated volts; instead of a curve."),
    quantity<&Pump::at_pressure>("at_pressure", "at pressure", kind::pressure_difference)
        .found(Station::bench)
        .in("psi")
        .above(1, 150)
        .spread({})
        .says("Pressure the flow is meant at."),
    number<&Pump::free_flow_ratio>("free_flow_ratio", "free flow over rated flow")
        .above(1, 4)
        .or_else(1.3)
        .spread(Source::typical, {.absolute = 0.12})
        .says("Flow against no pressure over the rated one; tells the curve where only one point is known.")
        .after("common practice"),
    quantity<&Pump::at_voltage>("at_voltage", "at volts", kind::voltage)
        .found(Station::bench)
        .in("V")
        .from(5, 15)
        .spread({})
        .says("Volts of its curve; without it 13.5 V in a 12 V car, 6.75 V in a 6 V car."),
    quantity<&Pump::current>("current", "current", kind::current)
        .found(Station::bench)
        .in("A")
        .from(0.2, 40)
        .or_else(7)
        .spread(Source::typical, {.share = 0.3})
        .says("Current it takes at work: all its power ends as heat in the fuel.")
        .after("common practice"),
    quantity<&Pump::relief>("relief", "relief valve opens", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .above(1, 200)
        .spread({})
        .decides_harm()
        .says("Pressure at which the pump's own relief valve opens; of a cam-driven pump its spring's pressure."),
    quantity<&Pump::needed_margin>("needed_margin", "margin to vapour it needs", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .from(0, 10)
        .or_else(2, Source::chosen)
        .says("Least pressure at its inlet over the fuel's vapour pressure.")
        .after("common practice"),
    yes_no<&Pump::check_valve>("check_valve", "check valve")
        .or_else(1, Source::typical)
        .says("Whether pressure stays in the lines when it stops.")
        .after("common practice"),
    quantity<&Pump::prime>("prime", "prime", kind::time)
        .in("s")
        .from(0, 30)
        .or_else(2)
        .spread(Source::typical, {.share = 0.3})
        .says("How long it runs until the rail has its pressure after standing.")
        .after("common practice"),
    choice<&Pump::inlet>("inlet", "inlet", end_names)
        .decides_harm()
        .says("What its inlet seals on; not asked in the tank."),
    choice<&Pump::outlet>("outlet", "outlet", end_names)
        .decides_harm()
        .says("What the outlet seals on; of a pump in the tank that of the tank's cover."),
};
static_assert(std::size(pump_table) == member_count<Pump>());

constexpr FieldInfo filter_table[] = {
    choice<&Filter::place>("place", "place", filter_place_names)
        .or_else(1, Source::chosen)
        .says("Before the pump (a strainer in the tank too), or in the feed."),
    quantity<&Filter::micron>("micron", "fineness", kind::length)
        .in("um")
        .from(1, 1000)
        .spread({})
        .says("Size of the particles it keeps."),
    quantity<&Filter::drop>("drop", "drop", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("psi")
        .from(0, 20)
        .or_else(0.5)
        .spread(Source::typical, {.share = 0.6})
        .says("Pressure it loses at the flow below; its medium is laminar, so the loss goes with the flow.")
        .after("common practice"),
    quantity<&Filter::at_flow>("at_flow", "at flow", kind::volume_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("L/h")
        .above(1, 1500)
        .or_else(200, Source::chosen)
        .spread({})
        .says("Flow the drop is meant at."),
};
static_assert(std::size(filter_table) == member_count<Filter>());

constexpr FieldInfo run_table[] = {
    choice<&Run::kind>("kind", "kind", run_kind_names).or_else(0, Source::chosen).says("Tube or hose."),
    quantity<&Run::bore>("bore", "bore", kind::length)
        .may_grow()
        .in("in")
        .from(0.06, 1)
        .spread(Source::measured, {.absolute = 0.002})
        .spread(Source::stated, {.absolute = 0.003})
        .spread(Source::data_sheet, {.absolute = 0.003})
        .says("Inside diameter."),
    quantity<&Run::length>("length", "length", kind::length).in("ft").from(0, 40).says("Length along its middle."),
    number<&Run::losses>("losses", "losses")
        .from(0, 60)
        .or_else(2)
        .spread(Source::typical, {.absolute = 1})
        .says("Sum of the loss coefficients of its bends, fittings and valves.")
        .after("common practice: 0.3 a smooth bend, 1 a sharp one, 0.5 an entrance, 1 an exit"),
    choice<&Run::start>("start", "first end", end_names)
        .decides_harm()
        .says("What the end nearer its source seals on."),
    choice<&Run::end>("end", "last end", end_names).decides_harm().says("What its other end seals on."),
    quantity<&Run::rating>("rating", "rated pressure", kind::gauge_pressure)
        .with(Tool::eye)
        .in("psi")
        .above(1, 5000)
        .spread({})
        .decides_harm()
        .says("Working pressure printed on a hose."),
    quantity<&Run::age>("age", "age", kind::time)
        .with(Tool::eye)
        .in("year")
        .from(0, 80)
        .spread({})
        .decides_harm()
        .says("Years since the date printed on a hose."),
    choice<&Run::zone>("zone", "zone", zone_names).or_else(0, Source::chosen).says("Where most of it lies."),
    quantity<&Run::exhaust_distance>("exhaust_distance", "distance to the exhaust", kind::length)
        .with(Tool::rule)
        .in("in")
        .from(0, 120)
        .spread({})
        .decides_harm()
        .says("Least distance to any part of the exhaust."),
    quantity<&Run::beside_exhaust>("beside_exhaust", "length beside the exhaust", kind::length)
        .in("ft")
        .from(0, 40)
        .or_else(0, Source::chosen)
        .says("Length of it that runs beside the exhaust at about that distance."),
    number<&Run::view>("view", "share that faces the exhaust")
        .from(0, 0.5)
        .says(
            "Share of that length's surroundings taken up by the exhaust; without it by distance beside a 50 mm pipe."),
    yes_no<&Run::shielded>("shielded", "shielded")
        .or_else(0, Source::chosen)
        .says("Whether a shield or heat sleeve stands between it and the exhaust."),
    yes_no<&Run::before_regulator>("before_regulator", "before the regulator")
        .or_else(0, Source::chosen)
        .says("Of a feed whose regulator stands at a filter: whether this run comes before it."),
};
static_assert(std::size(run_table) == member_count<Run>());

constexpr FieldInfo regulator_table[] = {
    choice<&Regulator::place>("place", "place", regulator_place_names)
        .or_else(0, Source::chosen)
        .says("At the rail with a return, at a filter or at the pump with the rail behind it, in line before a "
              "carburettor, or none."),
    quantity<&Regulator::pressure>("pressure", "set pressure", kind::gauge_pressure)
        .found(Station::running)
        .may_change()
        .in("psi")
        .above(0.5, 150)
        .spread({})
        .says("Pressure it holds."),
    quantity<&Regulator::least_drop>("least_drop", "its own least drop", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("psi")
        .above(0.1, 60)
        .or_else(8)
        .spread(Source::typical, {.share = 0.5})
        .says("Pressure it loses fully open at the flow below.")
        .after("common practice"),
    quantity<&Regulator::at_flow>("at_flow", "at flow", kind::volume_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("L/h")
        .above(1, 1500)
        .or_else(200, Source::chosen)
        .spread({})
        .says("Flow that drop is meant at."),
    quantity<&Regulator::rise>("rise", "rise from least to full flow", kind::pressure_difference)
        .in("psi")
        .above(0.05, 10)
        .or_else(1)
        .spread(Source::typical, {.share = 0.5})
        .says("How far its pressure moves from shut to open; the set pressure lies in the middle.")
        .after("common practice"),
    yes_no<&Regulator::vacuum_referenced>("vacuum_referenced", "vacuum reference")
        .says("Whether a hose to the manifold lets its pressure follow the vacuum."),
    choice<&Regulator::inlet>("inlet", "inlet", end_names)
        .decides_harm()
        .says("What its inlet seals on, where a run ends there."),
    choice<&Regulator::outlet>("outlet", "outlet", end_names).decides_harm().says("What its outlet seals on."),
};
static_assert(std::size(regulator_table) == member_count<Regulator>());

constexpr FieldInfo rail_table[] = {
    quantity<&Rail::conductance>("conductance", "heat from the engine bay", kind::thermal_conductance)
        .in("W/K")
        .from(0.1, 50)
        .or_else(3)
        .spread(Source::typical, {.share = 0.5})
        .says("Heat the rail or float bowl takes up for each degree the bay's air is hotter.")
        .after("common practice"),
    quantity<&Rail::heat_capacity>("heat_capacity", "heat capacity", kind::heat_capacity)
        .in("kJ/K")
        .from(0.05, 10)
        .or_else(0.8)
        .spread(Source::typical, {.share = 0.4})
        .says("Of rail or bowl and the fuel in it.")
        .after("common practice: 0.15 L of fuel and half a kilogram of aluminium"),
    choice<&Rail::inlet>("inlet", "inlet", end_names)
        .decides_harm()
        .says("What the rail's or carburettor's inlet seals on."),
    choice<&Rail::outlet>("outlet", "outlet", end_names)
        .decides_harm()
        .says("What the rail's outlet seals on, where the fuel returns from it."),
};
static_assert(std::size(rail_table) == member_count<Rail>());

constexpr FieldInfo injectors_table[] = {
    integer<&Injectors::count>("count", "injectors").from(1, 16).says("How many there are."),
    quantity<&Injectors::flow>("flow", "flow of each", kind::mass_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_grow()
        .in("lb/h")
        .above(1, 300)
        .spread(Source::data_sheet, {.share = 0.03})
        .says("Held open at the pressure below."),
    quantity<&Injectors::at_pressure>("at_pressure", "at pressure", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .above(5, 150)
        .or_else(43.5, Source::typical)
        .spread({})
        .says("Pressure the flow is meant at.")
        .after("common practice: 3 bar"),
};
static_assert(std::size(injectors_table) == member_count<Injectors>());

constexpr FieldInfo calibration_table[] = {
    quantity<&Calibration::pressure>("pressure", "pressure it was told", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("psi")
        .above(5, 150)
        .spread({})
        .says("Pressure across the injectors that stands in the engine's controller."),
    quantity<&Calibration::injector_flow>("injector_flow", "injector flow it was told", kind::mass_flow)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("lb/h")
        .above(1, 300)
        .spread({})
        .says("Flow of an injector that stands in the controller, at that pressure; without it the injectors' own."),
    yes_no<&Calibration::vacuum_referenced>("vacuum_referenced", "expects a vacuum reference")
        .says("Whether it reckons with a pressure that follows the manifold's vacuum."),
    number<&Calibration::trim>("trim", "trim it has")
        .from(0.02, 0.5)
        .or_else(0.1, Source::chosen)
        .says("Share by which it can correct its fuel either way.")
        .after("common practice"),
};
static_assert(std::size(calibration_table) == member_count<Calibration>());

constexpr FieldInfo carburettor_table[] = {
    quantity<&Carburettor::least>("least", "least pressure", kind::gauge_pressure)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .from(0.5, 20)
        .or_else(4, Source::chosen)
        .says("Least pressure at the needle that fills the bowl.")
        .after("common practice: 4 to 7 psi"),
    quantity<&Carburettor::most>("most", "greatest pressure", kind::gauge_pressure)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .from(1, 25)
        .or_else(7, Source::chosen)
        .says("Greatest pressure the float can shut the needle against.")
        .after("common practice: 4 to 7 psi"),
};
static_assert(std::size(carburettor_table) == member_count<Carburettor>());

constexpr FieldInfo cut_off_table[] = {
    yes_no<&CutOff::engine_stopped>("engine_stopped", "when the engine stops")
        .decides_harm()
        .says(
            "Whether an electric pump stops within seconds of the engine stopping, key on or not; not asked where the "
            "wiring's switches tell."),
    yes_no<&CutOff::impact>("impact", "when the car is hit")
        .decides_harm()
        .says("Whether a switch stops it when the car is hit; not asked where the wiring's switches tell."),
};
static_assert(std::size(cut_off_table) == member_count<CutOff>());

constexpr FieldInfo table[] = {
    choice<&Input::delivery>("delivery", "delivery", delivery_names)
        .or_else(0, Source::chosen)
        .says("Injection under pressure, or a carburettor."),
    group<&Input::tank>("tank", "tank").says("Shape, vent and safety of the tank."),
    group<&Input::pick_up>("pick_up", "pick-up").says("Where the fuel is drawn, and what keeps it covered."),
    group<&Input::pump>("pump", "pump").says("The pump, by its curve."),
    list<&Input::filter>("filter", "filters").found(Station::underneath).says("Strainers and filters."),
    list<&Input::suction>("suction", "suction lines")
        .found(Station::underneath)
        .says("Runs from the tank to a pump outside it, in the order of the flow."),
    list<&Input::feed>("feed", "feed lines")
        .found(Station::underneath)
        .says("Runs from the pump to rail or carburettor, in the order of the flow."),
    list<&Input::back>("return", "return lines")
        .found(Station::underneath)
        .says("Runs from the regulator to the tank, in the order of the flow."),
    group<&Input::regulator>("regulator", "regulator").found(Station::engine_bay).says("What holds the pressure."),
    group<&Input::rail>("rail", "rail")
        .found(Station::engine_bay)
        .says("The injectors' rail, or a carburettor's float bowl."),
    group<&Input::injectors>("injectors", "injectors")
        .found(Station::engine_bay)
        .says("The injectors by their rating."),
    group<&Input::calibration>("calibration", "calibration")
        .found(Station::desk)
        .says("What the engine's controller was told."),
    group<&Input::carburettor>("carburettor", "carburettor")
        .found(Station::engine_bay)
        .says("What a carburettor's needle asks for."),
    group<&Input::cut_off>("cut_off", "cut-off").found(Station::electrics).says("What stops an electric pump."),
    number<&Input::ethanol>("ethanol", "ethanol")
        .with(Tool::fluid_tester)
        .from(0, 1)
        .or_else(0.1, Source::typical)
        .spread(Source::typical, {.absolute = 0.02})
        .says("Share of ethanol by volume.")
        .after("common practice: pump fuel"),
    quantity<&Input::reid_pressure>("reid_pressure", "Reid vapour pressure", kind::absolute_pressure)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .above(2, 15)
        .or_else(9)
        .spread(Source::typical, {.absolute = 0.8})
        .says("Of the gasoline before ethanol is blended in; summer fuel.")
        .after("ASTM D4814 class A: at most 9.0 psi (from memory)"),
    number<&Input::usual_vapour>("usual_vapour", "vapour pressure over the law's")
        .from(0.7, 1.3)
        .or_else(1)
        .spread(Source::typical, {.share = 0.08})
        .says("True vapour pressure over that of the law; carries its doubt.")
        .after("physics/fuel_blend: continued beyond its table"),
    quantity<&Input::exhaust_surface>("exhaust_surface", "exhaust's surface", kind::temperature)
        .found(Station::running)
        .in("degC")
        .from(100, 800)
        .or_else(350)
        .spread(Source::typical, {.absolute = 80})
        .says("Temperature of the exhaust beside the lines, engine running hot.")
        .after("common practice: 450 degC at a primary, 300 degC further back"),
    quantity<&Input::range_wanted>("range_wanted", "range wanted", kind::length)
        .found(Station::desk)
        .with(Tool::eye)
        .in("mile")
        .from(10, 1500)
        .spread({})
        .says("Distance at cruise on a tank that is wanted."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Tank::fields() { return tank_table; }
std::span<const FieldInfo> PickUp::fields() { return pick_up_table; }
std::span<const FieldInfo> Pump::fields() { return pump_table; }
std::span<const FieldInfo> Filter::fields() { return filter_table; }
std::span<const FieldInfo> Run::fields() { return run_table; }
std::span<const FieldInfo> Regulator::fields() { return regulator_table; }
std::span<const FieldInfo> Rail::fields() { return rail_table; }
std::span<const FieldInfo> Injectors::fields() { return injectors_table; }
std::span<const FieldInfo> Calibration::fields() { return calibration_table; }
std::span<const FieldInfo> Carburettor::fields() { return carburettor_table; }
std::span<const FieldInfo> CutOff::fields() { return cut_off_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::fuel
