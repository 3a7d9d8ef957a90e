// Everything that is printed of a lesson, looked at as data and as files.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <map>
#include <set>

#include "exact/print_number.hpp"
#include "paper/sheets/print.hpp"
#include "paper/sheets/problem_figure.hpp"
#include "paper/sheets/problem_text.hpp"
#include "practice/task_type.hpp"
#include "printing.hpp"
#include "support/sanitized.hpp"

namespace fw::paper::sheets_test {
namespace {

using testing::HasSubstr;
using testing::Not;

SheetOptions options_for(const std::string& paper, bool is_large) {
  SheetOptions options;
  options.style.paper = *find_paper(paper);
  options.style.is_large = is_large;
  options.version = "A";
  return options;
}

std::string without_spaces(const std::string& text) {
  std::string out;
  for (const char c : text) {
    if (c != ' ' && c != '\n' && c != '\f') {
      out += c;
    }
  }
  return out;
}

// Nothing reaches into the margin that printers leave blank, and no text is too small to read. Powers may be smaller.
TEST(Sheets, StayInsideTheMarginAndAreReadable) {
  for (const SheetKind& kind : sheet_kinds()) {
    for (const std::string& name : fw::test::some_of(demo_lessons(), 4)) {
      for (const char* paper : fw::test::some_of<const char*>({"letter", "a4"}, 2)) {
        for (const bool is_large : {false, true}) {
          if (is_large == (std::string(paper) == "a4") && name != "candle_boxes.json") {
            continue;  // each lesson on both papers, large on one of them
          }
          const SheetOptions options = options_for(paper, is_large);
          const Printed printed = made(kind.plan, test_fonts(), demo_lesson(name), options);
          EXPECT_TRUE(printed.missing.empty()) << kind.key << " " << name;
          for (std::size_t i = 0; i < printed.pages.size(); ++i) {
            const Rect ink = inked(printed.pages[i]);
            const bool lies = printed.pages[i].width > printed.pages[i].height;
            const PaperSize sheet = lies ? options.style.paper.lying() : options.style.paper;
            EXPECT_TRUE(sheet.printable().contains(ink, 0.2))
                << kind.key << " of " << name << " on " << paper << (is_large ? ", large" : "") << ", page " << i + 1
                << ": " << ink.x << " " << ink.y << " " << ink.right() << " " << ink.bottom();
            for (const Item& item : printed.pages[i].items) {
              const auto* text = std::get_if<TextItem>(&item);
              // A line of work that is wider than the page is set smaller, on the pages that show work.
              const bool shows_work = kind.key != "handout" && kind.key != "slips" && kind.key != "words";
              const double least = points(!is_large || kind.key == "nets" ? 9 : shows_work ? 12 : 18);
              const bool is_power =
                  text != nullptr && text->text.find_first_not_of("0123456789−n") == std::string::npos;
              EXPECT_TRUE(text == nullptr || text->size >= least * (is_power ? 0.7 : 1) - 1e-9)
                  << kind.key << ": " << text->text << " at " << text->size / points(1);
            }
          }
        }
      }
    }
  }
}

// What a reader of the file gets: each prompt once, in order, and fonts that come with it.
TEST(Sheets, AreReadInOrder) {
  for (const std::string& name : demo_lessons()) {
    const lessons::Lesson lesson = demo_lesson(name);
    const Printed printed = made(handout, test_fonts(), lesson, options_for("letter", false));
    const PrintedFile file(pdf_file(printed.pages, test_fonts(), lesson.title));
    EXPECT_EQ(ran("qpdf --check " + file.path()).status, 0);
    const std::string fonts = ran("pdffonts " + file.path()).out;
    EXPECT_THAT(fonts, HasSubstr("FWAAAA+Andika "));
    EXPECT_THAT(fonts, Not(HasSubstr(" no "))) << "a font is not in the file";
    const std::string text = without_spaces(ran("pdftotext " + file.path() + " -").out);
    std::size_t at = 0;
    for (const lessons::Problem& problem : lesson.problems) {
      const std::string prompt = without_spaces(prompt_text(problem));
      const std::size_t found = text.find(prompt, at);
      EXPECT_NE(found, std::string::npos) << problem.id << ": " << prompt;
      at = found == std::string::npos ? at : found;
    }
  }
}

// The border of each page is white as it comes from the printer.
TEST(Sheets, LeaveTheBorderWhite) {
  const lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  const Printed printed = made(handout, test_fonts(), lesson, options_for("a4", false));
  const PrintedFile file(pdf_file({printed.pages.front(), printed.pages.back()}, test_fonts(), lesson.title));
  ASSERT_EQ(ran("pdftoppm -r 100 -gray " + file.path() + " " + file.folder() + "/p").status, 0);
  for (const char* name : {"/p-1.pgm", "/p-2.pgm"}) {
    std::ifstream in(file.folder() + name, std::ios::binary);
    std::string kind;
    int width = 0;
    int height = 0;
    int most = 0;
    in >> kind >> width >> height >> most;
    in.get();
    std::string pixels((std::istreambuf_iterator<char>(in)), std::istreambuf_iterator<char>());
    ASSERT_EQ(pixels.size(), static_cast<std::size_t>(width * height));
    const int border = static_cast<int>(10 / 25.4 * 100) - 1;
    int dark = 0;
    for (int y = 0; y < height; ++y) {
      for (int x = 0; x < width; ++x) {
        const bool is_border = x < border || y < border || x >= width - border || y >= height - border;
        dark += is_border && static_cast<unsigned char>(pixels[static_cast<std::size_t>(y * width + x)]) < 250 ? 1 : 0;
      }
    }
    EXPECT_EQ(dark, 0) << name;
  }
}

// A student's page tells no length that has to be found.
TEST(Sheets, TellAStudentNoAnswer) {
  for (const std::string& name : demo_lessons()) {
    for (const lessons::Problem& problem : demo_lesson(name).problems) {
      for (const auto& label : student_labels(problem)) {
        if (!label || label->find('?') != std::string::npos) {
          continue;
        }
        for (const AskedItem& item : asked_items(problem)) {
          EXPECT_NE(*label, answer_line(problem, item, 1)) << problem.id;
        }
      }
    }
  }
}

// The key has every answer; its wrong numbers are each told once and are never right.
TEST(Sheets, KeyHasEveryAnswerAndNoWrongNumberThatIsRight) {
  for (const std::string& name : demo_lessons()) {
    const lessons::Lesson lesson = demo_lesson(name);
    SheetOptions options = options_for("letter", false);
    options.steps = Steps::None;
    const std::string text = without_spaces(text_of(made(key, test_fonts(), lesson, options).pages));
    for (const lessons::Problem& problem : lesson.problems) {
      for (const AskedItem& item : asked_items(problem)) {
        EXPECT_THAT(text, HasSubstr(without_spaces(answer_line(problem, item, 1)))) << problem.id;
        std::set<std::string> told;
        for (const LikelyMistake& one : likely_mistakes(problem, item, 6)) {
          EXPECT_TRUE(told.insert(one.number).second) << one.number;
          const auto diagnosis = practice::diagnosed(problem, one.number, item.question.find);
          ASSERT_TRUE(diagnosis.has_value());
          EXPECT_NE(diagnosis->verdict, practice::AnswerVerdict::Right) << problem.id << ": " << one.number;
          EXPECT_EQ(diagnosis->causes.front().id, one.cause) << problem.id << ": " << one.number;
        }
      }
    }
  }
}

// Blanks: the more are filled, the more text there is; none of them shows through.
TEST(Sheets, NotesAreFilledByDegrees) {
  const lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  for (const Steps steps : {Steps::Board, Steps::Every}) {
    std::vector<std::size_t> lengths;
    for (const Gaps gaps : {Gaps::All, Gaps::Half, Gaps::None}) {
      SheetOptions options = options_for("letter", false);
      options.gaps = gaps;
      options.steps = steps;
      lengths.push_back(without_spaces(text_of(made(notes, test_fonts(), lesson, options).pages)).size());
    }
    EXPECT_LT(lengths[0], lengths[1]);
    EXPECT_LT(lengths[1], lengths[2]);
  }
}

// A length that follows from others is not written at a figure, since it may be the answer.
TEST(Sheets, LabelALengthOnlyWhereTheLessonGivesIt) {
  const auto lesson = tasks::read_lesson(
      R"({"lesson": 1, "title": "Spire", "problems": [{"id": "spire", "prompt": "What is the volume?",
      "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"}, "slant_height": "5 cm"},
      "find": ["volume"]}]})");
  ASSERT_TRUE(lesson.has_value());
  std::vector<std::string> labels;
  for (const auto& label : student_labels(lesson->problems.front())) {
    labels.push_back(label.value_or("none"));
  }
  EXPECT_THAT(labels, testing::UnorderedElementsAre("6 cm", "5 cm"));
}

