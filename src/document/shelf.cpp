#include "document/shelf.hpp"

#include <algorithm>

#include "document/merge.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

void mark(Node& node, const std::string& part) {
  node.part = part;
  for (auto& e : node.entries) mark(e.value, part);
  for (auto& item : node.items) mark(item, part);
}

class Placing {
 public:
  Placing(const Shelves& shelves, Diagnostics& faults) : shelves_(shelves), faults_(faults) {}

  void members(Node& table, std::span<const FieldInfo> fields, std::string_view path) {
    for (auto& e : table.entries) {
      auto* f = field_of(fields, e.key);
      if (!f || e.value.type != Node::Type::table) continue;
      if (f->type == FieldType::group) filled(e.value, *f, below(path, e.key));
      if (f->type != FieldType::list) continue;
      for (auto& item : e.value.entries)
        if (item.value.type == Node::Type::table) filled(item.value, *f, below(below(path, e.key), item.key));
    }
  }

 private:
  void filled(Node& group, const FieldInfo& f, const std::string& path) {
    auto fields = f.access.children();
    // A struct's own member of that name is no reference.
    Node* name = f.part.empty() || field_of(fields, "part") ? nullptr : group.find("part");
    if (name) fill(group, *name, f, path);
    members(group, fields, path);
  }

  void fill(Node& group, const Node& name, const FieldInfo& f, const std::string& path) {
    if (name.type != Node::Type::text)
      return faults_.fault(name.place, below(path, "part"), "expected the name of a part, got " + shown(name));
    const Node* part = find(f.part, name.text);
    if (!part) return unknown(name, f.part, path);
    Node figures = *part;
    figures.place = group.place;
    std::erase_if(figures.entries,
                  [&](auto& e) { return is_shop_key(e.key) && !field_of(f.access.children(), e.key); });
    mark(figures, name.text);
    lay_over(figures, std::move(group), f.access.children(), path, shelves_.incomplete, faults_);
    group = std::move(figures);
  }

  static bool is_shop_key(std::string_view key) {
    return std::find(shop_keys.begin(), shop_keys.end(), key) != shop_keys.end();
  }

  const Node* find(std::string_view category, std::string_view name) const {
    for (auto& file : shelves_.files) {
      auto* parts = file.find(category);
      auto* part = parts ? parts->find(name) : nullptr;
      if (part && part->type == Node::Type::table) return part;
    }
    return nullptr;
  }

  void unknown(const Node& name, std::string_view category, const std::string& path) {
    if (shelves_.incomplete) return;
    std::vector<std::string_view> names;
    for (auto& file : shelves_.files)
      if (auto* parts = file.find(category))
        for (auto& e : parts->entries) names.push_back(e.key);
    std::string hint = did_you_mean(name.text, names);
    constexpr std::size_t few = 12;
    if (names.empty())
      hint = "the shelf has no part of that category";
    else if (hint.empty()) {
      hint = "the shelf has: ";
      for (std::size_t i = 0; i < std::min(few, names.size()); ++i) hint.append(i > 0 ? ", " : "").append(names[i]);
      if (names.size() > few) hint += " and " + std::to_string(names.size() - few) + " more";
    }
    faults_.fault(name.place, below(path, "part"),
                  "no part " + in_quotes(name.text) + " among the shelf's `" + std::string(category) + "`", hint);
  }

  const Shelves& shelves_;
  Diagnostics& faults_;
};

}  // namespace

void place_parts(Node& table, std::span<const FieldInfo> fields, const Shelves& shelves, Diagnostics& faults) {
  Placing(shelves, faults).members(table, fields, {});
}

}  // namespace sw
