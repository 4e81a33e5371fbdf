#include "field/given.hpp"

#include <algorithm>
#include <cmath>

#include "field/measure.hpp"
#include "field/words.hpp"
#include "quantity/parse.hpp"

namespace sw {

namespace {

std::optional<Source> read_source(const Node& node, const Site& site) {
  if (node.type == Node::Type::text)
    if (auto source = find_source(node.text)) return source;
  std::vector<std::string_view> names(source_names.begin(), source_names.end());
  std::string hint = node.type == Node::Type::text ? did_you_mean(node.text, names) : "";
  if (hint.empty() && node.type == Node::Type::text)
    hint = site.field.harm ? "measure it or take it from the data sheet: it has no typical value"
                           : "write \"typical\" for a guess, \"stated\" for what somebody told you";
  site.faults.fault(node.place, below(site.path, "from"), "expected " + one_of(source_names) + ", got " + shown(node),
                    hint);
  return std::nullopt;
}

/// Keys other than those of a value's table.
bool unknown_keys(const Node& table, std::string_view value_key, const Site& site) {
  const std::vector<std::string_view> known = {value_key, "from", "plus_minus", "note", "part"};
  bool any = false;
  for (auto& e : table.entries) {
    if (std::find(known.begin(), known.end(), e.key) != known.end()) continue;
    std::string hint = did_you_mean(e.key, known);
    if (hint.empty()) hint = "known here: " + std::string(value_key) + ", from, plus_minus, note";
    site.faults.fault(e.key_place, below(site.path, e.key), "unknown key", hint);
    any = true;
  }
  return any;
}

std::string expected_plus_minus(const Site& site) {
  auto& f = site.field;
  if (f.type == FieldType::curve) return "expected a share such as \"5 %\"";
  if (is_pure(*f.kind)) return "expected a share such as \"3 %\" or a number such as 0.02";
  return "expected a share such as \"3 %\" or " + such_as(step_kind(*f.kind));
}

bool takes_plus_minus(FieldType type) {
  return type == FieldType::quantity || type == FieldType::number || type == FieldType::integer ||
         type == FieldType::curve;
}

/// `3 %` as 0.03; empty where the text is no share.
std::optional<double> share_in(std::string_view text) {
  if (text.find('%') == std::string_view::npos) return std::nullopt;
  auto parsed = parse_quantity(text, kind::number);
  if (auto* p = std::get_if<Parsed>(&parsed)) return p->si;
  return std::nullopt;
}

std::optional<double> absolute_in(const Node& node, const Site& site, std::string& hint) {
  auto& f = site.field;
  if (f.type == FieldType::curve) return std::nullopt;
  bool bare = node.type == Node::Type::integer || node.type == Node::Type::real;
  if (bare && is_pure(*f.kind)) return node.number;
  if (node.type != Node::Type::text) return std::nullopt;
  auto parsed = parse_quantity(node.text, step_kind(*f.kind));
  if (auto* p = std::get_if<Parsed>(&parsed)) return p->si;
  hint = std::get<TextFault>(parsed).hint;
  return std::nullopt;
}

}  // namespace

std::optional<Given> take_apart(const Node& node, const Site& site, Source usual) {
  Given given{.value = &node, .source = node.part.empty() ? usual : Source::data_sheet, .part = node.part};
  bool sound = true;
  if (node.type == Node::Type::table) {
    std::string_view value_key = site.field.type == FieldType::curve ? "points" : "value";
    sound = !unknown_keys(node, value_key, site);
    given.value = node.find(value_key);
    given.plus_minus = node.find("plus_minus");
    if (!given.value && sound)
      site.faults.fault(node.place, std::string(site.path),
                        "expected a value, got a table without `" + std::string(value_key) + "`");
    if (auto* from = node.find("from")) {
      auto source = read_source(*from, site);
      if (source) given.source = *source;
      sound = sound && source;
    }
    if (auto* part = node.find("part"); part && part->type == Node::Type::text) given.part = part->text;
  }
  if (site.field.harm && given.source == Source::typical) {
    auto* from = node.find("from");
    site.faults.fault(from ? from->place : node.place, std::string(site.path), "has no typical value",
                      "measure it or take it from the data sheet");
    sound = false;
  }
  if (!given.value) return std::nullopt;
  given.sound = sound;
  return given;
}

std::optional<double> read_plus_minus(const Node& node, const Site& site, double si) {
  std::string path = below(site.path, "plus_minus");
  if (!takes_plus_minus(site.field.type)) {
    site.faults.fault(node.place, path, "this field has no plus-minus");
    return std::nullopt;
  }
  std::string hint;
  auto share = node.type == Node::Type::text ? share_in(node.text) : std::nullopt;
  auto width = share ? std::optional(site.field.type == FieldType::curve ? *share : *share * std::abs(si))
                     : absolute_in(node, site, hint);
  if (share.value_or(width.value_or(0)) < 0) {
    site.faults.fault(node.place, path, "a plus-minus is never negative, got " + shown(node));
    return std::nullopt;
  }
  if (width && std::isfinite(*width)) return width;
  std::string got = shown(node);
  if (!is_pure(*site.field.kind) && (node.type == Node::Type::integer || node.type == Node::Type::real))
    got += ", which has no unit";
  site.faults.fault(node.place, path, expected_plus_minus(site) + ", got " + got, hint);
  return std::nullopt;
}

}  // namespace sw
