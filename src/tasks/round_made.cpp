#include <algorithm>

#include "exact/print_number.hpp"
#include "tasks/measure.hpp"
#include "tasks/row.hpp"
#include "units/quantity.hpp"

// Measures of things that stand on a circle, or lie on their side.
namespace fw::tasks {

std::vector<MadeUp> made_on_circles();

namespace {

bool comes_to_a_point(const Blueprint& blueprint) { return blueprint.family().traits().has_apex; }

// What there is to cover, and what is left out where the side alone is.
tasks::Places places_on_a_circle(const Blueprint& blueprint) {
  const bool lies = blueprint.form().lies;
  return {{"all of it", comes_to_a_point(blueprint) ? "the curved side and the base"
                        : lies                      ? "the curved side and both ends"
                                                    : "the side, top and bottom"},
          {"the rest", comes_to_a_point(blueprint) ? "the base"
                       : lies                      ? "the ends"
                                                   : "the top or bottom"}};
}

// Areas and volumes have π in them: they are rounded to tenths.
std::optional<Problem> to_tenths(std::optional<Problem> problem) {
  if (problem) {
    problem->round_to = 1;
  }
  return problem;
}

// At the highest level the slant height has to be worked out.
Labels area_labels(const Blueprint& blueprint) { return blueprint.level == 3 ? Labels::ForVolume : Labels::ForArea; }

bool is_covered_all_over(const Subject& subject) { return !subject.thing->covers.empty(); }
std::optional<Problem> made_round_surface(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{Who} covers {all of it} of {a thing} with {stuff}. How much {stuff} do they need?",
       "{A thing} gets {stuff} on {all of it}. What area is that?",
       "How much {stuff} does it take to cover {all of it} of {a thing}?"},
      {"{Who} puts {stuff} on {all of it} of {a thing}. What area do they cover?",
       "{A thing} needs one coat of {stuff} on {all of it}. What area is that?",
       "For the fair, {who} coats {all of it} of {a thing} with {stuff}. Find the area of the coat."},
      {"{Who} makes {all of it} of {a thing} from {stuff}. How much {stuff} do they need?",
       "{Who} cuts {all of it} of {a thing} from {stuff}. What is the total area of the pieces?",
       "How much {stuff} does it take to make {all of it} of {a thing}?"}};
  return to_tenths(made_problem(blueprint.draw(seed, area_labels(blueprint)),
                                told(stories, blueprint.thing().covers, blueprint, places_on_a_circle(blueprint)),
                                Measure("surface_area")));
}

bool has_curved_side(const Subject& subject) { return !subject.thing->sides.empty(); }
std::optional<Problem> made_round_lateral(const Blueprint& blueprint, Seed& seed) {
  static const WayStories stories{
      {"{Who} covers the curved side of {a thing} with {stuff}, but not {the rest}. How much {stuff} do they need?",
       "{Stuff} goes once around {a thing}, with no overlap. What area does it cover?",
       "How much {stuff} does it take to cover the curved side of {a thing}?"},
      {"{Who} puts {stuff} on the curved side of {a thing}, but not on {the rest}. What area do they cover?",
       "Only the curved side of {a thing} gets {stuff}. What area is that?",
       "The curved side of {a thing} needs a coat of {stuff}. What area is that?"},
      {"{Who} makes the curved side of {a thing} from {stuff}. How much {stuff} do they need?",
       "{Who} cuts the curved side of {a thing} from {stuff}. What is the area of the piece?",
       "{Who} shapes a piece of {stuff} into the curved side of {a thing}. What is the area of that piece?"}};
  return to_tenths(made_problem(blueprint.draw(seed, area_labels(blueprint)),
                                told(stories, blueprint.thing().sides, blueprint, places_on_a_circle(blueprint)),
                                Measure("lateral_area")));
}

std::optional<Problem> made_round_volume(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories stories{
      {"{Who} fills {a thing} with {stuff}. How much {stuff} does it hold?",
       "{A thing} is full of {stuff}. How much {stuff} is inside?",
       "How much {stuff} does {who} need to fill {a thing}?"},
      {"How much {stuff} is in {a thing} of this size?", "{Who} brings {a thing} to the fair. What is its volume?",
       "{Who} sets out {a thing} at the fair. How much space does it take up?"},
      {"How much space is inside {a thing} of this size?", "{Who} has {a thing} of this size. What is its volume?",
       "{Who} measures {a thing}. How much space is inside it?"}};
  // At the highest level the height of what comes to a point has to be worked out.
  const Labels labels = blueprint.level == 3 ? Labels::ForArea : Labels::ForVolume;
  auto problem = made_problem(blueprint.draw(seed, labels), told(stories, blueprint), Measure("volume"));
  constexpr double most = 100'000;  // of more, nobody wants tenths
  const bool is_fit = problem && problem->solid.volume().amount().to_double() <= most;
  return is_fit ? to_tenths(std::move(problem)) : std::nullopt;
}

