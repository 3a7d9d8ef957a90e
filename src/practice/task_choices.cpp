#include <algorithm>
#include <cctype>
#include <cmath>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"
#include "practice/diagnosis.hpp"
#include "practice/read_answer.hpp"
#include "practice/signatures.hpp"
#include "reasoning/tasks/task.hpp"

// Options that are no numbers: yes or no, a mistake, an interval, what is measured.
namespace fw::practice {
namespace {

using exact::Number;
using lessons::Problem;

Choice right(std::string text, std::string message) { return {std::move(text), true, "", std::move(message), {}}; }
Choice wrong(std::string text, std::string cause, std::string message) {
  return {std::move(text), false, std::move(cause), std::move(message), {}};
}

// ---- can this figure be? ----

std::vector<Choice> claim_choices(const Problem& problem, const Question& question) {
  const reasoning::ClaimVerdict verdict = reasoning::judged_claim(problem);
  const exact::Shown shown = exact::shown(*question.truth, 2);
  const std::string fitting = (shown.exact ? "" : "about ") + shown.text + " " + question.unit->text();
  const std::string claimed = problem.claim->value.text;
  if (verdict.can_be) {
    return {right("yes", "Right. The other labels lead to " + fitting + " too."),
            wrong("no", "P2", "No would need two labels that disagree. Work this length out from the others.")};
  }
  return {wrong("yes", "P1", "Yes would need " + fitting + ". Which length do the other labels lead to?"),
          right("no", "Right. " + claimed + " cannot be; " + fitting + " would fit.")};
}

// ---- which mistake? ----

// What a message says of the number, without what to do next.
std::string first_sentence(const std::string& message) {
  const std::size_t end = message.find(". ");
  return end == std::string::npos ? message : message.substr(0, end + 1);
}

// The question of the measure behind a task.
Result<Question, std::string> measure_behind(const Problem& problem) {
  Problem plain = problem;
  plain.wrong.reset();
  plain.between.clear();
  return question_of(plain);
}

Result<std::vector<Choice>, std::string> mistake_choices(const Problem& problem, const Question& question, Seed& seed) {
  constexpr std::size_t wrong_options = 3;
  const auto made = mistake_of(problem, question);
  if (!made) {
    return failure(made.error());
  }
  const auto measure = measure_behind(problem);
  const Figure figure = figure_of(problem, *measure);
  const std::string& number = problem.wrong->number.text;
  const std::string given = number + " " + problem.wrong->unit.text();
  const double value = problem.wrong->number.value.to_double();
  std::vector<Choice> choices{*made};
  std::vector<WrongNumber> others = wrong_numbers(figure);
  shuffle(others, seed);
  for (const WrongNumber& one : others) {
    const std::string text = said(about(one.signature->saying.says, number));
    const bool is_new = std::none_of(choices.begin(), choices.end(), [&](const Choice& other) {
      return other.text == text || other.cause == one.signature->id;
    });
    const bool is_near = std::abs(one.value - value) <= 0.02 * value;
    if (is_new && !is_near && choices.size() <= wrong_options) {
      const std::string leads = answer_text(problem, *measure, as_written_down(one.value));
      choices.push_back(
          wrong(text, one.signature->id,
                "That way would lead to " + leads + ", not to " + given + ". Work out what is missing, or too much."));
      choices.back().faces = one.faces;
    }
  }
  shuffle(choices, seed);
  return choices;
}

// ---- between which bounds? ----

std::vector<Number> bounds_of(const Problem& problem, const units::Unit& unit) {
  std::vector<Number> bounds;
  for (const units::WrittenQuantity& bound : problem.between) {
    bounds.push_back(bound.number.value * units::conversion(bound.unit, unit));
  }
  return bounds;
}

std::string shown_bound(const units::WrittenQuantity& bound) { return bound.number.text + " " + bound.unit.text(); }

std::vector<Choice> interval_choices(const Problem& problem, const Question& question) {
  const std::vector<Number> bounds = bounds_of(problem, *question.unit);
  const Figure figure = figure_of(problem, question);
  const std::vector<WrongNumber> mistakes = wrong_numbers(figure);
  std::vector<Choice> choices;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const std::string text =
        "between " + shown_bound(problem.between[i]) + " and " + shown_bound(problem.between[i + 1]);
    const double low = bounds[i].to_double();
    const double high = bounds[i + 1].to_double();
    if (low < question.truth->to_double() && question.truth->to_double() < high) {
      choices.push_back(right(
          text,
          "Right. It comes to " + answer_text(problem, question, as_written_down(question.truth->to_double())) + "."));
      continue;
    }
    const auto lands = std::find_if(mistakes.begin(), mistakes.end(),
                                    [&](const WrongNumber& one) { return low < one.value && one.value < high; });
    const bool is_low = high <= question.truth->to_double();
    const std::string size = is_low ? "That would be too little. " : "That would be too much. ";
    if (lands == mistakes.end()) {
      choices.push_back(wrong(text, "M1", size + "Take each length to one digit and estimate again."));
    } else {
      const std::string number = exact::shown(as_written_down(lands->value), 9).text;
      choices.push_back(wrong(text, lands->signature->id, size + said(lands->signature->saying.about(number))));
      choices.back().faces = lands->faces;
    }
  }
  return choices;
}

// ---- what is measured? ----

struct PurposeRow {
  const char* purpose;
  const char* text;
  const char* message;  ///< where it is chosen and is not right
  std::vector<std::string> words;
};
const std::vector<PurposeRow>& purposes() {
  static const std::vector<PurposeRow> table{
      {"cover",
       "cover: areas of faces, added up",
       "That would be the faces. Does it lie on several faces here, or somewhere else?",
       {"cover", "surface", "area", "faces", "lateral"}},
      {"fill",
       "fill: a volume",
       "That would be the space inside. Does it fill the solid, or lie on it?",
       {"fill", "volume", "space"}},
      {"edge",
       "edge: a length",
       "That would be a length. Does it run along a line, or spread out?",
       {"edge", "length", "line"}},
      {"one face",
       "one face: a single area",
       "That would be one face alone. Is only one face touched?",
       {"one face", "base", "single", "one"}},
  };
  return table;
}

std::vector<Choice> purpose_choices(const Problem& problem) {
  const std::string purpose = reasoning::purpose_of(*problem.supply);
  std::vector<Choice> choices;
  for (const PurposeRow& row : purposes()) {
    choices.push_back(row.purpose == purpose ? right(row.text, "Right.") : wrong(row.text, "L1", row.message));
  }
  return choices;
}

// ---- the same? ----

std::vector<Choice> same_choices(const Problem& problem) {
  const std::string number = exact::shown(problem.solid.volume().amount(), 2).text;
  const std::string square = problem.solid.unit().to_the(2).text();
  return {right("no: squares cover it, cubes fill it", "Right."),
          wrong("yes: " + number + " is " + number, "G1",
                "Yes would mean that a square is a cube. What does each of the " + number + " count?"),
          wrong("yes, once both are in " + square, "G2",
                "A space cannot be written in squares. Which little shape fills it?"),
          wrong("no: one of the two is a mistake", "A1", "Both are worked out rightly. What does each number count?")};
}

// ---- what was typed ----

std::string lowered(std::string_view text) {
  std::string low;
  for (const char c : text) {
    low += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  const std::size_t first = low.find_first_not_of(" .\t");
  const std::size_t last = low.find_last_not_of(" .!\t");
  return first == std::string::npos ? "" : low.substr(first, last - first + 1);
}

bool begins_with(const std::string& text, const std::string& word) { return text.rfind(word, 0) == 0; }

std::optional<std::size_t> yes_or_no(const std::string& typed) {
  for (const char* no : {"no", "impossible", "false", "it cannot", "cannot", "can't"}) {
    if (begins_with(typed, no)) {
      return 1;
    }
  }
  for (const char* yes : {"yes", "possible", "true", "it can", "can"}) {
    if (begins_with(typed, yes)) {
      return 0;
    }
  }
  return typed == "y" ? std::optional<std::size_t>(0) : typed == "n" ? std::optional<std::size_t>(1) : std::nullopt;
}

// The quantities of a text: "100 to 200 cm²", "100-200 cm^2", "between 100 cm² and 200 cm²"; a unit serves those
// before.
std::vector<TypedAnswer> quantities_in(std::string text) {
  std::vector<TypedAnswer> all;
  for (const std::string sign : {"between", "from", "–"}) {
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign)) {
      text.replace(at, sign.size(), sign == "–" ? ";" : "");
    }
  }
  for (const std::string sign : {" and ", " to ", "-", "<"}) {
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign)) {
      text.replace(at, sign.size(), ";");
    }
  }
  for (std::size_t start = 0; start <= text.size();) {
    const std::size_t end = std::min(text.find(';', start), text.size());
    if (const auto read = read_answer(text.substr(start, end - start))) {
      all.push_back(*read);
    }
    start = end + 1;
  }
  return all;
}

