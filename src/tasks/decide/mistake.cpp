#include "tasks/decide/mistake.hpp"

#include <algorithm>
#include <cmath>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_measure.hpp"
#include "practice/choice_parts.hpp"
#include "practice/signatures.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/decide/judged_numbers.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

// Which mistake leads to a wrong answer, and what is right.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::Diagnosis;
using practice::Fact;
using practice::Hint;
using reasoning::Outcome;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;
using words::message;

class Mistake : public practice::OptionTask {
 public:
  Mistake(std::string find, units::WrittenQuantity wrong) : find_(std::move(find)), wrong_(std::move(wrong)) {}

  /// The one mistake that the wrong answer comes from, with its message.
  /// Errors: a sentence, where it is no usual mistake, or several lead to it.
  [[nodiscard]] Result<Choice, words::Message> behind(const Problem& problem, const Question& question) const;

  [[nodiscard]] std::string key() const override { return "mistake"; }
  [[nodiscard]] std::string find() const override { return find_; }
  void write(Members& members) const override {
    members.emplace_back("wrong", lessons::object_in_line({{"answer", lessons::quote(wrong_.text)}}));
  }
  [[nodiscard]] words::Message sentence(const Problem& problem) const override {
    return message(
        "A student got {value} for the {measure}. What was the mistake?",
        {{"measure", asked_noun(problem, find_)}, {"value", words::Amount{wrong_.number.text, wrong_.unit.text()}}});
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "find-mistake"; }
  [[nodiscard]] std::vector<Fact> facts(const Problem&) const override {
    return {{wrong_.number.text, message("A student got {value}.", {{"value", practice::value_of(wrong_)}})}};
  }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(
      const Problem& problem, const reasoning::ClassNotation& notation) const override {
    return Measure(find_).hints(problem, notation);
  }
  [[nodiscard]] Result<std::vector<Choice>, words::Message> choices(const Problem& problem, const Question& question,
                                                                    Seed& seed) const override;
  [[nodiscard]] Result<words::Message, words::Message> answer(const Problem& problem,
                                                              const Question& question) const override;
  [[nodiscard]] std::string given_number() const override { return wrong_.text; }

 protected:
  [[nodiscard]] Diagnosis judged_other(const Problem& problem, const Question& question, const std::vector<Choice>&,
                                       const std::string& typed) const override {
    return practice::judged_number(problem, question, typed);
  }

 private:
  std::string find_;
  units::WrittenQuantity wrong_;
};

words::Message right_value(const Question& question) {
  return practice::answer_text(question, practice::as_written_down(question.truth->to_double()));
}

// ---- read ----

std::vector<Task> read_mistake(const TaskText& text) {
  const JsonNode& node = *text.node.find("wrong");
  const Context context = text.context.at("wrong");
  const Problem& problem = text.problem;
  const JsonNode* answer = node.is(JsonNode::Kind::Object) ? node.find("answer") : nullptr;
  if (answer == nullptr) {
    context.fault(node,
                  message("\"wrong\" is an object with the answer that a student got, such as {example}; found {found}",
                          {{"example", "{\"answer\": \"260 cm^2\"}"}, {"found", lessons::found_text(node)}}));
    return {};
  }
  lessons::check_keys(node, {"answer"}, "\"wrong\"", context);
  const auto find = one_measure(text, node, "wrong");
  if (!find) {
    return {};
  }
  const int dimension = *lessons::dimension_of_asked(problem.solid, *find);
  const Context here = context.at("answer");
  const auto quantity = lessons::read_quantity(*answer, dimension, here);
  if (!quantity) {
    return {};
  }
  const units::Unit unit = problem.solid.unit().to_the(dimension);
  if (!(quantity->unit == unit)) {
    here.fault(*answer, message("{value} is not in the unit of this solid: write it in {unit}",
                                {{"value", in_quotes(quantity->text)}, {"unit", unit.ascii()}}));
  } else if (quantity->number.value == *lessons::asked_value(problem, problem.solid, *find)) {
    here.fault(*answer, message("{value} is the right answer: write the one that a mistake leads to",
                                {{"value", in_quotes(quantity->text)}}));
  }
  return {Mistake(*find, *quantity)};
}

// ---- made up ----

std::optional<Problem> made_mistake(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = plain_problem(blueprint, seed);
  if (!problem) {
    return std::nullopt;
  }
  const std::string find = plain_of(blueprint).find;
  const auto question = Measure(find).question(*problem);
  std::vector<practice::WrongNumber> wrong = practice::wrong_numbers(practice::figure_of(*problem, *question));
  shuffle(wrong, seed);
  const double truth = question->truth->to_double();
  for (const practice::WrongNumber& one : wrong) {
    const Number number = practice::as_written_down(one.value);
    const bool is_rounded = std::abs(number.to_double() - one.value) > 1e-6;  // numbers to be found out end
    const bool is_far = one.value > 8 * truth || one.value * 8 < truth;
    if (!exact::decimals_needed(number, 1) || is_rounded || is_far) {
      continue;
    }
    const auto written = units::written_as_shown(number, *question->unit, 1);
    const Mistake mistake(find, written);
    if (mistake.behind(*problem, *question)) {
      Problem with_wrong = *problem;
      with_wrong.tasks = {mistake};
      with_wrong.prompt = told(
          {"A student says the {measure} of {a thing} is {amount}. Which mistake did the student make?",
           "For the {measure} of {a thing}, a student got {amount}. Which mistake was it?",
           "{Who} needs the {measure} of {a thing}, and a helper got {amount}. Which mistake did the helper make?"},
          drawn_blueprint,
          {{"measure", find == "volume" ? "volume" : "surface area"}, {"amount", said_quantity(written)}});
      return with_wrong;
    }
  }
  return std::nullopt;
}

}  // namespace

