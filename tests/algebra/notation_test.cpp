// How expressions are written. Expected texts: common practice of school mathematics, no source.
#include "algebra/notation.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

#include <cmath>
#include <map>
#include <optional>
#include <set>

#include "algebra/number_notation.hpp"
#include "exact/print_number.hpp"

namespace fw::algebra::notation_test {
namespace {

using Kind = Notation::Kind;
using exact::Number;
using testing::HasSubstr;

const Symbol side{"side", "s", 1};
const Symbol slant{"slant_height", "ℓ", 1};
const Symbol length{"length", "l", 1};
const Symbol width{"width", "w", 1};
const Symbol height{"height", "h", 1};

Notation quantity(const std::string& number, const std::string& unit) {
  return row({leaf(Kind::Number, number), leaf(Kind::Unit, unit)});
}

Notation as_letter(const Symbol& symbol) { return leaf(Kind::Letter, symbol.letter); }

// Side, length and width are known, the others are letters.
Notation as_measure(const Symbol& symbol) {
  const std::map<std::string, Notation> known{
      {"side", quantity("6", "cm")}, {"length", quantity("7 1/2", "ft")}, {"width", leaf(Kind::Number, "−3")}};
  const auto found = known.find(symbol.name);
  return found == known.end() ? as_letter(symbol) : found->second;
}

std::string letters(const Expression& expression) { return plain_text(notation(expression, as_letter)); }
std::string measures(const Expression& expression) { return plain_text(notation(expression, as_measure)); }

TEST(Notation, FormulasReadAsAClassWritesThem) {
  EXPECT_EQ(letters(power(side, 2)), "s²");
  EXPECT_EQ(letters(Expression(side) * slant / 2), "s · ℓ ÷ 2");
  EXPECT_EQ(letters(Expression(24) * slant), "24ℓ");
  EXPECT_EQ(letters(Expression(6) * power(side, 2)), "6s²");
  EXPECT_EQ(letters(Expression(2) * length * width), "2 · l · w");
  EXPECT_EQ(letters(Expression(2) * (Expression(length) + width)), "2 · (l + w)");
  EXPECT_EQ(letters(Expression(Number::ratio(1, 2)) * side * slant), "½ · s · ℓ");
  EXPECT_EQ(letters(Expression(1) * side), "1 · s");
  EXPECT_EQ(letters(Expression(12) * 3), "12 × 3");
  EXPECT_EQ(letters(Expression(Number::pi()) * power(side, 2)), "πs²");
}

TEST(Notation, BracketsStandOnlyWhereTheyAreNeeded) {
  EXPECT_EQ(letters((Expression(16) + 10) * 4 / 2), "(16 + 10) × 4 ÷ 2");
  EXPECT_EQ(letters((Expression(16) + 10) / 2), "(16 + 10) ÷ 2");
  EXPECT_EQ(letters(Expression(side) / (Expression(2) * slant)), "s ÷ (2ℓ)");
  EXPECT_EQ(letters(Expression(side) - (Expression(length) - width)), "s − (l − w)");
  EXPECT_EQ(letters(Expression(side) + (Expression(length) - width)), "s + l − w");
  EXPECT_EQ(letters(Expression(side) - Expression(length) * width), "s − l · w");
  EXPECT_EQ(letters(power(Expression(side) / 2, 2)), "(s ÷ 2)²");
  EXPECT_EQ(letters(power(power(side, 2), 2)), "(s²)²");
  EXPECT_EQ(letters(power(Expression(side) + 1, 3)), "(s + 1)³");
  EXPECT_EQ(letters(Expression(12) / (Expression(6) / 2)), "12 ÷ (6 ÷ 2)");
}

TEST(Notation, MeasuresKeepTheirUnits) {
  EXPECT_EQ(measures(Expression(side) * slant), "6 cm · ℓ");
  EXPECT_EQ(measures(Expression(side) * side / 2), "6 cm × 6 cm ÷ 2");
  EXPECT_EQ(measures(power(side, 2)), "(6 cm)²");
  EXPECT_EQ(measures(power(length, 2)), "(7 1/2 ft)²");
  EXPECT_EQ(measures(Expression(4) * side), "4 × 6 cm");
}

TEST(Notation, AMinusSignIsNeverMisread) {
  EXPECT_EQ(measures(Expression(4) + width), "4 + (−3)");
  EXPECT_EQ(measures(Expression(4) * width), "4 × (−3)");
  EXPECT_EQ(measures(Expression(width) * slant), "−3ℓ");
  EXPECT_EQ(measures(Expression(4) + Expression(width) * slant), "4 + (−3ℓ)");
  EXPECT_EQ(measures(power(width, 2)), "(−3)²");
  EXPECT_EQ(letters(Expression(-1) * slant), "−ℓ");
  EXPECT_EQ(letters(Expression(4) + Expression(-2) / side), "4 + (−2 ÷ s)");
  EXPECT_EQ(letters(Expression(4) + Expression(-1) * slant), "4 + (−ℓ)");
}

TEST(Notation, RootsCoverWhatTheyHold) {
  EXPECT_EQ(letters(root(power(Expression(3), 2) + power(Expression(4), 2))), "√(3² + 4²)");
  EXPECT_EQ(letters(root(Expression(144))), "√144");
  EXPECT_EQ(letters(root(side)), "√s");
  EXPECT_EQ(letters(root(Expression(343), 3)), "∛343");
  EXPECT_EQ(letters(Expression(2) * root(Expression(height) + 1)), "2√(h + 1)");
  EXPECT_EQ(measures(root(side)), "√(6 cm)");
}

TEST(Notation, FractionsAreStackedWithoutBrackets) {
  const Notation fraction = notation((Expression(16) + 10) / 2, as_letter);
  ASSERT_EQ(fraction.kind, Kind::Fraction);
  EXPECT_EQ(fraction.parts.at(0).kind, Kind::Row);
  EXPECT_EQ(plain_text(fraction.parts.at(1)), "2");
}

TEST(Notation, LinesCanceledPartsAndBlanks) {
  Notation canceled = leaf(Kind::Number, "12");
  canceled.canceled = true;
  EXPECT_EQ(plain_text(row({canceled, leaf(Kind::Sign, "·"), leaf(Kind::Letter, "ℓ")})), "/12/ · ℓ");
  const NotationLine line{notation(Expression(24) * slant, as_letter), "=", leaf(Kind::Blank, "348")};
  EXPECT_EQ(plain_text(line), "24ℓ = ____");
  EXPECT_EQ(plain_text(NotationLine{row({}), "≈", quantity("10.39", "cm")}), "≈ 10.39 cm");
  const Notation mixed_units =
      row({leaf(Kind::Number, "2"), leaf(Kind::Unit, "ft"), leaf(Kind::Number, "6"), leaf(Kind::Unit, "in")});
  EXPECT_EQ(plain_text(mixed_units), "2 ft 6 in");
}

TEST(Notation, ANumberOpensIntoWhatIsDrawn) {
  EXPECT_EQ(opened_number("49.5"), leaf(Kind::Number, "49.5"));
  EXPECT_EQ(opened_number("six"), leaf(Kind::Number, "six"));
  const Notation mixed = opened_number("7 1/2");
  ASSERT_EQ(mixed.parts.size(), 2U);
  EXPECT_EQ(mixed.parts[0], leaf(Kind::Number, "7"));
  EXPECT_EQ(mixed.parts[1].kind, Kind::Fraction);
  EXPECT_EQ(opened_number("7½"), mixed);
  const Notation surd = opened_number("(15 + 7√5)/4");
  ASSERT_EQ(surd.kind, Kind::Fraction);
  EXPECT_EQ(plain_text(surd.parts[0]), "15 + 7√5");
  EXPECT_EQ(opened_number("√3/2").parts.at(0).kind, Kind::Root);
  EXPECT_EQ(opened_number("130π²").parts.at(1).kind, Kind::Power);
}

// What exact_text() writes is read again with no character lost.
RC_GTEST_PROP(NotationLaws, OpenedExactNumbersReadAsBefore, ()) {
  const auto part = [] {
    return Number::ratio(*rc::gen::inRange(-60, 60), *rc::gen::element(1, 2, 3, 4, 7)) *
           square_root(Number::whole(*rc::gen::inRange(1, 12))) * power(Number::pi(), *rc::gen::inRange(0, 3));
  };
  const Number number = part() + part();
  const std::string text = exact_text(number);
  std::string opened = plain_text(opened_number(text));
  const auto without = [](std::string from) {
    std::string kept;
    for (const char c : from) {
      if (c != ' ' && c != '(' && c != ')') kept += c;
    }
    for (std::size_t at = kept.find("÷"); at != std::string::npos; at = kept.find("÷")) kept.replace(at, 2, "/");
    return kept;
  };
  RC_ASSERT(without(opened) == without(text));
}

// A reader of elements, attributes and text; the names of what it met, or nothing for a text that is not well-formed.
std::optional<std::vector<std::string>> elements_of(const std::string& xml) {
  std::vector<std::string> names;
  std::vector<std::string> open;
  for (std::size_t at = 0; at < xml.size();) {
    if (xml[at] != '<') {
      if (xml[at] == '>' || open.empty()) return std::nullopt;
      if (xml[at] == '&' && xml.find(';', at) > at + 8) return std::nullopt;
      ++at;
      continue;
    }
    const std::size_t end = xml.find('>', at);
    if (end == std::string::npos) return std::nullopt;
    const std::string tag = xml.substr(at + 1, end - at - 1);
    if (tag.find('<') != std::string::npos || std::count(tag.begin(), tag.end(), '"') % 2 != 0) return std::nullopt;
    const std::string name = tag.substr(0, tag.find(' '));
    if (name.front() == '/') {
      if (open.empty() || open.back() != name.substr(1)) return std::nullopt;
      open.pop_back();
    } else {
      names.push_back(name);
      open.push_back(name);
    }
    at = end + 1;
  }
  return open.empty() ? std::optional(names) : std::nullopt;
}

Expression any_expression(int depth) {
  if (depth == 0) {
    return *rc::gen::element(Expression(side), Expression(slant), Expression(length), Expression(width),
                             Expression(Number::ratio(1, 3)), Expression(24), Expression(-2));
  }
  const Expression a = any_expression(depth - 1);
  const Expression b = any_expression(*rc::gen::inRange(0, depth));
  switch (*rc::gen::inRange(0, 6)) {
    case 0:
      return a + b;
    case 1:
      return a - b;
    case 2:
      return a * b;
    case 3:
      return a / b;
    case 4:
      return power(a, 2);
    default:
      return root(a, 3);
  }
}

// Source of the elements: W3C, MathML Core, section 3 (from memory).
RC_GTEST_PROP(NotationLaws, MathmlIsWellFormedCore, ()) {
  Notation right = notation(any_expression(3), as_measure);
  right.canceled = *rc::gen::arbitrary<bool>();
  right.group = 2;
  const auto names = elements_of(mathml({leaf(Kind::Letter, "S"), "=", right}));
  RC_ASSERT(names.has_value());
  const std::set<std::string> core{"math", "mrow",  "mi",    "mn",    "mo",    "mfrac",
                                   "msup", "msqrt", "mroot", "mtext", "mspace"};
  RC_ASSERT(std::all_of(names->begin(), names->end(), [&](const std::string& name) { return core.count(name) == 1; }));
}

// Signs taken from left to right as school reads them, with the values of the symbols put in.
class Reader {
 public:
  Reader(std::string text, const std::map<std::string, double>& values) : text_(std::move(text)), values_(values) {}
  double sum() {
    double value = take("−") ? -product() : product();
    while (true) {
      if (take(" + ")) {
        value += product();
      } else if (take(" − ")) {
        value -= product();
      } else {
        return value;
      }
    }
  }
  [[nodiscard]] bool at_end() const { return at_ == text_.size(); }

