// The one visible list of sums. A family is a span in a file of its own; a new one is a line here.
#include "sum/families.hpp"
#include "sum/sum.hpp"

namespace sw {

std::span<const Sum* const> all_sums() {
  static const std::vector<const Sum*> list = [] {
    std::vector<const Sum*> found;
    for (auto family :
         {brake_sums(),   brake_part_sums(), fluid_sums(), flow_sums(), heat_sums(),   exchanger_sums(), wire_sums(),
          circuit_sums(), sender_sums(),     belt_sums(),  gear_sums(), engine_sums(), fuel_sums(),      road_sums(),
          joint_sums(),   linkage_sums(),    tube_sums(),  bolt_sums(), tank_sums(),   estimate_sums()})
      for (auto& s : family) found.push_back(&s);
    return found;
  }();
  return list;
}

const Sum* find_sum(std::string_view name) {
  for (auto* s : all_sums())
    if (s->name == name) return s;
  return nullptr;
}

}  // namespace sw
