// How often a diagnosis is right, over many generated problems.
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "practice/generate/generate.hpp"
#include "practice/net_tasks.hpp"
#include "practice/seed.hpp"

namespace fw::practice::diagnosis_rates_test {
namespace {

// Every type at every level, `count` problems in all; sets of 60, each from its own seed.
std::vector<lessons::Problem> many_problems(std::size_t count) {
  std::vector<lessons::Problem> problems;
  for (std::uint64_t seed = 1; problems.size() < count; ++seed) {
    PracticeRequest request;
    request.seed = seed;
    request.level = 1 + static_cast<int>(seed % 3);
    request.count = 60;
    const auto lessons = generated(request);
    EXPECT_TRUE(lessons.has_value()) << (lessons ? "" : lessons.error());
    if (!lessons) {
      break;
    }
    const auto& made = lessons->front().problems;
    problems.insert(problems.end(), made.begin(), made.end());
  }
  return problems;
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
  EXPECT_TRUE(choices.has_value()) << problem.prompt << (choices ? "" : ": " + choices.error());
  for (const Choice& one : choices ? *choices : std::vector<Choice>{}) {
    if (one.is_right) {
      return one.text;
    }
  }
  ADD_FAILURE() << "no option is right: " << problem.prompt;
  return "";
}

void judge_right_answers(std::size_t count) {
  std::size_t judged = 0;
  for (const lessons::Problem& problem : many_problems(count)) {
    const auto question = question_of(problem);
    ASSERT_TRUE(question.has_value()) << question.error();
    if (problem.net) {
      EXPECT_EQ(diagnosed(problem, net_answer(problem))->verdict, AnswerVerdict::Right) << problem.solid.name();
      continue;
    }
    if (question->form != Form::Number) {
      const std::string typed = right_option(problem);
      ++judged;
      EXPECT_EQ(diagnosed(problem, typed)->verdict, AnswerVerdict::Right) << problem.prompt << "\n" << typed;
      continue;
    }
    for (const std::string& typed : right_forms(*question)) {
      ++judged;
      ASSERT_EQ(diagnosed(problem, typed)->verdict, AnswerVerdict::Right) << problem.prompt << "\n" << typed;
    }
  }
  EXPECT_GT(judged, count);
}
TEST(DiagnosisRatesSlow, ARightAnswerIsNeverCalledWrong) { judge_right_answers(600); }
// 20,000 problems in an optimized build; a build for development judges 3,000 in the same time.
#ifdef NDEBUG
constexpr std::size_t many = 20000;
#else
constexpr std::size_t many = 3000;
#endif
TEST(DiagnosisRatesSlow, SlowARightAnswerIsNeverCalledWrongInManyProblems) { judge_right_answers(many); }

std::string typed_number(double value) {
  const exact::Number number = exact::Number::ratio(std::llround(value * 100), 100);
  return exact::shown(number, 2).text;
}

TEST(DiagnosisRatesSlow, ANumberOfOneMistakeIsNamedFirst) {
  std::size_t unique = 0;
  std::size_t first = 0;
  for (const lessons::Problem& problem : many_problems(660)) {
    const auto question = question_of(problem);
    if (!question->truth || question->form != Form::Number) {
      continue;
    }
    const std::vector<WrongNumber> all = wrong_numbers(figure_of(problem, *question));
    for (const WrongNumber& wrong : all) {
      const auto near = std::count_if(all.begin(), all.end(), [&](const WrongNumber& one) {
        return one.signature->id != wrong.signature->id && std::abs(one.value - wrong.value) < 0.01 * wrong.value;
      });
      if (near > 0) {
        continue;
      }
      ++unique;
      const Diagnosis diagnosis = *diagnosed(problem, typed_number(wrong.value));
      const bool is_named = !diagnosis.causes.empty() && diagnosis.causes.front().id == wrong.signature->id;
      first += is_named ? 1U : 0U;
    }
  }
  EXPECT_GT(unique, 4000U);
  EXPECT_GE(static_cast<double>(first), 0.98 * static_cast<double>(unique)) << first << " of " << unique;
}

TEST(DiagnosisRatesSlow, ARandomNumberIsSeldomRecognized) {
  // Whole numbers within 60 % of areas and volumes of 100 and more: below, there are few numbers to draw from.
  std::size_t asked = 0;
  std::size_t recognized = 0;
  std::size_t offered = 0;
  Seed seed{77};
  for (const lessons::Problem& problem : many_problems(600)) {
    const auto question = question_of(problem);
    if (!question->truth || !question->unit || question->form != Form::Number ||
        *question->truth < exact::Number::whole(100)) {
      continue;
    }
    const auto truth = static_cast<std::size_t>(question->truth->to_double());
    for (int i = 0; i < 12; ++i) {
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
  }
  EXPECT_GT(asked, 2000U);
  EXPECT_LT(static_cast<double>(recognized), 0.06 * static_cast<double>(asked)) << recognized << " of " << asked;
  EXPECT_LT(static_cast<double>(offered), 0.10 * static_cast<double>(asked)) << offered << " of " << asked;
  RecordProperty("recognized_per_thousand", static_cast<int>(1000 * recognized / asked));
  RecordProperty("offered_per_thousand", static_cast<int>(1000 * offered / asked));
}

}  // namespace
}  // namespace fw::practice::diagnosis_rates_test
