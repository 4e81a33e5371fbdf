#include "cli/page.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace sw::cli {
namespace {

TEST(Seen, CountsColumnsNotBytes) {
  EXPECT_EQ(seen("12 V"), 4);
  EXPECT_EQ(seen("±"), 1);
  EXPECT_EQ(seen(strong("12 V")), 4);
  EXPECT_EQ(seen("e\xCC\x81"), 1) << "a combining accent takes no room";
  EXPECT_EQ(seen("\xE8\xBB\x8A"), 2) << "an East Asian letter takes two";
  EXPECT_EQ(seen("\xFF\xFE"), 2) << "stray bytes count one each";
}

TEST(Wrap, BreaksAtBlanksAndHangs) {
  EXPECT_EQ(wrap("one two three", 7), (std::vector<std::string>{"one two", "three"}));
  EXPECT_EQ(wrap("one two three", 7, 2), (std::vector<std::string>{"one two", "  three"}));
  EXPECT_EQ(wrap("", 7), (std::vector<std::string>{""}));
}

TEST(Wrap, CutsALongWordAfterADot) {
  EXPECT_EQ(wrap("belts.front.diameter", 14), (std::vector<std::string>{"belts.front.", "diameter"}));
  EXPECT_EQ(wrap("abcdefghij", 4), (std::vector<std::string>{"abcd", "efgh", "ij"}));
}

TEST(Wrap, KeepsNumberAndUnitTogether) {
  EXPECT_EQ(wrap("it is " + together("12 V"), 8).size(), 2u);
  Page page({.width = 8, .unicode = true, .colour = false});
  page.text("it is " + together("12 V"));
  EXPECT_EQ(page.take(), "it is\n12 V\n");
}

RC_GTEST_PROP(Wrap, NeverRunsOver, ()) {
  const auto columns = *rc::gen::inRange(1, 90);
  const auto hang = *rc::gen::inRange(0, 12);
  const auto words = *rc::gen::container<std::vector<std::string>>(
      rc::gen::container<std::string>(rc::gen::elementOf(std::string("abc.@12"))));
  std::string text, letters, kept;
  for (auto& w : words) text += w + " ", letters += w;
  for (auto& line : wrap(text, columns, hang)) {
    RC_ASSERT(seen(line) <= columns);
    for (char c : line)
      if (c != ' ') kept += c;
  }
  RC_ASSERT(kept == letters);
}

TEST(Plain, SpellsOurSignsAndHidesOthers) {
  EXPECT_EQ(to_ascii("3 ± 1 · a → b"), "3 +/- 1 | a -> b");
  EXPECT_EQ(to_ascii("caf\xC3\xA9"), "caf?");
  EXPECT_EQ(clean("a\x1b[2Jb\nc"), "a [2Jb c") << "nothing of a file may steer the terminal";
}

TEST(Page, ShowsStylesOnlyInColour) {
  for (bool colour : {false, true}) {
    Page page({.width = 80, .unicode = true, .colour = colour});
    page.text(strong("x") + " y");
    EXPECT_EQ(page.take(), colour ? "\x1b[1mx\x1b[0m y\n" : "x y\n");
  }
}

TEST(Page, PutsTextBesideASignAndBelowItself) {
  Page page({.width = 12, .unicode = true, .colour = false});
  page.beside("##", 4, "one two three");
  EXPECT_EQ(page.take(), "##  one two\n    three\n");
  page.space();
  page.text("a");
  page.space();
  page.space();
  page.text("b");
  EXPECT_EQ(page.take(), "a\n\nb\n");
}

TEST(Pad, FillsByColumns) {
  EXPECT_EQ(pad("±", 3), "±  ");
  EXPECT_EQ(pad_left("±", 3), "  ±");
  EXPECT_EQ(pad("long", 2), "long");
}

}  // namespace
}  // namespace sw::cli
