#include "systems/clearance/envelopes.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

const Ball tube{"tube", "the chassis", 0, 0, 0}, axle{"axle", "the axle", 0, 0, -6, "wheel"};

std::vector<std::string> missing(const std::string& change) {
  return resolved<clearance::System>(hand_car(change)).model.envelopes.at(0).missing;
}
/// The one fault's path.
std::string fault(const std::string& change) {
  const Car car(faulty_car(change));
  EXPECT_EQ(car.faults().all().size(), 1u);
  return car.faults().all().empty() ? "" : car.faults().all()[0].path;
}
std::string without(std::string text, const std::string& what) {
  text.erase(text.find(what), what.size());
  return text;
}

TEST(ClearanceEnvelopeRead, EachFigureLeftOutIsAskedForByItsPath) {
  const std::string all = pair_text(tube, axle) + wheel;
  EXPECT_TRUE(missing(all).empty());
  EXPECT_EQ(missing(without(all, "bump = \"4 in\"\n")), (std::vector<std::string>{"clearance.travel.wheel.bump"}));
  EXPECT_EQ(missing(without(all, "goes_with = \"the axle\"\n")),
            (std::vector<std::string>{"clearance.body.axle.goes_with"}));
  EXPECT_EQ(missing(without(all, "travel = \"wheel\"\n")), (std::vector<std::string>{"clearance.body.axle.travel"}));
  EXPECT_EQ(missing(without(all, "second = \"axle\"\n")), (std::vector<std::string>{"clearance.envelope.e.second"}));
  EXPECT_EQ(missing(without(all, "between = \"moving parts\"\n")),
            (std::vector<std::string>{"clearance.envelope.e.between"}));
  EXPECT_EQ(missing(without(all, "diameter = \"1 in\"\n")), (std::vector<std::string>{"clearance.body.tube.diameter"}));
}

TEST(ClearanceEnvelopeRead, AskedOnlyForWhatItsBodiesNeed) {
  // A wheel that is steered wants pin and locks; its axle does not.
  const Ball rim{"rim", "the steered wheel", -10, 5, 0, "wheel"};
  const auto lacks = missing(pair_text(tube, rim) + wheel);
  EXPECT_EQ(lacks.size(), 8u);
  EXPECT_NE(std::find(lacks.begin(), lacks.end(), "clearance.travel.wheel.lock_left"), lacks.end());
  // What goes with the engine wants the roll.
  EXPECT_EQ(missing(pair_text(tube, {"pan", "the engine", 0, 0, 3})).size(), 8u);
}

TEST(ClearanceEnvelopeRead, FaultsStandAtTheirFields) {
  const std::string all = pair_text(tube, axle) + wheel;
  const auto swapped = [&](const std::string& from, const std::string& to) {
    std::string text = all;
    return text.replace(text.find(from), from.size(), to);
  };
  EXPECT_EQ(fault(swapped("second = \"axle\"", "second = \"axel\"")), "clearance.envelope.e.second");
  EXPECT_EQ(fault(swapped("second = \"axle\"", "second = \"tube\"")), "clearance.envelope.e.second");
  EXPECT_EQ(fault(swapped("travel = \"wheel\"", "travel = \"wheal\"")), "clearance.body.axle.travel");
  EXPECT_EQ(fault(swapped("\"the axle\"", "\"the chassis\"")), "clearance.body.axle.travel");
  EXPECT_EQ(fault(swapped("diameter = \"1 in\"", "shape = \"block\"")), "clearance.body.tube.shape");
}

TEST(ClearanceEnvelopeRead, AnArcThatDoesNotReachIsAFault) {
  // A level arm of 3.5 in rises by no more than that: 3 in of droop it reaches, 4 in of bump it does not.
  std::string text = pair_text(tube, axle) + swings;
  text.replace(text.find("20.000000 in"), 12, "3.5 in");
  EXPECT_EQ(fault(text), "clearance.travel.wheel.bump");
}

TEST(ClearanceEnvelopeRead, ABlockLiesBetweenTwoCorners) {
  const std::string block = "[clearance.body.pan]\nshape = \"block\"\ngoes_with = \"the chassis\"\n" +
                            point_text("clearance.body.pan.point.a", -5, -4, 0) +
                            point_text("clearance.body.pan.point.b", 5, 4, 6) + ball_text(axle) + wheel +
                            "[clearance.envelope.e]\nfirst = \"pan\"\nsecond = \"axle\"\nbetween = \"moving parts\"\n";
  const auto e = resolved<clearance::System>(hand_car(block)).model.envelopes.at(0);
  EXPECT_TRUE(e.missing.empty());
  EXPECT_NEAR(e.at_rest_m({}) / inch, 5.5, 1e-9);
  EXPECT_NEAR(e.least({}).least_m / inch, 1.5, 1e-6);
  std::string round = block;
  round.insert(round.find("goes_with"), "diameter = \"1 in\"\n");
  EXPECT_EQ(fault(round), "clearance.body.pan.diameter");
}

}  // namespace
