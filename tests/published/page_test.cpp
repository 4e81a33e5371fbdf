// docs/checks.md is written from what the tests of this folder hold: run with STREETWRIGHT_WRITE_CHECKS=1 after a
// wanted change and read the difference.
#include "published/page.hpp"

#include <gtest/gtest.h>

#include <cstdlib>
#include <set>

namespace sw::published {
namespace {

TEST(ChecksPage, IsAsItWouldBeWrittenNow) {
  const std::filesystem::path file = STREETWRIGHT_SOURCE_DIR "/docs/checks.md";
  const std::string now = page();
  if (std::getenv("STREETWRIGHT_WRITE_CHECKS")) std::ofstream(file, std::ios::binary) << now;
  EXPECT_EQ(text_of(file), now) << "docs/checks.md is stale: run the tests of tests/published with "
                                   "STREETWRIGHT_WRITE_CHECKS=1";
}

TEST(ChecksPage, HasEachNumberOnce) {
  std::set<std::string> seen;
  for (auto& r : all_rows()) EXPECT_TRUE(seen.insert(r.id).second) << r.id << " stands twice";
  for (auto& n : not_checked()) EXPECT_TRUE(seen.insert(n.id).second) << n.id << " is held and said not to be";
}

TEST(ChecksPage, GivesAReasonForEachLineLeftOut) {
  for (auto& n : not_checked()) {
    EXPECT_FALSE(n.what.empty() || n.expected.empty() || n.source.empty() || n.provenance.empty()) << n.id;
    EXPECT_GT(n.reason.size(), 20u) << n.id;
  }
}

// The list of numbers the project was set is no part of it. Where STREETWRIGHT_CHECK_LIST names a file of that list
// (comma-separated, the number first, quoted), each of them is on the page.
TEST(ChecksPage, HasEveryNumberOfTheList) {
  const char* list = std::getenv("STREETWRIGHT_CHECK_LIST");
  if (!list) GTEST_SKIP() << "STREETWRIGHT_CHECK_LIST names no list: the list of numbers is not shipped";
  std::set<std::string> seen;
  for (auto& r : all_rows()) seen.insert(r.id);
  for (auto& n : not_checked()) seen.insert(n.id);
  std::ifstream in(list);
  int count = 0;
  for (std::string line; std::getline(in, line);) {
    const std::string id = line.substr(1, line.find('"', 1) - 1);
    if (id == "id" || line.empty() || line[0] != '"') continue;
    ++count;
    EXPECT_TRUE(seen.contains(id)) << id;
  }
  EXPECT_GT(count, 0) << list;
}

}  // namespace
}  // namespace sw::published
