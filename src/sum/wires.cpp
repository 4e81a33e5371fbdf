// Sums of wire: resistance, ampacity, voltage drop, choice of size.
#include "physics/wire.hpp"
#include "quantity/print.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view electrical_fire =
    "a wire that is too thin or a fuse that is too large starts fires: disconnect the battery before work, fuse every "
    "feed near its source, follow the makers' instructions";
constexpr std::string_view cable_choices[] = {"copper", "road-vehicle", "flexible"};
constexpr std::string_view zone_choices[] = {"cabin", "engine bay"};
constexpr std::string_view resistance_source =
    "copper: ASTM B258 gauges, NBS Handbook 100 (from memory); road-vehicle: ISO 6722-1 (from memory); flexible: IEC "
    "60228 table 3, class 5";
constexpr std::string_view resistance_range =
    "-50 to 150 degC; road-vehicle 0.13 to 120 mm2, flexible 0.5 to 240 mm2. The temperature factor multiplies the "
    "resistance at 20 degC; that of flexible is IEC 60228's, which divides it";

/// What a wire is taken for where nobody says: PVC (from memory), in the hotter zone.
constexpr double usual_insulation_degc = 80;

using physics::Cable;
using physics::Zone;

struct WireIn {
  std::optional<Area> size;
  std::optional<Cable> cable;
  std::optional<Temperature> temperature;
};
struct WireOut {
  std::optional<Length> diameter;
  std::optional<Area> area;
  std::optional<Quantity<dim::resistance_per_length>> resistance_per_length;
  std::optional<double> temperature_factor;
};
constexpr Argument wire_in[] = {
    positive<&WireIn::size>("size", "conductor size", kind::wire_size, "mm2", 1e4),
    choice<&WireIn::cable>("cable", "kind of cable", cable_choices).or_else(0, Source::chosen),
    quantity<&WireIn::temperature>("temperature", "of the conductor", kind::temperature)
        .in("degC")
        .above(-234, 1000)
        .or_else(20, Source::chosen),
};
constexpr Argument wire_out[] = {
    result<&WireOut::diameter>("diameter", "diameter of a solid conductor", kind::length, "mm"),
    result<&WireOut::area>("area", "area of copper", kind::area, "mm2"),
    result<&WireOut::resistance_per_length>("resistance_per_length", "resistance per length",
                                            kind::resistance_per_length, "mohm/m"),
    number<&WireOut::temperature_factor>("temperature_factor", "temperature factor over 20 degC"),
};

void note_range(const physics::WireResistance& r, double temperature_k, Remarks& say) {
  if (!r.tabled) say.outside("the size lies outside the cable's table: solid copper stands in");
  if (temperature_k < 223.15 || temperature_k > 423.15) say.outside("copper's line is good from -50 to 150 degC");
}

void wire(const WireIn& in, WireOut& out, Remarks& say) {
  const auto r = physics::wire_resistance(in.size->si, *in.cable, in.temperature->si);
  note_range(r, in.temperature->si, say);
  out.diameter = Length{physics::round_diameter_m(in.size->si)};
  out.area = *in.size;
  out.resistance_per_length = Quantity<dim::resistance_per_length>{r.per_length_ohm_m};
  out.temperature_factor = r.temperature_factor;
}

struct AmpacityIn {
  std::optional<Area> size;
  std::optional<Temperature> insulation;
  std::optional<Zone> zone;
  std::optional<int> bundle;
};
struct AmpacityOut {
  std::optional<Current> current;
};
constexpr Argument ampacity_in[] = {
    positive<&AmpacityIn::size>("size", "conductor size", kind::wire_size, "mm2", 1e4),
    quantity<&AmpacityIn::insulation>("insulation", "temperature of the insulation", kind::temperature)
        .in("degC")
        .from(0, 300),
    choice<&AmpacityIn::zone>("zone", "where it runs", zone_choices),
    integer<&AmpacityIn::bundle>("bundle", "conductors carrying current in the bundle")
        .from(1, 1000)
        .or_else(1, Source::chosen),
};
constexpr Argument ampacity_out[] = {
    result<&AmpacityOut::current>("current", "greatest lasting current", kind::current, "A")};

void ampacity(const AmpacityIn& in, AmpacityOut& out, Remarks& say) {
  const auto a = physics::wire_ampacity(in.size->si, in.insulation->si, *in.zone, *in.bundle);
  if (!a.tabled) say.outside("the table runs from 18 AWG to 4/0 AWG and from 60 to 200 degC insulation");
  if (a.current_a > 0) out.current = Current{a.current_a};
}

