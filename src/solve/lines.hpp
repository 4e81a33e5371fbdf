#pragma once
// What the solvers of tubes and brackets share: the caution of the lines they speak of, and a list of what was not
// done.
#include <algorithm>

#include "quantity/print.hpp"
#include "solve/model_of.hpp"
#include "solve/solver.hpp"
#include "systems/tubes/shape.hpp"

namespace sw {

inline std::string in_inches(double m) { return print(m, kind::length, "in", 4); }
inline std::string in_degrees(double rad) { return print(rad, kind::angle, "deg", 3); }

/// A solution put together line by line: what cannot be done for one of them keeps none of the others back.
class ByLine {
 public:
  void add(const std::string& sentence) { out_.says += (out_.says.empty() ? "" : " ") + sentence; }
  void refuse(const std::string& why) { refused_ += (refused_.empty() ? "" : ". ") + why; }
  void lacks(const std::vector<std::string>& paths) {
    for (auto& p : paths)
      if (std::find(missing_.begin(), missing_.end(), p) == missing_.end()) missing_.push_back(p);
  }
  void set(Setting setting) { out_.settings.push_back(std::move(setting)); }
  void because(std::string what, double si, const Kind& kind, std::string_view unit) {
    out_.because.push_back({.what = std::move(what), .value = si, .kind = &kind, .unit = unit});
  }
  void because(std::string what, std::string words) {
    out_.because.push_back({.what = std::move(what), .text = std::move(words)});
  }
  void concerns(const tubes::TubeModel& t) {
    const auto who = tubes::concern_of(t.carries);
    if (who == tubes::Concern::brakes) out_.caution = Caution::braking_loss;
    if (who == tubes::Concern::fuel && out_.caution == Caution::none) out_.caution = Caution::fuel_fire;
  }
  Solution take() {
    if (out_.settings.empty()) {
      out_.missing = missing_;
      out_.trouble = refused_;
    } else {
      if (!refused_.empty()) add("Not done: " + refused_ + ".");
      for (auto& m : missing_) add("Missing: " + m + ".");
    }
    return std::move(out_);
  }

 private:
  Solution out_;
  std::string refused_;
  std::vector<std::string> missing_;
};

}  // namespace sw
