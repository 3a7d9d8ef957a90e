#include "practice/choices.hpp"

#include <algorithm>
#include <cctype>

#include "practice/choice_parts.hpp"

namespace fw::practice {
namespace {

bool begins_with(const std::string& text, const std::string& word) { return text.rfind(word, 0) == 0; }

}  // namespace

std::string letter(std::size_t option) { return std::string(1, static_cast<char>('A' + option)); }

Choice right_choice(words::Message text, words::Message message) {
  return {std::move(text), true, "", std::move(message), {}};
}

Choice wrong_choice(words::Message text, std::string cause, words::Message message) {
  return {std::move(text), false, std::move(cause), std::move(message), {}};
}

std::string lowered(std::string_view text) {
  std::string low;
  for (const char c : text) {
    low += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  const std::size_t first = low.find_first_not_of(" .\t");
  const std::size_t last = low.find_last_not_of(" .!\t");
  return first == std::string::npos ? "" : low.substr(first, last - first + 1);
}

std::optional<std::size_t> option_named(const std::vector<Choice>& choices, std::string_view typed) {
  const std::string low = lowered(typed);
  for (std::size_t i = 0; i < choices.size(); ++i) {
    if (low == lowered(letter(i)) || low == lowered(said(choices[i].text))) {
      return i;
    }
  }
  return std::nullopt;
}

std::optional<bool> yes_or_no(const std::string& low) {
  for (const char* no : {"no", "impossible", "false", "it cannot", "cannot", "can't"}) {
    if (begins_with(low, no)) {
      return false;
    }
  }
  for (const char* yes : {"yes", "possible", "true", "it can", "can"}) {
    if (begins_with(low, yes)) {
      return true;
    }
  }
  return low == "y" ? std::optional(true) : low == "n" ? std::optional(false) : std::nullopt;
}

std::vector<TypedAnswer> quantities_in(std::string text, const std::vector<std::string>& signs) {
  for (const std::string& sign : signs) {
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign)) {
      text.replace(at, sign.size(), ";");
    }
  }
  std::vector<TypedAnswer> all;
  for (std::size_t start = 0; start <= text.size();) {
    const std::size_t end = std::min(text.find(';', start), text.size());
    if (const auto read = read_answer(text.substr(start, end - start))) {
      all.push_back(*read);
    }
    start = end + 1;
  }
  return all;
}

}  // namespace fw::practice
