#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "practice/choice_parts.hpp"
#include "practice/read_answer.hpp"
#include "practice/signatures.hpp"

// Options that are numbers: the right one, and wrong ones from the table of mistakes.
namespace fw::practice {
namespace {

using exact::Number;
using words::message;

constexpr std::size_t wrong_options = 3;
constexpr double too_near = 0.02;     // of the larger: such options would look like one number, rounded
constexpr double most_apart = 12;     // times the right number: farther off is guessed to be wrong
constexpr double shown_alike = 1e-3;  // of one: rounded, they are written alike
constexpr int most_places = 9;

struct Candidate {
  double value = 0;
  std::string id;
  Saying saying;
  std::vector<FaceId> faces;
  bool is_shared = false;  ///< another mistake leads near it
  bool is_rare = false;
};

bool is_too_near(double a, double b) { return std::abs(a - b) <= too_near * std::max(std::abs(a), std::abs(b)); }

std::vector<Candidate> table_candidates(const Figure& figure) {
  std::vector<Candidate> all;
  for (WrongNumber& wrong : wrong_numbers(figure)) {
    all.push_back({wrong.value, wrong.signature->id, wrong.signature->saying, std::move(wrong.faces), false,
                   wrong.signature->is_rare});
  }
  for (Candidate& one : all) {
    one.is_shared = std::any_of(all.begin(), all.end(), [&](const Candidate& other) {
      return other.id != one.id && std::abs(other.value - one.value) <= shown_alike * one.value;
    });
  }
  return all;
}

// Two neighboring digits of a whole number exchanged; 0 where that leaves the number as it is.
double exchanged(double value) {
  const Number number = as_written_down(value);
  std::string digits = number.is_whole() ? exact::digits_text(number, 0) : "";
  for (std::size_t i = digits.size(); i > 1; --i) {
    const bool leads_with_zero = i == 2 && digits[1] == '0';
    if (digits[i - 1] != digits[i - 2] && !leads_with_zero) {
      std::swap(digits[i - 1], digits[i - 2]);
      return std::stod(digits);
    }
  }
  return 0;
}

// Where the table has too little for a question.
std::vector<Candidate> slip_candidates(const Figure& figure) {
  if (counts_parts(figure.question->asked)) {
    return {{figure.truth + 1, "B14", Saying("{n} counts one of them twice.", "Touch each one once."), {}, false},
            {figure.truth - 1, "B2", Saying("{n} leaves one out.", "Which one is hidden?"), {}, false}};
  }
  const double truth = figure.question->truth->to_double();
  return {{truth * 10,
           "M1",
           Saying("{n} is ten times too much.", "Estimate first. About how big should the answer be?"),
           {},
           false},
          {truth / 10, "M1", Saying("{n} is only a tenth of it.", "Where does the decimal point go?"), {}, false},
          {exchanged(truth), "M2", Saying("{n} is close.", "Are two digits switched?"), {}, false}};
}

class Picking {
 public:
  explicit Picking(const Question& question) : question_(&question) {
    Choice right;
    right.text = answer_text(question, written(question.truth->to_double()));
    right.is_right = true;
    right.message = message("Right.");
    choices_.push_back(std::move(right));
    values_.push_back(question.truth->to_double());
  }

  [[nodiscard]] bool is_full() const { return choices_.size() == wrong_options + 1; }

  void take(const Candidate& one) {
    const Number number = written(one.value);
    const double value = number.to_double();
    const bool is_new =
        std::none_of(values_.begin(), values_.end(), [&](double other) { return is_too_near(other, value); });
    Choice choice;
    choice.text = answer_text(*question_, number);
    choice.cause = one.id;
    choice.message = one.saying.about(exact::shown(number, most_places).text);
    choice.faces = one.faces;
    // As it is written it must be known again: 22.045 would be written 22, and could be another number.
    const auto read = read_answer(said(choice.text), question_->item.empty() ? "times" : question_->item);
    const bool is_told = read && stands_for(read->number, one.value);
    if (!is_full() && is_new && is_told && value > 0 && !is_said(one.saying)) {
      choices_.push_back(std::move(choice));
      values_.push_back(value);
      said_.push_back(one.saying);
    }
  }

  [[nodiscard]] bool has_family(const std::string& id) const {
    return std::any_of(choices_.begin(), choices_.end(),
                       [&](const Choice& one) { return !one.cause.empty() && one.cause.front() == id.front(); });
  }
  [[nodiscard]] std::vector<Choice> taken() && { return std::move(choices_); }

