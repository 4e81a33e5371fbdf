#include "quantity/parse.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <clocale>

#include "quantity/support.hpp"

namespace sw {
namespace {

constexpr double inch = 0.0254;

TEST(ParseNumber, Forms) {
  struct Row {
    std::string_view text;
    double value;
    std::size_t used;
  };
  constexpr Row rows[] = {{"12", 12, 2},          {"-0.5", -0.5, 4},    {"+3", 3, 2},           {"1e-3", 1e-3, 4},
                          {"3/8", 0.375, 3},      {"17 1/4", 17.25, 6}, {"1-1/8", 1.125, 5},    {"-1-1/8", -1.125, 6},
                          {"-17 1/4", -17.25, 7}, {".030", 0.03, 4},    {"5.", 5, 2},           {"17 1/4 in", 17.25, 6},
                          {"12.5 psi", 12.5, 4},  {"3/4in", 0.75, 3},   {"776 1/mile", 776, 3}, {"2 m", 2, 1},
                          {"7/4", 1.75, 3},       {"0 1/2", 0.5, 5},    {"12-", 12, 2},         {"1 in", 1, 1}};
  for (auto& r : rows) {
    const auto n = parse_number(r.text);
    ASSERT_TRUE(n) << r.text;
    EXPECT_DOUBLE_EQ(n->value, r.value) << r.text;
    EXPECT_EQ(n->used, r.used) << r.text;
  }
}

TEST(ParseNumber, Refused) {
  for (auto text :
       {"",    "-",     "+",     ".",     "-.",    "abc", "inf",   "nan",    "-inf",  "--1", "+-1",      "- 1",
        "1/0", "1 1/0", "1-5/0", "1 5/4", "1 4/4", "1,5", "1e999", "1e-999", "1.2.3", "/2",  "infinity", "e5"})
    EXPECT_FALSE(parse_number(text)) << text;
  EXPECT_FALSE(parse_number(std::string(400, '9') + "/1"));
}

TEST(ParseQuantity, AsTheTradeWritesIt) {
  // Our own reading of each form; the factors are held against NIST SP 811 in unit_table_test.
  EXPECT_DOUBLE_EQ(si_of("3/8 in", kind::length), 0.375 * inch);
  EXPECT_DOUBLE_EQ(si_of("17 1/4 in", kind::length), 17.25 * inch);
  EXPECT_DOUBLE_EQ(si_of("1-1/8 in", kind::length), 1.125 * inch);
  EXPECT_DOUBLE_EQ(si_of("17.25in", kind::length), 17.25 * inch);
  EXPECT_DOUBLE_EQ(si_of("30 thou", kind::length), 0.030 * inch);
  EXPECT_NEAR(si_of("12.5 psi", kind::gauge_pressure), 12.5 * 6894.757, 0.01);
  EXPECT_NEAR(si_of("180 degF", kind::temperature), 355.372222222, 1e-9);
  EXPECT_DOUBLE_EQ(si_of("-40 degF", kind::temperature), si_of("-40 degC", kind::temperature));
  EXPECT_NEAR(si_of("212 °F", kind::temperature), 373.15, 1e-12);
  EXPECT_NEAR(si_of("671.67 degR", kind::temperature), 373.15, 1e-12);
  EXPECT_NEAR(si_of("15 inHg", kind::vacuum), 15 * 3386.389, 1e-6);
  EXPECT_NEAR(si_of("30 gph", kind::volume_flow), 30 * 3.785412e-3 / 3600, 1e-11);
  EXPECT_DOUBLE_EQ(si_of("255 l/h", kind::volume_flow), 0.255 / 3600);
  EXPECT_DOUBLE_EQ(si_of("255 L/h", kind::volume_flow), 0.255 / 3600);
  EXPECT_NEAR(si_of("850 cfm", kind::volume_flow), 850 * 4.719474e-4, 1e-6);
  EXPECT_NEAR(si_of("60 lb-ft", kind::torque), 60 * 1.355818, 1e-4);
  EXPECT_DOUBLE_EQ(si_of("55 mph", kind::speed), 55 * 0.44704);
  EXPECT_DOUBLE_EQ(si_of("6 %", kind::number), 0.06);
  EXPECT_DOUBLE_EQ(si_of("6%", kind::number), 0.06);
  EXPECT_DOUBLE_EQ(si_of("0.35", kind::number), 0.35);
  EXPECT_NEAR(si_of("1500 rpm", kind::shaft_speed), 157.07963267948966, 1e-12);
  EXPECT_DOUBLE_EQ(si_of("1 gal/min", kind::volume_flow), si_of("1 gpm", kind::volume_flow));
  EXPECT_DOUBLE_EQ(si_of("60 A h", kind::charge), si_of("60 Ah", kind::charge));
  EXPECT_DOUBLE_EQ(si_of("0.393 %/K", kind::per_temperature), 0.00393);
  EXPECT_DOUBLE_EQ(si_of("30 mA", kind::current), 0.03);
  EXPECT_DOUBLE_EQ(si_of("6 mohm", kind::resistance), 0.006);
  EXPECT_DOUBLE_EQ(si_of("240 Ω", kind::resistance), 240);
  EXPECT_DOUBLE_EQ(si_of("776 1/mile", kind::per_length), 776 / 1609.344);
  EXPECT_DOUBLE_EQ(si_of("776 rev/mile", kind::per_length), 776 / 1609.344);
}

TEST(ParseQuantity, ThousandsAreParted) {
  EXPECT_DOUBLE_EQ(si_of("3,700 lbs", kind::mass), si_of("3700 lb", kind::mass));
  EXPECT_DOUBLE_EQ(si_of("1,234,567.5 m", kind::length), 1234567.5);
  EXPECT_DOUBLE_EQ(si_of("-1,500 m", kind::length), -1500);
  EXPECT_DOUBLE_EQ(si_of("12,500", kind::number), 12500);
}

TEST(ParseQuantity, ConsumptionAndInjectorFigures) {
  // 0.50 lb/(hp h) is 304.1 g/(kW h): NIST SP 811 B.8, lb/(hp h) = 1.689659e-7 kg/J.
  EXPECT_NEAR(si_of("0.5 lb/(hp h)", kind::specific_consumption), si_of("304.1 g/(kW h)", kind::specific_consumption),
              0.05 / 3.6e9);
  EXPECT_NEAR(si_of("0.50 lb/(hp h)", kind::specific_consumption), 0.5 * 1.689659e-7, 1e-13);
  // 1 lb/h at 0.72 g/cm3 is 453.592/60/0.72 = 10.5 cm3/min (common practice of injector tables).
  const double flow = si_of("1 lb/h", kind::mass_flow) / si_of("0.72 g/cm3", kind::density);
  EXPECT_NEAR(flow, si_of("10.5 cm3/min", kind::volume_flow), si_of("0.001 cm3/min", kind::volume_flow));
  // 250 hp at 0.50 lb/(hp h) and 6.1 lb/gal: 125/6.1 = 20.49 gal/h.
  const double fuel = si_of("250 hp", kind::power) * si_of("0.50 lb/(hp h)", kind::specific_consumption) /
                      si_of("6.1 lb/gal", kind::density);
  EXPECT_NEAR(fuel, si_of("20.49 gal/h", kind::volume_flow), si_of("0.005 gal/h", kind::volume_flow));
}

TEST(ParseQuantity, StepsOfTemperature) {
  EXPECT_DOUBLE_EQ(si_of("8 degC", kind::temperature_step), 8);
  EXPECT_DOUBLE_EQ(si_of("9 degF", kind::temperature_step), 5);
  EXPECT_DOUBLE_EQ(si_of("-9 degF", kind::temperature_step), -5);
  EXPECT_DOUBLE_EQ(si_of("1 kJ/(kg degC)", kind::specific_heat), 1000);
  EXPECT_DOUBLE_EQ(si_of("18 mV/degF", kind::voltage_per_temperature), 0.0324);
}

TEST(ParseQuantity, WireSizes) {
  // ASTM B258: 10 AWG is 0.1019 in, 2/0 AWG 67.43 mm2.
  EXPECT_NEAR(si_of("10 AWG", kind::wire_size), si_of("10384 cmil", kind::wire_size), 1e-9 * 0.507);  // 101.9^2
  EXPECT_NEAR(si_of("2/0 AWG", kind::wire_size), 67.43e-6, 0.005e-6);
  EXPECT_DOUBLE_EQ(si_of("00 AWG", kind::wire_size), si_of("2/0 AWG", kind::wire_size));
  EXPECT_DOUBLE_EQ(si_of("10AWG", kind::wire_size), si_of("10 AWG", kind::wire_size));
  EXPECT_DOUBLE_EQ(si_of("2.5 mm2", kind::wire_size), 2.5e-6);
  EXPECT_DOUBLE_EQ(si_of("0.01 in2", kind::wire_size), 6.4516e-6);
  EXPECT_EQ(std::get<Parsed>(parse_quantity("2/0 AWG", kind::wire_size)).written, -1);
  EXPECT_EQ(fault_of("10 AWG", kind::area).remark, "which is a wire size");
  EXPECT_EQ(fault_of("2/0 AWG", kind::length).remark, "which is a wire size");
  EXPECT_EQ(fault_of("60 AWG", kind::wire_size).hint, "gauges run from 4/0 to 56");
  EXPECT_EQ(fault_of("10.5 AWG", kind::wire_size).remark, "which is no American wire gauge");
  EXPECT_DOUBLE_EQ(si_of("10 awg", kind::wire_size), si_of("10 AWG", kind::wire_size));
  for (auto text : {"2 gauge", "2ga", "2 ga.", "2 Gauge", "2AWG"})
    EXPECT_DOUBLE_EQ(si_of(text, kind::wire_size), si_of("2 AWG", kind::wire_size)) << text;
  EXPECT_DOUBLE_EQ(si_of("4/0", kind::wire_size), si_of("4/0 AWG", kind::wire_size));
  EXPECT_DOUBLE_EQ(si_of("1/0 ga", kind::wire_size), si_of("0 AWG", kind::wire_size));
  EXPECT_EQ(fault_of("5/0", kind::wire_size).hint, "gauges run from 4/0 to 56");
  EXPECT_EQ(fault_of("14ga", kind::length).remark, "which is a wire size");
  EXPECT_EQ(fault_of("4/0 in", kind::length).remark, "which divides by zero");
}

TEST(ParseQuantity, UnitIsAViewIntoTheText) {
  const std::string text = "  17 1/4   W/(m2 K) ";
  const auto p = std::get<Parsed>(parse_quantity(text, kind::heat_transfer));
  EXPECT_EQ(p.unit, "W/(m2 K)");
  EXPECT_EQ(p.unit.data(), text.data() + 11);
  EXPECT_DOUBLE_EQ(p.written, 17.25);
}

TEST(ParseQuantity, FaultsInWords) {
  EXPECT_EQ(fault_of("17", kind::length).sentence(),
            "expected a length such as \"17 1/4 in\", got \"17\", which has no unit");
  EXPECT_EQ(fault_of("17", kind::length).hint, "units: in, mm, ft, cm, m, km, mile, um, thou");
  EXPECT_EQ(fault_of("2.0 psi", kind::length).sentence(),
            "expected a length such as \"17 1/4 in\", got \"2.0 psi\", which is a pressure");
  EXPECT_EQ(fault_of("5 furlong", kind::length).sentence(),
            "expected a length such as \"17 1/4 in\", got \"5 furlong\", whose unit 'furlong' is not known");
  EXPECT_EQ(fault_of("17 mil", kind::length).hint, "did you mean thou?") << "mils are millimetres to others";
  EXPECT_EQ(fault_of("13 lbs", kind::gauge_pressure).hint, "lb is a mass; write psi");
  EXPECT_EQ(fault_of("180 degrees", kind::temperature).hint, "write degC or degF");
  EXPECT_EQ(fault_of("800 CCA", kind::current).hint, "write 800 A");
  EXPECT_EQ(fault_of("17\"", kind::length).hint, "write in");
  EXPECT_EQ(fault_of("", kind::angle).sentence(), "expected an angle such as \"165 deg\", got \"\", which is empty");
  EXPECT_EQ(fault_of("   ", kind::angle).remark, "which is empty");
  EXPECT_EQ(fault_of("1,5 in", kind::length).sentence(),
            "expected a length such as \"17 1/4 in\", got \"1,5 in\", which has a comma in a number");
  EXPECT_EQ(fault_of("1,5 in", kind::length).hint, "write 1.5");
  EXPECT_EQ(fault_of("0,500 in", kind::length).hint, "write 0.500");
  EXPECT_EQ(fault_of("1500,000 in", kind::length).remark, "which has a comma in a number");
  for (auto text : {"1.500,25 in", "1,5,6 in", "1,5.6 in"})
    EXPECT_EQ(fault_of(text, kind::length).hint, "write it without commas, with one decimal point") << text;
  EXPECT_EQ(fault_of("1 000 mm", kind::length).hint, "write one number without spaces");
  EXPECT_EQ(fault_of("1/0 in", kind::length).remark, "which divides by zero");
  EXPECT_EQ(fault_of("1 5/4 in", kind::length).remark, "whose fraction is not below one");
  EXPECT_EQ(fault_of("inf in", kind::length).remark, "which does not begin with a number");
  EXPECT_EQ(fault_of("nan", kind::number).remark, "which does not begin with a number");
  EXPECT_EQ(fault_of("1e999 in", kind::length).remark, "whose number is too large or too small");
  EXPECT_EQ(fault_of("1e308 km", kind::length).remark, "which is beyond all measure");
  EXPECT_EQ(fault_of("12 in extra", kind::length).remark, "whose unit 'extra' is not known");
  EXPECT_EQ(fault_of("12 in 5", kind::length).remark, "which has a number where a unit is expected");
  EXPECT_EQ(fault_of("1.2.3 in", kind::length).remark, "which has a second decimal point");
  EXPECT_EQ(fault_of("17-18 in", kind::length).remark, "which has '-' where a unit is expected");
  EXPECT_EQ(fault_of("5 é", kind::length).remark, "whose character 3 cannot stand in a value");
  EXPECT_EQ(fault_of("17½ in", kind::length).hint, "write 1/2");
  EXPECT_EQ(fault_of("0.35 in", kind::number).sentence(),
            "expected a number such as \"0.35\", got \"0.35 in\", which is a length");
  EXPECT_EQ(fault_of("70 lb", kind::force).hint, "lb is a mass; write lbf");
  EXPECT_EQ(fault_of("5 lb/hp h", kind::specific_consumption).hint, "put what divides in brackets, as in \"W/(m2 K)\"");
  EXPECT_EQ(fault_of("776", kind::per_length).sentence(),
            "expected turns per length such as \"776 rev/mile\", got \"776\", which has no unit");
}

TEST(ParseQuantity, NothingBelowZeroWhereZeroIsAbsolute) {
  EXPECT_EQ(fault_of("-460 degF", kind::temperature).remark, "which is below absolute zero");
  EXPECT_EQ(fault_of("-3 psi", kind::absolute_pressure).remark, "which is below a perfect vacuum");
  EXPECT_LT(si_of("-3 psi", kind::gauge_pressure), 0);
  EXPECT_DOUBLE_EQ(si_of("0 K", kind::temperature), 0);
}

TEST(ParseQuantity, TheLocaleChangesNothing) {
  const std::string before = std::setlocale(LC_ALL, nullptr);
  for (auto name : {"de_DE.UTF-8", "fr_FR.UTF-8", "C.UTF-8"}) std::setlocale(LC_ALL, name);
  EXPECT_DOUBLE_EQ(si_of("1.5 m", kind::length), 1.5);
  EXPECT_EQ(fault_of("1,5 m", kind::length).hint, "write 1.5");
  std::setlocale(LC_ALL, before.c_str());
}

TEST(ParseAny, EveryKindThatFits) {
  auto kinds = [](std::string_view text) { return std::get<Guess>(parse_any(text)).kinds; };
  auto holds = [](const auto& list, const Kind& k) { return std::find(list.begin(), list.end(), &k) != list.end(); };
  EXPECT_TRUE(holds(kinds("12.5 psi"), kind::gauge_pressure) && holds(kinds("12.5 psi"), kind::absolute_pressure));
  EXPECT_FALSE(holds(kinds("12.5 psia"), kind::gauge_pressure) || holds(kinds("12.5 psia"), kind::vacuum));
  EXPECT_EQ(kinds("10 AWG"), std::vector<const Kind*>{&kind::wire_size});
  EXPECT_EQ(kinds("17 1/4 in"), std::vector<const Kind*>{&kind::length});
  EXPECT_EQ(kinds("180 degF").front(), &kind::temperature);
  EXPECT_TRUE(holds(kinds("180 degF"), kind::temperature_step));
  EXPECT_NEAR(std::get<Guess>(parse_any("180 degF")).si, 355.372222, 1e-6);
  EXPECT_EQ(kinds("5").front(), &kind::number);
  EXPECT_TRUE(kinds("0.006 m/(km/h)^2").empty());
  EXPECT_DOUBLE_EQ(std::get<Guess>(parse_any("0.006 m/(km/h)^2")).si, 0.006 * 3.6 * 3.6);
}

TEST(ParseAny, Faults) {
  auto fault = [](std::string_view text) { return std::get<TextFault>(parse_any(text)); };
  EXPECT_EQ(fault("17 mil").hint, "did you mean thou?");
  EXPECT_EQ(fault("").remark, "which is empty");
  EXPECT_EQ(fault("abc").sentence(),
            "expected a value such as \"12.5 psi\", got \"abc\", which does not begin with a number");
  EXPECT_EQ(fault("60 AWG").remark, "which is no American wire gauge");
  EXPECT_EQ(fault("1,5 in").hint, "write 1.5");
  EXPECT_EQ(fault("5 é").remark, "whose character 3 cannot stand in a value");
  EXPECT_EQ(fault("1e300 km9").remark, "which is beyond all measure");
  EXPECT_TRUE(std::holds_alternative<Guess>(parse_any("-500 degC"))) << "as a step it is fine";
}

/// Bytes as they come, and texts made of the pieces the grammar is made of, which get further in.
rc::Gen<std::string> any_text() {
  using namespace rc;
  const auto pieces = gen::map(gen::container<std::vector<std::string>>(gen::element<std::string>(
                                   "1", "17", "/", "-", " ", "(", ")", "^", "2", "9", ".", ",", "e", "in", "m", "lb",
                                   "rev", "degF", "psia", "AWG", "RPM", "lbs", "ga", "C", ",500", "%", "°", "Ω", "µ",
                                   "\xC2", "\xFF", "1/0", "0", "*", "kW", "h", "inH2O", std::string(1, '\0'))),
                               [](std::vector<std::string> parts) {
                                 std::string out;
                                 for (auto& p : parts) out += p;
                                 return out;
                               });
  return gen::oneOf(gen::arbitrary<std::string>(),
                    gen::map(gen::container<std::vector<std::uint8_t>>(gen::arbitrary<std::uint8_t>()),
                             [](const std::vector<std::uint8_t>& b) { return std::string(b.begin(), b.end()); }),
                    pieces);
}

RC_GTEST_PROP(ParseQuantity, AnyBytesGiveAFiniteValueOrAFault, ()) {
  const std::string text = *any_text();
  parse_unit(text);
  parse_any(text);
  parse_number(text);
  for (const Kind* k : all_kinds()) {
    const auto read = parse_quantity(text, *k);
    if (auto* p = std::get_if<Parsed>(&read)) {
      RC_ASSERT(std::isfinite(p->si));
    } else {
      const auto& fault = std::get<TextFault>(read);
      RC_ASSERT(!fault.remark.empty());
      RC_ASSERT(fault.given.find('\n') == std::string::npos);
    }
  }
}

RC_GTEST_PROP(ParseQuantity, MixedNumbersAddUp, ()) {
  const int whole = *rc::gen::inRange(0, 10000), below = *rc::gen::inRange(2, 129), above = *rc::gen::inRange(1, below);
  const std::string sign = *rc::gen::element<std::string>("", "-"), gap = *rc::gen::element<std::string>(" ", "-");
  const std::string text = sign + std::to_string(whole) + gap + std::to_string(above) + "/" + std::to_string(below);
  const double value = (sign.empty() ? 1 : -1) * (whole + static_cast<double>(above) / below);
  RC_ASSERT(std::abs(si_of(text + " m", kind::length) - value) <= 1e-15 * std::abs(value));
}

}  // namespace
}  // namespace sw
