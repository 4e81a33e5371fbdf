#include "duty/integrate.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "duty/small_lu.hpp"

namespace sw {
namespace {

constexpr std::size_t N = Rhs::most_states;
const double gamma_ = 1.0 - std::sqrt(0.5);  ///< L-stable choice of the scheme
constexpr int jacobian_life = 12;            ///< steps a Jacobian is kept
constexpr double shortest_step = 1e-4;       ///< s; below it the run is given up
constexpr double guard_width = 1e-3;         ///< s; an event is located this closely
constexpr int chatter_count = 40;            ///< moves of one switch …
constexpr double chatter_span = 60.0;        ///< … within so many seconds
constexpr long most_evaluations = 60000;     ///< of one run, some tenths of a second; an hour's drive takes about a thousand

class Stepper {
 public:
  Stepper(Rhs& rhs, const Course& course, const StepControl& control)
      : rhs_(rhs), course_(course), control_(control), n_(rhs.size()) {}

  Trace run() {
    trace_.width = rhs_.values().size();
    const std::size_t rows = 1024;
    trace_.time.reserve(rows);
    trace_.values.reserve(rows * trace_.width);
    rhs_.get(y_.data());
    rhs_(0.0, y_.data(), f_.data());
    if (rhs_.settle(0.0, y_.data(), f_.data()) < 0) fail(Outcome::chatter, "switches do not settle at the start");
    record();
    double h = control_.first_step;
    while (t_ < course_.duration - 1e-9 && trace_.summary.outcome == Outcome::not_run) {
      h = advance(h);
      if (rhs_.evaluations() > most_evaluations && trace_.summary.outcome == Outcome::not_run) give_up();
    }
    if (trace_.summary.outcome == Outcome::not_run) trace_.summary.outcome = Outcome::done;
    trace_.summary.evaluations = rhs_.evaluations();
    trace_.summary.worst_residual = rhs_.tear_residual();
    return std::move(trace_);
  }

 private:
  void record() {
    trace_.time.push_back(t_);
    trace_.values.insert(trace_.values.end(), rhs_.values().begin(), rhs_.values().end());
  }

  void fail(Outcome outcome, std::string reason) {
    trace_.summary.outcome = outcome;
    trace_.summary.reason = std::move(reason);
  }

  void give_up() {
    fail(Outcome::not_converged, "too much work: " + std::to_string(most_evaluations) + " evaluations have come to " + std::to_string(t_) + " s of " + std::to_string(course_.duration) +
                                     " s; a switch moves too often, or the duty is too long for its method (`rest` is for days of standing)");
  }

  // Column j by a one-sided difference with a step of a thousandth of the state's scale.
  void refresh_jacobian() {
    std::array<double, N> yp = y_, fp{};
    for (std::size_t j = 0; j < n_; ++j) {
      const double step = 1e-3 * rhs_.state(j).info->scale;
      yp[j] = y_[j] + step;
      rhs_(t_, yp.data(), fp.data());
      for (std::size_t i = 0; i < n_; ++i) jacobian_[i * N + j] = (fp[i] - f_[i]) / step;
      yp[j] = y_[j];
    }
    age_ = 0;
    factored_for_ = 0;
  }

  void factor(double h) {
    if (factored_for_ == h) return;
    for (std::size_t i = 0; i < n_; ++i)
      for (std::size_t j = 0; j < n_; ++j) lu_.at(i, j) = (i == j ? 1.0 : 0.0) - gamma_ * h * jacobian_[i * N + j];
    lu_.factor(n_);
    factored_for_ = h;
  }

  /// One step of length h from y_, f_ into y1_; returns the error in tolerances.
  double attempt(double h) {
    factor(h);
    std::array<double, N> k1 = f_, k2{}, mid{};
    lu_.solve(k1.data());
    for (std::size_t i = 0; i < n_; ++i) mid[i] = y_[i] + h * k1[i];
    rhs_(t_ + h, mid.data(), k2.data());
    for (std::size_t i = 0; i < n_; ++i) k2[i] -= 2.0 * k1[i];
    lu_.solve(k2.data());
    double worst = 0;
    for (std::size_t i = 0; i < n_; ++i) {
      y1_[i] = y_[i] + 1.5 * h * k1[i] + 0.5 * h * k2[i];
      worst = std::max(worst, std::abs(0.5 * h * (k1[i] + k2[i])) / (control_.tolerance * rhs_.state(i).info->scale));
    }
    return worst;
  }

