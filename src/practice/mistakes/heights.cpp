#include <algorithm>
#include <functional>

#include "practice/signatures.hpp"

// One height taken for another, and another face taken for the base.
// Source: Horzum & Ertekin (2017), as Lo & Cox report it, for the face at the bottom taken as the base (E1); the rest
// is common practice, no source.
namespace fw::practice {
namespace {

using solids::FaceLength;
using solids::FaceRole;

// The height of a lateral face, where it is not that of the solid.
const FaceLength* slant_of(const Figure& figure, const FigureFace& face) {
  const std::vector<FaceLength>& lengths = figure.face(face).lengths;
  const auto slant = std::find_if(lengths.begin(), lengths.end(), [](const FaceLength& one) { return one.is_height; });
  return face.role == FaceRole::Lateral && slant != lengths.end() ? &*slant : nullptr;
}

// The slant heights, each once.
std::vector<double> slants_of(const Figure& figure) {
  std::vector<double> slants;
  std::vector<std::string> names;
  for (const FigureFace& face : figure.faces) {
    const FaceLength* slant = slant_of(figure, face);
    if (slant != nullptr && std::find(names.begin(), names.end(), slant->symbol.name) == names.end()) {
      names.push_back(slant->symbol.name);
      slants.push_back(slant->value.to_double());
    }
  }
  return slants;
}

// The asked area with another length in place of each slant height.
void with_slants(const Figure& figure, const std::function<double(double slant)>& other, Finds& finds) {
  double area = figure.truth;
  Found found;
  for (const FigureFace& face : figure.faces) {
    const FaceLength* slant = slant_of(figure, face);
    if (slant != nullptr && face.counts) {
      area += figure.area_with(face, {{slant->symbol.name, other(slant->value.to_double())}}) - face.area;
      found.faces.push_back(face.id);
    }
  }
  found.value = area;
  if (!found.faces.empty()) {
    finds.push_back(std::move(found));
  }
}

void height_for_slant(const Figure& figure, Finds& finds) {
  if (const auto height = figure.value("height")) {
    with_slants(
        figure, [&](double) { return *height; }, finds);
  }
}
void slant_for_height(const Figure& figure, Finds& finds) {
  const auto height = figure.value("height");
  for (const double slant : slants_of(figure)) {
    finds.push_back({height ? figure.volume * slant / *height : 0, {}});
  }
}
void edge_for_slant(const Figure& figure, Finds& finds) {
  if (const auto edge = figure.value("lateral_edge")) {
    with_slants(
        figure, [&](double) { return *edge; }, finds);
  }
}
void slants_swapped(const Figure& figure, Finds& finds) {
  const std::vector<double> slants = slants_of(figure);
  if (slants.size() == 2) {
    with_slants(
        figure, [&](double slant) { return slants[0] + slants[1] - slant; }, finds);
  }
}
void one_slant_for_all(const Figure& figure, Finds& finds) {
  const std::vector<double> slants = slants_of(figure);
  if (slants.size() == 2) {
    with_slants(
        figure, [&](double) { return slants[0]; }, finds);
    with_slants(
        figure, [&](double) { return slants[1]; }, finds);
  }
}

// The height of the base, where it is drawn across it.
std::vector<double> heights_in_base(const Figure& figure) {
  std::vector<double> heights;
  for (const FaceLength& length : figure.face(figure.faces[0]).lengths) {
    if (figure.traits().bases_match && length.is_height) {
      heights.push_back(length.value.to_double());
    }
  }
  return heights;
}
void height_of_base_for_length(const Figure& figure, Finds& finds) {
  const auto perimeter = figure.value("perimeter");
  for (const double height : heights_in_base(figure)) {
    if (figure.question->asked == Asked::Volume) {
      finds.push_back({figure.base() * height, {figure.faces[0].id}});
    } else if (perimeter && figure.problem->open.empty()) {
      const double bases = figure.question->asked == Asked::Surface ? 2 * figure.base() : 0;
      finds.push_back({bases + *perimeter * height, {}});
    }
  }
}
void height_from_the_page(const Figure& figure, Finds& finds) {
  for (const double height : heights_in_base(figure)) {
    finds.push_back({figure.base() * height, {}});
  }
}

// The lateral face on a side times the height that the base has on that side.
void lateral_face_as_base(const Figure& figure, Finds& finds) {
  const bool is_triangle = figure.face(figure.faces[0]).lengths.size() == 2;
  if (figure.traits().bases_match && figure.faces[0].is_halved && is_triangle) {
    finds.push_back({2 * figure.volume, {}});
  }
}
void all_labels_multiplied(const Figure& figure, Finds& finds) {
  if (figure.labels.size() > 3) {
    double product = 1;
    for (const double label : figure.labels) {
      product *= label;
    }
    finds.push_back({product, {}});
  }
}
void lateral_face_as_volume(const Figure& figure, Finds& finds) {
  for (const FigureFace* face : figure.of_role(FaceRole::Lateral)) {
    finds.push_back({face->area, {face->id}});
  }
}

}  // namespace

std::vector<Signature> height_signatures() {
  const std::vector<Asked> areas{Asked::Surface, Asked::Lateral};
  const std::vector<Asked> volume{Asked::Volume};
  return {
      {"D1", areas, height_for_slant,
       Saying("{n} is what you get with the height of the solid.",
              "Which length runs down the middle of a lateral face?")},
      {"D2", volume, slant_for_height,
       Saying("{n} is what you get with the slant height.", "How tall is it, straight up?")},
      {"D3", areas, edge_for_slant,
       Saying("{n} is what you get with the lateral edge.", "Which length runs down the middle of a lateral face?")},
      {"D4", areas, slants_swapped,
       Saying("{n} is what you get if the two slant heights are switched.",
              "Which base edge does each slant height go with?")},
      {"D5", areas, one_slant_for_all,
       Saying("{n} is what you get with one slant height for every face.",
              "How many different triangles does this solid have?")},
      {"D6",
       {Asked::Surface, Asked::Lateral, Asked::Volume},
       height_of_base_for_length,
       Saying("{n} is what you get with the height of the base.", "How far apart are the two bases?")},
      {"E1", volume, lateral_face_as_base,
       Saying("{n} is what you get with the bottom face as the base.",
              "Which face has a matching face at the other end?")},
      {"E2", volume, all_labels_multiplied,
       Saying("{n} is what you get if you multiply every label.", "What is the area of the base?")},
      {"E3", volume, lateral_face_as_volume,
       Saying("{n} is the area of one lateral face.", "Which face is the base, and what is its area?")},
      {"E4", volume, height_from_the_page,
       Saying("{n} is what you get with the length that goes straight up on the page.",
              "How far apart are the two bases?")},
  };
}

}  // namespace fw::practice
