#include "words/lexicon.hpp"

#include <algorithm>
#include <optional>

#include "words/english.hpp"

namespace fw::words {
namespace {

std::string with_large_letter(std::string text) {
  if (!text.empty() && text.front() >= 'a' && text.front() <= 'z') {
    text.front() = static_cast<char>(text.front() - 'a' + 'A');
  }
  return text;
}

const Value& argument_of(const Message& message, std::string_view name) {
  const auto& all = message.arguments();
  const auto found = std::find_if(all.begin(), all.end(), [&](const Argument& one) { return name == one.name; });
  ensure(found != all.end(), "a place of a message has no argument");
  return found->value;
}

template <class T>
const T& of_type(const Value& value, const char* wanted) {
  const T* content = std::get_if<T>(&value.content());
  ensure(content != nullptr, wanted);
  return *content;
}

const Noun& noun_of(const Value& value) { return of_type<Noun>(value, "an article or a plural is asked of no noun"); }

/// The count that a value is; nothing where it is no whole number.
std::optional<long long> count_of(const Value& value) {
  if (const auto* count = std::get_if<long long>(&value.content())) {
    return *count;
  }
  const auto* amount = std::get_if<Amount>(&value.content());
  const std::string& digits = amount != nullptr ? amount->number : of_type<std::string>(value, "this is no count");
  constexpr std::size_t most_digits = 18;
  const bool is_whole =
      !digits.empty() && digits.size() <= most_digits && digits.find_first_not_of("0123456789") == std::string::npos;
  return is_whole ? std::optional<long long>(std::stoll(digits)) : std::nullopt;
}

/// The form of "face|faces" at `index`, or the last one.
std::string_view alternative(std::string_view forms, std::size_t index) {
  for (std::size_t bar = forms.find('|'); index > 0 && bar != std::string_view::npos; bar = forms.find('|')) {
    forms.remove_prefix(bar + 1);
    --index;
  }
  return forms.substr(0, forms.find('|'));
}

}  // namespace

std::string said(const Message& message) { return Lexicon::english().said(message); }

const Lexicon& Lexicon::english() {
  static const Lexicon lexicon = [] {
    Lexicon made;
    made.plurals_ = {{{{0, true, {{1, 1}}}}}};
    return made;
  }();
  return lexicon;
}

std::string Lexicon::said(const Message& message) const {
  const auto found = sentences_.find(message.pattern());
  const bool is_known = found != sentences_.end();
  const Lexicon& forms = is_known ? *this : english();
  std::string text;
  for (std::string_view rest = is_known ? std::string_view(found->second) : message.pattern(); !rest.empty();) {
    const PatternPiece piece = next_piece(rest);
    text += piece.is_place ? piece_text(piece, message, forms) : std::string(piece.text);
  }
  return text;
}

std::string Lexicon::piece_text(const PatternPiece& piece, const Message& message, const Lexicon& forms) const {
  const Value& value = argument_of(message, piece.text);
  if (!piece.count.empty()) {
    return forms.in_number(noun_of(value), forms.plural_form(argument_of(message, piece.count)));
  }
  if (piece.form.find('|') != std::string_view::npos) {
    return std::string(alternative(piece.form, forms.plural_form(value)));
  }
  if (piece.form == "a" || piece.form == "A") {
    const std::string text = forms.with_article(noun_of(value));
    return piece.form == "A" ? with_large_letter(text) : text;
  }
  if (piece.form == "s") {
    return forms.in_number(noun_of(value), forms.plurals_.size());
  }
  if (piece.form == "up" || piece.form.empty()) {
    const std::string text = text_of(value, forms);
    return piece.form == "up" ? with_large_letter(text) : text;
  }
  return joined(value, piece.form, forms);
}

std::string Lexicon::text_of(const Value& value, const Lexicon& forms) const {
  if (const auto* text = std::get_if<std::string>(&value.content())) {
    return *text;
  }
  if (const auto* count = std::get_if<long long>(&value.content())) {
    return std::to_string(*count);
  }
  if (const auto* amount = std::get_if<Amount>(&value.content())) {
    return amount->number + (amount->unit.empty() ? "" : " ") + amount->unit;
  }
  if (const auto* noun = std::get_if<Noun>(&value.content())) {
    return forms.in_number(*noun, 0);
  }
  return said(of_type<Message>(value, "a list is said without asking how it is joined"));
}

std::string Lexicon::joined(const Value& value, std::string_view form, const Lexicon& forms) const {
  const auto& list = of_type<Value::List>(value, "what is no list is asked to be joined");
  std::string text;
  for (std::size_t i = 0; i < list.size(); ++i) {
    const std::string item = text_of(list[i], forms);
    const bool is_last = i + 1 == list.size();
    text = i == 0                    ? item
           : form == "then"          ? said(message("{first} {next}", {{"first", text}, {"next", item}}))
           : form == ";"             ? said(message("{first}; {next}", {{"first", text}, {"next", item}}))
           : form == ", or"          ? said(message("{first}, or {next}", {{"first", text}, {"next", item}}))
           : !is_last || form == "," ? said(message("{first}, {next}", {{"first", text}, {"next", item}}))
           : form == "and"           ? said(message("{first} and {last}", {{"first", text}, {"last", item}}))
                                     : said(message("{first} or {last}", {{"first", text}, {"last", item}}));
  }
  return text;
}

std::string Lexicon::with_article(const Noun& noun) const {
  const auto found = nouns_.find(noun.name);
  return found == nouns_.end() ? english::with_article(noun.name) : found->second.with_article;
}

std::string Lexicon::in_number(const Noun& noun, std::size_t form) const {
  const auto found = nouns_.find(noun.name);
  if (found != nouns_.end()) {
    const std::vector<std::string>& all = found->second.by_count;
    return all[std::min(form, all.size() - 1)];
  }
  return form == 0 ? noun.name : english::plural(noun.name);
}

std::size_t Lexicon::plural_form(const Value& value) const {
  const std::optional<long long> count = count_of(value);
  const auto holds = [&](const PluralRule& rule) {
    return count && std::all_of(rule.relations.begin(), rule.relations.end(), [&](const PluralRule::Relation& one) {
             const long long n = one.modulus == 0 ? *count : *count % one.modulus;
             const bool is_within = std::any_of(one.ranges.begin(), one.ranges.end(), [&](const auto& range) {
               return range.first <= n && n <= range.second;
             });
             return is_within == one.is_in;
           });
  };
  const auto rule = std::find_if(plurals_.begin(), plurals_.end(), holds);
  return static_cast<std::size_t>(rule - plurals_.begin());
}

}  // namespace fw::words
