#include "solids/naming.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "support/describe_solid.hpp"

namespace fw::solids::naming_test {
namespace {

struct Judged {
  const char* solid;
  const char* typed;
  NameVerdict verdict;
};
std::ostream& operator<<(std::ostream& out, const Judged& judged) { return out << judged.typed; }

class Names : public testing::TestWithParam<Judged> {};

TEST_P(Names, AreJudged) { EXPECT_EQ(judge_name(test::solid(GetParam().solid), GetParam().typed), GetParam().verdict); }

constexpr const char* square_pyramid = "pyramid | height: 9 cm | base square | side: 6 cm";
constexpr const char* triangular_prism = "prism | height: 9 cm | base triangle | sides: 4 cm, 5 cm, 6 cm";
constexpr const char* cube = "cube | edge: 8 cm";
constexpr const char* cone = "cone | radius: 5 cm | height: 12 cm";
constexpr const char* frustum = "cone frustum | radius: 9 cm | top_radius: 4 cm | height: 12 cm";
constexpr const char* box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";

INSTANTIATE_TEST_SUITE_P(
    TypedOfRoundSolids, Names,
    testing::Values(
        Judged{frustum, "frustum of a cone", NameVerdict::Right}, Judged{frustum, "a frustum", NameVerdict::Right},
        Judged{frustum, "frustrum", NameVerdict::Right}, Judged{frustum, "frustrum of a cone", NameVerdict::Right},
        Judged{frustum, "cone frustum", NameVerdict::Right}, Judged{frustum, "Truncated Cone", NameVerdict::Right},
        Judged{frustum, "a conical frustum", NameVerdict::Right}, Judged{frustum, "cone", NameVerdict::WrongFamily},
        Judged{frustum, "cylinder", NameVerdict::WrongFamily}, Judged{frustum, "banana", NameVerdict::Unknown},
        Judged{cone, "frustum", NameVerdict::WrongFamily}, Judged{cone, "truncated cone", NameVerdict::WrongFamily}));

INSTANTIATE_TEST_SUITE_P(
    Typed, Names,
    testing::Values(Judged{square_pyramid, "square pyramid", NameVerdict::Right},
                    Judged{square_pyramid, "  Square  PYRAMID. ", NameVerdict::Right},
                    Judged{square_pyramid, "a square-based pyramid", NameVerdict::Right},
                    Judged{square_pyramid, "It is a pyramid with a square base", NameVerdict::Right},
                    Judged{square_pyramid, "sqare pyramids", NameVerdict::Right},
                    Judged{square_pyramid, "square pirimid", NameVerdict::Unknown},
                    Judged{square_pyramid, "rectangular pyramid", NameVerdict::Right},
                    Judged{square_pyramid, "pyramid", NameVerdict::AskBase},
                    Judged{square_pyramid, "the piramid", NameVerdict::AskBase},
                    Judged{square_pyramid, "big pyramid", NameVerdict::AskBase},
                    Judged{square_pyramid, "triangular pyramid", NameVerdict::WrongBase},
                    Judged{square_pyramid, "tetrahedron", NameVerdict::WrongBase},
                    Judged{square_pyramid, "square prism", NameVerdict::WrongFamily},
                    Judged{square_pyramid, "prism", NameVerdict::WrongFamily},
                    Judged{square_pyramid, "cube", NameVerdict::WrongFamily},
                    Judged{square_pyramid, "octahedron", NameVerdict::WrongFamily},
                    Judged{square_pyramid, "banana", NameVerdict::Unknown},
                    Judged{square_pyramid, "", NameVerdict::Unknown}, Judged{cube, "cubr", NameVerdict::Right},
                    Judged{cube, "cub", NameVerdict::Unknown},
                    Judged{triangular_prism, "triangular prism", NameVerdict::Right},
                    Judged{triangular_prism, "triangle prism", NameVerdict::Right},
                    Judged{triangular_prism, "prism", NameVerdict::AskBase},
                    Judged{triangular_prism, "hexagonal prism", NameVerdict::WrongBase},
                    Judged{triangular_prism, "triangular pyramid", NameVerdict::WrongFamily},
                    Judged{cube, "cube", NameVerdict::Right}, Judged{cube, "Cubes", NameVerdict::Right},
                    Judged{cube, "regular hexahedron", NameVerdict::Right}, Judged{cube, "prism", NameVerdict::AskBase},
                    Judged{cube, "hexagonal prism", NameVerdict::WrongBase}, Judged{box, "cuboid", NameVerdict::Right},
                    Judged{box, "rectangular solid", NameVerdict::Right}, Judged{box, "cube", NameVerdict::WrongBase},
                    Judged{box, "square pyramid", NameVerdict::WrongFamily},
                    Judged{"rectangular prism | length: 6 cm | width: 6 cm | height: 6 cm", "cube", NameVerdict::Right},
                    Judged{"prism | height: 60 mm | base square | side: 6 cm", "cube", NameVerdict::Right},
                    Judged{"pyramid | height: 9 cm | base equilateral triangle | side: 6 cm", "tetrahedron",
                           NameVerdict::Right},
                    Judged{"regular polyhedron | faces: 20 | edge: 4 cm", "icosahedron", NameVerdict::Right},
                    Judged{"regular polyhedron | faces: 8 | edge: 4 cm", "octahedra", NameVerdict::Right},
                    Judged{"regular polyhedron | faces: 8 | edge: 4 cm", "icosahedron", NameVerdict::WrongFamily},
                    Judged{"regular polyhedron | faces: 4 | edge: 4 cm", "triangular pyramid", NameVerdict::Right}));

// The most special name; the more general ones are right as well. Common practice, no source.
TEST(SpecialNames, AreTheMostSpecialOnes) {
  struct Named {
    const char* solid;
    const char* name;
    const char* also;
  };
  for (const Named& one :
       {Named{"rectangular prism | length: 6 cm | width: 6 cm | height: 6 cm", "cube", "rectangular prism"},
        Named{"rectangular prism | length: 6 cm | width: 6 cm | height: 7 cm", "rectangular prism", "square prism"},
        Named{"prism | height: 60 mm | base square | side: 6 cm", "cube", "square prism"},
        Named{"prism | height: 9 cm | base square | side: 6 cm", "square prism", "rectangular prism"},
        Named{"pyramid | lateral_edge: 6 cm | base equilateral triangle | side: 6 cm", "regular tetrahedron",
              "triangular pyramid"},
        Named{"pyramid | lateral_edge: 7 cm | base equilateral triangle | side: 6 cm", "triangular pyramid",
              "tetrahedron"}}) {
    const Solid solid = test::solid(one.solid);
    EXPECT_EQ(solid.name(), one.name) << one.solid;
    EXPECT_EQ(judge_name(solid, one.also), NameVerdict::Right) << one.solid;
    EXPECT_EQ(judge_name(solid, one.name), NameVerdict::Right) << one.solid;
  }
}

TEST(NamesByFaceCount, AreThoseOfRealSolids) {
  using testing::Contains;
  EXPECT_THAT(names_with_face_count(5), Contains("square pyramid"));
  EXPECT_THAT(names_with_face_count(5), Contains("triangular prism"));
  EXPECT_THAT(names_with_face_count(5), Contains("rectangular pyramid"));
  EXPECT_THAT(names_with_face_count(6), Contains("cube"));
  EXPECT_THAT(names_with_face_count(6), Contains("rectangular prism"));
  EXPECT_THAT(names_with_face_count(6), Contains("pentagonal pyramid"));
  EXPECT_EQ(names_with_face_count(20),
            (std::vector<std::string>{"regular icosahedron", "18-gonal prism", "19-gonal pyramid"}));
  EXPECT_EQ(names_with_face_count(3), (std::vector<std::string>{"cylinder", "frustum of a cone"}));
}

}  // namespace
}  // namespace fw::solids::naming_test
