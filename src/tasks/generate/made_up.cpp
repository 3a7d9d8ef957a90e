#include "tasks/generate/made_up.hpp"

#include "base/ensure.hpp"
#include "words/message.hpp"

namespace fw::tasks {

using lessons::Problem;

std::string plural_of(const std::string& noun) {
  return words::said(words::message("{noun:s}", {{"noun", words::Noun{noun}}}));
}
std::string with_article(const std::string& noun) {
  return words::said(words::message("{noun:a}", {{"noun", words::Noun{noun}}}));
}
std::string at_the_start(const std::string& text) { return words::said(words::message("{text:up}", {{"text", text}})); }

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

namespace {

std::string filled_in(const std::string& story, const Places& places) {
  std::string text;
  std::size_t at = 0;
  for (std::size_t open = story.find('{'); open != std::string::npos; open = story.find('{', at)) {
    const std::size_t close = story.find('}', open);
    ensure(close != std::string::npos, "a place of a story is not closed");
    const auto place = places.find(story.substr(open + 1, close - open - 1));
    ensure(place != places.end(), "a place of a story has nothing to stand in it");
    text += story.substr(at, open - at) + place->second;
    at = close + 1;
  }
  return text + story.substr(at);
}

Places places_of(const Blueprint& blueprint) {
  const Thing& thing = blueprint.thing();
  const std::string a_thing = with_article(thing.name);
  const bool has_two = blueprint.family().traits().has_second_base;
  return {{"who", thing.who},   {"Who", at_the_start(thing.who)},     {"thing", thing.name},
          {"a thing", a_thing}, {"A thing", at_the_start(a_thing)},   {"the base", has_two ? "one base" : "the base"},
          {"base", "base"},     {"bases", has_two ? "bases" : "base"}};
}

}  // namespace

std::string told(const Stories& stories, const Blueprint& blueprint, const Places& more) {
  Places places = places_of(blueprint);
  places.insert(more.begin(), more.end());
  return filled_in(stories[blueprint.story % stories.size()], places);
}

const Material& picked(const std::vector<std::string>& materials, const Blueprint& blueprint) {
  ensure(!materials.empty(), "a thing is covered with nothing");
  return material_named(materials[blueprint.pick % materials.size()]);
}

std::string told(const WayStories& stories, const std::vector<std::string>& materials, const Blueprint& blueprint,
                 Places more) {
  const Material& material = picked(materials, blueprint);
  more["stuff"] = material.name;
  more["Stuff"] = at_the_start(material.name);
  return told(stories.of(material.way), blueprint, more);
}

std::string told(const SpaceStories& stories, const Blueprint& blueprint, Places more) {
  const Thing& thing = blueprint.thing();
  more["stuff"] = thing.filling.empty() ? thing.solid_of : thing.filling;
  more["Stuff"] = at_the_start(more["stuff"]);
  return told(!thing.filling.empty()    ? stories.filled
              : !thing.solid_of.empty() ? stories.solid
                                        : stories.hollow,
              blueprint, more);
}

Blueprint by_turn(Blueprint blueprint) {
  blueprint.story = blueprint.turn;
  return blueprint;
}

Labels labels_at(const Blueprint& blueprint, Labels usual) { return blueprint.level == 3 ? Labels::All : usual; }

std::string said_quantity(const units::WrittenQuantity& quantity) {
  return quantity.number.text + " " + quantity.unit.text();
}

Plain plain_of(const Blueprint& blueprint) {
  return blueprint.story % 2 == 0 ? Plain{"surface_area", Labels::ForArea} : Plain{"volume", Labels::ForVolume};
}

std::optional<Problem> plain_problem(const Blueprint& blueprint, Seed& seed) {
  return made_problem(blueprint.draw(seed, plain_of(blueprint).labels), "");
}

}  // namespace fw::tasks
