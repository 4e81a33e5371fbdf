#include "physics/joint.hpp"

#include <algorithm>
#include <complex>
#include <cstddef>
#include <numbers>

namespace sw::physics {
namespace {

constexpr double pi = std::numbers::pi;

double phase_of(const JointChain& c, std::size_t middle) {
  return middle < c.phases_rad.size() ? c.phases_rad[middle] : 0;
}

Vec3 first_pin(const JointChain& c) {
  const Vec3 square = cross(c.shafts[0], c.shafts[1]);
  return norm(square) > 0 ? unit(square) : any_square_to(c.shafts[0]);
}

/// The last driven pin and d out / d in.
struct Driven {
  Vec3 pin;
  double rate = 1;
};
Driven driven(const JointChain& c, const Vec3& pin_at_0, double input) {
  Driven d;
  Vec3 p = turned(pin_at_0, c.shafts[0], input);
  for (std::size_t i = 0; i + 1 < c.shafts.size(); ++i) {
    const Vec3 &a = c.shafts[i], &b = c.shafts[i + 1], u = cross(b, p);
    const double size = norm(u);
    d.pin = u / size;
    d.rate *= dot(cross(b, d.pin), cross(b, cross(a, p))) / size;
    p = turned(d.pin, b, phase_of(c, i));
  }
  return d;
}

/// The least of `f` between `low` and `high`, where it has one valley (golden section).
template <class F>
double least(const F& f, double low, double high) {
  constexpr double part = 1 / std::numbers::phi;
  double a = high - part * (high - low), b = low + part * (high - low), at_a = f(a), at_b = f(b);
  for (int k = 0; k < 26; ++k) {  // a bracket of 4 deg to 3e-7 rad: the value to some 1e-13
    if (at_a < at_b) {
      high = b, b = a, at_b = at_a;
      a = high - part * (high - low), at_a = f(a);
    } else {
      low = a, a = b, at_a = at_b;
      b = low + part * (high - low), at_b = f(b);
    }
  }
  return std::min(at_a, at_b);
}

/// Fastest less slowest on samples alone: near enough to choose by.
double sampled_range(const JointChain& c) {
  constexpr int samples = 36;
  const Vec3 pin = first_pin(c);
  double low = INFINITY, high = -INFINITY;
  for (int k = 0; k < samples; ++k) {
    const double rate = driven(c, pin, pi * k / samples).rate;
    low = std::min(low, rate), high = std::max(high, rate);
  }
  return high - low;
}

constexpr double alike = 1e-12;  ///< fluctuations nearer than this are rounding

/// Every combination of phases on a grid of half a turn; the best, of equals the nearest to 0.
void scan(JointChain& c, int steps) {
  std::vector<int> index(c.phases_rad.size(), 0);
  std::vector<double> best = c.phases_rad;
  double best_range = INFINITY, best_size = INFINITY;
  for (bool more = true; more;) {
    double size = 0;
    for (std::size_t i = 0; i < index.size(); ++i) {
      const int k = index[i] <= steps / 2 ? index[i] : index[i] - steps;
      c.phases_rad[i] = pi * k / steps;
      size += std::abs(c.phases_rad[i]);
    }
    const double range = sampled_range(c);
    if (range < best_range - alike || (range < best_range + alike && size < best_size))
      best = c.phases_rad, best_range = range, best_size = size;
    std::size_t i = 0;
    while (i < index.size() && ++index[i] == steps) index[i++] = 0;
    more = i < index.size();
  }
  c.phases_rad = best;
}

/// Steps in every direction of the grid round the best, halved where none is better. Wide steps go by samples.
void refine(JointChain& c, double step) {
  constexpr double fine = 1e-3, finest = 1e-6;  ///< rad
  const std::size_t n = c.phases_rad.size();
  for (; step > finest; step /= 2) {
    const auto range_of = [&] {
      if (step > fine) return sampled_range(c);
      const Swing s = swing(c);
      return s.fastest - s.slowest;
    };
    double best = range_of();
    for (bool moved = true; moved;) {
      moved = false;
      const std::vector<double> centre = c.phases_rad;
      std::vector<double> found = centre;
      std::vector<int> index(n, -1);
      for (bool more = true; more;) {
        for (std::size_t i = 0; i < n; ++i) c.phases_rad[i] = centre[i] + index[i] * step;
        if (const double range = range_of(); range < best - alike) best = range, found = c.phases_rad, moved = true;
        std::size_t i = 0;
        while (i < n && ++index[i] == 2) index[i++] = -1;
        more = i < n;
      }
      c.phases_rad = found;
    }
  }
}

}  // namespace

double joint_angle(const Vec3& a, const Vec3& b) { return angle_between(a, b); }

Slope joint_turn(const JointChain& c, double input) {
  const Vec3 pin = first_pin(c);
  const Driven at_0 = driven(c, pin, 0), at = driven(c, pin, input);
  const double out = angle_about(c.shafts.back(), at_0.pin, at.pin);
  return {input + std::remainder(out - input, 2 * pi), at.rate};
}

Swing swing(const JointChain& c) {
  constexpr int samples = 90;  // 2 deg: no hump of a joint below 89 deg is narrower
  constexpr double step = pi / samples;
  const Vec3 pin = first_pin(c);
  const auto rate = [&](double t) { return driven(c, pin, t).rate; };
  double slow_at = 0, fast_at = 0, slow = INFINITY, fast = -INFINITY;
  for (int k = 0; k < samples; ++k) {  // half a turn of the input is one whole period
    const double r = rate(k * step);
    if (r < slow) slow = r, slow_at = k * step;
    if (r > fast) fast = r, fast_at = k * step;
  }
  return {std::min(slow, least(rate, slow_at - step, slow_at + step)),
          std::max(fast, -least([&](double t) { return -rate(t); }, fast_at - step, fast_at + step))};
}

std::vector<double> best_phases(const JointChain& chain) {
  if (chain.shafts.size() < 3) return {};
  JointChain c{chain.shafts, std::vector<double>(chain.shafts.size() - 2, 0.0)};
  const int steps = c.phases_rad.size() == 1 ? 72 : c.phases_rad.size() == 2 ? 24 : 8;
  scan(c, steps);
  refine(c, pi / steps / 2);
  for (double& f : c.phases_rad) {
    f = std::remainder(f, pi);
    if (f <= -pi / 2) f += pi;
  }
  return c.phases_rad;
}

double equivalent_angle(const JointChain& c) {
  // A reference carried along without twist: turned with each joint about the square of its plane.
  Vec3 reference = any_square_to(c.shafts[0]);
  std::complex<double> sum = 0;
  double phase = 0;
  for (std::size_t i = 0; i + 1 < c.shafts.size(); ++i) {
    const Vec3 &a = c.shafts[i], &b = c.shafts[i + 1];
    const double angle = joint_angle(a, b);
    if (i > 0) phase += phase_of(c, i - 1);
    const Vec3 square = cross(a, b);
    if (norm(square) == 0) continue;
    const double plane = angle_about(a, reference, square);
    sum += (i % 2 == 0 ? 1 : -1) * angle * angle * std::polar(1.0, 2 * (phase - plane));
    reference = turned(reference, unit(square), angle);
  }
  return std::sqrt(std::abs(sum));
}

JointChain joint_bend(double angle) { return {{{1, 0, 0}, {std::cos(angle), std::sin(angle), 0}}, {}}; }

JointChain joint_pair(double angle1, double angle2, double plane_phase, double yoke_phase) {
  return {{{std::cos(angle1), -std::sin(angle1), 0},
           {1, 0, 0},
           {std::cos(angle2), std::sin(angle2) * std::cos(plane_phase), std::sin(angle2) * std::sin(plane_phase)}},
          {yoke_phase}};
}

Slope joint_fluctuation(double angle) {
  const double c = std::cos(angle), s = std::sin(angle);
  return {1 / c - c, s / (c * c) + s, std::abs(angle) < pi / 2};
}

Slope joint_angle_for(double fluctuation) {
  const double c = (std::hypot(fluctuation, 2) - fluctuation) / 2, angle = std::acos(c);
  return {angle, 1 / joint_fluctuation(angle).slope, fluctuation >= 0};
}

Slope joint_output(double angle, double input, PinAt pin) {
  // In the plane is a quarter turn on from across.
  const double on = pin == PinAt::across ? 0 : pi / 2;
  Slope out = joint_turn(joint_bend(angle), input + on);
  out.value = std::remainder(out.value - on, 2 * pi);
  if (out.value <= -pi) out.value = pi;
  out.valid = std::abs(angle) < pi / 2;
  return out;
}

Slope joint_equal_angle(double angle, PinAt pin) {
  const double c = std::cos(angle), slope = std::sin(angle) / (2 * std::sqrt(c) * (1 + c));
  const bool valid = std::abs(angle) < pi / 2;
  if (pin == PinAt::across) return {std::atan(1 / std::sqrt(c)), slope, valid};
  return {std::atan(std::sqrt(c)), -slope, valid};
}

CompoundAngle compound_angle(double side, double plan) {
  const double s = std::tan(side), p = std::tan(plan), both = std::hypot(s, p);
  if (both == 0) return {0, 1, 1};  // one of them alone is the angle
  const double per = 1 / (both * (1 + both * both));
  return {std::atan(both), s * (1 + s * s) * per, p * (1 + p * p) * per};
}

}  // namespace sw::physics
