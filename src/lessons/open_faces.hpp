#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "lessons/lesson.hpp"
#include "lessons/report.hpp"

namespace fw::lessons {

/// The words that name faces of a solid: "top", "bottom", "front", "back", "left", "right" for the one face that looks
/// straight that way as the solid stands on the bench (front is toward the viewer), "base" where there is one,
/// "bases" where there are two. A word that more than one face could mean is not among them.
[[nodiscard]] std::vector<std::string> face_words(const solids::Solid& solid);

/// The faces of a word or of a number from 1 ("3"); nothing for other names.
[[nodiscard]] std::optional<std::vector<geometry::FaceId>> faces_named(const solids::Solid& solid,
                                                                       std::string_view name);

/// The faces that do not count, in face order; none for most problems.
[[nodiscard]] std::vector<geometry::FaceId> open_faces(const Problem& problem);

/// Reads the key "open". Errors: told to the context.
[[nodiscard]] std::vector<OpenFaces> read_open(const JsonNode& node, const solids::Solid& solid,
                                               const Context& context);

/// Whether the measures that are asked for, and what is known, go together with the open faces of the problem; `node`
/// is all of it. Errors: told to the context.
void check_open(const JsonNode& node, const Problem& problem, const std::vector<std::string>& asked,
                const Context& context);

}  // namespace fw::lessons
