// Each belt as it lies: its pulleys on the path, the way it runs, what its adjuster can do.
#include <algorithm>
#include <cmath>
#include <numeric>

#include "physics/belt.hpp"
#include "quantity/print.hpp"
#include "systems/belts/belts.hpp"

namespace sw::belts {
namespace {

constexpr double deg = M_PI / 180;
/// Chalk marks and a place by tape agree so far (common practice); a wrap further off belongs to another drive.
constexpr double wrap_within = 20 * deg;
constexpr double ribbed_line_m = 2e-3;  ///< ISO 9981:2020, 5.4
/// Thread in the metal over the bolt's diameter, at least (common practice: one in iron or steel, one and a half in
/// aluminium).
constexpr double thread_iron = 1.0, thread_aluminium = 1.5;

template <class T>
Asked asked(const std::optional<T>& member, const Resolver& r) {
  Asked a{std::nullopt, r.path_of(&member)};
  if (member) a.value = field_detail::to_number(*member);
  return a;
}

template <class T>
std::optional<double> si_of(const std::optional<T>& member) {
  if (!member) return std::nullopt;
  return field_detail::to_number(*member);
}

bool is_placed(const Pulley& p) { return p.x || p.y; }

OnBelt crank_of(const Belt& b, const Resolver& r) {
  OnBelt c{.name = "crank"};
  c.radius_m = 0.5 * r.get(b.crank_diameter, 0.0);
  c.depth_m.value = 0.0;
  return c;
}

OnBelt on_belt(const std::string& name, const Pulley& p, const Resolver& r) {
  OnBelt o{.name = name};
  if (p.drives) o.drives = 1u << static_cast<unsigned>(*p.drives);
  o.back = p.side == Side::back;
  o.radius_m = 0.5 * r.get(p.diameter, 0.0);
  o.wrap = r.get(p.wrap, 0.0);
  o.x_m = r.get(p.x, 0.0);
  o.y_m = r.get(p.y, 0.0);
  o.shim_m = r.get(p.shim, 0.0);
  o.depth_m = asked(p.depth, r);
  if (o.depth_m.value) *o.depth_m.value += o.shim_m;
  o.torque_n_m = asked(p.torque, r);
  o.rotation = si_of(p.rotation);
  o.highest_rad_s = si_of(p.highest_speed);
  o.room_m = si_of(p.shim_room);
  const std::string path = r.path_of(&p.drives);
  o.path = path.substr(0, path.rfind('.'));
  if (p.bolt && p.engagement) {
    o.least_engagement_m = p.bolt->si * (p.thread == Thread::aluminium ? thread_aluminium : thread_iron);
    o.engagement_m = p.engagement->si - o.shim_m;
    if (o.room_m) o.room_m = std::min(*o.room_m, std::max(0.0, p.engagement->si - o.least_engagement_m));
  }
  return o;
}

/// The pulleys in the order the belt meets them; what sits on the shaft of another shares its pulley.
void set_pulleys(OneBelt& b, const Belt& in, const Resolver& r) {
  std::vector<std::pair<int, std::size_t>> order;
  for (std::size_t i = 0; i < in.pulley.size(); ++i)
    order.emplace_back(in.pulley.entries[i].second.order.value_or(static_cast<int>(i) + 1), i);
  std::stable_sort(order.begin(), order.end(), [](auto& a, auto& c) { return a.first < c.first; });
  b.pulley.push_back(crank_of(in, r));
  for (auto& [place, i] : order) {
    auto& [name, p] = in.pulley.entries[i];
    OnBelt o = on_belt(name, p, r);
    const auto shared = std::find_if(b.pulley.begin(), b.pulley.end(),
                                     [&, &of = p.shaft_of](auto& other) { return !of.empty() && other.name == of; });
    if (shared == b.pulley.end())
      b.pulley.push_back(std::move(o));
    else
      shared->drives |= o.drives;
  }
}

/// Whether the belt goes round the crank against the clock in the order given: its arc's far end against its direction.
bool goes_anticlockwise(const OneBelt& b) {
  const auto& s = b.path.straight.front();
  return (s.from_x_m - b.pulley[0].x_m) * std::sin(s.direction) >
         (s.from_y_m - b.pulley[0].y_m) * std::cos(s.direction);
}

void set_run(OneBelt& b, bool anticlockwise) {
  b.run.resize(b.pulley.size());
  std::iota(b.run.begin(), b.run.end(), std::size_t{0});
  if (b.placed && goes_anticlockwise(b) != anticlockwise) std::reverse(b.run.begin() + 1, b.run.end());
}

physics::BeltPath path_with(const OneBelt& b, std::size_t moved = 0, double x_m = 0, double y_m = 0) {
  std::vector<physics::BeltPulley> all;
  for (std::size_t i = 0; i < b.pulley.size(); ++i) {
    auto& p = b.pulley[i];
    const bool here = moved > 0 && i == moved;
    all.push_back({here ? x_m : p.x_m, here ? y_m : p.y_m, p.radius_m, p.back});
  }
  return physics::belt_path(all);
}

std::string degrees(double angle) { return print(angle, kind::angle, "deg", 3); }

/// A stated wrap that the pulleys' places rule out is a mistake in one of them.
void check_wraps(const OneBelt& b, const Belt& in, Resolver& r) {
  for (auto& [name, p] : in.pulley) {
    const auto at = std::find_if(b.pulley.begin(), b.pulley.end(), [&, n = name](auto& o) { return o.name == n; });
    const Evidence* e = r.evidence_of(&p.wrap);
    if (at == b.pulley.end() || !p.wrap || !e || e->defaulted) continue;
    const double by_place = b.path.wrap[static_cast<std::size_t>(at - b.pulley.begin())];
    if (std::abs(p.wrap->si - by_place) > wrap_within)
      r.fault(&p.wrap, degrees(p.wrap->si) + " of wrap, where the pulleys' places give " + degrees(by_place),
              "leave the wrap out, or measure the places again", {&p.x, &p.y});
  }
}

void set_path(OneBelt& b, const Belt& in, Resolver& r) {
  if (std::none_of(in.pulley.begin(), in.pulley.end(), [](auto& e) { return is_placed(e.second); })) return;
  for (auto& [name, p] : in.pulley) {
    if (!p.shaft_of.empty()) continue;
    for (auto* m : {&p.x, &p.y})
      if (!*m) b.missing.push_back(r.path_of(m));
    if (!p.diameter) b.missing.push_back(r.path_of(&p.diameter));
  }
  if (!in.crank_diameter) b.missing.push_back(r.path_of(&in.crank_diameter));
  // With a figure that could not be read the belt would lie some other way.
  if (b.missing.empty() && r.spoilt(b.path_of_table)) b.missing.push_back(b.path_of_table);
  if (!b.missing.empty()) return;
  b.path = path_with(b);
  if (!b.path.good()) {
    std::vector<std::string> names;
    for (auto& p : b.pulley) names.push_back(p.name);
    b.missing.push_back(b.path_of_table);
    return r.fault_at(b.path_of_table, physics::belt_trouble(b.path, names),
                      "see the places, the order and the sides of its pulleys");
  }
  b.placed = true;
  check_wraps(b, in, r);
  for (std::size_t i = 0; i < b.pulley.size(); ++i) b.pulley[i].wrap = b.path.wrap[i];
}

/// Change of the path's length when the adjusted pulley goes `s` towards the tight end; NaN where it cannot.
struct Motion {
  const OneBelt& belt;
  std::size_t pulley;
  bool straight;
  double direction, pivot_x_m, pivot_y_m, sense;
  double at(double s_m) const {
    const OnBelt& p = belt.pulley[pulley];
    double x = p.x_m + s_m * std::cos(direction), y = p.y_m + s_m * std::sin(direction);
    if (!straight) {
      const double dx = p.x_m - pivot_x_m, dy = p.y_m - pivot_y_m, turn = sense * s_m / std::hypot(dx, dy);
      x = pivot_x_m + dx * std::cos(turn) - dy * std::sin(turn);
      y = pivot_y_m + dx * std::sin(turn) + dy * std::cos(turn);
    }
    const auto path = path_with(belt, pulley, x, y);
    return path.good() ? path.length_m - belt.path.length_m : std::nan("");
  }
};

template <class T>
double needed(const std::optional<T>& member, const Resolver& r, std::vector<std::string>& missing) {
  if (!member) missing.push_back(r.path_of(&member));
  return r.get(member, std::nan(""));
}

void set_ends(AdjusterModel& a, const OneBelt& b, const Adjuster& in, const Resolver& r) {
  const bool arm = a.kind == Adjusts::arm, slide = a.kind == Adjusts::slide;
  const bool moves = b.placed && a.pulley > 0 && (slide ? in.direction.has_value() : in.pivot_x && in.pivot_y);
  double loose = 0, tight = 0;
  if (arm) {
    const double window = needed(in.window, r, a.missing);
    const double length =
        moves ? std::hypot(b.pulley[a.pulley].x_m - in.pivot_x->si, b.pulley[a.pulley].y_m - in.pivot_y->si)
              : needed(in.arm, r, a.missing);
    loose = tight = 0.5 * window * length;
  } else {
    loose = needed(in.loosen, r, a.missing);
    tight = needed(in.tighten, r, a.missing);
  }
  if (!moves && b.placed && a.pulley > 0 && !in.take_up) {
    if (slide) a.missing.push_back(r.path_of(&in.direction));
    if (!slide && !in.pivot_x) a.missing.push_back(r.path_of(&in.pivot_x));
    if (!slide && !in.pivot_y) a.missing.push_back(r.path_of(&in.pivot_y));
    return;
  }
  if (!moves) {
    const double ratio = needed(in.take_up, r, a.missing);
    a.let_on_m = -loose * ratio;
    a.take_up_m = tight * ratio;
    return;
  }
  if (!a.missing.empty()) return;
  Motion m{b, a.pulley, slide, slide ? in.direction->si : 0.0, r.get(in.pivot_x, 0.0), r.get(in.pivot_y, 0.0), 1.0};
  if (!slide && m.at(1e-4) < 0) m.sense = -1;  // an arm tightens the way that makes the path longer
  a.let_on_m = m.at(-loose);
  a.take_up_m = m.at(tight);
}

void set_adjuster(OneBelt& b, const Belt& in, Resolver& r) {
  if (!in.adjuster) return;
  AdjusterModel a;
  const Adjuster& given = *in.adjuster;
  if (!given.kind) a.missing.push_back(r.path_of(&given.kind));
  a.kind = given.kind.value_or(Adjusts::slide);
  const auto at = std::find_if(b.pulley.begin() + 1, b.pulley.end(), [&](auto& p) { return p.name == given.pulley; });
  if (at != b.pulley.end()) a.pulley = static_cast<std::size_t>(at - b.pulley.begin());
  if (!given.pulley.empty() && a.pulley == 0)
    r.fault(&given.pulley, "there is no pulley \"" + given.pulley + "\" on belt " + b.name,
            "name one of the belt's own pulleys");
  set_ends(a, b, given, r);
  b.adjuster = std::move(a);
}

}  // namespace

double OneBelt::line_limit() const { return (ribbed ? 0.33 : 0.5) * deg; }

double OneBelt::span_m(std::size_t i) const {
  // Run backwards, the span after pulley i is the one the order given has before it.
  const std::size_t n = run.size(), from = run[i], to = run[(i + 1) % n];
  return path.straight[(from + 1) % n == to ? from : to].length_m;
}

std::vector<OneBelt> belts_of(const Input& in, Resolver& r) {
  std::vector<OneBelt> all;
  for (auto& [name, belt] : in.belt) {
    OneBelt b{.name = name};
    const std::string path = r.path_of(&belt.section);
    b.path_of_table = path.substr(0, path.rfind('.'));
    b.ribbed = belt.section == Section::ribbed;
    b.sprung = belt.tensioner == Tensioner::sprung;
    b.groove = r.get(belt.groove, 0.0);
    b.friction = r.get(belt.friction, 0.0);
    b.tension_n = r.get(belt.tension, 0.0) * r.get(belt.count, 1);
    b.mass_kg_m = r.get(belt.mass, 0.0) * r.get(belt.count, 1);
    b.length_m = asked(belt.length, r);
    set_pulleys(b, belt, r);
    set_path(b, belt, r);
    set_run(b, in.crank_turns == Turns::anticlockwise);
    const double line = r.get(belt.line_difference, b.ribbed ? ribbed_line_m : 0.0);
    // A line a constant way inside the closed path is shorter by once round.
    if (b.placed)
      b.path_m = b.path.length_m - 2 * M_PI * line;
    else
      b.path_m = si_of(belt.path);
    b.least_radius_m =
        0.5 * r.get(belt.least_diameter, b.ribbed ? physics::ribbed_pk().least_diameter_m + 2 * ribbed_line_m : 0.0);
    set_adjuster(b, belt, r);
    all.push_back(std::move(b));
  }
  return all;
}

}  // namespace sw::belts
