#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "base/result.hpp"
#include "words/message.hpp"

namespace fw::words {

/// A language: how messages are said in it. English is the language of the patterns themselves; another one is a file:
///
///     # The forms of a plural, for the first rule that holds of a count n; the last form is for all other counts.
///     plural n = 1
///     plural n % 10 = 2..4 and n % 100 != 12..14
///     # A noun, it with its article, and its forms in the order of the rules. What is not listed stays English.
///     noun pyramid | une pyramide | pyramide | pyramides
///     # A pattern, and how it is said. Its places may stand in any order, more than once, and ask for other forms.
///     say "It has {count} {count:face|faces}."
///     as "Elle a {count} {count:face|faces}."
///
/// Source of the plural rules: those of the Unicode CLDR (Unicode Technical Standard 35), with n alone.
class Lexicon {
 public:
  [[nodiscard]] static const Lexicon& english();
  /// Errors: the line, and what is wrong there.
  [[nodiscard]] static Result<Lexicon, Message> read(std::string_view text);

  [[nodiscard]] std::string said(const Message& message) const;

 private:
  struct PluralRule {
    struct Relation {
      long long modulus = 0;  ///< 0: of n itself
      bool is_in = true;      ///< or in none of the ranges
      std::vector<std::pair<long long, long long>> ranges;
    };
    std::vector<Relation> relations;  ///< all must hold
  };
  struct NounForms {
    std::string with_article;
    std::vector<std::string> by_count;
  };
  class Reader;

  [[nodiscard]] std::string piece_text(const PatternPiece& piece, const Message& message, const Lexicon& forms) const;
  [[nodiscard]] std::string text_of(const Value& value, const Lexicon& forms) const;
  [[nodiscard]] std::string joined(const Value& value, std::string_view form, const Lexicon& forms) const;
  [[nodiscard]] std::string with_article(const Noun& noun) const;
  [[nodiscard]] std::string in_number(const Noun& noun, std::size_t form) const;
  [[nodiscard]] std::size_t plural_form(const Value& value) const;

  std::vector<PluralRule> plurals_;
  std::map<std::string, NounForms, std::less<>> nouns_;
  std::map<std::string, std::string, std::less<>> sentences_;
};

}  // namespace fw::words
