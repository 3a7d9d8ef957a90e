#pragma once

#include <functional>
#include <map>
#include <string>

#include "support/polyhedra.hpp"

namespace fw::test {

/// The solid of a row of tests/published/nets.tsv, by its name there.
using SolidMaker = std::function<Polyhedron()>;
[[nodiscard]] const std::map<std::string, SolidMaker>& published_solids();

}  // namespace fw::test
