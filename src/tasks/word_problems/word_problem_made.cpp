#include <algorithm>
#include <cmath>
#include <iterator>
#include <numeric>

#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "tasks/word_problems/cut_pieces.hpp"
#include "tasks/word_problems/cut_plan.hpp"
#include "tasks/word_problems/word_problem.hpp"

// Made-up word problems: something is covered, filled or edged with things that are counted.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::Purpose;
using lessons::Rounding;
using units::WrittenQuantity;

bool is_metric(const units::Unit& unit) {
  const std::string name = unit.ascii();
  return std::any_of(name.begin(), name.end(), [](char c) { return c == 'm' || c == 'L'; });
}

// The size of one pack, where it is in the same system of units.
std::optional<WrittenQuantity> size_of(const Pack& pack, const units::Unit& unit) {
  const auto each = units::parse_quantity(pack.each);
  const bool fits = each && each->unit.converts_to(unit) && is_metric(each->unit) == is_metric(unit);
  return fits ? std::optional(*each) : std::nullopt;
}

bool is_boxy(const Blueprint& blueprint) {
  return blueprint.form().shape == Shape::Box || blueprint.form().shape == Shape::Block;
}

// Whether a part of a pack is left over, and rounding to the nearest count is wrong: tenths of the quotient from 1 to 4
// to round up, from 6 to 9 to round down.
bool leaves_a_part(const Number& quotient, Rounding rounding) {
  constexpr double most = 24;
  const double packs = quotient.to_double();
  const auto tenths = static_cast<int>(std::floor(10 * (packs - std::floor(packs)) + 1e-9));
  const int least = rounding == Rounding::Up ? 1 : 6;
  return packs > 1 && packs <= most && tenths >= least && tenths <= least + 3;
}

// Of the packs in the solid's own unit, or in another one, the one that the blueprint draws.
enum class PackUnit { Own, Other, Any };
struct Bought {
  Pack pack;
  WrittenQuantity each;
};
std::optional<Bought> bought(const Blueprint& blueprint, const std::vector<Pack>& packs, const Number& amount,
                             const units::Unit& unit, PackUnit wanted, Rounding rounding) {
  std::vector<Bought> fitting;
  for (const Pack& pack : packs) {
    const auto each = size_of(pack, unit);
    const bool is_own = each && each->unit == unit;
    if (!each || (wanted == PackUnit::Own && !is_own) || (wanted == PackUnit::Other && is_own)) {
      continue;
    }
    if (leaves_a_part(amount / (each->number.value * units::conversion(each->unit, unit)), rounding)) {
      fitting.push_back({pack, *each});
    }
  }
  return fitting.empty() ? std::nullopt : std::optional(fitting[blueprint.trap % fitting.size()]);
}

Places pack_places(const Bought& one) {
  return {{"item", one.pack.item}, {"items", plural_of(one.pack.item)}, {"each", said_quantity(one.each)}};
}

// ---- covered ----

struct Covered {
  Problem problem;
  Bought bought;
};
std::optional<Covered> covered(const Blueprint& blueprint, Seed& seed) {
  const Material& material = picked(blueprint.thing().covers, blueprint);
  auto problem = made_problem(blueprint.draw(seed, Labels::ForArea), "");
  if (!problem) {
    return std::nullopt;
  }
  const Number amount = problem->solid.surface_area().amount();
  const PackUnit wanted = blueprint.level == 1 ? PackUnit::Own : PackUnit::Any;
  const auto one = bought(blueprint, material.packs, amount, problem->solid.unit().to_the(2), wanted, Rounding::Up);
  if (!one) {
    return std::nullopt;
  }
  problem->tasks = {WordProblem({Purpose::Cover, "surface_area", one->each, one->pack.item}), Measure("surface_area")};
  return Covered{*problem, *one};
}

