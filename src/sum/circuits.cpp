// Sums of circuits, battery, alternator and fuse.
#include <algorithm>

#include "physics/alternator.hpp"
#include "physics/battery.hpp"
#include "physics/circuit.hpp"
#include "physics/fuse.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view battery_care =
    "a battery gives off explosive gas, holds acid and can weld a tool to the body: eye protection, no sparks, ground "
    "lead off first and on last, as the maker instructs";
constexpr std::string_view electrical_fire =
    "a fuse protects the wire, not the load: never replace one by a larger; disconnect the battery before work";

struct DividerIn {
  std::optional<Voltage> supply;
  std::optional<Resistance> pull_up, sender;
  std::optional<Voltage> voltage;
};
struct DividerOut {
  std::optional<Voltage> voltage;
  std::optional<Resistance> sender;
  std::optional<Current> current;
};
constexpr Argument divider_in[] = {
    positive<&DividerIn::supply>("supply", "supply voltage", kind::voltage, "V"),
    positive<&DividerIn::pull_up>("pull_up", "resistor to the supply", kind::resistance, "ohm"),
    quantity<&DividerIn::sender>("sender", "sender to ground", kind::resistance).in("ohm").from(0, 1e9),
    quantity<&DividerIn::voltage>("voltage", "at the sender", kind::voltage).in("V").from(0, 1e9),
};
constexpr Argument divider_out[] = {
    result<&DividerOut::voltage>("voltage", "at the sender", kind::voltage, "V"),
    result<&DividerOut::sender>("sender", "sender to ground", kind::resistance, "ohm"),
    result<&DividerOut::current>("current", "through both", kind::current, "mA"),
};
constexpr Rule divider_rules[] = {one_of("sender", "voltage")};

void divider_check(const DividerIn& in, Remarks& say) {
  if (in.supply && in.voltage && in.voltage->si >= in.supply->si)
    say.fault("voltage", "reaches the supply voltage", "the voltage at the sender lies below the supply");
}

void divider(const DividerIn& in, DividerOut& out, Remarks&) {
  double sender = in.sender ? in.sender->si : 0;
  if (in.sender)
    out.voltage = Voltage{physics::divider_volts(in.supply->si, in.pull_up->si, sender)};
  else
    out.sender = Resistance{sender = physics::divider_sender_ohm(in.supply->si, in.pull_up->si, in.voltage->si)};
  out.current = Current{in.supply->si / (in.pull_up->si + sender)};
}

struct BridgeIn {
  std::optional<Voltage> supply;
  std::optional<Resistance> r1, r2, r3, r4, detector;
};
struct BridgeOut {
  std::optional<Voltage> open_voltage;
  std::optional<Current> detector_current;
  std::optional<Resistance> resistance;
};
constexpr Argument bridge_in[] = {
    positive<&BridgeIn::supply>("supply", "supply voltage", kind::voltage, "V"),
    positive<&BridgeIn::r1>("r1", "top left", kind::resistance, "ohm"),
    positive<&BridgeIn::r2>("r2", "bottom left", kind::resistance, "ohm"),
    positive<&BridgeIn::r3>("r3", "top right", kind::resistance, "ohm"),
    positive<&BridgeIn::r4>("r4", "bottom right", kind::resistance, "ohm"),
    may(positive<&BridgeIn::detector>("detector", "between the middles", kind::resistance, "ohm")),
};
constexpr Argument bridge_out[] = {
    result<&BridgeOut::open_voltage>("open_voltage", "left middle less right middle, no detector", kind::voltage, "V"),
    result<&BridgeOut::detector_current>("detector_current", "left to right through the detector", kind::current, "mA"),
    result<&BridgeOut::resistance>("resistance", "seen by the supply, detector in place", kind::resistance, "ohm"),
};

void bridge(const BridgeIn& in, BridgeOut& out, Remarks&) {
  const physics::Bridge b{in.r1->si, in.r2->si, in.r3->si, in.r4->si};
  out.open_voltage = Voltage{physics::bridge_open_volts(b, in.supply->si)};
  if (!in.detector) return;
  const auto loaded = physics::bridge_with(b, in.supply->si, in.detector->si);
  out.detector_current = Current{loaded.detector_a};
  out.resistance = Resistance{loaded.resistance_ohm};
}

