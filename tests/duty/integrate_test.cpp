// The integrator against closed forms, and against cars made to break it.
#include "duty/integrate.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <thread>

#include "duty/tiny.hpp"

namespace sw {
namespace {

using tiny::Car;
using tiny::every;
using tiny::lasting;

constexpr Port x_port{"x", &kind::temperature}, y_port{"y", &kind::temperature};

double at_end(const Trace& t, std::size_t slot) { return t.at(t.rows() - 1, slot); }

/// x' = -a x, y' = b (x - y): a cooling body and what it warms. Closed form by variation of constants.
namespace pair {
constexpr double a = 0.02, b = 0.3, x0 = 80;
constexpr Port reads[] = {x_port, y_port};
constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return x0; }, 1.0},
                                {y_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
void evaluate(const void*, View& v) {
  v.rate(0, -a * v.in(0));
  v.rate(1, b * (v.in(0) - v.in(1)));
}
constexpr Block blocks[] = {{"pair", reads, {}, states, {}, evaluate}};
double y(double t) { return b * x0 / (b - a) * (std::exp(-a * t) - std::exp(-b * t)); }
}  // namespace pair

TEST(Integrate, IsOfOrderTwoOnALinearPair) {
  const Car car(pair::blocks, lasting(64));
  double last = 0;
  for (double h : {2.0, 1.0, 0.5, 0.25}) {
    const Trace t = car.run(every(h));
    ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
    const double error = std::abs(at_end(t, car.slot("y")) - pair::y(64));
    if (last > 0) {
      EXPECT_NEAR(last / error, 4.0, 0.4) << h;
    }
    last = error;
  }
}

/// x' = -x^2 / 100: the Jacobian moves, and an old one is used for many steps. x = x0 / (1 + x0 t / 100).
TEST(Integrate, KeepsItsOrderWithAnOldJacobian) {
  static constexpr Port reads[] = {x_port};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 10.0; }, 1.0}};
  static constexpr Block blocks[] = {
      {"falls", reads, {}, states, {}, [](const void*, View& v) { v.rate(0, -v.in(0) * v.in(0) / 100); }}};
  const Car car(blocks, lasting(32));
  double last = 0;
  for (double h : {1.0, 0.5, 0.25, 0.125}) {
    const double error = std::abs(at_end(car.run(every(h)), car.slot("x")) - 10.0 / (1 + 0.1 * 32));
    if (last > 0) {
      EXPECT_GT(last / error, 3.2) << h;
    }
    last = error;
  }
}

/// x' = -k (x - speed(t)) on a ramp: time itself drives, and is not in the Jacobian.
TEST(Integrate, IsOfOrderTwoWhereTimeDrives) {
  static constexpr double k = 0.4;
  static constexpr Port reads[] = {x_port, outside::speed};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
  static constexpr Block blocks[] = {
      {"follows", reads, {}, states, {}, [](const void*, View& v) { v.rate(0, -k * (v.in(0) - v.in(1))); }}};
  Duty d = lasting(16);
  d.speed_trace = Curve{{0, 16}, {0, 32}};
  const Car car(blocks, d);
  const double exact = 2 * (16 - (1 - std::exp(-k * 16)) / k);
  double last = 0;
  for (double h : {2.0, 1.0, 0.5, 0.25}) {
    const double error = std::abs(at_end(car.run(every(h)), car.slot("x")) - exact);
    if (last > 0 && error > 1e-7) {
      EXPECT_NEAR(last / error, 4.0, 0.8) << h;
    }
    last = error;
  }
  EXPECT_LT(last, 0.02);
}

TEST(Integrate, StepsFarBeyondAFastState) {
  // 1/k = 10 us, steps of 10 s: the fast state follows the slow one and does not ring.
  static constexpr Port reads[] = {x_port, y_port};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 300.0; }, 1.0},
                                         {y_port, [](const void*, const Duty&) { return 300.0; }, 1.0}};
  static constexpr Block blocks[] = {{"stiff", reads, {}, states, {}, [](const void*, View& v) {
                                        v.rate(0, -0.001 * v.in(0));
                                        v.rate(1, 1e5 * (v.in(0) - v.in(1)));
                                      }}};
  const Car car(blocks, lasting(1000));
  const Trace t = car.run();
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  EXPECT_LT(t.summary.steps, 400);
  EXPECT_NEAR(at_end(t, car.slot("x")), 300 * std::exp(-1.0), 0.1);
  EXPECT_NEAR(at_end(t, car.slot("y")), at_end(t, car.slot("x")), 0.01);
}

