#include "tasks/generate/versions.hpp"

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

#include "base/utf8.hpp"
#include "exact/print_number.hpp"
#include "practice/seed.hpp"
#include "practice/signatures.hpp"
#include "practice/task_type.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::tasks {
namespace {

using lessons::Lesson;
using lessons::Problem;
using practice::Seed;
using solids::Description;
using solids::LengthEntry;
using words::message;

constexpr int most_attempts = 400;
constexpr double answers_apart = 0.05;
constexpr int shown_places = 2;

/// A length of a description: where it stands.
struct LengthPlace {
  bool in_base = false;
  std::string key;
  std::optional<std::size_t> item = std::nullopt;  ///< of a list
};

LengthEntry* entry_at(Description& description, const LengthPlace& place) {
  Description& owner = place.in_base ? description.base.front() : description;
  const auto field = owner.fields.find(place.key);
  if (field == owner.fields.end()) {
    return nullptr;
  }
  if (place.item) {
    return &std::get<std::vector<LengthEntry>>(field->second)[*place.item];
  }
  return &std::get<LengthEntry>(field->second);
}

std::vector<LengthPlace> places_of(const Description& description) {
  std::vector<LengthPlace> places;
  const auto add = [&](const Description& owner, bool in_base) {
    for (const auto& [key, value] : owner.fields) {
      if (std::holds_alternative<LengthEntry>(value)) {
        places.push_back({in_base, key});
      } else if (const auto* list = std::get_if<std::vector<LengthEntry>>(&value)) {
        for (std::size_t i = 0; i < list->size(); ++i) {
          places.push_back({in_base, key, i});
        }
      }
    }
  };
  add(description, false);
  if (!description.base.empty()) {
    add(description.base.front(), true);
  }
  return places;
}

std::optional<solids::Solid> solid_from(const Description& description, const solids::Known& known) {
  auto solid = solids::Solid::make(description, known);
  return solid ? std::optional(std::move(solid).value()) : std::nullopt;
}

/// The value of a length in a solid, in the solid's unit.
std::optional<exact::Number> value_at(const solids::Solid& solid, const LengthPlace& place) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const bool is_it =
        measure.key == place.key && measure.in_base == place.in_base && measure.item == place.item.value_or(0);
    const auto value = solid.values().find(measure.symbol.name);
    if (is_it && value != solid.values().end()) {
      return value->second;
    }
  }
  return std::nullopt;
}

/// How many decimals a written number has.
int places_of_number(const std::string& text) {
  const std::size_t point = text.find('.');
  return point == std::string::npos ? 0 : static_cast<int>(text.size() - point - 1);
}

bool is_plain(const std::string& text) {
  return std::all_of(text.begin(), text.end(), [](char c) { return is_ascii_digit(c) || c == '.'; });
}

/// Another number with as many digits and decimals, near in size; tens stay tens.
std::string drawn_like(const std::string& text, Seed& seed) {
  std::string digits;
  for (const char c : text) {
    digits += c == '.' ? "" : std::string(1, c);
  }
  const long long number = std::stoll(digits);
  const auto size = static_cast<long long>(std::pow(10.0, static_cast<double>(digits.size())));
  const long long step = number % 10 == 0 && number > 20 ? 10 : 1;
  const long long least = std::max({size / 10, number / 2, digits.size() == 1 ? 2LL : 1LL});
  const long long most = std::min(size - 1, number * 2);
  const long long first = (least + step - 1) / step * step;
  if (first > most) {
    return text;
  }
  const auto count = static_cast<std::size_t>((most - first) / step + 1);
  std::string drawn = std::to_string(first + step * static_cast<long long>(seed.below(count)));
  const auto decimals = static_cast<std::size_t>(places_of_number(text));
  if (decimals > 0) {
    drawn.insert(0, drawn.size() <= decimals ? std::string(decimals + 1 - drawn.size(), '0') : "");
    drawn.insert(drawn.size() - decimals, ".");
  }
  return drawn;
}

/// A value written with so many decimals; nothing where it does not end there and may not be rounded.
std::optional<std::string> written_with(const exact::Number& value, int places, bool may_be_rounded) {
  if (!may_be_rounded && !exact::decimals_needed(value, places)) {
    return std::nullopt;
  }
  std::string text;
  for (const char c : exact::fixed_text(value, places)) {
    text += c == ',' ? "" : std::string(1, c);
  }
  return text;
}

