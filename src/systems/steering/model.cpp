#include <cmath>

#include "model/needed.hpp"
#include "systems/steering/steering.hpp"

namespace sw::steering {
namespace {

using physics::Vec3;

/// Puts the shafts' directions together from the points of column, joints and box.
class ByPoints {
 public:
  ByPoints(const Input& in, Model& m, Resolver& r) : m_(m), r_(r) {
    std::vector<Vec3> points{at(in.column)};
    for (auto& [name, joint] : in.joint) points.push_back(at(joint));
    points.push_back(at(in.box));
    if (!m_.missing.empty()) return;
    for (std::size_t i = 0; i + 1 < points.size(); ++i) {
      const Vec3 leg = points[i + 1] - points[i];
      if (norm(leg) < 1e-3) {
        r_.fault(&in.joint, "two points of the steering shaft lie in one place", "column, joints and box from the top");
        return;
      }
      m_.chain.shafts.push_back(unit(leg));
    }
  }

 private:
  template <class P>
  Vec3 at(const P& p) {
    const auto at = [&](const std::optional<Length>& member) { return needed(member, m_.missing, r_); };
    return {at(p.x), at(p.y), at(p.z)};
  }
  Model& m_;
  Resolver& r_;
};

/// The same from the angles the joints work at: each shaft is the one before it, bent in the plane of its joint.
void by_angles(const Input& in, Model& m, Resolver& r) {
  Vec3 shaft{1, 0, 0}, square{0, 0, 1};  // the axis the last joint bent about
  m.chain.shafts.push_back(shaft);
  for (auto& [name, joint] : in.joint) {
    if (!joint.angle) m.missing.push_back(r.path_of(&joint.angle));
    if (m.chain.shafts.size() > 1 && !joint.plane) m.planes_missing.push_back(r.path_of(&joint.plane));
    square = turned(square, shaft, r.get(joint.plane, 0));
    shaft = turned(shaft, square, r.get(joint.angle, 0));
    m.chain.shafts.push_back(shaft);
  }
}

template <class P>
bool placed(const P& p) {
  return p.x || p.y || p.z;
}

}  // namespace

Model System::resolve(const Input& in, Resolver& r) {
  Model m{.bearings = in.bearings,
          .bearings_path = r.path_of(&in.bearings),
          .engaged_m = given(in.slide.engaged),
          .collapse_m = given(in.collapse),
          .lost_m = r.get(in.slide.lost, 0),
          .least_m = r.get(in.slide.least, 0)};
  bool points = placed(in.column) || placed(in.box), angles = false;
  for (auto& [name, joint] : in.joint) {
    m.joints.push_back(name);
    points |= placed(joint);
    angles |= joint.angle.has_value();
    if (placed(joint) && joint.angle)
      r.fault(&joint.angle, "the joint's angle stands beside the place it would come from", "one of the two");
    if (m.joints.size() == 1) continue;
    m.chain.phases_rad.push_back(r.get(joint.phase, 0));
    m.phase_paths.push_back(r.path_of(&joint.phase));
  }
  if (in.joint.empty()) return m;
  if (points && !angles)
    ByPoints(in, m, r);
  else
    by_angles(in, m, r);
  if (!m.missing.empty()) m.chain.shafts.clear();
  return m;
}

}  // namespace sw::steering
