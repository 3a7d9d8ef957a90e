#include "exact/column_work.hpp"

#include <algorithm>
#include <numeric>

#include "base/ensure.hpp"
#include "base/utf8.hpp"
#include "exact/number_parts.hpp"
#include "exact/print_number.hpp"
#include "exact/signs.hpp"

namespace fw::exact {
namespace {

constexpr int most_places = 6;

using Cells = std::vector<std::string>;

/// A decimal as its digits: 2.35 is 235 with two places.
struct Digits {
  Integer value;
  std::size_t places = 0;
  /// Every digit, with the zeros that its places ask for: "005" for 0.05.
  [[nodiscard]] std::string text() const {
    std::string digits = value.str();
    if (digits.size() <= places) digits.insert(0, places + 1 - digits.size(), '0');
    return digits;
  }
};

std::size_t places_of(const Number& a) {
  const std::optional<int> places = decimals_needed(a, most_places);
  ensure(places.has_value() && a.sign() >= 0, "column work is for decimals that end within 6 places");
  return static_cast<std::size_t>(*places);
}

std::string decimal_text(const Number& a) { return fixed_text(a, static_cast<int>(places_of(a))); }

Integer ten_to_the(std::size_t places) { return mp::pow(Integer(10), static_cast<unsigned>(places)); }

Digits digits_of(const Number& a, std::size_t places) {
  const Rational scaled = *to_rational(a) * Rational(ten_to_the(places));
  return {mp::numerator(scaled), places};
}
Digits digits_of(const Number& a) { return digits_of(a, places_of(a)); }

/// Cells of their own for the digits and the point, so that points stand under each other.
Cells with_point_cell(const Digits& number) {
  Cells cells;
  const std::string text = number.text();
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (number.places > 0 && i == text.size() - number.places) cells.emplace_back(".");
    cells.emplace_back(1, text[i]);
  }
  return cells;
}

/// The point beside its digit, so that the last digits stand under each other.
Cells with_point_beside(const Digits& number) {
  Cells cells;
  const std::string text = number.text();
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool before_point = number.places > 0 && i + 1 == text.size() - number.places;
    cells.push_back(before_point ? std::string{text[i], '.'} : std::string(1, text[i]));
  }
  return cells;
}

Cells right_aligned(const Cells& cells, std::size_t columns) {
  Cells row(columns - cells.size());
  row.insert(row.end(), cells.begin(), cells.end());
  return row;
}

/// What is carried into each column of `columns`, as raised digits; nothing if nothing is carried.
std::optional<Cells> carries(const std::vector<Cells>& addends, std::size_t columns) {
  Cells row(columns);
  bool any = false;
  unsigned carry = 0;
  for (std::size_t column = columns; column-- > 0;) {
    if (std::any_of(addends.begin(), addends.end(), [&](const Cells& cells) { return cells[column] == "."; })) continue;
    if (carry > 0) {
      row[column] = raised(static_cast<int>(carry));
      any = true;
    }
    unsigned sum = carry;
    for (const Cells& cells : addends) {
      if (!cells[column].empty() && cells[column] != "+") sum += static_cast<unsigned>(cells[column].front() - '0');
    }
    carry = sum / 10;
  }
  return any ? std::optional<Cells>(std::move(row)) : std::nullopt;
}

/// The numbers under each other, a sign before the last, a rule, and the result.
ColumnWork lined_up(const std::vector<Number>& numbers, const Number& result, const std::string& sign) {
  ColumnWork work;
  std::size_t places = 0;
  for (const Number& number : numbers) places = std::max(places, places_of(number));
  const Cells below = with_point_cell(digits_of(result, places));
  std::size_t widest = below.size();
  for (const Number& number : numbers) {
    widest = std::max(widest, with_point_cell(digits_of(number, places)).size());
    work.caption += (work.caption.empty() ? "" : " " + sign + " ") + decimal_text(number);
  }
  work.columns = widest + 2;
  for (const Number& number : numbers) {
    work.rows.push_back(right_aligned(with_point_cell(digits_of(number, places)), work.columns));
  }
  if (numbers.size() > 1) work.rows.back().front() = sign;
  work.rules.push_back({work.rows.size() - 1, 0, work.columns});
  work.rows.push_back(right_aligned(below, work.columns));
  return work;
}

/// Long division while it is written: one column for each digit of the dividend and one for its point.
class Division {
 public:
  Division(const Digits& dividend, const Integer& divisor, std::size_t places) : divisor_(divisor) {
    digits_ = dividend.text();
    given_ = digits_.size();
    whole_digits_ = digits_.size() - dividend.places;
    last_ = whole_digits_ + places;
    const std::string beside = divisor.str();
    first_column_ = beside.size() + 2;
    divide(dividend.places > 0);
    write(beside);
  }

