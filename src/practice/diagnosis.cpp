#include "practice/diagnosis.hpp"

#include <algorithm>
#include <cctype>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"
#include "practice/face_account.hpp"
#include "practice/net_tasks.hpp"
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

std::vector<Cause> named_causes(const TypedAnswer& typed, const Figure& figure) {
  std::vector<Cause> causes;
  const std::optional<exact::Written> converted = in_unit_of(*figure.question, typed);
  for (const WrongNumber& wrong : wrong_numbers(figure)) {
    const bool fits = stands_for(typed.number, wrong.value) || (converted && stands_for(*converted, wrong.value));
    const bool is_told =
        std::any_of(causes.begin(), causes.end(), [&](const Cause& cause) { return cause.id == wrong.signature->id; });
    if (fits && !is_told) {
      causes.push_back(
          {wrong.signature->id, said(wrong.signature->saying.about(typed.number.text)), wrong.faces, false});
    }
  }
  return causes;
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
  const std::vector<words::Message> account = account_told(changes, *figure.question->unit);
  cause.message = said(is_offered ? message("{n} could be {account:and}. Tick each face once as you go.",
                                            {{"n", typed.number.text}, {"account", account}})
                                  : message("{n} would be {account:and}. Tick each face once as you go.",
                                            {{"n", typed.number.text}, {"account", account}}));
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
  return message("More than one way leads to {n}. What did you work out first, and what does it measure?",
                 {{"n", number}});
}

Diagnosis told(std::vector<Cause> causes, const std::string& number) {
  Diagnosis diagnosis;
  diagnosis.verdict = causes.size() == 1 ? AnswerVerdict::Recognized : AnswerVerdict::Ask;
  diagnosis.message = causes.size() == 1 ? causes.front().message : said(question_for(causes, number));
  diagnosis.causes = std::move(causes);
  return diagnosis;
}

std::string first_step(const Question& question) {
  switch (question.asked) {
    case Asked::Surface:
    case Asked::Lateral:
      return "Begin with one face: which is it, and what is its area?";
    case Asked::Count:
      return "Begin with the amount: is something covered, or filled?";
    case Asked::Packed:
      return "Begin with one row: how many whole ones fit along the length?";
    case Asked::CopyArea:
    case Asked::CopyVolume:
      return "Begin with one edge of the copy: how long is it?";
    case Asked::LeastSurface:
      return "Begin with a list: which whole edges give the same volume?";
    case Asked::Scale:
      return "Begin with the sizes: how many times as large did it get?";
    case Asked::Faces:
      return "Touch each flat part once and count again.";
    case Asked::Edges:
      return "Run a finger along each edge once and count again.";
    case Asked::Vertices:
      return "Touch each corner once and count again.";
    case Asked::Length:
      return "Begin with what is known of the whole: how is it worked out?";
    default:
      return "Begin with the base: what is its area?";
  }
}

// The question in the solid's own unit, where the problem asks for another one.
std::optional<Question> measured_as(const lessons::Problem& problem, const Question& question) {
  lessons::Problem own = problem;
  own.unit.reset();
  const auto same = question_of(own, question.find);
  return same ? std::optional(*same) : std::nullopt;
}

Diagnosis judged_number(const lessons::Problem& problem, const Question& question, const TypedAnswer& typed) {
  std::vector<Number> roots;
  if (!is_right(typed, question, roots)) {
    roots = answers_from_roots(problem, question);
  }
  if (is_right(typed, question, roots)) {
    return {AnswerVerdict::Right, {}, "Right."};
  }
  if (question.is_converted && typed.unit && !(*typed.unit == *question.unit) &&
      has_right_number(typed, *measured_as(problem, question), {})) {
    const Cause cause{"G9",
                      "That is right in " + typed.unit->text() + ". The answer is asked in " + question.unit->text() +
                          ": convert it.",
                      {},
                      false};
    return {AnswerVerdict::RightNumber, {cause}, cause.message};
  }
  if (question.unit && has_right_number(typed, question, roots)) {
    const Cause cause = wrong_unit(typed, question);
    return {AnswerVerdict::RightNumber, {cause}, cause.message};
  }
  const Figure figure = figure_of(problem, question);
  const bool has_unit = !typed.unit || (question.unit && *typed.unit == *question.unit);
  if (question.is_converted && has_unit && stands_for(typed.number, *question.truth)) {
    return told({rounded_too_far(typed)}, typed.number.text);
  }
  std::vector<Cause> causes = named_causes(typed, figure);
  const std::vector<Cause> conversions = wrong_conversions(typed, figure);
  causes.insert(causes.end(), conversions.begin(), conversions.end());
  std::optional<Cause> account = causes.empty() ? account_cause(typed, figure) : std::nullopt;
  if (account && !account->is_offered) {
    causes.push_back(*account);
  }
  if (causes.empty()) {
    causes = slips(typed, figure);
  }
  if (!causes.empty()) {
    return told(std::move(causes), typed.number.text);
  }
  Diagnosis unknown;
  unknown.message = "Not recognized. " + first_step(question);
  if (account) {
    unknown.causes = {*account};
  }
  return unknown;
}