std::optional<std::size_t> interval_typed(const Problem& problem, const Question& question, const std::string& typed) {
  const std::vector<TypedAnswer> read = quantities_in(typed);
  std::vector<Number> numbers;
  for (const TypedAnswer& one : read) {
    const std::optional<units::Unit> unit = one.unit ? one.unit : read.back().unit;
    if (unit && !unit->converts_to(*question.unit)) {
      return std::nullopt;
    }
    numbers.push_back(one.number.value * (unit ? units::conversion(*unit, *question.unit) : Number::whole(1)));
  }
  const std::vector<Number> bounds = bounds_of(problem, *question.unit);
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const bool is_pair = numbers.size() == 2 && numbers[0] == bounds[i] && numbers[1] == bounds[i + 1];
    const bool is_inside = numbers.size() == 1 && bounds[i] < numbers[0] && numbers[0] < bounds[i + 1];
    if (is_pair || is_inside) {
      return i;
    }
  }
  return std::nullopt;
}

std::optional<std::size_t> purpose_typed(const std::string& typed) {
  if (begins_with(typed, "one") || begins_with(typed, "a single") || begins_with(typed, "single")) {
    return purposes().size() - 1;
  }
  for (std::size_t i = 0; i < purposes().size(); ++i) {
    for (const std::string& word : purposes()[i].words) {
      if (typed.find(word) != std::string::npos) {
        return i;
      }
    }
  }
  return std::nullopt;
}

}  // namespace

