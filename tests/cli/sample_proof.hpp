#pragma once
// A proof made by hand, with one finding of each state and some beside them. Every figure is invented.
#include "cli/command.hpp"
#include "cli/run.hpp"
#include "proof/proof.hpp"

namespace sw::cli {

inline Because computed(std::string what, double si, const Kind& kind, std::string_view unit, std::string port) {
  return {.what = std::move(what), .value = si, .kind = &kind, .unit = unit, .path = std::move(port)};
}
inline Because input(std::string what, double si, const Kind& kind, std::string_view unit, Role role, Evidence evidence,
                     std::string path, double weight) {
  return {.what = std::move(what),
          .value = si,
          .kind = &kind,
          .unit = unit,
          .role = role,
          .evidence = std::move(evidence),
          .path = std::move(path),
          .weight = weight};
}

/// Current made less current used: 7 A short where none may be short, the scale 60 A.
inline Finding short_of_current() {
  Finding f{.id = "charging.balance@hot-idle",
            .system = "charging",
            .duty = "hot-idle",
            .title = "current made covers current used",
            .kind = RequirementKind::least,
            .hazard = Hazard::damage,
            .caution = Caution::battery_gas,
            .state = State::fails};
  f.quantity = &kind::current;
  f.unit = "A";
  f.predicted = -7;
  f.half_width = f.far_width = 3;
  f.low_limit = 0;
  f.margin = -7;
  f.scale = 60;
  f.mean_share = 0.5;
  f.confidence = "typical";
  f.source = "common practice";
  f.formula = "made less used";
  f.because = {computed("engine speed", 80, kind::shaft_speed, "rpm", "engine.speed"),
               computed("current it can give", 52, kind::current, "A", "alternator.available"),
               computed("all loads together", 59, kind::current, "A", "load.current"),
               input("hot output", 0.8, kind::number, "", Role::doubt, {.source = Source::typical, .defaulted = true},
                     "charging.alternator.hot_share", 0.05),
               input("fan current", 13, kind::current, "A", Role::choice,
                     {.source = Source::data_sheet, .part = "wide-fan"}, "cooling.fan.left.current", 0.11)};
  f.fix_hint = "a machine that gives more at this speed";
  return f;
}

inline Finding hot_coolant() {
  Finding f{.id = "cooling.coolant-temperature@grade",
            .system = "cooling",
            .duty = "grade",
            .title = "coolant stays below its limit",
            .kind = RequirementKind::most,
            .hazard = Hazard::damage,
            .caution = Caution::hot_coolant,
            .state = State::tight};
  f.quantity = &kind::temperature;
  f.unit = "degC";
  f.predicted = 376.15;
  f.half_width = f.far_width = 4;
  f.high_limit = 378.15;
  f.margin = 2;
  f.scale = 40;
  f.because = {input("core width", 0.66, kind::length, "in", Role::doubt, {.source = Source::measured},
                     "cooling.radiator.core_width", 0.2)};
  f.fix_hint = "a larger core";
  return f;
}

inline Finding unknown_cap() {
  Finding f{.id = "cooling.cap",
            .system = "cooling",
            .title = "cap no stronger than the weakest part",
            .hazard = Hazard::harm,
            .caution = Caution::hot_coolant,
            .state = State::unproven};
  f.quantity = &kind::gauge_pressure;
  f.unit = "psi";
  f.missing = {"cooling.cap.pressure"};
  f.reason = "a needed figure is missing";
  return f;
}

inline Finding thick_wire() {
  Finding f{.id = "wiring.carries[left fan]@hot-idle",
            .system = "wiring",
            .duty = "hot-idle",
            .place = "left fan",
            .title = "wire carries its current",
            .hazard = Hazard::harm,
            .caution = Caution::electrical_fire,
            .state = State::holds};
  f.quantity = &kind::current;
  f.unit = "A";
  f.predicted = 13;
  f.half_width = f.far_width = 0.5;
  f.high_limit = 40;
  f.margin = 27;
  f.scale = 40;
  return f;
}

/// A rule has no number.
inline Finding backward_fan() {
  Finding f{.id = "cooling.fan-direction[left]",
            .system = "cooling",
            .place = "left",
            .title = "fan blows with the travel",
            .kind = RequirementKind::rule,
            .hazard = Hazard::damage,
            .caution = Caution::fans_start,
            .state = State::fails};
  f.reason = "it blows against the travel";
  f.fix_hint = "blades turned round";
  return f;
}

inline Finding charge_band() {
  Finding f{.id = "charging.volts@cruise",
            .system = "charging",
            .duty = "cruise",
            .title = "volts at the battery",
            .kind = RequirementKind::band,
            .state = State::holds};
  f.quantity = &kind::voltage;
  f.unit = "V";
  f.predicted = 14.2;
  f.half_width = f.far_width = 0.1;
  f.low_limit = 13.8;
  f.high_limit = 14.8;
  f.margin = 0.4;
  f.scale = 1;
  return f;
}

inline Proof sample_proof() {
  Finding also = short_of_current();
  also.id = "charging.balance@parade";
  also.duty = "parade";
  also.predicted = also.margin = -4;
  Proof p{
      .findings = {also, short_of_current(), charge_band(), thick_wire(), backward_fan(), hot_coolant(), unknown_cap()},
      .duties = {"hot-idle", "parade", "cruise", "grade"},
      .next = {}};
  p.next = {{"cooling.cap.pressure", std::nullopt, "cooling.cap", 1.0},
            {"cooling.radiator.core_width", Source::measured, "cooling.coolant-temperature@grade", 0.62}};
  return p;
}

/// Surroundings that are not a terminal: UTF-8, 80 columns unless said otherwise.
inline Surroundings piped(std::string columns = {}, std::string locale = "C.UTF-8") {
  Surroundings s;
  s.variable = [=](std::string_view name) -> std::optional<std::string> {
    if (name == "COLUMNS" && !columns.empty()) return columns;
    if (name == "LC_ALL") return locale;
    return std::nullopt;
  };
  return s;
}

struct Ran {
  int code;
  std::string out, err;
};
inline Ran ran(const std::vector<std::string>& words, const Surroundings& around = piped()) {
  Console console;
  const int code = run(words, around, around, console);
  return {code, console.out, console.err};
}

/// A build of the repository's own demo folder.
inline std::string demo(const std::string& name) { return std::string(STREETWRIGHT_SOURCE_DIR) + "/demo/" + name; }

/// A folder of this test alone, gone with it.
class Scratch {
 public:
  Scratch();
  ~Scratch();
  Scratch(const Scratch&) = delete;
  /// A file in it, with this text.
  std::string file(const std::string& name, const std::string& text) const;
  std::string path(const std::string& name) const { return folder_ + "/" + name; }

 private:
  std::string folder_;
};

}  // namespace sw::cli
