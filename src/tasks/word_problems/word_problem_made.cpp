#include <cmath>
#include <numeric>

#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "tasks/word_problems/word_problem.hpp"
#include "units/write_quantity.hpp"

// Made-up word problems: something is covered, filled or edged with things that are counted.
namespace fw::tasks {
namespace {

using lessons::Purpose;
using lessons::Rounding;

bool is_open_top(const Family& family) { return family.has_lid; }

// What one item covers or holds, such that a part of an item is left over and rounding to the nearest count is wrong:
// tenths of the quotient from 1 to 4 to round up, from 6 to 9 to round down. 0: there is none.
int portion(int amount, Rounding rounding, Seed& seed) {
  const int step = amount > 400 ? 10 : 5;
  const int least_tenths = rounding == Rounding::Up ? 1 : 6;
  std::vector<int> good;
  for (int each = step; each * 3 <= amount; each += step) {
    const int tenths = 10 * (amount % each) / each;
    if (each * 16 >= amount && tenths >= least_tenths && tenths <= least_tenths + 3) {
      good.push_back(each);
    }
  }
  return good.empty() ? 0 : one_of(good, seed);
}

struct Item {
  std::string name;
  Rounding rounding = Rounding::Up;
};

std::optional<Problem> counted(const Blueprint& blueprint, Seed& seed, Purpose purpose, const Item& item,
                               const std::vector<std::string>& stories) {
  const bool covers = purpose == Purpose::Cover;
  const std::string measure = covers ? "surface_area" : "volume";
  const Labels labels = covers ? Labels::ForArea : Labels::ForVolume;
  auto problem =
      made_problem(blueprint.family->draw(seed, blueprint.level, labels, blueprint.unit), told(stories, blueprint));
  if (!problem) {
    return std::nullopt;
  }
  const exact::Number amount = covers ? problem->solid.surface_area().amount() : problem->solid.volume().amount();
  if (!amount.is_whole()) {
    return std::nullopt;
  }
  const int each = portion(static_cast<int>(amount.to_double()), item.rounding, seed);
  const units::Unit unit = problem->solid.unit().to_the(covers ? 2 : 3);
  if (each == 0) {
    return std::nullopt;
  }
  problem->tasks = {WordProblem({purpose, measure, units::written_whole(each, unit), item.name, item.rounding}),
                    Measure(measure)};
  return problem;
}

std::optional<Problem> made_cover(const Blueprint& blueprint, Seed& seed) {
  return counted(blueprint, seed, Purpose::Cover, {"sheet"},
                 {"Gold paper for {a thing} comes in sheets. How many sheets cover every face?",
                  "{A thing} gets a skin of foil on all faces. How many sheets must be bought?"});
}
std::optional<Problem> made_fill(const Blueprint& blueprint, Seed& seed) {
  return counted(blueprint, seed, Purpose::Fill, {"bag"},
                 {"{A thing} is filled with sand from bags. How many bags must be bought?",
                  "Pine needles to stuff {a thing} come in bags. How many bags are needed?"});
}
std::optional<Problem> made_pour(const Blueprint& blueprint, Seed& seed) {
  return counted(blueprint, seed, Purpose::Fill, {"cup", Rounding::Down},
                 {"{A thing} is cast in wax, then melted and poured into cups. How many cups can be filled completely?",
                  "All the ice of {a thing} melts into cups. How many full cups is that?"});
}
std::optional<Problem> made_cost(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      counted(blueprint, seed, Purpose::Cover, {"sheet"},
              {"Silver paper for every face of {a thing} is sold in whole sheets. What does it cost?",
               "All faces of {a thing} get colored paper. Only whole sheets are sold. What is paid for it?"});
  if (problem) {
    const int dollars = drawn(seed, 2, 9);
    lessons::Supply supply = practice::task_as<WordProblem>(*problem)->supply();
    supply.price = lessons::Price{"$" + std::to_string(dollars), "$", exact::Number::whole(dollars)};
    problem->tasks.front() = WordProblem(std::move(supply));
  }
  return problem;
}
std::optional<Problem> made_edging(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      made_problem(blueprint.family->draw(seed, blueprint.level, Labels::ForVolume, blueprint.unit),
                   told({"Ribbon runs along every edge of {a thing}. How many rolls of ribbon must be bought?",
                         "A frame of straws has the shape of {a thing}. How many straws are cut up for its edges?"},
                        blueprint));
  if (!problem) {
    return std::nullopt;
  }
  const std::vector<double> lengths = problem->solid.body().edge_lengths();
  const double edges = std::accumulate(lengths.begin(), lengths.end(), 0.0);
  const int amount = static_cast<int>(std::lround(edges));
  const int each = portion(amount, Rounding::Up, seed);
  if (each == 0 || std::abs(edges - amount) > 1e-6) {
    return std::nullopt;
  }
  problem->tasks = {WordProblem({Purpose::Edge, "edges", units::written_whole(each, problem->solid.unit()),
                                 blueprint.story % 2 == 0 ? "roll" : "straw"})};
  return problem;
}

}  // namespace

std::vector<MadeUp> made_word_problems() {
  using practice::Heading;
  return {
      {17, "cover", "cover with whole sheets", Heading::WordProblems, 1, "cover and round up", any, made_cover},
      {18, "fill", "fill from whole bags", Heading::WordProblems, 1, "fill and round up", is_open_top, made_fill},
      {19, "pour", "pour into full cups", Heading::WordProblems, 2, "fill and round down", any, made_pour},
      {20, "cost", "cost of whole sheets", Heading::WordProblems, 2, "cost", any, made_cost},
      {21, "edging", "length of all edges", Heading::WordProblems, 1, "add edges", is_open_top, made_edging},
  };
}

}  // namespace fw::tasks
