// docs/validation.md tells how it was made and shows plots that are there, and small.
#include <gtest/gtest.h>

#include <regex>
#include <set>

#include "repository/files.hpp"

namespace sw::repository {
namespace {

constexpr std::uintmax_t largest_plot = 150 * 1024;

/// What a page shows as pictures, as it writes them.
std::set<std::string> pictures_of(const std::string& page) {
  static const std::regex picture(R"(!\[[^\]]*\]\(([^)]+)\))");
  std::set<std::string> out;
  for (std::sregex_iterator it(page.begin(), page.end(), picture), end; it != end; ++it) out.insert((*it)[1]);
  return out;
}

std::vector<std::string> faults_of(const std::string& page, const std::filesystem::path& folder) {
  std::vector<std::string> faults;
  if (page.find("./run validate") == std::string::npos) faults.push_back("the page does not name its command");
  for (auto& name : pictures_of(page)) {
    if (!std::filesystem::exists(folder / name))
      faults.push_back(name + " is not there");
    else if (std::filesystem::file_size(folder / name) > largest_plot)
      faults.push_back(name + " is larger than 150 kB");
  }
  return faults;
}

TEST(ValidationPage, FaultsAreFound) {
  const std::string page = "made by hand\n![a plot](validation/no-such.svg) and ![b](validation/nor-this.svg)\n";
  EXPECT_EQ(pictures_of(page).size(), 2u);
  EXPECT_EQ(faults_of(page, root() / "docs").size(), 3u);
  EXPECT_TRUE(faults_of("by `./run validate`", root() / "docs").empty());
}

TEST(ValidationPage, NamesItsCommandAndItsPlotsAreThere) {
  const std::string page = read_file(root() / "docs/validation.md");
  ASSERT_FALSE(pictures_of(page).empty());
  const auto faults = faults_of(page, root() / "docs");
  EXPECT_TRUE(faults.empty()) << listed(faults);
}

TEST(ValidationPage, ShowsEveryPlotThatIsKept) {
  const auto shown = pictures_of(read_file(root() / "docs/validation.md"));
  for (auto& file : std::filesystem::directory_iterator(root() / "docs/validation"))
    EXPECT_TRUE(shown.contains("validation/" + file.path().filename().string())) << file.path().filename();
}

}  // namespace
}  // namespace sw::repository
