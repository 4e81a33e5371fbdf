#pragma once
// A car that sat: what must be done before it is started or moved, and what age has done to hoses, feeds and splices.
#include "model/system.hpp"

namespace sw::recommissioning {

struct Before {
  std::optional<bool> turned_by_hand, oil_primed, fuel_drained, fluid_changed, rodents_looked_for;
  static std::span<const FieldInfo> fields();
};

/// A brake hose that may have closed.
struct Hose {
  std::optional<Time> age;
  std::optional<Length> bore, length;
  std::optional<PressureDifference> seal;
  std::optional<Volume> returns;
  static std::span<const FieldInfo> fields();
};

/// A feed of the old loom, everything unplugged.
struct Feed {
  std::optional<Resistance> insulation;
  static std::span<const FieldInfo> fields();
};

struct Splice {
  std::optional<Resistance> resistance;
  std::optional<Current> current;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Before before;
  Named<Hose> hose;
  Named<Feed> feed;
  Named<Splice> splice;
  static std::span<const FieldInfo> fields();
};

struct StepModel {
  std::string_view what;
  std::optional<bool> done;
  std::string path;
};
struct HoseModel {
  std::string place;
  std::optional<double> age_s, bore_m, length_m;
  std::string age_path, length_path;
  double seal_pa = 0, returns_m3 = 0;
};
struct FeedModel {
  std::string place;
  std::optional<double> ohm;
  std::string path;
};
struct SpliceModel {
  std::string place;
  std::optional<double> ohm, current_a;
  std::string ohm_path, current_path;
};

struct Model {
  std::vector<StepModel> steps;
  std::vector<HoseModel> hoses;
  std::vector<FeedModel> feeds;
  std::vector<SpliceModel> splices;
};

struct System {
  using Input = recommissioning::Input;
  using Model = recommissioning::Model;
  static constexpr std::string_view key = "recommissioning", title = "recommissioning";
  static constexpr Station where = Station::engine_bay;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::recommissioning
