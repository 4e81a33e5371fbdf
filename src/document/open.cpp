// Reading a build with all that it is laid over and takes its parts from.
#include <algorithm>

#include "document/document.hpp"
#include "document/merge.hpp"
#include "document/shelf.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

/// Longer chains of overlays are a mistake or a loop under ever new names.
constexpr std::size_t longest_chain = 16;

class Opening {
 public:
  Opening(std::span<const FieldInfo> fields, const OpenText& open) : fields_(fields), open_(open) {}

  Document run(const std::filesystem::path& file, const std::string& stock_shelf) {
    read_chain(file.lexically_normal());
    Shelves shelves;
    for (auto& s : shelf_names_) add_shelf(s, shelves);
    if (!stock_shelf.empty()) shelves.files.push_back(parse("stock shelf", stock_shelf, false));
    merge();
    place_parts(doc_.root, fields_, shelves, doc_.faults);
    doc_.incomplete = incomplete_ || shelves.incomplete;
    doc_.shelves = std::move(shelves.files);
    doc_.faults.sort();
    return std::move(doc_);
  }

 private:
  struct ShelfName {
    std::filesystem::path file;
    Place named_at;
  };

  Node parse(const std::string& name, std::string text, bool json) {
    doc_.files.push_back(name);
    doc_.texts.push_back(std::move(text));
    return parse_text(doc_.texts.back(), static_cast<int>(doc_.files.size()) - 1, json, doc_.faults);
  }

  /// Empty where the file cannot be had; the fault stands where it was named.
  std::optional<Node> load(const std::filesystem::path& file, Place named_at, const char* key) {
    std::string name = file.generic_string();
    auto text = open_(file);
    if (!text) {
      if (named_at.file < 0) {
        doc_.files.push_back(name);
        doc_.texts.emplace_back();
        named_at.file = 0;
      }
      doc_.faults.fault(named_at, key, "there is no file " + in_quotes(name) + " that can be read");
      return std::nullopt;
    }
    auto faults_before = doc_.faults.all().size();
    Node node = parse(name, std::move(*text), file.extension() == ".json");
    if (doc_.faults.all().size() != faults_before) return std::nullopt;
    return node;
  }

  void read_chain(std::filesystem::path file) {
    std::vector<std::string> seen;
    Place named_at;
    while (true) {
      std::string name = file.generic_string();
      bool loop = std::find(seen.begin(), seen.end(), name) != seen.end();
      if (loop || seen.size() == longest_chain) {
        incomplete_ = true;
        return doc_.faults.fault(named_at, "base",
                                 loop ? loop_words(seen, name) : "more than 16 builds laid over one another");
      }
      seen.push_back(name);
      auto layer = load(file, named_at, layers_.empty() ? "" : "base");
      if (!layer) {
        incomplete_ = true;
        return;
      }
      auto base = take(*layer, "base");
      if (auto shelf = take(*layer, "shelf")) name_shelves(*shelf, file);
      layers_.push_back(std::move(*layer));
      if (!base) return;
      named_at = base->place;
      auto next = sibling(file, *base, "base");
      if (!next) return;
      file = *next;
    }
  }

  static std::string loop_words(const std::vector<std::string>& seen, const std::string& name) {
    std::string words = "goes round in a circle: ";
    auto first = std::find(seen.begin(), seen.end(), name);
    for (auto it = first; it != seen.end(); ++it) words += *it + " is laid over ";
    return words + name;
  }

  /// Takes a top-level entry out, unless the table has a field of that name.
  std::optional<Node> take(Node& root, std::string_view key) {
    if (field_of(fields_, key)) return std::nullopt;
    auto at = std::find_if(root.entries.begin(), root.entries.end(), [&](auto& e) { return e.key == key; });
    if (at == root.entries.end()) return std::nullopt;
    Node value = std::move(at->value);
    root.entries.erase(at);
    return value;
  }

  std::optional<std::filesystem::path> sibling(const std::filesystem::path& file, const Node& name, const char* key) {
    if (name.type == Node::Type::text && !name.text.empty() && name.text.find('\0') == std::string::npos)
      return (file.parent_path() / std::filesystem::path(name.text)).lexically_normal();
    doc_.faults.fault(name.place, key, "expected the name of a file, got " + shown(name));
    return std::nullopt;
  }

  void name_shelves(const Node& value, const std::filesystem::path& file) {
    auto add = [&](const Node& name) {
      if (auto path = sibling(file, name, "shelf")) shelf_names_.push_back({*path, name.place});
    };
    if (value.type == Node::Type::array)
      std::for_each(value.items.begin(), value.items.end(), add);
    else
      add(value);
  }

  void add_shelf(const ShelfName& s, Shelves& shelves) {
    auto same = [&](auto& f) { return f == s.file.generic_string(); };
    if (std::any_of(shelf_files_.begin(), shelf_files_.end(), same)) return;
    shelf_files_.push_back(s.file.generic_string());
    auto node = load(s.file, s.named_at, "shelf");
    if (node)
      shelves.files.push_back(std::move(*node));
    else
      shelves.incomplete = true;
  }

  void merge() {
    // In place of what could not be read stands nothing, so that what is taken out of it goes without a word.
    if (incomplete_) layers_.emplace_back();
    if (layers_.empty()) return;
    doc_.root = std::move(layers_.back());
    layers_.pop_back();
    for (; !layers_.empty(); layers_.pop_back())
      lay_over(doc_.root, std::move(layers_.back()), fields_, {}, incomplete_, doc_.faults);
  }

  std::span<const FieldInfo> fields_;
  const OpenText& open_;
  Document doc_;
  std::vector<Node> layers_;  // the build first, then what it is laid over
  std::vector<ShelfName> shelf_names_;
  std::vector<std::string> shelf_files_;
  bool incomplete_ = false;
};

}  // namespace

Document open_build(const std::filesystem::path& file, std::span<const FieldInfo> fields, const OpenText& open,
                    const std::string& stock_shelf) {
  return Opening(fields, open).run(file, stock_shelf);
}

}  // namespace sw
