#include "document/merge.hpp"

#include <algorithm>

#include "field/words.hpp"

namespace sw {

const FieldInfo* field_of(std::span<const FieldInfo> fields, std::string_view key) {
  for (auto& f : fields)
    if (f.key == key) return &f;
  return nullptr;
}

namespace {

bool says_out(const Node& n) { return n.type == Node::Type::yes_no && n.number == 0; }

class Overlay {
 public:
  Overlay(bool incomplete, Diagnostics& faults) : incomplete_(incomplete), faults_(faults) {}

  /// What stands below a table: the members of a struct, or entries of a list under any name.
  struct Inside {
    std::span<const FieldInfo> fields;
    bool entries = false;
  };

  void lay(Node& base, Node over, Inside inside, std::string_view path) {
    const auto names = inside.entries ? names_kept(base, over) : std::vector<std::string>();
    for (auto& e : over.entries) {
      if (inside.entries && e.value.type == Node::Type::table) doubt_name(e, names, path);
      const FieldInfo* f = inside.entries ? nullptr : field_of(inside.fields, e.key);
      bool branch = inside.entries || (f && (f->type == FieldType::group || f->type == FieldType::list));
      std::string child = below(path, e.key);
      if (branch && says_out(e.value))
        take_out(base, e, child);
      else if (branch && e.value.type == Node::Type::table)
        lay_table(base, std::move(e), deeper(inside, f), child);
      else
        replace(base, std::move(e));
    }
  }

 private:
  static Inside deeper(const Inside& here, const FieldInfo* f) {
    if (here.entries) return {here.fields, false};
    return {f->access.children(), f->type == FieldType::list};
  }

  void lay_table(Node& base, Entry e, const Inside& inside, const std::string& path) {
    Node* under = base.find(e.key);
    if (under && under->type == Node::Type::table) return lay(*under, std::move(e.value), inside, path);
    // Laid over an empty table all the same, for what it takes out of nothing.
    Node fresh{.type = Node::Type::table, .place = e.value.place, .part = e.value.part};
    lay(fresh, std::move(e.value), inside, path);
    e.value = std::move(fresh);
    replace(base, std::move(e));
  }

  /// One that is taken out has made way for a new one.
  static std::vector<std::string> names_kept(const Node& list, const Node& over) {
    std::vector<std::string> names;
    for (auto& e : list.entries)
      if (auto* laid = over.find(e.key); !laid || !says_out(*laid)) names.push_back(e.key);
    return names;
  }

  static std::string without_digits(std::string_view name) {
    std::string out;
    for (char c : name)
      if (c < '0' || c > '9') out += c;
    return out;
  }

  /// A name that stands in nothing below makes a new entry, which is right as often as it is a slip: it is warned of
  /// where one of nearly the same name is there. Names that differ in their numbers alone are meant so.
  void doubt_name(const Entry& e, const std::vector<std::string>& names, std::string_view path) {
    if (std::find(names.begin(), names.end(), e.key) != names.end()) return;
    std::vector<std::string_view> others;
    for (auto& n : names)
      if (without_digits(n) != without_digits(e.key)) others.push_back(n);
    const auto near = nearest(e.key, others);
    if (near.empty()) return;
    faults_.warn(e.key_place, below(path, e.key),
                 "makes a new entry, and " + in_quotes(near) + " that it is laid over stays as it was",
                 "did you mean " + in_quotes(near) + "? Where a new one is meant, a name less like it ends this line");
  }

  static void replace(Node& base, Entry e) {
    for (auto& b : base.entries)
      if (b.key == e.key) {
        b = std::move(e);
        return;
      }
    base.entries.push_back(std::move(e));
  }

  void take_out(Node& base, const Entry& e, const std::string& path) {
    auto gone = std::remove_if(base.entries.begin(), base.entries.end(), [&](auto& b) { return b.key == e.key; });
    bool found = gone != base.entries.end();
    base.entries.erase(gone, base.entries.end());
    if (found || incomplete_) return;
    std::vector<std::string_view> names;
    for (auto& b : base.entries) names.push_back(b.key);
    faults_.fault(e.key_place, path, "there is nothing of this name to take out", did_you_mean(e.key, names));
  }

  bool incomplete_;
  Diagnostics& faults_;
};

}  // namespace

void lay_over(Node& base, Node over, std::span<const FieldInfo> fields, std::string_view path, bool incomplete,
              Diagnostics& faults) {
  Overlay(incomplete, faults).lay(base, std::move(over), {fields, false}, path);
}

}  // namespace sw
