#include "tasks/generate/made_up.hpp"

namespace fw::tasks {

using lessons::Problem;

std::optional<Problem> made_problem(const solids::Description& description, const std::string& prompt,
                                    const solids::Known& known) {
  auto solid = solids::Solid::make(description, known);
  if (!solid || !solid->remarks().empty()) {
    return std::nullopt;
  }
  return Problem{"", prompt, description, known, std::move(solid).value()};
}

std::optional<Problem> made_problem(const solids::Description& description, const std::string& prompt,
                                    lessons::Task task, const solids::Known& known) {
  auto problem = made_problem(description, prompt, known);
  if (problem) {
    problem->tasks = {std::move(task)};
  }
  return problem;
}

std::string told(const std::vector<std::string>& stories, const Blueprint& blueprint) {
  const std::vector<std::string>& things = blueprint.family->things;
  const std::string& thing = things[blueprint.thing % things.size()];
  const bool has_vowel = std::string("aeiou").find(thing.front()) != std::string::npos;
  std::string text = stories[blueprint.story % stories.size()];
  for (const auto& [place, article] : {std::pair<std::string, std::string>{"{A thing}", has_vowel ? "An " : "A "},
                                       std::pair<std::string, std::string>{"{a thing}", has_vowel ? "an " : "a "}}) {
    for (std::size_t at = text.find(place); at != std::string::npos; at = text.find(place)) {
      text.replace(at, place.size(), article + thing);
    }
  }
  return text;
}

Blueprint by_turn(Blueprint blueprint) {
  blueprint.story = blueprint.turn;
  return blueprint;
}

Labels labels_at(const Blueprint& blueprint, Labels usual) { return blueprint.level == 3 ? Labels::All : usual; }

void fill_in(std::string& text, const std::string& place, const std::string& with) {
  const std::size_t at = text.find(place);
  if (at != std::string::npos) {
    text.replace(at, place.size(), with);
  }
}

Plain plain_of(const Blueprint& blueprint) {
  return blueprint.story % 2 == 0 ? Plain{"surface_area", Labels::ForArea} : Plain{"volume", Labels::ForVolume};
}

std::optional<Problem> plain_problem(const Blueprint& blueprint, Seed& seed, const std::vector<std::string>& stories) {
  return made_problem(blueprint.family->draw(seed, blueprint.level, plain_of(blueprint).labels, blueprint.unit),
                      told(stories, blueprint));
}

}  // namespace fw::tasks
