#include "field/leaf.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "field/words.hpp"
#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw {

namespace {

bool is_bare_number(const Node& n) { return n.type == Node::Type::integer || n.type == Node::Type::real; }

/// The unit that was probably meant: the first of those a shop writes in which the same number would lie in the range.
/// A kind offers its usual units first; nobody writes cubic feet a second where cubic feet a minute are meant, nor
/// radians where turns are.
std::string was_meant(const FieldInfo& f, std::string_view given, const Parsed& parsed) {
  std::string number(
      parsed.unit.empty() ? given : given.substr(0, static_cast<std::size_t>(parsed.unit.data() - given.data())));
  while (!number.empty() && number.back() == ' ') number.pop_back();
  if (is_pure(*f.kind)) {
    bool share = parsed.unit.empty() && in_range(parsed.written / 100, f);
    return share ? "was " + in_quotes(number + " %") + " meant?" : "";
  }
  constexpr std::size_t usual = 4;
  for (auto unit : f.kind->units.first(std::min(usual, f.kind->units.size()))) {
    if (unit == parsed.unit || (f.kind->wire_gauge && unit == "AWG") || unit.starts_with("rad")) continue;
    if (in_range(to_si(parsed.written, *f.kind, unit), f)) return "was " + number + " " + std::string(unit) + " meant?";
  }
  return {};
}

/// `26 mm is outside 4 in to 60 in (101.6 mm to 1524 mm)`.
std::string outside(const FieldInfo& f, std::string_view given, std::string_view unit) {
  std::string text(given);
  text += f.range.low_open || f.range.high_open ? " is outside the range " : " is outside ";
  text += range_words(f);
  bool offered = false;
  for (auto u : f.kind->units) offered = offered || u == unit;
  if (offered && unit != unit_of(f) && unit != "AWG") text += " (" + range_words(f, unit) + ")";
  return text;
}

std::optional<double> check_range(const Node& value, const Site& site, std::string_view given, const Parsed& parsed) {
  if (in_range(parsed.si, site.field)) return parsed.si;
  site.faults.fault(value.place, std::string(site.path), outside(site.field, given, parsed.unit),
                    was_meant(site.field, given, parsed));
  return std::nullopt;
}

/// The hint that the same number gets as text, so that both are told the same.
std::string units_to_write(const std::string& number, const Kind& kind) {
  auto parsed = parse_quantity(number, kind);
  auto* fault = std::get_if<TextFault>(&parsed);
  return fault ? fault->hint : std::string();
}

/// Of a figure whose unit measures something else: its number in the field's own unit, where that could be, and what
/// can be written.
std::string other_unit_meant(const std::string& given, const Kind& kind, const Site& site) {
  const auto number = parse_number(given);
  if (!number || number->used == given.size()) return {};
  std::string units = "units: ";
  for (auto& u : kind.units) units.append(&u == kind.units.data() ? "" : ", ").append(u);
  auto& f = site.field;
  if (&kind != f.kind || kind.wire_gauge || is_pure(kind) || !in_range(to_si(number->value, kind, unit_of(f)), f))
    return is_pure(kind) ? std::string() : units;
  return "was " + given.substr(0, number->used) + " " + std::string(unit_of(f)) + " meant? " + units;
}

/// A figure of `kind` without a look at its range; for curves the x too.
std::optional<Parsed> parse_figure(const Node& value, const Kind& kind, const Site& site, const std::string& lead) {
  auto fault = [&](std::string problem, std::string hint = {}) {
    site.faults.fault(value.place, std::string(site.path), lead + problem, std::move(hint));
    return std::nullopt;
  };
  std::string expected = "expected " + such_as(kind) + ", got ";
  if (is_bare_number(value)) {
    if (!std::isfinite(value.number)) return fault(expected + value.text + ", which is not a finite number");
    if (!is_pure(kind)) return fault(expected + value.text + ", which has no unit", units_to_write(value.text, kind));
    return Parsed{value.number, value.number, {}};
  }
  if (value.type != Node::Type::text) return fault(expected + shown(value));
  constexpr std::size_t longest = 200;  // no figure is longer; the number parser need not see it
  if (value.text.size() > longest) return fault(expected + in_quotes(value.text));
  auto parsed = parse_quantity(value.text, kind);
  if (auto* wrong = std::get_if<TextFault>(&parsed))
    return fault(wrong->sentence(), wrong->hint.empty() ? other_unit_meant(value.text, kind, site) : wrong->hint);
  auto& p = std::get<Parsed>(parsed);
  if (!std::isfinite(p.si)) return fault(expected + in_quotes(value.text) + ", which is too large");
  return p;
}

std::optional<double> read_integer(const Node& value, const Site& site) {
  auto fault = [&] {
    site.faults.fault(value.place, std::string(site.path), "expected a whole number, got " + shown(value));
    return std::nullopt;
  };
  double number = value.number;
  if (value.type == Node::Type::text) {
    auto parsed = parse_number(value.text);
    if (!parsed || parsed->used != value.text.size()) return fault();
    number = parsed->value;
  } else if (!is_bare_number(value)) {
    return fault();
  }
  if (number != std::trunc(number) || std::abs(number) > 2147483647.0) return fault();
  return check_range(value, site, value.text, {number, number, {}});
}

std::optional<double> read_yes_no(const Node& value, const Site& site) {
  if (value.type == Node::Type::yes_no) return value.number;
  bool as_text = value.type == Node::Type::text &&
                 (value.text == "yes" || value.text == "no" || value.text == "true" || value.text == "false");
  site.faults.fault(value.place, std::string(site.path), "expected true or false, got " + shown(value),
                    as_text ? "write true or false without quotation marks" : "");
  return std::nullopt;
}

std::optional<double> read_choice(const Node& value, const Site& site) {
  auto choices = site.field.choices;
  std::string hint;
  if (value.type == Node::Type::text) {
    for (std::size_t i = 0; i < choices.size(); ++i)
      if (same_words(choices[i], value.text)) return static_cast<double>(i);
    hint = choice_meant(value.text, choices);
  }
  site.faults.fault(value.place, std::string(site.path), "expected " + one_of(choices) + ", got " + shown(value), hint);
  return std::nullopt;
}

/// `row 3 ` before the problem of a curve's row, counted as a person counts.
std::string row_lead(std::size_t index) { return "row " + std::to_string(index + 1) + ": "; }

std::string expected_row(const FieldInfo& f) {
  return "expected a row of two, " + std::string(f.kind_x->name) + " and " + std::string(f.kind->name) +
         ", such as [\"" + std::string(f.kind_x->example) + "\", \"" + std::string(f.kind->example) + "\"], got ";
}

struct Point {
  double x, y;
};

std::optional<Point> read_row(const Node& row, std::size_t index, const Site& site) {
  auto& f = site.field;
  if (row.type != Node::Type::array || row.items.size() != 2) {
    std::string got = row.type == Node::Type::array ? "an array of " + std::to_string(row.items.size()) : shown(row);
    site.faults.fault(row.place, std::string(site.path), row_lead(index) + expected_row(f) + got);
    return std::nullopt;
  }
  auto x = parse_figure(row.items[0], *f.kind_x, site, row_lead(index));
  auto y = parse_figure(row.items[1], *f.kind, site, row_lead(index));
  if (y && !in_range(y->si, f)) {
    auto& given = row.items[1].text;
    site.faults.fault(row.items[1].place, std::string(site.path), row_lead(index) + outside(f, given, y->unit),
                      was_meant(f, given, *y));
    return std::nullopt;
  }
  if (!x || !y) return std::nullopt;
  return Point{x->si, y->si};
}

}  // namespace