struct DropIn {
  std::optional<Area> size;
  std::optional<Current> current;
  std::optional<Length> loop_length;
  std::optional<Cable> cable;
  std::optional<Temperature> temperature;
  std::optional<Resistivity> resistivity;
};
struct DropOut {
  std::optional<Voltage> drop;
  std::optional<Power> loss;
};
constexpr Argument drop_in[] = {
    positive<&DropIn::size>("size", "conductor size", kind::wire_size, "mm2", 1e4),
    quantity<&DropIn::current>("current", "current", kind::current).in("A").from(0, 1e5),
    positive<&DropIn::loop_length>("loop_length", "conductor length out and back", kind::length, "ft", 1e5),
    choice<&DropIn::cable>("cable", "kind of cable", cable_choices).or_else(0, Source::chosen),
    quantity<&DropIn::temperature>("temperature", "of the conductor", kind::temperature)
        .in("degC")
        .above(-234, 1000)
        .or_else(20, Source::chosen),
    may(positive<&DropIn::resistivity>("resistivity", "of the conductor, in copper's place", kind::resistivity,
                                       "ohm cmil/ft")),
};
constexpr Argument drop_out[] = {
    result<&DropOut::drop>("drop", "voltage lost", kind::voltage, "V"),
    result<&DropOut::loss>("loss", "power lost", kind::power, "W"),
};

void drop_check(const DropIn& in, Remarks& say) {
  if (in.resistivity && in.cable && *in.cable != Cable::copper)
    say.fault("cable, resistivity", "contradict each other",
              "a cable's resistance is its standard's: give one of them");
}

/// A drop that will do says nothing about heat; who asks for one alone is told of the other.
void note_heat(double area_m2, double current_a, Remarks& say) {
  const auto a = physics::wire_ampacity(area_m2, usual_insulation_degc + 273.15, Zone::engine_bay, 1);
  if (!a.tabled)
    say.note("the ampacity table runs from 18 AWG to 4/0 AWG: whether this size gets too hot is not looked at");
  else if (current_a > a.current_a)
    say.note("too hot: with 80 degC insulation in the engine bay this size carries " +
             print(a.current_a, kind::current, "A", 3) + " for good; the sum ampacity takes other insulation");
}

void voltage_drop(const DropIn& in, DropOut& out, Remarks& say) {
  const auto r = physics::wire_resistance(in.size->si, *in.cable, in.temperature->si);
  if (!in.resistivity) note_range(r, in.temperature->si, say);
  const double per_length = in.resistivity ? in.resistivity->si / in.size->si : r.per_length_ohm_m;
  const double ohm = per_length * in.loop_length->si, i = in.current->si;
  out.drop = Voltage{i * ohm};
  out.loss = Power{i * i * ohm};
  note_heat(in.size->si, i, say);
}

struct SizeIn {
  std::optional<Current> current;
  std::optional<Length> loop_length;
  std::optional<Voltage> drop_limit;
  std::optional<Temperature> temperature;
  std::optional<Resistivity> resistivity;
  std::optional<Temperature> insulation;
  std::optional<Zone> zone;
  std::optional<int> bundle;
};
struct SizeOut {
  std::optional<Area> area;
  std::string gauge, decided_by;
  std::optional<Current> ampacity;
  std::optional<Voltage> drop;
};
constexpr Argument size_in[] = {
    positive<&SizeIn::current>("current", "current", kind::current, "A", 1e5),
    positive<&SizeIn::loop_length>("loop_length", "conductor length out and back", kind::length, "ft", 1e5),
    positive<&SizeIn::drop_limit>("drop_limit", "greatest voltage lost", kind::voltage, "V", 1e3),
    quantity<&SizeIn::temperature>("temperature", "of the conductor", kind::temperature)
        .in("degC")
        .above(-234, 1000)
        .or_else(20, Source::chosen),
    may(positive<&SizeIn::resistivity>("resistivity", "of the conductor, in copper's place", kind::resistivity,
                                       "ohm cmil/ft")),
    quantity<&SizeIn::insulation>("insulation", "temperature of the insulation", kind::temperature)
        .in("degC")
        .from(0, 300)
        .or_else(usual_insulation_degc),
    choice<&SizeIn::zone>("zone", "where it runs", zone_choices).or_else(1),
    integer<&SizeIn::bundle>("bundle", "conductors carrying current in the bundle").from(1, 1000).or_else(1),
};
constexpr Argument size_out[] = {
    result<&SizeOut::area>("area", "least area for the drop", kind::area, "mm2"),
    text<&SizeOut::gauge>("gauge", "smallest gauge that will do"),
    text<&SizeOut::decided_by>("decided_by", "drop or heat, whichever asks for the thicker gauge"),
    result<&SizeOut::ampacity>("ampacity", "greatest lasting current of that gauge", kind::current, "A"),
    result<&SizeOut::drop>("drop", "voltage lost with that gauge", kind::voltage, "V"),
};
/// The ampacity table is copper's; well above copper's resistivity at 100 degC the conductor is something else.
constexpr double other_metal_ohm_m = 1.35 * physics::copper_resistivity_20c_ohm_m;