Result<Choice, std::string> mistake_of(const Problem& problem, const Question& question) {
  const auto measure = measure_behind(problem);
  if (!measure) {
    return failure(measure.error());
  }
  Problem plain = problem;
  plain.wrong.reset();
  const std::string typed = problem.wrong->number.text + " " + question.unit->ascii();
  const auto diagnosis = diagnosed(plain, typed);
  if (!diagnosis) {
    return failure(diagnosis.error());
  }
  if (diagnosis->verdict != AnswerVerdict::Recognized || diagnosis->causes.size() != 1) {
    return failure("the wrong answer " + problem.wrong->text +
                   (diagnosis->causes.size() > 1 ? " comes from several mistakes" : " comes from no usual mistake") +
                   ", so which one it was cannot be asked: give another one");
  }
  const Cause& cause = diagnosis->causes.front();
  Choice choice = right(first_sentence(cause.message),
                        "Right. " + cause.message + " The right value is " +
                            answer_text(problem, question, as_written_down(question.truth->to_double())) + ".");
  choice.cause = cause.id;
  choice.faces = cause.faces;
  return choice;
}

Result<std::vector<Choice>, std::string> task_choices(const Problem& problem, const Question& question, Seed& seed) {
  switch (question.form) {
    case Form::YesNo:
      return claim_choices(problem, question);
    case Form::Mistake:
      return mistake_choices(problem, question, seed);
    case Form::Interval:
      return interval_choices(problem, question);
    case Form::Same:
      return same_choices(problem);
    case Form::Lengths:
      return lengths_choices(problem, seed);
    default:
      return purpose_choices(problem);
  }
}

std::optional<std::size_t> option_typed(const Problem& problem, const Question& question,
                                        const std::vector<Choice>& choices, std::string_view typed) {
  const std::string low = lowered(typed);
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (low == lowered(letter(i)) || low == lowered(choices[i].text)) {
      return i;
    }
  }
  switch (question.form) {
    case Form::YesNo:
      return yes_or_no(low);
    case Form::Interval:
      return interval_typed(problem, question, low);
    case Form::Purpose:
      return purpose_typed(low);
    case Form::Same: {
      const auto said = yes_or_no(low);
      return said ? std::optional<std::size_t>(*said == 0 ? 1 : 0) : std::nullopt;
    }
    case Form::Lengths:
      return lengths_typed(choices, typed);
    default:
      return std::nullopt;
  }
}

}  // namespace fw::practice
