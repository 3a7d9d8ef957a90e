// What the program writes and where: nothing that a person would miss is replaced, and nothing that is printed steers
// the terminal. Numbers at their limits are refused in words.
#include <fcntl.h>
#include <gmock/gmock.h>
#include <sys/stat.h>

#include <nlohmann/json.hpp>
#include <thread>

#include "cli/version.hpp"
#include "program.hpp"

namespace fw::cli::output_test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;
using testing::Not;
using testing::StartsWith;

std::string lesson_with(const std::string& title, const std::string& more = "") {
  return R"({"lesson": 1, "title": ")" + title +
         R"(", "problems": [{"id": "box", "solid": {"kind": "cube", "edge": "7 in"}, "find": ["volume"])" + more +
         "}]}";
}

class Output : public testing::Test {
 protected:
  [[nodiscard]] Outcome practice(const std::string& output, const std::string& options = "") const {
    return run_program("practice --types volume --count 2 -o '" + output + "' " + options);
  }
  Folder folder_;
};

TEST_F(Output, ReplacesOnlyItsOwnKindUnlessForced) {
  const std::string notes = folder_.file("notes.json", "call the hall about the tables");
  const Outcome refused = practice(notes);
  EXPECT_EQ(refused.status, 2);
  EXPECT_THAT(refused.error, HasSubstr("--force"));
  EXPECT_EQ(contents(notes), "call the hall about the tables");
  EXPECT_EQ(practice(notes, "--force").status, 0);
  EXPECT_THAT(contents(notes), HasSubstr("\"lesson\""));
  EXPECT_EQ(practice(notes).status, 0) << "a lesson may take a lesson's place";
  EXPECT_EQ(practice(folder_.file("empty.json", "")).status, 0);
}

TEST_F(Output, NeverReplacesTheLessonThatIsRead) {
  const std::string lesson = folder_.file("lesson.png", lesson_with("Fair"));
  std::filesystem::create_hard_link(lesson, folder_.path("other.png"));
  for (const char* name : {"lesson.png", "other.png"}) {
    const Outcome refused = run_program("picture '" + lesson + "' --force -o '" + folder_.path(name) + "'");
    EXPECT_EQ(refused.status, 2);
    EXPECT_THAT(refused.error, HasSubstr("the lesson that is being read"));
  }
  EXPECT_EQ(contents(lesson), lesson_with("Fair"));
}

TEST_F(Output, WantsTheRightEndingAndAFolderThatIsThere) {
  const Outcome ending =
      run_program("picture '" + folder_.file("a.json", lesson_with("Fair")) + "' -o '" + folder_.path("z.jpg") + "'");
  EXPECT_EQ(ending.status, 2);
  EXPECT_THAT(ending.error, HasSubstr("has to end in .png"));
  const Outcome missing = practice(folder_.path("no/such/place.json"));
  EXPECT_EQ(missing.status, 2);
  EXPECT_THAT(missing.error, HasSubstr("There is no folder"));
  EXPECT_FALSE(std::filesystem::exists(folder_.path("no")));
  std::filesystem::create_directory(folder_.path("folder.json"));
  EXPECT_EQ(practice(folder_.path("folder.json"), "--force").status, 2);
}

TEST_F(Output, GoesIntoAPipeAndLeavesItAPipe) {
  const std::string pipe = folder_.path("pipe");
  ASSERT_EQ(mkfifo(pipe.c_str(), 0600), 0);
  std::string came;
  std::thread reader([&] { came = contents(pipe); });
  EXPECT_EQ(practice(pipe).status, 0);
  reader.join();
  EXPECT_THAT(came, HasSubstr("\"lesson\""));
  EXPECT_TRUE(std::filesystem::is_fifo(pipe));
}

TEST_F(Output, OfADashIsStandardOutputAndNothingElse) {
  const Outcome written = practice("-");
  EXPECT_EQ(written.status, 0) << written.error;
  EXPECT_EQ(nlohmann::json::parse(written.out)["problems"].size(), 2U);
  EXPECT_THAT(written.error, HasSubstr("answer"));
  EXPECT_EQ(practice("-", "--versions 2").status, 2);
}

TEST_F(Output, InputOfADashIsStandardInput) {
  const std::string lesson = folder_.file("a.json", lesson_with("Fair"));
  const Outcome measured = run_program("measure -", lesson);
  EXPECT_EQ(measured.status, 0) << measured.error;
  EXPECT_EQ(measured.out, run_program("measure '" + lesson + "'").out);
}

