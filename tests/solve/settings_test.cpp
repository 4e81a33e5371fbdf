#include "solve/settings.hpp"

#include <gtest/gtest.h>

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::vector<SettingText> texts(const Build& b, std::vector<Setting> settings) {
  Diagnostics faults;
  auto all = setting_texts(b, settings, {}, faults);
  for (auto& d : faults.all()) ADD_FAILURE() << d.path << ": " << d.problem;
  return all;
}

// 1 inch is 25.4 mm by definition.
TEST(SolveSettings, RoundsToWhatAShopSetsAndTriesThat) {
  const Build b = hand_car();
  const auto all = texts(b, {{"belts.belt.front.crank_diameter", 6.4321987 * inch}, {"brakes.pedal.ratio", 4.3}});
  ASSERT_EQ(all.size(), 2u);
  EXPECT_EQ(all[0].text, "6.432 in");
  EXPECT_EQ(all[0].was_text, "6.5 in");
  EXPECT_EQ(all[0].toml, "{ value = \"6.432 in\", from = \"solved\" }");
  EXPECT_DOUBLE_EQ(all[0].value, 6.432 * inch);
  EXPECT_EQ(all[1].toml, "{ value = 4.3, from = \"solved\" }");
  const Build with = with_settings(b, all);
  EXPECT_DOUBLE_EQ(std::get<belts::Input>(with.inputs).belt.entries[0].second.crank_diameter->si, 6.432 * inch);
  EXPECT_EQ(with.evidence.at("brakes.pedal.ratio").source, Source::solved);
  EXPECT_EQ(with.evidence.at("brakes.pedal.ratio").half_width, 0);
}

TEST(SolveSettings, SaysWhatIsNoFigureOrOutOfRange) {
  Diagnostics faults;
  const Setting wrong[] = {{"belts.belt.rear.tension", 400.0}, {"brakes.pedal.ratio", 400.0}};
  setting_texts(hand_car(), wrong, {}, faults);
  ASSERT_EQ(faults.all().size(), 2u);
  EXPECT_EQ(faults.all()[0].path, "belts.belt.rear.tension");
  EXPECT_NE(faults.all()[1].problem.find("400 is outside"), std::string::npos) << faults.all()[1].problem;
}

TEST(SolveSettings, SplicesAndKeepsWhatStandsAround) {
  const auto all = texts(hand_car(), {{"brakes.pedal.ratio", 4.3}, {"belts.belt.front.tension", 90 * lbf}});
  Diagnostics faults;
  const auto text = write_settings("# head\n[brakes.pedal]\nratio = 5 # so\n", all, faults);
  ASSERT_TRUE(text);
  EXPECT_EQ(*text,
            "# head\n[brakes.pedal]\nratio = { value = 4.3, from = \"solved\" } # so\n\n[belts.belt.front]\n"
            "tension = { value = \"90 lbf\", from = \"solved\" }\n");
  EXPECT_FALSE(write_settings("brakes = 3\n", all, faults));
  EXPECT_TRUE(faults.any_fault());
}

TEST(SolveSettings, PasteLinesStandUnderTheirTables) {
  const auto all =
      texts(hand_car(),
            {{"brakes.pedal.ratio", 4.3}, {"belts.belt.front.tension", 90 * lbf}, {"brakes.pedal.travel", 5 * inch}});
  EXPECT_EQ(
      lines_to_paste(all),
      "[belts.belt.front]\ntension = { value = \"90 lbf\", from = \"solved\" }\n[brakes.pedal]\nratio = { value = "
      "4.3, from = \"solved\" }\ntravel = { value = \"5 in\", from = \"solved\" }\n");
}

}  // namespace
