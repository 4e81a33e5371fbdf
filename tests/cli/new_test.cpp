#include <gtest/gtest.h>

#include <filesystem>

#include "cli/sample_proof.hpp"
#include "field/stock.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

std::vector<std::string> templates() {
  std::vector<std::string> names;
  for (auto& s : stock_texts())
    if (s.name.starts_with("templates/")) names.emplace_back(s.name.substr(10, s.name.size() - 15));
  return names;
}

TEST(New, WritesEveryTemplateAndItReads) {
  if (templates().empty()) GTEST_SKIP() << "no templates are built in yet";
  const Scratch scratch;
  for (auto& name : templates()) {
    const std::string file = scratch.path(name + ".toml");
    EXPECT_EQ(ran({"new", file, "--template", name}).code, 0);
    EXPECT_EQ(repository::read_file(file), stock_text("templates/" + name + ".toml"));
    EXPECT_EQ(ran({"duties", file}).code, 0) << ran({"duties", file}).err;
  }
}

TEST(New, KeepsAFileThatIsThere) {
  if (templates().empty()) GTEST_SKIP() << "no templates are built in yet";
  const Scratch scratch;
  const std::string file = scratch.file("car.toml", "mine");
  const Ran r = ran({"new", file});
  EXPECT_EQ(r.code, 2);
  EXPECT_NE(r.err.find("is there already"), std::string::npos);
  EXPECT_EQ(repository::read_file(file), "mine");
  EXPECT_EQ(ran({"new", file, "--force"}).code, 0);
  EXPECT_NE(repository::read_file(file), "mine");
}

TEST(New, SaysWhatIsWrong) {
  if (templates().empty()) {
    EXPECT_EQ(ran({"new", "nowhere.toml"}).code, 70);
    return;
  }
  const Scratch scratch;
  EXPECT_EQ(ran({"new", scratch.path("a.toml"), "--template", "zzzzzz"}).code, 2);
  EXPECT_EQ(ran({"new", scratch.path("none/a.toml")}).code, 2);
  EXPECT_FALSE(std::filesystem::exists(scratch.path("a.toml")));
}

// `new saloon` would otherwise write some other car into a file of that name.
TEST(New, ATemplatesNameAloneIsNotTakenForAFile) {
  for (auto& name : templates()) {
    const Ran r = ran({"new", name});
    EXPECT_EQ(r.code, 2);
    EXPECT_NE(r.err.find("new " + name + ".toml --template " + name), std::string::npos) << r.err;
    EXPECT_FALSE(std::filesystem::exists(name));
  }
}

}  // namespace
}  // namespace sw::cli
