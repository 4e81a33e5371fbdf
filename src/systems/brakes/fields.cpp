#include "systems/brakes/brakes.hpp"

namespace sw::brakes {
namespace {

// Shapes of shoes of usual drums; a brake factor reckoned from them is as good as they are.
constexpr FieldInfo shape_table[] = {
    quantity<&ShoeShape::pivot>("pivot", "pivot to centre", kind::length)
        .in("in")
        .above(1, 8)
        .says("Shoe's pivot, or its far end where it floats, to the drum's centre."),
    quantity<&ShoeShape::lever>("lever", "lever", kind::length)
        .in("in")
        .above(1, 16)
        .says("Pivot to the line in which the cylinder pushes."),
    quantity<&ShoeShape::start>("start", "lining begins", kind::angle)
        .in("deg")
        .from(0, 90)
        .or_else(25)
        .spread(Source::typical, {.absolute = 5})
        .says("From the line through pivot and centre to the near end of the lining.")
        .after("common practice"),
    quantity<&ShoeShape::end>("end", "lining ends", kind::angle)
        .in("deg")
        .from(60, 170)
        .or_else(130)
        .spread(Source::typical, {.absolute = 5})
        .says("From the same line to its far end.")
        .after("common practice"),
};
static_assert(std::size(shape_table) == member_count<ShoeShape>());

constexpr FieldInfo heat_table[] = {
    quantity<&Heat::mass>("mass", "mass", kind::mass)
        .may_grow()
        .in("lb")
        .above(2, 80)
        .decides_harm()
        .spread(Source::measured, {.share = 0.02})
        .says("Of one rotor's friction ring, or of one drum: what takes up the heat. Worn ones weigh less."),
    quantity<&Heat::specific_heat>("specific_heat", "specific heat", kind::specific_heat)
        .in("J/(kg K)")
        .from(300, 1000)
        .or_else(460)
        .spread(Source::typical, {.share = 0.05})
        .says("Of its metal.")
        .after("common practice: cast iron"),
    quantity<&Heat::standing>("standing", "cooling at rest", kind::thermal_conductance)
        .in("W/K")
        .from(0.5, 60)
        .or_else(5)
        .spread(Source::typical, {.share = 0.4})
        .says("Heat one rotor or drum gives to still air and hub for each kelvin, radiation apart.")
        .after("common practice"),
    quantity<&Heat::moving>("moving", "cooling by travel", kind::thermal_conductance)
        .in("W/K")
        .from(1, 200)
        .or_else(15)
        .spread(Source::typical, {.share = 0.4})
        .says("What travel adds to it at 80 km/h; it grows with the 0.8th power of speed.")
        .after("common practice: 8 to 12 solid rotors and drums, 15 to 30 W/K vented rotors with air to them"),
    quantity<&Heat::surface>("surface", "surface that shines", kind::area)
        .in("m2")
        .from(0, 1)
        .or_else(0.12)
        .spread(Source::typical, {.share = 0.3})
        .says("Outer surface of one, for the heat it radiates.")
        .after("common practice"),
    quantity<&Heat::highest>("highest", "highest temperature", kind::temperature)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("degC")
        .from(150, 900)
        .says("What pads or linings and metal stand again and again; where it is not given 450 degC for a disc, 320 "
              "degC for a drum.")
        .after("common practice, organic linings"),
    number<&Heat::fluid_share>("fluid_share", "fluid's share of the rise")
        .from(0.02, 0.9)
        .or_else(0.4)
        .spread(Source::typical, {.share = 0.25})
        .says("How far the fluid in the cylinder follows the metal's rise over the air, as a share, once warmed.")
        .after("common practice"),
    curve<&Heat::fade>("fade", "friction hot over cold", kind::temperature, kind::number)
        .in("degC", "")
        .from(0, 1.5)
        .says("Friction against the metal's temperature over that of a cold stop; a usual organic lining's where it is "
              "not given."),
};
static_assert(std::size(heat_table) == member_count<Heat>());

constexpr FieldInfo axle_table[] = {
    choice<&Axle::make>("make", "make", make_names).says("Disc or drum."),
    quantity<&Axle::piston>("piston", "piston diameter", kind::length)
        .may_change()
        .in("in")
        .above(0.5, 4)
        .spread(Source::measured, {.absolute = 0.002})
        .spread(Source::stated, {.absolute = 0.005})
        .says("Bore of a caliper or wheel cylinder."),
    integer<&Axle::pistons>("pistons", "pistons on one side")
        .from(1, 6)
        .or_else(1, Source::chosen)
        .says("Pistons on one side of one caliper; of a drum those on one shoe."),
    yes_no<&Axle::opposed>("opposed", "opposed pistons")
        .or_else(0, Source::chosen)
        .says("Whether a fixed caliper has as many pistons on its other side; a sliding one has not."),
    number<&Axle::friction>("friction", "friction")
        .with(Tool::eye)
        .from(0.15, 0.7)
        .or_else(0.36)
        .spread(Source::typical, {.share = 0.1})
        .spread(Source::stated, {.share = 0.05})
        .spread(Source::data_sheet, {.share = 0.05})
        .says("Pad or lining on its metal, warm.")
        .after("common practice: 0.33 to 0.40"),
    quantity<&Axle::radius>("radius", "working radius", kind::length)
        .in("in")
        .above(2, 9)
        .spread(Source::measured, {.absolute = 0.03})
        .says("Disc: wheel's centre to the middle of the pad. Drum: half its inside diameter."),
    choice<&Axle::shoes>("shoes", "shoes", shoes_names).says("How the shoes of a drum stand to its turning."),
    number<&Axle::factor>("factor", "brake factor")
        .above(0.5, 12)
        .spread(Source::stated, {.share = 0.08})
        .spread(Source::typical, {.share = 0.2})
        .says("Drag of all shoes of a drum over one piston's force; where it is not given it comes of friction and "
              "`shape`."),
    group<&Axle::shape>("shape", "shape of the shoes").says("Figures for a brake factor that nobody states."),
    quantity<&Axle::touch_pressure>("touch_pressure", "pressure at touch", kind::gauge_pressure)
        .in("psi")
        .from(0, 150)
        .or_else(0, Source::chosen)
        .says("Line pressure that the return springs of the shoes eat.")
        .after("common practice: discs 0 to 5, drums up to 60 psi"),
    quantity<&Axle::clearance>("clearance", "clearance", kind::length)
        .with(Tool::feeler)
        .may_change()
        .in("in")
        .from(0, 0.2)
        .or_else(0.006)
        .spread(Source::typical, {.share = 0.3})
        .says("Free way of each piston before pad or shoe touches: roll-back, knock-back, run-out.")
        .after("common practice: discs 0.004 to 0.010, drums in adjustment 0.02 to 0.04 in"),
    quantity<&Axle::give>("give", "give at 900 psi", kind::length)
        .in("in")
        .from(0, 0.2)
        .or_else(0.02)
        .spread(Source::typical, {.share = 0.3})
        .says("Way of each piston at 900 psi beyond touch: pad or lining, caliper or drum.")
        .after("common practice: sliding calipers 0.015 to 0.025 in"),
    quantity<&Axle::line_give>("line_give", "give of the lines at 900 psi", kind::volume)
        .in("in3")
        .from(0, 0.5)
        .or_else(0.03)
        .spread(Source::typical, {.share = 0.3})
        .says("What hoses, tubes and the fluid itself of this axle take up at 900 psi.")
        .after("common practice"),
    quantity<&Axle::fluid>("fluid", "fluid", kind::volume)
        .in("in3")
        .above(0.5, 40)
        .says("Fluid in this axle's cylinders and lines."),
    quantity<&Axle::retreat>("retreat", "greatest retreat", kind::length)
        .in("in")
        .from(0, 0.1)
        .or_else(0.02)
        .spread(Source::typical, {.share = 0.2})
        .says("How far a seal lets a caliper's piston creep back when the fluid pulls.")
        .after("common practice, square-cut seals"),
    quantity<&Axle::wear>("wear", "wear of a pair", kind::length)
        .in("in")
        .above(0, 2)
        .spread(Source::measured, {.absolute = 0.01})
        .says("What both pads of a caliper lose from new to worn out."),
    quantity<&Axle::reservoir>("reservoir", "reservoir", kind::volume)
        .may_change()
        .in("in3")
        .above(0.2, 60)
        .says("Fluid that the reservoir holds for this axle."),
    quantity<&Axle::reservoir_above>("reservoir_above", "reservoir over the brakes", kind::length)
        .in("in")
        .from(-40, 60)
        .spread({.absolute = 0.2})
        .decides_harm()
        .says("Fluid level over this axle's highest piston; below 0 where it stands lower."),
    quantity<&Axle::residual>("residual", "residual valve", kind::gauge_pressure)
        .with(Tool::pressure_gauge)
        .in("psi")
        .from(0, 30)
        .spread({.share = 0.15})
        .decides_harm()
        .says("Pressure a residual valve of this axle keeps, wherever it sits; 0 where there is none."),
    choice<&Axle::cups>("cups", "cups", cups_names)
        .says("Whether the wheel cylinders' cups are plain, or held to the bore by expanders."),
    quantity<&Axle::hose_slack>("hose_slack", "slack of the hoses", kind::length)
        .in("in")
        .from(-6, 20)
        .spread({.absolute = 0.1})
        .decides_harm()
        .says("What is left of this axle's hoses, stretched least well: at droop, at lock, at bump."),
    group<&Axle::heat>("heat", "heat").says("What its rotors or drums take up and shed."),
};
static_assert(std::size(axle_table) == member_count<Axle>());

constexpr FieldInfo pedal_table[] = {
    number<&Pedal::ratio>("ratio", "pedal ratio")
        .with(Tool::tape)
        .may_change()
        .from(1, 10)
        .spread(Source::measured, {.share = 0.01})
        .says("Foot travel over push-rod travel."),
    quantity<&Pedal::travel>("travel", "pedal travel", kind::length)
        .in("in")
        .above(2, 12)
        .spread(Source::measured, {.absolute = 0.05})
        .decides_harm()
        .says("Travel of the pad from rest to the floor, carpet in place."),
    quantity<&Pedal::rod_length>("rod_length", "input rod", kind::length)
        .in("in")
        .above(1, 20)
        .spread({.absolute = 0.05})
        .says("Pedal's pin to the ball in booster or master cylinder."),
    quantity<&Pedal::rod_offset>("rod_offset", "rod's offset", kind::length)
        .with(Tool::rule)
        .may_change()
        .in("in")
        .from(0, 10)
        .spread({.absolute = 0.05})
        .decides_harm()
        .says("Pedal's pin off the centre line of booster or master cylinder, at its worst."),
};
static_assert(std::size(pedal_table) == member_count<Pedal>());

constexpr FieldInfo booster_table[] = {
    yes_no<&Booster::fitted>("fitted", "booster fitted").says("Whether a vacuum booster stands behind the master."),
    quantity<&Booster::area>("area", "diaphragm area", kind::area)
        .may_change()
        .in("in2")
        .above(10, 200)
        .spread(Source::stated, {.share = 0.05})
        .says("Effective area of all diaphragms together; else `diameter` and `diaphragms`."),
    quantity<&Booster::diameter>("diameter", "effective diameter", kind::length)
        .in("in")
        .above(3, 14)
        .spread(Source::stated, {.share = 0.02})
        .says("Effective diameter of one diaphragm: some 8 % less than the shell's."),
    integer<&Booster::diaphragms>("diaphragms", "diaphragms")
        .from(1, 2)
        .or_else(1, Source::chosen)
        .says("One or two, one behind the other."),
    number<&Booster::gain>("gain", "gain")
        .from(1, 12)
        .or_else(4)
        .spread(Source::typical, {.share = 0.15})
        .says("Output over push-rod force before run-out.")
        .after("common practice: 3 to 6"),
    quantity<&Booster::spring>("spring", "return spring", kind::force)
        .in("lbf")
        .from(0, 120)
        .or_else(25)
        .spread(Source::typical, {.share = 0.3})
        .says("Force of its return spring as it works.")
        .after("common practice"),
    number<&Booster::efficiency>("efficiency", "efficiency")
        .from(0.7, 1)
        .or_else(0.95)
        .spread(Source::typical, {.absolute = 0.03})
        .says("Share of vacuum times area that reaches the rod.")
        .after("common practice"),
    quantity<&Booster::rod_gap>("rod_gap", "rod gap", kind::length)
        .with(Tool::feeler)
        .may_change()
        .in("in")
        .from(-0.3, 0.3)
        .spread({.absolute = 0.003})
        .decides_harm()
        .says("Output rod to the master's piston at rest; below 0 where the rod presses it."),
};
static_assert(std::size(booster_table) == member_count<Booster>());

constexpr FieldInfo master_table[] = {
    quantity<&Master::bore>("bore", "master bore", kind::length)
        .may_change()
        .in("in")
        .above(0.4, 2)
        .spread({.absolute = 0.001})
        .says("Bore of the master cylinder."),
    quantity<&Master::stroke>("stroke", "master stroke", kind::length)
        .in("in")
        .above(0.3, 4)
        .spread(Source::measured, {.absolute = 0.01})
        .says("Whole stroke of the push rod, both chambers."),
    quantity<&Master::front_chamber>("front_chamber", "front's chamber", kind::length)
        .decides_harm()
        .in("in")
        .above(0.1, 3)
        .says("Stroke of the chamber that feeds the front, or of either where the split is diagonal."),
    quantity<&Master::take_up>("take_up", "take-up", kind::length)
        .in("in")
        .from(0, 0.4)
        .or_else(0.06)
        .spread(Source::typical, {.absolute = 0.02})
        .says("Stroke before both ports are closed, the rod's gap among it.")
        .after("common practice"),
    quantity<&Master::port_travel>("port_travel", "way to the port", kind::length)
        .in("in")
        .above(0, 0.2)
        .or_else(0.035)
        .spread(Source::typical, {.absolute = 0.01})
        .says("How far the piston may be held off its stop before the compensating port stays covered.")
        .after("common practice"),
    quantity<&Master::hot_rise>("hot_rise", "rise of shut-in fluid", kind::temperature_step)
        .in("K")
        .from(5, 150)
        .or_else(40, Source::chosen)
        .says("Rise at which fluid shut in by a covered port is looked at.")
        .after("common practice: a quarter of an hour of stop and go"),
};
static_assert(std::size(master_table) == member_count<Master>());

constexpr FieldInfo valve_table[] = {
    choice<&Valve::acts>("acts", "acts", acts_names)
        .or_else(0, Source::chosen)
        .says("Reduces above its knee (proportioning), or holds off below it (metering)."),
    yes_no<&Valve::front>("front", "in the front's line")
        .or_else(0, Source::chosen)
        .says("Whether it stands in the front's line instead of the rear's."),
    quantity<&Valve::knee>("knee", "knee", kind::gauge_pressure)
        .found(Station::wheels_off)
        .with(Tool::pressure_gauge)
        .may_change()
        .in("psi")
        .from(0, 3000)
        .says("Line pressure at which it begins to act; of a metering valve that at which it opens."),
    number<&Valve::slope>("slope", "slope")
        .found(Station::wheels_off)
        .with(Tool::pressure_gauge)
        .may_change()
        .from(0, 1)
        .spread(Source::stated, {.share = 0.05})
        .says("Outlet's rise over the inlet's above the knee; 1 where it does not reduce."),
    quantity<&Valve::full>("full", "full pressure", kind::gauge_pressure)
        .in("psi")
        .above(0, 3000)
        .says("Of a metering valve: line pressure from which it lets all through."),
    quantity<&Valve::laden_knee>("laden_knee", "knee laden", kind::gauge_pressure)
        .may_change()
        .in("psi")
        .from(0, 5000)
        .says("Of a valve that feels the load: its knee with the laden car."),
    yes_no<&Valve::opens_alone>("opens_alone", "opens when the other circuit fails")
        .or_else(0, Source::chosen)
        .says("Whether the block lets all pressure past it once the other circuit is lost, as many combination valves "
              "do."),
};
static_assert(std::size(valve_table) == member_count<Valve>());

constexpr FieldInfo lamp_table[] = {
    choice<&Lamp::by>("by", "worked by", switch_names).decides_harm().says("What closes the brake lamps' switch."),
    quantity<&Lamp::travel>("travel", "pedal travel to close", kind::length)
        .may_change()
        .in("in")
        .from(0, 4)
        .spread({.absolute = 0.03})
        .decides_harm()
        .says("Travel of the pad at which it closes."),
    quantity<&Lamp::force>("force", "pedal force to close", kind::force)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("lbf")
        .from(0, 100)
        .decides_harm()
        .says("Force on the pad at which a switch in the push rod's eye closes."),
    quantity<&Lamp::pressure>("pressure", "pressure to close", kind::gauge_pressure)
        .found(Station::desk)
        .with(Tool::data_sheet)
        .in("psi")
        .from(0, 500)
        .decides_harm()
        .says("Line pressure at which a hydraulic switch closes."),
};
static_assert(std::size(lamp_table) == member_count<Lamp>());

constexpr FieldInfo parking_table[] = {
    choice<&Parking::by>("by", "worked by", limb_names).decides_harm().says("Hand or foot."),
    number<&Parking::leverage>("leverage", "leverage")
        .with(Tool::spring_balance)
        .may_change()
        .above(1, 200)
        .decides_harm()
        .says("Force on the shoes or pads of both rear wheels together over that of hand or foot, cables' friction "
              "off."),
    number<&Parking::factor>("factor", "brake factor")
        .with(Tool::spring_balance)
        .above(0.2, 10)
        .decides_harm()
        .says("Drag over that force: of a disc twice its friction, of a drum less than its factor when driven by a "
              "cylinder."),
    quantity<&Parking::radius>("radius", "working radius", kind::length)
        .in("in")
        .above(2, 9)
        .says("Where it is not the rear brake's own."),
};
static_assert(std::size(parking_table) == member_count<Parking>());

constexpr FieldInfo fill_table[] = {
    choice<&Fill::grade>("grade", "grade", fluid_names).decides_harm().says("Fluid it is filled with."),
    choice<&Fill::before>("before", "grade before", fluid_names)
        .decides_harm()
        .says("Fluid that stood in any part that is kept; the same as `grade` where all is new."),
    yes_no<&Fill::cleaned>("cleaned", "cleaned out")
        .or_else(0, Source::chosen)
        .says("Whether every kept part was taken apart, washed with spirit and given new rubber."),
    number<&Fill::water>("water", "water in the fluid")
        .with(Tool::fluid_tester)
        .decides_harm()
        .from(0, 0.08)
        .spread(Source::measured, {.absolute = 0.003})
        .spread(Source::stated, {.absolute = 0.01})
        .says("Share of water as tested at the bleeders, the worst of them; 0 only for fluid just out of a sealed can "
              "with every line flushed."),
};
static_assert(std::size(fill_table) == member_count<Fill>());

constexpr FieldInfo table[] = {
    choice<&Input::split>("split", "circuits", split_names)
        .found(Station::underneath)
        .decides_harm()
        .says("One circuit for all wheels, one an axle, or one for each diagonal."),
    group<&Input::pedal>("pedal", "pedal").found(Station::seat).says("The pedal and its rod."),
    group<&Input::booster>("booster", "booster").found(Station::engine_bay).says("Vacuum booster."),
    group<&Input::master>("master", "master cylinder").found(Station::engine_bay).says("Master cylinder."),
    list<&Input::valve>("valve", "valves")
        .found(Station::wheels_off)
        .says("Valves in the lines, those in one line in the order the fluid meets them."),
    group<&Input::front>("front", "front brakes").says("Both front brakes."),
    group<&Input::rear>("rear", "rear brakes").says("Both rear brakes."),
    group<&Input::lamp>("lamp", "brake lamps' switch").found(Station::seat).says("What switches the brake lamps."),
    group<&Input::parking>("parking", "parking brake").found(Station::seat).says("Parking brake, on the rear wheels."),
    group<&Input::fill>("fill", "fluid").found(Station::engine_bay).says("What the system is filled with."),
    yes_no<&Input::difference_warning>("difference_warning", "pressure-difference warning")
        .found(Station::seat)
        .decides_harm()
        .says("Whether a lamp tells when one circuit has no pressure or its reservoir is low."),
    quantity<&Input::hose_rating>("hose_rating", "hoses' rating", kind::gauge_pressure)
        .found(Station::underneath)
        .with(Tool::eye)
        .in("psi")
        .above(200, 10000)
        .decides_harm()
        .says("Working pressure of the weakest hose; without one, a quarter of the burst pressure on its sheet."),
    quantity<&Input::tube_rating>("tube_rating", "tubes' rating", kind::gauge_pressure)
        .found(Station::underneath)
        .with(Tool::eye)
        .in("psi")
        .above(200, 20000)
        .decides_harm()
        .says("Working pressure of the weakest tube and its ends; without one, a quarter of the burst pressure."),
    number<&Input::dry_adhesion>("dry_adhesion", "adhesion, dry")
        .from(0.4, 1.3)
        .or_else(0.85)
        .spread(Source::typical, {.absolute = 0.05})
        .says("Greatest braking force of the tyres on a dry road over the load they carry.")
        .after("common practice: street tyres 0.8 to 0.95"),
    number<&Input::wet_adhesion>("wet_adhesion", "adhesion, wet")
        .from(0.1, 0.9)
        .or_else(0.5)
        .spread(Source::typical, {.absolute = 0.1})
        .says("The same on a wet road.")
        .after("common practice: 0.4 to 0.6"),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> ShoeShape::fields() { return shape_table; }
std::span<const FieldInfo> Axle::fields() { return axle_table; }
std::span<const FieldInfo> Pedal::fields() { return pedal_table; }
std::span<const FieldInfo> Booster::fields() { return booster_table; }
std::span<const FieldInfo> Master::fields() { return master_table; }
std::span<const FieldInfo> Valve::fields() { return valve_table; }
std::span<const FieldInfo> Lamp::fields() { return lamp_table; }
std::span<const FieldInfo> Parking::fields() { return parking_table; }
std::span<const FieldInfo> Heat::fields() { return heat_table; }
std::span<const FieldInfo> Fill::fields() { return fill_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::brakes
