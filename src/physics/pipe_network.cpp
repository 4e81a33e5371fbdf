#include "physics/pipe_network.hpp"

#include <algorithm>
#include <cmath>

namespace sw::physics::pipes {
namespace {

constexpr double leak_m3_s_pa = 1e-16;      ///< a node nothing feeds rests at the first given pressure
constexpr double aim_m3_s = 1e-11;          ///< residual searched for
constexpr double accepted_m3_s = 1e-10;     ///< residual still usable: 0.4 cm3 an hour
constexpr double root_straight_pa = 100.0;  ///< half-width of the straight piece of a square root
constexpr double one_way_m3_s_pa = 1e-15;   ///< what a shut check valve or pump lets by: 1.8 cm3 an hour at 5 bar
constexpr double usual_m3_s_pa = 1e-10;     ///< conductance the transient begins with
constexpr double near_share = 1e-4;         ///< of a drop: so near a line's flow is searched; one step more squares it
constexpr double far_pa = 1e5;              ///< greatest change of a pressure in one of its steps
constexpr int most_newton = 40, most_transient = 60, most_stretches = 10, most_halvings = 10, most_line_steps = 60;

/// Flow of a line at a drop: Newton within a bracket, from a guess.
Answer line_flow(const Line& line, const PipeFluid& fluid, double drop_pa, double guess) {
  const double wanted = std::abs(drop_pa), sign = drop_pa < 0 ? -1 : 1;
  if (wanted == 0) {
    const double rest = line_drop(line, fluid, 0).slope;
    return {0, 1 / rest, -1 / rest};
  }
  double low = 0, high = INFINITY;
  double q = guess * sign > 0 ? std::abs(guess) : 0;
  if (q == 0) {  // a square law through a flow of 1 L/s turned to the drop wanted
    const double at = line_drop(line, fluid, 1e-3).value;
    q = 1e-3 * std::sqrt(wanted / at);
  }
  Slope d;
  for (int k = 0; k < most_line_steps; ++k) {
    d = line_drop(line, fluid, q);
    const double over = d.value - wanted;
    (over > 0 ? high : low) = q;
    if (std::abs(over) <= near_share * wanted) break;
    const double newton = q - over / d.slope;
    q = newton > low && newton < high ? newton : std::isinf(high) ? 2 * std::max(q, 1e-9) : 0.5 * (low + high);
  }
  return {sign * (q - (d.value - wanted) / d.slope), 1 / d.slope, -1 / d.slope};
}

/// sqrt(dp) with a straight middle, and its slope; odd.
Slope root_of(double dp) {
  const double size = std::abs(dp);
  if (size < root_straight_pa) return {dp / std::sqrt(root_straight_pa), 1 / std::sqrt(root_straight_pa)};
  return {(dp < 0 ? -1 : 1) * std::sqrt(size), 0.5 / std::sqrt(size)};
}

/// q = x C sqrt(dp), x by `sensed` = how far over its set point; d_sensed_from/to: slopes of that.
Answer valve_flow(const Valve& v, double dp, double over_pa, double over_from, double over_to) {
  const double c = v.at_m3_s / std::sqrt(v.least_pa);
  const double x = std::clamp(over_pa / v.band_pa + 0.5, 0.0, 1.0);
  const bool moves = over_pa > -v.band_pa / 2 && over_pa < v.band_pa / 2;
  if (dp <= 0) return {one_way_m3_s_pa * dp, one_way_m3_s_pa, -one_way_m3_s_pa};  // seats against what comes back
  const Slope root = root_of(dp);
  const double by_dp = x * c * root.slope + one_way_m3_s_pa, by_x = moves ? c * root.value / v.band_pa : 0.0;
  return {x * c * root.value + one_way_m3_s_pa * dp, by_dp + by_x * over_from, -by_dp + by_x * over_to};
}

Answer ask(const Line& line, const PipeFluid& fluid, double from_pa, double to_pa, double guess) {
  const double dp = from_pa - to_pa;
  if (line.one_way && dp <= 0) return {one_way_m3_s_pa * dp, one_way_m3_s_pa, -one_way_m3_s_pa};
  return line_flow(line, fluid, dp, guess);
}
Answer ask(const PumpElement& p, const PipeFluid&, double from_pa, double to_pa, double) {
  const auto f = pump_flow(p.curve, to_pa - from_pa, p.volts_share, p.relief_pa);
  const double back = one_way_m3_s_pa * (from_pa - to_pa);
  return {f.flow_m3_s + back, -f.d_pressure + one_way_m3_s_pa, f.d_pressure - one_way_m3_s_pa};
}
Answer ask(const Relief& v, const PipeFluid&, double from_pa, double to_pa, double) {
  return valve_flow(v, from_pa - to_pa, from_pa - v.set_pa, 1, 0);
}
Answer ask(const Reducer& v, const PipeFluid&, double from_pa, double to_pa, double) {
  return valve_flow(v, from_pa - to_pa, v.set_pa - to_pa, 0, -1);
}

/// The balance at the free nodes, and its Jacobian; everything lies in one array that is kept from solve to solve.
class System {
 public:
  System(const Network& net, Solution& sol) : net_(net), sol_(sol), n_(net.nodes.size()) {
    sol.work.assign(n_ * n_ + 3 * n_, 0.0);
    jacobian_ = sol.work.data();
    residual_ = jacobian_ + n_ * n_;
    step_ = residual_ + n_;
    start_ = step_ + n_;
    while (datum_ + 1 < n_ && !net.nodes[datum_].given_pa) ++datum_;
  }

