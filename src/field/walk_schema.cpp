// JSON Schema of a field table, for editors.
#include <nlohmann/json.hpp>

#include "field/walk.hpp"
#include "field/words.hpp"
#include "quantity/words.hpp"

namespace sw {

namespace {

using Json = nlohmann::ordered_json;

/// The table around a value: its own key, and what $defs/evidence says of all of them.
Json given(Json value, const char* key) {
  return {{"$ref", "#/$defs/evidence"},
          {"properties", {{key, std::move(value)}}},
          {"required", {key}},
          {"unevaluatedProperties", false}};
}

Json type_of(const char* type) { return {{"type", type}}; }

Json bounded(const FieldInfo& f) {
  Json number = {{"type", f.type == FieldType::integer ? "integer" : "number"}};
  if (!f.range.set) return number;
  number[f.range.low_open ? "exclusiveMinimum" : "minimum"] = f.range.low;
  number[f.range.high_open ? "exclusiveMaximum" : "maximum"] = f.range.high;
  return number;
}

/// The value of a leaf without the table around it.
Json bare(const FieldInfo& f) {
  switch (f.type) {
    case FieldType::number:
    case FieldType::integer:
      return {{"anyOf", {bounded(f), type_of("string")}}};
    case FieldType::yes_no:
      return type_of("boolean");
    case FieldType::choice:
      return {{"enum", std::vector<std::string>(f.choices.begin(), f.choices.end())}};
    default:
      return type_of("string");
  }
}

/// Types that are the same in every field stand once, in $defs.
void leaf(const FieldInfo& f, Json& json) {
  switch (f.type) {
    case FieldType::quantity:
      json["$ref"] = "#/$defs/figure";
      json["examples"] = {std::string(f.kind->example)};
      break;
    case FieldType::text:
      json["$ref"] = "#/$defs/text";
      break;
    case FieldType::names:
      json["$ref"] = "#/$defs/names";
      break;
    case FieldType::curve:
      json["$ref"] = "#/$defs/curve";
      break;
    default:
      json["anyOf"] = {bare(f), given(bare(f), "value")};
  }
}

Json definitions() {
  Json figure = {{"type", {"string", "number"}}};
  Json rows = {{"type", "array"},
               {"minItems", 2},
               {"items", {{"type", "array"}, {"items", figure}, {"minItems", 2}, {"maxItems", 2}}}};
  Json names = {{"type", "array"}, {"items", type_of("string")}};
  Json text = type_of("string");
  return {{"source", {{"enum", std::vector<std::string>(source_names.begin(), source_names.end())}}},
          {"evidence",
           {{"type", "object"},
            {"properties",
             {{"from", {{"$ref", "#/$defs/source"}}}, {"plus_minus", figure}, {"part", text}, {"note", text}}}}},
          {"figure", {{"anyOf", {text, given(text, "value")}}}},
          {"text", {{"anyOf", {text, given(text, "value")}}}},
          {"names", {{"anyOf", {names, given(names, "value")}}}},
          {"curve", {{"anyOf", {rows, given(rows, "points")}}}}};
}

std::string description(const FieldInfo& f) {
  std::string text(f.doc);
  auto add = [&](const std::string& sentence) { text += (text.empty() ? "" : " ") + sentence; };
  if (f.type == FieldType::quantity) add("Give " + such_as(*f.kind) + ".");
  if (f.type == FieldType::curve)
    add("Rows of " + std::string(f.kind_x->name) + " and " + std::string(f.kind->name) + ".");
  if (f.range.set) add("Range: " + range_words(f) + ".");
  if (f.fallback) add("Where not given: " + fallback_words(f) + ".");
  return text;
}

Json object(std::span<const FieldInfo> fields, bool filled);

Json member(const FieldInfo& f) {
  Json json = {{"title", std::string(f.label)}};
  if (auto text = description(f); !text.empty()) json["description"] = text;
  if (f.type == FieldType::group) {
    json.update(object(f.access.children(), !f.part.empty()));
  } else if (f.type == FieldType::list) {
    json["type"] = "object";
    json["properties"] = {{"note", true}};
    json["patternProperties"] = {
        {"^[A-Za-z0-9_-]+$",
         {{"anyOf", {object(f.access.children(), !f.part.empty()), {{"const", false}}, {{"type", "string"}}}}}}};
    json["additionalProperties"] = false;
  } else {
    leaf(f, json);
  }
  return json;
}

Json object(std::span<const FieldInfo> fields, bool filled) {
  Json properties = Json::object();
  for (auto& f : fields) {
    Json json = member(f);
    // In an overlay `false` takes the group out.
    if (f.type == FieldType::group || f.type == FieldType::list) json["type"] = {"object", "boolean"};
    properties[std::string(f.key)] = std::move(json);
  }
  if (filled && !properties.contains("part"))
    properties["part"] = {{"type", "string"},
                          {"description", "A part of the shelf that gives what is not given here."}};
  if (!properties.contains("note")) properties["note"] = {{"type", "string"}};
  return {{"type", "object"}, {"properties", std::move(properties)}, {"additionalProperties", false}};
}

}  // namespace

std::string schema(std::span<const FieldInfo> fields, std::string_view title) {
  Json root = {{"$schema", "https://json-schema.org/draft/2020-12/schema"}, {"title", std::string(title)}};
  root.update(object(fields, false));
  auto& properties = root["properties"];
  if (!properties.contains("base"))
    properties["base"] = {{"type", "string"}, {"description", "The build this one is laid over."}};
  if (!properties.contains("shelf"))
    properties["shelf"] = {{"anyOf", {{{"type", "string"}}, {{"type", "array"}, {"items", {{"type", "string"}}}}}}};
  root["$defs"] = definitions();
  return root.dump(2) + "\n";
}

}  // namespace sw
