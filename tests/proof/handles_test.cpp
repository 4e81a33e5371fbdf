#include "proof/handles.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Handle handle(const Build& build, std::string_view path) {
  auto* f = find_field(build_fields(), path);
  if (!f) throw std::out_of_range(std::string(path));
  return {{.path = std::string(path), .now = value_at(build, std::string(path)).value_or(1)}, f, {}, 0, 0};
}

// Ten kelvins of 360 K are no share of it that means anything: of the span the field may have they are.
TEST(Handles, EffortOfATemperatureIsAShareOfItsRange) {
  const Build b = hand_car();
  const Handle opens = handle(b, "cooling.thermostat.opens"), idle = handle(b, "engine.idle_speed");
  ASSERT_TRUE(opens.field->range.set);
  EXPECT_GT(effort_of(opens, 10), 3 * 10 / opens.lever.now);
  EXPECT_DOUBLE_EQ(effort_of(idle, 0.2 * idle.lever.now), 0.2);
}

TEST(Handles, NobodyCuresACarWithAThinnerWireOrAWeakerFan) {
  const Build b = hand_car();
  for (auto* path : {"wiring.run.charge.gauge", "cooling.fan.left.flow"}) {
    Handle h = handle(b, path);
    h.lever.needed = 0.8 * h.lever.now;
    EXPECT_FALSE(in_range(b, h)) << path;
    h.lever.needed = 1.2 * h.lever.now;
    EXPECT_TRUE(in_range(b, h)) << path;
  }
}

}  // namespace
