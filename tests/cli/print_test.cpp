// The verb print as a shell runs it.
#include <gmock/gmock.h>

#include "program.hpp"

namespace fw::cli::print_test {
namespace {

using testing::HasSubstr;
using testing::StartsWith;

constexpr const char* lesson = R"({"lesson": 1, "title": "Boxes", "problems": [
  {"id": "shade", "prompt": "How much paper covers the shade?",
   "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"}, "slant_height": "9 cm"},
   "find": ["surface_area"]},
  {"id": "crate", "prompt": "What is the volume?", "solid": {"kind": "cube", "edge": "4 ft"}, "find": ["volume"]}]})";

TEST(Print, WritesADocumentAndDrawings) {
  const Folder folder;
  const std::string path = folder.file("boxes.json", lesson);
  Outcome outcome = run_program("print '" + path + "' -o '" + folder.path("boxes.pdf") + "'");
  EXPECT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_EQ(outcome.error, "");
  EXPECT_THAT(contents(folder.path("boxes.pdf")), StartsWith("%PDF-1.7"));
  outcome = run_program("print '" + path + "' --as handout --per-page 1 -o '" + folder.path("boxes.svg") + "'");
  EXPECT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_THAT(contents(folder.path("boxes-1.svg")), HasSubstr("How much paper covers the shade?"));
  EXPECT_THAT(contents(folder.path("boxes-2.svg")), HasSubstr("What is the volume?"));
  outcome = run_program("print '" + path + "' --as key --problem crate -o -");
  EXPECT_EQ(outcome.status, 0) << outcome.error;
  EXPECT_THAT(outcome.out, StartsWith("%PDF-1.7"));
}

TEST(Print, TellsWhatIsWrongAndLeavesNoFile) {
  const Folder folder;
  const std::string path = folder.file("boxes.json", lesson);
  const std::string call = "print '" + path + "' ";
  Outcome outcome = run_program(call + "-o '" + folder.path("boxes.png") + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("the name has to end in .pdf"));
  outcome = run_program(call + "--as poster -o '" + folder.path("boxes.pdf") + "'");
  EXPECT_EQ(outcome.status, 2);
  outcome = run_program(call + "--problem shad -o '" + folder.path("boxes.pdf") + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("did you mean \"shade\"?"));
  EXPECT_FALSE(std::filesystem::exists(folder.path("boxes.pdf")));
  std::filesystem::create_directory(folder.path("folder.pdf"));
  outcome = run_program(call + "-o '" + folder.path("folder.pdf") + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("is a folder"));
  outcome = run_program(call + "-o /dev/full");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_NE(outcome.error, "");
  outcome = run_program(call + "--as nets --scale 100:1 -o '" + folder.path("boxes.pdf") + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("There is nothing to print, so nothing was written."));
  EXPECT_FALSE(std::filesystem::exists(folder.path("boxes.pdf")));
  outcome = run_program(call + "-o '" + path + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(contents(path), lesson);
}

// A test and its key have the code of their version, which check tells of the lesson.
TEST(Print, CodesTellWhichPagesBelongTogether) {
  const Folder folder;
  const std::string path = folder.file("boxes.json", lesson);
  const Outcome made = run_program("practice --like '" + path + "' --versions 3 -o '" + folder.path("like.json") + "'");
  EXPECT_EQ(made.status, 0) << made.error;
  const Outcome told = run_program("check --code '" + folder.path("like-2.json") + "'");
  EXPECT_EQ(told.status, 0) << told.out;
  const std::string code = told.out.substr(told.out.size() - 7, 6);
  EXPECT_EQ(run_program("print '" + path + "' --as test --versions 3 -o '" + folder.path("test.svg") + "'").status, 0);
  bool is_found = false;
  for (int page = 1; page < 20; ++page) {
    const std::string text = contents(folder.path("test-" + std::to_string(page) + ".svg"));
    const bool is_it = text.find("code " + code) != std::string::npos;
    is_found = is_found || is_it;
    EXPECT_TRUE(!is_it || text.find(">version B") != std::string::npos) << page;
  }
  EXPECT_TRUE(is_found) << code;
}

TEST(Print, APictureIsALineDrawingByItsName) {
  const Folder folder;
  const std::string path = folder.file("boxes.json", lesson);
  const std::string call = "picture '" + path + "' --problem shade -o '";
  EXPECT_EQ(run_program(call + folder.path("shade.svg") + "'").status, 0);
  EXPECT_THAT(contents(folder.path("shade.svg")), HasSubstr(">9 cm</text>"));
  EXPECT_EQ(run_program(call + folder.path("shade.pdf") + "' --fold 1").status, 0);
  EXPECT_THAT(contents(folder.path("shade.pdf")), StartsWith("%PDF-1.7"));
  const Outcome outcome = run_program(call + folder.path("half.svg") + "' --fold 0.5");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_THAT(outcome.error, HasSubstr("use --fold 0 or --fold 1"));
}

TEST(Print, PrintsTheProblemsThatAreRightOfALessonAtFault) {
  const Folder folder;
  std::string text = lesson;
  text.replace(text.find("4 ft"), 4, "-4 ft");
  const std::string path = folder.file("boxes.json", text);
  const Outcome outcome = run_program("print '" + path + "' -o '" + folder.path("boxes.pdf") + "'");
  EXPECT_EQ(outcome.status, 1);
  EXPECT_NE(outcome.error, "");
  EXPECT_THAT(contents(folder.path("boxes.pdf")), StartsWith("%PDF-1.7"));
}

}  // namespace
}  // namespace fw::cli::print_test
