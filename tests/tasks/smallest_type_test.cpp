#include <gtest/gtest.h>

#include <algorithm>

#include "practice/answered_by.hpp"
#include "practice/choice_parts.hpp"
#include "reasoning/task_sheet.hpp"
#include "solids/catalog.hpp"
#include "tasks/catalog.hpp"
#include "tasks/worked_problem.hpp"

// The smallest type of question that can be written: how many pairs of faces are parallel. What it does not state has
// to come of itself: its options, its answer, what is judged, and its page of steps.
namespace fw::tasks::smallest_type_test {
namespace {

using geometry::FaceId;
using practice::AnswerForm;
using practice::AnswerVerdict;
using reasoning::StepKind;

std::size_t parallel_pairs(const solids::Body& body) {
  std::size_t count = 0;
  for (std::size_t i = 0; i < body.face_count(); ++i) {
    const FaceId face = FaceId::at(i);
    for (const FaceId other : body.faces_toward(-body.flat(face).plane.normal)) {
      count += face < other ? 1 : 0;
    }
  }
  return count;
}

class ParallelFaces : public practice::NumberTask {
 public:
  [[nodiscard]] std::string key() const override { return "parallel_faces"; }
  [[nodiscard]] std::string find() const override { return key(); }
  [[nodiscard]] std::string measure() const override { return {}; }
  [[nodiscard]] std::string type(const Problem&) const override { return "parallel"; }
  [[nodiscard]] AnswerForm form() const override { return AnswerForm::Count; }
  [[nodiscard]] Message sentence(const Problem&) const override {
    return message("How many pairs of faces are parallel?");
  }
  [[nodiscard]] Result<Question, Message> question(const Problem& problem) const override {
    Question question;
    question.find = key();
    question.asked = practice::Asked::Parts;
    question.item = "pair";
    question.truth = exact::Number::whole(static_cast<long long>(parallel_pairs(problem.solid.body())));
    question.first_step = message("Which face is parallel to face 1?");
    return question;
  }
  [[nodiscard]] Result<Explanation, Message> explained(const Problem& problem,
                                                       const SolutionOptions& options) const override {
    return reasoning::explained_alone(problem.solid, *work(problem, options.line_places()));
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override {
    const std::size_t count = parallel_pairs(problem.solid.body());
    reasoning::TaskSheet sheet(places);
    sheet.steps().say(StepKind::Ask, message("Go from face to face. Which ones would never meet?"));
    TaskWork work;
    work.task = key();
    work.name = message("parallel faces");
    work.outcome = reasoning::Outcome{exact::Number::whole(static_cast<long long>(count)), std::nullopt};
    work.answer = message("{count} {count:pair|pairs} of parallel faces", {{"count", count}});
    const Message answer = work.answer;
    return std::move(sheet).finished(std::move(work), message("It has {answer}.", {{"answer", answer}}));
  }
  [[nodiscard]] Result<std::vector<practice::Hint>, Message> hints(const Problem& problem,
                                                                   const reasoning::ClassNotation&) const override {
    return practice::hints_to_look(*work(problem, 2));
  }
};

Problem problem_of(const char* kind) {
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    if (solid && solid->name() == kind) {
      return {"p", "", description, {}, *solid, {}, {ParallelFaces()}};
    }
  }
  ADD_FAILURE() << kind;
  return problem_of("cube");
}

TEST(SmallestType, HasAKeyAndOptionsWithItsNoun) {
  const Problem box = problem_of("rectangular prism");
  EXPECT_EQ(said(*practice::right_answer(box)), "3");
  std::vector<std::string> texts;
  const auto choices = practice::choices_of(box, 5);
  ASSERT_TRUE(choices.has_value());
  for (const Choice& one : *choices) {
    texts.push_back(said(one.text));
    EXPECT_EQ(one.is_right, texts.back() == "3 pairs");
  }
  std::sort(texts.begin(), texts.end());
  EXPECT_EQ(texts, (std::vector<std::string>{"2 pairs", "3 pairs", "4 pairs"}));
}

TEST(SmallestType, IsJudgedAndTellsWhereToStart) {
  const Problem box = problem_of("rectangular prism");
  for (const char* right : {"3", "3 pairs", "three"}) {
    EXPECT_EQ(practice::diagnosed(box, right)->verdict, AnswerVerdict::Right) << right;
  }
  const auto wrong = practice::diagnosed(box, "6");
  EXPECT_EQ(said(wrong->message), "Let's look again. Which face is parallel to face 1?");
}

TEST(SmallestType, HasAPageOfSteps) {
  const WorkedProblem worked = worked_problem(problem_of("rectangular prism"));
  EXPECT_EQ(said(worked.title), "parallel faces");
  EXPECT_EQ(worked.count, 2U);
  EXPECT_EQ(said(worked.step(1).reason), "It has 3 pairs of parallel faces.");
}

// Beside a measure it can be chosen by its name, and comes after the numbers.
TEST(SmallestType, StandsBesideAMeasure) {
  Problem box = problem_of("rectangular prism");
  box.tasks = {named("volume"), ParallelFaces()};
  const WorkedProblem worked = worked_problem(box);
  ASSERT_EQ(worked.by_lesson.size(), 2U);
  EXPECT_EQ(worked.by_lesson[0].name, "volume");
  EXPECT_EQ(worked.by_lesson[1].name, "parallel_faces");
  EXPECT_EQ(worked.by_lesson[1].title, "parallel faces");
  EXPECT_EQ(said(worked.title), "volume") << "a class works on the numbers first";
  WorkChoice choice;
  choice.asked = "parallel_faces";
  EXPECT_EQ(worked_problem(box, choice).count, 2U);
}

}  // namespace
}  // namespace fw::tasks::smallest_type_test
