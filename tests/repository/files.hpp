#pragma once
// The files of a source tree, and faults about them, for the tests of the repository itself.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>
#include <string_view>
#include <vector>

namespace sw::repository {

inline std::filesystem::path root() { return STREETWRIGHT_SOURCE_DIR; }

inline std::string read_file(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return std::move(text).str();
}

inline std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  std::istringstream in{std::string(text)};
  for (std::string line; std::getline(in, line);) lines.push_back(line);
  return lines;
}

/// A file by its path below the root, with `/` between folders: `src/quantity/parse.hpp`.
struct File {
  std::string path;
  std::string text;
};

/// Every file below `top` that belongs to the project: what .gitignore names at the root is passed over. It does not
/// ask git, for a source archive has none.
inline std::vector<File> files_below(const std::filesystem::path& top) {
  std::vector<File> files;
  for (auto it = std::filesystem::recursive_directory_iterator(top); it != std::filesystem::end(it); ++it) {
    const std::string name = it->path().filename().string();
    if (name == ".git" || name == "build" || name == "node_modules" || name == ".tools") {
      if (it->is_directory()) it.disable_recursion_pending();
      continue;
    }
    if (it->is_regular_file() && !name.ends_with(".swp"))
      files.push_back({std::filesystem::relative(it->path(), root()).generic_string(), read_file(it->path())});
  }
  std::sort(files.begin(), files.end(), [](auto& a, auto& b) { return a.path < b.path; });
  return files;
}

/// Every fault in one message, one a line, so that one run shows them all.
inline std::string listed(const std::vector<std::string>& faults) {
  std::string text;
  for (auto& fault : faults) text += "\n  " + fault;
  return text;
}

}  // namespace sw::repository
