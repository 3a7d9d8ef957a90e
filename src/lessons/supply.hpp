#pragma once

#include <optional>
#include <string>

#include "units/quantity.hpp"

namespace fw::lessons {

/// What the thing of a word problem does.
enum class Purpose { Cover, Fill, Edge };
/// "cover", "fill", "edge".
[[nodiscard]] const char* word_of(Purpose purpose);
/// 2 to cover, 3 to fill, 1 to edge.
[[nodiscard]] int dimension_of(Purpose purpose);

/// What becomes of a part of an item: packs are not split, and only what is whole counts as made or filled.
enum class Rounding { Up, Down, None };

/// What one item costs: "4.50", "$4.50", "3".
struct Price {
  std::string text;  ///< as written
  std::string sign;  ///< "$", "£", "€" or none
  exact::Number amount;
  friend bool operator==(const Price& a, const Price& b) { return a.text == b.text; }
};

/// What turns a problem into a word problem: {"cover": "surface_area", "each": "40 ft^2", "item": "roll"}.
struct Supply {
  Purpose purpose = Purpose::Cover;
  std::string measure;                         ///< "surface_area", "lateral_area", "volume", ...
  std::optional<units::WrittenQuantity> each;  ///< what one item covers or holds
  std::string item;                            ///< "roll"
  Rounding rounding = Rounding::Up;
  std::optional<Price> price = std::nullopt;  ///< of one item
  int coats = 1;                              ///< how often a cover is laid
  friend bool operator==(const Supply&, const Supply&) = default;
};

}  // namespace fw::lessons
