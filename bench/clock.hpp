#pragma once
// Time this thread has computed, and medians: a shared machine disturbs wall clocks, and single runs.
#include <time.h>

#include <algorithm>
#include <vector>

namespace sw::bench {

inline double computed_s() {
  timespec t{};
  clock_gettime(CLOCK_THREAD_CPUTIME_ID, &t);
  return static_cast<double>(t.tv_sec) + 1e-9 * static_cast<double>(t.tv_nsec);
}

inline double median(std::vector<double> v) {
  std::nth_element(v.begin(), v.begin() + static_cast<long>(v.size() / 2), v.end());
  return v[v.size() / 2];
}

/// Median time of `runs` calls, s; a first call warms up and is not counted.
template <class Work>
double median_time(int runs, Work work) {
  work();
  std::vector<double> all;
  for (int i = 0; i < runs; ++i) {
    const double from = computed_s();
    work();
    all.push_back(computed_s() - from);
  }
  return median(all);
}

}  // namespace sw::bench
