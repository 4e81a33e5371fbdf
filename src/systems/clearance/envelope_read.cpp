#include "systems/clearance/envelope.hpp"

#include <algorithm>
#include <map>

#include "model/needed.hpp"
#include "systems/clearance/clearance.hpp"

namespace sw::clearance {
namespace {

using physics::Vec3;
using Missing = std::vector<std::string>;

Vec3 at(const Point& p, Missing& missing, const Resolver& r) {
  return {needed(p.x, missing, r), needed(p.y, missing, r), needed(p.z, missing, r)};
}
bool placed(const Point& p) { return p.x || p.y || p.z; }

/// A setting with the figures it lacks.
struct Given {
  Moves moves;
  Missing missing;
};
struct GivenTravel {
  Given up, lock;
};
struct GivenBody {
  physics::Solid solid;
  Rides goes_with = Rides::chassis;
  std::string travel;
  Missing missing;
};

/// From one point to another, which must not be one; all figures known.
std::optional<Vec3> line(const Vec3& from, const Vec3& to, const Point& told_at, const char* what, Resolver& r) {
  constexpr double one_place_m = 1e-3;
  if (norm(to - from) > one_place_m) return unit(to - from);
  r.fault(&told_at.x, std::string(what) + " has both its points in one place", "two points well apart");
  return std::nullopt;
}

class Reader {
 public:
  Reader(const Input& in, Resolver& r) : in_(in), r_(r) {
    roll_ = roll();
    for (auto& [name, t] : in.travel) travels_.emplace(name, GivenTravel{up(name, t), lock(name, t)});
    for (auto& [name, b] : in.body) bodies_.emplace(name, body(name, b));
  }

  EnvelopeModel envelope(const std::string& name, const Envelope& in) {
    EnvelopeModel e{.place = name, .between = in.between.value_or(Between::moving)};
    e.wanted_m = in.wanted ? in.wanted->si : usual_gap_m(e.between);
    if (!in.between && !in.wanted) e.missing.push_back(r_.path_of(&in.between));
    const GivenBody *a = find(in.first, e), *b = find(in.second, e);
    if (!in.first.empty() && in.first == in.second)
      r_.fault(&in.second, "a body does not stay clear of itself", "another body's name");
    if (!a || !b) return e;
    e.first_on_engine = a->goes_with == Rides::engine;
    e.second_on_engine = b->goes_with == Rides::engine;
    carry(*a, e, e.first);
    carry(*b, e, e.second);
    if (e.of_engine()) e.front_mounts = roll_.moves.setting.point;
    std::sort(e.missing.begin(), e.missing.end());
    e.missing.erase(std::unique(e.missing.begin(), e.missing.end()), e.missing.end());
    return e;
  }

 private:
  Given roll() {
    const Roll& in = in_.roll;
    Given g{.moves = {.as = Moves::As::roll}};
    const Vec3 front = at(in.front, g.missing, r_), rear = at(in.rear, g.missing, r_);
    const double left = needed(in.left, g.missing, r_), right = needed(in.right, g.missing, r_);
    if (!g.missing.empty()) return g;
    if (const auto axis = line(front, rear, in.front, "the engine's roll axis", r_))
      g.moves.setting = {front, *axis, true, -right, left};
    return g;
  }

  Given up(const std::string& name, const Travel& in) {
    Given g{.moves = {.as = Moves::As::lift, .travel = name}};
    const double bump = needed(in.bump, g.missing, r_), droop = needed(in.droop, g.missing, r_);
    g.moves.setting = {{}, {0, 0, 1}, false, -droop, bump};
    if (!placed(in.pivot_front) && !placed(in.pivot_rear)) return g;
    const Vec3 hub = at(in.hub, g.missing, r_), front = at(in.pivot_front, g.missing, r_),
               rear = at(in.pivot_rear, g.missing, r_);
    if (!g.missing.empty()) return g;
    const auto axis = line(front, rear, in.pivot_front, "the pivot", r_);
    if (!axis) return g;
    g.moves.as = Moves::As::swing;
    g.moves.hub = hub;
    const auto down = physics::turn_for_rise(hub, front, *axis, -droop);
    const auto high = physics::turn_for_rise(hub, front, *axis, bump);
    if (!down)
      r_.fault(&in.droop, "the hub does not hang so low on its pivot", "hub and pivot as they lie at ride height");
    if (!high)
      r_.fault(&in.bump, "the hub does not rise so high on its pivot", "hub and pivot as they lie at ride height");
    if (down && high) g.moves.setting = {front, *axis, true, std::min(*down, *high), std::max(*down, *high)};
    return g;
  }

