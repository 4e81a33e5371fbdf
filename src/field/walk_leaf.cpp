// Visiting and finding leaves.
#include "field/walk.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

/// The first key of a path and what is left of it.
std::pair<std::string_view, std::string_view> split(std::string_view path) {
  auto dot = path.find('.');
  if (dot == std::string_view::npos) return {path, {}};
  return {path.substr(0, dot), path.substr(dot + 1)};
}

const FieldInfo* by_key(std::span<const FieldInfo> fields, std::string_view key) {
  for (auto& f : fields)
    if (f.key == key) return &f;
  return nullptr;
}

std::size_t index_of(const FieldInfo& list, const void* owner, std::string_view name) {
  std::size_t i = 0, count = list.access.count(owner);
  while (i < count && list.access.name(owner, i) != name) ++i;
  return i;
}

/// What a group or an entry of a list holds, changeable where its owner is. A group that is not there is null, for to
/// ask for it to be changed would put it there.
const void* child_of(const FieldInfo& f, const void* owner) { return f.access.child(owner); }
void* child_of(const FieldInfo& f, void* owner) { return f.access.child(owner) ? f.access.child_to(owner) : nullptr; }
const void* item_of(const FieldInfo& f, const void* owner, std::size_t i) { return f.access.item(owner, i); }
void* item_of(const FieldInfo& f, void* owner, std::size_t i) { return f.access.item_to(owner, i); }

/// `Found` is Leaf with a const owner or LeafTo with an open one.
template <class Found, class Owner>
void visit_leaves(std::span<const FieldInfo> fields, Owner* owner, std::string_view prefix,
                  const std::function<void(const Found&)>& visit) {
  for (auto& f : fields) {
    std::string path = below(prefix, f.key);
    if (f.type == FieldType::group) {
      if (auto* child = child_of(f, owner)) visit_leaves<Found>(f.access.children(), child, path, visit);
    } else if (f.type == FieldType::list) {
      for (std::size_t i = 0; i < f.access.count(owner); ++i)
        visit_leaves<Found>(f.access.children(), item_of(f, owner, i), below(path, f.access.name(owner, i)), visit);
    } else {
      visit({std::move(path), &f, owner});
    }
  }
}

template <class Found, class Owner>
Found leaf_at(std::span<const FieldInfo> fields, Owner* owner, std::string_view whole) {
  for (std::string_view path = whole;;) {
    auto [key, rest] = split(path);
    auto* f = by_key(fields, key);
    if (!f) return {};
    if (f->type == FieldType::group) {
      owner = child_of(*f, owner);
      if (!owner) return {};
    } else if (f->type == FieldType::list) {
      auto [name, deeper] = split(rest);
      const std::size_t i = index_of(*f, owner, name);
      if (i == f->access.count(owner)) return {};
      owner = item_of(*f, owner, i);
      rest = deeper;
    } else {
      return rest.empty() ? Found{std::string(whole), f, owner} : Found{};
    }
    fields = f->access.children();
    path = rest;
  }
}

}  // namespace

void each_leaf(std::span<const FieldInfo> fields, const void* owner, std::string_view prefix,
               const std::function<void(const Leaf&)>& visit) {
  visit_leaves<Leaf>(fields, owner, prefix, visit);
}

void each_leaf_to(std::span<const FieldInfo> fields, void* owner, std::string_view prefix,
                  const std::function<void(const LeafTo&)>& visit) {
  visit_leaves<LeafTo>(fields, owner, prefix, visit);
}

Leaf find_leaf(std::span<const FieldInfo> fields, const void* owner, std::string_view path) {
  return leaf_at<Leaf>(fields, owner, path);
}

LeafTo find_leaf(std::span<const FieldInfo> fields, void* owner, std::string_view path) {
  return leaf_at<LeafTo>(fields, owner, path);
}

bool has_value(const FieldInfo& f, const void* owner) {
  if (f.type == FieldType::text) return !f.access.text(owner)->empty();
  if (f.type == FieldType::names) return !f.access.names(owner)->empty();
  if (f.type == FieldType::curve) return f.access.curve(owner)->has_value();
  return f.access.get(owner).has_value();
}

void clear_leaf(const FieldInfo& f, void* owner) {
  if (f.type == FieldType::text)
    f.access.text_to(owner)->clear();
  else if (f.type == FieldType::names)
    f.access.names_to(owner)->clear();
  else if (f.type == FieldType::curve)
    f.access.curve_to(owner)->reset();
  else
    f.access.set(owner, std::nullopt);
}

void copy_leaf(const FieldInfo& f, const void* from, void* to) {
  if (f.type == FieldType::text)
    *f.access.text_to(to) = *f.access.text(from);
  else if (f.type == FieldType::names)
    *f.access.names_to(to) = *f.access.names(from);
  else if (f.type == FieldType::curve)
    *f.access.curve_to(to) = *f.access.curve(from);
  else
    f.access.set(to, f.access.get(from));
}

bool same_value(const FieldInfo& f, const void* a, const void* b) {
  if (f.type == FieldType::text) return *f.access.text(a) == *f.access.text(b);
  if (f.type == FieldType::names) return *f.access.names(a) == *f.access.names(b);
  if (f.type == FieldType::curve) return *f.access.curve(a) == *f.access.curve(b);
  return f.access.get(a) == f.access.get(b);
}

const FieldInfo* find_field(std::span<const FieldInfo> fields, std::string_view path) {
  auto [key, rest] = split(path);
  auto* f = by_key(fields, key);
  if (!f || rest.empty()) return f;
  if (f->type == FieldType::group) return find_field(f->access.children(), rest);
  if (f->type != FieldType::list) return nullptr;
  auto deeper = split(rest).second;
  return deeper.empty() ? f : find_field(f->access.children(), deeper);
}

}  // namespace sw
