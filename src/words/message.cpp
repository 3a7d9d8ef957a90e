#include "words/message.hpp"

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::words {

Message::Message(std::string text) : Message("{text}", {{"text", std::move(text)}}) {}

Message::Message(Pattern pattern, std::initializer_list<Argument> arguments)
    : pattern_(pattern.text()),
      arguments_(arguments.size() == 0 ? nullptr : std::make_shared<const std::vector<Argument>>(arguments)) {
  for (const Argument& argument : arguments) {
    bool is_used = false;
    for (std::string_view rest = pattern_; !rest.empty() && !is_used;) {
      const PatternPiece piece = next_piece(rest);
      is_used = piece.is_place && (piece.text == argument.name || piece.count == argument.name);
    }
    ensure(is_used, "a message has an argument that its pattern has no place for");
  }
  const auto has = [&](std::string_view name) {
    return std::any_of(arguments.begin(), arguments.end(), [&](const Argument& one) { return name == one.name; });
  };
  for (std::string_view rest = pattern_; !rest.empty();) {
    const PatternPiece piece = next_piece(rest);
    ensure(!piece.is_place || (has(piece.text) && (piece.count.empty() || has(piece.count))),
           "a place of a message has no argument");
  }
}

Message Message::with_arguments(std::vector<Argument> arguments) const {
  Message changed = *this;
  changed.arguments_ = std::make_shared<const std::vector<Argument>>(std::move(arguments));
  return changed;
}

const std::vector<Argument>& Message::arguments() const {
  static const std::vector<Argument> none;
  return arguments_ ? *arguments_ : none;
}

bool operator==(const Message& a, const Message& b) {
  return a.pattern_ == b.pattern_ && a.arguments() == b.arguments();
}

std::vector<Noun> nouns(const std::vector<std::string>& names) {
  std::vector<Noun> all;
  all.reserve(names.size());
  for (const std::string& name : names) {
    all.push_back({name});
  }
  return all;
}

}  // namespace fw::words
