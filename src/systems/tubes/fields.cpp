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
        .says("The kind of flare its nut is made for: 37 deg nuts have a sleeve, "
              "bubble nuts a flat end, inverted ones a cone."),
    quantity<&End::flared_to>("flared_to", "flared to", kind::length)
        .in("in")
        .above(0.05, 3)
        .spread(Source::measured, by_calliper)
        .says("Greatest diameter of the flare."),
    integer<&End::attempts>("attempts", "times flared")
        .from(1, 5)
        .or_else(1, Source::chosen)
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
};
static_assert(std::size(end_table) == member_count<End>());

constexpr FieldInfo tube_table[] = {
    choice<&Tube::material>("material", "material", material_names).or_else(0, Source::chosen).says("Its material."),
    quantity<&Tube::outside>("outside", "outside", kind::length)
        .in("in")
        .above(0.05, 3)
        .spread(Source::measured, by_calliper)
        .says("Outside diameter."),
    quantity<&Tube::wall>("wall", "wall", kind::length)
        .in("in")
        .above(0.005, 0.3)
        .spread(Source::measured, by_calliper)
        .says("Wall."),
    quantity<&Tube::bend_radius>("bend_radius", "tightest bend", kind::length)
        .may_grow()
        .in("in")
        .above(0.1, 30)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Radius of its tightest bend, to the centre line: that of the die."),
    number<&Tube::elongation>("elongation", "elongation")
        .found(Station::desk)
        .with(Tool::data_sheet)
        .from(0.02, 0.8)
        .spread(Source::measured, {.share = 0.1})
        .says("Stretch to the break, by its data sheet; without it 0.30 for steel, 0.40 for nickel-copper, 0.45 for "
              "annealed and 0.35 for hard stainless, 0.20 for aluminium.")
        .after("common practice"),
    quantity<&Tube::yield>("yield", "yield stress", kind::stress).in("ksi").above(3, 200).says("By its data sheet."),
    group<&Tube::start>("start", "start").says("Its one end."),
    group<&Tube::end>("end", "end").says("Its other end."),
};
static_assert(std::size(tube_table) == member_count<Tube>());

constexpr FieldInfo table[] = {
    list<&Input::tube>("tube", "tubes").says("Hard lines by any names: `brake_front_left`, `fuel_feed`."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> End::fields() { return end_table; }
std::span<const FieldInfo> Tube::fields() { return tube_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::tubes
