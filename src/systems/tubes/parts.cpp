#include "systems/tubes/parts.hpp"

#include <numbers>

#include "model/needed.hpp"
#include "physics/sheet_bend.hpp"

namespace sw::tubes {
namespace {

physics::Vec3 place_of(const Point& p, std::vector<std::string>& missing, const Resolver& r) {
  const auto at = [&](const std::optional<Length>& member) { return needed(member, missing, r); };
  return {at(p.x), at(p.y), at(p.z)};
}

HoleModel hole_of(const std::string& bracket, const std::string& name, const Hole& hole, const Bracket& in,
                  Resolver& r) {
  HoleModel h{.place = bracket + " " + name, .name = name, .flange_path = r.path_of(&hole.flange)};
  h.along_m = needed(hole.along, h.missing, r);
  h.radius_m = needed(hole.diameter, h.missing, r) / 2;
  for (std::size_t i = 0; i < in.flange.size(); ++i)
    if (in.flange.entries[i].first == hole.flange) h.flange = i;
  if (hole.flange.empty()) h.missing.push_back(h.flange_path);
  if (!hole.flange.empty() && !h.flange)
    r.fault(&hole.flange, "there is no flange \"" + hole.flange + "\" on this bracket", "name one of its flanges");
  return h;
}

/// By the trial bend where there is one.
double neutral_k(const Bracket& in, const BracketModel& b, Resolver& r) {
  if (!in.deduction || !b.missing.empty()) return physics::usual_bend_k;
  const double k = physics::k_of_deduction(b.radius_m, b.thickness_m, std::numbers::pi / 2, in.deduction->si);
  if (k > 0 && k < 1) return k;
  r.fault(&in.deduction, "a deduction that puts the neutral line outside the sheet",
          "both flanges of a right-angled trial bend, outside, less its flat", {&in.thickness, &in.radius});
  return physics::usual_bend_k;
}

BracketModel bracket_of(const std::string& name, const Bracket& in, Resolver& r) {
  BracketModel b{.place = name,
                 .path = group_of(r.path_of(&in.thickness)),
                 .material = in.material.value_or(Sheet::steel),
                 .flat_m = given(in.flat_length)};
  b.thickness_m = needed(in.thickness, b.missing, r);
  b.radius_m = needed(in.radius, b.missing, r);
  b.k = neutral_k(in, b, r);
  for (auto& [key, flange] : in.flange) {
    b.flanges.push_back(key);
    b.flanges_m.push_back(needed(flange.length, b.missing, r));
    b.angles_rad.push_back(r.get(flange.angle, std::numbers::pi / 2));
  }
  if (b.flanges.empty()) b.missing.push_back(b.path + ".flange");
  if (!b.angles_rad.empty()) b.angles_rad.pop_back();  // nothing is bent after the last
  for (auto& [key, hole] : in.hole) b.holes.push_back(hole_of(name, key, hole, in, r));
  return b;
}

}  // namespace

std::string group_of(const std::string& path) { return path.substr(0, path.rfind('.')); }

std::vector<HotModel> hot_parts(const Input& in, Resolver& r) {
  std::vector<HotModel> all;
  for (auto& [name, hot] : in.hot) {
    HotModel h{.place = name, .wanted_m = given(hot.wanted), .shielded = hot.shielded.value_or(false)};
    h.from = place_of(hot.from, h.missing, r);
    h.to = place_of(hot.to, h.missing, r);
    h.radius_m = needed(hot.radius, h.missing, r);
    all.push_back(std::move(h));
  }
  return all;
}

std::vector<StockModel> sticks(const Input& in, Resolver& r) {
  std::vector<StockModel> all;
  for (auto& [name, stock] : in.stock) {
    StockModel s{.name = name, .material = stock.material.value_or(Material::steel), .count = stock.count.value_or(1)};
    s.outside_m = needed(stock.outside, s.missing, r);
    s.wall_m = needed(stock.wall, s.missing, r);
    s.length_m = needed(stock.length, s.missing, r);
    all.push_back(std::move(s));
  }
  return all;
}

std::vector<HoseModel> hoses(const Input& in, Resolver& r) {
  std::vector<HoseModel> all;
  for (auto& [name, hose] : in.hose) {
    HoseModel h{.place = name,
                .carries = hose.carries,
                .length_m = given(hose.length),
                .bend_m = given(hose.bend_radius),
                .least_m = given(hose.least_radius),
                .carries_path = r.path_of(&hose.carries),
                .length_path = r.path_of(&hose.length),
                .bend_path = r.path_of(&hose.bend_radius),
                .least_path = r.path_of(&hose.least_radius)};
    for (auto& [at, position] : hose.position) {
      const double path = needed(position.path, h.missing, r);
      if (path > h.longest_m.value_or(0)) h.longest_m = path, h.longest_at = at;
    }
    if (h.carries == Carries::brake_fluid && !hose.position.empty())
      r.fault(&hose.carries, "a brake hose with positions: its slack is judged with its axle",
              "brakes.front.hose_slack or brakes.rear.hose_slack");
    all.push_back(std::move(h));
  }
  return all;
}

std::vector<BracketModel> brackets(const Input& in, Resolver& r) {
  std::vector<BracketModel> all;
  for (auto& [name, bracket] : in.bracket) all.push_back(bracket_of(name, bracket, r));
  return all;
}

}  // namespace sw::tubes
