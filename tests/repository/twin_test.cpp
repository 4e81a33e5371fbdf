// Each src/x/foo.cpp has its test in tests/x/foo_test.cpp, or stands with a reason in without_twin.txt.
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "repository/files.hpp"

namespace sw::repository {
namespace {

std::string twin_of(std::string_view source) {
  constexpr std::string_view folder = "src", ending = ".cpp";
  return "tests" + std::string(source.substr(folder.size(), source.size() - folder.size() - ending.size())) +
         "_test.cpp";
}

/// `src/x/foo.cpp: reason` a line; lines that begin with # are words to the reader.
std::map<std::string, std::string> read_exceptions(std::string_view text) {
  std::map<std::string, std::string> exceptions;
  for (auto& line : lines_of(text)) {
    if (line.empty() || line.starts_with('#')) continue;
    const auto colon = line.find(": ");
    exceptions[line.substr(0, colon)] = colon == std::string::npos ? "" : line.substr(colon + 2);
  }
  return exceptions;
}

std::vector<std::string> twin_faults(const std::set<std::string>& paths,
                                     const std::map<std::string, std::string>& exceptions) {
  std::vector<std::string> faults;
  for (auto& path : paths)
    if (path.starts_with("src/") && path.ends_with(".cpp") && !paths.contains(twin_of(path)) &&
        !exceptions.contains(path))
      faults.push_back(path + " has no " + twin_of(path) + " and no reason in tests/repository/without_twin.txt");
  for (auto& [path, reason] : exceptions) {
    const std::string entry = "tests/repository/without_twin.txt: " + path;
    if (reason.empty()) faults.push_back(entry + " gives no reason");
    if (!paths.contains(path))
      faults.push_back(entry + " is not there any more");
    else if (paths.contains(twin_of(path)))
      faults.push_back(entry + " has its twin by now; take the line out");
  }
  return faults;
}

TEST(Twin, IsMissedOrExcused) {
  const std::set<std::string> paths = {"src/a/one.cpp", "tests/a/one_test.cpp", "src/a/two.cpp", "src/a/two.hpp",
                                       "src/systems/b/three.cpp"};
  const auto faults = twin_faults(paths, {});
  ASSERT_EQ(faults.size(), 2u);
  EXPECT_NE(faults[0].find("src/a/two.cpp has no tests/a/two_test.cpp"), std::string::npos);
  EXPECT_NE(faults[1].find("tests/systems/b/three_test.cpp"), std::string::npos);
  const auto exceptions = read_exceptions("# why\nsrc/a/two.cpp: no rule in it\n\nsrc/systems/b/three.cpp: also\n");
  EXPECT_TRUE(twin_faults(paths, exceptions).empty());
}

TEST(Twin, ExceptionsThatWentStaleAreFaults) {
  const std::set<std::string> paths = {"src/a/one.cpp", "tests/a/one_test.cpp", "src/a/two.cpp"};
  const auto faults = twin_faults(paths, read_exceptions("src/a/one.cpp: x\nsrc/a/gone.cpp: y\nsrc/a/two.cpp\n"));
  EXPECT_EQ(faults.size(), 3u) << listed(faults);
}

TEST(Twin, StandsBesideEverySource) {
  std::set<std::string> paths;
  for (auto* top : {"src", "tests"})
    for (auto& file : files_below(root() / top)) paths.insert(file.path);
  const auto faults = twin_faults(paths, read_exceptions(read_file(root() / "tests/repository/without_twin.txt")));
  EXPECT_TRUE(faults.empty()) << listed(faults);
}

}  // namespace
}  // namespace sw::repository
