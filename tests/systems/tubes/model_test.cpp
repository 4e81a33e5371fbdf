#include "systems/tubes/lines.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(TubesModel, StretchGoesByTheMaterialUnlessGiven) {
  const auto m = resolved<tubes::System>(hand_car("[tubes.tube.a]\nmaterial = \"hard stainless\"\n[tubes.tube.b]\n"
                                                  "material = \"hard stainless\"\nelongation = 0.5\n"))
                     .model;
  EXPECT_NEAR(m.tubes.at(0).elongation.value(), 0.35, 1e-12);
  EXPECT_NEAR(m.tubes.at(1).elongation.value(), 0.5, 1e-12);
}

// The sentence of the field tells the figures of the table.
TEST(TubesModel, UsualStretchIsToldAsItIsUsed) {
  const FieldInfo* field = find_field(build_fields(), "tubes.tube.a.elongation");
  ASSERT_TRUE(field);
  for (double usual : tubes::usual_elongations) {
    const std::string words = std::to_string(usual).substr(0, 4);
    EXPECT_NE(field->doc.find(words), std::string_view::npos) << words;
  }
}

TEST(TubesModel, FiguresThatCannotBe) {
  const Car wall(faulty_car("[tubes.tube.a]\noutside = \"0.25 in\"\nwall = \"0.2 in\"\n"));
  ASSERT_TRUE(wall.faults().any_fault());
  EXPECT_EQ(wall.faults().all()[0].path, "tubes.tube.a.wall");
  const Car flare(faulty_car("[tubes.tube.a]\noutside = \"0.25 in\"\n[tubes.tube.a.end]\nflared_to = \"0.2 in\"\n"));
  ASSERT_TRUE(flare.faults().any_fault());
  EXPECT_EQ(flare.faults().all()[0].path, "tubes.tube.a.end.flared_to");
}

std::string fault_of(const std::string& change) {
  const Car car(faulty_car(change));
  return car.faults().any_fault() ? car.faults().all()[0].path : "";
}

TEST(TubesModel, PointsThatMakeNoTube) {
  const std::string line = "[tubes.tube.a]\nbend_radius = \"1 in\"\n" + point("a", "p", 0, 0, 0);
  EXPECT_EQ(fault_of(line), "tubes.tube.a.point");
  EXPECT_EQ(fault_of(line + point("a", "q", 5, 0, 0) + point("a", "r", 5, 0, 0)), "tubes.tube.a.point.r.x");
  EXPECT_EQ(fault_of(line + point("a", "q", 5, 0, 0) + point("a", "r", 9, 0, 0)), "tubes.tube.a.point.q.x");
  EXPECT_EQ(fault_of(line + point("a", "q", 5, 0, 0) + point("a", "r", 2, 0, 0)), "tubes.tube.a.point.q.x");
  EXPECT_EQ(fault_of(line + point("a", "q", 5, 0, 0)), "");
}

TEST(TubesModel, ATubeIsBentOnOneDie) {
  EXPECT_EQ(fault_of("[tubes.tube.a]\ndie = \"none\"\n"), "tubes.tube.a.die");
  EXPECT_EQ(fault_of("[tubes.die.d]\nradius = \"1 in\"\n[tubes.tube.a]\ndie = \"d\"\nbend_radius = \"1 in\"\n"),
            "tubes.tube.a.bend_radius");
  EXPECT_EQ(fault_of("[tubes.die.d]\nbent_to = \"80 deg\"\ncame_to = \"90 deg\"\n[tubes.tube.a]\ndie = \"d\"\n"),
            "tubes.die.d.came_to");
  EXPECT_EQ(fault_of("[tubes.tube.a]\nclips = 2\nunsupported = \"9 in\"\n"), "tubes.tube.a.unsupported");
  EXPECT_EQ(fault_of("[tubes.tube.a]\nbeside = [\"b\"]\n"), "tubes.tube.a.beside");
}

TEST(TubesModel, HalfATrialBendIsMissing) {
  const auto m = lines_of("[tubes.die.d]\nradius = \"1 in\"\nbent_to = \"93 deg\"\n[tubes.tube.a]\ndie = \"d\"\n");
  EXPECT_EQ(m.tubes.at(0).springback.missing, (std::vector<std::string>{"tubes.die.d.came_to"}));
}

TEST(TubesModel, SoWideABendNeedsATrial) {
  const auto m = lines_of("[tubes.tube.a]\noutside = \"0.1 in\"\nmaterial = \"steel\"\nwall = \"0.02 in\"\nbend_radius = \"20 in\"\n");
  EXPECT_EQ(m.tubes.at(0).springback.missing.size(), 1u);
}

}  // namespace
