#pragma once

#include <cstdint>
#include <vector>

#include "lessons/lesson.hpp"
#include "words/message.hpp"

namespace fw::tasks {

/// A lesson and others like it.
struct Versions {
  std::vector<lessons::Lesson> lessons;   ///< the first is the lesson itself
  std::vector<words::Message> unchanged;  ///< problems that are the same in all of them, and why
};

/// Parallel versions of a teacher's own problems: the same kind of solid, units, number of digits, number of different
/// faces, things asked; other numbers, and answers more than 5 % apart. A length that follows from others is worked out
/// from them. No usual mistake gives a right answer, and no answer of one version is a known mistake in another, so
/// that copying is not taken for one. The same seed gives the same versions on every machine. Source: what parallel
/// means, and the 5 %: common practice, no source.
[[nodiscard]] Versions versions_like(const lessons::Lesson& lesson, std::size_t count, std::uint64_t seed);

/// The same for one problem of the lesson: `versions` holds it as many times as there are to be versions.
void vary_problem(Versions& versions, const lessons::Lesson& lesson, std::size_t number, std::uint64_t seed);

}  // namespace fw::tasks
