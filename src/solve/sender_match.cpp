// Resistors between a sender and its gauge at which what is shown comes nearest to what is true.
#include <algorithm>
#include <cmath>

#include "quantity/print.hpp"
#include "solve/gauge_list.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

using gauges::DialModel;
using gauges::Terms;

constexpr double least_ohm = 1, most_ohm = 10000;  ///< resistors that make sense beside a sender (common practice)

/// The worst error of a network over the range, or at once where it passes `enough`.
double error_with(DialModel& m, const physics::SenderNetwork& n, const gauges::Instant& at, double enough) {
  m.network = n;
  double worst = 0;
  for (int i = 0; i <= gauges::steps_of_range && worst < enough; ++i) {
    const double value = gauges::value_at(m, i);
    worst = std::max(worst, std::abs(gauges::shown(m, value, at).value - value));
  }
  return worst;
}

struct Best {
  physics::SenderNetwork network;
  double error = HUGE_VAL;
};

/// Every pair on sale, and either resistor alone: the error has more than one valley, so none is left out.
Best search(DialModel m, const gauges::Instant& at) {
  const auto values = physics::resistors(physics::ResistorSeries::e24, least_ohm, most_ohm);
  Best best;
  const auto look = [&](const physics::SenderNetwork& n) {
    if (const double e = error_with(m, n, at, best.error); e < best.error) best = {n, e};
  };
  const auto all_series = [&](std::optional<double> parallel) {
    look({0, parallel});
    for (double s : values) look({s, parallel});
  };
  all_series(std::nullopt);
  for (double p : values) all_series(p);
  return best;
}

std::string ohms(double ohm) { return print(ohm, kind::resistance, "ohm", 3); }
std::string network_words(const physics::SenderNetwork& n) {
  const std::string series = n.series_ohm > 0 ? ohms(n.series_ohm) + " in the lead" : "";
  if (!n.parallel_ohm) return series.empty() ? "no resistor" : series;
  return ohms(*n.parallel_ohm) + " from the sender's wire to its ground" + (series.empty() ? "" : " and " + series);
}

/// What the gauge would need instead: the sender's ohms it was made for.
std::string instead(const DialModel& m) {
  const double low = physics::gauge_wants_ohm(m.gauge, m.gauge.low),
               high = physics::gauge_wants_ohm(m.gauge, m.gauge.high);
  return "it wants " + ohms(low) + " at the low end and " + ohms(high) + " at the high end" +
         gauges::family_words(m, low, high) + ", the sender gives " + ohms(m.sender.y.front()) + " and " +
         ohms(m.sender.y.back()) + gauges::family_words(m, m.sender.y.front(), m.sender.y.back()) +
         ": a sender that fits, or an electronic converter";
}

void table(const Terms& t, const DialModel& before, const DialModel& after, const gauges::Instant& at, Solution& out) {
  constexpr int rows = 4;
  for (int i = 0; i <= rows; ++i) {
    const double value = gauges::value_at(after, i * gauges::steps_of_range / rows);
    const std::string true_value = print(value, t.kind, t.unit, 3);
    out.because.push_back(told(before.name + " shown at " + true_value + " without",
                               gauges::shown(before, value, at).value, t.kind, t.unit));
    out.because.push_back(
        told(before.name + " shown at " + true_value + " with", gauges::shown(after, value, at).value, t.kind, t.unit));
  }
}

class Matching {
 public:
  explicit Matching(const Car& car) : tank_(tank_of(car)) {}

  void dial(const Terms& t, const DialModel& m) {
    if (!m.usable()) return;
    add_caution(t, out_);
    const gauges::Instant at{.tank = m.by_depth ? tank_ : gauges::TankShape{}};
    const double now = std::abs(gauges::worst_error(m, at).error), limit = t.limit_of(m);
    if (now <= limit) return add(m.name + " reads within " + step_words(t, m, now) + " as it is.");
    const Best best = search(m, at);
    if (best.error > limit)
      return refuse(m.name + ": no two resistors do it. The best, " + network_words(best.network) + ", leave " +
                    step_words(t, m, best.error) + " where " + step_words(t, m, limit) + " are allowed; " + instead(m));
    if (m.network.parallel_ohm && !best.network.parallel_ohm)
      return refuse(m.name + ": the resistor beside the sender is in the way; take it out of car and build first");
    out_.settings.push_back({m.path + ".series", best.network.series_ohm});
    if (best.network.parallel_ohm) out_.settings.push_back({m.path + ".parallel", *best.network.parallel_ohm});
    add(m.name + ": " + network_words(best.network) + " bring the largest error from " + step_words(t, m, now) +
        " to " + step_words(t, m, best.error) + ".");
    DialModel after = m;
    after.network = best.network;
    table(t, m, after, at, out_);
  }

  Solution take() {
    if (out_.settings.empty() && !refused_.empty()) out_.trouble = refused_;
    if (!out_.settings.empty() && !refused_.empty()) add("Not done: " + refused_ + ".");
    return std::move(out_);
  }

 private:
  void add(const std::string& sentence) { out_.says += (out_.says.empty() ? "" : " ") + sentence; }
  void refuse(const std::string& why) { refused_ += (refused_.empty() ? "" : ". ") + why; }

  gauges::TankShape tank_;
  Solution out_;
  std::string refused_;
};

Solution solve(const Build& build, const DutySet&) {
  const Car car(build);
  Solution out;
  if (out.missing = missing_of_all(car); !out.missing.empty()) return out;
  Matching matching(car);
  each_dial(car, [&](const Terms& t, const DialModel& m) { matching.dial(t, m); });
  return matching.take();
}

std::vector<std::string> needs(const Build& build) { return missing_of_all(Car(build)); }

}  // namespace

const Solver sender_match{
    .key = "sender-match",
    .title = "resistors between sender and gauge",
    .judged_by = all_readings,
    .formula =
        "of all pairs of E24 values from 1 ohm to 10 kohm, one in the lead and one from the sender's wire to its "
        "ground, and of either alone, the one with the least largest error of shown against true",
    .source = "series and parallel resistances; values of IEC 60063",
    .solve = solve,
    .needs = needs};

}  // namespace sw
