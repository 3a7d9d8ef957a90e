#include "tasks/word_problems/cut_pieces.hpp"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "tasks/catalog.hpp"
#include "tasks/word_problems/cut_plan.hpp"

// Pieces that cannot be joined are cut from the least number of items.
namespace fw::tasks::cut_pieces_test {
namespace {

using exact::Number;

std::vector<PieceKind> pieces_of(const std::vector<std::pair<int, std::size_t>>& kinds) {
  std::vector<PieceKind> pieces;
  for (const auto& [length, count] : kinds) {
    pieces.push_back({Number::whole(length), count});
  }
  return pieces;
}
std::size_t least(const std::vector<std::pair<int, std::size_t>>& kinds, int item) {
  const auto plan = least_cuts(pieces_of(kinds), Number::whole(item));
  return plan ? plan->items : 0;
}

TEST(CutPlan, CutsTheEdgesOfTheFindings) {
  EXPECT_EQ(least({{9, 12}}, 15), 12U) << "a cube of 9 cm from straws of 15 cm";
  EXPECT_EQ(least({{7, 12}}, 15), 6U);
  EXPECT_EQ(least({{17, 4}, {18, 4}}, 15), 0U) << "too long";
  EXPECT_EQ(least({{9, 4}, {7, 4}, {5, 4}}, 20), 5U);
}

TEST(CutPlan, IsNotTheLongestFirst) {
  // Source: worked out. The longest that fits, again and again, cuts 5 + 4 and 3 + 3 + 3, and 3 is left over.
  EXPECT_EQ(least({{5, 1}, {4, 1}, {3, 4}}, 11), 2U);
  EXPECT_EQ(least({{6, 2}, {5, 2}, {4, 2}}, 15), 2U);
}

TEST(CutPlan, IsAPlanOfAllPieces) {
  const auto pieces = pieces_of({{9, 4}, {7, 4}, {5, 4}});
  const auto plan = least_cuts(pieces, Number::whole(20));
  ASSERT_TRUE(plan.has_value());
  std::vector<std::size_t> cut(pieces.size(), 0);
  std::size_t items = 0;
  for (const Cut& one : plan->cuts) {
    Number used;
    for (std::size_t i = 0; i < pieces.size(); ++i) {
      cut[i] += one.items * one.pieces[i];
      used = used + Number::whole(static_cast<long long>(one.pieces[i])) * pieces[i].length;
    }
    items += one.items;
    EXPECT_LE(used, Number::whole(20));
  }
  EXPECT_EQ(items, plan->items);
  EXPECT_EQ(cut, (std::vector<std::size_t>{4, 4, 4}));
  EXPECT_EQ(plan->joined, Number::ratio(84, 20));
}

// By trying every item for every piece: nothing is left out.
std::size_t by_trying(std::vector<int> lengths, int item) {
  std::size_t best = lengths.size();
  std::vector<int> rests;
  const std::function<void(std::size_t)> place = [&](std::size_t index) {
    if (rests.size() >= best) {
      return;
    }
    if (index == lengths.size()) {
      best = rests.size();
      return;
    }
    for (std::size_t i = 0; i < rests.size(); ++i) {
      if (rests[i] >= lengths[index]) {
        rests[i] -= lengths[index];
        place(index + 1);
        rests[i] += lengths[index];
      }
    }
    rests.push_back(item - lengths[index]);
    place(index + 1);
    rests.pop_back();
  };
  place(0);
  return best;
}

TEST(CutPlan, IsTheLeastOfAll) {
  Seed seed{3};
  for (int draw = 0; draw < 200; ++draw) {
    const int item = 10 + static_cast<int>(seed.below(15));
    std::vector<std::pair<int, std::size_t>> kinds;
    std::vector<int> lengths;
    for (std::size_t kind = 0; kind < 1 + seed.below(3); ++kind) {
      const int length = 2 + static_cast<int>(kind) + 3 * static_cast<int>(seed.below(3));
      const bool is_new =
          std::none_of(kinds.begin(), kinds.end(), [&](const auto& one) { return one.first == length; });
      if (is_new && length <= item) {
        kinds.emplace_back(length, 1 + seed.below(3));
        lengths.insert(lengths.end(), kinds.back().second, length);
      }
    }
    if (!kinds.empty()) {
      EXPECT_EQ(least(kinds, item), by_trying(lengths, item)) << "draw " << draw;
    }
  }
}

TEST(CutPlan, IsBoundedInPieces) {
  EXPECT_EQ(least({{3, most_pieces}}, 7), most_pieces / 2);
  EXPECT_EQ(least({{3, most_pieces + 1}}, 7), 0U);
}

// ---- as a lesson asks it ----

Result<lessons::Lesson, std::vector<lessons::Finding>> lesson_of(const std::string& solid, const std::string& supply) {
  return read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "prompt": "How many straws?", "solid": )" +
                     solid + R"(, "supply": )" + supply + "}]}");
}
const std::string cube = R"({"kind": "cube", "edge": "9 cm"})";
std::string straws(const std::string& each, const std::string& more = "") {
  return R"({"edge": "edges", "each": ")" + each + R"(", "item": "straw", "joined": false)" + more + "}";
}

