// Edits put into the user's own text. Several ways of writing a new key may be right; each is tried in order of how
// well it reads, and only one whose result parses to exactly what was asked is taken.
#include <algorithm>
#include <set>

#include "document/document.hpp"
#include "document/syntax.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

using Keys = std::vector<std::string>;

bool is_table(const Node& n) { return n.type == Node::Type::table; }

/// The same value, wherever it stands; the order of a table's keys does not count.
bool same(const Node& a, const Node& b) {
  if (a.type != b.type || a.text != b.text || a.items.size() != b.items.size()) return false;
  if (a.entries.size() != b.entries.size()) return false;
  auto sorted = [](const Node& n) {
    std::vector<const Entry*> list;
    for (auto& e : n.entries) list.push_back(&e);
    std::sort(list.begin(), list.end(), [](auto* x, auto* y) { return x->key < y->key; });
    return list;
  };
  auto x = sorted(a), y = sorted(b);
  for (std::size_t i = 0; i < x.size(); ++i)
    if (x[i]->key != y[i]->key || !same(x[i]->value, y[i]->value)) return false;
  return std::equal(a.items.begin(), a.items.end(), b.items.begin(), same);
}

std::string joined(const Keys& keys, std::size_t from, std::size_t to) {
  std::string text;
  for (std::size_t i = from; i < to; ++i) text += (i > from ? "." : "") + keys[i];
  return text;
}

/// A text with its tree, and where in it new keys can stand.
class Layout {
 public:
  Layout(const std::string& text, const Node& root) : text_(text), lines_(text), root_(root) { find_headers(root); }

  std::size_t begin(const Node& n) const { return lines_.offset(n.place.line, n.place.column); }
  std::size_t end(const Node& n) const { return lines_.offset(n.place.end_line, n.place.end_column); }
  bool is_inline(const Node& n) const { return is_table(n) && &n != &root_ && text_[begin(n)] == '{'; }

  /// Made by dotted keys of a table above it: no header may name it.
  bool is_dotted(const Node& n) const {
    return &n != &root_ && is_table(n) && text_[begin(n)] != '{' && text_[begin(n)] != '[';
  }
  /// Has a header line of its own; `[a.b]` alone gives none to `a`.
  bool has_header(const Node& n) const {
    if (&n == &root_ || !is_table(n) || text_[begin(n)] != '[') return false;
    return std::none_of(n.entries.begin(), n.entries.end(),
                        [&](auto& e) { return is_table(e.value) && begin(e.value) == begin(n); });
  }
  bool takes_keys(const Node& n) const { return &n == &root_ || is_inline(n) || has_header(n); }

  std::string replaced(const Node& n, const std::string& value) const {
    return text_.substr(0, begin(n)) + value + text_.substr(end(n));
  }
  /// `key = value` as the last of a table that takes keys.
  std::string with_key(const Node& table, const std::string& key, const std::string& value) const {
    std::string line = key + " = " + value;
    return is_inline(table) ? in_braces(table, line) : in_section(table, line);
  }
  /// `key = value` in the empty place a comment of the table's section keeps for it, `# MEASURE key = ""`; what is said
  /// behind it stays. Empty where there is none.
  std::optional<std::string> in_kept_place(const Node& table, std::string_view key, const std::string& value) const {
    if (is_inline(table)) return std::nullopt;
    const bool root = &table == &root_;
    const auto next = root ? headers_.begin() : headers_.upper_bound(begin(table));
    const std::size_t to = next == headers_.end() ? text_.size() : *next;
    for (std::size_t at = root ? 0 : begin(table); at < to; at = std::min(text_.find('\n', at), to - 1) + 1) {
      const std::size_t kept = kept_for(std::string_view(text_).substr(at, text_.find('\n', at) - at), key);
      if (kept > 0) return text_.substr(0, at) + std::string(key) + " = " + value + text_.substr(at + kept);
    }
    return std::nullopt;
  }
  /// A new table with one key at the end of the text.
  std::string with_table(const std::string& path, const std::string& key, const std::string& value) const {
    std::string out = text_;
    if (!out.empty() && out.back() != '\n') out += newline();
    if (!out.empty()) out += newline();
    return out + "[" + path + "]" + newline() + key + " = " + value + newline();
  }

