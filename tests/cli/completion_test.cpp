#include <gtest/gtest.h>

#include <cstdio>
#include <memory>

#include "cli/sample_proof.hpp"

namespace sw::cli {
namespace {

/// What bash offers after these words, by the script this program prints.
std::string offered(const Scratch& scratch, const std::string& words, int at) {
  const std::string script = scratch.file("complete.bash", ran({"completion", "bash"}).out);
  const std::string test = scratch.file("test.bash", "source '" + script + "'\nCOMP_WORDS=(" + words +
                                                         ")\nCOMP_CWORD=" + std::to_string(at) +
                                                         "\n_streetwright\nprintf '%s ' \"${COMPREPLY[@]}\"\n");
  std::unique_ptr<FILE, int (*)(FILE*)> pipe(popen(("bash '" + test + "' 2>&1").c_str(), "r"), pclose);
  std::string text;
  char buffer[256];
  while (fgets(buffer, sizeof buffer, pipe.get())) text += buffer;
  return text;
}

TEST(Completion, OffersCommandsOptionsAndValues) {
  const Scratch scratch;
  EXPECT_EQ(offered(scratch, "streetwright ch", 1), "check ");
  EXPECT_EQ(offered(scratch, "streetwright check --j", 2), "--json ");
  EXPECT_EQ(offered(scratch, "streetwright check --color a", 3), "always auto ");
  EXPECT_EQ(offered(scratch, "streetwright help conv", 2), "convert ");
  EXPECT_EQ(offered(scratch, "streetwright completion b", 2), "bash ");
}

}  // namespace
}  // namespace sw::cli
