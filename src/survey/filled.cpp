#include "survey/filled.hpp"

#include <algorithm>
#include <cmath>
#include <utility>

#include "field/words.hpp"

namespace sw {
namespace {

bool is_blank(const Node& n) {
  return n.type == Node::Type::text && n.text.find_first_not_of(" \t") == std::string::npos;
}
/// A figure with its evidence, or the empty frame of one.
bool is_framed(const Node& n) { return n.find("value") || n.find("points"); }
bool is_blank_frame(const Node& n) {
  const Node* inner = n.find("value") ? n.find("value") : n.find("points");
  return inner && is_blank(*inner);
}

/// Takes out what was left empty, and counts it.
void strip(Node& table, std::size_t& blank) {
  auto& all = table.entries;
  for (auto& e : all)
    if (e.value.type == Node::Type::table && !is_framed(e.value)) strip(e.value, blank);
  const auto empty = [&](const Entry& e) {
    if (is_blank(e.value) || is_blank_frame(e.value)) return ++blank, true;
    return e.value.type == Node::Type::table && e.value.entries.empty();
  };
  all.erase(std::remove_if(all.begin(), all.end(), empty), all.end());
}

void entry(Node& table, std::string key, std::string text) {
  Node value;
  value.type = Node::Type::text;
  value.text = std::move(text);
  table.entries.push_back({std::move(key), {}, std::move(value)});
}

/// The value as the build shall have it. A text carries no evidence.
std::string with_evidence(const Node& given, const FieldInfo& f, const std::string& note) {
  if (f.type == FieldType::text || f.type == FieldType::names) return toml_value(given);
  Node framed = given;
  if (given.type != Node::Type::table) {
    framed = {};
    framed.entries.push_back({f.type == FieldType::curve ? "points" : "value", {}, given});
  }
  if (!framed.find("from")) entry(framed, "from", std::string(name_of(Source::measured)));
  if (!note.empty() && !framed.find("note")) entry(framed, "note", note);
  return toml_value(framed);
}

/// Names the first entry of a list on the way to a figure that the build does not have.
class Entries {
 public:
  explicit Entries(Diagnostics& faults) : faults_(faults) {}

  void look(const Node& table, std::span<const FieldInfo> fields, const void* owner, const std::string& path) {
    for (auto& f : fields) {
      const Node* node = table.find(f.key);
      if (!node || node->type != Node::Type::table) continue;
      const std::string child = below(path, f.key);
      if (f.type == FieldType::group) {
        const void* inside = owner ? f.access.child(owner) : nullptr;
        look(*node, f.access.children(), inside, child);
      } else if (f.type == FieldType::list) {
        list(*node, f, owner, child);
      }
    }
  }

 private:
  void list(const Node& node, const FieldInfo& f, const void* owner, const std::string& path) {
    std::vector<std::string_view> known;
    for (std::size_t i = 0; owner && i < f.access.count(owner); ++i) known.push_back(f.access.name(owner, i));
    for (auto& e : node.entries) {
      const auto at = std::find(known.begin(), known.end(), e.key);
      if (at == known.end()) {
        std::string hint = did_you_mean(e.key, known);
        if (hint.empty()) hint = "describe it in the build first";
        faults_.fault(e.key_place, below(path, e.key), "the build has no such entry", hint);
        continue;
      }
      const auto i = static_cast<std::size_t>(at - known.begin());
      look(e.value, f.access.children(), f.access.item(owner, i), below(path, e.key));
    }
  }

  Diagnostics& faults_;
};

class Reading {
 public:
  Reading(const Build& build, const WrittenUnits& units, Filled& out) : build_(build), units_(units), out_(out) {}

  void run(const std::string& text) {
    out_.root = parse_text(text, 0, false, out_.faults);
    if (out_.faults.any_fault()) return;
    take_note();
    strip(out_.root, out_.blank);
    figures_only();
    read(out_.root, build_fields(), &fresh_, "", evidence_, out_.faults, Source::measured);
    Entries(out_.faults).look(out_.root, build_fields(), &build_, "");
    if (!out_.faults.any_fault())
      each_leaf(build_fields(), &fresh_, "", [&](const Leaf& leaf) {
        if (has_value(*leaf.field, leaf.owner)) take(leaf);
      });
    out_.faults.sort();
  }

