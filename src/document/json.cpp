#include <nlohmann/json.hpp>
#include <unordered_set>

#include "document/syntax.hpp"

namespace sw {

namespace {

/// Builds the tree from the parser's events. The parser itself uses no stack of calls; the limit on nesting is for
/// those who walk the tree.
class Builder : public nlohmann::json_sax<nlohmann::json> {
 public:
  Builder(std::string_view text, int file, Diagnostics& faults) : text_(text), file_(file), faults_(faults) {}

  Node root;

  bool null() override { return put(leaf(Node::Type::other, "null")); }
  bool boolean(bool v) override { return put(leaf(Node::Type::yes_no, v ? "true" : "false", v ? 1 : 0)); }
  bool number_integer(std::int64_t v) override {
    return put(leaf(Node::Type::integer, std::to_string(v), static_cast<double>(v)));
  }
  bool number_unsigned(std::uint64_t v) override {
    return put(leaf(Node::Type::integer, std::to_string(v), static_cast<double>(v)));
  }
  bool number_float(double v, const std::string& s) override { return put(leaf(Node::Type::real, s, v)); }
  bool string(std::string& v) override { return put(leaf(Node::Type::text, std::move(v))); }
  bool binary(binary_t&) override { return false; }
  bool start_object(std::size_t) override { return begin(Node::Type::table); }
  bool start_array(std::size_t) override { return begin(Node::Type::array); }
  bool end_object() override { return end(); }
  bool end_array() override { return end(); }

  bool key(std::string& v) override {
    auto& level = open_.back();
    if (!level.keys.insert(v).second) faults_.fault({.file = file_}, path(v), "this key stands twice in its table");
    if (level.keys.size() > text_limit::entries) return refuse("a table has more than 20000 entries");
    level.node.entries.push_back({v, {.file = file_}, {}});
    return true;
  }

  bool parse_error(std::size_t position, const std::string&, const nlohmann::json::exception& e) override {
    std::string problem = e.what();
    if (auto cut = problem.find(": "); cut != std::string::npos) problem.erase(0, cut + 2);
    Place place = Lines(text_).place(position == 0 ? 0 : std::min(position - 1, text_.size()), file_);
    faults_.fault(place, {}, "this is not JSON: " + problem);
    return false;
  }

 private:
  struct Level {
    Node node;
    std::unordered_set<std::string> keys;
  };

  Node leaf(Node::Type type, std::string text, double number = 0) const {
    Node node{.type = type, .place = {.file = file_}};
    node.text = std::move(text);
    node.number = number;
    return node;
  }

  bool put(Node node) {
    if (open_.empty()) {
      root = std::move(node);
      return true;
    }
    Node& parent = open_.back().node;
    if (parent.type == Node::Type::table)
      parent.entries.back().value = std::move(node);
    else
      parent.items.push_back(std::move(node));
    return true;
  }

  bool begin(Node::Type type) {
    if (open_.size() >= text_limit::nesting) return refuse("nested too deeply: at most 32 levels");
    open_.push_back({leaf(type, {}), {}});
    return true;
  }

  bool end() {
    Node node = std::move(open_.back().node);
    open_.pop_back();
    return put(std::move(node));
  }

  bool refuse(const char* why) {
    faults_.fault({.file = file_}, path({}), why);
    return false;
  }

  std::string path(const std::string& last) const {
    std::string text;
    auto add = [&](const std::string& key) { text += (text.empty() ? "" : ".") + key; };
    for (std::size_t i = 0; i + 1 < open_.size(); ++i)
      if (!open_[i].node.entries.empty()) add(open_[i].node.entries.back().key);
    if (!last.empty()) add(last);
    return text;
  }

  std::string_view text_;
  int file_;
  Diagnostics& faults_;
  std::vector<Level> open_;
};

}  // namespace

Node parse_json(std::string_view text, int file, Diagnostics& faults) {
  Builder builder(text, file, faults);
  if (!nlohmann::json::sax_parse(text, &builder)) return {};
  if (builder.root.type != Node::Type::table) {
    faults.fault({.file = file}, {}, "expected an object at the top of the text");
    return {};
  }
  return std::move(builder.root);
}

}  // namespace sw