 private:
  // A converted number keeps its digits where it ends: 4.004 L is not 4 L.
  [[nodiscard]] Number written(double value) const {
    constexpr long long millionths = 1'000'000;
    const Number kept = Number::ratio(std::llround(value * static_cast<double>(millionths)), millionths);
    const bool ends = std::abs(kept.to_double() - value) <= 1e-9 * std::abs(value);
    return question_->is_converted && ends ? kept : written_down(value);
  }
  [[nodiscard]] bool is_said(const Saying& saying) const {
    return std::find(said_.begin(), said_.end(), saying) != said_.end();
  }
  // Counts of things are whole where the problem rounds them; with π in them, all are rounded as the answer is.
  [[nodiscard]] Number written_down(double value) const {
    if (question_->has_circle && question_->round_to) {
      return exact::rounded(Number::of_double(value), *question_->round_to);
    }
    return counts_parts(question_->asked) ? exact::rounded(as_written_down(value), 0) : as_written_down(value);
  }

  const Question* question_;
  std::vector<Choice> choices_;
  std::vector<double> values_;
  std::vector<Saying> said_;
};

}  // namespace

exact::Number as_written_down(double value) {
  constexpr double smallest_share = 1e-9;
  const double size = std::abs(value);
  const int usual = size >= 10 ? 1 : size >= 1 ? 2 : size >= 0.1 ? 3 : size >= 0.001 ? 5 : most_places;
  int places = 0;
  const int most = std::max(2, usual);
  for (; places < most; ++places) {
    const double scale = std::pow(10.0, places);
    if (std::abs(std::round(value * scale) / scale - value) <= smallest_share * size) {
      break;
    }
  }
  const double scale = std::pow(10.0, places);
  const bool ends = std::abs(std::round(value * scale) / scale - value) <= smallest_share * size;
  const auto tens = std::llround(std::pow(10.0, ends ? places : usual));
  return Number::ratio(std::llround(value * static_cast<double>(tens)), tens);
}

words::Message answer_text(const Question& question, const exact::Number& number) {
  const exact::Shown shown = exact::shown(number, most_places);
  if (question.unit) {
    return message("{amount}", {{"amount", words::Amount{shown.text, question.unit->text()}}});
  }
  if (question.asked == Asked::Scale) {
    return message("{count} times", {{"count", shown.text}});
  }
  if (question.packs && question.packs->cost) {
    const exact::Number cents = exact::rounded(number, 2);
    const bool is_plain = cents.is_whole();
    return message("{cost}", {{"cost", question.supply->price->sign +
                                           (is_plain ? exact::shown(cents, 0).text : exact::fixed_text(cents, 2))}});
  }
  const bool is_named = counts_parts(question.asked) && question.asked != Asked::Parts;
  const std::string item = is_named ? part_counted(question.asked) : question.item;
  return item.empty() ? message("{count}", {{"count", shown.text}})
                      : message("{count} {item#count}", {{"count", shown.text}, {"item", words::Noun{item}}});
}

words::Message amount_shown(const exact::Shown& shown, const std::optional<units::Unit>& unit) {
  const words::Amount amount{shown.text, unit ? unit->text() : ""};
  return shown.exact ? message("{amount}", {{"amount", amount}}) : message("≈ {amount}", {{"amount", amount}});
}

std::vector<Choice> number_choices(const lessons::Problem& problem, const Question& question, Seed& seed) {
  const Figure figure = figure_of(problem, question);
  std::vector<Candidate> all = table_candidates(figure);
  Picking picking(question);
  const double truth = question.truth->to_double();
  const auto is_far = [&](const Candidate& one) {
    return one.value > most_apart * truth || one.value * most_apart < truth;
  };
  const auto is_good = [&](const Candidate& one) { return !one.is_shared && !one.is_rare && !is_far(one); };
  // The likeliest mistake always comes, then one of another family; the others are drawn.
  const auto likeliest = std::find_if(all.begin(), all.end(), is_good);
  if (likeliest != all.end()) {
    picking.take(*likeliest);
  }
  shuffle(all, seed);
  const auto other_family = std::find_if(
      all.begin(), all.end(), [&](const Candidate& one) { return is_good(one) && !picking.has_family(one.id); });
  if (other_family != all.end()) {
    picking.take(*other_family);
  }
  for (const Candidate& one : all) {
    if (is_good(one)) {
      picking.take(one);
    }
  }
  for (const bool is_rare : {false, true}) {
    for (const Candidate& one : all) {
      if (!one.is_shared && one.is_rare == is_rare) {
        picking.take(one);
      }
    }
  }
  for (const Candidate& one : slip_candidates(figure)) {
    picking.take(one);
  }
  for (const Candidate& one : all) {  // that two mistakes lead to one number is better than no option
    picking.take(one);
  }
  return std::move(picking).taken();
}

}  // namespace fw::practice
