// Generated problems that ask in another way than by a measure keep to the rules of their type.
#include <gtest/gtest.h>

#include <map>

#include "lessons/asked_value.hpp"
#include "practice/choice_parts.hpp"
#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "practice/task_type.hpp"
#include "tasks/decide/claim.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/word_problems/purpose.hpp"

namespace fw::tasks::generate_tasks_test {
namespace {

using namespace practice;

std::vector<lessons::Problem> problems_of(const std::string& type, int level, std::size_t count = 24) {
  PracticeRequest request;
  request.types = {type};
  request.level = level;
  request.seed = 17;
  request.count = count;
  const auto lessons = generated(request);
  EXPECT_TRUE(lessons.has_value()) << type << ": " << (lessons ? "" : said(lessons.error()));
  return lessons ? lessons->front().problems : std::vector<lessons::Problem>{};
}

// Source for the rules below: the table of problem types in the notes on teaching this unit; common practice.
TEST(GeneratedPacking, VolumesSayTooMuchAndTurningMatters) {
  std::size_t turned = 0;
  for (const int level : {2, 3}) {
    for (const lessons::Problem& problem : problems_of("pack", level)) {
      const std::vector<practice::Packing> ways = question_of(problem)->ways;
      double quotient = 1;
      for (std::size_t i = 0; i < 3; ++i) {
        quotient *= (ways[0].edges[i] / ways[0].item[i]).to_double();
      }
      EXPECT_GE(quotient, static_cast<double>(ways[0].count + 1)) << problem.prompt;
      turned += ways.size() > 1 && ways[0].count > ways.back().count ? 1U : 0U;
    }
  }
  EXPECT_GE(turned, 10U);
}

// Of a copy, or the one that is asked for.
exact::Number factor_of(const Question& question) { return question.factor.value_or(*question.truth); }

TEST(GeneratedCopies, NeverTakeTwoOrThreeTimes) {
  std::map<std::string, int> factors;
  for (const std::string type : {"copy", "factor"}) {
    for (const lessons::Problem& problem : problems_of(type, 3)) {
      const exact::Number factor = factor_of(*question_of(problem));
      EXPECT_FALSE(factor == exact::Number::whole(2) || factor == exact::Number::whole(3));
      ++factors[stated(problem.tasks.front()).given_number()];
    }
  }
  EXPECT_GE(factors.size(), 6U);
  EXPECT_EQ(factors["?"], 24);
  for (const lessons::Problem& problem : problems_of("copy", 2)) {
    EXPECT_TRUE(factor_of(*question_of(problem)).is_whole()) << problem.prompt;
  }
}

TEST(GeneratedUnits, LeaveFourDigitsAtMostAndGoBothWays) {
  std::size_t larger = 0;
  std::size_t smaller = 0;
  for (const lessons::Problem& problem : problems_of("asked-unit", 2)) {
    const auto question = question_of(problem);
    ASSERT_TRUE(question->is_converted);
    const exact::Number own = *lessons::asked_value(problem, problem.solid, question->measure);
    larger += *question->truth < own ? 1U : 0U;
    smaller += own < *question->truth ? 1U : 0U;
  }
  EXPECT_GE(larger, 6U);
  EXPECT_GE(smaller, 4U);
}

TEST(GeneratedClaims, AreTrueInHalfAndElseTenToFortyPartsInAHundredOff) {
  std::size_t can_be = 0;
  const std::vector<lessons::Problem> problems = problems_of("can-it-be", 2, 40);
  for (const lessons::Problem& problem : problems) {
    const Claim& claim = *task_as<Claim>(problem);
    const ClaimVerdict verdict = claim.verdict(problem);
    const double claimed = claim.value().number.value.to_double();
    const double off = std::abs(claimed / verdict.fitting.to_double() - 1);
    if (verdict.can_be) {
      ++can_be;
      EXPECT_EQ(off, 0) << problem.prompt;
    } else {
      EXPECT_GE(off, 0.0999) << problem.prompt;
      EXPECT_LE(off, 0.4001) << problem.prompt;
      EXPECT_FALSE(verdict.why.empty());
    }
    // The solid without the claim exists, so that the claim alone is at fault.
    EXPECT_TRUE(problem.solid.remarks().empty());
  }
  EXPECT_EQ(can_be, problems.size() / 2);
}

TEST(GeneratedMistakes, AreOneMistakeEach) {
  std::map<std::string, int> causes;
  for (const int level : {2, 3}) {
    for (const lessons::Problem& problem : problems_of("find-mistake", level)) {
      const auto choices = choices_of(problem, 5);
      ASSERT_TRUE(choices.has_value()) << problem.prompt << ": " << said(choices.error());
      EXPECT_GE(choices->size(), 3U) << problem.prompt;
      for (const Choice& one : *choices) {
        causes[one.cause] += one.is_right ? 1 : 0;
      }
    }
  }
  EXPECT_GE(causes.size(), 12U);
}

TEST(GeneratedBounds, AreAFactorFromOneAndAHalfToThreeApart) {
  std::map<std::size_t, int> places;
  for (const lessons::Problem& problem : problems_of("estimate", 1)) {
    const auto options = choices_of(problem, 1);
    ASSERT_EQ(options->size(), 3U);
    const double truth = question_of(problem)->truth->to_double();
    for (std::size_t i = 0; i < options->size(); ++i) {
      const std::vector<TypedAnswer> bounds =
          quantities_in(said((*options)[i].text).substr(std::string("between ").size()), {" and "});
      ASSERT_EQ(bounds.size(), 2U) << said((*options)[i].text);
      const double low = bounds[0].number.value.to_double();
      const double high = bounds[1].number.value.to_double();
      EXPECT_GE(high / low, 1.5);
      EXPECT_LE(high / low, 3.0);
      places[i] += low < truth && truth < high ? 1 : 0;
    }
  }
  EXPECT_GE(places.size(), 3U);
  for (const auto& [place, count] : places) {
    EXPECT_GE(count, 3) << place;
  }
}

/// The numbers of "between 100 cm² and 200 cm²" in all options.
std::vector<TypedAnswer> bounds_in(const std::vector<Choice>& options) {
  std::vector<TypedAnswer> all;
  for (const Choice& option : options) {
    const std::vector<TypedAnswer> both =
        quantities_in(said(option.text).substr(std::string("between ").size()), {" and "});
    all.insert(all.end(), both.begin(), both.end());
  }
  return all;
}

// Nearer than that it would take an exact number to decide; common practice, no source.
TEST(GeneratedBounds, StandTenPartsInAHundredOffTheValueAtLeast) {
  std::size_t near = 0;
  for (const int level : {1, 2, 3}) {
    for (const lessons::Problem& problem : problems_of("estimate", level, 60)) {
      const double truth = question_of(problem)->truth->to_double();
      const auto options = choices_of(problem, 1);
      ASSERT_TRUE(options.has_value());
      for (const TypedAnswer& bound : bounds_in(*options)) {
        const double value = bound.number.value.to_double();
        const double ratio = std::max(truth, value) / std::min(truth, value);
        EXPECT_GT(ratio, 1.1) << problem.prompt;
        near += ratio < 1.2 ? 1U : 0U;
      }
    }
  }
  EXPECT_GT(near, 0U) << "none comes near, so that this says nothing";
}

TEST(GeneratedPurposes, AreBalanced) {
  std::map<std::string, int> purposes;
  for (const lessons::Problem& problem : problems_of("purpose", 1)) {
    ++purposes[task_as<AskedPurpose>(problem)->purpose()];
  }
  EXPECT_EQ(purposes["cover"], 6);
  EXPECT_EQ(purposes["fill"], 6);
  EXPECT_EQ(purposes["edge"], 6);
  EXPECT_EQ(purposes["one face"], 6);
}

}  // namespace
}  // namespace fw::tasks::generate_tasks_test
