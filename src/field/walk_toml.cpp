// A tree as TOML text.
#include <algorithm>

#include "field/walk.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

bool is_bare(std::string_view key) {
  return !key.empty() && std::all_of(key.begin(), key.end(), [](unsigned char c) {
    return c < 0x80 && (std::isalnum(c) || c == '_' || c == '-');
  });
}

std::string toml_string(std::string_view text) {
  static constexpr char digits[] = "0123456789ABCDEF";
  std::string out = "\"";
  for (char c : text) {
    auto byte = static_cast<unsigned char>(c);
    if (c == '"' || c == '\\')
      out.append("\\").append(1, c);
    else if (c == '\n')
      out += "\\n";
    else if (c == '\t')
      out += "\\t";
    else if (byte < 0x20 || byte == 0x7f)
      out.append("\\u00").append(1, digits[byte >> 4]).append(1, digits[byte & 15]);
    else
      out += c;
  }
  return out + '"';
}

std::string toml_key(std::string_view key) { return is_bare(key) ? std::string(key) : toml_string(key); }

std::string value_text(const Node& node) {
  if (node.type == Node::Type::text) return toml_string(node.text);
  if (node.type != Node::Type::array && node.type != Node::Type::table) return node.text;
  bool table = node.type == Node::Type::table;
  std::string out = table ? "{ " : "[";
  const char* comma = "";
  for (auto& item : node.items) out.append(comma).append(value_text(item)), comma = ", ";
  for (auto& e : node.entries)
    out.append(comma).append(toml_key(e.key)).append(" = ").append(value_text(e.value)), comma = ", ";
  return out + (table ? " }" : "]");
}

/// A value with its evidence stands on one line; every other table gets a header.
bool on_one_line(const Node& node) {
  if (node.type != Node::Type::table) return true;
  bool value = node.find("value") || node.find("points");
  return value && std::none_of(node.entries.begin(), node.entries.end(),
                               [](auto& e) { return e.value.type == Node::Type::table; });
}

void write_table(const Node& table, const std::string& path, std::string& out) {
  bool empty = table.entries.empty(), any_value = false;
  for (auto& e : table.entries) any_value = any_value || on_one_line(e.value);
  if (!path.empty() && (empty || any_value)) out += (out.empty() ? "[" : "\n[") + path + "]\n";
  for (auto& e : table.entries)
    if (on_one_line(e.value)) out.append(toml_key(e.key)).append(" = ").append(value_text(e.value)).append("\n");
  for (auto& e : table.entries)
    if (!on_one_line(e.value)) write_table(e.value, below(path, toml_key(e.key)), out);
}

}  // namespace

std::string toml_value(const Node& value) { return value_text(value); }

std::string write_toml(const Node& table) {
  std::string out;
  write_table(table, {}, out);
  return out;
}

}  // namespace sw
