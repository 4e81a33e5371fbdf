// Sums of plane linkages.
#include "physics/linkage.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

constexpr std::string_view linkages_bind =
    "a throttle, shift or brake linkage that goes over centre, binds or sticks takes a car out of the driver's hands: "
    "move it by hand through its whole travel before the engine runs, and as the car maker instructs";

struct BarsIn {
  std::optional<Length> crank, coupler, rocker, ground;
  std::optional<Angle> crank_angle;
};
struct BarsOut {
  std::optional<Angle> rocker_open, rocker_crossed, coupler_open, coupler_crossed;
  std::optional<Length> grashof;
};
constexpr Argument bars_in[] = {
    positive<&BarsIn::crank>("crank", "driving link, pivot to pin", kind::length, "mm", 1e5),
    positive<&BarsIn::coupler>("coupler", "link between the pins", kind::length, "mm", 1e5),
    positive<&BarsIn::rocker>("rocker", "driven link, pivot to pin", kind::length, "mm", 1e5),
    positive<&BarsIn::ground>("ground", "between the pivots", kind::length, "mm", 1e5),
    may(quantity<&BarsIn::crank_angle>("crank_angle", "from the ground line, anticlockwise", kind::angle)
            .in("deg")
            .from(-36000, 36000)),
};
constexpr Argument bars_out[] = {
    result<&BarsOut::rocker_open>("rocker_open", "far pin left of the line from crank pin to rocker pivot", kind::angle,
                                  "deg"),
    result<&BarsOut::rocker_crossed>("rocker_crossed", "far pin right of it", kind::angle, "deg"),
    result<&BarsOut::coupler_open>("coupler_open", "from the crank pin, open", kind::angle, "deg"),
    result<&BarsOut::coupler_crossed>("coupler_crossed", "from the crank pin, crossed", kind::angle, "deg"),
    result<&BarsOut::grashof>("grashof", "shortest and longest less the other two; above 0 no link turns all round",
                              kind::length, "mm"),
};

physics::FourBar bars_of(const BarsIn& in) { return {in.crank->si, in.coupler->si, in.rocker->si, in.ground->si}; }

void bars_check(const BarsIn& in, Remarks& say) {
  if (!in.crank || !in.coupler || !in.rocker || !in.ground) return;
  if (in.crank_angle && !physics::four_bar(bars_of(in), in.crank_angle->si))
    say.fault("crank_angle", "coupler and rocker do not meet there",
              "another crank angle, or links that reach from the crank's pin to the rocker's pivot");
}

void four_bar(const BarsIn& in, BarsOut& out, Remarks&) {
  out.grashof = Length{physics::grashof_m(bars_of(in))};
  if (!in.crank_angle) return;
  const auto at = *physics::four_bar(bars_of(in), in.crank_angle->si);
  out.rocker_open = Angle{at.open.rocker};
  out.rocker_crossed = Angle{at.crossed.rocker};
  out.coupler_open = Angle{at.open.coupler};
  out.coupler_crossed = Angle{at.crossed.coupler};
}

struct SlideIn {
  std::optional<Length> crank, rod;
  std::optional<Angle> crank_angle;
  std::optional<Length> offset;
};
struct SlideOut {
  std::optional<Length> position;
};
constexpr Argument slide_in[] = {
    positive<&SlideIn::crank>("crank", "pivot to pin", kind::length, "mm", 1e5),
    positive<&SlideIn::rod>("rod", "pin to slide", kind::length, "mm", 1e5),
    quantity<&SlideIn::crank_angle>("crank_angle", "from the way the slide goes, anticlockwise", kind::angle)
        .in("deg")
        .from(-36000, 36000),
    quantity<&SlideIn::offset>("offset", "of the slide from the pivot, towards crank angle 90 deg", kind::length)
        .in("mm")
        .from(-1e5, 1e5)
        .or_else(0, Source::chosen),
};
constexpr Argument slide_out[] = {
    result<&SlideOut::position>("position", "along the slide from the pivot", kind::length, "mm")};

physics::SliderCrank slide_of(const SlideIn& in) {
  return {in.crank->si, in.rod->si, in.offset.value_or(Length{0}).si};
}

void slide_check(const SlideIn& in, Remarks& say) {
  if (!in.crank || !in.rod || !in.crank_angle) return;
  if (!physics::slider_crank(slide_of(in), in.crank_angle->si))
    say.fault("rod", "does not reach the slide at that crank angle", "a longer rod, or another crank angle or offset");
}

void slider_crank(const SlideIn& in, SlideOut& out, Remarks&) {
  out.position = Length{physics::slider_crank(slide_of(in), in.crank_angle->si)->value};
}

constexpr Sum sums[] = {
    entry<four_bar, bars_check>({.name = "four-bar",
                                 .title = "Four pinned bars",
                                 .inputs = bars_in,
                                 .outputs = bars_out,
                                 .range = "stiff links in one plane, pins without play",
                                 .source = "Norton, Design of Machinery, chapters 2 and 4 (from memory)",
                                 .caution = linkages_bind}),
    entry<slider_crank, slide_check>({.name = "slider-crank",
                                      .title = "Crank, rod and slide",
                                      .inputs = slide_in,
                                      .outputs = slide_out,
                                      .range = "stiff links in one plane, pins without play",
                                      .source = "geometry; Norton, Design of Machinery, chapter 4 (from memory)",
                                      .caution = linkages_bind}),
};

}  // namespace

std::span<const Sum> linkage_sums() { return sums; }

}  // namespace sw
