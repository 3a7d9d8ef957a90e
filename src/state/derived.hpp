#pragma once

#include <optional>
#include <utility>
#include <vector>

#include "reasoning/measures.hpp"
#include "state/apply.hpp"
#include "state/worked.hpp"
#include "tasks/quiz/cutouts.hpp"
#include "tasks/quiz/quiz_help.hpp"

namespace fw::state {

/// Decimals at most of a result on the screen.
inline constexpr int places = 2;

/// What follows from an item of the quiz.
struct ItemShown {
  AnswerForm form = AnswerForm::Number;
  std::vector<practice::Hint> hints;  ///< those that are shown
  std::size_t hints_left = 0;
  std::vector<practice::Choice> choices;  ///< for a class from its second stage on; for one student if is_chosen(form)
  std::vector<practice::Choice> reasons;  ///< why it is no net, where that is asked
  std::vector<std::string> names;         ///< to choose from, where a name is asked
  std::size_t right_name = 0;
  std::vector<std::string> solution;   ///< in words, where it is no work and is shown
  std::string answer;                  ///< once it is out
  std::vector<FaceId> faces;           ///< that the last reply or hint, or the idea to take up again, speaks of
  std::vector<solids::MarkId> marks;   ///< lengths that the last hint speaks of
  std::optional<std::size_t> take_up;  ///< the wrong option that most hands chose
};

/// What follows from a state and is shown in several places: worked out once a change, not once a frame.
struct Derived {
  reasoning::Ledger ledger;
  NetChoice nets;
  std::optional<ItemShown> item;                  ///< in the quiz
  std::optional<practice::NetQuestion> question;  ///< of an item that lies there as a net
  std::optional<tasks::CutoutBench> cutouts;      ///< in the place of the solid
  std::optional<solids::Solid> claimed;           ///< the solid with one label more, where one is claimed
  std::optional<WorkedProblem> worked;            ///< while it is worked out, and of an item with a number
  std::vector<reasoning::EditableMeasure> measures;
  std::vector<units::Unit> units;
  std::vector<FaceId> open;              ///< faces that do not count
  std::string prompt;                    ///< of the problem in view, with all that it asks
  std::vector<bool> counted;             ///< one a problem of the lesson: its faces are counted, each once
  std::string picked_work;               ///< of the face that is lifted out: "6 cm × 9 cm ÷ 2 = 27 cm²"
  std::vector<std::string> volume_work;  ///< its lines; none outside of Explore
};
/// Keeps the nets of a desk until another solid or another net lies there.
class NetMemo {
 public:
  [[nodiscard]] const NetChoice& of(const Desk& desk);

 private:
  std::optional<std::pair<solids::Solid, nets::HingeTree>> key_;
  NetChoice nets_;
};

/// Keeps the last Derived until the state is another one.
class DerivedMemo {
 public:
  [[nodiscard]] const Derived& of(const State& state);

 private:
  WorkedMemo worked_;
  NetMemo nets_;
  std::optional<State> state_;
  Derived derived_;
};

}  // namespace fw::state
