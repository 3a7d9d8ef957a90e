#include <algorithm>
#include <cmath>

#include "practice/mistakes/circle_parts.hpp"
#include "practice/signatures.hpp"

// Areas and volumes of solids that stand on a circle.
// Source: options of a released GED item, as pages that solve it report them, for π left out (O5), a third left out
// (O14) and the diameter for the radius (O1); the rest is common practice, no source.
namespace fw::practice {

std::optional<Circle> circle_of(const Figure& figure) {
  const auto radius = figure.value("radius");
  const auto height = figure.value("height");
  // A frustum has two circles, and mistakes of its own.
  const bool has_one_circle = figure.traits().has_apex || figure.traits().bases_match;
  if (!figure.traits().has_round_base || !has_one_circle || !radius || !height) {
    return std::nullopt;
  }
  Circle circle;
  circle.radius = *radius;
  circle.height = *height;
  circle.slant = figure.value("slant_height").value_or(0);
  circle.around = 2 * circle_pi * *radius;
  circle.disk = figure.base();
  circle.side = figure.area_of(solids::FaceRole::Lateral);
  circle.comes_to_a_point = figure.traits().has_apex;
  for (const FigureFace& face : figure.faces) {
    (face.role == solids::FaceRole::Base ? circle.disks : circle.sides) += face.counts ? 1 : 0;
  }
  return circle;
}

bool is_labelled(const Figure& figure, std::string_view name) {
  return std::find(figure.label_names.begin(), figure.label_names.end(), name) != figure.label_names.end();
}

namespace {

bool asks(const Figure& figure, Asked asked) { return figure.question->asked == asked; }
bool is_closed(const Figure& figure) { return asks(figure, Asked::Surface) && figure.problem->open.empty(); }
// Only then is π in every part of the answer.
bool is_times_pi(const Figure& figure) { return is_labelled(figure, "radius") || is_labelled(figure, "diameter"); }

// The asked area with other areas for a disk and the side; nothing where those that count keep theirs.
void with_areas(const Circle& circle, double disk, double side, Finds& finds) {
  const bool changes = (circle.disks != 0 && disk != circle.disk) || (circle.sides != 0 && side != circle.side);
  finds.push_back({changes ? circle.disks * disk + circle.sides * side : 0, {}});
}
void with_other_side(const Figure& figure, double (*side)(const Circle& circle), Finds& finds) {
  if (const auto circle = circle_of(figure)) {
    with_areas(*circle, circle->disk, side(*circle), finds);
  }
}
void with_pointed_side(const Figure& figure, double (*side)(const Circle& circle), Finds& finds) {
  if (figure.traits().has_apex) {
    with_other_side(figure, side, finds);
  }
}
void with_straight_side(const Figure& figure, double (*side)(const Circle& circle), Finds& finds) {
  if (!figure.traits().has_apex) {
    with_other_side(figure, side, finds);
  }
}
// Where the slant height has to be worked out first.
void with_slant(const Figure& figure, double (*slant)(const Circle& circle), Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->comes_to_a_point && !is_labelled(figure, "slant_height")) {
    with_areas(*circle, circle->disk, circle_pi * circle->radius * slant(*circle), finds);
  }
}
void with_disk(const Figure& figure, double (*disk)(const Circle& circle), Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->disks > 0 && !asks(figure, Asked::Lateral)) {
    with_areas(*circle, disk(*circle), asks(figure, Asked::BaseArea) ? 0 : circle->side, finds);
  }
}
void times_volume(const Figure& figure, double (*factor)(const Circle& circle), Finds& finds) {
  if (const auto circle = circle_of(figure)) {
    finds.push_back({figure.volume * factor(*circle), {}});
  }
}
void times_pointed_volume(const Figure& figure, double (*factor)(const Circle& circle), Finds& finds) {
  if (figure.traits().has_apex) {
    times_volume(figure, factor, finds);
  }
}

// ---- the circle ----

