#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "words/message.hpp"

namespace fw::lessons {

/// A value of a JSON text that knows where it stands, so that faults of meaning can be shown in the text too.
struct JsonNode {
  enum class Kind { Null, Truth, Number, Text, List, Object };
  Kind kind = Kind::Null;
  std::size_t offset = 0;                ///< byte of its first character
  std::string text;                      ///< of a Text: its characters; of a Number or Truth: as it stands
  std::vector<JsonNode> items;           ///< of a List; of an Object: the values beside `keys`
  std::vector<std::string> keys;         ///< of an Object
  std::vector<std::size_t> key_offsets;  ///< of an Object

  /// The value of a key; null when there is none.
  [[nodiscard]] const JsonNode* find(std::string_view key) const;
  [[nodiscard]] bool is(Kind wanted) const { return kind == wanted; }
};

struct JsonFault {
  std::size_t offset = 0;
  words::Message message;
};

/// Reads a JSON text (RFC 8259), with a byte order mark before it or not.
/// Errors: the first break of the grammar, in plain words, with what was expected; text that is not UTF-8; lists and
///         objects within each other more than `nesting` deep; every key that stands twice in one object.
[[nodiscard]] Result<JsonNode, std::vector<JsonFault>> parse_located(std::string_view text, std::size_t nesting);

/// "a list", "the text "9 cm"", "the number 12": what was found, for a message. Long text is cut.
[[nodiscard]] words::Message found_text(const JsonNode& node);

/// The same; of an object how many members it has: "2 of them".
[[nodiscard]] words::Message found_members(const JsonNode& node);

/// The byte where UTF-8 breaks; the size of the text when it is all valid.
[[nodiscard]] std::size_t utf8_valid_until(std::string_view text);

/// In quotation marks, and cut when it is long.
[[nodiscard]] std::string in_quotes(std::string_view text);

}  // namespace fw::lessons
