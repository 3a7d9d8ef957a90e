#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "practice/choice_parts.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/copies/copy.hpp"
#include "tasks/generate/scale_models.hpp"
#include "units/write_quantity.hpp"

// How many times as long the edges of a copy are.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::Fact;
using practice::Hint;
using reasoning::Outcome;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;

class Factor : public practice::NumberTask {
 public:
  Factor(KnownOfCopy known, Number factor) : known_(std::move(known)), factor_(std::move(factor)) {}

  [[nodiscard]] std::string key() const override { return "scale"; }
  [[nodiscard]] std::string find() const override { return "scale"; }
  void write(Members& members) const override {
    members.emplace_back("scale", lessons::quote("?"));
    members.emplace_back("copy", lessons::object_in_line({{known_.measure, lessons::quote(known_.quantity.text)}}));
  }
  [[nodiscard]] std::string measure() const override { return {}; }
  [[nodiscard]] words::Message sentence(const Problem&) const override {
    return message("How many times as long are the edges of the scaled copy?");
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "factor"; }
  [[nodiscard]] std::vector<Fact> facts(const Problem& problem) const override {
    const Noun measure{reasoning::title_named(problem.solid, known_.measure)};
    return {
        {known_.quantity.number.text, message("The {measure} of the scaled copy is {value}.",
                                              {{"measure", measure}, {"value", practice::value_of(known_.quantity)}})}};
  }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(const Problem& problem,
                                                                const reasoning::ClassNotation&) const override {
    return practice::hints_to_task(*work(problem, 2));
  }
  [[nodiscard]] words::Message asks_to_type() const override { return message("how many times"); }
  [[nodiscard]] std::string given_number() const override { return "?"; }

 private:
  [[nodiscard]] int dimension() const { return lessons::dimension_of_whole(known_.measure).value_or(2); }

  KnownOfCopy known_;
  Number factor_;
};

// ---- read ----

std::optional<KnownOfCopy> read_known_of_copy(const JsonNode& node, const solids::Solid& solid,
                                              const Context& context) {
  if (!node.is(JsonNode::Kind::Object) || node.keys.size() != 1) {
    context.fault(node,
                  message("\"copy\" is an object with one measure, such as {example}; found {found}",
                          {{"example", "{\"surface_area\": \"4576 cm^2\"}"}, {"found", lessons::found_members(node)}}));
    return std::nullopt;
  }
  check_keys(node, lessons::whole_measures(), "\"copy\"", context);
  const std::string& key = node.keys.front();
  const std::optional<int> dimension = lessons::dimension_of_whole(key);
  if (!dimension) {
    return std::nullopt;
  }
  const Context here = context.at(key);
  const auto quantity = lessons::read_quantity(node.items.front(), *dimension, here);
  if (!quantity) {
    return std::nullopt;
  }
  if (!quantity->unit.converts_to(solid.unit().to_the(*dimension))) {
    here.fault(node.items.front(), not_comparable(*quantity, solid));
    return std::nullopt;
  }
  return KnownOfCopy{key, *quantity};
}

// How many times as long the edges of the copy are, by one area or volume of it.
std::optional<Number> factor_from(const Problem& problem, const KnownOfCopy& copy, const JsonNode& node,
                                  const Context& context) {
  const units::WrittenQuantity& quantity = copy.quantity;
  const int dimension = *lessons::dimension_of_whole(copy.measure);
  const std::optional<Number> original = lessons::asked_value(problem, problem.solid, copy.measure);
  if (!original) {
    context.fault(node, message("{solid:a} has no measure {measure}",
                                {{"solid", Noun{problem.solid.name()}}, {"measure", in_quotes(copy.measure)}}));
    return std::nullopt;
  }
  const Number amount =
      quantity.number.value * units::conversion(quantity.unit, problem.solid.unit().to_the(dimension));
  const Number ratio = amount / *original;
  const Number factor = dimension == 2 ? exact::square_root(ratio) : exact::cube_root(ratio);
  if (!factor.is_rational() || factor == Number::whole(1)) {
    const exact::Shown shown = exact::shown(factor, 3);
    const Number nearest = std::max(exact::rounded(factor, 1), Number::ratio(1, 2));
    const exact::Shown fits = exact::shown(*original * exact::power(nearest, dimension), 4);
    context.fault(node, message("{value} makes the edges {factor} times as long, which does not work as a scale "
                                "factor; {fitting} makes them {nearest} times as long",
                                {{"value", in_quotes(quantity.text)},
                                 {"factor", practice::amount_shown(shown, std::nullopt)},
                                 {"fitting", reasoning::about(fits, problem.solid.unit().to_the(dimension).ascii())},
                                 {"nearest", exact::shown(nearest, 1).text}}));
    return std::nullopt;
  }
  return factor;
}

// ---- made up ----

