#pragma once
// Measured against computed, in figures.
#include <cstddef>
#include <vector>

namespace sw::validation {

struct Agreement {
  double bias = 0;         ///< mean of computed less measured
  double rms = 0;          ///< root of the mean square of that
  double worst = 0;        ///< the largest of that, with its sign
  double correlation = 0;  ///< Pearson's
  std::size_t count = 0;
};
/// Pairs in which one is no number are left out.
Agreement agreement(const std::vector<double>& measured, const std::vector<double>& computed);

double mean(const std::vector<double>& values);
/// The value at a share of the sorted values, 0.5 the middle one.
double share_point(std::vector<double> values, double share);
/// y at x on straight lines between points; the ends hold.
double at(const std::vector<double>& x, const std::vector<double>& y, double where);
/// First x from `from` on at which y is `level` or more (`upward`) or `level` or less; NaN where it never is.
double first_at(const std::vector<double>& x, const std::vector<double>& y, double level, bool upward = true,
                double from = -1e300);
/// Least squares of y on the two columns a and b, y = p a + q b.
struct TwoTerms {
  double p, q;
};
TwoTerms least_squares(const std::vector<double>& a, const std::vector<double>& b, const std::vector<double>& y);

}  // namespace sw::validation