/// Whether a text without spaces says that something equals this number.
bool says_equal(const std::string& text, const std::string& number) {
  for (const std::string& sign : {std::string("="), std::string("≈")}) {
    for (std::size_t at = text.find(sign + number); at != std::string::npos; at = text.find(sign + number, at + 1)) {
      const std::size_t end = at + sign.size() + number.size();
      const std::string after = text.substr(end, 2);
      const bool is_whole = after.empty() || (std::isdigit(static_cast<unsigned char>(after[0])) == 0 &&
                                              after[0] != '.' && after[0] != ',' && after[0] != '/');
      // A product or a sum that begins with the number is another one.
      if (is_whole && text.substr(end, 12).find("×") == std::string::npos &&
          text.substr(end, 12).find("÷") == std::string::npos && text.substr(end, 12).find('+') == std::string::npos) {
        return true;
      }
    }
  }
  return false;
}

// Of every problem that asks for one number, on the board and in every step.
TEST(Sheets, NotesWithBlanksNeverComeToTheAnswer) {
  std::size_t looked_at = 0;
  for (const char* name : {"lantern_fair.json", "candle_boxes.json"}) {
    const lessons::Lesson all = demo_lesson(name);
    for (const lessons::Problem& problem : all.problems) {
      const auto question = practice::question_of(problem);
      if (!question || !question->truth || problem.tasks.size() != 1 || !problem.tasks.front()->is_rounded()) {
        continue;
      }
      lessons::Lesson one = all;
      one.problems = {problem};
      const std::string number = exact::shown(*question->truth, problem.round_to.value_or(2)).text;
      for (const Steps steps : {Steps::Board, Steps::Every}) {
        SheetOptions options = options_for("letter", false);
        options.steps = steps;
        options.gaps = Gaps::None;
        const auto text = [&] { return without_spaces(text_of(made(notes, test_fonts(), one, options).pages)); };
        looked_at += says_equal(text(), number) ? 1 : 0;
        for (const Gaps gaps : {Gaps::Half, Gaps::All}) {
          options.gaps = gaps;
          EXPECT_FALSE(says_equal(text(), number)) << problem.id << ": " << number << '\n' << text();
        }
      }
    }
  }
  EXPECT_GT(looked_at, 20U) << "or this shows nothing";
}

