#pragma once
// A build: the plain fields of every system, the workshop's own duties, and where each figure came from.
#include <filesystem>
#include <memory>
#include <set>
#include <string>

#include "car/systems.hpp"
#include "document/document.hpp"
#include "field/walk.hpp"
#include "field/written_units.hpp"
#include "model/duty.hpp"

namespace sw {

struct Build {
  Systems::Inputs inputs;
  Named<Duty> duty;  ///< the workshop's own, beside the shipped ones
  EvidenceMap evidence;
  std::filesystem::path folder;                    ///< where trace files are looked for
  std::string name;                                ///< file name, as said in reports
  std::shared_ptr<const std::vector<Node>> shelf;  ///< parts it could have instead; may be null
  std::set<std::string, std::less<>> tables;       ///< systems a table of the text stands for, empty or not
  Spoilt spoilt;                                   ///< what its faults leave unknown: nothing where it has none
};

/// The field table of a whole build: one group a system, and `duty`.
std::span<const FieldInfo> build_fields();

/// A build with all faults of its document; `build` is usable only where there is none.
struct Opened {
  Build build;
  std::vector<std::string> files;
  Diagnostics faults;
  WrittenUnits units;       ///< those it is written in, for reports
  bool incomplete = false;  ///< a text of it could not be had or parsed: what should stand in it is not judged
};
Opened open(const std::filesystem::path& file, const OpenText& text);
/// Reads an already merged tree: for tests and generated builds.
Opened read_build(const Document& document);

}  // namespace sw
