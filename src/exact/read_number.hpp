#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

#include "exact/number_tree.hpp"

// The reader behind parse_number and number_tree. Only sources of this room include this header.
namespace fw::exact {

/// Reads, with spaces anywhere between the parts:
///   sum     = [sign] product {sign product}      "12 + 3√5"; not of plain numbers alone
///   product = factor {[×] symbol} [/ divisor]    "3√2", "5√3/2", "130π", "(15 + 7√5)/4", "3/(2π)"
///   factor  = number | symbol
///   symbol  = √ factor | π [power] | ( sum )
///   divisor = number | symbol
///   number  = decimal | whole fraction | fraction
/// By itself, "1-1/2" is one and a half, and "5." is 5; both are kept as "1 1/2" and "5".
class NumberReader {
 public:
  /// What is typed is kept short; what is printed of an exact number may be long.
  enum class Length { Limited, Any };
  explicit NumberReader(std::string_view text, Length length = Length::Limited);
  struct Read {
    Written written;
    NumberTree tree;
  };
  [[nodiscard]] Result<Read, NumberError> read();
  [[nodiscard]] Result<LeadingNumber, NumberError> read_leading(Stroke stroke);

 private:
  struct Part {
    Number value;
    NumberTree tree;
    bool is_plain = true;  ///< without root, π or parentheses
    bool is_fraction = false;
    int places = 0;
  };

  std::optional<Part> sum();
  std::optional<Part> product();
  std::optional<Part> symbol();
  std::optional<Part> root();
  std::optional<Part> pi_power();
  std::optional<Part> divided(Part above);
  std::optional<Part> number();
  std::optional<Part> with_fraction(bool is_whole, Part value);
  bool groups_by_comma(std::string& digits);
  bool groups_by_space(std::string& digits);
  bool decimals(std::string& digits, int& places, bool comma_groups);
  [[nodiscard]] bool hyphenated_fraction_follows() const;

  void skip_spaces();
  [[nodiscard]] std::size_t space_at(std::size_t at) const;   ///< its length in bytes, or 0
  [[nodiscard]] std::size_t digits_at(std::size_t at) const;  ///< how many stand there
  [[nodiscard]] bool stands_at(std::size_t at, std::string_view word) const;
  bool take(std::string_view word);
  bool take_any(std::initializer_list<std::string_view> words);
  std::string take_digits();
  [[nodiscard]] bool symbol_follows() const;
  std::nullopt_t fail(std::size_t offset, std::string message);
  [[nodiscard]] std::string found_at(std::size_t at) const;

  std::string_view text_;
  bool is_limited_;
  std::size_t first_ = 0;  ///< where the number begins
  std::size_t at_ = 0;
  std::size_t end_ = 0;
  std::size_t digits_read_ = 0;
  std::optional<std::size_t> ruler_hyphen_;  ///< of "1-1/2"
  int depth_ = 0;
  int roots_ = 0;
  std::optional<NumberError> error_;
};

}  // namespace fw::exact
