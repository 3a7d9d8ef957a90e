#include <cmath>

#include "practice/mistakes/circle_parts.hpp"
#include "practice/signatures.hpp"

// A missing measure of a solid that stands on a circle.
// Source: common practice, no source.
namespace fw::practice {
namespace {

bool knows(const Figure& figure, const char* measure) { return figure.problem->known.count(measure) != 0; }
bool finds_the(const Figure& figure, const char* measure) { return figure.question->find == measure; }

// The height from the volume: each way divides by another number than the area of the circle.
void height_times(const Figure& figure, double (*factor)(const Circle& circle), Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && finds_the(figure, "height") && knows(figure, "volume")) {
    finds.push_back({figure.truth * factor(*circle), {}});
  }
}
void pi_not_undone(const Figure& figure, Finds& finds) {
  height_times(
      figure, [](const Circle&) { return circle_pi; }, finds);
  const auto circle = circle_of(figure);
  if (circle && finds_the(figure, "radius") && knows(figure, "volume")) {
    finds.push_back({figure.truth * std::sqrt(circle_pi), {}});
  } else if (circle && (knows(figure, "lateral_area") || knows(figure, "surface_area"))) {
    finds.push_back({knows(figure, "lateral_area") ? figure.truth * circle_pi : 0, {}});
  }
}
void diameter_squared(const Figure& figure, Finds& finds) {
  height_times(
      figure, [](const Circle&) { return 0.25; }, finds);
}
void radius_not_squared(const Figure& figure, Finds& finds) {
  height_times(
      figure, [](const Circle& circle) { return circle.radius; }, finds);
}
void around_for_area(const Figure& figure, Finds& finds) {
  height_times(
      figure, [](const Circle& circle) { return circle.radius / 2; }, finds);
}

bool is_radius_of_volume(const Figure& figure) {
  return circle_of(figure) && finds_the(figure, "radius") && knows(figure, "volume");
}
void square_of_it(const Figure& figure, Finds& finds) {
  finds.push_back({is_radius_of_volume(figure) ? figure.truth * figure.truth : 0, {}});
}
void radius_halved_for_root(const Figure& figure, Finds& finds) {
  finds.push_back({is_radius_of_volume(figure) ? figure.truth * figure.truth / 2 : 0, {}});
}
void third_forgotten(const Figure& figure, Finds& finds) {
  const bool has_third = is_radius_of_volume(figure) && figure.traits().has_apex;
  finds.push_back({has_third ? figure.truth / std::sqrt(3.0) : 0, {}});
}
void other_way_across(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && !figure.problem->known.empty()) {
    finds.push_back({finds_the(figure, "radius") ? 2 * figure.truth : 0, {}});
    finds.push_back({finds_the(figure, "diameter") ? circle->radius : 0, {}});
  }
}

// The height or the slant height from an area. `times`: by what the side is divided to get the length.
struct FromArea {
  double known = 0, disks = 0, disk = 0, times = 0, half_way = 0;
};
std::optional<FromArea> from_area(const Figure& figure) {
  const auto circle = circle_of(figure);
  const char* length = figure.traits().has_apex ? "slant_height" : "height";
  const char* area = knows(figure, "surface_area") ? "surface_area" : "lateral_area";
  if (!circle || !finds_the(figure, length) || !knows(figure, area)) {
    return std::nullopt;
  }
  FromArea parts;
  parts.disk = circle->disk;
  parts.disks = knows(figure, "surface_area") ? (figure.traits().has_second_base ? 2 : 1) : 0;
  parts.known = figure.value(area).value_or(0);
  parts.times = circle->comes_to_a_point ? circle->around / 2 : circle->around;
  parts.half_way = circle->comes_to_a_point ? circle->around : circle->around / 2;
  return parts;
}
void circles_not_taken_off(const Figure& figure, Finds& finds) {
  const auto parts = from_area(figure);
  if (parts && parts->disks > 0) {
    finds.push_back({parts->known / parts->times, {}});
  }
}
void one_circle_taken_off(const Figure& figure, Finds& finds) {
  const auto parts = from_area(figure);
  if (parts && parts->disks > 1) {
    finds.push_back({(parts->known - parts->disk) / parts->times, {}});
  }
}
void stopped_at_the_side(const Figure& figure, Finds& finds) {
  const auto parts = from_area(figure);
  if (parts && parts->disks > 0) {
    finds.push_back({parts->known - parts->disks * parts->disk, {}});
  }
}
void other_part_of_the_way(const Figure& figure, Finds& finds) {
  if (const auto parts = from_area(figure)) {
    finds.push_back({(parts->known - parts->disks * parts->disk) / parts->half_way, {}});
  }
}

// The leg of the right triangle that leans on the diameter.
void diameter_as_leg(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (!circle || !circle->comes_to_a_point || !figure.problem->known.empty()) {
    return;
  }
  const double whole = 4 * circle->radius * circle->radius;
  const double of_height = std::sqrt(circle->height * circle->height + whole);
  const double of_slant = std::sqrt(std::max(0.0, circle->slant * circle->slant - whole));
  finds.push_back({finds_the(figure, "slant_height") ? of_height : 0, {}});
  finds.push_back({finds_the(figure, "height") ? of_slant : 0, {}});
}

}  // namespace

std::vector<Signature> circle_unknown_signatures() {
  const std::vector<Asked> length{Asked::Length};
  return {
      {"O81", length, pi_not_undone, Saying("{n} still has a factor of π in it.", "What undoes multiplying by π?")},
      {"O82", length, diameter_squared,
       Saying("{n} is what you get with the diameter in πr².", "How long is the radius?")},
      {"O83", length, radius_not_squared,
       Saying("{n} is what you get if you don't square the radius.", "What is the area of the circle?")},
      {"O84", length, around_for_area,
       Saying("{n} is what you get if you divide by the circumference.",
              "What do you multiply by the height to get the volume?")},
      {"O85", length, square_of_it, Saying("{n} is the square of it.", "Which number, squared, gives that?")},
      {"O86", length, radius_halved_for_root, Saying("{n} is what you get if you take half.", "What undoes squaring?")},
      {"O88", length, third_forgotten, Saying("{n} is what you get if you leave out the ⅓.", "What undoes the ⅓?")},
      {"O87", length, other_way_across,
       Saying("{n} measures the circle another way.", "Does the question ask for the radius or the diameter?")},
      {"O89", length, circles_not_taken_off,
       Saying("{n} is what you get if you divide the whole surface area.", "What do you have to subtract first?")},
      {"O90", length, one_circle_taken_off,
       Saying("{n} is what you get if you subtract only one circle.", "How many bases are there?")},
      {"O91", length, stopped_at_the_side,
       Saying("{n} is the area of the curved side, and that's a good first step.", "What do you divide it by?")},
      {"O92", length, other_part_of_the_way,
       Saying("{n} mixes up 2πr and πr.", "Which one does the formula for the curved side use?")},
      {"O93", length, diameter_as_leg,
       Saying("{n} is what you get with the diameter in the right triangle.",
              "How far is it from the center to the edge?")},
  };
}

}  // namespace fw::practice
