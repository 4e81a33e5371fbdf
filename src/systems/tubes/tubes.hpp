#pragma once
// Hard lines: what is done to a tube to make a joint of it (flare, seat, nut) and to lead it round corners.
#include "model/system.hpp"

namespace sw::tubes {

enum class Material : std::uint8_t { steel, nickel_copper, stainless, hard_stainless, aluminium };
inline constexpr std::string_view material_names[] = {"steel", "nickel-copper", "annealed stainless", "hard stainless",
                                                      "aluminium"};
/// Of a flare, of the seat it is drawn against and of the nut that does it.
enum class Form : std::uint8_t { single_37, double_45, bubble };
inline constexpr std::string_view form_names[] = {"37 deg", "45 deg double", "bubble"};

struct End {
  std::optional<Form> flare, seat, nut;
  std::optional<Length> flared_to;
  std::optional<int> attempts;
  std::optional<Torque> nut_torque;
  std::optional<Length> thread, ring_radius;
  static std::span<const FieldInfo> fields();
};

struct Tube {
  std::optional<Material> material;
  std::optional<Length> outside, wall, bend_radius;
  std::optional<double> elongation;
  std::optional<PressureDifference> yield;
  End start, end;
  static std::span<const FieldInfo> fields();
};

struct Input {
  Named<Tube> tube;
  static std::span<const FieldInfo> fields();
};

struct EndModel {
  std::string place;
  std::optional<Form> flare, seat, nut;
  std::string flare_path, seat_path, torque_path, thread_path, ring_path;
  std::optional<double> flared_m, torque_nm, thread_m, ring_m;
  int attempts = 1;
};

struct TubeModel {
  std::string place;
  std::optional<double> outside_m, wall_m, bend_m, yield_pa;
  std::string outside_path, wall_path, yield_path;
  double elongation = 0;
  EndModel ends[2];
};

struct Model {
  std::vector<TubeModel> tubes;
};

struct System {
  using Input = tubes::Input;
  using Model = tubes::Model;
  static constexpr std::string_view key = "tubes", title = "hard lines";
  static constexpr Station where = Station::underneath;
  static constexpr bool may_be_left_out = true;
  static Model resolve(const Input& in, Resolver& r);
  static std::span<const Block> blocks() { return {}; }
  static std::span<const Requirement> requirements();
};

}  // namespace sw::tubes