TEST(Integrate, HoldsItsTolerance) {
  const Car car(pair::blocks, lasting(200));
  for (double tolerance : {0.1, 0.01, 0.001}) {
    const Trace t = car.run({.tolerance = tolerance, .first_step = 0.1, .longest_step = 30});
    double worst = 0;
    for (std::size_t r = 0; r < t.rows(); ++r)
      worst = std::max(worst, std::abs(t.at(r, car.slot("y")) - pair::y(t.time[r])));
    // Local errors add up over the few time constants a relaxing state remembers.
    EXPECT_LT(worst, 5 * tolerance);
    EXPECT_GT(worst, 0);
  }
}

/// A heater with a thermostat: T' = (target - T) / tau, target 100 when on and 0 when off, on below 40, off above 60.
/// From 40 up: tau ln((100 - 40) / (100 - 60)) = tau ln 1.5; from 60 down: tau ln(60 / 40) = tau ln 1.5 as well.
namespace heater {
constexpr double tau = 50;
constexpr Port on_port{"heater.on", &kind::number};
constexpr Port reads[] = {x_port, on_port};
constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 40.0; }, 1.0}};
double wish(const View& v, double now) { return now > 0 ? v.in(0) - 60 : 40 - v.in(0); }
constexpr SwitchInfo switches[] = {
    {on_port, [](const void*, const Duty&) { return 1.0; },
     [](const void*, const View& v, double now) { return wish(v, now) > 0 ? 1 - now : now; },
     [](const void*, const View& v, double now) { return wish(v, now); }}};
constexpr Block blocks[] = {
    {"heater", reads, {}, states, switches, [](const void*, View& v) { v.rate(0, (100 * v.in(1) - v.in(0)) / tau); }}};
}  // namespace heater

TEST(Integrate, FindsEventsWhereTheClosedFormPutsThem) {
  const Car car(heater::blocks, lasting(500));
  const Trace t = car.run({.tolerance = 1e-4, .first_step = 0.25, .longest_step = 30});
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  const double half = heater::tau * std::log(1.5);
  int event = 0;
  for (std::size_t r = 1; r < t.rows(); ++r)
    if (t.at(r, car.slot("heater.on")) != t.at(r - 1, car.slot("heater.on"))) {
      ++event;
      EXPECT_EQ(t.time[r], t.time[r - 1]);                 // both sides of the jump are told
      EXPECT_NEAR(t.time[r], event * half, event * 2e-3);  // a millisecond each to be found, and the steps' own error
    }
  EXPECT_EQ(event, static_cast<int>(500 / half));
  EXPECT_EQ(t.summary.events, event);
}

TEST(Integrate, FindsAnEventWhoseGuardJumps) {
  // The guard is -1000 until t = 7.3 s and then 1: nothing to interpolate.
  static constexpr Port on{"on", &kind::number};
  static constexpr Port reads[] = {x_port, outside::time, on};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
  static constexpr SwitchInfo switches[] = {
      {on, [](const void*, const Duty&) { return 0.0; },
       [](const void*, const View& v, double now) { return v.in(1) > 7.3 ? 1.0 : now; },
       [](const void*, const View& v, double now) { return v.in(1) > 7.3 && now < 1 ? 1.0 : -1000.0; }}};
  static constexpr Block blocks[] = {
      {"late", reads, {}, states, switches, [](const void*, View& v) { v.rate(0, v.in(2)); }}};
  const Car car(blocks, lasting(20));
  const Trace t = car.run();
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  EXPECT_EQ(t.summary.events, 1);
  EXPECT_NEAR(at_end(t, car.slot("x")), 20 - 7.3, 2e-3);
}

