#pragma once
// A proof, and the faults that prevented one, as JSON. Values stand in the finding's own unit. No NaN, no infinity:
// what is not a number is null.
#include <string>

#include "proof/proof.hpp"

namespace sw::cli {

std::string proof_json(const Proof& proof, std::string_view build);
std::string finding_json(const Finding& finding);
/// `more` are faults in words that begin with their path: `duty.x: no duration`.
std::string faults_json(const Diagnostics& faults, const std::vector<std::string>& files,
                        const std::vector<std::string>& more = {});

}  // namespace sw::cli
