#include "reasoning/told_prompt.hpp"

#include "reasoning/supply.hpp"
#include "reasoning/tasks/task_parts.hpp"

namespace fw::reasoning {
namespace {

using lessons::Problem;
using lessons::Supply;

bool is_digit(char c) { return c >= '0' && c <= '9'; }

/// Whether a text holds a number, not as a part of a longer one.
bool says(const std::string& text, const std::string& number) {
  for (std::size_t at = text.find(number); at != std::string::npos; at = text.find(number, at + 1)) {
    const std::size_t end = at + number.size();
    const bool goes_on = end < text.size() && (is_digit(text[end]) ||
                                               (text[end] == '.' && end + 1 < text.size() && is_digit(text[end + 1])));
    if ((at == 0 || (!is_digit(text[at - 1]) && text[at - 1] != '.')) && !goes_on) {
      return true;
    }
  }
  return false;
}

words::Value value_of(const units::WrittenQuantity& quantity) {
  const bool is_mixed = quantity.number.text == quantity.text;
  return is_mixed || !quantity.has_unit ? words::Value(quantity.text)
                                        : words::Value(words::Amount{quantity.number.text, quantity.unit.text()});
}

/// Collects the sentences whose numbers the text lacks.
class Facts {
 public:
  explicit Facts(const std::string& told) : told_(&told) {}
  void add(const std::string& number, const Message& sentence) {
    if (!says(*told_, number)) {
      all_.push_back(sentence);
    }
  }
  [[nodiscard]] Message all() const { return one_after_another(all_); }

 private:
  const std::string* told_;
  std::vector<Message> all_;
};

void add_supply(const Supply& supply, Facts& facts) {
  const Noun item{supply.item};
  if (supply.each) {
    const words::Value each = value_of(*supply.each);
    facts.add(supply.each->number.text,
              supply.purpose == "cover" ? message("One {item} covers {each}.", {{"item", item}, {"each", each}})
              : supply.purpose == "fill"
                  ? message("One {item} holds {each}.", {{"item", item}, {"each", each}})
                  : message("One {item} reaches along {each}.", {{"item", item}, {"each", each}}));
  }
  if (supply.box) {
    const lessons::ItemBox& box = *supply.box;
    facts.add(box.length.number.text, message("One {item} is {length} long, {width} wide and {height} high.",
                                              {{"item", item},
                                               {"length", value_of(box.length)},
                                               {"width", value_of(box.width)},
                                               {"height", value_of(box.height)}}));
  }
  if (supply.price) {
    facts.add(supply.price->text,
              message("One {item} costs {price}.", {{"item", item}, {"price", supply.price->text}}));
  }
}

}  // namespace

std::string told_prompt(const Problem& problem) {
  Facts facts(problem.prompt);
  for (const auto& [measure, quantity] : problem.known) {
    facts.add(quantity.number.text,
              message("The {measure} is {value}.",
                      {{"measure", Noun{title_named(problem, measure)}}, {"value", value_of(quantity)}}));
  }
  if (problem.supply) {
    add_supply(*problem.supply, facts);
  }
  if (problem.scale && problem.scale->text != "?") {
    facts.add(problem.scale->text,
              message("The edges of the copy are {factor} times as long.", {{"factor", problem.scale->text}}));
  }
  for (const auto& [measure, quantity] : problem.scale ? problem.scale->copy : solids::Known{}) {
    facts.add(quantity.number.text,
              message("The {measure} of the copy is {value}.",
                      {{"measure", Noun{title_named(problem, measure)}}, {"value", value_of(quantity)}}));
  }
  if (problem.claim) {
    facts.add(
        problem.claim->value.number.text,
        message("One more label: {measure} {value}.", {{"measure", Noun{title_named(problem, problem.claim->measure)}},
                                                       {"value", value_of(problem.claim->value)}}));
  }
  if (problem.wrong) {
    facts.add(problem.wrong->number.text, message("Somebody got {value}.", {{"value", value_of(*problem.wrong)}}));
  }
  const std::string all = said(facts.all());
  return problem.prompt + (problem.prompt.empty() || all.empty() ? "" : " ") + all;
}

}  // namespace fw::reasoning