std::optional<units::WrittenQuantity> quantity_like(const units::WrittenQuantity& old, const std::string& number) {
  std::string text = old.text;
  const std::size_t at = text.find(old.number.text);
  if (at == std::string::npos) {
    return std::nullopt;
  }
  text.replace(at, old.number.text.size(), number);
  auto parsed = units::parse_quantity(text);
  return parsed ? std::optional(std::move(parsed).value()) : std::nullopt;
}

/// Numbers of a text that were exchanged.
class Renumbering {
 public:
  /// False where one number would have to become two.
  bool add(const std::string& old, const std::string& now) {
    const auto [at, is_new] = numbers_.emplace(old, now);
    return is_new || at->second == now;
  }
  [[nodiscard]] std::string of(const std::string& text) const {
    std::string out;
    for (std::size_t i = 0; i < text.size();) {
      if (!is_ascii_digit(text[i])) {
        out += text[i++];
        continue;
      }
      std::size_t end = i;
      while (end < text.size() && (is_ascii_digit(text[end]) ||
                                   (text[end] == '.' && end + 1 < text.size() && is_ascii_digit(text[end + 1])))) {
        ++end;
      }
      const std::string number = text.substr(i, end - i);
      const auto found = numbers_.find(number);
      out += found == numbers_.end() ? number : found->second;
      i = end;
    }
    return out;
  }
  [[nodiscard]] bool has(const std::string& number) const { return numbers_.count(number) != 0; }

 private:
  std::map<std::string, std::string> numbers_;
};

std::string symbol_of(const std::string& measure) {
  return measure == "surface_area"   ? solids::symbols::surface_area().name
         : measure == "lateral_area" ? solids::symbols::lateral_area().name
         : measure == "base_area"    ? solids::symbols::base_area().name
                                     : solids::symbols::volume().name;
}

/// Makes problems like one.
class LikeMaker {
 public:
  explicit LikeMaker(const Problem& problem) : problem_(problem), full_(problem.description) {
    for (const LengthPlace& place : places_of(full_)) {
      LengthEntry* entry = entry_at(full_, place);
      const bool is_unknown = !entry->written;
      if (is_unknown) {
        fill_in(place, *entry);
      }
      if (entry->written && is_plain(entry->written->number.text)) {
        (is_unknown ? unknown_ : drawn_).push_back(place);
      } else if (is_unknown) {
        is_possible_ = false;
      }
    }
    for (const auto& [measure, quantity] : problem.known) {
      is_possible_ = is_possible_ && is_plain(quantity.number.text);
    }
    find_followers();
    is_possible_ = is_possible_ && drawn_.size() + unknown_.size() > 0 && solid_from(full_, {}).has_value();
  }

  [[nodiscard]] bool is_possible() const { return is_possible_; }

  /// With other numbers; nothing where they make no such problem.
  [[nodiscard]] std::optional<Problem> made(Seed& seed) const {
    Description description = full_;
    for (const LengthPlace& place : follower_) {
      (place.in_base ? description.base.front() : description).fields.erase(place.key);
    }
    Renumbering numbers;
    for (const std::vector<LengthPlace>* places : {&drawn_, &unknown_}) {
      for (const LengthPlace& place : *places) {
        if (!set(description, place, drawn_like(entry_at(description, place)->written->number.text, seed), numbers)) {
          return std::nullopt;
        }
      }
    }
    const auto whole = solid_from(description, {});
    return whole ? finished(*whole, description, numbers) : std::nullopt;
  }

 private:
  /// An unknown length gets the value that was solved for, as the class would write it.
  void fill_in(const LengthPlace& place, LengthEntry& entry) {
    const auto value = value_at(problem_.solid, place);
    const auto text =
        value ? written_with(*value, exact::decimals_needed(*value, shown_places).value_or(0), false) : std::nullopt;
    if (!text) {
      return;
    }
    const std::string unit = problem_.solid.unit() == units::Unit::none() ? "" : " " + problem_.solid.unit().ascii();
    if (auto parsed = units::parse_quantity(*text + unit)) {
      entry.written = std::move(parsed).value();
    }
  }

