#include "physics/bay.hpp"

namespace sw::physics {
namespace {

constexpr double still_w_k = 25, wind_w_k_m_s = 8;  ///< ventilation with the panels', standing and by road speed: guesses
constexpr double through_share = 0.6;               ///< of the core's air passes through the bay (common practice)
constexpr double bonnet_m2 = 1.2;                   ///< common practice

}  // namespace

Slope sol_air(double outside_k, double absorptance_over_film_m2k_w, double sun_w_m2) {
  return {outside_k + absorptance_over_film_m2k_w * sun_w_m2, absorptance_over_film_m2k_w};
}

BayBalance bay_balance(const BayHeat& in, double air_k) {
  const double out = still_w_k + wind_w_k_m_s * in.road_m_s, through = through_share * in.core_air_w_k;
  const double warmed = sol_air(in.outside_k, dark_panel_m2k_w, in.sun_w_m2).value - in.outside_k;
  return {out * (in.outside_k - air_k) + through * (in.core_out_k - air_k) + in.engine_w +
              thin_panel_w_m2k * bonnet_m2 * warmed,
          -(out + through)};
}

}  // namespace sw::physics