struct BusIn {
  std::vector<double> voltages, resistances;
  std::optional<Resistance> load_resistance;
};
struct BusOut {
  std::optional<Voltage> voltage;
  std::vector<double> currents;
};
constexpr Argument bus_in[] = {
    values<&BusIn::voltages>("voltages", "of the sources", kind::voltage),
    values<&BusIn::resistances>("resistances", "of the sources, one each", kind::resistance),
    may(positive<&BusIn::load_resistance>("load_resistance", "load on the bus", kind::resistance, "ohm")),
};
constexpr Argument bus_out[] = {
    result<&BusOut::voltage>("voltage", "of the bus", kind::voltage, "V"),
    values<&BusOut::currents>("currents", "out of each source", kind::current),
};

void bus_check(const BusIn& in, Remarks& say) {
  if (!in.voltages.empty() && !in.resistances.empty() && in.voltages.size() != in.resistances.size())
    say.fault("voltages, resistances",
              std::to_string(in.voltages.size()) + " and " + std::to_string(in.resistances.size()) + " items",
              "one resistance a source");
  if (std::any_of(in.resistances.begin(), in.resistances.end(), [](double r) { return !(r > 0); }))
    say.fault("resistances", "must all be above 0 ohm");
}

void bus(const BusIn& in, BusOut& out, Remarks&) {
  const auto b = physics::bus(in.voltages, in.resistances, in.load_resistance ? 1 / in.load_resistance->si : 0);
  out.voltage = Voltage{b.volts};
  out.currents = b.currents_a;
}

struct AlternatorIn {
  std::optional<Voltage> voltage;
  std::optional<Current> current;
  std::optional<double> efficiency;
  std::optional<ShaftSpeed> shaft_speed;
};
struct AlternatorOut {
  std::optional<Power> power;
  std::optional<Torque> torque;
};
constexpr Argument alternator_in[] = {
    positive<&AlternatorIn::voltage>("voltage", "at its terminals", kind::voltage, "V"),
    quantity<&AlternatorIn::current>("current", "output", kind::current).in("A").from(0, 1e5),
    ratio<&AlternatorIn::efficiency>("efficiency", "electrical over shaft power", 1),
    may(positive<&AlternatorIn::shaft_speed>("shaft_speed", "of the rotor", kind::shaft_speed, "rpm")),
};
constexpr Argument alternator_out[] = {
    result<&AlternatorOut::power>("power", "at the shaft", kind::power, "kW"),
    result<&AlternatorOut::torque>("torque", "at the shaft", kind::torque, "N m"),
};

void alternator_load(const AlternatorIn& in, AlternatorOut& out, Remarks&) {
  const auto s =
      physics::alternator_load(in.voltage->si, in.current->si, *in.efficiency, in.shaft_speed ? in.shaft_speed->si : 0);
  out.power = Power{s.power_w};
  if (in.shaft_speed) out.torque = Torque{s.torque_n_m};
}

struct TimeIn {
  std::optional<Charge> capacity;
  std::optional<Time> rated_time;
  std::optional<double> exponent;
  std::optional<Current> current;
};
struct TimeOut {
  std::optional<Time> time;
};
constexpr Argument time_in[] = {
    positive<&TimeIn::capacity>("capacity", "rated charge", kind::charge, "A h"),
    positive<&TimeIn::rated_time>("rated_time", "discharge time of the rating", kind::time, "h"),
    number<&TimeIn::exponent>("exponent", "Peukert's").from(1, 2),
    positive<&TimeIn::current>("current", "drawn", kind::current, "A"),
};
constexpr Argument time_out[] = {result<&TimeOut::time>("time", "until empty", kind::time, "h")};

void battery_time(const TimeIn& in, TimeOut& out, Remarks& say) {
  const double share = in.current->si * in.rated_time->si / in.capacity->si;
  if (share < 0.2 || share > 100)
    say.outside("Peukert's law is good from a fifth of the rated current to a hundred times it");
  out.time =
      Time{physics::battery_discharge_time(in.capacity->si, in.rated_time->si, *in.exponent, in.current->si).value};
}