/// Rates of a duty that turns to nonsense at t = 5 s.
TEST(Integrate, GivesUpWhereARateIsNoNumber) {
  static constexpr Port reads[] = {x_port, outside::time};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 1.0; }, 1.0}};
  static constexpr Block blocks[] = {{"breaks", reads, {}, states, {}, [](const void*, View& v) {
                                        v.rate(0, v.in(1) > 5 ? std::sqrt(-v.in(1)) : -0.1 * v.in(0));
                                      }}};
  const Car car(blocks, lasting(20));
  const Trace t = car.run();
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_FALSE(t.summary.usable());
  EXPECT_FALSE(t.summary.reason.empty());
  EXPECT_GT(t.time.back(), 4);
  for (std::size_t r = 0; r < t.rows(); ++r) EXPECT_TRUE(std::isfinite(t.at(r, car.slot("x")))) << t.time[r];
}

TEST(Integrate, GivesUpWhereNothingIsANumberFromTheStart) {
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 1.0; }, 1.0},
                                         {y_port, [](const void*, const Duty&) { return 1.0; }, 1.0}};
  static constexpr Block blocks[] = {
      {"breaks", {}, {}, states, {}, [](const void*, View& v) { v.rate(0, NAN), v.rate(1, 0); }}};
  const Trace t = Car(blocks, lasting(20)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_EQ(t.rows(), 1u);
}

// Whoever wrote the figures is told where they lead astray, not only that they do.
TEST(Integrate, NamesThePortThatIsNoNumber) {
  static constexpr Port reads[] = {x_port}, writes[] = {{"root", &kind::number}};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return -1.0; }, 1.0}};
  static constexpr Block blocks[] = {{"breaks", reads, writes, states, {}, [](const void*, View& v) {
                                        v.set(0, std::sqrt(v.in(0)));
                                        v.rate(0, std::sqrt(v.in(0)));
                                      }}};
  EXPECT_NE(Car(blocks, lasting(20)).run().summary.reason.find("root comes to no number"), std::string::npos);
}

// What a block knows of why it has no figures is the reason, with the duty and the time, though by then the state that
// came of it is no number either.
TEST(Integrate, ABlockTellsWhyItHasNoFigures) {
  static constexpr Port writes[] = {{"volts", &kind::voltage}};
  static constexpr Port reads[] = {x_port, {"volts", &kind::voltage}};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
  static constexpr Block blocks[] = {
      {.name = "follows",
       .reads = reads,
       .states = states,
       .evaluate = [](const void*, View& v) { v.rate(0, v.in(1)); }},
      {.name = "network",
       .writes = writes,
       .evaluate = [](const void*, View& v) { v.set(0, NAN); },
       .trouble = [](const void*, const void*) { return std::string("35 A are left over at the bus"); }}};
  const Trace t = Car(blocks, lasting(20)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_NE(t.summary.reason.find("in tiny steps"), std::string::npos) << t.summary.reason;
  EXPECT_NE(t.summary.reason.find("at 0 s: 35 A are left over at the bus"), std::string::npos) << t.summary.reason;
}

TEST(Integrate, GivesUpWhereAStateRunsAway) {
  // x' = x^2 from 1: infinite at t = 1 s.
  static constexpr Port reads[] = {x_port};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 1.0; }, 1.0}};
  static constexpr Block blocks[] = {
      {"runs away", reads, {}, states, {}, [](const void*, View& v) { v.rate(0, v.in(0) * v.in(0)); }}};
  const Trace t = Car(blocks, lasting(20)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_NEAR(t.time.back(), 1.0, 0.01);
}

/// x' = acceleration, y' = |acceleration|: only a run that sees each side of every corner gets them right.
namespace ride {
constexpr Port reads[] = {outside::acceleration};
constexpr Port seen{"ride.acceleration", &kind::acceleration};
constexpr Port writes[] = {seen};
constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0},
                                {y_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
constexpr Block blocks[] = {{"ride", reads, writes, states, {}, [](const void*, View& v) {
                               v.set(0, v.in(0));
                               v.rate(0, v.in(0));
                               v.rate(1, std::abs(v.in(0)));
                             }}};
}  // namespace ride

