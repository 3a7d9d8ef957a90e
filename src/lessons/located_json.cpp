#include "lessons/located_json.hpp"

#include <nlohmann/json.hpp>
#include <optional>
#include <set>

#include "base/utf8.hpp"

namespace fw::lessons {
namespace {

using Kind = JsonNode::Kind;
using words::Message;
using words::message;

// Walks the text once. The first break of the grammar ends the walk: what follows it would be guesses.
class Scanner {
 public:
  Scanner(std::string_view text, std::size_t nesting) : text_(text), nesting_(nesting) {}

  std::optional<JsonNode> document() {
    if (text_.substr(0, 3) == "\xEF\xBB\xBF") {
      at_ = 3;
    }
    skip_space();
    if (at_ == text_.size()) {
      return stop(message("the file is empty: a lesson starts with {open} and ends with {close}",
                          {{"open", "{"}, {"close", "}"}}));
    }
    std::optional<JsonNode> node = value(0);
    if (!node) {
      return std::nullopt;
    }
    skip_space();
    if (at_ != text_.size()) {
      return stop(
          message("the lesson ends before this, so nothing can come after it; found {found}", {{"found", found()}}));
    }
    return node;
  }

  [[nodiscard]] std::vector<JsonFault> faults() { return std::move(faults_); }

 private:
  std::nullopt_t stop(Message fault) {
    faults_.push_back({at_, std::move(fault)});
    return std::nullopt;
  }

  void skip_space() {
    while (at_ < text_.size() && std::string_view(" \t\r\n").find(text_[at_]) != std::string_view::npos) {
      ++at_;
    }
  }

  [[nodiscard]] bool next_is(char c) const { return at_ < text_.size() && text_[at_] == c; }

  // What stands here, for a message: one character, or a whole word.
  [[nodiscard]] Message found() const {
    if (at_ >= text_.size()) {
      return message("the end of the file");
    }
    std::size_t end = at_;
    const auto is_word = [](char c) { return is_ascii_letter(c) || is_ascii_digit(c); };
    while (end < text_.size() && is_word(text_[end])) {
      ++end;
    }
    if (end == at_) {
      for (++end; end < text_.size() && !starts_character(text_[end]);) {
        ++end;
      }
    }
    const std::string_view word = text_.substr(at_, end - at_);
    return word == "\"" ? message("a quotation mark") : Message(in_quotes(word));
  }

  std::optional<JsonNode> value(std::size_t depth) {
    if (at_ >= text_.size()) {
      return stop(message("a value belongs here, but the file ends"));
    }
    const char c = text_[at_];
    if (c == '{' || c == '[') {
      if (depth == nesting_) {
        return stop(message("lists and objects are nested more than {count} deep here; a lesson needs far fewer",
                            {{"count", nesting_}}));
      }
      return c == '{' ? object(depth) : list(depth);
    }
    if (c == '"') {
      return string();
    }
    if (is_ascii_digit(c) || c == '-') {
      return number();
    }
    return word();
  }

  std::optional<JsonNode> word() {
    struct Known {
      std::string_view text;
      Kind kind;
    };
    for (const Known& known : {Known{"true", Kind::Truth}, Known{"false", Kind::Truth}, Known{"null", Kind::Null}}) {
      if (text_.substr(at_, known.text.size()) == known.text) {
        JsonNode node = started(known.kind);
        node.text = known.text;
        at_ += known.text.size();
        return node;
      }
    }
    if (next_is('/')) {
      return stop(message("comments are not part of the format: take this one out"));
    }
    if (next_is('\'')) {
      return stop(message("text stands in double quotation marks, not in single ones"));
    }
    if (next_is('.') || next_is('+')) {
      return stop(message("a number starts with a digit: write 0.5 for .5 and 3 for +3"));
    }
    return stop(message("a value belongs here (text in quotation marks, a number, [ or {brace}); found {found}",
                        {{"brace", "{"}, {"found", found()}}));
  }

  [[nodiscard]] JsonNode started(Kind kind) const {
    JsonNode node;
    node.kind = kind;
    node.offset = at_;
    return node;
  }

  std::optional<JsonNode> number() {
    JsonNode node = started(Kind::Number);
    const std::size_t start = at_;
    at_ += next_is('-') ? 1U : 0U;
    const bool leading_zero = next_is('0');
    const std::size_t whole_digits = digits();
    if (whole_digits == 0) {
      return stop(message("a digit belongs after the minus sign; found {found}", {{"found", found()}}));
    }
    if (leading_zero && whole_digits > 1) {
      at_ = start;
      return stop(message("a number does not start with an extra 0"));
    }
    if (next_is('.')) {
      ++at_;
      if (digits() == 0) {
        return stop(message("a digit belongs after the decimal point; found {found}", {{"found", found()}}));
      }
    }
    if (next_is('e') || next_is('E')) {
      ++at_;
      at_ += next_is('-') || next_is('+') ? 1U : 0U;
      if (digits() == 0) {
        return stop(message("a digit belongs in the exponent; found {found}", {{"found", found()}}));
      }
    }
    node.text = text_.substr(start, at_ - start);
    return node;
  }

  std::size_t digits() {
    const std::size_t start = at_;
    while (at_ < text_.size() && is_ascii_digit(text_[at_])) {
      ++at_;
    }
    return at_ - start;
  }

