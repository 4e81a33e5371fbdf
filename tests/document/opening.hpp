#pragma once
// A build opened from texts that stand in the test, with all that was said of it.
#include <map>

#include "document/document.hpp"
#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace sw::sample {

using Texts = std::map<std::string, std::string>;

struct Opened {
  Document doc;
  Car car;
  EvidenceMap evidence;
  std::vector<std::string> said;
};

inline Opened open_car(const Texts& texts, const std::string& file = "cars/car.toml", const std::string& stock = {}) {
  auto open = [&](const std::filesystem::path& path) -> std::optional<std::string> {
    auto at = texts.find(path.generic_string());
    return at == texts.end() ? std::nullopt : std::optional(at->second);
  };
  Opened o;
  o.doc = open_build(file, Car::fields(), open, stock);
  read(o.doc.root, Car::fields(), &o.car, "", o.evidence, o.doc.faults);
  for (auto& d : o.doc.faults.all()) o.said.push_back(say(d, o.doc.files));
  return o;
}

template <class... Text>
std::vector<std::string> lines(Text... text) {
  return {text...};
}

inline constexpr const char* pickup = R"([cooling.radiator]
core_width = { value = "26 in", from = "measured" }
rows = 2
[cooling.oil_cooler]
heat = "3 kW"
[wiring.run.fan]
gauge = "10 AWG"
length = "9 ft"
[wiring.run.pump]
gauge = "14 AWG"
)";

}  // namespace sw::sample
