#pragma once
// Regression, not reference: a text of the sample car as it was last looked at. After a wanted change run the tests
// with STREETWRIGHT_WRITE_GOLDEN=1 and read the difference.
#include <gtest/gtest.h>

#include <cstdlib>
#include <fstream>
#include <sstream>

#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace sw::sample {

inline void expect_golden(const std::string& name, const std::string& text) {
  std::string file = STREETWRIGHT_SOURCE_DIR "/tests/field/golden/" + name;
  if (std::getenv("STREETWRIGHT_WRITE_GOLDEN")) std::ofstream(file, std::ios::binary) << text;
  std::ifstream in(file, std::ios::binary);
  std::ostringstream golden;
  golden << in.rdbuf();
  EXPECT_EQ(text, golden.str()) << name;
}

}  // namespace sw::sample
