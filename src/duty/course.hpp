#pragma once
// A duty made ready to run: speed, grade and weather at any instant.
#include <string>
#include <vector>

#include "model/duty.hpp"
#include "physics/atmosphere.hpp"

namespace sw {

struct Course {
  const Duty* duty = nullptr;
  std::string key;
  double duration = 0;              ///< s
  std::vector<double> time, speed;  ///< trace, s and m/s; empty where one speed is held
  double held_speed = 0;
  double pressure = 101325, density = physics::reference_air_density_kg_m3;
  unsigned conditions = 0;  ///< bits by Condition
  bool running = true, cranking = false, pull = false, air_conditioning = false;

  struct Motion {
    double speed, acceleration;
  };
  /// At a corner: that of the stretch that begins there. `hint` is where the caller's last look-up ended, any number at
  /// first: it belongs to one run, so that many may share the course.
  Motion motion(double t, std::size_t& hint) const;
  /// Longest step that does not run past the next corner of the trace, s.
  double step_limit(double t) const;
  /// Whether a corner of the trace lies at `t`, to rounding.
  bool corner_at(double t) const;

  static constexpr double corner_width_s = 1e-9;  ///< nearer than this is at the corner

 private:
  std::size_t first_corner_after(double t) const;
};

/// What no single field of a duty can see.
struct CourseFault {
  std::string_view key;  ///< of the duty's field it is told at
  std::string problem, hint;
  std::vector<std::string_view> beside = {};  ///< fields that would have answered it, had they been given
};

/// Reads the duty's fields; `trace` is the text of its trace file where it names one.
Course make_course(const std::string& key, const Duty& duty, const std::string& trace,
                   std::vector<CourseFault>& faults);

}  // namespace sw
