#pragma once
// The walkers over a field table. Each is an ordinary function over `span<const FieldInfo>` and a type-erased owner,
// so it is compiled once whatever the struct.
#include <functional>
#include <string>
#include <string_view>

#include "field/field.hpp"
#include "field/spoilt.hpp"
#include "field/tree.hpp"

namespace sw {

/// One leaf of an object: its full path, its field, and the struct that holds it.
struct Leaf {
  std::string path;
  const FieldInfo* field = nullptr;
  const void* owner = nullptr;
};
/// Every leaf (quantity, number, integer, yes_no, choice, text, names, curve) in table order, entries of lists in
/// order of appearance; optional groups that are not there are passed over. Leaves without a value are visited too.
void each_leaf(std::span<const FieldInfo> fields, const void* owner, std::string_view prefix,
               const std::function<void(const Leaf&)>& visit);
/// The same of an object that may be changed.
struct LeafTo {
  std::string path;
  const FieldInfo* field = nullptr;
  void* owner = nullptr;
};
void each_leaf_to(std::span<const FieldInfo> fields, void* owner, std::string_view prefix,
                  const std::function<void(const LeafTo&)>& visit);
/// The leaf at `path` below `owner`; null field where there is none. Of an owner open to change, it stays so.
Leaf find_leaf(std::span<const FieldInfo> fields, const void* owner, std::string_view path);
LeafTo find_leaf(std::span<const FieldInfo> fields, void* owner, std::string_view path);
/// Whether a leaf has a value: of a text or a list of names, whether it is not empty.
bool has_value(const FieldInfo& leaf, const void* owner);
/// Takes a leaf's value away.
void clear_leaf(const FieldInfo& leaf, void* owner);
/// Gives a leaf of `to` the value that of `from` has, or none.
void copy_leaf(const FieldInfo& leaf, const void* from, void* to);
/// Whether two owners have the same value in a leaf, or both none.
bool same_value(const FieldInfo& leaf, const void* a, const void* b);
/// The field a path names, entries of lists by any name (`loads.fan.current`, `loads.*.current`); null if none.
const FieldInfo* find_field(std::span<const FieldInfo> fields, std::string_view path);

/// Reads a table into a struct. Every fault is reported at its place; a leaf with a fault stays empty. A figure may
/// stand bare as text, or as { value =, from =, plus_minus = }. A bare number where a unit is possible is a fault.
/// Known beside the table's fields: `note` anywhere, `part` where the shelf can fill the group and beside a value,
/// `base` and `shelf` at the top. A figure taken from a part (Node::part) is `data sheet` unless it says otherwise,
/// any other `usual`.
/// Where nothing is given the field table's default stands in with its evidence (`fill_defaults`, run after); not where
/// something was given that could not be read.
void read(const Node& table, std::span<const FieldInfo> fields, void* owner, std::string_view path,
          EvidenceMap& evidence, Diagnostics& faults, Source usual = Source::stated);
void fill_defaults(std::span<const FieldInfo> fields, void* owner, std::string_view path, EvidenceMap& evidence,
                   const Spoilt& spoilt = {});

/// The object as a tree whose texts read back to the same object and evidence; defaults are left out.
Node write(std::span<const FieldInfo> fields, const void* owner, std::string_view path, const EvidenceMap& evidence);
/// The same as TOML text.
std::string write_toml(const Node& table);
/// One value as TOML text on one line.
std::string toml_value(const Node& value);

/// JSON Schema (2020-12) of a table, as text.
std::string schema(std::span<const FieldInfo> fields, std::string_view title);
/// TypeScript types of a table, as text.
std::string typescript(std::span<const FieldInfo> fields, std::string_view name);
/// The field reference in Markdown: path, label, kind, unit, range, default with evidence, sentence, source.
std::string reference(std::span<const FieldInfo> fields, std::string_view title);
/// A field in words, for `streetwright fields PATH`.
std::string describe(const FieldInfo& f, std::string_view path);

}  // namespace sw
