#include "physics/dc_network.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace sw::physics::dc {
namespace {

constexpr double leak_s = 1e-9;
constexpr double aim_a = 1e-8;         // the search goes on until the residual is below this
constexpr double accepted_a = 9e-7;    // and is still good below this where rounding stops it
constexpr double longest_step_v = 30;  // of Newton: a power load far from its voltage would else be thrown to infinity,
                                       // where its current, and so the residual, also vanishes
constexpr int most_newton = 40, most_stretches = 20;

using Volts = std::array<double, most_nodes>;

/// Residual and Jacobian, row and column 0 (ground) filled but never solved. jacobian[row * most_nodes + column]
struct System {
  Volts residual;
  std::array<double, most_nodes * most_nodes> jacobian;
  std::array<double, most_branches> slope_s;  ///< [branch]
  double norm2;                               ///< sum of squares over the nodes solved for
  double worst_a;
  NodeIndex worst_node;
};

void clear(System& s, std::size_t n) {
  for (std::size_t k = 0; k < n; ++k) {
    s.residual[k] = 0;
    std::fill_n(s.jacobian.data() + k * most_nodes, n, 0.0);
  }
}

void stamp(System& s, const Branch& b, const Flow& f) {
  double* from = s.jacobian.data() + b.from * most_nodes;
  double* to = s.jacobian.data() + b.to * most_nodes;
  s.residual[b.from] += f.current_a;
  s.residual[b.to] -= f.current_a;
  from[b.from] += f.slope_s, from[b.to] -= f.slope_s;
  to[b.from] -= f.slope_s, to[b.to] += f.slope_s;
  if (f.sense_slope_s == 0) return;
  from[b.sense_plus] += f.sense_slope_s, from[b.sense_minus] -= f.sense_slope_s;
  to[b.sense_plus] -= f.sense_slope_s, to[b.sense_minus] += f.sense_slope_s;
}

void measure(System& s, std::size_t n) {
  s.norm2 = 0, s.worst_a = 0, s.worst_node = ground;
  for (std::size_t k = 1; k < n; ++k) {
    const double r = std::abs(s.residual[k]);
    s.norm2 += r * r;
    if (!(r <= s.worst_a)) s.worst_a = r, s.worst_node = static_cast<NodeIndex>(k);
  }
}

/// `Slopes::passive` takes a falling branch (constant power) as the resistance of its point: the matrix is then that of
/// a passive network and its step points where the real, slightly capacitive circuit would move.
enum class Slopes { true_ones, passive };

void assemble(const Network& net, const Volts& v, Solution& sol, System& s, Slopes slopes = Slopes::true_ones) {
  const std::size_t n = net.node_count;
  clear(s, n);
  for (std::size_t k = 1; k < n; ++k) {
    s.residual[k] = leak_s * v[k];
    s.jacobian[k * most_nodes + k] = leak_s;
  }
  for (std::size_t i = 0; i < net.branch_count; ++i) {
    const Branch& b = net.branches[i];
    Flow f = evaluate(b, v[b.from] - v[b.to], v[b.sense_plus] - v[b.sense_minus], sol.load_v[i]);
    if (slopes == Slopes::passive) f.slope_s = std::abs(f.slope_s);
    sol.current_a[i] = f.current_a;
    sol.load_v[i] = f.load_v;
    s.slope_s[i] = f.slope_s;
    stamp(s, b, f);
  }
  measure(s, n);
}

/// Gaussian elimination with row pivoting on rows and columns 1..n-1; `x` holds the right side, then the answer.
bool eliminate(std::array<double, most_nodes * most_nodes>& a, Volts& x, std::size_t n) {
  for (std::size_t k = 1; k < n; ++k) {
    std::size_t best = k;
    for (std::size_t r = k + 1; r < n; ++r)
      if (std::abs(a[r * most_nodes + k]) > std::abs(a[best * most_nodes + k])) best = r;
    double* pivot = a.data() + k * most_nodes;
    if (best != k) {
      std::swap_ranges(pivot + k, pivot + n, a.data() + best * most_nodes + k);
      std::swap(x[k], x[best]);
    }
    if (!(std::abs(pivot[k]) > 1e-14)) return false;
    const double inverse = 1 / pivot[k];
    for (std::size_t r = k + 1; r < n; ++r) {
      double* row = a.data() + r * most_nodes;
      if (row[k] == 0) continue;
      const double factor = row[k] * inverse;
      for (std::size_t c = k + 1; c < n; ++c) row[c] -= factor * pivot[c];
      x[r] -= factor * x[k];
    }
  }
  for (std::size_t k = n - 1; k >= 1; --k) {
    const double* row = a.data() + k * most_nodes;
    for (std::size_t c = k + 1; c < n; ++c) x[k] -= row[c] * x[c];
    x[k] /= row[k];
  }
  return true;
}

/// The Newton step into `step`; the Jacobian is used up.
bool newton_step(System& s, Volts& step, std::size_t n) {
  for (std::size_t k = 1; k < n; ++k) step[k] = -s.residual[k];
  if (!eliminate(s.jacobian, step, n)) return false;
  for (std::size_t k = 1; k < n; ++k)
    if (!std::isfinite(step[k])) return false;
  return true;
}

double longest(const Volts& step, std::size_t n) {
  double v = 1e-30;
  for (std::size_t k = 1; k < n; ++k) v = std::max(v, std::abs(step[k]));
  return v;
}

double greatest_source_v(const Network& net) {
  double v = 0;
  for (const Branch& b : net.all()) {
    if (!b.closed) continue;
    if (const auto* e = std::get_if<Battery>(&b.law)) v = std::max(v, std::abs(e->emf_v));
    if (const auto* r = std::get_if<RegulatedSource>(&b.law); r && r->greatest_a > 0) v = std::max(v, r->set_v);
  }
  return v;
}

/// A cold start: every branch as the straight line it is at the sources' voltage, one linear solve. A falling line
/// (constant power) is taken as the resistance of its point, so that the start is always that of a passive network.
void start_cold(const Network& net, Solution& sol, System& s) {
  const std::size_t n = net.node_count;
  const double v = greatest_source_v(net);
  sol.node_v.fill(0);
  clear(s, n);
  for (std::size_t k = 1; k < n; ++k) s.jacobian[k * most_nodes + k] = leak_s;
  for (std::size_t i = 0; i < net.branch_count; ++i) {
    const Flow f = evaluate(net.branches[i], v, v, v);
    sol.load_v[i] = f.load_v;
    const double slope = std::abs(f.slope_s);
    stamp(s, net.branches[i], {f.current_a - slope * v, slope, 0, f.load_v});
  }
  Volts step{};
  if (!newton_step(s, step, n)) return;
  const double bound = 1.5 * v + 1;  // a node that hardly anything holds may else start anywhere
  for (std::size_t k = 1; k < n; ++k) sol.node_v[k] = std::clamp(step[k], -bound, bound);
}

/// Where the inner solves of loads behind their leads should begin after a step: on their tangent. Saves an evaluation.
void foresee_loads(const Network& net, const Volts& step, double share, const System& s, Solution& sol) {
  for (std::size_t i = 0; i < net.branch_count; ++i) {
    const Branch& b = net.branches[i];
    if (b.series_ohm > 0) sol.load_v[i] += share * (step[b.from] - step[b.to]) * (1 - b.series_ohm * s.slope_s[i]);
  }
}

enum class Search { done, stuck };

Search damped_newton(const Network& net, Solution& sol, System& s) {
  const std::size_t n = net.node_count;
  Volts step{}, trial{};
  for (int i = 0; i < most_newton; ++i) {
    if (s.worst_a <= aim_a) return Search::done;
    const double before = s.norm2;
    if (!newton_step(s, step, n)) break;
    ++sol.summary.iterations;
    bool fell = false;
    for (double share = std::min(1.0, longest_step_v / longest(step, n)); share > 1e-8 && !fell;
         share *= share > 0.1 ? 0.5 : 0.2) {
      foresee_loads(net, step, share, s, sol);
      for (std::size_t k = 1; k < n; ++k) trial[k] = sol.node_v[k] + share * step[k];
      assemble(net, trial, sol, s);
      fell = s.norm2 < (1 - 1e-4 * share) * before;
    }
    if (!fell) break;
    std::copy_n(trial.begin(), n, sol.node_v.begin());
  }
  assemble(net, sol.node_v, sol, s);
  return s.worst_a <= aim_a ? Search::done : Search::stuck;
}

/// (J + g) step = -F with g, a capacitance over a time step: falling while the way leads on, rising where it turns
/// back. The residual itself may rise on the way, as when a power load sinks to its least voltage.
void follow_transient(const Network& net, Solution& sol, System& s, int steps, double& g) {
  const std::size_t n = net.node_count;
  Volts step{}, last{};
  assemble(net, sol.node_v, sol, s, Slopes::passive);
  for (int i = 0; i < steps && s.worst_a > aim_a; ++i) {
    for (std::size_t k = 1; k < n; ++k) s.jacobian[k * most_nodes + k] += g;
    const bool solved = newton_step(s, step, n);
    ++sol.summary.iterations;
    const double moved_v = solved ? longest(step, n) : 1e9;
    const double turned = std::inner_product(step.begin() + 1, step.begin() + n, last.begin() + 1, 0.0);
    if (moved_v < 5) {  // volts: no further than a step along the transient can be trusted
      for (std::size_t k = 1; k < n; ++k) sol.node_v[k] += step[k];
      last = step;
    }
    assemble(net, sol.node_v, sol, s, Slopes::passive);
    g = std::clamp(g * (moved_v >= 5 ? 8 : turned < 0 ? 3 : moved_v < 2 ? 0.4 : 1), 1e-12, 1e9);
  }
}

/// The slow safe way: stretches of the transient, a Newton search after each from where it has come to.
Search search_safely(const Network& net, Solution& sol, System& s) {
  double g = 10;  // S: of the order of a bus's own conductance
  for (int stretch = 0; stretch < most_stretches; ++stretch) {
    follow_transient(net, sol, s, 20, g);
    if (s.worst_a <= aim_a) return Search::done;
    const Volts reached = sol.node_v;
    assemble(net, sol.node_v, sol, s);
    if (damped_newton(net, sol, s) == Search::done) return Search::done;
    sol.node_v = reached;
  }
  assemble(net, sol.node_v, sol, s);
  return Search::stuck;
}

/// The last way, for a machine that carries the car alone: with no battery to hold the bus a stiff regulator throws the
/// search to and fro between nothing and all it gives. A soft one does not; each solution is where the next, stiffer
/// one starts.
Search search_softened(const Network& net, Solution& sol, System& s) {
  Network soft = net;
  Search end = Search::stuck;
  start_cold(net, sol, s);
  for (double times : {300.0, 100.0, 50.0, 25.0, 12.0, 6.0, 3.0, 1.7, 1.0}) {
    for (std::size_t i = 0; i < net.branch_count; ++i)
      if (auto* r = std::get_if<RegulatedSource>(&soft.branches[i].law))
        r->regulation_ohm = times * std::get<RegulatedSource>(net.branches[i].law).regulation_ohm;
    const Volts from = sol.node_v;
    assemble(soft, sol.node_v, sol, s);
    end = damped_newton(soft, sol, s);
    if (end == Search::done) continue;
    sol.node_v = from;
    end = search_safely(soft, sol, s);
  }
  return end;
}

bool may_start_warm(const Network& net, const Solution& sol) {
  if (!sol.summary.usable()) return false;
  for (std::size_t k = 1; k < net.node_count; ++k)
    if (!std::isfinite(sol.node_v[k])) return false;
  return true;
}

}  // namespace