// Half filled, the answer is still to be found.
TEST(Sheets, HalfFilledNotesLeaveTheAnswerOpen) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "Box", "problems": [
      {"id": "box", "prompt": "How much paper?",
      "find": ["surface_area"],
       "solid": {"kind": "rectangular prism", "length": "9 in", "width": "7 in", "height": "5 in"}}]})");
  ASSERT_TRUE(lesson.has_value());
  SheetOptions options = options_for("letter", false);
  options.gaps = Gaps::Half;
  EXPECT_THAT(text_of(made(notes, test_fonts(), *lesson, options).pages), Not(HasSubstr("286 in")));
  options.gaps = Gaps::None;
  EXPECT_THAT(text_of(made(notes, test_fonts(), *lesson, options).pages), HasSubstr("286 in²"));
}

TEST(Sheets, ACodeGoesByTheContent) {
  lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  const std::string code = lesson_code(lesson);
  EXPECT_EQ(code.size(), 6U);
  EXPECT_EQ(code, lesson_code(demo_lesson("lantern_fair.json")));
  lesson.problems.front().prompt += "!";
  EXPECT_NE(code, lesson_code(lesson));
}

TEST(Sheets, AreTheSameEveryTime) {
  for (const SheetKind& kind : sheet_kinds()) {
    const lessons::Lesson lesson = demo_lesson("lantern_market.json");
    const auto once = [&] {
      return pdf_file(made(kind.plan, test_fonts(), lesson, options_for("a4", false)).pages, test_fonts(),
                      lesson.title);
    };
    EXPECT_EQ(once(), once()) << kind.key;
  }
}

