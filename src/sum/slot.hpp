#pragma once
// One argument bound to the struct that holds it, and reading and showing its value.
#include <optional>
#include <string>
#include <variant>
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

/// Reads `text` into the slot; what was read as it shall be shown, or the fault.
struct ReadFault {
  std::string problem, hint;
};
std::variant<SumValue, ReadFault> read_slot(const Slot& slot, std::string_view text);

/// Puts the default in where there is one, and says how it is shown.
std::optional<SumValue> default_slot(const Slot& slot);

/// The value an output holds in `unit` (the field's own where empty), or nothing.
std::optional<SumValue> show_slot(const Slot& slot, std::string_view unit);

/// The unit asked for an output, checked: empty where it fits.
std::optional<ReadFault> unit_fault(const Argument& argument, std::string_view unit);

std::vector<std::string_view> split(std::string_view text, char at);
std::string_view trim(std::string_view text);
/// `"text"`: as it is quoted in messages.
std::string quoted(std::string_view text);

}  // namespace sw
