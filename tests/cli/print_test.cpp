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
  outcome = run_program(call + "-o '" + path + "'");
  EXPECT_EQ(outcome.status, 2);
  EXPECT_EQ(contents(path), lesson);
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
