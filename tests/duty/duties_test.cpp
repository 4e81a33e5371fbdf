// The shipped duties and a workshop's own; runs of the demo car are compared with themselves only (determinism).
#include "duty/duties.hpp"

#include <gtest/gtest.h>

#include <cmath>
#include <cstring>
#include <thread>

#include "duty/tiny.hpp"

namespace sw {
namespace {

using tiny::lasting;

const OpenText no_files = [](const std::filesystem::path&) { return std::optional<std::string>{}; };

std::size_t index_of(const DutySet& set, std::string_view name) {
  for (std::size_t i = 0; i < set.courses.size(); ++i)
    if (set.courses[i].key == name) return i;
  ADD_FAILURE() << "no duty " << name;
  return 0;
}

Duty starting_after(const std::string& other) {
  Duty d = lasting(60);
  d.after = other;
  return d;
}

struct Demo {
  Opened opened = open(std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo/sound.toml", from_disk());
  std::unique_ptr<DutySet> set = duties_of(opened.build, no_files);
  Car car{opened.build};
};
const Demo& demo() {
  static const Demo d;
  return d;
}

TEST(Duties, ShippedOnesAreWithoutFault) {
  ASSERT_FALSE(shipped_duties().empty());
  const auto set = duties_of(Build{}, no_files);
  EXPECT_FALSE(set->faults.any_fault());
  ASSERT_EQ(set->courses.size(), shipped_duties().size());
  for (std::size_t i = 0; i < set->courses.size(); ++i) {
    EXPECT_EQ(set->courses[i].duty, &set->duty.entries[i].second);
    EXPECT_GT(set->courses[i].duration, 0) << set->courses[i].key;
  }
}

TEST(Duties, StandAfterTheOneTheyStartFrom) {
  Build b;
  b.duty.entries = {{"third", starting_after("second")}, {"second", starting_after("first")}, {"first", lasting(60)}};
  const auto set = duties_of(b, no_files);
  EXPECT_FALSE(set->faults.any_fault());
  EXPECT_LT(index_of(*set, "first"), index_of(*set, "second"));
  EXPECT_LT(index_of(*set, "second"), index_of(*set, "third"));
}

TEST(Duties, OwnOnesTakeThePlaceOfShippedOnes) {
  Build b;
  b.duty.entries = {{"cruise", lasting(12)}};
  const auto set = duties_of(b, no_files);
  EXPECT_EQ(set->courses.size(), shipped_duties().size());
  EXPECT_EQ(set->courses[index_of(*set, "cruise")].duration, 12);
}

TEST(Duties, NameLoopsStrangersAndLostFiles) {
  Build b;
  Duty lost = lasting(60);
  lost.trace_file = "lost.csv";
  b.duty.entries = {{"hen", starting_after("egg")},
                    {"egg", starting_after("hen")},
                    {"orphan", starting_after("nobody")},
                    {"lost", lost},
                    {"late", starting_after("orphan")}};
  const auto set = duties_of(b, no_files);
  auto told = [&](const std::string& part, const std::string& more) {
    for (auto& f : set->faults.all())
      if (f.path == part && f.problem.find(more) != std::string::npos) return true;
    return false;
  };
  // The last waits for one that is told already.
  EXPECT_EQ(set->faults.all().size(), 4u);
  EXPECT_TRUE(told("duty.hen.after", "\"egg\""));
  EXPECT_TRUE(told("duty.egg.after", "\"hen\""));
  EXPECT_TRUE(told("duty.orphan.after", "\"nobody\""));
  EXPECT_TRUE(told("duty.lost.trace_file", "lost.csv"));
}

TEST(Duties, NoDutyOfTheCarHasMoreStatesThanTheIntegratorHolds) {
  for (auto& course : demo().set->courses)
    EXPECT_LE(Rhs(demo().car.graph(), course).size(), Rhs::most_states) << course.key;
}

TEST(Duties, RunOnlyWhatIsWantedAndWhatThatStartsFrom) {
  auto& d = demo();
  std::vector<bool> wanted(d.set->courses.size(), false);
  const std::size_t soak = index_of(*d.set, "hot-soak"), grade = index_of(*d.set, "grade");
  wanted[soak] = true;
  const auto traces = run_duties(d.car, *d.set, wanted);
  ASSERT_EQ(traces.size(), wanted.size());
  for (std::size_t i = 0; i < traces.size(); ++i) {
    EXPECT_EQ(traces[i].summary.outcome, i == soak || i == grade ? Outcome::done : Outcome::not_run)
        << d.set->courses[i].key;
  }
  // Where one ends the other begins.
  for (auto& state : d.car.graph().states) {
    if (!(state.info->alive & in_thermal)) continue;
    EXPECT_DOUBLE_EQ(traces[soak].at(0, state.value), traces[grade].at(traces[grade].rows() - 1, state.value))
        << state.info->port.name;
  }
}

TEST(Duties, DoNotStartFromARunThatFailed) {
  auto& d = demo();
  Trace wreck;
  wreck.width = d.car.graph().width;
  wreck.time = {0};
  wreck.values.assign(wreck.width, 300.0);
  wreck.summary = {.outcome = Outcome::not_converged, .reason = "a figure is far off"};
  const Trace t = run_duty(d.car, d.set->courses[index_of(*d.set, "hot-soak")], &wreck);
  EXPECT_FALSE(t.summary.usable());
  EXPECT_NE(t.summary.reason.find("grade"), std::string::npos) << t.summary.reason;
  EXPECT_NE(t.summary.reason.find("a figure is far off"), std::string::npos) << t.summary.reason;
}

TEST(Duties, GiveTheSameBitsOnAnyThread) {
  auto& d = demo();
  const Course& course = d.set->courses[index_of(*d.set, "commute")];
  const Trace alone = run_duty(d.car, course, nullptr);
  ASSERT_TRUE(alone.summary.usable()) << alone.summary.reason;
  Trace a, b;
  std::thread one([&] { a = run_duty(d.car, course, nullptr); }), two([&] { b = run_duty(d.car, course, nullptr); });
  one.join();
  two.join();
  for (auto* t : {&a, &b}) {
    ASSERT_EQ(t->time, alone.time);
    ASSERT_EQ(t->values.size(), alone.values.size());
    EXPECT_EQ(std::memcmp(t->values.data(), alone.values.data(), alone.values.size() * sizeof(double)), 0);
  }
}

/// Integration against itself with steps held much finer: what the steps' tolerance leaves, regression.
TEST(Duties, StepsAreFineEnough) {
  auto& d = demo();
  const Course& course = d.set->courses[index_of(*d.set, "commute")];
  const Trace usual = run_duty(d.car, course, nullptr);
  const Trace fine = run_duty(d.car, course, nullptr, {.control = [](const Duty&) {
                                return StepControl{.tolerance = 2e-4, .first_step = 0.05, .longest_step = 5};
                              }});
  for (auto& state : d.car.graph().states) {
    if (!(state.info->alive & in_thermal)) continue;
    EXPECT_NEAR(usual.at(usual.rows() - 1, state.value), fine.at(fine.rows() - 1, state.value),
                0.05 * state.info->scale)
        << state.info->port.name;
  }
}

}  // namespace
}  // namespace sw
