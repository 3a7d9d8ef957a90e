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
  std::string of_solid, other;
  int least = 0, most = 0;  ///< how long the greatest length of the thing's form may be
};
// From and to units that are used for things of this size. Source: common practice, no source.
const std::vector<Change>& changes(bool of_volume) {
  static const std::vector<Change> of_areas{{"cm", "m^2", 40, 1000},
                                            {"cm", "mm^2", 0, 36},
                                            {"in", "ft^2", 12, 1000},
                                            {"ft", "yd^2", 6, 1000},
                                            {"ft", "in^2", 0, 12}};
  static const std::vector<Change> of_volumes{{"cm", "L", 15, 1000}, {"in", "ft^3", 18, 1000}, {"ft", "yd^3", 6, 1000}};
  return of_volume ? of_volumes : of_areas;
}
std::optional<Problem> made_in_unit(const Blueprint& drawn_blueprint, Seed& seed) {
  static const WayStories area{{"{Who} covers every face of {a thing} with {stuff}. How many {units} is that?",
                                "How many {units} of {stuff} cover every face of {a thing}?",
                                "{A thing} is covered with {stuff} on all its faces. What is that area in {units}?"},
                               {"{Who} puts {stuff} on every face of {a thing}. How many {units} is that?",
                                "What area, in {units}, gets {stuff} on {a thing} if every face is covered?",
                                "{A thing} needs one coat of {stuff} on every face. What is that area in {units}?"},
                               {"{Who} makes every face of {a thing} from {stuff}. How many {units} is that?",
                                "How many {units} of {stuff} does it take to make every face of {a thing}?",
                                "All the faces of {a thing} are {stuff}. What is their area in {units}?"}};
  static const SpaceStories volume{
      {"{Who} fills {a thing} with {stuff}. How many {units} is that?", "How many {units} of {stuff} fill {a thing}?",
       "{A thing} is full of {stuff}. How much is that in {units}?"},
      {"How many {units} of {stuff} are in {a thing} of this size?",
       "What is the volume of {a thing} of this size in {units}?",
       "{Who} sets out {a thing} at the fair. How much space does it take up in {units}?"},
      {"How many {units} of space does {a thing} of this size take up?",
       "What is the volume of {a thing} of this size in {units}?",
       "{Who} stores {a thing} after the fair. How much space does it take up in {units}?"}};
  const Plain plain = plain_of(by_turn(drawn_blueprint));
  std::vector<Change> fitting;
  const int greatest = drawn_blueprint.form().greatest();
  const units::Unit own = units::Unit::find(drawn_blueprint.unit())->to_the(plain.is_volume() ? 3 : 2);
  const bool to_smaller = drawn_blueprint.turn % 4 == 2;  // every second area
  for (const Change& change : changes(plain.is_volume())) {
    const bool is_of_size =
        change.of_solid == drawn_blueprint.unit() && greatest >= change.least && greatest <= change.most;
    if (is_of_size &&
        (units::conversion(own, *units::Unit::find(change.other)) < exact::Number::whole(1)) != to_smaller) {
      fitting.push_back(change);
    }
  }
  auto problem = fitting.empty() ? std::nullopt : made_problem(drawn_blueprint.draw(seed, plain.labels), "");
  if (!problem) {
    return std::nullopt;
  }
  const Change& change = fitting[drawn_blueprint.trap % fitting.size()];
  const units::Unit unit = *units::Unit::find(change.other);
  const Places places{{"units", plural_of(unit.name())}};
  problem->tasks = {InUnit(plain.find, unit)};
  problem->prompt = plain.is_volume() ? told(volume, drawn_blueprint, places)
                                      : told(area, drawn_blueprint.thing().covers, drawn_blueprint, places);
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
               is_covered, made_in_unit}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "70 cm"}, "find": ["volume"], "unit": "L")"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
