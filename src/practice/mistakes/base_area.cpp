#include "practice/signatures.hpp"

// The area of one base is asked for.
// Source: common practice, no source.
namespace fw::practice {
namespace {

using solids::FaceRole;

void base_not_halved(const Figure& figure, Finds& finds) {
  if (figure.traits().has_base && figure.faces[0].is_halved) {
    finds.push_back({2 * figure.base(), {figure.faces[0].id}});
  }
}
void all_bases(const Figure& figure, Finds& finds) {
  if (figure.traits().has_second_base) {
    finds.push_back({figure.area_of(FaceRole::Base), {}});
  }
}
void another_face(const Figure& figure, Finds& finds) {
  for (const FigureFace* face : figure.of_role(FaceRole::Lateral)) {
    finds.push_back({face->area, {face->id}});
  }
}
void all_faces(const Figure& figure, Finds& finds) { finds.push_back({figure.closed, {}}); }

void way_around(const Figure& figure, Finds& finds) {
  if (const auto perimeter = figure.value("perimeter")) {
    finds.push_back({*perimeter, {}});
  }
}

}  // namespace

std::vector<Signature> base_area_signatures() {
  const std::vector<Asked> base{Asked::BaseArea};
  return {
      {"C1", base, base_not_halved,
       Saying("{n} is the area of the whole rectangle around it.",
              "What fraction of the rectangle around it is the base?")},
      {"B5", base, all_bases,
       Saying("{n} is the area of both bases together.", "How many bases does the question ask for?")},
      {"A6", base, another_face, Saying("{n} is the area of a lateral face.", "Which face is the base?")},
      {"A2", base, all_faces, Saying("{n} is the area of all the faces.", "Which one of those faces is the base?")},
      {"A4", base, way_around, Saying("{n} is the perimeter of the base.", "What do you multiply to get its area?")},
  };
}

}  // namespace fw::practice
