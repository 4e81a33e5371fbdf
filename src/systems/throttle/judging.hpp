#pragma once
// The rules of the throttle linkage, by what they look at: the linkage, and the springs.
#include "systems/throttle/throttle.hpp"

namespace sw::throttle {

inline constexpr std::string_view out_of_reach =
    "a rod does not reach or a cable has turned its lever as far as it goes: see where the linkage stands in line";

void judge_closed(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_roll(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_open(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_over_travel(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_over_centre(const void* model, const Evidenced& run, std::vector<Verdict>& out);

void judge_springs(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_return(const void* model, const Evidenced& run, std::vector<Verdict>& out);
void judge_pedal_force(const void* model, const Evidenced& run, std::vector<Verdict>& out);

}  // namespace sw::throttle
