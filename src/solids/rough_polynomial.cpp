#include "solids/rough_polynomial.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace fw::solids {
namespace {

constexpr double noise = 1e-11;

RoughPolynomial trimmed(RoughPolynomial a) {
  for (RoughTerm& term : a) {
    term.value = std::abs(term.value) <= noise * term.size ? 0 : term.value;
  }
  while (!a.empty() && a.back().value == 0) {
    a.pop_back();
  }
  return a;
}

double value_at(const std::vector<double>& coefficients, double x) {
  double value = 0;
  for (auto c = coefficients.rbegin(); c != coefficients.rend(); ++c) {
    value = value * x + *c;
  }
  return value;
}

std::vector<double> quadratic_roots(double a, double b, double c) {
  const double size = b * b + std::abs(4 * a * c);
  const double discriminant = b * b - 4 * a * c;
  if (discriminant < -noise * size) {
    return {};
  }
  const double root = std::sqrt(std::max(discriminant, 0.0));
  // Adding what has the same sign keeps the digits.
  const double half = -(b + (b < 0 ? -root : root)) / 2;
  std::vector<double> roots;
  if (half != 0) {
    roots.push_back(c / half);
  }
  if (discriminant > noise * size) {
    roots.push_back(half / a);
  }
  return roots;
}

/// Between the roots of the derivative a polynomial only rises or only falls.
std::vector<double> real_roots_above_zero(const std::vector<double>& coefficients) {
  const std::size_t degree = coefficients.size() - 1;
  if (degree == 0) {
    return {};
  }
  if (degree == 1) {
    return {-coefficients[0] / coefficients[1]};
  }
  if (degree == 2) {
    return quadratic_roots(coefficients[2], coefficients[1], coefficients[0]);
  }
  std::vector<double> slope;
  double bound = 0;
  double largest = 0;
  for (std::size_t i = 1; i <= degree; ++i) {
    slope.push_back(coefficients[i] * static_cast<double>(i));
  }
  for (std::size_t i = 0; i < degree; ++i) {
    // Source: the bound of Fujiwara (1916; from memory).
    const double ratio = std::abs(coefficients[i] / coefficients[degree]);
    bound = std::max(bound, 2 * std::pow(ratio, 1 / static_cast<double>(degree - i)));
    largest = std::max(largest, std::abs(coefficients[i]));
  }
  std::vector<double> places{0};
  for (const double turn : real_roots_above_zero(slope)) {
    if (turn > 0 && turn < bound) {
      places.push_back(turn);
    }
  }
  std::sort(places.begin(), places.end());
  places.push_back(bound * 1.01);
  std::vector<double> roots;
  for (std::size_t i = 0; i + 1 < places.size(); ++i) {
    double low = places[i];
    double high = places[i + 1];
    const double at_low = value_at(coefficients, low);
    const double at_high = value_at(coefficients, high);
    if (i > 0) {
      double size = 0;
      for (std::size_t k = 0; k <= degree; ++k) {
        size += std::abs(coefficients[k]) * std::pow(low, static_cast<double>(k));
      }
      if (std::abs(at_low) <= noise * size) {  // it only touches zero here
        roots.push_back(low);
        continue;
      }
    }
    if ((at_low < 0) == (at_high < 0)) {
      continue;
    }
    for (int step = 0; step < 100 && high - low > 1e-15 * high; ++step) {
      const double middle = (low + high) / 2;
      ((value_at(coefficients, middle) < 0) == (at_low < 0) ? low : high) = middle;
    }
    roots.push_back((low + high) / 2);
  }
  return roots;
}

}  // namespace

RoughPolynomial constant(double value) {
  return value == 0 ? RoughPolynomial{} : RoughPolynomial{{value, std::abs(value)}};
}

RoughPolynomial sum(const RoughPolynomial& a, const RoughPolynomial& b) {
  RoughPolynomial result(std::max(a.size(), b.size()));
  for (const RoughPolynomial* one : {&a, &b}) {
    for (std::size_t i = 0; i < one->size(); ++i) {
      result[i].value += (*one)[i].value;
      result[i].size += (*one)[i].size;
    }
  }
  return trimmed(std::move(result));
}

RoughPolynomial product(const RoughPolynomial& a, const RoughPolynomial& b) {
  if (a.empty() || b.empty()) {
    return {};
  }
  RoughPolynomial result(a.size() + b.size() - 1);
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      result[i + j].value += a[i].value * b[j].value;
      result[i + j].size += a[i].size * b[j].size;
    }
  }
  return trimmed(std::move(result));
}

RoughPolynomial negative(RoughPolynomial a) {
  for (RoughTerm& term : a) {
    term.value = -term.value;
  }
  return a;
}

std::vector<double> positive_roots(const RoughPolynomial& polynomial) {
  std::size_t first = 0;
  while (first < polynomial.size() && polynomial[first].value == 0) {
    ++first;
  }
  if (first >= polynomial.size()) {
    return {};
  }
  // x⁴ − 5x² + 4 is a quadratic in x².
  std::size_t step = 0;
  for (std::size_t i = first; i < polynomial.size(); ++i) {
    step = polynomial[i].value == 0 ? step : std::gcd(step, i - first);
  }
  if (step == 0) {
    return {};
  }
  std::vector<double> coefficients;
  for (std::size_t i = first; i < polynomial.size(); i += step) {
    coefficients.push_back(polynomial[i].value);
  }
  std::vector<double> roots;
  for (const double root : real_roots_above_zero(coefficients)) {
    if (root > 0) {
      roots.push_back(step == 1 ? root : std::pow(root, 1 / static_cast<double>(step)));
    }
  }
  std::sort(roots.begin(), roots.end());
  return roots;
}

}  // namespace fw::solids
