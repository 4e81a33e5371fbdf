#include "proof/because.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// The chain tells the ports of the requirement's own list, in its order, at the row that decides.
TEST(Because, ChainTellsThePortsAtTheDecidingRow) {
  Judging j(hand_car(), "hot-idle");
  const auto& one = j.one("cooling.coolant-temperature", "hot-idle");
  const auto& trace = j.trace("hot-idle");
  const auto chain = chain_of(j.car(), one, trace);
  // A source that gives no heat here is no cause and is left out: the gearbox cooler of a standing car.
  std::vector<std::string> wanted(one.requirement->chain.begin(), one.requirement->chain.end());
  std::erase(wanted, "driveline.cooler_heat");
  ASSERT_EQ(chain.size(), wanted.size());
  for (std::size_t i = 0; i < chain.size(); ++i) {
    EXPECT_EQ(chain[i].path, wanted[i]);
    EXPECT_EQ(chain[i].value, trace.at(one.verdict.row, static_cast<std::size_t>(j.car().graph().slot(chain[i].path))));
    EXPECT_EQ(chain[i].evidence, "computed");
    EXPECT_FALSE(chain[i].what.empty()) << chain[i].path << " has no words";
  }
}

// Every port that a chain names is there: a slip of a name would be passed over in silence.
TEST(Because, EveryChainNamesPortsThatExist) {
  const Car car(hand_car());
  for (auto& s : car.systems())
    for (auto& r : s.requirements)
      for (auto name : r.chain) EXPECT_GE(car.graph().slot(name), 0) << r.id << " tells " << name;
}

TEST(Because, WeightsAreHeaviestFirstAndFew) {
  const Build b = hand_car();
  Judging j(b, "cold-crank");
  std::vector<bool> wanted;
  for (auto& c : j.set().courses) wanted.push_back(c.key == "cold-crank");
  const Study s = study(b, j.set(), j.all(), {wanted, 1, {}});
  for (std::size_t i = 0; i < j.all().size(); ++i) {
    if (j.all()[i].requirement->id != "charging.crank-voltage") continue;
    const auto weights = weights_of(b, s, i, j.all()[i].verdict.scale, 5);
    ASSERT_GE(weights.size(), 3u);
    EXPECT_LE(weights.size(), 5u);
    for (std::size_t k = 1; k < weights.size(); ++k)
      EXPECT_GE(std::abs(weights[k - 1].weight), std::abs(weights[k].weight));
    bool battery = false;
    for (auto& w : weights) {
      battery = battery || w.path == "charging.battery.cold_crank_current";
      EXPECT_FALSE(w.evidence.empty());
      EXPECT_FALSE(w.what.empty());
    }
    EXPECT_TRUE(battery) << "the battery's own rating weighs on its volts";
  }
}

TEST(Because, NothingWithoutARun) {
  const Car car(hand_car());
  static const Requirement r{.id = "x"};
  EXPECT_TRUE(chain_of(car, {&r, 0, -1, {}}, Trace{}).empty());
}

}  // namespace
