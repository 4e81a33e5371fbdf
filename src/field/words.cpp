#include "field/words.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "field/measure.hpp"
#include "quantity/print.hpp"
#include "quantity/words.hpp"

namespace sw {

namespace {

std::string with_unit(double value, const Kind& kind, std::string_view unit) {
  if (kind.wire_gauge && unit == "AWG") return print(to_si(value, kind, unit), kind, unit);
  std::string text = short_number(value, 6);
  if (!unit.empty()) text.append(" ").append(unit);
  return text;
}

}  // namespace

std::string in_quotes(std::string_view text) {
  constexpr std::size_t longest = 60;
  if (text.size() <= longest) return '"' + std::string(text) + '"';
  std::size_t cut = longest;
  while (cut > 0 && (static_cast<unsigned char>(text[cut]) & 0xC0) == 0x80) --cut;  // never inside a character
  return '"' + std::string(text.substr(0, cut)) + "…\"";
}

std::string shown(const Node& node) {
  switch (node.type) {
    case Node::Type::table:
      return "a table";
    case Node::Type::array:
      return "an array";
    case Node::Type::text:
      return in_quotes(node.text);
    default:
      return node.text;
  }
}

std::string such_as(const Kind& kind) {
  return with_article(kind.name) + " such as \"" + std::string(kind.example) + '"';
}

std::string one_of(std::span<const std::string_view> names) {
  std::string text;
  for (std::size_t i = 0; i < names.size(); ++i) {
    if (i > 0) text += i + 1 == names.size() ? " or " : ", ";
    text += in_quotes(names[i]);
  }
  return text;
}

std::string did_you_mean(std::string_view given, const std::vector<std::string_view>& names) {
  auto near = nearest(given, names);
  return near.empty() ? std::string() : "did you mean " + in_quotes(near) + "?";
}

namespace {

/// Small letters without what parts words: `Engine-bay` and `engine bay` are one name, `12V` and `12 V` too.
std::string bare(std::string_view text) {
  std::string out;
  for (char c : text)
    if (c != ' ' && c != '-' && c != '_') out += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
  return out;
}

}  // namespace

bool same_words(std::string_view a, std::string_view b) { return a == b || (!a.empty() && bare(a) == bare(b)); }

std::string choice_meant(std::string_view given, std::span<const std::string_view> choices) {
  // Two words of the trade for one thing; only where the one is among the choices.
  static constexpr std::pair<std::string_view, std::string_view> other_names[] = {
      {"water pump", "coolant pump"}, {"dynamo", "generator"},
      {"dynamo", "alternator"},       {"generator", "alternator"},
      {"auto", "automatic"},          {"under bonnet", "engine bay"},
      {"under hood", "engine bay"},   {"engine compartment", "engine bay"},
      {"interior", "cabin"},          {"inside", "cabin"},
      {"serpentine", "ribbed"},       {"multi rib", "ribbed"},
  };
  for (auto& [other, name] : other_names)
    if (same_words(other, given) && std::find(choices.begin(), choices.end(), name) != choices.end())
      return "did you mean " + in_quotes(name) + "?";
  return did_you_mean(given, {choices.begin(), choices.end()});
}

std::vector<std::string> paths_of(std::span<const FieldInfo> fields, std::string_view key) {
  struct Open {
    std::string path;
    std::span<const FieldInfo> fields;
  };
  std::vector<Open> open = {{"", fields}};
  std::vector<std::string> found;
  for (std::size_t i = 0; i < open.size(); ++i) {
    const Open at = open[i];  // breadth first: the vector grows while it is walked
    for (auto& f : at.fields) {
      const std::string path = below(at.path, f.key);
      if (f.key == key) found.push_back(path);
      if (f.type == FieldType::group) open.push_back({path, f.access.children()});
      if (f.type == FieldType::list) open.push_back({below(path, "NAME"), f.access.children()});
    }
  }
  return found;
}

std::string stands_elsewhere(std::span<const FieldInfo> fields, std::string_view key) {
  constexpr std::size_t few = 3;
  const auto paths = paths_of(fields, key);
  if (paths.empty() || paths.size() > few) return {};
  std::string text = "did you mean ";
  for (std::size_t i = 0; i < paths.size(); ++i)
    text += (i == 0 ? "" : i + 1 == paths.size() ? " or " : ", ") + paths[i];
  return text + "?";
}

std::string in_own_unit(double value, const FieldInfo& f) { return with_unit(value, *f.kind, unit_of(f)); }

bool has_unit(const FieldInfo& f) { return f.type == FieldType::quantity && !is_pure(*f.kind); }

std::string figure_words(const FieldInfo& f, double si, std::string_view unit) {
  switch (f.type) {
    case FieldType::choice:
      return std::string(f.choices[static_cast<std::size_t>(si)]);
    case FieldType::yes_no:
      return si != 0 ? "true" : "false";
    case FieldType::integer:
      return short_number(std::round(si), 15);
    default:
      return has_unit(f) ? print(si, *f.kind, unit, figure_digits) : short_number(si, figure_digits);
  }
}

std::string range_words(const FieldInfo& f, std::string_view unit) {
  if (!f.range.set) return {};
  auto end = [&](double value) {
    if (unit == unit_of(f)) return in_own_unit(value, f);
    return with_unit(from_si(to_si(value, *f.kind, unit_of(f)), *f.kind, unit), *f.kind, unit);
  };
  return (f.range.low_open ? "above " : "") + end(f.range.low) + " to " + (f.range.high_open ? "below " : "") +
         end(f.range.high);
}

std::string range_words(const FieldInfo& f) { return range_words(f, unit_of(f)); }

std::string fallback_words(const FieldInfo& f) {
  if (!f.fallback) return {};
  if (f.type == FieldType::yes_no) return *f.fallback != 0 ? "true" : "false";
  if (f.type == FieldType::choice) return in_quotes(f.choices[static_cast<std::size_t>(*f.fallback)]);
  return in_own_unit(*f.fallback, f);
}

std::string spread_words(const FieldInfo& f, Source s) {
  auto [share, absolute] = f.spreads[static_cast<std::size_t>(s)];
  if (share == 0 && absolute == 0) return "exact";
  std::string text;
  if (share != 0) text = short_number(share * 100) + " %";
  if (absolute != 0) text += (text.empty() ? "" : " + ") + in_own_unit(absolute, f);
  return text;
}

std::string below(std::string_view path, std::string_view key) {
  std::string child(path);
  if (!child.empty()) child += '.';
  return child.append(key);
}

}  // namespace sw
