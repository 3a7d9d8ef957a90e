#include "tasks/decide/claim.hpp"

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "practice/choice_parts.hpp"
#include "practice/slips.hpp"
#include "practice/told_prompt.hpp"
#include "reasoning/task_sheet.hpp"
#include "solids/catalog.hpp"
#include "tasks/decide/judged_numbers.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::AnswerVerdict;
using practice::Diagnosis;
using practice::Fact;
using practice::Hint;
using practice::TypedAnswer;
using reasoning::StepKind;
using reasoning::TaskSheet;

// A length in what was typed beside "no": "no, 13 cm".
std::optional<TypedAnswer> value_beside(std::string_view typed) {
  const std::size_t digit = typed.find_first_of("0123456789");
  if (digit == std::string_view::npos) {
    return std::nullopt;
  }
  const auto read = practice::read_answer(typed.substr(digit));
  return read ? std::optional(*read) : std::nullopt;
}

// ---- read ----

// Lengths that a lesson could write for this solid, and does not.
void push_claimable(const solids::Description& description, const std::vector<solids::Field>& fields,
                    const std::string& before, std::vector<std::string>& names) {
  for (const solids::Field& field : fields) {
    if (field.type == solids::FieldType::Length && description.fields.count(field.key) == 0) {
      names.push_back(before + field.key);
    }
  }
}
std::vector<std::string> claimable_labels(const Problem& problem) {
  std::vector<std::string> names;
  push_claimable(problem.description, solids::find_kind(problem.description.kind)->fields, "", names);
  for (const solids::Description& base : problem.description.base) {
    push_claimable(base, solids::find_base_shape(base.kind)->fields, "base.", names);
  }
  names.erase(
      std::remove_if(names.begin(), names.end(),
                     [&](const std::string& name) { return !lessons::asked_value(problem, problem.solid, name); }),
      names.end());
  return names;
}

std::vector<Task> read_claim(const TaskText& text) {
  const JsonNode& node = *text.node.find("claim");
  const Context context = text.context.at("claim");
  const Problem& problem = text.problem;
  if (!node.is(JsonNode::Kind::Object) || node.keys.size() != 1) {
    context.fault(node,
                  message("\"claim\" is an object with one label, such as {example}; found {found}",
                          {{"example", "{\"slant_height\": \"9 cm\"}"}, {"found", lessons::found_members(node)}}));
    return {};
  }
  const std::string& key = node.keys.front();
  const std::vector<std::string> names = claimable_labels(problem);
  // A measure of the whole as well: "S = 360 cm²".
  const std::optional<int> whole = lessons::dimension_of_whole(key);
  const bool is_whole = whole && problem.known.count(key) == 0 && lessons::asked_value(problem, problem.solid, key);
  if (!is_whole && std::find(names.begin(), names.end(), key) == names.end()) {
    const bool is_written = problem.solid.written({key, "", 1}) != nullptr;
    const Message advice = names.empty() ? message(", whose labels are all given: take the one out that is in question")
                                         : lessons::suggestion(key, names);
    context.fault(
        node.key_offsets.front(),
        is_written ? message("{label} is already given in the solid: take it out there, or claim a different label",
                             {{"label", in_quotes(key)}})
                   : message("{label} can't be claimed of {solid:a}{advice}",
                             {{"label", in_quotes(key)}, {"solid", Noun{problem.solid.name()}}, {"advice", advice}}));
    return {};
  }
  const int dimension = is_whole ? *whole : 1;
  if (const auto value = lessons::read_quantity(node.items.front(), dimension, context.at(key))) {
    if (!value->unit.converts_to(problem.solid.unit().to_the(dimension))) {
      context.at(key).fault(node.items.front(), not_comparable(*value, problem.solid));
    }
    return {Claim(key, *value)};
  }
  return {};
}

// ---- made up ----

bool has_spare_labels(const Subject& subject) { return subject.family->has_spare_labels; }

struct SpareLabel {
  std::string name;
  solids::Description without;
};
// Labels that the others fix, so that one of them can be claimed.
std::vector<SpareLabel> spare_labels(const solids::Description& description) {
  std::vector<SpareLabel> all;
  const auto add = [&](const std::string& name, const solids::Description& without) {
    const auto solid = solids::Solid::make(without);
    if (solid && solid->remarks().empty()) {
      all.push_back({name, without});
    }
  };
  for (const auto& [key, value] : description.fields) {
    if (std::holds_alternative<solids::LengthEntry>(value)) {
      solids::Description without = description;
      without.fields.erase(key);
      add(key, without);
    }
  }
  for (std::size_t i = 0; i < description.base.size(); ++i) {
    for (const auto& [key, value] : description.base[i].fields) {
      if (std::holds_alternative<solids::LengthEntry>(value)) {
        solids::Description without = description;
        without.base[i].fields.erase(key);
        add("base." + key, without);
      }
    }
  }
  return all;
}

std::string label_title(const solids::Solid& solid, const std::string& name) {
  for (const solids::Measure& measure : solid.statement().measures) {
    if (name == (measure.in_base ? "base." + measure.key : measure.key)) {
      return measure.title;
    }
  }
  return name;
}

