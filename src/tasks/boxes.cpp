#include "tasks/boxes.hpp"

#include <algorithm>
#include <array>

namespace fw::tasks {

std::vector<lessons::WholeBox> turned_to_fit(const Form& form, lessons::WholeBox edges) {
  std::vector<lessons::WholeBox> all;
  std::sort(edges.begin(), edges.end());
  do {
    bool fits = form.shape == Shape::Box;
    for (std::size_t i = 0; i < edges.size(); ++i) {
      fits = fits && edges[i] >= form.sizes[i].least && edges[i] <= form.sizes[i].most;
    }
    if (fits) {
      all.push_back(edges);
    }
  } while (std::next_permutation(edges.begin(), edges.end()));
  return all;
}

std::optional<lessons::Problem> box_with_edges(const Blueprint& blueprint, const lessons::WholeBox& edges,
                                               lessons::Task task, const std::string& prompt) {
  solids::Description description;
  description.kind = solids::kind_for(blueprint.family().use).key;
  const std::array<const char*, 3> keys{"length", "width", "height"};
  for (std::size_t i = 0; i < keys.size(); ++i) {
    description.fields[keys[i]] = entry(std::to_string(edges[i]), blueprint.unit());
  }
  return made_problem(description, prompt, std::move(task));
}

}  // namespace fw::tasks
