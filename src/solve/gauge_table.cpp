// The table to key into a programmable cluster for the sender there is, with what else pulls at its wire.
#include <algorithm>
#include <cmath>

#include "quantity/customary.hpp"
#include "quantity/print.hpp"
#include "solve/gauge_list.hpp"
#include "solve/list.hpp"

namespace sw {
namespace {

using gauges::DialModel;
using gauges::Terms;

constexpr double worth_it = 0.1;  ///< of what is allowed: less is no reason to key anything in anew
constexpr double zero_f_k = 459.67 / 1.8;
constexpr std::string_view driven = "cruise";  ///< duty whose grounds are told beside the table

/// What stands between the grounds on the road, by the time's mean; 0 where nothing does or it cannot be told.
class Grounds {
 public:
  Grounds(const Car& car, const DutySet& set) : car_(car), set_(set) {}
  double lift_v(const DialModel& m) {
    if (m.ground == m.sender_ground) return 0;
    return mean_v(m.sender_ground) - mean_v(m.ground);
  }

 private:
  double mean_v(gauges::Ground g) {
    if (g == gauges::Ground::battery) return 0;
    run();
    const int slot = car_.graph().slot("ground." + std::string(gauges::ground_names[static_cast<std::size_t>(g)]));
    if (!trace_ || slot < 0) return 0;
    return trace_->late_mean(static_cast<std::size_t>(slot), 1.0);
  }
  void run() {
    if (ran_) return;
    ran_ = true;
    std::vector<bool> wanted;
    for (auto& c : set_.courses) wanted.push_back(c.key == driven);
    traces_ = run_duties(car_, set_, wanted);
    for (std::size_t i = 0; i < traces_.size(); ++i)
      if (wanted[i] && traces_[i].summary.usable() && traces_[i].rows() > 1) trace_ = &traces_[i];
  }

  const Car& car_;
  const DutySet& set_;
  bool ran_ = false;
  std::vector<Trace> traces_;
  const Trace* trace_ = nullptr;
};

/// True values a shop would key in: five degrees of Fahrenheit or two and a half of Celsius, as the scale is drawn,
/// fortieths of any other scale; and both ends.
std::vector<double> round_values(const Terms& t, const DialModel& m) {
  const bool degrees = t.kind.reference == Reference::absolute;
  const auto whole = [](double x) { return std::abs(x - std::round(x)) < 1e-6; };
  const bool celsius = whole(m.gauge.low - zero_celsius_k) && whole(m.gauge.high - zero_celsius_k);
  const double step = degrees ? (celsius ? 2.5 : 5 / 1.8) : m.span() / gauges::steps_of_range;
  const double base = degrees ? (celsius ? zero_celsius_k : zero_f_k) : m.gauge.low;
  std::vector<double> all{m.from};
  for (double k = std::floor((m.from - base) / step) + 1; base + k * step < m.to - 1e-9 * step; ++k)
    if (base + k * step > m.from + 1e-9 * step) all.push_back(base + k * step);
  all.push_back(m.to);
  return all;
}

class Tabling {
 public:
  Tabling(const Car& car, const DutySet& set) : tank_(tank_of(car)), grounds_(car, set) {}

  void dial(const Terms& t, const DialModel& m) {
    if (!m.usable()) return;
    if (m.gauge.kind != gauges::How::electronic) return;
    add_caution(t, out_);
    const bool volts = m.table_in_volts || m.gauge.by_volts;
    if (m.gauge.ohm <= 0) return out_.missing.push_back(m.own_ohm_path);
    const gauges::Instant at{.tank = m.by_depth ? tank_ : gauges::TankShape{}};
    const Curve met = met_at(t, m, at, volts);
    if (!physics::monotone(met))
      return refuse(m.name +
                    ": what reaches its input does not only rise or only fall over the range; the sender's points "
                    "are to be measured again");
    const Curve rows = physics::table_rows(met, m.table_points);
    DialModel after = m;
    after.gauge.expects = rows;
    after.gauge.by_volts = volts;
    after.gauge.law = physics::SenderLaw::straight;
    const double now = std::abs(gauges::worst_error(m, at).error);
    const double then = std::abs(gauges::worst_error(after, at).error);
    if (now <= t.limit_of(m) && then > now - worth_it * t.limit_of(m)) {
      out_.says += (out_.says.empty() ? "" : " ") + m.name + " reads within " + step_words(t, m, now) + " as it is.";
      looked_ = true;
      return;
    }
    if (then > t.limit_of(m))
      return refuse(m.name + ": " + std::to_string(rows.x.size()) + " rows leave " + step_words(t, m, then) +
                    " where " + step_words(t, m, t.limit_of(m)) + " are allowed: a cluster that takes more");
    settle(t, after, now, then);
    lifted(t, after, at);
  }

