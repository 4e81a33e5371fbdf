// The opening of the starved demo is looked at in story_test; here cars of which it can be said by hand what mends
// them.
#include "proof/which_part.hpp"

#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

// `weak` mends nothing; `strong` gives all a hot idle asks for, by far.
constexpr const char* shelf =
    "[alternator.strong]\nprice = 300\nmachine = \"alternator\"\nearth = \"negative\"\nrated_current = \"170 A\"\n"
    "output_curve = [[\"900 rpm\", \"0 A\"], [\"1200 rpm\", \"140 A\"], [\"6000 rpm\", \"150 A\"]]\n"
    "highest_speed = \"18000 rpm\"\nregulator_voltage = \"14.4 V\"\n"
    "[alternator.weak]\nprice = 10\nmachine = \"alternator\"\nearth = \"negative\"\nrated_current = \"60 A\"\n"
    "output_curve = [[\"1000 rpm\", \"0 A\"], [\"1800 rpm\", \"20 A\"], [\"6000 rpm\", \"60 A\"]]\n"
    "highest_speed = \"18000 rpm\"\nregulator_voltage = \"14.4 V\"\n"
    "[radiator.wide]\nprice = 200\ncore_width = \"28 in\"\ncore_height = \"19 in\"\nconductance = \"3.4 kW/K\"\n";

struct Looked {
  explicit Looked(const std::string& change, const char* parts = shelf)
      : build(hand_car(change)), judging(build, "hot-idle") {
    Diagnostics faults;
    build.shelf = std::make_shared<const std::vector<Node>>(std::vector<Node>{parse_text(parts, 0, false, faults)});
    EXPECT_FALSE(faults.any_fault());
    for (auto& c : judging.set().courses) wanted.push_back(c.key == "hot-idle");
    for (auto& j : judging.all()) fails.push_back(j.margin().value_or(0) < 0), widths.push_back(0);
    tried = swaps(build, judging.set(), wanted);
  }
  std::string text() const {
    return which_part({build, judging.set(), wanted, judging.all(), moves, widths, fails}, tried);
  }

  Build build;
  Judging judging;
  std::vector<bool> wanted, fails;
  std::vector<double> widths;
  Study moves;
  std::vector<Swap> tried;
};

// The cables are thick enough for either machine.
const std::string load =
    "[wiring.run.charge]\ngauge = \"2/0 AWG\"\nlimit = \"300 A\"\nfuse = \"250 A\"\n"
    "[wiring.run.feed]\ngauge = \"1/0 AWG\"\nfuse = \"200 A\"\n"
    "[wiring.run.body_ground]\ngauge = \"1/0 AWG\"\n"
    "[wiring.load.big]\ncurrent = \"45 A\"\nwhen = [\"running\"]\ngauge = \"4 AWG\"\ninsulation = \"125 degC\"\nbundle "
    "= 1\nlength = \"2 ft\"\nfuse = \"80 "
    "A\"\n";

TEST(WhichPart, NamesTheOneThatMendsMost) {
  const Looked l(load);
  ASSERT_GT(std::count(l.fails.begin(), l.fails.end(), true), 1);
  const std::string text = l.text();
  EXPECT_TRUE(text.starts_with("Of single shelf parts strong as charging.alternator in place of its own ")) << text;
  EXPECT_NE(text.find(" leaves "), std::string::npos) << text;
  EXPECT_EQ(text.find("weak"), std::string::npos) << text;
}

TEST(WhichPart, NamesNoneThatMendsNothing) {
  EXPECT_EQ(
      Looked(load, "[alternator.none]\nrated_current = \"20 A\"\nearth = \"negative\"\nmachine = \"alternator\"\n")
          .text(),
      "");
}

}  // namespace
