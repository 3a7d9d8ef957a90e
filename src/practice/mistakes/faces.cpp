#include <algorithm>
#include <cmath>

#include "lessons/asked_value.hpp"
#include "practice/signatures.hpp"

// A face is skipped, repeated, or given the size of its neighbor.
// Source: Ben-Chaim, Lappan & Houang, Educ. Stud. Math. 16 (1985), for counting the faces in sight (B1, B9) and
// doubling (B13); the rest is common practice, no source.
namespace fw::practice {
namespace {

using solids::FaceRole;
using solids::Traits;

std::vector<const FigureFace*> counted(const Figure& figure) {
  std::vector<const FigureFace*> list;
  for (const FigureFace& face : figure.faces) {
    if (face.counts) {
      list.push_back(&face);
    }
  }
  return list;
}
std::vector<const FigureFace*> counted(const Figure& figure, FaceRole role) {
  std::vector<const FigureFace*> list = counted(figure);
  list.erase(std::remove_if(list.begin(), list.end(), [&](const FigureFace* face) { return face->role != role; }),
             list.end());
  return list;
}
std::vector<FaceId> ids_of(const std::vector<const FigureFace*>& faces) {
  std::vector<FaceId> ids;
  ids.reserve(faces.size());
  for (const FigureFace* face : faces) {
    ids.push_back(face->id);
  }
  return ids;
}
double sum_of(const std::vector<const FigureFace*>& faces) {
  double sum = 0;
  for (const FigureFace* face : faces) {
    sum += face->area;
  }
  return sum;
}
bool is_closed_surface(const Figure& figure) {
  return figure.question->asked == Asked::Surface && figure.problem->open.empty();
}
// Whether every face has an equal one beside it.
bool is_paired(const std::vector<const FigureFace*>& faces) {
  return std::all_of(faces.begin(), faces.end(), [&](const FigureFace* one) {
    return std::count_if(faces.begin(), faces.end(),
                         [&](const FigureFace* other) { return other->group == one->group; }) %
               2 ==
           0;
  });
}
bool differ(const std::vector<const FigureFace*>& faces) {
  return std::any_of(faces.begin(), faces.end(),
                     [&](const FigureFace* one) { return !(one->group == faces.front()->group); });
}

void in_sight(const Figure& figure, Finds& finds) {
  if (is_closed_surface(figure) && is_paired(counted(figure))) {
    finds.push_back({figure.truth / 2, {}});
  }
}
void end_left_out(const Figure& figure, Finds& finds) {
  for (const FigureFace* face : counted(figure, FaceRole::Base)) {
    if (figure.traits().has_second_base && figure.question->asked == Asked::Surface) {
      finds.push_back({figure.truth - face->area, {face->id}});
    }
  }
}
void one_left_out(const Figure& figure, const std::vector<const FigureFace*>& faces, Finds& finds) {
  for (const FigureFace* face : faces) {
    finds.push_back({figure.truth - face->area, {face->id}});
  }
}
void one_of_a_pair_left_out(const Figure& figure, Finds& finds) {
  if (figure.traits().has_second_base && is_paired(counted(figure, FaceRole::Lateral))) {
    one_left_out(figure, counted(figure, FaceRole::Lateral), finds);
  }
  one_left_out(figure, counted(figure, FaceRole::Face), finds);
}
void side_left_out(const Figure& figure, Finds& finds) {
  const Traits& traits = figure.traits();
  if (traits.sides_make_rectangle && !traits.has_round_base && !is_paired(counted(figure, FaceRole::Lateral))) {
    one_left_out(figure, counted(figure, FaceRole::Lateral), finds);
  }
}
// Where neither base counts, the lateral area is right.
void sides_only(const Figure& figure, Finds& finds) {
  const double sides = figure.area_of(FaceRole::Lateral);
  if (figure.traits().has_second_base && std::abs(sides - figure.truth) > 1e-9 * sides) {
    finds.push_back({sides, ids_of(figure.of_role(FaceRole::Lateral))});
  }
}
void ends_only(const Figure& figure, Finds& finds) {
  if (figure.traits().has_second_base) {
    finds.push_back({figure.area_of(FaceRole::Base), ids_of(figure.of_role(FaceRole::Base))});
  }
}
void all_sides_alike(const Figure& figure, std::size_t least, std::size_t most, Finds& finds) {
  const std::vector<const FigureFace*> sides = counted(figure, FaceRole::Lateral);
  const bool is_of_many = sides.size() >= least && sides.size() <= most;
  if (!figure.traits().sides_make_rectangle || !is_of_many || !differ(sides)) {
    return;
  }
  for (const FigureFace* side : sides) {
    finds.push_back({figure.truth - sum_of(sides) + static_cast<double>(sides.size()) * side->area, ids_of(sides)});
  }
}
void four_sides_alike(const Figure& figure, Finds& finds) { all_sides_alike(figure, 4, 100, finds); }
void three_sides_alike(const Figure& figure, Finds& finds) { all_sides_alike(figure, 3, 3, finds); }

// One end with the sides that are seen beside it, one or two of them.
void end_and_sides_in_sight(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> sides = counted(figure, FaceRole::Lateral);
  const std::vector<const FigureFace*> ends = counted(figure, FaceRole::Base);
  const bool is_flat_sided = figure.traits().has_second_base && !figure.traits().has_round_base;
  if (!is_closed_surface(figure) || !is_flat_sided || is_paired(sides)) {
    return;
  }
  for (std::size_t i = 0; i < sides.size(); ++i) {
    const FigureFace* next = sides[(i + 1) % sides.size()];
    finds.push_back({ends[0]->area + sides[i]->area, {ends[0]->id, sides[i]->id}});
    finds.push_back({ends[0]->area + sides[i]->area + next->area, {ends[0]->id, sides[i]->id, next->id}});
  }
}

void without_base(const Figure& figure, Finds& finds) {
  if (figure.has_triangles() && is_closed_surface(figure)) {
    finds.push_back({figure.area_of(FaceRole::Lateral), ids_of(figure.of_role(FaceRole::Base))});
  }
}
void two_bases(const Figure& figure, Finds& finds) {
  if (figure.has_triangles() && is_closed_surface(figure)) {
    finds.push_back({figure.truth + figure.base(), ids_of(figure.of_role(FaceRole::Base))});
  }
}
// The first, the first two ... lateral faces round the base, and the base where it counts.
void too_few_triangles(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> sides = counted(figure, FaceRole::Lateral);
  if (!figure.traits().has_apex) {
    return;
  }
  const double rest = figure.truth - sum_of(sides);
  for (std::size_t first = 0; first < sides.size(); ++first) {
    double sum = rest;
    for (std::size_t i = 0; i + 1 < sides.size(); ++i) {
      sum += sides[(first + i) % sides.size()]->area;
      finds.push_back({sum, ids_of(sides)});
    }
  }
}
void doubled_again(const Figure& figure, Finds& finds) {
  const bool is_one_face = figure.traits().has_round_base && figure.question->asked == Asked::Lateral;
  finds.push_back({is_one_face ? 0 : 2 * figure.truth, {}});
}

// Where an equal face is open, its area is that face's, and was to be left out.
bool has_open_twin(const Figure& figure, const FigureFace& face) {
  return std::any_of(figure.faces.begin(), figure.faces.end(), [&](const FigureFace& other) {
    return figure.question->asked == Asked::Surface && !other.counts && other.group == face.group;
  });
}
void face_twice(const Figure& figure, Finds& finds) {
  for (const FigureFace* face : counted(figure)) {
    const bool is_base_below_apex = figure.traits().has_apex && face->role == FaceRole::Base;
    const bool is_curved = figure.traits().has_round_base && face->role == FaceRole::Lateral;
    if (!is_base_below_apex && !is_curved && !has_open_twin(figure, *face)) {
      finds.push_back({figure.truth + face->area, {face->id}});
    }
  }
}
// Between two bases there are as many vertices as edges round them, which is the likelier mistake.
void another_count(const Figure& figure, Finds& finds) {
  for (const std::string counted : {"faces", "edges", "vertices"}) {
    const bool is_round_bases =
        counted == "vertices" && figure.question->asked == Asked::Edges && figure.traits().has_second_base;
    if (counted != figure.question->find && !is_round_bases) {
      finds.push_back({static_cast<double>(lessons::count_of(figure.problem->solid, counted)), {}});
    }
  }
}
// The sides or corners of all faces, each of which belongs to two faces or more.
void each_face_anew(const Figure& figure, Finds& finds) {
  double sides = 0;
  for (const FigureFace& face : figure.faces) {
    sides += static_cast<double>(figure.problem->solid.body().side_count(face.id));
  }
  finds.push_back({sides, {}});
}
// Those of the bases alone.
void round_the_bases(const Figure& figure, Finds& finds) {
  double sides = 0;
  std::vector<FaceId> bases;
  for (const FigureFace* face : figure.of_role(FaceRole::Base)) {
    sides += static_cast<double>(figure.problem->solid.body().side_count(face->id));
    bases.push_back(face->id);
  }
  if (sides > 0) {
    finds.push_back({sides, bases});
  }
}

}  // namespace

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Signature> face_signatures() {
  const std::vector<Asked> surface{Asked::Surface};
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  return {
      {"B1", surface, in_sight,
       Saying("{n} is the area of the faces you can see.", "Which faces are hidden behind them?")},
      {"B2", surface, end_left_out,
       Saying("{n} is what you get if one base is left out.",
              "How many faces does it have, and how many did you add?")},
      {"B3", areas, one_of_a_pair_left_out,
       Saying("{n} is what you get if one face is left out.", "Which face is congruent to one you counted only once?")},
      {"B4", surface, sides_only, Saying("{n} is the lateral area.", "Which faces are at the ends?")},
      {"B5", areas, ends_only, Saying("{n} is the area of the two bases alone.", "Which faces connect the two bases?")},
      {"B6", areas, four_sides_alike,
       Saying("{n} is what you get if all the lateral faces were the same size.",
              "What are the two lengths of each lateral face?")},
      {"B7", areas, three_sides_alike,
       Saying("{n} is what you get if all three rectangles were the same size.",
              "Which side of the triangle does each rectangle stand on?")},
      {"B8", areas, side_left_out,
       Saying("{n} is what you get if one rectangle is left out.", "How many sides does the base have?")},
      {"B9", surface, end_and_sides_in_sight,
       Saying("{n} is the area of the faces you can see.", "How many faces are there in all?")},
      {"B10", surface, without_base,
       Saying("{n} is the area of the triangles alone.", "Is the bottom part of the surface?")},
      {"B11", surface, two_bases, Saying("{n} is what you get with two bases.", "How many bases does a pyramid have?")},
      {"B12", areas, too_few_triangles,
       Saying("{n} is what you get with too few triangles.", "How many sides does the base have?")},
      {"B13", areas, doubled_again,
       Saying("{n} is twice the whole thing.", "Did you already count both faces of each pair?")},
      {"B14", areas, face_twice,
       Saying("{n} is what you get if you count one face twice.", "Which face did you count twice?")},
      {"B15",
       {Asked::Faces},
       another_count,
       Saying("{n} counts edges or corners.", "Touch each flat side once. How many are there?")},
      {"B15",
       {Asked::Edges},
       another_count,
       Saying("{n} counts faces or corners.", "Run your finger along each edge once. How many are there?")},
      {"B15",
       {Asked::Vertices},
       another_count,
       Saying("{n} counts faces or edges.", "Touch each corner once. How many are there?")},
      {"B16",
       {Asked::Edges, Asked::Vertices},
       each_face_anew,
       Saying("{n} is what you get if you count them again on every face.", "How many faces share each one?")},
      {"B17",
       {Asked::Vertices},
       round_the_bases,
       Saying("{n} counts only the corners of the base.", "Is there one more at the top?")},
      {"B17",
       {Asked::Edges},
       round_the_bases,
       Saying("{n} counts only the edges around the bases.",
              "Are there more edges between the bases, or up to the top?")},
  };
}

}  // namespace fw::practice
