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
    EXPECT_EQ(chain[i].role, Role::figure);
    EXPECT_FALSE(chain[i].evidence);
    EXPECT_FALSE(chain[i].what.empty()) << chain[i].path << " has no words";
  }
}

// Every port that a chain names is there: a slip of a name would be passed over in silence.
TEST(Because, EveryChainNamesPortsThatExist) {
  const Car car(open(STREETWRIGHT_SOURCE_DIR "/demo/sound.toml", from_disk()).build);  // it describes every system
  for (auto& s : car.systems())
    for (auto& r : s.requirements)
      for (auto name : r.chain) EXPECT_GE(car.graph().slot(name), 0) << r.id << " tells " << name;
}

/// A cold crank with all its moves.
struct Cranked {
  Cranked() {
    for (auto& c : j.set().courses) wanted.push_back(c.key == "cold-crank");
    moves = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 2});
    while (j.all().at(index).requirement->id != "charging.crank-voltage") ++index;
  }
  std::vector<Because> of(Role role) const { return weights_of(b, moves, index, scale(), role, 5); }
  double scale() const { return j.all()[index].verdict.scale; }
  /// The same margin with one input changed, the car run again.
  double margin_with(const std::string& path, double by) const {
    Build moved = b;
    EXPECT_TRUE(shift(moved, path, by)) << path;
    return Judging(moved, "cold-crank").all().at(index).margin().value();
  }
  double margin() const { return j.all()[index].margin().value(); }

  Build b = hand_car();
  Judging j{b, "cold-crank"};
  std::vector<bool> wanted;
  Study moves;
  std::size_t index = 0;
};

TEST(Because, WeightsAreHeaviestFirstAndFew) {
  const Cranked c;
  for (Role role : {Role::doubt, Role::choice}) {
    const auto weights = c.of(role);
    ASSERT_GE(weights.size(), 2u);
    EXPECT_LE(weights.size(), 5u);
    for (std::size_t k = 1; k < weights.size(); ++k)
      EXPECT_GE(std::abs(weights[k - 1].weight), std::abs(weights[k].weight));
    for (auto& w : weights) {
      EXPECT_EQ(w.role, role);
      EXPECT_TRUE(w.evidence) << w.path;
      EXPECT_FALSE(w.what.empty()) << w.path;
    }
    EXPECT_TRUE(std::any_of(weights.begin(), weights.end(), [](auto& w) {
      return w.path == "charging.battery.cold_crank_current";
    })) << "the battery's own rating weighs on its volts";
  }
}

// Two questions, each with a measure of its own: against the car run again with a tenth more, and with all its doubt.
TEST(Because, AChoiceIsWeighedByATenthAndADoubtByItsHalfWidth) {
  const Cranked c;
  for (auto& w : c.of(Role::choice)) {
    const double changed = (c.margin_with(w.path, a_tenth(c.b, w.path)) - c.margin()) / c.scale();
    EXPECT_NEAR(w.weight, changed, 0.25 * std::abs(changed) + 1e-3) << w.path << ": first order only";
  }
  for (auto& w : c.of(Role::doubt)) {
    const double up = (c.margin_with(w.path, w.evidence->half_width) - c.margin()) / c.scale(),
                 down = (c.margin_with(w.path, -w.evidence->half_width) - c.margin()) / c.scale();
    EXPECT_NEAR(std::abs(w.weight), std::max(std::abs(up), std::abs(down)), 1e-6) << w.path;
  }
}

TEST(Because, NothingWithoutARun) {
  const Car car(hand_car());
  static const Requirement r{.id = "x"};
  EXPECT_TRUE(chain_of(car, {&r, 0, -1, {}}, Trace{}).empty());
}

}  // namespace
