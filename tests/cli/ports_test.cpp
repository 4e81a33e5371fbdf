#include <gtest/gtest.h>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

TEST(Ports, NameWhoWritesAndWhoReads) {
  const Ran r = ran({"ports"});
  EXPECT_EQ(r.code, 0);
  EXPECT_NE(r.out.find("\n| `bus.voltage` | voltage | "), std::string::npos);
  EXPECT_NE(r.out.find("| the duty |"), std::string::npos);
}

}  // namespace
}  // namespace sw::cli
