#include <gtest/gtest.h>

#include <fstream>

#include "document/document.hpp"

namespace sw {
namespace {

TEST(FromDisk, ReadsFilesAndNothingElse) {
  auto folder = std::filesystem::temp_directory_path() / "streetwright_from_disk_test";
  std::filesystem::create_directories(folder);
  std::ofstream(folder / "a.toml", std::ios::binary) << "a = 1\r\n";
  EXPECT_EQ(from_disk()(folder / "a.toml"), "a = 1\r\n");
  EXPECT_EQ(from_disk()(folder / "b.toml"), std::nullopt);
  EXPECT_EQ(from_disk()(folder), std::nullopt);
  EXPECT_EQ(from_disk()("/dev/zero"), std::nullopt);
  std::filesystem::remove_all(folder);
}

}  // namespace
}  // namespace sw
