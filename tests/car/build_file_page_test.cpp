// Every example of docs/build-file.md is read: what the page says works, and what it calls wrong is told as it says.
#include <gtest/gtest.h>

#include "car/car.hpp"
#include "car/files.hpp"
#include "duty/duties.hpp"

namespace sw {
namespace {

struct Page {
  files::Texts builds;            ///< by the name in their first line
  std::vector<std::string> told;  ///< lines of the blocks that show what is said
};

Page read_page() {
  std::istringstream in(files::text_of(files::root() / "docs/build-file.md"));
  Page page;
  std::string block, language;
  bool inside = false;
  for (std::string line; std::getline(in, line);) {
    if (!line.starts_with("```")) {
      if (inside) block += line + "\n";
      continue;
    }
    if (!inside) {
      language = line.substr(3);
      block.clear();
    } else if (language == "toml") {
      page.builds[block.substr(2, block.find('\n') - 2)] = block;
    } else {
      std::istringstream lines(block);
      for (std::string said; std::getline(lines, said);) page.told.push_back(said);
    }
    inside = !inside;
  }
  return page;
}

const Page& page() {
  static const Page p = read_page();
  return p;
}

Opened opened(const std::string& name) { return open(name, files::from(page().builds)); }

TEST(BuildFilePage, HasExamplesThatReadWithoutFault) {
  ASSERT_GE(page().builds.size(), 9u);
  for (auto& [name, text] : page().builds)
    if (name != "wrong.toml" && !name.starts_with("shelf")) {
      EXPECT_EQ(files::said(opened(name)), "") << name;
    }
}

TEST(BuildFilePage, ShowsFaultsAsTheyAreTold) {
  const Opened o = opened("wrong.toml");
  ASSERT_FALSE(page().told.empty());
  ASSERT_EQ(o.faults.all().size(), page().told.size()) << files::said(o);
  for (std::size_t i = 0; i < page().told.size(); ++i)
    EXPECT_TRUE(say(o.faults.all()[i], o.files).starts_with(page().told[i])) << say(o.faults.all()[i], o.files);
}

TEST(BuildFilePage, ReadsEvidenceAsItSays) {
  const Opened o = opened("evidence.toml");
  auto& e = o.build.evidence;
  EXPECT_EQ(e.at("engine.idle_speed").source, Source::measured);
  EXPECT_EQ(e.at("engine.red_line").half_width, 0.0);
  EXPECT_NEAR(e.at("cooling.radiator.core_width").half_width, 0.0254 / 16, 1e-12);
  EXPECT_NEAR(e.at("cooling.radiator.conductance").half_width, 0.06 * 2300, 1e-9);
}

TEST(BuildFilePage, TakesPartsAndLaysOverAsItSays) {
  const Opened parts = opened("parts.toml");
  auto& charging = std::get<charging::Input>(parts.build.inputs);
  EXPECT_NEAR(charging.alternator.rated_current->si, 120, 1e-9);
  EXPECT_NEAR(charging.alternator.regulator_voltage->si, 14.2, 1e-9);
  EXPECT_EQ(parts.build.evidence.at("charging.alternator.rated_current").source, Source::data_sheet);
  EXPECT_NEAR(charging.battery.capacity->si, 75 * 3600, 1e-6);

  const Opened over = opened("what-if.toml");
  auto& front = *std::get<belts::Input>(over.build.inputs).belt.find("front");
  EXPECT_NEAR(front.pulley.find("alternator")->diameter->si, 2.2 * 0.0254, 1e-12);
  EXPECT_NEAR(front.pulley.find("pump")->diameter->si, 5.5 * 0.0254, 1e-12);
  auto& fans = std::get<cooling::Input>(over.build.inputs).fan;
  EXPECT_TRUE(fans.find("pair") && !fans.find("left"));
}

TEST(BuildFilePage, HasDutiesOfItsOwnThatCanBeRun) {
  const Opened o = opened("duty.toml");
  const auto set = duties_of(o.build, files::from(page().builds));
  EXPECT_FALSE(set->faults.any_fault());
  EXPECT_TRUE(set->duty.find("ferry-queue") && set->duty.find("home-run") && set->duty.find("hot-idle"));
}

TEST(BuildFilePage, NamesTheNodesTheNetworkKnows) {
  const Car car(opened("wiring.toml").build);
  const std::string text = files::text_of(files::root() / "docs/build-file.md");
  for (auto& s : car.systems())
    for (auto& m : s.missing)
      if (auto at = m.find("reaches \""); at != std::string::npos) {
        const std::string node = m.substr(at + 9, m.size() - at - 10);
        EXPECT_NE(text.find("| `" + node + "` |"), std::string::npos) << node;
      }
}

}  // namespace
}  // namespace sw