  /// Sum of squares of what does not balance.
  double assemble() {
    std::fill(jacobian_, residual_ + n_, 0.0);
    for (std::size_t i = 0; i < net_.elements.size(); ++i) {
      const Element& e = net_.elements[i];
      const Answer a = evaluate(e, net_.fluid, p(e.from), p(e.to), sol_.flow_m3_s[i]);
      sol_.flow_m3_s[i] = a.flow_m3_s;
      residual_[e.from] += a.flow_m3_s, residual_[e.to] -= a.flow_m3_s;
      at(e.from, e.from) += a.d_from, at(e.from, e.to) += a.d_to;
      at(e.to, e.from) -= a.d_from, at(e.to, e.to) -= a.d_to;
    }
    worst_ = 0;
    double sum = 0;
    for (std::size_t k = 0; k < n_; ++k) {
      if (net_.nodes[k].given_pa) continue;
      residual_[k] += net_.nodes[k].drawn_m3_s + leak_m3_s_pa * (p(k) - p(datum_));
      at(k, k) += leak_m3_s_pa;
      sum += residual_[k] * residual_[k];
      if (!(std::abs(residual_[k]) <= worst_)) worst_ = std::abs(residual_[k]), worst_node_ = k;
    }
    return sum_ = sum;
  }

  /// Solves (J + weight diag) step = -residual on the free nodes; false where it is singular.
  bool find_step(double weight) {
    for (std::size_t k = 0; k < n_; ++k) {
      step_[k] = -residual_[k];
      if (net_.nodes[k].given_pa) {
        for (std::size_t c = 0; c < n_; ++c) at(k, c) = 0;
        at(k, k) = 1, step_[k] = 0;
      } else {
        at(k, k) += weight;
      }
    }
    return eliminate();
  }

  /// Along the step, halved until the balance betters; 0 where it never does.
  double move(double before) {
    for (std::size_t k = 0; k < n_; ++k) start_[k] = p(k);
    double share = 1;
    for (int h = 0; h < most_halvings; ++h, share *= 0.5) {
      for (std::size_t k = 0; k < n_; ++k) sol_.pressure_pa[k] = start_[k] + share * step_[k];
      if (assemble() < before * (1 - 1e-4 * share)) return share;
    }
    for (std::size_t k = 0; k < n_; ++k) sol_.pressure_pa[k] = start_[k];
    assemble();
    return 0;
  }

  /// The whole step, but no node further than `far_pa`: how far it went, and its direction against the last one's.
  std::pair<double, double> go(std::vector<double>& last) {
    double most = 0, turned = 0;
    for (std::size_t k = 0; k < n_; ++k) most = std::max(most, std::abs(step_[k]));
    const double share = most > far_pa ? far_pa / most : 1;
    for (std::size_t k = 0; k < n_; ++k) {
      turned += step_[k] * last[k];
      last[k] = step_[k];
      sol_.pressure_pa[k] += share * step_[k];
    }
    assemble();
    return {most, turned};
  }

  double worst() const { return worst_; }
  double sum() const { return sum_; }
  std::size_t worst_node() const { return worst_node_; }

 private:
  double p(std::size_t k) const { return sol_.pressure_pa[k]; }
  double& at(std::size_t r, std::size_t c) { return jacobian_[r * n_ + c]; }
  bool eliminate() {
    for (std::size_t c = 0; c < n_; ++c) {
      std::size_t pivot = c;
      for (std::size_t r = c + 1; r < n_; ++r)
        if (std::abs(at(r, c)) > std::abs(at(pivot, c))) pivot = r;
      if (!(std::abs(at(pivot, c)) > 0)) return false;
      if (pivot != c) {
        for (std::size_t k = 0; k < n_; ++k) std::swap(at(pivot, k), at(c, k));
        std::swap(step_[pivot], step_[c]);
      }
      for (std::size_t r = c + 1; r < n_; ++r) {
        const double f = at(r, c) / at(c, c);
        if (f == 0) continue;
        for (std::size_t k = c; k < n_; ++k) at(r, k) -= f * at(c, k);
        step_[r] -= f * step_[c];
      }
    }
    for (std::size_t c = n_; c-- > 0;) {
      for (std::size_t k = c + 1; k < n_; ++k) step_[c] -= at(c, k) * step_[k];
      step_[c] /= at(c, c);
      if (!std::isfinite(step_[c])) return false;
    }
    return true;
  }

