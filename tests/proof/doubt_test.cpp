#include "proof/doubt.hpp"

#include <random>

#include "quantity/unit.hpp"
#include "systems/judged.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

std::size_t index_of(const Judging& j, std::string_view id, std::string_view duty) {
  for (std::size_t i = 0; i < j.all().size(); ++i)
    if (&j.all()[i] == &j.one(id, duty)) return i;
  return j.all().size();
}
std::vector<bool> only(const DutySet& set, std::string_view duty) {
  std::vector<bool> wanted;
  for (auto& c : set.courses) wanted.push_back(c.key == duty);
  return wanted;
}
double band(const Study& s, std::size_t index) {
  double sum = 0;
  for (auto& m : s.moves)
    if (m.has_doubt() && std::isfinite(m.change(index))) sum += m.change(index) * m.change(index);
  return std::sqrt(sum);
}

TEST(Doubt, ShiftMovesALeafAndTellsWhereItCannot) {
  Build b = hand_car();
  EXPECT_TRUE(shift(b, "vehicle.weight", 10));
  EXPECT_NEAR(*value_at(b, "vehicle.weight"), 3700 * pound + 10, 1e-9);
  EXPECT_TRUE(shift(b, "engine.torque_curve", 0.1));
  EXPECT_NEAR(std::get<engine::Input>(b.inputs).torque_curve->y[0], 1.1 * 210 * lb_ft, 1e-9);
  EXPECT_TRUE(shift(b, "wiring.run.charge.gauge", 1e-6));
  EXPECT_FALSE(shift(b, "wiring.run.nobody.gauge", 1e-6));
  EXPECT_FALSE(shift(b, "cooling.pump.needed_at_idle", 1));  // nobody gave it
  EXPECT_FALSE(value_at(b, "engine.torque_curve"));
}

TEST(Doubt, EveryMoveIsOfAnUncertainInputOrALeverAndStaysInRange) {
  const Build b = hand_car();
  Judging j(b, "cold-crank");
  const auto wanted = only(j.set(), "cold-crank");
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 1});
  EXPECT_GT(s.moves.size(), 80u);
  for (auto& m : s.moves) {
    EXPECT_TRUE(m.lever || m.evidence.half_width > 0) << m.path;
    EXPECT_EQ(m.change_up.size(), m.up != 0 ? j.all().size() : 0u) << m.path;
    EXPECT_EQ(m.change_down.size(), m.down != 0 ? j.all().size() : 0u) << m.path;
    auto* f = find_field(build_fields(), m.path);
    ASSERT_TRUE(f) << m.path;
    if (f->type == FieldType::curve || !f->range.set) continue;
    const auto unit = std::get<Unit>(parse_unit_for(unit_of(*f), *f->kind));
    const double value = *value_at(b, m.path);
    EXPECT_GE(value + m.down, to_si(f->range.low, unit) - 1e-9) << m.path;
    EXPECT_LE(value + m.up, to_si(f->range.high, unit) + 1e-9) << m.path;
  }
}

/// Whether a reader would take the leaf's value.
bool in_range(const Build& b, const std::string& path) {
  auto* f = find_field(build_fields(), path);
  const auto value = value_at(b, path);
  if (!f || !value || !f->range.set) return true;
  const auto unit = std::get<Unit>(parse_unit_for(unit_of(*f), *f->kind));
  return *value >= to_si(f->range.low, unit) && *value <= to_si(f->range.high, unit);
}

// The first-order band against brute force: all uncertain inputs drawn at once, independent and normal, their
// half-width being 1.96 standard deviations (JCGM 100:2008, 4.3.4 and annex G), the car proved again each time.
void against_monte_carlo(const char* id, const char* duty, int samples) {
  const Build b = hand_car();
  Judging j(b, duty);
  const std::size_t index = index_of(j, id, duty);
  const auto wanted = only(j.set(), duty);
  const Study s = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 1});
  std::mt19937_64 random(20240517);
  std::normal_distribution<double> normal;
  double sum = 0, squares = 0;
  int lost = 0, impossible = 0;
  long moved = 0, undone = 0;
  for (int i = 0; i < samples; ++i) {
    Build drawn = b;
    for (auto& m : s.moves)
      if (m.evidence.half_width > 0) {
        const double by = m.evidence.half_width / 1.96 * normal(random);
        shift(drawn, m.path, by);
        ++moved;
        // A fan with less flow free than installed is no fan: what a reader would refuse is not drawn.
        if (!in_range(drawn, m.path)) shift(drawn, m.path, -by), ++undone;
      }
    const Car car(drawn);
    if (car.faults().any_fault()) {  // figures that cannot be together are no car: the reader would refuse them
      ++impossible;
      continue;
    }
    const auto judged = judge(car, j.set(), run_duties(car, j.set(), wanted), wanted);
    std::optional<double> got;
    for (auto& other : judged)
      if (other.same_as(j.all()[index])) got = other.margin();
    if (!got) {
      ++lost;
      continue;
    }
    const double margin = *got;
    sum += margin;
    squares += margin * margin;
  }
  EXPECT_EQ(lost, 0) << "draws whose run was lost";
  EXPECT_LT(undone, moved / 50) << "single figures left as they are, which narrows what is drawn";
  EXPECT_LT(impossible, samples / 20) << "draws that are no car";
  samples -= lost + impossible;
  const double mean = sum / samples, deviation = std::sqrt((squares - samples * mean * mean) / (samples - 1));
  // 25 %: a deviation from 300 samples is itself known to 4 % (one sigma); the rest is what first order leaves out.
  EXPECT_NEAR(band(s, index), 1.96 * deviation, 0.25 * 1.96 * deviation) << id;
}
TEST(Doubt, BandOfACrankingVoltageMatchesSampling) { against_monte_carlo("charging.crank-voltage", "cold-crank", 300); }
TEST(Doubt, BandOfACruiseTemperatureMatchesSampling) {
  against_monte_carlo("cooling.coolant-temperature", "cruise", 300);
}

TEST(Doubt, AnyNumberOfThreadsGivesTheSameStudy) {
  const Build b = hand_car();
  Judging j(b, "cold-crank");
  const auto wanted = only(j.set(), "cold-crank");
  const Study one = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 1}), three = study(b, j.set(), j.all(), {.wanted = wanted, .threads = 3});
  ASSERT_EQ(one.moves.size(), three.moves.size());
  for (std::size_t i = 0; i < one.moves.size(); ++i)
    for (std::size_t k = 0; k < j.all().size(); ++k) {
      const double a = one.moves[i].change(k), c = three.moves[i].change(k);
      EXPECT_TRUE(a == c || (std::isnan(a) && std::isnan(c))) << one.moves[i].path;
    }
}

// A margin that goes 0.2 up and 3 down for one input, whichever way that is moved, reaches 3 down and 0.2 up.
TEST(Doubt, AMoveReachesEachWayByItsOwnChange) {
  Move m{.change_up = {-3, 0.5}, .change_down = {0.2, 0.7}};
  EXPECT_EQ(m.reach(0, -1), 3);
  EXPECT_EQ(m.reach(0, 1), 0.2);
  EXPECT_EQ(m.reach(1, -1), 0);
  EXPECT_EQ(m.reach(1, 1), 0.7);
  m.change_down[0] = std::numeric_limits<double>::quiet_NaN();
  EXPECT_TRUE(std::isnan(m.reach(0, 1)));
}

}  // namespace
