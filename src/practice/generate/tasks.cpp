#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "practice/choice_parts.hpp"
#include "practice/generate/types.hpp"
#include "practice/signatures.hpp"
#include "reasoning/tasks/task.hpp"

// What is asked in another way than by a measure: packing, copies, units, claims, mistakes, bounds, purposes.
namespace fw::practice {
namespace {

using exact::Number;
using lessons::Problem;

bool has_spare_labels(const Family& family) { return family.has_spare_labels; }

std::optional<units::WrittenQuantity> quantity_of(const std::string& number, const units::Unit& unit) {
  const auto parsed = units::parse_quantity(number + " " + unit.ascii());
  return parsed ? std::optional(*parsed) : std::nullopt;
}

void fill_in(std::string& text, const std::string& place, const std::string& with) {
  const std::size_t at = text.find(place);
  if (at != std::string::npos) {
    text.replace(at, place.size(), with);
  }
}

// The stories take turns, so that they are balanced.
Blueprint by_turn(Blueprint blueprint) {
  blueprint.story = blueprint.turn;
  return blueprint;
}

// A problem that asks for the surface area or the volume, by its story's number.
struct Plain {
  std::string find;
  Labels labels;
};
Plain plain_of(const Blueprint& blueprint) {
  return blueprint.story % 2 == 0 ? Plain{"surface_area", Labels::ForArea} : Plain{"volume", Labels::ForVolume};
}
std::optional<Problem> plain_problem(const Blueprint& blueprint, Seed& seed, const std::vector<std::string>& stories) {
  const Plain plain = plain_of(blueprint);
  return made_problem(blueprint.family->draw(seed, blueprint.level, plain.labels, blueprint.unit), {}, plain.find,
                      told(stories, blueprint));
}

// ---- packing ----

// Edges of an item with which dividing the volumes says too much.
std::optional<lessons::ItemBox> item_for(const Problem& problem, const Blueprint& blueprint, Seed& seed) {
  constexpr int tries = 30;
  constexpr int least = 2;
  constexpr int most = 5;
  for (int i = 0; i < tries; ++i) {
    std::vector<units::WrittenQuantity> edges;
    const int side = drawn(seed, least, most);
    for (int k = 0; k < 3; ++k) {
      const int edge = blueprint.level < 3 ? side : drawn(seed, least, most);
      edges.push_back(*quantity_of(std::to_string(edge), problem.solid.unit()));
    }
    Problem packed = problem;
    packed.supply = lessons::Supply{"pack", "volume", std::nullopt, "item"};
    packed.supply->box = lessons::ItemBox{edges[0], edges[1], edges[2]};
    const lessons::Packing best = lessons::packings(packed).front();
    Number quotient = Number::whole(1);
    for (std::size_t edge = 0; edge < best.edges.size(); ++edge) {
      quotient = quotient * best.edges[edge] / best.item[edge];
    }
    if (best.count >= 4 && best.count <= 90 && exact::floor(quotient) > Number::whole(best.count)) {
      return packed.supply->box;
    }
  }
  return std::nullopt;
}

std::optional<Problem> packing(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  static const std::vector<std::string> items{"candle", "bar of soap", "tin of tea"};
  auto problem =
      made_problem(blueprint.family->draw(seed, blueprint.level, Labels::ForVolume, blueprint.unit), {}, "volume",
                   told({"Candles in boxes are packed into {a thing}, all the same way round. How many fit?",
                         "Bars of soap go into {a thing}, all lying the same way. How many fit at most?",
                         "How many tins of tea, all the same way round, can be packed into {a thing}?"},
                        blueprint));
  const auto box = problem ? item_for(*problem, blueprint, seed) : std::nullopt;
  if (!box) {
    return std::nullopt;
  }
  problem->find.clear();
  problem->supply = lessons::Supply{"pack", "volume", std::nullopt, items[blueprint.story % items.size()]};
  problem->supply->box = box;
  return problem;
}

// ---- copies ----

// With 2 and 3, taking the exponent for a factor gives the right number.
std::string factor_at(int level, Seed& seed) {
  static const std::vector<std::string> whole{"4", "5", "10"};
  static const std::vector<std::string> all{"4", "5", "10", "1.5", "2.5", "1/2"};
  return one_of(level < 3 ? whole : all, seed);
}
std::string as_long(const std::string& factor) { return factor == "1/2" ? "half as long" : factor + " times as long"; }

std::optional<Problem> copied(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = plain_problem(blueprint, seed,
                               {"A large copy of {a thing} has edges that are {k}. How much paper covers the copy?",
                                "The edges of a copy of {a thing} are {k}. How much sand fills the copy?",
                                "{A thing} is built again with edges that are {k}. Find the surface area of the copy.",
                                "{A thing} is cast again with edges that are {k}. How much wax does the copy take?"});
  if (!problem) {
    return std::nullopt;
  }
  const std::string factor = factor_at(blueprint.level, seed);
  fill_in(problem->prompt, "large copy", factor == "1/2" ? "small copy" : "large copy");
  fill_in(problem->prompt, "{k}", as_long(factor));
  problem->scale = lessons::Scaling{factor, exact::parse_number(factor)->value, {}};
  return problem;
}

std::optional<Problem> factor_of_copy(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem =
      plain_problem(blueprint, seed,
                    {"A copy of {a thing} has a surface area of {amount}. How many times as long are its edges?",
                     "A copy of {a thing} has a volume of {amount}. How many times as long are its edges?"});
  if (!problem) {
    return std::nullopt;
  }
  const std::string find = problem->find.front();
  const int dimension = find == "volume" ? 3 : 2;
  const Number factor = exact::parse_number(factor_at(blueprint.level, seed))->value;
  const Number amount = *lessons::asked_value(*problem, problem->solid, find) * exact::power(factor, dimension);
  const exact::Shown shown = exact::shown(amount, 1);
  const auto written = quantity_of(shown.text, problem->solid.unit().to_the(dimension));
  if (!shown.exact || !written) {
    return std::nullopt;
  }
  fill_in(problem->prompt, "{amount}", written->number.text + " " + written->unit.text());
  problem->find = {"scale"};
  problem->scale = lessons::Scaling{"?", factor, {{find, *written}}};
  return problem;
}

// ---- units ----

struct Change {
  std::string of_solid, of_area, of_volume;
};
std::optional<Problem> in_another_unit(const Blueprint& drawn_blueprint, Seed& seed) {
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
  problem->unit = units::Unit::find(problem->find.front() == "volume" ? change.of_volume : change.of_area);
  fill_in(problem->prompt, "{unit}", problem->unit->text());
  return problem;
}

// ---- claims ----

struct Spare {
  std::string name;
  solids::Description without;
};
// Labels that the others fix, so that one of them can be claimed.
std::vector<Spare> spare_labels(const solids::Description& description) {
  std::vector<Spare> all;
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

std::string title_of(const solids::Solid& solid, const std::string& name) {
  for (const solids::Measure& measure : solid.statement().measures) {
    if (name == (measure.in_base ? "base." + measure.key : measure.key)) {
      return measure.title;
    }
  }
  return name;
}

std::optional<Problem> claimed(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  const std::vector<Spare> spare =
      spare_labels(blueprint.family->draw(seed, blueprint.level, Labels::All, blueprint.unit));
  if (spare.empty()) {
    return std::nullopt;
  }
  const Spare& label = spare[blueprint.thing % spare.size()];
  auto problem = made_problem(label.without, {}, "volume",
                              told({"Somebody adds a label to {a thing}: {label}. Can this figure be?",
                                    "On the plan of {a thing} stands one more label: {label}. Can it be true?"},
                                   blueprint));
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
  problem->find.clear();
  problem->claim =
      lessons::Claim{label.name, *quantity_of(std::to_string(is_true ? right : wrong), problem->solid.unit())};
  const reasoning::ClaimVerdict verdict = reasoning::judged_claim(*problem);
  if (verdict.can_be != is_true || verdict.is_rounded) {
    return std::nullopt;
  }
  fill_in(problem->prompt, "{label}", title_of(problem->solid, label.name) + " " + problem->claim->value.text);
  return problem;
}

// ---- mistakes ----

std::optional<Problem> mistaken(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = plain_problem(
      blueprint, seed,
      {"For the surface area of {a thing} somebody got {amount}. Which mistake was it, and what is right?",
       "For the volume of {a thing} somebody got {amount}. Which mistake was it, and what is right?"});
  if (!problem) {
    return std::nullopt;
  }
  const auto question = question_of(*problem);
  std::vector<WrongNumber> wrong = wrong_numbers(figure_of(*problem, *question));
  shuffle(wrong, seed);
  const double truth = question->truth->to_double();
  for (const WrongNumber& one : wrong) {
    const Number number = as_written_down(one.value);
    const exact::Shown shown = exact::shown(number, 1);
    const bool is_rounded = std::abs(number.to_double() - one.value) > 1e-6;  // numbers to be found out end
    const bool is_far = one.value > 8 * truth || one.value * 8 < truth;
    const auto written = quantity_of(shown.text, *question->unit);
    if (!shown.exact || is_rounded || is_far || !written) {
      continue;
    }
    Problem with_wrong = *problem;
    with_wrong.wrong = *written;
    const auto task = question_of(with_wrong);
    if (task && mistake_of(with_wrong, *task)) {
      fill_in(with_wrong.prompt, "{amount}", written->number.text + " " + written->unit.text());
      return with_wrong;
    }
  }
  return std::nullopt;
}

// ---- bounds ----

// Rising numbers of one digit, each 1.5 to 3 times the one before.
std::vector<std::string> bounds_around(double truth, std::size_t ladder, std::size_t place) {
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
  constexpr double margin = 1.08;  // nearer to a bound, it would take an exact number to decide
  const bool is_clear = index > 0 && index < all.size() && static_cast<double>(all[index - 1]) * margin < truth &&
                        truth * margin < static_cast<double>(all[index]);
  const std::size_t first = index - 1 - std::min(index - 1, place % (bounds - 1));
  std::vector<std::string> texts;
  for (std::size_t i = first; is_clear && i < first + bounds && i < all.size(); ++i) {
    texts.push_back(std::to_string(all[i]));
  }
  return texts;
}

std::optional<Problem> bounded(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  auto problem = plain_problem(blueprint, seed,
                               {"Estimate: between which two numbers does the surface area of {a thing} lie?",
                                "Estimate: between which two numbers does the volume of {a thing} lie?"});
  if (!problem) {
    return std::nullopt;
  }
  const std::string& find = problem->find.front();
  const Number truth = *lessons::asked_value(*problem, problem->solid, find);
  for (const std::string& text : bounds_around(truth.to_double(), blueprint.story / 2, blueprint.thing)) {
    problem->between.push_back(*quantity_of(text, problem->solid.unit().to_the(find == "volume" ? 3 : 2)));
  }
  return problem->between.size() < 4 ? std::nullopt : problem;
}

// ---- purposes ----

struct Story {
  std::string purpose, measure, text;
};
// As many of each purpose; some without a word that gives it away. Source: common practice, no source.
const std::vector<Story>& purpose_stories() {
  static const std::vector<Story> table{
      {"cover", "surface_area", "Gold glitter is glued all over {a thing}. What has to be known to buy enough?"},
      {"fill", "volume", "{A thing} is stuffed with straw. What has to be known to have enough?"},
      {"edge", "edges", "A string of lights follows every edge of {a thing}. What has to be known to buy enough?"},
      {"cover", "base_area", "A felt pad goes under {a thing}. What has to be known to cut it?"},
      {"cover", "surface_area", "How much cardboard does it take to make {a thing}?"},
      {"fill", "volume", "How much plaster is cast in the shape of {a thing}?"},
      {"edge", "edges", "How much wire does it take to bend a frame in the shape of {a thing}?"},
      {"cover", "base_area", "How much of the stage floor does {a thing} take up?"},
      {"cover", "surface_area", "Frost settles on {a thing} that hangs in the air. How much of it is white?"},
      {"fill", "volume", "How much room does {a thing} take up in the cart?"},
      {"edge", "edges", "Tape goes wherever two faces of {a thing} meet. How much tape is that?"},
      {"cover", "base_area", "Snow melts where {a thing} stood. How large is the dry spot?"},
  };
  return table;
}
std::optional<Problem> purpose(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  // Five is prime to their number, so that all have their turn, neighbors of different purposes.
  const Story& story = purpose_stories()[5 * blueprint.turn % purpose_stories().size()];
  auto problem = made_problem(blueprint.family->draw(seed, blueprint.level, Labels::ForArea, blueprint.unit), {},
                              "purpose", told({story.text}, blueprint));
  if (problem) {
    problem->supply = lessons::Supply{story.purpose, story.measure, std::nullopt, ""};
  }
  return problem;
}

}  // namespace

std::vector<ProblemType> task_types() {
  return {
      {"purpose", "cover, fill, edge or one face", 1, "decide", has_bases, purpose},
      {"estimate", "bounds of an area or a volume", 1, "estimate", any, bounded},
      {"pack", "items packed in rows", 2, "pack", is_box, packing},
      {"asked-unit", "answer in another unit", 2, "convert the answer", any, in_another_unit},
      {"copy", "area or volume of a copy", 2, "scale", any, copied},
      {"can-it-be", "whether a label can be true", 2, "check labels", has_spare_labels, claimed},
      {"find-mistake", "mistake behind a wrong answer", 2, "find the mistake", any, mistaken},
      {"factor", "how many times as long a copy is", 3, "undo a scale", any, factor_of_copy},
  };
}

}  // namespace fw::practice
