#pragma once
// The hand car (hand_car.toml) changed as a test wants it, runs of it with ports read by name, and single blocks fed by
// hand.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>
#include <memory>
#include <sstream>
#include <stdexcept>

#include "duty/duties.hpp"

namespace sw::rig {

inline std::filesystem::path car_folder() { return std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "tests/systems"; }

/// Opens `change` laid over a file beside these tests.
inline Opened laid_over(const std::string& base, const std::string& change) {
  return open(car_folder() / "change.toml", [&](const std::filesystem::path& file) -> std::optional<std::string> {
    if (file.filename() == "change.toml") return "base = \"" + base + "\"\n" + change;
    return from_disk()(file);
  });
}

/// The hand car with a change; the change must be free of faults.
inline Build hand_car(const std::string& change = "") {
  Opened opened = laid_over("hand_car.toml", change);
  for (auto& d : opened.faults.all()) ADD_FAILURE() << say(d, opened.files);
  return std::move(opened.build);
}

/// The hand car with a change that cannot be: its faults are what a test is about.
inline Build faulty_car(const std::string& change) { return std::move(laid_over("hand_car.toml", change).build); }

/// The hand car with a margin to everything.
inline const char* const roomy =
    "[charging.battery]\ncold_crank_current = \"900 A\"\n[cooling.radiator]\nconductance = \"2.6 kW/K\"\n"
    "[cooling.fan.left]\nflow = \"1100 cfm\"\n[cooling.fan.right]\nflow = \"1100 cfm\"\n"
    "[wiring.run.charge]\ngauge = \"2 AWG\"\nfuse = \"175 A\"\nlimit = \"200 A\"\n";
inline Build roomy_car() { return hand_car(roomy); }

/// One car and the runs it was put through.
class Drive {
 public:
  explicit Drive(const Build& build) : car_(std::make_unique<Car>(build)), set_(duties_of(build, from_disk())) {
    for (auto& f : car_->graph().faults) ADD_FAILURE() << f;
    for (auto& s : car_->systems())
      for (auto& m : s.missing)
        if (s.described) ADD_FAILURE() << "missing: " << m;
    for (auto& f : set_->faults.all()) ADD_FAILURE() << f.path << ": " << f.problem;
  }
  Drive(const Build& build, const std::string& duty) : Drive(build) { run(duty); }

  const Trace& run(const std::string& duty) {
    std::vector<bool> wanted(set_->courses.size(), false);
    wanted[index(duty)] = true;
    trace_ = run_duties(*car_, *set_, wanted)[index(duty)];
    EXPECT_TRUE(trace_.summary.usable()) << duty << ": " << trace_.summary.reason;
    return trace_;
  }
  std::size_t index(const std::string& duty) const {
    for (std::size_t i = 0; i < set_->courses.size(); ++i)
      if (set_->courses[i].key == duty) return i;
    throw std::out_of_range("no duty " + duty);
  }
  std::size_t slot(std::string_view port) const {
    const int s = car_->graph().slot(port);
    if (s < 0) throw std::out_of_range("no port " + std::string(port));
    return static_cast<std::size_t>(s);
  }
  double at(std::size_t row, std::string_view port) const { return trace_.at(row, slot(port)); }
  double first(std::string_view port) const { return at(0, port); }
  double last(std::string_view port) const { return at(trace_.rows() - 1, port); }
  double highest(std::string_view port) const { return at(trace_.highest(slot(port)), port); }
  double lowest(std::string_view port) const { return at(trace_.lowest(slot(port)), port); }
  /// Integral over the whole run by the trapezium rule; a port that jumps at an event has a row on either side.
  double integral(std::string_view port) const {
    double sum = 0;
    for (std::size_t r = 1; r < trace_.rows(); ++r)
      sum += 0.5 * (at(r, port) + at(r - 1, port)) * (trace_.time[r] - trace_.time[r - 1]);
    return sum;
  }
  const Car& car() const { return *car_; }
  const DutySet& set() const { return *set_; }
  const Trace& trace() const { return trace_; }

 private:
  std::unique_ptr<Car> car_;
  std::unique_ptr<DutySet> set_;
  Trace trace_;
};

/// One block of a system with its ports in the tester's hand. A port the block both reads and writes (a torn one) is
/// given and got apart, as in a car.
class Bench {
 public:
  Bench(std::span<const Block> blocks, std::string_view name, const void* model) : model_(model) {
    for (auto& b : blocks)
      if (b.name == name) block_ = &b;
    if (!block_) throw std::out_of_range("no block " + std::string(name));
    const std::size_t reads = block_->reads.size(), writes = block_->writes.size(), states = block_->states.size();
    for (std::size_t i = 0; i < reads + writes + states; ++i) {
      auto& list = i < reads ? reads_ : i < reads + writes ? writes_ : rates_;
      list.push_back(static_cast<std::uint16_t>(i));
    }
    values_.assign(reads + writes + states, 0.0);
    if (block_->scratch) scratch_ = block_->scratch(model_);
  }
  Bench& give(std::string_view port, double si) {
    values_[position(block_->reads, port)] = si;
    return *this;
  }
  Bench& run() {
    View v = view();
    block_->evaluate(model_, v);
    return *this;
  }
  double get(std::string_view port) const { return values_[writes_[position(block_->writes, port)]]; }
  double rate(std::string_view state) const {
    for (std::size_t i = 0; i < block_->states.size(); ++i)
      if (block_->states[i].port.name == state) return values_[rates_[i]];
    throw std::out_of_range("no state " + std::string(state));
  }
  double next(double now) { return block_->switches[0].next(model_, view(), now); }
  double guard(double now) { return block_->switches[0].guard(model_, view(), now); }

 private:
  View view() { return {values_.data(), reads_.data(), writes_.data(), rates_.data(), scratch_.get()}; }
  static std::size_t position(std::span<const Port> ports, std::string_view name) {
    for (std::size_t i = 0; i < ports.size(); ++i)
      if (ports[i].name == name) return i;
    throw std::out_of_range("no port " + std::string(name));
  }

  const void* model_;
  const Block* block_ = nullptr;
  std::vector<double> values_;
  std::vector<std::uint16_t> reads_, writes_, rates_;
  std::shared_ptr<void> scratch_;
};
template <class System>
Bench bench(const typename System::Model& model, std::string_view block) {
  return Bench(System::blocks(), block, &model);
}

/// A system's model, and what it says it lacks, resolved from a build.
template <class System>
struct Resolved {
  typename System::Model model;
  std::vector<std::string> missing;
};
template <class System>
Resolved<System> resolved(const Build& build) {
  Resolver r(build_fields(), &build, build.evidence);
  vehicle::System::resolve(std::get<vehicle::Input>(build.inputs), r);  // the first system tells the others the voltage
  r.take_missing();
  Resolved<System> out{System::resolve(std::get<typename System::Input>(build.inputs), r), {}};
  out.missing = r.take_missing();
  return out;
}

// Units of the checks, exact by definition unless said.
inline constexpr double rpm = M_PI / 30, inch = 0.0254, mph = 0.44704, pound = 0.45359237, horsepower = 745.69987158227;
inline constexpr double lbf = 4.4482216152605, lb_ft = 1.3558179483314, zero_c = 273.15, hour = 3600, day = 86400;
inline constexpr double gravity = 9.80665, gallon_min = 3.785411784e-3 / 60, degree = M_PI / 180;

}  // namespace sw::rig
