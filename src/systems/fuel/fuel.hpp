#pragma once
// Fuel from the tank to the engine: pump, filters, lines, regulator, vapour, slosh. Lines are lists in the order of the
// flow: `suction` from tank to pump, `feed` from pump to rail or carburettor, `return` from the regulator to the tank.
#include <optional>
#include <string>
#include <vector>

#include "model/system.hpp"
#include "physics/pipe_network.hpp"

namespace sw::fuel {

namespace pipes = physics::pipes;

enum class Delivery : std::uint8_t { injection, carburettor };
inline constexpr std::string_view delivery_names[] = {"injection", "carburettor"};
enum class RunKind : std::uint8_t { tube, hose };
inline constexpr std::string_view run_kind_names[] = {"tube", "hose"};
enum class Zone : std::uint8_t { under_car, engine_bay };
inline constexpr std::string_view zone_names[] = {"under car", "engine bay"};
/// Ends by what they seal on. Two ends mate where they are the same, a hose with a bead or barb besides.
enum class End : std::uint8_t { hose, bead, barb, flare_37, flare_45, quick, o_ring, thread, banjo, compression };
inline constexpr std::string_view end_names[] = {"hose",          "bead",   "barb",        "37 deg", "45 deg",
                                                 "quick connect", "o-ring", "pipe thread", "banjo",  "compression"};
enum class Vent : std::uint8_t { none, open_line, two_way_cap };
inline constexpr std::string_view vent_names[] = {"none", "open line", "two-way cap"};
enum class PumpPlace : std::uint8_t { in_tank, outside };
inline constexpr std::string_view pump_place_names[] = {"in tank", "outside"};
enum class Drive : std::uint8_t { electric, engine };
inline constexpr std::string_view drive_names[] = {"electric", "engine"};
enum class FilterPlace : std::uint8_t { before_pump, feed };
inline constexpr std::string_view filter_place_names[] = {"before pump", "feed"};
/// Where the regulator stands: at the rail with a return, at a filter or the pump with the rail dead-ended, or in the
/// feed itself without a return, as before a carburettor.
enum class RegulatorPlace : std::uint8_t { rail, filter, pump, in_line, none };
inline constexpr std::string_view regulator_place_names[] = {"rail", "filter", "pump", "in line", "none"};

struct Tank {
  std::optional<Volume> volume;
  std::optional<Length> width, length;
  std::optional<Curve> strapping;
  std::optional<Vent> vent;
  std::optional<double> vapour_share;
  std::optional<bool> bonded, rollover_valve;
  std::optional<TemperatureStep> start_rise;
  std::optional<Power> road_heat;
  static std::span<const FieldInfo> fields();
};
struct PickUp {
  std::optional<Length> from_side, from_front, height, cell_width, cell_length;
  std::optional<Volume> reserve;
  std::optional<bool> fed_by_return;
  static std::span<const FieldInfo> fields();
};
struct Pump {
  std::optional<PumpPlace> place;
  std::optional<Drive> drive;
  std::optional<Length> height;
  std::optional<Curve> curve;
  std::optional<VolumeFlow> flow;
  std::optional<PressureDifference> at_pressure;
  std::optional<double> free_flow_ratio;
  std::optional<Voltage> at_voltage;
  std::optional<Current> current;
  std::optional<PressureDifference> relief;
  std::optional<PressureDifference> needed_margin;
  std::optional<bool> check_valve;
  std::optional<Time> prime;
  std::optional<End> inlet, outlet;
  static std::span<const FieldInfo> fields();
};
struct Filter {
  std::optional<FilterPlace> place;
  std::optional<Length> micron;
  std::optional<PressureDifference> drop;
  std::optional<VolumeFlow> at_flow;
  static std::span<const FieldInfo> fields();
};
struct Run {
  std::optional<RunKind> kind;
  std::optional<Length> bore, length;
  std::optional<double> losses;
  std::optional<End> start, end;
  std::optional<GaugePressure> rating;
  std::optional<Time> age;
  std::optional<Zone> zone;
  std::optional<Length> exhaust_distance, beside_exhaust;
  std::optional<double> view;
  std::optional<bool> shielded, before_regulator;
  static std::span<const FieldInfo> fields();
};
struct Regulator {
  std::optional<RegulatorPlace> place;
  std::optional<GaugePressure> pressure;
  std::optional<PressureDifference> least_drop;
  std::optional<VolumeFlow> at_flow;
  std::optional<PressureDifference> rise;
  std::optional<bool> vacuum_referenced;
  std::optional<End> inlet, outlet;
  static std::span<const FieldInfo> fields();
};
struct Injectors {
  std::optional<int> count;
  std::optional<MassFlow> flow;
  std::optional<PressureDifference> at_pressure;
  static std::span<const FieldInfo> fields();
};
/// What the engine's controller was told.
struct Calibration {
  std::optional<PressureDifference> pressure;
  std::optional<MassFlow> injector_flow;
  std::optional<bool> vacuum_referenced;
  std::optional<double> trim;
  static std::span<const FieldInfo> fields();
};
struct Carburettor {
  std::optional<GaugePressure> least, most;
  static std::span<const FieldInfo> fields();
};
struct CutOff {
  std::optional<bool> engine_stopped, impact;
  static std::span<const FieldInfo> fields();
};
struct Rail {
  std::optional<ThermalConductance> conductance;
  std::optional<HeatCapacity> heat_capacity;
  std::optional<End> inlet, outlet;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Delivery> delivery;
  Tank tank;
  PickUp pick_up;
  Pump pump;
  Named<Filter> filter;
  Named<Run> suction, feed, back;
  Regulator regulator;
  Rail rail;
  Injectors injectors;
  Calibration calibration;
  Carburettor carburettor;
  CutOff cut_off;
  std::optional<double> ethanol;
  std::optional<AbsolutePressure> reid_pressure;
  std::optional<double> usual_vapour;
  std::optional<Temperature> exhaust_surface;
  std::optional<Length> range_wanted;
  static std::span<const FieldInfo> fields();
};

/// A run ready for laws and checks.
struct RunModel {
  std::string name, list;  ///< `feed`
  bool hose = false, in_bay = false, shielded = false, before_regulator = false;
  physics::Pipe pipe;
  double beside_m = 0;  ///< of it beside the exhaust
  std::optional<double> view, exhaust_m, rating_pa, age_s;
  std::string exhaust_path, rating_path, age_path;
};
/// Two ends that meet.
struct Joint {
  std::string place;
  std::optional<End> first, second;
  std::vector<std::string> missing;
};
struct YesNo {
  std::optional<bool> value;
  std::string path;
};

struct Model {
  bool carburettor = false, engine_driven = false, in_tank = true, check_valve = true;
  // tank and pick-up
  double tank_m3 = 0, width_m = 0, length_m = 0, height_m = 0, start_rise_k = 0, road_w = 0, vapour_share = 0;
  std::optional<Curve> volume_at_depth;
  std::optional<Vent> vent;
  std::string vent_path;
  double pick_height_m = 0, reserve_m3 = 0;
  std::optional<double> side_m, front_m;
  double cell_width_m = 0, cell_length_m = 0;
  bool fed_by_return = false;
  std::string side_path;
  // pump
  std::optional<physics::PumpCurve> pump;
  double pump_height_m = 0, rated_v = 0, pump_a = 0, needed_pa = 0;
  std::optional<double> relief_pa;
  std::string relief_path;
  // network
  pipes::Network network;  ///< figures of the instant filled in at each evaluation
  pipes::NodeIndex n_tank = 0, n_air = 0, n_in = 0, n_out = 0, n_rail = 0, n_back = 0;
  std::size_t e_pump = 0;
  std::optional<std::size_t> e_regulator;
  std::vector<RunModel> runs;
  // regulator, injectors, controller
  RegulatorPlace regulator = RegulatorPlace::rail;
  std::optional<double> set_pa;
  std::string set_path;
  double least_drop_pa = 0, least_at_m3_s = 1;
  bool follows = false;  ///< its pressure is held over the manifold's, not over the air's
  std::optional<bool> regulator_referenced, calibration_referenced;
  std::optional<double> injectors, injector_kg_s, injector_pa, told_pa, told_kg_s;
  double trim = 0.1;
  double carburettor_least_pa = 0, carburettor_most_pa = 0;
  // heat and vapour
  double rail_w_k = 0, rail_j_k = 0, ethanol = 0, reid_pa = 0, vapour_ratio = 1, exhaust_k = 0;
  // rules
  double prime_s = 0;  ///< the pump alone, until the rail has its pressure
  YesNo stops_with_engine, stops_on_impact, bonded, rollover;
  std::vector<Joint> joints;
  struct FilterModel {
    std::string name;
    bool before_pump;
    std::optional<double> micron_m;
    std::string micron_path;
  };
  std::vector<FilterModel> filters;
  std::optional<double> range_m;
  std::vector<std::string> injector_missing, calibration_missing;
};

struct System {
  using Input = fuel::Input;
  using Model = fuel::Model;
  static constexpr std::string_view key = "fuel", title = "fuel";
  static constexpr Station where = Station::tail;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// Whether the fuel goes round: past the rail and back to the tank.
inline bool returns_from_rail(const Model& m) { return m.regulator == RegulatorPlace::rail && !m.carburettor; }
/// What the regulator holds over the air with that vacuum in the manifold.
inline double held_pa(const Model& m, double manifold_vacuum_pa) {
  return m.set_pa.value_or(0) - (m.follows ? manifold_vacuum_pa : 0.0);
}
/// Depth of the fuel in the level tank at a volume.
double depth_m(const Model& m, double volume_m3);
/// The other way round.
double volume_m3(const Model& m, double depth_m);
/// Share of the tank's fuel below a share of its depth.
double share_below(const Model& m, double depth_share);
double density_kg_m3(const Model& m, double temperature_k);
/// True vapour pressure of what is in the tank.
physics::Slope vapour_pa(const Model& m, double temperature_k);

/// What the lines are asked at one instant.
struct LinesAsk {
  double tank_k, fuel_m3, demand_m3_s, volts, vacuum_pa;
  double manifold_vacuum_pa;  ///< what a regulator with a hose to the manifold follows
  bool running;
};
/// Fills a copy of the model's network; the share of rated volts the pump turns at.
double set_network(const Model& m, const LinesAsk& ask, pipes::Network& network);

}  // namespace sw::fuel
