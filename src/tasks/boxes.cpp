#include "tasks/boxes.hpp"

#include <array>

namespace fw::tasks {

std::optional<lessons::Problem> box_with_edges(const Blueprint& blueprint, lessons::WholeBox edges, Seed& seed,
                                               lessons::Task task, const std::string& prompt) {
  solids::Description description = blueprint.family->draw(seed, 1, Labels::All, blueprint.unit);
  std::vector<long long> order(edges.begin(), edges.end());
  shuffle(order, seed);
  const std::array<const char*, 3> keys{"length", "width", "height"};
  for (std::size_t i = 0; i < keys.size(); ++i) {
    description.fields[keys[i]] = entry(std::to_string(order[i]), blueprint.unit);
  }
  return made_problem(description, prompt, std::move(task));
}

}  // namespace fw::tasks
