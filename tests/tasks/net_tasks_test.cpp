#include "tasks/nets/net_task.hpp"

#include <gmock/gmock.h>

#include <map>
#include <set>

#include "lessons/write_lesson.hpp"
#include "lessons/write_sheet.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/catalog.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::tasks::net_tasks_test {
namespace {

using namespace practice;

using lessons::Problem;
using nets::Misfit;
using testing::StartsWith;

std::vector<Problem> problems_of(const std::string& type, int level, std::size_t count, std::uint64_t seed = 4) {
  PracticeRequest request;
  request.types = {type};
  request.level = level;
  request.count = count;
  request.seed = seed;
  const auto lessons = generated(request);
  EXPECT_TRUE(lessons.has_value()) << type << " at level " << level << ": " << (lessons ? "" : said(lessons.error()));
  return lessons ? lessons->front().problems : std::vector<Problem>{};
}

nets::FoldTest test_of(const Problem& problem, const nets::Cutout& cutout) {
  return solids::fold_test(problem.solid.body(), cutout);
}

const std::vector<std::string> types{"net-name", "choose-net", "is-net", "complete-net"};

// A lesson of the same sort written by hand: a box with its lid.
Problem box_problem(const std::string& net) {
  const std::string text =
      R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": {"kind": "rectangular prism", )"
      R"("length": "9 cm", "width": "7 cm", "height": "5 cm"}, "net": )" +
      net + "}]}";
  const auto lesson = tasks::read_lesson(text);
  EXPECT_TRUE(lesson.has_value()) << (lesson ? "" : said(lesson.error().front().message));
  return lesson->problems.front();
}
const std::string open_box =
    R"({"face": 1}, {"face": 5, "on": 1, "edge": 1, "by": 1}, {"face": 4, "on": 1, "edge": 2, "by": 1}, )"
    R"({"face": 6, "on": 1, "edge": 3, "by": 1}, {"face": 3, "on": 1, "edge": 4, "by": 1})";

TEST(NetTasks, YesAndNoAreJudgedWithTheReason) {
  const Problem net =
      box_problem(R"({"ask": "is_it", "pieces": [)" + open_box + R"(, {"face": 2, "on": 3, "edge": 3, "by": 3}]})");
  EXPECT_EQ(said(first_task(net)->sentence(net)), "Is this a net of a rectangular prism?");
  EXPECT_EQ(diagnosed(net, "Yes.")->verdict, AnswerVerdict::Right);
  const Diagnosis no = *diagnosed(net, "no");
  EXPECT_EQ(no.verdict, AnswerVerdict::Recognized);
  EXPECT_EQ(no.causes.front().id, "N10");
  EXPECT_EQ(said(no.message),
            "It does fold up. A net can look unusual. Pick one piece as the floor and fold up the rest.");
  EXPECT_TRUE(net_asked(net)->net_reasons(net).empty());
  EXPECT_EQ(said(net_answer(net)), "yes");
  EXPECT_EQ(said(diagnosed(net, "perhaps")->message), "Answer yes or no. Would it fold up?");
  const Problem five = box_problem(R"({"ask": "is_it", "pieces": [)" + open_box + "]}");
  EXPECT_EQ(said(net_answer(five)), "no (N1)");
  EXPECT_EQ(diagnosed(five, "yes")->causes.front().id, "N1");
  EXPECT_EQ(said(diagnosed(five, "yes")->message),
            "One face would stay open. A rectangular prism has 6 faces: count the pieces.");
  EXPECT_EQ(diagnosed(five, "no, one is missing")->verdict, AnswerVerdict::Right);
  ASSERT_EQ(net_asked(five)->net_reasons(five).size(), 4U);
  EXPECT_TRUE(net_asked(five)->net_reasons(five)[0].is_right);
  EXPECT_EQ(question_of(five)->find, "net");
}

TEST(NetTasks, AUsualNetThatIsTurnedAndRefusedIsN11) {
  const Problem problem = box_problem(R"({"ask": "is_it", "pieces": [)" + open_box +
                                      R"(, {"face": 2, "on": 3, "edge": 3, "by": 3}], "turn": 90})");
  EXPECT_EQ(diagnosed(problem, "no")->causes.front().id,
            solids::net_class(problem.solid.body(), problem.solid.classic_net()) ==
                    solids::net_class(problem.solid.body(),
                                      solids::tree_of(problem.solid.body(), net_asked(problem)->cutout_for(problem, 0),
                                                      test_of(problem, net_asked(problem)->cutout_for(problem, 0))))
                ? "N11"
                : "N10");
  const nets::Cutout usual = solids::cutout_of(problem.solid.body(), problem.solid.classic_net());
  lessons::NetSheet sheet{{}, 90, false, usual};
  for (const nets::Piece& piece : usual.pieces()) {
    sheet.pieces.push_back({piece.copy_of, {}, "", piece.joint});
  }
  const auto is_it = [](const lessons::NetSheet& one) {
    return box_problem(R"({"ask": "is_it", )" + lessons::sheet_text(one) + "}");
  };
  EXPECT_EQ(diagnosed(is_it(sheet), "no")->causes.front().id, "N11");
  sheet.turn_degrees = 0;
  EXPECT_EQ(diagnosed(is_it(sheet), "no")->causes.front().id, "N10");
}

TEST(NetTasks, APlaceIsJudgedForItselfAndAllRightOnesAreAskedFor) {
  const Problem problem = box_problem(R"({"ask": "complete", "pieces": [)" + open_box + R"(], "missing": {"face": 2},
    "places": [{"on": 3, "edge": 3, "by": 3}, {"on": 5, "edge": 3, "by": 1}, {"on": 4, "edge": 3, "by": 1}]})");
  EXPECT_EQ(said(net_answer(problem)), "A, B");
  EXPECT_EQ(diagnosed(problem, "a and b")->verdict, AnswerVerdict::Right);
  EXPECT_EQ(diagnosed(problem, "BA")->verdict, AnswerVerdict::Right);
  EXPECT_EQ(diagnosed(problem, "all of them")->verdict, AnswerVerdict::Unrecognized);
  EXPECT_EQ(diagnosed(problem, "2,1")->verdict, AnswerVerdict::Right);
  EXPECT_EQ(diagnosed(problem, "A")->verdict, AnswerVerdict::Ask);
  EXPECT_EQ(said(diagnosed(problem, "A")->message), "That would work. One more place would work too. Which?");
  const Diagnosis wrong = *diagnosed(problem, "A, C");
  EXPECT_EQ(wrong.verdict, AnswerVerdict::Recognized);
  EXPECT_EQ(wrong.causes.front().id, "N4");
  EXPECT_EQ(said(wrong.message), "At C: These two edges meet when you fold. Are they the same length?");
  EXPECT_EQ(net_choices(problem)[2].edges.size(), 2U);
  EXPECT_EQ(said(diagnosed(problem, "D")->message), "Answer with letters from A to C.");
  EXPECT_EQ(said(net_asked(problem)->judged_choices(problem, {0, 1}).message), "Right, that's all of them.");
}

