#pragma once
// The value tree every input is read from, whatever its syntax, and the faults found in it.
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace sw {

/// Where a value stands in the text it came from. Lines and columns count from 1, in bytes; `file` indexes the list of
/// files kept by the document. JSON gives no lines: there only `file` is set and the path serves.
struct Place {
  int file = -1;
  std::uint32_t line = 0, column = 0;          ///< first character
  std::uint32_t end_line = 0, end_column = 0;  ///< one past the last
  bool known() const { return line != 0; }
};

struct Entry;

struct Node {
  enum class Type : std::uint8_t { table, array, text, integer, real, yes_no, other };
  Type type = Type::table;
  Place place;
  std::string text;            ///< for text; for other types the value as written, for messages
  double number = 0;           ///< for integer, real and yes_no (0, 1)
  std::vector<Entry> entries;  ///< of a table, in order of appearance
  std::vector<Node> items;     ///< of an array
  std::string part;            ///< shelf part it was taken from, or empty

  const Node* find(std::string_view key) const;  ///< the entry's value, or null; only for tables
  Node* find(std::string_view key);
};

struct Entry {
  std::string key;
  Place key_place;
  Node value;
};

enum class Severity : std::uint8_t { fault, warning };

/// The node at a path of keys (`cooling.radiator.core_width`), or null.
const Node* find_node(const Node& root, std::string_view path);

/// One fault of the user's data. `say()` puts it in one line; the parts stay apart for JSON and the web.
struct Diagnostic {
  Severity severity = Severity::fault;
  Place place;
  std::string path;     ///< `cooling.radiator.core_width`
  std::string problem;  ///< what was given and what is allowed, in the user's unit
  std::string hint;     ///< what to do, or empty
};

class Diagnostics {
 public:
  void fault(Place place, std::string path, std::string problem, std::string hint = {});
  void warn(Place place, std::string path, std::string problem, std::string hint = {});
  bool any_fault() const;
  /// By file, line, column, then path: the same order on every run.
  void sort();
  const std::vector<Diagnostic>& all() const { return list_; }

 private:
  std::vector<Diagnostic> list_;
};

/// `build.toml:6:10: cooling.radiator.core_width: expected a length such as "17 1/4 in", got "2.0 psi"; …`
std::string say(const Diagnostic& d, const std::vector<std::string>& files);

/// The nearest of `names` to a mistyped `given` (edit distance at most a third of its length), or empty.
std::string_view nearest(std::string_view given, const std::vector<std::string_view>& names);

}  // namespace sw
