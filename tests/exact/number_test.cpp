#include "exact/number.hpp"

#include <gtest/gtest.h>

#include "exact/bounds.hpp"
#include "exact/print_number.hpp"
#include "exact/root_sum.hpp"
#include "support/numbers.hpp"

namespace fw::number_test {
namespace {

using namespace fw::exact;
using fw::test::decimal;

Number root(long long n) { return square_root(Number::whole(n)); }
Number whole(long long n) { return Number::whole(n); }

// Area of the regular n-gon with side 1, n/(4 tan(180°/n)), n = 3 to 12. Source: H. S. M. Coxeter, Regular
// Polytopes, 1.1 (the formula, from memory); the digits are of the formula worked out in another program.
TEST(PolygonCotangent, GivesTheAreasOfRegularPolygons) {
  const char* areas[] = {"0.433012702", "1.000000000", "1.720477401", "2.598076211", "3.633912444",
                         "4.828427125", "6.181824194", "7.694208843", "9.365639907", "11.196152423"};
  for (int n = 3; n <= 12; ++n) {
    const Number area = whole(n) * Number::polygon_cotangent(n) / whole(4);
    EXPECT_EQ(fixed_text(area, 9), areas[n - 3]) << n << " sides";
    const bool has_roots_only = n != 7 && n != 9 && n != 11;
    EXPECT_EQ(area.is_exact(), has_roots_only) << n << " sides";
  }
}

TEST(PolygonCotangent, AreasAreWrittenAsTextbooksDo) {
  const auto area = [](int n) { return exact_text(whole(n) * Number::polygon_cotangent(n) / whole(4)); };
  EXPECT_EQ(area(3), "√3/4");
  EXPECT_EQ(area(4), "1");
  EXPECT_EQ(area(5), "√(25 + 10√5)/4");
  EXPECT_EQ(area(6), "3√3/2");
  EXPECT_EQ(area(8), "2 + 2√2");
  EXPECT_EQ(area(10), "5√(5 + 2√5)/2");
  EXPECT_EQ(area(12), "6 + 3√3");
  EXPECT_EQ(area(7), "");
}

// Volume (15 + 7√5)/4 of the regular dodecahedron and 5(3 + √5)/12 of the regular icosahedron with edge 1, area
// 3√(25 + 10√5) and 5√3. Source: H. S. M. Coxeter, Regular Polytopes, table I (from memory); digits common knowledge.
TEST(Number, HoldsTheMeasuresOfRegularPolyhedra) {
  EXPECT_EQ(fixed_text((whole(15) + whole(7) * root(5)) / whole(4), 6), "7.663119");
  EXPECT_EQ(fixed_text(whole(5) * (whole(3) + root(5)) / whole(12), 6), "2.181695");
  EXPECT_EQ(fixed_text(whole(12) * whole(5) * Number::polygon_cotangent(5) / whole(4), 6), "20.645729");
  EXPECT_EQ(whole(12) * whole(5) * Number::polygon_cotangent(5) / whole(4),
            whole(3) * square_root(whole(25) + whole(10) * root(5)));
}

TEST(SquareRoot, TakesSquaresOut) {
  EXPECT_EQ(exact_text(root(12)), "2√3");
  EXPECT_EQ(exact_text(square_root(Number::ratio(1, 2))), "√2/2");
  EXPECT_EQ(exact_text(square_root(decimal("20.25"))), "4.5");
  EXPECT_EQ(exact_text(square_root(whole(4) * power(Number::pi(), 2))), "2π");
  EXPECT_TRUE(square_root(whole(0)).is_zero());
  EXPECT_FALSE(square_root(Number::pi()).is_exact());
}

TEST(SquareRoot, UnnestsWhatCanBeUnnested) {
  EXPECT_EQ(exact_text(square_root(whole(3) + whole(2) * root(2))), "1 + √2");
  EXPECT_EQ(exact_text(square_root(whole(7) - whole(4) * root(3))), "2 − √3");
  EXPECT_EQ(exact_text(square_root(whole(2) + root(3))), "(√2 + √6)/2");
  EXPECT_EQ(exact_text(square_root(whole(6) + whole(2) * (root(2) + root(3) + root(6)))), "1 + √2 + √3");
  EXPECT_EQ(exact_text(square_root(root(2))), "√(√2)");
}

// Two ways to write one value, the second being the first with a square of the field taken out.
TEST(Compare, KnowsEqualNestedRoots) {
  const Number n = whole(5) + whole(2) * root(5);
  const Number m = whole(5) - whole(2) * root(5);
  EXPECT_EQ(square_root(m), square_root(n) * root(5) * m / whole(5));
  EXPECT_EQ(square_root(n) * square_root(m), root(5));
  EXPECT_TRUE((square_root(n) * square_root(m)).is_rational() == false);
  const Number s = whole(3) + root(5);
  EXPECT_EQ(square_root(s * s * n), s * square_root(n));
  EXPECT_TRUE((square_root(s * s * n) - s * square_root(n)).is_zero());
}

TEST(Compare, CountsWhatDecided) {
  const Number tenth = decimal("0.1");
  EXPECT_EQ(compare_and_tell(root(2), tenth).decider, Decider::Doubles);
  EXPECT_EQ(compare_and_tell(tenth, tenth).decider, Decider::CanonicalForm);
  EXPECT_EQ(compare_and_tell(root(8), root(2) + root(2)).decider, Decider::CanonicalForm);
  // √2 to 40 digits (OEIS A002193) differs from √2 in the 41st.
  const Number near = decimal("1.4142135623730950488016887242096980785696");
  EXPECT_EQ(compare_and_tell(root(2), near).decider, Decider::Digits120);
  EXPECT_EQ(compare(root(2), near), 1);
  const Number far = Number::polygon_cotangent(7);
  EXPECT_EQ(compare_and_tell(far, far + tenth - tenth).decider, Decider::Inexact);
  EXPECT_EQ(compare(far, far + tenth - tenth), 0);
}

// Each continued fraction step of √2 brings p/q to within 1/q² of it: near misses of every size (S² geometry's
// habit of making degenerate cases on purpose).
TEST(Compare, TellsRootTwoFromItsConvergents) {
  Number p = whole(1);
  Number q = whole(1);
  int by_digits = 0;
  int by_doubles = 0;
  for (int i = 0; i < 500; ++i) {
    const DecidedSign decided = compare_and_tell(p / q, root(2));
    EXPECT_EQ(decided.sign, i % 2 == 0 ? -1 : 1) << i;
    by_doubles += decided.decider == Decider::Doubles ? 1 : 0;
    by_digits += decided.decider == Decider::Digits330 || decided.decider == Decider::Digits1000 ? 1 : 0;
    const Number next = p + whole(2) * q;
    q = p + q;
    p = next;
  }
  EXPECT_GT(by_doubles, 10);
  EXPECT_GT(by_digits, 100);
}

TEST(Number, SquareFactorsOfLargePrimesDoNotMislead) {
  // 1000003 is a prime: 1000003² x 1000033 is not split, and still equal to what it is.
  const Number large = power(whole(1000003), 2) * whole(1000033);
  EXPECT_EQ(square_root(large), whole(1000003) * root(1000033));
  EXPECT_TRUE((square_root(large) - whole(1000003) * root(1000033)).is_zero());
  EXPECT_TRUE((square_root(large) * root(1000033)).is_rational());
  EXPECT_EQ(whole(1) / (square_root(large) + root(1000033)), root(1000033) / (whole(1000004) * whole(1000033)));
  EXPECT_EQ(square_root(power(whole(1000003), 2)), whole(1000003));
}

TEST(Division, IsExactByConjugates) {
  EXPECT_EQ(exact_text(whole(1) / (root(2) + root(3))), "√3 − √2");
  EXPECT_EQ(exact_text(whole(1) / (root(2) + root(3) + root(5))), "(3√2 + 2√3 − √30)/12");
  EXPECT_EQ(exact_text(whole(3) * root(2) / (whole(2) * Number::pi())), "3√2/(2π)");
  const Number n = square_root(whole(5) + whole(2) * root(5));
  EXPECT_TRUE((whole(1) / (whole(1) + n)).is_exact());
  EXPECT_EQ((whole(1) / (whole(1) + n)) * (whole(1) + n), whole(1));
}

// Twelve different roots: the conjugates would have 4096 terms, so the quotient is not exact, and still right.
TEST(Division, OfManyRootsIsInexactAndRight) {
  Number sum;
  for (const int prime : {2, 3, 5, 7, 11, 13, 17, 19, 23, 29, 31, 37}) {
    sum = sum + root(prime);
  }
  const Number inverse = whole(1) / sum;
  EXPECT_FALSE(inverse.is_exact());
  EXPECT_EQ(inverse * sum, whole(1));
  EXPECT_EQ(square_root(sum) * square_root(sum), sum);
}

TEST(Division, OfSumsWithPiIsExactWhereItComesOut) {
  const Number a = whole(2) + whole(2) * Number::pi();
  const Number b = whole(1) + Number::pi();
  EXPECT_EQ(exact_text(a / b), "2");
  EXPECT_EQ(exact_text(a * (whole(3) - Number::pi()) / b), "6 − 2π");
  EXPECT_FALSE((whole(1) / b).is_exact());
  EXPECT_EQ((whole(1) / b) * b, whole(1));
}

TEST(CubeRoot, IsExactForCubes) {
  EXPECT_EQ(exact_text(cube_root(Number::ratio(27, 8))), "1.5");
  EXPECT_EQ(exact_text(cube_root(whole(-8))), "−2");
  EXPECT_EQ(exact_text(cube_root(whole(2) * root(2))), "√2");
  // ∛2, OEIS A002580.
  EXPECT_EQ(fixed_text(cube_root(whole(2)), 39), "1.259921049894873164767210607278228350570");
}

TEST(Rounding, TakesAHalfAwayFromZero) {
  EXPECT_EQ(rounded(decimal("2.5"), 0), whole(3));
  EXPECT_EQ(rounded(decimal("-2.5"), 0), whole(-3));
  EXPECT_EQ(rounded(decimal("0.125"), 2), decimal("0.13"));
  EXPECT_EQ(rounded(decimal("2.4999999999999999999999999999"), 0), whole(2));
  EXPECT_EQ(rounded(Number::ratio(2, 3), 3), decimal("0.667"));
}

TEST(Rounding, IsNotMisledByWhatLooksLikeAHalf) {
  // A double cannot tell either number from 0.5.
  const Number little = power(whole(10), -40) * root(2);
  EXPECT_EQ(rounded(Number::ratio(1, 2) + little, 0), whole(1));
  EXPECT_EQ(rounded(Number::ratio(1, 2) - little, 0), whole(0));
  EXPECT_EQ(floor(whole(3) - little), whole(2));
  EXPECT_EQ(floor(-little), whole(-1));
}

TEST(Number, IsHeldExactlyWhenDoublesOverflow) {
  const Number large = power(whole(10), 400) * root(2);
  EXPECT_GT(large, power(whole(10), 400));
  EXPECT_EQ(large / power(whole(10), 400), root(2));
  EXPECT_EQ(power(whole(10), -400).sign(), 1);
}

TEST(Number, ReadsPlainDecimalsOnly) {
  EXPECT_EQ(decimal("0.125"), Number::ratio(1, 8));
  EXPECT_EQ(decimal("-3"), whole(-3));
  EXPECT_EQ(decimal("−3.5"), Number::ratio(-7, 2));
  for (const char* text : {"", "-", ".", "1.", "1,5", "1e3", "1/2", " 1", "1 ", "--1", "+1", "1.2.3"}) {
    EXPECT_FALSE(Number::from_decimal(text).has_value()) << text;
  }
}

TEST(SquareParts, AgreeWithTakingSquaresOutOneByOne) {
  for (int n = 1; n <= 3000; ++n) {
    int rest = n;
    int square = 1;
    for (int k = 2; k * k <= rest; ++k) {
      while (rest % (k * k) == 0) {
        rest /= k * k;
        square *= k;
      }
    }
    const SquareParts parts = square_parts(Integer(n));
    ASSERT_EQ(parts.square, square) << n;
    ASSERT_EQ(parts.rest, rest) << n;
  }
}

TEST(PerfectCubeRoot, KnowsCubesAndTheirNeighbors) {
  for (int n = 1; n <= 500; ++n) {
    const Integer cube = Integer(n) * n * n;
    ASSERT_EQ(perfect_cube_root(cube), std::optional<Integer>(Integer(n)));
    ASSERT_EQ(perfect_cube_root(-cube), std::optional<Integer>(Integer(-n)));
    ASSERT_FALSE(perfect_cube_root(cube + 1).has_value() && n > 0);
  }
}

}  // namespace
}  // namespace fw::number_test
