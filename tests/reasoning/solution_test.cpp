#include "reasoning/solution.hpp"

#include <gtest/gtest.h>

#include <cmath>

#include "algebra/isolate.hpp"
#include "algebra/print.hpp"
#include "reasoning/unknown.hpp"
#include "solids/catalog.hpp"
#include "support/describe_solid.hpp"

// Worked solutions: every answer is the solid's own value, and every line follows from the one before.
namespace fw::reasoning::solution_test {
namespace {

using algebra::Equation;
using algebra::Expression;
using Values = std::map<std::string, double, std::less<>>;

bool near(double a, double b) { return std::abs(a - b) <= 1e-8 * (1e-12 + std::abs(a) + std::abs(b)); }

double number_of(const Expression& e, const Values& values) { return algebra::rough_value(e, values); }

// The letters that no number stands for, each with a value that has nothing to do with the others; as large as the
// solid's own, so that roots have values there too.
Values with_letters(const solids::Solid& solid, const Solution& solution, const Equation& equation, double seed) {
  Values values;
  for (const auto& [name, number] : solution.values) {
    values.insert_or_assign(name, number.to_double());
  }
  for (const algebra::Symbol& symbol : algebra::symbols_of(equation.left - equation.right)) {
    if (values.count(symbol.name) == 0) {
      seed = std::fmod(seed * 7.31 + 1.17, 11.0) + 0.5;
      const auto own = solid.values().find(symbol.name);
      values.insert_or_assign(symbol.name,
                              own == solid.values().end() ? seed : own->second.to_double() * (1 + seed / 20));
    }
  }
  return values;
}

std::string described(const Solution& solution, std::size_t i) {
  const Step& step = solution.steps[i];
  return "step " + std::to_string(i + 1) + ": " + said(step.reason) + "  " +
         (step.line ? algebra::plain_text(*step.line) : std::string());
}

void expect_same(double a, double b, const std::string& what) {
  const bool both_undefined = std::isnan(a) && std::isnan(b);  // the root of a negative, at these values of the letters
  EXPECT_TRUE(both_undefined || near(a, b)) << what << ": " << a << " is not " << b;
}

// What is done to one side: `after` is what it must be when `before` is what it was.
double done_to(const Change& change, double before, double operand) {
  switch (change.kind) {
    case Change::Kind::Add:
      return before + operand;
    case Change::Kind::Subtract:
      return before - operand;
    case Change::Kind::Multiply:
      return before * operand;
    case Change::Kind::Divide:
      return before / operand;
    case Change::Kind::Square:
      return std::pow(before, change.degree);
    default:
      return before;
  }
}

void expect_follows(const solids::Solid& solid, const Solution& solution, std::size_t i, double seed) {
  const Step& step = solution.steps[i];
  const Equation& before = *solution.steps[*step.before].equation;
  const Equation& after = *step.equation;
  const Change& change = step.change;
  const std::string what = described(solution, i);
  const Values values = with_letters(solid, solution, {before.left - before.right, after.left - after.right}, seed);
  const double left = number_of(before.left, values);
  const double right = number_of(before.right, values);
  const double new_left = number_of(after.left, values);
  const double new_right = number_of(after.right, values);
  const double operand = change.operand ? number_of(*change.operand, values) : 0;
  switch (change.kind) {
    case Change::Kind::Swap:
      expect_same(new_left, right, what);
      expect_same(new_right, left, what);
      return;
    case Change::Kind::TakeRoot:
      expect_same(std::pow(std::abs(new_left), change.degree), std::abs(left), what);
      expect_same(std::pow(new_right, change.degree), right, what);
      return;
    default:
      expect_same(new_left, done_to(change, left, operand), what);
      expect_same(new_right, done_to(change, right, operand), what);
  }
}

// Letters stand for the solid's own values.
void expect_holds(const solids::Solid& solid, const Solution& solution, std::size_t i, const Equation& equation) {
  Values values;
  for (const auto& [name, number] : solution.values) {
    values.insert_or_assign(name, number.to_double());
  }
  for (const auto& [name, number] : solid.values()) {
    values.insert_or_assign(name, number.to_double());
  }
  for (const solids::Face& face : solid.faces()) {
    values.insert_or_assign("face_area." + std::to_string(face.id.index() + 1), face.area.amount().to_double());
  }
  const double left = number_of(equation.left, values);
  const double right = number_of(equation.right, values);
  if (!std::isnan(left)) {  // "faces 1 and 2" is a letter of the page alone
    expect_same(left, right, described(solution, i));
  }
}

void expect_every_line_follows(const solids::Solid& solid, const Solution& solution) {
  for (std::size_t i = 0; i < solution.steps.size(); ++i) {
    const Step& step = solution.steps[i];
    if (!step.equation) {
      continue;
    }
    expect_holds(solid, solution, i, *step.equation);
    if (!step.before) {
      EXPECT_EQ(Change::Kind::Start, step.change.kind) << described(solution, i);
      continue;
    }
    ASSERT_LT(*step.before, i);
    if (step.change.kind == Change::Kind::PutIn) {
      if (step.change.symbol) {
        const Equation put_in =
            algebra::replaced(*solution.steps[*step.before].equation, *step.change.symbol, *step.change.operand);
        EXPECT_TRUE(put_in.left == step.equation->left && put_in.right == step.equation->right)
            << described(solution, i);
      }
      continue;  // numbers for letters: expect_holds() has looked at them
    }
    if (step.change.kind == Change::Kind::Search) {
      continue;
    }
    for (const double seed : {0.7, 3.1, 9.4}) {
      expect_follows(solid, solution, i, seed);
    }
  }
}

void expect_right(const solids::Solid& solid, const std::string& asked, Route route = Route::Formula) {
  SolutionOptions options;
  options.route = route;
  const auto solution = worked_solution(solid, asked, options);
  ASSERT_TRUE(solution.has_value()) << solid.name() << ", " << asked << ": " << said(solution.error());
  EXPECT_TRUE(near(solution->answer.amount.to_double(), solid.values().at(asked).to_double()))
      << solid.name() << ", " << asked << ": " << solution->answer.text;
  expect_every_line_follows(solid, *solution);
}

std::string givens_of(const solids::Solid& solid) {
  std::string text;
  for (const Askable& measure : askable_measures(solid)) {
    text += measure.is_given ? " " + measure.name : "";
  }
  return text;
}

// Every solid of the shelf, with each of its given measures in turn replaced by whatever else fixes the figure.
std::vector<solids::Solid> figures_with_unknowns() {
  std::vector<solids::Solid> all;
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    EXPECT_TRUE(solid.has_value()) << description.kind;
    all.push_back(*solid);
    for (const Askable& measure : askable_measures(*solid)) {
      for (const Askable& instead : could_be_given(*solid, measure.name)) {
        const auto figure = asked_for(*solid, measure.name, instead.name);
        EXPECT_TRUE(figure.has_value()) << solid->name() << ": " << measure.name << " from " << instead.name;
        all.push_back(*figure);
      }
    }
  }
  return all;
}

TEST(SolutionSlow, EveryMeasureOfEveryFigureIsWorkedOutAndEveryLineFollows) {
  std::size_t worked = 0;
  for (const solids::Solid& solid : figures_with_unknowns()) {
    for (const Askable& measure : askable_measures(solid)) {
      if (!measure.is_given) {
        SCOPED_TRACE(solid.name() + ", " + measure.title + " from" + givens_of(solid));
        expect_right(solid, measure.name);
        ++worked;
      }
    }
    if (HasFailure()) {
      break;
    }
  }
  EXPECT_GT(worked, 500U);
}

TEST(Solution, FaceByFaceAddsUpToTheSame) {
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    ASSERT_TRUE(solid.has_value());
    SCOPED_TRACE(solid->name());
    expect_right(*solid, "surface_area", Route::FaceByFace);
  }
}

