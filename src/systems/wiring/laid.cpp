#include "systems/wiring/laid.hpp"

namespace sw::wiring {
namespace {

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
  const double bay = bay_k.value_or(physics::table_air_k(physics::Zone::engine_bay));
  return physics::wire_ampacity(c.area_m2, c.laid.insulation_k, physics::Zone::engine_bay, c.laid.bundle,
                                air_k(c.laid.zone, bay));
}

}  // namespace sw::wiring
