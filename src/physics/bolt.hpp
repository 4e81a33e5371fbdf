#pragma once
// Bolts: thread, strength, preload and tightening torque.
//
// Stress area     inch    pi/4 (d - 0.9743/n)^2   n threads an inch (ASME B1.1), 0.9743/n = 0.9743 P
//                 metric  pi/4 (d - 0.9382 P)^2   (ISO 898-1)
// Torque          by a nut factor  T = K F d
//                 by friction      T = F d_2/2 (l + pi f d_2 sec a)/(pi d_2 - f l sec a) + F f_h d_h/2
// Thread shear    bolt    A = pi D_1 L (1/2 + (E - D_1) tan 30/P) = 0.75 pi D_1 L
//                 tapped  A = pi d L (1/2 + (d - E) tan 30/P)     = 0.875 pi d L
// D_1 = d - 1.0825 P and E = d - 0.6495 P as nominal: limits of size take some 10 % off. The bolt breaks before either
// strips where each area, at half the tensile strength, carries what the stress area does at all of it.
// d_2 = d - 0.6495 P the pitch diameter, l = P the lead of one start, a = 30 deg half the flank angle, d_h = 1.25 d the
// mean diameter of the head's seat. Symbols: m, N, N m. Range: preload up to the proof load; beyond it the bolt yields
// and the result is marked. Grades outside their sizes give nothing.
// Sources: strengths of SAE J429 as Shigley and Mischke, Mechanical Engineering Design, 5th ed., p. 341 tabulate them
// (a stored copy read); ISO 898-1, tables of proof and tensile stress, from memory; thread shear: FED-STD-H28/2B,
// appendix on the strength of threads (its forms read on stored pages); torque: Shigley, the power screw and its
// collar, from memory.
#include <optional>
#include <string_view>

#include "physics/law.hpp"

namespace sw::physics {

struct Thread {
  double diameter_m;  ///< nominal
  double pitch_m;
  bool inch;
};
/// `1/4-20`, `1 1/8-7`, `1-1/8-7`, `#10-32`, `M6x1`, each with or without its series or fit (`1/4-20 UNC`, `M6x1-6g`).
/// Empty where it is no thread.
std::optional<Thread> thread_of(std::string_view text);

/// m2. slope: d / d diameter.
Slope stress_area_m2(const Thread& thread);

enum class BoltGrade { sae_2, sae_5, sae_8, class_8_8, class_10_9, class_12_9 };
constexpr bool is_inch(BoltGrade grade) { return grade <= BoltGrade::sae_8; }
struct BoltStrength {
  double proof_pa, tensile_pa;
};
/// Least strengths; empty where the standard has none for the size, or the grade is not one of that thread's system.
std::optional<BoltStrength> bolt_strength(BoltGrade grade, const Thread& thread);

/// Of dry, plain steel threads (common practice).
inline constexpr double dry_nut_factor = 0.2;
/// Areas in shear over an engaged length L, m2.
struct ThreadShear {
  double bolt_m2, tapped_m2;
};
ThreadShear thread_shear_m2(const Thread& thread, double engaged_m);
/// Engaged length at which the bolt breaks before a thread strips, m; tensile strengths of bolt and of what is tapped.
double engagement_to_break_m(const Thread& thread, double bolt_pa, double tapped_pa);
/// Pull at which the weaker thread strips, N.
double strips_at_n(const Thread& thread, double engaged_m, double bolt_pa, double tapped_pa);

/// T = K F d. slope: d T / d preload.
Slope torque_by_factor_n_m(const Thread& thread, double nut_factor, double preload_n);
/// By the friction of thread and head. slope: d T / d preload. Not valid where the thread friction leaves no end to the
/// torque (above some 20).
Slope torque_by_friction_n_m(const Thread& thread, double thread_friction, double head_friction, double preload_n);

}  // namespace sw::physics
