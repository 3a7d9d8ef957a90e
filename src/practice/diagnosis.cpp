#include "practice/diagnosis.hpp"

#include <algorithm>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"
#include "practice/face_account.hpp"
#include "practice/pi_values.hpp"
#include "practice/quiz.hpp"
#include "practice/slips.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using words::message;

// The same number in the unit of the question, where another unit of its kind was written.
std::optional<exact::Written> in_unit_of(const Question& question, const TypedAnswer& typed) {
  if (!question.unit || !typed.unit || *typed.unit == *question.unit || !typed.unit->converts_to(*question.unit)) {
    return std::nullopt;
  }
  exact::Written number = typed.number;
  number.value = number.value * units::conversion(*typed.unit, *question.unit);
  number.is_fraction = true;
  return number;
}

// Of the table: the rows that lead to the number, the likely ones and the rare ones.
struct NamedCauses {
  std::vector<Cause> likely, rare;
};
NamedCauses named_causes(const TypedAnswer& typed, const Figure& figure) {
  NamedCauses causes;
  const std::optional<exact::Written> converted = in_unit_of(*figure.question, typed);
  const auto add = [&](std::vector<Cause>& list, const WrongNumber& wrong) {
    const bool is_told =
        std::any_of(list.begin(), list.end(), [&](const Cause& cause) { return cause.id == wrong.signature->id; });
    if (!is_told) {
      list.push_back({wrong.signature->id, wrong.signature->saying.about(typed.number.text), wrong.faces, false});
    }
  };
  for (const WrongNumber& wrong : wrong_numbers(figure)) {
    const Question& question = *figure.question;
    if (stands_for_with_some_pi(typed.number, wrong.value, question) ||
        (converted && stands_for_with_some_pi(*converted, wrong.value, question))) {
      add(wrong.signature->is_rare ? causes.rare : causes.likely, wrong);
    } else if (figure.question->is_converted && !wrong.signature->is_rare &&
               stands_for(typed.number, wrong.value / figure.to_asked)) {  // and it was not converted
      add(causes.rare, wrong);
    }
  }
  return causes;
}

// Faces that are missing, that are counted too often, or both.
words::Message question_about(const std::vector<FaceChange>& changes, bool has_open_faces) {
  const auto is_missing = [](const FaceChange& change) { return change.counted < change.right; };
  if (std::all_of(changes.begin(), changes.end(), is_missing)) {
    return message("Which faces are missing?");
  }
  const bool are_too_many = std::none_of(changes.begin(), changes.end(), is_missing);
  return are_too_many && has_open_faces ? message("Which faces are open?")
         : are_too_many
             ? message("Which face did you count twice?")
             : message("Check off each face as you count it. Which ones did you miss, and which did you count twice?");
}

std::optional<Cause> account_cause(const TypedAnswer& typed, const Figure& figure) {
  const Asked asked = figure.question->asked;
  if (figure.question->is_converted) {
    return std::nullopt;
  }
  if (asked != Asked::Surface && asked != Asked::Lateral) {
    return std::nullopt;
  }
  const std::vector<FaceChange> changes = face_account(figure, typed.number);
  if (changes.empty()) {
    return std::nullopt;
  }
  const bool is_offered = changes.size() > 1 || std::abs(changes[0].counted - changes[0].right) > 1;
  Cause cause;
  cause.id = is_offered ? "B" : changes[0].counted > changes[0].right ? "B14" : "B3";
  const std::vector<words::Message> account = account_told(changes);
  const words::Value number = typed.number.text;
  cause.message = words::one_after_another(
      {message("With {n}, it looks like {account:and}.", {{"n", number}, {"account", account}}),
       question_about(changes, !figure.problem->open.empty())});
  for (const FaceChange& change : changes) {
    cause.faces.insert(cause.faces.end(), change.faces.begin(), change.faces.end());
  }
  cause.is_offered = is_offered;
  return cause;
}

// What tells several causes of one number apart.
words::Message question_for(const std::vector<Cause>& causes, const std::string& number) {
  for (const SharedNumber& shared : shared_numbers()) {
    const auto told = std::count_if(causes.begin(), causes.end(), [&](const Cause& cause) {
      return std::find(shared.ids.begin(), shared.ids.end(), cause.id) != shared.ids.end();
    });
    const bool is_first = std::find(shared.ids.begin(), shared.ids.end(), causes.front().id) != shared.ids.end();
    if (told > 1 && is_first) {
      return shared.question;
    }
  }
  return message("There is more than one way to get {n}. What did you find first, and what does it measure?",
                 {{"n", number}});
}

Diagnosis told(std::vector<Cause> causes, const std::string& number) {
  Diagnosis diagnosis;
  diagnosis.verdict = causes.size() == 1 ? AnswerVerdict::Recognized : AnswerVerdict::Ask;
  diagnosis.message = causes.size() == 1 ? causes.front().message : question_for(causes, number);
  diagnosis.causes = std::move(causes);
  return diagnosis;
}

