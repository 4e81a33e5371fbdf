// Sums of senders: the network between sender and gauge, its match, thermistors.
#include <algorithm>
#include <cmath>

#include "physics/sender.hpp"
#include "physics/thermocouple.hpp"
#include "quantity/print.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

struct NetworkIn {
  std::optional<Resistance> sender, parallel, seen, series;
};
struct NetworkOut {
  std::optional<Resistance> seen, parallel;
};
constexpr Argument network_in[] = {
    positive<&NetworkIn::sender>("sender", "sender", kind::resistance, "ohm"),
    positive<&NetworkIn::parallel>("parallel", "resistor across it", kind::resistance, "ohm"),
    positive<&NetworkIn::seen>("seen", "what the gauge is to see", kind::resistance, "ohm"),
    quantity<&NetworkIn::series>("series", "resistor after both", kind::resistance)
        .in("ohm")
        .from(0, 1e9)
        .or_else(0, Source::chosen),
};
constexpr Argument network_out[] = {
    result<&NetworkOut::seen>("seen", "what the gauge sees", kind::resistance, "ohm"),
    result<&NetworkOut::parallel>("parallel", "resistor across the sender", kind::resistance, "ohm"),
};
constexpr Rule network_rules[] = {one_of("parallel", "seen")};

void network_check(const NetworkIn& in, Remarks& say) {
  if (!in.seen || !in.sender) return;
  const double left = in.seen->si - in.series.value_or(Resistance{0}).si;
  if (!(left > 0) || left >= in.sender->si)
    say.fault("seen", "a resistor across the sender only takes ohms away",
              "seen less series lies between 0 and the sender's own ohms");
}

void sender_network(const NetworkIn& in, NetworkOut& out, Remarks&) {
  if (in.parallel)
    out.seen = Resistance{physics::network_ohm({in.series->si, in.parallel->si}, in.sender->si).value};
  else
    out.parallel = Resistance{physics::parallel_for(in.sender->si, in.seen->si - in.series->si)};
}

enum class Values { any, e12, e24, e96 };
constexpr std::string_view values_choices[] = {"any", "e12", "e24", "e96"};
struct MatchIn {
  std::vector<double> from, to;
  std::optional<Values> sold;
};
struct MatchOut {
  std::optional<Resistance> series, parallel, largest_error;
};
constexpr Argument match_in[] = {
    values<&MatchIn::from>("from", "ohms of the sender", kind::resistance),
    values<&MatchIn::to>("to", "ohms the gauge wants, one each", kind::resistance),
    choice<&MatchIn::sold>("values", "of the resistors", values_choices).or_else(0, Source::chosen),
};
constexpr Argument match_out[] = {
    result<&MatchOut::series>("series", "resistor after both", kind::resistance, "ohm"),
    result<&MatchOut::parallel>("parallel", "resistor across the sender", kind::resistance, "ohm"),
    result<&MatchOut::largest_error>("largest_error", "left at the worst of them", kind::resistance, "ohm"),
};

void match_check(const MatchIn& in, Remarks& say) {
  if (in.from.empty() || in.to.empty()) return;
  if (in.from.size() != in.to.size())
    say.fault("from, to", std::to_string(in.from.size()) + " and " + std::to_string(in.to.size()) + " items",
              "what the gauge wants at each of the sender's ohms");
  for (auto* list : {&in.from, &in.to})
    if (std::any_of(list->begin(), list->end(), [](double r) { return r < 0; }))
      say.fault(list == &in.from ? "from" : "to", "no resistance lies below 0 ohm");
}

void sender_match(const MatchIn& in, MatchOut& out, Remarks& say) {
  constexpr double least = 0.1, most = 1e6;
  physics::SenderMatch m;
  switch (*in.sold) {
    case Values::any:
      m = physics::match_any(in.from, in.to);
      break;
    case Values::e12:
      m = physics::match_of(physics::resistors(physics::ResistorSeries::e12, least, most), in.from, in.to);
      break;
    case Values::e24:
      m = physics::match_of(physics::resistors(physics::ResistorSeries::e24, least, most), in.from, in.to);
      break;
    default:
      m = physics::match_of(physics::resistors(physics::ResistorSeries::e96, least, most), in.from, in.to);
  }
  out.series = Resistance{m.network.series_ohm};
  if (m.network.parallel_ohm) out.parallel = Resistance{*m.network.parallel_ohm};
  out.largest_error = Resistance{m.largest_error_ohm};
  if (!m.network.parallel_ohm) say.note("no resistor across the sender is better than any");
}

