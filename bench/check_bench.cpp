// What one `check` costs: reading and resolving demo/sound.toml, one run of every duty, the whole proof with its doubt
// bands, and that of demo/starved.toml with its remedies; and the memory of it.
#include <sys/resource.h>

#include <cstdio>

#include "clock.hpp"
#include "proof/proof.hpp"

namespace sw::bench {
namespace {

constexpr int timed_runs = 7;

double most_memory_mb() {
  rusage u{};
  getrusage(RUSAGE_SELF, &u);
  return static_cast<double>(u.ru_maxrss) / 1024;
}

Opened read_car(const char* name) {
  return open(std::filesystem::path(STREETWRIGHT_SOURCE_DIR) / "demo" / name, from_disk());
}
Opened read_demo() { return read_car("sound.toml"); }

void run() {
  std::printf("| what | median of %d |\n|---|---|\n", timed_runs);
  std::printf("| reading the build | %.1f ms |\n", 1e3 * median_time(timed_runs, read_demo));
  const Opened opened = read_demo();
  std::printf("| resolving it to a car | %.2f ms |\n", 1e3 * median_time(timed_runs, [&] { Car car(opened.build); }));
  const auto set = duties_of(opened.build, from_disk());
  const Car car(opened.build);
  std::printf("| all %zu duties once, one core | %.1f ms |\n", set->courses.size(),
              1e3 * median_time(timed_runs, [&] { run_duties(car, *set); }));
  std::size_t rows = 0, width = car.graph().width;
  for (auto& t : run_duties(car, *set)) rows += t.rows();
  const double before = most_memory_mb();
  std::printf("| proof without doubt, one thread | %.0f ms |\n",
              1e3 * median_time(timed_runs, [&] { prove(opened.build, *set, {.doubt = false, .threads = 1}); }));
  std::printf("| proof with doubt, one thread | %.0f ms |\n",
              1e3 * median_time(timed_runs, [&] { prove(opened.build, *set, {.threads = 1}); }));
  // A car that fails costs more: shelf parts and settings are tried on it.
  const Opened starved = read_car("starved.toml");
  const auto its = duties_of(starved.build, from_disk());
  std::printf("| proof of the starved car with doubt and remedies, one thread | %.0f ms |\n",
              1e3 * median_time(1, [&] { prove(starved.build, *its, {.threads = 1}); }));
  std::printf("| a car | %zu kB and what it points to |\n", sizeof(Car) / 1024);
  std::printf("| traces of all duties | %zu rows of %zu ports, %.1f MB |\n", rows, width,
              static_cast<double>(rows * width * sizeof(double)) / 1e6);
  std::printf("| most memory held, before the proofs and after | %.0f MB, %.0f MB |\n", before, most_memory_mb());
}

}  // namespace
}  // namespace sw::bench

int main() { sw::bench::run(); }
