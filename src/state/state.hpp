#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "nets/enumerate.hpp"
#include "nets/hinge_tree.hpp"
#include "practice/attempt.hpp"
#include "practice/diagnosis.hpp"
#include "reasoning/ledger.hpp"
#include "solids/solid.hpp"
#include "state/work_state.hpp"
#include "tasks/quiz/quiz_set.hpp"

namespace fw::state {

using geometry::EdgeId;
using geometry::FaceId;
using practice::AnswerForm;
using tasks::Audience;
using tasks::QuizItem;
using tasks::QuizSet;
using tasks::QuizSetup;
using tasks::QuizSource;

enum class Mode { Explore, Work, Quiz };

/// How far a class has come with the net: not yet unfolded, laid flat, folded up again.
enum class NetSeen { No, Flat, FoldedUp };

/// What lies on the bench for one problem: the solid as it was changed, its net, and the count of its faces.
struct Desk {
  solids::Solid solid;
  nets::HingeTree net;
  std::vector<FaceId> counted;  ///< in the order counted; a face may be in it twice
  reasoning::Grouping grouping = reasoning::Grouping::EachFace;
  bool total_shown = false;  ///< the class has said how many faces there are
  bool volume_shown = false;
  NetSeen net_seen = NetSeen::No;
  std::optional<FaceId> picked;  ///< the face that is lifted out
  Work work = {};
  friend bool operator==(const Desk&, const Desk&) = default;
};

enum class AnswerStyle { Typed, Options };

/// What was said to a typed or chosen answer.
struct Reply {
  std::string typed;
  practice::AnswerVerdict verdict = practice::AnswerVerdict::Unrecognized;
  words::Message message;
  std::string cause;          ///< id of the mistake that it shows; empty where it shows none
  std::vector<FaceId> faces;  ///< that the message speaks of
  bool is_try = false;        ///< wrong, and not for its unit or its spelling alone
  friend bool operator==(const Reply&, const Reply&) = default;
};

/// How far an item has come before a class.
enum class ClassStage { Question, Options, Answer };

/// What was done with an item of the set.
struct ItemWork {
  std::optional<Desk> desk;          ///< laid when the item is first opened
  std::vector<Reply> replies;        ///< in order
  std::vector<std::size_t> tried;    ///< options that one student chose, in order
  bool asks_why = false;             ///< "no net" was right, and the reason is asked
  std::vector<std::size_t> reasons;  ///< that were chosen, in order
  bool asks_value = false;           ///< the mistake was found, and the right value is to be typed
  std::size_t hints = 0;             ///< that are shown
  std::size_t retries = 0;           ///< how often it was begun again with new numbers
  bool is_counted = false;           ///< what was first done with it is among the attempts
  bool done = false;                 ///< answered rightly, or the answer was shown
  bool solution_shown = false;
  std::optional<std::size_t> failing;  ///< step of the solution that a wrong answer points to
  ClassStage stage = ClassStage::Question;
  std::vector<int> hands;             ///< for each option
  std::optional<std::size_t> spoken;  ///< the option that is spoken of; none: the wrong one that most chose
  friend bool operator==(const ItemWork&, const ItemWork&) = default;
};

/// How one student came through an item.
enum class ItemEnd {
  Right,     ///< at the first answer, without a hint
  WithHelp,  ///< after a hint, at a second or third answer, or with new numbers
  Missed,    ///< not found, or its solution was read first
  Skipped
};
[[nodiscard]] ItemEnd end_of(const ItemWork& work);

/// A set that one student has gone through.
struct FinishedSet {
  std::shared_ptr<const QuizSet> set;
  std::vector<ItemEnd> ends;  ///< one an item
  friend bool operator==(const FinishedSet&, const FinishedSet&) = default;
};

/// The quiz: its start page, or a set and what was answered. No score and no name is kept.
struct Quiz {
  QuizSetup setup;
  std::shared_ptr<const QuizSet> set;  ///< none: the start page
  std::size_t number = 0;              ///< of the item
  std::vector<ItemWork> items;         ///< one an item
  AnswerStyle style = AnswerStyle::Typed;
  words::Message refusal;                   ///< why no set could be made
  std::size_t finished = 0;                 ///< items of the set that a class has just gone through
  std::optional<FinishedSet> results;       ///< the page that one student sees at the end
  std::vector<practice::Attempt> attempts;  ///< of one student, one a problem, in order
  friend bool operator==(const Quiz&, const Quiz&) = default;

