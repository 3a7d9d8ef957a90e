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

/// Requires: the body belongs to the statement with these values; a broken body is a broken invariant.
/// `is_labelled` says which symbols carry a label on the figure.
[[nodiscard]] Surface surface_of(const BodyStatement& body, const algebra::Bindings& used, const units::Unit& unit,
                                 const std::set<std::string>& labelled);

}  // namespace fw::solids