// A prompt from anywhere: long, in another script, with signs that steer a printer.
TEST(Sheets, HostilePromptsArePrintedOrTold) {
  lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  lesson.problems.erase(lesson.problems.begin() + 3, lesson.problems.end());
  lesson.problems[0].prompt = std::string(4'096, 'x');
  lesson.problems[1].prompt = "כמה נייר? 🏮 \u202E how much\x07?";
  lesson.problems[2].prompt = std::string(6'000, 'y') + " \n\n" + std::string(200, '\n');
  for (const SheetKind& kind : sheet_kinds()) {
    for (const bool is_large : {false, true}) {
      const SheetOptions options = options_for("letter", is_large);
      const Printed printed = made(kind.plan, test_fonts(), lesson, options);
      for (const Page& page : printed.pages) {
        const bool lies = page.width > page.height;
        const PaperSize sheet = lies ? options.style.paper.lying() : options.style.paper;
        EXPECT_TRUE(sheet.printable().contains(inked(page), 0.2)) << kind.key;
      }
    }
  }
  const Printed printed = made(handout, test_fonts(), lesson, options_for("letter", false));
  EXPECT_EQ(printed.too_tall.size(), 2U);
  EXPECT_TRUE(printed.missing.count(U'\U0001F3EE') == 1);
  std::string told;
  for (const words::Message& remark : remarks_on(printed)) {
    told += said(remark) + "\n";
  }
  EXPECT_THAT(told, HasSubstr("You'll see a box instead."));
  EXPECT_THAT(told, HasSubstr("do not fit on one page, so they take pages of their own."));
}

// Each version has its letter on every page, and its key has the answers of its own problems.
TEST(Sheets, ATestHasItsVersionsKeysAndAllAnswers) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "Boxes", "problems": [
      {"id": "box", "prompt": "A box is 9 in long. How much paper covers it?", "find": ["surface_area"],
       "solid": {"kind": "rectangular prism", "length": "9 in", "width": "7 in", "height": "5 in"}},
      {"id": "crate", "prompt": "How much fits?", "solid": {"kind": "cube", "edge": "14 cm"}, "find": ["volume"]}]})");
  ASSERT_TRUE(lesson.has_value());
  SheetOptions options = options_for("letter", false);
  options.versions = 3;
  const Printed printed = made(test, test_fonts(), *lesson, options);
  EXPECT_TRUE(printed.remarks.empty());
  std::map<std::string, std::size_t> pages;
  for (const Page& page : printed.pages) {
    for (const char* letter : {"A", "B", "C"}) {
      pages[letter] += text_of(page).find("version " + std::string(letter)) != std::string::npos ? 1U : 0U;
    }
  }
  EXPECT_EQ(pages["A"], pages["B"]);
  EXPECT_EQ(pages["A"], pages["C"]);
  EXPECT_GE(pages["A"], 2U) << "the test and its key";
  EXPECT_THAT(text_of(printed.pages.back()), HasSubstr("A  286 in²"));
  EXPECT_THAT(text_of(printed.pages.back()), HasSubstr("A  2744 cm³"));
}

