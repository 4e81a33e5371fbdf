#include "proof/proof.hpp"

#include <set>

#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

Proof proof_of(const Build& build, ProofOptions options = {.doubt = false}) {
  const auto set = duties_of(build, from_disk());
  EXPECT_FALSE(set->faults.any_fault());
  return prove(build, *set, options);
}
const Finding& find(const Proof& p, std::string_view id) {
  for (auto& f : p.findings)
    if (f.id == id) return f;
  throw std::out_of_range(std::string(id));
}
void nothing_but_numbers(const Proof& p, const std::string& about) {
  for (auto& f : p.findings) {
    const auto finite = [](const std::optional<double>& x) { return !x || std::isfinite(*x); };
    EXPECT_TRUE(finite(f.predicted) && finite(f.low_limit) && finite(f.high_limit) && finite(f.margin) &&
                std::isfinite(f.half_width) && std::isfinite(f.far_width) && std::isfinite(f.scale) &&
                std::isfinite(f.time))
        << about << ": " << f.id;
    for (auto& b : f.because)
      EXPECT_TRUE(std::isfinite(b.value) && std::isfinite(b.weight)) << about << ": " << f.id << " because " << b.what;
    if (f.state == State::unproven) {
      EXPECT_TRUE(!f.reason.empty() && !f.predicted) << about << ": " << f.id;
    } else
      EXPECT_TRUE(f.predicted || f.kind == RequirementKind::rule) << about << ": " << f.id;
  }
}

// One finding driven through its states by moving its limit about the prediction: 20 K off it holds, a hair off it is
// within its doubt, below the prediction it fails.
TEST(Prove, StatesFollowMarginAndDoubt) {
  const ProofOptions idle{.duty = "hot-idle", .threads = 2};
  const std::string id = "cooling.coolant-temperature@hot-idle";
  const auto limit = [](double kelvin) {
    return "[cooling]\nhighest_coolant = \"" + std::to_string(std::clamp(kelvin - zero_c, 80.0, 125.0)) + " degC\"\n";
  };
  const double at = *find(proof_of(hand_car(), {.duty = "hot-idle", .doubt = false}), id).predicted;
  const Finding tight = find(proof_of(hand_car(limit(at + 0.2)), idle), id);
  EXPECT_EQ(tight.state, State::tight);
  EXPECT_GT(tight.half_width, 0.2);
  EXPECT_FALSE(tight.fix_hint.empty());
  const Finding holds = find(proof_of(hand_car(limit(at + 25)), idle), id);
  EXPECT_EQ(holds.state, State::holds) << "25 K off, doubt " << holds.half_width;
  EXPECT_TRUE(holds.fix_hint.empty());
  const Finding fails = find(proof_of(hand_car(limit(at - 12)), idle), id);
  EXPECT_EQ(fails.state, State::fails) << "12 K beyond, doubt " << fails.half_width;
  EXPECT_LT(*fails.margin, 0);
}

// With doubt off nothing is tight: a limit a hair on either side of the prediction decides, and each side its own way.
TEST(Prove, WithoutDoubtAHairDecides) {
  const auto state_at = [](double kelvin) {
    const auto p = proof_of(hand_car("[cooling]\nhighest_coolant = \"" + std::to_string(kelvin - zero_c) + " degC\"\n"),
                            {.duty = "hot-idle", .doubt = false});
    for (auto& f : p.findings) EXPECT_NE(f.state, State::tight) << f.id;
    return find(p, "cooling.coolant-temperature@hot-idle").state;
  };
  const double at =
      *find(proof_of(hand_car(), {.duty = "hot-idle", .doubt = false}), "cooling.coolant-temperature@hot-idle")
           .predicted;
  EXPECT_EQ(state_at(at + 0.01), State::holds);
  EXPECT_EQ(state_at(at - 0.01), State::fails);
}

TEST(Prove, RulesAreNeverTight) {
  const auto p = proof_of(hand_car("[vehicle]\nearth = \"positive\"\n"), {.duty = "cold-crank", .threads = 2});
  EXPECT_EQ(find(p, "charging.polarity").state, State::fails);
  EXPECT_EQ(find(p, "cooling.pump-rotation").state, State::holds);
  EXPECT_FALSE(find(p, "charging.polarity").margin);
  EXPECT_EQ(p.exit_code(), 1);
}

