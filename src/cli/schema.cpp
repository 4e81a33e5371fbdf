// schema: the shape of a build, for editors and pages.
#include "car/build.hpp"
#include "cli/run.hpp"

namespace sw::cli {

int run_schema(const Args& args, Console& console) {
  std::string text =
      args.has("--typescript") ? typescript(build_fields(), "Build") : schema(build_fields(), "Streetwright build");
  if (!text.ends_with('\n')) text += '\n';
  console.out += text;
  return exit_code::good;
}

}  // namespace sw::cli
