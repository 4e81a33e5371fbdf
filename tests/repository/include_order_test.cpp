// Data goes down the folders of src/ and never up: a folder includes itself and those that stand before it in the list
// of docs/architecture.md, which is the only place where the order is declared.
#include <gtest/gtest.h>

#include <map>
#include <optional>

#include "repository/files.hpp"

namespace sw::repository {
namespace {

/// Folder to its rank. Folders on one line of the list share a rank and may not include each other.
using Order = std::map<std::string, int, std::less<>>;

/// The numbered list under "## Folders": `3. `physics` — …` or `15. `server`, `cli` — …`.
Order read_order(std::string_view page) {
  Order order;
  bool inside = false;
  int rank = 0;
  for (auto& line : lines_of(page)) {
    if (line.starts_with("## ")) inside = line.starts_with("## Folders");
    const auto dot = line.find(". `");
    if (!inside || dot == std::string::npos || line.find_first_not_of("0123456789") != dot) continue;
    ++rank;
    const std::string names = line.substr(dot, line.find(" — ") - dot);
    for (auto open = names.find('`'); open != std::string::npos; open = names.find('`', open)) {
      const auto close = names.find('`', open + 1);
      order[names.substr(open + 1, close - open - 1)] = rank;
      open = close + 1;
    }
  }
  return order;
}

/// `systems/cooling` of `systems/cooling/core.hpp`, else the first folder; empty where there is none.
std::string folder_of(std::string_view path) {
  const auto first = path.find('/');
  if (first == std::string_view::npos) return {};
  if (path.substr(0, first) != "systems") return std::string(path.substr(0, first));
  const auto second = path.find('/', first + 1);
  return second == std::string_view::npos ? std::string{} : std::string(path.substr(0, second));
}

std::optional<int> rank_of(const Order& order, std::string_view folder) {
  const auto found = order.find(folder.substr(0, folder.find('/')));
  if (found == order.end()) return std::nullopt;
  return found->second;
}

/// What is wrong with one include, in words, or empty.
std::string include_fault(const Order& order, std::string_view from, std::string_view included) {
  const std::string own = folder_of(from), other = folder_of(included);
  if (own.empty()) return "stands in no folder of its own (one folder a system, none beside them)";
  const auto own_rank = rank_of(order, own), other_rank = rank_of(order, other);
  const std::string quoted = "includes \"" + std::string(included) + "\"";
  if (!own_rank) return "stands in a folder that is not in the list of docs/architecture.md";
  if (!other_rank) return quoted + ", which names no folder of that list (write it from src/)";
  if (own == other) return {};
  if (*other_rank > *own_rank) return quoted + ", which points down the list of docs/architecture.md";
  if (*other_rank == *own_rank) return quoted + ", but `" + own + "` and `" + other + "` do not know each other";
  return {};
}

/// Every fault of one source, with its line.
std::vector<std::string> include_faults(const Order& order, const File& file) {
  std::vector<std::string> faults;
  const std::string from = file.path.substr(std::string_view("src/").size());
  int number = 0;
  for (auto& line : lines_of(file.text)) {
    ++number;
    constexpr std::string_view start = "#include \"";
    if (!line.starts_with(start)) continue;
    const std::string included = line.substr(start.size(), line.find('"', start.size()) - start.size());
    if (const auto fault = include_fault(order, from, included); !fault.empty())
      faults.push_back(file.path + ":" + std::to_string(number) + ": " + fault);
  }
  return faults;
}

const Order sample = read_order(
    "# Page\n1. `not` — outside the section\n## Folders, in the order\nwords\n"
    "1. `quantity` — units\n2. `physics` — laws\n3. `systems` — one folder each\n4. `server`, `cli` — thin\n"
    "## Next\n1. `neither` — outside\n");

TEST(IncludeOrder, IsReadFromThePage) {
  EXPECT_EQ(sample, (Order{{"quantity", 1}, {"physics", 2}, {"systems", 3}, {"server", 4}, {"cli", 4}}));
}

TEST(IncludeOrder, AllowsItselfAndWhatStandsBefore) {
  EXPECT_EQ(include_fault(sample, "physics/pipe.cpp", "physics/pipe.hpp"), "");
  EXPECT_EQ(include_fault(sample, "physics/pipe.cpp", "quantity/unit.hpp"), "");
  EXPECT_EQ(include_fault(sample, "systems/fuel/rail.cpp", "systems/fuel/rail.hpp"), "");
  EXPECT_EQ(include_fault(sample, "cli/check.cpp", "systems/fuel/rail.hpp"), "");
}

TEST(IncludeOrder, FindsEveryWayToBreakIt) {
  EXPECT_NE(include_fault(sample, "quantity/unit.cpp", "physics/pipe.hpp").find("points down"), std::string::npos);
  EXPECT_NE(include_fault(sample, "cli/a.cpp", "server/b.hpp").find("do not know"), std::string::npos);
  EXPECT_NE(include_fault(sample, "systems/fuel/a.cpp", "systems/brakes/b.hpp").find("do not know"), std::string::npos);
  EXPECT_NE(include_fault(sample, "physics/pipe.cpp", "pipe.hpp").find("names no folder"), std::string::npos);
  EXPECT_NE(include_fault(sample, "odd/a.cpp", "quantity/unit.hpp").find("not in the list"), std::string::npos);
  EXPECT_NE(include_fault(sample, "systems/a.cpp", "quantity/unit.hpp").find("no folder of its own"),
            std::string::npos);
  const File two{"src/quantity/a.hpp",
                 "#pragma once\n#include \"physics/pipe.hpp\"\n#include <map>\n#include \"x.hpp\"\n"};
  ASSERT_EQ(include_faults(sample, two).size(), 2u);
  EXPECT_TRUE(include_faults(sample, two)[0].starts_with("src/quantity/a.hpp:2: "));
}

TEST(IncludeOrder, HoldsInThisRepository) {
  const Order order = read_order(read_file(root() / "docs/architecture.md"));
  ASSERT_TRUE(order.contains("quantity") && order.contains("cli"))
      << "docs/architecture.md has no numbered list of folders under a heading that starts with \"Folders\"";
  std::vector<std::string> faults;
  for (auto& file : files_below(root() / "src"))
    for (auto& fault : include_faults(order, file)) faults.push_back(fault);
  EXPECT_TRUE(faults.empty()) << listed(faults);
}

// Only that source is compiled with the guard (docs/dependencies.md, CMakeLists.txt).
TEST(TomlLibrary, IsIncludedByTheGuardedSourceAlone) {
  std::vector<std::string> faults;
  for (auto* top : {"src", "bench", "tests"}) {
    if (!std::filesystem::exists(root() / top)) continue;
    for (auto& file : files_below(root() / top))
      for (auto& line : lines_of(file.text))
        if (line.starts_with("#include <toml++/") && file.path != "src/document/toml.cpp")
          faults.push_back(file.path + " includes toml++; only src/document/toml.cpp may");
  }
  EXPECT_TRUE(faults.empty()) << listed(faults);
}

}  // namespace
}  // namespace sw::repository
