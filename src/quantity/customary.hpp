#pragma once
// The trade's customary units in SI: for the unit table and for figures of the trade that stand in the code. Exact by
// definition but the inch of mercury, which is conventional (NIST SP 811 (2008), appendix B.8).

namespace sw {

inline constexpr double inch_m = 0.0254, foot_m = 12 * inch_m, mile_m = 5280 * foot_m;
inline constexpr double mph_m_s = mile_m / 3600;
/// Standard acceleration of gravity (3rd CGPM, 1901).
inline constexpr double standard_gravity_m_s2 = 9.80665;
inline constexpr double pound_kg = 0.45359237, lbf_n = pound_kg * standard_gravity_m_s2;
inline constexpr double psi_pa = lbf_n / (inch_m * inch_m), ksi_pa = 1000 * psi_pa, in_hg_pa = 3386.389;
/// Of 365 days (NIST SP 811 (2008), appendix B.8).
inline constexpr double year_s = 365 * 86400.0;
inline constexpr double zero_celsius_k = 273.15;

}  // namespace sw
