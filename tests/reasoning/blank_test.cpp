#include "reasoning/blank.hpp"

#include <gmock/gmock.h>

#include "solids/catalog.hpp"
#include "support/describe_solid.hpp"

namespace fw::reasoning::blank_test {
namespace {

using exact::Number;
using testing::HasSubstr;

const std::string box = "rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm";
const std::string tent = "prism | height: 7 cm | base isosceles triangle | base: 10 cm | height: 12 cm";

Step with_outcome(const Number& amount, const std::string& unit) {
  Step step;
  step.outcome = Outcome{amount, unit.empty() ? std::nullopt : units::Unit::find(unit)};
  return step;
}

BlankVerdict verdict(const Step& step, const std::string& typed) {
  const BlankCheck check = check_blank(step, test::solid(box), {}, typed);
  EXPECT_FALSE(check.message.empty()) << typed;
  return check.verdict;
}

TEST(CheckBlank, TakesTheNumberWithItsUnitAsStudentsTypeIt) {
  const Step step = with_outcome(Number::whole(286), "cm^2");
  for (const std::string typed : {"286 cm²", "286 cm^2", "286cm^2", "286 sq cm", "286.0 cm^2", " 286 cm2 "}) {
    EXPECT_EQ(verdict(step, typed), BlankVerdict::Right) << typed;
  }
}

TEST(CheckBlank, TellsANumberFromItsUnit) {
  const Step step = with_outcome(Number::whole(286), "cm^2");
  EXPECT_EQ(verdict(step, "286"), BlankVerdict::RightNumberNoUnit);
  EXPECT_EQ(verdict(step, "286 cm"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict(step, "286 cm^3"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict(step, "286 in^2"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict(step, "285 cm^2"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict(step, "285 cm"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict(step, "285"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict(step, ""), BlankVerdict::Unreadable);
  EXPECT_EQ(verdict(step, "many"), BlankVerdict::Unreadable);
}

TEST(CheckBlank, SaysWhatAWrongNumberHasToDoWithTheRightOne) {
  const Number root = Number::whole(6) * square_root(Number::whole(3));  // 10.3923...
  const auto told = [](const Number& amount, const std::string& typed) {
    const BlankCheck check = check_blank(with_outcome(amount, "cm"), test::solid(box), {}, typed);
    EXPECT_EQ(check.verdict, BlankVerdict::Wrong) << typed;
    return said(check.message);
  };
  const Number whole = Number::whole(286);
  EXPECT_THAT(told(whole, "28.6 cm"), HasSubstr("digits are right"));
  EXPECT_THAT(told(whole, "28600"), HasSubstr("digits are right"));
  EXPECT_THAT(told(whole, "572 cm"), HasSubstr("halved"));
  EXPECT_THAT(told(whole, "143 cm"), HasSubstr("half as much"));
  EXPECT_THAT(told(whole, "858 cm"), HasSubstr("divided by 3"));
  EXPECT_THAT(told(whole, "81796 cm"), HasSubstr("square root"));
  EXPECT_THAT(told(whole, "285 cm"), HasSubstr("close"));
  EXPECT_THAT(told(whole, "571.9 cm"), HasSubstr("line above"));
  EXPECT_THAT(told(whole, "400 cm"), HasSubstr("line above"));
  EXPECT_THAT(told(whole, "0 cm"), HasSubstr("line above"));
  EXPECT_THAT(told(root, "20.78 cm"), HasSubstr("halved"));
  EXPECT_THAT(told(root, "108 cm"), HasSubstr("square root"));
}

TEST(CheckBlank, TakesTheSameAmountInAnotherUnit) {
  EXPECT_EQ(verdict(with_outcome(Number::whole(2), "ft"), "24 in"), BlankVerdict::Right);
  EXPECT_EQ(verdict(with_outcome(Number::ratio(5, 2), "ft"), "2 ft 6 in"), BlankVerdict::Right);
  EXPECT_EQ(verdict(with_outcome(Number::whole(2), "ft^2"), "288 in^2"), BlankVerdict::Right);
  EXPECT_EQ(verdict(with_outcome(Number::whole(1000), "cm^3"), "1 L"), BlankVerdict::Right);
}

TEST(CheckBlank, TakesWhatIsRoundedOrExact) {
  const Step step = with_outcome(Number::whole(6) * square_root(Number::whole(3)), "cm");  // 10.3923...
  EXPECT_EQ(verdict(step, "6√3 cm"), BlankVerdict::Right);
  EXPECT_EQ(verdict(step, "10.39 cm"), BlankVerdict::Right);
  EXPECT_EQ(verdict(step, "10.3923 cm"), BlankVerdict::Right);
  EXPECT_EQ(verdict(step, "10.38 cm"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict(step, "10.4 cm"), BlankVerdict::Wrong);  // fewer than two places
  EXPECT_EQ(verdict(step, "10.3922 cm"), BlankVerdict::Wrong);
}

TEST(CheckBlank, ACountHasNoUnit) {
  const Step step = with_outcome(Number::whole(5), "");
  EXPECT_EQ(verdict(step, "5"), BlankVerdict::Right);
  EXPECT_EQ(verdict(step, "5 cm"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict(step, "6"), BlankVerdict::Wrong);
}

// ---- sides ----

/// The first step with a line that reads so.
const Step& step_reading(const Solution& solution, const std::string& line) {
  for (const Step& step : solution.steps) {
    if (step.line && algebra::plain_text(*step.line) == line) {
      return step;
    }
  }
  throw std::runtime_error("no step reads " + line);
}

class SideOfATent : public testing::Test {
 protected:
  solids::Solid solid_ = test::solid(tent);
  Solution solution_ = worked_solution(solid_, "surface_area").value();

  BlankVerdict verdict(const std::string& line, const std::string& typed) const { return check(line, typed).verdict; }
  BlankCheck check(const std::string& line, const std::string& typed) const {
    return check_blank(step_reading(solution_, line), solid_, solution_.values, typed);
  }
};

TEST_F(SideOfATent, IsRightHoweverItIsWritten) {
  for (const std::string typed : {"2B + L", "S = 2B+L", "L + 2 B", "B + B + L", "2·B + L", "2 x B + L", "2*B+L"}) {
    EXPECT_EQ(verdict("S = 2B + L", typed), BlankVerdict::Right) << typed;
  }
  for (const std::string typed :
       {"2 × 60 cm² + 252 cm²", "2 x 60 cm^2 + 252 cm^2", "2*60 + 252 sq cm", "120cm2 + 252cm2", "372 cm^2"}) {
    EXPECT_EQ(verdict("S = 2 × 60 cm² + 252 cm²", typed), BlankVerdict::Right) << typed;
  }
  for (const std::string typed : {"b · t ÷ 2", "bt/2", "1/2 b t", "½bt", "(b*t):2", "2½ b t ÷ 5"}) {
    EXPECT_EQ(verdict("B = b · t ÷ 2", typed), BlankVerdict::Right) << typed;
  }
  for (const std::string typed : {"t² + (b ÷ 2)²", "t^2 + (b/2)^2", "t*t + b^2/4"}) {
    EXPECT_EQ(verdict("c² = t² + (b ÷ 2)²", typed), BlankVerdict::Right) << typed;
  }
}

TEST_F(SideOfATent, IsWrongWhereAFaceIsForgottenOrALengthMixedUp) {
  for (const std::string typed : {"B + L", "2B", "2B + V", "2B + h", "2L + B"}) {
    EXPECT_EQ(verdict("S = 2B + L", typed), BlankVerdict::Wrong) << typed;
  }
  EXPECT_EQ(verdict("S = 2 × 60 cm² + 252 cm²", "60 cm² + 252 cm²"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict("B = b · t ÷ 2", "b · c ÷ 2"), BlankVerdict::Wrong);
  EXPECT_EQ(verdict("B = b · t ÷ 2", "b · t"), BlankVerdict::Wrong);
}

TEST_F(SideOfATent, SaysWhereItIsRightForThisSolidAlone) {
  const BlankCheck check = this->check("L = P · h", "36 · h");
  EXPECT_EQ(check.verdict, BlankVerdict::Wrong);
  EXPECT_EQ(said(check.message),
            "That gives the same number for this solid. Which letters and numbers does the reason talk about?");
}

TEST_F(SideOfATent, KeepsLengthsAndSquaresApart) {
  const std::string line = "S = 2 × 60 cm² + 252 cm²";
  EXPECT_EQ(verdict(line, "2 × 60 cm + 252 cm"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict(line, "2 × 60 cm² + 252 cm"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict(line, "2 × 60 + 252"), BlankVerdict::RightNumberNoUnit);
  EXPECT_EQ(verdict("L = 36 cm × 7 cm", "36 cm × 7 cm²"), BlankVerdict::RightNumberWrongUnit);
  EXPECT_EQ(verdict("L = 36 cm × 7 cm", "0.36 m × 7 cm"), BlankVerdict::Right);
}

TEST_F(SideOfATent, SaysWhatCannotBeRead) {
  const std::string advice = " Write it as in 2B + L or 2 × 6 cm² + 12 cm².";
  EXPECT_EQ(said(check("S = 2B + L", "2B + ?").message), "“?” does not make sense here." + advice);
  EXPECT_EQ(said(check("S = 2B + L", "2B +").message), "Something is missing at the end." + advice);
  EXPECT_EQ(said(check("S = 2B + L", "(2B + L").message), "A parenthesis is not closed." + advice);
  EXPECT_EQ(said(check("S = 2B + L", "b^ + 1").message), "Write the exponent after ^, as in s^2." + advice);
  EXPECT_EQ(said(check("S = 2B + L", "2 kg").message), "“kg” does not make sense here." + advice);
  const solids::Solid plain = test::solid("rectangular prism | length: 9 | width: 7 | height: 5");
  const Solution solution = worked_solution(plain, "volume").value();
  EXPECT_EQ(said(check_blank(step_reading(solution, "V = l · w · h"), plain, {}, "9 cm × w").message),
            "“cm” is not a unit of this figure." + advice);
  EXPECT_EQ(check("S = 2B + L", std::string(500, '(')).verdict, BlankVerdict::Unreadable);
}

// Whatever stands in a line can be typed as it stands there.
TEST(BlankSlow, EveryLineOfEverySolutionIsRightAsItIsPrinted) {
  std::size_t sides = 0;
  for (const solids::Description& description : solids::shelf()) {
    const solids::Solid solid = solids::Solid::make(description).value();
    for (const std::string asked : {"surface_area", "volume", "lateral_area"}) {
      const auto solution = worked_solution(solid, asked);
      if (!solution) {
        continue;
      }
      for (const Step& step : solution->steps) {
        if (blank_kind(step) != BlankKind::Side || step.kind == StepKind::Cancel) {
          continue;
        }
        const std::string typed = algebra::plain_text(step.line->right);
        EXPECT_EQ(check_blank(step, solid, solution->values, typed).verdict, BlankVerdict::Right)
            << solid.name() << ": " << algebra::plain_text(*step.line);
        ++sides;
      }
    }
  }
  EXPECT_GT(sides, 200U);
}

// ---- what is hidden ----

TEST(WithBlank, HidesTheNumberInTheLineAndInItsReason) {
  const Solution solution = worked_solution(test::solid(tent), "surface_area").value();
  const StepText answer = with_blank(solution.steps.back());
  EXPECT_EQ(algebra::plain_text(*answer.line), "S = ____");
  EXPECT_EQ(said(answer.reason), "The surface area is ____.");
  const StepText sum = with_blank(step_reading(solution, "S = 2 × 60 cm² + 252 cm²"));
  EXPECT_EQ(algebra::plain_text(*sum.line), "S = ____");
  EXPECT_EQ(said(sum.reason), "Substitute: B = 60 cm², L = 252 cm².");
}

TEST(WithBlank, AsksForTheUnitAndForTheNumberOfFaces) {
  const solids::Solid solid = test::solid(tent);
  const Solution solution = worked_solution(solid, "surface_area").value();
  const Step& ask = solution.steps[0];
  EXPECT_EQ(blank_kind(ask), BlankKind::Unit);
  EXPECT_EQ(said(with_blank(ask).reason), "Find the surface area, S. It covers a surface, so the unit is ____.");
  EXPECT_EQ(check_blank(ask, solid, {}, " sq cm ").verdict, BlankVerdict::Right);
  EXPECT_EQ(check_blank(ask, solid, {}, "square centimeters").verdict, BlankVerdict::Right);
  EXPECT_THAT(said(check_blank(ask, solid, {}, "in²").message), HasSubstr("Which unit do the labels have?"));
  EXPECT_THAT(said(check_blank(ask, solid, {}, "cm").message),
              HasSubstr("Does the question ask for a length, an area or a volume?"));
  EXPECT_EQ(check_blank(ask, solid, {}, "faces").verdict, BlankVerdict::Unreadable);
  const Step& name = solution.steps[1];
  EXPECT_EQ(blank_kind(name), BlankKind::Number);
  EXPECT_EQ(said(with_blank(name).reason), "The solid is a triangular prism. It has ____ faces.");
  EXPECT_EQ(check_blank(name, solid, {}, "5").verdict, BlankVerdict::Right);
  EXPECT_EQ(check_blank(name, solid, {}, "6").verdict, BlankVerdict::Wrong);
}

TEST(WithBlank, HidesAWholeSentenceThatHasNoNumber) {
  Step step;
  step.reason = message("Turn it and count again.");
  EXPECT_EQ(blank_kind(step), BlankKind::Words);
  EXPECT_EQ(said(with_blank(step).reason), "____");
}

// No step shows what its blank asks for.
TEST(WithBlank, LeavesNoTraceOfTheNumber) {
  for (const solids::Description& description : solids::shelf()) {
    const Solution solution = worked_solution(solids::Solid::make(description).value(), "surface_area").value();
    for (const Step& step : solution.steps) {
      if (blank_kind(step) != BlankKind::Number) {
        continue;
      }
      const StepText text = with_blank(step);
      EXPECT_THAT(said(text.reason), HasSubstr(step.line ? "" : "____"));
      if (step.line) {
        EXPECT_THAT(algebra::plain_text(*text.line), HasSubstr("____"));
      }
    }
  }
}

TEST(Without, HidesAnArgumentAndNoPartOfOne) {
  const Message sum =
      message("B = {base}, then {all} of {count} faces.",
              {{"base", words::Amount{"60", "cm²"}}, {"all", words::Amount{"160", "cm²"}}, {"count", 6}});
  EXPECT_EQ(said(without(sum, "60")), "B = ____ cm², then 160 cm² of 6 faces.");
  EXPECT_EQ(said(without(sum, "160 cm²")), "B = 60 cm², then ____ of 6 faces.");
  EXPECT_EQ(said(without(sum, "6")), "B = 60 cm², then 160 cm² of ____ faces.");
  EXPECT_EQ(said(without(message("{all:,}; {sum}", {{"all", std::vector<std::string>{"6", "16"}}, {"sum", sum}}), "6")),
            "____, 16; B = 60 cm², then 160 cm² of ____ faces.");
  EXPECT_EQ(without(sum, ""), sum);
}

}  // namespace
}  // namespace fw::reasoning::blank_test