// Each sheet says what it is for.
TEST(Sheets, HoldWhatTheyAreFor) {
  const lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  const SheetOptions options = options_for("letter", false);
  const auto text = [&](const char* key) {
    return text_of(made(find_sheet(key)->plan, test_fonts(), lesson, options).pages);
  };
  EXPECT_THAT(text("slips"), HasSubstr("Which answer is an area, and which is a volume?"));
  EXPECT_THAT(text("words"), HasSubstr("A square pyramid has 5 faces (1 square and 4 "));
  EXPECT_THAT(text("words"), HasSubstr("In my language"));
  EXPECT_THAT(text("tally"), HasSubstr("The number is the space inside."));
  EXPECT_THAT(text("pack"), HasSubstr("1. rectangular prism: minutes 0 to"));
  const std::string cards = text("cards");
  EXPECT_THAT(cards, HasSubstr("S = 286 in²"));
  EXPECT_THAT(cards, HasSubstr("Key: which cards match"));
}

// No page holds its head and foot alone, be the last one as full as it may.
TEST(Sheets, HaveNoEmptyPage) {
  lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  for (; lesson.problems.size() > 14; lesson.problems.pop_back()) {
    for (const SheetKind& kind : sheet_kinds()) {
      if (kind.key != "notes" && kind.key != "key" && kind.key != "handout") {
        continue;
      }
      const Printed printed = made(kind.plan, test_fonts(), lesson, options_for("letter", false));
      std::size_t texts = 0;
      for (const Item& item : printed.pages.back().items) {
        texts += std::holds_alternative<TextItem>(item) ? 1U : 0U;
      }
      EXPECT_GT(texts, 3U) << kind.key << " of " << lesson.problems.size();  // letter, page, code
    }
  }
}

// A class set is a matter of the copier: the same net is one page, told for how many.
TEST(Sheets, PrintTheSameNetOnce) {
  lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  const lessons::Problem first = lesson.problems.front();
  lesson.problems.assign(28, first);
  lesson.problems.push_back(demo_lesson("lantern_fair.json").problems[1]);
  const Printed printed = made(nets, test_fonts(), lesson, options_for("letter", false));
  EXPECT_EQ(printed.pages.size(), 2U);
  ASSERT_EQ(printed.remarks.size(), 1U);
  EXPECT_THAT(said(printed.remarks.front()), HasSubstr("have the same net, so it is printed once. Make 28 copies."));
  EXPECT_TRUE(options_for("letter", false).style.paper.printable().contains(inked(printed.pages.front()), 0.2));
}

// As many problems on a page as a teacher asks for.
TEST(Sheets, PutAsManyProblemsOnAPageAsAskedFor) {
  lessons::Lesson lesson = demo_lesson("lantern_fair.json");
  lesson.problems.erase(lesson.problems.begin() + 6, lesson.problems.end());
  for (const std::size_t count : {1U, 2U, 3U}) {
    SheetOptions options = options_for("letter", false);
    options.per_page = count;
    EXPECT_EQ(made(handout, test_fonts(), lesson, options).pages.size(), 6 / count) << count;
  }
}

// In large print the space to work gives way, so that a problem with two questions stays on its page.
TEST(Sheets, KeepALargeProblemOnOnePage) {
  const auto lesson = tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [
    {"id": "a", "prompt": "A tin has a radius of 5 cm and a height of 8 cm. Find its surface area and its volume.",
     "solid": {"kind": "cylinder", "radius": "5 cm", "height": "8 cm"}, "find": ["surface_area", "volume"]},
    {"id": "b", "prompt": "A box has a length of 5 cm, a width of 6 cm and a height of 8 cm. Find both.",
     "solid": {"kind": "rectangular prism", "length": "5 cm", "width": "6 cm", "height": "8 cm"},
     "find": ["surface_area", "volume"]}]})");
  ASSERT_TRUE(lesson.has_value());
  const Printed printed = made(handout, test_fonts(), *lesson, options_for("letter", true));
  EXPECT_EQ(printed.pages.size(), 2U);
  EXPECT_TRUE(printed.too_tall.empty());
  for (const Page& page : printed.pages) {
    EXPECT_THAT(text_of(page), HasSubstr("(b) Answer"));
    EXPECT_THAT(text_of(page), HasSubstr("8 cm"));
  }
}

}  // namespace
}  // namespace fw::paper::sheets_test
