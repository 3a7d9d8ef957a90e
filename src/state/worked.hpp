#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solids/solid.hpp"
#include "state/apply.hpp"
#include "tasks/worked_problem.hpp"

namespace fw::state {

using reasoning::WorkPart;
using tasks::WorkedProblem;

/// How lines on the board are written: as the class has chosen, else as the lesson.
[[nodiscard]] algebra::ClassNotation class_notation(const State& state);
/// The problem in view worked out, with the solid that stands on its desk now.
[[nodiscard]] WorkedProblem worked_for(const State& state);

/// Whether lines of the board are wanted in place of every step: as chosen, else on the projector and for a class in
/// the quiz. Blanks, and the step that a student compares with theirs, are in steps.
[[nodiscard]] bool wants_board(const Model& model);
/// Whether they are shown: wanted, and there are some.
[[nodiscard]] bool shows_board(const Model& model, const WorkedProblem& worked);
/// Lines of the board that are shown; as many as steps of the other form lead to, where these were shown last.
[[nodiscard]] std::size_t lines_shown(const Work& work, const WorkedProblem& worked);
/// What is shown of a solution, in lines or in steps.
struct Progressed {
  std::size_t shown = 0;
  std::size_t count = 0;
  std::size_t present = 0;
};
[[nodiscard]] Progressed progressed(const Model& model, const WorkedProblem& worked);

/// Whether there is nothing more to show: all steps stand there, and the last of them is the one spoken of.
[[nodiscard]] bool is_worked_to_the_end(const Model& model, const WorkedProblem& worked);
/// What the work of a lesson goes on to from there, or goes back to from before its first step: another of the
/// problem's questions, or else another problem.
struct NextWork {
  std::size_t problem = 0;
  std::string measure;  ///< to ask for; empty: another problem
};
/// `by`: 1 or -1. None at the end or at the beginning of the lesson, and in the quiz.
[[nodiscard]] std::optional<NextWork> next_work(const State& state, const WorkedProblem& worked, int by);

/// Keeps the last one until another thing is asked, or another solid stands there.
class WorkedMemo {
 public:
  [[nodiscard]] const WorkedProblem& of(const State& state);

 private:
  struct Key {
    std::shared_ptr<const lessons::Lesson> lesson;
    std::size_t problem = 0;
    std::shared_ptr<const QuizSet> set;  ///< none: outside the quiz
    std::size_t item = 0;
    solids::Solid solid;
    std::string asked;
    std::optional<std::string> instead;
    RouteChoice route = RouteChoice::Formula;
    algebra::ClassNotation notation;
    friend bool operator==(const Key&, const Key&) = default;
  };
  std::optional<Key> key_;
  WorkedProblem worked_;
};

/// Whether the step stands there as a blank.
[[nodiscard]] bool is_blank(const Work& work, const WorkedProblem& worked, std::size_t step);
/// What was last typed into the blank of the step, or that it was shown.
[[nodiscard]] const FilledBlank* filled(const Work& work, std::size_t step);
/// A step as it is shown: with blanks in the place of what it asks for, and of numbers of earlier steps that are blanks
/// yet; its reason without them.
struct ShownStep {
  std::optional<algebra::NotationLine> line;
  words::Message reason;
  bool has_blank = false;
};
[[nodiscard]] ShownStep shown_step(const Work& work, const WorkedProblem& worked, std::size_t step);
/// The sources of the numbers in a line, from left to right: rows of the part's sources.
[[nodiscard]] std::vector<std::size_t> sources_in(const algebra::NotationLine& line);
/// How many numbers of the line that is spoken of have a source.
[[nodiscard]] std::size_t numbers_of_present(const Model& model, const WorkedProblem& worked);
/// What a pointed number comes from.
[[nodiscard]] const reasoning::Source* pointed_source(const Model& model, const WorkedProblem& worked);

/// What of the solid stands out on the bench.
struct Lit {
  std::vector<FaceId> faces;
  std::vector<solids::MarkId> marks;
  std::vector<FaceId> open;         ///< drawn as outlines
  std::optional<std::size_t> step;  ///< that the pointed number was worked out in
  std::optional<std::size_t> line;  ///< of the board, in the same way
};
[[nodiscard]] Lit lit(const Model& model, const WorkedProblem& worked);

}  // namespace fw::state
