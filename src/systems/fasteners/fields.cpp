#include "systems/fasteners/fasteners.hpp"

namespace sw::fasteners {
namespace {

constexpr FieldInfo joint_table[] = {
    text<&Joint::thread>("thread", "thread").says("Of bolt or stud, as 1/2-20 or M12x1.5, by a thread gauge."),
    text<&Joint::hole>("hole", "thread of the hole")
        .says("Of hole or nut where it was gauged for itself; look-alikes of inch and metric start and then jam."),
    choice<&Joint::grade>("grade", "grade", grade_names)
        .decides_harm()
        .may_change()
        .says("SAE grade of an inch bolt by its head's lines (none 2, three 5, six 8), class of a metric one by its "
              "figures; one without marks where there should be some is of no known grade."),
    choice<&Joint::threads>("threads", "threads are", threads_names)
        .decides_harm()
        .may_change()
        .says("State of thread and seat as tightened: it decides how much of the torque becomes clamp. As they come is "
              "new and as delivered, neither cleaned nor oiled.")
        .after(
            "nut factors 0.20, 0.30, 0.20, 0.18, 0.16, 0.12: Shigley and Mischke, Mechanical Engineering Design, 5th "
            "ed., pp. 345-347, as a stored page tells its table"),
    number<&Joint::nut_factor>("nut_factor", "nut factor")
        .from(0.05, 0.6)
        .says("Torque over preload and diameter, where it was measured or the paste's maker tells it; instead of the "
              "state's."),
    number<&Joint::scatter>("scatter", "nut factor, found over taken")
        .from(0.5, 2)
        .or_else(1)
        .spread(Source::typical, {.share = 0.30})
        .spread(Source::measured, {.share = 0.10})
        .spread(Source::data_sheet, {.share = 0.20})
        .says("1; its doubt is how far a torque wrench's clamp scatters: 30 % by feel for the state, 20 % with the "
              "paste's own figure, 10 % where stretch was measured.")
        .after("common practice"),
    choice<&Joint::into>("into", "screwed into", into_names)
        .decides_harm()
        .says("A nut of the bolt's own grade, whole, or what is tapped."),
    quantity<&Joint::strength>("strength", "its tensile strength", kind::stress)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("ksi")
        .above(5, 250)
        .says("Of what is tapped, where it is known; else 60 ksi of steel, 31 of grey iron, 27 of cast aluminium, the "
              "least of plain sorts.")
        .after("mild steel, ASTM A48 class 30, sand-cast aluminium: from memory"),
    quantity<&Joint::engaged>("engaged", "thread engaged", kind::length)
        .with(Tool::calliper)
        .may_grow()
        .decides_harm()
        .in("in")
        .from(0, 6)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Length of full thread in the hole or nut, before any shims below; a bolt's length less what it passes "
              "through, or turns counted. Asked of all but a whole nut."),
    quantity<&Joint::shims>("shims", "shims added", kind::length)
        .with(Tool::calliper)
        .in("in")
        .from(0, 3)
        .or_else(0, Source::chosen)
        .spread(Source::measured, {.absolute = 0.005})
        .says(
            "Shims or a spacer put under the part since: thread lost. Those under belt brackets stand with the belt."),
    quantity<&Joint::torque>("torque", "torque", kind::torque)
        .may_change()
        .decides_harm()
        .in("lb-ft")
        .above(0, 1500)
        .spread(Source::measured, {.share = 0.04})
        .spread(Source::stated, {.share = 0.04})
        .says("As tightened or planned, each bolt; a wrench is good to some 4 %.")
        .after("ISO 6789-1: 4 %, from memory"),
    number<&Joint::share>("share", "share of proof wanted")
        .from(0.2, 1)
        .or_else(0.75, Source::chosen)
        .says("What the torque is looked for at: three quarters of the proof load where it is undone again.")
        .after("Shigley and Mischke, Mechanical Engineering Design: 75 % for joints that are undone, 90 % for others, "
               "from memory"),
    integer<&Joint::count>("count", "bolts")
        .from(1, 60)
        .or_else(1, Source::chosen)
        .says("How many of them share what it holds."),
    quantity<&Joint::clamp>("clamp", "clamp wanted", kind::force)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("lbf")
        .above(0, 500000)
        .says("By all together, from the maker of gasket, wheel or seat; without it half the proof load is the least."),
    quantity<&Joint::load>("load", "pulled apart by", kind::force)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .decides_harm()
        .in("lbf")
        .above(0, 500000)
        .says("Greatest force along the bolts that pulls the joint apart, all together."),
    yes_no<&Joint::to_yield>("to_yield", "tightened into yield")
        .decides_harm()
        .says("Whether its maker has it turned by an angle until it stretches for good; asked of one used before."),
    yes_no<&Joint::used_before>("used_before", "used before")
        .decides_harm()
        .says("Whether a bolt of that kind was tightened before."),
};
static_assert(std::size(joint_table) == member_count<Joint>());

constexpr FieldInfo table[] = {
    list<&Input::joint>("joint", "joints").says("Bolted joints, by any names: wheel, caliper, seat, pulley."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Joint::fields() { return joint_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::fasteners
