#pragma once

#include <cstdint>
#include <utility>
#include <vector>

// Chance that comes out the same on every machine, from a seed that the failing test prints.
namespace fw::test {

class Dice {
 public:
  explicit Dice(std::uint64_t seed) : state_(seed) {}
  /// Source: SplitMix64 (Steele, Lea, Flood, OOPSLA 2014; from memory).
  [[nodiscard]] std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15U;
    std::uint64_t mixed = state_;
    mixed = (mixed ^ (mixed >> 30U)) * 0xBF58476D1CE4E5B9U;
    mixed = (mixed ^ (mixed >> 27U)) * 0x94D049BB133111EBU;
    return mixed ^ (mixed >> 31U);
  }
  [[nodiscard]] std::size_t below(std::size_t end) { return next() % end; }
  [[nodiscard]] double between(double low, double high) {
    return low + (high - low) * (static_cast<double>(next() >> 11U) / 9007199254740992.0);
  }
  template <class T>
  void shuffle(std::vector<T>& items) {
    for (std::size_t left = items.size(); left > 1; --left) {
      std::swap(items[left - 1], items[below(left)]);
    }
  }

 private:
  std::uint64_t state_;
};

}  // namespace fw::test
