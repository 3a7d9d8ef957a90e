#include "practice/choice_parts.hpp"
#include "practice/generate/types.hpp"
#include "reasoning/tasks/task.hpp"

// What is asked of a solid whose labels are all given.
namespace fw::practice {
namespace {

using lessons::Problem;

Labels labels_at(const Blueprint& blueprint, Labels usual) {
  // A label that is not needed, at the higher level only.
  return blueprint.level == 3 ? Labels::All : usual;
}
solids::Description drawn_for(const Blueprint& blueprint, Seed& seed, Labels labels) {
  return blueprint.family->draw(seed, blueprint.level, labels_at(blueprint, labels), blueprint.unit);
}

std::optional<Problem> surface(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "surface_area",
                      told({"{A thing} gets paper on every face. How much paper covers it?",
                            "Every face of {a thing} is painted. How large is the area that gets paint?",
                            "How much card does it take to make {a thing}, closed on all sides?",
                            "{A thing} is made of thin board. Find its surface area."},
                           blueprint));
}
std::optional<Problem> lateral(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "lateral_area",
                      told({"Foil goes round the sides of {a thing}, but not on a base. How much foil is that?",
                            "The lateral faces of {a thing} are decorated with stars. How large is their area?",
                            "{A thing} has cloth on its lateral faces only. How much cloth is needed?"},
                           blueprint));
}
std::optional<Problem> volume(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      drawn_for(blueprint, seed, Labels::ForVolume), {}, "volume",
      told({"{A thing} is filled with sand. How much sand does it hold?", "How much space does {a thing} take up?",
            "{A thing} is cast from wax. How much wax does it take?",
            "How much water freezes into the shape of {a thing}?"},
           blueprint));
}
std::optional<Problem> base_area(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForVolume), {}, "base_area",
                      told({"{A thing} is put on its base. How much of the table does it cover?",
                            "A felt pad is cut to fit the base of {a thing}. How large is the pad?"},
                           blueprint));
}
std::optional<Problem> faces(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "faces",
                      told({"Each face of {a thing} gets one sticker. How many stickers are needed?",
                            "How many faces does {a thing} have?"},
                           blueprint));
}
std::optional<Problem> edges(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "edges",
                      told({"A frame of thin rods has the shape of {a thing}, one rod for each edge. How many rods is "
                            "that?",
                            "How many edges does {a thing} have?"},
                           blueprint));
}
std::optional<Problem> vertices(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "vertices",
                      told({"Each corner of {a thing} gets a bead. How many beads are needed?",
                            "How many vertices does {a thing} have?"},
                           blueprint));
}
std::optional<Problem> face_lengths(const Blueprint& blueprint, Seed& seed) {
  auto problem = made_problem(blueprint.family->draw(seed, blueprint.level, Labels::All, blueprint.unit), {}, "name",
                              told({"Before anything is multiplied: which two lengths belong to one face of {a thing}?",
                                    "One face of {a thing} gets paper. Which two lengths tell how much?"},
                                   blueprint));
  if (!problem) {
    return std::nullopt;
  }
  problem->find.clear();
  std::vector<geometry::FaceId> faces;
  for (const solids::Face& face : problem->solid.faces()) {
    if (lessons::has_two_lengths(face) && !(face.lengths[0].symbol == face.lengths[1].symbol)) {
      faces.push_back(face.id);
    }
  }
  if (faces.empty()) {
    return std::nullopt;
  }
  problem->face = faces[static_cast<std::size_t>(drawn(seed, 0, static_cast<int>(faces.size()) - 1))];
  problem->prompt += " Face " + std::to_string(problem->face->index() + 1) + " is meant.";
  constexpr std::size_t least_choices = 3;
  Seed order{0};
  return lengths_choices(*problem, order).size() < least_choices ? std::nullopt : problem;
}
std::optional<Problem> name(const Blueprint& blueprint, Seed& seed) {
  return made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "name",
                      told({"{A thing} for the fair has this shape. What is the solid called?",
                            "Fold the net of {a thing}. Which solid does it make?"},
                           blueprint));
}
std::optional<Problem> open(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      made_problem(drawn_for(blueprint, seed, Labels::ForArea), {}, "surface_area",
                   told({"{A thing} has no lid. How much board makes it?",
                         "{A thing} is open at the top. Its other faces get paint on the outside. How large is "
                         "the painted area?"},
                        blueprint));
  if (problem) {
    // The faces of a box: bottom, top, front, back, left, right.
    problem->open = {{"top", {geometry::FaceId::at(1)}}};
  }
  return problem;
}
std::optional<Problem> mixed_units(const Blueprint& blueprint, Seed& seed) {
  solids::Description description = blueprint.family->draw(seed, 1, Labels::ForVolume, "cm");
  // One length in meters: 0.4 m to 1.2 m, by tenths.
  const int tenths = drawn(seed, 4, 12);
  description.fields["width"] = entry(std::to_string(tenths / 10) + "." + std::to_string(tenths % 10), "m");
  return made_problem(description, {}, "volume",
                      told({"The labels of {a thing} are in two units. How many cubic centimeters does it hold?",
                            "How much sand, in cubic centimeters, fills {a thing}? Look at the units first."},
                           blueprint));
}
std::optional<Problem> two_routes(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      drawn_for(blueprint, seed, Labels::ForArea), {}, "surface_area",
      told({"Find the surface area of {a thing} in two ways: face by face, and by formula."}, blueprint));
}

}  // namespace

std::vector<ProblemType> measure_types() {
  return {
      {"name", "name of the solid", 1, "name", any, name},
      {"faces", "number of faces", 1, "count", any, faces},
      {"edges", "number of edges", 1, "count", any, edges},
      {"vertices", "number of vertices", 1, "count", any, vertices},
      {"face-lengths", "two lengths of a face", 1, "read the labels", any, face_lengths},
      {"surface", "surface area", 1, "add faces", any, surface},
      {"lateral", "lateral area", 1, "add some faces", has_bases, lateral},
      {"volume", "volume", 1, "base times height", any, volume},
      {"base-area", "base area", 1, "one face", has_bases, base_area},
      {"open", "open surface", 1, "leave faces out", is_box, open},
      {"units", "volume from unlike units", 2, "convert", is_box, mixed_units},
      {"routes", "surface area in two ways", 2, "add faces", has_bases, two_routes},
  };
}

}  // namespace fw::practice
