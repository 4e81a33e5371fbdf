// The field reference, and one field in words.
#include "field/walk.hpp"
#include "field/words.hpp"
#include "quantity/words.hpp"

namespace sw {

namespace {

std::string kind_words(const FieldInfo& f) {
  switch (f.type) {
    case FieldType::quantity:
      return std::string(f.kind->name);
    case FieldType::number:
      return "number";
    case FieldType::integer:
      return "whole number";
    case FieldType::yes_no:
      return "true or false";
    case FieldType::choice:
      return one_of(f.choices);
    case FieldType::text:
      return "text";
    case FieldType::names:
      return "names";
    case FieldType::curve:
      return "curve of " + std::string(f.kind->name) + " over " + std::string(f.kind_x->name);
    case FieldType::group:
      return f.part.empty() ? "group" : "group, or a part of the shelf's `" + std::string(f.part) + "`";
    case FieldType::list:
      return f.part.empty() ? "entries by name"
                            : "entries by name, or parts of the shelf's `" + std::string(f.part) + "`";
  }
  return {};
}

std::string default_words(const FieldInfo& f) {
  if (f.harm) return "none, for it decides a harm rule";
  if (!f.fallback) return {};
  std::string text = fallback_words(f) + ", " + std::string(name_of(f.fallback_source));
  if (auto spread = spread_words(f, f.fallback_source); spread != "exact") text += " ± " + spread;
  return text;
}

/// The field's own unit first.
std::string offered(std::string_view own, const Kind& kind) {
  std::string text(own);
  for (auto unit : kind.units)
    if (unit != own) text.append(text.empty() ? "" : ", ").append(unit);
  return text;
}

std::string unit_words(const FieldInfo& f) {
  std::string text = offered(unit_of(f), *f.kind);
  if (f.type != FieldType::curve) return text;
  return text + " over " + offered(f.unit_x, *f.kind_x);
}

std::string cell(std::string_view text) {
  std::string out;
  for (char c : text) out.append(c == '|' ? "\\" : "").append(1, c);
  return out;
}

void rows(std::span<const FieldInfo> fields, const std::string& path, std::string& out) {
  std::string branches;
  out += "| key | what | kind | unit | range | default | says | source |\n|---|---|---|---|---|---|---|---|\n";
  for (auto& f : fields) {
    bool measured = f.type == FieldType::quantity || f.type == FieldType::curve;
    out += "| `" + std::string(f.key) + "`";
    for (auto& text : {std::string(f.label), kind_words(f), measured ? unit_words(f) : std::string(), range_words(f),
                       default_words(f), std::string(f.doc), std::string(f.source)})
      out += " | " + cell(text);
    out += " |\n";
  }
  for (auto& f : fields) {
    if (f.type != FieldType::group && f.type != FieldType::list) continue;
    std::string child = below(path, f.key) + (f.type == FieldType::list ? ".NAME" : "");
    out += "\n## `" + child + "`: " + std::string(f.label) + "\n\n";
    rows(f.access.children(), child, out);
  }
}

}  // namespace

std::string reference(std::span<const FieldInfo> fields, std::string_view title) {
  std::string out = "# " + std::string(title) + "\n\n";
  rows(fields, {}, out);
  return out;
}

std::string describe(const FieldInfo& f, std::string_view path) {
  std::string out = std::string(path) + ": " + std::string(f.label) + "\n";
  auto line = [&](std::string_view name, const std::string& text) {
    if (!text.empty()) out.append("  ").append(name).append(name.empty() ? "" : ": ").append(text).append("\n");
  };
  line("", std::string(f.doc));
  line("kind", kind_words(f));
  if (f.type == FieldType::quantity) line("write", in_quotes(f.kind->example));
  if (f.type == FieldType::quantity || f.type == FieldType::curve) line("units", unit_words(f));
  line("range", range_words(f));
  line("default", default_words(f));
  line("source", std::string(f.source));
  if (f.type != FieldType::group && f.type != FieldType::list) return out;
  for (auto& child : f.access.children()) line(child.key, std::string(child.label));
  return out;
}

}  // namespace sw
