// What is written reads back to the same object and evidence.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>

#include "field/measure.hpp"
#include "field/reading.hpp"

namespace sw::sample {
namespace {

std::string written(const Car& car, const EvidenceMap& evidence) {
  return write_toml(write(Car::fields(), &car, "", evidence));
}

TEST(Write, PlainFiguresAndEvidence) {
  auto r = read_car(
      "[cooling.radiator]\ncore_width = { from = \"measured\", value = \"26 in\", plus_minus = \"1/2 in\" }\n"
      "core_height = \"17 1/4 in\"\ncolour = \"a \\\"b\\\"\"\nflow = \"cross-flow\"\nshrouded = false\n"
      "airflow_loss = [[\"2 m/s\", \"38 Pa\"], [\"4 m/s\", \"130 "
      "Pa\"]]\n[cooling.oil_cooler]\n[wiring.run.b]\n[wiring.run.a]\nlength = \"3 ft\"");
  EXPECT_EQ(written(r.car, r.evidence), R"([cooling.radiator]
core_width = { value = "26 in", from = "measured", plus_minus = "0.5 in" }
core_height = "17.25 in"
shrouded = false
flow = "cross-flow"
colour = "a \"b\""
airflow_loss = [["2 m/s", "38 Pa"], ["4 m/s", "130 Pa"]]

[cooling.oil_cooler]

[wiring.run.b]

[wiring.run.a]
length = "3 ft"
)");
}

TEST(Write, DefaultsAreLeftOut) {
  Car car;
  EvidenceMap evidence;
  fill_defaults(Car::fields(), &car, "", evidence);
  EXPECT_TRUE(car.cooling.radiator.core_height);
  EXPECT_EQ(written(car, evidence), "");
}

/// A value for one leaf, somewhere in its range, with evidence of some kind.
class RandomCar {
 public:
  Car car;
  EvidenceMap evidence;

  RandomCar() {
    for (auto name : {"fan", "pump-2", "z_1"})
      if (coin()) car.wiring.run.entries.emplace_back(name, Wire{});
    if (coin()) car.cooling.oil_cooler.emplace();
    each_leaf(Car::fields(), &car, "", [&](const Leaf& leaf) {
      if (coin()) give(leaf);
    });
  }

 private:
  static bool coin() { return *rc::gen::arbitrary<bool>(); }
  /// Between 0 and 1, with few and with many digits.
  static double share() {
    return *rc::gen::inRange(0, 1001) / 1000.0 + (coin() ? *rc::gen::inRange(0, 1000) * 1e-9 / 3 : 0);
  }

  static double in_range_of(const FieldInfo& f) {
    double low = f.range.set ? f.range.low : 0, high = f.range.set ? f.range.high : 100;
    double x = low + (high - low) * (0.001 + 0.998 * std::min(share(), 1.0));
    return f.type == FieldType::integer ? std::round(x) : x;
  }

  void give(const Leaf& leaf) {
    auto& f = *leaf.field;
    void* owner = const_cast<void*>(leaf.owner);
    double si = 0;
    switch (f.type) {
      case FieldType::text:
        *f.access.text_to(owner) = *rc::gen::element<std::string>("red", "a \"b\"\\", "é\n\x01\x7f", "'''");
        break;
      case FieldType::names:
        *f.access.names_to(owner) = {"left", "é \"x\""};
        break;
      case FieldType::curve:
        *f.access.curve_to(owner) = Curve{{share(), 1.5 + share()}, {share() * 900, share() * 900}};
        break;
      case FieldType::yes_no:
        si = coin();
        break;
      case FieldType::choice:
        si = coin();
        break;
      case FieldType::quantity:
        si = to_si(in_range_of(f), *f.kind, unit_of(f));
        break;
      default:
        si = in_range_of(f);
    }
    if (f.access.set) f.access.set(owner, si);
    evidence[leaf.path] = some_evidence(f, si);
  }

  static Evidence some_evidence(const FieldInfo& f, double si) {
    Evidence e;
    e.source =
        *rc::gen::element(Source::stated, Source::measured, Source::data_sheet, Source::chosen, Source::road_test);
    if (coin()) e.part = "high-idle-140";
    bool text = f.type == FieldType::text || f.type == FieldType::names;
    bool figure = f.type == FieldType::quantity || f.type == FieldType::number || f.type == FieldType::curve;
    e.given_width = figure && coin();
    e.half_width = text ? 0 : e.given_width ? share() : usual_half_width(f, e.source, si);
    return e;
  }
};

/// A part in 1e12 is what print_exact promises; one conversion there and one back stay inside it. Beside a
/// temperature's shifted zero that is a part of the kelvins.
bool close(double a, double b) { return std::abs(a - b) <= 1e-12 * std::max(std::abs(a), std::abs(b)); }

void assert_same(const Leaf& leaf, const void* read) {
  auto& access = leaf.field->access;
  if (access.text) {
    RC_ASSERT(*access.text(leaf.owner) == *access.text(read));
  } else if (access.names) {
    RC_ASSERT(*access.names(leaf.owner) == *access.names(read));
  } else if (access.curve) {
    auto &a = *access.curve(leaf.owner), &b = *access.curve(read);
    RC_ASSERT(a.has_value() == b.has_value());
    for (std::size_t i = 0; a && i < a->x.size(); ++i) RC_ASSERT(close(a->x[i], b->x[i]) && close(a->y[i], b->y[i]));
  } else {
    auto a = access.get(leaf.owner), b = access.get(read);
    RC_ASSERT(a.has_value() == b.has_value());
    if (a) RC_ASSERT(close(*a, *b));
  }
}

RC_GTEST_PROP(Write, ReadsBackToTheSame, ()) {
  RandomCar given;
  std::string text = written(given.car, given.evidence);
  RC_LOG() << text;
  auto r = read_car(text);
  for (auto& line : r.said) RC_LOG() << line << "\n";
  RC_ASSERT(r.said.empty());
  RC_ASSERT(r.car.cooling.oil_cooler.has_value() == given.car.cooling.oil_cooler.has_value());
  RC_ASSERT(r.car.wiring.run.size() == given.car.wiring.run.size());
  for (std::size_t i = 0; i < r.car.wiring.run.size(); ++i)
    RC_ASSERT(r.car.wiring.run.entries[i].first == given.car.wiring.run.entries[i].first);
  each_leaf(Car::fields(), &given.car, "", [&](const Leaf& leaf) {
    auto read = find_leaf(Car::fields(), &r.car, leaf.path);
    RC_ASSERT(read.field == leaf.field);
    assert_same(leaf, read.owner);
  });
  RC_ASSERT(r.evidence.size() == given.evidence.size());
  for (auto& [path, e] : given.evidence) {
    auto& back = r.evidence.at(path);
    RC_ASSERT(back.source == e.source && back.given_width == e.given_width && back.part == e.part && !back.defaulted);
    RC_ASSERT(close(back.half_width, e.half_width));
  }
}

}  // namespace
}  // namespace sw::sample
