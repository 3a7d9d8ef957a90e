#include <gmock/gmock.h>

#include "lesson_texts.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/write_lesson.hpp"

namespace fw::lessons::read_task_test {
namespace {

using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;

struct Bad {
  std::string members, message;
};
class BadTask : public testing::TestWithParam<Bad> {};
TEST_P(BadTask, IsToldWithItsPlaceAndARemedy) {
  EXPECT_THAT(errors_of(lesson_with(GetParam().members)), ElementsAre(GetParam().message));
}

TEST(AListThatIsAsked, IsTheOneOfItThatIsNotGiven) {
  for (const auto& [heights, name] : std::vector<std::pair<std::string, std::string>>{
           {R"(["15 cm", "?"])", "slant_heights.2"}, {R"(["?", "15 cm"])", "slant_heights.1"}}) {
    const auto lesson = read_lesson(lesson_with_solid(
        R"({"kind": "pyramid", "base": {"shape": "rectangle", "length": "12 cm", "width": "18 cm"},
            "slant_heights": )" +
            heights + "}",
        R"(, "find": ["slant_heights"])"));
    ASSERT_TRUE(lesson.has_value());
    EXPECT_EQ(length_named(lesson->problems.front().solid, "slant_heights")->name, name);
  }
}

const std::string pyramid = R"({"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"})";

std::string written_back(const std::string& lesson_text) {
  const auto lesson = read_lesson(lesson_text);
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : told(lesson.error()).front());
  const std::string written = lesson ? write_lesson(*lesson) : "";
  const auto again = read_lesson(written);
  EXPECT_TRUE(again.has_value() && lesson && *again == *lesson) << written;
  return written;
}