  /// Lengths that follow from the others are not drawn, but worked out.
  void find_followers() {
    Description rest = full_;
    for (std::size_t i = drawn_.size(); i > 0; --i) {
      const LengthPlace place = drawn_[i - 1];
      Description without = rest;
      (place.in_base ? without.base.front() : without).fields.erase(place.key);
      if (!place.item && solid_from(without, {})) {
        rest = std::move(without);
        follower_.push_back(place);
        drawn_.erase(drawn_.begin() + static_cast<std::ptrdiff_t>(i - 1));
      }
    }
  }

  static bool set(Description& description, const LengthPlace& place, const std::string& number, Renumbering& numbers) {
    LengthEntry* entry = entry_at(description, place);
    const std::string old = entry->written->number.text;
    auto quantity = quantity_like(*entry->written, number);
    if (!quantity || !numbers.add(old, number)) {
      return false;
    }
    entry->written = std::move(*quantity);
    return true;
  }

  [[nodiscard]] bool set_followers(const solids::Solid& whole, Description& description, Renumbering& numbers) const {
    for (const LengthPlace& place : follower_) {
      Description old = full_;
      const units::WrittenQuantity written = *entry_at(old, place)->written;
      const auto value = value_at(whole, place);
      if (!value) {
        return false;
      }
      const exact::Number own =
          *value * units::conversion(whole.unit(), written.has_unit ? written.unit : whole.unit());
      const bool was_rounded = problem_.description.is_rounded || places_of_number(written.number.text) > 0;
      const auto text = written_with(own, places_of_number(written.number.text), was_rounded);
      if (!text || text->size() != written.number.text.size()) {
        return false;
      }
      Description& owner = place.in_base ? description.base.front() : description;
      owner.fields[place.key] = LengthEntry{written};
      if (!set(description, place, *text, numbers)) {
        return false;
      }
    }
    return true;
  }

  [[nodiscard]] std::optional<Problem> finished(const solids::Solid& whole, Description description,
                                                Renumbering numbers) const {
    if (!set_followers(whole, description, numbers)) {
      return std::nullopt;
    }
    solids::Known known;
    for (const auto& [measure, quantity] : problem_.known) {
      const auto value = whole.values().find(symbol_of(measure));
      if (value == whole.values().end()) {
        return std::nullopt;
      }
      const units::Unit unit = whole.unit().to_the(quantity.unit.dimension());
      const auto text = written_with(value->second * units::conversion(unit, quantity.unit),
                                     places_of_number(quantity.number.text), false);
      const bool is_as_long = text && text->size() == quantity.number.text.size();
      auto parsed = is_as_long ? quantity_like(quantity, *text) : std::nullopt;
      if (!parsed || !numbers.add(quantity.number.text, *text)) {
        return std::nullopt;
      }
      known.emplace(measure, std::move(*parsed));
    }
    for (const LengthPlace& place : unknown_) {
      entry_at(description, place)->written.reset();
    }
    auto solid = solid_from(description, known);
    if (!solid) {
      return std::nullopt;
    }
    for (const lessons::Task& task : problem_.tasks) {
      if (const std::string given = practice::stated(task).given_number();
          !given.empty() && numbers.has(given) && problem_.prompt.find(given) != std::string::npos) {
        return std::nullopt;  // which of the two the text means is not known
      }
    }
    Problem made = problem_;
    made.prompt = numbers.of(problem_.prompt);
    made.description = std::move(description);
    made.known = std::move(known);
    made.solid = std::move(*solid);
    return made;
  }

  const Problem& problem_;
  Description full_;  // with its unknown lengths filled in
  std::vector<LengthPlace> drawn_, unknown_, follower_;
  bool is_possible_ = true;
};

std::vector<practice::Question> questions_of(const Problem& problem) {
  std::vector<practice::Question> questions;
  for (const lessons::Task& task : problem.tasks) {
    if (practice::stated(task).has_question()) {
      if (auto question = practice::question_of(problem, task->key())) {
        questions.push_back(std::move(question).value());
      }
    }
  }
  return questions;
}

