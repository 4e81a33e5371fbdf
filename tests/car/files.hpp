#pragma once
// Files of the repository for the tests of whole builds, and what was said of them.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "car/build.hpp"

namespace sw::files {

inline std::filesystem::path root() { return STREETWRIGHT_SOURCE_DIR; }

inline std::string text_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return std::move(text).str();
}

/// The `.toml` files of a folder, by name.
inline std::vector<std::filesystem::path> builds_in(const std::string& folder) {
  std::vector<std::filesystem::path> all;
  for (auto& e : std::filesystem::directory_iterator(root() / folder))
    if (e.path().extension() == ".toml") all.push_back(e.path());
  std::sort(all.begin(), all.end());
  return all;
}

/// Files that stand in memory.
using Texts = std::map<std::string, std::string>;
inline OpenText from(const Texts& texts) {
  return [&texts](const std::filesystem::path& path) -> std::optional<std::string> {
    auto it = texts.find(path.generic_string());
    return it == texts.end() ? std::nullopt : std::optional(it->second);
  };
}

/// A starting build with the lines that must be measured filled in as they stand there.
inline std::string filled_in(const std::filesystem::path& path) {
  return std::regex_replace(text_of(path), std::regex("# MEASURE "), "");
}
inline Opened open_filled(const std::filesystem::path& path) {
  const Texts texts = {{path.filename().string(), filled_in(path)}};
  return open(path.filename(), from(texts));
}

/// Every fault and warning, one a line.
inline std::string said(const Opened& o) {
  std::string all;
  for (auto& d : o.faults.all()) all += say(d, o.files) + "\n";
  return all;
}

}  // namespace sw::files
