#pragma once

#include <string>
#include <vector>

#include "support/describe_solid.hpp"
#include "tasks/catalog.hpp"

namespace fw::test {

/// What the entries of a list "find" ask for.
inline std::vector<lessons::Task> tasks_of(const std::vector<std::string>& find) {
  std::vector<lessons::Task> all;
  for (const std::string& name : find) {
    all.push_back(tasks::named(name));
  }
  return all;
}

/// A problem that asks one thing of a solid in one line of text.
inline lessons::Problem problem_of(const std::string& text, const std::string& find) {
  const Described all = described(text);
  return {"problem", "", all.description, all.known, solid(text), {}, tasks_of({find})};
}

}  // namespace fw::test