TEST(Prove, ExitCodes) {
  EXPECT_EQ(proof_of(roomy_car()).exit_code(), 0);
  Build unknown = roomy_car();
  std::get<cooling::Input>(unknown.inputs).pump.rotation.reset();
  EXPECT_EQ(proof_of(unknown).exit_code(), 3);
  EXPECT_EQ(proof_of(hand_car("[vehicle]\nearth = \"positive\"\n")).exit_code(), 1);
  EXPECT_NE(proof_of(hand_car(), {.duty = "no-such-duty", .doubt = false}).exit_code(), 0)
      << "nothing looked at is nothing proved";
}

TEST(Prove, IdsAreUniqueAndACarWithRoomHolds) {
  const auto p = proof_of(roomy_car());
  std::set<std::string> ids;
  for (auto& f : p.findings) EXPECT_TRUE(ids.insert(f.id).second) << f.id << " twice";
  for (auto& f : p.findings) EXPECT_EQ(f.state, State::holds) << f.id << " " << f.reason;
  nothing_but_numbers(p, "sound");
}

// Harm carries its caution: nobody reads of fire or scalds without the words.
TEST(Prove, HarmCarriesACaution) {
  for (auto& f : proof_of(hand_car()).findings) {
    if (f.hazard == Hazard::harm) {
      EXPECT_NE(f.caution, Caution::none) << f.id;
    }
    EXPECT_FALSE(f.source.empty()) << f.id;
    EXPECT_FALSE(f.formula.empty()) << f.id;
  }
}

bool same(double a, double b) { return a == b || (std::isnan(a) && std::isnan(b)); }
bool same(const std::optional<double>& a, const std::optional<double>& b) {
  return a.has_value() == b.has_value() && (!a || same(*a, *b));
}
void expect_equal(const Proof& a, const Proof& b) {
  ASSERT_EQ(a.findings.size(), b.findings.size());
  for (std::size_t i = 0; i < a.findings.size(); ++i) {
    auto &x = a.findings[i], &y = b.findings[i];
    EXPECT_TRUE(x.id == y.id && x.state == y.state && same(x.predicted, y.predicted) && same(x.margin, y.margin) &&
                same(x.half_width, y.half_width) && same(x.far_width, y.far_width) && x.reason == y.reason &&
                x.fix_hint == y.fix_hint && x.confidence == y.confidence && x.missing == y.missing)
        << x.id;
    ASSERT_EQ(x.because.size(), y.because.size()) << x.id;
    for (std::size_t k = 0; k < x.because.size(); ++k)
      EXPECT_TRUE(x.because[k].what == y.because[k].what && same(x.because[k].value, y.because[k].value) &&
                  same(x.because[k].weight, y.because[k].weight))
          << x.id;
  }
  ASSERT_EQ(a.next.size(), b.next.size());
  for (std::size_t i = 0; i < a.next.size(); ++i)
    EXPECT_TRUE(a.next[i].path == b.next[i].path && same(a.next[i].share, b.next[i].share));
}
TEST(Prove, OneThreadOrTwoAreBitEqual) {
  const Build weak =
      hand_car("[cooling.fan.right]\nflow = \"400 cfm\"\n[charging.battery]\ncold_crank_current = \"400 A\"\n");
  for (auto duty : {"hot-idle", "cold-crank"})
    expect_equal(proof_of(weak, {.duty = duty, .threads = 1}), proof_of(weak, {.duty = duty, .threads = 2}));
}

// Doubt moves no prediction.
TEST(Prove, DoubtLeavesThePredictionsAlone) {
  const auto with = proof_of(hand_car(), {.duty = "cold-crank", .threads = 2}),
             without = proof_of(hand_car(), {.duty = "cold-crank", .doubt = false});
  ASSERT_EQ(with.findings.size(), without.findings.size());
  for (std::size_t i = 0; i < with.findings.size(); ++i)
    EXPECT_TRUE(same(with.findings[i].predicted, without.findings[i].predicted)) << with.findings[i].id;
}

std::string key_of(const std::string& path) { return path.substr(path.rfind('.') + 1); }

