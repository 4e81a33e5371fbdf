// The field tables as a whole, and every build and part the program ships.
#include "car/build.hpp"

#include <gtest/gtest.h>

#include <numbers>
#include <set>

#include "car/files.hpp"
#include "document/shelf.hpp"
#include "field/measure.hpp"
#include "field/stock.hpp"
#include "quantity/parse.hpp"

namespace sw {
namespace {

using Visit = std::function<void(const FieldInfo&, const std::string& path)>;

/// Every table below `fields`, then every field, each once by its path.
void each_field(std::span<const FieldInfo> fields, const std::string& path, const Visit& visit) {
  for (auto& f : fields) {
    const std::string own = path + std::string(f.key);
    visit(f, own);
    if (f.access.children) each_field(f.access.children(), own + ".", visit);
  }
}

void each_field(const Visit& visit) { each_field(build_fields(), "", visit); }

bool inside(const Range& r, double x) {
  return (r.low_open ? x > r.low : x >= r.low) && (r.high_open ? x < r.high : x <= r.high);
}

TEST(FieldTables, GiveEachFieldOneKey) {
  std::set<std::string> seen;
  each_field([&](const FieldInfo&, const std::string& path) {
    EXPECT_TRUE(seen.insert(path).second) << path << " stands twice in its table";
  });
  EXPECT_GT(seen.size(), 150u);
}

TEST(FieldTables, SayWhatEachFieldIs) {
  each_field([](const FieldInfo& f, const std::string& path) {
    EXPECT_FALSE(f.key.empty() || f.label.empty()) << path;
    const bool system = path.find('.') == std::string::npos;  // a system has its title and no sentence
    if (!system) {
      EXPECT_TRUE(f.doc.ends_with(".")) << path << " has no sentence: \"" << f.doc << "\"";
    }
    if (f.type == FieldType::choice) {
      EXPECT_GE(f.choices.size(), 2u) << path;
    }
  });
}

TEST(FieldTables, HaveDefaultsInsideTheirRanges) {
  int defaults = 0;
  each_field([&](const FieldInfo& f, const std::string& path) {
    if (f.range.set) {
      EXPECT_LT(f.range.low, f.range.high) << path;
    }
    if (!f.fallback) return;
    ++defaults;
    if (f.range.set) {
      EXPECT_TRUE(inside(f.range, *f.fallback)) << path << " stands in with " << *f.fallback;
    }
    if (f.type == FieldType::choice) {
      EXPECT_LT(*f.fallback, static_cast<double>(f.choices.size())) << path;
    }
    if (f.type == FieldType::yes_no) {
      EXPECT_TRUE(*f.fallback == 0 || *f.fallback == 1) << path;
    }
  });
  EXPECT_GT(defaults, 40);
}

TEST(FieldTables, NameUnitsOfTheirKind) {
  each_field([](const FieldInfo& f, const std::string& path) {
    if (f.type != FieldType::quantity || f.kind->wire_gauge) return;
    const std::string text = "1 " + std::string(unit_of(f));
    EXPECT_TRUE(std::holds_alternative<Parsed>(parse_quantity(text, *f.kind))) << path << ": " << text;
  });
}

/// What decides whether somebody is hurt has no stand-in (docs/build-file.md lists these).
TEST(FieldTables, GiveNoTypicalFigureWhereItDecidesHarm) {
  std::set<std::string> harm;
  each_field([&](const FieldInfo& f, const std::string& path) {
    if (!f.harm) return;
    harm.insert(path);
    EXPECT_FALSE(f.fallback) << path;
  });
  for (auto* path : {"vehicle.system_voltage", "vehicle.earth", "charging.alternator.earth", "wiring.run.fuse",
                     "wiring.load.fuse", "wiring.fans.fuse", "cooling.cap.pressure", "cooling.cap.weakest_part"})
    EXPECT_TRUE(harm.contains(path)) << path;
}

TEST(EmptyBuild, IsFilledWithDefaultsAndNothingElse) {
  const files::Texts texts = {{"empty.toml", ""}};
  const Opened o = open("empty.toml", files::from(texts));
  EXPECT_EQ(files::said(o), "");
  EXPECT_FALSE(o.build.evidence.empty());
  for (auto& [path, evidence] : o.build.evidence) EXPECT_TRUE(evidence.defaulted) << path;
}

/// The nodes of a tree that give the value of a leaf.
void each_given(Node& table, std::span<const FieldInfo> fields, const std::string& path,
                const std::function<void(Node&, const std::string&)>& visit) {
  for (auto& e : table.entries)
    for (auto& f : fields) {
      if (f.key != e.key) continue;
      const std::string own = path + e.key;
      if (f.type == FieldType::group)
        each_given(e.value, f.access.children(), own + ".", visit);
      else if (f.type == FieldType::list)
        for (auto& item : e.value.entries)
          each_given(item.value, f.access.children(), own + "." + item.key + ".", visit);
      else
        visit(e.value, own);
    }
}

/// Each figure of the sound car in turn given as a date: that is told, and no rule is tried on what is left of it.
TEST(SpoiltField, IsTheOnlyFaultOfASoundBuild) {
  Document document =
      open_build(files::root() / "demo/sound.toml", build_fields(), from_disk(), std::string(stock_text("shelf.toml")));
  std::vector<std::pair<Node*, std::string>> given;
  each_given(document.root, build_fields(), "",
             [&](Node& n, const std::string& path) { given.emplace_back(&n, path); });
  ASSERT_GT(given.size(), 150u);
  for (auto& [node, path] : given) {
    const Node sound = *node;
    *node = {.type = Node::Type::other, .place = sound.place, .text = "1979-05-27"};
    const Opened o = read_build(document);
    ASSERT_EQ(o.faults.all().size(), 1u) << path << "\n" << files::said(o);
    EXPECT_EQ(o.faults.all().front().path, path);
    *node = sound;
  }
}

TEST(DemoBuilds, ReadWithoutFault) {
  const auto all = files::builds_in("demo");
  ASSERT_GE(all.size(), 2u);
  for (auto& path : all) EXPECT_EQ(files::said(open(path, from_disk())), "") << path.filename();
}

TEST(StartingBuilds, ReadWithoutFaultAsTheyAreAndFilledIn) {
  const auto all = files::builds_in("stock/templates");
  ASSERT_EQ(all.size(), 3u);
  for (auto& path : all) {
    EXPECT_EQ(files::said(open(path, from_disk())), "") << path.filename();
    EXPECT_NE(files::filled_in(path), files::text_of(path)) << path.filename();
    EXPECT_EQ(files::said(files::open_filled(path)), "") << path.filename();
    EXPECT_FALSE(stock_text("templates/" + path.filename().string()).empty()) << "is not embedded";
  }
}

/// No figure of a starting build may look measured: nobody has measured that car.
TEST(StartingBuilds, ClaimNoMeasurement) {
  for (auto& path : files::builds_in("stock/templates")) {
    const Opened o = open(path, from_disk());
    for (auto& [leaf, e] : o.build.evidence) EXPECT_NE(e.source, Source::measured) << path.filename() << " " << leaf;
  }
}

/// Taking the marks away, with one stroke of an editor, fills nothing in: each line is then a fault that is told.
TEST(StartingBuilds, MarksTakenAwayLeaveBlanks) {
  for (auto& path : files::builds_in("stock/templates")) {
    const std::string text = std::regex_replace(files::text_of(path), std::regex("# MEASURE "), "");
    const files::Texts texts = {{"blank.toml", text}};
    const Opened o = open("blank.toml", files::from(texts));
    const std::string said = files::said(o);
    std::size_t told = 0, marked = 0;
    for (std::size_t at = 0; (at = said.find("got \"\"", at)) != std::string::npos; ++at) ++told;
    const std::string form = files::text_of(path);
    for (std::size_t at = 0; (at = form.find("\n# MEASURE ", at)) != std::string::npos; ++at) ++marked;
    EXPECT_EQ(told, marked) << path.filename() << "\n" << said;
    EXPECT_GE(marked, 12u) << path.filename();
  }
}

/// Every figure of a form is a stand-in and says so; what decides harm is not there at all, unless the shelf has it.
TEST(StartingBuilds, StateNothingOfTheirOwn) {
  for (auto& path : files::builds_in("stock/templates")) {
    Opened o = open(path, from_disk());
    each_leaf(build_fields(), &o.build, "", [&](const Leaf& leaf) {
      const auto e = o.build.evidence.find(leaf.path);
      if (e == o.build.evidence.end() || e->second.defaulted || !e->second.part.empty()) return;
      EXPECT_FALSE(leaf.field->harm) << path.filename() << " " << leaf.path;
      const bool figure = leaf.field->type == FieldType::quantity || leaf.field->type == FieldType::number ||
                          leaf.field->type == FieldType::curve;
      if (!figure) return;
      EXPECT_EQ(e->second.source, Source::typical) << path.filename() << " " << leaf.path;
    });
  }
}

// ------------------------------------------------------------------------------------------------ the shelf

Node shelf() {
  Diagnostics faults;
  Node root = parse_text(std::string(stock_text("shelf.toml")), 0, false, faults);
  EXPECT_TRUE(faults.all().empty());
  return root;
}

/// Path of the group or list each shelf category fills.
std::map<std::string, std::string> categories() {
  std::map<std::string, std::string> all;
  each_field([&](const FieldInfo& f, const std::string& path) {
    if (!f.part.empty()) all[std::string(f.part)] = f.type == FieldType::list ? path + ".one" : path;
  });
  return all;
}

TEST(Shelf, HoldsSomethingForEveryGroupItCanFill) {
  const Node root = shelf();
  const auto fill = categories();
  for (auto& [category, path] : fill) {
    auto* parts = root.find(category);
    EXPECT_TRUE(parts && parts->entries.size() >= 3) << category;
  }
  for (auto& e : root.entries) EXPECT_TRUE(fill.contains(e.key)) << e.key << " fills no group";
}

TEST(Shelf, HasPartsThatReadWithoutFaultIntoTheirGroups) {
  const Node root = shelf();
  const auto fill = categories();
  std::size_t count = 0;
  for (auto& category : root.entries)
    for (auto& part : category.value.entries) {
      const std::string path = fill.at(category.key);
      const files::Texts texts = {{"one.toml", "[" + path + "]\npart = \"" + part.key + "\"\n"}};
      const Opened o = open("one.toml", files::from(texts));
      EXPECT_EQ(files::said(o), "") << category.key << " " << part.key;
      std::size_t taken = 0;
      for (auto& [leaf, e] : o.build.evidence)
        if (e.part == part.key) {
          ++taken;
          EXPECT_TRUE(leaf.starts_with(path + ".")) << leaf;
          EXPECT_TRUE(e.source == Source::data_sheet || e.source == Source::typical) << leaf;
        }
      EXPECT_GE(taken, 2u) << part.key;
      ++count;
    }
  EXPECT_GE(count, 30u);
}

TEST(Shelf, TellsTheShopWhatItWantsToKnow) {
  const Node root = shelf();
  auto is_time = [](const Node* n) {
    return n && n->type == Node::Type::text && std::holds_alternative<Parsed>(parse_quantity(n->text, kind::time));
  };
  for (auto& category : root.entries)
    for (auto& part : category.value.entries) {
      auto* title = part.value.find("title");
      auto* price = part.value.find("price");
      EXPECT_TRUE(title && title->type == Node::Type::text && !title->text.empty()) << part.key;
      EXPECT_TRUE(price && price->type == Node::Type::integer && price->number > 0) << part.key;
      EXPECT_TRUE(is_time(part.value.find("lead_time"))) << part.key;
      EXPECT_TRUE(is_time(part.value.find("labour"))) << part.key;
    }
}

/// A curve that sank, or missed the rated current at 6000 rpm (ISO 8854's rating point), would be a slip of the pen.
TEST(Shelf, HasAlternatorCurvesThatRiseToTheRatedCurrent) {
  const Node root = shelf();
  for (auto& part : root.find("alternator")->entries) {
    const files::Texts texts = {{"one.toml", "[charging.alternator]\npart = \"" + part.key + "\"\n"}};
    const Opened o = open("one.toml", files::from(texts));
    auto& a = std::get<charging::Input>(o.build.inputs).alternator;
    ASSERT_TRUE(a.output_curve && a.rated_current && a.earth && a.highest_speed) << part.key;
    auto& c = *a.output_curve;
    EXPECT_EQ(c.y.front(), 0.0) << part.key;
    EXPECT_TRUE(std::is_sorted(c.y.begin(), c.y.end())) << part.key;
    EXPECT_DOUBLE_EQ(c.y.back(), a.rated_current->si) << part.key;
    EXPECT_NEAR(c.x.back() * 30 / std::numbers::pi, 6000, 1e-6) << part.key;
  }
}

TEST(Shelf, HasOneAlternatorStrongAtIdleAndOneThatOnlyLooksStrong) {
  auto at_idle = [](const std::string& part) {
    const files::Texts texts = {{"one.toml", "[charging.alternator]\npart = \"" + part + "\"\n"}};
    const Opened o = open("one.toml", files::from(texts));
    auto& a = std::get<charging::Input>(o.build.inputs).alternator;
    return physics::Interpolant::make(*a.output_curve)->at(1750 * std::numbers::pi / 30).value / a.rated_current->si;
  };
  EXPECT_GT(at_idle("high-idle-140"), 0.6);
  EXPECT_LT(at_idle("big-frame-200"), 0.2);
}

}  // namespace
}  // namespace sw
