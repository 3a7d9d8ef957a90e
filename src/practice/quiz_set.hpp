#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "practice/quiz.hpp"

namespace fw::practice {

/// Who answers: one student at the keyboard, or a class with its hands.
enum class Audience { Student, Class };

/// Where the items of a set come from.
enum class QuizSource { Lesson, Nets, MadeUp, Due };

/// What the start page of the quiz says.
struct QuizSetup {
  Audience audience = Audience::Student;
  QuizSource source = QuizSource::Lesson;
  std::vector<std::string> types;  ///< keys of what is made up, in the order chosen; none: every type, mixed
  int level = 1;                   ///< 1 to 3
  std::uint64_t seed = 1;          ///< other numbers, other nets
  friend bool operator==(const QuizSetup&, const QuizSetup&) = default;
};

/// Questions in a set that is made up.
inline constexpr std::size_t items_in_a_set = 10;

/// One question of a set.
struct QuizItem {
  lessons::Problem problem;  ///< asks for one thing
  std::string skill;         ///< key of its type: "surface"
  bool from_net = false;     ///< the solid is to be named from a net
};
using QuizSet = std::vector<QuizItem>;

/// How an item is shown and answered.
enum class AnswerForm {
  NetName,     ///< a net lies there; its solid is named, and then it folds up
  Name,        ///< the solid stands there and is named
  Count,       ///< a plain count of its faces
  Number,      ///< a number with its unit, or a count of things
  Option,      ///< one of a few options: yes or no, an interval, a mistake, what is measured
  CutoutName,  ///< a cut-out lies there; its solid is named, and then it folds up
  Cutout       ///< a cut-out or several: which is a net, whether one is, where its missing piece goes
};
[[nodiscard]] AnswerForm answer_form(const QuizItem& item);
/// A name is typed, or chosen among names.
[[nodiscard]] bool is_name(AnswerForm form);
/// Card lies flat before the class, and folds up with the answer.
[[nodiscard]] bool is_flat(AnswerForm form);
/// Its solution is worked step by step, not told in sentences.
[[nodiscard]] bool is_worked(AnswerForm form);
/// It is answered by one of the options that stand there from the beginning.
[[nodiscard]] bool is_chosen(AnswerForm form);

/// The questions of a set, in order.
///   Lesson: what the lesson's problems ask for, one item each
///   Nets:   ten nets of the lesson's solids, never one solid twice in a row where there is another
///   MadeUp: ten problems of the types; every other name is asked from a net
///   Due:    the same; the types are those that come back today
/// Errors: a sentence that says what to choose instead.
[[nodiscard]] Result<QuizSet, std::string> quiz_set(const QuizSetup& setup, const lessons::Lesson& lesson);

/// The net of an item and the names to choose from; the same for the same seed and number. Of a solid that stands
/// there closed only the names are of use.
[[nodiscard]] NetQuestion net_question_of(const QuizItem& item, std::uint64_t seed, std::size_t number);

}  // namespace fw::practice
