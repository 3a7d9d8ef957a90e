#include "tasks/measure.hpp"
#include "tasks/row.hpp"

// Measures of a solid whose labels are all given.
namespace fw::tasks {

std::vector<MadeUp> made_missing_measures();  // missing_made.cpp

namespace {

solids::Description labelled_for(const Blueprint& blueprint, Seed& seed, Labels labels) {
  return blueprint.family->draw(seed, blueprint.level, labels_at(blueprint, labels), blueprint.unit);
}

std::optional<Problem> made_surface(const Blueprint& blueprint, Seed& seed) {
  return made_problem(labelled_for(blueprint, seed, Labels::ForArea),
                      told({"{A thing} gets paper on every face. How much paper covers it?",
                            "Every face of {a thing} is painted. How large is the area that gets paint?",
                            "How much card does it take to make {a thing}, closed on all sides?",
                            "{A thing} is made of thin board. Find its surface area."},
                           blueprint),
                      Measure("surface_area"));
}
std::optional<Problem> made_lateral(const Blueprint& blueprint, Seed& seed) {
  return made_problem(labelled_for(blueprint, seed, Labels::ForArea),
                      told({"Foil goes round the sides of {a thing}, but not on a base. How much foil is that?",
                            "The lateral faces of {a thing} are decorated with stars. How large is their area?",
                            "{A thing} has cloth on its lateral faces only. How much cloth is needed?"},
                           blueprint),
                      Measure("lateral_area"));
}
std::optional<Problem> made_volume(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      labelled_for(blueprint, seed, Labels::ForVolume),
      told({"{A thing} is filled with sand. How much sand does it hold?", "How much space does {a thing} take up?",
            "{A thing} is cast from wax. How much wax does it take?",
            "How much water freezes into the shape of {a thing}?"},
           blueprint),
      Measure("volume"));
}
std::optional<Problem> made_base_area(const Blueprint& blueprint, Seed& seed) {
  return made_problem(labelled_for(blueprint, seed, Labels::ForVolume),
                      told({"{A thing} is put on its base. How much of the table does it cover?",
                            "A felt pad is cut to fit the base of {a thing}. How large is the pad?"},
                           blueprint),
                      Measure("base_area"));
}
std::optional<Problem> made_open(const Blueprint& blueprint, Seed& seed) {
  auto problem =
      made_problem(labelled_for(blueprint, seed, Labels::ForArea),
                   told({"{A thing} has no lid. How much board makes it?",
                         "{A thing} is open at the top. Its other faces get paint on the outside. How large is "
                         "the painted area?"},
                        blueprint),
                   Measure("surface_area"));
  if (problem) {
    // The faces of a box: bottom, top, front, back, left, right.
    problem->open = {{"top", {geometry::FaceId::at(1)}}};
  }
  return problem;
}
std::optional<Problem> made_units(const Blueprint& blueprint, Seed& seed) {
  solids::Description description = blueprint.family->draw(seed, 1, Labels::ForVolume, "cm");
  // One length in meters: 0.4 m to 1.2 m, by tenths.
  const int tenths = drawn(seed, 4, 12);
  description.fields["width"] = entry(std::to_string(tenths / 10) + "." + std::to_string(tenths % 10), "m");
  return made_problem(description,
                      told({"The labels of {a thing} are in two units. How many cubic centimeters does it hold?",
                            "How much sand, in cubic centimeters, fills {a thing}? Look at the units first."},
                           blueprint),
                      Measure("volume"));
}
std::optional<Problem> made_routes(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      labelled_for(blueprint, seed, Labels::ForArea),
      told({"Find the surface area of {a thing} in two ways: face by face, and by formula."}, blueprint),
      Measure("surface_area"));
}

std::vector<MadeUp> made_measures() {
  using practice::Heading;
  std::vector<MadeUp> all{
      {6, "surface", "surface area", Heading::Area, 1, "add faces", any, made_surface},
      {7, "lateral", "lateral area", Heading::Area, 1, "add some faces", has_bases, made_lateral},
      {8, "volume", "volume", Heading::Volume, 1, "base times height", any, made_volume},
      {9, "base-area", "base area", Heading::Area, 1, "one face", has_bases, made_base_area},
      {10, "open", "open surface", Heading::Area, 1, "leave faces out", is_box, made_open},
      {11, "units", "volume from unlike units", Heading::Volume, 2, "convert", is_box, made_units},
      {12, "routes", "surface area in two ways", Heading::Area, 2, "add faces", has_bases, made_routes},
  };
  for (const MadeUp& missing : made_missing_measures()) {
    all.push_back(missing);
  }
  return all;
}

}  // namespace

namespace row {
Row measure() {
  Row row{"measure"};
  row.made = made_measures();
  row.examples = {
      R"("solid": {"kind": "cube", "edge": "7 cm"}, "find": ["surface_area"])",
      R"("solid": {"kind": "cube", "edge": "?"}, "known": {"volume": "343 cm^3"}, "find": ["edge"])",
      R"("solid": {"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"}, "open": ["top"],
         "find": ["surface_area", "volume"])",
  };
  return row;
}
}  // namespace row

}  // namespace fw::tasks
