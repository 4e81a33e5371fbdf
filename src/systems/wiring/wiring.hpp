#pragma once
// The DC network of the car: runs between named nodes, switches and relays with the states in which they are closed,
// loads with their own feeds, fuses, and the feed of the fans.
// Nodes are named by the user; these have a meaning: `battery` (the post that feeds), `ground` (the earthed post,
// always the reference; in a positive-earth car every sign turns round and nothing else), `alternator` (output stud),
// `block`, `case` (the machine's own; the block where no run reaches it), `bus` (what loads are fed from), `body` (what
// they are grounded to), `starter`; `dash` and `support` (grounds of the gauges and at the radiator; the body where no
// run reaches them) and `exciter` (the machine's, which loads feed that are grounded to it). Loads of these names are
// read by other systems for their volts: `fuel_pump`, `ignition`, `cluster` (the gauges); the states of the car are
// judged by those and by `injection`, `starter_solenoid`, `headlamps` and `brake_lamps` (states.hpp).
#include "model/system.hpp"
#include "physics/dc_network.hpp"
#include "systems/wiring/logic.hpp"

namespace sw::wiring {

namespace dc = physics::dc;

enum class Zone : std::uint8_t { cabin, engine_bay, boot, exhaust };
inline constexpr std::string_view zone_names[] = {"cabin", "engine bay", "boot", "beside exhaust"};
enum class Behaviour : std::uint8_t { current, resistance, power, motor, lamp };
inline constexpr std::string_view behaviour_names[] = {"current", "resistance", "power", "motor", "lamp"};
enum class Sense : std::uint8_t { own, bus, battery };
inline constexpr std::string_view sense_names[] = {"own stud", "bus", "battery"};

/// A conductor and what protects it; shared by runs and by the feeds of loads.
struct Wire {
  std::optional<Area> gauge;
  std::optional<Length> length;
  std::optional<Resistance> joints;
  std::optional<Current> fuse;
  std::optional<bool> unfused;
  std::optional<Temperature> insulation;
  std::optional<Zone> zone;
  std::optional<int> bundle;
};

struct Run {
  std::string from, to;
  Wire wire;
  std::optional<Resistance> resistance;
  std::optional<Current> limit;
  std::optional<bool> one_way, stray;
  static std::span<const FieldInfo> fields();
};

/// A switch; with a coil it is a relay.
struct Switch {
  std::string from, to;
  std::vector<std::string> closed;
  std::optional<Resistance> contact;
  std::optional<Current> limit;
  std::string coil_from, coil_to;
  std::optional<Resistance> coil;
  std::optional<Voltage> pull_in;
  static std::span<const FieldInfo> fields();
};

struct Load {
  std::optional<Current> current;
  std::optional<Voltage> at_voltage;
  std::optional<Behaviour> behaviour;
  std::vector<std::string> when;
  std::optional<double> share;
  std::optional<Voltage> least_voltage;
  std::optional<Current> stall, inrush;
  std::optional<Time> inrush_time;
  std::string from, to;
  Wire wire;
  static std::span<const FieldInfo> fields();
};

struct FanFeed {
  std::string from, to;
  Wire wire;
  std::optional<Resistance> resistance;
  static std::span<const FieldInfo> fields();
};

struct Input {
  std::optional<Sense> sense;
  Named<Run> run;
  Named<Switch> switches;
  Named<Load> load;
  FanFeed fans;
  static std::span<const FieldInfo> fields();
};

/// How a wire is laid: what its ampacity goes by besides its size.
struct Laid {
  double insulation_k = 0;
  Zone zone = Zone::engine_bay;
  int bundle = 1;
  std::vector<Because> told;  ///< size, insulation, zone and bundle with their evidence
};

/// A wire ready for checks.
struct Conductor {
  std::string place;  ///< name of the run or load
  double area_m2 = 0, resistance_ohm = 0, fuse_a = 0, ampacity_a = 0, limit_a = 0;
  double length_m = 0, joints_ohm = 0;                 ///< 0 where the resistance was measured
  bool sized = false, fused = false, unfused = false;  ///< whether gauge and fuse are known, or that there is no fuse
  bool stray = false;                                  ///< metal that conducts and is not meant to
  std::string gauge_path, fuse_path;
  std::size_t branch = 0;
  Laid laid;
};

struct LoadModel {
  Conductor wire;
  Logic when;
  double rated_a = 0, rated_v = 0, share = 1, least_v = 0;
  double stall_a = 0, inrush_a = 0, inrush_s = 0;  ///< 0: nobody said
  Behaviour behaviour = Behaviour::resistance;
};

/// A switch or relay ready for checks.
struct SwitchModel {
  std::string place;
  Logic closed;
  std::size_t branch = 0;
  std::optional<std::size_t> coil;    ///< branch of a relay's coil
  double limit_a = 0, pull_in_v = 0;  ///< limit 0: nobody said
  std::string limit_path;
};

/// Volts at the electric fuel pump in the states that decide; empty where the wiring's states do not tell.
struct PumpFed {
  std::optional<double> stalled_v, hit_v, cranking_v, prime_v;
};

struct Model {
  dc::Network network;  ///< everything joined; sources and fans filled in at each evaluation
  std::vector<Conductor> runs;
  std::vector<SwitchModel> switches;
  std::vector<LoadModel> loads;
  Conductor fan_feed;
  PumpFed pump_fed;
  std::optional<std::size_t> fuel_pump, ignition, cluster;         ///< loads by name, as below
  std::optional<std::size_t> to_exciter, field;                    ///< branches of the machine where a load reaches it
  std::vector<std::size_t> charge_path;                            ///< indices of runs the charging current passes
  std::size_t battery = 0, alternator = 0, starter = 0, fans = 0;  ///< branches
  dc::NodeIndex n_battery = 0, n_alternator = 0, n_block = 0, n_case = 0, n_bus = 0, n_starter = 0;
  dc::NodeIndex n_body = 0, n_dash = 0, n_support = 0;
  std::vector<std::string> node_names;  ///< [node]
  double nominal_v = 12;
  bool named_twice = false;  ///< names by which findings are told apart stand for two things: no rule is told
};

struct System {
  using Input = wiring::Input;
  using Model = wiring::Model;
  static constexpr std::string_view key = "wiring", title = "wiring";
  static constexpr Station where = Station::electrics;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks();
  static std::span<const Requirement> requirements();
};

/// What the network is fed with at one instant.
struct Feed {
  double alternator_a = 0, set_v = 0, emf_v = 0, battery_ohm = 0.01, starter_a = 0, fan_a = 0, fan_v = 13.5;
  unsigned state = 0;  ///< bits of logic.hpp
};
/// Puts a feed into a copy of the model's network; a relay is closed where its coil is asked to close it.
void set_feed(const Model& m, const Feed& feed, dc::Network& network);
/// Every wire: runs, feeds of loads, the fans' feed.
template <class Visit>
void each_wire(const Model& m, Visit visit) {
  for (auto& c : m.runs) visit(c);
  for (auto& l : m.loads) visit(l.wire);
  visit(m.fan_feed);
}
/// The load of that name; empty where there is none.
std::optional<std::size_t> load_named(const Model& m, std::string_view name);
/// Why the network has no solution, with what is left over and at which node, or which wire's figures are to blame.
std::string trouble(const Model& m, const dc::Summary& summary);

}  // namespace sw::wiring
