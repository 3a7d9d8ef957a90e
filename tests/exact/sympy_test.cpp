// Our numbers against SymPy's, on random expressions.
#include <gtest/gtest.h>

#include <cstdio>
#include <sstream>
#include <vector>

#include "exact/number.hpp"
#include "support/numbers.hpp"

namespace fw::sympy_test {
namespace {

using fw::exact::Number;

struct Line {
  std::string expression;
  std::string digits;
  bool is_rational = false;
};

std::vector<Line> lines_of_oracle(int seed, int count) {
  const std::string command = "python3 '" FOLDWRIGHT_SOURCE_DIR "/tests/oracle/exact_values.py' " +
                              std::to_string(seed) + " " + std::to_string(count);
  std::FILE* pipe = popen(command.c_str(), "r");
  std::string output;
  char buffer[4096];
  while (pipe != nullptr && std::fgets(buffer, sizeof buffer, pipe) != nullptr) {
    output += buffer;
  }
  const bool done = pipe != nullptr && pclose(pipe) == 0;
  std::vector<Line> lines;
  std::istringstream stream(output);
  std::string expression;
  std::string digits;
  std::string kind;
  while (done && std::getline(stream, expression, '\t') && std::getline(stream, digits, '\t') &&
         std::getline(stream, kind)) {
    lines.push_back({expression, digits, kind == "rational"});
  }
  return lines;
}

// "-4.5e+3" as a number.
Number scientific(const std::string& text) {
  const std::size_t mark = text.find('e');
  const Number digits = fw::test::decimal(text.substr(0, mark));
  const int exponent = mark == std::string::npos ? 0 : std::stoi(text.substr(mark + 1));
  return digits * power(Number::whole(10), exponent);
}

Number combined(const std::string& sign, const Number& left, const Number& right) {
  if (sign == "+") {
    return left + right;
  }
  if (sign == "-") {
    return left - right;
  }
  return sign == "*" ? left * right : left / right;
}

Number value_of(const std::string& postfix) {
  std::vector<Number> stack;
  std::istringstream words(postfix);
  for (std::string word; words >> word;) {
    if (word == "pi") {
      stack.push_back(Number::pi());
    } else if (word == "sqrt") {
      stack.back() = square_root(stack.back());
    } else if (word == "+" || word == "-" || word == "*" || word == "/") {
      const Number right = stack.back();
      stack.pop_back();
      stack.back() = combined(word, stack.back(), right);
    } else {
      stack.push_back(fw::test::decimal(word));
    }
  }
  return stack.front();
}

Number size(const Number& a) { return a.sign() < 0 ? -a : a; }

// Needs SymPy (Debian's python3-sympy), which the developers' set-up installs.
TEST(SymPy, AgreesWithOurNumbers) {
  constexpr int count = 400;
  const std::vector<Line> lines = lines_of_oracle(7, count);
  ASSERT_EQ(lines.size(), static_cast<std::size_t>(count)) << "SymPy gave no values: is python3-sympy installed?";
  const Number fine = power(Number::whole(10), -60);
  int exact = 0;
  int irrational = 0;
  std::vector<std::pair<Number, Number>> values;  // ours, SymPy's
  for (const Line& line : lines) {
    const Number ours = value_of(line.expression);
    const Number theirs = scientific(line.digits);
    EXPECT_LE(size(ours - theirs), size(theirs) * fine) << line.expression << " is " << line.digits;
    if (ours.is_exact() && line.is_rational) {
      EXPECT_TRUE(ours.is_rational()) << line.expression << " is " << line.digits;
    }
    exact += ours.is_exact() ? 1 : 0;
    irrational += ours.is_rational() ? 0 : 1;
    values.push_back({ours, theirs});
  }
  EXPECT_GT(exact, count * 3 / 4);
  EXPECT_GT(irrational, count / 4);
  for (std::size_t i = 1; i < values.size(); ++i) {
    if (size(values[i].second - values[i - 1].second) > fine) {
      EXPECT_EQ(compare(values[i - 1].first, values[i].first), compare(values[i - 1].second, values[i].second))
          << lines[i - 1].expression << " and " << lines[i].expression;
    }
  }
}

}  // namespace
}  // namespace fw::sympy_test
