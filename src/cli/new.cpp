// new: a build to start from.
#include <filesystem>
#include <fstream>

#include "cli/run.hpp"
#include "field/stock.hpp"
#include "field/tree.hpp"

namespace sw::cli {
namespace {

constexpr std::string_view folder = "templates/", ending = ".toml";

/// Names of the templates there are: `saloon` of `templates/saloon.toml`.
std::vector<std::string_view> template_names() {
  std::vector<std::string_view> names;
  for (auto& stock : stock_texts())
    if (stock.name.starts_with(folder) && stock.name.ends_with(ending))
      names.push_back(stock.name.substr(folder.size(), stock.name.size() - folder.size() - ending.size()));
  return names;
}

std::string list_of(const std::vector<std::string_view>& names) {
  std::string all;
  for (auto name : names) all += (all.empty() ? "" : ", ") + std::string(name);
  return all;
}

}  // namespace

int run_new(const Args& args, Console& console) {
  const auto names = template_names();
  if (names.empty()) return own_fault(console, "new: no templates are built in");
  const std::string name = args.value("--template").value_or(std::string(names.front()));
  const std::string_view text = stock_text(std::string(folder) + name + std::string(ending));
  if (text.empty()) {
    const auto near = nearest(name, names);
    return complain(console, "there is no template \"" + name + "\"",
                    near.empty() ? "there are " + list_of(names) : "did you mean " + std::string(near) + "?");
  }
  const std::filesystem::path file = args.operands.front();
  // `new saloon` means the template and names no file: writing another car under that name would be a guess.
  if (const std::string near(nearest(file.string(), names));
      !near.empty() && !args.has("--template") && !file.has_extension())
    return complain(console, "\"" + file.string() + "\" names a template and no file",
                    "did you mean `new " + near + ".toml --template " + near + "`?");
  std::error_code error;
  if (std::filesystem::exists(file, error) && !args.has("--force"))
    return complain(console, "\"" + file.string() + "\" is there already",
                    "name another file, or write over it with --force");
  std::ofstream out(file, std::ios::binary);
  out << text;
  out.close();
  if (!out)
    return complain(console, "cannot write \"" + file.string() + "\"",
                    "see that the folder is there and may be written to");
  console.out += "Wrote " + file.string() + " (template " + name +
                 "). The car is invented: put your figures in, then\n  streetwright check " + file.string() + "\n";
  return exit_code::good;
}

}  // namespace sw::cli
