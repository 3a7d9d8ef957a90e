#pragma once

#include <string>

#include "lessons/lesson.hpp"
#include "support/describe_solid.hpp"

namespace fw::test {

/// A problem that asks one thing of a solid in one line of text.
inline lessons::Problem problem_of(const std::string& text, const std::string& find) {
  const Described all = described(text);
  return {"problem", "", all.description, all.known, {find}, std::nullopt, solid(text)};
}

}  // namespace fw::test
