// The sum of tanks: what they hold at a depth.
#include "physics/tank_volume.hpp"
#include "sum/families.hpp"
#include "sum/figures.hpp"

namespace sw {
namespace {

using physics::TankHeads;

enum class Shape { box, cylinder, ellipse, profile };
constexpr std::string_view shapes[] = {"box", "cylinder", "ellipse", "profile"};
constexpr std::string_view head_shapes[] = {"flat", "ellipsoidal", "spherical", "conical"};
struct TankIn {
  std::optional<Shape> shape;
  std::optional<Length> depth, length, width, height, diameter;
  std::optional<TankHeads> heads;
  std::optional<Length> head_depth;
  std::optional<Curve> profile;
};
struct TankOut {
  std::optional<Volume> volume;
  std::optional<double> fraction;
};
constexpr Argument tank_in[] = {
    choice<&TankIn::shape>("shape", "of the tank", shapes),
    quantity<&TankIn::depth>("depth", "of the liquid", kind::length).in("in").from(0, 1e4),
    may(positive<&TankIn::length>("length", "of a box, or of the straight part of a lying tank", kind::length, "in",
                                  1e4)),
    may(positive<&TankIn::width>("width", "of a box or an ellipse", kind::length, "in", 1e4)),
    may(positive<&TankIn::height>("height", "of a box or an ellipse", kind::length, "in", 1e4)),
    may(positive<&TankIn::diameter>("diameter", "of a lying cylinder", kind::length, "in", 1e4)),
    may(choice<&TankIn::heads>("heads", "both ends of a lying cylinder; flat where left out", head_shapes)),
    may(positive<&TankIn::head_depth>("head_depth", "of each head, along the axis", kind::length, "in", 1e4)),
    may(curve<&TankIn::profile>("profile", "height and surface area there, rising from the bottom at 0", kind::length,
                                kind::area)),
};
constexpr Argument tank_out[] = {
    result<&TankOut::volume>("volume", "of the liquid", kind::volume, "gal"),
    number<&TankOut::fraction>("fraction", "of the whole tank"),
};

/// What a shape is made of; all else is told apart from it.
struct Need {
  std::string_view key;
  bool given;
  bool wanted[4];  ///< by shape
};

void tank_check(const TankIn& in, Remarks& say) {
  if (!in.shape) return;
  const auto shape = static_cast<std::size_t>(*in.shape);
  const std::string name(shapes[shape]);
  const Need needs[] = {{"length", in.length.has_value(), {true, true, true, false}},
                        {"width", in.width.has_value(), {true, false, true, false}},
                        {"height", in.height.has_value(), {true, false, true, false}},
                        {"diameter", in.diameter.has_value(), {false, true, false, false}},
                        {"profile", in.profile.has_value(), {false, false, false, true}}};
  for (auto& n : needs) {
    if (n.wanted[shape] && !n.given) say.need(n.key, "shape=" + name + " is made of it");
    if (!n.wanted[shape] && n.given) say.fault(n.key, "does not belong to shape=" + name, "leave it out");
  }
  const TankHeads heads = in.heads.value_or(TankHeads::flat);
  if (in.heads && *in.shape != Shape::cylinder) say.fault("heads", "belong to shape=cylinder", "leave them out");
  if (heads != TankHeads::flat && !in.head_depth) say.need("head_depth", "heads that bulge have a depth");
  if (heads == TankHeads::flat && in.head_depth)
    say.fault("head_depth", "flat heads have none", "heads=ellipsoidal, spherical or conical");
  if (heads == TankHeads::spherical && in.head_depth && in.diameter && in.head_depth->si > in.diameter->si / 2)
    say.fault("head_depth", "is more than half a ball", "at most half the diameter");
  if (in.profile && in.profile->x.front() != 0)
    say.fault("profile", "does not begin at the bottom", "the first height is 0");
  if (in.profile)
    for (double area : in.profile->y)
      if (area < 0) return say.fault("profile", "an area lies below 0");
}

physics::Slope volume_at(const TankIn& in, double depth) {
  switch (*in.shape) {
    case Shape::box:
      return physics::box_volume_m3(in.length->si, in.width->si, in.height->si, depth);
    case Shape::cylinder:
      return physics::lying_volume_m3(
          {in.diameter->si, in.length->si, in.heads.value_or(TankHeads::flat), in.head_depth ? in.head_depth->si : 0},
          depth);
    case Shape::ellipse:
      return physics::ellipse_volume_m3(in.width->si, in.height->si, in.length->si, depth);
    case Shape::profile:
      return physics::profile_volume_m3(in.profile->x, in.profile->y, depth);
  }
  return {};
}

double height_of(const TankIn& in) {
  return in.diameter ? in.diameter->si : in.height ? in.height->si : in.profile->x.back();
}

void tank_volume(const TankIn& in, TankOut& out, Remarks& say) {
  const auto held = volume_at(in, in.depth->si);
  const double whole = volume_at(in, height_of(in)).value;
  if (*in.shape == Shape::cylinder && !in.heads) say.note("heads taken as flat");
  if (!held.valid) say.outside("the depth lies above the top: the tank is full");
  out.volume = Volume{held.value};
  if (whole > 0) out.fraction = held.value / whole;
}

constexpr Sum sums[] = {
    entry<tank_volume, tank_check>(
        {.name = "tank-volume",
         .title = "What a tank holds at a depth",
         .inputs = tank_in,
         .outputs = tank_out,
         .range = "level tank, inside dimensions, baffles and pick-up left out",
         .source = "geometry; lying tanks with heads as Jones, Calculating Tank Volume, has them",
         .caution = "fuel vapour burns and kills in closed rooms: measure a tank empty, washed and aired, away from "
                    "flame and spark, as its maker and the law of the place instruct"}),
};

}  // namespace

std::span<const Sum> tank_sums() { return sums; }

}  // namespace sw
