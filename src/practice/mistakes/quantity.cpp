#include <numeric>

#include "practice/signatures.hpp"

// Another attribute of the same solid is measured.
// Source: Tan Sisman & Aksu, Int. J. Sci. Math. Educ. 14 (2016), and Dorko & Speer (2013), for A1, A2 and the blended
// formulas A7, A8; the rest is common practice, no source.
namespace fw::practice {
namespace {

using solids::FaceRole;

void volume_instead(const Figure& figure, Finds& finds) {
  if (!figure.traits().is_all_alike) {
    finds.push_back({figure.volume, {}});
  }
}
void surface_instead(const Figure& figure, Finds& finds) {
  if (!figure.traits().is_all_alike) {
    finds.push_back({figure.closed, {}});
  }
}
void formulas_swapped(const Figure& figure, Finds& finds) {
  if (figure.traits().is_all_alike) {
    finds.push_back({figure.question->asked == Asked::Volume ? figure.closed : figure.volume, {}});
  }
}
void edges_instead(const Figure& figure, Finds& finds) { finds.push_back({figure.edges, {}}); }

void labels_added(const Figure& figure, Finds& finds) {
  if (figure.labels.size() > 1) {
    finds.push_back({std::accumulate(figure.labels.begin(), figure.labels.end(), 0.0), {}});
  }
}

void one_face(const Figure& figure, Finds& finds) {
  for (const FigureFace& face : figure.faces) {
    const bool is_no_base = figure.question->asked == Asked::Volume && face.role == FaceRole::Lateral;
    if (!is_no_base) {
      finds.push_back({face.area, {face.id}});
    }
  }
}

void doubled_base_times_height(const Figure& figure, Finds& finds) {
  if (figure.traits().bases_match) {
    finds.push_back({2 * figure.volume, {}});
  }
}

void blended(const Figure& figure, Finds& finds) {
  const auto height = figure.value("height");
  const auto straight = figure.value("perimeter");
  const auto perimeter = straight ? straight : figure.value("circumference");
  if (!figure.traits().bases_match || !height || !perimeter) {
    return;
  }
  const double base = figure.base();
  for (const double number : {base + *height, 2 * base + *height, figure.volume + 2 * base, *perimeter + 2 * base}) {
    finds.push_back({number, {}});
  }
}

}  // namespace

std::vector<Signature> quantity_signatures() {
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  const std::vector<Asked> measures{Asked::Surface, Asked::Lateral, Asked::Volume};
  return {
      {"A1", areas, volume_instead,
       Saying("{n} is the space inside.", "Surface area is the wrapping paper. Which faces does the paper cover?")},
      {"A1",
       {Asked::BaseArea},
       volume_instead,
       Saying("{n} is the space inside.", "Which face is the base, and what is its area?")},
      {"A2",
       {Asked::Volume},
       surface_instead,
       Saying("{n} is the area of all the faces, the outside.",
              "How many cubes are in one layer, and how many layers fill the solid?")},
      {"A3",
       {Asked::Surface, Asked::Volume},
       formulas_swapped,
       Saying("{n} answers a different question about this solid.",
              "Does it ask for covering the outside, or filling the inside?")},
      {"A4", measures, edges_instead,
       Saying("{n} is the length of all the edges.", "What do you multiply to get the area of one face?")},
      {"A5", measures, labels_added,
       Saying("{n} is what you get if you add the labels.", "Which two lengths make one face?")},
      {"A6", measures, one_face, Saying("{n} is the area of one face.", "What is left to find?")},
      {"A7",
       {Asked::Volume},
       doubled_base_times_height,
       Saying("{n} is what you get if you multiply both bases by the height.",
              "How many layers fit along the height?")},
      {"A8", measures, blended,
       Saying("{n} is what you get if you add measures of different kinds.",
              "Is each part a length, an area or a volume?")},
  };
}

}  // namespace fw::practice
