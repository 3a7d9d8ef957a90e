#include <array>

#include "tasks/generate/open_things.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"

// Measures of a solid whose labels are all given.
namespace fw::tasks {

std::vector<MadeUp> made_missing_measures();  // missing_made.cpp
std::vector<MadeUp> made_on_circles();        // round_made.cpp

namespace {

solids::Description labelled_for(const Blueprint& blueprint, Seed& seed, Labels labels) {
  return blueprint.draw(seed, labels_at(blueprint, labels));
}

const WayStories& surface_stories() {
  static const WayStories stories{
      {"{Who} covers every face of {a thing} with {stuff}. How much {stuff} do they need?",
       "{Who} covers {a thing} with {stuff} on all its faces, with no overlap. What area do they cover?",
       "How much {stuff} does it take to cover every face of {a thing}?"},
      {"{Who} puts {stuff} on every face of {a thing}. What area do they cover?",
       "{A thing} needs one coat of {stuff} on every face. What area is that?",
       "For the fair, {who} coats all the faces of {a thing} with {stuff}. Find the area of the coat."},
      {"{Who} makes every face of {a thing} from {stuff}. How much {stuff} do they need?",
       "{Who} cuts all the faces of {a thing} from {stuff}. What is the total area of the pieces?",
       "How much {stuff} does it take to make {a thing} with all its faces?"}};
  return stories;
}
std::optional<Problem> made_surface(const Blueprint& blueprint, Seed& seed) {
  return made_problem(labelled_for(blueprint, seed, Labels::ForArea),
                      told(surface_stories(), blueprint.thing().covers, blueprint), Measure("surface_area"));
}

bool has_sides(const Subject& subject) { return has_bases(subject) && !subject.thing->sides.empty(); }
std::optional<Problem> made_lateral(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{Who} covers the lateral faces of {a thing} with {stuff}, but not the {bases}. How much {stuff} do they need?",
       "Only the lateral faces of {a thing} get {stuff}. What area is that?",
       "How much {stuff} covers the lateral faces of {a thing}?"},
      {"{Who} puts {stuff} on the lateral faces of {a thing}, but not on the {bases}. What area do they cover?",
       "Only the lateral faces of {a thing} get {stuff}. What area is that?",
       "The lateral faces of {a thing} need a new coat of {stuff}. What area is that?"},
      {"{Who} makes the lateral faces of {a thing} from {stuff}, but not the {bases}. How much {stuff} do they need?",
       "The lateral faces of {a thing} are {stuff}. How much {stuff} is that?",
       "{Who} cuts the lateral faces of {a thing} from {stuff}. What is the total area of the pieces?"}};
  return made_problem(labelled_for(blueprint, seed, Labels::ForArea), told(stories, blueprint.thing().sides, blueprint),
                      Measure("lateral_area"));
}

std::optional<Problem> made_volume(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories stories{
      {"{Who} fills {a thing} with {stuff}. How much {stuff} does it hold?",
       "{A thing} is full of {stuff}. How much {stuff} is inside?",
       "How much {stuff} does {who} need to fill {a thing}?"},
      {"How much {stuff} is in {a thing} of this size?", "{Who} brings {a thing} to the fair. What is its volume?",
       "{Who} sets out {a thing} at the fair. How much space does it take up?"},
      {"How much space does {a thing} of this size take up?",
       "{Who} needs {a thing} of this size for the fair. What is its volume?",
       "{Who} stores {a thing} after the fair. How much space does it take up?"}};
  return made_problem(labelled_for(blueprint, seed, Labels::ForVolume), told(stories, blueprint), Measure("volume"));
}

std::optional<Problem> made_base_area(const Blueprint& blueprint, Seed& seed) {
  return made_problem(labelled_for(blueprint, seed, Labels::ForVolume),
                      told({"{Who} cuts a sheet of plastic to fit {the base} of {a thing}. What is its area?",
                            "What is the area of {the base} of {a thing} of this size?",
                            "{Who} measures {the base} of {a thing}. What is its area?"},
                           blueprint),
                      Measure("base_area"));
}

bool can_be_open(const Subject& subject) { return !open_ways(subject, 3).empty() || !open_ways(subject, 1).empty(); }
// Level 1: a box without one face. Level 2: without two. Level 3: a prism on a base with more or fewer sides.
std::optional<Problem> made_open(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{A thing} has no {missing}. {Who} covers the outside of its other faces with {stuff}. How much {stuff} do they "
       "need?",
       "How much {stuff} covers the outside of {a thing} that has no {missing}?",
       "{Who} covers the outside of {a thing} with {stuff}. It has no {missing}. What area do they cover?"},
      {"{A thing} gets {stuff} on the outside, but it has no {missing}. What area gets {stuff}?",
       "{Who} puts {stuff} on the outside of {a thing} that has no {missing}. What area do they cover?",
       "{A thing} has no {missing}. All its other faces need {stuff} on the outside. What area is that?"},
      {"{Who} makes {a thing} with no {missing} from {stuff}. How much {stuff} do they need?",
       "{A thing} made of {stuff} has no {missing}. How much {stuff} does it take?",
       "{Who} cuts the faces of {a thing} with no {missing} from {stuff}. What is the total area of the pieces?"}};
  static const Stories bare{"{Who} puts {stuff} on every face of {a thing} but the {missing}. What area do they cover?",
                            "All of {a thing} but the {missing} gets {stuff}. What area is that?",
                            "How much {stuff} covers {a thing} on every face but the {missing}?"};
  const std::vector<OpenWay> ways = open_ways(blueprint.subject, blueprint.level);
  if (ways.empty()) {
    return std::nullopt;
  }
  const OpenWay& way = ways[blueprint.trap % ways.size()];
  auto problem = made_problem(labelled_for(blueprint, seed, Labels::ForArea),
                              told(way.is_bare ? WayStories{bare, bare, bare} : stories, blueprint.thing().shell,
                                   blueprint, {{"missing", way.told}}),
                              Measure("surface_area"));
  return problem && leave_open(*problem, way) ? problem : std::nullopt;
}

