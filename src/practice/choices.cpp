#include "practice/choices.hpp"

#include <algorithm>

#include "practice/choice_parts.hpp"
#include "practice/quiz.hpp"

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
      choices.push_back({name, false, "N9", feedback.message, {}});
    }
  }
  return choices;
}

}  // namespace

std::string letter(std::size_t option) { return std::string(1, static_cast<char>('A' + option)); }

Result<std::vector<Choice>, std::string> choices_of(const lessons::Problem& problem, std::uint64_t seed,
                                                    const std::string& find) {
  const auto question = question_of(problem, find);
  if (!question) {
    return failure(question.error());
  }
  Seed stream{seed};
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
