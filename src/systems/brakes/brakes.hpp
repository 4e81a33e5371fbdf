#pragma once
// The brakes: pedal, booster, master cylinder, valves, discs and drums, and what they do to the road.
#include "model/system.hpp"
#include "physics/brake_fluid.hpp"
#include "physics/brake_heat.hpp"
#include "physics/brake_travel.hpp"
#include "physics/brake_valve.hpp"
#include "physics/drum_factor.hpp"
#include "physics/interpolant.hpp"

namespace sw::brakes {

enum class Make : std::uint8_t { disc, drum };
inline constexpr std::string_view make_names[] = {"disc", "drum"};
enum class Shoes : std::uint8_t { leading_trailing, two_leading, duo_servo };
inline constexpr std::string_view shoes_names[] = {"leading and trailing", "two leading", "duo-servo"};
enum class Cups : std::uint8_t { plain, expanded };
inline constexpr std::string_view cups_names[] = {"plain", "held by expanders"};
enum class Split : std::uint8_t { single, front_rear, diagonal };
inline constexpr std::string_view split_names[] = {"single", "front and rear", "diagonal"};
enum class Acts : std::uint8_t { reduces, holds_off };
inline constexpr std::string_view acts_names[] = {"reduces", "holds off"};
enum class Switch : std::uint8_t { travel, load, pressure };
inline constexpr std::string_view switch_names[] = {"pedal travel", "load in the push rod", "line pressure"};
enum class Fluid : std::uint8_t { dot_3, dot_4, dot_5, dot_5_1 };
inline constexpr std::string_view fluid_names[] = {"DOT 3", "DOT 4", "DOT 5", "DOT 5.1"};
enum class Limb : std::uint8_t { hand, foot };
inline constexpr std::string_view limb_names[] = {"hand", "foot"};

/// Shape of a drum's shoes, for a brake factor nobody states.
struct ShoeShape {
  std::optional<Length> pivot, lever;
  std::optional<Angle> start, end;
  static std::span<const FieldInfo> fields();
};

/// What a rotor or drum holds and sheds.
struct Heat {
  std::optional<Mass> mass;
  std::optional<SpecificHeat> specific_heat;
  std::optional<ThermalConductance> standing, moving;
  std::optional<Area> surface;
  std::optional<Temperature> highest;
  std::optional<double> fluid_share;
  std::optional<Curve> fade;
  static std::span<const FieldInfo> fields();
};

struct Axle {
  std::optional<Make> make;
  std::optional<Length> piston;
  std::optional<int> pistons;
  std::optional<bool> opposed;
  std::optional<double> friction;
  std::optional<Length> radius;
  std::optional<Shoes> shoes;
  std::optional<double> factor;
  std::optional<ShoeShape> shape;
  std::optional<GaugePressure> touch_pressure;
  std::optional<Length> clearance, give;
  std::optional<Volume> line_give;
  std::optional<Volume> fluid;
  std::optional<Length> retreat;
  std::optional<Length> wear;
  std::optional<Volume> reservoir;
  std::optional<Length> reservoir_above;
  std::optional<GaugePressure> residual;
  std::optional<Cups> cups;
  std::optional<Length> hose_slack;
  Heat heat;
  static std::span<const FieldInfo> fields();
};

struct Pedal {
  std::optional<double> ratio;
  std::optional<Length> travel;
  std::optional<Length> rod_length, rod_offset;
  static std::span<const FieldInfo> fields();
};

struct Booster {
  std::optional<bool> fitted;
  std::optional<Area> area;
  std::optional<Length> diameter;
  std::optional<int> diaphragms;
  std::optional<double> gain;
  std::optional<Force> spring;
  std::optional<double> efficiency;
  std::optional<Length> rod_gap;
  static std::span<const FieldInfo> fields();
};

struct Master {
  std::optional<Length> bore, stroke, front_chamber, take_up, port_travel;
  std::optional<TemperatureStep> hot_rise;
  static std::span<const FieldInfo> fields();
};

struct Valve {
  std::optional<Acts> acts;
  std::optional<bool> front;
  std::optional<GaugePressure> knee;
  std::optional<double> slope;
  std::optional<GaugePressure> full;
  std::optional<GaugePressure> laden_knee;
  std::optional<bool> opens_alone;
  static std::span<const FieldInfo> fields();
};

struct Lamp {
  std::optional<Switch> by;
  std::optional<Length> travel;
  std::optional<Force> force;
  std::optional<GaugePressure> pressure;
  static std::span<const FieldInfo> fields();
};

struct Parking {
  std::optional<Limb> by;
  std::optional<double> leverage, factor;
  std::optional<Length> radius;
  static std::span<const FieldInfo> fields();
};

struct Fill {
  std::optional<Fluid> grade, before;
  std::optional<bool> cleaned;
  std::optional<double> water;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Split> split;
  Pedal pedal;
  Booster booster;
  Master master;
  Named<Valve> valve;
  Axle front, rear;
  Lamp lamp;
  Parking parking;
  Fill fill;
  std::optional<bool> difference_warning;
  std::optional<GaugePressure> hose_rating, tube_rating;
  std::optional<double> dry_adhesion, wet_adhesion;
  static std::span<const FieldInfo> fields();
};

/// A figure, or where it would stand: rules that need it say so by its path.
struct Known {
  double value = std::numeric_limits<double>::quiet_NaN();
  std::string path;
  bool given() const { return path.empty(); }
};

/// A vacuum booster; its return spring works against the foot where there is no vacuum.
struct BoosterModel {
  double area_m2 = 0, gain = 1, spring_n = 0, efficiency = 1;
};

/// One rotor or drum of an axle.
struct HeatModel {
  physics::RotorCooling cooling{};
  double capacity_j_k = 0, highest_k = 0, fluid_share = 0;
  bool usual_highest = false;                ///< nobody said what its lining stands
  std::optional<physics::Interpolant> fade;  ///< friction over cold, against K
};

/// How a drum's factor hangs on friction: its own shoes, or usual ones at the friction that gives the factor stated.
struct ShoesModel {
  physics::DrumKind kind = physics::DrumKind::duo_servo;
  physics::Shoe shoe{};
  double friction = 0;
};

/// One axle's two brakes.
struct AxleModel {
  HeatModel heat;
  ShoesModel shoes;          ///< of a drum
  bool usual_shoes = false;  ///< its factor is stated and nobody measured their shape
  bool drum = false, opposed = false;
  double torque_m3 = 0;  ///< N m of both wheels for each Pa at the cylinders above `touch_pa`
  double touch_pa = 0;
  Known area_m2;  ///< of the pistons on one side of one wheel
  Known radius_m, clearance_m, give_m, line_give_m3, fluid_m3, retreat_m, wear_m, reservoir_m3, above_m, hose_slack_m;
  Known residual_pa, cups, make;
  double moving = 0;  ///< pistons' areas that move fluid, of both wheels, over `area_m2`
  std::size_t valves = 0, reducing = 0;
  static constexpr std::size_t most_valves = 3;
  physics::BrakeValve light[most_valves], laden[most_valves];
  bool opens_alone[most_valves] = {};  ///< lets all through once the other circuit is lost
};

struct Model {
  AxleModel front, rear;
  Known ratio, pedal_m, rod_length_m, rod_offset_m;
  Known fitted;
  bool assisted = false;  ///< a booster is fitted
  BoosterModel booster;
  Known rod_gap_m;
  Known bore_area_m2, stroke_m, front_chamber_m, take_up_m, port_travel_m;
  double hot_rise_k = 40;
  Known split, lamp_by, lamp_travel_m, lamp_force_n, lamp_pa;
  Known parking_by, parking_leverage, parking_factor, parking_radius_m;
  Known water;  ///< share of water in the fluid
  Known grade, before, warning, hose_pa, tube_pa;
  bool cleaned = false;
  double dry = 0.85, wet = 0.5;
  bool two_circuits() const { return split.value != static_cast<double>(Split::single); }
};

struct System {
  using Input = brakes::Input;
  using Model = brakes::Model;
  static constexpr std::string_view key = "brakes", title = "brakes";
  static constexpr Station where = Station::wheels_off;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

}  // namespace sw::brakes
