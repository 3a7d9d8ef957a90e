#pragma once

#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "solids/solid.hpp"
#include "words/message.hpp"

namespace fw::reasoning {

/// The quantities of the whole that a figure is given with, as they are written.
[[nodiscard]] solids::Known known_of(const solids::Solid& solid);

/// A measure that a problem can be made to ask for.
struct Askable {
  std::string name;    ///< "slant_height", "base.side", "surface_area"
  std::string title;   ///< "slant height"
  std::string letter;  ///< "ℓ"
  bool is_given = false;
};
/// Every measure of the solid that can be asked for: S, L, B, V and P where it has them, and its lengths.
[[nodiscard]] std::vector<Askable> askable_measures(const solids::Solid& solid);

/// The same figure with `measure` as its unknown: what the lesson gives for it is taken away, and where the rest does
/// not fix it any more, `instead` is given with its value ("surface_area"). Figures that ask for it already come back
/// as they are.
/// Errors: a sentence that says what is missing ("the height or the slant height is needed") and names what could be
/// given instead.
[[nodiscard]] Result<solids::Solid, words::Message> asked_for(const solids::Solid& solid, const std::string& measure,
                                                              const std::optional<std::string>& instead = std::nullopt);

/// The measures that could be given in place of `measure`, the usual ones first: S, V, L, B, then lengths. Empty when
/// nothing is needed.
[[nodiscard]] std::vector<Askable> could_be_given(const solids::Solid& solid, const std::string& measure);

}  // namespace fw::reasoning
