#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "practice/choice_parts.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/boxes.hpp"
#include "tasks/decide/judged_numbers.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

// Whether a surface area and a volume of one number are the same.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::WholeBox;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;
using solids::Solid;

class SameNumber : public practice::OptionTask {
 public:
  [[nodiscard]] std::string key() const override { return "same_number"; }
  [[nodiscard]] std::string find() const override { return key(); }
  [[nodiscard]] std::string measure() const override { return {}; }
  [[nodiscard]] words::Message sentence(const Problem&) const override {
    return message("The surface area and the volume are one number. Are they the same?");
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "same-number"; }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Choice>, words::Message> choices(const Problem& problem, const Question& question,
                                                                    Seed& seed) const override;

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const Question&, const std::vector<Choice>&,
                                                        const std::string& typed) const override {
    const std::optional<bool> said = practice::yes_or_no(practice::lowered(typed));
    return said ? std::optional<std::size_t>(*said ? 1 : 0) : std::nullopt;
  }
};

// Whether a measure of the solid is as much as another quantity: "Is the volume as much as 216 mL?"
class SameAmount : public practice::OptionTask {
 public:
  SameAmount(std::string find, units::WrittenQuantity other) : find_(std::move(find)), other_(std::move(other)) {}

  [[nodiscard]] std::string key() const override { return "same_amount"; }
  [[nodiscard]] std::string find() const override { return find_; }
  void write(Members& members) const override { members.emplace_back("compare", lessons::quote(other_.text)); }
  [[nodiscard]] Message sentence(const Problem& problem) const override {
    return message("Is the {measure} the same amount as {other}?",
                   {{"measure", asked_noun(problem, find_)}, {"other", practice::value_of(other_)}});
  }
  [[nodiscard]] Result<Question, Message> question(const Problem&) const override {
    Question question;
    question.find = key();
    return question;
  }
  [[nodiscard]] std::string type(const Problem&) const override { return "same-number"; }
  [[nodiscard]] std::vector<practice::Fact> facts(const Problem&) const override {
    return {
        {other_.number.text, words::message("The other amount is {value}.", {{"value", practice::value_of(other_)}})}};
  }
  [[nodiscard]] std::string given_number() const override { return other_.text; }
  [[nodiscard]] Result<Explanation, Message> explained(const Problem& problem,
                                                       const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, Message> hints(const Problem& problem,
                                                                   const reasoning::ClassNotation&) const override {
    return practice::hints_to_task(*work(problem, 2));
  }
  [[nodiscard]] Result<std::vector<Choice>, Message> choices(const Problem& problem, const Question& question,
                                                             Seed& seed) const override;

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const Question&, const std::vector<Choice>& choices,
                                                        const std::string& typed) const override;

 private:
  enum class Verdict { Same, OtherDimension, OtherAmount };
  [[nodiscard]] Number own(const Problem& problem) const {
    const auto value = lessons::asked_value(problem, problem.solid, find_);
    return value ? *value : Number{};
  }
  [[nodiscard]] units::Unit own_unit(const Problem& problem) const {
    return problem.solid.unit().to_the(lessons::dimension_of_asked(problem.solid, find_).value_or(2));
  }
  [[nodiscard]] Verdict verdict(const Problem& problem) const {
    const units::Unit unit = own_unit(problem);
    if (other_.unit.dimension() != unit.dimension()) {
      return Verdict::OtherDimension;
    }
    return other_.number.value * units::conversion(other_.unit, unit) == own(problem) ? Verdict::Same
                                                                                      : Verdict::OtherAmount;
  }

  std::string find_;
  units::WrittenQuantity other_;
};

// ---- read ----

std::vector<Task> read_same_amount(const TaskText& text) {
  const JsonNode& node = *text.node.find("compare");
  const Context context = text.context.at("compare");
  const auto find = one_measure(text, node, "compare");
  const std::string* written = find ? lessons::text_at(node, message("an area or a volume"), context) : nullptr;
  if (written == nullptr) {
    return {};
  }
  const auto other = units::parse_quantity(*written);
  const units::Unit unit = text.problem.solid.unit();
  const bool is_comparable = other && other->unit.dimension() > 1 &&
                             other->unit.converts_to(unit.to_the(other->unit.dimension())) &&
                             lessons::dimension_of_asked(text.problem.solid, *find).value_or(1) > 1;
  if (!is_comparable) {
    context.fault(node, message("{written} can't be compared with it: write an area or a volume, such as \"216 cm^3\" "
                                "or \"2 L\", and ask for an area or the volume",
                                {{"written", lessons::in_quotes(*written)}}));
    return {};
  }
  return {SameAmount(*find, *other)};
}

