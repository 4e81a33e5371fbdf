#pragma once
// Published figures as the files beside this one hold them: rows of checks_*.toml that a sum must reach, and
// not_checked.toml, lines nothing of the program speaks to.
#include <algorithm>
#include <cmath>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "document/document.hpp"
#include "sum/run.hpp"

namespace sw::published {

struct Check {
  std::string area;  ///< the file's: checks_AREA.toml
  std::string id, sum, output, unit, tolerance, source, provenance;
  std::vector<std::string> args;
  std::size_t item = 0;  ///< of a list, counted from 1; 0 where the output is one number
  double expected = 0;
  std::string expected_text;  ///< where the output is a text
};

/// A published figure nothing here is held against, and why.
struct NotChecked {
  std::string id, what, expected, source, provenance, reason;
};

inline std::filesystem::path folder() { return STREETWRIGHT_SOURCE_DIR "/tests/published"; }

inline std::string text_of(const std::filesystem::path& file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

inline Node tree_of(const std::filesystem::path& file) {
  Diagnostics faults;
  Node root = parse_text(text_of(file), 0, false, faults);
  if (faults.any_fault()) throw std::runtime_error(file.string() + ": " + say(faults.all().front(), {file.string()}));
  return root;
}

inline std::string text_at(const Node& row, std::string_view key) {
  const Node* n = row.find(key);
  return n ? n->text : std::string();
}

inline Check check_of(const Node& row, std::string area) {
  Check c{.area = std::move(area)};
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

inline std::vector<Check> all_checks() {
  constexpr std::string_view stem = "checks_";
  std::vector<std::filesystem::path> files;
  for (auto& entry : std::filesystem::directory_iterator(folder()))
    if (entry.path().extension() == ".toml" && entry.path().filename().string().starts_with(stem))
      files.push_back(entry.path());
  std::sort(files.begin(), files.end());
  std::vector<Check> all;
  for (auto& file : files) {
    const Node root = tree_of(file);
    for (auto& row : root.find("check")->items) all.push_back(check_of(row, file.stem().string().substr(stem.size())));
  }
  return all;
}

inline std::vector<NotChecked> not_checked() {
  std::vector<NotChecked> all;
  const Node root = tree_of(folder() / "not_checked.toml");
  for (auto& row : root.find("line")->items)
    all.push_back({text_at(row, "id"), text_at(row, "what"), text_at(row, "expected"), text_at(row, "source"),
                   text_at(row, "provenance"), text_at(row, "reason")});
  return all;
}

/// Half-width in the unit of what is expected: a share ("0.05%"), an amount, or "exact".
inline double half_width(const std::string& tolerance, double expected) {
  if (tolerance == "exact") return 1e-12 * std::abs(expected);
  if (tolerance.back() == '%') return std::abs(expected) * std::stod(tolerance) / 100;
  return std::stod(tolerance);
}

inline SumResult result_of(const Check& c) {
  std::vector<std::string> units;
  if (!c.unit.empty()) units.push_back(c.output + "=" + c.unit);
  return run_sum(c.sum, c.args, units);
}

/// The sum as it would be typed.
inline std::string line_of(const Check& c) {
  std::string line = c.sum;
  for (auto& arg : c.args) {
    const auto equals = arg.find('=');
    const bool quoted = arg.find_first_of(" ;()") != std::string::npos;
    line += " " + arg.substr(0, equals + 1) + (quoted ? "\"" : "") + arg.substr(equals + 1) + (quoted ? "\"" : "");
  }
  return line;
}

}  // namespace sw::published