Result<Question, words::Message> Mistake::question(const Problem& problem) const {
  auto of_measure = Measure(find_).question(problem);
  if (!of_measure) {
    return of_measure;
  }
  Question question = std::move(of_measure).value();
  question.find = key();
  return question;
}

Result<Choice, words::Message> Mistake::behind(const Problem& problem, const Question& question) const {
  const auto measure = Measure(find_).question(problem);
  if (!measure) {
    return failure(measure.error());
  }
  const std::string typed = wrong_.number.text + " " + question.unit->ascii();
  const practice::Diagnosis diagnosis = practice::judged_number(problem, *measure, typed);
  if (diagnosis.verdict != practice::AnswerVerdict::Recognized || diagnosis.causes.size() != 1) {
    return failure(diagnosis.causes.size() > 1
                       ? message("the wrong answer {answer} comes from several mistakes, so the problem can't ask "
                                 "which one it was: give a different answer",
                                 {{"answer", wrong_.text}})
                       : message("the wrong answer {answer} does not come from a usual mistake, so the problem can't "
                                 "ask which one it was: give a different answer",
                                 {{"answer", wrong_.text}}));
  }
  const practice::Cause& cause = diagnosis.causes.front();
  Choice choice =
      practice::right_choice(words::first_sentence(cause.message),
                             message("Right. {mistake} What is the right value?", {{"mistake", cause.message}}));
  choice.cause = cause.id;
  choice.faces = cause.faces;
  return choice;
}

Result<std::vector<Choice>, words::Message> Mistake::choices(const Problem& problem, const Question& question,
                                                             Seed& seed) const {
  constexpr std::size_t wrong_options = 3;
  const auto made = behind(problem, question);
  if (!made) {
    return failure(made.error());
  }
  const auto measure = Measure(find_).question(problem);
  const practice::Figure figure = practice::figure_of(problem, *measure);
  const std::string& number = wrong_.number.text;
  const words::Amount given{number, wrong_.unit.text()};
  const double value = wrong_.number.value.to_double();
  std::vector<Choice> choices{*made};
  std::vector<practice::WrongNumber> others = practice::wrong_numbers(figure);
  shuffle(others, seed);
  for (const practice::WrongNumber& one : others) {
    const words::Message text = practice::about(one.signature->saying.says, number);
    const bool is_new = std::none_of(choices.begin(), choices.end(), [&](const Choice& other) {
      return said(other.text) == said(text) || other.cause == one.signature->id;
    });
    const bool is_near = std::abs(one.value - value) <= 0.02 * value;
    if (is_new && !is_near && choices.size() <= wrong_options) {
      const words::Message leads = practice::answer_text(*measure, practice::as_written_down(one.value));
      choices.push_back(
          practice::wrong_choice(text, one.signature->id,
                                 message("That mistake leads to {number}, not to {given}. What is missing, or extra?",
                                         {{"number", leads}, {"given", given}})));
      choices.back().faces = one.faces;
    }
  }
  shuffle(choices, seed);
  return choices;
}

Result<words::Message, words::Message> Mistake::answer(const Problem& problem, const Question& question) const {
  const auto mistake = behind(problem, question);
  if (!mistake) {
    return failure(mistake.error());
  }
  return message("{mistake} {answer}", {{"mistake", mistake->text}, {"answer", right_value(question)}});
}

std::optional<TaskWork> Mistake::work(const Problem& problem, int places) const {
  const units::Unit unit = problem.solid.unit().to_the(lessons::dimension_of_asked(problem.solid, find_).value_or(1));
  const auto value = lessons::asked_value(problem, problem.solid, find_);
  const Number right = value ? *value : Number{};
  const Number wrong = amount_in(wrong_, unit);
  TaskSheet sheet(places);
  const Noun title{reasoning::title_named(problem.solid, find_)};
  const SupplyNumber a = sheet.number(right, unit, Source::Kind::EarlierStep,
                                      message("the {measure}, found before", {{"measure", title}}));
  const SupplyNumber b =
      sheet.number(wrong, unit, Source::Kind::Known, message("what a student got"), wrong_.number.text);
  const auto asked = question(problem);
  const auto mistake = asked ? behind(problem, *asked) : Result<Choice, Message>(failure(asked.error()));
  // A face that is missing, or counted twice, shows in how far off the answer is; other mistakes do not.
  if (!mistake || !mistake->faces.empty()) {
    const bool is_less = wrong < right;
    std::ignore = sheet.steps().work_out(
        StepKind::Check,
        message("A student got {value}. How far off is that?", {{"value", practice::value_of(wrong_)}}),
        is_less ? a : b, "−", is_less ? b : a, {is_less ? right - wrong : wrong - right, unit, {}, ""});
  }
  if (mistake) {
    sheet.steps().say(StepKind::Check, mistake->text);
  }
  const Message answer = judged_amount(right, unit, places);
  TaskWork task{key(), find_, message("then the mistake"), {}, {}, {}, Outcome{right, unit}, 0, answer};
  return std::move(sheet).finished(
      std::move(task),
      mistake ? message("The right value is {answer}.", {{"answer", answer}})
              : message("The right value is {answer}. What is missing from the work, or extra?", {{"answer", answer}}));
}

bool asks_which_mistake(const Problem& problem) { return practice::task_as<Mistake>(problem) != nullptr; }

namespace row {
Row mistake() {
  Row row{"mistake", {"wrong"}, true};
  row.read = read_mistake;
  row.made = {{28, "find-mistake", "find the mistake", practice::Heading::DecideAndCheck, 2, "find the mistake", any,
               made_mistake}};
  row.examples = {
      R"("solid": {"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"},
         "find": ["surface_area"], "wrong": {"answer": "260 cm^2"})"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
