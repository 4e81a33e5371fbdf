// Words with figures put in, and tables.
#include "report.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <stdexcept>

namespace sw::validation {
namespace {

TEST(Fill, PutsEveryFigureInItsHole) {
  EXPECT_EQ(fill("{} of {}", {"2", "3"}), "2 of 3");
  EXPECT_THROW(fill("{} of {}", {"2"}), std::logic_error);
  EXPECT_THROW(fill("{}", {"2", "3"}), std::logic_error);
}

TEST(Figures, AreSignedWhereTheyAreOff) {
  EXPECT_EQ(num(12.345, 1), "12.3");
  EXPECT_EQ(num(NAN), "–");
  EXPECT_EQ(off(2.5, 1, "V"), "+2.5 V");
  EXPECT_EQ(off(-2.5, 1), "-2.5");
  EXPECT_EQ(off_share(3, 4), "-25 %");
}

TEST(Table, HasARuleBelowItsHead) { EXPECT_EQ(table({{"a", "b"}, {"1", "2"}}), "| a | b |\n|---|---|\n| 1 | 2 |\n"); }

TEST(Page, HoldsHeadlinesSectionsAndPlots) {
  Report r;
  r.headlines.push_back({"study", "figure", "1 V", "2 V", "+1 V"});
  r.sections.push_back({"A section", "Its words.\n", {{.name = "a-plot", .title = "A plot"}}});
  const std::string text = page(r, "2000-01-02");
  for (auto* piece : {"2000-01-02", "./run validate", "| study | figure | 1 V | 2 V | +1 V |",
                      "## A section\n\nIts words.", "![A plot](validation/a-plot.svg)"})
    EXPECT_NE(text.find(piece), std::string::npos) << piece;
}

}  // namespace
}  // namespace sw::validation