TEST(NetTasks, ANameIsJudgedAsInTheQuiz) {
  const Problem problem =
      box_problem(R"({"ask": "name", "pieces": [)" + open_box + R"(, {"face": 2, "on": 3, "edge": 3, "by": 3}]})");
  EXPECT_EQ(diagnosed(problem, "rectangular prism")->verdict, AnswerVerdict::Right);
  EXPECT_EQ(diagnosed(problem, "pentagonal pyramid")->causes.front().id, "N9");
  const std::vector<NetChoice> choices = net_choices(problem, Seed{3});
  EXPECT_EQ(std::count_if(choices.begin(), choices.end(), [](const NetChoice& one) { return one.is_right; }), 1);
}

TEST(NetTasks, EveryReasonHasACodeAndOneShortThingToDo) {
  std::set<std::string> codes;
  for (const std::string& type : types) {
    for (int level = type == "complete-net" ? 2 : 1; level <= 3; ++level) {
      for (const Problem& problem : problems_of(type, level, 40)) {
        for (const NetChoice& choice : net_choices(problem)) {
          EXPECT_EQ(choice.is_right, choice.cause.empty());
          EXPECT_FALSE(choice.message.empty());
          EXPECT_LE(said(choice.message).size(), 130U) << said(choice.message);
          EXPECT_TRUE(choice.is_right || choice.cause[0] == 'N') << choice.cause;
          codes.insert(choice.cause);
        }
      }
    }
  }
  for (const std::string code : {"N1", "N2", "N3", "N4", "N7", "N8", "N9", "N10"}) {
    EXPECT_EQ(codes.count(code), 1U) << code;
  }
}

