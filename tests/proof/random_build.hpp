#pragma once
// Builds drawn at random inside the ranges of the field tables: nothing a user could not write.
#include <random>

#include "car/car.hpp"
#include "physics/wire.hpp"
#include "quantity/unit.hpp"

namespace sw {

struct Chances {
  double missing = 0.03;    ///< a leaf is left empty
  double change = 1.0;      ///< a leaf that has a value gets a new one
  double grow = 0.5;        ///< a list gets entries of its own
  bool wires_stay = false;  ///< runs keep their ends and pulleys what they drive, so that the car stays one
};

class RandomBuild {
 public:
  RandomBuild(std::uint64_t seed, const Chances& chances) : random_(seed), chances_(chances) {}

  void fill(Build& build) {
    table(build_fields(), &build, "");
    build.evidence.clear();
    fill_defaults(build_fields(), &build, "", build.evidence);
  }

 private:
  double share() { return std::uniform_real_distribution<double>(0, 1)(random_); }
  bool happens(double chance) { return share() < chance; }
  std::size_t below(std::size_t n) { return std::uniform_int_distribution<std::size_t>(0, n - 1)(random_); }
  template <class T, std::size_t N>
  T any(const T (&of)[N]) {
    return of[below(N)];
  }

  void table(std::span<const FieldInfo> fields, void* owner, const std::string& path) {
    for (auto& f : fields) {
      const std::string here = path + "." + std::string(f.key);
      if (f.type == FieldType::group)
        table(f.access.children(), f.access.child_to(owner), here);
      else if (f.type == FieldType::list)
        entries(f, owner, here);
      else
        leaf(f, owner);
    }
  }
  void entries(const FieldInfo& f, void* owner, const std::string& path) {
    if (happens(chances_.grow)) {
      static const char* const own[] = {"a", "b", "c", "d", "e", "feed", "charge"};
      static const char* const duties[] = {"hot-idle", "grade",    "cold-crank",   "parked",
                                           "mine",     "hot-soak", "full-throttle"};
      for (std::size_t n = below(4); n > 0; --n) f.access.add(owner, f.key == "duty" ? any(duties) : any(own));
    }
    for (std::size_t i = 0; i < f.access.count(owner); ++i)
      table(f.access.children(), f.access.item_to(owner, i), path);
  }
  void leaf(const FieldInfo& f, void* owner) {
    const bool there = has_value(f, owner);
    if (chances_.wires_stay && there && (f.key == "from" || f.key == "to" || f.key == "drives")) return;
    if (there && !happens(chances_.change)) return;
    const bool leave = happens(f.fallback || !there ? 0.5 : chances_.missing);
    if (f.type == FieldType::text)
      *f.access.text_to(owner) = leave ? "" : word(f);
    else if (f.type == FieldType::names)
      *f.access.names_to(owner) = leave ? std::vector<std::string>{} : conditions();
    else if (f.type == FieldType::curve)
      *f.access.curve_to(owner) = leave ? std::nullopt : std::optional(curve(f));
    else
      f.access.set(owner, leave ? std::nullopt : std::optional(figure(f)));
  }
  std::string word(const FieldInfo& f) {
    static const char* const nodes[] = {"battery", "ground",  "alternator", "block",   "bus",
                                        "body",    "starter", "ammeter",    "lamp_bar"};
    static const char* const duties[] = {"grade", "hot-idle", "mine", "parked"};
    if (f.key == "from" || f.key == "to") return any(nodes);
    if (f.key == "after") return happens(0.3) ? any(duties) : "";
    return f.key == "title" ? "invented" : "";
  }
  std::vector<std::string> conditions() {
    static const char* const all[] = {"always", "key",   "running", "air-conditioning", "night", "rain",
                                      "heat",   "brake", "start"};
    std::vector<std::string> names;
    for (std::size_t n = 1 + below(3); n > 0; --n) names.push_back(any(all));
    return names;
  }
  /// Inside the range: mostly anywhere, now and then at an end.
  double inside(double low, double high, bool open_low, bool open_high) {
    double t = happens(0.1) ? (happens(0.5) ? 0.0 : 1.0) : share();
    if (t == 0 && open_low) t = 1e-6;
    if (t == 1 && open_high) t = 1 - 1e-6;
    // Ranges over decades are drawn by their logarithm half the time, else the small end is never seen.
    if (low > 0 && high / low > 20 && happens(0.5)) return low * std::pow(high / low, t);
    return low + t * (high - low);
  }
  double si(const FieldInfo& f, double x) {
    if (f.type != FieldType::quantity && f.type != FieldType::curve) return x;
    const auto unit = parse_unit_for(unit_of(f), *f.kind);
    return std::holds_alternative<Unit>(unit) ? to_si(x, std::get<Unit>(unit)) : x;
  }
  double figure(const FieldInfo& f) {
    if (f.type == FieldType::yes_no) return happens(0.5) ? 1 : 0;
    if (f.type == FieldType::choice) return static_cast<double>(below(f.choices.size()));
    if (f.kind->wire_gauge) return physics::gauge_area_m2(static_cast<int>(below(26)) - 3);
    const auto& r = f.range;
    const double x = inside(r.low, r.high, r.low_open, r.high_open);
    return f.type == FieldType::integer ? std::round(x) : si(f, x);
  }
  Curve curve(const FieldInfo& f) {
    const std::size_t n = happens(0.03) ? 40 : 2 + below(9);
    const double span = f.kind_x == &kind::shaft_speed ? 1200
                        : f.kind_x == &kind::time      ? 3600
                        : f.kind_x == &kind::power     ? 3e5
                                                       : 30;
    Curve c;
    double x = happens(0.5) ? 0 : 0.1 * span * share();
    for (std::size_t i = 0; i < n; ++i) {
      c.x.push_back(x);
      c.y.push_back(si(f, inside(f.range.low, f.range.high, f.range.low_open, f.range.high_open)));
      x += (0.01 + share()) * span / static_cast<double>(n);
    }
    return c;
  }

  std::mt19937_64 random_;
  Chances chances_;
};

/// Gives a leaf the value it has in another build; it keeps its own where that has no such leaf.
inline void copy_value(Build& to, const Build& from, const std::string& path) {
  const auto there = find_leaf(build_fields(), &from, path);
  const auto here = find_leaf(build_fields(), &to, path);
  if (here.field && there.field) copy_leaf(*here.field, there.owner, here.owner);
}

/// Figures that cannot be together are refused when a build is read, so a draw of them tests little: what is refused
/// takes the value of `sound`, and where that alone does not help its whole group does. True where nothing is refused.
inline bool mend(Build& build, const Build& sound) {
  constexpr int rounds = 6;
  for (int round = 0; round < rounds; ++round) {
    const Car car(build);
    if (!car.faults().any_fault()) return true;
    for (auto& fault : car.faults().all()) {
      copy_value(build, sound, fault.path);
      if (round == 0) continue;
      const std::string group =
          round < 3 ? fault.path.substr(0, fault.path.rfind('.') + 1) : fault.path.substr(0, fault.path.find('.') + 1);
      std::vector<std::string> paths;
      each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) {
        if (leaf.path.starts_with(group)) paths.push_back(leaf.path);
      });
      for (auto& path : paths) copy_value(build, sound, path);
    }
    build.evidence.clear();
    fill_defaults(build_fields(), &build, "", build.evidence);
  }
  return false;
}

}  // namespace sw