// ---- made up ----

// Boxes of whole edges with 2(lw + lh + wh) = lwh, but for those with an edge of over 24. Source: worked out.
std::optional<Problem> made_with_one_number(const Blueprint& blueprint, Seed& seed) {
  static const std::vector<WholeBox> pool{{3, 8, 24}, {3, 9, 18}, {3, 10, 15}, {3, 12, 12}, {4, 5, 20},
                                          {4, 6, 12}, {4, 8, 8},  {5, 5, 10},  {6, 6, 6}};
  static const Stories stories{
      "The surface area and the volume of {a thing} are both {number}. Are they the same amount?",
      "{Who} gets {number} for the surface area of {a thing} and {number} for its volume. Are they "
      "the same amount?",
      "{A thing} takes {number} for its surface area and {number} for its volume. Is one amount "
      "equal to the other?"};
  std::vector<WholeBox> fitting;
  for (const WholeBox& edges : pool) {
    for (const WholeBox& turned : turned_to_fit(blueprint.form(), edges)) {
      fitting.push_back(turned);
    }
  }
  if (fitting.empty()) {
    return std::nullopt;
  }
  const WholeBox& edges = one_of(fitting, seed);
  const std::string number = std::to_string(edges[0] * edges[1] * edges[2]);
  return box_with_edges(blueprint, edges, SameNumber(), told(stories, blueprint, {{"number", number}}));
}

// What the measure is compared with: its unit, and by what the number is divided. At level 2 the number is the same; at
// level 3 it is converted, by the factor that is right or by that of a length.
struct Other {
  std::string unit;
  long long divisor = 1;
};
struct Comparison {
  std::string find, of_solid;
  std::vector<Other> same, not_same;
};
const std::vector<Comparison>& comparisons(int level) {
  static const std::vector<Comparison> plain{{"volume", "cm", {{"mL"}}, {{"cm^2"}, {"L"}}},
                                             {"surface_area", "cm", {{"cm^2"}}, {{"mL"}, {"m^2"}}},
                                             {"volume", "in", {{"in^3"}}, {{"in^2"}, {"ft^3"}}},
                                             {"surface_area", "in", {{"in^2"}}, {{"in^3"}, {"ft^2"}}}};
  static const std::vector<Comparison> converted{
      {"volume", "cm", {{"L", 1000}}, {{"L", 100}, {"L", 10}}},
      {"surface_area", "cm", {{"m^2", 10000}}, {{"m^2", 100}}},
      {"volume", "in", {{"ft^3", 1728}}, {{"ft^3", 12}, {"ft^3", 144}}},
      {"surface_area", "in", {{"ft^2", 144}}, {{"ft^2", 12}}},
  };
  return level < 3 ? plain : converted;
}

// What holds or covers so much, from the smallest on; nothing where it would be more than anything of the fair. In
// liters and square meters. Source: common practice, no source.
struct Measured {
  double most;
  const char* told;
};
const char* measured_by(const units::WrittenQuantity& amount) {
  static const std::vector<Measured> holders{{4, "jug holds"},
                                             {20, "bucket holds"},
                                             {150, "trash can holds"},
                                             {500, "bathtub holds"},
                                             {3000, "kiddie pool holds"}};
  static const std::vector<Measured> covers{
      {0.5, "sheet of paper covers"}, {4, "banner covers"}, {30, "tarp covers"}, {300, "tent roof covers"}};
  const bool is_volume = amount.unit.dimension() == 3;
  const units::Unit unit = *units::Unit::find(is_volume ? "L" : "m^2");
  const double size = (amount.number.value * units::conversion(amount.unit, unit)).to_double();
  const std::vector<Measured>& all = is_volume ? holders : covers;
  const auto found = std::find_if(all.begin(), all.end(), [&](const Measured& one) { return size <= one.most; });
  return found == all.end() ? nullptr : found->told;
}

