// How often a diagnosis is right, over many generated problems.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "practice/seed.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::tasks::diagnosis_rates_test {
namespace {

using namespace practice;

bool is_typed_number(const lessons::Problem& problem) {
  const AnswerForm form = first_task(problem)->form();
  return form == AnswerForm::Number || form == AnswerForm::Count;
}

constexpr std::size_t many = 20000;

// Every type at every level; sets of 60, each from its own seed.
const std::vector<lessons::Problem>& many_problems() {
  static const std::vector<lessons::Problem> all = [] {
    std::vector<lessons::Problem> problems;
    for (std::uint64_t seed = 1; problems.size() < many; ++seed) {
      PracticeRequest request;
      request.seed = seed;
      request.level = 1 + static_cast<int>(seed % 3);
      request.count = 60;
      const auto lessons = generated(request);
      EXPECT_TRUE(lessons.has_value()) << (lessons ? "" : said(lessons.error()));
      if (!lessons) {
        break;
      }
      const auto& made = lessons->front().problems;
      problems.insert(problems.end(), made.begin(), made.end());
    }
    return problems;
  }();
  return all;
}

// The forms in which a right answer is typed.
std::vector<std::string> right_forms(const Question& question) {
  const exact::Number& truth = *question.truth;
  std::vector<std::string> numbers{exact::exact_text(truth), exact::fixed_text(truth, 2), exact::fixed_text(truth, 1)};
  if (question.is_converted) {  // small ones have few digits before they end: they are not rounded to one decimal
    numbers = {exact::exact_text(truth), exact::fixed_text(truth, 6), exact::fixed_text(truth, 7)};
  }
  if (truth.is_whole()) {
    numbers.push_back(exact::shown(truth, 0).text + ".0");
  }
  std::vector<std::string> forms;
  for (const std::string& number : numbers) {
    if (number.empty()) {
      continue;
    }
    if (!question.unit) {
      forms.push_back(number);
      continue;
    }
    const std::string unit = question.unit->text();
    for (const std::string& one : {number + " " + unit, number + question.unit->ascii(), "= " + number + " " + unit,
                                   number + " " + question.unit->name() + "s"}) {
      forms.push_back(one);
    }
  }
  return forms;
}

std::string right_option(const lessons::Problem& problem) {
  const auto choices = choices_of(problem, 1);
  EXPECT_TRUE(choices.has_value()) << problem.prompt << (choices ? "" : ": " + said(choices.error()));
  for (const Choice& one : choices ? *choices : std::vector<Choice>{}) {
    if (one.is_right) {
      return said(one.text);
    }
  }
  ADD_FAILURE() << "no option is right: " << problem.prompt;
  return "";
}

// One of the forms that each can be typed in: which of them changes from problem to problem.
TEST(DiagnosisRatesSlow, ARightAnswerIsNeverCalledWrong) {
  std::size_t judged = 0;
  for (const lessons::Problem& problem : many_problems()) {
    const auto question = question_of(problem);
    ASSERT_TRUE(question.has_value()) << said(question.error());
    std::string typed;
    if (net_asked(problem) != nullptr) {
      typed = said(net_answer(problem));
    } else if (!is_typed_number(problem)) {
      typed = right_option(problem);
    } else {
      const std::vector<std::string> forms = right_forms(*question);
      typed = forms[judged % forms.size()];
    }
    ++judged;
    ASSERT_EQ(diagnosed(problem, typed)->verdict, AnswerVerdict::Right) << problem.prompt << "\n" << typed;
  }
  EXPECT_GE(judged, many);
}

std::string typed_number(double value) {
  const exact::Number number = exact::Number::ratio(std::llround(value * 100), 100);
  return exact::shown(number, 2).text;
}

// Wrong numbers to which one mistake alone leads.
std::vector<WrongNumber> unique_numbers(const lessons::Problem& problem, const Question& question) {
  std::vector<WrongNumber> unique = wrong_numbers(figure_of(problem, question));
  const std::vector<WrongNumber> all = unique;
  unique.erase(std::remove_if(unique.begin(), unique.end(),
                              [&](const WrongNumber& wrong) {
                                return std::any_of(all.begin(), all.end(), [&](const WrongNumber& one) {
                                  return one.signature->id != wrong.signature->id &&
                                         std::abs(one.value - wrong.value) < 0.01 * wrong.value;
                                });
                              }),
               unique.end());
  return unique;
}

// Of each problem one mistake, another one from problem to problem.
TEST(DiagnosisRatesSlow, ANumberOfOneMistakeIsNamedFirst) {
  std::size_t asked = 0;
  std::size_t first = 0;
  for (const lessons::Problem& problem : many_problems()) {
    const auto question = question_of(problem);
    if (!question->truth || !is_typed_number(problem)) {
      continue;
    }
    const std::vector<WrongNumber> unique = unique_numbers(problem, *question);
    if (unique.empty()) {
      continue;
    }
    const WrongNumber& wrong = unique[asked % unique.size()];
    ++asked;
    const Diagnosis diagnosis = *diagnosed(problem, typed_number(wrong.value));
    first += !diagnosis.causes.empty() && diagnosis.causes.front().id == wrong.signature->id ? 1U : 0U;
  }
  EXPECT_GT(asked, many / 2);
  EXPECT_GE(static_cast<double>(first), 0.98 * static_cast<double>(asked)) << first << " of " << asked;
  RecordProperty("first_per_thousand", static_cast<int>(1000 * first / asked));
}

TEST(DiagnosisRatesSlow, ARandomNumberIsSeldomRecognized) {
  // A whole number within 60 % of areas and volumes of 100 and more: below, there are few numbers to draw from.
  std::size_t asked = 0;
  std::size_t recognized = 0;
  std::size_t offered = 0;
  Seed seed{77};
  for (const lessons::Problem& problem : many_problems()) {
    const auto question = question_of(problem);
    if (!question->truth || !question->unit || !is_typed_number(problem) ||
        *question->truth < exact::Number::whole(100)) {
      continue;
    }
    const auto truth = static_cast<std::size_t>(question->truth->to_double());
    const std::size_t number = truth * 2 / 5 + seed.below(truth * 6 / 5);
    if (number == truth) {
      continue;
    }
    ++asked;
    const Diagnosis diagnosis = *diagnosed(problem, std::to_string(number) + " " + question->unit->ascii());
    const bool is_told = diagnosis.verdict == AnswerVerdict::Recognized || diagnosis.verdict == AnswerVerdict::Ask;
    recognized += is_told ? 1U : 0U;
    offered += !is_told && !diagnosis.causes.empty() ? 1U : 0U;
  }
  EXPECT_GT(asked, many / 5);
  EXPECT_LT(static_cast<double>(recognized), 0.06 * static_cast<double>(asked)) << recognized << " of " << asked;
  EXPECT_LT(static_cast<double>(offered), 0.10 * static_cast<double>(asked)) << offered << " of " << asked;
  RecordProperty("recognized_per_thousand", static_cast<int>(1000 * recognized / asked));
  RecordProperty("offered_per_thousand", static_cast<int>(1000 * offered / asked));
}

}  // namespace
}  // namespace fw::tasks::diagnosis_rates_test
