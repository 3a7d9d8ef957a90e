#include <cmath>

#include "lessons/asked_value.hpp"
#include "practice/signatures.hpp"

// Ways that are rarer than those of the other files: another measure of the base, and counts of what is in sight.
// Source: made up by somebody who had seen the problems alone and not this table; common practice, no source.
namespace fw::practice {
namespace {

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
// The square on a side of a rhombus; the sides of the base, or any three labels, multiplied.
void square_on_the_side(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> sides = figure.of_role(FaceRole::Lateral);
  const auto perimeter = figure.value("perimeter");
  const bool is_alike = std::all_of(sides.begin(), sides.end(),
                                    [&](const FigureFace* one) { return one->group == sides.front()->group; });
  if (sides.size() == 4 && is_alike && perimeter && figure.base() > 0) {
    with_base(figure, *perimeter * *perimeter / 16, finds);
  }
}
void three_labels_multiplied(const Figure& figure, Finds& finds) {
  const std::vector<double>& labels = figure.labels;
  for (std::size_t i = 0; i < labels.size(); ++i) {
    for (std::size_t k = i + 1; k < labels.size(); ++k) {
      for (std::size_t m = k + 1; m < labels.size(); ++m) {
        finds.push_back({labels[i] * labels[k] * labels[m], {}});
      }
    }
  }
}
// A length that is worked out before what is asked for.
void length_on_the_way(const Figure& figure, Finds& finds) {
  const solids::Solid& solid = figure.problem->solid;
  for (const solids::Measure& measure : solid.statement().measures) {
    const auto value = figure.value(measure.symbol.name);
    if (measure.symbol.dimension == 1 && value && !solid.is_given(measure.symbol)) {
      finds.push_back({*value, {}});
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

void edges_of_one_face(const Figure& figure, Finds& finds) {
  for (const FigureFace& face : figure.faces) {
    finds.push_back({static_cast<double>(figure.problem->solid.body().side_count(face.id)), {face.id}});
  }
}

}  // namespace

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Signature> far_signatures() {
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
      {"E8",
       {Asked::Surface, Asked::Volume, Asked::BaseArea},
       square_on_the_side,
       Saying("{n} is what you get if the base were a square.", "Do the sides of the base meet at right angles?")},
      {"E9",
       {Asked::Volume},
       three_labels_multiplied,
       Saying("{n} is what you get if you multiply three of the labels.", "What is the area of the base?")},
      {"A16",
       {Asked::Surface, Asked::Lateral, Asked::Volume},
       length_on_the_way,
       Saying("{n} is a length you need, and that's a good step.", "What does the question ask for?")},
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
      {"B25",
       {Asked::Edges},
       edges_of_one_face,
       Saying("{n} counts the edges of one face.", "Which edges don't belong to this face?")},
  };
  for (Signature& row : rows) {
    row.is_rare = true;
  }
  return rows;
}

}  // namespace fw::practice
