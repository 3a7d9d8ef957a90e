#pragma once

#include <rapidcheck.h>

#include "exact/number.hpp"
#include "exact/print_number.hpp"
#include "support/numbers.hpp"

namespace fw::exact {

inline void showValue(const Number& number, std::ostream& out) { PrintTo(number, &out); }

}  // namespace fw::exact

namespace fw::test {

using exact::Number;

inline rc::Gen<Number> any_ratio() {
  return rc::gen::apply([](int above, int below) { return Number::ratio(above, below); }, rc::gen::inRange(-300, 300),
                        rc::gen::element(1, 1, 1, 2, 3, 4, 5, 7, 10, 12, 100));
}

inline rc::Gen<Number> any_root() {
  return rc::gen::map(rc::gen::inRange(0, 60), [](int n) { return square_root(Number::whole(n)); });
}

/// Rationals and sums of up to three square roots.
inline rc::Gen<Number> any_root_sum() {
  return rc::gen::map(
      rc::gen::container<std::vector<std::pair<Number, Number>>>(rc::gen::pair(any_ratio(), any_root())),
      [](const std::vector<std::pair<Number, Number>>& terms) {
        Number sum;
        for (std::size_t i = 0; i < terms.size() && i < 3; ++i) {
          sum = sum + terms[i].first * terms[i].second;
        }
        return sum;
      });
}

/// √(a + b√c) as it comes, nested or not; a is large enough to keep the radicand positive.
inline rc::Gen<Number> any_nested_root() {
  return rc::gen::apply(
      [](int extra, int b, int c) {
        const Number part = Number::whole(b) * square_root(Number::whole(c));
        return square_root(Number::whole(extra) + floor(part.sign() < 0 ? -part : part) + Number::whole(1) + part);
      },
      rc::gen::inRange(0, 20), rc::gen::inRange(-6, 7), rc::gen::element(2, 3, 5, 6));
}

/// All that an exact number can be: root sums, powers of π and one nested root.
inline rc::Gen<Number> any_exact() {
  return rc::gen::apply(
      [](const Number& a, const Number& b, const Number& nested, int pi_power, int shape) {
        switch (shape) {
          case 0:
            return a + b * power(Number::pi(), pi_power);
          case 1:
            return a * nested;
          case 2:
            return a + b * nested;
          default:
            return a;
        }
      },
      any_root_sum(), any_root_sum(), any_nested_root(), rc::gen::inRange(-2, 4), rc::gen::inRange(0, 5));
}

}  // namespace fw::test