  const Network& net_;
  Solution& sol_;
  std::size_t n_, datum_ = 0, worst_node_ = 0;
  double *jacobian_ = nullptr, *residual_ = nullptr, *step_ = nullptr, *start_ = nullptr;
  double worst_ = 0, sum_ = 0;
};

/// `shape`: also what does not change from instant to instant.
const char* fault(const Network& net, bool shape) {
  const auto bad = [](double x) { return !std::isfinite(x); };
  if (std::none_of(net.nodes.begin(), net.nodes.end(), [](auto& n) { return n.given_pa.has_value(); }))
    return "no node has a given pressure";
  if (!(net.fluid.density_kg_m3 > 0) || !(net.fluid.viscosity_pa_s > 0)) return "a fluid without density or viscosity";
  for (auto& n : net.nodes)
    if (bad(n.drawn_m3_s) || bad(n.given_pa.value_or(0))) return "a node's figure is no number";
  for (auto& e : net.elements) {
    if (auto* p = std::get_if<PumpElement>(&e.law); p && bad(p->volts_share)) return "a pump's volts are no number";
    if (!shape) continue;
    if (e.from >= net.nodes.size() || e.to >= net.nodes.size()) return "an end at a node that is not there";
    if (auto* l = std::get_if<Line>(&e.law); l && !(line_drop(*l, net.fluid, 1e-3).value > 0))
      return "a line that loses nothing";
  }
  return nullptr;
}

/// Newton's steps, each halved until the balance betters; false where that ends above the aim.
bool damped_newton(System& s, Solution& sol) {
  for (int k = 0; k < most_newton && s.worst() > aim_m3_s; ++k) {
    ++sol.summary.iterations;
    if (!s.find_step(0)) {
      s.assemble();
      return false;
    }
    if (s.move(s.sum()) == 0) return s.worst() <= accepted_m3_s;
  }
  return s.worst() <= aim_m3_s;
}

/// Each node is given a volume that yields, and the network followed towards rest by implicit steps, longer while they
/// lead one way, shorter where they turn. False where a step cannot be found.
bool follow_transient(System& s, Solution& sol) {
  double weight = usual_m3_s_pa;
  std::vector<double> last(sol.pressure_pa.size(), 0.0);
  for (int k = 0; k < most_transient && s.worst() > aim_m3_s; ++k) {
    ++sol.summary.iterations;
    if (!s.find_step(weight)) return false;
    const auto [moved, turned] = s.go(last);
    weight = std::clamp(weight * (moved >= far_pa ? 8 : turned < 0 ? 3 : moved < 0.3 * far_pa ? 0.4 : 1), 1e-16, 1e-3);
  }
  return true;
}

/// Pressures of the free nodes between the given ones, for a first search.
void start_cold(const Network& net, Solution& sol) {
  sol.pressure_pa.assign(net.nodes.size(), 0.0);
  sol.flow_m3_s.assign(net.elements.size(), 0.0);
  double sum = 0, count = 0;
  for (auto& n : net.nodes)
    if (n.given_pa) sum += *n.given_pa, ++count;
  for (std::size_t k = 0; k < net.nodes.size(); ++k) sol.pressure_pa[k] = net.nodes[k].given_pa.value_or(sum / count);
}

}  // namespace

Slope line_drop(const Line& line, const PipeFluid& fluid, double flow_m3_s) {
  Slope sum{line.filters_pa_s_m3 * flow_m3_s, line.filters_pa_s_m3};
  for (auto& piece : line.pieces) {
    const PipeState s = pipe_drop_smooth(piece, fluid, flow_m3_s);
    sum.value += s.pressure_drop_pa;
    sum.slope += s.slope_pa_s_m3;
  }
  return sum;
}

Answer evaluate(const Element& e, const PipeFluid& fluid, double from_pa, double to_pa, double guess_m3_s) {
  return std::visit([&](auto& law) { return ask(law, fluid, from_pa, to_pa, guess_m3_s); }, e.law);
}

const Summary& solve(const Network& net, Solution& sol) {
  const bool warm =
      sol.summary.usable() && sol.pressure_pa.size() == net.nodes.size() && sol.flow_m3_s.size() == net.elements.size();
  sol.summary = {};
  if (const char* wrong = fault(net, !warm)) {
    sol.summary.outcome = Outcome::bad_input;
    sol.summary.reason = wrong;
    return sol.summary;
  }
  if (!warm) start_cold(net, sol);
  for (std::size_t k = 0; k < net.nodes.size(); ++k)
    if (net.nodes[k].given_pa) sol.pressure_pa[k] = *net.nodes[k].given_pa;
  System s(net, sol);
  s.assemble();
  for (int stretch = 0; !damped_newton(s, sol) && stretch < most_stretches; ++stretch)
    if (!follow_transient(s, sol)) break;
  sol.summary.worst_residual_m3_s = s.worst();
  sol.summary.worst_node = s.worst_node();
  const bool good = s.worst() <= accepted_m3_s;
  sol.summary.outcome = good ? Outcome::converged : Outcome::not_converged;
  sol.summary.reason = good ? "flows balance at every node"
                            : "no set of pressures was found at which flows balance: more may be drawn than can come";
  return sol.summary;
}

}  // namespace sw::physics::pipes
