// Sizes of the trade: gauges after ASTM B258, fuse ratings after ISO 8820 (both from memory), steps common practice.
#include "proof/trade_size.hpp"

#include <gtest/gtest.h>

#include "car/build.hpp"
#include "document/document.hpp"
#include "field/measure.hpp"
#include "field/stock.hpp"
#include "physics/wire.hpp"
#include "quantity/print.hpp"
#include "quantity/unit.hpp"

namespace sw {
namespace {

std::string sized(FieldInfo f, double in_own_unit, bool upward) {
  const auto size = trade_size(f, to_si(in_own_unit, *f.kind, unit_of(f)), upward);
  return size ? print(*size, *f.kind, unit_of(f), 6) : "none";
}
FieldInfo of(const Kind& k, std::string_view unit, std::string_view key = "x") {
  return {.key = key, .type = FieldType::quantity, .kind = &k, .unit = unit};
}

TEST(TradeSize, GoesToTheNextStepInTheDirectionAsked) {
  const auto pulley = of(kind::length, "in");
  EXPECT_EQ(sized(pulley, 2.413, true), "2.45 in");
  EXPECT_EQ(sized(pulley, 2.413, false), "2.4 in");
  EXPECT_EQ(sized(pulley, 26.1, true), "26.5 in") << "a core is not made to the twentieth";
  EXPECT_EQ(sized(of(kind::length, "mm"), 61.2, false), "61 mm");
  EXPECT_EQ(sized(of(kind::shaft_speed, "rpm"), 886, true), "900 rpm");
  EXPECT_EQ(sized(of(kind::current, "A"), 141, true), "145 A");
  EXPECT_EQ(sized(of(kind::temperature, "degC"), 91.3, false), "91 degC") << "by its own zero";
}

TEST(TradeSize, LeavesASizeAsItIs) {
  EXPECT_EQ(sized(of(kind::length, "in"), 2.45, true), "2.45 in");
  EXPECT_EQ(sized(of(kind::shaft_speed, "rpm"), 875, false), "875 rpm");
}

TEST(TradeSize, FusesAndWiresHaveRowsOfTheirOwn) {
  const auto fuse = of(kind::current, "A", "fuse");
  EXPECT_EQ(sized(fuse, 41, true), "50 A");
  EXPECT_EQ(sized(fuse, 41, false), "40 A");
  EXPECT_EQ(sized(fuse, 30, true), "30 A");
  EXPECT_EQ(sized(fuse, 301, true), "none");
  EXPECT_EQ(sized(fuse, 0.5, false), "none");
  const auto wire = of(kind::wire_size, "AWG");
  const double between = 0.5 * (physics::gauge_area_m2(10) + physics::gauge_area_m2(8));
  EXPECT_NEAR(*trade_size(wire, between, true), physics::gauge_area_m2(8), 1e-12);
  EXPECT_NEAR(*trade_size(wire, between, false), physics::gauge_area_m2(10), 1e-12);
  EXPECT_FALSE(trade_size(wire, 2 * physics::gauge_area_m2(-3), true)) << "nothing above 4/0";
}

// Which paths have a bound and which units a step is data: none of it may name what no build has.
TEST(TradeSize, StockNamesOnlyFieldsUnitsAndRisingSizesThereAre) {
  Diagnostics faults;
  const Node root = parse_text(std::string(stock_text("trade_sizes.toml")), 0, false, faults);
  ASSERT_FALSE(faults.any_fault());
  for (auto& [path, place, bound] : root.find("setting")->entries) {
    EXPECT_TRUE(find_field(build_fields(), path)) << path;
    ASSERT_TRUE(setting_bound(path)) << path;
    EXPECT_GT(setting_bound(path)->most_share, 1) << path;
    EXPECT_FALSE(setting_bound(path)->mind.empty()) << path;
  }
  EXPECT_FALSE(setting_bound("cooling.fan.left.flow"));
  for (auto& [unit, place, step] : root.find("step")->entries) {
    EXPECT_TRUE(unit.empty() || std::holds_alternative<Unit>(parse_unit(unit))) << unit << " is no unit";
    EXPECT_GT(step.find("step")->number, 0) << unit;
  }
  auto& ratings = root.find("fuse")->find("ratings")->items;
  for (std::size_t i = 1; i < ratings.size(); ++i) EXPECT_LT(ratings[i - 1].number, ratings[i].number);
}

TEST(TradeSize, FactorsByTwentieths) {
  EXPECT_NEAR(trade_factor(1.213, true), 1.25, 1e-12);
  EXPECT_NEAR(trade_factor(0.83, false), 0.80, 1e-12);
}

}  // namespace
}  // namespace sw
