#include "tasks/look.hpp"

#include <algorithm>
#include <iterator>

#include "lessons/asked_value.hpp"
#include "practice/choice_parts.hpp"
#include "practice/quiz.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {

std::vector<MadeUp> made_by_looking();  // generate/look_made.cpp

namespace {

using practice::AnswerForm;
using practice::Diagnosis;
using practice::Hint;

// Names of other solids that it may be taken for.
std::vector<Choice> name_choices(const Problem& problem, Seed& seed) {
  constexpr std::size_t wrong_options = 3;
  const solids::Solid& solid = problem.solid;
  std::vector<Choice> choices{practice::right_choice(Message(solid.name()), message("Right."))};
  std::vector<std::string> names = solids::names_beside(solid);
  shuffle(names, seed);
  for (const std::string& name : names) {
    const practice::NameFeedback feedback = practice::name_feedback(solid, name);
    if (feedback.verdict != solids::NameVerdict::Right && choices.size() <= wrong_options) {
      choices.push_back(practice::wrong_choice(Message(name), "N9", feedback.message));
    }
  }
  return choices;
}

}  // namespace

Asked parts_asked(std::string_view find) {
  return find == "faces" ? Asked::Faces : find == "edges" ? Asked::Edges : Asked::Vertices;
}

words::Message Look::sentence(const Problem&) const {
  return is_name()
             ? message("What is the name of this solid?")
             : message("How many {parts:s} are there?", {{"parts", Noun{practice::part_counted(parts_asked(find_))}}});
}

Result<Question, words::Message> Look::question(const Problem& problem) const {
  Question question;
  question.find = find_;
  question.item = practice::item_of(problem);
  if (is_name()) {
    return question;
  }
  question.truth = exact::Number::whole(static_cast<long long>(lessons::count_of(problem.solid, find_)));
  question.asked = parts_asked(find_);
  question.first_step = find_ == "faces"   ? message("Touch each face once and count again.")
                        : find_ == "edges" ? message("Run your finger along each edge once and count again.")
                                           : message("Touch each corner once and count again.");
  return question;
}

Result<Explanation, words::Message> Look::explained(const Problem& problem, const SolutionOptions&) const {
  return reasoning::explained_alone(problem.solid, looking_work(problem.solid, find_));
}

Result<std::vector<Hint>, words::Message> Look::hints(const Problem& problem, const reasoning::ClassNotation&) const {
  return practice::hints_to_look(looking_work(problem.solid, find_));
}

AnswerForm Look::form() const { return is_name() ? AnswerForm::Name : AnswerForm::Count; }

Result<std::vector<Choice>, words::Message> Look::choices(const Problem& problem, const Question& question,
                                                          Seed& seed) const {
  if (is_name()) {
    return practice::shuffled_choices(name_choices(problem, seed), seed);
  }
  const Result<std::vector<Choice>, words::Message> choices = NumberTask::choices(problem, question, seed);
  const std::optional<std::size_t> other = other_count(problem.solid, find_);
  if (!choices || !other) {
    return choices;
  }
  // What other books count isn't offered as a wrong option.
  const std::string also = said(practice::answer_text(question, exact::Number::whole(static_cast<long long>(*other))));
  std::vector<Choice> kept;
  std::copy_if(choices->begin(), choices->end(), std::back_inserter(kept),
               [&](const Choice& one) { return one.is_right || said(one.text) != also; });
  return kept;
}

Result<words::Message, words::Message> Look::answer(const Problem& problem, const Question& question) const {
  return is_name() ? message("{solid}", {{"solid", Noun{problem.solid.name()}}})
                   : NumberTask::answer(problem, question);
}

Result<Diagnosis, words::Message> Look::judged(const Problem& problem, const Question& question, std::string_view typed,
                                               std::uint64_t seed) const {
  if (const auto by_letter = practice::judged_letter(*this, problem, question, typed, seed)) {
    return *by_letter;
  }
  if (is_name()) {
    return practice::judged_name(problem, typed);
  }
  Result<Diagnosis, words::Message> judged = NumberTask::judged(problem, question, typed, seed);
  const std::optional<std::size_t> other = other_count(problem.solid, find_);
  if (!other || !judged || judged->verdict == practice::AnswerVerdict::Right) {
    return judged;
  }
  Question also = question;
  also.truth = exact::Number::whole(static_cast<long long>(*other));
  const Result<Diagnosis, words::Message> there = NumberTask::judged(problem, also, typed, seed);
  if (there && there->verdict == practice::AnswerVerdict::Right) {
    return Diagnosis{practice::AnswerVerdict::Right,
                     {},
                     message("Right, the way some books count. Others count {count}.",
                             {{"count", lessons::count_of(problem.solid, find_)}})};
  }
  return judged;
}

namespace row {
Row look() {
  Row row{"look"};
  row.finds = {"name", "faces", "edges", "vertices"};
  row.named = [](const std::string& find) { return Task(Look(find)); };
  row.made = made_by_looking();
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["name"])",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["faces", "edges", "vertices"])",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
