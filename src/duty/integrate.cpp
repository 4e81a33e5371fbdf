#include "duty/integrate.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>
#include <limits>

#include "duty/small_lu.hpp"

namespace sw {
namespace {

constexpr std::size_t N = Rhs::most_states;
const double gamma_ = 1.0 - std::sqrt(0.5);  ///< L-stable choice of the scheme
constexpr int jacobian_life = 16;            ///< steps a Jacobian is kept
constexpr double shortest_step = 1e-4;       ///< s; where a shorter one is needed the run is given up
constexpr long most_evaluations = 30000;  ///< of a run, some tenths of a second; an hour's drive takes about a thousand
constexpr long more_a_corner = 12;        ///< evaluations allowed beyond that for each corner of a trace
constexpr long more_an_event = 60;        ///< and for each event, …
constexpr long most_events = 5000;        ///< … of which so many are allowed for: thermostats may work for days
constexpr double guard_width = 1e-3;      ///< s; an event is located this closely
constexpr int chatter_count = 40;         ///< moves of one switch …
constexpr double chatter_span = 60.0;     ///< … within so many seconds

std::string in_words(double x) {
  char text[32];
  std::snprintf(text, sizeof text, "%.6g", x);
  return text;
}

class Stepper {
 public:
  Stepper(Rhs& rhs, const Course& course, const StepControl& control)
      : rhs_(rhs), course_(course), control_(control), n_(rhs.size()), moves_(rhs.switches()) {}

  Trace run() {
    trace_.width = rhs_.values().size();
    const std::size_t rows = 1024;
    trace_.time.reserve(rows);
    trace_.values.reserve(rows * trace_.width);
    rhs_.get(y_.data());
    rhs_(begin(), y_.data(), f_.data());
    if (rhs_.settle(begin(), y_.data(), f_.data()) < 0) fail(Outcome::chatter, "switches do not settle at the start");
    fail_open_loop();
    guard_ = rhs_.guard();
    record();
    double h = control_.first_step;
    while (t_ < course_.duration - 1e-9 && trace_.summary.outcome == Outcome::not_run) h = advance(h);
    if (trace_.summary.outcome == Outcome::not_run) trace_.summary.outcome = Outcome::done;
    trace_.summary.evaluations = rhs_.evaluations();
    return std::move(trace_);
  }

 private:
  // Rates jump at the corners of a speed trace. All evaluations of a step lie between its ends, each on the step's
  // side.
  double begin() const { return t_ + Course::corner_width_s; }
  double end(double h) const { return t_ + h - Course::corner_width_s; }

  void record() {
    trace_.time.push_back(t_);
    trace_.values.insert(trace_.values.end(), rhs_.values().begin(), rhs_.values().end());
    // What a refused step left open has no part in the trace.
    trace_.summary.worst_residual = std::max(trace_.summary.worst_residual, rhs_.tear_residual());
  }

  void fail(Outcome outcome, std::string reason) {
    trace_.summary.outcome = outcome;
    trace_.summary.reason = std::move(reason);
  }

  /// Ends the run where the last evaluation left a torn loop open.
  bool fail_open_loop() {
    const Port* port = rhs_.open_loop();
    if (!port) return false;
    const std::string why = rhs_.no_number();
    fail(Outcome::not_converged,
         "in " + course_.key + " the loop through " + std::string(port->name) + " does not close at " + in_words(t_) +
             " s: " + (why.empty() ? in_words(rhs_.tear_residual()) + " (SI) is left over" : why));
    return true;
  }

  // Column j by a one-sided difference with a step of a thousandth of the state's scale.
  void refresh_jacobian() {
    std::array<double, N> yp = y_, fp{};
    for (std::size_t j = 0; j < n_; ++j) {
      const double step = 1e-3 * rhs_.state(j).info->scale;
      yp[j] = y_[j] + step;
      rhs_(begin(), yp.data(), fp.data());
      for (std::size_t i = 0; i < n_; ++i) jacobian_[i * N + j] = (fp[i] - f_[i]) / step;
      yp[j] = y_[j];
    }
    age_ = 0;
    factored_for_ = 0;
  }