/// Cables off the charge path are not asked for a fuse: battery, starter and ground cables have none in a car.
bool unasked_fuse(const std::string& path) {
  return path.starts_with("wiring.run.") && path.ends_with(".fuse") && path != "wiring.run.charge.fuse";
}

/// Leaves that may go without a word, each with what stands in their place.
const std::map<std::string, std::string> may_be_absent = {
    {"title", "a name"},
    {"idle_speed_air_conditioning", "the idle speed is taken to hold"},
    {"idle_fuel", "from displacement"},
    {"output_curve", "a usual shape scaled from the rated current"},
    {"rated_current", "only asked for without an output curve"},
    {"cold_crank_current", "only asked for without a measured resistance"},
    {"tensioner", "fixed"},
    {"section", "told to the reader only: grip comes from the groove's angle"},
    {"expansion_tank", "no finding of it"},
    {"limit", "nothing but wire in the run"},
    {"least_voltage", "no finding of it"},
    {"sense", "own stud"},
    {"shoes", "only asked for without a brake factor"},
    {"voltage", "ten volts of a starter in a 12 V car"},
    {"spoke_gap", "looked at where it was measured"},
    {"lip_gap", "looked at where it was measured"},
    {"size", "only compared with the rolling diameter"},
};

// Each figure of the hand car taken away in turn. Nothing crashes, nothing that is no number is shown, nothing that did
// not hold holds for it, and what is needed is asked for by name.
void without_each_leaf(const Build& build) {
  const auto before = proof_of(build);
  std::map<std::string, State> was;
  for (auto& f : before.findings) was[f.id] = f.state;
  std::vector<std::string> paths;
  each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) {
    if (has_value(*leaf.field, leaf.owner)) paths.push_back(leaf.path);
  });
  ASSERT_GT(paths.size(), 200u);
  for (auto& path : paths) {
    SCOPED_TRACE(path);
    Build less = build;
    const auto leaf = find_leaf(build_fields(), &less, path);
    clear_leaf(*leaf.field, leaf.owner);
    less.evidence.erase(path);
    fill_defaults(build_fields(), &less, "", less.evidence);
    const bool stands_in = has_value(*leaf.field, leaf.owner);
    const auto p = proof_of(less);
    nothing_but_numbers(p, path);
    if (stands_in) continue;
    bool asked = false;
    for (auto& f : p.findings) {
      for (auto& m : f.missing) asked = asked || m.starts_with(path);
      EXPECT_FALSE(f.state == State::holds && was.contains(f.id) && was[f.id] != State::holds &&
                   !may_be_absent.contains(key_of(path)))
          << f.id << " holds for lack of a figure";
    }
    EXPECT_TRUE(asked || may_be_absent.contains(key_of(path)) || unasked_fuse(path)) << "nobody asks for it";
    if (asked) {
      EXPECT_NE(p.exit_code(), 0);
    }
    if (asked) {
      EXPECT_FALSE(p.next.empty());
    }
  }
}
TEST(Prove, EachFigureMissingFromTheSoundCar) { without_each_leaf(hand_car()); }
TEST(Prove, EachFigureMissingFromAWeakCar) {
  without_each_leaf(
      hand_car("[cooling.fan.left]\nflow = \"300 cfm\"\n[cooling.fan.right]\nflow = \"300 "
               "cfm\"\n[charging.battery]\ncold_crank_current = \"250 A\"\n"
               "[wiring.run.charge]\ngauge = \"12 AWG\"\nfuse = \"200 A\"\n[wiring.fans]\ngauge = \"16 AWG\"\n"));
}

// A default itself taken away, as no file can: still a reason and no crash.
TEST(Prove, EachStandInMissing) {
  Build build = hand_car();
  std::vector<std::string> paths;
  each_leaf(build_fields(), &build, "", [&](const Leaf& leaf) {
    if (leaf.field->fallback && has_value(*leaf.field, leaf.owner)) paths.push_back(leaf.path);
  });
  for (auto& path : paths) {
    Build less = build;
    const auto leaf = find_leaf(build_fields(), &less, path);
    clear_leaf(*leaf.field, leaf.owner);
    nothing_but_numbers(proof_of(less), path);
  }
}

}  // namespace
