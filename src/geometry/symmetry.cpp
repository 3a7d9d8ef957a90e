#include "geometry/symmetry.hpp"

#include <algorithm>
#include <optional>

#include "geometry/measure.hpp"
#include "geometry/tolerance.hpp"

namespace fw::geometry {
namespace {

/// Where a face is laid: its corner k comes to corner `offset + k` of `target`, or `offset - k` in a mirror.
struct Placing {
  FaceId target;
  std::size_t offset = 0;
};

std::size_t side_of(const Polyhedron& polyhedron, FaceId face, EdgeId edge) {
  const std::vector<EdgeId>& sides = polyhedron.edges_of(face);
  return static_cast<std::size_t>(std::find(sides.begin(), sides.end(), edge) - sides.begin());
}

/// Tries one way to lay the first face on another and lets the rest of the surface follow.
class Attempt {
 public:
  Attempt(const Polyhedron& polyhedron, bool mirrored)
      : polyhedron_(polyhedron),
        mirrored_(mirrored),
        placings_(polyhedron.faces().size()),
        result_{IdVector<VertexId, VertexId>(polyhedron.vertices().size()),
                IdVector<EdgeId, EdgeId>(polyhedron.edges().size()),
                IdVector<FaceId, FaceId>(polyhedron.faces().size()), mirrored} {}

  [[nodiscard]] std::optional<Symmetry> from(Placing first) {
    if (!place(FaceId::at(0), first)) {
      return std::nullopt;
    }
    for (std::size_t next = 0; next < open_.size(); ++next) {
      if (!follow(open_[next])) {
        return std::nullopt;
      }
    }
    return result_;
  }

 private:
  bool place(FaceId face, Placing placing) {
    const Polyhedron::Loop& loop = polyhedron_.faces()[face];
    const Polyhedron::Loop& target = polyhedron_.faces()[placing.target];
    const std::size_t count = loop.size();
    if (target.size() != count) {
      return false;
    }
    placing.offset %= count;
    if (placings_[face]) {
      return placings_[face]->target == placing.target && placings_[face]->offset == placing.offset;
    }
    placings_[face] = placing;
    result_.face[face] = placing.target;
    open_.push_back(face);
    for (std::size_t k = 0; k < count; ++k) {
      result_.vertex[loop[k]] = target[(mirrored_ ? placing.offset + count - k : placing.offset + k) % count];
    }
    return true;
  }

  bool follow(FaceId face) {
    const Placing here = *placings_[face];
    const std::vector<EdgeId>& sides = polyhedron_.edges_of(face);
    const std::size_t count = sides.size();
    for (std::size_t k = 0; k < count; ++k) {
      const EdgeId image =
          polyhedron_.edges_of(here.target)[(mirrored_ ? here.offset + 2 * count - k - 1 : here.offset + k) % count];
      result_.edge[sides[k]] = image;
      const FaceId neighbor = polyhedron_.other_face(sides[k], face);
      const FaceId target = polyhedron_.other_face(image, here.target);
      const std::size_t side = side_of(polyhedron_, neighbor, sides[k]);
      const std::size_t target_side = side_of(polyhedron_, target, image);
      const std::size_t neighbor_count = polyhedron_.faces()[neighbor].size();
      const std::size_t offset = mirrored_ ? target_side + side + 1 : target_side + neighbor_count - side;
      if (!place(neighbor, {target, offset})) {
        return false;
      }
    }
    return true;
  }

  const Polyhedron& polyhedron_;
  bool mirrored_;
  IdVector<FaceId, std::optional<Placing>> placings_;
  std::vector<FaceId> open_;
  Symmetry result_;
};

/// Right, up and outward at a corner of a face; `mirrored` runs round the face the other way.
struct Frame {
  Vec3 origin, right, up, normal;
};
Frame frame_at(const Polyhedron& polyhedron, FaceId face, std::size_t corner, bool mirrored) {
  const std::vector<Vec3> corners = polyhedron.corners(face);
  const std::size_t count = corners.size();
  const Vec3& next = corners[(mirrored ? corner + count - 1 : corner + 1) % count];
  const Vec3 normal = polyhedron.normal(face);
  const Vec3 right = glm::normalize(next - corners[corner]);
  return {corners[corner], right, mirrored ? glm::cross(right, normal) : glm::cross(normal, right), normal};
}

/// Whether the motion that carries one frame to the other carries each edge to its image, each compared by its own
/// length.
bool is_motion(const Polyhedron& polyhedron, const Symmetry& symmetry, const Frame& from, const Frame& to,
               double blur) {
  const IdVector<VertexId, Vec3>& vertices = polyhedron.vertices();
  return std::all_of(polyhedron.edges().begin(), polyhedron.edges().end(), [&](const Edge& edge) {
    const Vec3 along = vertices[edge.to] - vertices[edge.from];
    const Vec3 moved = to.right * glm::dot(along, from.right) + to.up * glm::dot(along, from.up) +
                       to.normal * glm::dot(along, from.normal);
    const Vec3 image = vertices[symmetry.vertex[edge.to]] - vertices[symmetry.vertex[edge.from]];
    return glm::length(moved - image) <= tolerance * glm::length(along) + blur;
  });
}

}  // namespace

std::vector<Symmetry> symmetries(const Polyhedron& polyhedron) {
  std::vector<Symmetry> found;
  const double blur = rounding * bounding_box({polyhedron.vertices().begin(), polyhedron.vertices().end()}).diagonal();
  const FaceId first = FaceId::at(0);
  const std::size_t count = polyhedron.faces()[first].size();
  const Frame from = frame_at(polyhedron, first, 0, false);
  for (const bool mirrored : {false, true}) {
    for (std::size_t f = 0; f < polyhedron.faces().size(); ++f) {
      const FaceId target = FaceId::at(f);
      for (std::size_t offset = 0; offset < count && polyhedron.faces()[target].size() == count; ++offset) {
        const std::optional<Symmetry> way = Attempt(polyhedron, mirrored).from({target, offset});
        if (way && is_motion(polyhedron, *way, from, frame_at(polyhedron, target, offset, mirrored), blur)) {
          found.push_back(*way);
        }
      }
    }
  }
  return found;
}

}  // namespace fw::geometry