std::optional<double> read_figure(const Node& value, const Site& site) {
  switch (site.field.type) {
    case FieldType::integer:
      return read_integer(value, site);
    case FieldType::yes_no:
      return read_yes_no(value, site);
    case FieldType::choice:
      return read_choice(value, site);
    default:
      break;
  }
  auto parsed = parse_figure(value, *site.field.kind, site, "");
  if (!parsed) return std::nullopt;
  return check_range(value, site, value.text, *parsed);
}

std::optional<Curve> read_curve(const Node& value, const Site& site) {
  auto fault = [&](Place place, std::string problem) {
    site.faults.fault(place, std::string(site.path), std::move(problem));
  };
  if (value.type != Node::Type::array) {
    fault(value.place, "expected the rows of a curve, an array of [" + std::string(site.field.kind_x->name) + ", " +
                           std::string(site.field.kind->name) + "], got " + shown(value));
    return std::nullopt;
  }
  Curve curve;
  bool sound = true;
  for (std::size_t i = 0; i < value.items.size(); ++i) {
    auto& row = value.items[i];
    auto point = read_row(row, i, site);
    sound = sound && point;
    if (!point) continue;
    if (!curve.x.empty() && point->x <= curve.x.back()) {
      fault(row.items[0].place, row_lead(i) + shown(row.items[0]) + " is not above the " +
                                    std::string(site.field.kind_x->name) + " of the row before");
      sound = false;
      continue;
    }
    curve.x.push_back(point->x);
    curve.y.push_back(point->y);
  }
  if (value.items.size() < 2) {
    fault(value.place, "a curve needs at least two rows, got " + std::to_string(value.items.size()));
    return std::nullopt;
  }
  if (!sound) return std::nullopt;
  return curve;
}

std::optional<std::string> read_text(const Node& value, const Site& site) {
  if (value.type == Node::Type::text) return value.text;
  bool scalar = value.type != Node::Type::table && value.type != Node::Type::array;
  site.faults.fault(value.place, std::string(site.path), "expected a text, got " + shown(value),
                    scalar ? "write it in quotation marks: " + in_quotes(value.text) : "");
  return std::nullopt;
}

std::optional<std::vector<std::string>> read_names(const Node& value, const Site& site) {
  if (value.type != Node::Type::array) {
    site.faults.fault(value.place, std::string(site.path), "expected an array of names, got " + shown(value),
                      value.type == Node::Type::text ? "write it in brackets: [" + in_quotes(value.text) + "]" : "");
    return std::nullopt;
  }
  std::vector<std::string> names;
  for (auto& item : value.items)
    if (auto name = read_text(item, site)) names.push_back(std::move(*name));
  if (names.size() != value.items.size()) return std::nullopt;
  return names;
}

}  // namespace sw