  Given lock(const std::string& name, const Travel& in) {
    Given g{.moves = {.as = Moves::As::lock, .travel = name}};
    const Vec3 low = at(in.pin_low, g.missing, r_), high = at(in.pin_high, g.missing, r_);
    const double left = needed(in.lock_left, g.missing, r_), right = needed(in.lock_right, g.missing, r_);
    if (!g.missing.empty()) return g;
    if (const auto axis = line(low, high, in.pin_low, "the steering pin", r_))
      g.moves.setting = {low, *axis, true, -right, left};
    return g;
  }

  GivenBody body(const std::string& name, const Body& in) {
    GivenBody b;
    if (in.goes_with)
      b.goes_with = *in.goes_with;
    else
      b.missing.push_back(r_.path_of(&in.goes_with));
    std::vector<Vec3> points;
    for (auto& [name, p] : in.point) points.push_back(at(p, b.missing, r_));
    if (points.empty()) b.missing.push_back("clearance.body." + name + ".point");
    if (in.shape == Shape::block)
      block(in, points, b);
    else
      b.solid = {.line = points, .radius_m = needed(in.diameter, b.missing, r_) / 2};
    travel_of(in, b);
    return b;
  }
  void block(const Body& in, const std::vector<Vec3>& points, GivenBody& b) {
    if (in.diameter)
      r_.fault(&in.diameter, "a block has no diameter", "its two corners alone, or shape = \"rod\"", {&in.shape});
    if (!points.empty() && points.size() != 2)
      r_.fault(&in.shape, "a block lies between two opposite corners, not " + std::to_string(points.size()),
               "two points, or shape = \"rod\"");
    if (points.size() != 2 || !b.missing.empty()) return;
    const Vec3 d = points[1] - points[0];
    if (d.x == 0 || d.y == 0 || d.z == 0)
      r_.fault(&in.shape, "the block has no thickness", "opposite corners, apart along all three axes");
    else
      b.solid = physics::block_between(points[0], points[1]);
  }
  void travel_of(const Body& in, GivenBody& b) {
    const bool travels = b.goes_with == Rides::axle || b.goes_with == Rides::steered;
    b.travel = in.travel;
    if (travels && in.travel.empty()) b.missing.push_back(r_.path_of(&in.travel));
    if (!in.travel.empty() && !travels && in.goes_with)
      r_.fault(&in.travel, "it goes with no axle and no wheel", "goes_with = \"the axle\" or \"the steered wheel\"",
               {&in.goes_with});
    if (!in.travel.empty() && !travels_.contains(in.travel)) {
      r_.fault(&in.travel, "\"" + in.travel + "\" is none of the travels", "a name of clearance.travel");
      b.missing.push_back(r_.path_of(&in.travel));
    }
  }

  /// The body of that name; without one the envelope is not read on.
  const GivenBody* find(const std::string& member, EnvelopeModel& e) {
    if (member.empty()) e.missing.push_back(r_.path_of(&member));
    const auto found = bodies_.find(member);
    if (!member.empty() && found == bodies_.end())
      r_.fault(&member, "\"" + member + "\" is none of the bodies", "a name of clearance.body");
    return found == bodies_.end() ? nullptr : &found->second;
  }

  void carry(const GivenBody& b, EnvelopeModel& e, physics::Carried& out) const {
    const auto lacks = [&](const Missing& m) { e.missing.insert(e.missing.end(), m.begin(), m.end()); };
    const auto add = [&](const Given& g) {
      lacks(g.missing);
      const auto same = [&](const Moves& m) { return m.as == g.moves.as && m.travel == g.moves.travel; };
      const auto at = std::find_if(e.moves.begin(), e.moves.end(), same);
      out.settings.push_back(static_cast<std::size_t>(at - e.moves.begin()));
      if (at == e.moves.end()) e.moves.push_back(g.moves);
    };
    lacks(b.missing);
    out.solid = b.solid;
    if (b.goes_with == Rides::engine) add(roll_);
    const auto travel = travels_.find(b.travel);
    if (travel == travels_.end()) return;
    if (b.goes_with == Rides::steered) add(travel->second.lock);  // within what lifts it
    if (b.goes_with == Rides::steered || b.goes_with == Rides::axle) add(travel->second.up);
  }

  const Input& in_;
  Resolver& r_;
  Given roll_;
  std::map<std::string, GivenTravel, std::less<>> travels_;
  std::map<std::string, GivenBody, std::less<>> bodies_;
};

}  // namespace

std::vector<EnvelopeModel> envelopes_of(const Input& in, Resolver& r) {
  Reader reader(in, r);
  std::vector<EnvelopeModel> all;
  for (auto& [name, envelope] : in.envelope) all.push_back(reader.envelope(name, envelope));
  return all;
}

}  // namespace sw::clearance
