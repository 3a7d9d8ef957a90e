// The laws that numbers obey, on generated ones.
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include "exact/bounds.hpp"
#include "exact/written.hpp"
#include "number_generators.hpp"

namespace fw::laws_test {
namespace {

using fw::exact::Number;
using fw::test::any_exact;
using fw::test::any_nested_root;
using fw::test::any_ratio;
using fw::test::any_root_sum;

RC_GTEST_PROP(NumberLaws, AdditionIsCommutativeAndAssociative, ()) {
  const Number a = *any_exact();
  const Number b = *any_exact();
  const Number c = *any_exact();
  RC_ASSERT(a + b == b + a);
  RC_ASSERT((a + b) + c == a + (b + c));
  RC_ASSERT((a + b - b).is_exact());
  RC_ASSERT(a + b - b == a);
}

RC_GTEST_PROP(NumberLaws, MultiplicationIsCommutativeAssociativeAndDistributes, ()) {
  const Number a = *any_exact();
  const Number b = *any_exact();
  const Number c = *any_root_sum();
  RC_ASSERT(a * b == b * a);
  RC_ASSERT((a * b) * c == a * (b * c));
  RC_ASSERT(a * (b + c) == a * b + a * c);
}

RC_GTEST_PROP(NumberLaws, ZeroAndOneAreNeutral, ()) {
  const Number a = *any_exact();
  RC_ASSERT(a + Number() == a);
  RC_ASSERT(a * Number::whole(1) == a);
  RC_ASSERT((a * Number()).is_zero());
  RC_ASSERT((a - a).is_zero());
  RC_ASSERT(-(-a) == a);
}

RC_GTEST_PROP(NumberLaws, DivisionUndoesMultiplication, ()) {
  const Number a = *any_exact();
  const Number b = *any_exact();
  RC_PRE(!b.is_zero());
  RC_ASSERT(a * b / b == a);
}

RC_GTEST_PROP(NumberLaws, DivisionByARootSumUndoesMultiplicationExactly, ()) {
  const Number a = *any_exact();
  const Number b = *any_root_sum() * power(Number::pi(), *rc::gen::inRange(-2, 3));
  RC_PRE(!b.is_zero());
  const Number quotient = a * b / b;
  RC_ASSERT(quotient == a);
  RC_ASSERT(quotient.is_exact());
}

RC_GTEST_PROP(NumberLaws, AnInverseOfARootSumIsExact, ()) {
  const Number a = *any_root_sum();
  RC_PRE(!a.is_zero());
  const Number inverse = Number::whole(1) / a;
  RC_ASSERT(inverse.is_exact());
  RC_ASSERT(inverse * a == Number::whole(1));
}

RC_GTEST_PROP(NumberLaws, EqualIffTheDifferenceHasNoSign, ()) {
  const Number a = *any_exact();
  const Number b = *any_exact();
  RC_ASSERT((a == b) == ((a - b).sign() == 0));
  RC_ASSERT(compare(a, b) == (a - b).sign());
  RC_ASSERT(compare(a, b) == -compare(b, a));
}

RC_GTEST_PROP(NumberLaws, OrderIsKeptByAdding, ()) {
  const Number a = *any_exact();
  const Number b = *any_exact();
  const Number c = *any_root_sum();
  RC_ASSERT(compare(a + c, b + c) == compare(a, b));
}

RC_GTEST_PROP(NumberLaws, TheSquareOfARootIsTheNumber, ()) {
  const Number given = *any_root_sum();
  const Number a = given.sign() < 0 ? -given : given;
  const Number root = square_root(a);
  RC_ASSERT(root.is_exact());
  RC_ASSERT(root * root == a);
  RC_ASSERT(root.sign() >= 0);
}

RC_GTEST_PROP(NumberLaws, TheRootOfASquareIsFoundAgain, ()) {
  const Number a = *any_root_sum();
  const Number root = square_root(a * a);
  RC_ASSERT(root.is_exact());
  RC_ASSERT(root == (a.sign() < 0 ? -a : a));
  RC_ASSERT(exact_text(root) == exact_text(a.sign() < 0 ? -a : a));
}

RC_GTEST_PROP(NumberLaws, TheProductOfTwoNestedRootsSquaresRight, ()) {
  const Number a = *any_nested_root();
  const Number b = *any_nested_root();
  RC_ASSERT((a * b).is_exact());
  RC_ASSERT((a * b) * (a * b) == (a * a) * (b * b));
}

RC_GTEST_PROP(NumberLaws, TheCubeRootOfACubeIsFoundAgain, ()) {
  const Number a = *any_ratio();
  RC_ASSERT(cube_root(power(a, 3)) == a);
  RC_ASSERT(cube_root(power(a, 3)).is_exact());
  RC_ASSERT(power(cube_root(a), 3) == a);
}

RC_GTEST_PROP(NumberLaws, PowersAdd, ()) {
  const Number a = *any_root_sum();
  const int m = *rc::gen::inRange(0, 5);
  const int n = *rc::gen::inRange(0, 5);
  RC_ASSERT(power(a, m) * power(a, n) == power(a, m + n));
  if (!a.is_zero()) {
    RC_ASSERT(power(a, -m) * power(a, m) == Number::whole(1));
  }
}

RC_GTEST_PROP(NumberLaws, FloorIsTheGreatestWholeNumberBelow, ()) {
  const Number a = *any_exact();
  const Number below = floor(a);
  RC_ASSERT(below.is_whole());
  RC_ASSERT(below <= a);
  RC_ASSERT(a < below + Number::whole(1));
}

RC_GTEST_PROP(NumberLaws, RoundingIsOffByHalfAUnitAtMost, ()) {
  const Number a = *any_exact();
  const int places = *rc::gen::inRange(0, 9);
  const Number near = rounded(a, places);
  const Number unit = power(Number::whole(10), -places);
  const Number off = near - a;
  RC_ASSERT((off.sign() < 0 ? -off : off) <= unit / Number::whole(2));
  RC_ASSERT((near / unit).is_whole());
  RC_ASSERT(rounded(-a, places) == -near);
}

RC_GTEST_PROP(NumberLaws, DoublesAreNear, ()) {
  const Number a = *any_exact();
  const double value = a.to_double();
  const Number back = fw::test::decimal(std::to_string(value));
  RC_ASSERT((back - a).to_double() < 1e-5);
  RC_ASSERT((a - back).to_double() < 1e-5);
}

RC_GTEST_PROP(NumberLaws, ReadingWhatIsPrintedGivesTheNumber, ()) {
  const Number a = *any_exact();
  const std::string text = exact_text(a);
  RC_PRE(text.size() <= 200U);
  const auto read = fw::exact::parse_number(text);
  if (!read) {
    RC_FAIL(text + ": " + read.error().message);
  }
  RC_ASSERT(read->value == a);
  RC_ASSERT(read->value.is_exact());
  RC_ASSERT(read->text == text);
}

RC_GTEST_PROP(NumberLaws, AWrittenDecimalStandsForAllThatRoundsToIt, ()) {
  const Number a = *any_root_sum();
  const int places = *rc::gen::inRange(0, 5);
  const std::string text = fixed_text(a, places);
  const auto read = fw::exact::parse_number(text);
  RC_ASSERT(read.has_value());
  RC_ASSERT(read->places == places);
  RC_ASSERT(read->lowest() <= a);
  RC_ASSERT(a <= read->highest());
}

RC_GTEST_PROP(NumberLaws, InexactNumbersObeyTheLawsTooWithin60Digits, ()) {
  const Number a = *any_root_sum();
  const Number b = Number::polygon_cotangent(*rc::gen::element(7, 9, 11, 13));
  RC_ASSERT(!b.is_exact());
  RC_ASSERT(a + b - b == a);
  RC_ASSERT(a * b / b == a);
  RC_ASSERT(square_root(b) * square_root(b) == b);
  RC_ASSERT((b - b).is_zero());
}

}  // namespace
}  // namespace fw::laws_test
