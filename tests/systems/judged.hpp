#pragma once
// All requirements of a changed hand car, found by their ids.
#include "proof/judge.hpp"
#include "systems/rig.hpp"

namespace sw::rig {

class Judging {
 public:
  /// `duty`: run that one alone; empty: all.
  explicit Judging(const Build& build, const std::string& duty = "")
      : car_(build), set_(duties_of(build, from_disk())) {
    for (auto& c : set_->courses) wanted_.push_back(duty.empty() || c.key == duty);
    traces_ = run_duties(car_, *set_, wanted_);
    all_ = judge(car_, *set_, traces_, wanted_);
  }
  /// Every judgement of a requirement; of one duty where it is named.
  std::vector<const Judged*> of(std::string_view id, std::string_view duty = {}) const {
    std::vector<const Judged*> found;
    for (auto& j : all_)
      if (j.requirement->id == id && (duty.empty() || (j.duty >= 0 && key(j) == duty))) found.push_back(&j);
    return found;
  }
  const Judged& one(std::string_view id, std::string_view duty = {}, std::string_view place = {}) const {
    for (auto* j : of(id, duty))
      if (place.empty() || j->verdict.place == place) return *j;
    throw std::out_of_range(std::string(id) + " is not judged");
  }
  bool judged(std::string_view id, std::string_view duty, std::string_view place) const {
    for (auto* j : of(id, duty))
      if (j->verdict.place == place) return true;
    return false;
  }
  double highest(std::string_view port, std::string_view duty) const {
    auto& t = trace(duty);
    const auto slot = static_cast<std::size_t>(car_.graph().slot(port));
    return t.at(t.highest(slot), slot);
  }
  const Trace& trace(std::string_view duty) const {
    for (std::size_t i = 0; i < set_->courses.size(); ++i)
      if (set_->courses[i].key == duty) return traces_[i];
    throw std::out_of_range("no duty " + std::string(duty));
  }
  const std::string& key(const Judged& j) const { return set_->courses[static_cast<std::size_t>(j.duty)].key; }
  const std::vector<Judged>& all() const { return all_; }
  const Car& car() const { return car_; }
  const DutySet& set() const { return *set_; }

 private:
  Car car_;
  std::unique_ptr<DutySet> set_;
  std::vector<bool> wanted_;
  std::vector<Trace> traces_;
  std::vector<Judged> all_;
};

}  // namespace sw::rig
