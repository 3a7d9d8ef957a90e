#pragma once

#include <algorithm>
#include <functional>
#include <initializer_list>
#include <optional>
#include <utility>
#include <vector>

#include "exact/number.hpp"

namespace fw::exact {

/// A polynomial over a type of number: one that is zero by default and knows +, -, × and ==.
template <class N>
class Polynomial {
 public:
  Polynomial() = default;  ///< zero
  /// By its coefficients, the constant one first.
  Polynomial(std::vector<N> coefficients) : coefficients_(std::move(coefficients)) {
    while (!coefficients_.empty() && coefficients_.back() == N()) {
      coefficients_.pop_back();
    }
  }
  Polynomial(std::initializer_list<N> coefficients) : Polynomial(std::vector<N>(coefficients)) {}

  /// The constant one first; the last one is not zero.
  [[nodiscard]] const std::vector<N>& coefficients() const { return coefficients_; }
  [[nodiscard]] std::size_t size() const { return coefficients_.size(); }
  [[nodiscard]] bool is_zero() const { return coefficients_.empty(); }
  [[nodiscard]] bool is_constant() const { return coefficients_.size() <= 1; }
  /// The coefficient of a power, which may be zero.
  [[nodiscard]] N at(std::size_t power) const { return power < size() ? coefficients_[power] : N(); }

  friend bool operator==(const Polynomial& a, const Polynomial& b) { return a.coefficients_ == b.coefficients_; }
  friend Polynomial operator+(const Polynomial& a, const Polynomial& b) {
    std::vector<N> sum = a.coefficients_;
    sum.resize(std::max(a.size(), b.size()));
    for (std::size_t i = 0; i < b.size(); ++i) {
      sum[i] = sum[i] + b.coefficients_[i];
    }
    return sum;
  }
  friend Polynomial operator-(Polynomial a) {
    std::transform(a.coefficients_.begin(), a.coefficients_.end(), a.coefficients_.begin(), std::negate<>());
    return a;
  }
  friend Polynomial operator-(const Polynomial& a, const Polynomial& b) { return a + -b; }
  friend Polynomial operator*(const Polynomial& a, const Polynomial& b) {
    if (a.is_zero() || b.is_zero()) {
      return {};
    }
    std::vector<N> product(a.size() + b.size() - 1);
    for (std::size_t i = 0; i < a.size(); ++i) {
      for (std::size_t j = 0; j < b.size(); ++j) {
        product[i + j] = product[i + j] + a.coefficients_[i] * b.coefficients_[j];
      }
    }
    return product;
  }

 private:
  std::vector<N> coefficients_;
};

/// The distinct real x > 0 with polynomial(x) = 0, in rising order; none for a constant, and for zero too. Exact where
/// the polynomial comes, after taking out powers of x and writing x^g as one unknown (g up to 4), to degree 2 or less,
/// and where a root is a ratio of small whole numbers; otherwise inexact, found by Newton's method between the roots of
/// the derivative.
[[nodiscard]] std::vector<Number> positive_roots(const Polynomial<Number>& polynomial);
/// The same in doubles. What is 10^-11 of the terms that it is the sum of, or less, is taken for zero.
[[nodiscard]] std::vector<double> positive_roots(const Polynomial<double>& polynomial);

/// The same value as an inexact number.
[[nodiscard]] Number approximation(const Number& a);

/// A zero of `function` between two places where its signs differ or one value is zero, good to 60 digits unless
/// the function is flatter there than numbers can tell; inexact. Nothing if `function` has no value on the way.
[[nodiscard]] std::optional<Number> zero_between(const std::function<std::optional<Number>(const Number&)>& function,
                                                 const Number& low, const Number& high);

}  // namespace fw::exact
