#pragma once

#include <cstddef>
#include <utility>
#include <vector>

namespace fw::test {

#if defined(__SANITIZE_ADDRESS__)
inline constexpr bool sanitized = true;
#elif defined(__has_feature)
#if __has_feature(address_sanitizer)
inline constexpr bool sanitized = true;
#else
inline constexpr bool sanitized = false;
#endif
#else
inline constexpr bool sanitized = false;
#endif

/// The sanitizers make every step some ten times as long, so they go through `fewer` cases; the other builds through
/// all of them.
[[nodiscard]] constexpr std::size_t cases(std::size_t all, std::size_t fewer) { return sanitized ? fewer : all; }

/// All of them, or each `nth` where the sanitizers run.
template <class T>
[[nodiscard]] std::vector<T> some_of(std::vector<T> all, std::size_t nth) {
  std::vector<T> some;
  for (std::size_t i = 0; i < all.size(); i += cases(1, nth)) {
    some.push_back(std::move(all[i]));
  }
  return some;
}

}  // namespace fw::test
