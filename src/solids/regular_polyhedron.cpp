#include <cmath>

#include "solids/kind_table.hpp"
#include "solids/regular_bodies.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;
using exact::Number;

/// One of the five. Volumes for edge 1. Source: H. S. M. Coxeter, Regular Polytopes, Table I (from memory).
struct Row {
  int faces;
  const char* name;
  std::vector<std::string> other_names;
  const char* family;
  int corners_of_face;
  Number volume;
  RegularShape (*shape)();
};

std::vector<Row> rows() {
  const Number five = square_root(whole(5));
  const Number two = square_root(whole(2));
  return {{4,
           "regular tetrahedron",
           {"tetrahedron", "triangular pyramid", "regular triangular pyramid", "triangle based pyramid"},
           "pyramid",
           3,
           two / whole(12),
           &regular_tetrahedron},
          {6,
           "cube",
           {"regular hexahedron", "hexahedron", "square prism", "rectangular prism", "cuboid"},
           "prism",
           4,
           whole(1),
           &regular_hexahedron},
          {8, "regular octahedron", {"octahedron"}, "", 3, two / whole(3), &regular_octahedron},
          {12,
           "regular dodecahedron",
           {"dodecahedron"},
           "",
           5,
           (whole(15) + whole(7) * five) / whole(4),
           &regular_dodecahedron},
          {20,
           "regular icosahedron",
           {"icosahedron"},
           "",
           3,
           whole(5) * (whole(3) + five) / whole(12),
           &regular_icosahedron}};
}

/// The faces' inner length: the height of a triangle, the apothem of a pentagon; none in a square.
std::optional<Symbol> inner_length(int corners) {
  if (corners == 4) {
    return std::nullopt;
  }
  return corners == 3 ? Symbol{"face_height", "t", 1} : Symbol{"apothem", "a", 1};
}

Expression face_area(int corners, const Symbol& s) {
  const auto inner = inner_length(corners);
  if (!inner) {
    return square(s);
  }
  return corners == 3 ? half(Expression(s) * *inner) : half(Expression(corners) * s * *inner);
}

void add_relations(SolidStatement& statement, const Row& row, const Symbol& s) {
  if (row.corners_of_face == 3) {
    const Symbol t = *inner_length(3);
    statement.measures.push_back(measure(t, "height of the triangle", ""));
    statement.relations.push_back({{square(t), square(s) - square(half(s))},
                                   message("the height splits the equilateral triangle into two congruent right "
                                           "triangles, so use the Pythagorean theorem")});
    statement.relations.push_back({{t, Expression(s) * square_root(whole(3)) / 2},
                                   message("the height of an equilateral triangle is √3 ÷ 2 times its side")});
  } else if (row.corners_of_face == 5) {
    const Symbol a = *inner_length(5);
    statement.measures.push_back(measure(a, "apothem", ""));
    statement.relations.push_back(apothem_relation(a, s, 5));
  }
  statement.relations.push_back({{symbols::surface_area(), Expression(row.faces) * face_area(row.corners_of_face, s)},
                                 message("all faces are congruent")});
  statement.volume =
      algebra::Equation{symbols::volume(), row.faces == 6 ? power(s, 3) : Expression(row.volume) * power(s, 3)};
  statement.relations.push_back({*statement.volume, message("the volume is a fixed number times the edge cubed")});
}

FaceStatement face_of(const Row& row, const Symbol& s, const std::vector<geometry::Vec3>& corners) {
  static const std::map<int, std::string> nouns{{3, "equilateral triangle"}, {4, "square"}, {5, "regular pentagon"}};
  FaceStatement face;
  face.shape = nouns.at(row.corners_of_face);
  face.area = face_area(row.corners_of_face, s);
  face.lengths = {{s, "edge", corners[0], corners[1]}};
  const auto inner = inner_length(row.corners_of_face);
  const geometry::Vec3 foot = (corners[0] + corners[1]) * 0.5;
  if (!inner) {
    face.lengths.push_back({s, "edge", corners[1], corners[2]});
  } else if (row.corners_of_face == 3) {
    face.lengths.push_back({*inner, "height of the triangle", corners[2], foot, true});
  } else {
    geometry::Vec3 center{};
    for (const geometry::Vec3& corner : corners) {
      center += corner / static_cast<double>(corners.size());
    }
    face.lengths.push_back({*inner, "apothem", center, foot, true});
  }
  return face;
}

BodyStatement body_of(const Row& row, const Symbol& s, const algebra::Bindings& bindings) {
  const RegularShape shape = laid_down(row.shape());
  const double edge = double_of(bindings, s);
  BodyStatement body;
  for (const geometry::Vec3& vertex : shape.vertices) {
    body.vertices.push_back(vertex * edge);
  }
  body.loops = shape.loops;
  body.classic_hinges = shape.hinges;
  for (const auto& loop : body.loops) {
    std::vector<geometry::Vec3> corners;
    corners.reserve(loop.size());
    for (const std::size_t corner : loop) {
      corners.push_back(body.vertices[corner]);
    }
    body.faces.push_back(face_of(row, s, corners));
  }
  // The edge of the bottom that lies farthest in front.
  const auto& bottom = body.loops[0];
  Mark mark{s, "edge"};
  double nearest = 1e300;
  for (std::size_t i = 0; i < bottom.size(); ++i) {
    const geometry::Vec3 from = body.vertices[bottom[i]];
    const geometry::Vec3 to = body.vertices[bottom[(i + 1) % bottom.size()]];
    if (from.y + to.y < nearest) {
      nearest = from.y + to.y;
      mark.from = from;
      mark.to = to;
    }
  }
  body.marks = {mark};
  return body;
}

StatedSolid stated_regular_polyhedron(const Description& description, const ShapeStatement*) {
  const auto count = count_of(description, "faces");
  if (!count) {
    return failure(std::vector<Fault>{missing("faces", message("the number of faces is needed: 4, 6, 8, 12 or 20"))});
  }
  for (const Row& row : rows()) {
    if (row.faces != *count) {
      continue;
    }
    const Symbol s{"edge", "s", 1};
    SolidStatement statement;
    statement.name = row.name;
    statement.other_names = row.other_names;
    statement.family = row.family;
    statement.measures = {measure(s, "edge", "edge")};
    add_relations(statement, row, s);
    statement.body = [row, s](const algebra::Bindings& bindings) { return body_of(row, s, bindings); };
    return statement;
  }
  Fault fault = impossible(
      "faces", message("a regular polyhedron has 4, 6, 8, 12 or 20 faces, not {count}", {{"count", *count}}));
  int nearest = 4;
  for (const Row& row : rows()) {
    nearest = std::abs(row.faces - *count) < std::abs(nearest - *count) ? row.faces : nearest;
  }
  fault.nearest = std::to_string(nearest);
  return failure(std::vector<Fault>{fault});
}

Description example_with(int faces, const std::string& edge) {
  return example("regular polyhedron", {{"faces", faces}, {"edge", length_entry(edge)}});
}

}  // namespace

Kind regular_polyhedron() {
  Field faces;
  faces.key = "faces";
  faces.type = FieldType::Count;
  faces.title = "number of faces";
  faces.least = 4;
  faces.most = 20;
  return {"regular polyhedron",
          {faces, length_field("edge", "edge", "edge")},
          false,
          &stated_regular_polyhedron,
          {.is_all_alike = true},
          example_with(8, "7 cm"),
          {example_with(4, "9 cm"), example_with(12, "4 cm"), example_with(20, "5 cm")},
          {}};
}

}  // namespace fw::solids::kind