void diameter_for_radius(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (!circle) {
    return;
  }
  if (asks(figure, Asked::Volume)) {
    finds.push_back({4 * figure.volume, {}});
    return;
  }
  with_areas(*circle, 4 * circle->disk, 2 * circle->side, finds);
  if (circle->comes_to_a_point && !is_labelled(figure, "slant_height")) {
    const double wide = 2 * circle->radius;
    with_areas(*circle, 4 * circle->disk, circle_pi * wide * std::hypot(wide, circle->height), finds);
  }
}
void diameter_in_the_area(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->disks > 0 && circle->sides > 0) {
    with_areas(*circle, 4 * circle->disk, circle->side, finds);
  }
}
void radius_as_diameter(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && asks(figure, Asked::Volume)) {
    finds.push_back({figure.volume / 4, {}});
  } else if (circle && circle->disks > 0) {
    with_areas(*circle, circle->disk / 4, circle->side / 2, finds);
  }
}
void doubled_for_squared(const Figure& figure, Finds& finds) {
  if (asks(figure, Asked::BaseArea) || !figure.problem->open.empty()) {
    with_disk(
        figure, [](const Circle& circle) { return circle.around; }, finds);
  }
}
void not_squared(const Figure& figure, Finds& finds) {
  if (asks(figure, Asked::Volume)) {
    times_volume(
        figure, [](const Circle& circle) { return 1 / circle.radius; }, finds);
    return;
  }
  with_disk(
      figure, [](const Circle& circle) { return circle_pi * circle.radius; }, finds);
}
void other_length_squared(const Figure& figure, Finds& finds) {
  times_volume(
      figure, [](const Circle& circle) { return circle.height / circle.radius; }, finds);
}
void area_and_way_round_exchanged(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && !circle->comes_to_a_point && circle->disks > 0 && circle->sides > 0) {
    with_areas(*circle, circle->around, circle->disk * circle->height, finds);
  }
}
void without_pi(const Figure& figure, Finds& finds) {
  finds.push_back({circle_of(figure) && is_times_pi(figure) ? figure.truth / circle_pi : 0, {}});
}
void three_for_pi(const Figure& figure, Finds& finds) {
  finds.push_back({circle_of(figure) && is_times_pi(figure) ? figure.truth / circle_pi * 3 : 0, {}});
}

// ---- the side ----

void half_the_way_round(const Figure& figure, Finds& finds) {
  with_straight_side(
      figure, [](const Circle& circle) { return circle.side / 2; }, finds);
}
void as_wide_as_it_looks(const Figure& figure, Finds& finds) {
  with_straight_side(
      figure, [](const Circle& circle) { return 2 * circle.radius * circle.height; }, finds);
}
void as_wide_as_the_radius(const Figure& figure, Finds& finds) {
  with_straight_side(
      figure, [](const Circle& circle) { return circle.radius * circle.height; }, finds);
}
void around_alone(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->disks > 0) {
    with_straight_side(
        figure, [](const Circle& one) { return one.around; }, finds);
  }
}
void side_doubled(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->disks > 0) {
    with_straight_side(
        figure, [](const Circle& one) { return 2 * one.side; }, finds);
  }
}
void height_down_the_side(const Figure& figure, Finds& finds) {
  with_pointed_side(
      figure, [](const Circle& circle) { return circle_pi * circle.radius * circle.height; }, finds);
}
void around_times_slant(const Figure& figure, Finds& finds) {
  with_pointed_side(
      figure, [](const Circle& circle) { return 2 * circle.side; }, finds);
}
void side_as_triangle(const Figure& figure, Finds& finds) {
  with_pointed_side(
      figure, [](const Circle& circle) { return circle.radius * circle.slant; }, finds);
}
void side_as_whole_disk(const Figure& figure, Finds& finds) {
  with_pointed_side(
      figure, [](const Circle& circle) { return circle_pi * circle.slant * circle.slant; }, finds);
}
void side_halved(const Figure& figure, Finds& finds) {
  with_pointed_side(
      figure, [](const Circle& circle) { return circle.side / 2; }, finds);
}
void squares_subtracted(const Figure& figure, Finds& finds) {
  with_slant(
      figure,
      [](const Circle& circle) {
        return std::sqrt(std::max(0.0, circle.height * circle.height - circle.radius * circle.radius));
      },
      finds);
}
void lengths_added(const Figure& figure, Finds& finds) {
  with_slant(
      figure, [](const Circle& circle) { return circle.radius + circle.height; }, finds);
}
void slant_not_rooted(const Figure& figure, Finds& finds) {
  with_slant(
      figure, [](const Circle& circle) { return circle.slant * circle.slant; }, finds);
}
void side_alone(const Figure& figure, Finds& finds) {
  if (figure.traits().has_apex && is_closed(figure) && circle_of(figure)) {
    finds.push_back({circle_of(figure)->side, {figure.faces[0].id}});
  }
}
void two_disks(const Figure& figure, Finds& finds) {
  if (figure.traits().has_apex && is_closed(figure) && circle_of(figure)) {
    finds.push_back({figure.truth + figure.base(), {figure.faces[0].id}});
  }
}
void formula_of_the_straight_one(const Figure& figure, Finds& finds) {
  const auto circle = circle_of(figure);
  if (circle && circle->comes_to_a_point) {
    finds.push_back({circle->around * circle->height + 2 * circle->disks * circle->disk, {}});
  }
}

