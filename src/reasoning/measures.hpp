#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "solids/solid.hpp"
#include "words/message.hpp"

namespace fw::reasoning {

/// A number of a described solid that can be changed: a length, or a count such as a polygon's sides.
struct EditableMeasure {
  std::string field;   ///< "slant_height", "base.side", "base.sides.2": names it in SetMeasure
  std::string title;   ///< "slant height"
  std::string letter;  ///< "ℓ"; empty for a count
  std::string text;    ///< the number as written, without its unit; "?" for the unknown
  std::string unit;    ///< "cm"; empty for a count
  bool is_unknown = false;
  double value = 0;  ///< for the slider; the worked-out value of the unknown
  double least = 0;  ///< of the slider
  double most = 0;
  double step = 1;
  int places = 0;  ///< decimals that the slider writes
};

/// The numbers of the description, in the order of the solid's measures, counts last.
/// `prepared` is the lesson's own solid: sliders run round its numbers, so that they stand still while one moves.
[[nodiscard]] std::vector<EditableMeasure> editable_measures(const solids::Solid& solid, const solids::Solid& prepared);

/// The description with one number changed; a text without a unit keeps the unit that stands there.
/// Errors: a sentence when the field is unknown or the text is no number.
[[nodiscard]] Result<solids::Description, words::Message> with_measure(const solids::Description& description,
                                                                       const std::string& field,
                                                                       const std::string& text);

/// The units that every length of the description can be written in exactly.
[[nodiscard]] std::vector<units::Unit> units_to_choose(const solids::Description& description);

}  // namespace fw::reasoning
