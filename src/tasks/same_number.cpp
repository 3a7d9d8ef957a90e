#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "practice/choice_parts.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/boxes.hpp"
#include "tasks/row.hpp"

// Whether a surface area and a volume of one number are the same.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::WholeBox;
using reasoning::StepKind;
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

// ---- made up ----

std::optional<Problem> made_same_number(const Blueprint& blueprint, Seed& seed) {
  // Boxes of whole edges with 2(lw + lh + wh) = lwh, but for those with an edge of over 24. Source: worked out.
  static const std::vector<WholeBox> pool{{3, 8, 24}, {3, 9, 18}, {3, 10, 15}, {3, 12, 12}, {4, 5, 20},
                                          {4, 6, 12}, {4, 8, 8},  {5, 5, 10},  {6, 6, 6}};
  const WholeBox& edges = one_of(pool, seed);
  const std::string number = std::to_string(edges[0] * edges[1] * edges[2]);
  return box_with_edges(
      blueprint, edges, seed, SameNumber(),
      told({"The surface area and the volume of {a thing} are both " + number + ". Are they the same?",
            "For {a thing} somebody works out " + number + " for the paper that covers it and " + number +
                " for the sand that fills it. Is it as much paper as sand?"},
           blueprint));
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

namespace row {
Row same_number() {
  Row row{"same_number"};
  row.named = [](const std::string& find) {
    return find == "same_number" ? std::optional<Task>(SameNumber()) : std::nullopt;
  };
  row.unfit = [](const Solid& solid) {
    return lessons::has_same_number(solid)
               ? Message()
               : message(
                     "goes with a solid whose surface area and volume are one number, such as a cube with an edge of "
                     "6 cm");
  };
  row.made = {{34, "same-number", "area and volume of one number", practice::Heading::DecideAndCheck, 2,
               "compare units", is_box, made_same_number}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "6 cm"}, "find": ["same_number"])"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
