#include "geometry/ray.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "support/polyhedra.hpp"
#include "support/random.hpp"

namespace fw::geometry::ray_test {
namespace {

using Faces = std::vector<std::vector<Vec3>>;

Faces faces_of(const Polyhedron& solid) {
  Faces faces;
  for (std::size_t f = 0; f < solid.faces().size(); ++f) {
    faces.push_back(solid.corners(FaceId::at(f)));
  }
  return faces;
}

/// Triangle by triangle, in volumes: another way than the one under test.
std::optional<RayHit> hit_by_triangles(const Polyhedron& solid, const Ray& ray) {
  std::optional<RayHit> nearest;
  for (std::size_t f = 0; f < solid.faces().size(); ++f) {
    const std::vector<Vec3> corners = solid.corners(FaceId::at(f));
    for (const auto& triple : triangulated(flat_face(solid, FaceId::at(f)))) {
      const Vec3 a = corners[triple[0]] - ray.origin;
      const Vec3 b = corners[triple[1]] - ray.origin;
      const Vec3 c = corners[triple[2]] - ray.origin;
      const double u = glm::dot(ray.direction, glm::cross(b, c));
      const double v = glm::dot(ray.direction, glm::cross(c, a));
      const double w = glm::dot(ray.direction, glm::cross(a, b));
      if ((u > 0 && v > 0 && w > 0) || (u < 0 && v < 0 && w < 0)) {
        const double distance = glm::dot(a, glm::cross(b, c)) / (u + v + w);
        if (distance >= 0 && (!nearest || distance < nearest->distance)) {
          nearest = RayHit{FaceId::at(f), distance};
        }
      }
    }
  }
  return nearest;
}

RC_GTEST_PROP(NearestHit, agrees_with_trying_each_triangle, (std::uint64_t seed)) {
  static const std::vector<test::NamedSolid> solids = test::sample_solids();
  test::Dice dice(seed);
  const Polyhedron& solid = solids[dice.below(solids.size())].solid;
  const auto any = [&dice](double reach) {
    return Vec3{dice.between(-reach, reach), dice.between(-reach, reach), dice.between(-reach, reach)};
  };
  const Vec3 origin = any(5);
  const Ray ray{origin, any(1) - origin};
  const auto expected = hit_by_triangles(solid, ray);
  const auto found = nearest_hit(faces_of(solid), ray);
  RC_CLASSIFY(expected.has_value());
  RC_ASSERT(found.has_value() == expected.has_value());
  if (found) {
    RC_ASSERT(found->face == expected->face);
    RC_ASSERT(std::abs(found->distance - expected->distance) < 1e-9 * (1 + expected->distance));
  }
}

TEST(NearestHit, the_front_face_from_either_side) {
  const Faces box = faces_of(test::box(2, 3, 4));
  const auto outside = nearest_hit(box, {{1, -5, 2}, {0, 2, 0}});
  ASSERT_TRUE(outside.has_value());
  EXPECT_EQ(outside->face, FaceId::at(2));
  EXPECT_DOUBLE_EQ(outside->distance, 2.5);  // in lengths of the direction
  const auto inside = nearest_hit(box, {{1, 1, 2}, {0, -1, 0}});
  ASSERT_TRUE(inside.has_value());
  EXPECT_EQ(inside->face, FaceId::at(2));
}

TEST(NearestHit, nothing_behind_beside_or_along) {
  const Faces box = faces_of(test::box(2, 3, 4));
  EXPECT_FALSE(nearest_hit(box, {{1, -5, 2}, {0, -1, 0}}).has_value());
  EXPECT_FALSE(nearest_hit(box, {{5, -5, 2}, {0, 1, 0}}).has_value());
  EXPECT_FALSE(nearest_hit({box[2]}, {{-1, 0, 2}, {1, 0, 0}}).has_value());
  EXPECT_FALSE(nearest_hit({}, {{-1, 0, 2}, {1, 0, 0}}).has_value());
}

TEST(NearestHit, an_edge_or_a_corner_is_never_a_gap) {
  for (const auto& [name, solid] : test::sample_solids()) {
    const Faces faces = faces_of(solid);
    for (std::size_t e = 0; e < solid.edges().size(); ++e) {
      const auto [from, to] = solid.ends(EdgeId::at(e));
      for (const double share : {0.0, 0.25, 0.5, 1.0}) {
        const Vec3 aim = from + (to - from) * share;
        const Vec3 origin = aim + solid.normal(solid.edges()[EdgeId::at(e)].left) * 3.0;
        EXPECT_TRUE(nearest_hit(faces, {origin, aim - origin}).has_value()) << name << " edge " << e;
      }
    }
  }
}

}  // namespace
}  // namespace fw::geometry::ray_test
