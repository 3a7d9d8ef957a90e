#include "practice/read_choice.hpp"

#include <algorithm>
#include <cctype>
#include <string>

namespace fw::practice {

std::optional<std::vector<std::size_t>> read_letters(std::string_view typed, std::size_t count) {
  std::vector<std::size_t> chosen;
  std::string word;
  const auto is_letter = [count](char c) { return c >= 'a' && c < static_cast<char>('a' + count); };
  const auto take = [&]() {
    const bool is_number = word.size() == 1 && word[0] >= '1' && word[0] < static_cast<char>('1' + count);
    const bool is_filler = word.empty() || word == "and" || word == "edge" || word == "edges" || word == "net";
    const bool is_letters = !is_filler && std::all_of(word.begin(), word.end(), is_letter);  // "ac" is a and c
    for (const char c : is_letters || is_number ? word : std::string()) {
      chosen.push_back(static_cast<std::size_t>(c - (is_letters ? 'a' : '1')));
    }
    word.clear();
    return is_letters || is_number || is_filler;
  };
  bool is_read = true;
  for (const char c : typed) {
    if (std::isalnum(static_cast<unsigned char>(c)) != 0) {
      word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    } else {
      is_read = take() && is_read;
    }
  }
  is_read = take() && is_read;
  std::sort(chosen.begin(), chosen.end());
  chosen.erase(std::unique(chosen.begin(), chosen.end()), chosen.end());
  return is_read && !chosen.empty() ? std::optional(chosen) : std::nullopt;
}

std::optional<bool> read_yes_no(std::string_view typed) {
  std::string word;
  for (const char c : typed) {
    if (std::isalpha(static_cast<unsigned char>(c)) != 0) {
      word += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
    } else if (!word.empty()) {
      break;
    }
  }
  const bool is_yes = word == "yes" || word == "y";
  return is_yes || word == "no" || word == "n" ? std::optional(is_yes) : std::nullopt;
}

}  // namespace fw::practice