Solution solved(const std::string& figure, const std::string& asked, const SolutionOptions& options = {}) {
  const auto solution = worked_solution(test::solid(figure), asked, options);
  EXPECT_TRUE(solution.has_value()) << said(solution.error());
  return *solution;
}

std::vector<std::string> lines_of(const Solution& solution) {
  std::vector<std::string> lines;
  for (const Step& step : solution.steps) {
    if (step.line) {
      lines.push_back(algebra::plain_text(*step.line));
    }
  }
  return lines;
}

bool has_line(const Solution& solution, const std::string& line) {
  const std::vector<std::string> lines = lines_of(solution);
  return std::find(lines.begin(), lines.end(), line) != lines.end();
}

TEST(Solution, SlantHeightFromTheSurfaceAreaIsIsolatedInSteps) {
  const Solution solution =
      solved("pyramid | slant_height: ? | base square | side: 12 cm | known surface_area: 492 cm^2", "slant_height");
  EXPECT_TRUE(has_line(solution, "24 cm · ℓ = 348 cm²")) << testing::PrintToString(lines_of(solution));
  EXPECT_EQ("14.5 cm", solution.answer.text);
}

TEST(Solution, AQuadraticRefusesTheRootThatIsNoLength) {
  const Solution solution =
      solved("pyramid | slant_height: 9 cm | base square | side: ? | known surface_area: 144 cm^2", "base.side");
  EXPECT_EQ("6 cm", solution.answer.text);
  const bool refuses = std::any_of(solution.steps.begin(), solution.steps.end(), [](const Step& step) {
    return said(step.reason).find("s = −24 cm, which cannot be a length") != std::string::npos;
  });
  EXPECT_TRUE(refuses);
}