std::optional<Problem> made_same_number(const Blueprint& blueprint, Seed& seed) {
  // Half of them are the same; of the others at level 2 some ask about one number twice.
  const bool is_same = blueprint.turn % 2 == 0;
  if (blueprint.level < 3 && blueprint.turn % 4 == 1) {
    return made_with_one_number(blueprint, seed);
  }
  std::vector<Comparison> fitting;
  for (const Comparison& one : comparisons(blueprint.level)) {
    if (one.of_solid == blueprint.unit()) {
      fitting.push_back(one);
    }
  }
  auto problem = fitting.empty() ? std::nullopt : made_problem(blueprint.draw(seed, Labels::All), "");
  if (!problem) {
    return std::nullopt;
  }
  const Comparison& comparison = fitting[blueprint.pick % fitting.size()];
  const std::vector<Other>& others = is_same ? comparison.same : comparison.not_same;
  const Other& other = others[blueprint.trap % others.size()];
  const Number amount = *lessons::asked_value(*problem, problem->solid, comparison.find);
  const exact::Shown own = exact::shown(amount, 1);
  const Number divided = amount / Number::whole(other.divisor);
  if (!own.exact || !exact::decimals_needed(divided, 3)) {
    return std::nullopt;
  }
  const auto written = units::written_as_shown(divided, *units::Unit::find(other.unit), 3);
  const char* other_told = measured_by(written);
  if (other_told == nullptr) {
    return std::nullopt;
  }
  static const Stories told_own{
      "{A thing} has a {measure} of {own}. A {other} {amount}. Is that the same amount?",
      "{Who} gets {own} for the {measure} of {a thing}. A {other} {amount}. Are the two amounts the same?",
      "A {other} {amount}, and {a thing} has a {measure} of {own}. Are these the same amount?"};
  static const Stories worked_out{
      "A {other} {amount}. Is that the same amount as the {measure} of {a thing} of this size?",
      "{Who} finds the {measure} of {a thing}. A {other} {amount}. Are the two amounts the same?",
      "Find the {measure} of {a thing}. A {other} {amount}. Is that the same amount?"};
  const bool is_volume = comparison.find == "volume";
  problem->tasks = {SameAmount(comparison.find, written)};
  problem->prompt = told(blueprint.level < 3 ? told_own : worked_out, blueprint,
                         {{"own", own.text + " " + problem->solid.unit().to_the(is_volume ? 3 : 2).text()},
                          {"measure", is_volume ? "volume" : "surface area"},
                          {"other", other_told},
                          {"amount", said_quantity(written)}});
  return problem;
}

}  // namespace

Result<Question, words::Message> SameNumber::question(const Problem&) const {
  Question question;
  question.find = key();
  return question;
}

std::optional<TaskWork> SameNumber::work(const Problem& problem, int) const {
  const Solid& solid = problem.solid;
  TaskSheet sheet(2);
  sheet.steps().say(StepKind::Ask, message("Decide whether the surface area and the volume are the same."));
  const auto tell = [&](const Message& reason, const char* letter, const Number& amount, int dimension) {
    sheet.steps().state(StepKind::Count, reason, algebra::leaf(algebra::Notation::Kind::Letter, letter), true,
                        {amount, solid.unit().to_the(dimension), {}, ""});
  };
  tell(message("The surface area, in squares that cover it."), "S", solid.surface_area().amount(), 2);
  tell(message("The volume, in cubes that fill it."), "V", solid.volume().amount(), 3);
  sheet.steps().say(StepKind::Check,
                    message("A square is not a cube. In a different unit, even the numbers would be different."));
  return std::move(sheet).finished(
      {key(), "", {}, message("one number, two quantities"), {}, {}, std::nullopt, 0, message("no")},
      message("No. The number is the same, but what it counts is not."));
}

Result<std::vector<Choice>, words::Message> SameNumber::choices(const Problem& problem, const Question&, Seed&) const {
  const std::string number = exact::shown(problem.solid.volume().amount(), 2).text;
  const std::string square = problem.solid.unit().to_the(2).text();
  return std::vector<Choice>{
      practice::right_choice(message("no, squares cover it and cubes fill it"), message("Right.")),
      practice::wrong_choice(
          message("yes: {number} is {number}", {{"number", number}}), "G1",
          message("\"Yes\" would mean that a square is a cube. What does each of the {number} count?",
                  {{"number", number}})),
      practice::wrong_choice(message("yes, once both are in {unit}", {{"unit", square}}), "G2",
                             message("You can't fill a space with squares. What little shape fills it?")),
      practice::wrong_choice(message("no, one of the two is a mistake"), "A1",
                             message("Both numbers are right. What does each one count?"))};
}

