#pragma once

#include <optional>

#include "state/apply.hpp"

// One button leads a class through the lesson: what it does next, and what it takes back.
namespace fw::state {

/// What the class works toward in Explore.
enum class ClassGoal {
  Areas,   ///< the areas of the faces, one by one
  Count,   ///< how many faces there are, what the solid is called, or its net: no areas
  Volume,  ///< the space inside
};
[[nodiscard]] ClassGoal class_goal(const lessons::Problem& problem);

enum class LessonStep { CountFace, ShowTotal, Unfold, FoldUp, ShowVolume, NextProblem };

/// What comes next in the problem in view. None at the end of the lesson. Requires: the mode is Explore.
[[nodiscard]] std::optional<LessonStep> next_lesson_step(const Model& model);
/// What was done last, which is what going back undoes. None at the very start of the lesson.
[[nodiscard]] std::optional<LessonStep> last_lesson_step(const Model& model);

}  // namespace fw::state
