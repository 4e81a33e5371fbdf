#include <gtest/gtest.h>

#include "car/build.hpp"
#include "survey/filled.hpp"
#include "survey/walk.hpp"

namespace sw {
namespace {

ToMeasure asked(std::string path, Station station) {
  const FieldInfo* f = find_field(build_fields(), path);
  EXPECT_TRUE(f) << path;
  return {.path = std::move(path), .field = f, .station = station, .tool = tool_of(*f)};
}

Walk small_walk() {
  Walk walk;
  walk.figures = {asked("vehicle.wheelbase", Station::standing), asked("vehicle.earth", Station::electrics),
                  asked("engine.torque_curve", Station::desk)};
  walk.figures[0].now = "112 in, typical\n# with a line break";
  return walk;
}

TEST(Form, IsAnEmptyTextOfABuildsOwnSyntax) {
  const std::string text = form_of(small_walk(), "A car", "car.toml");
  Diagnostics faults;
  const Node root = parse_text(text, 0, false, faults);
  EXPECT_FALSE(faults.any_fault()) << text;
  for (auto path : {"vehicle.wheelbase", "vehicle.earth", "engine.torque_curve", "note"}) {
    const Node* at = find_node(root, path);
    ASSERT_TRUE(at) << path;
    EXPECT_EQ(at->text, "");
  }
}

TEST(Form, TellsToolToleranceAndWhatMayStandThere) {
  const std::string text = form_of(small_walk(), "A car", "car.toml");
  EXPECT_NE(text.find("tape, to ± 0.25 in; now 112 in, typical"), std::string::npos) << text;
  EXPECT_NE(text.find("\"negative\" or \"positive\""), std::string::npos) << text;
  EXPECT_NE(text.find("rows such as [[\"1500 rpm\", \"60 lb-ft\"]"), std::string::npos) << text;
  EXPECT_NE(text.find("Disconnect the battery"), std::string::npos) << "the caution stands where the hand is\n" << text;
}

TEST(Form, ReadsBackAsNothingMeasured) {
  const Build build;
  const Filled filled = read_filled(form_of(small_walk(), "A car", "car.toml"), build, {});
  EXPECT_FALSE(filled.faults.any_fault());
  EXPECT_TRUE(filled.taken.empty());
  EXPECT_EQ(filled.blank, 3u);
}

}  // namespace
}  // namespace sw
