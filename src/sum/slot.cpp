#include "sum/slot.hpp"

#include <cmath>

#include "quantity/parse.hpp"
#include "quantity/print.hpp"

namespace sw {
namespace {

using Read = std::variant<SumValue, ReadFault>;

SumValue named(const FieldInfo& f) {
  SumValue v;
  v.key = f.key;
  v.label = f.label;
  return v;
}

std::string_view shown_unit(std::string_view unit) { return unit.empty() || unit == "%" ? "-" : unit; }

std::string choices_of(const FieldInfo& f) {
  std::string all;
  for (auto& c : f.choices) all += (all.empty() ? "" : ", ") + std::string(c);
  return all;
}

/// Allowed values in words: `0 mm to 500 mm`, `above 0 mm, up to 500 mm`.
std::optional<ReadFault> range_fault(const FieldInfo& f, const Kind& kind, double si, std::string_view text) {
  if (!f.range.set) return std::nullopt;
  const std::string_view unit = unit_of(f);
  double x = si;
  if (auto parsed = parse_unit_for(unit, kind); auto* u = std::get_if<Unit>(&parsed)) x = in_unit(si, *u, kind);
  const Range& r = f.range;
  const double slack = 1e-12 * std::max(std::abs(r.low), std::abs(r.high));
  const bool low = r.low_open ? x > r.low : x >= r.low - slack, high = r.high_open ? x < r.high : x <= r.high + slack;
  if (low && high) return std::nullopt;
  const std::string tail = unit.empty() ? "" : " " + std::string(unit);
  return ReadFault{quoted(text) + " is outside " + (r.low_open ? "above " : "") + short_number(r.low) + " to " +
                       (r.high_open ? "below " : "") + short_number(r.high) + tail,
                   ""};
}

ReadFault from_text(const TextFault& fault) { return {fault.sentence(), fault.hint}; }

Read read_quantity(const Slot& slot, std::string_view text) {
  const FieldInfo& f = slot.argument.field;
  auto parsed = parse_quantity(text, *f.kind);
  if (auto* fault = std::get_if<TextFault>(&parsed)) return from_text(*fault);
  const Parsed& p = std::get<Parsed>(parsed);
  if (auto fault = range_fault(f, *f.kind, p.si, text)) return *fault;
  if (f.type == FieldType::integer && p.si != std::floor(p.si))
    return ReadFault{"expected a whole number, got " + quoted(text), ""};
  f.access.set(slot.owner, p.si);
  SumValue v = named(f);
  v.unit = shown_unit(p.unit);
  v.numbers = {v.unit == "-" ? p.si : p.written};
  return v;
}

Read read_choice(const Slot& slot, std::string_view text) {
  const FieldInfo& f = slot.argument.field;
  for (std::size_t k = 0; k < f.choices.size(); ++k) {
    if (f.choices[k] != text) continue;
    f.access.set(slot.owner, static_cast<double>(k));
    SumValue v = named(f);
    v.text = text;
    return v;
  }
  return ReadFault{"expected one of " + choices_of(f) + ", got " + quoted(text), ""};
}

Read read_yes_no(const Slot& slot, std::string_view text) {
  if (text != "yes" && text != "no") return ReadFault{"expected yes or no, got " + quoted(text), ""};
  slot.argument.field.access.set(slot.owner, text == "yes" ? 1.0 : 0.0);
  SumValue v = named(slot.argument.field);
  v.text = text;
  return v;
}

Read read_text(const Slot& slot, std::string_view text) {
  *slot.argument.field.access.text_to(slot.owner) = text;
  SumValue v = named(slot.argument.field);
  v.text = text;
  return v;
}

/// What stands after the number of an item; empty where the item is a bare number.
std::optional<std::string_view> unit_after(std::string_view item) {
  auto number = parse_number(item);
  if (!number) return std::nullopt;
  return trim(item.substr(number->used));
}

struct Cells {
  std::vector<std::string> text;  ///< row after row, each with its unit
  std::string_view unit;          ///< of the last item
};
std::variant<Cells, ReadFault> cells(std::string_view text, std::size_t columns, bool unit_by_column) {
  std::vector<std::string_view> items;
  const auto rows = columns == 1 ? std::vector<std::string_view>{text} : split(text, ';');
  for (std::size_t r = 0; r < rows.size(); ++r) {
    const auto row = split(rows[r], ',');
    if (columns > 1 && row.size() != columns)
      return ReadFault{"row " + std::to_string(r + 1) + " has " + std::to_string(row.size()) + " items, expected " +
                           std::to_string(columns),
                       "items are parted by a comma, rows by a semicolon"};
    for (auto item : row) {
      if (trim(item).empty())
        return ReadFault{"an item of " + quoted(text) + " is empty", "parts are parted by one comma"};
      items.push_back(trim(item));
    }
  }
  Cells c;
  c.unit = unit_after(items.back()).value_or("");
  for (std::size_t k = 0; k < items.size(); ++k) {
    const auto& last = unit_by_column ? items[items.size() - columns + k % columns] : items.back();
    const auto own = unit_after(items[k]), lent = unit_after(last);
    c.text.emplace_back(items[k]);
    if (own && own->empty() && lent && !lent->empty()) c.text.back() += " " + std::string(*lent);
  }
  return c;
}

Read read_list(const Slot& slot, std::string_view text) {
  const Argument& a = slot.argument;
  auto parted = cells(text, static_cast<std::size_t>(a.columns), false);
  if (auto* fault = std::get_if<ReadFault>(&parted)) return *fault;
  const Cells& c = std::get<Cells>(parted);
  SumValue v = named(a.field);
  v.is_list = true;
  v.columns = a.columns;
  v.unit = shown_unit(c.unit);
  const auto unit = parse_unit_for(v.unit == "-" ? "" : v.unit, *a.field.kind);
  std::vector<double> si;
  for (auto& cell : c.text) {
    auto parsed = parse_quantity(cell, *a.field.kind);
    if (auto* fault = std::get_if<TextFault>(&parsed)) return from_text(*fault);
    si.push_back(std::get<Parsed>(parsed).si);
    if (auto fault = range_fault(a.field, *a.field.kind, si.back(), cell)) return *fault;
    if (auto* u = std::get_if<Unit>(&unit)) v.numbers.push_back(in_unit(si.back(), *u, *a.field.kind));
  }
  *a.list(slot.owner) = std::move(si);
  return v;
}

Read read_curve(const Slot& slot, std::string_view text) {
  const FieldInfo& f = slot.argument.field;
  auto parted = cells(text, 2, true);
  if (auto* fault = std::get_if<ReadFault>(&parted)) return *fault;
  Curve curve;
  const auto& cell = std::get<Cells>(parted).text;
  for (std::size_t k = 0; k < cell.size(); ++k) {
    auto parsed = parse_quantity(cell[k], k % 2 == 0 ? *f.kind_x : *f.kind);
    if (auto* fault = std::get_if<TextFault>(&parsed)) return from_text(*fault);
    (k % 2 == 0 ? curve.x : curve.y).push_back(std::get<Parsed>(parsed).si);
  }
  if (curve.x.size() < 2) return ReadFault{"a curve needs two rows or more", ""};
  for (std::size_t k = 1; k < curve.x.size(); ++k)
    if (!(curve.x[k] > curve.x[k - 1])) return ReadFault{"the first column must rise from row to row", ""};
  *f.access.curve_to(slot.owner) = std::move(curve);
  SumValue v = named(f);
  v.text = text;
  return v;
}

void add_slots(std::vector<Slot>& all, const Argument& a, void* owner, bool shared) {
  if (a.field.type != FieldType::group || !a.field.key.empty()) {
    all.push_back({a, owner, shared});
    return;
  }
  void* child = a.field.access.child_to(owner);
  for (auto& f : a.field.access.children()) add_slots(all, Argument(f).may(), child, true);
}

}  // namespace

std::vector<Slot> slots(std::span<const Argument> arguments, void* owner) {
  std::vector<Slot> all;
  for (auto& a : arguments) add_slots(all, a, owner, false);
  return all;
}

Read read_slot(const Slot& slot, std::string_view text) {
  if (slot.argument.columns > 0) return read_list(slot, text);
  switch (slot.argument.field.type) {
    case FieldType::quantity:
    case FieldType::number:
    case FieldType::integer:
      return read_quantity(slot, text);
    case FieldType::choice:
      return read_choice(slot, text);
    case FieldType::yes_no:
      return read_yes_no(slot, text);
    case FieldType::text:
      return read_text(slot, text);
    case FieldType::curve:
      return read_curve(slot, text);
    default:
      return ReadFault{"cannot be written as key=value", ""};
  }
}

std::optional<SumValue> default_slot(const Slot& slot) {
  const FieldInfo& f = slot.argument.field;
  if (!f.fallback) return std::nullopt;
  SumValue v = named(f);
  double value = *f.fallback;
  if (f.type == FieldType::choice || f.type == FieldType::yes_no) {
    f.access.set(slot.owner, value);
    v.text = f.type == FieldType::yes_no ? (value != 0 ? "yes" : "no") : f.choices[static_cast<std::size_t>(value)];
    return v;
  }
  v.numbers = {value};
  v.unit = shown_unit(unit_of(f));
  if (auto parsed = parse_unit_for(unit_of(f), *f.kind); auto* u = std::get_if<Unit>(&parsed)) {
    const bool absolute_temperature = f.kind->reference == Reference::absolute && f.kind->dimension == dim::temperature;
    value = value * u->factor + (absolute_temperature ? u->offset : 0);
  }
  f.access.set(slot.owner, value);
  return v;
}

std::optional<ReadFault> unit_fault(const Argument& argument, std::string_view unit) {
  const FieldInfo& f = argument.field;
  if (f.type == FieldType::text || f.type == FieldType::choice || f.type == FieldType::yes_no)
    return ReadFault{"is a text and has no unit, got " + quoted(unit), ""};
  auto parsed = parse_unit_for(unit, *f.kind);
  if (auto* fault = std::get_if<TextFault>(&parsed)) return from_text(*fault);
  return std::nullopt;
}

std::optional<SumValue> show_slot(const Slot& slot, std::string_view asked) {
  const FieldInfo& f = slot.argument.field;
  SumValue v = named(f);
  if (f.type == FieldType::text) {
    v.text = *f.access.text(slot.owner);
    return v.text.empty() ? std::nullopt : std::optional(v);
  }
  std::vector<double> si;
  if (slot.argument.columns > 0) {
    si = *slot.argument.list(slot.owner);
    v.is_list = true;
    v.columns = slot.argument.columns;
    if (si.empty()) return std::nullopt;
  } else if (auto x = f.access.get(slot.owner)) {
    si = {*x};
  } else {
    return std::nullopt;
  }
  if (f.type == FieldType::choice || f.type == FieldType::yes_no) {
    v.text = f.type == FieldType::yes_no ? (si[0] != 0 ? "yes" : "no") : f.choices[static_cast<std::size_t>(si[0])];
    return v;
  }
  const std::string_view unit = asked.empty() ? unit_of(f) : asked;
  v.unit = unit.empty() ? "-" : unit;
  auto parsed = parse_unit_for(unit, *f.kind);
  auto* u = std::get_if<Unit>(&parsed);
  for (double x : si) v.numbers.push_back(u ? in_unit(x, *u, *f.kind) : x);
  return v;
}

std::vector<std::string_view> split(std::string_view text, char at) {
  std::vector<std::string_view> parts;
  for (std::size_t from = 0;;) {
    const auto to = text.find(at, from);
    parts.push_back(text.substr(from, to - from));
    if (to == std::string_view::npos) return parts;
    from = to + 1;
  }
}

std::string_view trim(std::string_view text) {
  const auto from = text.find_first_not_of(" \t");
  if (from == std::string_view::npos) return {};
  return text.substr(from, text.find_last_not_of(" \t") - from + 1);
}

std::string quoted(std::string_view text) { return "\"" + std::string(text) + "\""; }

}  // namespace sw
