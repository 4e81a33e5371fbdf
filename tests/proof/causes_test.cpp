#include "proof/causes.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

class OfTheHandCar : public ::testing::Test {
 protected:
  std::size_t index(std::string_view id, std::string_view duty) const {
    for (std::size_t i = 0; i < judging.all().size(); ++i) {
      auto& j = judging.all()[i];
      if (j.requirement->id == id && (duty.empty() ? j.duty < 0 : j.duty >= 0 && judging.key(j) == duty)) return i;
    }
    throw std::out_of_range(std::string(id));
  }

  Judging judging{hand_car()};
  Causes causes{judging.car().graph(), judging.all()};
};

TEST_F(OfTheHandCar, CurrentComesBeforeVoltsAndHeat) {
  const auto balance = index("charging.balance", "hot-idle"), bus = index("charging.bus-voltage", "hot-idle"),
             coolant = index("cooling.coolant-temperature", "hot-idle");
  for (auto [a, b] : {std::pair{balance, bus}, {balance, coolant}, {bus, coolant}}) {
    EXPECT_TRUE(causes.told(a, b));
    EXPECT_TRUE(causes.before(a, b, false));
    EXPECT_FALSE(causes.told(b, a));
    EXPECT_FALSE(causes.before(b, a, false)) << "one of the two is the cause";
  }
  EXPECT_TRUE(causes.joint(balance, coolant, "load.current"));
  EXPECT_FALSE(causes.joint(balance, coolant, "air.flow"));
}

TEST_F(OfTheHandCar, OneDutyIsNoCauseInAnother) {
  EXPECT_FALSE(causes.before(index("charging.balance", "hot-idle"), index("charging.bus-voltage", "parade"), false));
}

// A rule on the standing car is nobody's effect; the ratio it reads is read by the balance too, which makes it no
// cause.
TEST_F(OfTheHandCar, AStaticRuleHangsOnNoDuty) {
  const auto rotor = index("charging.alternator-speed", ""), balance = index("charging.balance", "hot-idle");
  EXPECT_FALSE(causes.before(balance, rotor, false));
  EXPECT_FALSE(causes.before(rotor, balance, false));
}

// Where the chains are silent the graph speaks: what the machine can give moves the drop along its lead.
TEST_F(OfTheHandCar, TheGraphSpeaksWhereNoChainDoes) {
  const auto balance = index("charging.balance", "cruise"), lead = index("charging.lead-drop", "cruise");
  EXPECT_FALSE(causes.told(balance, lead));
  EXPECT_TRUE(causes.before(balance, lead, false));
  EXPECT_FALSE(causes.before(lead, balance, false));
}

TEST_F(OfTheHandCar, NothingIsItsOwnCause) {
  for (std::size_t i = 0; i < judging.all().size(); ++i) {
    EXPECT_FALSE(causes.before(i, i, true));
    for (std::size_t k = 0; k < i; ++k)
      EXPECT_FALSE(causes.before(i, k, false) && causes.before(k, i, false))
          << judging.all()[i].requirement->id << " and " << judging.all()[k].requirement->id;
  }
}

}  // namespace
