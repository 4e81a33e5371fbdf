#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Fields, ListsTheGroupsThenOne) {
  EXPECT_NE(ran({"fields"}).out.find("\ncooling "), std::string::npos);
  const Ran one = ran({"fields", "cooling.radiator.core_width"});
  EXPECT_EQ(one.code, 0);
  EXPECT_TRUE(one.out.starts_with("cooling.radiator.core_width: ")) << one.out;
  EXPECT_EQ(ran({"fields", "wiring.load.any.current"}).code, 0);
}

TEST(Fields, NamesTheNearestAtTheDepthThatFails) {
  EXPECT_EQ(ran({"fields", "colling"}).err, "streetwright: there is no field \"colling\"; did you mean cooling?\n");
  EXPECT_EQ(
      ran({"fields", "cooling.radiator.core_widht"}).err,
      "streetwright: there is no field \"cooling.radiator.core_widht\"; did you mean cooling.radiator.core_width?\n");
  EXPECT_EQ(ran({"fields", "wiring.load.any.curent"}).err,
            "streetwright: there is no field \"wiring.load.any.curent\"; did you mean wiring.load.any.current?\n");
  const Ran far = ran({"fields", "cooling.zzzzzz"});
  EXPECT_EQ(far.code, 2);
  EXPECT_NE(far.err.find("there are, in cooling: "), std::string::npos) << far.err;
}

TEST(Fields, NamesWhereAKeyStandsThatWasLookedForInTheWrongPlace) {
  EXPECT_EQ(ran({"fields", "radiator"}).err,
            "streetwright: there is no field \"radiator\"; did you mean cooling.radiator?\n");
}

TEST(Fields, WritesTheReference) {
  EXPECT_NE(ran({"fields", "--markdown"}).out.find("| `core_width` |"), std::string::npos);
}

}  // namespace
}  // namespace sw::cli