std::optional<Problem> made_claim(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  const std::vector<SpareLabel> spare = spare_labels(blueprint.draw(seed, Labels::All));
  if (spare.empty()) {
    return std::nullopt;
  }
  const SpareLabel& label = spare[blueprint.pick % spare.size()];
  auto problem = made_problem(label.without, "");
  const auto value = problem ? lessons::asked_value(*problem, problem->solid, label.name) : std::nullopt;
  if (!value || !value->is_whole()) {
    return std::nullopt;
  }
  const auto right = static_cast<int>(value->to_double());
  const bool is_true = blueprint.story / 2 % 2 == 0;
  // Ten to forty parts in a hundred too long or too short.
  const int share = drawn(seed, 10, 40) * (seed.below(2) == 0 ? 1 : -1);
  const int wrong = right + static_cast<int>(std::lround(right * share / 100.0));
  const int change = std::abs(wrong - right);
  if (!is_true && (change * 10 < right || change * 5 > right * 2)) {
    return std::nullopt;
  }
  const Claim claim(label.name, units::written_whole(is_true ? right : wrong, problem->solid.unit()));
  problem->tasks = {claim};
  const ClaimVerdict verdict = claim.verdict(*problem);
  if (verdict.can_be != is_true || verdict.is_rounded) {
    return std::nullopt;
  }
  problem->prompt =
      told({"{Who} adds a label to a plan of {a thing}: {label}. Can it be true?",
            "A plan of {a thing} has one more label: {label}. Can this figure exist?",
            "A student measures {a thing} and writes one more label: {label}. Can it be right?"},
           drawn_blueprint, {{"label", label_title(problem->solid, label.name) + " " + said_quantity(claim.value())}});
  return problem;
}

/// Whether a value is the label, rounded at the label's own last place. A whole number is exact.
bool rounds_to(const Number& value, const units::Unit& unit, const units::WrittenQuantity& label) {
  const Number there = value * units::conversion(unit, label.unit);
  return there == label.number.value ||
         (label.number.places > 0 && label.number.lowest() <= there && there <= label.number.highest());
}

Message not_rounded_to(const Number& value, const units::Unit& unit, const units::WrittenQuantity& label) {
  const Number there = value * units::conversion(unit, label.unit);
  const words::Value claimed = practice::value_of(label);
  if (label.number.places == 0) {
    return message("a whole number is exact, and {fitting} is not {claimed}",
                   {{"fitting", judged_amount(value, unit, 2)}, {"claimed", claimed}});
  }
  const words::Amount rounded{exact::fixed_text(there, label.number.places), label.unit.text()};
  return message(
      "{fitting} rounds to {rounded}, not to {claimed}",
      {{"fitting", judged_amount(value, unit, label.number.places + 2)}, {"rounded", rounded}, {"claimed", claimed}});
}

}  // namespace

bool Claim::is_whole() const { return lessons::dimension_of_whole(label_).has_value(); }

void Claim::write(Members& members) const {
  members.emplace_back("claim", lessons::object_in_line({{label_, lessons::quote(value_.text)}}));
}

words::Message Claim::sentence(const Problem& problem) const {
  return message("Can the {measure} be {value}?", {{"measure", asked_noun(problem, label_)}, {"value", value_.text}});
}

Result<Question, words::Message> Claim::question(const Problem& problem) const {
  auto of_label = Measure(label_).question(problem);
  if (!of_label) {
    return of_label;
  }
  Question question;
  question.find = key();
  question.truth = of_label->truth;
  question.unit = of_label->unit;
  return question;
}

std::vector<Fact> Claim::facts(const Problem& problem) const {
  return {{value_.number.text, message("One more label: {measure} {value}.",
                                       {{"measure", Noun{reasoning::title_named(problem.solid, label_)}},
                                        {"value", practice::value_of(value_)}})}};
}

solids::Description Claim::described_with(const Problem& problem, const units::WrittenQuantity& value) const {
  solids::Description description = problem.description;
  const std::string in_base = "base.";
  if (is_whole()) {
    return description;
  }
  const solids::LengthEntry entry{value};
  if (label_.rfind(in_base, 0) == 0 && !description.base.empty()) {
    description.base.front().fields[label_.substr(in_base.size())] = entry;
  } else {
    description.fields[label_] = entry;
  }
  return description;
}

ClaimVerdict Claim::verdict(const Problem& problem) const {
  ClaimVerdict verdict;
  const auto fitting = lessons::asked_value(problem, problem.solid, label_);
  verdict.fitting = fitting ? *fitting : Number{};
  if (is_whole()) {
    const units::Unit own = problem.solid.unit().to_the(*lessons::dimension_of_whole(label_));
    const Number in_claimed = verdict.fitting * units::conversion(own, value_.unit);
    verdict.can_be = practice::stands_for(value_.number, in_claimed);
    verdict.is_rounded = verdict.can_be && !(value_.number.value == in_claimed);
    return verdict;
  }
  const auto figure = solids::Solid::make(described_with(problem, value_), problem.known);
  verdict.can_be = figure.has_value();
  if (figure) {
    const std::vector<solids::Fault>& remarks = figure->remarks();
    verdict.is_rounded = std::any_of(remarks.begin(), remarks.end(), [](const solids::Fault& remark) {
      return remark.severity == solids::Severity::Rounding;
    });
    if (verdict.is_rounded && fitting && !rounds_to(*fitting, problem.solid.unit(), value_)) {
      verdict.can_be = false;
      verdict.is_rounded = false;
      verdict.why = not_rounded_to(*fitting, problem.solid.unit(), value_);
    }
  } else {
    verdict.why = figure.error().front().message;
  }
  return verdict;
}

