#pragma once
// One argument bound to the struct that holds it, and reading and showing its value.
#include <optional>
#include <string>
#include <vector>

#include "quantity/unit.hpp"
#include "sum/run.hpp"

namespace sw {

struct Slot {
  Argument argument;
  void* owner = nullptr;
  bool shared = false;  ///< stands in a flat group: its default is not shown, for it may have no bearing
};

/// The arguments of one struct, flat groups opened.
std::vector<Slot> slots(std::span<const Argument> arguments, void* owner);

/// Reads `text` into the slot and returns it as it shall be shown; or nothing, with the fault reported. The words of a
/// fault are those of a build file.
std::optional<SumValue> read_slot(const Slot& slot, std::string_view text, Diagnostics& faults);

/// Puts the default in where there is one, and says how it is shown.
std::optional<SumValue> default_slot(const Slot& slot);

/// The value an output holds in `unit` (the field's own where empty), or nothing.
std::optional<SumValue> show_slot(const Slot& slot, std::string_view unit);

/// Reports the unit asked for an output where it does not fit.
void check_unit(const Argument& argument, std::string_view unit, Diagnostics& faults);

/// The argument as shown, without a value yet.
SumValue show_name(const FieldInfo& f);
/// `-` for a pure number, also where it was written in `%`.
std::string_view shown_unit(std::string_view unit);

std::vector<std::string_view> split(std::string_view text, char at);
std::string_view trim(std::string_view text);

}  // namespace sw
