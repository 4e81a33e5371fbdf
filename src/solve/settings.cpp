#include "solve/settings.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "field/words.hpp"
#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

constexpr int digits = 4;  ///< of a value that a shop sets

bool has_unit(const FieldInfo& f) { return f.type == FieldType::quantity && !is_pure(*f.kind); }

std::string shown_as(const FieldInfo& f, double si, std::string_view unit) {
  switch (f.type) {
    case FieldType::choice:
      return std::string(f.choices[static_cast<std::size_t>(si)]);
    case FieldType::yes_no:
      return si != 0 ? "true" : "false";
    case FieldType::integer:
      return short_number(std::round(si), 15);
    default:
      return has_unit(f) ? print(si, *f.kind, unit, digits) : short_number(si, digits);
  }
}

/// What reading the text would give.
double read_back(const FieldInfo& f, const std::string& text, double si) {
  if (f.type != FieldType::quantity && f.type != FieldType::number && f.type != FieldType::integer) return si;
  const auto read = parse_quantity(text, *f.kind);
  const auto* parsed = std::get_if<Parsed>(&read);
  return parsed ? parsed->si : si;
}

bool is_figure(const FieldInfo* f) { return f && f->access.get && f->access.set; }

std::string toml_of(const FieldInfo& f, const std::string& text) {
  const bool quoted = has_unit(f) || f.type == FieldType::choice;
  return "{ value = " + (quoted ? "\"" + text + "\"" : text) + ", from = \"" + std::string(name_of(Source::solved)) +
         "\" }";
}

}  // namespace

std::vector<SettingText> setting_texts(const Build& build, std::span<const Setting> settings, const WrittenUnits& units,
                                       Diagnostics& faults) {
  std::vector<SettingText> all;
  for (auto& s : settings) {
    const Leaf leaf = find_leaf(build_fields(), static_cast<const void*>(&build), s.path);
    if (!is_figure(leaf.field)) {
      faults.fault({}, s.path, "is no figure of this build", "write its group into the build first");
      continue;
    }
    const FieldInfo& f = *leaf.field;
    SettingText t{.path = s.path, .label = std::string(f.label), .field = &f};
    if (has_unit(f)) t.unit = units.of(*f.kind, unit_of(f));
    t.was = f.access.get(leaf.owner);
    if (t.was) t.was_text = shown_as(f, *t.was, t.unit);
    t.text = shown_as(f, s.value, t.unit);
    t.value = read_back(f, t.text, s.value);
    t.toml = toml_of(f, t.text);
    if (!in_range(t.value, f))
      faults.fault({}, s.path, t.text + " is outside " + range_words(f), "see what the solution rests on");
    all.push_back(std::move(t));
  }
  return all;
}

Build with_settings(Build build, std::span<const SettingText> settings) {
  for (auto& s : settings) {
    const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&build), s.path);
    leaf.field->access.set(leaf.owner, s.value);
    build.evidence[s.path] = {.source = Source::solved,
                              .half_width = usual_half_width(*leaf.field, Source::solved, s.value)};
  }
  return build;
}

std::optional<std::string> write_settings(const std::string& text, std::span<const SettingText> settings,
                                          Diagnostics& faults) {
  std::vector<Edit> edits;
  for (auto& s : settings) edits.push_back({s.path, s.toml});
  return splice(text, edits, faults);
}

std::string lines_to_paste(std::span<const SettingText> settings) {
  std::string text, open;
  std::vector<const SettingText*> by_table;
  for (auto& s : settings) by_table.push_back(&s);
  const auto table = [](const SettingText& s) { return s.path.substr(0, s.path.rfind('.')); };
  std::stable_sort(by_table.begin(), by_table.end(), [&](auto* a, auto* b) { return table(*a) < table(*b); });
  for (auto* s : by_table) {
    if (table(*s) != open) text += "[" + (open = table(*s)) + "]\n";
    text += s->path.substr(s->path.rfind('.') + 1) + " = " + s->toml + "\n";
  }
  return text;
}

}  // namespace sw
