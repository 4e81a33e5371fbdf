// The builder that joins ports: orders, and what it says of wirings that cannot work.
#include "model/graph.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "model/outside.hpp"

namespace sw {
namespace {

void nothing(const void*, View&) {}
double zero(const void*, const Duty&) { return 0; }
double stays(const void*, const View&, double now) { return now; }

constexpr Port a{"a"}, b{"b"}, c{"c"}, d{"d"}, volts{"a", &kind::voltage}, from_duty{"out"};
constexpr Port just_a[] = {a}, just_b[] = {b}, just_c[] = {c}, just_d[] = {d}, as_volts[] = {volts}, a_and_c[] = {a, c},
               outside_ports[] = {from_duty};

SystemOf system_of(std::span<const Block> blocks, std::vector<std::string> missing = {}) {
  return {"some", "some", nullptr, std::move(missing), {}, true, blocks, {}};
}
Graph join_one(std::span<const Block> blocks) { return join({system_of(blocks)}, outside_ports); }

std::vector<std::string> names(const Graph& g) {
  std::vector<std::string> out;
  for (auto& s : g.steps) out.emplace_back(s.block->name);
  return out;
}
bool told(const Graph& g, std::initializer_list<std::string_view> parts) {
  return std::any_of(g.faults.begin(), g.faults.end(), [&](auto& f) {
    return std::all_of(parts.begin(), parts.end(), [&](auto part) { return f.find(part) != std::string::npos; });
  });
}

constexpr Block makes_a{"makes a", {}, just_a, {}, {}, nothing}, a_to_b{"a to b", just_a, just_b, {}, {}, nothing},
    b_to_c{"b to c", just_b, just_c, {}, {}, nothing}, c_to_d{"c to d", just_c, just_d, {}, {}, nothing};

TEST(Join, PutsEveryWriterBeforeItsReadersWhateverTheOrderGiven) {
  std::vector<Block> blocks = {makes_a, a_to_b, b_to_c, c_to_d};
  auto by_name = [](const Block& x, const Block& y) { return x.name < y.name; };
  std::sort(blocks.begin(), blocks.end(), by_name);
  do {
    const Graph g = join_one(blocks);
    ASSERT_TRUE(g.faults.empty()) << g.faults.front();
    EXPECT_EQ(names(g), (std::vector<std::string>{"makes a", "a to b", "b to c", "c to d"}));
  } while (std::next_permutation(blocks.begin(), blocks.end(), by_name));
}

TEST(Join, JoinsAcrossSystems) {
  const Block first[] = {b_to_c}, second[] = {a_to_b, makes_a};
  const Graph g = join({system_of(first), system_of(second)}, outside_ports);
  ASSERT_TRUE(g.faults.empty());
  EXPECT_EQ(names(g), (std::vector<std::string>{"makes a", "a to b", "b to c"}));
  EXPECT_EQ(g.steps.back().system, 0u);
  EXPECT_EQ(g.steps.back().reads[0], g.slot("b"));
  EXPECT_EQ(g.slot("nowhere"), -1);
}

TEST(Join, NamesAPortWrittenTwice) {
  const Block blocks[] = {makes_a, {"makes a too", {}, just_a, {}, {}, nothing}};
  EXPECT_TRUE(told(join_one(blocks), {"port a ", "twice"}));
  static constexpr StateInfo state[] = {{a, zero, 1}};
  const Block by_state[] = {makes_a, {"carries a", {}, {}, state, {}, nothing}};
  EXPECT_TRUE(told(join_one(by_state), {"port a ", "twice"}));
  static constexpr Port out[] = {from_duty};
  const Block of_duty[] = {{"writes out", {}, out, {}, {}, nothing}};
  EXPECT_TRUE(told(join_one(of_duty), {"port out ", "twice"}));
}

TEST(Join, NamesReaderAndPortNobodyWrites) {
  const Block blocks[] = {a_to_b};
  EXPECT_TRUE(told(join_one(blocks), {"a to b", "reads a", "nobody"}));
}

TEST(Join, NamesBothKindsWhereTheyDiffer) {
  const Block blocks[] = {makes_a, {"reads volts", as_volts, just_b, {}, {}, nothing}};
  EXPECT_TRUE(
      told(join_one(blocks), {"reads volts", "a", std::string(kind::voltage.name), std::string(kind::number.name)}));
}

TEST(Join, TellsAllFaultsAtOnce) {
  const Block blocks[] = {makes_a,
                          {"makes a too", {}, just_a, {}, {}, nothing},
                          c_to_d,
                          {"reads volts", as_volts, just_b, {}, {}, nothing}};
  EXPECT_EQ(join_one(blocks).faults.size(), 3u);
}

TEST(Join, NamesTheBlocksOfALoopNobodyTears) {
  const Block blocks[] = {makes_a, {"c to b", just_c, just_b, {}, {}, nothing}, b_to_c};
  const Graph g = join_one(blocks);
  EXPECT_TRUE(told(g, {"loop", "c to b", "b to c"}));
  EXPECT_FALSE(told(g, {"makes a"}));
}

TEST(Join, TearsALoopWhereABlockSaysSo) {
  const Block blocks[] = {makes_a,
                          {"a, c to b", a_and_c, just_b, {}, {}, nothing},
                          {.name = "b to c",
                           .reads = just_b,
                           .writes = just_c,
                           .evaluate = nothing,
                           .tear = "c",
                           .tear_low = 1,
                           .tear_high = 2},
                          c_to_d};
  const Graph g = join_one(blocks);
  ASSERT_TRUE(g.faults.empty()) << g.faults.front();
  ASSERT_EQ(g.tears.size(), 1u);
  auto& t = g.tears[0];
  EXPECT_EQ(t.guess, g.slot("c"));
  EXPECT_NE(t.result, t.guess);
  EXPECT_EQ(g.steps[t.last].block->name, "b to c");
  EXPECT_EQ(g.steps[t.last].writes[0], t.result);
  EXPECT_EQ(t.low, 1);
  EXPECT_EQ(t.high, 2);
  for (std::size_t i = 0; i < g.steps.size(); ++i)
    for (auto r : g.steps[i].reads) {
      EXPECT_NE(r, t.result);
      EXPECT_TRUE(r != t.guess || i >= t.first);
    }
}

TEST(Join, NamesTearsThatCannotWork) {
  const Block elsewhere[] = {makes_a,
                             {.name = "wrong",
                              .reads = just_a,
                              .writes = just_b,
                              .evaluate = nothing,
                              .tear = "c",
                              .tear_low = 0,
                              .tear_high = 1}};
  EXPECT_TRUE(told(join_one(elsewhere), {"wrong", "c", "does not write"}));
  const Block no_bracket[] = {{.name = "wide", .reads = just_a, .writes = just_a, .evaluate = nothing, .tear = "a"}};
  EXPECT_TRUE(told(join_one(no_bracket), {"wide", "a", "bracket"}));
  // Two loops through one another would need both to be closed at once.
  static constexpr Port b_and_d[] = {b, d};
  const Block nested[] = {{"b, d to a", b_and_d, just_a, {}, {}, nothing},
                          {.name = "a to b",
                           .reads = just_a,
                           .writes = just_b,
                           .evaluate = nothing,
                           .tear = "b",
                           .tear_low = 0,
                           .tear_high = 1},
                          {.name = "b to d",
                           .reads = just_b,
                           .writes = just_d,
                           .evaluate = nothing,
                           .tear = "d",
                           .tear_low = 0,
                           .tear_high = 1}};
  EXPECT_TRUE(told(join_one(nested), {"b", "d", "through one another"}));
}

TEST(Join, StatesAndSwitchesNeedNoOrder) {
  static constexpr StateInfo state[] = {{a, zero, 1}};
  static constexpr SwitchInfo sw_[] = {{c, zero, stays, [](const void*, const View&, double) { return -1.0; }}};
  const Block blocks[] = {{"reads its own", a_and_c, just_b, state, sw_, nothing},
                          {"b to d", just_b, just_d, {}, {}, nothing}};
  const Graph g = join_one(blocks);
  ASSERT_TRUE(g.faults.empty()) << g.faults.front();
  ASSERT_EQ(g.states.size(), 1u);
  ASSERT_EQ(g.switches.size(), 1u);
  EXPECT_EQ(g.states[0].value, g.slot("a"));
  EXPECT_EQ(g.switches[0].value, g.slot("c"));
  EXPECT_NE(g.states[0].rate, g.states[0].value);
  EXPECT_EQ(g.width, g.ports.size());
}

TEST(Unavailable, PassesOnWithTheFiguresToBlame) {
  const Block first[] = {makes_a}, second[] = {a_to_b, b_to_c}, third[] = {{"makes d", {}, just_d, {}, {}, nothing}};
  const Graph g = join({system_of(first, {"engine.power"}), system_of(second), system_of(third)}, outside_ports);
  ASSERT_TRUE(g.faults.empty());
  EXPECT_EQ(names(g), (std::vector<std::string>{"makes d"}));
  for (auto port : {"a", "b", "c"}) {
    ASSERT_TRUE(g.unavailable.contains(port)) << port;
    EXPECT_EQ(g.unavailable.find(port)->second, (std::set<std::string>{"engine.power"})) << port;
  }
  EXPECT_FALSE(g.unavailable.contains("d"));
}

TEST(Unavailable, BlamesAllFiguresOfAllWays) {
  const Block first[] = {makes_a}, second[] = {{"makes c", {}, just_c, {}, {}, nothing}},
              third[] = {{"a, c to b", a_and_c, just_b, {}, {}, nothing}};
  const Graph g =
      join({system_of(first, {"x"}), system_of(second, {"y", "z"}), system_of(third, {"own"})}, outside_ports);
  EXPECT_EQ(g.unavailable.find("b")->second, (std::set<std::string>{"own", "x", "y", "z"}));
}

TEST(Unavailable, PassesThroughBlocksThatOnlyCarryStatesOrWriteNothing) {
  static constexpr StateInfo state[] = {{b, zero, 1}};
  const Block first[] = {makes_a},
              second[] = {
                  {"carries b", just_a, {}, state, {}, nothing}, {"looks on", just_a, {}, {}, {}, nothing}, b_to_c};
  const Graph g = join({system_of(first, {"x"}), system_of(second)}, outside_ports);
  EXPECT_TRUE(g.steps.empty());
  EXPECT_EQ(g.unavailable.find("c")->second, (std::set<std::string>{"x"}));
}

TEST(Unavailable, GoesRoundATornLoopOnce) {
  const Block first[] = {makes_a}, second[] = {{"a, c to b", a_and_c, just_b, {}, {}, nothing},
                                               {.name = "b to c",
                                                .reads = just_b,
                                                .writes = just_c,
                                                .evaluate = nothing,
                                                .tear = "c",
                                                .tear_low = 1,
                                                .tear_high = 2}};
  const Graph g = join({system_of(first, {"x"}), system_of(second)}, outside_ports);
  EXPECT_TRUE(g.faults.empty());
  EXPECT_TRUE(g.tears.empty());
  EXPECT_EQ(g.unavailable.find("c")->second, (std::set<std::string>{"x"}));
}

TEST(PortTable, HasALineForEveryPort) {
  const Block blocks[] = {makes_a, a_to_b};
  const std::string table = port_table({system_of(blocks)}, outside_ports);
  EXPECT_NE(table.find("| `a` | " + std::string(kind::number.name) + " | makes a | a to b |"), std::string::npos)
      << table;
  EXPECT_NE(table.find("| `b` | " + std::string(kind::number.name) + " | a to b | tables of `simulate` alone |"),
            std::string::npos)
      << table;
  EXPECT_NE(table.find("| `out` | "), std::string::npos);
  // A requirement that needs it, and one that only tells it.
  static constexpr Port needs[] = {{"b", &kind::number}};
  static constexpr std::string_view chain[] = {"a", "b"};
  static const Requirement all[] = {{.id = "x.needs", .needs = needs, .chain = chain}};
  SystemOf judged = system_of(blocks);
  judged.key = "x", judged.requirements = all;
  const std::string read = port_table({judged}, outside_ports);
  EXPECT_NE(read.find("| makes a | a to b, because-lists of x |"), std::string::npos) << read;
  EXPECT_NE(read.find("| a to b | findings of x |"), std::string::npos) << read;
}

TEST(Join, AFigureOneBlockLacksStopsThatBlockAndItsReadersAlone) {
  constexpr Block makes_d{"makes d", {}, just_d, {}, {}, nothing};
  const Block blocks[] = {makes_a, a_to_b, makes_d};
  SystemOf one = system_of(blocks);
  one.missing_of["makes a"] = {"some.figure"};
  const Graph g = join({one}, outside_ports);
  EXPECT_TRUE(g.faults.empty());
  EXPECT_EQ(names(g), std::vector<std::string>{"makes d"});
  EXPECT_TRUE(g.unavailable.at("b").contains("some.figure"));
  EXPECT_FALSE(g.unavailable.contains("d"));
}

}  // namespace
}  // namespace sw
