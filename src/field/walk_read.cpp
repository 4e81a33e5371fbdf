// Reading a tree into a struct.
#include <algorithm>

#include "field/leaf.hpp"
#include "field/measure.hpp"
#include "field/walk.hpp"
#include "field/words.hpp"

namespace sw {

namespace {

bool is_branch(const FieldInfo& f) { return f.type == FieldType::group || f.type == FieldType::list; }

/// Names stand in paths, findings and addresses, so they are kept to what needs no quotation marks in TOML.
bool is_name(std::string_view name) {
  return !name.empty() && std::all_of(name.begin(), name.end(), [](char c) {
    return (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9') || c == '_' || c == '-';
  });
}

class Reader {
 public:
  Reader(std::span<const FieldInfo> root, EvidenceMap& evidence, Diagnostics& faults, Source usual)
      : root_(root), evidence_(evidence), faults_(faults), usual_(usual) {}

  /// `part` is known to the reader in a group that the shelf can fill, `base` and `shelf` at the top.
  void table(const Node& node, std::span<const FieldInfo> fields, void* owner, std::string_view path, bool filled) {
    for (auto& e : node.entries) {
      auto f = std::find_if(fields.begin(), fields.end(), [&](auto& field) { return field.key == e.key; });
      if (f != fields.end())
        member(e.value, *f, owner, below(path, e.key));
      else if (e.key == "note")
        note(e.value, below(path, e.key));
      else if (e.key == "part" && filled)
        continue;
      else if (path.empty() && (e.key == "base" || e.key == "shelf"))
        continue;
      else
        unknown(e, fields, path, filled);
    }
  }

 private:
  void member(const Node& node, const FieldInfo& f, void* owner, const std::string& path) {
    if (!is_branch(f)) return read_leaf(node, {f, path, faults_}, owner, evidence_, usual_);
    if (node.type != Node::Type::table) return no_table(node, f, path);
    if (f.type == FieldType::group)
      return table(node, f.access.children(), f.access.child_to(owner), path, !f.part.empty());
    for (auto& e : node.entries) entry(e, f, owner, path);
  }

  void entry(const Entry& e, const FieldInfo& f, void* owner, const std::string& list_path) {
    std::string path = below(list_path, e.key);
    if (e.key == "note" && e.value.type == Node::Type::text) return;
    if (!is_name(e.key))
      return faults_.fault(e.key_place, path, "a name is made of letters, digits, - and _, got " + in_quotes(e.key));
    if (e.value.type != Node::Type::table) return no_table(e.value, f, path);
    table(e.value, f.access.children(), f.access.add(owner, e.key), path, !f.part.empty());
  }

  void no_table(const Node& node, const FieldInfo& f, const std::string& path) {
    std::string hint;
    bool out = node.type == Node::Type::yes_no && node.number == 0;
    if (out) hint = "`false` takes something out only of the build an overlay is laid over";
    if (node.type == Node::Type::array && f.type == FieldType::list)
      hint = "give each entry a name: [" + path + ".NAME]";
    faults_.fault(node.place, path, "expected a table, [" + path + "], got " + shown(node), hint);
  }

  void note(const Node& node, const std::string& path) {
    if (node.type != Node::Type::text) faults_.fault(node.place, path, "expected a text, got " + shown(node));
  }

  void unknown(const Entry& e, std::span<const FieldInfo> fields, std::string_view path, bool filled) {
    std::vector<std::string_view> known;
    for (auto& f : fields) known.push_back(f.key);
    if (filled) known.push_back("part");
    known.push_back("note");
    std::string hint = did_you_mean(e.key, known);
    if (hint.empty()) hint = stands_elsewhere(root_, e.key);
    constexpr std::size_t few = 12;  // more than that is read in the field reference, not in a message
    if (hint.empty() && known.size() <= few) {
      hint = "known here: ";
      for (auto& k : known) hint.append(&k == &known[0] ? "" : ", ").append(k);
    }
    if (hint.empty() && e.key == "part") hint = "the shelf fills no part here";
    faults_.fault(e.key_place, below(path, e.key), "unknown key", hint);
  }

  std::span<const FieldInfo> root_;
  EvidenceMap& evidence_;
  Diagnostics& faults_;
  Source usual_;
};

/// Puts the value into its member; false where it had a fault or nothing is left to put.
bool store(const Given& given, const Site& site, void* owner, double& si) {
  auto& access = site.field.access;
  switch (site.field.type) {
    case FieldType::text: {
      auto text = read_text(*given.value, site);
      if (!text || text->empty() || !given.sound) return false;
      *access.text_to(owner) = std::move(*text);
      return true;
    }
    case FieldType::names: {
      auto names = read_names(*given.value, site);
      if (!names || !given.sound) return false;
      *access.names_to(owner) = std::move(*names);
      return true;
    }
    case FieldType::curve: {
      auto curve = read_curve(*given.value, site);
      if (!curve || !given.sound) return false;
      *access.curve_to(owner) = std::move(*curve);
      return true;
    }
    default: {
      auto value = read_figure(*given.value, site);
      if (!value || !given.sound) return false;
      si = *value;
      access.set(owner, si);
      return true;
    }
  }
}

}  // namespace

void read_leaf(const Node& node, const Site& site, void* owner, EvidenceMap& evidence, Source usual) {
  auto given = take_apart(node, site, usual);
  if (!given) return;
  double si = 0;
  bool stored = store(*given, site, owner, si);
  std::optional<double> width;
  if (given->plus_minus) {
    width = read_plus_minus(*given->plus_minus, site, si);
    if (!width && stored) {
      clear_leaf(site.field, owner);
      stored = false;
    }
  }
  if (!stored) return;
  bool figure = site.field.type != FieldType::text && site.field.type != FieldType::names;
  double half_width = width ? *width : figure ? usual_half_width(site.field, given->source, si) : 0;
  evidence[std::string(site.path)] = {.source = given->source,
                                      .half_width = half_width,
                                      .given_width = width.has_value(),
                                      .part = given->part,
                                      .place = given->value->place};
}

void read(const Node& table, std::span<const FieldInfo> fields, void* owner, std::string_view path,
          EvidenceMap& evidence, Diagnostics& faults, Source usual) {
  Reader(fields, evidence, faults, usual).table(table, fields, owner, path, false);
  faults.sort();
}

void fill_defaults(std::span<const FieldInfo> fields, void* owner, std::string_view path, EvidenceMap& evidence,
                   const Spoilt& spoilt) {
  each_leaf_to(fields, owner, path, [&](const LeafTo& leaf) {
    auto& f = *leaf.field;
    if (!f.fallback || !f.access.get || f.access.get(leaf.owner) || spoilt.at(leaf.path)) return;
    if (f.harm && f.fallback_source == Source::typical) return;
    double si = f.type == FieldType::quantity ? to_si(*f.fallback, *f.kind, unit_of(f)) : *f.fallback;
    f.access.set(leaf.owner, si);
    evidence[leaf.path] = {
        .source = f.fallback_source, .half_width = usual_half_width(f, f.fallback_source, si), .defaulted = true};
  });
}

}  // namespace sw
