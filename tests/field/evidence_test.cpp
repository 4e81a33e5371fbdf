#include "field/evidence.hpp"

#include <gtest/gtest.h>

namespace sw {
namespace {

TEST(Source, NamesGoBothWays) {
  for (std::size_t i = 0; i < source_names.size(); ++i) {
    auto source = find_source(source_names[i]);
    ASSERT_TRUE(source);
    EXPECT_EQ(name_of(*source), source_names[i]);
  }
  EXPECT_EQ(find_source("data sheet"), Source::data_sheet);
  EXPECT_EQ(find_source("data_sheet"), std::nullopt);
  EXPECT_EQ(find_source(""), std::nullopt);
}

}  // namespace
}  // namespace sw
