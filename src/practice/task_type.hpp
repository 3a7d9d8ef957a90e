#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "practice/figure.hpp"
#include "practice/hints.hpp"
#include "practice/seed.hpp"
#include "reasoning/explanation.hpp"
#include "words/message.hpp"

// What a type of question states. The types stand in the room `tasks`, one file each; here they are only asked.
namespace fw::practice {

/// How a question is shown and answered.
enum class AnswerForm {
  NetName,     ///< a net lies there; its solid is named, and then it folds up
  Name,        ///< the solid stands there and is named
  Count,       ///< a plain count of its faces, edges or vertices
  Number,      ///< a number with its unit, or a count of things
  Option,      ///< one of a few options: yes or no, an interval, a mistake, what is measured
  CutoutName,  ///< a cut-out lies there; its solid is named, and then it folds up
  Cutout       ///< a cut-out or several: which is a net, whether one is, where its missing piece goes
};

/// A name is typed, or chosen among names.
[[nodiscard]] bool is_name(AnswerForm form);
/// Card lies flat before the class, and folds up with the answer.
[[nodiscard]] bool is_flat(AnswerForm form);
/// Its solution is worked step by step, not told in sentences.
[[nodiscard]] bool is_worked(AnswerForm form);
/// It is answered by one of the options that stand there from the beginning.
[[nodiscard]] bool is_chosen(AnswerForm form);

/// A number of a problem that its prompt may not tell, and the sentence that tells it.
struct Fact {
  std::string number;       ///< "40"
  words::Message sentence;  ///< "One roll covers 40 ft²."
};

/// Where among the explanations of a problem a task is explained.
enum class ExplainedAt { ItsPlace, TheEnd, Elsewhere };

class TaskType : public lessons::Asking {
 public:
  // ---- asked ----

  /// In words, for a page that has no others: "What is the volume?"
  [[nodiscard]] virtual words::Message sentence(const lessons::Problem& problem) const = 0;
  /// Errors: a sentence, where the solid has no such measure.
  [[nodiscard]] virtual Result<Question, words::Message> question(const lessons::Problem& problem) const = 0;
  /// Whether it has an answer of its own. Without one it says no more than what another question is for.
  [[nodiscard]] virtual bool has_question() const { return true; }
  /// The key of the type of made-up problems that it is of: "surface"; empty where there is none.
  [[nodiscard]] virtual std::string type(const lessons::Problem& problem) const = 0;
  /// Whether a set of questions takes the whole problem for one, since its other questions lead to this one.
  [[nodiscard]] virtual bool is_whole_problem() const { return false; }
  /// The measure of the solid that it is about; empty where it is about none.
  [[nodiscard]] virtual std::string measure() const { return find(); }
  /// What a word problem counts: "roll"; empty where nothing is counted.
  [[nodiscard]] virtual std::string item() const { return {}; }
  /// What the text of a problem has to tell.
  [[nodiscard]] virtual std::vector<Fact> facts(const lessons::Problem& problem) const;

  // ---- worked ----

  [[nodiscard]] virtual Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const = 0;
  [[nodiscard]] virtual ExplainedAt explained_at(const lessons::Problem& problem) const;
  /// The steps from a measure on, where it asks for something else than a measure.
  [[nodiscard]] virtual std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const;
  /// `notation`: how the class writes the lines that they show.
  [[nodiscard]] virtual Result<std::vector<Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const = 0;

  // ---- answered ----

  [[nodiscard]] virtual AnswerForm form() const = 0;
  /// What an empty field asks to be typed: "number and unit".
  [[nodiscard]] virtual words::Message asks_to_type() const { return words::message("number and unit"); }
  /// Errors: a sentence, where fewer than two options are left.
  [[nodiscard]] virtual Result<std::vector<Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                            const Question& question,
                                                                            Seed& seed) const = 0;
  [[nodiscard]] virtual Result<words::Message, words::Message> answer(const lessons::Problem& problem,
                                                                      const Question& question) const = 0;
  /// `seed`: of the options, where it is answered by one of them.
  [[nodiscard]] virtual Result<Diagnosis, words::Message> judged(const lessons::Problem& problem,
                                                                 const Question& question, std::string_view typed,
                                                                 std::uint64_t seed) const = 0;

  // ---- made up ----

  /// A number that the task gives, as it is written: parallel problems have as many digits.
  [[nodiscard]] virtual std::string given_number() const { return {}; }
  /// The measure that mistakes are looked for in, so that none of them gives the right number.
  [[nodiscard]] virtual std::string masked_measure() const { return find(); }
  /// What else numbers hide, one sentence each.
  [[nodiscard]] virtual std::vector<words::Message> masking(const lessons::Problem& problem) const;
};

/// The type of question that a task is.
[[nodiscard]] const TaskType& stated(const lessons::Task& task);
/// The task that is asked first; null where the problem asks for nothing.
[[nodiscard]] const TaskType* first_task(const lessons::Problem& problem);
/// The task of this key, the first one for an empty key; null where the problem does not ask for it.
[[nodiscard]] const TaskType* task_asked(const lessons::Problem& problem, const std::string& find);
/// What the problem counts: "roll"; empty where it is no word problem.
[[nodiscard]] std::string item_of(const lessons::Problem& problem);
/// The first task that is a T; null where there is none.
template <class T>
[[nodiscard]] const T* task_as(const lessons::Problem& problem) {
  for (const lessons::Task& task : problem.tasks) {
    if (const T* found = task.as<T>()) {
      return found;
    }
  }
  return nullptr;
}

/// One of the problem's tasks worked out, open faces left out. Errors: a sentence for what cannot be worked out.
[[nodiscard]] Result<reasoning::Explanation, words::Message> explained_task(
    const lessons::Problem& problem, const lessons::Task& task, const reasoning::SolutionOptions& options = {});
/// Everything that the problem asks for, in its order; a word problem's count stands with the measure that it needs.
/// Errors: a sentence for what cannot be worked out.
[[nodiscard]] Result<std::vector<reasoning::Explanation>, words::Message> explained(
    const lessons::Problem& problem, const reasoning::SolutionOptions& options = {});
/// What the problem asks in another way than by a measure, worked; nothing where it asks for measures alone.
/// `places`: decimals that are shown of a number that does not end.
[[nodiscard]] std::optional<reasoning::TaskWork> task_work(const lessons::Problem& problem, int places = 2);

/// The key of the type of made-up problems that the problem is of, by what it asks for first; empty where it asks for
/// nothing. A surface area that is to be found in two ways ("routes") asks for no more than "surface".
[[nodiscard]] std::string type_of(const lessons::Problem& problem);

/// One sentence for each usual mistake that would give the right answer, because of the numbers chosen. Hints for the
/// teacher, never errors.
[[nodiscard]] std::vector<words::Message> masking_hints(const lessons::Problem& problem);

}  // namespace fw::practice