 private:
  void take_note() {
    auto& all = out_.root.entries;
    const auto at = std::find_if(all.begin(), all.end(), [](auto& e) { return e.key == "note"; });
    if (at == all.end() || at->value.type != Node::Type::text) return;
    if (!is_blank(at->value)) note_ = at->value.text;
    all.erase(at);
  }
  /// What an overlay may say beside its figures has no meaning here.
  void figures_only() {
    for (auto& e : out_.root.entries)
      if (e.key == "base" || e.key == "shelf")
        out_.faults.fault(e.key_place, e.key, "a survey holds figures alone", "take the line out");
  }

  void take(const Leaf& leaf) {
    const FieldInfo& f = *leaf.field;
    Taken t{.path = leaf.path, .field = &f};
    t.toml = with_evidence(*find_node(out_.root, leaf.path), f, note_);
    t.now = as_written(*find_node(out_.root, leaf.path), words(leaf, evidence_));
    const Leaf before = find_leaf(build_fields(), static_cast<const void*>(&build_), leaf.path);
    if (before.field && has_value(f, before.owner)) {
      t.was = words(before, build_.evidence);
      t.beyond_its_doubt = beyond(leaf, before);
    }
    out_.taken.push_back(std::move(t));
  }

  /// The reading as it was written down, `111 7/8 in`, in place of the figure it comes to.
  static std::string as_written(const Node& given, const std::string& words) {
    const Node* value = given.type == Node::Type::table ? given.find("value") : &given;
    const auto comma = words.rfind(", ");
    if (!value || value->type != Node::Type::text) return words;
    return value->text + (comma == std::string::npos ? "" : words.substr(comma));
  }

  std::string words(const Leaf& leaf, const EvidenceMap& evidence) const {
    const FieldInfo& f = *leaf.field;
    std::string text;
    if (f.access.get)
      text = figure_words(f, *f.access.get(leaf.owner), has_unit(f) ? units_.of(*f.kind, unit_of(f)) : "");
    else if (f.access.text)
      text = *f.access.text(leaf.owner);
    const auto e = evidence.find(leaf.path);
    if (e != evidence.end()) text += (text.empty() ? "" : ", ") + evidence_words(e->second);
    return text;
  }

  bool beyond(const Leaf& leaf, const Leaf& before) const {
    const auto e = build_.evidence.find(leaf.path);
    if (!leaf.field->access.get || e == build_.evidence.end() || e->second.half_width <= 0) return false;
    return std::abs(*leaf.field->access.get(leaf.owner) - *leaf.field->access.get(before.owner)) > e->second.half_width;
  }

  const Build& build_;
  const WrittenUnits& units_;
  Filled& out_;
  Build fresh_;
  EvidenceMap evidence_;
  std::string note_;
};

}  // namespace

Filled read_filled(const std::string& text, const Build& build, const WrittenUnits& units) {
  Filled out;
  Reading(build, units, out).run(text);
  return out;
}

std::optional<std::string> put_in(const std::string& build_text, const Filled& filled, Diagnostics& faults) {
  std::vector<Edit> edits;
  for (auto& t : filled.taken) edits.push_back({t.path, t.toml});
  return splice(build_text, edits, faults);
}

bool reads_back(const Build& build, const Filled& filled) {
  Build meant;
  EvidenceMap evidence;
  Diagnostics faults;
  read(filled.root, build_fields(), &meant, "", evidence, faults, Source::measured);
  return std::all_of(filled.taken.begin(), filled.taken.end(), [&](const Taken& t) {
    const Leaf want = find_leaf(build_fields(), static_cast<const void*>(&meant), t.path);
    const Leaf have = find_leaf(build_fields(), static_cast<const void*>(&build), t.path);
    if (!have.field || !same_value(*t.field, want.owner, have.owner)) return false;
    const auto a = std::as_const(evidence).find(t.path), b = build.evidence.find(t.path);
    const bool bare = a == evidence.end();
    return bare || (b != build.evidence.end() && a->second.source == b->second.source &&
                    a->second.half_width == b->second.half_width);
  });
}

}  // namespace sw