struct ThermistorIn {
  std::optional<Resistance> resistance;
  std::optional<Temperature> temperature;
  std::optional<double> a, b, c;
  std::optional<Resistance> r25;
  std::optional<TemperatureStep> beta;
};
struct ThermistorOut {
  std::optional<Temperature> temperature;
  std::optional<Resistance> resistance;
};
constexpr Argument thermistor_in[] = {
    positive<&ThermistorIn::resistance>("resistance", "of the thermistor", kind::resistance, "ohm"),
    quantity<&ThermistorIn::temperature>("temperature", "of the thermistor", kind::temperature)
        .in("degC")
        .from(-100, 400),
    number<&ThermistorIn::a>("a", "1/T = a + b ln R + c (ln R)^3, K and ohm").from(-1, 1),
    number<&ThermistorIn::b>("b", "by ln R").above(0, 1),
    number<&ThermistorIn::c>("c", "by its third power").from(0, 1),
    positive<&ThermistorIn::r25>("r25", "at 25 degC", kind::resistance, "ohm"),
    positive<&ThermistorIn::beta>("beta", "of the exponential form", kind::temperature_step, "K", 1e5),
};
constexpr Argument thermistor_out[] = {
    result<&ThermistorOut::temperature>("temperature", "of the thermistor", kind::temperature, "degC"),
    result<&ThermistorOut::resistance>("resistance", "of the thermistor", kind::resistance, "ohm"),
};
constexpr Rule thermistor_rules[] = {one_of("resistance", "temperature"), all_or_none_of("a", "b", "c"),
                                     all_or_none_of("r25", "beta"), one_of("a", "r25")};

void thermistor(const ThermistorIn& in, ThermistorOut& out, Remarks&) {
  if (in.r25) {
    if (in.resistance)
      out.temperature = Temperature{physics::thermistor_k_by_beta(in.r25->si, in.beta->si, in.resistance->si).value};
    else
      out.resistance = Resistance{physics::thermistor_ohm(in.r25->si, in.beta->si, in.temperature->si).value};
    return;
  }
  if (in.resistance)
    out.temperature = Temperature{physics::thermistor_k(*in.a, *in.b, *in.c, in.resistance->si).value};
  else
    out.resistance = Resistance{physics::thermistor_ohm_of(*in.a, *in.b, *in.c, in.temperature->si)};
}

struct FitIn {
  std::vector<double> resistances, temperatures;
};
struct FitOut {
  std::optional<TemperatureStep> beta;
  std::optional<double> a, b, c;
};
constexpr Argument fit_in[] = {
    values<&FitIn::resistances>("resistances", "two or three", kind::resistance),
    values<&FitIn::temperatures>("temperatures", "one each", kind::temperature),
};
constexpr Argument fit_out[] = {
    result<&FitOut::beta>("beta", "of two points", kind::temperature_step, "K"),
    number<&FitOut::a>("a", "of three points: 1/T = a + b ln R + c (ln R)^3"),
    number<&FitOut::b>("b", "by ln R"),
    number<&FitOut::c>("c", "by its third power"),
};

void fit_check(const FitIn& in, Remarks& say) {
  const std::size_t n = in.resistances.size();
  if (n == 0 || in.temperatures.empty()) return;
  if (n != in.temperatures.size() || n < 2 || n > 3)
    return say.fault("resistances, temperatures",
                     std::to_string(n) + " and " + std::to_string(in.temperatures.size()) + " items",
                     "two of each for a beta, three of each for a, b and c");
  for (std::size_t i = 0; i < n; ++i) {
    if (!(in.resistances[i] > 0)) say.fault("resistances", "must all be above 0 ohm");
    for (std::size_t k = 0; k < i; ++k)
      if (in.resistances[i] == in.resistances[k] || in.temperatures[i] == in.temperatures[k])
        say.fault("resistances, temperatures", "two points are alike", "points that lie apart");
  }
}

