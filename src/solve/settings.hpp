#pragma once
// What a solver found, put into the car and into the user's own text. A value is rounded to what a shop can set before
// anything is tried with it, so that what is judged is what is written.
#include <optional>
#include <string>
#include <vector>

#include "car/build.hpp"
#include "solve/solver.hpp"

namespace sw {

/// A setting as it is told and written.
struct SettingText {
  std::string path, label;
  const FieldInfo* field = nullptr;
  std::string_view unit;       ///< in which it is told; empty where it has none
  std::optional<double> was;   ///< SI; empty: nobody gave one
  double value = 0;            ///< SI, rounded
  std::optional<Curve> curve;  ///< of a curve, instead of the value: SI, rounded
  bool words = false;          ///< a text: what is told is what is set, and no evidence stands beside it
  std::string was_text, text;  ///< `700 psi`; what was there is empty where nothing was
  std::string toml;            ///< `{ value = "220 psi", from = "solved" }`
  bool changes() const { return !was || was_text != text; }
};

/// The settings of a solution in the units the build is written in. Faults: a path that is no figure of this build, a
/// value its field does not allow.
std::vector<SettingText> setting_texts(const Build& build, std::span<const Setting> settings, const WrittenUnits& units,
                                       Diagnostics& faults);
/// Whether a leaf holds what is set.
bool stands(const SettingText& setting, const Leaf& leaf);
/// The build with them, as reading the written text would give it.
Build with_settings(Build build, std::span<const SettingText> settings);
/// The user's own text with them spliced in, comments and order kept; empty where it cannot be, with the fault. A value
/// that stands in a base file or in a shelf part stays there: the text laid over it gets a line of its own.
std::optional<std::string> write_settings(const std::string& text, std::span<const SettingText> settings,
                                          Diagnostics& faults);
/// The same as lines of TOML to paste, by tables.
std::string lines_to_paste(std::span<const SettingText> settings);

}  // namespace sw
