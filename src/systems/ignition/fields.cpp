#include "systems/ignition/ignition.hpp"

namespace sw::ignition {
namespace {

constexpr FieldInfo coil_table[] = {
    quantity<&Coil::inductance>("inductance", "inductance of the primary", kind::inductance)
        .in("mH")
        .above(0.2, 30)
        .says("By a meter across the primary, or the coil's data sheet."),
    quantity<&Coil::resistance>("resistance", "resistance of the primary", kind::resistance)
        .in("ohm")
        .above(0.1, 10)
        .says("Across its two small terminals, cold, leads of the meter taken off."),
    quantity<&Coil::ballast>("ballast", "ballast", kind::resistance)
        .may_change()
        .in("ohm")
        .from(0, 5)
        .or_else(0, Source::chosen)
        .says("Resistor or resistance wire in the coil's feed; none is 0."),
    yes_no<&Coil::ballast_bypassed>("ballast_bypassed", "ballast bypassed while cranking")
        .or_else(0, Source::chosen)
        .says("Whether the starter's switch feeds the coil past its ballast."),
    choice<&Coil::one_for>("one_for", "one coil for", serves_names)
        .or_else(0, Source::chosen)
        .says("One coil for all cylinders with a distributor, one for two that fire together, or one for each."),
    number<&Coil::transfer>("transfer", "share that reaches the plug")
        .from(0.2, 0.95)
        .or_else(0.6)
        .spread(Source::typical, {.absolute = 0.1})
        .says("Energy in the spark over energy stored in the coil.")
        .after("common practice: half to two thirds"),
    quantity<&Coil::most_heat>("most_heat", "heat the coil stands", kind::power)
        .in("W")
        .above(1, 200)
        .says("Greatest lasting heat in its primary; without it the usual of its kind."),
    number<&Coil::usual_heat>("usual_heat", "usual heat a coil stands")
        .from(0.4, 2)
        .or_else(1)
        .spread(Source::typical, {.share = 0.3})
        .says(
            "Over the usual 40 W of a canister for all cylinders, 20 W for a pair, 12 W on a plug; stands in, with its "
            "doubt, for a figure nobody gave.")
        .after("common practice"),
    quantity<&Coil::kick>("kick", "kick of the primary", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .from(50, 600)
        .or_else(350)
        .spread(Source::typical, {.share = 0.2})
        .says("Height of the pulse at the coil's negative terminal as it is switched off.")
        .after("common practice: 250 to 400 V"),
};
static_assert(std::size(coil_table) == member_count<Coil>());

constexpr FieldInfo switching_table[] = {
    choice<&Switching::by>("by", "switched by", by_names)
        .says("Contact points, an ignition module with its own trigger, or the engine's controller."),
    quantity<&Switching::dwell_angle>("dwell_angle", "dwell angle", kind::angle)
        .found(Station::running)
        .may_change()
        .in("deg")
        .above(1, 120)
        .says("Turn of the distributor over which the coil is fed, as a dwell meter shows it."),
    quantity<&Switching::dwell_time>("dwell_time", "dwell time", kind::time)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("ms")
        .above(0.3, 20)
        .says("Time for which a module or controller feeds the coil before each spark."),
    curve<&Switching::dwell_curve>("dwell_curve", "dwell time by volts", kind::voltage, kind::time)
        .in("V", "ms")
        .from(0.1, 30)
        .says("Dwell time against the volts of the car; takes the place of one dwell time."),
    quantity<&Switching::least_off>("least_off", "time left for the spark", kind::time)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("ms")
        .from(0.1, 3)
        .or_else(0.8)
        .says("A module or controller feeds the coil no longer than leaves so much before the next time.")
        .after("common practice: a spark burns for 0.8 to 2 ms"),
    quantity<&Switching::drop>("drop", "volts across the switch", kind::voltage)
        .found(Station::running)
        .in("V")
        .from(0, 4)
        .or_else(1)
        .spread(Source::typical, {.absolute = 0.6})
        .says("Volts points, module or driver keep for themselves while the coil is fed.")
        .after("common practice: points 0.2 V, transistors 0.5 to 2 V"),
    quantity<&Switching::current_limit>("current_limit", "current limit", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("A")
        .above(1, 30)
        .says("Current a module or controller holds; none where it does not."),
    quantity<&Switching::most_current>("most_current", "most current", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("A")
        .above(1, 40)
        .says("Greatest current the switch stands; 5 A for points where nobody says."),
    quantity<&Switching::most_heat>("most_heat", "most heat in the switch", kind::power)
        .in("W")
        .above(0.5, 100)
        .says("Lasting heat the module stands on its mounting."),
    quantity<&Switching::least_voltage>("least_voltage", "least volts", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .from(2, 11)
        .says(
            "Volts below which module or controller drops out: no spark while the starter pulls the car's volts down."),
    choice<&Switching::standing>("standing", "key on, engine standing", standing_names)
        .says("Whether module or controller takes the coil's current away while the engine stands with the key on."),
};
static_assert(std::size(switching_table) == member_count<Switching>());

constexpr FieldInfo timing_table[] = {
    choice<&Timing::by>("by", "timed by", timed_by_names)
        .says("What moves the spark: the distributor's own advance (a controller for the fuel alone too), or the "
              "controller's table."),
    quantity<&Timing::base>("base", "base timing", kind::angle)
        .found(Station::running)
        .with(Tool::timing_light)
        .may_change()
        .in("deg")
        .from(-10, 40)
        .says("Advance at idle, canister plugged, by timing light."),
    curve<&Timing::mechanical>("mechanical", "mechanical advance", kind::shaft_speed, kind::angle)
        .found(Station::running)
        .with(Tool::timing_light)
        .in("rpm", "deg")
        .from(0, 50)
        .says("What the weights add, in degrees of the crankshaft, against engine speed."),
    yes_no<&Timing::locked>("locked", "distributor locked")
        .says("Whether the weights are held fast or taken out: asked for where a controller sets the timing."),
    quantity<&Timing::vacuum>("vacuum", "vacuum advance", kind::angle)
        .found(Station::running)
        .with(Tool::timing_light)
        .in("deg")
        .from(0, 40)
        .says("What the canister adds at light load, in degrees of the crankshaft."),
    choice<&Timing::canister>("canister", "vacuum canister", canister_names)
        .says("Whether the canister has its hose: asked for where a controller sets the timing."),
    quantity<&Timing::table_full>("table_full", "table at full load", kind::angle)
        .may_change()
        .in("deg")
        .from(0, 60)
        .says("Greatest advance the controller's table asks at full load, base and all."),
    quantity<&Timing::table_light>("table_light", "table at light load", kind::angle)
        .may_change()
        .in("deg")
        .from(0, 70)
        .says("Greatest it asks at light load; without it the figure of full load."),
    quantity<&Timing::table_least>("table_least", "least of the table", kind::angle)
        .in("deg")
        .from(-20, 40)
        .says("Least advance the controller asks, cranking among it."),
    quantity<&Timing::most>("most", "most advance", kind::angle)
        .in("deg")
        .from(10, 60)
        .spread({})
        .says("Greatest advance this engine stands at full load on its fuel."),
    quantity<&Timing::most_light>("most_light", "most advance at light load", kind::angle)
        .in("deg")
        .from(15, 70)
        .or_else(52, Source::chosen)
        .spread({})
        .says("The same at light load.")
        .after("common practice: 45 to 52 deg cruising"),
    quantity<&Timing::rotor_phase>("rotor_phase", "rotor meets its terminal at", kind::angle)
        .with(Tool::timing_light)
        .may_change()
        .in("deg")
        .from(-20, 60)
        .says("Advance, in degrees of the crankshaft, at which the rotor's tip points straight at the cap's terminal."),
    quantity<&Timing::rotor_reach>("rotor_reach", "reach of the rotor's tip", kind::angle)
        .in("deg")
        .above(1, 25)
        .or_else(10)
        .spread(Source::typical, {.absolute = 2})
        .says("Turn of the rotor to either side within which the spark still goes to its own terminal.")
        .after("common practice: half the tip's width, eight cylinders"),
};
static_assert(std::size(timing_table) == member_count<Timing>());

constexpr FieldInfo pick_up_table[] = {
    choice<&PickUp::from>("from", "pulses from", pulses_names)
        .may_change()
        .says("Where the controller hears the engine turn."),
    quantity<&PickUp::threshold>("threshold", "threshold", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .above(0.05, 50)
        .says("Volts at which its input counts a pulse."),
    quantity<&PickUp::input_resistance>("input_resistance", "resistance of the input", kind::resistance)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("kohm")
        .above(0.01, 1000)
        .says("Of the input to ground, pull-up or filter among it."),
    quantity<&PickUp::stands>("stands", "volts the input stands", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .above(1, 1000)
        .says("Greatest volts its maker allows at the input."),
    quantity<&PickUp::beside>("beside", "length beside the leads", kind::length)
        .may_change()
        .in("in")
        .from(0, 200)
        .says("How far the wire runs along plug leads or coil lead."),
    quantity<&PickUp::apart>("apart", "distance from the leads", kind::length)
        .may_grow()
        .in("in")
        .above(0.04, 60)
        .says("Between the middles of wire and lead where they run side by side."),
    quantity<&PickUp::height>("height", "height above metal", kind::length)
        .in("in")
        .above(0.1, 12)
        .or_else(0.8)
        .says("Of both above block, head or inner wing.")
        .after("common practice"),
    choice<&PickUp::leads>("leads", "plug leads", leads_names)
        .may_change()
        .says("Solid core, or suppression leads of 500 ohm a foot and more."),
    yes_no<&PickUp::screened>("screened", "screened")
        .may_change()
        .or_else(0, Source::chosen)
        .says("A screened twisted pair, its screen grounded at one end."),
    quantity<&PickUp::edge>("edge", "edge on the lead", kind::voltage)
        .in("V")
        .above(1000, 60000)
        .or_else(18000)
        .spread(Source::typical, {.share = 0.3})
        .says("Volts by which a lead jumps as its plug fires.")
        .after("common practice: 8 to 25 kV"),
    quantity<&PickUp::edge_time>("edge_time", "time of that edge", kind::time)
        .in("ms")
        .above(1e-5, 0.1)
        .or_else(0.0012)
        .spread(Source::typical, {.share = 0.5})
        .says("In which it does so, solid leads.")
        .after("common practice: about a microsecond"),
    choice<&PickUp::ground>("ground", "controller grounded to", ground_names)
        .may_change()
        .says("Where the controller's signal ground ends."),
};
static_assert(std::size(pick_up_table) == member_count<PickUp>());

constexpr FieldInfo table[] = {
    integer<&Input::cylinders>("cylinders", "cylinders").from(1, 16).says("How many the engine has; a four-stroke."),
    quantity<&Input::needed_energy>("needed_energy", "energy the spark needs", kind::energy)
        .in("mJ")
        .from(1, 150)
        .or_else(15)
        .spread(Source::typical, {.share = 0.2})
        .says("In the spark, so that a mixture off its best, cold or under load, lights every time.")
        .after(
            "common practice: the best mixture lights by a fraction of a millijoule, a poor one by several; 15 mJ in "
            "the spark is what is built for at least"),
    choice<&Input::tachometer>("tachometer", "tachometer counts at", counts_names)
        .or_else(0, Source::chosen)
        .says("Where the tachometer's signal is taken."),
    group<&Input::coil>("coil", "coil").says("The ignition coil, or one of them."),
    group<&Input::switching>("switching", "what switches the coil").says("Points, module or controller."),
    group<&Input::timing>("timing", "timing").says("What moves the spark, and how far the engine stands it."),
    group<&Input::pick_up>("pick_up", "controller's speed signal")
        .says("The wire that tells the controller of each turn."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Coil::fields() { return coil_table; }
std::span<const FieldInfo> Switching::fields() { return switching_table; }
std::span<const FieldInfo> Timing::fields() { return timing_table; }
std::span<const FieldInfo> PickUp::fields() { return pick_up_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::ignition
