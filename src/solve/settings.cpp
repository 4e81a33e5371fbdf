#include "solve/settings.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "field/words.hpp"
#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

constexpr int digits = figure_digits;  ///< of a value that a shop sets

/// What reading the text would give.
double read_back(const FieldInfo& f, const std::string& text, double si) {
  if (f.type != FieldType::quantity && f.type != FieldType::number && f.type != FieldType::integer) return si;
  const auto read = parse_quantity(text, *f.kind);
  const auto* parsed = std::get_if<Parsed>(&read);
  return parsed ? parsed->si : si;
}

bool is_figure(const FieldInfo* f) { return f && f->access.get && f->access.set; }
bool is_curve(const FieldInfo* f) { return f && f->type == FieldType::curve; }
bool is_text(const FieldInfo* f) { return f && f->type == FieldType::text; }

/// One figure of a curve's row: as it is told and written, and what reading that gives.
struct RowFigure {
  std::string text, toml;
  double si;
};
RowFigure row_figure(double si, const Kind& kind, std::string_view unit) {
  RowFigure r{is_pure(kind) ? short_number(si, digits) : print(si, kind, unit, digits), {}, si};
  r.toml = is_pure(kind) ? r.text : "\"" + r.text + "\"";
  const auto read = parse_quantity(r.text, kind);
  if (const auto* parsed = std::get_if<Parsed>(&read)) r.si = parsed->si;
  return r;
}

std::string_view unit_x_of(const FieldInfo& f) {
  return f.unit_x.empty() && !f.kind_x->units.empty() ? f.kind_x->units[0] : f.unit_x;
}

/// The unit a curve's x is told in: that of the build, unless the field's own makes whole numbers of what that does
/// not.
std::string_view unit_of_rows(const Curve& rows, const FieldInfo& f, const WrittenUnits& units) {
  const std::string_view own = unit_x_of(f), written = units.of(*f.kind_x, own);
  const auto whole = [&](std::string_view unit) {
    return std::all_of(rows.x.begin(), rows.x.end(), [&](double x) {
      const double n = from_si(x, *f.kind_x, unit);
      return std::abs(n - std::round(n)) < 1e-6;
    });
  };
  return whole(own) && !whole(written) ? own : written;
}

/// A curve's rows rounded and written; the text tells every row, so that two of them compare by it.
void set_rows(const Curve& rows, const FieldInfo& f, const WrittenUnits& units, SettingText& t) {
  t.curve.emplace();
  t.text.clear();
  const std::string_view unit_x = unit_of_rows(rows, f, units);
  for (std::size_t i = 0; i < rows.x.size(); ++i) {
    const RowFigure x = row_figure(rows.x[i], *f.kind_x, unit_x);
    const RowFigure y = row_figure(rows.y[i], *f.kind, t.unit);
    t.curve->x.push_back(x.si), t.curve->y.push_back(y.si);
    t.text += (i ? "; " : "") + x.text + ": " + y.text;
    t.toml += (i ? ", [" : "[") + x.toml + ", " + y.toml + "]";
  }
  t.toml = "{ points = [" + t.toml + "], from = \"" + std::string(name_of(Source::solved)) + "\" }";
}

SettingText curve_text(const Setting& s, const Leaf& leaf, const WrittenUnits& units, Diagnostics& faults) {
  const FieldInfo& f = *leaf.field;
  SettingText t{.path = s.path, .label = std::string(f.label), .field = &f, .unit = units.of(*f.kind, unit_of(f))};
  if (auto& before = *f.access.curve(leaf.owner)) {
    set_rows(*before, f, units, t);
    t.was = 0;
    t.was_text = t.text;
    t.toml.clear();
  }
  set_rows(*s.curve, f, units, t);
  for (double y : t.curve->y)
    if (!in_range(y, f))
      faults.fault({}, s.path, "a row is outside " + range_words(f), "see what the solution rests on");
  return t;
}

SettingText words_text(const Setting& s, const Leaf& leaf) {
  const std::string& before = *leaf.field->access.text(leaf.owner);
  SettingText t{.path = s.path, .label = std::string(leaf.field->label), .field = leaf.field, .words = true};
  if (!before.empty()) t.was = 0, t.was_text = before;
  t.text = *s.words;
  t.toml = "\"" + t.text + "\"";
  return t;
}

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
    if (s.curve && is_curve(leaf.field)) {
      all.push_back(curve_text(s, leaf, units, faults));
      continue;
    }
    if (s.words && is_text(leaf.field)) {
      all.push_back(words_text(s, leaf));
      continue;
    }
    if (!is_figure(leaf.field) || s.curve || s.words) {
      faults.fault({}, s.path, "is no figure of this build", "write its group into the build first");
      continue;
    }
    const FieldInfo& f = *leaf.field;
    SettingText t{.path = s.path, .label = std::string(f.label), .field = &f};
    if (has_unit(f)) t.unit = units.of(*f.kind, unit_of(f));
    t.was = f.access.get(leaf.owner);
    if (t.was) t.was_text = figure_words(f, *t.was, t.unit);
    t.text = figure_words(f, s.value, t.unit);
    t.value = read_back(f, t.text, s.value);
    t.toml = toml_of(f, t.text);
    if (!in_range(t.value, f))
      faults.fault({}, s.path, t.text + " is outside " + range_words(f), "see what the solution rests on");
    all.push_back(std::move(t));
  }
  return all;
}

bool stands(const SettingText& s, const Leaf& leaf) {
  if (!leaf.field) return false;
  if (s.words) return is_text(leaf.field) && *leaf.field->access.text(leaf.owner) == s.text;
  return s.curve ? is_curve(leaf.field) && *leaf.field->access.curve(leaf.owner) == s.curve
                 : is_figure(leaf.field) && leaf.field->access.get(leaf.owner) == s.value;
}

Build with_settings(Build build, std::span<const SettingText> settings) {
  for (auto& s : settings) {
    const LeafTo leaf = find_leaf(build_fields(), static_cast<void*>(&build), s.path);
    if (s.words) {
      *leaf.field->access.text_to(leaf.owner) = s.text;
      continue;
    }
    if (s.curve)
      *leaf.field->access.curve_to(leaf.owner) = s.curve;
    else
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
