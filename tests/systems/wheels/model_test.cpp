#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

TEST(WheelsModel, ReadsSizeAndLetter) {
  const auto m = resolved<wheels::System>(hand_car("[wheels.tyre]\nspeed = \"S\"\n")).model;
  EXPECT_NEAR(*m.free_m, 0.682, 1e-9);       // 215/70R15, ETRTO
  EXPECT_NEAR(*m.top_m_s * 3.6, 180, 1e-9);  // UN R30: S is 180 km/h (from memory)
}

TEST(WheelsModel, ASizeThatIsNoneIsAFault) {
  const Build build = faulty_car("[wheels.tyre]\nsize = \"big ones\"\n");
  Resolver r(build_fields(), &build, build.evidence);
  wheels::System::resolve(std::get<wheels::Input>(build.inputs), r);
  ASSERT_EQ(r.faults().all().size(), 1u);
  EXPECT_EQ(r.faults().all()[0].problem, "\"big ones\" is no tyre size");
}

}  // namespace
