#pragma once

#include "solids/completion.hpp"

// From a body to a solid's faces, marks and net; private to the room.
namespace fw::solids {

struct Surface {
  Body body;
  IdVector<FaceId, Face> faces;
  std::size_t group_count = 0;
  IdVector<MarkId, Mark> marks;
  nets::HingeTree classic_net;
};

/// Requires: the body belongs to the statement with these values. `labelled`: the symbols that carry a label on the
/// figure. Nothing where the lengths lie so far apart that the faces do not close in doubles.
[[nodiscard]] std::optional<Surface> surface_of(const BodyStatement& body, const algebra::Bindings& used,
                                                const units::Unit& unit, const std::set<std::string>& labelled);

}  // namespace fw::solids
