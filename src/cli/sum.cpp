// sum: one law of the trade, alone.
#include "sum/sum.hpp"
#include "cli/page.hpp"
#include "cli/run.hpp"
#include "sum/run.hpp"

namespace sw::cli {
namespace {

/// Lines of another's text, each wrapped with its later lines below its words.
std::string wrapped(const std::string& text, const Look& look) {
  Page page(look);
  for (std::size_t from = 0; from < text.size();) {
    const std::size_t end = std::min(text.find('\n', from), text.size());
    const std::string line = text.substr(from, end - from);
    page.text(line, 0, static_cast<int>(std::min(line.find_first_not_of(' '), line.size())) + 2);
    from = end + 1;
  }
  return page.take();
}

}  // namespace

int run_sum_command(const Args& args, Console& console) {
  if (args.has("--list")) {
    console.out += wrapped(list_sums(), console.look);
    return exit_code::good;
  }
  const std::string& name = args.operands.front();
  const std::vector<std::string> inputs(args.operands.begin() + 1, args.operands.end());
  const Sum* sum = find_sum(name);
  if (sum && inputs.empty() && args.options.empty()) {
    console.out += wrapped(describe_sum(*sum), console.look);
    return exit_code::good;
  }
  const SumResult result = run_sum(name, inputs, args.values("--unit"));
  if (args.has("--json"))
    console.out += result.to_json() + "\n";
  else if (result.exit_code() == exit_code::bad_input)
    console.err +=
        wrapped(result.to_text() + (sum ? "streetwright sum " + name + " tells its inputs\n" : ""), console.err_look);
  else
    console.out += wrapped(result.to_text(), console.look);
  return result.exit_code();
}

}  // namespace sw::cli
