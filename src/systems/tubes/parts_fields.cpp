// What stands beside the tubes: dies, hot parts, sticks, hoses, brackets.
#include "physics/sheet_bend.hpp"
#include "systems/tubes/tubes.hpp"

namespace sw::tubes {
namespace {

constexpr FieldInfo die_table[] = {
    quantity<&Die::radius>("radius", "radius", kind::length)
        .may_grow()
        .in("in")
        .above(0.1, 30)
        .spread(Source::measured, {.absolute = 0.01})
        .says("To the tube's centre line."),
    quantity<&Die::straight>("straight", "straight it grips", kind::length)
        .in("in")
        .from(0, 12)
        .spread(Source::measured, {.absolute = 0.05})
        .says("Least straight between two bends, for its clamp; without it two diameters of the tube.")
        .after("common practice"),
    quantity<&Die::bent_to>("bent_to", "trial bend set to", kind::angle)
        .in("deg")
        .above(10, 200)
        .spread(Source::measured, {.absolute = 0.3})
        .says("Setting of a trial bend of the tube this die is for; one entry a tube, where one die bends two kinds."),
    quantity<&Die::came_to>("came_to", "trial bend came to", kind::angle)
        .in("deg")
        .above(5, 200)
        .spread(Source::measured, {.absolute = 0.3})
        .says("Angle that bend had when the die was open, measured on the tube."),
};
static_assert(std::size(die_table) == member_count<Die>());

constexpr FieldInfo hot_table[] = {
    group<&Hot::from>("from", "from").says("One end of its middle."),
    group<&Hot::to>("to", "to").says("The other end; of a round lump the same point."),
    quantity<&Hot::radius>("radius", "radius", kind::length)
        .with(Tool::calliper)
        .in("in")
        .from(0, 30)
        .spread(Source::measured, {.absolute = 0.1})
        .says("How far its surface reaches from that middle, at the most."),
    quantity<&Hot::wanted>("wanted", "distance wanted", kind::length)
        .in("in")
        .from(0, 30)
        .says("Where its maker or the line's asks for one; without it 3 in for brake fluid, fuel and vapour, 2 in for "
              "vacuum, 1 in else, and 1 in or less behind a shield.")
        .after("common practice"),
    yes_no<&Hot::shielded>("shielded", "shielded")
        .may_change()
        .or_else(0, Source::chosen)
        .says("Whether a shield with an air gap stands between it and the lines."),
};
static_assert(std::size(hot_table) == member_count<Hot>());

constexpr FieldInfo stock_table[] = {
    choice<&Stock::material>("material", "material", material_names).or_else(0, Source::chosen).says("Its material."),
    quantity<&Stock::outside>("outside", "outside", kind::length)
        .in("in")
        .above(0.05, 3)
        .spread({})
        .says("Outside diameter."),
    quantity<&Stock::wall>("wall", "wall", kind::length).in("in").above(0.005, 0.3).spread({}).says("Wall."),
    quantity<&Stock::length>("length", "length", kind::length)
        .in("ft")
        .above(0.1, 200)
        .spread({.absolute = 0.02})
        .says("Length of one stick."),
    integer<&Stock::count>("count", "sticks on hand").from(0, 500).or_else(1, Source::chosen).says("How many."),
};
static_assert(std::size(stock_table) == member_count<Stock>());

constexpr FieldInfo position_table[] = {
    quantity<&Position::path>("path", "its way", kind::length)
        .in("in")
        .above(0, 200)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Shortest way it could take between its ends there, fitting to fitting, by a cord laid where it runs."),
};
static_assert(std::size(position_table) == member_count<Position>());

constexpr FieldInfo hose_table[] = {
    choice<&Hose::carries>("carries", "carries", carries_names).decides_harm().says("What runs in it."),
    quantity<&Hose::length>("length", "free length", kind::length)
        .may_grow()
        .in("in")
        .above(0, 200)
        .spread(Source::measured, {.absolute = 0.1})
        .says("Of the hose between its fittings, lying straight."),
    quantity<&Hose::bend_radius>("bend_radius", "tightest bend", kind::length)
        .in("in")
        .above(0, 60)
        .spread(Source::measured, {.absolute = 0.1})
        .says("Radius of its tightest bend as it lies, in its worst position."),
    quantity<&Hose::least_radius>("least_radius", "least radius", kind::length)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .decides_harm()
        .in("in")
        .above(0, 60)
        .spread({})
        .says("Least bend radius by its maker, measured in the same way: to its inside or its middle."),
    list<&Hose::position>("position", "positions")
        .says("Where its ends come to: `ride`, `droop`, `lock`, `engine_rolled`. Of a brake hose leave them out: its "
              "slack stands with its axle."),
};
static_assert(std::size(hose_table) == member_count<Hose>());

constexpr FieldInfo flange_table[] = {
    quantity<&Flange::length>("length", "length", kind::length)
        .in("in")
        .above(0, 60)
        .spread(Source::measured, {.absolute = 0.02})
        .says("Outside, to where its outer face meets that of the next."),
    quantity<&Flange::angle>("angle", "bend after it", kind::angle)
        .in("deg")
        .above(0, 170)
        .or_else(90, Source::chosen)
        .spread(Source::measured, {.absolute = 1})
        .says("How far the sheet is turned between it and the next flange; of the last one it means nothing."),
};
static_assert(std::size(flange_table) == member_count<Flange>());

constexpr FieldInfo hole_table[] = {
    text<&Hole::flange>("flange", "in flange").says("The flange it is in."),
    quantity<&Hole::along>("along", "along the flange", kind::length)
        .in("in")
        .from(0, 60)
        .spread(Source::measured, {.absolute = 0.02})
        .says(
            "Its middle from where the flange begins: the free edge of the first, the outer face before it of others."),
    quantity<&Hole::diameter>("diameter", "diameter", kind::length).in("in").above(0, 10).says("Of the hole."),
};
static_assert(std::size(hole_table) == member_count<Hole>());

constexpr FieldInfo bracket_table[] = {
    choice<&Bracket::material>("material", "sheet", sheet_names)
        .or_else(0, Source::chosen)
        .says("What it is bent from."),
    quantity<&Bracket::thickness>("thickness", "thickness", kind::length)
        .in("in")
        .above(0.01, 0.5)
        .spread(Source::measured, {.absolute = 0.002})
        .says("Of the sheet."),
    quantity<&Bracket::radius>("radius", "inside radius", kind::length)
        .may_grow()
        .in("in")
        .above(0, 3)
        .spread(Source::measured, {.absolute = 0.02})
        .says("Of its bends, on the inside."),
    quantity<&Bracket::deduction>("deduction", "deduction measured", kind::length)
        .in("in")
        .from(-1, 2)
        .spread(Source::measured, {.absolute = 0.01})
        .says(
            "What the two flanges of a right-angled trial bend of this sheet and radius are longer, outside, than the "
            "flat was; without it the neutral line at 0.45 of the thickness.")
        .after("US Navy, aircraft structural work: 0.0173 R + 0.0078 t a degree"),
    list<&Bracket::flange>("flange", "flanges").says("Its flanges in order from one free edge to the other."),
    list<&Bracket::hole>("hole", "holes").says("Its holes."),
    quantity<&Bracket::flat_length>("flat_length", "flat length", kind::length)
        .in("in")
        .above(0, 200)
        .spread(Source::measured, {.absolute = 0.02})
        .says("Length the strip is cut to; `solve flat-pattern` writes it."),
};
static_assert(std::size(bracket_table) == member_count<Bracket>());

constexpr FieldInfo table[] = {
    list<&Input::tube>("tube", "tubes").says("Hard lines by any names: `brake_front_left`, `fuel_feed`."),
    list<&Input::die>("die", "dies")
        .found(Station::bench)
        .says("The bender's dies by any names, one for each tube they bend."),
    list<&Input::hot>("hot", "hot parts").says("Headers, pipes, mufflers, each as a round bar between two points."),
    list<&Input::stock>("stock", "sticks").found(Station::bench).says("Straight tube on hand, by any names."),
    quantity<&Input::kerf>("kerf", "lost in a cut", kind::length)
        .in("in")
        .from(0, 0.5)
        .or_else(0.05)
        .spread(Source::typical, {.absolute = 0.05})
        .says("Length a cut and its squared end take off the stick; a wheel cutter hardly any.")
        .after("common practice"),
    list<&Input::hose>("hose", "hoses").says("Flexible lines by any names."),
    list<&Input::bracket>("bracket", "brackets")
        .found(Station::bench)
        .says("Brackets bent from a strip of sheet, by any names."),
    number<&Input::usual_elongation>("usual_elongation", "stretch over the usual one")
        .from(0.5, 1.5)
        .or_else(1)
        .spread(Source::typical, {.share = 0.2})
        .says("Stretch to the break over the usual one of the material; carries its doubt for tubes whose `elongation` "
              "nobody told.")
        .after("common practice"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Die::fields() { return die_table; }
std::span<const FieldInfo> Hot::fields() { return hot_table; }
std::span<const FieldInfo> Stock::fields() { return stock_table; }
std::span<const FieldInfo> Position::fields() { return position_table; }
std::span<const FieldInfo> Hose::fields() { return hose_table; }
std::span<const FieldInfo> Flange::fields() { return flange_table; }
std::span<const FieldInfo> Hole::fields() { return hole_table; }
std::span<const FieldInfo> Bracket::fields() { return bracket_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::tubes
