#include "tasks/things/thing.hpp"

// Things on a circle. Source of their sizes: common practice, no source.
namespace fw::tasks {
namespace {

Form can(const char* unit, Range radius, Range height) { return {Shape::Can, unit, {radius, height, {}}}; }
Form log(const char* unit, Range radius, Range length) { return {Shape::Can, unit, {radius, length, {}}, true}; }
Form hat(const char* unit, Range radius, Range height) { return {Shape::Hat, unit, {radius, height, {}}}; }

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Thing> cans() {
  return {
      {.name = "cocoa tin",
       .who = "the student council",
       .forms = {can("cm", {4, 7}, {9, 18})},
       .covers = {"gold foil", "wrapping paper"},
       .sides = {"colored paper"},
       .filling = "cocoa"},
      {.name = "pillar candle",
       .who = "the craft club",
       .forms = {can("cm", {4, 7}, {7, 20})},
       .covers = {"gold foil"},
       .sides = {"tissue paper"},
       .solid_of = "wax"},
      {.name = "drum",
       .who = "the school band",
       .forms = {can("cm", {15, 30}, {14, 40}), can("in", {5, 11}, {6, 16})},
       .covers = {"craft paint"},
       .sides = {"craft paint", "felt"}},
      {.name = "mug",
       .who = "the drama club",
       .forms = {can("cm", {4, 5}, {8, 12})},
       .sides = {"craft paint"},
       .filling = "hot chocolate"},
      {.name = "round hay bale",
       .who = "the 4-H club",
       .forms = {log("in", {24, 36}, {46, 62}), log("cm", {60, 90, 5}, {120, 160, 5})},
       .solid_of = "hay"},
      {.name = "water barrel",
       .who = "a parent group",
       .forms = {can("in", {9, 14}, {28, 40}), can("cm", {25, 38}, {70, 100})},
       .covers = {"paint"},
       .sides = {"paint"},
       .filling = "water"},
      {.name = "lantern tube",
       .who = "the art club",
       .forms = {can("in", {5, 9}, {9, 24}), can("cm", {8, 20}, {20, 60})},
       .covers = {"tissue paper"},
       .sides = {"tissue paper", "colored paper"}},
      {.name = "popcorn tin",
       .who = "the bake sale team",
       .forms = {can("in", {5, 7}, {8, 14}), can("cm", {10, 16}, {16, 36})},
       .covers = {"craft paint"},
       .sides = {"colored paper", "craft paint"},
       .filling = "popcorn"},
      {.name = "oatmeal carton",
       .who = "the cooking club",
       .forms = {can("cm", {5, 8}, {16, 25})},
       .covers = {"wrapping paper"},
       .sides = {"colored paper"},
       .filling = "cereal"},
      {.name = "mailing tube",
       .who = "the history class",
       .forms = {log("cm", {4, 8}, {40, 90})},
       .covers = {"wrapping paper"},
       .sides = {"colored paper", "contact paper"}},
      {.name = "log",
       .who = "the scout troop",
       .forms = {log("in", {5, 10}, {12, 30}), log("cm", {9, 20}, {25, 80})},
       .solid_of = "wood"},
      {.name = "soup can",
       .who = "the cooking club",
       .forms = {can("cm", {4, 5}, {8, 13})},
       .sides = {"colored paper"},
       .filling = "soup"},
      {.name = "wheel of cheese",
       .who = "the bake sale team",
       .forms = {can("cm", {10, 20}, {5, 12}), can("in", {5, 8}, {3, 6})},
       .covers = {"gold foil"},
       .sides = {"gold foil"},
       .solid_of = "cheese"},
      {.name = "round cake",
       .who = "the bake sale team",
       .forms = {can("cm", {9, 15}, {7, 14}), can("in", {4, 7}, {3, 6})},
       .sides = {"frosting"},
       .solid_of = "cake"},
      {.name = "flower tub",
       .who = "the garden club",
       .forms = {can("in", {7, 12}, {9, 20}), can("cm", {16, 30}, {20, 45})},
       .sides = {"paint"},
       .filling = "potting soil"},
      {.name = "candy jar",
       .who = "the student council",
       .forms = {can("cm", {5, 8}, {10, 24})},
       .sides = {"tissue paper"},
       .filling = "candy"},
  };
}

std::vector<Thing> hats() {
  return {
      {.name = "party hat",
       .who = "the student council",
       .forms = {hat("cm", {5, 9}, {12, 40})},
       .sides = {"poster board", "colored paper"}},
      {.name = "paper cone",
       .who = "the bake sale team",
       .forms = {hat("cm", {5, 9}, {8, 24})},
       .sides = {"colored paper"},
       .filling = "trail mix"},
      {.name = "tipi tent",
       .who = "the scout troop",
       .forms = {hat("ft", {5, 9}, {6, 12}), hat("cm", {90, 160}, {120, 260})},
       .covers = {"canvas"},
       .sides = {"canvas"}},
      {.name = "funnel", .who = "the science class", .forms = {hat("cm", {5, 12}, {9, 24})}},
      {.name = "pointed candle",
       .who = "the craft club",
       .forms = {hat("cm", {5, 9}, {8, 40})},
       .covers = {"gold foil"},
       .solid_of = "wax"},
      {.name = "traffic cone",
       .who = "a parent group",
       .forms = {hat("in", {5, 9}, {12, 40}), hat("cm", {12, 20}, {35, 75})},
       .sides = {"contact paper"}},
      {.name = "cone-shaped gift box",
       .who = "the student council",
       .forms = {hat("in", {5, 9}, {8, 24}), hat("cm", {8, 16}, {15, 40})},
       .covers = {"wrapping paper", "gold foil"},
       .sides = {"colored paper"},
       .filling = "candy"},
      {.name = "model volcano",
       .who = "the science class",
       .forms = {hat("in", {7, 15}, {8, 24}), hat("cm", {12, 30}, {12, 45})},
       .sides = {"craft paint"},
       .solid_of = "plaster"},
      {.name = "tabletop tree",
       .who = "the art club",
       .forms = {hat("cm", {9, 21}, {20, 60})},
       .covers = {"cardboard", "poster board"},
       .sides = {"felt", "colored paper"}},
      {.name = "turret roof",
       .who = "the shop class",
       .forms = {hat("in", {24, 48}, {30, 60}), hat("cm", {60, 120}, {70, 160})},
       .sides = {"metal roofing", "paint"}},
      {.name = "wizard hat",
       .who = "the drama club",
       .forms = {hat("cm", {8, 12}, {15, 45})},
       .sides = {"felt", "fabric"}},
  };
}

}  // namespace

std::vector<Thing> round_things() {
  std::vector<Thing> all = cans();
  for (Thing& thing : hats()) {
    all.push_back(std::move(thing));
  }
  return all;
}

}  // namespace fw::tasks
