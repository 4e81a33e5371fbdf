#include "systems/vacuum/vacuum.hpp"

namespace sw::vacuum {
namespace {

constexpr FieldInfo store_table[] = {
    quantity<&Store::booster_volume>("booster_volume", "booster volume", kind::volume)
        .decides_harm()
        .in("in3")
        .above(5, 1000)
        .says("Air in all the booster's chambers at rest and in its hose up to the check valve."),
    quantity<&Store::rear_volume>("rear_volume", "rear chambers applied", kind::volume)
        .decides_harm()
        .in("in3")
        .above(1, 600)
        .says("Volume behind the diaphragms with the brakes hard on: area times stroke, and what is there at rest."),
    quantity<&Store::rear_at_rest>("rear_at_rest", "rear chambers at rest", kind::volume)
        .in("in3")
        .from(0, 300)
        .or_else(15)
        .spread(Source::typical, {.share = 0.5})
        .says("Volume behind the diaphragms with the foot off.")
        .after("common practice: diaphragms rest close to the shell behind them"),
    quantity<&Store::reservoir>("reservoir", "reservoir", kind::volume)
        .may_grow()
        .in("in3")
        .from(0, 2000)
        .or_else(0, Source::chosen)
        .says("A tank of its own between check valve and booster."),
    quantity<&Store::fill_time>("fill_time", "time to fill", kind::time)
        .found(Station::running)
        .in("s")
        .from(0.2, 60)
        .or_else(1.5)
        .spread(Source::typical, {.share = 0.5})
        .says("Time in which the store comes two thirds of the way to the manifold's vacuum.")
        .after("common practice"),
    quantity<&Store::leak>("leak", "vacuum lost in a minute", kind::vacuum)
        .found(Station::running)
        .in("inHg")
        .from(0, 20)
        .or_else(0, Source::chosen)
        .says("What the gauge at the booster falls in the first minute, engine off."),
};
static_assert(std::size(store_table) == member_count<Store>());

constexpr FieldInfo pump_table[] = {
    quantity<&Pump::cut_in>("cut_in", "starts below", kind::vacuum)
        .found(Station::running)
        .may_change()
        .in("inHg")
        .above(1, 25)
        .says("Vacuum below which its switch starts it."),
    quantity<&Pump::cut_out>("cut_out", "stops at", kind::vacuum)
        .found(Station::running)
        .may_change()
        .in("inHg")
        .above(2, 28)
        .says("Vacuum at which its switch stops it."),
    quantity<&Pump::fill_time>("fill_time", "time to stop", kind::time)
        .found(Station::running)
        .in("s")
        .above(0.5, 120)
        .or_else(8)
        .spread(Source::typical, {.share = 0.5})
        .says("Time from no vacuum to where it stops, with this store.")
        .after("common practice"),
    quantity<&Pump::current>("current", "current", kind::current)
        .in("A")
        .from(0, 60)
        .or_else(12)
        .spread(Source::typical, {.share = 0.3})
        .says("While it runs; lay its wire as a load of its own under `wiring.load`.")
        .after("common practice: 8 to 15 A"),
};
static_assert(std::size(pump_table) == member_count<Pump>());

constexpr FieldInfo breathing_table[] = {
    curve<&Breathing::valve_flow>("valve_flow", "crankcase valve's flow", kind::vacuum, kind::volume_flow)
        .in("inHg", "cfm")
        .from(0, 20)
        .says("What the crankcase ventilation valve lets through, against manifold vacuum."),
    quantity<&Breathing::blow_by>("blow_by", "blow-by", kind::volume_flow)
        .found(Station::running)
        .in("cfm")
        .from(0, 20)
        .says("Gas past the rings at a hot idle."),
    quantity<&Breathing::idle_air>("idle_air", "air for idling", kind::volume_flow)
        .found(Station::running)
        .in("cfm")
        .above(0.5, 100)
        .says("Air the engine asks for at its hot idle speed."),
    quantity<&Breathing::throttle_leak>("throttle_leak", "air past the closed throttle", kind::volume_flow)
        .may_change()
        .in("cfm")
        .from(0, 60)
        .or_else(0, Source::chosen)
        .says("By its stop and leaks: air the idle controller cannot shut off."),
    quantity<&Breathing::hole>("hole", "crankcase valve's hole", kind::length)
        .may_grow()
        .in("in")
        .above(0.1, 3)
        .says("Bore of the hole in the rocker cover through which the valve draws."),
    quantity<&Breathing::baffle_inlet>("baffle_inlet", "inlet of its baffle", kind::area)
        .may_grow()
        .in("in2")
        .above(0.1, 60)
        .says("Open area by which gas comes under the baffle before that hole; leave it out where there is none."),
    quantity<&Breathing::droplet>("droplet", "oil droplet", kind::length)
        .in("mm")
        .from(0.02, 2)
        .or_else(0.3)
        .spread(Source::typical, {.share = 0.3})
        .says("Drops thrown up under the cover that should fall back.")
        .after("common practice"),
};
static_assert(std::size(breathing_table) == member_count<Breathing>());

constexpr FieldInfo table[] = {
    quantity<&Input::idle>("idle", "idle vacuum", kind::vacuum)
        .found(Station::running)
        .in("inHg")
        .from(0, 25)
        .says("Manifold vacuum at a hot idle, in gear where the gearbox is automatic, as near the sea's level reads."),
    quantity<&Input::idle_air_conditioning>("idle_air_conditioning", "idle vacuum with air conditioning", kind::vacuum)
        .found(Station::running)
        .in("inHg")
        .from(0, 25)
        .says("The same with the compressor on; where it is not given it follows from the drop of the idle speed."),
    quantity<&Input::usual_idle>("usual_idle", "usual idle vacuum", kind::vacuum)
        .in("inHg")
        .from(5, 25)
        .or_else(18)
        .spread(Source::typical, {.absolute = 3})
        .says("Stands in for an idle vacuum nobody measured, less what a long camshaft costs. Never for a booster's: "
              "brakes ask for the gauge.")
        .after("common practice: 16 to 21 inHg with the maker's camshaft"),
    quantity<&Input::cam_duration>("cam_duration", "camshaft duration", kind::angle)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("deg")
        .from(150, 320)
        .spread({})
        .says("At 0.050 in of lift, mean of inlet and exhaust; lowers the usual idle vacuum."),
    group<&Input::store>("store", "booster's store").says("What holds vacuum for the booster."),
    group<&Input::pump>("pump", "vacuum pump")
        .says("An electric pump at the booster; leave it out where there is none."),
    group<&Input::breathing>("breathing", "crankcase breathing").says("Crankcase valve and the air of idling."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Store::fields() { return store_table; }
std::span<const FieldInfo> Pump::fields() { return pump_table; }
std::span<const FieldInfo> Breathing::fields() { return breathing_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::vacuum
