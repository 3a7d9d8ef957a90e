#include "lessons/write_lesson.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>

#include "lesson_texts.hpp"
#include "lessons/asked.hpp"
#include "lessons/open_faces.hpp"
#include "tasks/word_problems/word_problem.hpp"

namespace fw::lessons::write_lesson_test {
namespace {

TEST(WriteLesson, WritesInAStableOrderWithNumbersAsWritten) {
  const std::string shuffled = R"({"problems": [
    {"supply": {"item": "roll", "each": "40.0 ft^2", "cover": "surface_area"}, "find": ["surface_area"],
     "solid": {"lies": "side", "height": "7 1/2 ft", "kind": "prism",
               "base": {"leg": "5 ft", "base": "8.00 ft", "shape": "isosceles triangle"}},
     "prompt": "How much \"cloth\" = ? ft²", "id": "tent"},
    {"id": "block", "known": {"volume": "60 ft^3"}, "solid": {"kind": "prism", "height": "?",
     "base": {"shape": "polygon", "unit": "ft", "vertices": [["0", 0], [4.50, "0"], [4, 3], [-1, 3]]}}}
    ], "title": "T", "lesson": 1})";
  const auto lesson = read_lesson(shuffled);
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  EXPECT_EQ(write_lesson(*lesson), R"({
  "lesson": 1,
  "title": "T",
  "problems": [
    {
      "id": "tent",
      "prompt": "How much \"cloth\" = ? ft²",
      "solid": {"kind": "prism", "base": {"shape": "isosceles triangle", "base": "8.00 ft", "leg": "5 ft"})"
                                   R"(, "height": "7 1/2 ft", "lies": "side"},
      "find": ["surface_area"],
      "supply": {"cover": "surface_area", "each": "40.0 ft^2", "item": "roll"}
    },
    {
      "id": "block",
      "solid": {"kind": "prism", "base": {"shape": "polygon", "vertices": [[0, 0], [4.50, 0], [4, 3], [-1, 3]])"
                                   R"(, "unit": "ft"}, "height": "?"},
      "known": {"volume": "60 ft^3"}
    }
  ]
}
)");
}

// The class writes as the lesson says; what is usual goes without saying.
TEST(WriteLesson, WritesTheNotationOfTheClass) {
  const auto lesson_saying = [](const std::string& words) {
    std::string text = lesson_with("");
    text.insert(text.find("\"problems\""), "\"notation\": " + words + ", ");
    const auto lesson = read_lesson(text);
    EXPECT_TRUE(lesson.has_value()) << told(lesson.error()).front();
    return *lesson;
  };
  const Lesson said = lesson_saying(R"(["Bh", "division", "dot"])");
  EXPECT_EQ(said.notation.parts, algebra::ClassNotation::Parts::Division);
  EXPECT_EQ(said.notation.box_volume, algebra::ClassNotation::BoxVolume::BaseTimesHeight);
  EXPECT_THAT(write_lesson(said), testing::HasSubstr("\n  \"notation\": [\"division\", \"Bh\"],\n"));
  for (const std::string& word : algebra::notation_words()) {
    const Lesson one = lesson_saying("[\"" + word + "\"]");
    const auto again = read_lesson(write_lesson(one));
    ASSERT_TRUE(again.has_value()) << word;
    EXPECT_EQ(*again, one) << word;
  }
  EXPECT_THAT(write_lesson(lesson_saying(R"(["fraction", "dot"])")), testing::Not(testing::HasSubstr("notation")));
}