std::optional<TaskWork> Claim::work(const Problem& problem, int places) const {
  const ClaimVerdict judged = verdict(problem);
  const Noun title{reasoning::title_named(problem.solid, label_)};
  const units::Unit unit = problem.solid.unit().to_the(lessons::dimension_of_whole(label_).value_or(1));
  const Message fitting = judged_amount(judged.fitting, unit, places);
  const words::Value claimed = practice::value_of(value_);
  TaskSheet sheet(places);
  sheet.steps().say(StepKind::Check,
                    message("The label says {measure} {claimed}. From the other labels, it is {fitting}.",
                            {{"measure", title}, {"claimed", claimed}, {"fitting", fitting}}));
  Message sentence = message("No, this figure is impossible. {measure:A} of {fitting} would fit.",
                             {{"measure", title}, {"fitting", fitting}});
  if (judged.can_be) {
    sentence = judged.is_rounded
                   ? message("Yes, this figure is possible. {claimed} is that number, rounded.", {{"claimed", claimed}})
                   : message("Yes, this figure is possible.");
  } else if (!judged.why.empty()) {
    sheet.steps().say(StepKind::Check, said(judged.why).back() == '.' ? message("{why:up}", {{"why", judged.why}})
                                                                      : message("{why:up}.", {{"why", judged.why}}));
  }
  TaskWork task{key(), label_, message("then the claim"), {}, {}, {}, std::nullopt, 0, {}};
  task.answer = judged.can_be ? message("yes") : message("no, {fitting} would fit", {{"fitting", fitting}});
  return std::move(sheet).finished(std::move(task), sentence);
}

Result<Explanation, words::Message> Claim::explained(const Problem& problem, const SolutionOptions& options) const {
  return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
}

Result<std::vector<Hint>, words::Message> Claim::hints(const Problem& problem,
                                                       const reasoning::ClassNotation& notation) const {
  return Measure(label_).hints(problem, notation);
}

Result<std::vector<Choice>, words::Message> Claim::choices(const Problem& problem, const Question& question,
                                                           Seed&) const {
  const ClaimVerdict judged = verdict(problem);
  const Message fitting = reasoning::about(exact::shown(*question.truth, 2), question.unit->text());
  if (judged.can_be) {
    return std::vector<Choice>{
        practice::right_choice(message("yes"),
                               message("Right. The other labels give {fitting} too.", {{"fitting", fitting}})),
        practice::wrong_choice(
            message("no"), "P2",
            message("\"No\" would need two labels that disagree. Find this length from the others."))};
  }
  return std::vector<Choice>{
      practice::wrong_choice(
          message("yes"), "P1",
          message("\"Yes\" would need {fitting}. What length do the other labels give?", {{"fitting", fitting}})),
      practice::right_choice(message("no"), message("Right. {claimed} is impossible; {fitting} would fit.",
                                                    {{"claimed", value_.text}, {"fitting", fitting}}))};
}

std::optional<std::size_t> Claim::option_meant(const Question&, const std::vector<Choice>&,
                                               const std::string& typed) const {
  const std::optional<bool> said = practice::yes_or_no(practice::lowered(typed));
  return said ? std::optional<std::size_t>(*said ? 0 : 1) : std::nullopt;
}

Diagnosis Claim::judged_option(const Problem& problem, const Question& question, const Choice& choice,
                               const std::string& typed) const {
  const std::optional<TypedAnswer> value = choice.is_right ? value_beside(typed) : std::nullopt;
  if (!value || practice::has_right_number(*value, question, practice::answers_from_roots(problem, question))) {
    return OptionTask::judged_option(problem, question, choice, typed);
  }
  const Message told = message("The choice is right, but {number} would not fit. What do the other labels fix?",
                               {{"number", value->number.text}});
  return {AnswerVerdict::Recognized, {{"P3", told, {}, false}}, told};
}

namespace row {
Row claim() {
  Row row{"claim", {"claim"}};
  row.read = read_claim;
  row.made = {{27, "can-it-be", "can this label be right?", practice::Heading::DecideAndCheck, 2, "check labels",
               has_spare_labels, made_claim}};
  row.examples = {
      R"("solid": {"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"},
         "claim": {"slant_height": "9 cm"})",
      R"("solid": {"kind": "pyramid", "base": {"shape": "square", "side": "10 cm"}, "height": "12 cm"},
         "claim": {"slant_height": "13 cm"}, "find": ["volume"])",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "claim": {"volume": "343 cm^3"})",
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "claim": {"surface_area": "343 cm^2"})",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