std::optional<Problem> made_factor(const Blueprint& drawn_blueprint, Seed& seed) {
  static const CopyStories stories{
      {"The solid shown is a scale model of {a thing}. The real {thing} has a {measure} of {amount}. How many times as "
       "long "
       "are its edges?",
       "{Who} makes this scale model of {a thing}. The real {measure} is {amount}. How many times as long are the real "
       "edges?",
       "This is a model of {a thing}, and the {measure} of the real {thing} is {amount}. How many times as long are "
       "its "
       "edges?"},
      {"{Who} makes a larger copy of {a thing}, with a {measure} of {amount}. How many times as long are its edges?",
       "A giant copy of {a thing} has a {measure} of {amount}. How many times as long are the edges of the copy?",
       "The {measure} of a larger copy of {a thing} is {amount}. How many times as long is each edge of the copy?"},
      {"{Who} makes a scale model of {a thing} with a {measure} of {amount}. How many times as long are its edges?",
       "A scale model of {a thing} has a {measure} of {amount}. How many times as long are the edges of the model?",
       "The {measure} of a scale model of {a thing} is {amount}. How many times as long is each edge of the model?"}};
  const Blueprint blueprint = by_turn(drawn_blueprint);
  const std::vector<CopyPlan> plans = copy_plans(blueprint);
  if (plans.empty()) {
    return std::nullopt;
  }
  const CopyPlan& plan = plans[blueprint.trap % plans.size()];
  const Plain plain = plain_of(blueprint);
  auto problem = made_problem(blueprint.family().draw(seed, blueprint.level, plain.labels, plan.form), "");
  if (!problem) {
    return std::nullopt;
  }
  const int dimension = plain.is_volume() ? 3 : 2;
  const Number factor = exact::parse_number(plan.factor)->value;
  const Number amount = *lessons::asked_value(*problem, problem->solid, plain.find) * exact::power(factor, dimension);
  if (!exact::decimals_needed(amount, 1)) {
    return std::nullopt;
  }
  const auto written = units::written_as_shown(amount, problem->solid.unit().to_the(dimension), 1);
  problem->prompt =
      told(stories.of(plan.sort), drawn_blueprint,
           {{"amount", said_quantity(written)}, {"measure", plain.is_volume() ? "volume" : "surface area"}});
  problem->tasks = {Factor({plain.find, written}, factor)};
  return problem;
}

}  // namespace

std::vector<Task> read_factor_asked(const JsonNode& copy, const TaskText& text) {
  const Context here = text.context.at("copy");
  const auto known = read_known_of_copy(copy, text.problem.solid, here);
  const auto factor =
      known ? factor_from(text.problem, *known, copy.items.front(), here.at(known->measure)) : std::nullopt;
  return factor ? std::vector<Task>{Factor(*known, *factor)} : std::vector<Task>{};
}

Result<Question, words::Message> Factor::question(const Problem&) const {
  Question question;
  question.find = key();
  question.asked = Asked::Scale;
  question.truth = factor_;
  question.item = "times";
  question.first_step = message("Start with the sizes. How many times as large did it get?");
  question.known_dimension = known_.measure == "volume" ? 3 : 2;
  return question;
}

std::optional<TaskWork> Factor::work(const Problem& problem, int places) const {
  const units::Unit unit = problem.solid.unit().to_the(dimension());
  const Noun title{reasoning::title_named(problem.solid, known_.measure)};
  TaskSheet sheet(places);
  sheet.steps().say(
      StepKind::Ask,
      message("Find the scale factor: how many times as long the edges of the scaled copy are. It has no unit."));
  const SupplyNumber written =
      sheet.number(known_.quantity.number.value, known_.quantity.unit, Source::Kind::Known,
                   message("the {measure} of the scaled copy", {{"measure", title}}), known_.quantity.number.text);
  const SupplyNumber copy = reasoning::converted(sheet.steps(), written, unit);
  const Number original = of_original(problem, known_.measure);
  const SupplyNumber solid = sheet.number(original, unit, Source::Kind::EarlierStep,
                                          message("the {measure} of the solid, found before", {{"measure", title}}));
  const Number ratio = copy.value / original;
  SupplyNumber times = sheet.steps().work_out(
      StepKind::Count, message("How many times as large is the {measure} of the scaled copy?", {{"measure", title}}),
      copy, "÷", solid, {ratio, {}, {}, ratio.is_rational() ? plain_factor(ratio) : ""});
  const Number factor = dimension() == 2 ? exact::square_root(ratio) : exact::cube_root(ratio);
  algebra::Notation root;
  root.kind = algebra::Notation::Kind::Root;
  root.degree = dimension();
  root.parts = {sheet.steps().notation(times)};
  const Message reason = dimension() == 2 ? message("Area grows by the scale factor squared. Take the square root.")
                                          : message("Volume grows by the scale factor cubed. Take the cube root.");
  std::ignore = sheet.steps().state(StepKind::TakeRoot, reason, root, ratio.is_rational(),
                                    {factor, {}, {}, factor.is_rational() ? plain_factor(factor) : ""});
  const Message text = factor.is_rational()
                           ? message("{factor} times", {{"factor", plain_factor(factor)}})
                           : message("≈ {factor} times", {{"factor", exact::shown(factor, places).text}});
  TaskWork task{key(), known_.measure, message("then the factor"), {}, {}, {}, Outcome{factor, std::nullopt}, 0, text};
  return std::move(sheet).finished(std::move(task),
                                   message("The edges of the scaled copy are {times} as long.", {{"times", text}}));
}

namespace row {
Row factor() {
  Row row{"factor"};
  row.made = {
      {29, "factor", "find the scale factor", practice::Heading::CopiesAndUnits, 3, "undo a scale", any, made_factor}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "scale": "?", "copy": {"surface_area": "7350 cm^2"},
         "find": ["scale"])"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