TEST_F(Output, HoldsNoControlCharacters) {
  const std::string steering = "\\u001b]0;gotcha\\u0007\\u009b31mred\\u007f";
  const std::string lesson = folder_.file("a.json", lesson_with("Fair " + steering + " – 4 × 5 cm²"));
  for (const std::string verb : {"measure", "explain", "check"}) {
    const Outcome printed = run_program(verb + " '" + lesson + "'");
    for (const char* control : {"\x1b", "\x07", "\x7f", "\xc2\x9b"}) {
      EXPECT_THAT(printed.out + printed.error, Not(HasSubstr(control))) << verb;
    }
  }
  EXPECT_THAT(run_program("measure '" + lesson + "'").out, HasSubstr("– 4 × 5 cm²"));
}

TEST_F(Output, ListsAHundredFindingsAndCountsTheRest) {
  std::string keys;
  for (int i = 0; i < 20000; ++i) {
    keys += R"(, "tint": 1)";
  }
  const std::string lesson = folder_.file("a.json", lesson_with("Fair", keys));
  for (const char* verb : {"check", "measure"}) {
    const Outcome printed = run_program(std::string(verb) + " '" + lesson + "'");
    EXPECT_EQ(printed.status, 1);
    EXPECT_LT(printed.out.size() + printed.error.size(), 40000U);
    EXPECT_THAT(printed.out + printed.error, testing::ContainsRegex("and [0-9]+ more"));
  }
  const auto json = nlohmann::json::parse(run_program("check --json '" + lesson + "'").out);
  EXPECT_EQ(json["findings"].size(), 100U);
  EXPECT_GT(json["more"].get<int>(), 10000);
}

TEST_F(Output, ThatCannotBeWrittenIsToldForHelpToo) {
  for (const std::string call : {"--help", "--version", "practice --help"}) {
    const std::string command = std::string("'") + FOLDWRIGHT_PROGRAM + "' " + call + " >/dev/full 2>/dev/null";
    EXPECT_EQ(WEXITSTATUS(std::system(command.c_str())), 2) << call;
  }
}

TEST_F(Output, NumbersThatNoOptionMeansAreRefused) {
  const std::string lesson = folder_.file("a.json", lesson_with("Fair"));
  const std::string picture = "picture '" + lesson + "' -o '" + folder_.path("a.png") + "' --fold ";
  for (const char* fold : {"nan", "-nan", "inf", "1e400", "half", "-0.1", "''"}) {
    const Outcome refused = run_program(picture + fold);
    EXPECT_EQ(refused.status, 2) << fold;
    EXPECT_THAT(refused.error, HasSubstr("is not a number from 0 to 1")) << fold;
  }
  for (const char* seed : {"-1", "1e23", "100000000000000000000000", "1.5", "seven", "0x10", "''"}) {
    const Outcome refused = practice(folder_.path("b.json"), std::string("--seed ") + seed);
    EXPECT_EQ(refused.status, 2) << seed;
    EXPECT_THAT(refused.error, HasSubstr("is not a whole number")) << seed;
  }
  EXPECT_EQ(practice(folder_.path("b.json"), "--seed 18446744073709551615").status, 0);
}

TEST_F(Output, AnEmptyIdIsNoProblem) {
  const std::string lesson = folder_.file("a.json", lesson_with("Fair"));
  for (const char* verb : {"measure", "explain", "nets"}) {
    EXPECT_EQ(run_program(std::string(verb) + " '" + lesson + "' --problem ''").status, 2) << verb;
  }
}

TEST_F(Output, StatusOneIsTheLessonsFaultAlone) {
  const std::string lesson = folder_.file("a.json", lesson_with("Fair"));
  EXPECT_EQ(run_program("diagnose '" + lesson + "' --problem box --answer '342 in^3'").status, 0);
  EXPECT_EQ(run_program("diagnose '" + lesson + "' --problem box --answer poems").status, 0);
  const std::string many =
      folder_.file("b.json", R"({"lesson": 1, "title": "Fair", "problems": [{"id": "tower", "solid":
    {"kind": "prism", "base": {"shape": "regular polygon", "count": 30, "side": "2 cm"}, "height": "9 cm"}}]})");
  const Outcome nets = run_program("nets --count '" + many + "'");
  EXPECT_EQ(nets.status, 2) << nets.error;
  EXPECT_THAT(run_program("-V").out, StartsWith(std::string("foldwright ") + version));
}

TEST(Licenses, OfAllThatIsPartOfTheProgramArePrinted) {
  const Outcome printed = run_program("--licenses");
  EXPECT_EQ(printed.status, 0);
  // A line of each license's own text; of cairo and the generator their names, since Debian's texts are long.
  for (const char* part : {"MIT License", "Marcus Geelnard", "Omar Cornut", "G-Truc", "Boost Software License",
                           "Niels Lohmann", "Henry Schreiner", "SIL", "cairo", "glad"}) {
    EXPECT_THAT(printed.out, HasSubstr(part));
  }
  EXPECT_THAT(printed.out, Not(HasSubstr("was not there when this program was built")));
}

}  // namespace
}  // namespace fw::cli::output_test
