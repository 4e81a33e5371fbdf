// Conservation over every demo build and the hand car, in every duty: what comes in is what is stored and what goes
// out. One table of balances with their tolerances; a new build in demo/ is swept without a line here.
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

struct Balance {
  const char* name;
  double tolerance;  ///< of the throughput
  const char* reason;
  /// Residual and throughput over the run, in one unit.
  struct Sums {
    double residual, throughput;
  };
  Sums (*of)(const Drive&);
};

double seconds(const Drive& d, std::size_t row) { return d.trace().time[row] - d.trace().time[row - 1]; }
double middle(const Drive& d, std::size_t row, std::string_view port) {
  return 0.5 * (d.at(row, port) + d.at(row - 1, port));
}

Balance::Sums current(const Drive& d) {
  Balance::Sums worst{0, 1};
  for (std::size_t r = 0; r < d.trace().rows(); ++r)
    worst.residual = std::max(worst.residual, std::abs(d.at(r, "alternator.current") - d.at(r, "load.current") -
                                                       d.at(r, "battery.current") - d.at(r, "starter.current")));
  return worst;
}

Balance::Sums charge(const Drive& d) {
  const double capacity = d.car().model<charging::Model>().capacity_c;
  Balance::Sums s{d.first("battery.charge") - d.last("battery.charge"), 1e-5};
  for (std::size_t r = 1; r < d.trace().rows(); ++r) {
    const double i = middle(d, r, "battery.current"), at = middle(d, r, "battery.charge");
    // Below 1 % of its capacity a battery has ever less to give (docs/systems/charging.md).
    const double kept =
        i <= 0 ? i * std::clamp(at / 0.01, 0.0, 1.0) : i * (0.95 - 0.35 * std::clamp((at - 0.8) / 0.2, 0.0, 1.0));
    s.residual +=
        seconds(d, r) * (kept / capacity - 0.002 / day * std::exp2((d.first("duty.ambient") - 293.15) / 10) * at);
    s.throughput += seconds(d, r) * std::abs(i) / capacity;
  }
  return s;
}

/// Engine metal, oil and coolant as one; the figures of sump and tank losses are those the docs name.
Balance::Sums heat(const Drive& d) {
  const auto& e = d.car().model<engine::Model>();
  const auto& c = d.car().model<cooling::Model>();
  Balance::Sums s{0, 1e3};
  for (std::size_t r = 1; r < d.trace().rows(); ++r) {
    const auto mid = [&](auto port) { return middle(d, r, port); };
    const auto rise = [&](auto port) { return d.at(r, port) - d.at(r - 1, port); };
    const auto fluid = cooling::coolant_at(c, mid("cooling.engine_temperature"));
    const double ambient = mid("duty.ambient");
    const double stored =
        e.metal_j_k * rise("engine.metal_temperature") + e.oil_j_k * rise("engine.oil_temperature") +
        fluid.density_kg_m3 * fluid.specific_heat_j_kg_k *
            (c.engine_m3 * rise("cooling.engine_temperature") + c.radiator_m3 * rise("cooling.radiator_temperature"));
    const double in = mid("engine.coolant_heat") + mid("engine.oil_heat") + mid("driveline.cooler_heat");
    const double out = mid("radiator.heat") + 8 * (mid("cooling.radiator_temperature") - ambient) +
                       mid("engine.surface_heat") +
                       (15 + 2.5 * mid("road.speed")) * (mid("engine.oil_temperature") - ambient);
    s.residual += seconds(d, r) * (in - out) - stored;
    s.throughput += seconds(d, r) * std::max(in, std::abs(out)) + std::abs(stored) * 0.1;
  }
  return s;
}

Balance::Sums fuel(const Drive& d) {
  Balance::Sums s{0, 1};
  for (std::size_t r = 0; r < d.trace().rows(); ++r) {
    const double rest = d.at(r, "engine.fuel_heat") - d.at(r, "engine.power") - d.at(r, "engine.coolant_heat") -
                        d.at(r, "engine.oil_heat") - d.at(r, "engine.bay_heat");
    s.residual = std::max(s.residual, -rest);
    s.throughput = std::max(s.throughput, d.at(r, "engine.fuel_heat"));
  }
  return s;
}

Balance::Sums shaft(const Drive& d) {
  Balance::Sums s{0, 1};
  for (std::size_t r = 0; r < d.trace().rows(); ++r) {
    const double parts = d.at(r, "alternator.torque") * d.at(r, "engine.speed") * d.at(r, "belts.alternator_ratio") +
                         d.at(r, "cooling.pump_power") + d.at(r, "cooling.fan_power") +
                         d.at(r, "air_conditioning.compressor_power");
    s.residual = std::max(s.residual, std::abs(d.at(r, "accessories.power") - parts));
    s.throughput = std::max(s.throughput, parts);
  }
  return s;
}

Balance::Sums distance(const Drive& d) {
  return {d.last("vehicle.distance") - d.first("vehicle.distance") - d.integral("road.speed"),
          std::max(1.0, d.integral("road.speed"))};
}

constexpr Balance balances[] = {
    {"currents at the bus", 2e-6, "A, in absolute terms: what the network's own search leaves, at two nodes", current},
    {"battery charge", 0.01, "the trapezium rule between rows of an adaptive step", charge},
    {"heat of metal, oil and coolant", 0.02,
     "the trapezium rule, at the corners of a trace too, where power jumps between rows", heat},
    {"heat of the fuel", 0, "an inequality: the exhaust's share is never negative", fuel},
    {"power at the belts", 1e-9, "an identity but for rounding", shaft},
    {"distance", 0.01, "the trapezium rule", distance},
};

std::vector<std::filesystem::path> builds() {
  std::vector<std::filesystem::path> all = {car_folder() / "hand_car.toml"};
  for (auto& e : std::filesystem::directory_iterator(std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo"))
    if (e.path().extension() == ".toml") all.push_back(e.path());
  std::sort(all.begin() + 1, all.end());
  return all;
}

TEST(Balances, HoldOverEveryBuildAndDuty) {
  std::size_t swept = 0;
  for (auto& file : builds()) {
    const Opened opened = open(file, from_disk());
    ASSERT_FALSE(opened.faults.any_fault()) << file;
    Drive d(opened.build);
    for (std::size_t i = 0; i < d.set().courses.size(); ++i) {
      const auto& course = d.set().courses[i];
      d.run(course.key);
      for (auto& b : balances) {
        // Rest duties and cranking keep the thermal states still: there is no balance of them to strike.
        const auto method = course.duty->method.value_or(Method::thermal);
        if ((b.of == heat || b.of == distance) && (method == Method::rest || method == Method::crank)) continue;
        const auto sums = b.of(d);
        EXPECT_LE(std::abs(sums.residual), b.tolerance * sums.throughput)
            << file.filename() << " " << course.key << ": " << b.name << " (" << b.reason << ")";
        ++swept;
      }
    }
  }
  EXPECT_GE(swept, 2u * 12 * 5);
}

}  // namespace
