// Whatever numbers a lesson holds, everything that is told of it is told, or refused with a reason: read, solid,
// measure, explain, nets, labels. Damage is done to numbers first of all; what is no number is for read_lesson_fuzz.
#include <array>
#include <cctype>
#include <cstdint>
#include <cstring>

#include "fuzz/tell_lesson.hpp"

extern "C" std::size_t LLVMFuzzerMutate(std::uint8_t* data, std::size_t size, std::size_t max_size);

namespace {

constexpr std::array<std::string_view, 18> numbers{"0",      "1",      "2",     "0.001", "0.000001", "1000000",
                                                   "999999", "10.01",  "5.99",  "1/3",   "7 1/2",    "√2",
                                                   "3√5",    "0.0005", "12345", "1e9",   "1000",     "-3"};

/// The whole number at or behind a place: where it begins and ends.
std::pair<std::size_t, std::size_t> number_near(std::string_view text, std::size_t at) {
  const auto is_digit = [&](std::size_t i) { return std::isdigit(static_cast<unsigned char>(text[i])) != 0; };
  while (at < text.size() && !is_digit(at)) {
    ++at;
  }
  std::size_t begin = at;
  while (begin > 0 && (is_digit(begin - 1) || text[begin - 1] == '.')) {
    --begin;
  }
  while (at < text.size() && (is_digit(at) || text[at] == '.')) {
    ++at;
  }
  return {begin, at};
}

}  // namespace

extern "C" std::size_t LLVMFuzzerCustomMutator(std::uint8_t* data, std::size_t size, std::size_t max_size,
                                               unsigned seed) {
  if (seed % 8 == 0 || size == 0) {
    return LLVMFuzzerMutate(data, size, max_size);
  }
  std::string text(reinterpret_cast<const char*>(data), size);
  const auto [begin, end] = number_near(text, seed / 8 % size);
  text.replace(begin, end - begin, numbers[seed / 8 / size % numbers.size()]);
  const std::size_t kept = text.size() < max_size ? text.size() : max_size;
  std::memcpy(data, text.data(), kept);
  return kept;
}

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  (void)fw::test::tell_lesson({reinterpret_cast<const char*>(data), size});
  return 0;
}
