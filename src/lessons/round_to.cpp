#include "lessons/round_to.hpp"

#include <algorithm>

namespace fw::lessons {

using words::message;

const RoundTo* round_to_places(int places) {
  const auto row =
      std::find_if(round_to.begin(), round_to.end(), [&](const RoundTo& one) { return one.places == places; });
  return row == round_to.end() ? nullptr : &*row;
}

std::optional<int> read_round_to(const JsonNode& problem, const Context& context) {
  const JsonNode* node = problem.find("round_to");
  const std::string* text = node == nullptr ? nullptr : text_at(*node, message("what to round to"), context);
  if (text == nullptr) {
    return std::nullopt;
  }
  std::vector<std::string> keys;
  for (const RoundTo& one : round_to) {
    if (one.key == *text) {
      return one.places;
    }
    keys.emplace_back("\"" + std::string(one.key) + "\"");
  }
  context.fault(*node,
                message("\"round_to\" is {keys:or}; found {found}", {{"keys", keys}, {"found", found_text(*node)}}));
  return std::nullopt;
}

std::optional<int> round_to_in(std::string_view prompt) {
  for (const RoundTo& one : round_to) {
    constexpr std::string_view before = "nearest ";
    for (std::size_t at = prompt.find(before); at != std::string_view::npos; at = prompt.find(before, at + 1)) {
      if (prompt.substr(at + before.size()).substr(0, one.place.size()) == one.place) {
        return one.places;
      }
    }
  }
  return std::nullopt;
}

}  // namespace fw::lessons
