#include "cli/run.hpp"

#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Run, AnswersBadUsageWithTwoAndAWayOn) {
  const Ran r = ran({"chek"});
  EXPECT_EQ(r.code, 2);
  EXPECT_EQ(r.out, "");
  EXPECT_EQ(r.err, "streetwright: there is no command \"chek\"; did you mean check?\n");
}

TEST(Run, TakesNoArgumentsAsAQuestion) {
  const Ran r = ran({});
  EXPECT_EQ(r.code, 0);
  EXPECT_TRUE(r.out.starts_with("streetwright"));
}

TEST(Run, ShowsNoControlCharactersOfTheCommandLine) {
  EXPECT_EQ(ran({"a\x1b[31m"}).err.find('\x1b'), std::string::npos);
}

TEST(Run, ColoursWhenAskedTo) {
  EXPECT_NE(ran({"help", "--color=always"}).out.find('\x1b'), std::string::npos);
  EXPECT_EQ(ran({"help"}).out.find('\x1b'), std::string::npos);
}

TEST(OwnFault, IsOneLineToReport) {
  Console console;
  EXPECT_EQ(own_fault(console, "x\ny"), 70);
  EXPECT_EQ(console.err, "streetwright: a fault of the program itself, please report this line: x y\n");
}

TEST(UnknownCommand, NamesTheNearest) {
  Console console;
  EXPECT_EQ(unknown_command("simulat", console), 2);
  EXPECT_EQ(console.err, "streetwright: there is no command \"simulat\"; did you mean simulate?\n");
}

}  // namespace
}  // namespace sw::cli
