// Results of sums as text and JSON, and sums in words.
#include <nlohmann/json.hpp>

#include "field/measure.hpp"
#include "quantity/print.hpp"
#include "sum/run.hpp"
#include "sum/slot.hpp"

namespace sw {
namespace {

using Json = nlohmann::ordered_json;

constexpr int text_digits = 4;  // more than any input here is known to; JSON keeps them all

std::string in_words(const SumValue& v) {
  if (!v.text.empty()) return v.text;
  std::string all;
  for (std::size_t k = 0; k < v.numbers.size(); ++k) {
    if (k > 0) all += k % static_cast<std::size_t>(v.columns) == 0 && v.columns > 1 ? "; " : ", ";
    all += short_number(v.numbers[k], text_digits);
  }
  return v.unit == "-" ? all : all + " " + v.unit;
}

Json value_of(const SumValue& v) {
  if (!v.text.empty()) return v.text;
  if (!v.is_list) return v.numbers.at(0);
  if (v.columns == 1) return v.numbers;
  Json rows = Json::array();
  for (std::size_t k = 0; k < v.numbers.size(); ++k) {
    if (k % static_cast<std::size_t>(v.columns) == 0) rows.push_back(Json::array());
    rows.back().push_back(v.numbers[k]);
  }
  return rows;
}

/// `assumed: zone = engine bay, bundle = 1`: what was taken where nothing was given; no lever of the result is silent.
std::string assumed_line(const std::vector<SumValue>& inputs) {
  std::string all;
  for (auto& v : inputs)
    if (v.assumed) all += (all.empty() ? "assumed: " : ", ") + v.key + " = " + in_words(v);
  return all.empty() ? all : all + "\n";
}

Json values(const std::vector<SumValue>& list) {
  Json all = Json::object();
  for (auto& v : list) all[v.key] = {{"value", value_of(v)}, {"unit", v.unit}};
  return all;
}

/// The units an argument takes; a pure number has none to tell, though `%` is read.
std::string units_in_words(const FieldInfo& f) {
  std::string all;
  if (is_pure(*f.kind)) return all;
  for (auto& u : f.kind->units)
    if (!u.empty()) all += (all.empty() ? "" : ", ") + std::string(u);
  return all;
}

void describe(std::string& text, const Slot& s, bool input) {
  const FieldInfo& f = s.argument.field;
  text += "  " + std::string(f.key) + ": " + std::string(f.label);
  if (!f.choices.empty()) {
    std::string all;
    for (auto& c : f.choices) all += (all.empty() ? "" : ", ") + std::string(c);
    text += " (" + all + ")";
  } else if (const auto units = units_in_words(f); !units.empty()) {
    text += " (" + units + ")";
  }
  if (s.argument.columns > 0)
    text += s.argument.columns == 1 ? ", a list" : ", rows of " + std::to_string(s.argument.columns);
  if (input && f.fallback && f.choices.empty())
    text += "; " + short_number(*f.fallback) + (unit_of(f).empty() ? "" : " ") + std::string(unit_of(f)) +
            " where left out";
  else if (input && f.fallback && f.type == FieldType::choice)
    text += "; " + std::string(f.choices[static_cast<std::size_t>(*f.fallback)]) + " where left out";
  else if (input && !s.argument.needed)
    text += "; may be left out";
  if (!f.doc.empty()) text += ". " + std::string(f.doc);
  text += "\n";
}

}  // namespace

std::string SumResult::to_text() const {
  std::string text;
  if (faults.any_fault()) {
    for (auto& d : faults.all()) text += say(d, {}) + "\n";
    return text;
  }
  for (auto& v : outputs) text += v.key + " = " + in_words(v) + "\n";
  text += assumed_line(inputs);
  for (auto& s : outside) text += "outside the range: " + s + "\n";
  for (auto& s : notes) text += "note: " + s + "\n";
  text += "range: " + range + "\nsource: " + source + "\n";
  if (!caution.empty()) text += "caution: " + caution + "\n";
  return text;
}

std::string SumResult::to_json() const {
  Json j{{"sum", sum}};
  if (faults.any_fault()) {
    j["faults"] = Json::array();
    for (auto& d : faults.all()) j["faults"].push_back({{"key", d.path}, {"problem", d.problem}, {"hint", d.hint}});
  } else {
    j["inputs"] = values(inputs);
    j["outputs"] = values(outputs);
    j["assumed"] = Json::array();
    for (auto& v : inputs)
      if (v.assumed) j["assumed"].push_back(v.key);
    j["valid"] = valid;
    j["outside"] = outside;
    j["notes"] = notes;
  }
  j["range"] = range;
  j["source"] = source;
  j["caution"] = caution;
  return j.dump(2);
}

std::string list_sums() {
  std::string text;
  for (auto* s : all_sums()) text += std::string(s->name) + ": " + std::string(s->title) + "\n";
  return text;
}

std::string describe_sum(const Sum& s) {
  const auto in = s.make_in(), out = s.make_out();
  std::string text = std::string(s.name) + ": " + std::string(s.title) + "\ninputs:\n";
  for (auto& slot : slots(s.inputs, in.get())) describe(text, slot, true);
  for (auto& r : s.rules) {
    std::string all;
    for (auto& k : r.keys)
      if (!k.empty()) all += (all.empty() ? "" : ", ") + std::string(k);
    text += r.together     ? "  all or none of: "
            : r.least == 0 ? "  at most one of: "
            : r.least == 2 ? "  two of: "
                           : "  one of: ";
    text += all + "\n";
  }
  text += "outputs:\n";
  for (auto& slot : slots(s.outputs, out.get())) describe(text, slot, false);
  text += "range: " + std::string(s.range) + "\nsource: " + std::string(s.source) + "\n";
  if (!s.notes.empty()) text += "notes: " + std::string(s.notes) + "\n";
  if (!s.caution.empty()) text += "caution: " + std::string(s.caution) + "\n";
  return text;
}

}  // namespace sw
