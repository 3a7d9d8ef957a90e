// The verbs measure, check and nets as a shell runs them.
#include <gmock/gmock.h>

#include <nlohmann/json.hpp>
#include <regex>

#include "cli/version.hpp"
#include "program.hpp"

namespace fw::cli::text_verbs_test {
namespace {

using nlohmann::json;
using testing::HasSubstr;
using testing::IsEmpty;
using testing::StartsWith;

const std::string shade = R"({"id": "shade", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"},
  "slant_height": "9 cm"}, "find": ["surface_area"]})";
const std::string block = R"({"id": "block", "solid": {"kind": "cube", "edge": "7 in"}})";

std::string lesson(const std::string& problems) {
  return R"({"lesson": 1, "title": "Winter fair", "problems": [)" + problems + "]}";
}
std::string in_quotes(const std::string& path) { return "'" + path + "'"; }

class TextVerbs : public testing::Test {
 protected:
  Outcome run(const std::string& verb, const std::string& text, const std::string& options = "") {
    path_ = folder_.file("fair.json", text);
    return run_program(verb + " " + in_quotes(path_) + " " + options);
  }
  Folder folder_;
  std::string path_;
};

TEST_F(TextVerbs, MeasureListsFacesAndTotals) {
  const Outcome measured = run("measure", lesson(shade));
  EXPECT_EQ(measured.status, 0) << measured.error;
  EXPECT_THAT(measured.error, IsEmpty());
  // 6 × 6 + 4 × (6 × 9 ÷ 2) = 144; the height is √72, so V = 36 × √72 ÷ 3 = 101.82...; by hand.
  EXPECT_EQ(measured.out,
            "Winter fair\n"
            "\n"
            "shade: square pyramid, 5 faces, 8 edges, 5 vertices\n"
            "  face  role     shape     group  work         area\n"
            "     1  base     square    A      6 × 6      36 cm²\n"
            "     2  lateral  triangle  B      6 × 9 ÷ 2  27 cm²\n"
            "     3  lateral  triangle  B      6 × 9 ÷ 2  27 cm²\n"
            "     4  lateral  triangle  B      6 × 9 ÷ 2  27 cm²\n"
            "     5  lateral  triangle  B      6 × 9 ÷ 2  27 cm²\n"
            "  surface area  S = 144 cm²\n"
            "  lateral area  L = 108 cm²\n"
            "  volume        V ≈ 101.82 cm³\n");
}

// One mistake is told, and every verb goes on with the other problems.
TEST_F(TextVerbs, AMistakeLeavesTheOtherProblemsToEveryVerb) {
  const std::string bad = R"({"id": "bad", "solid": {"kind": "cube", "edge": "-7 in"}, "find": ["volume"]})";
  for (const std::string& problem : {std::string(), std::string("--problem shade ")}) {
    for (const std::string& verb :
         {std::string("measure"), std::string("explain"), std::string("nets --count"),
          "print --paper a4 -o " + folder_.path("p.pdf"), "picture -o " + folder_.path("p.svg")}) {
      const Outcome outcome = run(verb, lesson(problem.empty() ? shade + "," + bad : bad + "," + shade), problem);
      EXPECT_EQ(outcome.status, 1) << verb << ": " << outcome.error;
      EXPECT_THAT(outcome.error, HasSubstr("problem bad, edge: a measure is more than 0")) << verb;
      const bool writes_file = verb.find(" -o ") != std::string::npos;
      const std::string written = writes_file ? contents(verb.substr(verb.rfind(' ') + 1)) : outcome.out;
      EXPECT_FALSE(written.empty()) << verb;
      EXPECT_TRUE(writes_file || written.find("square pyramid") != std::string::npos ||
                  written.find("S = ") != std::string::npos)
          << verb << ": " << written;
      std::filesystem::remove(folder_.path("p.pdf"));
      std::filesystem::remove(folder_.path("p.svg"));
    }
  }
}

