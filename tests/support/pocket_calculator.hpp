#pragma once

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

// What a reader gets who types a printed line into a calculator.
namespace fw::test {

/// Numbers, + − · × ÷ /, ½ ⅓ ⅔ ¼ ¾, mixed numbers, roots, squares and brackets; a sum of money may have its $.
class PocketCalculator {
 public:
  /// Nothing for what has letters.
  static std::optional<double> value(std::string_view text) {
    PocketCalculator calculator(text);
    const double value = calculator.sum();
    return calculator.fails_ || !calculator.rest_.empty() ? std::nullopt : std::optional(value);
  }

 private:
  explicit PocketCalculator(std::string_view text) : rest_(text) {}

  bool take(std::string_view word) {
    const bool is_next = rest_.substr(0, word.size()) == word;
    rest_.remove_prefix(is_next ? word.size() : 0);
    return is_next;
  }

  double sum() {
    const double sign = take("−") ? -1 : 1;
    double value = sign * product();
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

  double product() {
    double value = joined();
    while (true) {
      if (take(" · ") || take(" × ")) {
        value *= joined();
      } else if (take(" ÷ ") || take("/")) {
        value /= joined();
      } else {
        return value;
      }
    }
  }

  // "6√3", "2(3 + 4)", "8 1/2".
  double joined() {
    double value = powered();
    while (!fails_ && !rest_.empty()) {
      const bool follows = rest_.front() == '(' || starts("√") || starts("∛") || starts("π");
      if (!follows) {
        return value;
      }
      value *= powered();
    }
    return value;
  }

  double powered() {
    double value = atom();
    if (take("²")) {
      return value * value;
    }
    return take("³") ? value * value * value : value;
  }

  double atom() {
    if (take("(")) {
      const double inside = sum();
      fails_ = fails_ || !take(")");
      return inside;
    }
    if (take("√")) {
      return std::sqrt(atom());
    }
    if (take("∛")) {
      return std::cbrt(atom());
    }
    if (take("π")) {
      return std::acos(-1);
    }
    using Part = std::pair<std::string_view, double>;
    for (const auto& [sign, part] : {Part{"½", 0.5}, {"⅓", 1 / 3.0}, {"⅔", 2 / 3.0}, {"¼", 0.25}, {"¾", 0.75}}) {
      if (take(sign)) {
        return part;
      }
    }
    take("$");
    return mixed();
  }

  double mixed() {
    const double whole = number();
    const std::string_view before = rest_;
    if (take(" ") && !rest_.empty() && rest_.front() >= '0' && rest_.front() <= '9') {
      const double above = number();
      if (take("/")) {
        return whole + above / number();
      }
    }
    rest_ = before;
    return whole;
  }

  double number() {
    const std::size_t count = std::min(rest_.find_first_not_of("0123456789.,"), rest_.size());
    std::string digits(rest_.substr(0, count));
    digits.erase(std::remove(digits.begin(), digits.end(), ','), digits.end());  // 12,345
    rest_.remove_prefix(count);
    take("…");
    fails_ = fails_ || digits.empty();
    return digits.empty() ? 0 : std::strtod(digits.c_str(), nullptr);
  }

  [[nodiscard]] bool starts(std::string_view word) const { return rest_.substr(0, word.size()) == word; }

  std::string_view rest_;
  bool fails_ = false;
};

/// What does not follow on a printed line, "2 · 3 = 7": each part must be what the calculator makes of the part before,
/// after ≈ within half a unit of the last digit. Empty where all does; parts with letters are passed over. After ≈ no
/// part may be exact, unless the numbers before it are rounded ones.
inline std::string miscalculated(const std::string& line, bool from_rounded = false) {
  std::vector<std::pair<std::string, std::string>> parts{{"", ""}};  // the sign before it, the part
  for (std::string_view rest = line; !rest.empty();) {
    bool is_sign = false;
    for (const std::string_view sign : {" = ", " ≈ "}) {
      if (rest.substr(0, sign.size()) == sign) {
        parts.emplace_back(std::string(sign), "");
        rest.remove_prefix(sign.size());
        is_sign = true;
      }
    }
    if (!is_sign && !rest.empty()) {
      parts.back().second += rest.front();
      rest.remove_prefix(1);
    }
  }
  for (std::size_t i = 1; i < parts.size(); ++i) {
    const std::optional<double> before = PocketCalculator::value(parts[i - 1].second);
    const std::optional<double> after = PocketCalculator::value(parts[i].second);
    if (!before || !after) {
      continue;
    }
    const std::string& text = parts[i].second;
    const std::size_t point = text.find('.');
    const double places = point == std::string::npos ? 0 : static_cast<double>(text.size() - point - 1);
    const bool goes_on = line.find("…") != std::string::npos;
    const double allowed = parts[i].first == " ≈ " ? 0.5000001 * std::pow(10, -places)
                           : goes_on               ? 1e-4 * std::abs(*before)
                                                   : 1e-9 * std::abs(*before);
    if (std::abs(*before - *after) > allowed) {
      return line + ": the calculator gives " + std::to_string(*before);
    }
    if (!from_rounded && parts[i].first == " ≈ " && std::abs(*before - *after) < 1e-12 * std::abs(*before)) {
      return line + " is exact";
    }
  }
  return {};
}

}  // namespace fw::test
