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

/// The problem in view worked out, with the solid that stands on its desk now.
[[nodiscard]] WorkedProblem worked_for(const State& state);

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
/// What a pointed number comes from.
[[nodiscard]] const reasoning::Source* pointed_source(const Model& model, const WorkedProblem& worked);

/// What of the solid is told apart on the bench.
struct Lit {
  std::vector<FaceId> faces;
  std::vector<solids::MarkId> marks;
  std::vector<FaceId> open;         ///< drawn as outlines
  std::optional<std::size_t> step;  ///< that the pointed number was worked out in
};
[[nodiscard]] Lit lit(const Model& model, const WorkedProblem& worked);

}  // namespace fw::state
