#include <algorithm>
#include <optional>
#include <set>

#include "words/lexicon.hpp"

namespace fw::words {
namespace {

std::string_view trimmed(std::string_view text) {
  const std::size_t first = text.find_first_not_of(" \t\r");
  return first == std::string_view::npos ? "" : text.substr(first, text.find_last_not_of(" \t\r") - first + 1);
}

/// Takes what stands before the first `mark` off `rest`; all of it where there is none.
std::string_view part_before(std::string_view& rest, std::string_view mark) {
  const std::size_t at = rest.find(mark);
  const std::string_view part = trimmed(rest.substr(0, at));
  rest.remove_prefix(at == std::string_view::npos ? rest.size() : at + mark.size());
  return part;
}

std::optional<long long> number_in(std::string_view digits) {
  const bool is_number =
      !digits.empty() && digits.size() < 10 && digits.find_first_not_of("0123456789") == std::string_view::npos;
  return is_number ? std::optional<long long>(std::stoll(std::string(digits))) : std::nullopt;
}

std::optional<std::string> quoted(std::string_view text) {
  const bool is_quoted = text.size() >= 2 && text.front() == '"' && text.back() == '"';
  return is_quoted ? std::optional<std::string>(text.substr(1, text.size() - 2)) : std::nullopt;
}

std::set<std::string_view> names_in(std::string_view pattern) {
  std::set<std::string_view> names;
  while (!pattern.empty()) {
    const PatternPiece piece = next_piece(pattern);
    if (piece.is_place) {
      names.insert(piece.text);
    }
    if (!piece.count.empty()) {
      names.insert(piece.count);
    }
  }
  return names;
}

}  // namespace

class Lexicon::Reader {
 public:
  Lexicon lexicon;

  /// What is wrong with a line; says nothing where it was read.
  [[nodiscard]] Message read(std::string_view line) {
    std::string_view rest = trimmed(line);
    if (rest.empty() || rest.front() == '#') {
      return {};
    }
    const std::string_view word = part_before(rest, " ");
    if (word == "plural") {
      return read_plural(rest);
    }
    if (word == "noun") {
      return read_noun(rest);
    }
    if (word == "say" || word == "as") {
      return read_sentence(trimmed(rest), word == "as");
    }
    return message("a line begins with plural, noun, say or as, not with “{word}”", {{"word", std::string(word)}});
  }

 private:
  [[nodiscard]] Message read_plural(std::string_view rest) {
    PluralRule rule;
    while (!rest.empty()) {
      std::string_view values = part_before(rest, " and ");
      const bool is_in = values.find("!=") == std::string_view::npos;
      std::string_view left = part_before(values, is_in ? "=" : "!=");
      const std::string_view letter = part_before(left, "%");
      PluralRule::Relation relation{number_in(trimmed(left)).value_or(0), is_in, {}};
      while (!values.empty()) {
        std::string_view range = part_before(values, ",");
        const auto first = number_in(part_before(range, ".."));
        const auto last = range.empty() ? first : number_in(trimmed(range));
        if (first && last) {
          relation.ranges.emplace_back(*first, *last);
        }
      }
      if (letter != "n" || relation.ranges.empty()) {
        return message("a plural rule is written as in “n % 10 = 2..4 and n % 100 != 12..14”");
      }
      rule.relations.push_back(std::move(relation));
    }
    lexicon.plurals_.push_back(std::move(rule));
    return {};
  }

  [[nodiscard]] Message read_noun(std::string_view rest) {
    const std::string key(part_before(rest, "|"));
    NounForms forms;
    forms.with_article = part_before(rest, "|");
    while (!rest.empty()) {
      forms.by_count.emplace_back(part_before(rest, "|"));
    }
    if (forms.by_count.size() != lexicon.plurals_.size() + 1) {
      return message("a noun has its article and {count} {count:form|forms}: “{noun}” has {found}",
                     {{"count", lexicon.plurals_.size() + 1}, {"noun", key}, {"found", forms.by_count.size()}});
    }
    lexicon.nouns_.insert_or_assign(key, std::move(forms));
    return {};
  }

  [[nodiscard]] Message read_sentence(std::string_view text, bool is_translation) {
    std::optional<std::string> pattern = quoted(text);
    if (!pattern) {
      return message("a pattern stands in quotes");
    }
    if (const char* fault = pattern_fault(*pattern)) {
      return message("{fault}", {{"fault", fault}});
    }
    if (!is_translation) {
      english_ = std::move(*pattern);
      return {};
    }
    if (names_in(*pattern) != names_in(english_)) {
      return message("both patterns must name the same arguments");
    }
    lexicon.sentences_.insert_or_assign(english_, std::move(*pattern));
    return {};
  }

  std::string english_;
};

Result<Lexicon, Message> Lexicon::read(std::string_view text) {
  Reader reader;
  for (int number = 1; !text.empty(); ++number) {
    const std::size_t end = std::min(text.find('\n'), text.size());
    const Message fault = reader.read(text.substr(0, end));
    if (!fault.empty()) {
      return failure(message("line {number}: {fault}", {{"number", number}, {"fault", fault}}));
    }
    text.remove_prefix(std::min(end + 1, text.size()));
  }
  return reader.lexicon;
}

}  // namespace fw::words
