#include "document/parsing.hpp"

namespace sw {
namespace {

TEST(Syntax, TooLarge) {
  EXPECT_EQ(fault_of(std::string(text_limit::bytes + 1, '\n')),
            "t: the text is larger than 4 MiB; a build is a few dozen kilobytes: is this the right file?");
  std::string many;
  for (std::size_t i = 0; i <= text_limit::entries; ++i) many += "k" + std::to_string(i) + " = 1\n";
  EXPECT_EQ(fault_of(many), "t: a table has more than 20000 entries");
}

TEST(Lines, ThereAndBack) {
  std::string text =
      "\xEF\xBB\xBF"
      "ab\n\ncd";
  Lines lines(text);
  EXPECT_EQ(lines.offset(1, 1), 3u);
  EXPECT_EQ(lines.offset(3, 2), 8u);
  EXPECT_EQ(lines.offset(9, 9), text.size());
  EXPECT_EQ(lines.place(8, 0).line, 3u);
  EXPECT_EQ(lines.place(8, 0).column, 2u);
  EXPECT_EQ(lines.place(0, 0).column, 1u);
}

}  // namespace
}  // namespace sw
