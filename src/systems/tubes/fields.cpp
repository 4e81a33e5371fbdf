#include "systems/tubes/tubes.hpp"

namespace sw::tubes {
namespace {

constexpr Spread by_calliper{.absolute = 0.002};  ///< in

constexpr FieldInfo end_table[] = {
    choice<&End::flare>("flare", "flare", form_names).says("What the tube's end is made into."),
    choice<&End::seat>("seat", "seat", form_names)
        .says("What it is drawn against: look into the fitting, or at its "
              "drawing."),
    choice<&End::nut>("nut", "nut", form_names)
        .decides_harm()
        .says("The kind of flare its nut is made for: 37 deg nuts have a sleeve, "
              "bubble nuts a flat end, inverted ones a cone."),
    quantity<&End::flared_to>("flared_to", "flared to", kind::length)
        .decides_harm()
        .in("in")
        .above(0.05, 3)
        .spread(Source::measured, by_calliper)
        .says("Greatest diameter of the flare."),
    integer<&End::attempts>("attempts", "times flared")
        .decides_harm()
        .from(1, 5)
        .says("How often this end was flared; an end that was drawn flat and flared again counts two."),
    quantity<&End::nut_torque>("nut_torque", "nut's torque", kind::torque)
        .in("lb-ft")
        .above(0, 200)
        .spread(Source::measured, {.share = 0.1})
        .says("What the nut was drawn up with."),
    quantity<&End::thread>("thread", "nut's thread", kind::length)
        .in("in")
        .above(0.1, 3)
        .spread({})
        .says("Outside diameter of the nut's thread."),
    quantity<&End::ring_radius>("ring_radius", "ring the nut presses", kind::length)
        .in("in")
        .above(0.02, 2)
        .spread(Source::measured, {.absolute = 0.01})
        .says("Radius of the ring a nut of another kind presses on the flare."),
    quantity<&End::straight>("straight", "straight it needs", kind::length)
        .in("in")
        .from(0, 6)
        .or_else(1.0)
        .spread(Source::typical, {.share = 0.25})
        .says("Straight tube from the finished end on: for the nut pushed back and the bar the flare is made in.")
        .after("common practice: 3/4 in for 3/16 in of tube to 1 1/4 in for 1/2 in"),
    quantity<&End::takes>("takes", "tube the flare takes", kind::length)
        .in("in")
        .from(0, 1)
        .or_else(0.1)
        .spread(Source::typical, {.absolute = 0.05})
        .says("By how much the tube grows shorter when this end is flared; of an end without a flare nothing is taken.")
        .after("common practice; flare a cut-off of known length and measure it"),
};
static_assert(std::size(end_table) == member_count<End>());

constexpr FieldInfo corner_table[] = {
    point_x<&Corner::x>(),
    point_y<&Corner::y>(),
    point_z<&Corner::z>(),
    quantity<&Corner::mark>("mark", "mark", kind::length)
        .in("in")
        .from(0, 600)
        .spread({})
        .says("Where its bend begins, along the cut tube from its start; `solve tube-bends` writes it."),
    quantity<&Corner::setting>("setting", "bender's setting", kind::angle)
        .in("deg")
        .above(0, 220)
        .spread({})
        .says("Angle the bender is drawn to, springback in it; `solve tube-bends` writes it."),
    quantity<&Corner::turn>("turn", "turn before it", kind::angle)
        .in("deg")
        .from(-180, 180)
        .spread({})
        .says("How far the tube is turned in the bender since the bend before: 0 bends on the same way, 180 the other; "
              "right-handed, looking along the tube from its start. `solve tube-bends` writes it."),
};
static_assert(std::size(corner_table) == member_count<Corner>());

constexpr FieldInfo tube_table[] = {
    choice<&Tube::material>("material", "material", material_names).decides_harm().says("Its material."),
    quantity<&Tube::outside>("outside", "outside", kind::length)
        .with(Tool::calliper)
        .in("in")
        .above(0.05, 3)
        .spread(Source::measured, by_calliper)
        .says("Outside diameter."),
    quantity<&Tube::wall>("wall", "wall", kind::length)
        .with(Tool::calliper)
        .in("in")
        .above(0.005, 0.3)
        .spread(Source::measured, by_calliper)
        .says("Wall."),
    quantity<&Tube::bend_radius>("bend_radius", "tightest bend", kind::length)
        .may_grow()
        .in("in")
        .above(0.1, 30)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Radius of its tightest bend, to the centre line: that of the die; instead of a `die` by name."),
    number<&Tube::elongation>("elongation", "elongation")
        .found(Station::desk)
        .with(Tool::data_sheet)
        .from(0.02, 0.8)
        .spread(Source::measured, {.share = 0.1})
        .says("Stretch to the break, by its data sheet; without it, to `tubes.usual_elongation`, 0.30 for steel, 0.40 for nickel-copper, 0.45 for "
              "annealed and 0.35 for hard stainless, 0.20 for aluminium.")
        .after("common practice"),
    quantity<&Tube::yield>("yield", "yield stress", kind::stress)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("ksi")
        .above(3, 200)
        .says("By its data sheet."),
    quantity<&Tube::tensile>("tensile", "tensile strength", kind::stress)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .decides_harm()
        .in("ksi")
        .above(5, 300)
        .says("Least tensile strength by its data sheet."),
    choice<&Tube::carries>("carries", "carries", carries_names).decides_harm().says("What runs in it."),
    quantity<&Tube::pressure>("pressure", "working pressure", kind::gauge_pressure)
        .decides_harm()
        .in("psi")
        .from(0, 6000)
        .says("Greatest pressure of its circuit: of a brake line that of a panic stop, of a fuel line that of a pump "
              "that sends nothing on."),
    text<&Tube::die>("die", "bent on").says("The die it is bent on, by its name in `tubes.die`."),
    list<&Tube::point>("point", "points")
        .says("Both ends of its centre line and the corners its straights would meet at, from start to end, by any "
              "names."),
    names<&Tube::beside>("beside", "clipped beside")
        .says("Tubes it shares its clips with: how near those run is not judged."),
    integer<&Tube::clips>("clips", "clips")
        .may_grow()
        .from(0, 60)
        .says("Clips along it, evenly spread between its ends, which hold it too."),
    quantity<&Tube::unsupported>("unsupported", "longest free span", kind::length)
        .in("in")
        .above(0, 200)
        .spread(Source::measured, {.absolute = 0.25})
        .says("Longest piece along it between two supports, as measured; instead of the clips' count."),
    quantity<&Tube::cut_length>("cut_length", "cut length", kind::length)
        .in("in")
        .above(0, 600)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Length it is cut to before it is flared and bent; `solve tube-bends` writes it."),
    text<&Tube::stick>("stick", "cut from")
        .says("Stick it is cut from: a name of `tubes.stock` and which of those, `brake_line 2`; `solve cut-list` "
              "writes it."),
    group<&Tube::start>("start", "start").says("Its one end."),
    group<&Tube::end>("end", "end").says("Its other end."),
};
static_assert(std::size(tube_table) == member_count<Tube>());

}  // namespace

std::span<const FieldInfo> End::fields() { return end_table; }
std::span<const FieldInfo> Corner::fields() { return corner_table; }
std::span<const FieldInfo> Tube::fields() { return tube_table; }

}  // namespace sw::tubes
