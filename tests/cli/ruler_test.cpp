// The drawings are a regression: our own output, looked at and kept.
#include "cli/ruler.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "cli/page.hpp"
#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

struct Drawn {
  RulerMark mark;
  const char *blocks, *plain;
};

// clang-format off
const Drawn at_80_columns[] = {
    {{State::holds, 0.8, 0.1},         "███─          │              ", "###-          |              "},
    {{State::holds, 0.3, 0.1},         "██████▒▒▒──   │              ", "######===--   |              "},
    {{State::holds, 0.01, 0.0},        "█████████████▌│              ", "############# |              "},
    {{State::holds, 0, 0, true},       "█████████████▌│              ", "############# |              "},
    {{State::tight, 0.03, 0.1},        "████████████▒▒┼─             ", "############==+-             "},
    {{State::tight, -0.2, 0.3},        "████████████▒▒┼▒▒▒▒──────    ", "############==+====------    "},
    {{State::fails, -0.02, 0.01},      "██████████████▀▌             ", "##############v#             "},
    {{State::fails, -0.4, 0.1},        "██████████████▀█████▒▒▒──    ", "##############v#####===--    "},
    {{State::fails, -3, 0.5},          "██████████████▀████████████▉ ", "##############v############# "},
    {{State::fails, 0, 0, true},       "██████████████▀██████████████", "##############v##############"},
    {{State::unproven, 0, 0},          "╞═════════════│              ", "[_____________|              "},
};
// clang-format on

TEST(Ruler, DrawsEveryState) {
  for (auto& d : at_80_columns) {
    EXPECT_EQ(draw_ruler(d.mark, 14, true), d.blocks);
    EXPECT_EQ(draw_ruler(d.mark, 14, false), d.plain);
  }
}

TEST(Ruler, GrowsWithThePage) {
  EXPECT_EQ(ruler_reach(40), 7);
  EXPECT_EQ(ruler_reach(60), 10);
  EXPECT_EQ(ruler_reach(80), 14);
  EXPECT_EQ(ruler_reach(200), 18);
  EXPECT_EQ(draw_ruler({State::fails, -0.4, 0.1}, 10, true), "██████████▀████▒──   ");
  EXPECT_EQ(draw_ruler({State::fails, -0.4, 0.1}, 18, true), "██████████████████▀███████▒▒▒───     ");
}

/// Cells of a drawing.
std::vector<std::string> cells(const std::string& drawn) {
  std::vector<std::string> all;
  for (char c : drawn)
    if ((static_cast<unsigned char>(c) & 0xc0) == 0x80)
      all.back() += c;
    else
      all.emplace_back(1, c);
  return all;
}

// Whatever the figures, the tick keeps its column and the four states differ in what stands there or before it.
RC_GTEST_PROP(Ruler, KeepsTickAndForm, ()) {
  const int reach = *rc::gen::element(7, 10, 14, 18);
  const bool unicode = *rc::gen::arbitrary<bool>();
  const double doubt = *rc::gen::inRange(0, 3000) / 1000.0, beyond = *rc::gen::inRange(0, 9000) / 1000.0;
  const auto at = static_cast<std::size_t>(reach);
  auto tick = [&](State s, double share) {
    const auto drawn = cells(draw_ruler({s, share, doubt}, reach, unicode));
    RC_ASSERT(drawn.size() == 2 * at + 1);
    return drawn;
  };
  const auto holds = tick(State::holds, doubt + beyond), fails = tick(State::fails, -doubt - beyond),
             tight = tick(State::tight, doubt * 0.9);
  RC_ASSERT(holds[at] == (unicode ? "│" : "|"));
  RC_ASSERT(fails[at] == (unicode ? "▀" : "v"));
  RC_ASSERT(tight[at] == (unicode ? "┼" : "+"));
  RC_ASSERT(fails[at - 1] == (unicode ? "█" : "#"));
  RC_ASSERT(fails[at + 1] != " ");
  RC_ASSERT(tight[at + 1] != " ");
  RC_ASSERT(holds[at + 1] == " ");
  RC_ASSERT(holds[at - 1] != (unicode ? "█" : "#"));
}

// A column of rulers reads like a spirit level: more margin is never a longer bar.
RC_GTEST_PROP(Ruler, IsShorterForMoreMargin, ()) {
  const double a = *rc::gen::inRange(0, 5000) / 1000.0, b = a + *rc::gen::inRange(0, 2000) / 1000.0;
  auto bar = [](double share) {
    int n = 0;
    for (auto& cell : cells(draw_ruler({State::holds, share, 0}, 14, true))) n += cell != " ";
    return n;
  };
  RC_ASSERT(bar(b) <= bar(a));
}

TEST(RulerMark, MeasuresInScales) {
  const RulerMark m = ruler_mark(hot_coolant());
  EXPECT_DOUBLE_EQ(m.share, 2.0 / 40);
  EXPECT_DOUBLE_EQ(m.doubt, 4.0 / 40);
  EXPECT_FALSE(m.bare);
  EXPECT_TRUE(ruler_mark(backward_fan()).bare);
}

}  // namespace
}  // namespace sw::cli
