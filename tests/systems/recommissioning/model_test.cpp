#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// Once anything is written down of the first start all of it is asked for, by the fields' own names.
TEST(RecommissioningModel, StepsAreTheFieldsThemselves) {
  const auto of = [](const std::string& change) {
    return resolved<recommissioning::System>(hand_car(change)).model.steps;
  };
  const auto steps = of("[recommissioning.before]\noil_primed = true\n");
  ASSERT_EQ(steps.size(), recommissioning::Before::fields().size());
  for (auto& s : steps) {
    EXPECT_EQ(s.done.has_value(), s.path == "recommissioning.before.oil_primed") << s.path;
  }
  EXPECT_TRUE(of("[recommissioning.feed.a]\ninsulation = \"5 ohm\"\n").empty());
}

}  // namespace
