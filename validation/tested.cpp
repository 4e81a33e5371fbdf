#include "tested.hpp"

#include <algorithm>
#include <cmath>

#include "data.hpp"

namespace sw::validation {
namespace {

constexpr double horsepower_w = 745.6998715822702;
constexpr int most_steps = static_cast<int>(driveline::Model::most_gears);  ///< also for a gearbox without steps

double or_zero(double x) { return std::isnan(x) ? 0 : x; }

void read_car(const Table& t, std::size_t r, TestedCar& c) {
  const auto number = [&](std::string_view name) { return t.number(r, t.column(name)); };
  const std::string& box = t.text(r, t.column("transmission"));
  c.mass_kg = number("equivalent_test_weight") * pound_kg;
  c.displacement_m3 = number("displacement") * 1e-3;
  c.power_w = number("rated_hp") * horsepower_w;
  c.axle = number("axle_ratio");
  c.top_rad_m = number("nv_ratio") / mph_m_s * M_PI / 30;
  const int gears = static_cast<int>(number("gears"));
  c.gears = gears < 2 ? most_steps : std::min(gears, most_steps);
  c.automatic = box.find("Manual") == std::string::npos;
  c.hybrid = number("likely_hybrid") > 0;
  c.road = from_pounds_and_mph(number("target_a"), number("target_b"), number("target_c"));
}

}  // namespace

std::vector<TestedCar> tested_cars(const std::filesystem::path& data) {
  const Table t(file_with(data / "epa_test_cars", "extract"));
  std::vector<std::string> order;
  std::map<std::string, TestedCar> cars;
  for (std::size_t r = 0; r < t.rows(); ++r) {
    const std::string &id = t.text(r, t.column("test_vehicle_id")), &procedure = t.text(r, t.column("procedure"));
    if (!cars.contains(id)) order.push_back(id);
    TestedCar& c = cars[id];
    const double mpg = t.number(r, t.column("fuel_economy"));
    if (procedure == "FTP") {
      read_car(t, r, c);
      c.city_mpg = mpg;
      c.cold_mpg = or_zero(t.number(r, t.column("bag1")));
      c.steady_mpg = or_zero(t.number(r, t.column("bag2")));
      c.hot_mpg = or_zero(t.number(r, t.column("bag3")));
    } else if (procedure == "HWFET") {
      c.highway_mpg = mpg;
    }
  }
  std::vector<TestedCar> out;
  for (auto& id : order) out.push_back(cars[id]);
  return out;
}

TestedCar middle_car(const std::filesystem::path& data) {
  std::vector<TestedCar> like;
  for (auto& car : tested_cars(data)) {
    const double litres = car.displacement_m3 * 1e3, power_hp = car.power_w / horsepower_w;
    if (!car.hybrid && litres >= 2.4 && litres <= 2.6 && power_hp >= 170 && power_hp <= 230) like.push_back(car);
  }
  const auto middle = [&](auto figure) {
    std::vector<double> all;
    for (auto& car : like) all.push_back(figure(car));
    return share_point(all, 0.5);
  };
  TestedCar out;
  out.mass_kg = middle([](auto& c) { return c.mass_kg; });
  out.displacement_m3 = middle([](auto& c) { return c.displacement_m3; });
  out.power_w = middle([](auto& c) { return c.power_w; });
  out.axle = middle([](auto& c) { return c.axle; });
  out.top_rad_m = middle([](auto& c) { return c.top_rad_m; });
  out.gears = most_steps;
  out.road = {middle([](auto& c) { return c.road.a_n; }), middle([](auto& c) { return c.road.b_n_s_m; }),
              middle([](auto& c) { return c.road.c_n_s2_m2; })};
  return out;
}

Build build_of(const TestedCar& car, const Build& generic, bool its_road_load) {
  Known known{.mass_kg = car.mass_kg, .displacement_m3 = car.displacement_m3, .power_w = car.power_w};
  if (its_road_load) {
    const auto two = two_figures(car.road, car.mass_kg);
    known.rolling = two.rolling;
    known.drag_area_m2 = two.drag_area_m2;
  }
  Build b = car_like(generic, known);
  give_gears(b, car.gears, car.axle, car.top_rad_m, car.automatic);
  return b;
}

}  // namespace sw::validation
