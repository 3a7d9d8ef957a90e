#pragma once

#include <gtest/gtest.h>

#include <cmath>

#include "geometry/congruence.hpp"
#include "geometry/measure.hpp"
#include "nets/folding.hpp"
#include "nets/layout.hpp"
#include "solids/solid.hpp"

namespace fw::test {

using geometry::FaceId;
using solids::Solid;

inline double relative_difference(double a, double b) { return std::abs(a - b) / std::max(std::abs(a), std::abs(b)); }

/// "circumference", or "top_circumference" of a frustum.
inline bool is_round(const algebra::Symbol& symbol) { return symbol.name.find("circumference") != std::string::npos; }

/// What must be true of every solid whose labels are exact.
inline void expect_sound(const Solid& solid) {
  const auto& polyhedron = solid.body().facets();
  EXPECT_TRUE(polyhedron.defects().empty());
  EXPECT_EQ(polyhedron.vertices().size() + polyhedron.faces().size(), polyhedron.edges().size() + 2);
  // The coordinates agree with the exact values; a disk of n corners with a rim as long as the true one is short of it
  // by 1 - (pi/n) / tan(pi/n), and what is as high by twice that at most.
  const double turn = 3.14159265358979323846 / 73;
  const double slack = solid.body().is_flat_faced() ? 1e-9 : 2.01 * (1 - turn / std::tan(turn));
  EXPECT_LT(relative_difference(geometry::surface_area(polyhedron), solid.surface_area().amount().to_double()), slack);
  EXPECT_LT(relative_difference(geometry::volume(polyhedron), solid.volume().amount().to_double()), slack);
  ASSERT_EQ(solid.faces().size(), solid.body().face_count());
  const auto groups = solids::congruence_groups(solid.body());
  for (const solids::Face& face : solid.faces()) {
    double area = 0;
    for (std::size_t i = 0; i < solid.body().facet_count(face.id); ++i) {
      area += geometry::area(polyhedron, FaceId::at(solid.body().first_facet(face.id).index() + i));
    }
    EXPECT_LT(relative_difference(area, face.area.amount().to_double()), slack);
    EXPECT_EQ(face.group.index(), groups[face.id.index()]);
    EXPECT_LT(face.group.index(), solid.group_count());
    for (const solids::FaceLength& length : face.lengths) {
      const double share = solid.body().bends(face.id) && is_round(length.symbol) && face.shape != "rectangle"
                               ? 73  // one strip of the arc
                               : 1;
      EXPECT_LT(relative_difference(share * glm::length(length.to - length.from), length.value.to_double()), slack)
          << solid.name() << ", " << length.title;
    }
  }
  // Relations agree with the faces.
  const auto& s = solid.values().at(solids::symbols::surface_area().name);
  EXPECT_LT(relative_difference(s.to_double(), solid.surface_area().amount().to_double()), 1e-12);
  for (const solids::Mark& mark : solid.marks()) {
    const double value = solid.values().at(mark.symbol.name).to_double();
    const double share = is_round(mark.symbol) ? 73 : 1;  // at one strip of the rim
    EXPECT_LT(relative_difference(share * glm::length(mark.to - mark.from), value), slack)
        << solid.name() << " " << mark.title;
    EXPECT_LT(std::abs(glm::dot(mark.to - mark.from, mark.square_to)), 1e-9 * value) << mark.title;
  }
  // The usual net is a tree that lies flat without overlap, its root on the table.
  const auto& net = solid.classic_net();
  EXPECT_EQ(net.hinges().size() + 1, polyhedron.faces().size());
  EXPECT_TRUE(nets::overlapping(nets::unfolded(polyhedron, net)).empty()) << solid.name();
  for (const geometry::Vec3& corner : polyhedron.corners(net.root())) {
    EXPECT_NEAR(corner.z, 0, 1e-9 * geometry::bounding_box(polyhedron.corners(net.root())).diagonal());
  }
  EXPECT_GT(solid.volume().amount().sign(), 0);
}

}  // namespace fw::test
