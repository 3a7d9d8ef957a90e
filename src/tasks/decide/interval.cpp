#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_measure.hpp"
#include "practice/choice_parts.hpp"
#include "practice/signatures.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/ledger.hpp"
#include "reasoning/supply_steps.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/decide/judged_numbers.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

// Between which bounds a measure lies.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::Hint;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;

constexpr std::size_t most_bounds = 9;

class Interval : public practice::OptionTask {
 public:
  /// `between`: bounds in rising order.
  Interval(std::string find, std::vector<units::WrittenQuantity> between)
      : find_(std::move(find)), between_(std::move(between)) {}

  [[nodiscard]] std::string key() const override { return "interval"; }
  [[nodiscard]] std::string find() const override { return find_; }
  void write(Members& members) const override {
    std::vector<std::string> bounds;
    for (const units::WrittenQuantity& bound : between_) {
      bounds.push_back(lessons::quote(bound.text));
    }
    members.emplace_back("between", lessons::in_line(bounds, '[', ']'));
  }
  [[nodiscard]] words::Message sentence(const Problem& problem) const override {
    return message("Between which two numbers does the {measure} lie?", {{"measure", asked_noun(problem, find_)}});
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "estimate"; }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(
      const Problem& problem, const reasoning::ClassNotation& notation) const override {
    return Measure(find_).hints(problem, notation);
  }
  [[nodiscard]] Result<std::vector<Choice>, words::Message> choices(const Problem& problem, const Question& question,
                                                                    Seed& seed) const override;

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const Question& question, const std::vector<Choice>&,
                                                        const std::string& typed) const override;

 private:
  [[nodiscard]] std::vector<Number> bounds_in(const units::Unit& unit) const {
    std::vector<Number> bounds;
    for (const units::WrittenQuantity& bound : between_) {
      bounds.push_back(amount_in(bound, unit));
    }
    return bounds;
  }

  std::string find_;
  std::vector<units::WrittenQuantity> between_;
};

words::Amount shown_bound(const units::WrittenQuantity& bound) { return {bound.number.text, bound.unit.text()}; }

Message between(const words::Value& low, const words::Value& high) {
  return message("between {low} and {high}", {{"low", low}, {"high", high}});
}

// ---- read ----

void check_bounds(const JsonNode& node, const Problem& problem, const std::string& find,
                  const std::vector<units::WrittenQuantity>& between, const Context& context) {
  const units::Unit unit = problem.solid.unit().to_the(*lessons::dimension_of_asked(problem.solid, find));
  const Number value = *lessons::asked_value(problem, problem.solid, find);
  std::vector<Number> bounds;
  for (std::size_t i = 0; i < between.size(); ++i) {
    const units::WrittenQuantity& bound = between[i];
    if (!bound.unit.converts_to(unit)) {
      context.fault(node.items[i], not_comparable(bound, problem.solid));
      return;
    }
    bounds.push_back(bound.number.value * units::conversion(bound.unit, unit));
    if (i > 0 && bounds[i] <= bounds[i - 1]) {
      context.fault(node.items[i],
                    message("list the bounds from least to greatest: {bound} is not more than {before}",
                            {{"bound", in_quotes(bound.text)}, {"before", in_quotes(between[i - 1].text)}}));
      return;
    }
  }
  const exact::Shown shown = exact::shown(value, 2);
  const Message what =
      message("{number} {unit}", {{"number", practice::amount_shown(shown, std::nullopt)}, {"unit", unit.ascii()}});
  if (value < bounds.front() || value > bounds.back()) {
    context.fault(
        node,
        message("the answer is {value}, which is in none of these intervals: give a bound below it and one above it",
                {{"value", what}}));
  } else if (std::find(bounds.begin(), bounds.end(), value) != bounds.end()) {
    context.fault(node,
                  message("the answer is {value}, which is one of the bounds: move this bound", {{"value", what}}));
  }
}

