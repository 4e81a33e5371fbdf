#include "cli/write_back.hpp"

#include <fstream>

#include "cli/run.hpp"

namespace sw::cli {
namespace {

namespace fs = std::filesystem;

bool replaced(const fs::path& file, const std::string& text) {
  std::error_code error;
  const fs::path real = fs::canonical(file, error);
  if (error) return false;
  fs::path fresh = real;
  fresh += ".being-written";
  {
    std::ofstream out(fresh, std::ios::binary);
    out << text;
    out.close();
    if (!out) {
      fs::remove(fresh, error);
      return false;
    }
  }
  fs::permissions(fresh, fs::status(real, error).permissions(), error);
  fs::rename(fresh, real, error);
  const bool done = !error;
  if (!done) fs::remove(fresh, error);
  return done;
}

}  // namespace

std::string json_is_not_edited(const std::string& file) {
  return "\"" + file + "\" is JSON, and edits are made in TOML alone";
}

OpenText with_text(const fs::path& file, const std::string& text) {
  return [file, text](const fs::path& asked) {
    return asked.lexically_normal() == file.lexically_normal() ? std::optional(text) : from_disk()(asked);
  };
}

int put(const fs::path& file, const std::string& text, Console& console) {
  if (replaced(file, text)) return exit_code::good;
  return complain(console, "cannot write \"" + file.string() + "\"", "see that it and its folder may be written to");
}

}  // namespace sw::cli
