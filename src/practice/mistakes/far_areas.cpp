#include <algorithm>
#include <cmath>

#include "practice/signatures.hpp"

// Rarer ways to an area, or to the volume: faces left out or given another's size, and factors where none belongs.
// Source: made up by somebody who had seen the problems alone and not this table; common practice, no source.
namespace fw::practice {
namespace {

using solids::FaceRole;

std::vector<const FigureFace*> counting(const Figure& figure) {
  std::vector<const FigureFace*> faces;
  for (const FigureFace& face : figure.faces) {
    if (face.counts) {
      faces.push_back(&face);
    }
  }
  return faces;
}
std::vector<const FigureFace*> counting_sides(const Figure& figure) {
  std::vector<const FigureFace*> sides = counting(figure);
  sides.erase(std::remove_if(sides.begin(), sides.end(),
                             [](const FigureFace* face) { return face->role != FaceRole::Lateral; }),
              sides.end());
  return sides;
}
bool are_congruent(const std::vector<const FigureFace*>& faces) {
  return std::all_of(faces.begin(), faces.end(),
                     [&](const FigureFace* face) { return face->group == faces.front()->group; });
}

// ---- faces left out ----

// Of congruent faces some are missing, two or more.
void too_few_of_congruent(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> faces =
      figure.traits().sides_make_rectangle ? counting_sides(figure) : counting(figure);
  if (figure.traits().has_apex || faces.size() < 3 || !are_congruent(faces)) {
    return;
  }
  for (std::size_t missing = 2; missing < faces.size(); ++missing) {
    finds.push_back({figure.truth - static_cast<double>(missing) * faces.front()->area, {}});
  }
}
void pair_left_out(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> faces = counting(figure);
  const bool has_opposites = !figure.traits().sides_make_rectangle || counting_sides(figure).size() % 2 == 0;
  for (const FigureFace* face : has_opposites ? faces : std::vector<const FigureFace*>{}) {
    const auto count =
        std::count_if(faces.begin(), faces.end(), [&](const FigureFace* other) { return other->group == face->group; });
    if (count == 2 && faces.size() > 2) {
      finds.push_back({figure.truth - 2 * face->area, {face->id}});
    }
  }
}
// One face of each pair, where not all faces count.
void one_of_each_pair(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> faces = counting(figure);
  const bool is_paired = std::all_of(faces.begin(), faces.end(), [&](const FigureFace* face) {
    return std::count_if(faces.begin(), faces.end(),
                         [&](const FigureFace* other) { return other->group == face->group; }) %
               2 ==
           0;
  });
  const bool is_least = figure.question->asked == Asked::LeastSurface;
  if (is_least || (is_paired && faces.size() < figure.faces.size())) {
    finds.push_back({figure.truth / 2, {}});
  }
}
// Both bases with one of three rectangles.
void one_rectangle(const Figure& figure, Finds& finds) {
  const std::vector<const FigureFace*> sides = counting_sides(figure);
  if (!figure.traits().sides_make_rectangle || sides.size() != 3) {
    return;
  }
  double all = 0;
  for (const FigureFace* side : sides) {
    all += side->area;
  }
  for (const FigureFace* side : sides) {
    finds.push_back({figure.truth - all + side->area, {side->id}});
  }
}

// ---- faces of another size ----

void every_face_like_the_base(const Figure& figure, Finds& finds) {
  if (figure.has_triangles() && figure.question->asked == Asked::Surface) {
    finds.push_back({figure.base() * static_cast<double>(figure.faces.size()), {}});
  }
}
// Of a solid whose faces are all congruent: squares in place of triangles or pentagons, or a side as their height.
void every_face_on_its_edge(const Figure& figure, Finds& finds) {
  if (!figure.traits().is_all_alike) {
    return;
  }
  const double edge = figure.edges / static_cast<double>(figure.problem->solid.body().edge_count());
  const double count = static_cast<double>(counting(figure).size());
  if (std::abs(figure.faces[0].area - edge * edge) > 1e-9 * edge * edge) {
    finds.push_back({count * edge * edge, {}});
    finds.push_back({count * edge * edge / 2, {}});
  }
}
void edge_for_face(const Figure& figure, Finds& finds) {
  if (figure.traits().is_all_alike) {
    const double edge = figure.edges / static_cast<double>(figure.problem->solid.body().edge_count());
    finds.push_back({static_cast<double>(counting(figure).size()) * edge, {}});
  }
}
void perimeters_added(const Figure& figure, Finds& finds) {
  double sum = 0;
  for (const FigureFace* face : counting(figure)) {
    sum += geometry::perimeter(figure.problem->solid.body().flat(face->id).outline);
  }
  finds.push_back({sum, {}});
}

// The asked area with another length in place of one of the base's sides, in the lateral faces alone.
void with_side(const Figure& figure, const std::string& side, double length, Finds& finds) {
  Found found{figure.truth, {}};
  for (const FigureFace* face : counting_sides(figure)) {
    const double other = figure.area_with(*face, {{side, length}});
    if (std::abs(other - face->area) > 1e-9) {
      found.value += other - face->area;
      found.faces.push_back(face->id);
    }
  }
  if (!found.faces.empty()) {
    finds.push_back(std::move(found));
  }
}
void height_of_base_for_side(const Figure& figure, Finds& finds) {
  if (!figure.traits().bases_match) {
    return;
  }
  for (const solids::FaceLength& length : figure.face(figure.faces[0]).lengths) {
    for (const solids::Measure& side : figure.problem->solid.statement().measures) {
      const auto value = figure.value(side.symbol.name);
      if (length.is_height && side.in_base && value && *value > length.value.to_double()) {
        with_side(figure, side.symbol.name, length.value.to_double(), finds);
      }
    }
  }
}
void legs_added(const Figure& figure, Finds& finds) {
  if (!figure.traits().bases_match) {
    return;
  }
  std::vector<std::pair<std::string, double>> sides;
  for (const solids::Measure& measure : figure.problem->solid.statement().measures) {
    const auto value = figure.value(measure.symbol.name);
    if (measure.in_base && measure.symbol.dimension == 1 && value) {
      sides.emplace_back(measure.symbol.name, *value);
    }
  }
  for (const auto& longest : sides) {
    for (std::size_t i = 0; i < sides.size(); ++i) {
      for (std::size_t k = i + 1; k < sides.size(); ++k) {
        const double a = sides[i].second;
        const double b = sides[k].second;
        if (std::abs(a * a + b * b - longest.second * longest.second) < 1e-9 * longest.second * longest.second) {
          with_side(figure, longest.first, a + b, finds);
        }
      }
    }
  }
}
// The lengths across the base taken for its sides.
void across_for_sides(const Figure& figure, Finds& finds) {
  const auto height = figure.value("height");
  const std::vector<solids::FaceLength>& across = figure.face(figure.faces[0]).lengths;
  if (!figure.traits().sides_make_rectangle || !height || across.size() != 2 || counting_sides(figure).size() != 4) {
    return;
  }
  double sides = 0;
  for (const FigureFace* side : counting_sides(figure)) {
    sides += side->area;
  }
  const double around = 2 * (across[0].value.to_double() + across[1].value.to_double());
  finds.push_back({figure.truth - sides + around * *height, {}});
}

// ---- factors ----

void base_times_slant(const Figure& figure, Finds& finds) {
  const auto slant = figure.value("slant_height");
  if (slant && figure.traits().has_apex) {
    finds.push_back({figure.base() * *slant, {}});
    finds.push_back({figure.base() * *slant / 3, {}});
  }
}
void rectangles_without_base(const Figure& figure, Finds& finds) {
  if (figure.has_triangles() && figure.question->asked == Asked::Surface) {
    finds.push_back({2 * figure.area_of(FaceRole::Lateral), {}});
  }
}
void halved_for_nothing(const Figure& figure, Finds& finds) {
  const bool has_half = !figure.traits().has_round_base && std::any_of(figure.faces.begin(), figure.faces.end(),
                                                                       [](const auto& face) { return face.is_halved; });
  if (figure.question->asked == Asked::BaseArea ? figure.traits().has_base && !figure.faces[0].is_halved : !has_half) {
    finds.push_back({figure.truth / 2, {}});
  }
}
void base_doubled(const Figure& figure, Finds& finds) {
  for (const double label : figure.labels) {
    if (std::abs(label * label - figure.base()) < 1e-9 * figure.base()) {
      finds.push_back({2 * label, {}});
    }
  }
}
void base_times_height(const Figure& figure, Finds& finds) {
  finds.push_back({figure.traits().has_apex ? 3 * figure.volume : 0, {}});
}
void other_labels_multiplied(const Figure& figure, Finds& finds) {
  std::vector<bool> is_in_base;
  for (const std::string& name : figure.label_names) {
    const auto& measures = figure.problem->solid.statement().measures;
    is_in_base.push_back(std::any_of(measures.begin(), measures.end(), [&](const solids::Measure& measure) {
      return measure.symbol.name == name && measure.in_base;
    }));
  }
  for (std::size_t i = 0; i < figure.labels.size(); ++i) {
    for (std::size_t k = i + 1; k < figure.labels.size(); ++k) {
      finds.push_back({is_in_base[i] && is_in_base[k] ? 0 : figure.labels[i] * figure.labels[k], {}});
    }
  }
}

}  // namespace

std::vector<Signature> far_area_signatures() {
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  const std::vector<Asked> base{Asked::BaseArea};
  std::vector<Signature> rows{
      {"B21", areas, too_few_of_congruent,
       Saying("{n} is what you get with too few faces.", "How many congruent faces does it have?")},
      {"B22", areas, pair_left_out,
       Saying("{n} is what you get if one pair of faces is left out.", "Which faces are opposite each other?")},
      {"B23", areas, one_rectangle,
       Saying("{n} is what you get with only one rectangle.", "How many sides does the base have?")},
      {"B27",
       {Asked::Surface, Asked::Lateral, Asked::LeastSurface},
       one_of_each_pair,
       Saying("{n} counts one face of each pair.", "Which face is opposite each one?")},
      {"B24", areas, every_face_like_the_base,
       Saying("{n} is what you get if every face were like the base.", "How tall is each lateral face?")},
      {"C9", areas, rectangles_without_base,
       Saying("{n} is what you get with rectangles for the triangles, and no base.", "What shape is each face?")},
      {"E7", areas, every_face_on_its_edge,
       Saying("{n} is what you get with the edge as the height of each face.",
              "What shape is one face, and how tall?")},
      {"A11", areas, edge_for_face,
       Saying("{n} is what you get if you count the faces and multiply by the edge.", "What is the area of one face?")},
      {"A12", areas, perimeters_added,
       Saying("{n} is what you get if you add the perimeters of the faces.", "What measures the inside of a face?")},
      {"A13", areas, base_times_slant,
       Saying("{n} is what you get if you multiply the base by the slant height.",
              "That isn't an area. Which faces are there?")},
      {"D7", areas, height_of_base_for_side,
       Saying("{n} is what you get with the height of the base for one of its sides.",
              "Which side does each rectangle stand on?")},
      {"D8", areas, legs_added,
       Saying("{n} is what you get if you add the legs to get the third side.",
              "What does the Pythagorean theorem do with them?")},
      {"D9", areas, across_for_sides,
       Saying("{n} is what you get with the lengths across the base for its sides.", "How long is one side of it?")},
      {"F8",
       {Asked::BaseArea, Asked::Volume},
       halved_for_nothing,
       Saying("{n} is half of it.", "Does this shape need the ½?")},
      {"F9", base, base_doubled,
       Saying("{n} is what you get if you double where you should square.", "What does the exponent tell you to do?")},
      {"A14", base, base_times_height,
       Saying("{n} is what you get if you multiply the base by the height.", "Does the question ask what it holds?")},
      {"A15", base, other_labels_multiplied,
       Saying("{n} multiplies two lengths that don't both belong to the base.", "Which lengths are in the base?")},
  };
  for (Signature& row : rows) {
    row.is_rare = true;
  }
  return rows;
}

}  // namespace fw::practice
