#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "lessons/report.hpp"

// How a lesson says what to round an answer to, in the words of class.
namespace fw::lessons {

struct RoundTo {
  std::string_view key;    ///< in a lesson: "tenth"
  std::string_view place;  ///< in a sentence: "whole number"
  int places;              ///< decimals
};
inline constexpr std::array<RoundTo, 7> round_to = {{{"whole", "whole number", 0},
                                                     {"tenth", "tenth", 1},
                                                     {"hundredth", "hundredth", 2},
                                                     {"thousandth", "thousandth", 3},
                                                     {"ten-thousandth", "ten-thousandth", 4},
                                                     {"hundred-thousandth", "hundred-thousandth", 5},
                                                     {"millionth", "millionth", 6}}};

/// The row with so many decimals, or null.
[[nodiscard]] const RoundTo* round_to_places(int places);
/// What the key "round_to" of a problem asks for; nothing where it is missing, or wrong, which is told to the context.
[[nodiscard]] std::optional<int> read_round_to(const JsonNode& problem, const Context& context);
/// What a prompt says by itself: "Round to the nearest tenth."
[[nodiscard]] std::optional<int> round_to_in(std::string_view prompt);

}  // namespace fw::lessons
