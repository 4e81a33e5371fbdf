#pragma once
// A time estimated by three points, and the chance that work is done by a deadline.
//
//   mean = (o + 4 m + p)/6,  deviation = (p - o)/6,  variance = deviation^2
//   chance = normal distribution function of (deadline - mean)/deviation
// o shortest, m likely, p longest, all in s. Means and variances of tasks one after the other add up. Range: o <= m <=
// p; the chance takes the sum of many tasks as normal, one path as the critical one, and is 0 or 1 where nothing
// deviates. Source: PERT; Hillier and Lieberman, Introduction to Operations Research (from memory).
#include "physics/law.hpp"

namespace sw::physics {

struct Estimate {
  double mean_s, deviation_s, variance_s2;
  double slope_likely;  ///< d mean / d likely
};
Estimate three_point(double shortest_s, double likely_s, double longest_s);

/// 0 to 1. slope: d chance / d deadline, 1/s; 0 where nothing deviates.
Slope finish_chance(double mean_s, double deviation_s, double deadline_s);

}  // namespace sw::physics
