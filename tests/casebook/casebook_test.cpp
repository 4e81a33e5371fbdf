// Failures from the field, each as a wrong and a right twin of one car: found on the one for the right reason, and no
// alarm on the other. docs/casebook.md is written from what is found here: run with STREETWRIGHT_WRITE_CASEBOOK=1
// after a wanted change and read the difference.
#include <gtest/gtest.h>

#include <cstdlib>

#include "casebook/outcome.hpp"
#include "casebook/page.hpp"

namespace sw::casebook {
namespace {

class Casebook : public testing::TestWithParam<Case> {};

TEST_P(Casebook, IsFoundAndItsTwinIsClean) {
  const Case& c = GetParam();
  const Outcome& out = outcome_of(c);
  for (auto& f : out.found)
    std::printf("%s %s %s: %s, %s%s\n", c.name.c_str(), f.build.c_str(), f.id.c_str(), f.state.c_str(), f.ours.c_str(),
                f.theirs.empty() ? "" : (" against " + f.theirs).c_str());
  std::printf("%s right twin: %zu false alarms, %zu tight\n", c.name.c_str(), out.false_alarms.size(),
              out.tight.size());
  for (auto& complaint : out.complaints) ADD_FAILURE() << c.name << ": " << complaint;
}

INSTANTIATE_TEST_SUITE_P(Cases, Casebook, testing::ValuesIn(all_cases()), [](const auto& one) {
  std::string name = one.param.name;
  std::replace(name.begin(), name.end(), '-', '_');
  return name;
});

TEST(CasebookPage, IsAsItWouldBeWrittenNow) {
  const std::filesystem::path file = STREETWRIGHT_SOURCE_DIR "/docs/casebook.md";
  const std::string now = page(all_cases());
  if (std::getenv("STREETWRIGHT_WRITE_CASEBOOK")) std::ofstream(file, std::ios::binary) << now;
  EXPECT_EQ(text_of(file), now)
      << "docs/casebook.md is stale: run the casebook's tests with STREETWRIGHT_WRITE_CASEBOOK=1";
}

}  // namespace
}  // namespace sw::casebook
