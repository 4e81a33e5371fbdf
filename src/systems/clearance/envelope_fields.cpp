#include "systems/clearance/envelope.hpp"

namespace sw::clearance {
namespace {

constexpr FieldInfo body_table[] = {
    choice<&Body::shape>("shape", "shape", shape_names)
        .or_else(0, Source::chosen)
        .says("A rod, round along a line of points (pipe, shaft, link; one point is a ball), or a block between two "
              "opposite corners, its edges along the car's axes."),
    choice<&Body::goes_with>("goes_with", "goes with", rides_names)
        .decides_harm()
        .says("What carries it; a steered wheel goes with its axle too."),
    text<&Body::travel>("travel", "travel").says("Of the axle or wheel that carries it, by its name in `travel`."),
    quantity<&Body::diameter>("diameter", "diameter", kind::length)
        .decides_harm()
        .in("in")
        .from(0, 40)
        .spread(Source::measured, {.absolute = 0.02})
        .says("Of a rod or ball, over its cover or shield."),
    list<&Body::point>("point", "points").says("Along a rod's centre line in order, or a block's two corners."),
};
static_assert(std::size(body_table) == member_count<Body>());

template <auto X>
consteval FieldInfo way(std::string_view key, std::string_view label, std::string_view sentence) {
  return quantity<X>(key, label, kind::length)
      .decides_harm()
      .in("in")
      .from(0, 20)
      .spread(Source::measured, {.absolute = 0.1})
      .says(sentence);
}

template <auto X>
consteval FieldInfo turn(std::string_view key, std::string_view label, double most, double spread,
                         std::string_view sentence) {
  return quantity<X>(key, label, kind::angle)
      .decides_harm()
      .in("deg")
      .from(0, most)
      .spread(Source::measured, {.absolute = spread})
      .says(sentence);
}

constexpr FieldInfo travel_table[] = {
    way<&Travel::bump>("bump", "bump", "How far the hub rises from ride height to its stop, springs out."),
    way<&Travel::droop>("droop", "droop", "How far the hub drops from ride height when it hangs."),
    group<&Travel::hub>("hub", "hub").says("Whose height bump and droop are; asked for beside a pivot."),
    group<&Travel::pivot_front>("pivot_front", "pivot, front end")
        .says("A point on the line all that is carried swings about; without a pivot it goes straight up."),
    group<&Travel::pivot_rear>("pivot_rear", "pivot, rear end").says("Another point on that line."),
    group<&Travel::pin_low>("pin_low", "steering pin, low").says("Lower ball joint or end of the kingpin."),
    group<&Travel::pin_high>("pin_high", "steering pin, high").says("Upper ball joint or end of the kingpin."),
    turn<&Travel::lock_left>("lock_left", "left lock", 60, 1, "How far this wheel turns to the left, on turn plates."),
    turn<&Travel::lock_right>("lock_right", "right lock", 60, 1, "How far it turns to the right."),
};
static_assert(std::size(travel_table) == member_count<Travel>());

constexpr FieldInfo roll_table[] = {
    group<&Roll::front>("front", "axis, front").says("Where the line the engine rolls about passes its front mounts."),
    group<&Roll::rear>("rear", "axis, rear").says("Where it passes the gearbox mount."),
    turn<&Roll::left>("left", "to the left", 15, 0.3,
                      "How far the engine's top leans to the driver's left under full torque, in reverse for most."),
    turn<&Roll::right>("right", "to the right", 15, 0.3,
                       "How far it leans to the right, power-braked in a forward gear for most."),
};
static_assert(std::size(roll_table) == member_count<Roll>());

constexpr FieldInfo envelope_table[] = {
    text<&Envelope::first>("first", "first").says("A body by its name."),
    text<&Envelope::second>("second", "second").says("The body it must stay clear of."),
    choice<&Envelope::between>("between", "between", between_names)
        .decides_harm()
        .says("What is kept apart; asked for unless `wanted` is told."),
    quantity<&Envelope::wanted>("wanted", "gap wanted", kind::length)
        .in("in")
        .from(0, 20)
        .says("Least gap in any pose; without it as for a gap.")
        .after("common practice"),
};
static_assert(std::size(envelope_table) == member_count<Envelope>());

}  // namespace

std::span<const FieldInfo> Body::fields() { return body_table; }
std::span<const FieldInfo> Travel::fields() { return travel_table; }
std::span<const FieldInfo> Roll::fields() { return roll_table; }
std::span<const FieldInfo> Envelope::fields() { return envelope_table; }

}  // namespace sw::clearance
