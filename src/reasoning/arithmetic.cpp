#include "reasoning/arithmetic.hpp"

#include <algorithm>

#include "base/utf8.hpp"
#include "exact/print_number.hpp"

namespace fw::reasoning {
namespace {

using algebra::Expression;
using algebra::Numerals;
using algebra::Operation;
using exact::ColumnWork;
using exact::Number;
using words::message;
using words::Message;

constexpr int longest_decimal = 4;

bool is_leaf(const Expression& e) { return e.operands().empty(); }

// A bracket of numbers is worked out before its power.
bool is_chain(const Expression& e) {
  if (e.operation() == Operation::Power) {
    return is_leaf(e.operands().front());
  }
  const bool multiplies =
      e.operation() == Operation::Product || e.operation() == Operation::Quotient || e.operation() == Operation::Power;
  return is_leaf(e) || (multiplies && std::all_of(e.operands().begin(), e.operands().end(), is_chain));
}

std::optional<Number> value_of(const Expression& e, const Numerals& numerals) {
  return algebra::evaluate(e, numerals.values());
}

bool can_be_written_out(const Number& n) {
  return n.sign() >= 0 && n.is_exact() && exact::decimals_needed(n, longest_decimal).has_value();
}

// Digits without the zeros at either end: 1200 and 0.012 have two.
std::size_t significant_digits(const Number& n) {
  std::string digits;
  for (const char c : exact::shown(n, longest_decimal).text) {
    if (is_ascii_digit(c)) {
      digits += c;
    }
  }
  const std::size_t first = digits.find_first_not_of('0');
  const std::size_t last = digits.find_last_not_of('0');
  return first == std::string::npos ? 0 : last - first + 1;
}

void gather(const Expression& e, bool is_below, const Numerals& numerals, std::vector<Number>& above,
            std::vector<Number>& below) {
  switch (e.operation()) {
    case Operation::Product:
      for (const Expression& operand : e.operands()) {
        gather(operand, is_below, numerals, above, below);
      }
      return;
    case Operation::Quotient:
      gather(e.operands()[0], is_below, numerals, above, below);
      gather(e.operands()[1], !is_below, numerals, above, below);
      return;
    case Operation::Power:
      for (int i = 0; i < e.exponent(); ++i) {
        gather(e.operands().front(), is_below, numerals, above, below);
      }
      return;
    default:
      if (const std::optional<Number> value = value_of(e, numerals)) {
        (is_below ? below : above).push_back(*value);
      }
  }
}

bool is_hard_product(const Number& a, const Number& b) {
  return significant_digits(a) >= 2 && significant_digits(b) >= 2;
}

// As many decimals as the line shows of the quotient; none where it shows a fraction, whose numerator is what is left.
int quotient_places(const Number& quotient) {
  const std::string text = exact::class_text(quotient);
  const std::size_t point = text.find('.');
  return point == std::string::npos ? 0 : static_cast<int>(text.find_last_of("0123456789") - point);
}

bool is_hard_quotient(const Number& a, const Number& b) {
  constexpr int easy_places = 2;
  const bool ends = exact::decimals_needed(a / b, easy_places).has_value();
  return significant_digits(b) >= 2 || (significant_digits(b) == 1 && significant_digits(a) >= 3) ||
         (significant_digits(b) == 1 && !ends && !(b == Number::whole(1)));
}

bool is_hard_sum(const std::vector<Number>& addends) {
  const bool long_ones =
      std::count_if(addends.begin(), addends.end(), [](const Number& n) { return significant_digits(n) >= 3; }) > 0;
  return addends.size() > 2
             ? std::any_of(addends.begin(), addends.end(), [](const Number& n) { return significant_digits(n) >= 2; })
             : long_ones;
}

bool all_written_out(const std::vector<Number>& numbers) {
  return std::all_of(numbers.begin(), numbers.end(), can_be_written_out);
}

void add_chain(const Expression& e, const Numerals& numerals, std::vector<ColumnWork>& asides) {
  std::vector<Number> above;
  std::vector<Number> below;
  gather(e, false, numerals, above, below);
  if (above.empty() || !all_written_out(above) || !all_written_out(below)) {
    return;
  }
  // Short factors first, as a class would take them.
  std::stable_sort(above.begin(), above.end(),
                   [](const Number& a, const Number& b) { return significant_digits(a) < significant_digits(b); });
  Number product = above.front();
  for (std::size_t i = 1; i < above.size(); ++i) {
    if (is_hard_product(product, above[i])) {
      asides.push_back(exact::long_multiplication(above[i], product));
    }
    product = product * above[i];
    if (!can_be_written_out(product)) {
      return;
    }
  }
  if (below.empty()) {
    return;
  }
  Number divisor = Number::whole(1);
  for (const Number& factor : below) {
    divisor = divisor * factor;
  }
  if (divisor.sign() > 0 && can_be_written_out(divisor) && is_hard_quotient(product, divisor)) {
    asides.push_back(exact::long_division(product, divisor, quotient_places(product / divisor)));
  }
}

void add_sum(const Expression& e, const Numerals& numerals, std::vector<ColumnWork>& asides) {
  std::vector<Number> numbers;
  for (const Expression& operand : e.operands()) {
    if (const std::optional<Number> value = value_of(operand, numerals)) {
      numbers.push_back(*value);
    }
  }
  if (numbers.size() != e.operands().size() || !all_written_out(numbers) || !is_hard_sum(numbers)) {
    return;
  }
  if (e.operation() == Operation::Sum) {
    asides.push_back(exact::column_addition(numbers));
  } else if (numbers.size() == 2 && numbers[0] >= numbers[1]) {
    asides.push_back(exact::column_subtraction(numbers[0], numbers[1]));
  }
}

bool is_sum(const Expression& e) { return e.operation() == Operation::Sum || e.operation() == Operation::Difference; }

bool is_known(const Expression& e, const Numerals& numerals) { return value_of(e, numerals).has_value(); }

// The parts that one round of arithmetic works out, each handed to `use`.
template <class Use>
void for_each_worked(const Expression& e, const Numerals& numerals, const Use& use) {
  if (is_leaf(e)) {
    return;
  }
  const bool of_leaves = std::all_of(e.operands().begin(), e.operands().end(), is_leaf);
  if (is_chain(e) || of_leaves) {
    use(e);
    return;
  }
  for (const Expression& operand : e.operands()) {
    for_each_worked(operand, numerals, use);
  }
}

}  // namespace

std::vector<ColumnWork> asides_of(const Expression& expression, const Numerals& numerals) {
  std::vector<ColumnWork> asides;
  for_each_worked(expression, numerals, [&](const Expression& part) {
    if (!is_known(part, numerals)) {
      return;
    }
    if (is_sum(part)) {
      add_sum(part, numerals, asides);
    } else if (part.operation() != Operation::Root) {
      add_chain(part, numerals, asides);
    }
  });
  return asides;
}

Message arithmetic_words(const Expression& expression, const Numerals& numerals) {
  std::vector<Message> words;
  const auto add = [&](const Message& word) {
    if (std::find(words.begin(), words.end(), word) == words.end()) {
      words.push_back(word);
    }
  };
  for_each_worked(expression, numerals, [&](const Expression& part) {
    std::vector<Number> above;
    std::vector<Number> below;
    switch (part.operation()) {
      case Operation::Sum:
        add(message("add"));
        break;
      case Operation::Difference:
        add(message("subtract"));
        break;
      case Operation::Root:
        add(part.exponent() == 2 ? message("take the square root") : message("take the cube root"));
        break;
      case Operation::Power:
        add(part.exponent() == 2 ? message("square") : message("multiply"));
        break;
      default:
        gather(part, false, numerals, above, below);
        if (above.size() > 1) {
          add(message("multiply"));
        }
        if (!below.empty()) {
          add(message("divide"));
        }
    }
  });
  return words.empty() ? Message() : message("{work:up}.", {{"work", message("{words:and}", {{"words", words}})}});
}

namespace {

// A leaf of a chain with the way to it, so that it can be replaced.
struct Leaf {
  std::vector<std::size_t> path;
  Number value;
  int dimension = 0;
};

void gather_leaves(const Expression& e, std::vector<std::size_t>& path, bool is_below, const Numerals& numerals,
                   std::vector<Leaf>& above, std::vector<Leaf>& below) {
  if (is_leaf(e)) {
    const std::optional<Number> value = value_of(e, numerals);
    if (value && value->is_whole() && *value > Number::whole(1)) {
      (is_below ? below : above).push_back({path, *value, algebra::dimension_of(e)});
    }
    return;
  }
  if (e.operation() == Operation::Power) {
    return;
  }
  for (std::size_t i = 0; i < e.operands().size(); ++i) {
    path.push_back(i);
    const bool goes_below = e.operation() == Operation::Quotient && i == 1;
    gather_leaves(e.operands()[i], path, is_below != goes_below, numerals, above, below);
    path.pop_back();
  }
}

Expression with_at(const Expression& e, const std::vector<std::size_t>& path, std::size_t depth,
                   const std::optional<Expression>& replacement) {
  if (depth == path.size()) {
    return *replacement;
  }
  std::vector<Expression> operands = e.operands();
  const bool drops = depth + 1 == path.size() && !replacement;
  if (drops) {
    operands.erase(operands.begin() + static_cast<std::ptrdiff_t>(path[depth]));
    return operands.size() == 1 ? operands.front() : algebra::with_operands(e, operands);
  }
  operands[path[depth]] = with_at(operands[path[depth]], path, depth + 1, replacement);
  return algebra::with_operands(e, operands);
}

std::optional<Canceled> canceled_in_chain(const Expression& e, Numerals& numerals) {
  std::vector<Leaf> above;
  std::vector<Leaf> below;
  std::vector<std::size_t> path;
  gather_leaves(e, path, false, numerals, above, below);
  std::vector<Number> factors;
  std::vector<Number> divisors;
  gather(e, false, numerals, factors, divisors);
  if (factors.size() < 2) {
    return std::nullopt;  // one number above another is a plain division
  }
  for (const Leaf& divisor : below) {
    const bool is_alone = divisor.path == std::vector<std::size_t>{1};
    for (const Leaf& factor : above) {
      const Number quotient = factor.value / divisor.value;
      if (!is_alone || divisor.dimension != 0 || !quotient.is_whole()) {
        continue;
      }
      Canceled result{e,
                      e,
                      numerals.add(factor.value, factor.dimension),
                      numerals.add(divisor.value, 0),
                      numerals.add(quotient, factor.dimension),
                      quotient == Number::whole(1)};
      result.before =
          with_at(with_at(e, factor.path, 0, Expression(result.above)), divisor.path, 0, Expression(result.below));
      const bool drops_factor = result.leaves_one && factor.dimension == 0;
      result.leaves_one = drops_factor;
      result.after = with_at(e, factor.path, 0, drops_factor ? std::nullopt : std::optional<Expression>(result.left));
      result.after = with_at(result.after, divisor.path, 0, std::nullopt);
      return result;
    }
  }
  return std::nullopt;
}

}  // namespace

std::optional<Canceled> canceled(const Expression& expression, Numerals& numerals) {
  if (is_leaf(expression)) {
    return std::nullopt;
  }
  if (is_chain(expression)) {
    return is_known(expression, numerals) && expression.operation() == Operation::Quotient
               ? canceled_in_chain(expression, numerals)
               : std::nullopt;
  }
  std::vector<Expression> before = expression.operands();
  for (std::size_t i = 0; i < before.size(); ++i) {
    std::optional<Canceled> inside = canceled(before[i], numerals);
    if (inside) {
      std::vector<Expression> after = before;
      before[i] = inside->before;
      after[i] = inside->after;
      inside->before = algebra::with_operands(expression, before);
      inside->after = algebra::with_operands(expression, after);
      return inside;
    }
  }
  return std::nullopt;
}

}  // namespace fw::reasoning
