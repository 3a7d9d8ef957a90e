#pragma once

#include <cstddef>
#include <initializer_list>
#include <memory>
#include <string>
#include <string_view>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "words/pattern.hpp"

namespace fw::words {

/// The name of a thing in the singular, which has an article and a plural: "slant height", "box of candles".
struct Noun {
  std::string name;
  friend bool operator==(const Noun&, const Noun&) = default;
};

/// A number with its unit: "5.2" and "cm".
struct Amount {
  std::string number;
  std::string unit;
  friend bool operator==(const Amount&, const Amount&) = default;
};

struct Argument;

/// What is to be said, as data: the English sentence as a pattern, and what stands in its places. `said` makes the text
/// of it, in English or in the language of a Lexicon.
class Message {
 public:
  Message() = default;  ///< says nothing
  /// What is no sentence of ours, as a prompt of a lesson; said as it is.
  explicit Message(std::string text);
  /// Requires: each place has an argument, and each argument a place.
  Message(Pattern pattern, std::initializer_list<Argument> arguments);

  [[nodiscard]] std::string_view pattern() const { return pattern_; }
  [[nodiscard]] const std::vector<Argument>& arguments() const;
  [[nodiscard]] bool empty() const { return pattern_.empty(); }
  [[nodiscard]] Message with_arguments(std::vector<Argument> arguments) const;  ///< of the same names
  friend bool operator==(const Message& a, const Message& b);

 private:
  std::string_view pattern_;                                // of a literal
  std::shared_ptr<const std::vector<Argument>> arguments_;  // null: none
};

/// What stands in a place: a text that is the same in every language, a count, a noun, a number with its unit, another
/// message, or a list of these.
class Value {
 public:
  using List = std::vector<Value>;
  Value(std::string text) : content_(std::move(text)) {}
  Value(const char* text) : content_(std::string(text)) {}
  template <class T>
  requires(std::is_integral_v<T> && !std::is_same_v<T, bool> && !std::is_same_v<T, char>) Value(T count)
      : content_(static_cast<long long>(count)) {}
  Value(Noun noun) : content_(std::move(noun)) {}
  Value(Amount amount) : content_(std::move(amount)) {}
  Value(Message message) : content_(std::move(message)) {}
  template <class T>
  Value(const std::vector<T>& list) : content_(List(list.begin(), list.end())) {}

  using Content = std::variant<std::string, long long, Noun, Amount, Message, List>;
  [[nodiscard]] const Content& content() const { return content_; }
  friend bool operator==(const Value& a, const Value& b) { return a.content_ == b.content_; }

 private:
  Content content_;
};

struct Argument {
  const char* name;
  Value value;
  friend bool operator==(const Argument& a, const Argument& b) {
    return std::string_view(a.name) == b.name && a.value == b.value;
  }
};

/// message("Subtract {amount} from both sides.", {{"amount", amount}}). The pattern stands in the call itself, so that
/// a list of all of them can be made from the sources.
[[nodiscard]] inline Message message(Pattern pattern, std::initializer_list<Argument> arguments = {}) {
  return {pattern, arguments};
}

/// The text of a message in English.
[[nodiscard]] std::string said(const Message& message);

/// "Multiply. Turn the equation round.": whole sentences, with a blank between them.
[[nodiscard]] inline Message one_after_another(const std::vector<Message>& sentences) {
  return sentences.empty() ? Message() : message("{sentences:then}", {{"sentences", sentences}});
}

/// The first of sentences that stand one after another; of any other message all of it.
[[nodiscard]] Message first_sentence(const Message& message);

/// The message with `gap` for each argument, at any depth, that is said as `hidden` in English; of a number with its
/// unit that is hidden alone, the unit stays.
[[nodiscard]] Message with_gap(const Message& message, std::string_view hidden, const std::string& gap);

/// A copy of a list's items as nouns, to be said with articles, in the plural, or by a language's own words.
[[nodiscard]] std::vector<Noun> nouns(const std::vector<std::string>& names);

}  // namespace fw::words