 private:
  double product() {
    double value = juxtaposed();
    while (true) {
      if (take(" · ") || take(" × ")) {
        value *= juxtaposed();
      } else if (take(" ÷ ")) {
        value /= juxtaposed();
      } else {
        return value;
      }
    }
  }
  double juxtaposed() {
    double value = raised();
    while (!at_end() && text_[at_] != ' ' && text_[at_] != ')') value *= raised();
    return value;
  }
  double raised() {
    const double value = atom();
    return take("²") ? value * value : value;
  }
  double atom() {
    if (take("(")) {
      const double value = sum();
      EXPECT_TRUE(take(")"));
      return value;
    }
    if (take("∛")) return std::cbrt(atom());
    if (take("⅓")) return 1.0 / 3.0;
    for (const auto& [letter, value] : values_) {
      if (take(letter)) return value;
    }
    const std::size_t end = text_.find_first_not_of("0123456789.", at_);
    EXPECT_NE(end, at_) << text_;
    if (end == at_) {
      at_ = text_.size();
      return 0;
    }
    const double value = std::stod(text_.substr(at_, end - at_));
    at_ = std::min(end, text_.size());
    return value;
  }
  bool take(const std::string& word) {
    if (text_.compare(at_, word.size(), word) != 0) return false;
    at_ += word.size();
    return true;
  }
  std::string text_;
  const std::map<std::string, double>& values_;
  std::size_t at_ = 0;
};

// Whatever is written means what the expression means.
RC_GTEST_PROP(NotationLaws, PlainTextHasTheValueOfItsExpression, ()) {
  const Expression expression = any_expression(4);
  const std::map<std::string, double> values{{"s", 1.7}, {"ℓ", 2.9}, {"l", 3.1}, {"w", 0.6}};
  const std::map<std::string, double, std::less<>> by_name{
      {"side", 1.7}, {"slant_height", 2.9}, {"length", 3.1}, {"width", 0.6}};
  const double expected = rough_value(expression, by_name);
  RC_PRE(std::isfinite(expected) && std::abs(expected) < 1e12);
  const std::string text = letters(expression);
  Reader reader(text, values);
  const double read = reader.sum();
  RC_LOG(text);
  RC_ASSERT(reader.at_end());
  RC_ASSERT(std::abs(read - expected) <= 1e-9 * (1 + std::abs(expected)));
}

TEST(Notation, MathmlKeepsUnitsUprightAndMarksAsClasses) {
  Notation area = quantity("36", "cm²");
  area.group = 0;
  Notation gone = leaf(Kind::Number, "2");
  gone.canceled = true;
  const std::string text = mathml({leaf(Kind::Words, "base & sides"), "=", row({area, leaf(Kind::Sign, "+"), gone})});
  EXPECT_THAT(text, HasSubstr("<msup><mi mathvariant=\"normal\">cm</mi><mn>2</mn></msup>"));
  EXPECT_THAT(text, HasSubstr("<mrow class=\"group-1\">"));
  EXPECT_THAT(text, HasSubstr("<mn class=\"canceled\">2</mn>"));
  EXPECT_THAT(text, HasSubstr("<mtext>base &amp; sides</mtext>"));
  EXPECT_TRUE(elements_of(text).has_value());
}

}  // namespace
}  // namespace fw::algebra::notation_test
