#include "practice/choices.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"
#include "practice/net_tasks.hpp"
#include "practice/quiz.hpp"
#include "reasoning/tasks/task.hpp"

namespace fw::practice {
namespace {

// Names of solids with as many faces as this one.
std::vector<Choice> name_choices(const lessons::Problem& problem, Seed& seed) {
  constexpr std::size_t wrong_options = 3;
  const solids::Solid& solid = problem.solid;
  std::vector<Choice> choices{{solid.name(), true, "", "Right.", {}}};
  std::vector<std::string> names = solids::names_with_face_count(solid.faces().size());
  shuffle(names, seed);
  for (const std::string& name : names) {
    const NameFeedback feedback = name_feedback(solid, name);
    if (feedback.verdict != solids::NameVerdict::Right && choices.size() <= wrong_options) {
      choices.push_back({name, false, "N9", said(feedback.message), {}});
    }
  }
  return choices;
}

// What these light up lies on the card, not on the solid.
std::vector<Choice> choices_about_nets(const lessons::Problem& problem, const Seed& seed) {
  std::vector<Choice> choices;
  for (NetChoice& one : net_choices(problem, seed)) {
    choices.push_back({std::move(one.text), one.is_right, std::move(one.cause), std::move(one.message), {}});
  }
  return choices;
}

}  // namespace

Result<std::string, std::string> right_answer(const lessons::Problem& problem, const std::string& find) {
  constexpr int places = 2;
  const auto question = question_of(problem, find);
  if (!question) {
    return failure(question.error());
  }
  if (question->asked == Asked::Net) {
    return net_answer(problem);
  }
  if (question->form == Form::Name) {
    return problem.solid.name();
  }
  const std::string number =
      question->truth ? answer_text(problem, *question, as_written_down(question->truth->to_double())) : "";
  if (question->form == Form::Mistake) {
    const auto mistake = mistake_of(problem, *question);
    return mistake ? Result<std::string, std::string>(mistake->text + " " + number) : failure(mistake.error());
  }
  if (question->form != Form::Number) {
    const std::optional<reasoning::TaskWork> work = reasoning::task_work(problem, places);
    return work ? work->answer : number;
  }
  if (question->is_converted) {
    return number;
  }
  const exact::Shown shown = exact::shown(*question->truth, places);
  return (shown.exact ? "" : "≈ ") + shown.text + (question->unit ? " " + question->unit->text() : "");
}

std::string letter(std::size_t option) { return std::string(1, static_cast<char>('A' + option)); }

Result<std::vector<Choice>, std::string> choices_of(const lessons::Problem& problem, std::uint64_t seed,
                                                    const std::string& find) {
  const auto question = question_of(problem, find);
  if (!question) {
    return failure(question.error());
  }
  Seed stream{seed};
  if (question->asked == Asked::Net) {
    return choices_about_nets(problem, stream);
  }
  if (question->form != Form::Number && question->form != Form::Name) {
    return task_choices(problem, *question, stream);
  }
  std::vector<Choice> choices =
      question->form == Form::Name ? name_choices(problem, stream) : number_choices(problem, *question, stream);
  if (choices.size() < 2) {
    return failure(std::string("these numbers leave nothing to choose from"));
  }
  shuffle(choices, stream);
  return choices;
}

}  // namespace fw::practice
