#pragma once
// Where on a car a figure is found and with what: a field table names both where they are not plain from the field's
// kind and from how finely it is measured.
#include <array>
#include <cstdint>
#include <string_view>

namespace sw {

/// In the order a person walks round a car that came in. What has none takes that of the group it stands in.
enum class Station : std::uint8_t {
  inherited,
  before_all,
  standing,
  seat,
  electrics,
  front,
  engine_bay,
  wheels_off,
  underneath,
  tail,
  running,
  bench,
  desk,
};
inline constexpr std::array<std::string_view, 13> station_names = {"",
                                                                   "before anything is moved or started",
                                                                   "around the car, on its wheels",
                                                                   "in the driver's seat",
                                                                   "bonnet open: battery, cables and fuses",
                                                                   "bonnet open: radiator, fans and belts",
                                                                   "bonnet open: engine and bulkhead",
                                                                   "wheels off, on stands",
                                                                   "underneath, on stands",
                                                                   "at the tail: tank and pump",
                                                                   "engine running, hot",
                                                                   "on the bench, the part in hand",
                                                                   "at the desk: data sheets and papers"};
constexpr std::string_view name_of(Station s) { return station_names[static_cast<std::size_t>(s)]; }

enum class Tool : std::uint8_t {
  by_kind,  ///< plain from the field's kind and tolerance (tool_of)
  eye,
  tape,
  rule,
  calliper,
  feeler,
  dial_gauge,
  angle_gauge,
  straight_edge,
  scales,
  spring_balance,
  tension_gauge,
  torque_wrench,
  pressure_gauge,
  vacuum_gauge,
  thermometer,
  voltmeter,
  volt_drop,
  clamp_meter,
  ohmmeter,
  insulation_tester,
  inductance_meter,
  tachometer,
  timing_light,
  watch,
  jug,
  jug_and_watch,
  fluid_tester,
  road,
  data_sheet,
};
inline constexpr std::array<std::string_view, 30> tool_names = {"",
                                                                "by eye, or its label",
                                                                "tape",
                                                                "steel rule",
                                                                "calliper",
                                                                "feeler gauge",
                                                                "dial gauge",
                                                                "angle gauge",
                                                                "straight-edge and rule",
                                                                "scales",
                                                                "spring balance",
                                                                "belt tension gauge",
                                                                "torque wrench",
                                                                "pressure gauge",
                                                                "vacuum gauge",
                                                                "thermometer",
                                                                "voltmeter",
                                                                "voltmeter across it, load on",
                                                                "clamp meter",
                                                                "ohmmeter",
                                                                "insulation tester",
                                                                "inductance meter",
                                                                "tachometer",
                                                                "timing light",
                                                                "watch",
                                                                "measuring jug",
                                                                "measuring jug and watch",
                                                                "fluid tester",
                                                                "coast-down on a level road",
                                                                "data sheet"};
constexpr std::string_view name_of(Tool t) { return tool_names[static_cast<std::size_t>(t)]; }

struct FieldInfo;
/// The tool of a field: its own, or by its kind and by how finely it is to be measured (common practice: calliper to
/// 0.15 mm, rule to 1 mm or up to a foot, tape beyond).
Tool tool_of(const FieldInfo& f);

}  // namespace sw
