#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "app/work_state.hpp"
#include "lessons/lesson.hpp"
#include "nets/enumerate.hpp"
#include "nets/hinge_tree.hpp"
#include "practice/quiz.hpp"
#include "reasoning/ledger.hpp"
#include "solids/solid.hpp"

namespace fw::app {

using geometry::EdgeId;
using geometry::FaceId;

enum class Mode { Explore, Work, Quiz };

/// What lies on the bench for one problem: the solid as it was changed, its net, and the count of its faces.
struct Desk {
  solids::Solid solid;
  nets::HingeTree net;
  std::vector<FaceId> counted;  ///< in the order counted; a face may be in it twice
  reasoning::Grouping grouping = reasoning::Grouping::EachFace;
  bool total_shown = false;  ///< the class has said how many faces there are
  bool volume_shown = false;
  std::optional<FaceId> picked;  ///< the face that is lifted out
  Work work = {};
  friend bool operator==(const Desk&, const Desk&) = default;
};

enum class AnswerStyle { Typed, Options };

/// The quiz: which question of which seed, and what was answered. No score is kept.
struct Quiz {
  std::uint64_t seed = 1;
  std::size_t number = 0;
  AnswerStyle style = AnswerStyle::Typed;
  std::optional<practice::NameFeedback> feedback;  ///< to the last typed answer
  std::vector<std::size_t> tried_options;          ///< options chosen, in order
  bool revealed = false;                           ///< the name was found or shown; the net may fold
  friend bool operator==(const Quiz&, const Quiz&) = default;
};

/// All that the program knows and undo brings back: a value.
struct State {
  std::shared_ptr<const lessons::Lesson> lesson;
  std::string lesson_path;  ///< empty: the demo lesson inside the program
  std::size_t problem = 0;
  std::vector<std::optional<Desk>> desks;  ///< one a problem, laid when it is first opened
  Mode mode = Mode::Explore;
  Quiz quiz;
  friend bool operator==(const State&, const State&) = default;

  [[nodiscard]] const Desk& desk() const { return *desks[problem]; }
  [[nodiscard]] const lessons::Problem& current() const { return lesson->problems[problem]; }
};

/// The state that a lesson opens in. Requires: the lesson has a problem.
[[nodiscard]] State opened(lessons::Lesson lesson, std::string path);

/// A desk with this solid on it, closed, nothing counted.
[[nodiscard]] Desk fresh_desk(solids::Solid solid);

/// The faces that do not count in the problem, while its kind of solid stands on the desk.
[[nodiscard]] std::vector<FaceId> open_on_desk(const lessons::Problem& problem, const Desk& desk);
[[nodiscard]] std::vector<FaceId> open_on_desk(const State& state);  ///< of the problem in view

/// The question that the quiz stands at. The pool is the lesson's solids, each kind of name once.
[[nodiscard]] practice::NetQuestion question(const State& state);

/// The distinct nets of the solid on the desk, and which of them lies there; the usual net is number 0.
struct NetChoice {
  std::shared_ptr<const std::vector<nets::HingeTree>> nets;
  bool complete = true;                ///< all of them are listed
  std::optional<std::size_t> current;  ///< none: the net on the desk is not in the list
};
[[nodiscard]] NetChoice net_choice(const Desk& desk);

}  // namespace fw::app
