#include "practice/told_prompt.hpp"

#include <algorithm>

#include "base/utf8.hpp"
#include "exact/print_number.hpp"
#include "lessons/round_to.hpp"
#include "practice/task_type.hpp"
#include "reasoning/task_sheet.hpp"

namespace fw::practice {
namespace {

using lessons::Problem;

/// Whether a text holds a number, not as a part of a longer one.
bool says(const std::string& text, const std::string& number) {
  for (std::size_t at = text.find(number); at != std::string::npos; at = text.find(number, at + 1)) {
    const std::size_t end = at + number.size();
    const bool goes_on =
        end < text.size() &&
        (is_ascii_digit(text[end]) || (text[end] == '.' && end + 1 < text.size() && is_ascii_digit(text[end + 1])));
    if ((at == 0 || (!is_ascii_digit(text[at - 1]) && text[at - 1] != '.')) && !goes_on) {
      return true;
    }
  }
  return false;
}

/// A text without the commas that separate thousands: "2,250" says 2250.
std::string without_thousands_commas(const std::string& text) {
  const auto is_digit = [&](std::size_t at) { return at < text.size() && is_ascii_digit(text[at]); };
  std::string plain;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool separates = text[i] == ',' && i > 0 && is_digit(i - 1) && is_digit(i + 1) && is_digit(i + 2) &&
                           is_digit(i + 3) && !is_digit(i + 4);
    if (!separates) {
      plain += text[i];
    }
  }
  return plain;
}

/// Collects the sentences whose numbers the text lacks.
class Facts {
 public:
  explicit Facts(const std::string& told) : told_(without_thousands_commas(told)) {}
  void add(const std::string& number, const words::Message& sentence) {
    if (!says(told_, number) && std::find(all_.begin(), all_.end(), sentence) == all_.end()) {
      all_.push_back(sentence);
    }
  }
  [[nodiscard]] words::Message all() const { return words::one_after_another(all_); }

 private:
  std::string told_;
  std::vector<words::Message> all_;
};

// What to round to: as the problem says or, where an answer does not end, as answers are shown.
std::optional<int> places_to_say(const Problem& problem) {
  constexpr int usual_places = 2;
  for (const lessons::Task& task : problem.tasks) {
    const auto question = task->is_rounded() ? stated(task).question(problem) : failure(words::Message{});
    if (!question || !question->truth) {
      continue;
    }
    const int places = problem.round_to.value_or(exact::enough_places(*question->truth, usual_places));
    if (!exact::decimals_needed(*question->truth, places)) {
      return places;
    }
  }
  return std::nullopt;
}

}  // namespace

words::Value value_of(const units::WrittenQuantity& quantity) {
  const bool is_mixed = quantity.number.text == quantity.text;
  return is_mixed || !quantity.has_unit ? words::Value(quantity.text)
                                        : words::Value(words::Amount{quantity.number.text, quantity.unit.text()});
}

std::string told_prompt(const Problem& problem) {
  Facts facts(problem.prompt);
  for (const auto& [measure, quantity] : problem.known) {
    const words::Noun name{reasoning::title_named(problem.solid, measure)};
    facts.add(quantity.number.text,
              words::message("The {measure} is {value}.", {{"measure", name}, {"value", value_of(quantity)}}));
  }
  for (const lessons::Task& task : problem.tasks) {
    for (const Fact& fact : stated(task).facts(problem)) {
      facts.add(fact.number, fact.sentence);
    }
  }
  const std::optional<int> places = places_to_say(problem);
  if (const lessons::RoundTo* to = places ? lessons::round_to_places(*places) : nullptr) {
    facts.add("nearest", words::message("Round to the nearest {place}.", {{"place", std::string(to->place)}}));
  }
  const std::string all = said(facts.all());
  return problem.prompt + (problem.prompt.empty() || all.empty() ? "" : " ") + all;
}

}  // namespace fw::practice
