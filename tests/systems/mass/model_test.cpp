#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(MassModel, RatesInTheTradesUnits) {
  const auto m = resolved<mass::System>(hand_car("[mass.rear]\nwheel_rate = \"100 lbf/in\"\n")).model;
  EXPECT_NEAR(m.rear.wheel_rate_n_m.value(), 100 * lbf / inch, 1e-6);
  EXPECT_FALSE(m.front.wheel_rate_n_m);
  EXPECT_NEAR(m.within_m, 0.5 * inch, 1e-12);
  const auto metric = resolved<mass::System>(hand_car("[mass.rear]\nwheel_rate = \"17.5 N/mm\"\n")).model;
  EXPECT_NEAR(metric.rear.wheel_rate_n_m.value(), 17500, 1e-6);
}

}  // namespace
