#pragma once

#include "paper/font.hpp"

namespace fw::state {

/// The type that pages are set in, as it was put into the program.
[[nodiscard]] const paper::Fonts& paper_type();

}  // namespace fw::state
