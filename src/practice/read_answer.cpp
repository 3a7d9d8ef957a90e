#include "practice/read_answer.hpp"

#include <algorithm>
#include <array>
#include <cctype>
#include <cmath>
#include <vector>

#include "base/utf8.hpp"
#include "exact/print_number.hpp"
#include "units/quantity.hpp"

namespace fw::practice {
namespace {

constexpr double smallest_share = 1e-9;     // of a value: nearer numbers are equal
constexpr double least_rounded_whole = 99;  // below it, a whole number says too little of a decimal

std::string_view trimmed(std::string_view text) {
  const auto is_space = [](char c) { return std::isspace(static_cast<unsigned char>(c)) != 0; };
  while (!text.empty() && is_space(text.front())) {
    text.remove_prefix(1);
  }
  while (!text.empty() && (is_space(text.back()) || text.back() == '.')) {
    text.remove_suffix(1);
  }
  return text;
}

// "S = 286", "about 20.8", "≈ 20.8": what stands before the number is no part of it.
std::string_view without_lead(std::string_view text) {
  for (const std::string_view lead : {"=", "≈"}) {
    const std::size_t at = text.rfind(lead);
    if (at != std::string_view::npos) {
      text.remove_prefix(at + lead.size());
    }
  }
  text = trimmed(text);
  for (const std::string_view word : {"about ", "ca. ", "~"}) {
    if (text.substr(0, word.size()) == word) {
      text.remove_prefix(word.size());
    }
  }
  return trimmed(text);
}

bool is_same_letter(char a, char b) {
  return std::tolower(static_cast<unsigned char>(a)) == std::tolower(static_cast<unsigned char>(b));
}

bool begins_alike(std::string_view word, std::string_view item) {
  const std::size_t size = std::min({word.size(), item.size(), std::size_t{3}});
  return size > 0 &&
         std::equal(word.begin(), word.begin() + static_cast<std::ptrdiff_t>(size), item.begin(), is_same_letter);
}

// "beads" after a prompt that speaks of a bead: a word of the prompt, but for what comes after its stem.
bool is_noun_of(std::string_view prompt, std::string_view word) {
  constexpr std::size_t least = 3;
  const auto end = std::find_if_not(word.begin(), word.end(), is_ascii_letter);
  const auto length = static_cast<std::size_t>(end - word.begin());
  if (length < least) {
    return false;
  }
  const std::string_view stem = word.substr(0, std::max(least, length - std::min<std::size_t>(length, 2)));
  for (auto at = prompt.begin(); at != prompt.end();) {
    const auto begin = std::find_if(at, prompt.end(), is_ascii_letter);
    at = std::find_if_not(begin, prompt.end(), is_ascii_letter);
    if (static_cast<std::size_t>(at - begin) >= stem.size() &&
        std::equal(stem.begin(), stem.end(), begin, is_same_letter)) {
      return true;
    }
  }
  return false;
}

// "five" is 5; text that begins with no such word stays.
std::string with_digits(std::string_view text) {
  constexpr std::array<std::string_view, 21> words = {
      "zero",     "one",     "two",     "three",     "four",     "five",     "six",
      "seven",    "eight",   "nine",    "ten",       "eleven",   "twelve",   "thirteen",
      "fourteen", "fifteen", "sixteen", "seventeen", "eighteen", "nineteen", "twenty"};
  const auto end = std::find_if_not(text.begin(), text.end(), is_ascii_letter);
  const auto length = static_cast<std::size_t>(end - text.begin());
  for (std::size_t number = 0; number < words.size(); ++number) {
    if (words[number].size() == length && std::equal(text.begin(), end, words[number].begin(), is_same_letter)) {
      return std::to_string(number) + std::string(text.substr(length));
    }
  }
  return std::string(text);
}

// What a plain count may be followed by.
bool is_counted(std::string_view word) {
  const std::string_view counted[] = {"faces", "edges", "vertices", "corners", "units"};
  return std::any_of(std::begin(counted), std::end(counted),
                     [&](std::string_view one) { return begins_alike(word, one); });
}

std::string_view word_after_number(std::string_view text) {
  const auto letter = std::find_if(text.begin(), text.end(), is_ascii_letter);
  return text.substr(static_cast<std::size_t>(letter - text.begin()));
}

// The number before the first letter that is none of a number's: "4" of "4 rolls".
std::optional<exact::Written> number_before_word(std::string_view text, std::string_view& word) {
  word = word_after_number(text);
  const auto number = exact::parse_number(trimmed(text.substr(0, text.size() - word.size())));
  return number && !word.empty() ? std::optional(*number) : std::nullopt;
}

double half_of_last_place(const exact::Written& number) { return 0.5 * std::pow(10.0, -number.places); }

}  // namespace

Result<TypedAnswer, words::Message> read_answer(std::string_view typed, std::string_view item,
                                                std::string_view prompt) {
  TypedAnswer answer;
  const std::string whole = with_digits(without_lead(trimmed(typed)));
  std::string_view text = whole;
  for (const std::string_view sign : {"$", "£", "€"}) {
    if (text.substr(0, sign.size()) == sign) {
      answer.is_money = true;
      text = trimmed(text.substr(sign.size()));
    }
  }
  const auto quantity = units::parse_quantity(text);
  if (quantity) {
    answer.number = quantity->number;
    // A cup that is filled is an item, though it is a unit elsewhere.
    const bool is_item = begins_alike(word_after_number(text), item);
    answer.unit = quantity->has_unit && !is_item ? std::optional(quantity->unit) : std::nullopt;
    return answer;
  }
  std::string_view word;
  const std::optional<exact::Written> number = number_before_word(text, word);
  const bool is_money = begins_alike(word, "dollars") || begins_alike(word, "bucks");
  if (number && (is_money || begins_alike(word, item) || is_counted(word) || is_noun_of(prompt, word))) {
    answer.number = *number;
    answer.is_money = answer.is_money || is_money;
    return answer;
  }
  return failure(words::Message(quantity.error().message));
}

bool stands_for(const exact::Written& number, const exact::Number& value) {
  constexpr int exact_places = 2;
  return number.value == value ||
         (number.places > 0 && !exact::decimals_needed(value, exact_places) && stands_for(number, value.to_double()));
}

bool stands_for(const exact::Written& number, double value) {
  const double typed = number.value.to_double();
  const double apart = std::abs(typed - value);
  const double least = smallest_share * std::max(std::abs(value), std::abs(typed));
  if (apart <= least) {
    return true;
  }
  const double half = half_of_last_place(number);
  const bool is_rounded = !number.is_fraction && (number.places > 0 || std::abs(value) >= least_rounded_whole);
  // A value that ends within the places that are written has no other decimal that stands for it.
  const double in_places = value / (2 * half);
  const bool ends = std::abs(in_places - std::round(in_places)) <= smallest_share * std::max(1.0, std::abs(in_places));
  return is_rounded && !ends && !is_cut_short(number, value) && apart <= half * (1 + smallest_share) + least;
}

bool is_cut_short(const exact::Written& number, double value) {
  constexpr double small = 0.1;  // below it exact::shown() leaves two digits too
  constexpr double two_digits = 9.5;
  const double typed = number.value.to_double();
  const double half = half_of_last_place(number);
  return !number.is_fraction && std::abs(value) < small && typed != value &&
         std::abs(typed) / (2 * half) < two_digits && std::abs(typed - value) <= half * (1 + smallest_share);
}

}  // namespace fw::practice
