#pragma once
// The survey: what is still to be measured on a car, in the order a person walks round it. The proof decides what is
// on it: figures it lacks, those whose doubt decides a finding, and, where something could not be proved yet so that
// nobody knows what it hangs on, what stands there as a typical figure.
#include <span>
#include <string>
#include <vector>

#include "field/written_units.hpp"
#include "proof/proof.hpp"

namespace sw {

struct ToMeasure {
  std::string path;
  const FieldInfo* field = nullptr;
  Station station = Station::inherited;
  Tool tool = Tool::by_kind;
  std::string now;  ///< what stands there, with its evidence: `26 in, typical`; empty where nothing does
  /// Why: the finding it weighs on most, and how many it decides; none where it only stands in for a figure.
  std::string finding;
  int decides = 0;
  Hazard worst = Hazard::nuisance;
  Caution caution = Caution::none;  ///< of that finding
};

struct Walk {
  std::vector<ToMeasure> figures;        ///< in walking order; at one station as the field tables have them
  std::vector<std::string> to_tell;      ///< what the build must tell before it can be measured, in words
  std::vector<std::string> undescribed;  ///< systems the build says nothing of
};

/// How finely a figure is to be measured: `0.05 in`, `2 %`; empty where it is exact or no reading at all.
std::string to_within(const FieldInfo& field);

Walk walk_round(const Build& build, const Car& car, const Proof& proof, const WrittenUnits& units);

/// `cooling.cap` of `cooling.cap[radiator]@grade`.
std::string_view requirement_of(std::string_view finding);

/// What can hurt where one stands.
std::span<const Caution> cautions_at(Station station);

/// The walk as a file to fill in: one line a figure, nothing between its quotation marks.
std::string form_of(const Walk& walk, const std::string& title, const std::string& build);

}  // namespace sw