/// Whether a usual mistake in this problem leads to that number.
bool leads_to(const Problem& problem, const practice::Question& question, double number) {
  constexpr double near = 1e-3;
  if (question.asked == practice::Asked::None) {
    return false;
  }
  const std::vector<practice::WrongNumber> wrong = practice::wrong_numbers(practice::figure_of(problem, question));
  return std::any_of(wrong.begin(), wrong.end(), [&](const practice::WrongNumber& one) {
    return !one.signature->is_rare && std::abs(one.value - number) <= near * number;
  });
}

bool is_number(const practice::Question& question) { return question.truth && !practice::counts_parts(question.asked); }

/// Whether the answers of the new problem end where those of the first one do.
bool ends_alike(const std::vector<practice::Question>& made, const std::vector<practice::Question>& first) {
  for (std::size_t i = 0; i < made.size(); ++i) {
    if (is_number(first[i]) && exact::shown(*first[i].truth, shown_places).exact &&
        !exact::shown(*made[i].truth, shown_places).exact) {
      return false;
    }
  }
  return true;
}

/// Whether two problems can stand beside each other: other figures, answers well apart, and none that is a mistake in
/// the other.
bool are_parallel(const Problem& made, const Problem& other) {
  const auto own = questions_of(made);
  const auto theirs = questions_of(other);
  if (own.size() != theirs.size() || made.solid == other.solid) {
    return false;
  }
  for (std::size_t i = 0; i < own.size(); ++i) {
    if (!is_number(own[i]) || !is_number(theirs[i])) {
      continue;
    }
    const double a = own[i].truth->to_double();
    const double b = theirs[i].truth->to_double();
    const bool is_far = std::abs(a - b) > answers_apart * std::max(std::abs(a), std::abs(b));
    if (!is_far || leads_to(made, own[i], b) || leads_to(other, theirs[i], a)) {
      return false;
    }
  }
  return true;
}

bool is_like(const Problem& made, const Problem& first) {
  return made.solid.name() == first.solid.name() && made.solid.group_count() == first.solid.group_count() &&
         made.solid.remarks().size() <= first.solid.remarks().size() &&
         practice::type_of(made) == practice::type_of(first) && ends_alike(questions_of(made), questions_of(first)) &&
         (is_masked(first) || !is_masked(made));
}

/// Why a problem cannot be varied; empty where it can.
words::Message why_not(const Problem& problem, const LikeMaker& maker) {
  for (const lessons::Task& task : problem.tasks) {
    const practice::TaskType& type = practice::stated(task);
    const bool is_purpose = task->key() == "purpose";
    if (practice::is_chosen(type.form()) && !is_purpose) {
      return message("its options go with its numbers");
    }
  }
  return maker.is_possible() ? words::Message() : message("its lengths can't be changed one by one");
}

}  // namespace

void vary_problem(Versions& versions, const Lesson& lesson, std::size_t number, std::uint64_t seed) {
  const std::size_t count = versions.lessons.size();
  const Problem& first = lesson.problems[number];
  const LikeMaker maker(first);
  words::Message reason = why_not(first, maker);
  Seed stream{seed * 1'000'003 + number};
  std::vector<Problem> made{first};
  for (int attempt = 0; reason.empty() && made.size() < count && attempt < most_attempts; ++attempt) {
    auto one = maker.made(stream);
    const bool is_good =
        one && is_like(*one, first) &&
        std::all_of(made.begin(), made.end(), [&](const Problem& other) { return are_parallel(*one, other); });
    if (is_good) {
      made.push_back(std::move(*one));
    }
  }
  if (made.size() < count) {
    versions.unchanged.push_back(
        message("Problem {id} is the same in all versions: {reason}.",
                {{"id", first.id}, {"reason", reason.empty() ? message("no other numbers fit as well") : reason}}));
    return;
  }
  for (std::size_t v = 0; v < count; ++v) {
    versions.lessons[v].problems[number] = made[v];
  }
}

Versions versions_like(const Lesson& lesson, std::size_t count, std::uint64_t seed) {
  Versions versions;
  versions.lessons.assign(count, lesson);
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    vary_problem(versions, lesson, i, seed);
  }
  return versions;
}

}  // namespace fw::tasks
