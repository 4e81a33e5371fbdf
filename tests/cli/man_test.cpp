#include <gtest/gtest.h>

#include <filesystem>

#include "cli/sample_proof.hpp"
#include "repository/files.hpp"

namespace sw::cli {
namespace {

TEST(Man, HasTheSectionsOfAPage) {
  const std::string page = ran({"man", "check"}).out;
  std::size_t at = 0;
  for (auto* section : {"NAME", "SYNOPSIS", "DESCRIPTION", "OPTIONS", "EXIT STATUS", "EXAMPLES", "SEE ALSO"}) {
    const auto found = page.find(".SH " + std::string(section) + "\n");
    EXPECT_NE(found, std::string::npos) << section;
    EXPECT_GE(found, at) << section;
    at = found;
  }
}

// A line that begins with a dot or a quote would be taken for a request.
TEST(Man, LetsNoTextBeTakenForARequest) {
  for (auto& c : commands())
    for (auto& line : repository::lines_of(ran({"man", std::string(c.name)}).out)) {
      if (!line.starts_with('.')) continue;
      const std::string request = line.substr(1, line.find(' ') - 1);
      EXPECT_TRUE(request == "\\\"" || request == "TH" || request == "SH" || request == "TP" || request == "PP" ||
                  request == "nf" || request == "fi")
          << line;
    }
}

TEST(Man, WritesAPageForEachCommandAndTheProgram) {
  const Scratch scratch;
  EXPECT_EQ(ran({"man", "--all", scratch.path("pages")}).code, 0);
  std::size_t count = 0;
  for ([[maybe_unused]] auto& entry : std::filesystem::directory_iterator(scratch.path("pages"))) ++count;
  EXPECT_EQ(count, commands().size() + 1);
  EXPECT_EQ(repository::read_file(scratch.path("pages/streetwright-sum.1")), ran({"man", "sum"}).out);
  EXPECT_EQ(ran({"man", "--all", scratch.file("a-file", "")}).code, 2);
}

// The list of generated files in `run` names pages one by one: it must not miss any.
TEST(Man, EachPageIsInTheListOfGeneratedFiles) {
  const std::string script = repository::read_file(repository::root() / "run");
  for (auto& c : commands()) {
    const std::string name(c.name);
    EXPECT_NE(script.find("\"man/streetwright-" + name + ".1 | man " + name + "\""), std::string::npos) << name;
  }
}

}  // namespace
}  // namespace sw::cli