NodeIndex Network::add_node() {
  assert(node_count < most_nodes);
  return static_cast<NodeIndex>(node_count++);
}

std::size_t Network::add(const Branch& branch) {
  assert(branch_count < most_branches);
  branches[branch_count] = branch;
  return branch_count++;
}

Summary check(const Network& net) {
  for (std::size_t i = 0; i < net.branch_count; ++i) {
    const Branch& b = net.branches[i];
    const char* wrong = fault(b);
    if (std::max({b.from, b.to, b.sense_plus, b.sense_minus}) >= net.node_count)
      wrong = "an end at a node that is not there";
    if (wrong) return {Outcome::bad_input, wrong, 0, ground, static_cast<int>(i), 0};
  }
  return {Outcome::converged, "no fault", 0, ground, -1, 0};
}

const Summary& solve(const Network& net, Solution& sol) {
  System s;
  const bool warm = may_start_warm(net, sol);
  sol.summary = {};
  if (!warm) {
    sol.summary = check(net);
    if (!sol.summary.usable()) return sol.summary;
    start_cold(net, sol, s);
  }
  sol.node_v[ground] = 0;
  assemble(net, sol.node_v, sol, s);
  Search end = damped_newton(net, sol, s);
  if (end == Search::stuck && !(s.worst_a <= accepted_a)) {
    start_cold(net, sol, s);
    end = search_safely(net, sol, s);
    if (end == Search::stuck && !(s.worst_a <= accepted_a)) end = search_softened(net, sol, s);
  }
  sol.summary.worst_residual_a = s.worst_a;
  sol.summary.worst_node = s.worst_node;
  const bool good = end == Search::done || s.worst_a <= accepted_a;  // a NaN compares false
  sol.summary.outcome = good ? Outcome::converged : Outcome::not_converged;
  sol.summary.reason = good ? "currents balance at every node"
                            : "no set of voltages was found at which currents balance: a load may ask for more power "
                              "than its feed can carry";
  return sol.summary;
}

}  // namespace sw::physics::dc
