#pragma once
// The rules of the tubes, a group a file; requirements.cpp puts them into the table.
#include "systems/tubes/shape.hpp"

namespace sw::tubes {

using Verdicts = std::vector<Verdict>;

// end_requirements.cpp
void judge_seat(const void* model, const Evidenced&, Verdicts& out);
void judge_nut(const void* model, const Evidenced&, Verdicts& out);
void judge_shear(const void* model, const Evidenced&, Verdicts& out);
void judge_flare(const void* model, const Evidenced&, Verdicts& out);
void judge_attempts(const void* model, const Evidenced&, Verdicts& out);

// bend_requirements.cpp
template <Concern>
void judge_bend(const void* model, const Evidenced&, Verdicts& out);
template <Concern>
void judge_thinning(const void* model, const Evidenced&, Verdicts& out);
void judge_straight(const void* model, const Evidenced&, Verdicts& out);
template <Concern>
void judge_clips(const void* model, const Evidenced&, Verdicts& out);
template <Concern>
void judge_burst(const void* model, const Evidenced&, Verdicts& out);

// card_requirements.cpp
void judge_card_angle(const void* model, const Evidenced&, Verdicts& out);
void judge_card_turn(const void* model, const Evidenced&, Verdicts& out);
void judge_card_mark(const void* model, const Evidenced&, Verdicts& out);
void judge_cut_length(const void* model, const Evidenced&, Verdicts& out);
void judge_sticks(const void* model, const Evidenced&, Verdicts& out);

// clear_requirements.cpp
template <Concern>
void judge_heat(const void* model, const Evidenced&, Verdicts& out);
template <Concern>
void judge_apart(const void* model, const Evidenced&, Verdicts& out);

// hose_requirements.cpp
template <Concern>
void judge_hose_bend(const void* model, const Evidenced&, Verdicts& out);
template <Concern>
void judge_hose_slack(const void* model, const Evidenced&, Verdicts& out);

// bracket_requirements.cpp
void judge_bracket_bend(const void* model, const Evidenced&, Verdicts& out);
void judge_bracket_flange(const void* model, const Evidenced&, Verdicts& out);
void judge_bracket_hole(const void* model, const Evidenced&, Verdicts& out);
void judge_flat_length(const void* model, const Evidenced&, Verdicts& out);

}  // namespace sw::tubes
