#include <gtest/gtest.h>

#include <algorithm>
#include <set>

#include "sound_solid.hpp"
#include "support/describe_solid.hpp"

namespace fw::solids::traits_test {
namespace {

using geometry::Polyhedron;
using geometry::Vec3;
using geometry::VertexId;
using test::relative_difference;

std::vector<FaceId> faces_of(const Solid& solid, FaceRole role) {
  std::vector<FaceId> faces;
  for (const Face& face : solid.faces()) {
    if (face.role == role) {
      faces.push_back(face.id);
    }
  }
  return faces;
}

/// A face that bends in the flat strips that it is made of.
std::vector<FaceId> strips_of(const Solid& solid, const std::vector<FaceId>& faces) {
  std::vector<FaceId> strips;
  for (const FaceId face : faces) {
    for (std::size_t i = 0; i < solid.body().facet_count(face); ++i) {
      strips.push_back(FaceId::at(solid.body().first_facet(face).index() + i));
    }
  }
  return strips;
}

bool is_near(double a, double b) { return relative_difference(a, b) < 1e-9; }

/// Distance of a point from the plane of a face.
double distance(const Polyhedron& polyhedron, FaceId face, Vec3 point) {
  return std::abs(glm::dot(polyhedron.normal(face), point - polyhedron.corners(face).front()));
}
double perimeter(const Polyhedron& polyhedron, FaceId face) {
  double sum = 0;
  for (const geometry::EdgeId edge : polyhedron.edges_of(face)) {
    const auto ends = polyhedron.ends(edge);
    sum += glm::length(ends.second - ends.first);
  }
  return sum;
}

// What the coordinates say of each trait, without a look at what is stated.

bool are_parallel(const Polyhedron& polyhedron, const std::vector<FaceId>& bases) {
  return bases.size() == 2 && glm::dot(polyhedron.normal(bases[0]), polyhedron.normal(bases[1])) < -1 + 1e-12;
}
bool do_match(const Polyhedron& polyhedron, const std::vector<FaceId>& bases) {
  return are_parallel(polyhedron, bases) &&
         geometry::congruent(geometry::flat_face(polyhedron, bases[0]), geometry::flat_face(polyhedron, bases[1])) &&
         is_near(geometry::volume(polyhedron),
                 geometry::area(polyhedron, bases[0]) *
                     distance(polyhedron, bases[0], polyhedron.corners(bases[1]).front()));
}
/// Rectangles as tall as the bases are apart, as long in a row as a base is around.
bool make_rectangle(const Polyhedron& polyhedron, const std::vector<FaceId>& bases, const std::vector<FaceId>& sides) {
  if (!are_parallel(polyhedron, bases)) {
    return false;
  }
  const double height = distance(polyhedron, bases[0], polyhedron.corners(bases[1]).front());
  double length = 0;
  for (const FaceId side : sides) {
    const std::vector<Vec3> corners = polyhedron.corners(side);
    double upright = 0;
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Vec3 along = corners[(i + 1) % corners.size()] - corners[i];
      const Vec3 next = corners[(i + 2) % corners.size()] - corners[(i + 1) % corners.size()];
      if (std::abs(glm::dot(along, next)) > 1e-9 * glm::length(along) * glm::length(next)) {
        return false;
      }
      upright += std::abs(glm::dot(along, polyhedron.normal(bases[0])));
    }
    if (corners.size() != 4 || !is_near(upright, 2 * height)) {
      return false;
    }
    length += geometry::area(polyhedron, side) / height;
  }
  return is_near(length, perimeter(polyhedron, bases[0]));
}
bool meet_in_a_point(const Polyhedron& polyhedron, const std::vector<FaceId>& bases, const std::vector<FaceId>& sides) {
  if (bases.empty()) {
    return false;
  }
  const Polyhedron::Loop& base = polyhedron.faces()[bases[0]];
  for (std::size_t i = 0; i < polyhedron.vertices().size(); ++i) {
    const VertexId vertex = VertexId::at(i);
    const bool is_on_all = std::all_of(sides.begin(), sides.end(), [&](FaceId side) {
      const Polyhedron::Loop& loop = polyhedron.faces()[side];
      return std::find(loop.begin(), loop.end(), vertex) != loop.end();
    });
    if (is_on_all && std::find(base.begin(), base.end(), vertex) == base.end()) {
      const double height = distance(polyhedron, bases[0], polyhedron.vertices()[vertex]);
      return is_near(3 * geometry::volume(polyhedron), geometry::area(polyhedron, bases[0]) * height);
    }
  }
  return false;
}

/// Every corner of the base is as far from its middle, and what stands on it is one face that bends.
bool is_round(const Solid& solid, const std::vector<FaceId>& bases) {
  if (bases.empty() || solid.faces().size() - bases.size() != 1) {
    return false;
  }
  const std::vector<Vec3> rim = solid.body().facets().corners(bases.front());
  Vec3 middle{};
  for (const Vec3& corner : rim) {
    middle += corner / static_cast<double>(rim.size());
  }
  return rim.size() > 24 && std::all_of(rim.begin(), rim.end(), [&](Vec3 corner) {
           return is_near(glm::length(corner - middle), glm::length(rim.front() - middle));
         });
}

void expect_traits_of_its_shape(const Solid& solid) {
  const Traits& traits = solid.traits();
  const Polyhedron& polyhedron = solid.body().facets();
  const std::vector<FaceId> bases = faces_of(solid, FaceRole::Base);
  const std::vector<FaceId> sides = faces_of(solid, FaceRole::Lateral);
  const std::vector<FaceId> flat_sides = strips_of(solid, sides);
  EXPECT_EQ(traits.has_base, !bases.empty());
  EXPECT_EQ(traits.has_base, !sides.empty());
  EXPECT_EQ(traits.has_base, faces_of(solid, FaceRole::Face).empty());
  EXPECT_EQ(traits.has_base, solid.base_area().has_value());
  if (traits.has_base) {
    EXPECT_EQ(bases.front(), FaceId::at(0));
    EXPECT_EQ(solid.faces()[bases.front()].area.amount(), solid.base_area()->amount());
  }
  EXPECT_EQ(traits.has_second_base, are_parallel(polyhedron, bases));
  EXPECT_EQ(bases.size() + sides.size(), traits.has_base ? solid.faces().size() : 0U);
  EXPECT_EQ(bases.size(), std::size_t{traits.has_base} + std::size_t{traits.has_second_base});
  EXPECT_EQ(traits.bases_match, do_match(polyhedron, bases));
  EXPECT_EQ(traits.sides_make_rectangle, make_rectangle(polyhedron, bases, flat_sides));
  EXPECT_EQ(traits.has_apex, meet_in_a_point(polyhedron, bases, flat_sides));
  EXPECT_EQ(traits.has_round_base, is_round(solid, bases));
  EXPECT_EQ(traits.is_all_alike, bases.empty() && solid.group_count() == 1);
}

/// The edges of a box: each of the three lengths stands at four of the twelve, square to the others.
void expect_edges_of_a_box(const Solid& solid) {
  std::vector<double> stated;
  for (const algebra::Symbol& edge : *solid.traits().box_edges) {
    stated.insert(stated.end(), 4, solid.values().at(edge.name).to_double());
  }
  std::vector<double> found = solid.body().edge_lengths();
  std::sort(stated.begin(), stated.end());
  std::sort(found.begin(), found.end());
  ASSERT_EQ(stated.size(), found.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    EXPECT_TRUE(is_near(stated[i], found[i])) << stated[i] << " and " << found[i];
  }
  EXPECT_TRUE(is_near(stated[0] * stated[4] * stated[8], geometry::volume(solid.body().facets())));
}

TEST(Traits, AreThoseOfTheShapeOfEverySolidOfTheShelf) {
  std::set<std::string> boxes;
  for (const Description& description : shelf()) {
    const Solid solid = *Solid::make(description);
    SCOPED_TRACE(solid.name());
    expect_traits_of_its_shape(solid);
    if (solid.traits().box_edges) {
      boxes.insert(solid.name());
      expect_edges_of_a_box(solid);
    }
  }
  EXPECT_EQ(boxes, (std::set<std::string>{"cube", "rectangular prism"}));
}

// Where faces come out equal by their numbers, a solid lies on a side, its apex leans, or a corner points inward.
TEST(Traits, HoldWithUnusualMeasuresToo) {
  for (const char* text : {"rectangular prism | length: 5 cm | width: 5 cm | height: 5 cm",
                           "prism | height: 6 cm | base square | side: 6 cm",
                           "prism | height: 9 cm | lies: side | base triangle | sides: 13 cm, 14 cm, 15 cm",
                           "prism | height: 4 cm | base polygon | unit: cm | vertices: 0 0, 8 0, 8 8, 4 2, 0 8",
                           "pyramid | lateral_edge: 6 cm | base equilateral triangle | side: 6 cm",
                           "pyramid | height: 7 cm | apex_over: 9 cm, 1 cm | base square | side: 5 cm"}) {
    SCOPED_TRACE(text);
    expect_traits_of_its_shape(test::solid(text));
  }
}

/// Fields that made-up problems count on, by use.
const std::vector<std::pair<Use, std::vector<std::string>>>& promised_fields() {
  static const std::vector<std::pair<Use, std::vector<std::string>>> table{
      {Use::Box, {"length", "width", "height"}},
      {Use::Block, {"edge"}},
      {Use::Upright, {"height", "lies"}},
      {Use::Pointed, {"height", "slant_height", "slant_heights"}},
      {Use::Round, {"radius", "diameter", "height", "lies"}},
      {Use::RoundPointed, {"radius", "diameter", "height", "slant_height"}}};
  return table;
}

TEST(Uses, AreServedByOneKindEachWithTheFieldsThatItPromises) {
  for (const auto& [use, promised] : promised_fields()) {
    std::vector<std::string> serving;
    for (const Kind& kind : kinds()) {
      serving.insert(serving.end(), static_cast<std::size_t>(std::count(kind.uses.begin(), kind.uses.end(), use)),
                     kind.key);
    }
    const Kind& kind = kind_for(use);
    EXPECT_EQ(serving, std::vector<std::string>{kind.key});
    EXPECT_EQ(kind.stands_on_base, use == Use::Upright || use == Use::Pointed) << kind.key;
    for (const std::string& key : promised) {
      const bool has_it = std::any_of(kind.fields.begin(), kind.fields.end(),
                                      [&, &key = key](const Field& one) { return one.key == key; });
      EXPECT_TRUE(has_it) << kind.key << " has no " << key;
    }
  }
}

}  // namespace
}  // namespace fw::solids::traits_test
