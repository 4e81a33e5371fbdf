#include "field/golden.hpp"

namespace sw::sample {
namespace {

TEST(TypeScript, OfTheSampleCar) { expect_golden("car.ts", typescript(Car::fields(), "Car")); }

}  // namespace
}  // namespace sw::sample
