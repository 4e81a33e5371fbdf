#pragma once
// How far a long proof is, for somebody who looks.
#include <chrono>
#include <functional>
#include <string>

#include "cli/command.hpp"

namespace sw::cli {

/// A line on the terminal once it takes longer than a second, taken away at its end.
class Progress {
 public:
  explicit Progress(const Console& console) : console_(console) {}
  Progress(const Progress&) = delete;
  ~Progress();
  void operator()(double share, const std::string& what);

 private:
  const Console& console_;
  const std::chrono::steady_clock::time_point started_ = std::chrono::steady_clock::now();
  std::chrono::steady_clock::time_point last_{};
  bool shown_ = false;
};

}  // namespace sw::cli