TEST(WriteLesson, WritesWhatACountNeedsAndLeavesOutWhatGoesWithoutSaying) {
  const auto lesson = read_lesson(lesson_with(R"(, "supply": {"coats": 2, "price": "$4.50", "round": "none",
    "item": "roll", "each": "40 cm^2", "cover": "surface_area"}, "open": ["top", 3])"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  EXPECT_THAT(write_lesson(*lesson), testing::HasSubstr(R"(
      "open": ["top", 3],
      "supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll", "round": "none", "price": "$4.50")"
                                                        R"(, "coats": 2}
)"));
  const auto plain = read_lesson(lesson_with(
      R"(, "supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll", "round": "up", "coats": 1})"));
  ASSERT_TRUE(plain.has_value());
  EXPECT_THAT(write_lesson(*plain),
              testing::HasSubstr(R"("supply": {"cover": "surface_area", "each": "40 cm^2", "item": "roll"})"));
}

rc::Gen<std::string> any_text() {
  const auto piece = rc::gen::element<std::string>("a", "Z", " ", "\"", "\\", "\n", "\t", "²", "ℓ", "🏮", "/", "\x01");
  return rc::gen::map(rc::gen::container<std::vector<std::string>>(piece), [](const std::vector<std::string>& pieces) {
    std::string text;
    for (const std::string& part : pieces) {
      text += part;
    }
    return text;
  });
}

// A problem on any solid of the shelf, in any unit in which its numbers can be written out, asking for any of its
// measures.
Problem any_problem(std::size_t number) {
  const std::vector<solids::Description> shelf = solids::shelf();
  const auto example = *rc::gen::elementOf(shelf);
  const auto unit = *units::Unit::find(*rc::gen::element<std::string>("mm", "cm", "dm", "m"));
  const solids::Description description = *rc::gen::arbitrary<bool>() ? in_unit(example, unit) : example;
  const auto solid = solids::Solid::make(description);
  RC_PRE(solid.has_value());
  Problem problem{"p-" + std::to_string(number), *any_text(), description, {}, *solid};
  std::vector<std::string> names = askable(*solid);
  names.insert(names.end(), {"name", "faces", "edges", "vertices"});
  for (const std::string& name : names) {
    if (*rc::gen::arbitrary<bool>()) {
      problem.tasks.push_back(tasks::named(name));
    }
  }
  if (*rc::gen::arbitrary<bool>()) {
    const auto written = units::parse_quantity(*rc::gen::element<std::string>("40.0 ft^2", "7 1/2 m^2", "3 yd^2"));
    Supply supply{Purpose::Cover, "surface_area", *written, "roll of " + *any_text()};
    supply.rounding = *rc::gen::element(Rounding::Up, Rounding::Down, Rounding::None);
    supply.coats = *rc::gen::inRange(1, 21);
    if (*rc::gen::arbitrary<bool>()) {
      supply.price = Price{*rc::gen::element<std::string>("$4.50", "3", "€0.25"), "", {}};
    }
    problem.tasks.insert(problem.tasks.begin(), tasks::WordProblem(std::move(supply)));
  }
  const std::vector<std::string> find = find_of(problem);
  const bool asks_a_part = std::find(find.begin(), find.end(), "lateral_area") != find.end() ||
                           std::find(find.begin(), find.end(), "base_area") != find.end();
  if (!asks_a_part && *rc::gen::arbitrary<bool>()) {
    std::vector<std::string> names = face_words(*solid);
    names.push_back("1");
    const std::string name = *rc::gen::elementOf(names);
    problem.open = {{name, *faces_named(*solid, name)}};
  }
  return problem;
}

RC_GTEST_PROP(WriteLesson, ReadsBackAsTheSameLesson, ()) {
  Lesson lesson{"T" + *any_text(), {}};
  const std::size_t count = *rc::gen::inRange<std::size_t>(1, 4);
  for (std::size_t i = 0; i < count; ++i) {
    lesson.problems.push_back(any_problem(i));
  }
  const std::string text = write_lesson(lesson);
  const auto again = read_lesson(text);
  if (!again) {
    RC_FAIL(told(again.error()).front() + "\n" + text);
  }
  RC_ASSERT(*again == lesson);
  RC_ASSERT(write_lesson(*again) == text);
}

}  // namespace
}  // namespace fw::lessons::write_lesson_test
