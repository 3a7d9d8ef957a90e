#include "algebra/expression.hpp"

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::algebra {

struct Expression::Node {
  Operation operation = Operation::Number;
  std::vector<Expression> operands;
  exact::Number number;
  Symbol symbol;
  int exponent = 1;
};

namespace {

Expression made(Operation operation, std::vector<Expression> operands, int exponent = 1) {
  return Expression(std::make_shared<const Expression::Node>(
      Expression::Node{operation, std::move(operands), exact::Number(), Symbol{}, exponent}));
}

void collect(const Expression& expression, std::vector<Symbol>& found) {
  if (expression.operation() == Operation::Symbol &&
      std::find(found.begin(), found.end(), expression.symbol()) == found.end()) {
    found.push_back(expression.symbol());
  }
  for (const Expression& operand : expression.operands()) {
    collect(operand, found);
  }
}

}  // namespace

Expression::Expression(const Symbol& symbol)
    : node_(std::make_shared<const Node>(Node{Operation::Symbol, {}, exact::Number(), symbol, 1})) {}
Expression::Expression(exact::Number number)
    : node_(std::make_shared<const Node>(Node{Operation::Number, {}, std::move(number), Symbol{}, 1})) {}
Expression::Expression(int whole) : Expression(exact::Number::whole(whole)) {}

Operation Expression::operation() const { return node_->operation; }
const std::vector<Expression>& Expression::operands() const { return node_->operands; }
int Expression::exponent() const { return node_->exponent; }

const exact::Number& Expression::number() const {
  ensure(node_->operation == Operation::Number, "the number was asked of an expression that is none");
  return node_->number;
}

const Symbol& Expression::symbol() const {
  ensure(node_->operation == Operation::Symbol, "the symbol was asked of an expression that is none");
  return node_->symbol;
}

bool operator==(const Expression& a, const Expression& b) {
  if (a.node_ == b.node_) {
    return true;
  }
  return a.operation() == b.operation() && a.exponent() == b.exponent() && a.node_->symbol == b.node_->symbol &&
         a.node_->number == b.node_->number && a.operands() == b.operands();
}

Expression operator+(const Expression& a, const Expression& b) { return combined(Operation::Sum, a, b); }
Expression operator-(const Expression& a, const Expression& b) { return combined(Operation::Difference, a, b); }
Expression operator*(const Expression& a, const Expression& b) { return combined(Operation::Product, a, b); }
Expression operator/(const Expression& a, const Expression& b) { return combined(Operation::Quotient, a, b); }
Expression combined(Operation operation, const Expression& a, const Expression& b) { return made(operation, {a, b}); }

Expression power(const Expression& a, int exponent) {
  ensure(exponent >= 2, "a power in a formula has an exponent of at least 2");
  return made(Operation::Power, {a}, exponent);
}

Expression root(const Expression& a, int degree) {
  ensure(degree == 2 || degree == 3, "a root in a formula is a square root or a cube root");
  return made(Operation::Root, {a}, degree);
}

Expression sum_of(const std::vector<Expression>& terms) {
  ensure(!terms.empty(), "a sum in a formula has at least one term");
  return terms.size() == 1 ? terms.front() : made(Operation::Sum, terms);
}

std::vector<Symbol> symbols_of(const Expression& expression) {
  std::vector<Symbol> found;
  collect(expression, found);
  return found;
}

std::vector<Symbol> symbols_of(const Equation& equation) { return symbols_of(equation.left - equation.right); }

}  // namespace fw::algebra
