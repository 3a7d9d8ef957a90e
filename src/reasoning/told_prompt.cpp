#include "reasoning/told_prompt.hpp"

#include "reasoning/nouns.hpp"
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

std::string text_of(const units::WrittenQuantity& quantity) {
  const bool is_mixed = quantity.number.text == quantity.text;
  return is_mixed || !quantity.has_unit ? quantity.text : quantity.number.text + " " + quantity.unit.text();
}

/// Collects the sentences whose numbers the text lacks.
class Facts {
 public:
  explicit Facts(const std::string& told) : told_(&told) {}
  void add(const std::string& number, const std::string& sentence) {
    if (!says(*told_, number)) {
      all_ += (all_.empty() ? "" : " ") + sentence;
    }
  }
  [[nodiscard]] const std::string& all() const { return all_; }

 private:
  const std::string* told_;
  std::string all_;
};

const char* verb_of(const Supply& supply) {
  return supply.purpose == "cover" ? " covers " : supply.purpose == "fill" ? " holds " : " reaches along ";
}

void add_supply(const Supply& supply, Facts& facts) {
  if (supply.each) {
    facts.add(supply.each->number.text, "One " + supply.item + verb_of(supply) + text_of(*supply.each) + ".");
  }
  if (supply.box) {
    const lessons::ItemBox& box = *supply.box;
    facts.add(box.length.number.text, "One " + supply.item + " is " + text_of(box.length) + " long, " +
                                          text_of(box.width) + " wide and " + text_of(box.height) + " high.");
  }
  if (supply.price) {
    facts.add(supply.price->text, "One " + supply.item + " costs " + supply.price->text + ".");
  }
}

}  // namespace

std::string told_prompt(const Problem& problem) {
  Facts facts(problem.prompt);
  for (const auto& [measure, quantity] : problem.known) {
    facts.add(quantity.number.text, "The " + title_named(problem, measure) + " is " + text_of(quantity) + ".");
  }
  if (problem.supply) {
    add_supply(*problem.supply, facts);
  }
  if (problem.scale && problem.scale->text != "?") {
    facts.add(problem.scale->text, "The edges of the copy are " + problem.scale->text + " times as long.");
  }
  for (const auto& [measure, quantity] : problem.scale ? problem.scale->copy : solids::Known{}) {
    facts.add(quantity.number.text,
              "The " + title_named(problem, measure) + " of the copy is " + text_of(quantity) + ".");
  }
  if (problem.claim) {
    facts.add(problem.claim->value.number.text, "One more label: " + title_named(problem, problem.claim->measure) +
                                                    " " + text_of(problem.claim->value) + ".");
  }
  if (problem.wrong) {
    facts.add(problem.wrong->number.text, "Somebody got " + text_of(*problem.wrong) + ".");
  }
  return problem.prompt + (problem.prompt.empty() || facts.all().empty() ? "" : " ") + facts.all();
}

}  // namespace fw::reasoning