std::vector<Task> read_interval(const TaskText& text) {
  const JsonNode& node = *text.node.find("between");
  const Context context = text.context.at("between");
  const Problem& problem = text.problem;
  if (!node.is(JsonNode::Kind::List) || node.items.size() < 3 || node.items.size() > most_bounds) {
    const words::Value found =
        node.is(JsonNode::Kind::List) ? words::Value(node.items.size()) : words::Value(lessons::found_text(node));
    context.fault(node, message("\"between\" is a list of 3 to {most} bounds, such as [\"100 cm^2\", \"200 cm^2\", "
                                "\"400 cm^2\"]; found {found}",
                                {{"most", most_bounds}, {"found", found}}));
    return {};
  }
  const auto find = one_measure(text, node, "between");
  if (!find) {
    return {};
  }
  std::vector<units::WrittenQuantity> between;
  for (const JsonNode& item : node.items) {
    const auto bound = lessons::read_quantity(item, *lessons::dimension_of_asked(problem.solid, *find), context);
    if (!bound) {
      return {};
    }
    between.push_back(*bound);
  }
  check_bounds(node, problem, *find, between, context);
  return {Interval(*find, std::move(between))};
}

// ---- worked ----

// To one digit that counts: 63 -> 60, 126 -> 100, 0.45 -> 0.5.
Number to_one_digit(const Number& number) {
  Number scale = Number::whole(1);
  Number digit = number;
  while (digit >= Number::whole(10)) {
    digit = digit / Number::whole(10);
    scale = scale * Number::whole(10);
  }
  while (digit < Number::whole(1) && !digit.is_zero()) {
    digit = digit * Number::whole(10);
    scale = scale / Number::whole(10);
  }
  return exact::rounded(digit, 0) * scale;
}

// The lengths of a volume, or the kinds of faces of an area, each to one digit, and what they come to.
void write_estimate(const Problem& problem, const std::string& find, const units::Unit& unit, TaskSheet& sheet) {
  std::vector<algebra::Notation> parts;
  Number sum;
  std::vector<std::size_t> groups;
  std::vector<std::string> areas;  // "6 × 5 = 30"
  const reasoning::Ledger ledger = reasoning::ledger(problem.solid, {}, reasoning::Grouping::EachFace);
  for (const solids::Face& face : problem.solid.faces()) {
    const auto counts = [&](const solids::Face& one) {
      return one.group == face.group && (find == "surface_area" || one.role == solids::FaceRole::Lateral);
    };
    const auto& faces = problem.solid.faces();
    const auto alike = static_cast<long long>(std::count_if(faces.begin(), faces.end(), counts));
    if (alike == 0 || std::find(groups.begin(), groups.end(), face.group.index()) != groups.end()) {
      continue;
    }
    groups.push_back(face.group.index());
    const Number rough = to_one_digit(face.area.amount());
    const exact::Shown area = exact::shown(face.area.amount(), 2);
    areas.push_back(ledger.rows[face.id.index()].work + (area.exact ? " = " : " ≈ ") + area.text);
    sum = sum + Number::whole(alike) * rough;
    if (!parts.empty()) {
      parts.push_back(reasoning::sign("+"));
    }
    if (alike > 1) {
      parts.push_back(algebra::leaf(algebra::Notation::Kind::Number, std::to_string(alike)));
      parts.push_back(reasoning::sign("×"));
    }
    parts.push_back(sheet.steps().notation({rough, unit, std::nullopt, ""}));
  }
  std::ignore = sheet.steps().state(
      StepKind::Work,
      message("Estimate first. The areas are {areas:and}. Round each to one digit and add.", {{"areas", areas}}),
      algebra::row(std::move(parts)), true, {sum, unit, {}, ""});
}

bool is_added_up(const Problem& problem, const std::string& find) {
  return (find == "surface_area" && problem.open.empty()) || find == "lateral_area";
}

// ---- made up ----

