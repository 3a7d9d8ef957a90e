#include "tasks/look.hpp"
#include "tasks/row.hpp"

// Made-up problems that are answered by looking: names and counts.
namespace fw::tasks {
namespace {

solids::Description drawn_to_look(const Blueprint& blueprint, Seed& seed) {
  return blueprint.draw(seed, labels_at(blueprint, Labels::ForArea));
}

std::optional<Problem> made_name(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_to_look(blueprint, seed),
                      told({"{Who} has {a thing} of this shape at the fair. What is the solid called?",
                            "{A thing} at the fair looks like this. Name the solid.",
                            "{Who} folds a paper model of {a thing}. Which solid is it?"},
                           blueprint),
                      Look("name"));
}
std::optional<Problem> made_faces(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      drawn_to_look(blueprint, seed),
      told({"{Who} puts a sticker on each face of a paper model of {a thing}. How many stickers do they need?",
            "How many faces does {a thing} of this shape have?",
            "{Who} paints each face of a model of {a thing} a different color. How many colors do they need?"},
           blueprint),
      Look("faces"));
}
std::optional<Problem> made_edges(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      drawn_to_look(blueprint, seed),
      told({"{Who} builds a small frame in the shape of {a thing}, with one rod for each edge. How many rods "
            "do they need?",
            "How many edges does {a thing} of this shape have?",
            "{Who} puts a strip of tape along each edge of a paper model of {a thing}. How many strips do they need?"},
           blueprint),
      Look("edges"));
}
std::optional<Problem> made_vertices(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      drawn_to_look(blueprint, seed),
      told({"{Who} glues a bead on each corner of a paper model of {a thing}. How many beads do they need?",
            "How many vertices does {a thing} of this shape have?",
            "{Who} puts a tiny light on each corner of a model of {a thing}. How many lights do they need?"},
           blueprint),
      Look("vertices"));
}

}  // namespace

std::vector<MadeUp> made_by_looking() {
  using practice::Heading;
  return {
      {1, "name", "name of the solid", Heading::NameAndCount, 1, "name", any, made_name},
      {2, "faces", "number of faces", Heading::NameAndCount, 1, "count", any, made_faces},
      {3, "edges", "number of edges", Heading::NameAndCount, 1, "count", any, made_edges},
      {4, "vertices", "number of vertices", Heading::NameAndCount, 1, "count", any, made_vertices},
  };
}

}  // namespace fw::tasks
