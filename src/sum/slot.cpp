#include "sum/slot.hpp"

#include "field/measure.hpp"
#include "field/words.hpp"

namespace sw {
namespace {

void add_slots(std::vector<Slot>& all, const Argument& a, void* owner, bool shared) {
  if (a.field.type != FieldType::group || !a.field.key.empty()) {
    all.push_back({a, owner, shared});
    return;
  }
  void* child = a.field.access.child_to(owner);
  for (auto& f : a.field.access.children()) add_slots(all, Argument(f).may(), child, true);
}

bool is_words(const FieldInfo& f) {
  return f.type == FieldType::choice || f.type == FieldType::yes_no || f.type == FieldType::text;
}

std::string choice_text(const FieldInfo& f, double value) {
  if (f.type == FieldType::yes_no) return value != 0 ? "yes" : "no";
  return std::string(f.choices[static_cast<std::size_t>(value)]);
}

}  // namespace

std::vector<Slot> slots(std::span<const Argument> arguments, void* owner) {
  std::vector<Slot> all;
  for (auto& a : arguments) add_slots(all, a, owner, false);
  return all;
}

std::optional<SumValue> default_slot(const Slot& slot) {
  const FieldInfo& f = slot.argument.field;
  if (!f.fallback) return std::nullopt;
  SumValue v = show_name(f);
  if (is_words(f)) {
    f.access.set(slot.owner, *f.fallback);
    v.text = choice_text(f, *f.fallback);
    return v;
  }
  f.access.set(slot.owner, to_si(*f.fallback, *f.kind, unit_of(f)));
  v.numbers = {*f.fallback};
  v.unit = shown_unit(unit_of(f));
  return v;
}

void check_unit(const Argument& argument, std::string_view unit, Diagnostics& faults) {
  const FieldInfo& f = argument.field;
  if (is_words(f)) return faults.fault({}, std::string(f.key), "is a text and has no unit, got " + in_quotes(unit));
  auto parsed = parse_unit_for(unit, *f.kind);
  if (auto* fault = std::get_if<TextFault>(&parsed))
    faults.fault({}, std::string(f.key), fault->sentence(), fault->hint);
}

std::optional<SumValue> show_slot(const Slot& slot, std::string_view asked) {
  const FieldInfo& f = slot.argument.field;
  SumValue v = show_name(f);
  if (f.type == FieldType::text) {
    v.text = *f.access.text(slot.owner);
    return v.text.empty() ? std::nullopt : std::optional(v);
  }
  std::vector<double> si;
  if (slot.argument.columns > 0) {
    si = *slot.argument.list(slot.owner);
    v.is_list = true;
    v.columns = slot.argument.columns;
  } else if (auto x = f.access.get(slot.owner)) {
    si = {*x};
  }
  if (si.empty()) return std::nullopt;
  if (is_words(f)) {
    v.text = choice_text(f, si[0]);
    return v;
  }
  const std::string_view unit = asked.empty() ? unit_of(f) : asked;
  v.unit = unit.empty() ? "-" : unit;
  for (double x : si) v.numbers.push_back(from_si(x, *f.kind, unit));
  return v;
}

SumValue show_name(const FieldInfo& f) {
  SumValue v;
  v.key = f.key;
  v.label = f.label;
  return v;
}

std::string_view shown_unit(std::string_view unit) { return unit.empty() || unit == "%" ? "-" : unit; }

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

}  // namespace sw