// Rising numbers of one digit, each 1.5 to 3 times the one before.
std::vector<long long> bounds_around(double truth, std::size_t ladder, std::size_t place) {
  static const std::vector<std::vector<int>> ladders{{1, 2, 5}, {1, 3, 6}, {2, 4, 7}};
  std::vector<long long> all;
  for (long long tens = 1; tens < 100'000'000; tens *= 10) {
    for (const int digit : ladders[ladder % ladders.size()]) {
      all.push_back(digit * tens);
    }
  }
  const auto above =
      std::find_if(all.begin(), all.end(), [&](long long one) { return static_cast<double>(one) > truth; });
  const auto index = static_cast<std::size_t>(above - all.begin());
  constexpr std::size_t bounds = 4;
  constexpr double margin = 1.1;  // nearer to a bound, it would take an exact number to decide
  const bool is_clear = index > 0 && index < all.size() && static_cast<double>(all[index - 1]) * margin < truth &&
                        truth * margin < static_cast<double>(all[index]);
  const std::size_t first = index - 1 - std::min(index - 1, place % (bounds - 1));
  std::vector<long long> found;
  for (std::size_t i = first; is_clear && i < first + bounds && i < all.size(); ++i) {
    found.push_back(all[i]);
  }
  return found;
}

std::optional<Problem> made_interval(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = plain_problem(blueprint, seed);
  if (!problem) {
    return std::nullopt;
  }
  const std::string find = plain_of(blueprint).find;
  const Number truth = *lessons::asked_value(*problem, problem->solid, find);
  std::vector<units::WrittenQuantity> between;
  for (const long long bound : bounds_around(truth.to_double(), blueprint.story / 2, blueprint.pick)) {
    between.push_back(units::written_whole(bound, problem->solid.unit().to_the(find == "volume" ? 3 : 2)));
  }
  if (between.size() < 4) {
    return std::nullopt;
  }
  problem->tasks = {Interval(find, std::move(between))};
  problem->prompt = told({"Estimate the {measure} of {a thing} of this size. Between which two numbers is it?",
                          "{Who} estimates the {measure} of {a thing}. Between which two numbers is it?",
                          "Round the lengths of {a thing}, then estimate. Between which two numbers is its {measure}?"},
                         drawn_blueprint, {{"measure", find == "volume" ? "volume" : "surface area"}});
  return problem;
}

}  // namespace

Result<Question, words::Message> Interval::question(const Problem& problem) const {
  auto of_measure = Measure(find_).question(problem);
  if (!of_measure) {
    return of_measure;
  }
  Question question = std::move(of_measure).value();
  question.find = key();
  return question;
}

std::optional<TaskWork> Interval::work(const Problem& problem, int places) const {
  const units::Unit unit = problem.solid.unit().to_the(lessons::dimension_of_asked(problem.solid, find_).value_or(1));
  const auto value = lessons::asked_value(problem, problem.solid, find_);
  const Number amount = value ? *value : Number{};
  TaskSheet sheet(places);
  const bool has_estimate = is_added_up(problem, find_);
  if (has_estimate) {
    write_estimate(problem, find_, unit, sheet);
  }
  TaskWork task{key(), find_, message("then the interval"), {}, {}, {}, std::nullopt, 0, {}};
  task.lead = has_estimate ? 1 : 0;
  const auto& bounds = between_;
  const units::Unit asked = bounds.front().unit;
  Number there = amount;
  if (!(asked == unit)) {
    const SupplyNumber found = sheet.number(
        amount, unit, reasoning::Source::Kind::EarlierStep,
        message("the {measure}, found before", {{"measure", Noun{reasoning::title_named(problem.solid, find_)}}}));
    there = reasoning::converted(sheet.steps(), found, asked).value;
  }
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    if (amount_in(bounds[i], unit) < amount && amount < amount_in(bounds[i + 1], unit)) {
      task.answer = between(practice::value_of(bounds[i]), practice::value_of(bounds[i + 1]));
    }
  }
  if (task.answer.empty()) {
    task.answer = amount < amount_in(bounds.front(), unit)
                      ? message("below {bound}", {{"bound", practice::value_of(bounds.front())}})
                      : message("above {bound}", {{"bound", practice::value_of(bounds.back())}});
  }
  const Message sentence =
      message("The {measure} of {amount} is {place}.", {{"measure", Noun{reasoning::title_named(problem.solid, find_)}},
                                                        {"amount", judged_amount(there, asked, places)},
                                                        {"place", task.answer}});
  return std::move(sheet).finished(std::move(task), sentence);
}