  /// False where the step's matrix is singular: a shorter one is then tried, as after any step that is refused.
  bool factor(double h) {
    if (factored_for_ == h) return true;
    factored_for_ = 0;
    for (std::size_t i = 0; i < n_; ++i)
      for (std::size_t j = 0; j < n_; ++j) lu_.at(i, j) = (i == j ? 1.0 : 0.0) - gamma_ * h * jacobian_[i * N + j];
    if (!lu_.factor(n_)) return false;
    factored_for_ = h;
    return true;
  }

  /// One step of length h from y_, f_ into y1_; returns the error in tolerances.
  double attempt(double h) {
    if (!factor(h)) return std::numeric_limits<double>::infinity();
    std::array<double, N> k1 = f_, k2{}, mid{};
    lu_.solve(k1.data());
    for (std::size_t i = 0; i < n_; ++i) mid[i] = y_[i] + h * k1[i];
    rhs_(end(h), mid.data(), k2.data());
    for (std::size_t i = 0; i < n_; ++i) k2[i] -= 2.0 * k1[i];
    lu_.solve(k2.data());
    if (rhs_.open_loop()) return std::numeric_limits<double>::infinity();
    double worst = 0;
    for (std::size_t i = 0; i < n_; ++i) {
      y1_[i] = y_[i] + 1.5 * h * k1[i] + 0.5 * h * k2[i];
      worst = std::max(worst, std::abs(0.5 * h * (k1[i] + k2[i])) / (control_.tolerance * rhs_.state(i).info->scale));
      if (!std::isfinite(y1_[i])) return std::numeric_limits<double>::infinity();
    }
    return worst;
  }

  double too_short(double h) {
    if (fail_open_loop()) return h;
    // Asked of the last state that was accepted, for in one that is no number everything is none; then of a step on.
    rhs_(begin(), y_.data(), f_.data());
    std::string why = rhs_.no_number();
    if (why.empty()) {
      attempt(h);
      why = rhs_.no_number();
    }
    fail(Outcome::not_converged, "in " + course_.key + " steps of " + in_words(h) + " s would be needed at " +
                                     in_words(t_) + " s: " + why + (why.empty() ? "a" : "; a") +
                                     " figure is far outside what the laws cover");
    return h;
  }

  /// No run may take much longer than a demanding one: what would has a figure, or a duty, that is not meant.
  bool too_much_work() const {
    return rhs_.evaluations() > most_evaluations + more_a_corner * static_cast<long>(course_.time.size()) +
                                    more_an_event * std::min(trace_.summary.events, most_events);
  }
  double give_up_for_work(double h) {
    fail(Outcome::not_converged,
         in_words(static_cast<double>(rhs_.evaluations())) + " evaluations have come to " + in_words(t_) + " s of " +
             in_words(course_.duration) +
             " s: a switch moves too often, or the duty is too long for its method (rest is for days of standing)");
    return h;
  }

  double advance(double wanted) {
    if (wanted < shortest_step) return too_short(wanted);
    if (too_much_work()) return give_up_for_work(wanted);
    double h = std::min({wanted, control_.longest_step, course_.step_limit(t_), course_.duration - t_});
    if (age_ >= jacobian_life) refresh_jacobian();
    double error = attempt(h);
    bool refused = false;
    for (; !(error <= 1.0); refused = true) {
      if (h < shortest_step) return too_short(h);
      // A step refused once was too long, most likely; refused again, the Jacobian may be to blame.
      if (refused && age_ > 0) refresh_jacobian();
      h *= std::isfinite(error) ? std::clamp(0.9 / std::sqrt(error), 0.1, 0.7) : 0.1;
      error = attempt(h);
    }
    rhs_(end(h), y1_.data(), f1_.data());
    std::size_t which = 0;
    const double guard = rhs_.guard(&which);
    bool event = guard > 0;
    if (event)
      h = locate(h, which);
    else
      guard_ = guard;
    accept(h);
    if (fail_open_loop()) return h;
    if (course_.corner_at(t_)) event = turn_corner(which);
    if (event && !settle(which)) return h;
    if (event) return control_.first_step;
    // What was cut short at a corner says nothing of the step after it.
    return refused ? h : std::max(next_step(h, error), std::min(wanted, control_.first_step));
  }

