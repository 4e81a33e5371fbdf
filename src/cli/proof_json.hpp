#pragma once
// A proof, and the faults that prevented one, as JSON. Values stand in the finding's own unit. No NaN, no infinity:
// what is not a number is null.
#include <string>

#include "proof/proof.hpp"

namespace sw::cli {

/// With the warnings among `told`, which stand with a proof and do not prevent it.
std::string proof_json(const Proof& proof, std::string_view build, const Diagnostics& told = {},
                       const std::vector<std::string>& files = {});
std::string finding_json(const Finding& finding);
std::string faults_json(const Diagnostics& faults, const std::vector<std::string>& files);

}  // namespace sw::cli
