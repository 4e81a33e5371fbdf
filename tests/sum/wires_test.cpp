// What the sums of wire do with optional, contradictory and far-off inputs; their figures stand in tests/published.
#include "sum/asked.hpp"

namespace sw {
namespace {

TEST(WireSums, CableAndTemperatureHaveTheirDefaults) {
  EXPECT_NEAR(asked("wire", {"size=10 AWG"}, "resistance_per_length", "ohm/m"),
              asked("wire", {"size=10 AWG", "cable=copper", "temperature=68 degF"}, "resistance_per_length", "ohm/m"),
              1e-12);
  EXPECT_EQ(code("wire", {"size=400 mm2", "cable=flexible"}), 3);
  EXPECT_EQ(code("wire", {"size=10 AWG", "temperature=400 degC"}), 3);
  EXPECT_EQ(code("wire", {"size=10"}), 2);
  EXPECT_EQ(code("wire", {"size=10 AWG", "cable=silver"}), 2);
}

TEST(WireSums, AmpacityOutsideItsTableGivesNoCurrent) {
  EXPECT_EQ(code("ampacity", {"size=22 AWG", "insulation=105 degC", "zone=cabin"}), 3);
  EXPECT_FALSE(gives("ampacity", {"size=22 AWG", "insulation=105 degC", "zone=cabin"}, "current"));
  EXPECT_NEAR(asked("ampacity", {"size=10 AWG", "insulation=221 degF", "zone=cabin", "bundle=5"}, "current", "A"), 36,
              1e-9);
  EXPECT_EQ(code("ampacity", {"size=10 AWG", "insulation=105 degC"}), 2);
}

TEST(WireSums, ResistivityStandsInCoppersPlace) {
  // 10.371 ohm cmil/ft, 6530 cmil of 12 AWG, 30 ft, 20 A: 0.953 V again
  EXPECT_NEAR(
      asked("voltage-drop", {"size=12 AWG", "current=20 A", "loop_length=30 ft", "resistivity=10.371 ohm cmil/ft"},
            "drop", "V"),
      asked("voltage-drop", {"size=12 AWG", "current=20 A", "loop_length=30 ft"}, "drop", "V"), 1e-9);
  EXPECT_EQ(code("voltage-drop",
                 {"size=12 AWG", "current=20 A", "loop_length=30 ft", "resistivity=10 ohm cmil/ft", "cable=flexible"}),
            2);
  EXPECT_NEAR(asked("voltage-drop", {"size=12 AWG", "current=20 A", "loop_length=30 ft"}, "loss", "W"), 20 * 0.9529,
              0.02);
}

TEST(WireSums, SizeMeetsDropAndAmpacity) {
  const Words base = {"current=40 A", "loop_length=6 ft", "drop_limit=0.5 V"};
  // 10.371 x 6 ft x 40 A / 0.5 V = 4978 cmil: 12 AWG (6530 cmil) for the drop alone, 10 AWG for 40 A in the engine bay
  const auto alone = run_sum("wire-size", base);
  EXPECT_EQ(alone.output("gauge")->text, "12 AWG");
  EXPECT_EQ(alone.output("ampacity"), nullptr);
  EXPECT_NEAR(asked("wire-size", base, "area", "cmil"), 4978, 1);
  auto hot = base;
  hot.insert(hot.end(), {"insulation=105 degC", "zone=engine-bay"});
  EXPECT_EQ(run_sum("wire-size", hot).output("gauge")->text, "10 AWG");
  EXPECT_NEAR(asked("wire-size", hot, "ampacity", "A"), 51, 1e-9);
  hot.push_back("bundle=4");  // 0.6 x 51 A is too little, 0.6 x 68 A = 40.8 A will do
  EXPECT_EQ(run_sum("wire-size", hot).output("gauge")->text, "8 AWG");
  EXPECT_EQ(code("wire-size", {"current=40 A", "loop_length=6 ft", "drop_limit=0.5 V", "zone=cabin"}), 2);
  EXPECT_EQ(code("wire-size", {"current=40 A", "loop_length=6 ft", "drop_limit=0.5 V", "bundle=3"}), 2);
  EXPECT_EQ(code("wire-size", {"current=900 A", "loop_length=60 ft", "drop_limit=0.1 V"}), 3);
}

}  // namespace
}  // namespace sw
