// Text into an argument. Figures are read by the field reader, so that a sum and a build file say the same of the same
// fault; lists and rows, which field tables do not know, are taken apart here.
#include "field/leaf.hpp"
#include "field/measure.hpp"
#include "field/words.hpp"
#include "quantity/parse.hpp"
#include "quantity/respell.hpp"
#include "sum/slot.hpp"

namespace sw {
namespace {

Node text_node(std::string_view text) {
  Node n;
  n.type = Node::Type::text;
  n.text = text;
  return n;
}

std::optional<SumValue> read_one(const Slot& slot, std::string_view text, Diagnostics& faults) {
  const FieldInfo& f = slot.argument.field;
  const auto si = read_figure(text_node(text), {f, f.key, faults});
  if (!si) return std::nullopt;
  f.access.set(slot.owner, *si);
  SumValue v = show_name(f);
  if (f.type == FieldType::choice) {
    v.text = f.choices[static_cast<std::size_t>(*si)];
    return v;
  }
  auto parsed = parse_quantity(text, *f.kind);  // once more, for the number and unit as written
  const auto* p = std::get_if<Parsed>(&parsed);
  v.unit = f.kind->wire_gauge && gauge_in(text) ? "AWG" : shown_unit(p ? p->unit : "");
  v.numbers = {v.unit == "-" || !p ? *si : p->written};
  return v;
}

std::optional<SumValue> read_yes_no(const Slot& slot, std::string_view text, Diagnostics& faults) {
  const FieldInfo& f = slot.argument.field;
  if (text != "yes" && text != "no") {
    faults.fault({}, std::string(f.key), "expected yes or no, got " + in_quotes(text));
    return std::nullopt;
  }
  f.access.set(slot.owner, text == "yes" ? 1.0 : 0.0);
  SumValue v = show_name(f);
  v.text = text;
  return v;
}

std::optional<SumValue> read_words(const Slot& slot, std::string_view text) {
  *slot.argument.field.access.text_to(slot.owner) = text;
  SumValue v = show_name(slot.argument.field);
  v.text = text;
  return v;
}

/// What stands after an item's number: empty for a bare one, nothing where it does not begin with a number.
std::optional<std::string_view> unit_after(std::string_view item) {
  auto number = parse_number(item);
  if (!number) return std::nullopt;
  return trim(item.substr(number->used));
}

/// The items of a list or of rows. An item without unit takes that of the last item (of its column, where columns
/// differ in kind).
struct Cells {
  std::vector<std::string> texts;
  std::string_view unit;  ///< of the last item
};
std::optional<Cells> part(std::string_view text, std::size_t columns, bool unit_by_column, std::string_view key,
                          Diagnostics& faults) {
  auto fault = [&](std::string problem) {
    faults.fault({}, std::string(key), std::move(problem), "part items by a comma and rows by a semicolon");
    return std::nullopt;
  };
  std::vector<std::string_view> items;
  const auto rows = columns == 1 ? std::vector<std::string_view>{text} : split(text, ';');
  for (std::size_t r = 0; r < rows.size(); ++r) {
    const auto row = split(rows[r], ',');
    if (columns > 1 && row.size() != columns)
      return fault("row " + std::to_string(r + 1) + ": expected " + std::to_string(columns) + " items, got " +
                   in_quotes(trim(rows[r])));
    for (auto item : row) {
      if (trim(item).empty()) return fault("an item is empty in " + in_quotes(text));
      items.push_back(trim(item));
    }
  }
  Cells c;
  c.unit = unit_after(items.back()).value_or("");
  for (std::size_t k = 0; k < items.size(); ++k) {
    const auto& last = unit_by_column ? items[items.size() - columns + k % columns] : items.back();
    const auto own = unit_after(items[k]), lent = unit_after(last);
    c.texts.emplace_back(items[k]);
    if (own && own->empty() && lent && !lent->empty()) c.texts.back() += " " + std::string(*lent);
  }
  return c;
}

std::optional<SumValue> read_list(const Slot& slot, std::string_view text, Diagnostics& faults) {
  const Argument& a = slot.argument;
  const auto cells = part(text, static_cast<std::size_t>(a.columns), false, a.field.key, faults);
  if (!cells) return std::nullopt;
  SumValue v = show_name(a.field);
  v.is_list = true;
  v.columns = a.columns;
  v.unit = shown_unit(cells->unit);
  std::vector<double> si;
  bool sound = true;
  for (auto& cell : cells->texts) {
    const auto x = read_figure(text_node(cell), {a.field, a.field.key, faults});
    sound = sound && x;
    if (!sound) continue;
    si.push_back(*x);
    v.numbers.push_back(v.unit == "-" ? *x : from_si(*x, *a.field.kind, v.unit));
  }
  if (!sound) return std::nullopt;
  *a.list(slot.owner) = std::move(si);
  return v;
}

/// A curve's rows are handed to the field reader as the array a build file would hold.
std::optional<SumValue> read_rows(const Slot& slot, std::string_view text, Diagnostics& faults) {
  const FieldInfo& f = slot.argument.field;
  const auto cells = part(text, 2, true, f.key, faults);
  if (!cells) return std::nullopt;
  Node rows;
  rows.type = Node::Type::array;
  for (std::size_t k = 0; k + 1 < cells->texts.size(); k += 2) {
    Node row;
    row.type = Node::Type::array;
    row.items = {text_node(cells->texts[k]), text_node(cells->texts[k + 1])};
    rows.items.push_back(std::move(row));
  }
  auto curve = read_curve(rows, {f, f.key, faults});
  if (!curve) return std::nullopt;
  *f.access.curve_to(slot.owner) = std::move(curve);
  SumValue v = show_name(f);
  v.text = text;
  return v;
}

}  // namespace

std::optional<SumValue> read_slot(const Slot& slot, std::string_view text, Diagnostics& faults) {
  if (slot.argument.columns > 0) return read_list(slot, text, faults);
  switch (slot.argument.field.type) {
    case FieldType::yes_no:
      return read_yes_no(slot, text, faults);
    case FieldType::text:
      return read_words(slot, text);
    case FieldType::curve:
      return read_rows(slot, text, faults);
    default:
      return read_one(slot, text, faults);
  }
}

}  // namespace sw
