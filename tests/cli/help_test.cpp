#include <gtest/gtest.h>

#include "cli/page.hpp"
#include "cli/sample_proof.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

TEST(Help, NamesEveryCommandAndEveryOption) {
  const std::string all = ran({"help"}).out, markdown = ran({"help", "--markdown"}).out;
  for (auto& c : commands()) {
    EXPECT_NE(all.find("  " + std::string(c.name) + " "), std::string::npos) << c.name;
    EXPECT_NE(markdown.find("\n## " + std::string(c.name) + "\n"), std::string::npos) << c.name;
    const std::string one = ran({"help", std::string(c.name)}).out;
    for (auto* o : options_of(c)) EXPECT_NE(one.find(o->name), std::string::npos) << c.name << " " << o->name;
    for (auto& e : exits_of(c)) EXPECT_NE(one.find("\n  " + std::to_string(e.code) + " "), std::string::npos) << c.name;
    if (c.name == "help") continue;
    EXPECT_EQ(one, ran({std::string(c.name), "--help"}).out);
  }
}

TEST(Help, StaysWithinAnyWidth) {
  for (int width = 60; width <= 200; width += 20)
    for (auto& c : commands())
      for (auto& line : repository::lines_of(ran({"help", std::string(c.name)}, piped(std::to_string(width))).out))
        EXPECT_LE(seen(line), width) << line;
}

TEST(Help, KnowsTheNearestCommand) {
  const Ran r = ran({"help", "chekc"});
  EXPECT_EQ(r.code, 2);
  EXPECT_EQ(r.err, "streetwright: there is no command \"chekc\"; did you mean check?\n");
}

TEST(Version, IsThatOfTheProject) {
  const std::string lists = repository::read_file(repository::root() / "CMakeLists.txt"),
                    key = "project(streetwright VERSION ";
  const auto at = lists.find(key) + key.size();
  EXPECT_EQ(ran({"--version"}).out, "streetwright " + lists.substr(at, lists.find(' ', at) - at) + "\n");
}

}  // namespace
}  // namespace sw::cli