TEST(CutPieces, AreCountedFromWholeStraws) {
  const auto lesson = lesson_of(cube, straws("15 cm"));
  ASSERT_TRUE(lesson.has_value());
  const Problem& problem = lesson->problems.front();
  EXPECT_EQ(words::said(*practice::right_answer(problem)), "12");
  EXPECT_EQ(practice::diagnosed(problem, "12 straws")->verdict, practice::AnswerVerdict::Right);
  const auto joined = practice::diagnosed(problem, "8 straws");
  ASSERT_EQ(joined->causes.size(), 1U);
  EXPECT_EQ(joined->causes.front().id, "L15");
  EXPECT_EQ(words::said(joined->message),
            "8 is right if you could join the leftover pieces. You can't. How many whole edges can you cut from one?");
}

TEST(CutPieces, AreConvertedToTheStraw) {
  const auto lesson = lesson_of(cube, straws("0.2 m"));
  ASSERT_TRUE(lesson.has_value());
  EXPECT_EQ(words::said(*practice::right_answer(lesson->problems.front())), "6");
}

std::string fault_of(const std::string& solid, const std::string& supply) {
  const auto lesson = lesson_of(solid, supply);
  return lesson ? "" : words::said(lesson.error().front().message);
}
TEST(CutPieces, AreRefusedWhereTheyCannotBeCut) {
  EXPECT_NE(fault_of(R"({"kind": "cube", "edge": "17 cm"})", straws("15 cm"))
                .find("an edge is 17 cm long, and one straw is only 15 cm: use a longer one, or leave \"joined\" out"),
            std::string::npos);
  EXPECT_NE(fault_of(cube, straws("15 cm", R"(, "round": "down")")).find("leave \"round\" out"), std::string::npos);
  EXPECT_NE(fault_of(cube, R"({"fill": "volume", "each": "15 cm^3", "item": "cup", "joined": false})")
                .find("pieces are cut for all edges"),
            std::string::npos);
  EXPECT_NE(fault_of(cube, R"({"edge": "edges", "each": "15 cm", "item": "straw", "joined": "no"})")
                .find("\"joined\" is true or false"),
            std::string::npos);
}

// ---- the cost is the answer ----

TEST(Cost, IsTheAnswerAndTheCountAStepOnTheWay) {
  const auto lesson = lesson_of(R"({"kind": "cube", "edge": "7 cm"})",
                                R"({"cover": "surface_area", "each": "90 cm^2", "item": "sheet", "price": "$3"})");
  ASSERT_TRUE(lesson.has_value());
  const Problem& problem = lesson->problems.front();
  EXPECT_EQ(words::said(*practice::right_answer(problem)), "$12");
  for (const char* right : {"12", "$12", "$12.00"}) {
    EXPECT_EQ(practice::diagnosed(problem, right)->verdict, practice::AnswerVerdict::Right) << right;
  }
  for (const char* count : {"4", "4 sheets"}) {
    const auto diagnosis = practice::diagnosed(problem, count);
    EXPECT_EQ(diagnosis->verdict, practice::AnswerVerdict::Recognized) << count;
    EXPECT_EQ(words::said(diagnosis->message),
              "4 is how many you need, and that's a good step. How much do they cost altogether?");
  }
  EXPECT_EQ(practice::diagnosed(problem, "$9")->causes.front().id, "L3") << "rounded down";
}

}  // namespace
}  // namespace fw::tasks::cut_pieces_test
