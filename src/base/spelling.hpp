#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace fw {

/// How many letters must be put in, left out, changed or swapped with a neighbor to turn one word
/// into the other. Source: the optimal string alignment distance. Cost: the product of the lengths.
[[nodiscard]] std::size_t spelling_distance(std::string_view a, std::string_view b);

/// The known word that `word` was most likely meant to be, if one is near enough (a third of its letters).
[[nodiscard]] std::optional<std::string> nearest_spelling(std::string_view word, const std::vector<std::string>& known);

}  // namespace fw
