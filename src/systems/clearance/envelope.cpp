#include "systems/clearance/envelope.hpp"

#include <array>

namespace sw::clearance {
namespace {

using physics::Carried;
using physics::Setting;
using physics::SweptDistance;

std::vector<Setting> settings_of(const EnvelopeModel& e) {
  std::vector<Setting> all;
  for (auto& m : e.moves) all.push_back(m.setting);
  return all;
}

/// Sunk and pitched at its front mounts, nose down positive.
Carried stands(Carried body, bool on_engine, const EnvelopeModel& e, const EngineMoved& moved) {
  if (on_engine && moved.at_all())
    body.after = then(physics::turned_about(e.front_mounts, {0, 1, 0}, -moved.pitch_rad),
                      physics::shifted({0, 0, moved.front_rise_m}));
  return body;
}

/// A car is judged a thousand times with one figure moved, and most figures are none of an envelope's: the last
/// searches are remembered, each by all it was asked with.
struct Remembered {
  Carried a, b;
  std::vector<Setting> settings;
  SweptDistance found;
};
SweptDistance searched(Carried a, Carried b, std::vector<Setting> settings) {
  thread_local std::array<Remembered, 16> ring;
  thread_local std::size_t next = 0;
  for (auto& r : ring)
    if (!r.found.pose.empty() && r.a == a && r.b == b && r.settings == settings) return r.found;
  const SweptDistance found = physics::swept_distance(a, b, settings);
  ring[next++ % ring.size()] = {std::move(a), std::move(b), std::move(settings), found};
  return found;
}

}  // namespace

SweptDistance EnvelopeModel::least(const EngineMoved& moved) const {
  return searched(stands(first, first_on_engine, *this, moved), stands(second, second_on_engine, *this, moved),
                  settings_of(*this));
}

double EnvelopeModel::at_rest_m(const EngineMoved& moved) const {
  return distance_at(stands(first, first_on_engine, *this, moved), stands(second, second_on_engine, *this, moved),
                     settings_of(*this), std::vector<double>(moves.size(), 0.0));
}

}  // namespace sw::clearance