// ---- a measure is missing ----

/// What is asked back, and from what.
struct AskedLength {
  std::string asked, known;
};
// Level 1: the height from the volume. Level 2: the radius too. Level 3: from the surface area too.
AskedLength asked_back_of(const Blueprint& blueprint, const solids::Solid& solid) {
  const std::vector<solids::Measure>& measures = solid.statement().measures;
  const auto labelled = std::find_if(measures.begin(), measures.end(), [&](const solids::Measure& one) {
    return one.title == "diameter" && solid.is_given(one.symbol);
  });
  const std::string across = labelled == measures.end() ? "radius" : labelled->key;
  const bool is_all_covered = !blueprint.thing().covers.empty();
  const std::size_t ways = blueprint.level == 3 && !is_all_covered ? 2 : static_cast<std::size_t>(blueprint.level);
  switch (blueprint.trap % ways) {
    case 0:
      return {"height", "volume"};
    case 1:
      return {across, "volume"};
    default:
      return {comes_to_a_point(blueprint) ? "slant_height" : "height", "surface_area"};
  }
}

// "200π cm³", where the number before π is whole.
std::optional<units::WrittenQuantity> amount_in_pi(const solids::Solid& solid, const std::string& measure) {
  const bool is_volume = measure == "volume";
  const exact::Number amount = is_volume ? solid.volume().amount() : solid.surface_area().amount();
  const exact::Number times = amount / exact::Number::pi();
  constexpr int most = 30'000;
  if (!times.is_whole() || times > exact::Number::whole(most)) {
    return std::nullopt;
  }
  const auto read =
      units::parse_quantity(exact::fixed_text(times, 0) + "π " + solid.unit().to_the(is_volume ? 3 : 2).ascii());
  return read ? std::optional<units::WrittenQuantity>(*read) : std::nullopt;
}

std::string question_about(const Blueprint& blueprint, const std::string& asked) {
  if (asked == "slant_height") {
    return "What is its slant height?";
  }
  if (asked != "height") {
    return asked == "radius" ? "What is its radius?" : "What is its diameter?";
  }
  return blueprint.form().lies ? "How long is it?" : "What is its height?";
}

std::optional<Problem> made_round_length(const Blueprint& blueprint, Seed& seed) {
  static const SpaceStories of_volume{
      {"{A thing} holds {amount} of {stuff}. {ask}", "It takes {amount} of {stuff} to fill {a thing}. {ask}",
       "{Who} fills {a thing} with {amount} of {stuff}. {ask}"},
      {"There are {amount} of {stuff} in {a thing}. {ask}", "{A thing} has a volume of {amount}. {ask}",
       "{Who} brings {a thing} with a volume of {amount}. {ask}"},
      {"{A thing} has a volume of {amount}. {ask}", "There are {amount} of space inside {a thing}. {ask}",
       "{Who} needs {a thing} with a volume of {amount}. {ask}"}};
  static const Stories of_surface{"{A thing} has a surface area of {amount}. {ask}",
                                  "Together, {all of it} of {a thing} have an area of {amount}. {ask}",
                                  "{Who} needs {a thing} with a surface area of {amount}. {ask}"};
  const solids::Description drawn = blueprint.family().draw(seed, blueprint.level, Labels::ForVolume, blueprint.form());
  const auto solid = solids::Solid::make(drawn);
  if (!solid) {
    return std::nullopt;
  }
  const AskedLength back = asked_back_of(blueprint, *solid);
  const auto amount = amount_in_pi(*solid, back.known);
  if (!amount) {
    return std::nullopt;
  }
  solids::Description hidden = without(drawn, back.asked);
  if (back.asked == "slant_height") {
    hidden.fields.erase("height");
  }
  tasks::Places places = places_on_a_circle(blueprint);
  places["amount"] = said_quantity(*amount);
  places["ask"] = question_about(blueprint, back.asked);
  const std::string prompt =
      back.known == "volume" ? told(of_volume, blueprint, places) : told(of_surface, blueprint, places);
  return made_problem(hidden, prompt, Measure(back.asked), {{back.known, *amount}});
}

}  // namespace

std::vector<MadeUp> made_on_circles() {
  using practice::Heading;
  return {
      {36, "round-surface", "surface area of round solids", Heading::Area, 1, "circles and a curved side",
       is_covered_all_over, made_round_surface, true},
      {37, "round-lateral", "curved side of round solids", Heading::Area, 1, "unroll the side", has_curved_side,
       made_round_lateral, true},
      {38, "round-volume", "volume of round solids", Heading::Volume, 1, "circle times height", any, made_round_volume,
       true},
      {39, "round-length", "missing length of round solids", Heading::MissingLength, 1, "undo the formula", any,
       made_round_length, true},
  };
}

}  // namespace fw::tasks