TEST_F(TextVerbs, MeasurePrintsJson) {
  const Outcome measured = run("measure", lesson(shade + "," + block), "--json");
  EXPECT_EQ(measured.status, 0) << measured.error;
  const json document = json::parse(measured.out);
  EXPECT_EQ(document["title"], "Winter fair");
  ASSERT_EQ(document["problems"].size(), 2U);
  const json& pyramid = document["problems"][0];
  EXPECT_EQ(pyramid["id"], "shade");
  EXPECT_EQ(pyramid["name"], "square pyramid");
  EXPECT_EQ(pyramid["vertices"], 5);
  EXPECT_EQ(pyramid["edges"], 8);
  ASSERT_EQ(pyramid["faces"].size(), 5U);
  const json base = json::parse(R"({"number": 1, "role": "base", "shape": "square", "group": "A",
    "area": {"exact": "36", "value": 36.0, "unit": "cm^2"}})");
  EXPECT_EQ(pyramid["faces"][0], base);
  EXPECT_EQ(pyramid["surface_area"], json::parse(R"({"exact": "144", "value": 144.0, "unit": "cm^2"})"));
  EXPECT_EQ(pyramid["lateral_area"], json::parse(R"({"exact": "108", "value": 108.0, "unit": "cm^2"})"));
  EXPECT_EQ(pyramid["volume"]["exact"], "72√2");
  EXPECT_NEAR(pyramid["volume"]["value"].get<double>(), 101.8233764908628, 1e-9);
  EXPECT_EQ(pyramid["volume"]["unit"], "cm^3");
  const json& solid = document["problems"][1];
  EXPECT_EQ(solid["faces"][0]["role"], "face");
  EXPECT_EQ(solid["lateral_area"], nullptr);
  EXPECT_EQ(solid["volume"], json::parse(R"({"exact": "343", "value": 343.0, "unit": "in^3"})"));
}

TEST_F(TextVerbs, MeasureHasNoClosedFormWhereThereIsNone) {
  const Outcome measured = run("measure", lesson(R"({"id": "seven", "solid": {"kind": "prism", "height": "5 cm",
    "base": {"shape": "regular polygon", "count": 7, "side": "4 cm"}}})"),
                               "--json");
  ASSERT_EQ(measured.status, 0) << measured.error;
  const json volume = json::parse(measured.out)["problems"][0]["volume"];
  EXPECT_EQ(volume["exact"], nullptr);
  // 7 × 16 × cot(180°/7) ÷ 4 × 5.
  EXPECT_NEAR(volume["value"].get<double>(), 140 * 2.0765213965723, 1e-8);
}

TEST_F(TextVerbs, OneProblemIsChosenByItsId) {
  const Outcome one = run("measure", lesson(shade + "," + block), "--problem block");
  EXPECT_EQ(one.status, 0);
  EXPECT_THAT(one.out, testing::Not(HasSubstr("shade")));
  EXPECT_THAT(one.out, HasSubstr("block: cube, 6 faces, 12 edges, 8 vertices"));
  const Outcome near_miss = run("measure", lesson(shade + "," + block), "--problem shad");
  EXPECT_EQ(near_miss.status, 2);
  EXPECT_THAT(near_miss.out, IsEmpty());
  EXPECT_EQ(near_miss.error, "foldwright: " + path_ + " has no problem \"shad\"; did you mean \"shade\"?\n");
  const Outcome no_match = run("nets", lesson(shade + "," + block), "--problem zzz --json");
  EXPECT_EQ(no_match.status, 2);
  EXPECT_THAT(no_match.out, IsEmpty());
  EXPECT_EQ(no_match.error, "foldwright: " + path_ + " has no problem \"zzz\"; its problems are shade or block.\n");
}

TEST_F(TextVerbs, AWrongLessonIsToldOnStandardErrorWithItsPlaces) {
  const Outcome measured = run("measure", "{\"lesson\": 1,\n \"titel\": \"T\", \"problems\": [" + block + "]}");
  EXPECT_EQ(measured.status, 1);
  EXPECT_THAT(measured.out, IsEmpty());
  EXPECT_EQ(measured.error, path_ + ":1:1: the key \"title\" is missing, such as \"title\": \"Lantern fair\"\n" +
                                path_ + ":2:2: \"titel\" is not a key of a lesson; did you mean \"title\"?\n");
}

TEST_F(TextVerbs, AFileThatCannotBeReadIsStatusTwo) {
  for (const std::string verb : {"measure", "check", "nets"}) {
    const Outcome missing = run_program(verb + " /nowhere/at-all.json");
    EXPECT_EQ(missing.status, 2) << verb;
    EXPECT_THAT(missing.out, IsEmpty()) << verb;
    EXPECT_THAT(missing.error, HasSubstr("/nowhere/at-all.json")) << verb;
  }
}

TEST_F(TextVerbs, CheckFindsNothingInAGoodLesson) {
  const Outcome checked = run("check", lesson(shade));
  EXPECT_EQ(checked.status, 0);
  EXPECT_EQ(checked.out, path_ + ": nothing to remark\n");
  const Outcome as_json = run("check", lesson(shade), "--json");
  EXPECT_EQ(as_json.status, 0);
  EXPECT_EQ(json::parse(as_json.out), json::parse(R"({"findings": []})"));
}

