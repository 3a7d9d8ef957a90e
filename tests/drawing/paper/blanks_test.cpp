#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>

#include "paper/sheets/sheets.hpp"
#include "practice/task_type.hpp"
#include "printing.hpp"
#include "reasoning/blank.hpp"
#include "reasoning/board/explained_board.hpp"

// A blank hides what it asks for: it stands nowhere else on its line, in no demo lesson, on the board and in the steps.
namespace fw::paper::blanks_test {
namespace {

using namespace reasoning;

bool is_of_number(char c) { return (c >= '0' && c <= '9') || c == '.' || c == ','; }

/// Whether the text holds the other as a whole: "12" is not in "112" or "12.5".
bool holds(const std::string& text, const std::string& part) {
  for (std::size_t at = text.find(part); at != std::string::npos; at = text.find(part, at + 1)) {
    const std::size_t end = at + part.size();
    const bool begins = at == 0 || !is_of_number(text[at - 1]);
    const bool ends =
        end >= text.size() || !is_of_number(text[end]) || end + 1 >= text.size() || !is_of_number(text[end + 1]);
    if (begins && ends) {
      return true;
    }
  }
  return false;
}

/// "24 cm²" and "24" for "24 cm²".
std::vector<std::string> with_number_alone(const std::string& result) {
  std::vector<std::string> all{result};
  const std::size_t space = result.find(' ');
  const bool is_number = space != std::string::npos && result.find(' ', space + 1) == std::string::npos &&
                         std::all_of(result.begin(), result.begin() + static_cast<std::ptrdiff_t>(space), is_of_number);
  if (is_number) {
    all.push_back(result.substr(0, space));
  }
  return all;
}

void expect_hidden(const std::string& id, const std::string& reason, const std::vector<std::string>& hidden) {
  for (const std::string& one : hidden) {
    if (one.find_first_of("0123456789") == std::string::npos || one == "1") {
      continue;  // letters stand in words, too, and 1 where a unit is told: "1 ft³ is larger"
    }
    for (const std::string& part : with_number_alone(one)) {
      EXPECT_FALSE(holds(reason, part)) << id << ": \"" << part << "\" stands in \"" << reason << "\"";
    }
  }
}

template <class Look>
void for_every_explanation(const Look& look) {
  for (const std::string& name : demo_lessons()) {
    const lessons::Lesson lesson = demo_lesson(name);
    for (const lessons::Problem& problem : lesson.problems) {
      SolutionOptions wanted;
      wanted.notation = lesson.notation;
      const auto all = practice::explained(problem, wanted);
      for (std::size_t i = 0; all && i < all->size(); ++i) {
        look(problem.id, (*all)[i], lesson.notation);
      }
    }
  }
}

TEST(Blanks, HideWhatALineOnTheBoardComesTo) {
  std::size_t blanks = 0;
  for_every_explanation([&](const std::string& id, const Explanation& one, const algebra::ClassNotation& notation) {
    for (const BoardLine& line : board_of(parts_of(one), notation).lines) {
      const BlankedLine blanked = with_blank(line);
      blanks += blanked.hidden.empty() ? 0U : 1U;
      expect_hidden(id, said(blanked.reason), blanked.hidden);
    }
  });
  EXPECT_GT(blanks, 200U);
}

TEST(Blanks, HideWhatAStepComesTo) {
  std::size_t blanks = 0;
  for_every_explanation([&](const std::string& id, const Explanation& one, const algebra::ClassNotation&) {
    for (const Step& step : all_steps(one)) {
      if (blank_kind(step) == BlankKind::Words || !step.line) {
        continue;
      }
      ++blanks;
      const std::string side = algebra::plain_text(step.line->right);
      const std::size_t last = side.rfind(" = ");
      expect_hidden(id, said(with_blank(step).reason), {last == std::string::npos ? side : side.substr(last + 3)});
    }
  });
  EXPECT_GT(blanks, 300U);
}

// "5 = ℓ" comes to 5: the letter alone would be no blank.
TEST(Blanks, AreWhereTheNumberIs) {
  std::size_t letters = 0;
  for_every_explanation([&](const std::string& id, const Explanation& one, const algebra::ClassNotation& notation) {
    for (const BoardLine& line : board_of(parts_of(one), notation).lines) {
      if (line.equations.empty()) {
        continue;
      }
      const auto number_in = [](const std::string& text) {
        return text.find_first_of("0123456789") != std::string::npos;
      };
      const std::string left = algebra::plain_text(line.equations.back().left);
      const std::string right = algebra::plain_text(line.equations.back().right);
      if (number_in(left) && !number_in(right)) {
        ++letters;
        EXPECT_EQ(with_blank(line).hidden.front(), left) << id;
      }
    }
  });
  EXPECT_GT(letters, 3U);
}

std::string notes_text(const std::string& lesson, const std::string& id, Steps steps) {
  lessons::Lesson one = demo_lesson(lesson);
  one.problems.erase(std::remove_if(one.problems.begin(), one.problems.end(),
                                    [&](const lessons::Problem& problem) { return problem.id != id; }),
                     one.problems.end());
  EXPECT_EQ(one.problems.size(), 1U) << id;
  SheetOptions options;
  options.steps = steps;
  return text_of(made(notes, test_fonts(), one, options).pages);
}

// Where the count is a part of a decimal, and where words alone lead to the answer.
TEST(Blanks, HideACountAndTheWordsThatGiveTheAnswerAway) {
  for (const Steps steps : {Steps::Board, Steps::Every}) {
    const std::string crate = notes_text("lantern_market.json", "candle-crate", steps);
    EXPECT_THAT(crate, testing::HasSubstr("how many whole ones fit?"));
    EXPECT_THAT(crate, testing::Not(testing::HasSubstr("fit? 2")));
  }
  const std::string frost = notes_text("lantern_market.json", "frost", Steps::Board);
  EXPECT_THAT(frost, testing::HasSubstr("do you need an area, a volume or a length?"));
  EXPECT_THAT(frost, testing::HasSubstr("Why? ____"));
  EXPECT_THAT(frost, testing::Not(testing::HasSubstr("square units")));
}

}  // namespace
}  // namespace fw::paper::blanks_test
