// Runs every row of tests/published/checks_*.toml through the sums.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "document/document.hpp"
#include "sum/run.hpp"

namespace sw {
namespace {

struct Check {
  std::string id, sum, output, unit, tolerance, source, provenance;
  std::vector<std::string> args;
  std::size_t item = 0;  ///< of a list, counted from 1; 0 where the output is one number
  double expected = 0;
  std::string expected_text;  ///< where the output is a text
};

std::string text_at(const Node& row, std::string_view key) {
  const Node* n = row.find(key);
  return n ? n->text : std::string();
}

Check check_of(const Node& row) {
  Check c;
  c.id = text_at(row, "id");
  c.sum = text_at(row, "sum");
  c.output = text_at(row, "output");
  c.unit = text_at(row, "unit");
  c.tolerance = text_at(row, "tolerance");
  c.source = text_at(row, "source");
  c.provenance = text_at(row, "provenance");
  if (auto* args = row.find("args"))
    for (auto& a : args->items) c.args.push_back(a.text);
  if (auto* i = row.find("item")) c.item = static_cast<std::size_t>(i->number);
  if (auto* e = row.find("expected")) {
    if (e->type == Node::Type::text)
      c.expected_text = e->text;
    else
      c.expected = e->number;
  }
  return c;
}

std::vector<Check> all_checks() {
  std::vector<std::filesystem::path> files;
  for (auto& entry : std::filesystem::directory_iterator(STREETWRIGHT_SOURCE_DIR "/tests/published"))
    if (entry.path().extension() == ".toml") files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  std::vector<Check> all;
  for (auto& file : files) {
    std::ostringstream text;
    text << std::ifstream(file).rdbuf();
    Diagnostics faults;
    const Node root = parse_text(text.str(), 0, false, faults);
    if (faults.any_fault()) throw std::runtime_error(file.string() + ": " + say(faults.all().front(), {file.string()}));
    for (auto& row : root.find("check")->items) all.push_back(check_of(row));
  }
  return all;
}

/// Half-width in the check's unit.
double tolerance_of(const Check& c) {
  if (c.tolerance == "exact") return 1e-12 * std::abs(c.expected);
  if (c.tolerance.back() == '%') return std::abs(c.expected) * std::stod(c.tolerance) / 100;
  return std::stod(c.tolerance);
}

class Published : public testing::TestWithParam<Check> {};

TEST_P(Published, IsReached) {
  const Check& c = GetParam();
  ASSERT_FALSE(c.source.empty()) << "a check names its source";
  ASSERT_FALSE(c.provenance.empty()) << "a check says how its source was read";
  std::vector<std::string> units;
  if (!c.unit.empty()) units.push_back(c.output + "=" + c.unit);
  const SumResult r = run_sum(c.sum, c.args, units);
  ASSERT_EQ(r.exit_code(), 0) << r.to_text();
  const SumValue* got = r.output(c.output);
  ASSERT_NE(got, nullptr) << r.to_text();
  if (!c.expected_text.empty()) {
    EXPECT_EQ(got->text, c.expected_text) << c.source;
    return;
  }
  ASSERT_EQ(got->is_list, c.item > 0) << "a check of a list says which item, and no other does";
  ASSERT_GE(got->numbers.size(), std::max<std::size_t>(c.item, 1));
  EXPECT_EQ(got->unit, c.unit.empty() ? "-" : c.unit);
  EXPECT_NEAR(got->numbers[c.item > 0 ? c.item - 1 : 0], c.expected, tolerance_of(c)) << c.source;
}

INSTANTIATE_TEST_SUITE_P(Rows, Published, testing::ValuesIn(all_checks()), [](const auto& row) {
  std::string name = row.param.id;
  std::replace_if(
      name.begin(), name.end(), [](char ch) { return !std::isalnum(static_cast<unsigned char>(ch)); }, '_');
  return name;
});

}  // namespace
}  // namespace sw
