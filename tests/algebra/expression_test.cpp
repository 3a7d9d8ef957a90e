#include "algebra/expression.hpp"

#include <gtest/gtest.h>

#include "algebra/print.hpp"
#include "support/numbers.hpp"

namespace fw::expression_test {
namespace {

using namespace fw::algebra;
using fw::exact::Number;

const Symbol s{"side", "s", 1};
const Symbol l{"slant_height", "ℓ", 1};
const Symbol p{"perimeter", "P", 1};
const Symbol w{"width", "w", 1};
const Symbol h{"height", "h", 1};

Expression e(const Symbol& symbol) { return symbol; }
Expression half() { return Number::ratio(1, 2); }

TEST(Evaluate, NeedsEverySymbolAndAValue) {
  const Bindings bindings = {{"side", Number::whole(6)}, {"slant_height", Number::whole(9)}};
  EXPECT_EQ(evaluate(e(s) * l / 2, bindings), std::optional<Number>(Number::whole(27)));
  EXPECT_EQ(evaluate(power(s, 2) + 4 * (e(s) * l / 2), bindings), std::optional<Number>(Number::whole(144)));
  EXPECT_EQ(evaluate(root(power(s, 2) + power(l, 2)), bindings),
            std::optional<Number>(Number::whole(3) * square_root(Number::whole(13))));
  EXPECT_EQ(evaluate(root(27, 3), bindings), std::optional<Number>(Number::whole(3)));
  EXPECT_FALSE(evaluate(e(s) * w, bindings).has_value());
  EXPECT_FALSE(evaluate(e(s) / (e(l) - 9), bindings).has_value());
  EXPECT_FALSE(evaluate(root(e(s) - l), bindings).has_value());
}

TEST(Expression, IsKeptAsItWasBuilt) {
  EXPECT_TRUE(e(s) + l == e(s) + l);
  EXPECT_FALSE(e(s) + l == e(l) + s);
  EXPECT_FALSE(Expression(2) * s == e(s) * 2);
  EXPECT_TRUE(sum_of({s}) == e(s));
  EXPECT_EQ(sum_of({s, l, w}).operands().size(), 3U);
  EXPECT_FALSE(power(s, 2) == power(s, 3));
  EXPECT_FALSE(Expression(1) == Expression(2));
}

TEST(SymbolsOf, ListsEachOnceInOrder) {
  const std::vector<Symbol> found = symbols_of(half() * p * l + power(s, 2) - p);
  ASSERT_EQ(found.size(), 3U);
  EXPECT_EQ(found[0].name, "perimeter");
  EXPECT_EQ(found[1].name, "slant_height");
  EXPECT_EQ(found[2].name, "side");
}

TEST(FormulaText, IsWrittenAsFormulasArePrinted) {
  EXPECT_EQ(formula_text(power(s, 2)), "s²");
  EXPECT_EQ(formula_text(e(s) * l / 2), "s · ℓ ÷ 2");
  EXPECT_EQ(formula_text(half() * p * l), "½ · P · ℓ");
  EXPECT_EQ(formula_text(2 * e(l) * w), "2 · ℓ · w");
  EXPECT_EQ(formula_text(Expression(Number::ratio(1, 3)) * power(s, 2) * h), "⅓ · s² · h");
  EXPECT_EQ(formula_text(root(power(s, 2) + power(h, 2))), "√(s² + h²)");
  EXPECT_EQ(formula_text(root(s, 3)), "∛(s)");
  EXPECT_EQ(formula_text(Equation{l, e(p) / 2}), "ℓ = P ÷ 2");
  EXPECT_EQ(formula_text(sum_of({power(s, 2), e(s) * l, e(s) * l})), "s² + s · ℓ + s · ℓ");
}

TEST(FormulaText, HasParenthesesWhereTheyAreNeededOnly) {
  EXPECT_EQ(formula_text((e(s) + l) * h / 2), "(s + ℓ) · h ÷ 2");
  EXPECT_EQ(formula_text(e(s) - (e(l) - w)), "s − (ℓ − w)");
  EXPECT_EQ(formula_text(e(s) - (e(l) + w)), "s − (ℓ + w)");
  EXPECT_EQ(formula_text(e(s) + (e(l) + w)), "s + ℓ + w");
  EXPECT_EQ(formula_text((e(s) - l) - w), "s − ℓ − w");
  EXPECT_EQ(formula_text(e(s) / (e(l) * w)), "s ÷ (ℓ · w)");
  EXPECT_EQ(formula_text(e(s) / (e(l) / w)), "s ÷ (ℓ ÷ w)");
  EXPECT_EQ(formula_text(e(s) * (e(l) / w)), "s · ℓ ÷ w");
  EXPECT_EQ(formula_text(power(e(s) + l, 2)), "(s + ℓ)²");
  EXPECT_EQ(formula_text(power(e(s) / 2, 2)), "(s ÷ 2)²");
  EXPECT_EQ(formula_text(power(power(s, 2), 3)), "(s²)³");
  EXPECT_EQ(formula_text(e(s) / power(l, 2)), "s ÷ ℓ²");
  EXPECT_EQ(formula_text(e(s) + Expression(-3)), "s + (−3)");
}

TEST(WorkText, PutsNumbersInForLetters) {
  const auto leaf = [](const Symbol& symbol) -> std::string {
    if (symbol == s) {
      return "6";
    }
    if (symbol == l) {
      return "7 1/2";
    }
    return symbol == w ? "9 cm" : "3√2";
  };
  EXPECT_EQ(work_text(e(s) * l / 2, leaf), "6 × 7 1/2 ÷ 2");
  EXPECT_EQ(work_text((e(s) + s) * s / 2, leaf), "(6 + 6) × 6 ÷ 2");
  EXPECT_EQ(work_text(root(power(s, 2) + power(s, 2)), leaf), "√(6² + 6²)");
  EXPECT_EQ(work_text(power(l, 2), leaf), "(7 1/2)²");
  EXPECT_EQ(work_text(power(w, 3), leaf), "(9 cm)³");
  EXPECT_EQ(work_text(e(s) / h, leaf), "6 ÷ (3√2)");
  EXPECT_EQ(work_text(e(s) * h, leaf), "6 × 3√2");
}

}  // namespace
}  // namespace fw::expression_test
