#include "base/utf8.hpp"
#include "exact/read_number.hpp"

// What a reader of numbers sees where it stands, and what it takes from there.
namespace fw::exact {

void NumberReader::skip_spaces() {
  for (std::size_t space = space_at(at_); space > 0; space = space_at(at_)) {
    at_ += space;
  }
}

std::size_t NumberReader::space_at(std::size_t at) const {
  for (const std::string_view space : {" ", "\t", "\n", "\r", "\u00A0", "\u202F", "\u2009"}) {
    if (stands_at(at, space)) {
      return space.size();
    }
  }
  return 0;
}

std::size_t NumberReader::digits_at(std::size_t at) const {
  std::size_t count = 0;
  while (at + count < end_ && is_ascii_digit(text_[at + count])) {
    ++count;
  }
  return count;
}

bool NumberReader::stands_at(std::size_t at, std::string_view word) const {
  return at < end_ && text_.substr(at, end_ - at).substr(0, word.size()) == word;
}

bool NumberReader::take(std::string_view word) {
  const bool there = stands_at(at_, word);
  at_ += there ? word.size() : 0;
  return there;
}

bool NumberReader::take_any(std::initializer_list<std::string_view> words) {
  for (const std::string_view word : words) {
    if (take(word)) {
      return true;
    }
  }
  return false;
}

std::string NumberReader::take_digits() {
  const std::size_t count = digits_at(at_);
  std::string digits(text_.substr(at_, count));
  at_ += count;
  digits_read_ += count;
  return digits;
}

bool NumberReader::symbol_follows() const {
  for (const std::string_view word : {"√", "sqrt", "π", "pi", "Pi", "PI", "("}) {
    if (stands_at(at_, word)) {
      return true;
    }
  }
  return false;
}

std::nullopt_t NumberReader::fail(std::size_t offset, std::string message) {
  if (!error_) {
    error_ = NumberError{offset, std::move(message)};
  }
  return std::nullopt;
}

std::string NumberReader::found_at(std::size_t at) const {
  if (at >= end_) {
    return "the end";
  }
  std::size_t length = 1;
  while (at + length < end_ && !starts_character(text_[at + length])) {
    ++length;
  }
  return "“" + std::string(text_.substr(at, length)) + "”";
}

}  // namespace fw::exact