void thermistor_fit(const FitIn& in, FitOut& out, Remarks&) {
  auto &r = in.resistances, &t = in.temperatures;
  if (r.size() == 2) {
    out.beta = TemperatureStep{physics::thermistor_beta(r[0], t[0], r[1], t[1])};
    return;
  }
  const auto k = physics::steinhart_hart({r[0], r[1], r[2]}, {t[0], t[1], t[2]});
  out.a = k[0], out.b = k[1], out.c = k[2];
}

struct CoupleIn {
  std::optional<physics::Thermocouple> type;
  std::optional<Temperature> temperature;
  std::optional<Voltage> voltage;
  std::optional<Temperature> reference;
};
struct CoupleOut {
  std::optional<Voltage> voltage;
  std::optional<Temperature> temperature;
};
constexpr std::string_view couples[] = {"k", "j", "t"};
constexpr Argument couple_in[] = {
    choice<&CoupleIn::type>("type", "of the thermocouple", couples),
    quantity<&CoupleIn::temperature>("temperature", "of the junction", kind::temperature).in("degC").from(-270, 1500),
    quantity<&CoupleIn::voltage>("voltage", "measured", kind::voltage).in("mV").from(-10, 100),
    quantity<&CoupleIn::reference>("reference", "temperature where it meets the meter's copper", kind::temperature)
        .in("degC")
        .from(-100, 200)
        .or_else(0, Source::chosen),
};
constexpr Argument couple_out[] = {
    result<&CoupleOut::voltage>("voltage", "to be measured", kind::voltage, "mV"),
    result<&CoupleOut::temperature>("temperature", "of the junction", kind::temperature, "degC"),
};
constexpr Rule couple_rules[] = {one_of("temperature", "voltage")};

void thermocouple(const CoupleIn& in, CoupleOut& out, Remarks& say) {
  const auto got = in.voltage ? physics::thermocouple_k(*in.type, in.voltage->si, in.reference->si)
                              : physics::thermocouple_v(*in.type, in.temperature->si, in.reference->si);
  if (in.voltage)
    out.temperature = Temperature{got.value};
  else
    out.voltage = Voltage{got.value};
  if (got.valid) return;
  const auto range = physics::thermocouple_range(*in.type);
  say.outside("this type is known from " + print(range.lowest_k, kind::temperature, "degC") + " to " +
              print(range.highest_k, kind::temperature, "degC"));
}

constexpr Sum sums[] = {
    entry<sender_network, network_check>({.name = "sender-network",
                                          .title = "Resistors between a sender and its gauge",
                                          .inputs = network_in,
                                          .outputs = network_out,
                                          .rules = network_rules,
                                          .range = "resistive senders",
                                          .source = "series and parallel resistances"}),
    entry<sender_match, match_check>({.name = "sender-match",
                                      .title = "Resistors that make a sender fit another gauge",
                                      .inputs = match_in,
                                      .outputs = match_out,
                                      .range = "resistors of 0.1 ohm to 1 Mohm; the largest error in ohm is made least",
                                      .source = "series and parallel resistances; values on sale by IEC 60063"}),
    entry<thermistor>({.name = "thermistor",
                       .title = "Thermistor, temperature and resistance",
                       .inputs = thermistor_in,
                       .outputs = thermistor_out,
                       .rules = thermistor_rules,
                       .range = "within the span its coefficients were found over",
                       .source = "Steinhart and Hart, Deep-Sea Research 15 (1968) (from memory); beta form"}),
    entry<thermistor_fit, fit_check>({.name = "thermistor-fit",
                                      .title = "Coefficients of a thermistor from two or three points",
                                      .inputs = fit_in,
                                      .outputs = fit_out,
                                      .range = "between the points",
                                      .source = "Steinhart and Hart, Deep-Sea Research 15 (1968) (from memory)"}),
    entry<thermocouple>({.name = "thermocouple",
                         .title = "Thermocouple, temperature and voltage",
                         .inputs = couple_in,
                         .outputs = couple_out,
                         .rules = couple_rules,
                         .range = "K -270 to 1372, J -210 to 1200, T -270 to 400 degC; what the standard allows a wire "
                                  "(1 to 2 K and more) is left out",
                         .source = "ITS-90, NIST thermocouple database (NIST Monograph 175)"}),
};

}  // namespace

std::span<const Sum> sender_sums() { return sums; }

}  // namespace sw
