#include <gtest/gtest.h>

#include <nlohmann/json.hpp>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Schema, IsJsonOrTypeScript) {
  const auto j = nlohmann::json::parse(ran({"schema"}).out);
  EXPECT_TRUE(j["properties"].contains("cooling"));
  const std::string types = ran({"schema", "--typescript"}).out;
  EXPECT_NE(types.find("export interface Build"), std::string::npos);
  EXPECT_TRUE(types.ends_with('\n'));
}

}  // namespace
}  // namespace sw::cli
