#include "words/english.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace fw::words::english {
namespace {

bool ends_with(std::string_view word, std::string_view end) {
  return word.size() >= end.size() && word.substr(word.size() - end.size()) == end;
}

bool is_vowel(char c) { return std::string_view("aeiouAEIOU").find(c) != std::string_view::npos; }

// Things that come in packs, and units, that do not follow the rules.
constexpr std::array<std::pair<std::string_view, std::string_view>, 7> irregular{{{"loaf", "loaves"},
                                                                                  {"leaf", "leaves"},
                                                                                  {"shelf", "shelves"},
                                                                                  {"half", "halves"},
                                                                                  {"foot", "feet"},
                                                                                  {"knife", "knives"},
                                                                                  {"vertex", "vertices"}}};

std::string plural_of_word(const std::string& word) {
  for (const auto& [single, several] : irregular) {
    if (ends_with(word, single)) {
      return word.substr(0, word.size() - single.size()) + std::string(several);
    }
  }
  for (const std::string_view hiss : {"s", "x", "z", "ch", "sh"}) {
    if (ends_with(word, hiss)) {
      return word + "es";
    }
  }
  if (word.size() >= 2 && word.back() == 'y' && !is_vowel(word[word.size() - 2])) {
    return word.substr(0, word.size() - 1) + "ies";
  }
  return word + "s";
}

}  // namespace

std::string plural(std::string_view noun) {
  std::size_t head = noun.size();
  for (const std::string_view link : {" of ", " for ", " with ", " in "}) {
    head = std::min(head, noun.find(link));
  }
  return plural_of_word(std::string(noun.substr(0, head))) + std::string(noun.substr(head));
}

std::string with_article(std::string_view noun) {
  return (!noun.empty() && is_vowel(noun.front()) ? "an " : "a ") + std::string(noun);
}

}  // namespace fw::words::english