void wire_size(const SizeIn& in, SizeOut& out, Remarks& say) {
  const double resistivity = in.resistivity
                                 ? in.resistivity->si
                                 : physics::wire_resistance(1, Cable::copper, in.temperature->si).per_length_ohm_m;
  const double volt_m2 = resistivity * in.loop_length->si * in.current->si;
  out.area = Area{volt_m2 / in.drop_limit->si};
  const auto rated = [&](int gauge) {
    return physics::wire_ampacity(physics::gauge_area_m2(gauge), in.insulation->si, *in.zone, *in.bundle);
  };
  if (!say.given("insulation")) say.note("80 degC is usual PVC (from memory): give what the insulation is marked");
  if (resistivity > other_metal_ohm_m)
    say.outside("the ampacity is copper's: a conductor of this resistivity carries less");
  if (!rated(-3).tabled) return say.outside("the ampacity table runs from 60 to 200 degC insulation");
  const auto for_drop = physics::gauge_for_area(out.area->si);
  auto gauge = for_drop;
  while (gauge && !(rated(*gauge).current_a >= in.current->si)) gauge = physics::next_thicker_gauge(*gauge);
  if (!gauge) return say.outside("no single conductor up to 4/0 AWG will do");
  out.gauge = physics::gauge_text(*gauge);
  out.decided_by = gauge == for_drop ? "drop" : "heat";
  if (gauge != for_drop)
    say.note("for the drop alone " + physics::gauge_text(*for_drop) + " would do, but " +
             (rated(*for_drop).tabled ? "it gets too hot" : "the ampacity table begins at 18 AWG"));
  out.drop = Voltage{volt_m2 / physics::gauge_area_m2(*gauge)};
  out.ampacity = Current{rated(*gauge).current_a};
}

constexpr std::string_view ampacity_source = "33 CFR 183.425 Table 5 with notes 1 and 2";
constexpr Sum sums[] = {
    entry<wire>({.name = "wire",
                 .title = "Diameter, area and resistance of a wire",
                 .inputs = wire_in,
                 .outputs = wire_out,
                 .range = resistance_range,
                 .source = resistance_source}),
    entry<ampacity>({.name = "ampacity",
                     .title = "Current a wire may carry for good",
                     .inputs = ampacity_in,
                     .outputs = ampacity_out,
                     .range =
                         "18 AWG to 4/0 AWG, below 50 V, 30 degC in the cabin and 50 degC in the engine bay; a size "
                         "or insulation between two counts as the lesser; bundles from three conductors up, which "
                         "the regulation asks only from 50 V",
                     .source = ampacity_source,
                     .caution = electrical_fire}),
    entry<voltage_drop, drop_check>({.name = "voltage-drop",
                                     .title = "Voltage lost along a wire",
                                     .inputs = drop_in,
                                     .outputs = drop_out,
                                     .range = resistance_range,
                                     .source = resistance_source,
                                     .caution = electrical_fire}),
    entry<wire_size>({.name = "wire-size",
                      .title = "Smallest wire for a current: its drop and its heat",
                      .inputs = size_in,
                      .outputs = size_out,
                      .range = "solid copper's resistance; gauges 18 to 4/0 that a shop buys; heat as in the sum "
                               "ampacity",
                      .source = "NBS Handbook 100 (from memory); ampacity: 33 CFR 183.425 Table 5",
                      .caution = electrical_fire}),
};

}  // namespace

std::span<const Sum> wire_sums() { return sums; }

}  // namespace sw