std::optional<TaskWork> SameAmount::work(const Problem& problem, int places) const {
  const units::Unit unit = own_unit(problem);
  const Noun title{reasoning::title_named(problem.solid, find_)};
  const Message own_text = judged_amount(own(problem), unit, places);
  const words::Value other = practice::value_of(other_);
  TaskSheet sheet(places);
  const Verdict judged = verdict(problem);
  const auto finished = [&](const Message& answer, const Message& sentence) {
    return std::move(sheet).finished(
        {key(), find_, message("then compare"), message("same amount"), {}, {}, std::nullopt, 0, answer}, sentence);
  };
  if (judged == Verdict::OtherDimension) {
    const Message check = unit.dimension() == 2
                              ? message("The {measure} is {own}: squares that cover. {other} are cubes that fill.",
                                        {{"measure", title}, {"own", own_text}, {"other", other}})
                              : message("The {measure} is {own}: cubes that fill. {other} are squares that cover.",
                                        {{"measure", title}, {"own", own_text}, {"other", other}});
    sheet.steps().say(StepKind::Check, check);
    return finished(message("no"), message("No, one covers and the other fills."));
  }
  const SupplyNumber mine = sheet.number(own(problem), unit, Source::Kind::EarlierStep,
                                         message("the {measure}, found before", {{"measure", title}}));
  std::ignore = reasoning::converted(sheet.steps(), mine, other_.unit);
  sheet.steps().say(StepKind::Check, message("Compare it with {other}.", {{"other", other}}));
  return judged == Verdict::Same ? finished(message("yes"), message("Yes, it is the same amount."))
                                 : finished(message("no"), message("No, the amounts are different."));
}

Result<std::vector<Choice>, Message> SameAmount::choices(const Problem& problem, const Question&, Seed&) const {
  const Verdict judged = verdict(problem);
  const bool is_dimension = judged == Verdict::OtherDimension;
  const auto option = [&](Verdict of, const Message& text, const std::string& cause, const Message& why) {
    return of == judged ? practice::right_choice(text, message("Right.")) : practice::wrong_choice(text, cause, why);
  };
  const Message convert = message("Convert one amount to the unit of the other. Do the numbers agree?");
  return std::vector<Choice>{
      option(Verdict::Same, message("yes, it is the same amount"), is_dimension ? "G1" : "G2",
             is_dimension ? message("Yes would mean that a square is a cube. Which unit covers, and which one fills?")
                          : convert),
      option(Verdict::OtherDimension, message("no, one covers and the other fills"), "G1",
             message("Both units measure the same kind of thing. Do they both cover, or do they both fill?")),
      option(Verdict::OtherAmount, message("no, one amount is larger"), "G2",
             is_dimension ? message("Look at the units. Does each one cover or fill?") : convert)};
}

std::optional<std::size_t> SameAmount::option_meant(const Question&, const std::vector<Choice>& choices,
                                                    const std::string& typed) const {
  const std::optional<bool> said = practice::yes_or_no(practice::lowered(typed));
  if (!said) {
    return std::nullopt;
  }
  // A plain "no" means the reason that is right, where no is right.
  return *said ? 0U : choices[1].is_right ? 1U : 2U;
}

namespace row {
Row same_number() {
  Row row{"same_number", {"compare"}, true};
  row.read = read_same_amount;
  row.finds = {"same_number"};
  row.named = [](const std::string&) { return Task(SameNumber()); };
  row.unfit = [](const Solid& solid) {
    return lessons::has_same_number(solid)
               ? Message()
               : message(
                     "goes with a solid whose surface area and volume are one number, such as a cube with an edge of "
                     "6 cm");
  };
  row.made = {{34, "same-number", "same number, same amount?", practice::Heading::DecideAndCheck, 2, "compare units",
               is_box, made_same_number}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "6 cm"}, "find": ["same_number"])",
                  R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["volume"], "compare": "343 mL")",
                  R"("solid": {"kind": "cube", "edge": "10 cm"}, "find": ["surface_area"], "compare": "6 m^2")",
                  R"("solid": {"kind": "cube", "edge": "7 in"}, "find": ["volume"], "compare": "294 in^2")"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