TEST_F(TextVerbs, CheckSaysWhatCannotBe) {
  const std::string flat = R"({"id": "flat", "solid": {"kind": "pyramid", "base": {"shape": "square", "side": "6 cm"},
  "slant_height": "2 cm"}})";
  const Outcome checked = run("check", lesson(flat), "--json");
  EXPECT_EQ(checked.status, 1);
  const json findings = json::parse(checked.out)["findings"];
  ASSERT_EQ(findings.size(), 1U);
  EXPECT_EQ(findings[0]["file"], path_);
  EXPECT_EQ(findings[0]["problem"], "flat");
  EXPECT_EQ(findings[0]["measure"], "slant_height");
  EXPECT_EQ(findings[0]["severity"], "impossible");
  EXPECT_EQ(findings[0]["line"], 2);
  EXPECT_EQ(findings[0]["column"], 19);
  EXPECT_TRUE(findings[0]["nearest"].is_object()) << findings[0];
  EXPECT_EQ(findings[0]["nearest"]["unit"], "cm");
  EXPECT_GT(findings[0]["nearest"]["value"].get<double>(), 3.0);
}

TEST_F(TextVerbs, CheckRemarksAreNoErrors) {
  const std::string masking = R"({"id": "cube", "solid": {"kind": "cube", "edge": "6 cm"}, "find": ["volume"]})";
  const Outcome checked = run("check", lesson(masking), "--json");
  EXPECT_EQ(checked.status, 0);
  const json findings = json::parse(checked.out)["findings"];
  ASSERT_FALSE(findings.empty());
  EXPECT_EQ(findings[0]["severity"], "masking");
  EXPECT_EQ(findings[0]["nearest"], nullptr);
  const Outcome text = run("check", lesson(masking));
  EXPECT_EQ(text.status, 0);
  EXPECT_THAT(text.out, HasSubstr("would show the mistake (masking)\n"));
  EXPECT_THAT(text.out, HasSubstr(path_ + ": 0 errors, 2 remarks\n"));
}

TEST_F(TextVerbs, CheckGoesThroughAllFiles) {
  const std::string good = folder_.file("good.json", lesson(shade));
  const std::string bad = folder_.file("bad.json", "{");
  const Outcome both = run_program("check " + in_quotes(bad) + " " + in_quotes(good));
  EXPECT_EQ(both.status, 1);
  EXPECT_THAT(both.out, StartsWith(bad + ":1:2: "));
  EXPECT_THAT(both.out, HasSubstr(good + ": nothing to remark\n"));
  const Outcome unreadable = run_program("check /nowhere/at-all.json " + in_quotes(bad) + " " + in_quotes(good));
  EXPECT_EQ(unreadable.status, 2);
  EXPECT_THAT(unreadable.out, HasSubstr(good + ": nothing to remark\n"));
}

// 11 nets of the cube among 384 spanning trees: Buekenhout & Parker, "The number of nets of the regular convex
// polytopes in dimension <= 4", Discrete Mathematics 186 (1998); the tetrahedron has 2 among 16.
TEST_F(TextVerbs, NetsAreCounted) {
  const std::string problems =
      block + R"(, {"id": "four", "solid": {"kind": "regular polyhedron", "faces": 4, "edge": "6 cm"}})";
  const Outcome counted = run("nets", lesson(problems), "--count --json");
  EXPECT_EQ(counted.status, 0) << counted.error;
  EXPECT_EQ(json::parse(counted.out), json::parse(R"({"problems": [
    {"id": "block", "faces": 6, "labelled": 384, "distinct": 11, "overlapping": 0},
    {"id": "four", "faces": 4, "labelled": 16, "distinct": 2, "overlapping": 0}]})"));
  const Outcome text = run("nets", lesson(block), "--count");
  EXPECT_EQ(text.out,
            "block: cube, 6 faces, 11 distinct nets (384 when every face is told apart), 0 that overlap themselves\n");
}

TEST_F(TextVerbs, NetsAreListedAsPairsOfFaces) {
  const Outcome listed = run("nets", lesson(block), "--json");
  EXPECT_EQ(listed.status, 0) << listed.error;
  const json problem = json::parse(listed.out)["problems"][0];
  EXPECT_EQ(problem["complete"], true);
  ASSERT_EQ(problem["nets"].size(), 11U);
  for (const json& net : problem["nets"]) {
    EXPECT_EQ(net.size(), 5U);
    for (const json& hinge : net) {
      EXPECT_LT(hinge[0].get<int>(), hinge[1].get<int>());
      EXPECT_GE(hinge[0].get<int>(), 1);
      EXPECT_LE(hinge[1].get<int>(), 6);
    }
  }
  const Outcome text = run("nets", lesson(block));
  EXPECT_THAT(text.out,
              StartsWith("block: cube, 11 distinct nets, each as the pairs of faces that stay joined\n  1: "));
}

