#pragma once
// What would make a failing finding hold, in words: wires, parts of the shelf, settings.
#include "proof/levers.hpp"
#include "proof/swaps.hpp"

namespace sw {

/// Positions in `tried` of the first few with which the judgement holds by more than its doubt and nothing else breaks
/// (Trial), cheapest first.
std::vector<std::size_t> parts_that_hold(const Question& q, const std::vector<Swap>& tried, std::size_t most = 1000);

/// `cooling.fan.left.flow from 800 cfm to 960 cfm`, with what to mind.
std::string words(const Lever& lever);
/// At most `most` of them in words, a thicker wire at the place first, then parts: `Holds with shelf part high-idle-180
/// as charging.alternator; or …`, and where none does and two findings pull one figure both ways, that. Empty where
/// there is nothing to offer.
std::string offers(const Question& q, const std::vector<Swap>& tried, std::size_t most = 3);

}  // namespace sw
