#pragma once
// An edited build put in its file's place.
#include <filesystem>
#include <string>

#include "cli/command.hpp"
#include "document/document.hpp"

namespace sw::cli {

/// Edits are made in TOML alone.
inline bool is_json(const std::string& file) { return std::filesystem::path(file).extension() == ".json"; }
std::string json_is_not_edited(const std::string& file);

/// The disk, but for `file`, whose text is `text`: to read an edited build before it is written.
OpenText with_text(const std::filesystem::path& file, const std::string& text);

/// Beside the file first, then in its place: a full disk leaves the old one whole. Gives the exit code.
int put(const std::filesystem::path& file, const std::string& text, Console& console);

}  // namespace sw::cli
