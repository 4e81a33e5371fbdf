#pragma once
// One text read into the sample car, with all that was said of it.
#include "document/document.hpp"
#include "field/sample_car.hpp"
#include "field/walk.hpp"

namespace sw::sample {

struct Reading {
  Car car;
  EvidenceMap evidence;
  Diagnostics faults;
  std::vector<std::string> said;
};

inline Reading read_car(const std::string& text, bool json = false, Source usual = Source::stated) {
  Reading r;
  Node root = parse_text(text, 0, json, r.faults);
  read(root, Car::fields(), &r.car, "", r.evidence, r.faults, usual);
  for (auto& d : r.faults.all()) r.said.push_back(say(d, {json ? "bad.json" : "bad.toml"}));
  return r;
}

}  // namespace sw::sample
