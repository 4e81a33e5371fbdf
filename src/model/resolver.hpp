#pragma once
// Reads the inputs a model is made from and notes which are missing, by the field's own path: the path is found from
// the member's address, so no list of names stands beside the field table.
#include <initializer_list>
#include <limits>
#include <map>
#include <optional>
#include <string>
#include <unordered_map>
#include <utility>
#include <vector>

#include "field/walk.hpp"

namespace sw {

/// Paths of missing figures by the name of the one block that cannot run without them.
using MissingOf = std::map<std::string, std::vector<std::string>, std::less<>>;

/// The SI value of what may not have been given.
template <class T>
std::optional<double> given(const std::optional<T>& member) {
  return member ? std::optional<double>(field_detail::to_number(*member)) : std::nullopt;
}

class Resolver {
 public:
  /// `fields` and `root` are those of the whole build; `evidence` its evidence; `spoilt` what could not be read of it.
  Resolver(std::span<const FieldInfo> fields, const void* root, const EvidenceMap& evidence,
           const Spoilt* spoilt = nullptr);

  /// The SI value; where it is missing its path is noted and NaN returned.
  template <class T>
  double need(const std::optional<T>& member) {
    if (member) return field_detail::to_number(*member);
    missing_.push_back(path_of(&member));
    return std::numeric_limits<double>::quiet_NaN();
  }
  /// The same where one block of the system alone cannot run without it: all others do.
  template <class T>
  double need(const std::optional<T>& member, std::string_view block) {
    if (member) return field_detail::to_number(*member);
    missing_of_[std::string(block)].push_back(path_of(&member));
    return std::numeric_limits<double>::quiet_NaN();
  }
  /// The SI value or `other`.
  template <class T>
  double get(const std::optional<T>& member, double other) const {
    return member ? field_detail::to_number(*member) : other;
  }
  /// The curve; where it is missing its path is noted and null returned.
  const Curve* need(const std::optional<Curve>& member) {
    if (member) return &*member;
    missing_.push_back(path_of(&member));
    return nullptr;
  }
  /// Figures that are there and cannot be: a fault of the build at the member's own place. The system is not usable.
  /// Nothing is said where the member or one `beside` it, without which the rule would be another, could not be read:
  /// only members for which something else stands in when they are missing need to be named.
  void fault(const void* member, std::string problem, std::string hint = {},
             std::initializer_list<const void*> beside = {});
  /// The same at a list entry or group that has no member of its own.
  void fault_at(std::string path, std::string problem, std::string hint = {});
  const Diagnostics& faults() const { return faults_; }
  /// Whether something at or below this path was given and could not be read.
  bool spoilt(std::string_view path) const { return spoilt_ && spoilt_->at(path); }

  /// Notes something missing that is not one member, in words: `wiring.run: a run from "alternator" to "battery"`.
  void lacks(std::string what) { missing_.push_back(std::move(what)); }

  /// What every system may know of the whole car: its nominal voltage, set by the first system in the list. Rated volts
  /// that a part does not state are taken at 1.125 times this (13.5 V in a 12 V car).
  double nominal_v = 12;
  /// Which post is joined to the body, and its field's path; set by the same system. Empty: nobody said.
  std::optional<bool> positive_earth;
  std::string earth_path;
  double usual_rated_v() const { return 1.125 * nominal_v; }

  std::string path_of(const void* member) const;
  const Evidence* evidence_of(const void* member) const;
  /// Forgets what was noted and hands it over: called after each system.
  std::vector<std::string> take_missing() { return std::exchange(missing_, {}); }
  /// Likewise what single blocks lack.
  MissingOf take_missing_of() { return std::exchange(missing_of_, {}); }

 private:
  std::unordered_map<const void*, std::string> paths_;  ///< of each member, found once: a car asks hundreds of times
  const EvidenceMap* evidence_;
  const Spoilt* spoilt_;
  std::vector<std::string> missing_;
  MissingOf missing_of_;
  Diagnostics faults_;
};

}  // namespace sw
