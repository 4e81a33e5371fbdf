#include "car/car.hpp"

#include "model/outside.hpp"

namespace sw {
namespace {

template <class S>
SystemOf describe() {
  return {S::key, S::title, nullptr, {}, {}, true, S::blocks(), S::requirements()};
}

/// Whether the build gives any figure of it, by the evidence of its leaves, or a table for it that waits to be filled.
template <class S>
bool described(const Build& build) {
  if constexpr (requires { S::may_be_left_out; }) {
    const std::string first = std::string(S::key) + ".";
    for (auto at = build.evidence.lower_bound(first); at != build.evidence.end() && at->first.starts_with(first); ++at)
      if (!at->second.defaulted) return true;
    return build.tables.contains(S::key) || build.spoilt.at(S::key);
  }
  return true;
}

template <class S>
SystemOf resolve_one(const Build& build, Systems::Models& models, Resolver& r) {
  auto& model = std::get<typename S::Model>(models);
  SystemOf s = describe<S>();
  s.model = &model;
  s.described = described<S>(build);
  if (!s.described) {
    s.missing = {std::string(S::key) + ": nothing of it is described"};
    return s;
  }
  model = S::resolve(std::get<typename S::Input>(build.inputs), r);
  s.missing = r.take_missing();
  s.missing_of = r.take_missing_of();
  return s;
}

template <class... S>
std::vector<SystemOf> resolve_all(SystemList<S...>, const Build& build, Systems::Models& models, Diagnostics& faults) {
  Resolver r(build_fields(), &build, build.evidence, &build.spoilt);
  std::vector<SystemOf> all;
  (all.push_back(resolve_one<S>(build, models, r)), ...);
  faults = r.faults();
  return all;
}

template <class... S>
std::vector<SystemOf> describe_all(SystemList<S...>) {
  return {describe<S>()...};
}

}  // namespace

Car::Car(const Build& build)
    : systems_(resolve_all(Systems{}, build, models_, faults_)), graph_(join(systems_, outside::all)) {}

std::vector<SystemOf> bare_systems() { return describe_all(Systems{}); }

}  // namespace sw
