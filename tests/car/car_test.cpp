// Cars as a whole: what joins, what is missing, and whom it is blamed on.
#include "car/car.hpp"

#include <gtest/gtest.h>

#include <set>

#include "car/files.hpp"
#include "duty/duties.hpp"
#include "model/outside.hpp"

namespace sw {
namespace {

/// What the systems a build says something of lack.
std::vector<std::string> missing_of(const Car& car) {
  std::vector<std::string> all;
  for (auto& s : car.systems())
    if (s.described) all.insert(all.end(), s.missing.begin(), s.missing.end());
  return all;
}

std::set<std::string_view> port_names() {
  std::set<std::string_view> all;
  for (auto& p : outside::all) all.insert(p.name);
  for (auto& s : bare_systems())
    for (auto& b : s.blocks) {
      for (auto& p : b.writes) all.insert(p.name);
      for (auto& x : b.states) all.insert(x.port.name);
      for (auto& x : b.switches) all.insert(x.port.name);
    }
  return all;
}

/// `cooling.pump.flow`, or words after a colon: `wiring.run: a run that reaches "bus"`.
bool names_a_field(const std::string& blame) {
  return find_field(build_fields(), std::string_view(blame).substr(0, blame.find(':'))) != nullptr;
}

/// Every port can be read or is said to be unavailable, with at least one figure of the build to blame.
void expect_all_told(const Car& car, const std::string& where) {
  EXPECT_TRUE(car.graph().faults.empty()) << where << ": " << car.graph().faults.front();
  for (auto name : port_names()) {
    auto it = car.graph().unavailable.find(name);
    if (car.graph().slot(name) >= 0) {
      EXPECT_TRUE(it == car.graph().unavailable.end()) << where << ": " << name << " is read and unavailable";
      continue;
    }
    ASSERT_TRUE(it != car.graph().unavailable.end()) << where << ": " << name << " is nowhere";
    EXPECT_FALSE(it->second.empty()) << where << ": " << name;
    for (auto& blame : it->second) EXPECT_TRUE(names_a_field(blame)) << where << ": " << name << ": " << blame;
  }
}

TEST(EmptyCar, BlamesEveryPortItCannotComputeOnNamedFigures) {
  const Car car{Build{}};
  expect_all_told(car, "empty");
  EXPECT_EQ(car.graph().slot("cooling.engine_temperature"), -1);
  EXPECT_GE(car.graph().slot("duty.ambient"), 0);
  EXPECT_TRUE(car.graph().unavailable.at("bus.voltage").contains("charging.battery.capacity"));
}

TEST(DemoCars, LackNothing) {
  for (auto& path : files::builds_in("demo")) {
    const Opened o = open(path, from_disk());
    const Car car(o.build);
    expect_all_told(car, path.filename());
    EXPECT_TRUE(missing_of(car).empty()) << path.filename() << ": " << missing_of(car).front();
    for (auto& [port, missing] : car.graph().unavailable)  // of what a build says nothing of nobody has any
      for (auto& m : missing)
        EXPECT_TRUE(m.ends_with(": nothing of it is described")) << path.filename() << " " << port;
  }
}

/// A starting build lacks only what decides harm; of that the ports need the system voltage alone.
TEST(StartingCars, LackOnlyTheSystemVoltage) {
  for (auto& path : files::builds_in("stock/templates")) {
    const Opened bare = open(path, from_disk());
    const Car car(bare.build), filled(files::open_filled(path).build);
    expect_all_told(car, path.filename());
    const std::vector<std::string> open_lines = {"vehicle.system_voltage"};
    EXPECT_EQ(missing_of(car), open_lines) << path.filename();
    EXPECT_TRUE(missing_of(filled).empty()) << path.filename();
  }
}

/// Taking out any one figure of a sound car leaves a graph that is whole, or says by name what it lacks.
TEST(OneFigureLess, IsToldByItsNameOrNotNeeded) {
  Opened o = open(files::root() / "demo/sound.toml", from_disk());
  std::vector<LeafTo> leaves;
  each_leaf_to(build_fields(), &o.build, "", [&](const LeafTo& leaf) {
    if (leaf.field->access.get && leaf.field->access.get(leaf.owner)) leaves.push_back(leaf);
  });
  ASSERT_GT(leaves.size(), 150u);
  int needed = 0;
  for (auto& leaf : leaves) {
    auto* owner = leaf.owner;
    const auto value = leaf.field->access.get(owner);
    leaf.field->access.set(owner, std::nullopt);
    const Car car(o.build);
    expect_all_told(car, leaf.path);
    // Without a word what a pulley drives it is also told that nothing drives it.
    const auto missing = missing_of(car);
    if (!missing.empty()) {
      ++needed;
      EXPECT_NE(std::find(missing.begin(), missing.end(), leaf.path), missing.end())
          << leaf.path << ": " << missing.front();
    }
    leaf.field->access.set(owner, value);
  }
  EXPECT_GT(needed, 60);
  EXPECT_TRUE(missing_of(Car(o.build)).empty());
}

TEST(Systems, HaveKeysOfTheirOwnAndFields) {
  std::set<std::string_view> keys;
  for (auto& s : bare_systems()) {
    EXPECT_TRUE(keys.insert(s.key).second) << s.key;
    EXPECT_FALSE(s.title.empty()) << s.key;
    EXPECT_FALSE(s.blocks.empty() && s.requirements.empty()) << s.key;
    EXPECT_TRUE(find_field(build_fields(), s.key)) << s.key;
  }
  EXPECT_EQ(keys.size(), Systems::count);
}

/// A mistyped duty or port in a requirement would keep it silent for ever.
TEST(Requirements, NameDutiesAndPortsThatThereAre) {
  const auto ports = port_names();
  std::set<std::string_view> ids;
  for (auto& s : bare_systems())
    for (auto& r : s.requirements) {
      EXPECT_TRUE(ids.insert(r.id).second) << r.id;
      EXPECT_FALSE(r.title.empty() || r.formula.empty() || r.source.empty()) << r.id;
      for (auto key : r.duties) {
        const bool state = key.starts_with("*");
        const auto names = std::span(engine_state_names);
        EXPECT_TRUE(state ? key == "*braking" || std::find(names.begin(), names.end(), key.substr(1)) != names.end()
                          : shipped_duties().find(key) != nullptr)
            << r.id << ": " << key;
      }
      for (auto& p : r.needs) EXPECT_TRUE(ports.contains(p.name)) << r.id << ": " << p.name;
      for (auto name : r.chain) EXPECT_TRUE(ports.contains(name)) << r.id << ": " << name;
    }
  EXPECT_GE(ids.size(), 25u);
}

}  // namespace
}  // namespace sw
