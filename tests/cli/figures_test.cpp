#include "cli/figures.hpp"

#include <gtest/gtest.h>

#include "car/build.hpp"
#include "cli/page.hpp"
#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

std::string shown(const std::string& text) {
  Page page({.width = 200, .unicode = true, .colour = false});
  page.text(text);
  std::string out = page.take();
  out.pop_back();
  return out;
}

TEST(MeasureWords, SayValueDoubtAndLimitInTheFindingsUnit) {
  EXPECT_EQ(shown(measure_words(short_of_current())), "-7 A ± 3 A where 0 A is the least");
  EXPECT_EQ(shown(measure_words(hot_coolant())), "103 degC ± 4 degC where 105 degC is the most");
  EXPECT_EQ(shown(measure_words(charge_band())), "14.2 V ± 0.1 V where 13.8 V to 14.8 V is wanted");
  EXPECT_EQ(measure_words(backward_fan()), "");
  EXPECT_EQ(measure_words(unknown_cap()), "");
}

TEST(LimitWords, NameTheSide) {
  EXPECT_EQ(shown(limit_words(short_of_current())), "0 A at least");
  EXPECT_EQ(shown(limit_words(hot_coolant())), "105 degC at most");
  EXPECT_EQ(limit_words(backward_fan()), "");
}

TEST(WithDoubt, LeavesOutADoubtThatSaysNothing) {
  Finding f = charge_band();
  f.predicted = 12;
  for (double nothing : {0.0, 1e-9}) {
    f.half_width = f.far_width = nothing;
    EXPECT_EQ(shown(with_doubt(f)), "12 V");
  }
}

/// Three digits, or the decimals of the limit; more only where fewer would hide the side.
TEST(WithDoubt, TellsNoMoreDigitsThanLimitAndMarginAskFor) {
  Finding f = thick_wire();
  f.quantity = &kind::voltage;
  f.unit = "V";
  f.half_width = f.far_width = 1e-5;
  f.high_limit = 0.5;
  f.predicted = 0.069861;
  EXPECT_EQ(shown(with_doubt(f)), "0.0699 V");
  f.half_width = f.far_width = 0;
  EXPECT_EQ(shown(measure_words(f)), "0.0699 V where 0.5 V is the most");
  f.high_limit = 1012.25;
  f.predicted = 901.2345;
  EXPECT_EQ(digits_of(*f.predicted, f), 3) << "a limit told to four digits has no decimals";
  f.high_limit = 13;
  f.predicted = 13.0042;
  EXPECT_EQ(shown(measure_words(f)), "13.004 V where 13 V is the most");
  f.half_width = f.far_width = 400;
  f.predicted = 1234.5;
  EXPECT_EQ(shown(with_doubt(f)), "1230 V ± 400 V");
}

TEST(InWrittenUnits, TellsOneKindInOneUnit) {
  Diagnostics faults;
  const Node root = parse_text("[cooling.thermostat]\nopens = \"180 degF\"\n", 0, false, faults);
  Proof p{.findings = {hot_coolant()}, .duties = {}, .next = {}};
  p.findings[0].because = {{.what = "air", .value = 300, .kind = &kind::temperature, .unit = "degC"},
                           {.what = "rise", .value = 10, .kind = &kind::temperature_step, .unit = "K"}};
  const Proof told = in_written_units(p, WrittenUnits(root, build_fields()));
  EXPECT_EQ(shown(measure_words(told.findings[0])), "217 degF ± 7.2 degF where 221 degF is the most");
  EXPECT_EQ(shown(because_value(told.findings[0].because[0])), "80.33 degF");
  EXPECT_EQ(shown(because_value(told.findings[0].because[1])), "18 degF");
}

// 103 degC below its 105 may go 1 K up, toward the limit, and 4 K down.
TEST(WithDoubt, TellsALopsidedBandByItsEnds) {
  Finding f = hot_coolant();
  f.half_width = 1;
  f.far_width = 4;
  EXPECT_EQ(shown(with_doubt(f)), "103 degC (99 degC to 104 degC)");
  // Beyond the limit, toward it is down.
  f.margin = -*f.margin;
  EXPECT_EQ(shown(with_doubt(f)), "103 degC (102 degC to 107 degC)");
}

TEST(EvidenceMarks, ExplainOnlyWhatWasUsed) {
  EvidenceMarks marks;
  EXPECT_EQ(marks.legend(), "");
  EXPECT_EQ(shown("x" + marks.mark(Source::typical)), "x (t)");
  EXPECT_EQ(shown("x" + marks.mark({.role = Role::given, .evidence = Evidence{.source = Source::data_sheet}})),
            "x (d)");
  EXPECT_EQ(marks.mark(Because{.what = "typical of a computed figure"}), "");
  EXPECT_EQ(marks.legend(), "(d) data sheet   (t) typical");
}

// What stands in for a choice nobody made has no mark, for that would say that somebody did.
TEST(EvidenceMarks, NobodysChoiceIsNotMarked) {
  EvidenceMarks marks;
  const Evidence chosen{.source = Source::chosen}, standing_in{.source = Source::chosen, .defaulted = true};
  EXPECT_EQ(marks.mark({.role = Role::given, .evidence = standing_in}), "");
  EXPECT_EQ(marks.legend(), "");
  EXPECT_EQ(shown(marks.mark({.role = Role::given, .evidence = chosen})), " (c)");
}

TEST(Because, ALineInWordsIsTheWords) { EXPECT_EQ(because_value({.what = "curve", .text = "a curve"}), "a curve"); }

TEST(Where, NamesPlaceAndDuty) {
  EXPECT_EQ(where(thick_wire()), "left fan, hot-idle");
  EXPECT_EQ(where(hot_coolant()), "grade");
  EXPECT_EQ(where(backward_fan()), "left");
}

TEST(FlowsNothing, OfAnElectricFigureBelowItsLimitAlone) {
  Finding f = thick_wire();
  EXPECT_FALSE(flows_nothing(f));
  f.predicted = 1.4e-8;
  EXPECT_TRUE(flows_nothing(f));
  f.kind = RequirementKind::least;
  EXPECT_FALSE(flows_nothing(f)) << "nothing where something must flow is news";
}

TEST(When, TellsTheInstantOrTheSpanOfTheMean) {
  Finding f = thick_wire();
  EXPECT_EQ(shown(when(f)), "left fan, hot-idle, at its start");
  f.time = 2280;
  EXPECT_EQ(shown(when(f)), "left fan, hot-idle, 38 min in");
  f.time = 12;
  EXPECT_EQ(shown(when(f)), "left fan, hot-idle, 12 s in");
  f.mean_share = 0.5;
  EXPECT_EQ(shown(when(f)), "left fan, hot-idle, mean of its last 50 %");
  EXPECT_EQ(when(backward_fan()), "left") << "a rule has no instant";
}

}  // namespace
}  // namespace sw::cli