Result<std::vector<Choice>, words::Message> Interval::choices(const Problem& problem, const Question& question,
                                                              Seed&) const {
  const std::vector<Number> bounds = bounds_in(*question.unit);
  const practice::Figure figure = practice::figure_of(problem, question);
  const std::vector<practice::WrongNumber> mistakes = practice::wrong_numbers(figure);
  std::vector<Choice> choices;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const Message text = between(shown_bound(between_[i]), shown_bound(between_[i + 1]));
    const double low = bounds[i].to_double();
    const double high = bounds[i + 1].to_double();
    if (low < question.truth->to_double() && question.truth->to_double() < high) {
      choices.push_back(practice::right_choice(
          text, message("Right. It comes to {answer}.",
                        {{"answer",
                          practice::answer_text(question, practice::as_written_down(question.truth->to_double()))}})));
      continue;
    }
    const auto lands = std::find_if(mistakes.begin(), mistakes.end(), [&](const practice::WrongNumber& one) {
      return low < one.value && one.value < high;
    });
    const bool is_low = high <= question.truth->to_double();
    const Message size = is_low ? message("That's too low.") : message("That's too high.");
    if (lands == mistakes.end()) {
      const Message again = message("Round each length to one digit and estimate again.");
      choices.push_back(practice::wrong_choice(text, "M1", words::one_after_another({size, again})));
    } else {
      const std::string number = exact::shown(practice::as_written_down(lands->value), 9).text;
      const Message mistake = lands->signature->saying.about(number);
      choices.push_back(practice::wrong_choice(text, lands->signature->id, words::one_after_another({size, mistake})));
      choices.back().faces = lands->faces;
    }
  }
  return choices;
}

std::optional<std::size_t> Interval::option_meant(const Question& question, const std::vector<Choice>&,
                                                  const std::string& typed) const {
  std::string low = practice::lowered(typed);
  for (const std::string word : {"between", "from"}) {
    for (std::size_t at = low.find(word); at != std::string::npos; at = low.find(word)) {
      low.erase(at, word.size());
    }
  }
  const std::vector<practice::TypedAnswer> read = practice::quantities_in(low, {"–", " and ", " to ", "-", "<"});
  std::vector<Number> numbers;
  for (const practice::TypedAnswer& one : read) {
    const std::optional<units::Unit> unit = one.unit ? one.unit : read.back().unit;
    if (unit && !unit->converts_to(*question.unit)) {
      return std::nullopt;
    }
    numbers.push_back(one.number.value * (unit ? units::conversion(*unit, *question.unit) : Number::whole(1)));
  }
  const std::vector<Number> bounds = bounds_in(*question.unit);
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    const bool is_pair = numbers.size() == 2 && numbers[0] == bounds[i] && numbers[1] == bounds[i + 1];
    const bool is_inside = numbers.size() == 1 && bounds[i] < numbers[0] && numbers[0] < bounds[i + 1];
    if (is_pair || is_inside) {
      return i;
    }
  }
  return std::nullopt;
}

namespace row {
Row interval() {
  Row row{"interval", {"between"}, true};
  row.read = read_interval;
  row.made = {{23, "estimate", "estimate an area or a volume", practice::Heading::DecideAndCheck, 1, "estimate", any,
               made_interval}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["surface_area"],
         "between": ["100 cm^2", "200 cm^2", "400 cm^2"])"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
