#include "lessons/open_faces.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "lesson_texts.hpp"

namespace fw::lessons::open_faces_test {
namespace {

using testing::ElementsAre;

solids::Solid solid_of(const std::string& text) {
  const auto lesson = read_lesson(lesson_with_solid(text));
  ensure(lesson.has_value(), "a solid of a test exists");
  return lesson->problems.front().solid;
}

// The areas of the faces that a word names, as whole numbers.
std::vector<double> areas(const solids::Solid& solid, const std::string& name) {
  std::vector<double> found;
  const auto faces = faces_named(solid, name);
  for (const geometry::FaceId face : faces ? *faces : std::vector<geometry::FaceId>{}) {
    found.push_back(solid.faces()[face].area.amount().to_double());
  }
  return found;
}

TEST(FaceWords, OfABox) {
  const auto box = solid_of(R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"})");
  EXPECT_THAT(face_words(box), ElementsAre("top", "bottom", "front", "back", "left", "right", "bases"));
  EXPECT_THAT(areas(box, "top"), ElementsAre(63));
  EXPECT_THAT(areas(box, "bottom"), ElementsAre(63));
  EXPECT_THAT(areas(box, "front"), ElementsAre(45));
  EXPECT_THAT(areas(box, "back"), ElementsAre(45));
  EXPECT_THAT(areas(box, "left"), ElementsAre(35));
  EXPECT_THAT(areas(box, "right"), ElementsAre(35));
  EXPECT_THAT(areas(box, "bases"), ElementsAre(63, 63));
}

// A tent: triangles 8 ft by 3 ft at both ends, the floor 8 ft by 7 ft.
TEST(FaceWords, OfAPrismOnItsSide) {
  const auto tent = solid_of(R"({"kind": "prism", "base": {"shape": "isosceles triangle", "base": "8 ft", "height":
    "3 ft"}, "height": "7 ft", "lies": "side"})");
  EXPECT_THAT(face_words(tent), ElementsAre("bottom", "front", "back", "bases"));
  EXPECT_THAT(areas(tent, "bottom"), ElementsAre(56));
  EXPECT_THAT(areas(tent, "front"), ElementsAre(12));
  EXPECT_THAT(areas(tent, "bases"), ElementsAre(12, 12));
}

TEST(FaceWords, OfAPyramid) {
  const auto shade =
      solid_of(R"({"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"}, "slant_height": "9 cm"})");
  EXPECT_THAT(face_words(shade), ElementsAre("bottom", "base"));
  EXPECT_THAT(areas(shade, "base"), ElementsAre(36));
}

TEST(FaceWords, OfACubeThatHasNoBases) {
  EXPECT_THAT(face_words(solid_of(R"({"kind": "cube", "edge": "7 cm"})")),
              ElementsAre("top", "bottom", "front", "back", "left", "right"));
}

// On every solid of the shelf: a word names faces of the solid, one face each but "bases", opposite words opposite
// faces; and each number names its own face.
TEST(FaceWords, NameFacesOfEverySolid) {
  for (const solids::Description& description : solids::shelf()) {
    const auto made = solids::Solid::make(description);
    ASSERT_TRUE(made.has_value());
    for (const std::string& word : face_words(*made)) {
      const auto faces = faces_named(*made, word);
      ASSERT_TRUE(faces.has_value()) << made->name() << " " << word;
      EXPECT_EQ(faces->size(), word == "bases" ? 2U : 1U) << made->name() << " " << word;
    }
    for (std::size_t i = 0; i < made->faces().size(); ++i) {
      EXPECT_THAT(*faces_named(*made, std::to_string(i + 1)), ElementsAre(geometry::FaceId::at(i)));
    }
    EXPECT_FALSE(faces_named(*made, "0").has_value());
    EXPECT_FALSE(faces_named(*made, std::to_string(made->faces().size() + 1)).has_value());
    EXPECT_FALSE(faces_named(*made, "lid").has_value());
  }
}

TEST(OpenFaces, AreInFaceOrder) {
  const auto lesson = read_lesson(lesson_with(R"(, "open": [5, "bases", 3])"));
  ASSERT_TRUE(lesson.has_value());
  const std::vector<geometry::FaceId> open = open_faces(lesson->problems.front());
  EXPECT_EQ(open.size(), 4U);
  EXPECT_TRUE(std::is_sorted(open.begin(), open.end()));
}

}  // namespace
}  // namespace fw::lessons::open_faces_test
