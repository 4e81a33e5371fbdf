#include <cmath>

#include "systems/mounts/mounts.hpp"

namespace sw::mounts {
namespace {

constexpr std::string_view stance_block = "mounts.stance";

namespace stance {
enum Write { w_rise, w_pitch, w_lift, w_intake, write_count };
constexpr Port writes[] = {{"mounts.front_rise", &kind::length, "in", "engine raised at its front mounts"},
                           {"mounts.pitch", &kind::angle, "deg", "engine's nose down, by its mounts"},
                           {"mounts.tail_lift", &kind::length, "in", "gearbox lifted at its mount"},
                           {"mounts.intake_raised", &kind::length, "in", "intake raised by a spacer"}};
static_assert(std::size(writes) == write_count);
void evaluate(const void* model, View& v) {
  auto& m = *static_cast<const Model*>(model);
  v.set(w_rise, m.front_rise_m());
  v.set(w_pitch, m.pitch_rad());
  v.set(w_lift, m.tail_lift_m);
  v.set(w_intake, m.intake_raised_m);
}
}  // namespace stance

constexpr Block all[] = {{stance_block, {}, stance::writes, {}, {}, stance::evaluate}};

}  // namespace

double Model::pitch_rad() const { return moved() ? std::atan((tail_lift_m - front_rise_m()) / span_m) : 0; }

Model System::resolve(const Input& in, Resolver& r) {
  Model m{.sag_m = r.get(in.sag, 0),
          .raised_m = r.get(in.raised, 0),
          .tail_lift_m = r.get(in.tail_lift, 0),
          .intake_raised_m = r.get(in.intake_raised, 0)};
  m.span_m = m.moved() ? r.need(in.span, stance_block) : r.get(in.span, 0);
  return m;
}

std::span<const Block> System::blocks() { return all; }

}  // namespace sw::mounts
