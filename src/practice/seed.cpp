#include "practice/seed.hpp"

#include "base/ensure.hpp"

namespace fw::practice {

std::uint64_t Seed::next() {
  state += 0x9E3779B97F4A7C15ULL;
  std::uint64_t z = state;
  z = (z ^ (z >> 30U)) * 0xBF58476D1CE4E5B9ULL;
  z = (z ^ (z >> 27U)) * 0x94D049BB133111EBULL;
  return z ^ (z >> 31U);
}

std::size_t Seed::below(std::size_t bound) {
  ensure(bound > 0 && bound <= 0xFFFFFFFFU, "a random number was asked for below zero, or beyond 32 bits");
  // The bias of the remainder is below 2^-32.
  return static_cast<std::uint32_t>(next() % bound);
}

}  // namespace fw::practice
