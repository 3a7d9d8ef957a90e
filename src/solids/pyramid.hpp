#pragma once

#include "solids/kind_parts.hpp"

// The two halves of the kind pyramid: what it states (pyramid.cpp), how it stands in space (pyramid_body.cpp).
namespace fw::solids {

/// The symbols of a pyramid: one slant height a side, several sides sharing one where their faces are alike.
struct PyramidPlan {
  ShapeStatement base;
  algebra::Symbol height{"height", "h", 1};
  std::vector<algebra::Symbol> slants;  ///< of side i
  std::vector<std::string> side_titles;
  std::vector<std::string> slant_titles;
  std::optional<algebra::Symbol> lateral_edge;  ///< where all are equal
  bool apex_over = false;                       ///< the lesson says where the apex stands
  algebra::Symbol over_along{"apex_over.1", "x", 1};
  algebra::Symbol over_across{"apex_over.2", "y", 1};
};

/// The point of the base's plane under the apex.
[[nodiscard]] ExactPoint foot_of_apex(const PyramidPlan& plan, const ShapeBody& base,
                                      const algebra::Bindings& bindings);
[[nodiscard]] BodyStatement pyramid_body(const PyramidPlan& plan, const algebra::Bindings& bindings);

}  // namespace fw::solids
