#pragma once
// Dimensions as exponents of the base quantities, usable at compile time (as a template argument) and at run time
// (by the unit parser). Angle is carried as a seventh base so that a shaft speed in rpm is never read as a frequency.
#include <compare>
#include <cstdint>

namespace sw {

struct Dimension {
  std::int8_t length = 0, mass = 0, time = 0, current = 0, temperature = 0, angle = 0;
  constexpr auto operator<=>(const Dimension&) const = default;
};

constexpr Dimension operator*(Dimension a, Dimension b) {
  auto add = [](std::int8_t x, std::int8_t y) { return static_cast<std::int8_t>(x + y); };
  return {add(a.length, b.length),           add(a.mass, b.mass),  add(a.time, b.time), add(a.current, b.current),
          add(a.temperature, b.temperature), add(a.angle, b.angle)};
}

/// `d` raised to the whole power `n` (negative for a divisor).
constexpr Dimension power(Dimension d, int n) {
  auto times = [n](std::int8_t x) { return static_cast<std::int8_t>(x * n); };
  return {times(d.length), times(d.mass), times(d.time), times(d.current), times(d.temperature), times(d.angle)};
}

constexpr Dimension operator/(Dimension a, Dimension b) { return a * power(b, -1); }

/// What a figure of this dimension is counted from. Two figures of one dimension and different references are
/// different kinds of quantity: a gauge pressure never silently becomes an absolute one.
enum class Reference : std::uint8_t {
  none,      ///< a plain amount, a difference or a step
  absolute,  ///< from zero: absolute temperature, absolute pressure
  gauge,     ///< above the surrounding air
  vacuum,    ///< below the surrounding air
};

}  // namespace sw
