#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "practice/quiz.hpp"
#include "practice/task_type.hpp"

namespace fw::tasks {

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

using practice::AnswerForm;
/// How an item is shown and answered.
[[nodiscard]] AnswerForm answer_form(const QuizItem& item);

/// The questions of a set, in order.
///   Lesson: what the lesson's problems ask for, one item each
///   Nets:   ten nets of the lesson's solids, never one solid twice in a row where there is another
///   MadeUp: ten problems of the types; every other name is asked from a net
///   Due:    the same; the types are those that come back today
/// Errors: a sentence that says what to choose instead.
[[nodiscard]] Result<QuizSet, words::Message> quiz_set(const QuizSetup& setup, const lessons::Lesson& lesson);

/// The same kind of question with new numbers; nothing where its kind cannot be made up. `level`: 1 to 3, raised where
/// the kind is asked from a higher one on.
[[nodiscard]] std::optional<QuizItem> similar_item(const QuizItem& item, int level, std::uint64_t seed);
/// Whether there is one for its kind.
[[nodiscard]] bool has_similar(const QuizItem& item);

/// The net of an item and the names to choose from; the same for the same seed and number. Of a solid that stands
/// there closed only the names are of use.
[[nodiscard]] practice::NetQuestion net_question_of(const QuizItem& item, std::uint64_t seed, std::size_t number);

}  // namespace fw::tasks