struct ReserveIn {
  std::optional<Time> reserve;
};
struct ReserveOut {
  std::optional<Charge> charge;
  std::optional<Current> current;
};
constexpr Argument reserve_in[] = {
    positive<&ReserveIn::reserve>("reserve", "reserve capacity, a time", kind::time, "min")};
constexpr Argument reserve_out[] = {
    result<&ReserveOut::charge>("charge", "given in the test", kind::charge, "A h"),
    result<&ReserveOut::current>("current", "of the test", kind::current, "A"),
};

void battery_reserve(const ReserveIn& in, ReserveOut& out, Remarks&) {
  out.charge = Charge{physics::battery_reserve_charge_c(in.reserve->si)};
  out.current = Current{physics::reserve_test_current_a};
}

enum class FuseKind { blade };
struct FuseIn {
  std::optional<double> load;
  std::optional<FuseKind> kind;
};
struct FuseOut {
  std::optional<Time> shortest, longest;
};
constexpr std::string_view fuse_choices[] = {"blade"};
constexpr Argument fuse_in[] = {
    ratio<&FuseIn::load>("load", "current over the fuse's rating", 1000),
    choice<&FuseIn::kind>("kind", "kind of fuse", fuse_choices).or_else(0, Source::chosen),
};
constexpr Argument fuse_out[] = {
    result<&FuseOut::shortest>("shortest", "carries it at least", kind::time, "s"),
    result<&FuseOut::longest>("longest", "opens at the latest after", kind::time, "s"),
};

void fuse_time(const FuseIn& in, FuseOut& out, Remarks& say) {
  const auto w = physics::blade_fuse_time(*in.load);
  if (w.shortest_s) out.shortest = Time{*w.shortest_s};
  if (w.longest_s) out.longest = Time{*w.longest_s};
  if (!w.longest_s) say.note("the standard does not ask the fuse to open at this load");
  if (!w.shortest_s) say.note("the standard gives no least time above 600 %");
  if (*in.load > physics::fuse_continuous_share && *in.load <= 1.1)
    say.note("for good, load a blade fuse to 75 % of its rating (common practice)");
}

constexpr Sum sums[] = {
    entry<divider, divider_check>({.name = "divider",
                                   .title = "Voltage at a sender under a pull-up",
                                   .inputs = divider_in,
                                   .outputs = divider_out,
                                   .rules = divider_rules,
                                   .range = "no current into the meter",
                                   .source = "Ohm's law"}),
    entry<bridge>({.name = "bridge",
                   .title = "Wheatstone bridge",
                   .inputs = bridge_in,
                   .outputs = bridge_out,
                   .range = "steady direct current",
                   .source = "Kirchhoff's laws; any circuits text"}),
    entry<bus, bus_check>({.name = "bus",
                           .title = "Sources in parallel on one bus",
                           .inputs = bus_in,
                           .outputs = bus_out,
                           .range = "sources that also take current",
                           .source = "Millman's theorem; any circuits text",
                           .caution = battery_care}),
    entry<alternator_load>({.name = "alternator-load",
                            .title = "What an alternator takes from its belt",
                            .inputs = alternator_in,
                            .outputs = alternator_out,
                            .range = "efficiency 0.50 to 0.65 is usual for claw-pole machines (common practice)",
                            .source = "P = V I / efficiency"}),
    entry<battery_time>({.name = "battery-time",
                         .title = "How long a battery lasts",
                         .inputs = time_in,
                         .outputs = time_out,
                         .range = "0.2 to 100 times the rated current, battery warm and full",
                         .source = "Peukert (1897) in hour-rate form",
                         .caution = battery_care}),
    entry<battery_reserve>({.name = "battery-reserve",
                            .title = "Charge behind a reserve capacity",
                            .inputs = reserve_in,
                            .outputs = reserve_out,
                            .range = "to 10.5 V at 27 degC",
                            .source = "SAE J537 (from memory)",
                            .caution = battery_care}),
    entry<fuse_time>({.name = "fuse-time",
                      .title = "How long a fuse carries an overload",
                      .inputs = fuse_in,
                      .outputs = fuse_out,
                      .range = "room temperature; between tabled loads the window both neighbours bound",
                      .source = "ISO 8820-3, the same in SAE J1284 (from memory)",
                      .caution = electrical_fire}),
};

}  // namespace

std::span<const Sum> circuit_sums() { return sums; }

}  // namespace sw