TEST(Integrate, GivesUpWhereStepsWouldNeverEnd) {
  const Trace t = Car(pair::blocks, lasting(86400)).run(every(1e-3));
  EXPECT_EQ(t.summary.outcome, Outcome::not_converged);
  EXPECT_LE(t.summary.evaluations, 60100);
}

TEST(Integrate, KeepsItsStrideAfterACornerCloseToAnEvent) {
  Duty d = lasting(100);
  d.speed_trace = Curve{{0, 50, 50.00001, 100}, {0, 0, 0, 0}};  // a corner 10 us after another
  const Trace t = Car(ride::blocks, d).run();
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  EXPECT_LT(t.summary.steps, 40);
}

/// A relay that turns a sawtooth of a hundredth of a kelvin.
namespace chatter {
constexpr Port on{"relay.on", &kind::number};
constexpr Port reads[] = {x_port, on};
constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
constexpr double width = 0.01;  // K of hysteresis, against 1 K/s
double wish(const View& v, double now) { return now > 0 ? v.in(0) - width : -v.in(0) - width; }
constexpr SwitchInfo switches[] = {
    {on, [](const void*, const Duty&) { return 1.0; },
     [](const void*, const View& v, double now) { return wish(v, now) > 0 ? 1 - now : now; },
     [](const void*, const View& v, double now) { return wish(v, now); }}};
constexpr Block blocks[] = {
    {"relay", reads, {}, states, switches, [](const void*, View& v) { v.rate(0, v.in(1) > 0 ? 1 : -1); }}};
}  // namespace chatter

TEST(Integrate, NamesASwitchThatChatters) {
  const Trace t = Car(chatter::blocks, lasting(600)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::chatter);
  EXPECT_NE(t.summary.reason.find("relay.on"), std::string::npos) << t.summary.reason;
  EXPECT_LT(t.time.back(), 10);
}

TEST(Integrate, LetsASlowThermostatWorkForHours) {
  const Trace t = Car(heater::blocks, lasting(6 * 3600)).run();
  EXPECT_TRUE(t.summary.usable()) << t.summary.reason;
}

TEST(Integrate, NamesSwitchesThatChatterInTurn) {
  // Two relays on one sawtooth: the first turns it at the top, the second at the bottom.
  static constexpr Port up{"relay.up", &kind::number}, down{"relay.down", &kind::number};
  static constexpr Port reads[] = {x_port, up, down};
  static constexpr StateInfo states[] = {{x_port, [](const void*, const Duty&) { return 0.0; }, 1.0}};
  struct Wish {
    // up follows down with the state high, down follows up with it low: each moves once a half period.
    static double first(const View& v, double now) { return now == v.in(2) ? v.in(0) - 0.01 : -1.0; }
    static double second(const View& v, double now) { return now != v.in(1) ? -v.in(0) - 0.01 : -1.0; }
  };
  static constexpr SwitchInfo switches[] = {
      {up, [](const void*, const Duty&) { return 0.0; },
       [](const void*, const View& v, double now) { return Wish::first(v, now) > 0 ? 1 - now : now; },
       [](const void*, const View& v, double now) { return Wish::first(v, now); }},
      {down, [](const void*, const Duty&) { return 0.0; },
       [](const void*, const View& v, double now) { return Wish::second(v, now) > 0 ? 1 - now : now; },
       [](const void*, const View& v, double now) { return Wish::second(v, now); }}};
  static constexpr Block blocks[] = {
      {"relays", reads, {}, states, switches, [](const void*, View& v) { v.rate(0, v.in(1) == v.in(2) ? 1 : -1); }}};
  const Trace t = Car(blocks, lasting(600)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::chatter);
  EXPECT_LT(t.time.back(), 10);
}

