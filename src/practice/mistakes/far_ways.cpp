#include <cmath>

#include "lessons/asked_value.hpp"
#include "practice/signatures.hpp"

// Ways that are rarer than those of the other files: another measure of the base, counts of what is in sight, and a
// mistake in the amount that a word problem divides.
// Source: made up by somebody who had seen the problems alone and not this table; common practice, no source.
namespace fw::practice {
namespace {

using lessons::Purpose;
using lessons::Rounding;
using solids::FaceRole;

// The asked area or volume with another number for the area of each base that counts.
void with_base(const Figure& figure, double base, Finds& finds) {
  if (figure.question->asked == Asked::Volume) {
    finds.push_back({figure.volume * base / figure.base(), {}});
    return;
  }
  Found found{figure.truth, {}};
  for (const FigureFace* face : figure.of_role(FaceRole::Base)) {
    if (face->counts) {
      found.value += base - face->area;
      found.faces.push_back(face->id);
    }
  }
  if (!found.faces.empty()) {
    finds.push_back(std::move(found));
  }
}
void perimeter_for_base_area(const Figure& figure, Finds& finds) {
  const auto perimeter = figure.value("perimeter");
  // In a prism it is the area around the sides, which is the likelier way to it.
  const bool is_around = figure.question->asked == Asked::Volume && figure.traits().sides_make_rectangle;
  if (perimeter && figure.base() > 0 && !is_around) {
    with_base(figure, *perimeter, finds);
  }
}
// Another side of the base, or its slanted side, in the place of its height; "3 · 5" for the base of a right triangle.
void side_for_height_of_base(const Figure& figure, Finds& finds) {
  if (!figure.traits().has_base) {
    return;
  }
  const FigureFace& base = figure.faces[0];
  for (const algebra::Symbol& symbol : algebra::symbols_of(figure.face(base).work)) {
    for (const solids::Measure& measure : figure.problem->solid.statement().measures) {
      const auto side = figure.value(measure.symbol.name);
      if (side && measure.in_base && measure.symbol.dimension == 1 && !(measure.symbol == symbol)) {
        with_base(figure, figure.area_with(base, {{symbol.name, *side}}), finds);
      }
    }
  }
}
void around_for_inside(const Figure& figure, Finds& finds) { finds.push_back({figure.area_of(FaceRole::Lateral), {}}); }
void base_edges_added(const Figure& figure, Finds& finds) {
  for (const double a : figure.labels) {
    for (const double b : figure.labels) {
      if (a < b && std::abs(a * b - figure.base()) < 1e-9) {
        finds.push_back({a + b, {}});
      }
    }
  }
}

// ---- counts ----

// Of a body like a box three faces, nine edges and seven corners are in sight.
void in_sight_alone(const Figure& figure, Finds& finds) {
  const auto count = [&](const char* part) { return lessons::count_of(figure.problem->solid, part); };
  if (count("faces") == 6 && count("edges") == 12) {
    finds.push_back({figure.question->asked == Asked::Faces   ? 3.0
                     : figure.question->asked == Asked::Edges ? 9.0
                                                              : 7.0,
                     {}});
  } else if (figure.question->asked == Asked::Faces && !figure.traits().has_base) {
    finds.push_back({figure.truth / 2, {}});
  }
}
void faces_around_alone(const Figure& figure, Finds& finds) {
  if (figure.traits().has_base) {
    finds.push_back({static_cast<double>(figure.of_role(FaceRole::Lateral).size()), {}});
  }
}
void corners_of_one_base(const Figure& figure, Finds& finds) {
  if (figure.traits().has_base) {
    finds.push_back({static_cast<double>(figure.problem->solid.body().side_count(figure.faces[0].id)), {}});
  }
}

// ---- the amount of a word problem ----

// What the mistakes in the amount, as many times the right one, lead to.
void with_amounts(const Figure& figure, const std::vector<double>& times, Finds& finds) {
  const auto& packs = figure.question->packs;
  if (!packs || !figure.question->supply) {
    return;
  }
  const Rounding rounding = figure.question->supply->rounding;
  for (const double one : times) {
    const double quotient = packs->quotient.to_double() * one;
    finds.push_back({rounding == Rounding::Up     ? std::ceil(quotient - 1e-9)
                     : rounding == Rounding::Down ? std::floor(quotient + 1e-9)
                                                  : quotient,
                     {}});
  }
}
void edges_too_few(const Figure& figure, Finds& finds) {
  if (figure.question->supply && figure.question->supply->purpose == Purpose::Edge) {
    with_amounts(figure, {0.5, 0.25, 2}, finds);
  }
}
void part_of_the_amount(const Figure& figure, Finds& finds) {
  const auto& supply = figure.question->supply;
  if (!supply || supply->purpose == Purpose::Edge) {
    return;
  }
  if (supply->measure == "volume") {
    const bool is_halved = figure.traits().has_base && figure.faces[0].is_halved;
    with_amounts(figure,
                 figure.traits().has_apex ? std::vector<double>{3, 1.5} : std::vector<double>(is_halved ? 1 : 0, 2.0),
                 finds);
  } else if (supply->measure == "surface_area") {
    with_amounts(figure, {0.5, (figure.closed - figure.base()) / figure.closed}, finds);
  }
}
void amount_converted_as_lengths(const Figure& figure, Finds& finds) {
  const auto& supply = figure.question->supply;
  if (!supply || !supply->each || supply->each->unit.is_capacity()) {
    return;
  }
  const int dimension = supply->each->unit.dimension();
  const double whole =
      units::conversion(figure.problem->solid.unit().to_the(dimension), supply->each->unit).to_double();
  std::vector<double> times;
  for (int power = 1; power < dimension && whole != 1; ++power) {
    times.push_back(std::pow(whole, static_cast<double>(power) / dimension) / whole);
  }
  with_amounts(figure, times, finds);
}

}  // namespace

std::vector<Signature> far_signatures() {
  const std::vector<Asked> count{Asked::Count};
  std::vector<Signature> rows{
      {"E5",
       {Asked::Surface, Asked::Volume},
       perimeter_for_base_area,
       Saying("{n} is what you get with the perimeter of the base for its area.",
              "Which of the two is measured in square units?")},
      {"E6",
       {Asked::Surface, Asked::Volume, Asked::BaseArea},
       side_for_height_of_base,
       Saying("{n} is what you get with another length of the base.",
              "Which two lengths of the base meet at a right angle?")},
      {"A9",
       {Asked::Volume},
       around_for_inside,
       Saying("{n} is the area of the faces around the sides.", "What do you multiply by the height to fill it?")},
      {"A10",
       {Asked::BaseArea},
       base_edges_added,
       Saying("{n} is what you get if you add the two lengths.", "What do you do with two lengths to get an area?")},
      {"B18",
       {Asked::Faces, Asked::Edges, Asked::Vertices},
       in_sight_alone,
       Saying("{n} is how many you can see at once.", "What is hidden at the back?")},
      {"B19",
       {Asked::Faces},
       faces_around_alone,
       Saying("{n} counts only the faces around the sides.", "What is it standing on?")},
      {"B20",
       {Asked::Vertices},
       corners_of_one_base,
       Saying("{n} counts the corners of one base.", "Are there more corners at the top?")},
      {"L18", count, edges_too_few,
       Saying("{n} comes from a different number of edges.", "How many edges of each length are there?")},
      {"L19", count, part_of_the_amount,
       Saying("{n} comes from a different amount.",
              "Check the area or the volume. Is every part of the formula there?")},
      {"L20", count, amount_converted_as_lengths,
       Saying("{n} is what you get if you convert too few times.", "How many dimensions are you converting?")},
  };
  for (Signature& row : rows) {
    row.is_rare = true;
  }
  return rows;
}

}  // namespace fw::practice
