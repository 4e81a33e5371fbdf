#include "systems/belts/belts.hpp"

namespace sw::belts {
namespace {

constexpr FieldInfo pulley_table[] = {
    choice<&Pulley::drives>("drives", "drives", drives_names).says("What the pulley turns."),
    quantity<&Pulley::diameter>("diameter", "diameter", kind::length)
        .may_change()
        .in("in")
        .above(1, 20)
        .spread(Source::measured, {.absolute = 0.03})
        .spread(Source::stated, {.absolute = 0.03})
        .says("Pitch diameter: where the belt's cords run."),
    quantity<&Pulley::wrap>("wrap", "wrap", kind::angle)
        .may_change()
        .in("deg")
        .above(20, 300)
        .or_else(140)
        .spread(Source::typical, {.share = 0.1})
        .spread(Source::measured, {.absolute = 5})
        .says("Angle the belt lies on the pulley."),
    choice<&Pulley::side>("side", "side", side_names)
        .or_else(0, Source::chosen)
        .says("Whether it runs on the belt's face (ribs or grooves) or on its back."),
};
static_assert(std::size(pulley_table) == member_count<Pulley>());

constexpr FieldInfo belt_table[] = {
    choice<&Belt::section>("section", "section", section_names)
        .says("V-belt or ribbed belt. Told only: nothing is computed from it yet."),
    integer<&Belt::count>("count", "belts side by side")
        .from(1, 4)
        .or_else(1, Source::chosen)
        .says("How many equal belts run side by side."),
    quantity<&Belt::crank_diameter>("crank_diameter", "crank pulley", kind::length)
        .may_change()
        .in("in")
        .above(2, 20)
        .spread(Source::measured, {.absolute = 0.03})
        .spread(Source::stated, {.absolute = 0.03})
        .says("Pitch diameter of the crank pulley this belt runs on."),
    quantity<&Belt::tension>("tension", "tension", kind::force)
        .may_change()
        .in("lbf")
        .above(10, 500)
        .or_else(90)
        .spread(Source::typical, {.share = 0.25})
        .says("Tension of a strand at rest (fixed), or held in the slack strand (sprung).")
        .after("common practice: 80 to 100 lbf used, 110 to 140 lbf new"),
    choice<&Belt::tensioner>("tensioner", "tensioner", tensioner_names)
        .or_else(0, Source::chosen)
        .says("Fixed centres, or a sprung arm on the slack side."),
    number<&Belt::friction>("friction", "friction")
        .above(0.05, 1)
        .or_else(0.25)
        .spread(Source::typical, {.share = 0.15})
        .says("Belt on pulley.")
        .after("common practice, rubber on steel, warm"),
    quantity<&Belt::groove>("groove", "groove angle", kind::angle)
        .in("deg")
        .from(20, 180)
        .or_else(40, Source::chosen)
        .spread({})
        .says("Whole angle of the groove; 180 deg is flat.")
        .after("ISO 9981: 40 deg for ribbed belts; V-belts 36 to 40 deg"),
    list<&Belt::pulley>("pulley", "pulleys").says("What this belt drives."),
};
static_assert(std::size(belt_table) == member_count<Belt>());

constexpr FieldInfo table[] = {
    list<&Input::belt>("belt", "belts").says("Belts, by any names."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Pulley::fields() { return pulley_table; }
std::span<const FieldInfo> Belt::fields() { return belt_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::belts
