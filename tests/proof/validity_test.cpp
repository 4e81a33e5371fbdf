#include "proof/validity.hpp"

#include <gtest/gtest.h>

#include "duty/tiny.hpp"

namespace sw {
namespace {

using tiny::Car;
using tiny::lasting;

constexpr Port x_port{"x", &kind::temperature, "degC", "water in the pan"}, z_port{"z", &kind::temperature};
constexpr Port heat{"heat", &kind::power}, steam{"steam", &kind::power}, far{"far", &kind::power};
double warm(const void*, const Duty&) { return 300; }

// x rises 1 K/s from 300 K. `heat` is good up to 310 K; `steam` comes of it at once, z is moved by steam, `far` only
// reads z.
constexpr Port pan_reads[] = {x_port}, pan_writes[] = {heat};
constexpr Validity pan_range[] = {{"x", {280, 310}, "the pan's figures"}};
constexpr Port steam_reads[] = {heat, z_port}, steam_writes[] = {steam};
constexpr StateInfo steam_states[] = {{z_port, warm, 1.0}};
constexpr Port far_reads[] = {z_port}, far_writes[] = {far};
constexpr StateInfo clock_states[] = {{x_port, warm, 1.0}};
constexpr Block blocks[] = {{"far", far_reads, far_writes, {}, {}, [](const void*, View& v) { v.set(0, v.in(0)); }},
                            {.name = "pan",
                             .reads = pan_reads,
                             .writes = pan_writes,
                             .evaluate = [](const void*, View& v) { v.set(0, v.in(0)); },
                             .validity = pan_range},
                            {"steam",
                             steam_reads,
                             steam_writes,
                             steam_states,
                             {},
                             [](const void*, View& v) {
                               v.set(0, v.in(0));
                               v.rate(0, v.in(0) / 1e3);
                             }},
                            {"clock", {}, {}, clock_states, {}, [](const void*, View& v) { v.rate(0, 1); }}};

TEST(Validity, KeptIsNoBreach) {
  const Car car(blocks, lasting(9));
  EXPECT_TRUE(breaches(car.graph, car.run()).empty());
}

TEST(Validity, LeftSpoilsWhatComesOfItAtOnceAndTheStatesItMoves) {
  const Car car(blocks, lasting(20));
  const auto found = breaches(car.graph, car.run());
  ASSERT_EQ(found.size(), 1u);
  auto spoilt = [&](const char* port) { return found[0].spoilt[car.slot(port)]; };
  EXPECT_TRUE(spoilt("heat"));
  EXPECT_TRUE(spoilt("steam"));
  EXPECT_TRUE(spoilt("z"));
  EXPECT_FALSE(spoilt("far"));
  EXPECT_FALSE(spoilt("x"));
  EXPECT_EQ(found[0].says.substr(0, 24), "water in the pan comes t");
  EXPECT_NE(found[0].says.find("the pan's figures end at 36.85 degC"), std::string::npos) << found[0].says;
}

// A range of the part's own, counted only while a switch is on: x passes 305 K at 5 s, the switch is `on` or not.
TEST(Validity, OfThePartAndOnlyWhileItMatters) {
  static constexpr Port on{"on", &kind::number};
  static constexpr Port reads[] = {x_port, on}, writes[] = {heat}, switch_writes[] = {on};
  static constexpr auto range = [](const void*) { return ValidRange{280, 305}; };
  static constexpr Validity while_on[] = {{"x", {}, "the pan's figures", range, "on"}};
  static constexpr auto pan = [](const void*, View& v) { v.set(0, v.in(0)); };
  for (const bool is_on : {false, true}) {
    const Block own[] = {
        {.name = "pan", .reads = reads, .writes = writes, .evaluate = pan, .validity = while_on},
        {.name = "clock", .states = clock_states, .evaluate = [](const void*, View& v) { v.rate(0, 1); }},
        {.name = "switch",
         .writes = switch_writes,
         .evaluate = is_on ? +[](const void*, View& v) { v.set(0, 1); } : +[](const void*, View& v) { v.set(0, 0); }}};
    const Car car(own, lasting(9));
    const auto found = breaches(car.graph, car.run());
    ASSERT_EQ(found.size(), is_on ? 1u : 0u);
    if (is_on) {
      EXPECT_GE(car.run().time[found[0].row], 5.0 - 1e-6);
    }
  }
}

TEST(Validity, ARangeOfAStrangePortOrNoneIsAFaultOfTheGraph) {
  static constexpr Validity strange[] = {{"nobody's", {0, 1}, "x"}}, none[] = {{"x", {1, 1}, "x"}},
                            blind[] = {{"x", {0, 1}, "x", nullptr, "nobody's"}};
  for (std::span<const Validity> range : {std::span(strange), std::span(none), std::span(blind)}) {
    const Block odd[] = {{.name = "odd",
                          .reads = pan_reads,
                          .states = clock_states,
                          .evaluate = [](const void*, View& v) { v.rate(0, 1); },
                          .validity = range}};
    EXPECT_FALSE(join({{"tiny", "tiny", nullptr, {}, {}, true, odd, {}}}, {}).faults.empty());
  }
}

}  // namespace
}  // namespace sw
