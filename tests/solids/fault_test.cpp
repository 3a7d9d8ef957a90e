#include <gtest/gtest.h>

#include "support/describe_solid.hpp"

namespace fw::solids::fault_test {
namespace {

struct Expected {
  const char* solid;
  Severity severity;
  const char* measure;
  const char* message;
  const char* nearest;
};

std::ostream& operator<<(std::ostream& out, const Expected& expected) { return out << expected.solid; }

class Faulty : public testing::TestWithParam<Expected> {};

TEST_P(Faulty, SaysWhatIsWrongAndWhatWouldDo) {
  const auto solid = test::made(GetParam().solid);
  ASSERT_FALSE(solid.has_value());
  const Fault& fault = solid.error().front();
  EXPECT_EQ(fault.severity, GetParam().severity);
  EXPECT_EQ(fault.measure, GetParam().measure);
  EXPECT_EQ(said(fault.message), GetParam().message);
  EXPECT_EQ(fault.nearest, GetParam().nearest);
}

INSTANTIATE_TEST_SUITE_P(
    Frustums, Faulty,
    testing::Values(
        Expected{"cone frustum | radius: 4 cm | top_radius: 9 cm | height: 12 cm", Severity::Impossible, "top_radius",
                 "the radius of the top must be less than that of the bottom, 4 cm; 3 cm would work", "3 cm"},
        Expected{"cone frustum | radius: 9 cm | top_radius: 9 cm | height: 12 cm", Severity::Impossible, "top_radius",
                 "the radius of the top must be less than that of the bottom, 9 cm; 8 cm would work", "8 cm"},
        Expected{"cone frustum | radius: 9 cm | top_diameter: 18 cm | height: 12 cm", Severity::Impossible,
                 "top_diameter",
                 "the diameter of the top must be less than that of the bottom, 18 cm; 17 cm would work", "17 cm"},
        Expected{"cone frustum | circumference: 8 cm | top_circumference: 8 cm | height: 12 cm", Severity::Impossible,
                 "top_circumference",
                 "the circumference of the top must be less than that of the bottom, 8 cm; 7 cm would work", "7 cm"},
        Expected{"cone frustum | radius: 9 cm | top_radius: 4 cm | slant_height: 5 cm", Severity::Impossible,
                 "slant_height",
                 "the slant height must be longer than the difference of the two radii, 5 cm; 6 cm would work", "6 cm"},
        Expected{"cone frustum | radius: 9 cm | top_radius: ? | height: 12 cm | slant_height: 11 cm",
                 Severity::Impossible, "slant_height",
                 "the slant height must be longer than the height, 12 cm; 13 cm would work", "13 cm"},
        Expected{
            "cone frustum | radius: 9 cm | top_radius: 4 cm | height: ? | known surface_area: 90π cm^2",
            Severity::Impossible, "surface_area",
            "the surface area must be more than twice the area of the bottom, about 508.94 cm²; 509 cm² would work",
            "509 cm²"},
        Expected{"cone frustum | radius: 9 cm | top_radius: 4 cm | height: ? | known lateral_area: 60π cm^2",
                 Severity::Impossible, "lateral_area",
                 "the lateral area must be more than the difference of the areas of the two circles, about 204.20 cm²; "
                 "204.3 cm² would work",
                 "204.3 cm²"},
        Expected{"cone frustum | radius: 9 cm | top_radius: ? | height: 12 cm | known volume: 300π cm^3",
                 Severity::Impossible, "volume",
                 "the volume must be more than that of a whole cone with this bottom and height, about 1017.88 cm³; "
                 "1017.9 cm³ would work",
                 "1017.9 cm³"},
        Expected{"cone frustum | radius: 9 cm | top_radius: ? | height: 12 cm | known volume: 980π cm^3",
                 Severity::Impossible, "volume",
                 "the volume must be less than that of a cylinder with this bottom and height, about 3053.63 cm³; "
                 "3053.6 cm³ would work",
                 "3053.6 cm³"},
        Expected{"cone frustum | radius: ? | top_radius: 4 cm | height: 12 cm | known volume: 180π cm^3",
                 Severity::Impossible, "top_radius",
                 "the radius of the top must be less than that of the bottom, about 3.74 cm; 3 cm would work", "3 cm"},
        Expected{"cone frustum | radius: 9 cm | top_radius: 4 cm", Severity::Missing, "height",
                 "the height or the slant height is needed", ""}));

INSTANTIATE_TEST_SUITE_P(
    Pyramids, Faulty,
    testing::Values(
        Expected{"pyramid | slant_height: 2.5 cm | base square | side: 6 cm", Severity::Impossible, "slant_height",
                 "the slant height must be longer than half the base edge, 3 cm; 3.1 cm would work", "3.1 cm"},
        Expected{"pyramid | slant_height: 3 cm | base square | side: 6 cm", Severity::Impossible, "slant_height",
                 "the slant height must be longer than half the base edge, 3 cm; 4 cm would work", "4 cm"},
        Expected{"pyramid | slant_height: 1.7 cm | base equilateral triangle | side: 6 cm", Severity::Impossible,
                 "slant_height",
                 "the slant height must be longer than one third of the height of the base, about 1.73 cm; 1.8 cm "
                 "would work",
                 "1.8 cm"},
        Expected{"pyramid | slant_height: 5 cm | base regular polygon | count: 6 | side: 6 cm", Severity::Impossible,
                 "slant_height",
                 "the slant height must be longer than the apothem of the base, about 5.20 cm; 6 cm would work",
                 "6 cm"},
        Expected{"pyramid | slant_height: 7 cm | height: 8 cm | base square | side: ?", Severity::Impossible,
                 "slant_height", "the slant height must be longer than the height, 8 cm; 9 cm would work", "9 cm"},
        Expected{"pyramid | slant_height: 5 cm | lateral_edge: 4 cm | base square | side: ?", Severity::Impossible,
                 "lateral_edge", "the lateral edge must be longer than the slant height, 5 cm; 6 cm would work",
                 "6 cm"},
        Expected{"pyramid | lateral_edge: 4 cm | base square | side: 6 cm", Severity::Impossible, "lateral_edge",
                 "the lateral edge must be longer than the distance from the center of the base to its corners, about "
                 "4.24 cm; 5 cm would work",
                 "5 cm"},
        Expected{"pyramid | height: 4 cm | slant_height: 9 cm | base square | side: 6 cm", Severity::Impossible,
                 "slant_height", "with base edge 6 cm and height 4 cm the slant height is 5 cm, not 9 cm", "5 cm"},
        Expected{"pyramid | lateral_edge: 6 cm | slant_height: 9 cm | base square | side: 6 cm", Severity::Impossible,
                 "slant_height", "with all edges 6 cm the slant height is about 5.2 cm, not 9 cm", "5.2 cm"},
        Expected{"pyramid | slant_heights: 15 cm, 14 cm | base rectangle | length: 18 cm | width: 10 cm",
                 Severity::Impossible, "slant_heights.2",
                 "with length of the base 18 cm, width of the base 10 cm and slant height on the length of the base "
                 "15 cm the slant height on the width of the base is about 16.8 cm, not 14 cm",
                 "16.8 cm"},
        Expected{"pyramid | slant_height: 15 cm | base rectangle | length: 18 cm | width: 10 cm", Severity::Impossible,
                 "slant_height",
                 "the faces of this pyramid have two slant heights: give slant_heights, the one on the length of the "
                 "base first",
                 ""},
        Expected{"pyramid | slant_heights: 15 cm, 15 cm | base square | side: 18 cm", Severity::Impossible,
                 "slant_heights", "all lateral faces of this pyramid have the same slant height: give one slant_height",
                 ""},
        Expected{"pyramid | slant_height: 15 cm | base triangle | sides: 13 cm, 14 cm, 15 cm", Severity::Impossible,
                 "slant_height", "the faces of this pyramid have different slant heights: give the height instead", ""},
        Expected{"pyramid | lateral_edge: 15 cm | base triangle | sides: 13 cm, 14 cm, 15 cm", Severity::Impossible,
                 "lateral_edge", "the lateral edges of this pyramid are not all equal: give the height instead", ""},
        Expected{"pyramid | height: 5 cm | base polygon | vertices: 0 0, 9 0, 9 9, 4 2 | unit: cm",
                 Severity::Impossible, "base.vertices", "a pyramid needs a base with no corner that points inward", ""},
        Expected{"pyramid | slant_height: ? | base square | side: 6 cm | known surface_area: 70 cm^2",
                 Severity::Impossible, "surface_area",
                 "the surface area must be more than twice the base area, 72 cm²; 73 cm² would work", "73 cm²"},
        Expected{"pyramid | base square | side: 6 cm", Severity::Missing, "height",
                 "the height, the slant height or the lateral edge is needed", ""},
        Expected{"pyramid | height: 4 cm | base rectangle | length: 18 cm", Severity::Missing, "base.width",
                 "the width of the base, the slant height on the length of the base or the lateral edge is needed",
                 ""}));

INSTANTIATE_TEST_SUITE_P(
    Bases, Faulty,
    testing::Values(
        Expected{"prism | height: 10 cm | base triangle | sides: 3 cm, 4 cm, 8 cm", Severity::Impossible,
                 "base.sides.3",
                 "each side of a triangle must be shorter than the other two together, 7 cm; 6 cm would work", "6 cm"},
        Expected{
            "prism | height: 10 cm | base triangle | sides: 3.5 cm, 4 cm, 7.5 cm", Severity::Impossible, "base.sides.3",
            "each side of a triangle must be shorter than the other two together, 7.5 cm; 7.4 cm would work", "7.4 cm"},
        Expected{"prism | height: 10 cm | base triangle | sides: 5 cm, 5 cm, 8 cm | base: 8 cm | height: 4 cm",
                 Severity::Impossible, "base.height",
                 "with sides 5 cm, 5 cm and 8 cm the height of the triangle is 3 cm, not 4 cm", "3 cm"},
        Expected{"prism | height: 10 cm | base triangle | sides: 5 cm, 5 cm, 8 cm | base: 7 cm | height: 3 cm",
                 Severity::Impossible, "base.base", "the base of a triangle must be one of its three sides", ""},
        Expected{"prism | height: 10 cm | base equilateral triangle | side: 12 cm | height: 9 cm", Severity::Impossible,
                 "base.height", "with base edge 12 cm the height of the triangle is about 10.4 cm, not 9 cm",
                 "10.4 cm"},
        Expected{"prism | height: 10 cm | base right triangle | legs: 5 cm, 12 cm | hypotenuse: 14 cm",
                 Severity::Impossible, "base.hypotenuse", "with legs 5 cm and 12 cm the hypotenuse is 13 cm, not 14 cm",
                 "13 cm"},
        Expected{"prism | height: 10 cm | base right triangle | legs: 5 cm, ? | hypotenuse: 4.5 cm",
                 Severity::Impossible, "base.hypotenuse",
                 "the hypotenuse must be longer than each leg, 5 cm; 5.1 cm would work", "5.1 cm"},
        Expected{"prism | height: 10 cm | base isosceles triangle | base: 10 cm | leg: 5 cm", Severity::Impossible,
                 "base.leg", "the leg must be longer than half the base of the triangle, 5 cm; 6 cm would work",
                 "6 cm"},
        Expected{"prism | height: 10 cm | base parallelogram | base: 10 cm | side: 5 cm | height: 6 cm",
                 Severity::Impossible, "base.side",
                 "the side of a parallelogram cannot be shorter than its height, 6 cm; 6 cm would work", "6 cm"},
        Expected{"prism | height: 10 cm | base rhombus | side: 5 cm | height: 6 cm", Severity::Impossible, "base.side",
                 "the side of a rhombus cannot be shorter than its height, 6 cm; 6 cm would work", "6 cm"},
        Expected{"prism | height: 10 cm | base rhombus | side: 5 cm | diagonals: 12 cm, ?", Severity::Impossible,
                 "base.diagonals.1",
                 "each diagonal of a rhombus must be shorter than two of its sides, 10 cm; 9 cm would work", "9 cm"},
        Expected{"prism | height: 10 cm | base trapezoid | bases: 10 cm, 10 cm | height: 4 cm | legs: 5 cm",
                 Severity::Impossible, "base.bases.2",
                 "the bases of a trapezoid must be of different lengths, 10 cm; 4 cm would work", "4 cm"},
        Expected{"prism | height: 10 cm | base trapezoid | bases: 16 cm, 10 cm | height: 4 cm | legs: 7 cm, 7 cm",
                 Severity::Impossible, "base.height",
                 "with bases 16 cm and 10 cm and legs 7 cm and 7 cm the height of the trapezoid is about 6.3 cm, not "
                 "4 cm",
                 "6.3 cm"},
        Expected{"prism | height: 10 cm | base trapezoid | bases: 16 cm, 4 cm | height: ? | legs: 5 cm, 6 cm",
                 Severity::Impossible, "base.bases.1",
                 "the difference of the bases, as a side of a triangle with the two legs, must be shorter than the "
                 "legs together, 11 cm; 14 cm would work",
                 "14 cm"},
        Expected{"prism | height: 10 cm | base regular polygon | count: 2 | side: 6 cm", Severity::Impossible,
                 "base.count", "a regular polygon here has 3 to 40 sides, not 2", "3"},
        Expected{"prism | height: 10 cm | base regular polygon | side: 6 cm", Severity::Missing, "base.count",
                 "the number of sides of the regular polygon is needed", ""},
        Expected{"prism | height: 10 cm | base regular polygon | count: 6 | side: 6 cm | apothem: 5.3 cm",
                 Severity::Impossible, "base.apothem", "with base edge 6 cm the apothem is about 5.2 cm, not 5.3 cm",
                 "5.2 cm"},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 4, 4 0, 0 4 | unit: cm", Severity::Impossible,
                 "base.vertices", "the sides of a polygon must not cross or touch each other", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 0, 8 0, 4 4 | unit: cm", Severity::Impossible,
                 "base.vertices", "corner 2 of the polygon lies on the line through its neighbors: leave it out", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 0 6, 0 3, 4 4 | unit: cm", Severity::Impossible,
                 "base.vertices",
                 "at corner 2 the polygon turns back along the side that it came: leave that corner out", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 0, 4 0, 4 4 | unit: cm", Severity::Impossible,
                 "base.vertices", "corners 2 and 3 of the polygon are the same point: list it once", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 0, 4 4, 0 0 | unit: cm", Severity::Impossible,
                 "base.vertices", "corners 1 and 4 of the polygon are the same point: list it once", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 0, 2 2, 4 4, 0 4, 2 2 | unit: cm",
                 Severity::Impossible, "base.vertices",
                 "corners 3 and 6 of the polygon are the same point: its sides must not touch each other", ""},
        Expected{"prism | height: 10 cm | base polygon | vertices: 0 0, 4 0 | unit: cm", Severity::Impossible,
                 "base.vertices", "a polygon here has 3 to 40 corners, not 2", ""}));

INSTANTIATE_TEST_SUITE_P(
    Others, Faulty,
    testing::Values(
        Expected{"prism | height: ? | base square | side: 6 cm | known surface_area: 72 cm^2", Severity::Impossible,
                 "surface_area", "the surface area must be more than the two bases together, 72 cm²; 73 cm² would work",
                 "73 cm²"},
        Expected{"rectangular prism | length: 9 cm | width: 7 cm | height: ? | known surface_area: 100 cm^2",
                 Severity::Impossible, "surface_area",
                 "the surface area must be more than the bottom and the top together, 126 cm²; 127 cm² would work",
                 "127 cm²"},
        Expected{"rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm | known volume: 400 cm^3",
                 Severity::Impossible, "volume",
                 "with length 9 cm, width 7 cm and height 5 cm the volume is 315 cm³, not 400 cm³", "315 cm³"},
        Expected{"rectangular prism | length: 9 cm", Severity::Missing, "width", "the width and the height are needed",
                 ""},
        Expected{"rectangular prism | length: 9 cm | width: 0 cm | height: 3 cm", Severity::Impossible, "width",
                 "the width must be more than 0", "1 cm"},
        Expected{"rectangular prism | length: 9 | width: 7 cm | height: 3 cm", Severity::Impossible, "length",
                 "\"9\" has no unit, but other measures have one: give every measure a unit, or none", ""},
        Expected{
            "rectangular prism | length: ? | width: ? | height: 9 cm | known surface_area: 286 cm^2 | known volume: "
            "350 cm^3",
            Severity::Impossible, "volume",
            "the volume of a box cannot be more than that of a cube with the same surface area, about 329.10 cm³; 320 "
            "cm³ would work",
            "320 cm³"},
        Expected{"cube | edge: 9 cm^2", Severity::Impossible, "edge", "\"9 cm^2\" is not a length", ""},
        Expected{"cube | edge: 9 cm | known volume: 729 cm", Severity::Impossible, "volume",
                 "\"729 cm\" is not a volume", ""},
        Expected{"cube", Severity::Missing, "edge", "the edge is needed", ""},
        Expected{"cube | edge: 9 cm | known base_area: 81 cm^2", Severity::Impossible, "base_area",
                 "a cube has no base area", ""},
        Expected{"cube | edge: 9 cm | known weight: 81 cm^2", Severity::Impossible, "weight",
                 "\"weight\" can't be a known measure; surface_area, lateral_area, base_area and volume can", ""},
        Expected{"cube | side: 9 cm", Severity::Impossible, "side", "a cube has no side; it has edge", ""},
        Expected{"cube | edge: 9 cm | base square | side: 9 cm", Severity::Impossible, "base",
                 "a cube takes no base of its own", ""},
        Expected{"prism | height: 9 cm", Severity::Missing, "base", "a prism needs a base", ""},
        Expected{"prizm | height: 9 cm", Severity::Impossible, "kind",
                 "there is no kind of solid \"prizm\"; did you mean \"prism\"?", "prism"},
        Expected{"prism | height: 9 cm | base sqare | side: 4 cm", Severity::Impossible, "base.shape",
                 "there is no base shape \"sqare\"; did you mean \"square\"?", "square"},
        Expected{"prism | height: 9 cm | lies: down | base square | side: 4 cm", Severity::Impossible, "lies",
                 "\"down\" can't go here; base or side can", ""},
        Expected{"prism | height: 9 cm | base triangle | sides: 4 cm, 5 cm", Severity::Impossible, "base.sides",
                 "the sides must be 3 lengths, not 2", ""},
        // Whole numbers are exact unless the figure says that they are rounded.
        Expected{"prism | height: 10 cm | base triangle | sides: 7 cm, 7 cm, 7 cm | height: 6 cm", Severity::Impossible,
                 "base.height",
                 "with sides 7 cm, 7 cm and 7 cm the height of the triangle is about 6.1 cm, not 6 cm; if 6 cm is a "
                 "rounded label, add \"rounded\": true to the solid",
                 "6.1 cm"},
        Expected{"prism | height: 10 cm | base triangle | sides: 5 cm, 5 cm, 6 cm | base: 6 cm | height: 4.1 cm",
                 Severity::Impossible, "base.height",
                 "with sides 5 cm, 5 cm and 6 cm the height of the triangle is 4 cm, not 4.1 cm", "4 cm"},
        Expected{"pyramid | height: 6 in | slant_height: 10 in | base square | side: 16.01 in", Severity::Impossible,
                 "base.side", "with height 6 in and slant height 10 in the base edge is 16 in, not 16.01 in", "16 in"},
        Expected{"regular polyhedron | faces: 10 | edge: 4 cm", Severity::Impossible, "faces",
                 "a regular polyhedron has 4, 6, 8, 12 or 20 faces, not 10", "8"},
        Expected{"regular polyhedron | edge: 4 cm", Severity::Missing, "faces",
                 "the number of faces is needed: 4, 6, 8, 12 or 20", ""}));

// ---- labels that fit only by rounding, and figures that the lesson leaves open ----

struct Remarked {
  const char* solid;
  Severity severity;
  const char* measure;
  const char* message;
};
std::ostream& operator<<(std::ostream& out, const Remarked& remarked) { return out << remarked.solid; }

class Remarks : public testing::TestWithParam<Remarked> {};

TEST_P(Remarks, AreKeptWithTheSolid) {
  const auto solid = test::made(GetParam().solid);
  ASSERT_TRUE(solid.has_value()) << said(solid.error().front().message);
  ASSERT_EQ(solid->remarks().size(), 1U);
  EXPECT_EQ(solid->remarks()[0].severity, GetParam().severity);
  EXPECT_EQ(solid->remarks()[0].measure, GetParam().measure);
  EXPECT_EQ(said(solid->remarks()[0].message), GetParam().message);
}

INSTANTIATE_TEST_SUITE_P(
    Solids, Remarks,
    testing::Values(
        Remarked{"prism | height: 10 cm | base equilateral triangle | side: 12 cm | height: 10.39 cm",
                 Severity::Rounding, "base.height",
                 "the height of the triangle 10.39 cm fits only as a rounded number: with base edge 12 cm it is about "
                 "10.3923 cm"},
        Remarked{"prism | height: 10 cm | rounded: yes | base triangle | sides: 7 cm, 7 cm, 7 cm | height: 6 cm",
                 Severity::Rounding, "base.height",
                 "the height of the triangle 6 cm fits only as a rounded number: with sides 7 cm, 7 cm and 7 cm it is "
                 "about 6.06 cm, 1% more"},
        Remarked{
            "prism | height: 10 cm | rounded: yes | base triangle | sides: 5 cm, 5 cm, 6 cm | base: 6 cm | height: 4.1 "
            "cm",
            Severity::Rounding, "base.sides.1",
            "the side 5 cm fits only as a rounded number: with sides 5 cm and 6 cm and height of the triangle 4.1 cm "
            "it "
            "is about 5.16 cm, 3.3% more"},
        Remarked{"prism | height: 10 cm | rounded: yes | base right triangle | legs: 5 cm, 6 cm | hypotenuse: 8 cm",
                 Severity::Rounding, "base.hypotenuse",
                 "the hypotenuse 8 cm fits only as a rounded number: with legs 5 cm and 6 cm it is about 7.81 cm, 2.4% "
                 "less"},
        Remarked{"pyramid | height: 6 in | slant_height: 10 in | rounded: yes | base square | side: 16.01 in",
                 Severity::Rounding, "base.side",
                 "the base edge 16.01 in fits only if the other numbers are rounded too: with height 6 in and slant "
                 "height 10 in it is 16 in"},
        Remarked{"pyramid | height: 6 in | slant_height: 11 in | rounded: yes | base square | side: 18.43 in",
                 Severity::Rounding, "slant_height",
                 "the slant height 11 in fits only as a rounded number: with base edge 18.43 in and height 6 in it is "
                 "about 10.996 in"},
        Remarked{"prism | height: 10 cm | base triangle | base: 8 cm | height: 3 cm", Severity::Missing, "base",
                 "no sides are given, so the triangle is drawn with two equal sides; answers that depend on the sides "
                 "are for that triangle only"},
        Remarked{"prism | height: 10 cm | base trapezoid | bases: 8 cm, 5 cm | height: 3 cm", Severity::Missing, "base",
                 "no legs are given, so the trapezoid is drawn with two equal legs; answers that depend on the legs "
                 "are for that trapezoid only"}));

}  // namespace
}  // namespace fw::solids::fault_test