 private:
  /// Length of `# key = ""` or `# MEASURE key = ""` at the start of a line; 0 where the line keeps no place for the
  /// key.
  static std::size_t kept_for(std::string_view line, std::string_view key) {
    std::size_t at = 0;
    const auto past = [&](std::string_view word) {
      while (at < line.size() && line[at] == ' ') ++at;
      const bool there = line.substr(at).starts_with(word);
      if (there) at += word.size();
      return there;
    };
    if (!past("#")) return 0;
    past("MEASURE ");
    return past(key) && past("=") && past("\"\"") ? at : 0;
  }

  void find_headers(const Node& n) {
    if (has_header(n)) headers_.insert(begin(n));
    for (auto& e : n.entries) find_headers(e.value);
    for (auto& item : n.items) find_headers(item);
  }

  std::string newline() const {
    auto at = text_.find('\n');
    return at != std::string::npos && at > 0 && text_[at - 1] == '\r' ? "\r\n" : "\n";
  }

  std::string inserted(std::size_t at, const std::string& what) const {
    return text_.substr(0, at) + what + text_.substr(at);
  }

  std::string in_braces(const Node& table, const std::string& line) const {
    std::size_t close = end(table) - 1, at = close;
    while (text_[at - 1] == ' ' || text_[at - 1] == '\t') --at;
    bool space = at < close;
    return inserted(at, (table.entries.empty() ? " " : ", ") + line + (table.entries.empty() && !space ? " " : ""));
  }

  std::string in_section(const Node& table, const std::string& line) const {
    bool root = &table == &root_;
    std::size_t from = root ? 0 : begin(table);
    auto next = root ? headers_.begin() : headers_.upper_bound(from);
    std::size_t last = 0;
    last_value(root_, from, next == headers_.end() ? text_.size() : *next, last);
    if (last == 0 && root) return inserted(after_title(), line + newline());
    std::size_t at = std::min(text_.find('\n', std::max(last, from)), text_.size());
    if (at > 0 && at < text_.size() && text_[at - 1] == '\r') --at;
    return inserted(at, newline() + line);
  }

  /// The end of the last value that stands in a stretch of the text.
  void last_value(const Node& n, std::size_t from, std::size_t to, std::size_t& last) const {
    bool value =
        &n != &root_ &&
        (is_table(n) ? is_inline(n) : n.items.empty() || !is_table(n.items[0]) || text_[begin(n.items[0])] == '{');
    if (value && begin(n) >= from && begin(n) < to) last = std::max(last, end(n));
    if (value) return;
    for (auto& e : n.entries) last_value(e.value, from, to, last);
    for (auto& item : n.items) last_value(item, from, to, last);
  }

  /// Below the comment that heads the text, if a blank line sets it apart.
  std::size_t after_title() const {
    std::size_t start = text_.starts_with(byte_order_mark) ? byte_order_mark.size() : 0, at = start;
    while (at < text_.size() && text_[at] == '#') at = std::min(text_.find('\n', at), text_.size() - 1) + 1;
    bool blank = at < text_.size() && (text_[at] == '\n' || text_[at] == '\r');
    return at > start && blank ? std::min(text_.find('\n', at), text_.size() - 1) + 1 : start;
  }

  const std::string& text_;
  Lines lines_;
  const Node& root_;
  std::set<std::size_t> headers_;
};

class Splicer {
 public:
  explicit Splicer(Diagnostics& faults) : faults_(faults) {}

