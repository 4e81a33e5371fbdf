#include "systems/gauges/gauges.hpp"

namespace sw::gauges {
namespace {

/// What differs between gauges of fuel, temperature and pressure: kind, unit and bounds.
struct Terms {
  const Kind& kind;
  const Kind& step;
  std::string_view unit, step_unit;
  double low, high, most_step;
  std::span<const std::string_view> families;
};
template <class D>
constexpr Terms terms_of = {kind::number, kind::number, "", "", 0, 1, 1, end_family_names};
template <>
constexpr Terms terms_of<TemperatureDial> = {
    kind::temperature, kind::temperature_step, "degF", "degF", -60, 600, 200, thermistor_family_names};
template <>
constexpr Terms terms_of<PressureDial> = {kind::gauge_pressure, kind::pressure_difference, "psi", "psi", 0, 3000, 300,
                                          end_family_names};

/// A member in what the gauge shows.
template <auto M>
consteval FieldInfo in_scale(std::string_view key, std::string_view label) {
  using D = field_detail::OwnerOf<M>;
  constexpr Terms t = terms_of<D>;
  if constexpr (std::is_same_v<typename field_detail::TypeOf<M>::value_type, double>)
    return number<M>(key, label).from(t.low, t.high).spread({});
  else
    return quantity<M>(key, label, t.kind).in(t.unit).from(t.low, t.high).spread({});
}
template <auto M>
consteval FieldInfo step_of(std::string_view key, std::string_view label) {
  using D = field_detail::OwnerOf<M>;
  constexpr Terms t = terms_of<D>;
  if constexpr (std::is_same_v<typename field_detail::TypeOf<M>::value_type, double>)
    return number<M>(key, label).from(-t.most_step, t.most_step);
  else
    return quantity<M>(key, label, t.step).in(t.step_unit).from(-t.most_step, t.most_step);
}
template <auto M>
consteval FieldInfo ohms_against(std::string_view key, std::string_view label) {
  constexpr Terms t = terms_of<field_detail::OwnerOf<M>>;
  return curve<M>(key, label, t.kind, kind::resistance).in(t.unit, "ohm").from(0, 100000);
}
template <auto M>
consteval FieldInfo ohms(std::string_view key, std::string_view label) {
  return quantity<M>(key, label, kind::resistance).in("ohm").from(0, 1e6);
}

template <class D>
constexpr FieldInfo dial_table[] = {
    choice<&D::how>("how", "reads as", how_names)
        .says("Bimetal: a heated strip that goes by the mean current. Balance: two coils that go by the ratio. "
              "Electronic: a pull-up and a table."),
    in_scale<&D::low>("low", "low end of the scale").says("Where the scale begins; without it where its curve does."),
    in_scale<&D::high>("high", "high end of the scale").says("Where the scale ends; without it where its curve does."),
    in_scale<&D::usual>("usual", "usual reading")
        .says("True value at which it stands on most days; judged on its own."),
    choice<&D::expects_family>("expects_family", "made for senders of", terms_of<D>.families)
        .says("Family the gauge is drawn for, by its ohms at the low and the high end; its own curve goes before it.")
        .after("common practice"),
    ohms_against<&D::expects>("expects", "gauge curve")
        .found(Station::bench)
        .with(Tool::ohmmeter)
        .says("Ohms at which it shows each value: by a substitution box on its lead, or the table it is programmed "
              "with."),
    curve<&D::input_volts>("input_volts", "table in volts", terms_of<D>.kind, kind::voltage)
        .in(terms_of<D>.unit, "V")
        .from(0, 100)
        .says("Volts at its input for each value, where a cluster is programmed in volts; goes before ohms."),
    choice<&D::programs>("programs", "keyed in as", programs_names)
        .or_else(0, Source::chosen)
        .says("What a programmable cluster is keyed in with: the table that is solved for is written so."),
    integer<&D::table_points>("table_points", "rows of its table")
        .from(2, 32)
        .or_else(10, Source::chosen)
        .says("Rows a programmable cluster takes."),
    quantity<&D::supply>("supply", "supply", kind::voltage)
        .with(Tool::voltmeter)
        .in("V")
        .above(0, 40)
        .spread(Source::typical, {.share = 0.05})
        .says("Volts it was made for or pulls up to: of a vibrating regulator the mean, 5 V as a rule."),
    yes_no<&D::regulated>("regulated", "behind a regulator")
        .or_else(1, Source::chosen)
        .says("Whether a regulator holds that supply; else it follows the car's volts."),
    ohms<&D::heater>("heater", "heater")
        .found(Station::bench)
        .says("Ohms of the bimetal's heater, the gauge off its wires."),
    ohms<&D::pull_up>("pull_up", "pull-up").says("Ohms from its supply to the sender's wire; of a balance its coil."),
    quantity<&D::current_low>("current_low", "current at the low end", kind::current)
        .in("A")
        .from(0, 5)
        .says("Mean current at which a bimetal stands on the low end."),
    quantity<&D::current_high>("current_high", "current at the high end", kind::current)
        .in("A")
        .from(0, 5)
        .says("The same at the high end."),
    choice<&D::ground>("ground", "gauge grounded to", ground_names)
        .may_change()
        .or_else(3, Source::chosen)
        .says("Where the gauge's own ground goes; the dash is the body where no run of it is described."),
    choice<&D::sender_family>("sender_family", "sender of the family", terms_of<D>.families)
        .says("Family of the sender by its ohms at the low and the high end; its measured points go before it.")
        .after("common practice"),
    ohms_against<&D::sender>("sender", "sender")
        .found(Station::bench)
        .with(Tool::ohmmeter)
        .says("Ohms of the sender off its wire against what is true: fuel poured in, hot water, a hand pump."),
    choice<&D::sender_ground>("sender_ground", "sender grounded to", ground_names)
        .may_change()
        .or_else(1, Source::chosen)
        .says("Where its second wire goes; of a single-wire sender what it is screwed into."),
    ohms<&D::joint>("joint", "ohms in its ground")
        .or_else(0, Source::chosen)
        .says("From the sender's body to that ground: sealing tape, a bush, paint, a dry strap."),
    ohms<&D::series>("series", "resistor in its lead")
        .or_else(0, Source::chosen)
        .says("Resistor fitted in the lead to match sender and gauge."),
    ohms<&D::parallel>("parallel", "resistor beside it")
        .says("Resistor fitted from the sender's wire to its ground; none without it."),
    list<&D::other>("other", "other readers").says("What else reads the same sender and pulls its wire up."),
    step_of<&D::apart>("apart", "difference of place")
        .says("How much more is true where the sender sits than where another instrument measures: a head runs 10 to "
              "20 degF over the intake."),
    in_scale<&D::lamp_meant>("lamp_meant", "lamp wanted at").says("True value at which its lamp is wanted to light."),
    in_scale<&D::lamp_shown>("lamp_shown", "lamp lights at")
        .says("Reading at which the cluster lights it; goes by what is shown, not by what is true."),
    in_scale<&D::lamp_switch>("lamp_switch", "lamp switch closes at")
        .says("True value at which a switch of its own lights it."),
};
static_assert(std::size(dial_table<FuelDial>) == member_count<FuelDial>());
static_assert(std::size(dial_table<TemperatureDial>) == member_count<TemperatureDial>());
static_assert(std::size(dial_table<PressureDial>) == member_count<PressureDial>());

constexpr FieldInfo other_table[] = {
    quantity<&Other::pull_up>("pull_up", "pull-up", kind::resistance)
        .in("ohm")
        .above(0, 1e6)
        .says("Ohms from its supply to the sender's wire."),
    quantity<&Other::supply>("supply", "supply", kind::voltage).in("V").from(0, 40).says("Volts it pulls up to."),
};
static_assert(std::size(other_table) == member_count<Other>());

constexpr FieldInfo voltmeter_table[] = {
    quantity<&Voltmeter::error>("error", "own error", kind::voltage)
        .in("V")
        .from(-3, 3)
        .says("What it shows over a good meter on its own terminals."),
};
static_assert(std::size(voltmeter_table) == member_count<Voltmeter>());

constexpr FieldInfo tachometer_table[] = {
    number<&Tachometer::set>("set", "set to pulses a turn")
        .may_change()
        .above(0, 120)
        .spread({})
        .says("Pulses a turn of the crank it is set to: half the cylinders of a four-stroke on one coil."),
    number<&Tachometer::source>("source", "pulses a turn there are")
        .above(0, 120)
        .spread({})
        .says("Pulses the source gives in a turn of the crank."),
    quantity<&Tachometer::level>("level", "level of the source", kind::voltage)
        .in("V")
        .from(0, 500)
        .says("Height of its pulses as it stands, without what is added."),
    quantity<&Tachometer::threshold>("threshold", "threshold", kind::voltage)
        .in("V")
        .from(0, 100)
        .says("Least height the tachometer counts."),
    quantity<&Tachometer::pull_up_to>("pull_up_to", "pulled up to", kind::voltage)
        .may_change()
        .in("V")
        .from(0, 40)
        .says("Supply of the added pull-up."),
    quantity<&Tachometer::source_resistance>("source_resistance", "resistance of the source", kind::resistance)
        .in("ohm")
        .above(0, 1e7)
        .says("Ohms behind its high level: the pull-up inside a controller."),
    quantity<&Tachometer::pull_up>("pull_up", "added pull-up", kind::resistance)
        .may_change()
        .in("ohm")
        .above(0, 1e6)
        .says("Resistor added from the signal to a supply."),
    quantity<&Tachometer::input>("input", "input", kind::resistance)
        .in("ohm")
        .above(0, 1e8)
        .or_else(100000)
        .says("Ohms of the tachometer's input.")
        .after("common practice"),
};
static_assert(std::size(tachometer_table) == member_count<Tachometer>());

constexpr FieldInfo speedometer_table[] = {
    choice<&Speedometer::reads>("reads", "driven by", speed_from_names)
        .or_else(1, Source::chosen)
        .says("A turning cable, or pulses of a sender."),
    quantity<&Speedometer::head_turns>("head_turns", "turns its head wants", kind::per_length)
        .in("rev/mile")
        .above(0, 3000)
        .or_else(1000)
        .spread({})
        .says("Turns of the cable it shows as a mile; it stands on most dials.")
        .after("common practice: 1000 on most heads, 940, 960 and 1020 exist"),
    quantity<&Speedometer::set>("set", "set to", kind::pulses_per_length)
        .may_change()
        .in("pulse/mile")
        .above(0, 1e6)
        .spread({})
        .says("Pulses it counts as a mile."),
    choice<&Speedometer::sits_on>("sits_on", "sender sits on", sits_on_names)
        .or_else(0, Source::chosen)
        .says("What turns the sender: the cable's drive, a ring on the gearbox's output shaft, a wheel."),
    number<&Speedometer::pulses>("pulses", "pulses a turn")
        .above(0, 500)
        .spread({})
        .says("Pulses of the sender in one turn of what it sits on."),
    integer<&Speedometer::drive_teeth>("drive_teeth", "drive gear")
        .from(1, 100)
        .says("Teeth of the speedometer's gear on the output shaft."),
    integer<&Speedometer::driven_teeth>("driven_teeth", "driven gear")
        .may_change()
        .from(1, 100)
        .says("Teeth of the gear it turns."),
    number<&Speedometer::ratio_box>("ratio_box", "correction box")
        .may_change()
        .above(0, 10)
        .or_else(1, Source::chosen)
        .spread({})
        .says("Turns out of a correcting gearbox (or pulses out of a converter) for one in."),
};
static_assert(std::size(speedometer_table) == member_count<Speedometer>());

constexpr FieldInfo listener_table[] = {
    quantity<&Listener::input>("input", "input", kind::resistance).in("ohm").above(0, 1e8).says("Ohms of its input."),
    quantity<&Listener::threshold>("threshold", "threshold", kind::voltage)
        .in("V")
        .above(0, 50)
        .says("Least volts it counts."),
};
static_assert(std::size(listener_table) == member_count<Listener>());

constexpr FieldInfo sensor_table[] = {
    quantity<&SpeedSensor::resistance>("resistance", "coil", kind::resistance)
        .in("ohm")
        .above(0, 1e6)
        .says("Ohms of the sensor off its wires."),
    quantity<&SpeedSensor::open_voltage>("open_voltage", "open volts", kind::voltage)
        .in("V")
        .above(0, 200)
        .says("Volts it gives with nothing on it, at the speed below."),
    quantity<&SpeedSensor::at_speed>("at_speed", "at", kind::speed)
        .in("mph")
        .above(0, 200)
        .spread({})
        .says("Road speed of those volts."),
    list<&SpeedSensor::listener>("listener", "listeners").says("What reads it, all on the same two wires."),
};
static_assert(std::size(sensor_table) == member_count<SpeedSensor>());

constexpr FieldInfo table[] = {
    choice<&Input::float_by>("float_by", "fuel senders told by", float_names)
        .or_else(0, Source::chosen)
        .says(
            "What the ohms of a fuel sender stand against: the share of fuel put in, or of the tank's depth (then the "
            "tank's shape is counted in)."),
    list<&Input::fuel>("fuel", "fuel gauges").says("Fuel gauges, as shares of a full tank."),
    list<&Input::temperature>("temperature", "temperature gauges").says("Coolant and oil temperature."),
    list<&Input::pressure>("pressure", "pressure gauges").says("Oil pressure and the like."),
    list<&Input::volts>("volts", "voltmeters").says("Voltmeters fed with the cluster."),
    list<&Input::tachometer>("tachometer", "tachometers").says("Tachometers and what they count."),
    list<&Input::speedometer>("speedometer", "speedometers").says("Speedometers and what drives them."),
    list<&Input::speed_sensor>("speed_sensor", "speed sensors")
        .found(Station::underneath)
        .says("Two-wire coil sensors that several read at a time."),
};
static_assert(std::size(table) == member_count<Input>());

}  // namespace

std::span<const FieldInfo> Other::fields() { return other_table; }
template <class Q, class S>
std::span<const FieldInfo> Dial<Q, S>::fields() {
  return dial_table<Dial<Q, S>>;
}
template struct Dial<double, double>;
template struct Dial<Temperature, TemperatureStep>;
template struct Dial<GaugePressure, PressureDifference>;
std::span<const FieldInfo> Voltmeter::fields() { return voltmeter_table; }
std::span<const FieldInfo> Tachometer::fields() { return tachometer_table; }
std::span<const FieldInfo> Speedometer::fields() { return speedometer_table; }
std::span<const FieldInfo> Listener::fields() { return listener_table; }
std::span<const FieldInfo> SpeedSensor::fields() { return sensor_table; }
std::span<const FieldInfo> Input::fields() { return table; }

}  // namespace sw::gauges