TEST(Integrate, NamesSwitchesThatNeverSettle) {
  static constexpr Port on{"relay.on", &kind::number};
  static constexpr Port reads[] = {on};
  static constexpr SwitchInfo switches[] = {{on, [](const void*, const Duty&) { return 1.0; },
                                             [](const void*, const View&, double now) { return 1 - now; },
                                             [](const void*, const View&, double) { return 1.0; }}};
  static constexpr Block blocks[] = {{"relay", reads, {}, {}, switches, [](const void*, View&) {}}};
  const Trace t = Car(blocks, lasting(60)).run();
  EXPECT_EQ(t.summary.outcome, Outcome::chatter);
  EXPECT_FALSE(t.summary.reason.empty());
}

TEST(Integrate, StepsOntoEveryCornerAndSeesBothSides) {
  Duty d = lasting(120);
  // One corner half a second after another, then a long stretch.
  d.speed_trace = Curve{{0, 20, 35, 35.5, 90, 105, 120}, {0, 0, 10, 9, 9, 0, 0}};
  const Car car(ride::blocks, d);
  const Trace t = car.run();
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  for (std::size_t k = 1; k + 1 < d.speed_trace->x.size(); ++k) {
    const double corner = d.speed_trace->x[k];
    std::vector<double> seen;
    for (std::size_t r = 0; r < t.rows(); ++r)
      if (std::abs(t.time[r] - corner) < 1e-9) seen.push_back(t.at(r, car.slot("ride.acceleration")));
    ASSERT_EQ(seen.size(), 2u) << corner;
    auto slope = [&](std::size_t i) {
      return (d.speed_trace->y[i] - d.speed_trace->y[i - 1]) / (d.speed_trace->x[i] - d.speed_trace->x[i - 1]);
    };
    EXPECT_NEAR(seen[0], slope(k), 1e-9) << corner;
    EXPECT_NEAR(seen[1], slope(k + 1), 1e-9) << corner;
  }
  EXPECT_NEAR(at_end(t, car.slot("x")), 0, 1e-6);
  EXPECT_NEAR(at_end(t, car.slot("y")), 10 + 1 + 9, 1e-6);
}

TEST(Integrate, CarriesARecordedTraceOfHalfADay) {
  Duty d = lasting(43200);
  d.speed_trace.emplace();
  for (int i = 0; i <= 43200; ++i) d.speed_trace->x.push_back(i), d.speed_trace->y.push_back(i % 7);
  EXPECT_TRUE(Car(ride::blocks, d).run().summary.usable());
}

TEST(Integrate, SkipsNoRowOfARecordedTrace) {
  // Speeds to and fro once a second: every second row alone would see a car that stands.
  Duty d = lasting(60);
  d.speed_trace.emplace();
  for (int i = 0; i <= 60; ++i) d.speed_trace->x.push_back(i), d.speed_trace->y.push_back(i % 2 ? 3.0 : 0.0);
  const Car car(ride::blocks, d);
  const Trace t = car.run();
  ASSERT_TRUE(t.summary.usable()) << t.summary.reason;
  EXPECT_NEAR(at_end(t, car.slot("y")), 60 * 3.0, 1e-6);
}

TEST(Integrate, EndsExactlyAndGivesTheSameBitsEveryTime) {
  const Car car(heater::blocks, lasting(333.3));
  const Trace first = car.run();
  EXPECT_NEAR(first.time.back(), 333.3, 1e-9);
  auto same = [&](const Trace& t) {
    return t.time == first.time && t.values.size() == first.values.size() &&
           std::memcmp(t.values.data(), first.values.data(), t.values.size() * sizeof(double)) == 0;
  };
  EXPECT_TRUE(same(car.run()));
  Trace a, b;
  std::thread one([&] { a = car.run(); }), two([&] { b = car.run(); });
  one.join();
  two.join();
  EXPECT_TRUE(same(a));
  EXPECT_TRUE(same(b));
}

TEST(StepControl, KnowsEveryMethod) {
  for (Method m : {Method::thermal, Method::crank, Method::pull, Method::rest}) {
    Duty d = lasting(1);
    d.method = m;
    const StepControl c = step_control(d);
    EXPECT_GT(c.tolerance, 0);
    EXPECT_GT(c.first_step, 0);
    EXPECT_GE(c.longest_step, c.first_step);
  }
}

}  // namespace
}  // namespace sw
