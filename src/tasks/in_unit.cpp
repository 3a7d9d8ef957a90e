#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_measure.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"

// A measure whose answer is asked in another unit than the solid's own.
namespace fw::tasks {
namespace {

using lessons::in_quotes;

class InUnit : public Measure {
 public:
  InUnit(std::string find, units::Unit unit) : Measure(std::move(find)), unit_(unit) {}

  void write(Members& members) const override { members.emplace_back("unit", lessons::quote(unit_.ascii())); }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem& problem) const override {
    const auto asked = question(problem);
    return asked && asked->is_converted ? "asked-unit" : Measure::type(problem);
  }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    SolutionOptions in_unit = options;
    in_unit.unit = options.unit ? options.unit : unit_;
    return Measure::explained(problem, in_unit);
  }
  [[nodiscard]] words::Message asks_to_type() const override {
    return message("number in {unit}", {{"unit", unit_.text()}});
  }
  [[nodiscard]] std::optional<units::Unit> unit_asked() const override { return unit_; }

 private:
  units::Unit unit_;
};

Message what_measures(std::optional<int> dimension) {
  return dimension ? message("{kind:a}", {{"kind", lessons::noun_of_dimension(*dimension)}}) : message("no measure");
}

std::vector<Task> read_in_unit(const TaskText& text) {
  const JsonNode& node = *text.node.find("unit");
  const Context context = text.context.at("unit");
  const solids::Solid& solid = text.problem.solid;
  const std::string* written = lessons::text_at(node, message("a unit"), context);
  if (written == nullptr) {
    return {};
  }
  const std::optional<units::Unit> unit = units::Unit::find(*written);
  if (!unit) {
    context.fault(
        node, message("{text} is not a unit; \"m^2\", \"ft^3\" and \"L\" are some", {{"text", in_quotes(*written)}}));
    return {};
  }
  if (text.find.empty()) {
    context.fault(node, message("a unit is given, but nothing is asked in it: write \"find\": [\"surface_area\"]"));
  }
  for (const std::string& find : text.find) {
    const std::optional<int> dimension = lessons::dimension_of_asked(solid, find);
    if (!dimension || *dimension != unit->dimension()) {
      context.fault(node, message("{unit} measures {measured}; {find} is {found}, so ask for it in its own problem",
                                  {{"unit", in_quotes(*written)},
                                   {"measured", what_measures(unit->dimension())},
                                   {"find", in_quotes(find)},
                                   {"found", what_measures(dimension)}}));
    } else if (!unit->converts_to(solid.unit().to_the(*dimension))) {
      context.fault(node, message("a solid measured in {own} has nothing that can be given in {unit}",
                                  {{"own", solid.unit().text()}, {"unit", in_quotes(*written)}}));
    }
  }
  std::vector<Task> tasks;
  for (const std::string& find : text.find) {
    tasks.emplace_back(InUnit(find, *unit));
  }
  return tasks;
}

// ---- made up ----

struct Change {
  std::string of_solid, of_area, of_volume;
};
std::optional<Problem> made_in_unit(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  static const std::vector<Change> metric{{"cm", "m^2", "L"}, {"m", "cm^2", "L"}, {"cm", "dm^2", "m^3"}};
  static const std::vector<Change> customary{{"ft", "yd^2", "yd^3"}, {"yd", "ft^2", "ft^3"}, {"in", "ft^2", "ft^3"}};
  Blueprint changed = blueprint;
  const std::vector<Change>& all = blueprint.unit == "cm" ? metric : customary;
  const Change& change = all[(blueprint.story / 2) % all.size()];
  changed.unit = change.of_solid;
  auto problem = plain_problem(changed, seed,
                               {"How much foil covers {a thing} on every face? Give it in {unit}.",
                                "How much does {a thing} hold? Give it in {unit}.",
                                "Every face of {a thing} is painted. How large is that area in {unit}?",
                                "{A thing} is filled with water. How much is that in {unit}?"});
  if (!problem) {
    return std::nullopt;
  }
  const std::string find = plain_of(changed).find;
  const units::Unit unit = *units::Unit::find(find == "volume" ? change.of_volume : change.of_area);
  problem->tasks = {InUnit(find, unit)};
  fill_in(problem->prompt, "{unit}", unit.text());
  return problem;
}

}  // namespace

Result<Question, words::Message> InUnit::question(const Problem& problem) const {
  auto in_own = Measure::question(problem);
  if (!in_own) {
    return in_own;
  }
  Question question = std::move(in_own).value();
  const units::Unit own = *question.unit;
  if (unit_.converts_to(own) && !(unit_ == own)) {
    question.unit = unit_;
    question.is_converted = true;
    question.truth = *question.truth * units::conversion(own, unit_);
  }
  return question;
}

namespace row {
Row in_unit() {
  Row row{"unit", {"unit"}, true};
  row.read = read_in_unit;
  row.made = {{25, "asked-unit", "answer in another unit", practice::Heading::CopiesAndUnits, 2, "convert the answer",
               any, made_in_unit}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "70 cm"}, "find": ["volume"], "unit": "L")"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
