#pragma once

#include <optional>
#include <vector>

#include "lessons/net_sheet.hpp"
#include "nets/cutout.hpp"
#include "practice/seed.hpp"

// Cut-outs that are nets of a solid and cut-outs that are not; private to the room.
namespace fw::tasks {

using practice::Seed;

/// A net of the solid drawn at random, standing on any of its faces.
[[nodiscard]] nets::Cutout drawn_net(const solids::Solid& solid, Seed& seed);

/// What makes a cut-out no net.
enum class Trap {
  Moved,      ///< one piece hung elsewhere, so that two meet on one face
  Stretched,  ///< one piece too long or too wide
  Count,      ///< a piece too few or too many
  Short,      ///< triangles as high as the apex, or shorter: only where all of them stand on the base
};
/// Nothing where the solid has none of that sort, or none was found in a few draws.
/// `hard`: stretched by little; where all faces are alike, one that holds no block of four and no five in a row.
[[nodiscard]] std::optional<nets::Cutout> drawn_trap(const solids::Solid& solid, Trap trap, bool hard, Seed& seed);

/// As a lesson writes it, lying turned by chance, from level 2 on by odd angles and flipped; pieces that are no copy of
/// a face of this solid by corners with four decimals at most.
[[nodiscard]] std::optional<lessons::NetSheet> drawn_sheet(const solids::Solid& solid, const nets::Cutout& cutout,
                                                           int level, Seed& seed);
/// The pieces without the word that they are copies of faces: for a net of another solid.
[[nodiscard]] nets::Cutout unmarked(const nets::Cutout& cutout);

}  // namespace fw::tasks
