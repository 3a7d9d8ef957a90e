#include "solids/solid_faces.hpp"

#include <algorithm>

#include "geometry/measure.hpp"
#include "geometry/tolerance.hpp"
#include "solids/kind_parts.hpp"

namespace fw::solids {

using geometry::Polyhedron;

namespace {

IdVector<MarkId, Mark> labelled_marks(const BodyStatement& body, const std::set<std::string>& labelled) {
  IdVector<MarkId, Mark> marks;
  for (const Mark& mark : body.marks) {
    if (labelled.count(mark.symbol.name) != 0) {
      marks.push_back(mark);
    }
  }
  return marks;
}

bool same_segment(Vec3 a, Vec3 b, Vec3 c, Vec3 d, double tolerance) {
  const auto near = [tolerance](Vec3 p, Vec3 q) { return glm::length(p - q) <= tolerance; };
  return (near(a, c) && near(b, d)) || (near(a, d) && near(b, c));
}

/// Says where the length's number is written, and moves the length to the face's own edge that carries it.
void find_origin(FaceLength& length, const IdVector<MarkId, Mark>& marks, const Body& body, FaceId face,
                 double tolerance) {
  for (std::size_t i = 0; i < marks.size(); ++i) {
    const Mark& mark = marks[MarkId::at(i)];
    if (!(mark.symbol == length.symbol)) {
      continue;
    }
    bool is_own =
        mark.face ? *mark.face == face.index() : same_segment(mark.from, mark.to, length.from, length.to, tolerance);
    const std::size_t first = body.first_facet(face).index();
    for (std::size_t facet = first; facet < first + body.facet_count(face); ++facet) {
      const std::vector<Vec3> corners = body.facets().corners(FaceId::at(facet));
      for (std::size_t j = 0; j < corners.size() && !is_own; ++j) {
        is_own = same_segment(mark.from, mark.to, corners[j], corners[(j + 1) % corners.size()], tolerance);
      }
    }
    length.mark = MarkId::at(i);
    length.origin = is_own ? LengthOrigin::OwnLabel : LengthOrigin::EqualEdge;
    if (is_own && !body.bends(face)) {
      length.from = mark.from;
      length.to = mark.to;
    }
    return;
  }
}

}  // namespace

std::optional<Surface> surface_of(const BodyStatement& body, const algebra::Bindings& used, const units::Unit& unit,
                                  const std::set<std::string>& labelled) {
  const std::optional<Polyhedron> polyhedron = polyhedron_of(body);
  if (!polyhedron) {
    return std::nullopt;
  }
  const std::optional<nets::HingeTree> net = net_of(body, *polyhedron, body.classic_hinges);
  ensure(net.has_value(), "a classic net is no tree of all faces");
  std::vector<std::size_t> counts;
  std::vector<std::optional<Vec3>> number_at;
  for (const FaceStatement& face : body.faces) {
    counts.push_back(face.facets);
    number_at.push_back(face.number_at);
  }
  Surface surface{Body(*polyhedron, counts, std::move(number_at)), {}, 0, labelled_marks(body, labelled), *net};
  const std::vector<std::size_t> groups = congruence_groups(surface.body);
  const double tolerance = geometry::rounding_when_laid * geometry::bounding_box(body.vertices).diagonal();
  for (std::size_t i = 0; i < body.faces.size(); ++i) {
    const FaceStatement& stated = body.faces[i];
    Face face;
    face.id = FaceId::at(i);
    face.role = stated.role;
    face.shape = stated.shape;
    face.group = GroupId::at(groups[i]);
    surface.group_count = std::max(surface.group_count, groups[i] + 1);
    face.work = stated.area;
    const auto area = algebra::evaluate(stated.area, used);
    ensure(area.has_value(), "the area of a face cannot be worked out from the measures");
    face.area = units::Area::of(*area, unit.to_the(2));
    for (const FaceLengthPlace& place : stated.lengths) {
      FaceLength length{place.symbol, place.title,     used.at(place.symbol.name), place.from,
                        place.to,     place.is_height, LengthOrigin::WorkedOut,    std::nullopt};
      find_origin(length, surface.marks, surface.body, face.id, tolerance);
      face.lengths.push_back(length);
    }
    surface.faces.push_back(face);
  }
  return surface;
}

}  // namespace fw::solids
