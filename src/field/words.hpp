#pragma once
// Words shared by the messages and texts that are made from a field table.
#include <string>
#include <string_view>

#include "field/field.hpp"
#include "field/tree.hpp"

namespace sw {

/// The text in quotation marks, shortened where it is long.
std::string in_quotes(std::string_view text);
/// A node as said after "got": `"2.0 psi"`, `26`, `true`, `a table`, `an array`.
std::string shown(const Node& node);
/// What a value of the kind looks like: `a length such as "17 1/4 in"`.
std::string such_as(const Kind& kind);
/// `"a", "b" or "c"`.
std::string one_of(std::span<const std::string_view> names);
/// `did you mean "gauge"?`, or empty where nothing is near.
std::string did_you_mean(std::string_view given, const std::vector<std::string_view>& names);
/// Two ways to write one name: letters' case, spaces and hyphens do not count. `engine-bay` is `engine bay`.
bool same_words(std::string_view a, std::string_view b);
/// `did you mean "coolant pump"?`: the choice that another word of the trade names, or the nearest; or empty.
std::string choice_meant(std::string_view given, std::span<const std::string_view> choices);
/// Where a key stands that was looked for in the wrong table: `cooling.radiator`; the least deep first, entries of
/// lists as NAME.
std::vector<std::string> paths_of(std::span<const FieldInfo> fields, std::string_view key);
/// `did you mean cooling.radiator?`, or empty where it stands nowhere or in too many places to tell.
std::string stands_elsewhere(std::span<const FieldInfo> fields, std::string_view key);
/// A number of the field's own unit with that unit: `4 in`, `0.5`.
std::string in_own_unit(double value, const FieldInfo& f);
/// `4 in to 60 in`, `above 0 in to 60 in`; empty where no range is set. In another unit where one is named.
std::string range_words(const FieldInfo& f);
std::string range_words(const FieldInfo& f, std::string_view unit);
/// The default as the user would write it: `26 in`, `yes`, `"series"`; empty where there is none.
std::string fallback_words(const FieldInfo& f);
/// `2 %`, `1 degF`, `2 % + 1 degF`, `exact`.
std::string spread_words(const FieldInfo& f, Source s);
/// Whether a value of it is written with a unit.
bool has_unit(const FieldInfo& f);
/// Digits a figure is told with.
inline constexpr int figure_digits = 4;
/// A figure (quantity, number, integer, yes_no, choice) in SI as the user would write it, in `unit` where it has one.
std::string figure_words(const FieldInfo& f, double si, std::string_view unit);
/// A path's child: `cooling` + `radiator` = `cooling.radiator`.
std::string below(std::string_view path, std::string_view key);

}  // namespace sw
