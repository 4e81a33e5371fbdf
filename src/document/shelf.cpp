#include "document/shelf.hpp"

#include <algorithm>

#include "document/merge.hpp"
#include "field/words.hpp"

namespace sw {

void mark_part(Node& node, const std::string& part) {
  node.part = part;
  for (auto& e : node.entries) mark_part(e.value, part);
  for (auto& item : node.items) mark_part(item, part);
}

namespace {

/// The bare value of a leaf, without the table that gives its evidence.
const Node& bare(const Node& leaf) {
  const Node* inside = leaf.type == Node::Type::table ? leaf.find("value") : nullptr;
  return inside ? *inside : leaf;
}

/// Chosen or solved on purpose against the part's own figure: nothing to warn of.
bool is_chosen(const Node& leaf) {
  const Node* from = leaf.type == Node::Type::table ? leaf.find("from") : nullptr;
  return from && (from->text == name_of(Source::chosen) || from->text == name_of(Source::solved));
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
    mark_part(figures, name.text);
    tell_apart(figures, group, f.access.children(), path);
    lay_over(figures, std::move(group), f.access.children(), path, shelves_.incomplete, faults_);
    group = std::move(figures);
  }

  /// Figures of the group that stand in place of the part's: a part fitted in words alone changes nothing there.
  void tell_apart(const Node& part, const Node& group, std::span<const FieldInfo> fields, const std::string& path) {
    for (auto& own : group.entries) {
      auto* f = field_of(fields, own.key);
      auto* its = f ? part.find(own.key) : nullptr;
      if (!its || f->type == FieldType::list || f->type == FieldType::group || is_chosen(own.value)) continue;
      const Node &mine = bare(own.value), &theirs = bare(*its);
      const bool curve = f->type == FieldType::curve;
      if (!curve && mine.text == theirs.text && mine.number == theirs.number) continue;
      faults_.warn(mine.place, below(path, own.key),
                   "your own " + (curve ? "curve" : mine.text) + " stands in place of part " + part.part +
                       (curve ? "'s own" : "'s " + theirs.text),
                   "take the line out to have the part's");
    }
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
