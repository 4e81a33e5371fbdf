#include "systems/wiring/laid.hpp"

namespace sw::wiring {
namespace {

/// Conductor temperature it is reckoned at: warm cabin or boot, hot engine bay, beside the exhaust (common practice).
constexpr double cabin_k = 303.15, engine_bay_k = 333.15, exhaust_k = engine_bay_k + beside_exhaust_k;
double conductor_k(Zone zone) {
  switch (zone) {
    case Zone::cabin:
    case Zone::boot:
      return cabin_k;
    case Zone::exhaust:
      return exhaust_k;
    case Zone::engine_bay:
      break;
  }
  return engine_bay_k;
}

/// What nobody chose is told in words.
template <class T>
void tell(const Resolver& r, const std::optional<T>& member, Because line, std::vector<Because>& out) {
  if (!member) return;
  const Evidence* e = r.evidence_of(&member);
  line.path = r.path_of(&member);
  line.value = field_detail::to_number(*member);
  line.role = Role::given;
  line.evidence = e ? *e : Evidence{};
  if (e && e->defaulted && e->source == Source::chosen) line.text += " (the careful one, nobody gave it)";
  out.push_back(std::move(line));
}

}  // namespace

double ohm_per_m(Zone zone, double area_m2) {
  return physics::wire_resistance(area_m2, physics::Cable::copper, conductor_k(zone)).per_length_ohm_m;
}

Laid laid(const Wire& w, const Resolver& r) {
  Laid l{.insulation_k = r.get(w.insulation, 353.15),
         .zone = w.zone.value_or(Zone::engine_bay),
         .bundle = w.bundle.value_or(3),
         .told = {}};
  tell(r, w.gauge, {.what = "wire size", .kind = &kind::wire_size, .unit = "AWG"}, l.told);
  tell(r, w.bundle, {.what = "conductors in the bundle"}, l.told);
  tell(r, w.zone, {.what = "zone", .text = std::string(zone_names[static_cast<std::size_t>(l.zone)])}, l.told);
  tell(r, w.insulation, {.what = "insulation", .kind = &kind::temperature, .unit = "degC"}, l.told);
  return l;
}

physics::Ampacity ampacity(const Conductor& c, std::optional<double> bay_k) {
  if (!in_bay(c.laid.zone))
    return physics::wire_ampacity(c.area_m2, c.laid.insulation_k, physics::Zone::cabin, c.laid.bundle);
  const double bay = bay_k.value_or(table_air_k(Zone::engine_bay));
  return physics::wire_ampacity(c.area_m2, c.laid.insulation_k, physics::Zone::engine_bay, c.laid.bundle,
                                air_k(c.laid.zone, bay));
}

double settles_at_k(const Conductor& c, double current_a, double bay_k) {
  const double air = air_k(c.laid.zone, bay_k);
  return air + physics::wire_rise(current_a, ampacity(c, bay_k).current_a, c.laid.insulation_k - air).rise_k;
}

}  // namespace sw::wiring
