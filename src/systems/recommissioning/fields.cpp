#include "systems/recommissioning/recommissioning.hpp"

namespace sw::recommissioning {
namespace {

constexpr FieldInfo before_table[] = {
    yes_no<&Before::turned_by_hand>("turned_by_hand", "turned by hand")
        .decides_harm()
        .says("Whether the engine was turned two full turns by hand, plugs out, oil in the bores."),
    yes_no<&Before::oil_primed>("oil_primed", "oil primed")
        .decides_harm()
        .says("Whether the gauge showed oil pressure by a drive tool before the first crank."),
    yes_no<&Before::fuel_drained>("fuel_drained", "old fuel drained")
        .decides_harm()
        .says("Whether the old fuel is out, tank and lines looked into."),
    yes_no<&Before::fluid_changed>("fluid_changed", "brake fluid changed")
        .decides_harm()
        .says("Whether all brake fluid is new and the old was looked at for water and rubber."),
    yes_no<&Before::rodents_looked_for>("rodents_looked_for", "rodents looked for")
        .decides_harm()
        .says("Whether loom, air ways and exhaust were looked through for nests and teeth."),
};
static_assert(std::size(before_table) == member_count<Before>());

constexpr FieldInfo hose_table[] = {
    quantity<&Hose::age>("age", "age", kind::time)
        .with(Tool::eye)
        .decides_harm()
        .in("year")
        .from(0, 80)
        .spread({})
        .says("By the date on it, or that of the car."),
    quantity<&Hose::bore>("bore", "bore left", kind::length)
        .in("mm")
        .above(0, 20)
        .spread(Source::measured, {.share = 0.1})
        .says("Narrowest bore, by wires or by how slowly the bleeder runs."),
    quantity<&Hose::length>("length", "narrow over", kind::length)
        .in("mm")
        .above(0, 1000)
        .says("Length over which it is so narrow."),
    quantity<&Hose::seal>("seal", "pressure that brings it back", kind::pressure_difference)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .above(0, 60)
        .or_else(12)
        .spread(Source::typical, {.share = 0.2})
        .says("Pressure a caliper's seal makes as it draws its piston back.")
        .after("common practice"),
    quantity<&Hose::returns>("returns", "fluid that returns", kind::volume)
        .in("in3")
        .above(0, 2)
        .or_else(0.05)
        .spread(Source::typical, {.share = 0.2})
        .says("Fluid that must come back before the pads are free.")
        .after("common practice"),
};
static_assert(std::size(hose_table) == member_count<Hose>());

constexpr FieldInfo feed_table[] = {
    quantity<&Feed::insulation>("insulation", "insulation", kind::resistance)
        .found(Station::electrics)
        .with(Tool::insulation_tester)
        .decides_harm()
        .in("ohm")
        .from(0, 1e10)
        .spread(Source::measured, {.share = 0.1})
        .says("Feed to body, everything unplugged and the battery out."),
};
static_assert(std::size(feed_table) == member_count<Feed>());

constexpr FieldInfo splice_table[] = {
    quantity<&Splice::resistance>("resistance", "resistance", kind::resistance)
        .with(Tool::volt_drop)
        .decides_harm()
        .in("mohm")
        .from(0, 1000)
        .spread(Source::measured, {.share = 0.05})
        .says("Millivolts across it at load over the load's current."),
    quantity<&Splice::current>("current", "current", kind::current)
        .in("A")
        .above(0, 300)
        .says("What goes through it for good, by clamp meter."),
};
static_assert(std::size(splice_table) == member_count<Splice>());

constexpr FieldInfo table[] = {
    group<&Input::before>("before", "before the first start")
        .found(Station::before_all)
        .says("What is done before it is cranked."),
    list<&Input::hose>("hose", "old hoses").found(Station::wheels_off).says("Brake hoses that are kept, by any names."),
    list<&Input::feed>("feed", "feeds of the old loom")
        .found(Station::electrics)
        .says("Feeds of a loom that is kept, by any names."),
    list<&Input::splice>("splice", "old splices")
        .found(Station::electrics)
        .says("Splices that are kept, by any names."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Before::fields() { return before_table; }
std::span<const FieldInfo> Hose::fields() { return hose_table; }
std::span<const FieldInfo> Feed::fields() { return feed_table; }
std::span<const FieldInfo> Splice::fields() { return splice_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::recommissioning
