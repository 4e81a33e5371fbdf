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
  EXPECT_NEAR(asked("wire-size", base, "area", "cmil"), 4978, 1);
  auto hot = base;
  hot.insert(hot.end(), {"insulation=105 degC", "zone=engine-bay"});
  EXPECT_EQ(run_sum("wire-size", hot).output("gauge")->text, "10 AWG");
  EXPECT_NEAR(asked("wire-size", hot, "ampacity", "A"), 51, 1e-9);
  hot.push_back("bundle=4");  // 0.6 x 51 A is too little, 0.6 x 68 A = 40.8 A will do
  EXPECT_EQ(run_sum("wire-size", hot).output("gauge")->text, "8 AWG");
  EXPECT_EQ(code("wire-size", {"current=900 A", "loop_length=60 ft", "drop_limit=0.1 V"}), 3);
}

// 33 CFR 183.425 Table 5, 80 degC: 18 AWG 15 A, 16 AWG 20 A, 14 AWG 25 A, 12 AWG 35 A; engine space 0.78 of it.
TEST(WireSums, HeatIsLookedAtWhateverIsLeftOut) {
  const auto r = run_sum("wire-size", {"current=20 A", "drop_limit=0.5 V", "loop_length=3 ft"});
  EXPECT_EQ(r.output("gauge")->text, "12 AWG");  // 25 A x 0.78 = 19.5 A is too little, 35 A x 0.78 = 27.3 A will do
  EXPECT_EQ(r.output("decided_by")->text, "heat");
  EXPECT_NEAR(r.output("ampacity")->numbers.at(0), 27.3, 1e-9);
  const std::string text = r.to_text();
  for (auto* part : {"assumed: ", "insulation = 80 degC", "zone = engine bay", "bundle = 1", "usual PVC (from memory)",
                     "for the drop alone 18 AWG would do, but it gets too hot"})
    EXPECT_NE(text.find(part), std::string::npos) << part << " in\n" << text;
  const auto far = run_sum("wire-size", {"current=20 A", "drop_limit=0.5 V", "loop_length=40 ft", "zone=cabin"});
  EXPECT_EQ(far.output("decided_by")->text, "drop");
  EXPECT_EQ(far.to_text().find("zone = "), std::string::npos) << "what was given is not assumed";
  const auto small = run_sum("wire-size", {"current=1 A", "drop_limit=1 V", "loop_length=3 ft"});
  EXPECT_EQ(small.output("gauge")->text, "18 AWG");
  EXPECT_NE(small.to_text().find("the ampacity table begins at 18 AWG"), std::string::npos);
  EXPECT_EQ(code("wire-size", {"current=1 A", "drop_limit=1 V", "loop_length=3 ft", "insulation=40 degC"}), 3);
  EXPECT_EQ(code("wire-size", {"current=20 A", "drop_limit=0.5 V", "loop_length=3 ft", "resistivity=17 ohm cmil/ft"}),
            3)
      << "aluminium's resistivity, copper's ampacity";
}

TEST(WireSums, ADropThatWillDoSaysWhereTheWireGetsTooHot) {
  const Words hot = {"size=18 AWG", "current=20 A", "loop_length=3 ft"};
  EXPECT_NE(run_sum("voltage-drop", hot)
                .to_text()
                .find("note: too hot: with 80 degC insulation in the engine bay this "
                      "size carries 11.7 A"),  // 15 A x 0.78
            std::string::npos);
  EXPECT_EQ(run_sum("voltage-drop", {"size=10 AWG", "current=20 A", "loop_length=3 ft"}).to_text().find("too hot"),
            std::string::npos);
}

TEST(WireSums, SpaceOrHyphenNamesOneZone) {
  const Words base = {"size=10 AWG", "insulation=105 degC"};
  for (auto* zone : {"zone=engine bay", "zone=engine-bay", "zone=Engine Bay"}) {
    auto args = base;
    args.push_back(zone);
    EXPECT_NEAR(asked("ampacity", args, "current", "A"), 51, 1e-9) << zone;
    EXPECT_EQ(run_sum("ampacity", args).inputs.at(2).text, "engine bay") << zone;
  }
}

}  // namespace
}  // namespace sw
