#pragma once
// The units a build was written in: a report speaks to its reader in those.
#include <map>
#include <span>
#include <string_view>

#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

class WrittenUnits {
 public:
  WrittenUnits() = default;
  /// Counts the unit of every figure of the text; those of shelf parts are their makers' and do not count.
  WrittenUnits(const Node& root, std::span<const FieldInfo> fields);
  /// `usual`, where a figure of this kind is written in it; temperatures always, and else others, in the unit most of
  /// them are written in, of two the one met first; where none is, in that of a kind of the same dimension. `usual`
  /// stays where nothing is known, and where the other would be of another size altogether, as mA for the amps of an
  /// alternator or gal/min of air.
  std::string_view of(const Kind& kind, std::string_view usual) const;

 private:
  void table(const Node& node, std::span<const FieldInfo> fields);
  void figure(const Node& leaf, const FieldInfo& f);
  void count(const Node& value, const Kind& kind);

  struct Used {
    std::string_view unit;  ///< of the kind's own list
    int times = 0;
  };
  std::map<std::string_view, std::vector<Used>> used_;  ///< by the kind's name
  std::map<std::string_view, const Kind*> kinds_;
};

}  // namespace sw