// The question in the solid's own unit, where the problem asks for another one.
Question measured_as(const lessons::Problem& problem, const Question& question) {
  Question own = question;
  own.unit = problem.solid.unit().to_the(question.unit->dimension());
  own.truth = *question.truth * units::conversion(*question.unit, *own.unit);
  own.is_converted = false;
  return own;
}

// Names the value of π where it is not the one that the key is worked with.
words::Message told_right(Question question, const TypedAnswer& typed, const std::vector<Number>& roots) {
  if (typed.unit && question.unit && !(*typed.unit == *question.unit)) {
    question.truth = *question.truth * units::conversion(*question.unit, *typed.unit);
    question.unit = typed.unit;
  }
  const auto value = other_pi(typed.number, question);
  question.has_circle = false;
  return value && !has_right_number(typed, question, roots) ? right_with(*value) : message("Right.");
}

// An answer that is right, or would be with another unit.
std::optional<Diagnosis> right_or_nearly(const lessons::Problem& problem, const Question& question,
                                         const TypedAnswer& typed) {
  std::vector<Number> roots;
  if (!is_right(typed, question, roots)) {
    roots = answers_from_roots(problem, question);
  }
  const auto right_number = [](const Cause& cause) {
    return Diagnosis{AnswerVerdict::RightNumber, {cause}, cause.message};
  };
  if (is_right(typed, question, roots)) {
    const auto asked = unit_still_asked(typed, question, problem.prompt);
    return asked ? right_number(*asked) : Diagnosis{AnswerVerdict::Right, {}, told_right(question, typed, roots)};
  }
  if (question.is_converted && typed.unit && !(*typed.unit == *question.unit) &&
      has_right_number(typed, measured_as(problem, question), {})) {
    return right_number({"G9",
                         message("That's right in {given}. The question asks for {asked}. Convert it.",
                                 {{"given", typed.unit->text()}, {"asked", question.unit->text()}}),
                         {},
                         false});
  }
  return question.unit && has_right_number(typed, question, roots)
             ? std::optional(right_number(wrong_unit(typed, question)))
             : std::nullopt;
}

// What the mistake may have been. Requires: the answer is not right_or_nearly().
Diagnosis mistaken(const lessons::Problem& problem, const Question& question, const TypedAnswer& typed) {
  const Figure figure = figure_of(problem, question);
  const bool has_unit = !typed.unit || (question.unit && *typed.unit == *question.unit);
  const bool is_too_short = is_cut_short(typed.number, question.truth->to_double()) ||
                            (question.is_converted && stands_for(typed.number, *question.truth));
  if (has_unit && is_too_short) {
    return told({rounded_too_far(typed)}, typed.number.text);
  }
  NamedCauses named = named_causes(typed, figure);
  std::vector<Cause> causes = std::move(named.likely);
  const std::vector<Cause> conversions = wrong_conversions(typed, figure);
  causes.insert(causes.end(), conversions.begin(), conversions.end());
  std::optional<Cause> account = causes.empty() ? account_cause(typed, figure) : std::nullopt;
  if (account && !account->is_offered) {
    causes.push_back(*account);
  }
  if (causes.empty()) {  // told only if nothing likelier fits
    causes = std::move(named.rare);
  }
  if (causes.empty()) {
    causes = slips(typed, figure);
  }
  if (!causes.empty()) {
    return told(std::move(causes), typed.number.text);
  }
  Diagnosis unknown;
  unknown.message = message("Let's look again. {first_step}", {{"first_step", question.first_step}});
  if (account) {
    unknown.causes = {*account};
  }
  return unknown;
}

}  // namespace

std::string text(AnswerVerdict verdict) {
  switch (verdict) {
    case AnswerVerdict::Right:
      return "right";
    case AnswerVerdict::RightNumber:
      return "right_number";
    case AnswerVerdict::Recognized:
      return "recognized";
    case AnswerVerdict::Ask:
      return "ask";
    case AnswerVerdict::Unrecognized:
      break;
  }
  return "unrecognized";
}

Diagnosis judged_name(const lessons::Problem& problem, std::string_view typed) {
  const NameFeedback feedback = name_feedback(problem.solid, typed);
  Diagnosis diagnosis;
  diagnosis.message = feedback.message;
  diagnosis.verdict = feedback.verdict == solids::NameVerdict::Right     ? AnswerVerdict::Right
                      : feedback.verdict == solids::NameVerdict::AskBase ? AnswerVerdict::Ask
                      : feedback.verdict == solids::NameVerdict::Unknown ? AnswerVerdict::Unrecognized
                                                                         : AnswerVerdict::Recognized;
  if (feedback.verdict == solids::NameVerdict::WrongFamily || feedback.verdict == solids::NameVerdict::WrongBase) {
    diagnosis.causes.push_back({"N9", diagnosis.message, {}, false});
  }
  return diagnosis;
}

Diagnosis judged_number(const lessons::Problem& problem, const Question& question, std::string_view text) {
  const auto read = read_answer(text, question.item, problem.prompt);
  if (!read) {
    return {AnswerVerdict::Unrecognized, {}, read.error()};
  }
  if (auto right = right_or_nearly(problem, question, *read)) {
    return *std::move(right);
  }
  return mistaken(problem, question, *read);
}

}  // namespace fw::practice