  Solution take() {
    if (out_.settings.empty() && !refused_.empty()) out_.trouble = refused_;
    if (out_.settings.empty() && refused_.empty() && out_.missing.empty() && !looked_)
      out_.trouble = "no gauge here is electronic: a bimetal or balance cannot be keyed in; see `solve sender-match`";
    if (!out_.settings.empty()) out_.missing.clear();
    if (!out_.settings.empty() && !refused_.empty()) out_.says += " Not done: " + refused_ + ".";
    return std::move(out_);
  }

 private:
  Curve met_at(const Terms& t, const DialModel& m, const gauges::Instant& at, bool volts) const {
    Curve met;
    const auto circuit = gauges::circuit_of(m, at);
    for (double value : round_values(t, m)) {
      const double v = physics::gauge_input_v(m.gauge, circuit, gauges::sender_ohm_at(m, value, at.tank));
      met.x.push_back(value);
      met.y.push_back(volts ? v : m.gauge.ohm * v / (circuit.supply_v - v));
    }
    return met;
  }
  void settle(const Terms& t, const DialModel& m, double now, double then) {
    const Curve& rows = m.gauge.expects;
    const bool volts = m.gauge.by_volts;
    out_.settings.push_back({m.path + (volts ? ".input_volts" : ".expects"), 0, rows});
    out_.says += (out_.says.empty() ? "" : " ") + m.name + ": " + std::to_string(rows.x.size()) + " rows in " +
                 (volts ? "volts" : "ohms") + " bring the largest error from " + step_words(t, m, now) + " to " +
                 step_words(t, m, then) + ".";
    for (std::size_t i = 0; i < rows.x.size(); ++i)
      out_.because.push_back(told(m.name + " at " + print(rows.x[i], t.kind, t.unit, 4), rows.y[i],
                                  volts ? kind::voltage : kind::resistance, volts ? "V" : "ohm"));
    for (auto& o : m.others)
      out_.because.push_back(told(m.name + " is pulled up by another reader through", o.ohm, kind::resistance, "ohm"));
  }
  /// A lift moves with the loads: it is told, and cured by a ground, never keyed in.
  void lifted(const Terms& t, const DialModel& m, gauges::Instant at) {
    at.lift_v = grounds_.lift_v(m);
    if (at.lift_v == 0) return;
    out_.because.push_back(
        told(m.name + ": sender's ground above the gauge's on the road, not keyed in", at.lift_v, kind::voltage, "mV"));
    out_.because.push_back(
        told(m.name + ": largest error with that", std::abs(gauges::worst_error(m, at).error), t.step, t.step_unit));
  }
  void refuse(const std::string& why) { refused_ += (refused_.empty() ? "" : ". ") + why; }

  gauges::TankShape tank_;
  Grounds grounds_;
  bool looked_ = false;
  Solution out_;
  std::string refused_;
};

Solution solve(const Build& build, const DutySet& set) {
  const Car car(build);
  Solution out;
  if (out.missing = missing_of_all(car); !out.missing.empty()) return out;
  Tabling tabling(car, set);
  each_dial(car, [&](const Terms& t, const DialModel& m) { tabling.dial(t, m); });
  return tabling.take();
}

std::vector<std::string> needs(const Build& build) { return missing_of_all(Car(build)); }

}  // namespace

const Solver gauge_table{.key = "gauge-table",
                         .title = "table to key into the cluster",
                         .judged_by = all_readings,
                         .formula =
                             "what the cluster's input meets at round values (sender, the ohms in its ground, "
                             "resistors, other readers), ends "
                             "first, then the row that is farthest off, until the table is full",
                         .source = "Kirchhoff's laws",
                         .solve = solve,
                         .needs = needs};

}  // namespace sw
