#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

constexpr double in_hg = 3386.389;

Build without_idle(const std::string& change) {
  Build build = hand_car(change);
  std::get<vacuum::Input>(build.inputs).idle.reset();
  return build;
}

TEST(VacuumModel, AUsualFigureStandsInLessTheCamshaft) {
  const Build usual = without_idle(""), cam = without_idle("[vacuum]\ncam_duration = \"239 deg\"\n");
  EXPECT_NEAR(resolved<vacuum::System>(usual).model.idle_pa / in_hg, 18, 1e-3);
  EXPECT_NEAR(resolved<vacuum::System>(cam).model.idle_pa / in_hg, 18 - 0.18 * 44, 1e-3);
  // Measured, the camshaft says nothing more.
  EXPECT_NEAR(resolved<vacuum::System>(hand_car("[vacuum]\ncam_duration = \"239 deg\"\n")).model.idle_pa / in_hg, 18,
              1e-3);
}

TEST(VacuumModel, TheBoosterAsksForTheGaugeOrAPump) {
  const auto lacks = [](const Build& build) {
    Resolver r(build_fields(), &build, build.evidence);
    vacuum::System::resolve(std::get<vacuum::Input>(build.inputs), r);
    return r.take_missing_of();
  };
  EXPECT_EQ(lacks(without_idle("")).count("vacuum.store"), 1u);
  EXPECT_EQ(lacks(without_idle("[vacuum.pump]\ncut_in = \"16 inHg\"\ncut_out = \"20 inHg\"\n")).count("vacuum.store"),
            0u);
}

TEST(VacuumModel, FiguresThatCannotBe) {
  const auto faults = [](const std::string& change) {
    const Build build = faulty_car(change);
    Resolver r(build_fields(), &build, build.evidence);
    vacuum::System::resolve(std::get<vacuum::Input>(build.inputs), r);
    return r.faults().all().size();
  };
  EXPECT_EQ(faults(""), 0u);
  EXPECT_EQ(faults("[vacuum.pump]\ncut_in = \"20 inHg\"\ncut_out = \"16 inHg\"\n"), 1u);
  EXPECT_EQ(faults("[vacuum.store]\nbooster_volume = \"50 in3\"\nrear_volume = \"80 in3\"\n"), 1u);
  EXPECT_EQ(faults("[vacuum.store]\nrear_at_rest = \"80 in3\"\n"), 1u);
}

}  // namespace
