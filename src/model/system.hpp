#pragma once
// What a system hands to the car. Each folder in src/systems defines one struct with
//   using Input  = …;  plain fields with a field table
//   using Model  = …;  resolved figures, const once made
//   static constexpr std::string_view key = "cooling", title = "cooling";
//   static constexpr Station where = Station::front;  where on the car its figures are found, unless they say
//   static Model resolve(const Input&, Resolver&);
//   static std::span<const Block> blocks();
//   static std::span<const Requirement> requirements();
//   static constexpr bool may_be_left_out = true;  where a build that says nothing of it is a build without it
// and src/car/systems.hpp lists them. No system includes another.
#include <span>
#include <string_view>

#include "model/block.hpp"
#include "model/requirement.hpp"
#include "model/resolver.hpp"

namespace sw {

/// A system of one car, with its type erased.
struct SystemOf {
  std::string_view key, title;
  const void* model = nullptr;
  std::vector<std::string> missing;  ///< paths of figures its model lacks; empty: usable
  MissingOf missing_of;              ///< those that keep only one block from running
  bool described = true;             ///< false: it may be left out, and the build says nothing of it: it is not judged
  std::span<const Block> blocks;
  std::span<const Requirement> requirements;
};

}  // namespace sw
