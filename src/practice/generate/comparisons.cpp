#include <array>

#include "practice/generate/types.hpp"
#include "reasoning/tasks/task.hpp"

// Numbers held against each other: an area and a volume of one number, boxes that hold as much.
namespace fw::practice {
namespace {

using lessons::Problem;
using lessons::WholeBox;

// The box of the family with these edges, in an order that the seed draws.
std::optional<Problem> with_edges(const Blueprint& blueprint, WholeBox edges, Seed& seed, const std::string& find,
                                  const std::string& prompt) {
  solids::Description description = blueprint.family->draw(seed, 1, Labels::All, blueprint.unit);
  std::vector<long long> order(edges.begin(), edges.end());
  shuffle(order, seed);
  const std::array<const char*, 3> keys{"length", "width", "height"};
  for (std::size_t i = 0; i < keys.size(); ++i) {
    description.fields[keys[i]] = entry(std::to_string(order[i]), blueprint.unit);
  }
  return made_problem(description, {}, find, prompt);
}

std::optional<Problem> same_number(const Blueprint& blueprint, Seed& seed) {
  // Boxes of whole edges with 2(lw + lh + wh) = lwh, but for those with an edge of over 24. Source: worked out.
  static const std::vector<WholeBox> pool{{3, 8, 24}, {3, 9, 18}, {3, 10, 15}, {3, 12, 12}, {4, 5, 20},
                                          {4, 6, 12}, {4, 8, 8},  {5, 5, 10},  {6, 6, 6}};
  const WholeBox& edges = one_of(pool, seed);
  const std::string number = std::to_string(edges[0] * edges[1] * edges[2]);
  return with_edges(blueprint, edges, seed, "same_number",
                    told({"The surface area and the volume of {a thing} are both " + number + ". Are they the same?",
                          "For {a thing} somebody works out " + number + " for the paper that covers it and " + number +
                              " for the sand that fills it. Is it as much paper as sand?"},
                         blueprint));
}

std::optional<Problem> least_surface(const Blueprint& blueprint, Seed& seed) {
  // Volumes with many divisors, whose best box is no cube.
  static const std::vector<long long> pool{24, 30, 36, 40, 42, 48,  54,  56,  60,  70,
                                           72, 80, 84, 90, 96, 100, 105, 108, 112, 120};
  const std::vector<WholeBox> boxes = reasoning::boxes_with_volume(one_of(pool, seed));
  // Not the best one, and not a stick of one by one.
  const WholeBox& shown = boxes[1 + seed.below(boxes.size() - 2)];
  const std::string volume = std::to_string(shown[0] * shown[1] * shown[2]);
  return with_edges(
      blueprint, shown, seed, "least_surface",
      told({"{A thing} holds " + volume +
                " cubes with edges of 1 {unit}. Which box with whole edges holds as many and "
                "takes the least card? Give its surface area.",
            "{A thing} is to be made of as little board as can be, with whole edges and the same volume. How "
            "large is its surface area then?"},
           blueprint));
}

}  // namespace

std::vector<ProblemType> comparison_types() {
  return {
      {"same-number", "area and volume of one number", 2, "compare units", is_box, same_number},
      {"least-surface", "box that takes the least card", 3, "list and compare", is_box, least_surface},
  };
}

}  // namespace fw::practice
