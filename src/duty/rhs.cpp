#include "duty/rhs.hpp"

#include <algorithm>
#include <cassert>
#include <cmath>

#include "model/outside.hpp"

namespace sw {
namespace {

constexpr double tear_tolerance = 1e-7;  ///< of the torn port's own bracket
constexpr double tear_accepted =
    1e-4;  ///< of the bracket: what may be left over where the search ends; more is an open loop
constexpr int most_tear_steps = 60;
constexpr int most_passes = 8;  ///< of the status pass

unsigned alive_bit(const Duty& duty) {
  switch (duty.method.value_or(Method::thermal)) {
    case Method::thermal:
      return in_thermal;
    case Method::crank:
      return in_crank;
    case Method::pull:
      return in_pull;
    case Method::rest:
      return in_rest;
  }
  return in_thermal;
}

}  // namespace

Rhs::Rhs(const Graph& graph, const Course& course) : graph_(&graph), course_(&course), values_(graph.width, 0.0) {
  const unsigned bit = alive_bit(*course.duty);
  for (std::size_t i = 0; i < graph.states.size(); ++i)
    if (graph.states[i].info->alive & bit) alive_.push_back(i);
  assert(alive_.size() <= most_states);
  for (auto& step : graph.steps) scratch_.push_back(step.block->scratch ? step.block->scratch(step.model) : nullptr);
  for (auto& step : graph.steps) {
    Memory m;
    for (auto& fed : m.fed) fed.resize(step.reads.size());
    for (auto& gave : m.gave) gave.resize(step.writes.size() + step.rates.size());
    memory_.push_back(std::move(m));
  }
  for (auto& port : outside::all) outside_.push_back(graph.slots.at(std::string(port.name)));
}

View Rhs::view(const Graph::Step& step, std::size_t index) {
  return {values_.data(), step.reads.data(), step.writes.data(), step.rates.data(), scratch_[index].get()};
}

void Rhs::start() {
  for (auto& s : graph_->states) values_[s.value] = s.info->start(s.model, *course_->duty);
  for (auto& s : graph_->switches) values_[s.value] = s.info->start(graph_->steps[s.step].model, *course_->duty);
  for (auto& t : graph_->tears) values_[t.guess] = t.low;
  tear_residual_ = 0;
}

void Rhs::start_from(const double* values) { std::copy(values, values + values_.size(), values_.begin()); }

void Rhs::hold(std::uint16_t slot, std::uint16_t as) {
  held_ = slot;
  held_as_ = as;
  for (std::size_t i = 0; i < graph_->steps.size(); ++i)
    for (auto w : graph_->steps[i].writes)
      if (w == slot) holder_ = i;
}

void Rhs::get(double* y) const {
  for (std::size_t i = 0; i < alive_.size(); ++i) y[i] = values_[graph_->states[alive_[i]].value];
}

// A block reads its ports and nothing else (its scratch only says where a search begins): fed the same to the last bit,
// it gives the same.
bool Rhs::recall(std::size_t index) {
  auto& m = memory_[index];
  auto& step = graph_->steps[index];
  for (unsigned n = 0; n < m.filled; ++n) {
    const unsigned at = (m.newest + n) % 2;
    bool same = true;
    for (std::size_t k = 0; same && k < step.reads.size(); ++k) same = values_[step.reads[k]] == m.fed[at][k];
    if (!same) continue;
    const double* gave = m.gave[at].data();
    for (auto w : step.writes) values_[w] = *gave++;
    for (auto r : step.rates) values_[r] = *gave++;
    m.newest = at;
    return true;
  }
  return false;
}

void Rhs::remember(std::size_t index) {
  auto& m = memory_[index];
  auto& step = graph_->steps[index];
  // Where it came to no figures its scratch says why: the next time it is asked again.
  if (!std::all_of(step.writes.begin(), step.writes.end(), [&](auto w) { return std::isfinite(values_[w]); })) return;
  const unsigned at = m.filled < 2 ? m.filled++ : 1 - m.newest;
  m.newest = at;
  for (std::size_t k = 0; k < step.reads.size(); ++k) m.fed[at][k] = values_[step.reads[k]];
  double* gave = m.gave[at].data();
  for (auto w : step.writes) *gave++ = values_[w];
  for (auto r : step.rates) *gave++ = values_[r];
}

void Rhs::run(std::size_t first, std::size_t last) {
  for (std::size_t i = first; i <= last; ++i) {
    auto& step = graph_->steps[i];
    if (!recall(i)) {
      View v = view(step, i);
      step.block->evaluate(step.model, v);
      remember(i);
    }
    if (i == holder_) values_[static_cast<std::size_t>(held_)] = values_[held_as_];
  }
}

// The torn loop has kinks (a belt that lets go), so it is closed by a bracketed root: the guess stands unless what
// comes back differs, and then bisection with false position (Illinois) inside the declared bracket.
void Rhs::close(const Graph::Tear& tear) {
  auto residual = [&](double guess) {
    values_[tear.guess] = guess;
    run(tear.first, tear.last);
    return values_[tear.result] - guess;
  };
  const double tolerance = tear_tolerance * (tear.high - tear.low);
  if (std::abs(residual(values_[tear.guess])) <= tolerance) return;
  double a = tear.low, ra = residual(a);
  if (std::abs(ra) <= tolerance) return;
  double b = tear.high, rb = residual(b), left = rb;
  for (int i = 0; i < most_tear_steps && std::abs(left) > tolerance && std::abs(b - a) > tolerance && ra * rb < 0;
       ++i) {
    const double c = i % 3 == 2 ? 0.5 * (a + b) : (a * rb - b * ra) / (rb - ra);
    left = residual(c);
    if (left * rb < 0)
      a = b, ra = rb;
    else
      ra *= 0.5;
    b = c;
    rb = left;
  }
  if (!(std::abs(left) <= tear_residual_)) tear_residual_ = std::abs(left);
  if (!(std::abs(left) <= tear_accepted * (tear.high - tear.low))) open_loop_ = &graph_->ports[tear.guess];
}

void Rhs::operator()(double t, const double* y, double* rates) {
  ++evaluations_;
  open_loop_ = nullptr;
  tear_residual_ = 0;
  for (std::size_t i = 0; i < alive_.size(); ++i) values_[graph_->states[alive_[i]].value] = y[i];
  const auto motion = course_->motion(t, stretch_);
  auto& d = *course_->duty;
  const double outside[] = {t,
                            motion.speed,
                            motion.acceleration,
                            course_->pull ? 1.0 : 0.0,
                            *d.grade,
                            d.ambient->si,
                            course_->pressure,
                            course_->density,
                            d.sun->si,
                            d.payload->si,
                            course_->running ? 1.0 : 0.0,
                            course_->cranking ? 1.0 : 0.0,
                            course_->air_conditioning ? 1.0 : 0.0,
                            static_cast<double>(course_->conditions),
                            d.lateral->si,
                            *d.fuel_level,
                            d.laden.value_or(false) ? 1.0 : 0.0};
  static_assert(std::size(outside) == std::size(outside::all));
  for (std::size_t i = 0; i < outside_.size(); ++i) values_[outside_[i]] = outside[i];
  std::size_t next = 0;
  for (auto& tear : graph_->tears) {
    if (tear.first > next) run(next, tear.first - 1);
    close(tear);
    next = tear.last + 1;
  }
  if (next < graph_->steps.size()) run(next, graph_->steps.size() - 1);
  for (std::size_t i = 0; i < alive_.size(); ++i) rates[i] = values_[graph_->states[alive_[i]].rate];
}

std::string Rhs::no_number() const {
  const auto whole = [&](const std::vector<std::uint16_t>& slots) {
    return std::all_of(slots.begin(), slots.end(), [&](auto slot) { return std::isfinite(values_[slot]); });
  };
  std::string first;
  for (std::size_t i = 0; i < graph_->steps.size(); ++i) {
    auto& step = graph_->steps[i];
    if (whole(step.writes)) continue;
    // What was fed with no number is not the one to ask.
    if (step.block->trouble && whole(step.reads))
      if (auto why = step.block->trouble(step.model, scratch_[i].get()); !why.empty()) return why;
    if (!first.empty()) continue;
    const auto at =
        std::find_if(step.writes.begin(), step.writes.end(), [&](auto w) { return !std::isfinite(values_[w]); });
    first = std::string(graph_->ports[*at].name) + " comes to no number";
  }
  return first;
}

double Rhs::guard_of(std::size_t i) {
  auto& s = graph_->switches[i];
  auto& step = graph_->steps[s.step];
  return s.info->guard(step.model, view(step, s.step), values_[s.value]);
}

void Rhs::guards(std::vector<double>& all) {
  all.resize(graph_->switches.size());
  for (std::size_t i = 0; i < all.size(); ++i) all[i] = guard_of(i);
}

double Rhs::guard(std::size_t* which) {
  double worst = -1e300;
  for (std::size_t i = 0; i < graph_->switches.size(); ++i) {
    const double g = guard_of(i);
    if (g > worst) {
      worst = g;
      if (which) *which = i;
    }
  }
  return worst;
}

int Rhs::settle(double t, const double* y, double* rates) {
  int moved = 0;
  for (int pass = 0; pass < most_passes; ++pass) {
    bool any = false;
    for (auto& s : graph_->switches) {
      auto& step = graph_->steps[s.step];
      const double next = s.info->next(step.model, view(step, s.step), values_[s.value]);
      if (next == values_[s.value]) continue;
      values_[s.value] = next;
      any = true;
      ++moved;
    }
    if (!any) return moved;
    (*this)(t, y, rates);
  }
  return -1;
}

}  // namespace sw
