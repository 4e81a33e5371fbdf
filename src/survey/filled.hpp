#pragma once
// A filled-in survey, read back: every figure checked as the build's own are, and made into edits of the build's text.
#include <string>
#include <vector>

#include "car/build.hpp"
#include "field/written_units.hpp"

namespace sw {

struct Taken {
  std::string path;
  const FieldInfo* field = nullptr;
  std::string was, now;           ///< in words; `was` is empty where nothing stood there
  std::string toml;               ///< `{ value = "26 in", from = "measured" }`
  bool beyond_its_doubt = false;  ///< what was measured lies outside the band of what stood there
};

struct Filled {
  std::vector<Taken> taken;
  std::size_t blank = 0;  ///< left empty
  Node root;              ///< the text's tree without what was left empty: places of later faults
  Diagnostics faults;
};

/// `text` is TOML. A figure carries evidence `measured` unless it says otherwise, and the text's `note`.
Filled read_filled(const std::string& text, const Build& build, const WrittenUnits& units);

/// The build's own text with the figures in it; empty with the fault where it cannot be.
std::optional<std::string> put_in(const std::string& build_text, const Filled& filled, Diagnostics& faults);

/// The figures in a build: whether it reads back as what was measured.
bool reads_back(const Build& build, const Filled& filled);

}  // namespace sw
