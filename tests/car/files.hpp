#pragma once
// Files of the repository for the tests of whole builds, and what was said of them.
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <map>
#include <regex>
#include <sstream>
#include <string>
#include <vector>

#include "car/build.hpp"

namespace sw::files {

inline std::filesystem::path root() { return STREETWRIGHT_SOURCE_DIR; }

inline std::string text_of(const std::filesystem::path& path) {
  std::ifstream in(path, std::ios::binary);
  std::ostringstream text;
  text << in.rdbuf();
  return std::move(text).str();
}

/// The `.toml` files of a folder, by name.
inline std::vector<std::filesystem::path> builds_in(const std::string& folder) {
  std::vector<std::filesystem::path> all;
  for (auto& e : std::filesystem::directory_iterator(root() / folder))
    if (e.path().extension() == ".toml") all.push_back(e.path());
  std::sort(all.begin(), all.end());
  return all;
}

/// Files that stand in memory.
using Texts = std::map<std::string, std::string>;
inline OpenText from(const Texts& texts) {
  return [&texts](const std::filesystem::path& path) -> std::optional<std::string> {
    auto it = texts.find(path.generic_string());
    return it == texts.end() ? std::nullopt : std::optional(it->second);
  };
}

/// What a shop could have read for an empty line of a starting build, invented as the cars are; empty: left to the
/// shelf. `car` is the form's name, `table` the table the line stands in.
inline std::string reading(const std::string& car, const std::string& table, const std::string& key) {
  const auto by_car = [&](const char* saloon, const char* pickup, const char* roadster) {
    return car == "saloon" ? saloon : car == "pickup" ? pickup : roadster;
  };
  if (key == "system_voltage") return "12 V";
  if (key == "earth") return by_car("negative", "negative", "positive");
  if (key == "pressure") return by_car("13 psi", "13 psi", "7 psi");
  if (key == "weakest_part") return by_car("18 psi", "16 psi", "12 psi");
  static const std::map<std::string, std::string> brakes = {{"split", "front and rear"}, {"difference_warning", "true"},
                                                            {"hose_rating", "1750 psi"}, {"tube_rating", "3000 psi"},
                                                            {"rod_offset", "0.3 in"},    {"rod_gap", "0.020 in"},
                                                            {"reservoir_above", "9 in"}, {"hose_slack", "1 in"},
                                                            {"grade", "DOT 4"},          {"before", "DOT 3"},
                                                            {"factor", "2.0"},           {"front_chamber", "0.7 in"}};
  if (table == "brakes.lamp") return key == "by" ? "pedal travel" : "0.15 in";
  if (table == "brakes.parking" && key == "by") return "hand";
  if (table == "brakes.pedal" && key == "travel") return "6.5 in";
  if (key == "leverage") return by_car("16", "18", "10");
  if (key == "residual") return table == "brakes.rear" || car == "pickup" ? "10 psi" : "0 psi";
  if (const auto b = brakes.find(key); b != brakes.end() && table.starts_with("brakes")) return b->second;
  if (key == "relief") return by_car("85 psi", "6 psi", "4 psi");
  static const std::map<std::string, std::string> fuel = {
      {"bonded", "true"},           {"rollover_valve", "true"}, {"outlet", "37 deg"},  {"inlet", "37 deg"},
      {"start", "37 deg"},          {"end", "37 deg"},          {"rating", "180 psi"}, {"age", "1 year"},
      {"exhaust_distance", "6 in"}, {"engine_stopped", "true"}, {"impact", "true"}};
  if (const auto f = fuel.find(key); f != fuel.end() && table.starts_with("fuel")) return f->second;
  static const std::map<std::string, std::string> rolling = {{"barrel_radius", "7.16 in"},
                                                             {"caliper_radius", "6.85 in"},
                                                             {"lip_gap", "1.1 in"},
                                                             {"load", "1874 lb"},
                                                             {"speed", "V"},
                                                             {"age", "2 year"},
                                                             {"spoke_gap", "0.3 in"}};
  if (const auto w = rolling.find(key); w != rolling.end() && table.starts_with("wheels")) return w->second;
  if (key == "mass" && table.starts_with("brakes")) return "15 lb";
  if (key == "water") return "0.005";
  if (key == "booster_volume") return "250 in3";
  if (key == "rear_volume") return "80 in3";
  if (key != "fuse") return {};
  if (table == "wiring.run.charge") return by_car("150 A", "80 A", "50 A");
  if (table == "wiring.run.feed") return by_car("100 A", "50 A", "40 A");
  static const std::map<std::string, std::string> loads = {{"fans", "40 A"},      {"headlamps", "15 A"},
                                                           {"injection", "15 A"}, {"fuel_pump", "15 A"},
                                                           {"blower", "15 A"},    {"standing_draw", "5 A"}};
  const auto load = loads.find(table.substr(table.rfind('.') + 1));
  return load == loads.end() ? "10 A" : load->second;
}

/// A starting build with its empty lines filled in.
inline std::string filled_in(const std::filesystem::path& path) {
  static const std::regex empty("# MEASURE (\\w+) = \"\"(.*)"), head("\\[(.*)\\].*");
  std::istringstream lines(text_of(path));
  std::string out, table;
  for (std::string line; std::getline(lines, line); out += line + "\n") {
    std::smatch m;
    if (std::regex_match(line, m, head)) table = m[1];
    if (!std::regex_match(line, m, empty)) continue;
    const std::string value = reading(path.stem().string(), table, m[1]);
    if (value.empty()) continue;
    const bool bare = value == "true" || value.find_first_not_of("0123456789.") == std::string::npos;
    line = m[1].str() + " = " + (bare ? value : "\"" + value + "\"") + m[2].str();
  }
  return out;
}
inline Opened open_filled(const std::filesystem::path& path) {
  const Texts texts = {{path.filename().string(), filled_in(path)}};
  return open(path.filename(), from(texts));
}

/// Every fault and warning, one a line.
inline std::string said(const Opened& o) {
  std::string all;
  for (auto& d : o.faults.all()) all += say(d, o.files) + "\n";
  return all;
}

}  // namespace sw::files
