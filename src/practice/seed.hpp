#pragma once

#include <cstddef>
#include <cstdint>
#include <utility>
#include <vector>

namespace fw::practice {

/// An explicit stream of random numbers: the same on every machine, and a value that can be kept and compared.
/// Source: SplitMix64 (Steele, Lea, Flood 2014), from memory.
struct Seed {
  std::uint64_t state = 0;
  friend bool operator==(const Seed&, const Seed&) = default;
  /// The next 64 random bits.
  std::uint64_t next();
  /// A number from 0 to bound - 1. Requires: bound > 0.
  std::size_t below(std::size_t bound);
};

template <class T>
void shuffle(std::vector<T>& all, Seed& seed) {
  for (std::size_t i = all.size(); i > 1; --i) {
    std::swap(all[i - 1], all[seed.below(i)]);
  }
}

}  // namespace fw::practice
