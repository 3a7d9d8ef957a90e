#include "exact/polynomial.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "number_generators.hpp"

namespace fw::polynomial_test {
namespace {

using namespace fw::exact;

Number whole(long long n) { return Number::whole(n); }

std::vector<std::string> texts(const std::vector<Number>& numbers) {
  std::vector<std::string> all;
  for (const Number& n : numbers) {
    all.push_back(n.is_exact() ? exact_text(n) : "about " + fixed_text(n, 9));
  }
  return all;
}

using Texts = std::vector<std::string>;

TEST(PositiveRoots, AreExactUpToDegreeTwoAndForPurePowers) {
  EXPECT_EQ(texts(positive_roots({whole(-6), whole(4)})), Texts({"1.5"}));
  EXPECT_EQ(texts(positive_roots({whole(6), whole(4)})), Texts({}));
  EXPECT_EQ(texts(positive_roots({whole(6), whole(-5), whole(1)})), Texts({"2", "3"}));
  EXPECT_EQ(texts(positive_roots({whole(-1), whole(-1), whole(1)})), Texts({"(1 + √5)/2"}));
  EXPECT_EQ(texts(positive_roots({whole(9), whole(-6), whole(1)})), Texts({"3"}));
  EXPECT_EQ(texts(positive_roots({whole(5), whole(1), whole(1)})), Texts({}));
  EXPECT_EQ(texts(positive_roots({whole(-54), Number(), Number(), whole(2)})), Texts({"3"}));
  EXPECT_EQ(texts(positive_roots({whole(-4), Number(), Number(), Number(), whole(1)})), Texts({"√2"}));
  EXPECT_EQ(texts(positive_roots({whole(4), Number(), whole(-5), Number(), whole(1)})), Texts({"1", "2"}));
  EXPECT_EQ(texts(positive_roots({Number(), whole(-5), whole(1)})), Texts({"5"}));
}

TEST(PositiveRoots, AreFoundNumericallyBeyond) {
  // x³ - 2x - 5 = 0: J. Wallis' example of Newton's method, x = 2.0945514815... (OEIS A007493).
  EXPECT_EQ(texts(positive_roots({whole(-5), whole(-2), Number(), whole(1)})), Texts({"about 2.094551482"}));
  // (x - 1)(x - 2)(x - 3)²: the double root only touches zero.
  EXPECT_EQ(texts(positive_roots({whole(18), whole(-39), whole(29), whole(-9), whole(1)})), Texts({"1", "2", "3"}));
}

TEST(PositiveRoots, OfConstantsAreNone) {
  EXPECT_TRUE(positive_roots(Polynomial<Number>{}).empty());
  EXPECT_TRUE(positive_roots({whole(3)}).empty());
  EXPECT_TRUE(positive_roots({Number(), Number()}).empty());
}

RC_GTEST_PROP(PositiveRoots, FindWhatAProductWasMadeOf, ()) {
  const std::vector<int> chosen =
      *rc::gen::resize(4, rc::gen::nonEmpty(rc::gen::container<std::vector<int>>(rc::gen::inRange(1, 40))));
  RC_PRE(chosen.size() <= 4);
  Polynomial<Number> product = {whole(1)};
  Polynomial<double> in_doubles = {1};
  for (const int root : chosen) {
    product = product * Polynomial<Number>{-Number::ratio(root, 4), whole(1)};
    in_doubles = in_doubles * Polynomial<double>{-root / 4.0, 1};
  }
  const std::vector<Number> found = positive_roots(product);
  std::vector<int> distinct = chosen;
  std::sort(distinct.begin(), distinct.end());
  distinct.erase(std::unique(distinct.begin(), distinct.end()), distinct.end());
  RC_ASSERT(found.size() == distinct.size());
  const std::vector<double> near = positive_roots(in_doubles);
  RC_ASSERT(near.size() == distinct.size());
  for (std::size_t i = 0; i < distinct.size(); ++i) {
    RC_ASSERT(found[i] == Number::ratio(distinct[i], 4));
    RC_ASSERT(found[i].is_exact());
    RC_ASSERT(std::abs(near[i] - distinct[i] / 4.0) <= 1e-4 * near[i]);  // a root that stands four times is no finer
  }
}

}  // namespace
}  // namespace fw::polynomial_test