TEST(NetGenerator, ReadsBackAsTheSameLessonAndItsAnswerIsRightSlow) {
  for (const std::string& type : types) {
    for (int level = type == "complete-net" ? 2 : 1; level <= 3; ++level) {
      const std::vector<Problem> problems = problems_of(type, level, 12);
      const lessons::Lesson lesson{"Nets", problems};
      const auto again = tasks::read_lesson(lessons::write_lesson(lesson));
      ASSERT_TRUE(again.has_value()) << text(again.error().front(), type);
      EXPECT_EQ(*again, lesson);
      for (const Problem& problem : problems) {
        EXPECT_EQ(diagnosed(problem, said(net_answer(problem)))->verdict, AnswerVerdict::Right);
        EXPECT_EQ(problem.prompt.find('{'), std::string::npos);
      }
      EXPECT_EQ(problems_of(type, level, 12), problems);
    }
  }
}

TEST(NetGenerator, HalfOfTheCutoutsAreNoNetsForMixedReasonsSlow) {
  std::map<std::string, int> reasons;
  for (std::uint64_t seed = 1; seed <= 10; ++seed) {
    for (const Problem& problem : problems_of("is-net", 2, 20, seed)) {
      ++reasons[said(net_answer(problem))];
    }
  }
  EXPECT_GE(reasons["yes"], 70);
  EXPECT_LE(reasons["yes"], 130);
  for (const char* reason : {"no (N1)", "no (N2)", "no (N3)", "no (N4)"}) {
    EXPECT_GE(reasons[reason], 4) << reason;
  }
  EXPECT_GE(reasons["no (N7)"] + reasons["no (N8)"], 4);
}

TEST(NetGenerator, ChoosesAmongFourWithOneNetAndTwoReasonsOrMore) {
  for (int level = 1; level <= 3; ++level) {
    for (const Problem& problem : problems_of("choose-net", level, 12)) {
      std::set<std::string> causes;
      std::size_t right = 0;
      ASSERT_EQ(net_asked(problem)->sheets().size(), 4U);
      for (const NetChoice& choice : net_choices(problem)) {
        causes.insert(choice.cause);
        right += choice.is_right ? 1U : 0U;
      }
      EXPECT_EQ(right, 1U);
      EXPECT_GE(causes.size(), 3U) << problem.solid.name();
    }
  }
}

TEST(NetGenerator, AsksForTwoToFourPlacesAndOffersWrongOnes) {
  for (const Problem& problem : problems_of("complete-net", 3, 20)) {
    std::size_t right = 0;
    for (std::size_t place = 0; place < net_asked(problem)->places().size(); ++place) {
      const nets::Cutout whole = net_asked(problem)->cutout_for(problem, place);
      EXPECT_TRUE(nets::overlapping(whole).empty());
      right += test_of(problem, whole).is_net() ? 1U : 0U;
    }
    EXPECT_GE(right, 2U);
    EXPECT_LE(right, 4U);
    EXPECT_GE(net_asked(problem)->places().size(), right + 2);
  }
}

// Every distinct net of every solid on the shelf with up to seven faces.
TEST(NetTasks, EveryNetOfTheShelfIsAccepted) {
  std::size_t seen = 0;
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    if (!solid || solid->faces().size() > 7 || !solids::has_other_nets(solid->body())) {
      continue;
    }
    const solids::Body& body = solid->body();
    const auto list = solids::distinct_nets(body, geometry::FaceId::at(0), 60);
    for (std::size_t n = 0; n < list.nets.size(); ++n) {
      const geometry::FaceId root = geometry::FaceId::at(n % solid->faces().size());
      const nets::Cutout net = solids::cutout_of(body, nets::rerooted(body.facets(), list.nets[n], root));
      if (nets::overlapping(net).empty()) {
        ++seen;
        EXPECT_TRUE(solids::fold_test(body, net).is_net()) << solid->name();
        EXPECT_TRUE(solids::fold_test(body, nets::flipped(net)).is_net()) << solid->name();
      }
    }
  }
  EXPECT_GT(seen, 400U);
}

}  // namespace
}  // namespace fw::tasks::net_tasks_test