TEST(Task, IsWrittenAsItIsRead) {
  EXPECT_THAT(written_back(lesson_with(R"(, "find": ["volume"], "scale": "1/2")")), HasSubstr(R"("scale": "1/2")"));
  EXPECT_THAT(written_back(lesson_with(R"(, "scale": "?", "copy": {"surface_area": "4576 cm^2"}, "find": ["scale"])")),
              HasSubstr(R"(      "find": ["scale"],
      "scale": "?",
      "copy": {"surface_area": "4576 cm^2"}
)"));
  EXPECT_THAT(written_back(lesson_with(R"(, "find": ["volume"], "unit": "L")")), HasSubstr(R"("unit": "L")"));
  EXPECT_THAT(written_back(lesson_with_solid(pyramid, R"(, "claim": {"slant_height": "9 cm"})")),
              HasSubstr(R"("claim": {"slant_height": "9 cm"})"));
  EXPECT_THAT(written_back(lesson_with(R"(, "face": 3)")), HasSubstr(R"("face": 3)"));
  EXPECT_THAT(written_back(lesson_with(R"(, "find": ["volume"], "wrong": {"answer": "286 cm^3"})")),
              HasSubstr(R"("wrong": {"answer": "286 cm^3"})"));
  EXPECT_THAT(
      written_back(lesson_with(R"(, "find": ["surface_area"], "between": ["100 cm^2", "200 cm^2", "0.04 m^2"])")),
      HasSubstr(R"("between": ["100 cm^2", "200 cm^2", "0.04 m^2"])"));
  EXPECT_THAT(written_back(lesson_with(
                  R"(, "supply": {"item": "candle", "pack": "volume",
                      "box": {"height": "30 mm", "length": "3 cm", "width": "3 cm"}})")),
              HasSubstr(R"("supply": {"pack": "volume", "item": "candle", "box": {"length": "3 cm", "width": "3 cm", )"
                        R"("height": "30 mm"}})"));
  EXPECT_THAT(written_back(lesson_with(R"(, "find": ["purpose"], "supply": {"cover": "surface_area"})")),
              HasSubstr(R"("find": ["purpose"])"));
}

TEST(Task, FindsTheFactorOfACopy) {
  const auto lesson =
      read_lesson(lesson_with(R"(, "scale": "?", "copy": {"surface_area": "0.4576 m^2"}, "find": ["scale"])"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  // Source: the box of 9, 7 and 5 has a surface of 286; 286 · 16 = 4576.
  EXPECT_EQ(*practice::question_of(lesson->problems.front())->truth, exact::Number::whole(4));
}

// Source: a box of 10 by 8 by 7 holds 3 · 2 · 2 = 12 cubes of edge 3, though 560 / 27 is more than 20.
TEST(Task, CountsWhatIsPackedAlongTheEdges) {
  const auto lesson = read_lesson(
      lesson_with_solid(R"({"kind": "rectangular prism", "length": "10 cm", "width": "8 cm", "height": "7 cm"})",
                        R"(, "supply": {"pack": "volume", "item": "candle",
          "box": {"length": "3 cm", "width": "3 cm", "height": "3 cm"}})"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  const std::vector<practice::Packing> ways = practice::question_of(lesson->problems.front())->ways;
  ASSERT_EQ(ways.size(), 1U);
  EXPECT_EQ(ways.front().count, 12);
  EXPECT_THAT(ways.front().rows, ElementsAre(3, 2, 2));
}

// Source: counted by hand: 9 × 7 × 5 holds items of 4 × 3 × 2 in rows of 3·3·1, 2·2·2, 4·2·1, 2·3·1, 3·1·2 and 4·1·1.
TEST(Task, TriesTheSixWaysRound) {
  const auto lesson = read_lesson(lesson_with(
      R"(, "supply": {"pack": "volume", "item": "soap",
          "box": {"length": "4 cm", "width": "3 cm", "height": "2 cm"}})"));
  ASSERT_TRUE(lesson.has_value()) << told(lesson.error()).front();
  const std::vector<practice::Packing> ways = practice::question_of(lesson->problems.front())->ways;
  std::vector<long long> counts;
  for (const practice::Packing& way : ways) {
    counts.push_back(way.count);
  }
  EXPECT_THAT(counts, ElementsAre(9, 8, 8, 6, 6, 4));
}

TEST(Task, TakesFactorsFromAThousandthToAThousand) {
  const auto is_taken = [](const std::string& factor) {
    return read_lesson(lesson_with(R"(, "scale": ")" + factor + R"(", "find": ["volume"])")).has_value();
  };
  EXPECT_TRUE(is_taken("1000"));
  EXPECT_TRUE(is_taken("1/1000"));
  EXPECT_FALSE(is_taken("1001"));
  EXPECT_FALSE(is_taken("1/1001"));
  EXPECT_FALSE(is_taken("0"));
  EXPECT_FALSE(is_taken("-2"));
}

TEST(Task, TellsOfFactorsThatHideAMistake) {
  const auto hints = [](const std::string& factor, const std::string& find) {
    return findings_of(lesson_with(R"(, "scale": ")" + factor + R"(", "find": [")" + find + R"("])"));
  };
  EXPECT_THAT(told(hints("2", "surface_area")),
              ElementsAre("a.json:1:63: problem p: with a factor of 2, taking it times 2 gives the right number too: "
                          "another factor would show the mistake"));
  EXPECT_THAT(hints("4", "surface_area"), IsEmpty());
  EXPECT_THAT(hints("1/2", "volume"), IsEmpty());
}

INSTANTIATE_TEST_SUITE_P(
    Messages, BadTask,
    testing::Values(
        Bad{R"(, "find": ["volume"], "scale": "1")",
            "a.json:1:176: problem p, scale: \"1\" is not a scale factor: write how many times as long the edges of "
            "the copy are, such as \"4\", \"2.5\" or \"1/2\", from 1/1000 to 1000 and not 1"},
        Bad{R"(, "find": ["volume"], "scale": "four")",
            "a.json:1:176: problem p, scale: \"four\" is not a scale factor: write how many times as long the edges of "
            "the copy are, such as \"4\", \"2.5\" or \"1/2\", from 1/1000 to 1000 and not 1"},
        Bad{R"(, "find": ["volume"], "scale": 4)",
            "a.json:1:176: problem p, scale: a factor is text in quotation marks; found the number 4"},
        Bad{R"(, "scale": "4")",
            "a.json:1:156: problem p: the problem has a copy but asks nothing: write \"find\": [\"volume\"]"},
        Bad{R"(, "find": ["name"], "scale": "4")",
            "a.json:1:156: problem p: \"name\" can't be asked about a copy; what can go here is \"surface_area\", "
            "\"lateral_area\", \"base_area\" or \"volume\""},
        Bad{R"(, "find": ["scale"], "scale": "?")",
            "a.json:1:175: problem p, scale: to find the scale factor, give one measure of the copy, such as "
            "\"copy\": {\"surface_area\": \"4576 cm^2\"}"},
        Bad{R"(, "find": ["volume"], "scale": "4", "copy": {"volume": "20160 cm^3"})",
            "a.json:1:189: problem p: the scale factor is given, so the copy needs no measure: leave \"copy\" out, or "
            "ask for the factor with \"scale\": \"?\""},
        Bad{R"(, "find": ["volume"], "copy": {"volume": "20160 cm^3"})",
            "a.json:1:175: problem p: \"copy\" goes with \"scale\": \"?\""},
        Bad{R"(, "find": ["scale"], "scale": "?", "copy": {"surface_area": "500 cm^2"})",
            "a.json:1:205: problem p, copy.surface_area: \"500 cm^2\" makes the edges ≈ 1.322 times as long, which "
            "does not work as a scale factor; 483.34 cm^2 makes them 1.3 times as long"},
        Bad{R"(, "find": ["scale"], "scale": "?", "copy": {})",
            "a.json:1:188: problem p, copy: \"copy\" is an object with one measure, such as {\"surface_area\": \"4576 "
            "cm^2\"}; found 0 of them"},
        Bad{R"(, "find": ["scale"], "scale": "?", "copy": {"volume": "20160 cm^2"})",
            "a.json:1:199: problem p, copy.volume: \"20160 cm^2\" is an area; it should be a volume, such as \"180 "
            "cm^3\""},
        Bad{R"(, "find": ["volume"], "unit": "m^2")",
            "a.json:1:175: problem p, unit: \"m^2\" measures an area; \"volume\" is a volume, so ask for it in its own "
            "problem"},
        Bad{R"(, "find": ["volume"], "unit": "squares")",
            "a.json:1:175: problem p, unit: \"squares\" is not a unit; \"m^2\", \"ft^3\" and \"L\" are some"},
        Bad{R"(, "unit": "m^3")",
            "a.json:1:155: problem p, unit: a unit is given, but nothing is asked in it: write \"find\": "
            "[\"surface_area\"]"},
        Bad{R"(, "find": ["name"], "unit": "m^2")",
            "a.json:1:173: problem p, unit: \"m^2\" measures an area; \"name\" is no measure, so ask for it in its own "
            "problem"},
        Bad{R"(, "claim": {"height": "6 cm"})",
            "a.json:1:157: problem p, claim: \"height\" is already given in the solid: take it out there, or claim a "
            "different label"},
        Bad{R"(, "claim": "5 cm")",
            "a.json:1:156: problem p, claim: \"claim\" is an object with one label, such as {\"slant_height\": \"9 "
            "cm\"}; found the text \"5 cm\""},
        Bad{R"(, "find": ["volume"], "wrong": {"answer": "315 cm^3"})",
            "a.json:1:187: problem p, wrong.answer: \"315 cm^3\" is the right answer: write the one that a mistake "
            "leads to"},
        Bad{R"(, "find": ["volume"], "wrong": {"answer": "286 cm^2"})",
            "a.json:1:187: problem p, wrong.answer: \"286 cm^2\" is an area; it should be a volume, such as \"180 "
            "cm^3\""},
        Bad{R"(, "find": ["volume"], "wrong": "286 cm^3")",
            "a.json:1:176: problem p, wrong: \"wrong\" is an object with the answer that a student got, such as "
            "{\"answer\": \"260 cm^2\"}; found the text \"286 cm^3\""},
        Bad{R"(, "find": ["volume", "surface_area"], "wrong": {"answer": "286 cm^3"})",
            "a.json:1:192: problem p, wrong: \"wrong\" goes with one measure to find, as in \"find\": "
            "[\"surface_area\"]"},
        Bad{R"(, "find": ["volume"], "wrong": {"answer": "286 in^3"})",
            "a.json:1:187: problem p, wrong.answer: \"286 in^3\" is not in the unit of this solid: write it in cm^3"},
        Bad{R"(, "find": ["volume"], "between": ["100 cm^3", "200 cm^3"])",
            "a.json:1:178: problem p, between: \"between\" is a list of 3 to 9 bounds, such as [\"100 cm^2\", \"200 "
            "cm^2\", \"400 cm^2\"]; found 2"},
        Bad{R"(, "find": ["volume"], "between": ["100 cm^3", "90 cm^3", "400 cm^3"])",
            "a.json:1:191: problem p, between: list the bounds from least to greatest: \"90 cm^3\" is not more than "
            "\"100 cm^3\""},
        Bad{R"(, "find": ["volume"], "between": ["100 cm^3", "200 cm^3", "300 cm^3"])",
            "a.json:1:178: problem p, between: the answer is 315 cm^3, which is in none of these intervals: give a "
            "bound below it and one above it"},
        Bad{R"(, "find": ["volume"], "between": ["100 cm^3", "315 cm^3", "400 cm^3"])",
            "a.json:1:178: problem p, between: the answer is 315 cm^3, which is one of the bounds: move this bound"},
        Bad{R"(, "find": ["volume"], "between": ["1 cm^3", "4 L", "9 L"], "unit": "L")",
            "a.json:1:178: problem p, between: \"between\" can't go with \"unit\": ask one of them in its own problem"},
        Bad{R"(, "find": ["purpose"])",
            "a.json:1:156: problem p: \"purpose\" can't be asked about a rectangular prism; what can go here is "
            "\"surface_area\", \"lateral_area\", \"base_area\", \"volume\", \"length\", \"width\", \"height\", "
            "\"name\", \"faces\", \"edges\" or \"vertices\""},
        Bad{R"(, "find": ["same_number"])",
            "a.json:1:155: problem p: \"same_number\" goes with a solid whose surface area and volume are one number, "
            "such as a cube with an edge of 6 cm"},
        Bad{R"(, "find": ["least_surface", "volume"])",
            "a.json:1:155: problem p: \"least_surface\" is asked by itself: ask for the rest in its own problem"},
        Bad{R"(, "face": 7)",
            "a.json:1:155: problem p, face: \"face\" is the number of a face whose area is worked from two lengths; of "
            "a rectangular prism these are 1, 2, 3, 4, 5 and 6; found the number 7"},
        Bad{R"(, "face": "top")",
            "a.json:1:155: problem p, face: \"face\" is the number of a face whose area is worked from two lengths; of "
            "a rectangular prism these are 1, 2, 3, 4, 5 and 6; found the text \"top\""},
        Bad{R"(, "face": 2, "find": ["volume"])",
            "a.json:1:155: problem p, face: \"face\" asks for the lengths of a face, \"find\" for something else: ask "
            "for one of the two in a problem of its own"}));

const std::string soap = R"("box": {"length": "4 cm", "width": "3 cm", "height": "2 cm"})";
INSTANTIATE_TEST_SUITE_P(
    PackingMessages, BadTask,
    testing::Values(Bad{R"(, "supply": {"pack": "volume", )" + soap + "}",
                        "a.json:1:157: problem p: a supply that packs also says what is packed: \"item\": \"candle\""},
                    Bad{R"(, "supply": {"pack": "volume", "item": "soap"})",
                        "a.json:1:157: problem p: a supply that packs says how large one item is: \"box\": "
                        "{\"length\": \"5 cm\", \"width\": \"3 cm\", \"height\": \"2 cm\"}"},
                    Bad{R"(, "supply": {"pack": "volume", "item": "soap", "box": {"length": "4 cm", "width": "3 cm"}})",
                        "a.json:1:199: problem p, box.height: the key \"height\" of what is packed is missing: write a "
                        "length such as \"5 cm\""},
                    Bad{R"(, "supply": {"pack": "surface_area", "item": "soap", )" + soap + "}",
                        "a.json:1:166: problem p, pack: \"surface_area\" can't be packed: write \"volume\""},
                    Bad{R"(, "supply": {"pack": "volume", "item": "soap", "coats": 2, )" + soap + "}",
                        "a.json:1:201: problem p, coats: \"coats\" does not go with \"pack\": whole items are counted "
                        "along each edge"},
                    Bad{R"(, "supply": {"fill": "volume", "item": "soap", )" + soap + "}",
                        "a.json:1:199: problem p, box: \"box\" goes with \"pack\"; otherwise \"each\" says how much "
                        "one item covers, fills or edges"},
                    Bad{R"(, "supply": {"pack": "volume", "item": "soap", "box": {"length": "10 cm", "width": "3 cm", )"
                        R"("height": "2 cm"}})",
                        "a.json:1:199: problem p, box: not even one soap fits into this solid: make the item smaller"},
                    Bad{R"(, "find": ["purpose"], "supply": {"pack": "volume", "item": "soap", )" + soap + "}",
                        "a.json:1:156: problem p: \"purpose\" can't be asked about a rectangular prism; what can go "
                        "here is \"surface_area\", \"lateral_area\", \"base_area\", \"volume\", "
                        "\"length\", \"width\", \"height\", \"name\", \"faces\", \"edges\" or \"vertices\""}));

TEST(Task, ComparesBoxesWithWholeEdgesAlone) {
  const std::string box = R"({"kind": "rectangular prism", "length": "6 in", "width": "4 in", "height": "2.5 in"})";
  EXPECT_THAT(errors_of(lesson_with_solid(box, R"(, "find": ["least_surface"])")),
              ElementsAre(HasSubstr("goes with a box whose length, width and height are whole numbers up to 1000")));
  EXPECT_THAT(errors_of(lesson_with_solid(pyramid, R"(, "find": ["least_surface"])")),
              ElementsAre(HasSubstr("goes with a box whose length")));
}

TEST(Task, NeedsAMeasureThatTheSolidHas) {
  const std::string cube = R"({"kind": "cube", "edge": "7 cm"})";
  EXPECT_THAT(errors_of(lesson_with_solid(cube, R"(, "find": ["lateral_area"], "wrong": {"answer": "7 cm^2"})")),
              testing::Contains(HasSubstr("\"wrong\" goes with one measure to find")));
  EXPECT_THAT(errors_of(lesson_with_solid(cube, R"(, "find": ["lateral_area"], "scale": "4")")),
              ElementsAre("a.json:1:106: problem p: \"lateral_area\" can't be asked about a copy; what can go here is "
                          "\"surface_area\" or \"volume\""));
  EXPECT_THAT(
      errors_of(lesson_with_solid(cube, R"(, "find": ["scale"], "scale": "?", "copy": {"lateral_area": "800 cm^2"})")),
      testing::Contains(HasSubstr("a cube has no measure \"lateral_area\"")));
}

TEST(Task, PacksNoMoreThanAMillion) {
  EXPECT_THAT(errors_of(lesson_with(R"(, "supply": {"pack": "volume", "item": "grain", "box": {"length": "0.01 mm",
                                     "width": "0.01 mm", "height": "0.01 mm"}})")),
              ElementsAre(HasSubstr("box: more than a million of them fit into this solid: make the item larger")));
}

TEST(Task, NeedsASolidWithThreeEdgesToPack) {
  EXPECT_THAT(errors_of(lesson_with_solid(pyramid, R"(, "supply": {"pack": "volume", "item": "soap", )" + soap + "}")),
              ElementsAre("a.json:1:168: problem p, pack: a square pyramid has no length, width and height, so nothing "
                          "can be packed into it in rows: use a solid that has all three"));
  EXPECT_THAT(errors_of(lesson_with_solid(pyramid, R"(, "claim": {"hight": "13 cm"})")),
              ElementsAre("a.json:1:159: problem p, claim: \"hight\" can't be claimed of a square pyramid; what can go "
                          "here is \"slant_height\" or \"lateral_edge\""));
}

}  // namespace
}  // namespace fw::lessons::read_task_test
