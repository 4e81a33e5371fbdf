// Sums of how long work takes.
#include <cmath>

#include "physics/estimate.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

using TimeSquared = Quantity<dim::time_squared>;

struct PointsIn {
  std::optional<Time> shortest, likely, longest;
};
struct PointsOut {
  std::optional<Time> mean, deviation;
  std::optional<TimeSquared> variance;
};
constexpr Argument points_in[] = {
    quantity<&PointsIn::shortest>("shortest", "if all goes well", kind::time).in("h").from(0, 1e6),
    quantity<&PointsIn::likely>("likely", "most likely", kind::time).in("h").from(0, 1e6),
    quantity<&PointsIn::longest>("longest", "if much goes wrong", kind::time).in("h").from(0, 1e6),
};
constexpr Argument points_out[] = {
    result<&PointsOut::mean>("mean", "to be counted on", kind::time, "h"),
    result<&PointsOut::deviation>("deviation", "standard deviation", kind::time, "h"),
    result<&PointsOut::variance>("variance", "adds up from task to task", kind::time_squared, "h2"),
};

void points_check(const PointsIn& in, Remarks& say) {
  if (in.shortest && in.likely && in.shortest->si > in.likely->si)
    say.fault("shortest", "is longer than likely", "shortest, likely and longest in this order");
  if (in.likely && in.longest && in.likely->si > in.longest->si)
    say.fault("longest", "is shorter than likely", "shortest, likely and longest in this order");
}

void three_point(const PointsIn& in, PointsOut& out, Remarks&) {
  const auto e = physics::three_point(in.shortest->si, in.likely->si, in.longest->si);
  out.mean = Time{e.mean_s};
  out.deviation = Time{e.deviation_s};
  out.variance = TimeSquared{e.variance_s2};
}

struct ChanceIn {
  std::optional<Time> mean, deviation;
  std::optional<TimeSquared> variance;
  std::optional<Time> deadline;
};
struct ChanceOut {
  std::optional<double> chance;
};
constexpr Argument chance_in[] = {
    quantity<&ChanceIn::mean>("mean", "of all the work one after the other", kind::time).in("h").from(0, 1e6),
    positive<&ChanceIn::deviation>("deviation", "standard deviation of it", kind::time, "h", 1e6),
    positive<&ChanceIn::variance>("variance", "of it, the sum of the tasks'", kind::time_squared, "h2", 1e12),
    quantity<&ChanceIn::deadline>("deadline", "from the same start", kind::time).in("h").from(0, 1e6),
};
constexpr Argument chance_out[] = {number<&ChanceOut::chance>("chance", "of being done by then")};
constexpr Rule chance_rules[] = {one_of("deviation", "variance")};

void finish_chance(const ChanceIn& in, ChanceOut& out, Remarks&) {
  const double deviation = in.deviation ? in.deviation->si : std::sqrt(in.variance->si);
  out.chance = physics::finish_chance(in.mean->si, deviation, in.deadline->si).value;
}

constexpr std::string_view book = "PERT; Hillier and Lieberman, Introduction to Operations Research (from memory)";
constexpr Sum sums[] = {
    entry<three_point, points_check>({.name = "three-point",
                                      .title = "Time of a task from three guesses",
                                      .inputs = points_in,
                                      .outputs = points_out,
                                      .range = "one task; a task whose three guesses are honest",
                                      .source = book}),
    entry<finish_chance>({.name = "finish-chance",
                          .title = "Chance of being done by a deadline",
                          .inputs = chance_in,
                          .outputs = chance_out,
                          .rules = chance_rules,
                          .range = "many tasks that do not hang on one another, on one chain; waiting for parts and "
                                   "people left out",
                          .source = book}),
};

}  // namespace

std::span<const Sum> estimate_sums() { return sums; }

}  // namespace sw
