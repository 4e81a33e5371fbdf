#pragma once
// The survey on the terminal and as JSON, and what was taken from a filled-in one.
#include <string>

#include "cli/look.hpp"
#include "survey/filled.hpp"
#include "survey/walk.hpp"

namespace sw::cli {

struct SurveyTold {
  std::string title, build;  ///< of the car, and its file
  Walk walk;
};
std::string survey_page(const SurveyTold& told, const Look& look);
std::string survey_json(const SurveyTold& told);

/// A filled-in survey that was put into its build, with the proof before and after.
struct FilledTold {
  std::string title, build, survey;
  const Filled& filled;
  const Proof& before;
  const Proof& after;
};
std::string filled_page(const FilledTold& told, const Look& look);
std::string filled_json(const FilledTold& told);

}  // namespace sw::cli
