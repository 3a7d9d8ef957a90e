#include "units/unit.hpp"

#include <algorithm>
#include <array>
#include <functional>
#include <map>

#include "base/ensure.hpp"

namespace fw::units {
namespace {

using exact::Number;

struct Row {
  std::string text;
  std::string ascii;
  std::string name;
  std::vector<std::string> spellings;  // further ones, in lower case
  int dimension = 1;
  bool is_capacity = false;
  bool has_name = true;  // false for units, square units, cubic units
  Number factor;
};

struct LengthRow {
  const char* text;
  const char* name;
  std::vector<std::string> spellings;
  const char* meters;
};

// Exact by definition. Sources: NIST Special Publication 811 (2008), Appendix B.8 (inch 2.54 cm, foot
// 0.3048 m, yard 0.9144 m, mile 1609.344 m); the US survey foot is not used (Federal Register, 5 October 2020).
const std::vector<LengthRow>& length_rows() {
  static const std::vector<LengthRow> rows = {
      {"mm", "millimeter", {"millimetre"}, "0.001"},
      {"cm", "centimeter", {"centimetre"}, "0.01"},
      {"dm", "decimeter", {"decimetre"}, "0.1"},
      {"m", "meter", {"metre"}, "1"},
      {"km", "kilometer", {"kilometre"}, "1000"},
      {"in", "inch", {"inches", "in.", "\"", "″", "”"}, "0.0254"},
      {"ft", "foot", {"feet", "ft.", "'", "′", "’"}, "0.3048"},
      {"yd", "yard", {"yd."}, "0.9144"},
      {"mi", "mile", {"mi."}, "1609.344"},
  };
  return rows;
}

// Exact by definition. Sources: NIST Handbook 44, Appendix C (US gallon 231 in³; quart 1/4, pint 1/8,
// cup 1/16, fluid ounce 1/128 of it); NIST SP 811 (liter 1 dm³).
Row capacity(const char* text, const char* name, std::vector<std::string> spellings, const Number& cubic_meters) {
  return {text, text, name, std::move(spellings), 3, true, true, cubic_meters};
}

void add_capacities(std::vector<Row>& rows) {
  const Number liter = Number::ratio(1, 1000);
  const Number gallon = Number::whole(231) * power(Number::ratio(254, 10000), 3);
  const auto part = [&](long long count) { return gallon / Number::whole(count); };
  rows.push_back(
      capacity("mL", "milliliter", {"millilitre", "milliliters", "millilitres"}, liter / Number::whole(1000)));
  rows.push_back(capacity("L", "liter", {"litre", "l", "ℓ"}, liter));
  rows.push_back(capacity("gal", "gallon", {"gal.", "us gal", "us gallon"}, gallon));
  rows.push_back(capacity("qt", "quart", {"qt."}, part(4)));
  rows.push_back(capacity("pt", "pint", {"pt."}, part(8)));
  rows.push_back(capacity("cup", "cup", {"c"}, part(16)));
  rows.push_back(capacity("fl oz", "fluid ounce", {"fl. oz.", "fl oz.", "fl. oz", "floz"}, part(128)));
}

constexpr std::size_t length_count = 10;  // the nine with a name, and the one without

// Rows 0-9 are lengths, 10-19 areas and 20-29 volumes in the same order; capacities follow.
const std::vector<Row>& rows() {
  static const std::vector<Row> table = [] {
    std::vector<Row> all;
    for (int dimension = 1; dimension <= 3; ++dimension) {
      const std::array<const char*, 3> raised = {"", "²", "³"};
      const std::array<const char*, 3> caret = {"", "^2", "^3"};
      const std::array<const char*, 3> word = {"", "square ", "cubic "};
      const std::size_t index = static_cast<std::size_t>(dimension - 1);
      for (const LengthRow& length : length_rows()) {
        const Number meters = Number::from_decimal(length.meters).value_or(Number());
        all.push_back({std::string(length.text) + raised[index], std::string(length.text) + caret[index],
                       std::string(word[index]) + length.name, length.spellings, dimension, false, true,
                       power(meters, dimension)});
      }
      const std::string none = std::string(word[index]) + "units";
      all.push_back({none, none, std::string(word[index]) + "unit", {}, dimension, false, false, Number::whole(1)});
    }
    add_capacities(all);
    return all;
  }();
  return table;
}

std::string lower(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(),
                 [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
  return result;
}

// Single spaces between words, none around them.
std::string tidy(std::string_view text) {
  std::string result;
  for (const char c : text) {
    const bool space = c == ' ' || c == '\t' || c == '\n' || c == '\r';
    if (!space) {
      result += c;
    } else if (!result.empty() && result.back() != ' ') {
      result += ' ';
    }
  }
  if (!result.empty() && result.back() == ' ') {
    result.pop_back();
  }
  return result;
}

bool take_front(std::string& text, std::string_view word) {
  const bool there = text.compare(0, word.size(), word) == 0;
  text.erase(0, there ? word.size() : 0);
  return there;
}

bool take_back(std::string& text, std::string_view word) {
  const bool there = text.size() > word.size() && text.compare(text.size() - word.size(), word.size(), word) == 0;
  text.erase(text.size() - (there ? word.size() : 0));
  return there;
}

// Takes "square ", "cu. ", "^2", "³" ... off and returns the dimension that they say; 1 without any, 0 for two.
int take_dimension(std::string& word) {
  int dimension = 1;
  int marks = 0;
  const auto note = [&](int said, bool taken) {
    dimension = taken ? said : dimension;
    marks += taken ? 1 : 0;
  };
  for (const std::string_view front : {"square ", "sq. ", "sq ", "sq.", "sq"}) {
    const bool whole_word = front != "sq" || word.size() > 2;
    note(2, marks == 0 && whole_word && take_front(word, front));
  }
  for (const std::string_view front : {"cubic ", "cu. ", "cu ", "cu.", "cb "}) {
    note(3, marks == 0 && take_front(word, front));
  }
  bool behind = false;
  for (const std::string_view back : {"^2", " ^2", "²", "2", " squared"}) {
    if (!behind && take_back(word, back)) {
      behind = true;
      note(2, true);
    }
  }
  for (const std::string_view back : {"^3", " ^3", "³", "3", " cubed"}) {
    if (!behind && take_back(word, back)) {
      behind = true;
      note(3, true);
    }
  }
  while (!word.empty() && word.back() == ' ') {
    word.pop_back();
  }
  return marks > 1 ? 0 : dimension;
}

using Spellings = std::map<std::string, std::size_t, std::less<>>;

// Every way to write the rows from `first` to before `end`, with their plurals.
Spellings spellings_of(std::size_t first, std::size_t end) {
  Spellings all;
  for (std::size_t row = first; row < end; ++row) {
    std::vector<std::string> known = rows()[row].spellings;
    known.push_back(lower(rows()[row].ascii));
    known.push_back(rows()[row].name);
    for (const std::string& spelling : known) {
      all.emplace(spelling, row);
      all.emplace(spelling + "s", row);
    }
  }
  return all;
}

std::optional<std::size_t> row_spelled(const Spellings& all, const std::string& word) {
  const auto found = all.find(word);
  return found == all.end() ? std::nullopt : std::optional(found->second);
}

std::optional<std::size_t> find_row(std::string word) {
  static const Spellings lengths = spellings_of(0, length_count);
  static const Spellings capacities = spellings_of(3 * length_count, rows().size());
  if (const auto capacity = row_spelled(capacities, word)) {
    return capacity;
  }
  const int dimension = take_dimension(word);
  const auto length = row_spelled(lengths, word);
  return dimension > 0 && length ? std::optional(static_cast<std::size_t>(dimension - 1) * length_count + *length)
                                 : std::nullopt;
}

}  // namespace

const std::string& Unit::text() const { return rows()[row_].text; }
const std::string& Unit::ascii() const { return rows()[row_].ascii; }
const std::string& Unit::name() const { return rows()[row_].name; }
int Unit::dimension() const { return rows()[row_].dimension; }
bool Unit::is_capacity() const { return rows()[row_].is_capacity; }
const exact::Number& Unit::factor() const { return rows()[row_].factor; }

Unit Unit::to_the(int dimension) const {
  ensure(row_ < length_count, "a square or cubic unit was asked of a unit that is not a length");
  ensure(dimension >= 1 && dimension <= 3, "a unit was raised to a power that is not 1, 2 or 3");
  return Unit(row_ + static_cast<std::size_t>(dimension - 1) * length_count);
}

std::optional<Unit> Unit::root() const {
  return is_capacity() ? std::nullopt : std::optional<Unit>(Unit(row_ % length_count));
}

bool Unit::converts_to(const Unit& other) const {
  return dimension() == other.dimension() && rows()[row_].has_name == rows()[other.row_].has_name;
}

std::optional<Unit> Unit::find(std::string_view text) {
  const std::optional<std::size_t> row = find_row(lower(tidy(text)));
  return row ? std::optional<Unit>(Unit(*row)) : std::nullopt;
}

Unit Unit::none() { return Unit(length_count - 1); }
Unit Unit::centimeter() { return Unit(1); }

const std::vector<Unit>& Unit::lengths() {
  static const std::vector<Unit> units = [] {
    std::vector<Unit> all;
    for (std::size_t row = 0; row + 1 < length_count; ++row) {
      all.push_back(Unit(row));
    }
    return all;
  }();
  return units;
}

}  // namespace fw::units