std::optional<Problem> made_cover(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{Who} covers every face of {a thing} with {stuff}. One {item} covers {each}. How many {items} should they buy?",
       "{A thing} is covered with {stuff} on all its faces. One {item} covers {each}. How many {items} does it take?",
       "One {item} of {stuff} covers {each}. How many {items} does {who} need to cover every face of {a thing}?"},
      {"{Who} puts {stuff} on every face of {a thing}. One {item} covers {each}. How many {items} should they buy?",
       "{A thing} needs one coat of {stuff} on every face. One {item} covers {each}. How many {items} does it take?",
       "One {item} of {stuff} covers {each}. How many {items} does {who} need for every face of {a thing}?"},
      {"{Who} makes every face of {a thing} from {stuff}. One {item} is {each}. How many {items} should they buy?",
       "All the faces of {a thing} are cut from {stuff}. One {item} is {each}. How many {items} does it take?",
       "One {item} of {stuff} is {each}. How many {items} does {who} need to make every face of {a thing}?"}};
  auto made = covered(blueprint, seed);
  if (!made) {
    return std::nullopt;
  }
  made->problem.prompt = told(stories, blueprint.thing().covers, blueprint, pack_places(made->bought));
  return made->problem;
}

std::optional<Problem> made_cost(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{Who} covers every face of {a thing} with {stuff}. One {item} covers {each} and costs {price}. What do they "
       "pay?",
       "{Stuff} for every face of {a thing} is sold in whole {items}. One {item} covers {each} and costs {price}. What "
       "is "
       "the total cost?",
       "A {price} {item} of {stuff} covers {each}. What does it cost {who} to cover every face of {a thing}?"},
      {"{Who} puts {stuff} on every face of {a thing}. One {item} covers {each} and costs {price}. What do they pay?",
       "{Stuff} for every face of {a thing} is sold in whole {items}. One {item} covers {each} and costs {price}. What "
       "is "
       "the total cost?",
       "A {price} {item} of {stuff} covers {each}. What does it cost {who} to coat every face of {a thing}?"},
      {"{Who} makes every face of {a thing} from {stuff}. One {item} is {each} and costs {price}. What do they pay?",
       "{Stuff} for every face of {a thing} is sold in whole {items}. One {item} is {each} and costs {price}. What is "
       "the "
       "total cost?",
       "A {price} {item} of {stuff} is {each}. What does it cost {who} to make every face of {a thing}?"}};
  auto made = covered(blueprint, seed);
  if (!made) {
    return std::nullopt;
  }
  const int dollars = drawn(seed, std::max(2, made->bought.pack.least_price), made->bought.pack.most_price);
  const std::string price = "$" + std::to_string(dollars);
  lessons::Supply supply = practice::task_as<WordProblem>(made->problem)->supply();
  supply.price = lessons::Price{price, "$", Number::whole(dollars)};
  made->problem.tasks.front() = WordProblem(std::move(supply));
  Places places = pack_places(made->bought);
  places["price"] = price;
  made->problem.prompt = told(stories, blueprint.thing().covers, blueprint, places);
  return made->problem;
}

// ---- filled ----

std::optional<Problem> filled(const Blueprint& blueprint, Seed& seed, const std::vector<Pack>& packs, PackUnit wanted,
                              Rounding rounding, const SpaceStories& stories) {
  auto problem = made_problem(blueprint.draw(seed, Labels::ForVolume), "");
  if (!problem) {
    return std::nullopt;
  }
  const Number amount = problem->solid.volume().amount();
  const auto one = bought(blueprint, packs, amount, problem->solid.unit().to_the(3), wanted, rounding);
  if (!one) {
    return std::nullopt;
  }
  problem->tasks = {WordProblem({Purpose::Fill, "volume", one->each, one->pack.item, rounding}), Measure("volume")};
  problem->prompt = told(stories, blueprint, pack_places(*one));
  return problem;
}

bool is_sold(const Subject& subject) {
  const std::string& filling = subject.thing->filling;
  return !filling.empty() && !filling_named(filling).packs.empty();
}
// Level 1: a box, and bags in its own unit. Level 2: a box, and bags in another unit. Level 3: the same of a prism or a
// pyramid.
std::optional<Problem> made_fill(const Blueprint& blueprint, Seed& seed) {
  static const Stories stories{
      "{Who} fills {a thing} with {stuff}. One {item} holds {each}. How many {items} do they need?",
      "{Stuff} comes in {items} of {each}. How many {items} does {who} need to fill {a thing}?",
      "{Who} has to fill {a thing} with {stuff}, and each {item} holds {each}. How many {items} should they get?"};
  if (is_boxy(blueprint) == (blueprint.level == 3)) {
    return std::nullopt;
  }
  const Filling& filling = filling_named(blueprint.thing().filling);
  return filled(blueprint, seed, filling.packs, blueprint.level == 1 ? PackUnit::Own : PackUnit::Other, Rounding::Up,
                {stories, stories, stories});
}