  std::optional<JsonNode> string() {
    JsonNode node = started(Kind::Text);
    const std::size_t start = at_++;
    bool has_escape = false;
    while (!next_is('"')) {
      if (at_ >= text_.size()) {
        at_ = start;
        return stop(message("this text has no closing quotation mark"));
      }
      if (static_cast<unsigned char>(text_[at_]) < 0x20U) {
        return stop(next_is('\n') || next_is('\r')
                        ? message("the line ends inside a text: close it with a quotation mark, or write \\n for a new "
                                  "line")
                        : message("a control character stands inside a text: write it with \\ (\\t for a tab), or take "
                                  "it out"));
      }
      has_escape = has_escape || next_is('\\');
      at_ += next_is('\\') ? 2U : 1U;
    }
    ++at_;
    if (!has_escape) {
      node.text = text_.substr(start + 1, at_ - start - 2);
      return node;
    }
    const nlohmann::json decoded = nlohmann::json::parse(text_.substr(start, at_ - start), nullptr, false);
    if (!decoded.is_string()) {
      at_ = start;
      return stop(message("this text has a \\ that does not start a JSON character; write \\\\ for the mark itself"));
    }
    node.text = decoded.get<std::string>();
    return node;
  }

  // After an item of a list or object: a comma, or the closing mark. True when another item follows.
  std::optional<bool> goes_on(char closing) {
    const std::string mark(1, closing);
    skip_space();
    if (next_is(closing)) {
      ++at_;
      return false;
    }
    if (!next_is(',')) {
      return stop(at_ < text_.size()
                      ? message("a comma or {mark} belongs here; found {found}", {{"mark", mark}, {"found", found()}})
                      : message("the file ends before the {mark} that closes what is open", {{"mark", mark}}));
    }
    const std::size_t comma = at_++;
    skip_space();
    if (next_is(closing)) {
      at_ = comma;
      return stop(message("no comma may stand before {mark}: take it out", {{"mark", mark}}));
    }
    return true;
  }

  std::optional<JsonNode> list(std::size_t depth) {
    JsonNode node = started(Kind::List);
    ++at_;
    skip_space();
    if (next_is(']')) {
      ++at_;
      return node;
    }
    for (bool more = true; more;) {
      std::optional<JsonNode> item = value(depth + 1);
      if (!item) {
        return std::nullopt;
      }
      node.items.push_back(std::move(*item));
      const std::optional<bool> another = goes_on(']');
      if (!another) {
        return std::nullopt;
      }
      more = *another;
    }
    return node;
  }

  std::optional<JsonNode> object(std::size_t depth) {
    JsonNode node = started(Kind::Object);
    std::set<std::string> seen;
    ++at_;
    skip_space();
    if (next_is('}')) {
      ++at_;
      return node;
    }
    for (bool more = true; more;) {
      if (!member(node, seen, depth)) {
        return std::nullopt;
      }
      const std::optional<bool> another = goes_on('}');
      if (!another) {
        return std::nullopt;
      }
      more = *another;
    }
    return node;
  }

  bool member(JsonNode& node, std::set<std::string>& seen, std::size_t depth) {
    if (!next_is('"')) {
      stop(message("a key in double quotation marks belongs here; found {found}", {{"found", found()}}));
      return false;
    }
    const std::optional<JsonNode> key = string();
    if (!key) {
      return false;
    }
    if (!seen.insert(key->text).second) {
      faults_.push_back(
          {key->offset, message("the key {key} is here twice: keep one of them", {{"key", in_quotes(key->text)}})});
    }
    skip_space();
    if (!next_is(':')) {
      stop(message("a colon belongs after the key {key}; found {found}",
                   {{"key", in_quotes(key->text)}, {"found", found()}}));
      return false;
    }
    ++at_;
    skip_space();
    std::optional<JsonNode> item = value(depth + 1);
    if (!item) {
      return false;
    }
    node.keys.push_back(key->text);
    node.key_offsets.push_back(key->offset);
    node.items.push_back(std::move(*item));
    return true;
  }

  std::string_view text_;
  std::size_t nesting_;
  std::size_t at_ = 0;
  std::vector<JsonFault> faults_;
};

}  // namespace

const JsonNode* JsonNode::find(std::string_view key) const {
  for (std::size_t i = 0; i < keys.size(); ++i) {
    if (keys[i] == key) {
      return &items[i];
    }
  }
  return nullptr;
}

Result<JsonNode, std::vector<JsonFault>> parse_located(std::string_view text, std::size_t nesting) {
  const std::size_t valid = utf8_valid_until(text);
  if (valid != text.size()) {
    return failure(
        std::vector<JsonFault>{{valid, message("the file is not text in UTF-8 from here on: save it in the encoding "
                                               "UTF-8")}});
  }
  Scanner scanner(text, nesting);
  std::optional<JsonNode> node = scanner.document();
  std::vector<JsonFault> faults = scanner.faults();
  if (!faults.empty()) {
    return failure(std::move(faults));
  }
  return std::move(*node);
}

Message found_text(const JsonNode& node) {
  switch (node.kind) {
    case Kind::Null:
      return message("null");
    case Kind::Truth:
      return Message(node.text);
    case Kind::Number:
      return message("the number {number}",
                     {{"number", node.text.size() > 40 ? node.text.substr(0, 40) + "…" : node.text}});
    case Kind::Text:
      return message("the text {text}", {{"text", in_quotes(node.text)}});
    case Kind::List:
      return node.items.empty() ? message("an empty list") : message("a list");
    case Kind::Object:
      return message("an object in {braces}", {{"braces", "{ }"}});
  }
  return {};
}

Message found_members(const JsonNode& node) {
  return node.is(Kind::Object) ? message("{count} of them", {{"count", node.keys.size()}}) : found_text(node);
}

}  // namespace fw::lessons