  std::optional<std::string> apply(const std::string& text, const Edit& edit) {
    auto refuse = [&](Place place, std::string problem, std::string hint = {}) {
      faults_.fault(place, edit.path, std::move(problem), std::move(hint));
      return std::nullopt;
    };
    Diagnostics syntax;
    Node root = parse_toml(text, 0, syntax);
    if (syntax.any_fault()) {
      auto& first = syntax.all().front();
      return refuse(first.place, first.problem);
    }
    auto keys = split(edit.path);
    if (!keys) return refuse({}, "a path is made of names with a dot between");
    auto value = parse_value(edit.value);
    if (!value) return refuse({}, "the new value is not one TOML value: " + in_quotes(edit.value));

    std::vector<const Node*> way = walk(root, *keys);
    if (!is_table(*way.back()) && way.size() <= keys->size())
      return refuse(way.back()->place, "cannot be set below " + shown(*way.back()));
    Node wanted = root;
    set(wanted, *keys, std::move(*value));
    for (auto& tried : ways_to_write(text, root, way, *keys, edit.value)) {
      Diagnostics again;
      if (tried.size() <= text_limit::bytes && same(parse_toml(tried, 0, again), wanted) && !again.any_fault())
        return tried;
    }
    return refuse(way.back()->place, "cannot be set without a change to the text around it", "change it by hand");
  }

 private:
  static std::optional<Keys> split(std::string_view path) {
    Keys keys(1);
    for (char c : path) {
      bool bare = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
      if (c == '.')
        keys.emplace_back();
      else if (bare)
        keys.back() += c;
      else
        return std::nullopt;
    }
    bool named = std::none_of(keys.begin(), keys.end(), [](auto& k) { return k.empty(); });
    return named && keys.size() <= text_limit::key_parts ? std::optional(keys) : std::nullopt;
  }

  static std::optional<Node> parse_value(const std::string& text) {
    Diagnostics faults;
    Node root = parse_toml("x = " + text, 0, faults);
    if (faults.any_fault() || root.entries.size() != 1 || root.entries[0].key != "x") return std::nullopt;
    return std::move(root.entries[0].value);
  }

  /// The nodes along the path as far as they are there, the root first.
  static std::vector<const Node*> walk(const Node& root, const Keys& keys) {
    std::vector<const Node*> way = {&root};
    for (auto& key : keys) {
      auto* next = way.back()->find(key);
      if (!next) break;
      way.push_back(next);
    }
    return way;
  }

  static void set(Node& root, const Keys& keys, Node value) {
    Node* at = &root;
    for (auto& key : keys) {
      Node* next = at->find(key);
      if (!next) next = &at->entries.emplace_back(Entry{key, {}, {}}).value;
      at = next;
    }
    *at = std::move(value);
  }

  static std::vector<std::string> ways_to_write(const std::string& text, const Node& root,
                                                const std::vector<const Node*>& way, const Keys& keys,
                                                const std::string& value) {
    Layout layout(text, root);
    std::vector<std::string> ways;
    std::size_t depth = way.size() - 1;
    if (depth == keys.size()) {
      bool in_place = !is_table(*way.back()) || layout.is_inline(*way.back());
      if (in_place) ways.push_back(layout.replaced(*way.back(), value));
      return ways;
    }
    auto dotted = [&] {
      for (std::size_t d = depth + 1; d-- > 0;)
        if (layout.takes_keys(*way[d])) ways.push_back(layout.with_key(*way[d], joined(keys, d, keys.size()), value));
    };
    bool own_key = depth + 1 == keys.size() && layout.takes_keys(*way[depth]);
    if (own_key)
      if (auto kept = layout.in_kept_place(*way[depth], keys.back(), value)) ways.push_back(std::move(*kept));
    bool dotted_reads_best = own_key || layout.is_dotted(*way[depth]) || layout.is_inline(*way[depth]);
    if (dotted_reads_best) dotted();
    if (keys.size() > 1) ways.push_back(layout.with_table(joined(keys, 0, keys.size() - 1), keys.back(), value));
    if (!dotted_reads_best) dotted();
    return ways;
  }

  Diagnostics& faults_;
};

}  // namespace

std::optional<std::string> splice(const std::string& text, std::span<const Edit> edits, Diagnostics& faults) {
  std::optional<std::string> now = text;
  for (auto& edit : edits) {
    now = Splicer(faults).apply(*now, edit);
    if (!now) return std::nullopt;
  }
  return now;
}

}  // namespace sw
