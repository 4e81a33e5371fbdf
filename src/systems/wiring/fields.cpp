#include "systems/wiring/wiring.hpp"

namespace sw::wiring {
namespace {

// Members of the nested Wire, reached as if they were the owner's own: `gauge` stands beside `from` and `to`.
template <auto Owner, auto Member>
struct Inner;
template <class O, class W, W O::*Outer, class T, T W::*M>
struct Inner<Outer, M> {
  static consteval FieldInfo of(FieldInfo f) {
    f.access.address = [](const void* o) -> const void* { return &(static_cast<const O*>(o)->*Outer.*M); };
    f.access.get = [](const void* o) -> std::optional<double> {
      auto& m = static_cast<const O*>(o)->*Outer.*M;
      if (!m) return std::nullopt;
      return field_detail::to_number(*m);
    };
    f.access.set = [](void* o, std::optional<double> x) {
      auto& m = static_cast<O*>(o)->*Outer.*M;
      if (x)
        m = field_detail::from_number<typename T::value_type>(*x);
      else
        m.reset();
    };
    return f;
  }
};
template <auto Outer, auto M>
consteval FieldInfo inner(FieldInfo f) {
  return Inner<Outer, M>::of(f);
}

template <auto W>
consteval FieldInfo gauge() {
  return inner<W, &Wire::gauge>(quantity<&Wire::gauge>("gauge", "wire size", kind::wire_size)
                                    .may_change()
                                    .spread({})
                                    .says("Conductor size.")
                                    .after("ASTM B258"));
}
template <auto W>
consteval FieldInfo length() {
  return inner<W, &Wire::length>(quantity<&Wire::length>("length", "length", kind::length)
                                     .in("ft")
                                     .from(0, 60)
                                     .or_else(6)
                                     .spread(Source::typical, {.share = 0.5})
                                     .spread(Source::measured, {.share = 0.03})
                                     .says("Length of the conductor."));
}
/// A cable between two nodes has two crimped ends; a load's feed has fuse holder, relay, connectors and its ground's
/// end.
constexpr double cable_joints_mohm = 0.3, feed_joints_mohm = 4.0;
template <auto W>
consteval FieldInfo joints(double usual_mohm) {
  return inner<W, &Wire::joints>(quantity<&Wire::joints>("joints", "joints", kind::resistance)
                                     .with(Tool::volt_drop)
                                     .may_change()
                                     .in("mohm")
                                     .from(0, 500)
                                     .or_else(usual_mohm)
                                     .spread(Source::typical, {.share = 0.5})
                                     .says("Connectors, switch and ends together.")
                                     .after("common practice"));
}
template <auto W>
consteval FieldInfo fuse() {
  return inner<W, &Wire::fuse>(quantity<&Wire::fuse>("fuse", "fuse", kind::current)
                                   .with(Tool::eye)
                                   .may_change()
                                   .in("A")
                                   .above(0.5, 500)
                                   .spread({})
                                   .decides_harm()
                                   .says("Rating of the fuse or fusible link at its source."));
}
template <auto W>
consteval FieldInfo unfused() {
  return inner<W, &Wire::unfused>(
      yes_no<&Wire::unfused>("unfused", "no fuse").says("True where no fuse or link protects it at all."));
}
template <auto W>
consteval FieldInfo insulation() {
  return inner<W, &Wire::insulation>(quantity<&Wire::insulation>("insulation", "insulation", kind::temperature)
                                         .with(Tool::eye)
                                         .in("degC")
                                         .from(60, 200)
                                         .or_else(80)
                                         .spread({})
                                         .spread(Source::typical, {.absolute = 10})
                                         .says("Temperature rating of the insulation; an old car's is 60 to 80 degC.")
                                         .after("SAE J1128 type GPT, PVC primary wire (from memory)"));
}
template <auto W>
consteval FieldInfo zone() {
  return inner<W, &Wire::zone>(
      choice<&Wire::zone>("zone", "zone", zone_names).or_else(1, Source::chosen).says("Where most of it lies."));
}
template <auto W>
consteval FieldInfo bundle() {
  return inner<W, &Wire::bundle>(integer<&Wire::bundle>("bundle", "conductors in the bundle")
                                     .from(1, 60)
                                     .or_else(3)
                                     .spread(Source::typical, {.absolute = 2})
                                     .says("Conductors that carry current side by side; of a wire alone 1.")
                                     .after("common practice"));
}

constexpr std::string_view logic_says =
    "Lines of words joined by and, with not before any; one line that holds is enough. Words: always, key, running, "
    "air-conditioning, night, rain, heat, brake, start, accessory, turning, oil-pressure, in-gear, hit, prime, "
    "after-run, hot, high-side.";

constexpr FieldInfo run_table[] = {
    text<&Run::from>("from", "from")
        .says("Node it starts at: battery, ground, alternator, block, bus, body, starter, case (the alternator's, "
              "where its bracket is no sure way to the block), or one of your own."),
    text<&Run::to>("to", "to").says("Node it ends at."),
    gauge<&Run::wire>(),
    length<&Run::wire>(),
    joints<&Run::wire>(cable_joints_mohm),
    fuse<&Run::wire>(),
    unfused<&Run::wire>(),
    insulation<&Run::wire>(),
    zone<&Run::wire>(),
    bundle<&Run::wire>(),
    quantity<&Run::resistance>("resistance", "measured resistance", kind::resistance)
        .may_change()
        .in("mohm")
        .from(0, 1000)
        .says("End to end, where it was measured; takes the place of gauge, length and joints."),
    quantity<&Run::limit>("limit", "rated current", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("A")
        .above(1, 500)
        .spread({})
        .says("Rating of what stands in the run besides wire: ammeter, bulkhead connector, link."),
    yes_no<&Run::one_way>("one_way", "one way")
        .or_else(0, Source::chosen)
        .says("True where a diode stands in it that passes from its start to its end."),
    yes_no<&Run::stray>("stray", "stray path")
        .or_else(0, Source::chosen)
        .says("True for metal that conducts and is not meant to: a control cable's sheath, a linkage, a fuel tube."),
};
// Wire's eight members stand in place of `wire`.
static_assert(std::size(run_table) == member_count<Run>() - 1 + member_count<Wire>());

constexpr FieldInfo switch_table[] = {
    text<&Switch::from>("from", "from").says("Node its contact starts at."),
    text<&Switch::to>("to", "to").says("Node its contact ends at."),
    names<&Switch::closed>("closed", "closed").says(logic_says),
    quantity<&Switch::contact>("contact", "contact", kind::resistance)
        .with(Tool::volt_drop)
        .may_change()
        .in("mohm")
        .from(0, 1000)
        .or_else(5)
        .spread(Source::typical, {.share = 1.0})
        .says("Resistance of the closed contact with its terminals; an old switch has ten times a new relay's.")
        .after("common practice"),
    quantity<&Switch::limit>("limit", "rated current", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .may_change()
        .in("A")
        .above(0.1, 500)
        .spread({})
        .says("Current its contact carries for good."),
    text<&Switch::coil_from>("coil_from", "coil fed from").says("Of a relay: node its coil is fed from."),
    text<&Switch::coil_to>("coil_to", "coil grounded to").says("Node its coil is grounded to; without it body."),
    quantity<&Switch::coil>("coil", "coil", kind::resistance)
        .in("ohm")
        .above(1, 1000)
        .or_else(85)
        .spread(Source::typical, {.share = 0.25})
        .says("Resistance of the coil.")
        .after("common practice: 70 to 110 ohm in a 12 V car"),
    quantity<&Switch::pull_in>("pull_in", "pulls in at", kind::voltage)
        .in("V")
        .above(1, 14)
        .spread({})
        .says("Least volts at the coil that close it; without it 0.67 of the car's nominal volts.")
        .after("common practice: at most 8 V of 12 V"),
};
static_assert(std::size(switch_table) == member_count<Switch>());

constexpr FieldInfo load_table[] = {
    quantity<&Load::current>("current", "current", kind::current)
        .in("A")
        .above(0.0001, 300)
        .says("Current it takes at its rated volts."),
    quantity<&Load::at_voltage>("at_voltage", "at volts", kind::voltage)
        .in("V")
        .above(3, 16)
        .spread({})
        .says("Volts at which it takes that; without it 13.5 V in a 12 V car, 6.75 V in a 6 V car."),
    choice<&Load::behaviour>("behaviour", "behaviour", behaviour_names)
        .or_else(1, Source::chosen)
        .says("How its current follows the volts."),
    names<&Load::when>("when", "when").says(logic_says),
    number<&Load::share>("share", "share of time")
        .above(0, 1)
        .or_else(1, Source::chosen)
        .spread({})
        .says("Share of the time it is on while it is on."),
    quantity<&Load::least_voltage>("least_voltage", "least volts", kind::voltage)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("V")
        .above(1, 15)
        .spread({})
        .says("Least volts it works at."),
    quantity<&Load::stall>("stall", "stalled current", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("A")
        .above(0.1, 500)
        .says("Of a motor: current at its rated volts while it is held still."),
    quantity<&Load::inrush>("inrush", "inrush", kind::current)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("A")
        .above(0.1, 1000)
        .says("Greatest current as it is switched on; without it the stalled current of a motor, ten times a lamp's "
              "own.")
        .after("a cold filament has a tenth to a fifteenth of its hot resistance: common practice"),
    quantity<&Load::inrush_time>("inrush_time", "inrush lasts", kind::time)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("ms")
        .above(1, 10000)
        .says("How long it takes to fall to half; without it 10 ms of a lamp, 100 ms of a motor.")
        .after("common practice"),
    text<&Load::from>("from", "fed from").says("Node it is fed from; without it bus."),
    text<&Load::to>("to", "grounded to").says("Node it is grounded to; without it body."),
    gauge<&Load::wire>(),
    length<&Load::wire>(),
    joints<&Load::wire>(feed_joints_mohm),
    fuse<&Load::wire>(),
    unfused<&Load::wire>(),
    insulation<&Load::wire>(),
    zone<&Load::wire>(),
    bundle<&Load::wire>(),
};
static_assert(std::size(load_table) == member_count<Load>() - 1 + member_count<Wire>());

constexpr FieldInfo fan_table[] = {
    text<&FanFeed::from>("from", "fed from").says("Node the fans are fed from; without it bus."),
    text<&FanFeed::to>("to", "grounded to").says("Node the fans are grounded to; without it body."),
    gauge<&FanFeed::wire>(),
    length<&FanFeed::wire>(),
    joints<&FanFeed::wire>(feed_joints_mohm),
    fuse<&FanFeed::wire>(),
    unfused<&FanFeed::wire>(),
    insulation<&FanFeed::wire>(),
    zone<&FanFeed::wire>(),
    bundle<&FanFeed::wire>(),
    quantity<&FanFeed::resistance>("resistance", "feed and ground together", kind::resistance)
        .with(Tool::volt_drop)
        .in("mohm")
        .from(0, 500)
        .or_else(12)
        .spread(Source::typical, {.share = 0.6})
        .says("Stand-in for a fan feed whose wire size is not known yet; not used where it is.")
        .after("common practice"),
};
static_assert(std::size(fan_table) == member_count<FanFeed>() - 1 + member_count<Wire>());

constexpr FieldInfo table[] = {
    choice<&Input::sense>("sense", "regulator senses at", sense_names)
        .or_else(0, Source::chosen)
        .says("Where the regulator measures: its own stud, the bus, or the battery."),
    list<&Input::run>("run", "runs").says("Conductors between nodes."),
    list<&Input::switches>("switch", "switches and relays").says("What closes and opens between nodes, and when."),
    list<&Input::load>("load", "loads").says("What uses current, the fans apart."),
    group<&Input::fans>("fans", "fan feed").says("Feed and ground of the electric fans."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Run::fields() { return run_table; }
std::span<const FieldInfo> Switch::fields() { return switch_table; }
std::span<const FieldInfo> Load::fields() { return load_table; }
std::span<const FieldInfo> FanFeed::fields() { return fan_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::wiring