// "90 cm" in meters, where it is whole tenths or halves of them; nothing where it is not.
std::optional<solids::LengthEntry> in_larger_unit(const solids::LengthEntry& length) {
  const bool is_metric = length.written->unit.ascii() == "cm";
  const exact::Number larger = length.written->number.value / exact::Number::whole(is_metric ? 100 : 12);
  const exact::Shown shown = exact::shown(larger, 1);
  return shown.exact ? std::optional(entry(shown.text, is_metric ? "m" : "ft")) : std::nullopt;
}
// "30 cm" in millimeters, "18 in" in feet.
std::optional<solids::LengthEntry> in_another_unit(const solids::LengthEntry& length) {
  if (length.written->unit.ascii() != "cm") {
    return in_larger_unit(length);
  }
  return entry(exact::shown(length.written->number.value * exact::Number::whole(10), 1).text, "mm");
}
bool is_long_box(const Subject& subject) {
  const Form& form = *subject.form;
  return form.shape == Shape::Box && has_volume_story(subject) &&
         ((form.unit == "cm" && form.sizes[0].most >= 40) || (form.unit == "in" && form.sizes[0].most >= 18));
}
// Level 2: one length is in another unit. Level 3: two are.
std::optional<Problem> made_units(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories stories{
      {"{A thing} is labeled in different units. How many cubic {units} of {stuff} does it hold?",
       "{Who} fills {a thing} with {stuff}. How much is that in cubic {units}?",
       "Look at the units first. How many cubic {units} of {stuff} fill {a thing}?"},
      {"{A thing} is labeled in different units. What is its volume in cubic {units}?",
       "Look at the units first. How many cubic {units} of {stuff} are in {a thing} of this size?",
       "{Who} measures {a thing} in different units. How much space does it take up, in cubic {units}?"},
      {"Look at the units first. What is the volume of {a thing} of this size?"}};
  solids::Description description = blueprint.subject.family->draw(seed, 2, Labels::ForVolume, blueprint.form());
  // The longest one is in the larger unit; the first one tells in which unit the solid is.
  std::swap(description.fields["length"], description.fields["width"]);
  const auto convert = [&](const char* key, auto in_unit) {
    auto& length = std::get<solids::LengthEntry>(description.fields[key]);
    const auto converted = in_unit(length);
    length = converted ? *converted : length;
    return converted.has_value();
  };
  if (!convert("width", in_larger_unit) || (blueprint.level == 3 && !convert("height", in_another_unit))) {
    return std::nullopt;
  }
  const std::string units = blueprint.unit() == "cm" ? "centimeters" : "inches";
  return made_problem(description, told(stories, blueprint, {{"units", units}}), Measure("volume"));
}

std::optional<Problem> made_routes(const Blueprint& blueprint, Seed& seed) {
  return made_problem(
      labelled_for(blueprint, seed, Labels::ForArea),
      told({"Find the surface area of {a thing} in two ways: face by face, and with a formula.",
            "{Who} checks the surface area of {a thing} in two ways, face by face and with a formula. What is it?",
            "Add up the faces of {a thing}, then use a formula. What surface area do both ways give?"},
           blueprint),
      Measure("surface_area"));
}

std::vector<MadeUp> made_measures() {
  using practice::Heading;
  std::vector<MadeUp> all{
      {6, "surface", "surface area", Heading::Area, 1, "add faces", is_covered, made_surface},
      {7, "lateral", "lateral area", Heading::Area, 1, "add some faces", has_sides, made_lateral},
      {8, "volume", "volume", Heading::Volume, 1, "base times height", any, made_volume},
      {9, "base-area", "base area", Heading::Area, 1, "one face", has_bases, made_base_area},
      {10, "open", "surface area of an open solid", Heading::Area, 1, "leave faces out", can_be_open, made_open},
      {11, "units", "volume with mixed units", Heading::Volume, 2, "convert", is_long_box, made_units},
      {12, "routes", "surface area two ways", Heading::Area, 2, "add faces", has_bases, made_routes},
  };
  for (const std::vector<MadeUp>& more : {made_missing_measures(), made_on_circles()}) {
    all.insert(all.end(), more.begin(), more.end());
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
