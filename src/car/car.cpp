#include "car/car.hpp"

#include "model/outside.hpp"

namespace sw {
namespace {

template <class S>
SystemOf describe() {
  return {S::key, S::title, nullptr, {}, S::blocks(), S::requirements()};
}

template <class S>
SystemOf resolve_one(const Build& build, Systems::Models& models, Resolver& r) {
  auto& model = std::get<typename S::Model>(models);
  model = S::resolve(std::get<typename S::Input>(build.inputs), r);
  SystemOf s = describe<S>();
  s.model = &model;
  s.missing = r.take_missing();
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
