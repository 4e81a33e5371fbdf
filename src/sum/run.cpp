#include "sum/run.hpp"

#include <algorithm>
#include <cmath>

#include "field/words.hpp"
#include "sum/slot.hpp"

namespace sw {
namespace {

struct Word {
  std::string_view key, value;
};

/// `key=value` words; faults for one without `=` or without a value, and for a key given twice.
std::vector<Word> words(const std::vector<std::string>& args, std::string_view what, Diagnostics& faults) {
  std::vector<Word> all;
  for (auto& arg : args) {
    const std::string_view text = arg;
    const auto at = text.find('=');
    if (at == std::string_view::npos) {
      faults.fault({}, std::string(text), std::string("expected ") + std::string(what),
                   "write the key, an equals sign, the value");
      continue;
    }
    const Word w{trim(text.substr(0, at)), trim(text.substr(at + 1))};
    const bool twice = std::any_of(all.begin(), all.end(), [&](const Word& o) { return o.key == w.key; });
    if (twice)
      faults.fault({}, std::string(w.key), "given twice", "keep one");
    else if (w.value.empty())
      faults.fault({}, std::string(w.key), "has no value");
    all.push_back(w);
  }
  return all;
}

const Slot* find_slot(const std::vector<Slot>& all, std::string_view key) {
  for (auto& s : all)
    if (s.argument.field.key == key) return &s;
  return nullptr;
}

void unknown_key(std::string_view key, const std::vector<Slot>& all, Diagnostics& faults) {
  std::vector<std::string_view> names;
  std::string list;
  for (auto& s : all) {
    names.push_back(s.argument.field.key);
    list += (list.empty() ? "" : ", ") + std::string(s.argument.field.key);
  }
  const std::string hint = did_you_mean(key, names);
  faults.fault({}, std::string(key), "no such key here", hint.empty() ? "known are " + list : hint);
}

void read_inputs(const std::vector<Slot>& all, const std::vector<Word>& given, SumResult& result) {
  std::vector<std::string_view> seen;
  for (auto& w : given) {
    const bool again = std::find(seen.begin(), seen.end(), w.key) != seen.end();
    seen.push_back(w.key);
    const Slot* slot = find_slot(all, w.key);
    if (!slot) {
      if (!again) unknown_key(w.key, all, result.faults);
      continue;
    }
    if (again || w.value.empty()) continue;
    if (auto v = read_slot(*slot, w.value, result.faults)) result.inputs.push_back(*v);
  }
}

std::string keys_of(const Rule& rule) {
  std::string all;
  for (auto& k : rule.keys)
    if (!k.empty()) all += (all.empty() ? "" : ", ") + std::string(k);
  return all;
}

void check_rules(const Sum& sum, const Remarks& say, Diagnostics& faults) {
  static constexpr std::string_view number[] = {"none", "one", "two", "three"};
  for (auto& rule : sum.rules) {
    const int count = static_cast<int>(
        std::count_if(rule.keys.begin(), rule.keys.end(), [&](auto k) { return !k.empty() && say.given(k); }));
    const std::string wanted(number[static_cast<std::size_t>(std::min(rule.most, 3))]);
    if (rule.together && count > 0 && count < rule.most)
      faults.fault({}, keys_of(rule), "belong together: give all of them or none");
    else if (!rule.together && count < rule.least)
      faults.fault({}, keys_of(rule), "missing: give " + wanted + " of these");
    else if (!rule.together && count > rule.most)
      faults.fault({}, keys_of(rule), "contradict each other: give only " + wanted + " of these");
  }
}

bool in_a_rule(const Sum& sum, std::string_view key) {
  for (auto& rule : sum.rules)
    if (std::find(rule.keys.begin(), rule.keys.end(), key) != rule.keys.end()) return true;
  return false;
}

void check_needed(const Sum& sum, const std::vector<Slot>& all, const Remarks& say, Diagnostics& faults) {
  for (auto& s : all) {
    const FieldInfo& f = s.argument.field;
    if (!s.argument.needed || say.given(f.key) || in_a_rule(sum, f.key)) continue;
    faults.fault({}, std::string(f.key), "missing: " + std::string(f.label));
  }
}

void check_units(const std::vector<Slot>& all, const std::vector<Word>& units, Diagnostics& faults) {
  for (auto& w : units) {
    if (w.value.empty()) continue;
    const Slot* slot = find_slot(all, w.key);
    if (!slot) {
      unknown_key(w.key, all, faults);
      continue;
    }
    check_unit(slot->argument, w.value, faults);
  }
}

void take(const Remarks& say, SumResult& result) {
  for (auto& f : say.faults()) result.faults.fault({}, f.key, f.problem, f.hint);
  result.outside = say.outside();
  result.notes = say.notes();
}

void show_outputs(const std::vector<Slot>& all, const std::vector<Word>& units, SumResult& result) {
  for (auto& s : all) {
    std::string_view unit;
    for (auto& w : units)
      if (w.key == s.argument.field.key) unit = w.value;
    auto v = show_slot(s, unit);
    if (!v) continue;
    const bool finite = std::all_of(v->numbers.begin(), v->numbers.end(), [](double x) { return std::isfinite(x); });
    if (finite)
      result.outputs.push_back(*v);
    else
      result.outside.push_back(v->label + " has no finite value here");
  }
}

}  // namespace

SumResult run_sum(std::string_view name, const std::vector<std::string>& args,
                  const std::vector<std::string>& unit_words) {
  SumResult result;
  result.sum = name;
  const Sum* sum = find_sum(name);
  if (!sum) {
    std::vector<std::string_view> names;
    for (auto* s : all_sums()) names.push_back(s->name);
    const std::string hint = did_you_mean(name, names);
    result.faults.fault({}, std::string(name), "no such sum", hint.empty() ? "see the list of sums" : hint);
    return result;
  }
  result.range = sum->range;
  result.source = sum->source;
  result.caution = sum->caution;

  const auto in = sum->make_in(), out = sum->make_out();
  const auto inputs = slots(sum->inputs, in.get()), outputs = slots(sum->outputs, out.get());
  const auto given = words(args, "key=value", result.faults);
  const auto units = words(unit_words, "key=unit", result.faults);
  read_inputs(inputs, given, result);
  check_units(outputs, units, result.faults);

  std::vector<std::string> keys;
  for (auto& w : given) keys.emplace_back(w.key);
  Remarks say(keys);
  check_needed(*sum, inputs, say, result.faults);
  check_rules(*sum, say, result.faults);
  if (sum->check) sum->check(in.get(), say);
  if (result.faults.any_fault() || !say.faults().empty()) {
    take(say, result);
    return result;
  }
  for (auto& s : inputs) {
    if (say.given(s.argument.field.key)) continue;
    auto v = default_slot(s);
    if (!v || s.shared) continue;
    v->assumed = true;
    result.inputs.push_back(*v);
  }
  sum->law(in.get(), out.get(), say);
  take(say, result);
  if (!result.faults.any_fault()) show_outputs(outputs, units, result);
  result.valid = result.outside.empty();
  return result;
}

int SumResult::exit_code() const { return faults.any_fault() ? 2 : valid ? 0 : 3; }

const SumValue* SumResult::output(std::string_view key) const {
  for (auto& v : outputs)
    if (v.key == key) return &v;
  return nullptr;
}

}  // namespace sw
