#pragma once

#include <string>
#include <vector>

#include "solids/solid.hpp"

namespace fw::lessons {

/// One sentence for each usual mistake that would give the right number of a measure of this solid, because of the
/// numbers chosen: a class that makes it is not found out. Hints for the teacher, never errors. Only the measures
/// asked for are looked at: "surface_area", "lateral_area", "volume".
/// Source: the mistakes are the documented ones of taking volume for surface area (Tan Sisman & Aksu, 2016) and of
/// counting the faces in sight (Ben-Chaim, Lappan & Houang, 1985); the rest is common practice, no source.
[[nodiscard]] std::vector<words::Message> masking_hints(const solids::Solid& solid,
                                                        const std::vector<std::string>& asked);

}  // namespace fw::lessons
