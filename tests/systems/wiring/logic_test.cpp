#include "systems/wiring/logic.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "systems/wiring/wiring.hpp"

using namespace sw;
using namespace sw::wiring;

namespace {

const unsigned running = bit(Condition::running), hit = bit(Word::hit), oil = bit(Word::oil_pressure);

TEST(WiringLogic, OneLineThatHoldsIsEnough) {
  const auto read = read_logic({"prime", "running and oil-pressure and not hit"});
  ASSERT_TRUE(read.problems.empty());
  EXPECT_TRUE(read.logic.holds(bit(Word::prime)));
  EXPECT_TRUE(read.logic.holds(running | oil));
  EXPECT_FALSE(read.logic.holds(running));
  EXPECT_FALSE(read.logic.holds(running | oil | hit));
  EXPECT_EQ(read.logic.words(), bit(Word::prime) | running | oil | hit);
}

TEST(WiringLogic, WordsOfADutyKeepTheirBits) {
  for (std::size_t i = 0; i < std::size(condition_names); ++i) {
    const auto read = read_logic({std::string(condition_names[i])});
    ASSERT_TRUE(read.problems.empty()) << condition_names[i];
    EXPECT_EQ(read.logic.words(), 1u << i);
  }
}

TEST(WiringLogic, EveryFaultIsToldAndNothingOfItsLineHolds) {
  const auto read = read_logic({"runing", "running oil-pressure", "running and", "hit and not hit", "not not hit", ""});
  ASSERT_EQ(read.problems.size(), 6u);
  EXPECT_EQ(read.problems[0].hint, "did you mean \"running\"?");
  EXPECT_NE(read.problems[1].what.find("lacks \"and\""), std::string::npos);
  EXPECT_TRUE(read.logic.lines.empty());
}

// Any line of words joined by `and` holds exactly where all its words are as it says.
RC_GTEST_PROP(WiringLogic, ALineHoldsWhereItsWordsAre, ()) {
  const unsigned count = static_cast<unsigned>(std::size(condition_names) + std::size(further_words));
  const auto name = [](unsigned i) {
    return std::string(i < std::size(condition_names) ? condition_names[i]
                                                      : further_words[i - std::size(condition_names)]);
  };
  const unsigned all = *rc::gen::inRange(0u, 1u << count), none = *rc::gen::inRange(0u, 1u << count) & ~all,
                 state = *rc::gen::inRange(0u, 1u << count);
  RC_PRE((all | none) != 0);
  std::string line;
  for (unsigned i = 0; i < count; ++i)
    if ((all | none) & (1u << i))
      line += (line.empty() ? "" : " and ") + std::string(none & (1u << i) ? "not " : "") + name(i);
  const auto read = read_logic({line});
  RC_ASSERT(read.problems.empty());
  bool holds = true;
  for (unsigned i = 0; i < count; ++i) {
    const bool set = (state >> i) & 1u;
    if (all & (1u << i)) holds = holds && set;
    if (none & (1u << i)) holds = holds && !set;
  }
  RC_ASSERT(read.logic.holds(state) == holds);
}

TEST(WiringLogic, AnEngineThatRunsTurnsAndHasOilPressure) {
  EXPECT_EQ(state_of(running), running | oil | bit(Word::turning));
  EXPECT_EQ(state_of(bit(Condition::start)), bit(Condition::start) | bit(Word::turning));
  EXPECT_EQ(state_of(bit(Condition::always)), bit(Condition::always));
}

// The field's sentence names every word there is.
TEST(WiringLogic, TheFieldNamesEveryWord) {
  const FieldInfo* closed = nullptr;
  for (auto& f : Switch::fields())
    if (f.key == "closed") closed = &f;
  ASSERT_TRUE(closed);
  for (auto word : condition_names) EXPECT_NE(closed->doc.find(word), std::string_view::npos) << word;
  for (auto word : further_words) EXPECT_NE(closed->doc.find(word), std::string_view::npos) << word;
}

}  // namespace