bool is_shared_out(const Subject& subject) {
  const Thing& thing = *subject.thing;
  const std::string& inside = thing.filling.empty() ? thing.solid_of : thing.filling;
  return !inside.empty() && !filling_named(inside).portions.empty();
}
std::optional<Problem> made_pour(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories stories{
      {"{A thing} is full of {stuff}. One {item} holds {each}. How many {items} can {who} fill completely from it?",
       "{Who} empties {a thing} full of {stuff} into {items} of {each}. How many full {items} do they get?",
       "{Who} has {a thing} full of {stuff}. Each {item} holds {each}. How many {items} can they fill to the top?"},
      {"{Who} uses the {stuff} from {a thing} to fill {items}. One {item} holds {each}. How many can they fill "
       "completely?",
       "One {item} holds {each}. How many {items} can {who} fill completely with the {stuff} from {a thing}?",
       "{Who} puts all the {stuff} from {a thing} into {items} of {each}. How many full {items} do they get?"},
      {}};
  const Thing& thing = blueprint.thing();
  const Filling& filling = filling_named(thing.filling.empty() ? thing.solid_of : thing.filling);
  return filled(blueprint, seed, filling.portions, PackUnit::Any, Rounding::Down, stories);
}

// ---- edged ----

bool is_edged(const Subject& subject) { return subject.thing->has(HasTrim) || subject.thing->has(HasFrame); }
const std::vector<Pack>& trims() {
  // Source: common practice, no source.
  static const std::vector<Pack> table{
      {"roll of ribbon", "100 in", 2, 4}, {"roll of ribbon", "10 ft", 3, 5},    {"roll of ribbon", "3 yd", 2, 4},
      {"roll of ribbon", "300 cm", 2, 4}, {"roll of ribbon", "5 m", 3, 5},      {"roll of tape", "25 ft", 3, 6},
      {"roll of tape", "10 m", 3, 6},     {"string of lights", "16 ft", 6, 12}, {"string of lights", "150 in", 5, 9},
      {"string of lights", "5 m", 6, 12}, {"string of lights", "400 cm", 5, 9}, {"roll of tape", "60 in", 1, 3},
      {"roll of ribbon", "150 cm", 1, 3},
  };
  return table;
}
// What is sewn gets ribbon, and no tape or lights.
std::vector<Pack> trims_for(const Thing& thing) {
  const bool is_sewn = std::find(thing.covers.begin(), thing.covers.end(), "fabric") != thing.covers.end();
  std::vector<Pack> fitting;
  std::copy_if(trims().begin(), trims().end(), std::back_inserter(fitting),
               [&](const Pack& trim) { return !is_sewn || trim.item == "roll of ribbon"; });
  return fitting;
}
// What edges are cut from, which cannot be joined.
const std::vector<Pack>& rods() {
  // Source: common practice, no source.
  static const std::vector<Pack> table{
      {"straw", "8 in", 1, 2},          {"straw", "20 cm", 1, 2},        {"craft stick", "6 in", 1, 2},
      {"craft stick", "15 cm", 1, 2},   {"dowel", "12 in", 1, 2},        {"dowel", "36 in", 2, 3},
      {"dowel", "30 cm", 1, 2},         {"dowel", "100 cm", 2, 3},       {"bamboo pole", "72 in", 2, 4},
      {"bamboo pole", "180 cm", 2, 4},  {"plastic pipe", "10 ft", 4, 7}, {"plastic pipe", "120 in", 4, 7},
      {"plastic pipe", "300 cm", 4, 7},
  };
  return table;
}
// Level 3: a frame of rods that cannot be joined, so that dividing the length of all edges says too little.
std::optional<Problem> made_frame(const Blueprint& blueprint, Seed& seed) {
  constexpr std::size_t most_rods = 30;
  auto problem = made_problem(blueprint.draw(seed, Labels::All), "");
  if (!problem || !blueprint.thing().has(HasFrame)) {
    return std::nullopt;
  }
  std::vector<Bought> fitting;
  for (const Pack& rod : rods()) {
    const auto each = size_of(rod, problem->solid.unit());
    if (!each || !(each->unit == problem->solid.unit())) {
      continue;
    }
    const std::vector<PieceKind> pieces = edge_pieces(problem->solid, each->unit);
    const bool is_rational =
        std::all_of(pieces.begin(), pieces.end(), [](const PieceKind& piece) { return piece.length.is_rational(); });
    const auto plan = is_rational ? least_cuts(pieces, each->number.value) : std::nullopt;
    if (plan && plan->items <= most_rods && plan->joined.to_double() + 1 <= static_cast<double>(plan->items)) {
      fitting.push_back({rod, *each});
    }
  }
  if (fitting.empty()) {
    return std::nullopt;
  }
  const Bought& one = fitting[blueprint.trap % fitting.size()];
  problem->tasks = {CutPieces({Purpose::Edge, "edges", one.each, one.pack.item})};
  problem->prompt =
      told({"{Who} cuts the edges of a frame for {a thing} from {each} {items}. Leftover pieces can't be "
            "joined. How many {items} do they need?",
            "Each edge of a frame for {a thing} has to be a single piece. One {item} is {each} long. What is the least "
            "number of {items} they need?",
            "A frame for {a thing} is made of {items} that are {each} long. No edge is pieced together. How many "
            "{items} does it take?"},
           blueprint, pack_places(one));
  return problem;
}
// Level 1: a box, and rolls in its own unit. Level 2: a box, and rolls in another unit.
std::optional<Problem> made_edging(const Blueprint& blueprint, Seed& seed) {
  if (blueprint.level == 3) {
    return made_frame(blueprint, seed);
  }
  if (!is_boxy(blueprint) || !blueprint.thing().has(HasTrim)) {
    return std::nullopt;
  }
  auto problem = made_problem(blueprint.draw(seed, Labels::ForVolume), "");
  if (!problem) {
    return std::nullopt;
  }
  const std::vector<double> lengths = problem->solid.body().edge_lengths();
  const double edges = std::accumulate(lengths.begin(), lengths.end(), 0.0);
  const long long amount = std::llround(2 * edges);
  if (std::abs(2 * edges - static_cast<double>(amount)) > 1e-6) {
    return std::nullopt;
  }
  const auto one = bought(blueprint, trims_for(blueprint.thing()), Number::ratio(amount, 2), problem->solid.unit(),
                          blueprint.level == 1 ? PackUnit::Own : PackUnit::Other, Rounding::Up);
  if (!one) {
    return std::nullopt;
  }
  const std::string stuff = one->pack.item.substr(one->pack.item.rfind(' ') + 1);
  Places places = pack_places(*one);
  places["stuff"] = stuff;
  problem->prompt = told(
      {"{Who} puts {stuff} along every edge of {a thing}. One {item} is {each} long. How many {items} should they buy?",
       "Every edge of {a thing} gets {stuff}. One {item} is {each} long. How many {items} does it take?",
       "One {item} is {each} long. How many {items} does {who} need for all the edges of {a thing}?"},
      blueprint, places);
  problem->tasks = {WordProblem({Purpose::Edge, "edges", one->each, one->pack.item})};
  return problem;
}

}  // namespace

std::vector<MadeUp> made_word_problems() {
  using practice::Heading;
  return {
      {17, "cover", "cover with whole sheets", Heading::WordProblems, 1, "cover and round up", is_covered, made_cover},
      {18, "fill", "fill with whole bags", Heading::WordProblems, 1, "fill and round up", is_sold, made_fill},
      {19, "pour", "pour into full cups", Heading::WordProblems, 2, "fill and round down", is_shared_out, made_pour},
      {20, "cost", "cost of whole sheets", Heading::WordProblems, 2, "cost", is_covered, made_cost},
      {21, "edging", "total length of the edges", Heading::WordProblems, 1, "add edges", is_edged, made_edging},
  };
}

}  // namespace fw::tasks
