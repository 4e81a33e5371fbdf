#include "compare.hpp"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace sw::validation {
namespace {

double product_mean(const std::vector<double>& a, const std::vector<double>& b) {
  return std::inner_product(a.begin(), a.end(), b.begin(), 0.0) / static_cast<double>(a.size());
}

}  // namespace

Agreement agreement(const std::vector<double>& measured, const std::vector<double>& computed) {
  std::vector<double> m, c;
  Agreement out;
  for (std::size_t i = 0; i < measured.size(); ++i) {
    const double off = computed[i] - measured[i];
    if (std::isnan(off)) continue;
    m.push_back(measured[i]);
    c.push_back(computed[i]);
    out.bias += off;
    out.rms += off * off;
    if (std::abs(off) > std::abs(out.worst)) out.worst = off;
  }
  out.count = m.size();
  if (m.empty()) return out;
  const double n = static_cast<double>(m.size());
  out.bias /= n;
  out.rms = std::sqrt(out.rms / n);
  const double mm = mean(m), mc = mean(c);
  const double spread = std::sqrt((product_mean(m, m) - mm * mm) * (product_mean(c, c) - mc * mc));
  out.correlation = spread > 0 ? (product_mean(m, c) - mm * mc) / spread : 0;
  return out;
}

double mean(const std::vector<double>& values) {
  return std::accumulate(values.begin(), values.end(), 0.0) / static_cast<double>(values.size());
}

double share_point(std::vector<double> values, double share) {
  std::sort(values.begin(), values.end());
  return values.at(static_cast<std::size_t>(share * static_cast<double>(values.size() - 1) + 0.5));
}

double at(const std::vector<double>& x, const std::vector<double>& y, double where) {
  const auto next = std::upper_bound(x.begin(), x.end(), where);
  if (next == x.begin()) return y.front();
  if (next == x.end()) return y.back();
  const auto i = static_cast<std::size_t>(next - x.begin());
  return y[i - 1] + (y[i] - y[i - 1]) * (where - x[i - 1]) / (x[i] - x[i - 1]);
}

double first_at(const std::vector<double>& x, const std::vector<double>& y, double level, bool upward, double from) {
  for (std::size_t i = 0; i < x.size(); ++i) {
    if (x[i] < from || (upward ? y[i] < level : y[i] > level)) continue;
    if (i == 0 || x[i - 1] < from || y[i] == y[i - 1]) return x[i];
    const double share = std::clamp((level - y[i - 1]) / (y[i] - y[i - 1]), 0.0, 1.0);
    return x[i - 1] + share * (x[i] - x[i - 1]);
  }
  return std::numeric_limits<double>::quiet_NaN();
}

TwoTerms least_squares(const std::vector<double>& a, const std::vector<double>& b, const std::vector<double>& y) {
  const double aa = product_mean(a, a), ab = product_mean(a, b), bb = product_mean(b, b);
  const double ay = product_mean(a, y), by = product_mean(b, y), det = aa * bb - ab * ab;
  return {(ay * bb - by * ab) / det, (by * aa - ay * ab) / det};
}

}  // namespace sw::validation
