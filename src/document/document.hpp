#pragma once
// Texts in (TOML or JSON), one merged tree out: overlays laid over their base, shelf parts put in place of a reference,
// every value with the place it came from. Edits are spliced into the user's own text.
#include <filesystem>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <vector>

#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

/// How texts are found: the disk, or in tests and for stock data something else. Null where there is no such file.
using OpenText = std::function<std::optional<std::string>(const std::filesystem::path&)>;
OpenText from_disk();

struct Document {
  Node root;                       ///< merged; top-level `base` and `shelf` are consumed
  std::vector<std::string> files;  ///< names as shown in messages, indexed by Place::file
  std::vector<std::string> texts;  ///< the texts themselves, same index
  std::vector<Node> shelves;       ///< parts to choose from, in the order in which they are searched
  Diagnostics faults;
  bool incomplete = false;  ///< a text of it could not be had or parsed
};

/// Parses one text by its ending (`.json`, else TOML). After a syntax error only that one is reported.
Node parse_text(const std::string& text, int file, bool json, Diagnostics& faults);

/// Reads a build: the file, then what its `base` names (paths are relative to the file that names them; a loop is a
/// fault), then shelf parts. In an overlay a table merges key by key, anything else replaces, and `name = false`
/// takes an entry of a list or an optional group out; a new entry whose name is nearly one that is there is warned of.
/// `shelf = "shelf.toml"` (or several) names shelf files beside
/// the build; `stock_shelf`, the text of a shelf, is searched after them. A group, or an entry of a list, whose field
/// has a shelf category and holds `part = "name"` gets that part's figures under its own; what stands in the group
/// itself wins. Evidence of a part's figure is `data sheet` unless the shelf says otherwise. A figure is replaced
/// together with its evidence, never half of it. The faults are sorted; the caller reads `root` and adds the reader's.
Document open_build(const std::filesystem::path& file, std::span<const FieldInfo> fields, const OpenText& open,
                    const std::string& stock_shelf = {});

/// One edit of the user's own text: set the leaf at `path` to `value` (TOML text of the value, ready made).
struct Edit {
  std::string path;
  std::string value;
};
/// The text with the edits spliced in, all of them or none: an existing value is replaced in its region, a new key is
/// put at the end of its table, a new table at the end of the file; comments and order stay. The result is parsed again
/// and compared with what was asked; on any difference the fault says so and the text is unchanged.
std::optional<std::string> splice(const std::string& text, std::span<const Edit> edits, Diagnostics& faults);

}  // namespace sw