  double advance(double h) {
    h = std::min({h, control_.longest_step, course_.step_limit(t_), course_.duration - t_});
    if (age_ >= jacobian_life) refresh_jacobian();
    double error = attempt(h);
    while (!(error <= 1.0)) {
      if (h < shortest_step) {
        fail(Outcome::not_converged, "the step fell below " + std::to_string(shortest_step) + " s at " + std::to_string(t_) +
                                         " s: a figure is far outside what the laws cover");
        return h;
      }
      if (age_ > 0) refresh_jacobian();
      h *= std::isfinite(error) ? std::clamp(0.9 / std::sqrt(error), 0.1, 0.7) : 0.1;
      error = attempt(h);
    }
    rhs_(t_ + h, y1_.data(), f1_.data());
    std::size_t which = 0;
    const bool event = rhs_.guard(&which) > 0;
    if (event) h = locate(h, which);
    accept(h);
    if (event && !settle(which)) return h;
    return event ? control_.first_step : next_step(h, error);
  }

  double next_step(double h, double error) const {
    // Small changes of the step are not worth a new factorization.
    const double factor = error > 0 ? 0.9 / std::sqrt(error) : 3.0;
    return factor > 1.0 && factor < 1.4 ? h : h * std::clamp(factor, 0.3, 3.0);
  }

  /// The shortest step at whose end a switch wants to move, to within guard_width; y1_, f1_ belong to it on return.
  double locate(double h, std::size_t& which) {
    double low = 0, high = h;
    while (high - low > guard_width) {
      const double mid = 0.5 * (low + high);
      attempt(mid);
      rhs_(t_ + mid, y1_.data(), f1_.data());
      (rhs_.guard(&which) > 0 ? high : low) = mid;
    }
    attempt(high);
    rhs_(t_ + high, y1_.data(), f1_.data());
    rhs_.guard(&which);
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

  bool settle(std::size_t which) {
    ++trace_.summary.events;
    if (which == last_switch_ && t_ - chatter_from_ < chatter_span) {
      if (++moves_ > chatter_count) {
        fail(Outcome::chatter, "a switch moves to and fro without end at " + std::to_string(t_) + " s: widen its hysteresis");
        return false;
      }
    } else {
      last_switch_ = which;
      chatter_from_ = t_;
      moves_ = 0;
    }
    if (rhs_.settle(t_, y_.data(), f_.data()) < 0) {
      fail(Outcome::chatter, "switches drive each other to and fro at " + std::to_string(t_) + " s");
      return false;
    }
    age_ = jacobian_life;
    record();
    return true;
  }

  Rhs& rhs_;
  const Course& course_;
  StepControl control_;
  std::size_t n_;
  Trace trace_;
  double t_ = 0, factored_for_ = 0;
  int age_ = jacobian_life;
  std::array<double, N> y_{}, y1_{}, f_{}, f1_{};
  std::array<double, N * N> jacobian_{};
  SmallLu<N> lu_;
  std::size_t last_switch_ = ~std::size_t{0};
  double chatter_from_ = 0;
  int moves_ = 0;
};

}  // namespace

StepControl step_control(const Duty& duty) {
  switch (duty.method.value_or(Method::thermal)) {
    case Method::thermal: return {};
    case Method::crank: return {.tolerance = 0.01, .first_step = 0.05, .longest_step = 0.5};
    case Method::pull: return {.tolerance = 0.02, .first_step = 0.05, .longest_step = 0.5};
    case Method::rest: return {.tolerance = 0.02, .first_step = 60.0, .longest_step = 12 * 3600.0};
  }
  return {};
}

Trace integrate(Rhs& rhs, const Course& course, const StepControl& control) { return Stepper(rhs, course, control).run(); }

}  // namespace sw
