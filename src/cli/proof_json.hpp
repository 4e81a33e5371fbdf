#pragma once
// A proof, and the faults that prevented one, as JSON. Values stand in the finding's own unit. No NaN, no infinity:
// what is not a number is null.
#include <string>

#include "proof/proof.hpp"

namespace sw::cli {

std::string proof_json(const Proof& proof, std::string_view build);
std::string finding_json(const Finding& finding);
std::string faults_json(const Diagnostics& faults, const std::vector<std::string>& files);

}  // namespace sw::cli
