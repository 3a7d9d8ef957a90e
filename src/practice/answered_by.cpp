#include "practice/answered_by.hpp"

#include <cctype>

#include "base/ensure.hpp"
#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"

namespace fw::practice {
namespace {

using lessons::Problem;
using words::message;

words::Message unrecognized(const std::vector<Choice>& choices) {
  std::vector<words::Message> options;
  for (const Choice& one : choices) {
    options.push_back(one.text);
  }
  return message("Choose one of these: {options:;}.", {{"options", options}});
}

Diagnosis judged_choice(const Choice& choice) {
  if (choice.is_right) {
    return {AnswerVerdict::Right, {}, choice.message};
  }
  return {AnswerVerdict::Recognized, {{choice.cause, choice.message, choice.faces, false}}, choice.message};
}

}  // namespace

Result<std::vector<Choice>, words::Message> shuffled_choices(std::vector<Choice> choices, Seed& seed) {
  if (choices.size() < 2) {
    return failure(message("these numbers leave nothing to choose from"));
  }
  shuffle(choices, seed);
  return choices;
}

std::optional<Diagnosis> judged_letter(const TaskType& task, const Problem& problem, const Question& question,
                                       std::string_view typed, std::uint64_t seed) {
  if (typed.size() != 1 || std::isalpha(static_cast<unsigned char>(typed.front())) == 0) {
    return std::nullopt;
  }
  Seed stream{seed};
  const auto choices = task.choices(problem, question, stream);
  const auto option = choices ? option_named(*choices, typed) : std::nullopt;
  return option ? std::optional(judged_choice((*choices)[*option])) : std::nullopt;
}

// ---- by a number ----

Result<std::vector<Choice>, words::Message> NumberTask::choices(const Problem& problem, const Question& question,
                                                                Seed& seed) const {
  return shuffled_choices(number_choices(problem, question, seed), seed);
}

Result<words::Message, words::Message> NumberTask::answer(const Problem&, const Question& question) const {
  constexpr int usual_places = 2;
  if (question.is_converted && !question.round_to) {
    return answer_text(question, as_written_down(question.truth->to_double()));
  }
  return amount_shown(question.round_to ? exact::rounded_to(*question.truth, *question.round_to)
                                        : exact::shown(*question.truth, usual_places),
                      question.unit);
}

Result<Diagnosis, words::Message> NumberTask::judged(const Problem& problem, const Question& question,
                                                     std::string_view typed, std::uint64_t seed) const {
  const auto by_letter = judged_letter(*this, problem, question, typed, seed);
  return by_letter ? *by_letter : judged_number(problem, question, typed);
}

// ---- by an option ----

Result<std::vector<Hint>, words::Message> OptionTask::hints(const Problem& problem,
                                                            const reasoning::ClassNotation&) const {
  return hints_to_look(*work(problem, 2));
}

Result<words::Message, words::Message> OptionTask::answer(const Problem& problem, const Question&) const {
  constexpr int places = 2;
  const auto worked = work(problem, places);
  ensure(worked.has_value(), "a question that is answered by an option is not worked");
  return worked->answer;
}

Result<Diagnosis, words::Message> OptionTask::judged(const Problem& problem, const Question& question,
                                                     std::string_view typed, std::uint64_t seed) const {
  Seed stream{seed};
  const auto choices = this->choices(problem, question, stream);
  if (!choices) {
    return failure(choices.error());
  }
  const std::string text(typed);
  const auto named = option_named(*choices, typed);
  const auto option = named ? named : option_meant(question, *choices, text);
  return option ? judged_option(problem, question, (*choices)[*option], text)
                : judged_other(problem, question, *choices, text);
}

std::optional<std::size_t> OptionTask::option_meant(const Question&, const std::vector<Choice>&,
                                                    const std::string&) const {
  return std::nullopt;
}

Diagnosis OptionTask::judged_option(const Problem&, const Question&, const Choice& choice, const std::string&) const {
  return judged_choice(choice);
}

Diagnosis OptionTask::judged_other(const Problem&, const Question&, const std::vector<Choice>& choices,
                                   const std::string&) const {
  return {AnswerVerdict::Unrecognized, {}, unrecognized(choices)};
}

}  // namespace fw::practice