  ColumnWork work;

 private:
  struct Written {
    std::size_t row;
    std::size_t end;  ///< index of the last digit
    std::string digits;
    bool taken_off;
  };

  void divide(bool has_point) {
    std::size_t at = 0;
    for (; at < last_; ++at) {
      if (at >= given_ && current_ == 0) break;
      if (at == digits_.size()) digits_ += '0';
      current_ = current_ * 10 + (digits_[at] - '0');
      const Integer digit = current_ / divisor_;
      if (digit > 0 || !quotient_.empty() || at + 1 >= whole_digits_) {
        if (quotient_.empty()) quotient_from_ = at;
        quotient_ += digit.str();
      }
      if (digit > 0) take_off(digit, at);
    }
    if (!written_.empty()) add_row(at - 1, current_.str(), false);
    has_point_ = has_point || digits_.size() > whole_digits_;
  }

  void take_off(const Integer& digit, std::size_t at) {
    const std::string before = current_.str();
    if (!written_.empty()) add_row(at, before, false);
    const Integer product = digit * divisor_;
    add_row(at, product.str(), true);
    lengths_.push_back(before.size());
    current_ -= product;
  }

  void add_row(std::size_t end, const std::string& digits, bool taken_off) {
    written_.push_back({written_.size() + 2, end, digits, taken_off});
  }

  /// Column of a digit of the dividend, the point counted.
  [[nodiscard]] std::size_t column(std::size_t digit) const {
    return first_column_ + digit + (has_point_ && digit >= whole_digits_ ? 1 : 0);
  }

  void put(Cells& row, std::size_t first_digit, const std::string& digits) const {
    for (std::size_t i = 0; i < digits.size(); ++i) row[column(first_digit + i)] = std::string(1, digits[i]);
  }

  void write(const std::string& beside) {
    work.columns = column(digits_.size() - 1) + 1;
    work.rows.assign(2, Cells(work.columns));
    put(work.rows[0], quotient_from_, quotient_);
    if (has_point_ && quotient_from_ + quotient_.size() > whole_digits_) {
      work.rows[0][first_column_ + whole_digits_] = ".";
    }
    work.rules.push_back({0, first_column_, work.columns});
    for (std::size_t i = 0; i < beside.size(); ++i) work.rows[1][i] = std::string(1, beside[i]);
    work.rows[1][beside.size()] = ")";
    put(work.rows[1], 0, digits_);
    if (has_point_) work.rows[1][first_column_ + whole_digits_] = ".";
    std::size_t subtraction = 0;
    for (const Written& line : written_) {
      Cells row(work.columns);
      const std::size_t first = line.end + 1 - line.digits.size();
      put(row, first, line.digits);
      if (line.taken_off) {
        const std::size_t from = column(line.end + 1 - lengths_[subtraction++]);
        row[sign_column(from)] = "−";
        work.rules.push_back({line.row, from, column(line.end) + 1});
      }
      work.rows.push_back(std::move(row));
    }
  }

  /// The column before, which is not the point's.
  [[nodiscard]] std::size_t sign_column(std::size_t from) const {
    const bool is_point = has_point_ && from == first_column_ + whole_digits_ + 1;
    return from - (is_point ? 2 : 1);
  }

  Integer divisor_;
  std::string digits_;
  std::size_t whole_digits_ = 0;
  std::size_t last_ = 0;   ///< digits that are divided at most
  std::size_t given_ = 0;  ///< digits before zeros were written behind them
  std::size_t first_column_ = 0;
  bool has_point_ = false;
  Integer current_ = 0;
  std::string quotient_;
  std::size_t quotient_from_ = 0;
  std::vector<Written> written_;
  std::vector<std::size_t> lengths_;  ///< digits of what each product is taken off from
};

std::string without_trailing_spaces(std::string line) {
  line.erase(line.find_last_not_of(' ') + 1);
  return line;
}

bool has_point_beside(const std::string& cell) { return cell.size() > 1 && cell.back() == '.'; }

// Rows end under each other. A point beside a digit would leave a gap in the rows above and below, so each of them is
// written without one, as by hand: the signs stand where the longest row lets them.
std::vector<std::string> rows_in_text(const ColumnWork& work) {
  std::vector<std::string> signs;
  std::vector<std::string> numbers;
  std::size_t widest = 0;
  for (const Cells& row : work.rows) {
    signs.push_back(row.front().empty() ? " " : row.front());
    numbers.push_back(std::accumulate(row.begin() + 1, row.end(), std::string()));
    widest = std::max(widest, character_count(numbers.back()));
  }
  std::vector<std::string> lines;
  for (std::size_t r = 0; r < work.rows.size(); ++r) {
    lines.push_back(signs[r] + std::string(widest + 1 - character_count(numbers[r]), ' ') + numbers[r]);
  }
  return lines;
}

