#pragma once
// One case of the casebook as its folder tells it: what is wrong, which finding must say so, with which figure.
//
// expected.toml:
//   title, wrong, fix          one sentence each, for the page; `remark` where there is more to say
//   [[finding]]                what must be found on wrong.toml; none for a control case
//     id, state                `state` lists the states allowed; without it `fails`
//     build                    the file it is looked for in; without it wrong.toml
//     predicted, limit, band   the case's own figures; `band` is electrical, belt or heat. Heat's is a share of the
//     rise over the
//                              air: give `ambient` with a temperature. A difference is good to a share of what it is
//                              the difference of: give that as `of`
//     regression, better       our own figure and the better model's reason, where it lies outside the band
//     because                  ports, paths or (where there is none) words that must stand in the because-list: the
//     right reason alone_holds              the because-list must say that the part alone would hold
//     [[finding.figure]]       further figures of the because-list: `path` (or words), `value`, `band` as above
//   [right] tight              requirements (without duty) that may be tight on right.toml; nothing else may
#include <algorithm>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <stdexcept>
#include <string>
#include <vector>

#include "document/document.hpp"

namespace sw::casebook {

inline const std::filesystem::path& root() {
  static const std::filesystem::path folder = STREETWRIGHT_SOURCE_DIR "/tests/casebook";
  return folder;
}

inline std::string text_of(const std::filesystem::path& file) {
  std::ostringstream text;
  text << std::ifstream(file, std::ios::binary).rdbuf();
  return text.str();
}

/// How far simple models may lie from ours: the wire and tape figures are sharp, belts and heat are not.
enum class Band { electrical, belt, heat };

struct Figure {
  std::string path;   ///< port or path in the because-list; empty for the finding's own
  std::string value;  ///< with its unit
  Band band = Band::electrical;
  std::string ambient, of;  ///< the share is of the rise over this; or of this
  std::string regression, better;
};

struct Expected {
  std::string id, build;
  std::vector<std::string> states;
  Figure predicted;
  std::string limit;
  std::vector<std::string> because;
  bool alone_holds = false;
  std::vector<Figure> figures;
  std::string duty() const { return id.find('@') == std::string::npos ? "" : id.substr(id.find('@') + 1); }
};

struct Case {
  std::string name, title, wrong, fix, remark;
  std::vector<Expected> findings;
  std::vector<std::string> may_be_tight;
};

/// Reads a table and complains of what it does not know: a mistyped key would be a check that is never made.
class Table {
 public:
  Table(const Node& node, std::string where) : node_(node), where_(std::move(where)) {}
  ~Table() noexcept(false) {
    for (auto& e : node_.entries)
      if (std::find(known_.begin(), known_.end(), e.key) == known_.end() && !std::uncaught_exceptions())
        throw std::runtime_error(where_ + ": unknown key \"" + e.key + "\"");
  }
  const Node* find(std::string_view key) {
    known_.push_back(key);
    return node_.find(key);
  }
  std::string text(std::string_view key) {
    const Node* n = find(key);
    return n ? n->text : "";
  }
  std::vector<std::string> texts(std::string_view key) {
    std::vector<std::string> all;
    if (const Node* n = find(key))
      for (auto& i : n->items) all.push_back(i.text);
    return all;
  }

 private:
  const Node& node_;
  std::string where_;
  std::vector<std::string_view> known_;
};

inline Band band_named(const std::string& name) {
  if (name == "belt") return Band::belt;
  if (name == "heat") return Band::heat;
  if (name == "electrical" || name.empty()) return Band::electrical;
  throw std::runtime_error("no such band: " + name);
}

inline Figure figure_of(Table& t, const char* key) {
  return {.path = t.text("path"),
          .value = t.text(key),
          .band = band_named(t.text("band")),
          .ambient = t.text("ambient"),
          .of = t.text("of"),
          .regression = t.text("regression"),
          .better = t.text("better")};
}

inline Expected expected_of(const Node& node, const std::string& where) {
  Table t(node, where);
  Expected e;
  e.id = t.text("id");
  e.build = t.find("build") ? t.text("build") : "wrong.toml";
  e.states = t.texts("state");
  if (e.states.empty()) e.states = {"fails"};
  e.predicted = figure_of(t, "predicted");
  e.limit = t.text("limit");
  e.because = t.texts("because");
  if (const Node* n = t.find("alone_holds")) e.alone_holds = n->number != 0;
  if (const Node* n = t.find("figure"))
    for (auto& f : n->items) {
      Table inner(f, where + ": figure");
      e.figures.push_back(figure_of(inner, "value"));
    }
  return e;
}

inline Case read_case(const std::filesystem::path& folder) {
  Diagnostics faults;
  const Node node = parse_text(text_of(folder / "expected.toml"), 0, false, faults);
  const std::string where = folder.filename().string() + "/expected.toml";
  if (faults.any_fault()) throw std::runtime_error(say(faults.all().front(), {where}));
  Table t(node, where);
  Case c{.name = folder.filename().string(),
         .title = t.text("title"),
         .wrong = t.text("wrong"),
         .fix = t.text("fix"),
         .remark = t.text("remark"),
         .findings = {},
         .may_be_tight = {}};
  if (const Node* n = t.find("finding"))
    for (auto& f : n->items) c.findings.push_back(expected_of(f, where));
  if (const Node* n = t.find("right")) {
    Table right(*n, where + ": right");
    c.may_be_tight = right.texts("tight");
  }
  return c;
}

inline void PrintTo(const Case& c, std::ostream* out) { *out << c.name; }

inline std::vector<Case> all_cases() {
  std::vector<std::filesystem::path> folders;
  for (auto& entry : std::filesystem::directory_iterator(root()))
    if (entry.is_directory()) folders.push_back(entry.path());
  std::sort(folders.begin(), folders.end());
  std::vector<Case> all;
  for (auto& f : folders) all.push_back(read_case(f));
  return all;
}

}  // namespace sw::casebook
