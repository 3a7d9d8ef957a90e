#pragma once

#include <string>
#include <vector>

#include "reasoning/step.hpp"

// Sentences of a worked solution, in a student's words.
namespace fw::reasoning {

/// A: the area of the faces of an open solid that count.
[[nodiscard]] const algebra::Symbol& counted_area();
/// "surface area" of "surface_area", "slant height" of "slant_height", "base edge" of "base.side".
[[nodiscard]] std::string title_of(const solids::Solid& solid, const algebra::Symbol& measure);
/// The measure that a lesson's name stands for; nothing where the solid has none of this name.
[[nodiscard]] std::optional<algebra::Symbol> measure_named(const solids::Solid& solid, const std::string& name);
/// "Asked is the surface area S. It covers the solid, so it is counted in square centimeters (cm²)."
[[nodiscard]] Message asked_sentence(const solids::Solid& solid, const algebra::Symbol& measure,
                                     const units::Unit& unit);
/// "square centimeters (cm²)".
[[nodiscard]] Message unit_in_words(const units::Unit& unit);
/// "1", "2", "5–8": to be joined.
[[nodiscard]] std::vector<std::string> face_numbers(const std::vector<solids::FaceId>& faces);
/// "The solid is a square pyramid. It has 5 faces."
[[nodiscard]] Message name_sentence(const solids::Solid& solid);

}  // namespace fw::reasoning