std::string text_in_rows(const ColumnWork& work) {
  const std::vector<std::string> lines = rows_in_text(work);
  std::string text;
  for (std::size_t r = 0; r < lines.size(); ++r) {
    text += lines[r] + "\n";
    for (const ColumnWork::Rule& rule : work.rules) {
      if (rule.row == r) text += std::string(character_count(lines[r]), '-') + "\n";
    }
  }
  return text;
}

std::vector<std::size_t> text_widths(const ColumnWork& work) {
  std::vector<std::size_t> widths(work.columns, 1);
  for (const Cells& row : work.rows) {
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], character_count(row[i]));
    }
  }
  return widths;
}

}  // namespace

ColumnWork column_addition(const std::vector<Number>& addends) {
  ensure(!addends.empty(), "a column addition needs an addend");
  const Number sum = std::accumulate(addends.begin(), addends.end(), Number());
  ColumnWork work = lined_up(addends, sum, "+");
  const std::vector<Cells> above(work.rows.begin(), work.rows.end() - 1);
  if (auto row = carries(above, work.columns)) {
    work.rows.insert(work.rows.begin(), std::move(*row));
    ++work.rules.front().row;
  }
  return work;
}

ColumnWork column_subtraction(const Number& a, const Number& b) {
  ensure(a >= b, "a column subtraction takes the smaller number off the greater");
  return lined_up({a, b}, a - b, "−");
}

ColumnWork long_multiplication(const Number& a, const Number& b) {
  const Digits above = digits_of(a);
  const Digits below = digits_of(b);
  const Digits result{above.value * below.value, above.places + below.places};
  std::vector<Digits> partials;
  const std::string digits = below.text();
  for (std::size_t i = digits.size(); i-- > 0;) {
    const Integer digit = digits[i] - '0';
    if (digit != 0) partials.push_back({above.value * digit * ten_to_the(digits.size() - 1 - i), 0});
  }
  std::vector<Cells> rows{with_point_beside(above), with_point_beside(below)};
  if (partials.size() > 1) {
    for (const Digits& partial : partials) rows.push_back(with_point_beside(partial));
  }
  rows.push_back(with_point_beside(result));
  ColumnWork work;
  for (const Cells& cells : rows) work.columns = std::max(work.columns, cells.size() + 2);
  for (const Cells& cells : rows) work.rows.push_back(right_aligned(cells, work.columns));
  work.rows[1].front() = "×";
  work.rules.push_back({1, 0, work.columns});
  if (partials.size() > 1) {
    work.rows[work.rows.size() - 2].front() = "+";
    work.rules.push_back({work.rows.size() - 2, 0, work.columns});
  }
  work.caption = decimal_text(a) + " × " + decimal_text(b);
  return work;
}

ColumnWork long_division(const Number& a, const Number& b, int places) {
  ensure(b.sign() > 0 && places >= 0, "a long division needs a divisor above zero");
  const std::size_t shift = places_of(b);
  const Number by = make_exact(Rational(ten_to_the(shift)));
  const Number dividend = a * by;
  const Integer divisor = mp::numerator(*to_rational(b * by));
  ColumnWork work = Division(digits_of(dividend), divisor, static_cast<std::size_t>(places)).work;
  work.caption = decimal_text(a) + " ÷ " + decimal_text(b);
  if (shift > 0) work.caption += " = " + decimal_text(dividend) + " ÷ " + divisor.str();
  return work;
}

std::string plain_text(const ColumnWork& work) {
  const bool spreads = std::any_of(work.rows.begin(), work.rows.end(), [](const Cells& row) {
    return std::any_of(row.begin(), row.end(), has_point_beside);
  });
  if (spreads) {
    return text_in_rows(work);
  }
  const std::vector<std::size_t> widths = text_widths(work);
  std::string text;
  for (std::size_t r = 0; r < work.rows.size(); ++r) {
    std::string line;
    for (std::size_t i = 0; i < work.columns; ++i) {
      const std::string& cell = work.rows[r][i];
      line += cell + std::string(widths[i] - character_count(cell), ' ');
    }
    text += without_trailing_spaces(line) + "\n";
    for (const ColumnWork::Rule& rule : work.rules) {
      if (rule.row != r) continue;
      const auto width = [&](std::size_t from, std::size_t to) {
        const auto at = [&](std::size_t i) { return widths.begin() + static_cast<std::ptrdiff_t>(i); };
        return std::accumulate(at(from), at(to), std::size_t{0});
      };
      text += std::string(width(0, rule.from), ' ') + std::string(width(rule.from, rule.to), '-') + "\n";
    }
  }
  return text;
}

}  // namespace fw::exact
