// The one file that knows the TOML library. It is compiled with NDEBUG and without the `unreachable` check, because the
// library asserts on some malformed texts and marks some texts unreachable; with these it reports them as it should.
#define TOML_EXCEPTIONS 1
#include <toml++/toml.h>

#include <algorithm>
#include <stdexcept>

#include "document/syntax.hpp"

namespace sw {

namespace {

/// Finds nesting beyond the limits before the library builds it: the library's own limit knows nothing of dotted keys,
/// and its trees are taken down by recursion.
class NestingScan {
 public:
  explicit NestingScan(std::string_view text) : text_(text) {}

  /// The offset at which the text nests too deeply, or npos.
  std::size_t too_deep() {
    while (at_ < text_.size()) {
      char c = text_[at_];
      if (c == '"' || c == '\'')
        skip_string(c);
      else if (c == '#')
        at_ = std::min(text_.find('\n', at_), text_.size());
      else if (!step(c))
        return at_;
      else
        ++at_;
    }
    return std::string_view::npos;
  }

 private:
  bool step(char c) {
    if (c == '.') return ++dots_ < text_limit::key_parts;
    if (c == '[' || c == '{') ++open_;
    if ((c == ']' || c == '}') && open_ > 0) --open_;
    if (std::string_view("[]{}=,\n").find(c) != std::string_view::npos) dots_ = 0;
    return open_ <= text_limit::nesting;
  }

  void skip_string(char quote) {
    bool long_string = text_.substr(at_, 3) == std::string(3, quote);
    at_ += long_string ? 3 : 1;
    while (at_ < text_.size()) {
      char c = text_[at_];
      if (c == '\\' && quote == '"') {
        at_ += 2;
      } else if (c == '\n' && !long_string) {
        return;
      } else if (c == quote && (!long_string || text_.substr(at_, 3) == std::string(3, quote))) {
        at_ += long_string ? 3 : 1;
        return;
      } else {
        ++at_;
      }
    }
    at_ = std::min(at_, text_.size());
  }

  std::string_view text_;
  std::size_t at_ = 0, dots_ = 0, open_ = 0;
};

/// The library counts columns in characters; places count in bytes.
class Places {
 public:
  Places(std::string_view text, int file) : lines_(text), file_(file) {
    std::size_t start = text.starts_with(byte_order_mark) ? byte_order_mark.size() : 0;
    first_.push_back(0);
    for (std::size_t i = start; i < text.size(); ++i) {
      if ((static_cast<unsigned char>(text[i]) & 0xC0) == 0x80) continue;
      characters_.push_back(i);
      if (text[i] == '\n') first_.push_back(characters_.size());
    }
    characters_.push_back(text.size());
  }

  std::size_t offset(toml::source_position p) const {
    if (p.line == 0 || p.line > first_.size() || p.column == 0) return characters_.back();
    return characters_[std::min<std::size_t>(first_[p.line - 1] + p.column - 1, characters_.size() - 1)];
  }
  Place place(const toml::source_region& r) const {
    Place begin = position(r.begin);
    Place end = position(r.end);
    return {file_, begin.line, begin.column, end.line, end.column};
  }

 private:
  Place position(toml::source_position p) const {
    std::uint32_t line = p.line;
    std::size_t at = offset(p);
    std::size_t start = lines_.start(line);
    return {file_, line, static_cast<std::uint32_t>(at < start ? 1 : at - start + 1)};
  }

  Lines lines_;
  int file_;
  std::vector<std::size_t> characters_;  // offset of each
  std::vector<std::size_t> first_;       // of each line, the index of its first character
};

class Converter {
 public:
  Converter(std::string_view text, const Places& places) : text_(text), places_(places) {}

  Node node(const toml::node& from) const {
    Node to;
    to.place = places_.place(from.source());
    switch (from.type()) {
      case toml::node_type::table:
        table(*from.as_table(), to);
        break;
      case toml::node_type::array:
        to.type = Node::Type::array;
        for (auto& item : *from.as_array()) to.items.push_back(node(item));
        break;
      case toml::node_type::string:
        to.type = Node::Type::text;
        to.text = **from.as_string();
        break;
      case toml::node_type::integer:
        to.type = Node::Type::integer;
        to.number = static_cast<double>(**from.as_integer());
        break;
      case toml::node_type::floating_point:
        to.type = Node::Type::real;
        to.number = **from.as_floating_point();
        break;
      case toml::node_type::boolean:
        to.type = Node::Type::yes_no;
        to.number = **from.as_boolean() ? 1 : 0;
        break;
      default:
        to.type = Node::Type::other;
    }
    bool scalar = to.type != Node::Type::table && to.type != Node::Type::array && to.type != Node::Type::text;
    if (scalar) to.text = written(from.source());
    return to;
  }

 private:
  void table(const toml::table& from, Node& to) const {
    if (from.size() > text_limit::entries) throw std::length_error("a table has more than 20000 entries");
    for (auto&& [key, value] : from)
      to.entries.push_back({std::string(key.str()), places_.place(key.source()), node(value)});
    // The library keeps its tables sorted by key; the user's order is that of the places.
    std::stable_sort(to.entries.begin(), to.entries.end(), [](auto& a, auto& b) {
      return std::pair(a.key_place.line, a.key_place.column) < std::pair(b.key_place.line, b.key_place.column);
    });
  }

  std::string written(const toml::source_region& r) const {
    std::size_t begin = places_.offset(r.begin), end = places_.offset(r.end);
    return std::string(text_.substr(begin, end > begin ? end - begin : 0));
  }

  std::string_view text_;
  const Places& places_;
};

/// What the syntax error usually means to somebody who writes a build by hand.
std::string hint_for(std::string_view said) {
  auto has = [&](std::string_view words) { return said.find(words) != std::string_view::npos; };
  if (has("comment or whitespace") || has("determine value type") || has("could not be parsed"))
    return "put words, and figures with a unit, in quotation marks: \"27 in\"";
  if (has("control characters") || has("end-of-file") || has("unterminated"))
    return "a closing quotation mark or bracket is missing";
  if (has("redefine")) return "this name stands twice in the file: join the two";
  return {};
}

}  // namespace

Node parse_toml(std::string_view text, int file, Diagnostics& faults) {
  if (std::size_t at = NestingScan(text).too_deep(); at != std::string_view::npos) {
    faults.fault(Lines(text).place(at, file), {}, "nested too deeply: at most 32 levels");
    return {};
  }
  Places places(text, file);
  try {
    toml::table root = toml::parse(text);
    return Converter(text, places).node(root);
  } catch (const toml::parse_error& e) {
    faults.fault(places.place(e.source()), {}, "this is not TOML: " + std::string(e.description()),
                 hint_for(e.description()));
  } catch (const std::length_error& e) {
    faults.fault({.file = file}, {}, e.what());
  }
  return {};
}

}  // namespace sw
