// The folder other tests here write into.
#include <gtest/gtest.h>
#include <unistd.h>

#include <atomic>
#include <filesystem>
#include <fstream>

#include "cli/sample_proof.hpp"

namespace sw::cli {

Scratch::Scratch() {
  static std::atomic<int> count{0};
  const auto name = "streetwright-cli-" + std::to_string(getpid()) + "-" + std::to_string(count++);
  folder_ = (std::filesystem::temp_directory_path() / name).string();
  std::filesystem::create_directories(folder_);
}
Scratch::~Scratch() {
  std::error_code error;
  std::filesystem::remove_all(folder_, error);
}
std::string Scratch::file(const std::string& name, const std::string& text) const {
  std::ofstream(path(name), std::ios::binary) << text;
  return path(name);
}

TEST(ScratchFolder, IsThereAndGoes) {
  std::string file;
  {
    const Scratch scratch;
    file = scratch.file("a.toml", "x = 1");
    EXPECT_TRUE(std::filesystem::exists(file));
  }
  EXPECT_FALSE(std::filesystem::exists(file));
}

}  // namespace sw::cli
