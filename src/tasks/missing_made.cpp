#include "exact/print_number.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/write_quantity.hpp"

// A measure is missing: its value is drawn first, and what is known of the whole is worked out from it.
namespace fw::tasks {
namespace {

bool has_from_volume(const Family& family) { return !family.from_volume.empty(); }
bool has_from_surface(const Family& family) { return !family.from_surface.empty(); }
bool has_slant(const Family& family) { return family.from_surface == "slant_height"; }
// Both ways lead on: the length follows from the surface, and the volume from the length.
bool has_chain(const Family& family) { return has_from_surface(family); }

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

std::optional<Problem> asked_back(const Blueprint& blueprint, Seed& seed, const std::string& asked,
                                  const std::string& known, const std::string& find,
                                  const std::vector<std::string>& stories) {
  const Labels labels = known == "volume" ? Labels::ForVolume : Labels::ForArea;
  const auto parts = hidden(blueprint.family->draw(seed, blueprint.level, labels, blueprint.unit), asked, known);
  if (!parts) {
    return std::nullopt;
  }
  auto problem = made_problem(parts->description, "", Measure(find), parts->known);
  if (problem) {
    const units::WrittenQuantity& whole = parts->known.at(known);
    std::string prompt = told(stories, blueprint);
    const std::string amount = whole.number.text + " " + whole.unit.text();
    const std::size_t at = prompt.find("{amount}");
    prompt.replace(at, std::string("{amount}").size(), amount);
    problem->prompt = prompt;
  }
  return problem;
}

std::optional<Problem> made_from_volume(const Blueprint& blueprint, Seed& seed) {
  const std::string& asked = blueprint.family->from_volume;
  const std::string title = asked == "edge" ? "How long is one edge?" : "How long is its height?";
  return asked_back(blueprint, seed, asked, "volume", asked,
                    {"{A thing} holds {amount}. " + title, "It takes {amount} of sand to fill {a thing}. " + title});
}
std::optional<Problem> made_from_surface(const Blueprint& blueprint, Seed& seed) {
  const std::string& asked = blueprint.family->from_surface;
  const std::string title = asked == "edge"           ? "How long is one edge?"
                            : asked == "slant_height" ? "How long is its slant height?"
                                                      : "How long is its height?";
  return asked_back(blueprint, seed, asked, "surface_area", asked,
                    {"It takes {amount} of paper to cover {a thing} on every face. " + title,
                     "{A thing} has a surface area of {amount}. " + title});
}
std::optional<Problem> made_chain(const Blueprint& blueprint, Seed& seed) {
  return asked_back(blueprint, seed, blueprint.family->from_surface, "surface_area", "volume",
                    {"{A thing} has a surface area of {amount}. What is its volume?",
                     "It takes {amount} of paper to cover {a thing} on every face. How much does it hold?"});
}

// Height, slant height and the way from the foot of the one to the foot of the other.
std::optional<Problem> made_by_right_triangle(const Blueprint& blueprint, Seed& seed) {
  const bool asks_slant = blueprint.story % 2 == 0;
  return made_problem(
      blueprint.family->draw(seed, blueprint.level, asks_slant ? Labels::ForVolume : Labels::ForArea, blueprint.unit),
      told({"Cloth is cut for one side of {a thing}. How long is the slant height?",
            "{A thing} stands on the table. How high is it?"},
           blueprint),
      Measure(asks_slant ? "slant_height" : "height"));
}

}  // namespace

std::vector<MadeUp> made_missing_measures() {
  using practice::Heading;
  return {
      {13, "edge-from-volume", "a length from the volume", Heading::MissingLength, 1, "undo the volume",
       has_from_volume, made_from_volume},
      {14, "edge-from-surface", "a length from the surface area", Heading::MissingLength, 2, "undo the surface",
       has_from_surface, made_from_surface},
      {15, "right-triangle", "height from slant height, or back", Heading::MissingLength, 3, "right triangle",
       has_slant, made_by_right_triangle},
      {16, "chain", "volume from the surface area", Heading::Volume, 3, "chain", has_chain, made_chain},
  };
}

}  // namespace fw::tasks