// ---- the volume ----

void around_radius_height(const Figure& figure, Finds& finds) {
  if (!figure.traits().has_apex) {
    times_volume(
        figure, [](const Circle&) { return 2.0; }, finds);
  }
}
void third_left_out(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle&) { return 3.0; }, finds);
}
void half_of_it_all(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle&) { return 1.5; }, finds);
}
void two_thirds(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle&) { return 2.0; }, finds);
}
void third_twice(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle&) { return 1.0 / 3; }, finds);
}
void slant_straight_up(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle& circle) { return circle.slant / circle.height; }, finds);
}
void slant_and_no_third(const Figure& figure, Finds& finds) {
  times_pointed_volume(
      figure, [](const Circle& circle) { return 3 * circle.slant / circle.height; }, finds);
}
void squares_added(const Figure& figure, Finds& finds) {
  if (is_labelled(figure, "slant_height")) {
    times_pointed_volume(
        figure, [](const Circle& circle) { return std::hypot(circle.slant, circle.radius) / circle.height; }, finds);
  }
}

}  // namespace

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Signature> circle_signatures() {
  const std::vector<Asked> surface{Asked::Surface};
  const std::vector<Asked> volume{Asked::Volume};
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  const std::vector<Asked> disks{Asked::Surface, Asked::BaseArea, Asked::Volume};
  const std::vector<Asked> all{Asked::Surface, Asked::Lateral, Asked::BaseArea, Asked::Volume};
  return {
      {"O1",
       {Asked::Volume, Asked::BaseArea},
       diameter_for_radius,
       Saying("{n} is what you get with the diameter.", "How far is it from the center of the circle to its edge?")},
      {"O51", areas, diameter_for_radius,
       Saying("{n} is what you get with the diameter for the radius.",
              "How far is it from the center of the circle to its edge?")},
      {"O5", all, without_pi, Saying("{n} is missing something.", "{n} times what? Look at the formula for a circle.")},
      {"O9", areas, as_wide_as_it_looks,
       Saying("{n} is what you get if the side is as wide as the diameter.",
              "Unroll it. How far is it around the circle?")},
      {"O3",
       {Asked::Surface, Asked::BaseArea},
       doubled_for_squared,
       Saying("{n} is what you get with 2πr for the circle.", "Which formula gives area, 2πr or πr²?")},
      {"O4", surface, area_and_way_round_exchanged,
       Saying("{n} switches the area and the circumference of the circle.", "Which of them is the area of a base?")},
      {"O52", surface, diameter_in_the_area,
       Saying("{n} is what you get with the diameter in the area of the circle.", "What do you square in πr²?")},
      {"O2", areas, half_the_way_round,
       Saying("{n} is what you get with only half of the circumference.", "How far is it all the way around, 2πr?")},
      {"O10", areas, as_wide_as_the_radius,
       Saying("{n} is what you get if the side is as wide as the radius.",
              "Unroll it. How far is it around the circle?")},
      {"O11", surface, around_alone,
       Saying("{n} adds the circumference without the height.", "What two lengths make the area of the side?")},
      {"O55", surface, side_doubled,
       Saying("{n} counts the curved side twice.", "There are two bases. How many curved sides are there?")},
      {"O53", disks, not_squared,
       Saying("{n} is what you get if you don't square the radius.", "What is the area of the circle?")},
      {"O54", volume, other_length_squared,
       Saying("{n} is what you get if you square the height.", "Which length is squared in the area of the circle?")},
      {"O68", disks, radius_as_diameter,
       Saying("{n} is what you get with half of the radius.", "Is the label in the picture a radius or a diameter?")},
      {"O43", all, three_for_pi,
       Saying("{n} is what you get with 3 for π.", "Use 3.14 or the π key. What do you get?")},
      {"O17", areas, height_down_the_side,
       Saying("{n} is what you get with the height for the slant height.", "Which length runs down the side?")},
      {"O18", surface, side_alone,
       Saying("{n} is the area of the curved side alone.", "Is the circle at the bottom part of the surface?")},
      {"O19", areas, around_times_slant,
       Saying("{n} uses 2πrℓ for the curved side.", "Unrolled, is the side a whole rectangle?")},
      {"O20", surface, two_disks, Saying("{n} is what you get with two circles.", "How many flat faces does it have?")},
      {"O21", areas, side_as_triangle,
       Saying("{n} is what you get if the side is a flat triangle.", "Unrolled, what shape is it?")},
      {"O63", areas, side_as_whole_disk,
       Saying("{n} is what you get if the side unrolls to a whole circle.",
              "What part of that circle is it? Compare 2πr with 2πℓ.")},
      {"O64", areas, side_halved,
       Saying("{n} takes half of the curved side.", "In πrℓ the half is already done. What is πrℓ?")},
      {"O22", areas, squares_subtracted,
       Saying("{n} is what you get if you subtract the squares for ℓ.",
              "Which side of the right triangle is the slant height?")},
      {"O65", areas, lengths_added,
       Saying("{n} is what you get if you add r and h for ℓ.", "What does the Pythagorean theorem do with them?")},
      {"O66", areas, slant_not_rooted,
       Saying("{n} is what you get if you leave out the square root for ℓ.", "Which number, squared, gives r² + h²?")},
      {"O67", areas, formula_of_the_straight_one,
       Saying("{n} is what you get with the formula for a cylinder.", "How many bases does this solid have?")},
      {"O13", volume, around_radius_height,
       Saying("{n} is what you get if you multiply circumference, radius and height.",
              "What is the area of the circle?")},
      {"O14", volume, third_left_out,
       Saying("{n} is the volume of the cylinder around it.", "How many of these cones fill the cylinder?")},
      {"O15", volume, half_of_it_all,
       Saying("{n} is what you get with ½. That goes with a flat triangle.",
              "What fraction of the cylinder is a cone?")},
      {"O60", volume, two_thirds,
       Saying("{n} is two thirds of the cylinder around it.", "What fraction of the cylinder is a cone?")},
      {"O61", volume, third_twice,
       Saying("{n} is what you get if you take a third twice.", "How many times do you divide by 3?")},
      {"O16", volume, slant_straight_up,
       Saying("{n} is what you get with the slant height.", "How tall is it, straight up?")},
      {"O62", volume, slant_and_no_third,
       Saying("{n} is what you get with the slant height, and without the ⅓.", "How tall is it, straight up?")},
      {"O69", volume, squares_added,
       Saying("{n} is what you get if you add the squares to find the height.",
              "Which side of the right triangle is the slant height?")},
  };
}

}  // namespace fw::practice