TEST(Solution, APurePowerIsRooted) {
  EXPECT_EQ("5 cm", solved("cube | edge: ? | known surface_area: 150 cm^2", "edge").answer.text);
  EXPECT_EQ("7 cm", solved("cube | edge: ? | known volume: 343 cm^3", "edge").answer.text);
}

TEST(Solution, WhatDoesNotEndIsRoundedOnceAndShownExact) {
  const Solution solution = solved("pyramid | slant_height: 9 cm | base square | side: 6 cm", "volume");
  EXPECT_EQ("≈ 101.82 cm³", solution.answer.text);
  EXPECT_EQ("72√2 cm³", solution.answer.exact_text);
  SolutionOptions one_place;
  one_place.places = 1;
  EXPECT_EQ("≈ 101.8 cm³",
            solved("pyramid | slant_height: 9 cm | base square | side: 6 cm", "volume", one_place).answer.text);
}

TEST(Solution, WithoutAFormulaOfSchoolItTriesAndSaysSo) {
  const Solution solution =
      solved("pyramid | height: 12 cm | base square | side: ? | known lateral_area: 260 cm^2", "base.side");
  EXPECT_EQ("10 cm", solution.answer.text);
  EXPECT_TRUE(std::any_of(solution.steps.begin(), solution.steps.end(),
                          [](const Step& step) { return step.kind == StepKind::Numeric; }));
  EXPECT_TRUE(std::any_of(solution.steps.begin(), solution.steps.end(),
                          [](const Step& step) { return step.kind == StepKind::Check; }));
}

TEST(Solution, UnlikeUnitsAreConvertedFirst) {
  const Solution solution = solved("rectangular prism | length: 2 ft | width: 10 in | height: 1 ft 6 in", "volume");
  EXPECT_TRUE(has_line(solution, "1 ft 6 in = 18 in")) << testing::PrintToString(lines_of(solution));
  SolutionOptions inches;
  inches.unit = units::Unit::find("in^3");
  EXPECT_EQ(
      "4320 in³",
      solved("rectangular prism | length: 2 ft | width: 10 in | height: 1 ft 6 in", "volume", inches).answer.text);
}

/// The base edge stands beside a root and under it: both sides are squared, and a class gets there.
TEST(Solution, TheBaseEdgeFromTheSurfaceIsFoundByFormula) {
  const Solution solution =
      solved("pyramid | height: 4 cm | base square | side: ? | known surface_area: 96 cm^2", "base.side");
  EXPECT_EQ("6 cm", solution.answer.text);
  EXPECT_TRUE(std::none_of(solution.steps.begin(), solution.steps.end(),
                           [](const Step& step) { return step.kind == StepKind::Numeric; }));
}