bool is_letter(std::string_view typed) {
  return typed.size() == 1 && std::isalpha(static_cast<unsigned char>(typed.front())) != 0;
}

std::string options_told(const std::vector<Choice>& choices) {
  std::string text = "Choose one:";
  for (const Choice& one : choices) {
    text += (&one == &choices.front() ? " " : "; ") + one.text;
  }
  return text + ".";
}

// A length in what was typed beside "no": "no, 13 cm".
std::optional<TypedAnswer> value_beside(std::string_view typed) {
  const std::size_t digit = typed.find_first_of("0123456789");
  if (digit == std::string_view::npos) {
    return std::nullopt;
  }
  const auto read = read_answer(typed.substr(digit));
  return read ? std::optional(*read) : std::nullopt;
}

Diagnosis judged_option(const Choice& choice, const lessons::Problem& problem, const Question& question,
                        std::string_view typed) {
  if (!choice.is_right) {
    return {AnswerVerdict::Recognized, {{choice.cause, choice.message, choice.faces, false}}, choice.message};
  }
  const std::optional<TypedAnswer> value = question.form == Form::YesNo ? value_beside(typed) : std::nullopt;
  if (value && !has_right_number(*value, question, answers_from_roots(problem, question))) {
    const std::string message =
        "The choice is right, but " + value->number.text + " would not fit. What do the other labels fix?";
    return {AnswerVerdict::Recognized, {{"P3", message, {}, false}}, message};
  }
  return {AnswerVerdict::Right, {}, choice.message};
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
  diagnosis.message = said(feedback.message);
  diagnosis.verdict = feedback.verdict == solids::NameVerdict::Right     ? AnswerVerdict::Right
                      : feedback.verdict == solids::NameVerdict::AskBase ? AnswerVerdict::Ask
                      : feedback.verdict == solids::NameVerdict::Unknown ? AnswerVerdict::Unrecognized
                                                                         : AnswerVerdict::Recognized;
  if (feedback.verdict == solids::NameVerdict::WrongFamily || feedback.verdict == solids::NameVerdict::WrongBase) {
    diagnosis.causes.push_back({"N9", diagnosis.message, {}, false});
  }
  return diagnosis;
}

Result<Diagnosis, std::string> diagnosed(const lessons::Problem& problem, std::string_view typed,
                                         const std::string& find, std::uint64_t seed) {
  const auto question = question_of(problem, find);
  if (!question) {
    return failure(question.error());
  }
  if (question->asked == Asked::Net) {
    return judged_net(problem, typed);
  }
  const bool is_task = question->form != Form::Number && question->form != Form::Name;
  if (is_task || is_letter(typed)) {
    const auto choices = choices_of(problem, seed, find);
    if (!choices && is_task) {
      return failure(choices.error());
    }
    const auto option = choices ? option_typed(problem, *question, *choices, typed) : std::nullopt;
    if (option) {
      return judged_option((*choices)[*option], problem, *question, typed);
    }
    if (is_task && question->form != Form::Mistake) {
      return Diagnosis{AnswerVerdict::Unrecognized, {}, "Not recognized. " + options_told(*choices)};
    }
  }
  if (question->form == Form::Name) {
    return judged_name(problem, typed);
  }
  const std::string item = problem.supply ? problem.supply->item : question->asked == Asked::Scale ? "times" : "";
  const auto read = read_answer(typed, item);
  if (!read) {
    return Diagnosis{AnswerVerdict::Unrecognized, {}, read.error()};
  }
  return judged_number(problem, *question, *read);
}

}  // namespace fw::practice
