#include "exact/print_number.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

// A measure is missing: its value is drawn first, and what is known of the whole is worked out from it.
namespace fw::tasks {
namespace {

bool has_from_volume(const Subject& subject) { return !subject.family->from_volume.empty(); }
bool has_from_surface(const Subject& subject) { return is_covered(subject) && !subject.family->from_surface.empty(); }
bool has_slant(const Subject& subject) { return subject.family->from_surface == "slant_height"; }
// Both ways lead on: the length follows from the surface, and the volume from the length.
bool has_chain(const Subject& subject) { return has_from_surface(subject); }

// The same solid with `asked` unknown and the whole of this name known.
struct Hidden {
  solids::Description description;
  solids::Known known;
};
std::optional<Hidden> hidden(const solids::Description& description, const std::string& asked,
                             const std::string& known) {
  const auto solid = solids::Solid::make(description);
  if (!solid) {
    return std::nullopt;
  }
  const bool is_volume = known == "volume";
  const exact::Number amount = is_volume ? solid->volume().amount() : solid->surface_area().amount();
  if (!exact::decimals_needed(amount, 1)) {
    return std::nullopt;
  }
  const units::Unit unit = solid->unit().to_the(is_volume ? 3 : 2);
  return Hidden{without(description, asked), {{known, units::written_as_shown(amount, unit, 1)}}};
}

// The problem with its text left out, and the amount that it tells.
struct Back {
  Problem problem;
  std::string amount;
};
std::optional<Back> asked_back(const Blueprint& blueprint, Seed& seed, const std::string& asked,
                               const std::string& known, const std::string& find) {
  const Labels labels = known == "volume" ? Labels::ForVolume : Labels::ForArea;
  const auto parts = hidden(blueprint.draw(seed, labels), asked, known);
  const auto problem =
      parts ? made_problem(parts->description, "", Measure(find), parts->known) : std::optional<Problem>{};
  return problem ? std::optional<Back>({*problem, said_quantity(parts->known.at(known))}) : std::nullopt;
}

// "What is the height of the prism?": that of a tent which lies is not how high it stands.
std::string question_for(const Blueprint& blueprint, const std::string& asked) {
  if (asked == "edge") {
    return "How long is each edge?";
  }
  const bool has_two = blueprint.family().traits().has_second_base && !is_box(blueprint.subject);
  return asked == "slant_height" ? "What is its slant height?"
         : has_two               ? "What is the height of the prism?"
                                 : "What is its height?";
}

std::optional<Problem> made_from_volume(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories stories{
      {"{A thing} holds {amount} of {stuff}. {ask}", "It takes {amount} of {stuff} to fill {a thing}. {ask}",
       "{Who} fills {a thing} with {amount} of {stuff}. {ask}"},
      {"There are {amount} of {stuff} in {a thing}. {ask}", "{A thing} has a volume of {amount}. {ask}",
       "{Who} sets out {a thing} with a volume of {amount}. {ask}"},
      {"{A thing} has a volume of {amount}. {ask}", "{A thing} takes up {amount} of space. {ask}",
       "{Who} needs {a thing} with a volume of {amount}. {ask}"}};
  const std::string& asked = blueprint.family().from_volume;
  auto back = asked_back(blueprint, seed, asked, "volume", asked);
  if (!back) {
    return std::nullopt;
  }
  back->problem.prompt = told(stories, blueprint, {{"amount", back->amount}, {"ask", question_for(blueprint, asked)}});
  return back->problem;
}

// "It takes 294 cm² of paper to cover it", by the way in which that comes onto it.
const WayStories& surface_told() {
  static const WayStories stories{{"It takes {amount} of {stuff} to cover every face of {a thing}. {ask}",
                                   "{Who} covers all the faces of {a thing} with {amount} of {stuff}. {ask}",
                                   "{A thing} has a surface area of {amount}. {ask}"},
                                  {"{Who} covers every face of {a thing} with {stuff}, {amount} in all. {ask}",
                                   "A coat of {stuff} on every face of {a thing} covers {amount}. {ask}",
                                   "{A thing} has a surface area of {amount}. {ask}"},
                                  {"{Who} makes all the faces of {a thing} from {amount} of {stuff}. {ask}",
                                   "It takes {amount} of {stuff} to make every face of {a thing}. {ask}",
                                   "{A thing} has a surface area of {amount}. {ask}"}};
  return stories;
}
std::optional<Problem> made_from_surface_as(const Blueprint& blueprint, Seed& seed, const std::string& find,
                                            const std::string& ask) {
  auto back = asked_back(blueprint, seed, blueprint.family().from_surface, "surface_area", find);
  if (!back) {
    return std::nullopt;
  }
  back->problem.prompt =
      told(surface_told(), blueprint.thing().covers, blueprint, {{"amount", back->amount}, {"ask", ask}});
  return back->problem;
}
std::optional<Problem> made_from_surface(const Blueprint& blueprint, Seed& seed) {
  const std::string& asked = blueprint.family().from_surface;
  return made_from_surface_as(blueprint, seed, asked, question_for(blueprint, asked));
}
std::optional<Problem> made_chain(const Blueprint& blueprint, Seed& seed) {
  return made_from_surface_as(blueprint, seed, "volume", "What is its volume?");
}

// Height, slant height and the way from the foot of the one to the foot of the other.
std::optional<Problem> made_by_right_triangle(const Blueprint& blueprint, Seed& seed) {
  static const Stories slant{"How long is the slant height of {a thing} of this size?",
                             "{Who} cuts one triangular face of {a thing} to size. What is its slant height?",
                             "{Who} tapes a ribbon straight up the middle of one face of {a thing}. How long is it?"};
  static const Stories height{
      "How tall is {a thing} of this size?", "{Who} knows the slant height of {a thing}. How tall is it?",
      "A pole runs straight up from the center of the base of {a thing} to the top. How long is "
      "it?"};
  const bool asks_slant = blueprint.pick % 2 == 0;
  return made_problem(blueprint.draw(seed, asks_slant ? Labels::ForVolume : Labels::ForArea),
                      told(asks_slant ? slant : height, blueprint), Measure(asks_slant ? "slant_height" : "height"));
}

}  // namespace

std::vector<MadeUp> made_missing_measures() {
  using practice::Heading;
  return {
      {13, "edge-from-volume", "missing length (volume)", Heading::MissingLength, 1, "undo the volume", has_from_volume,
       made_from_volume},
      {14, "edge-from-surface", "missing length (surface area)", Heading::MissingLength, 2, "undo the surface",
       has_from_surface, made_from_surface},
      {15, "right-triangle", "height or slant height", Heading::MissingLength, 3, "right triangle", has_slant,
       made_by_right_triangle},
      {16, "chain", "volume from the surface area", Heading::Volume, 3, "chain", has_chain, made_chain},
  };
}

}  // namespace fw::tasks
