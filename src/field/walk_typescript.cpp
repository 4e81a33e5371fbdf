// TypeScript types of a field table, for the web.
#include "field/walk.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

std::string joined(std::span<const std::string_view> names) {
  std::string text;
  for (auto name : names) text.append(text.empty() ? "" : " | ").append("\"").append(name).append("\"");
  return text;
}

std::string value_type(const FieldInfo& f) {
  switch (f.type) {
    case FieldType::quantity:
      return "string";
    case FieldType::number:
    case FieldType::integer:
      return "number | string";
    case FieldType::yes_no:
      return "boolean";
    case FieldType::choice:
      return joined(f.choices);
    case FieldType::names:
      return "string[]";
    default:
      return "string";
  }
}

bool is_bare(std::string_view key) { return key.find('-') == std::string_view::npos; }

void members(std::span<const FieldInfo> fields, const std::string& indent, bool filled, std::string& out);

std::string block(const FieldInfo& f, const std::string& indent) {
  std::string out = "{\n";
  members(f.access.children(), indent + "  ", !f.part.empty(), out);
  return out + indent + "}";
}

void members(std::span<const FieldInfo> fields, const std::string& indent, bool filled, std::string& out) {
  for (auto& f : fields) {
    std::string words(f.label);
    if (!f.doc.empty()) words.append(": ").append(f.doc);
    out += indent + "/** " + words + " */\n" + indent;
    out += is_bare(f.key) ? std::string(f.key) : in_quotes(f.key);
    out += "?: ";
    if (f.type == FieldType::group)
      out += block(f, indent);
    else if (f.type == FieldType::list)
      out += "Record<string, " + block(f, indent) + ">";
    else if (f.type == FieldType::curve)
      out += "CurveGiven";
    else
      out += "Given<" + value_type(f) + ">";
    out += ";\n";
  }
  if (filled) out += indent + "/** shelf part that gives what is not given here */\n" + indent + "part?: string;\n";
  out += indent + "note?: string;\n";
}

}  // namespace

std::string typescript(std::span<const FieldInfo> fields, std::string_view name) {
  std::string out = "export type Source = " + joined(source_names) + ";\n";
  out +=
      "/** What may stand beside a value. */\n"
      "export interface Evidence { from?: Source; plus_minus?: string | number; part?: string; note?: string }\n"
      "export type Given<T> = T | ({ value: T } & Evidence);\n"
      "export type Rows = [string | number, string | number][];\n"
      "export type CurveGiven = Rows | ({ points: Rows } & Evidence);\n\n";
  out += "export interface " + std::string(name) + " {\n";
  members(fields, "  ", false, out);
  return out + "}\n";
}

}  // namespace sw