TEST_F(TextVerbs, NetsListIsCutAtTwoHundred) {
  const Outcome listed = run("nets", lesson(R"({"id": "ball", "solid": {"kind": "regular polyhedron", "faces": 12,
    "edge": "6 cm"}})"),
                             "--json");
  EXPECT_EQ(listed.status, 0) << listed.error;
  const json problem = json::parse(listed.out)["problems"][0];
  EXPECT_EQ(problem["complete"], false);
  EXPECT_EQ(problem["nets"].size(), 200U);
}

TEST_F(TextVerbs, TooManyNetsAreRefused) {
  const std::string prism = R"({"id": "prism", "solid": {"kind": "prism", "height": "5 cm",
    "base": {"shape": "regular polygon", "count": 20, "side": "4 cm"}}})";
  const Outcome counted = run("nets", lesson(prism + "," + block), "--count --json");
  EXPECT_EQ(counted.status, 2);
  EXPECT_THAT(counted.error, StartsWith("foldwright: " + path_ + ": problem prism: this solid has "));
  EXPECT_THAT(counted.error, HasSubstr(" nets when every face is told apart; at most 60000000 are gone through.\n"));
  EXPECT_EQ(json::parse(counted.out)["problems"].size(), 1U);
  const Outcome many_edges = run("nets", lesson(R"({"id": "prism", "solid": {"kind": "prism", "height": "5 cm",
    "base": {"shape": "regular polygon", "count": 30, "side": "4 cm"}}})"));
  EXPECT_EQ(many_edges.status, 2);
  EXPECT_EQ(many_edges.error,
            "foldwright: " + path_ + ": problem prism: this solid has 90 edges; nets are counted up to 64.\n");
}

TEST(Program, TellsHelpAndVersion) {
  const Outcome help = run_program("--help");
  EXPECT_EQ(help.status, 0);
  for (const char* verb : {"show", "measure", "check", "nets", "picture"}) {
    EXPECT_THAT(help.out, HasSubstr(verb));
  }
  const Outcome of_verb = run_program("measure --help");
  EXPECT_EQ(of_verb.status, 0);
  EXPECT_THAT(of_verb.out, HasSubstr("--problem"));
  const Outcome version_told = run_program("--version");
  EXPECT_EQ(version_told.status, 0);
  EXPECT_EQ(version_told.out, std::string("foldwright ") + version + "\n");
}

TEST(Program, HasTheVersionOfTheProject) {
  const std::string project = contents(FOLDWRIGHT_SOURCE_DIR "/CMakeLists.txt");
  std::smatch match;
  ASSERT_TRUE(std::regex_search(project, match, std::regex(R"(project\(foldwright VERSION ([0-9.]+))")));
  EXPECT_EQ(match[1], version);
}

TEST(Program, WrongUsageIsStatusTwoOnStandardError) {
  for (const std::string arguments : {"measure", "frobnicate", "measure a.json --problem", "measure a.json --wrong",
                                      "check", "nets --count", "measure a.json b.json"}) {
    const Outcome wrong = run_program(arguments);
    EXPECT_EQ(wrong.status, 2) << arguments;
    EXPECT_THAT(wrong.out, IsEmpty()) << arguments;
    EXPECT_THAT(wrong.error, testing::Not(IsEmpty())) << arguments;
  }
}

TEST(Program, SaysWhenItsOutputCannotBeWritten) {
  const std::string command = std::string("'") + FOLDWRIGHT_PROGRAM +
                              "' measure '" FOLDWRIGHT_SOURCE_DIR
                              "/demo_scenes/candle_boxes.json' >/dev/full 2>/dev/null";
  const int status = std::system(command.c_str());
  ASSERT_TRUE(WIFEXITED(status));
  EXPECT_EQ(WEXITSTATUS(status), 2);
}

TEST(DemoLessons, PassTheirOwnCheck) {
  const Outcome checked =
      run_program("check '" FOLDWRIGHT_SOURCE_DIR "/demo_scenes/lantern_fair.json' '" FOLDWRIGHT_SOURCE_DIR
                  "/demo_scenes/candle_boxes.json'");
  EXPECT_EQ(checked.status, 0) << checked.out << checked.error;
}

}  // namespace
}  // namespace fw::cli::text_verbs_test
