// The field tables of all systems, walked: a table has no rules of its own, but it can be wrong.
#include <set>

#include "field/measure.hpp"
#include "quantity/unit.hpp"
#include "systems/rig.hpp"

using namespace sw;
using namespace sw::rig;

namespace {

struct Row {
  std::string path;
  const FieldInfo* field;
};
void walk(std::span<const FieldInfo> fields, const std::string& prefix, std::vector<Row>& rows) {
  for (auto& f : fields) {
    const std::string path = prefix.empty() ? std::string(f.key) : prefix + "." + std::string(f.key);
    if (f.type == FieldType::group)
      walk(f.access.children(), path, rows);
    else if (f.type == FieldType::list)
      walk(f.access.children(), path + ".*", rows);
    else
      rows.push_back({path, &f});
  }
}
std::vector<Row> all_rows() {
  std::vector<Row> rows;
  walk(build_fields(), "", rows);
  return rows;
}

TEST(SystemFields, EachSaysWhatItIs) {
  std::set<std::string> paths;
  for (auto& [path, f] : all_rows()) {
    EXPECT_TRUE(paths.insert(path).second) << path << " stands twice";
    EXPECT_TRUE(f->doc.ends_with('.')) << path << ": " << f->doc;
    EXPECT_FALSE(f->label.empty()) << path;
  }
  EXPECT_GT(paths.size(), 130u);
}

TEST(SystemFields, StandInsLieInTheirRanges) {
  for (auto& [path, f] : all_rows()) {
    if (!f->fallback) continue;
    if (f->type == FieldType::choice) {
      EXPECT_LT(*f->fallback, static_cast<double>(f->choices.size())) << path;
    }
    if (!f->range.set) continue;
    EXPECT_LT(f->range.low, f->range.high) << path;
    EXPECT_GE(*f->fallback, f->range.low) << path;
    EXPECT_LE(*f->fallback, f->range.high) << path;
  }
}

// A figure that decides a harm rule has no typical value: nobody's wing fuse is assumed.
TEST(SystemFields, HarmHasNoStandIn) {
  int harm = 0;
  for (auto& [path, f] : all_rows()) {
    if (!f->harm) continue;
    ++harm;
    EXPECT_FALSE(f->fallback && f->fallback_source == Source::typical) << path;
  }
  EXPECT_GE(harm, 5);
}

// A typical figure says where it is from, and leaves a doubt behind.
TEST(SystemFields, TypicalFiguresSaySoAndCarryDoubt) {
  for (auto& [path, f] : all_rows()) {
    if (!f->fallback || f->fallback_source != Source::typical || path.starts_with("duty.")) continue;
    if (f->type != FieldType::quantity && f->type != FieldType::number) continue;
    const auto& s = f->spreads[static_cast<std::size_t>(Source::typical)];
    const bool doubt = s.share > 0 || s.absolute > 0;
    EXPECT_TRUE(doubt || !f->source.empty() || *f->fallback == 0) << path << " is taken as exact and says no source";
  }
}

// Each figure has a range, so that a slip of the unit is caught; those without are named here with their reason.
TEST(SystemFields, FiguresHaveRanges) {
  const std::set<std::string> without = {
      "wiring.run.*.gauge", "wiring.load.*.gauge",
      "wiring.fans.gauge",  // any size a table knows; the ampacity table says where it ends
  };
  for (auto& [path, f] : all_rows()) {
    if (f->type != FieldType::quantity && f->type != FieldType::number && f->type != FieldType::integer) continue;
    EXPECT_TRUE(f->range.set || without.contains(path)) << path;
  }
}

TEST(SystemFields, UnitsAreOffered) {
  for (auto& [path, f] : all_rows())
    if (f->type == FieldType::quantity || f->type == FieldType::curve) {
      EXPECT_TRUE(std::holds_alternative<Unit>(parse_unit_for(unit_of(*f), *f->kind))) << path << " in " << unit_of(*f);
    }
}

}  // namespace
