// What every entry of the registry must hold.
#include <algorithm>
#include "asking.hpp"

namespace sw {
namespace {

TEST(Registry, EntriesAreWhole) {
  std::vector<std::string_view> names;
  for (auto* s : all_sums()) {
    names.push_back(s->name);
    EXPECT_FALSE(s->title.empty() || s->range.empty() || s->source.empty()) << s->name;
    EXPECT_FALSE(s->outputs.empty()) << s->name;
    EXPECT_NE(describe_sum(*s).find("outputs:"), std::string::npos);
    const auto in = s->make_in();
    for (auto& rule : s->rules)
      for (auto& key : rule.keys) {
        if (key.empty()) continue;
        EXPECT_NE(describe_sum(*s).find("  " + std::string(key) + ": "), std::string::npos)
            << s->name << " has a rule on " << key;
      }
    EXPECT_EQ(run_sum(s->name, {"no_such_key=1"}).exit_code(), 2) << s->name;
  }
  auto sorted = names;
  std::sort(sorted.begin(), sorted.end());
  EXPECT_EQ(std::adjacent_find(sorted.begin(), sorted.end()), sorted.end()) << "two sums of one name";
}

TEST(Registry, FindsByName) {
  ASSERT_NE(find_sum("pipe-loss"), nullptr);
  EXPECT_EQ(find_sum("pipe-loss")->title, "Pressure lost along a pipe");
  EXPECT_EQ(find_sum("nothing"), nullptr);
}

}  // namespace
}  // namespace sw