TEST(Solution, FractionsAndDecimalsDoNotMix) {
  const Solution solution = solved("rectangular prism | length: 2 1/3 ft | width: 2.5 ft | height: 3 ft", "volume");
  EXPECT_TRUE(has_line(solution, "V = 2 1/3 ft × 2 1/2 ft × 3 ft")) << testing::PrintToString(lines_of(solution));
  EXPECT_TRUE(has_line(solution, "V = 17 1/2 ft³")) << testing::PrintToString(lines_of(solution));
}

TEST(Solution, NoFootIsCutIntoTwelfths) {
  const Solution solution = solved("rectangular prism | length: 2 ft 7 in | width: 11 1/2 in | height: 3 ft", "volume");
  EXPECT_TRUE(has_line(solution, "2 ft 7 in = 31 in")) << testing::PrintToString(lines_of(solution));
  EXPECT_EQ("12,834 in³", solution.answer.text);
  EXPECT_EQ("15 ft³",
            solved("rectangular prism | length: 2 ft 6 in | width: 2 ft | height: 3 ft", "volume").answer.text);
}

/// Of labels that fit only as rounded numbers, those that the answer comes from are told, in one sentence.
TEST(Solution, OnlyRoundedLabelsThatMatterAreTold) {
  const std::string figure =
      "prism | height: 10 cm | rounded: yes | base triangle | sides: 7 cm, 7 cm, 7 cm | height: 6 cm";
  EXPECT_EQ(1U, solved(figure, "volume").answer.notes.size());
  EXPECT_TRUE(
      solved("prism | height: 10 in | base triangle | base: 9 in | height: 4 in", "volume").answer.notes.empty());
  const Solution with_sides =
      solved("prism | height: 10 in | base triangle | base: 9 in | height: 4 in", "surface_area");
  ASSERT_EQ(1U, with_sides.answer.notes.size());
  EXPECT_EQ(
      "No sides are given, so the triangle is drawn with two equal sides; answers that depend on the sides are for "
      "that triangle only.",
      said(with_sides.answer.notes[0]));
}

TEST(Solution, OpenFacesAreLeftOutOfTheSum) {
  SolutionOptions options;
  options.open = {FaceId{1}};
  const Solution open_box =
      solved("rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm", "surface_area", options);
  EXPECT_EQ("223 cm²", open_box.answer.text);  // 286 − 63
  EXPECT_EQ("315 cm³",
            solved("rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm", "volume", options).answer.text);
}

TEST(Solution, EveryNumberTellsWhereItComesFrom) {
  const Solution solution = solved("pyramid | slant_height: 9 cm | base square | side: 6 cm", "surface_area");
  std::size_t sourced = 0;
  const auto count = [&](const auto& self, const algebra::Notation& notation) -> void {
    if (notation.source) {
      ASSERT_LT(*notation.source, solution.sources.size());
      EXPECT_FALSE(solution.sources[*notation.source].sentence.empty());
      ++sourced;
    }
    for (const algebra::Notation& part : notation.parts) {
      self(self, part);
    }
  };
  for (const Step& step : solution.steps) {
    if (step.line) {
      count(count, step.line->right);
    }
  }
  EXPECT_GT(sourced, 8U);
}

TEST(Solution, RefusesWithASentence) {
  const solids::Solid cube = test::solid("cube | edge: 8 cm");
  EXPECT_EQ("the edge is given, so there is nothing to find", said(worked_solution(cube, "edge").error()));
  EXPECT_EQ("a cube has no measure \"slant_height\"", said(worked_solution(cube, "slant_height").error()));
  SolutionOptions wrong_unit;
  wrong_unit.unit = units::Unit::centimeter();
  EXPECT_EQ("the surface area is not measured in cm", said(worked_solution(cube, "surface_area", wrong_unit).error()));
}

}  // namespace
}  // namespace fw::reasoning::solution_test
