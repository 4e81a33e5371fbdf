// The wording of every fault a reader can find, whole lines. A change here is a change of what users read.
#include <gtest/gtest.h>

#include "field/reading.hpp"

namespace sw::sample {
namespace {

template <class... Text>
std::vector<std::string> lines(Text... text) {
  return {text...};
}

std::vector<std::string> said_of(const std::string& radiator) {
  return read_car("[cooling.radiator]\n" + radiator).said;
}

TEST(ReadMessages, AnotherQuantity) {
  EXPECT_EQ(said_of("core_width = \"2.0 psi\""),
            lines("bad.toml:2:14: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", "
                  "got \"2.0 psi\", which is a pressure; units: in, mm, ft, cm, m, km, mile, um, thou"));
}

TEST(ReadMessages, NoUnit) {
  EXPECT_EQ(said_of("core_width = 26"),
            lines("bad.toml:2:14: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", got 26, "
                  "which has no unit; units: in, mm, ft, cm, m, km, mile, um, thou"));
  EXPECT_EQ(said_of("core_width = \"26\""),
            lines("bad.toml:2:14: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", "
                  "got \"26\", which has no unit; units: in, mm, ft, cm, m, km, mile, um, thou"));
}

TEST(ReadMessages, NotAValue) {
  EXPECT_EQ(said_of("core_width = true\nrows = [1]\nfin_share = 1979-05-27"),
            lines("bad.toml:2:14: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", got true",
                  "bad.toml:3:8: cooling.radiator.rows: expected a whole number, got an array",
                  "bad.toml:4:13: cooling.radiator.fin_share: expected a number such as \"0.35\", got 1979-05-27"));
}

TEST(ReadMessages, OutsideTheRange) {
  EXPECT_EQ(said_of("core_width = \"26 mm\""),
            lines("bad.toml:2:14: cooling.radiator.core_width: 26 mm is outside 4 in to 60 in "
                  "(101.6 mm to 1524 mm); was 26 in meant?"));
  EXPECT_EQ(said_of("core_height = \"3 in\""),
            lines("bad.toml:2:15: cooling.radiator.core_height: 3 in is outside 4 in to 60 in; was 3 ft meant?"));
  EXPECT_EQ(said_of("thermostat = \"82 degF\""),
            lines("bad.toml:2:14: cooling.radiator.thermostat: 82 degF is outside 140 degF to 230 degF; "
                  "was 82 degC meant?"));
  EXPECT_EQ(said_of("fin_share = 35"),
            lines("bad.toml:2:13: cooling.radiator.fin_share: 35 is outside the range above 0 to 1; "
                  "was \"35 %\" meant?"));
  EXPECT_EQ(said_of("cap = \"0 psi\""),
            lines("bad.toml:2:7: cooling.radiator.cap: 0 psi is outside the range above 0 psi to 30 psi"));
  EXPECT_EQ(said_of("rows = 7"), lines("bad.toml:2:8: cooling.radiator.rows: 7 is outside 1 to 6"));
}

// A number in the wrong quantity's unit: the field's own where the number could be that, and what can be written.
TEST(ReadMessages, AnotherQuantityWhoseNumberWouldDo) {
  EXPECT_EQ(
      said_of("core_width = \"26 psi\""),
      lines("bad.toml:2:14: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", got \"26 psi\", "
            "which is a pressure; was 26 in meant? units: in, mm, ft, cm, m, km, mile, um, thou"));
}

// Nobody writes thousandths of an inch or microns of a core: no far-fetched unit is proposed.
TEST(ReadMessages, OutsideTheRangeWithoutAFarFetchedUnit) {
  EXPECT_EQ(said_of("core_width = \"5000 in\""),
            lines("bad.toml:2:14: cooling.radiator.core_width: 5000 in is outside 4 in to 60 in"));
}

TEST(ReadMessages, AKeyOfAnotherTable) {
  const auto said = said_of("gauge = \"10 AWG\"");
  ASSERT_EQ(said.size(), 1u);
  EXPECT_NE(said[0].find("gauge: unknown key; did you mean "), std::string::npos) << said[0];
}

TEST(ReadMessages, NumbersThatAreNone) {
  EXPECT_EQ(said_of("fin_share = inf\nrows = 2.5\n"),
            lines("bad.toml:2:13: cooling.radiator.fin_share: expected a number such as \"0.35\", got inf, "
                  "which is not a finite number",
                  "bad.toml:3:8: cooling.radiator.rows: expected a whole number, got 2.5"));
}

TEST(ReadMessages, YesNoAndChoice) {
  EXPECT_EQ(said_of("shrouded = \"yes\"\nflow = \"crosflow\""),
            lines("bad.toml:2:12: cooling.radiator.shrouded: expected true or false, got \"yes\"; "
                  "write true or false without quotation marks",
                  "bad.toml:3:8: cooling.radiator.flow: expected \"down-flow\" or \"cross-flow\", got "
                  "\"crosflow\"; did you mean \"cross-flow\"?"));
}

TEST(ReadMessages, AGuessIsTypicalOrStated) {
  const auto said = said_of("core_width = { value = \"26 in\", from = \"guess\" }");
  ASSERT_EQ(said.size(), 1u);
  EXPECT_NE(said[0].find("got \"guess\"; write \"typical\" for a guess, \"stated\" for what somebody told you"),
            std::string::npos)
      << said[0];
  const auto harm = said_of("cap = { value = \"13 psi\", from = \"guess\" }");
  ASSERT_EQ(harm.size(), 1u);
  EXPECT_NE(harm[0].find("; measure it or take it from the data sheet"), std::string::npos) << harm[0];
}

TEST(ReadMessages, AChoiceInAnotherSpelling) {
  for (auto* flow : {"cross-flow", "cross flow", "Cross-Flow", "crossflow"})
    EXPECT_TRUE(said_of("flow = \"" + std::string(flow) + "\"").empty()) << flow;
}

TEST(ReadMessages, TextAndNames) {
  EXPECT_EQ(said_of("colour = 3\nmarks = \"left\"\n"),
            lines("bad.toml:2:10: cooling.radiator.colour: expected a text, got 3; write it in quotation marks: "
                  "\"3\"",
                  "bad.toml:3:9: cooling.radiator.marks: expected an array of names, got \"left\"; write it in "
                  "brackets: [\"left\"]"));
  EXPECT_EQ(said_of("marks = [\"left\", 4, {}]"),
            lines("bad.toml:2:18: cooling.radiator.marks: expected a text, got 4; write it in quotation marks: "
                  "\"4\"",
                  "bad.toml:2:21: cooling.radiator.marks: expected a text, got a table"));
}

TEST(ReadMessages, UnknownKeys) {
  EXPECT_EQ(said_of("core_widht = \"26 in\"\n[cooling.oil_cooler]\nfins = 3\n[gooling]\n"),
            lines("bad.toml:2:1: cooling.radiator.core_widht: unknown key; did you mean \"core_width\"?",
                  "bad.toml:4:1: cooling.oil_cooler.fins: unknown key; known here: heat, note",
                  "bad.toml:5:2: gooling: unknown key; did you mean \"cooling\"?"));
  EXPECT_EQ(said_of("[cooling.oil_cooler]\npart = \"x\""),
            lines("bad.toml:3:1: cooling.oil_cooler.part: unknown key; known here: heat, note"));
}

TEST(ReadMessages, TablesAndValuesExchanged) {
  EXPECT_EQ(read_car("wiring = 3\n[cooling]\nradiator = \"new\"\noil_cooler = false\n[cooling.other]").said,
            lines("bad.toml:1:10: wiring: expected a table, [wiring], got 3",
                  "bad.toml:3:12: cooling.radiator: expected a table, [cooling.radiator], got \"new\"",
                  "bad.toml:4:14: cooling.oil_cooler: expected a table, [cooling.oil_cooler], got false; `false` "
                  "takes something out only of the build an overlay is laid over",
                  "bad.toml:5:10: cooling.other: unknown key; known here: radiator, oil_cooler, note"));
  EXPECT_EQ(said_of("[cooling.radiator.core_width]\nfrom = \"measured\""),
            lines("bad.toml:2:1: cooling.radiator.core_width: expected a value, got a table without `value`"));
}

TEST(ReadMessages, Lists) {
  EXPECT_EQ(read_car("[[wiring.run]]\ngauge = \"10 AWG\"").said,
            lines("bad.toml:1:1: wiring.run: expected a table, [wiring.run], got an array; give each entry a name: "
                  "[wiring.run.NAME]"));
  EXPECT_EQ(read_car("[wiring.run]\nfan = \"10 AWG\"\n\"a b\" = {}\n").said,
            lines("bad.toml:2:7: wiring.run.fan: expected a table, [wiring.run.fan], got \"10 AWG\"",
                  "bad.toml:3:1: wiring.run.a b: a name is made of letters, digits, - and _, got \"a b\""));
}

TEST(ReadMessages, Evidence) {
  EXPECT_EQ(said_of("core_width = { value = \"26 in\", from = \"mesured\", plus = 3 }"),
            lines("bad.toml:2:40: cooling.radiator.core_width.from: expected \"stated\", \"measured\", "
                  "\"data sheet\", \"typical\", \"chosen\", \"solved\" or \"road test\", got \"mesured\"; "
                  "did you mean \"measured\"?",
                  "bad.toml:2:51: cooling.radiator.core_width.plus: unknown key; known here: value, from, "
                  "plus_minus, note"));
  EXPECT_EQ(said_of("cap = { value = \"13 psi\", from = \"typical\" }"),
            lines("bad.toml:2:34: cooling.radiator.cap: has no typical value; measure it or take it from the "
                  "data sheet"));
}

TEST(ReadMessages, PlusMinus) {
  auto with = [](const std::string& width) {
    return said_of("core_width = { value = \"26 in\", plus_minus = " + width + " }");
  };
  EXPECT_EQ(with("\"1 psi\""),
            lines("bad.toml:2:46: cooling.radiator.core_width.plus_minus: expected a share such as \"3 %\" or a "
                  "length such as \"17 1/4 in\", got \"1 psi\""));
  EXPECT_EQ(with("0.5"),
            lines("bad.toml:2:46: cooling.radiator.core_width.plus_minus: expected a share such as \"3 %\" or a "
                  "length such as \"17 1/4 in\", got 0.5, which has no unit"));
  EXPECT_EQ(with("\"-1/16 in\""), lines("bad.toml:2:46: cooling.radiator.core_width.plus_minus: a plus-minus is "
                                        "never negative, got \"-1/16 in\""));
  EXPECT_EQ(said_of("colour = { value = \"red\", plus_minus = \"2 %\" }"),
            lines("bad.toml:2:40: cooling.radiator.colour.plus_minus: this field has no plus-minus"));
  EXPECT_EQ(
      said_of("airflow_loss = { points = [[\"2 m/s\", \"38 Pa\"], [\"4 m/s\", \"130 Pa\"]], plus_minus = \"3 Pa\" }"),
      lines("bad.toml:2:83: cooling.radiator.airflow_loss.plus_minus: expected a share such as \"5 %\", got "
            "\"3 Pa\""));
}

TEST(ReadMessages, EachFaultyRowOfACurve) {
  EXPECT_EQ(
      said_of("airflow_loss = [ [\"2 m/s\", \"38 Pa\"],\n  [\"2 m/s\", \"50 Pa\"],\n  [\"4 m/s\"],\n  [4, \"60 Pa\"],\n"
              "  [\"5 m/s\", \"2 kPa\"], 7 ]"),
      lines("bad.toml:3:4: cooling.radiator.airflow_loss: row 2: \"2 m/s\" is not above the speed of the row "
            "before",
            "bad.toml:4:3: cooling.radiator.airflow_loss: row 3: expected a row of two, speed and pressure "
            "difference, such as [\"55 mph\", \"2 psi\"], got an array of 1",
            "bad.toml:5:4: cooling.radiator.airflow_loss: row 4: expected a speed such as \"55 mph\", got 4, "
            "which has no unit; units: mph, km/h, m/s, ft/s",
            "bad.toml:6:13: cooling.radiator.airflow_loss: row 5: 2 kPa is outside 0 Pa to 1000 Pa (0 kPa to "
            "1 kPa); was 2 Pa meant?",
            "bad.toml:6:23: cooling.radiator.airflow_loss: row 6: expected a row of two, speed and pressure "
            "difference, such as [\"55 mph\", \"2 psi\"], got 7"));
  EXPECT_EQ(said_of("airflow_loss = [[\"2 m/s\", \"38 Pa\"]]"),
            lines("bad.toml:2:16: cooling.radiator.airflow_loss: a curve needs at least two rows, got 1"));
  EXPECT_EQ(said_of("airflow_loss = \"38 Pa\""),
            lines("bad.toml:2:16: cooling.radiator.airflow_loss: expected the rows of a curve, an array of [speed, "
                  "pressure difference], got \"38 Pa\""));
}

TEST(ReadMessages, AllFaultsInOnePassByPlace) {
  auto said = read_car("[wiring.run.fan]\nlength = 3\n[cooling.radiator]\nrows = 9\nflow = \"up\"\n").said;
  EXPECT_EQ(said, lines("bad.toml:2:10: wiring.run.fan.length: expected a length such as \"17 1/4 in\", got 3, which "
                        "has no unit; units: in, mm, ft, cm, m, km, mile, um, thou",
                        "bad.toml:4:8: cooling.radiator.rows: 9 is outside 1 to 6",
                        "bad.toml:5:8: cooling.radiator.flow: expected \"down-flow\" or \"cross-flow\", got \"up\""));
}

TEST(ReadMessages, OnlyTheSyntaxFault) {
  EXPECT_EQ(read_car("[cooling.radiator]\nrows = 9\nflow = \n").said,
            lines("bad.toml:3:8: this is not TOML: Error while parsing key-value pair: expected value, saw '\\n'"));
}

TEST(ReadMessages, JsonSpeaksOfThePath) {
  EXPECT_EQ(read_car(R"({"cooling": {"radiator": {"rows": 9, "rows": 3, "core_width": 26}}})", true).said,
            lines("bad.json: cooling.radiator.core_width: expected a length such as \"17 1/4 in\", got 26, which "
                  "has no unit; units: in, mm, ft, cm, m, km, mile, um, thou",
                  "bad.json: cooling.radiator.rows: this key stands twice in its table",
                  "bad.json: cooling.radiator.rows: 9 is outside 1 to 6"));
}

TEST(ReadMessages, NothingToSay) {
  EXPECT_EQ(
      read_car("base = \"x\"\nshelf = \"y\"\nnote = \"n\"\n[cooling.radiator]\npart = \"p\"\nnote = \"n\"\n"
               "core_width = { value = \"26 in\", note = \"at the top tank\" }\n[wiring.run]\nnote = \"all new\"\n")
          .said,
      lines());
}

TEST(ReadMessages, ControlCharactersNeverReachTheTerminal) {
  EXPECT_EQ(said_of("\"\\u001b[2J\" = 1"), lines("bad.toml:2:1: cooling.radiator.\\x1b[2J: unknown key"));
}

}  // namespace
}  // namespace sw::sample
