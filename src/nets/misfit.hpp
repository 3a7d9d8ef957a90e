#pragma once

#include "nets/fold_test.hpp"

// What is wrong with a walk round the solid; private to the room.
namespace fw::nets {

/// Nothing where the cut-out is a net. `test` needs no finding yet.
[[nodiscard]] std::optional<Finding> finding_of(const Polyhedron& polyhedron, const Cutout& cutout,
                                                const FoldTest& test);

}  // namespace fw::nets