  double next_step(double h, double error) const {
    // Small changes of the step are not worth a new factorization.
    const double factor = error > 0 ? 0.9 / std::sqrt(error) : 3.0;
    return factor > 1.0 && factor < 1.4 ? h : h * std::clamp(factor, 0.3, 3.0);
  }

  double guard_after(double h, std::size_t& which) {
    attempt(h);
    rhs_(end(h), y1_.data(), f1_.data());
    return rhs_.guard(&which);
  }

  /// The shortest step at whose end a switch wants to move, to within guard_width; y1_, f1_ belong to it on return.
  /// False position, aimed just beyond the root on the side of the farther end, so that both ends close in; every
  /// third step halves, for guards that jump.
  double locate(double h, std::size_t& which) {
    double low = 0, at_low = guard_, high = h, at_high = rhs_.guard(), last = h;
    for (int i = 1; high - low > guard_width; ++i) {
      const double root = low + (high - low) * std::clamp(at_low / (at_low - at_high), 0.0, 1.0);
      const double aim = root + (high - root > root - low ? 0.4 : -0.4) * guard_width;
      last = i % 3 == 0 || !(aim > low && aim < high) ? 0.5 * (low + high) : aim;
      const double guard = guard_after(last, which);
      (guard > 0 ? high : low) = last;
      (guard > 0 ? at_high : at_low) = guard;
    }
    if (last != high) guard_after(high, which);
    return high;
  }

  void accept(double h) {
    t_ += h;
    y_ = y1_;
    f_ = f1_;
    ++age_;
    ++trace_.summary.steps;
    record();
  }

  /// Puts f_ on the far side of a corner; true where a switch wants to move there.
  bool turn_corner(std::size_t& which) {
    rhs_(begin(), y_.data(), f_.data());
    record();
    guard_ = rhs_.guard(&which);
    return guard_ > 0;
  }

  bool settle(std::size_t which) {
    ++trace_.summary.events;
    auto& [from, count] = moves_[which];
    if (t_ - from > chatter_span) from = t_, count = 0;
    if (++count > chatter_count) {
      fail(Outcome::chatter, std::string(rhs_.switch_port(which).name) + " moves to and fro without end at " +
                                 in_words(t_) + " s: widen its hysteresis");
      return false;
    }
    if (rhs_.settle(begin(), y_.data(), f_.data()) < 0) {
      fail(Outcome::chatter, std::string(rhs_.switch_port(which).name) +
                                 " and what it acts on drive each other to and fro at " + in_words(t_) + " s");
      return false;
    }
    age_ = jacobian_life;
    guard_ = rhs_.guard();
    record();
    return true;
  }

  Rhs& rhs_;
  const Course& course_;
  StepControl control_;
  std::size_t n_;
  Trace trace_;
  double t_ = 0, factored_for_ = 0, guard_ = 0;  ///< guard_: at the start of the step
  int age_ = jacobian_life;
  std::array<double, N> y_{}, y1_{}, f_{}, f1_{};
  std::array<double, N * N> jacobian_{};
  SmallLu<N> lu_;
  struct Moves {
    double from = 0;
    int count = 0;
  };
  std::vector<Moves> moves_;  ///< of each switch since `from`
};

}  // namespace

StepControl step_control(const Duty& duty) {
  switch (duty.method.value_or(Method::thermal)) {
    case Method::thermal:
      return {};
    case Method::crank:
      return {.tolerance = 0.01, .first_step = 0.05, .longest_step = 0.5};
    case Method::pull:
      return {.tolerance = 0.02, .first_step = 0.05, .longest_step = 0.5};
    case Method::rest:
      return {.tolerance = 0.02, .first_step = 60.0, .longest_step = 12 * 3600.0};
  }
  return {};
}

Trace integrate(Rhs& rhs, const Course& course, const StepControl& control) {
  return Stepper(rhs, course, control).run();
}

}  // namespace sw