  [[nodiscard]] const QuizItem& item() const { return (*set)[number]; }
  [[nodiscard]] const ItemWork& work() const { return items[number]; }
};

/// All that the program knows and undo brings back: a value.
struct State {
  std::shared_ptr<const lessons::Lesson> lesson;
  std::string lesson_path;  ///< empty: the demo lesson inside the program
  std::size_t problem = 0;
  std::vector<std::optional<Desk>> desks;  ///< one a problem, laid when it is first opened
  Mode mode = Mode::Explore;
  Quiz quiz;
  std::optional<algebra::ClassNotation> notation = {};  ///< of the lines on the board; none: as the lesson says
  friend bool operator==(const State&, const State&) = default;

  /// An item of the quiz is in view.
  [[nodiscard]] bool in_item() const { return mode == Mode::Quiz && quiz.set != nullptr; }
  /// The desk and the problem in view: the lesson's or, in the quiz, those of its item.
  [[nodiscard]] const Desk& desk() const { return in_item() ? *quiz.work().desk : *desks[problem]; }
  [[nodiscard]] const lessons::Problem& current() const {
    return in_item() ? quiz.item().problem : lesson->problems[problem];
  }
  /// The answer of the item in view is yet to be found: nothing may give it away.
  [[nodiscard]] bool is_asking() const { return in_item() && !quiz.work().done; }
};

/// The state that a lesson opens in. Requires: the lesson has a problem.
[[nodiscard]] State opened(lessons::Lesson lesson, std::string path);

/// How a class counts the solid at first, in few presses: each face by itself, or where it has many the congruent ones
/// together.
[[nodiscard]] reasoning::Grouping usual_grouping(const solids::Solid& solid);
/// A desk with this solid on it, closed, nothing counted.
[[nodiscard]] Desk fresh_desk(solids::Solid solid);
/// The same for a problem: where a solid is to be named from a net, with that net.
[[nodiscard]] Desk fresh_desk(const lessons::Problem& problem);

/// Whether the solid on the desk is still the problem's, be it with other numbers: its words speak of it.
[[nodiscard]] bool is_of_problem(const lessons::Problem& problem, const Desk& desk);
/// The faces that do not count in the problem, while its kind of solid stands on the desk.
[[nodiscard]] std::vector<FaceId> open_on_desk(const lessons::Problem& problem, const Desk& desk);
[[nodiscard]] std::vector<FaceId> open_on_desk(const State& state);  ///< of the problem in view
/// The first face in view that counts and is not counted yet.
[[nodiscard]] std::optional<FaceId> next_to_count(const State& state);

/// A net lies on the bench to be named. Requires for question(): an item is in view.
[[nodiscard]] bool asks_from_net(const State& state);
[[nodiscard]] practice::NetQuestion question(const State& state);
/// Whether the problem shows a net alone, which lies flat from the beginning.
[[nodiscard]] bool shows_net_alone(const lessons::Problem& problem);
/// Card lies on the bench flat until the answer is out.
[[nodiscard]] bool begins_flat(const State& state);
/// Card lies on the bench: an item of the quiz asks about it, it is worked out, or the solid is untouched in Explore.
[[nodiscard]] bool shows_cutouts(const State& state);
/// What comes onto the bench lies flat at first: card that is asked about, or a net whose solid is to be named.
[[nodiscard]] bool lies_flat(const State& state);

/// The distinct nets of the solid on the desk, and which of them lies there; the usual net is number 0.
struct NetChoice {
  std::shared_ptr<const std::vector<nets::HingeTree>> nets;
  bool complete = true;                ///< all of them are listed
  std::optional<std::size_t> current;  ///< none: the net on the desk is not in the list
};
[[nodiscard]] NetChoice net_choice(const Desk& desk);

}  // namespace fw::state
