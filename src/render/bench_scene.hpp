#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>
#include <vector>

#include "base/color.hpp"
#include "geometry/polygon.hpp"
#include "nets/folding.hpp"
#include "render/camera.hpp"

namespace fw::render {

using geometry::FaceId;
using geometry::Vec3;

/// How a line is drawn, in pixels of the screen.
struct Stroke {
  Color ink;
  float width_px = 2;
  float dash_px = 0;  ///< 0: an unbroken line
  float gap_px = 0;
  friend bool operator==(const Stroke&, const Stroke&) = default;
};

/// How a face is drawn.
struct FaceLook {
  Color fill;  ///< with its opacity: below 1, what lies behind shines through
  Hatch hatch = Hatch::None;
  Color hatch_ink;
  float hatch_period = 1;         ///< from line to line, in model units
  bool is_shown = true;           ///< a face that is not shown hides nothing and has no edges of its own
  double lift = 0;                ///< moved out along its normal by that many model units; never turned
  std::optional<Stroke> outline;  ///< round this face, in place of the look of its edges: for a face that is pointed at
};

/// A line of its own: a height, a slant height, a side of a right-angle mark, a hinge.
struct LineLook {
  Vec3 from{}, to{};
  Stroke stroke;                 ///< where no face is before it
  std::optional<Stroke> hidden;  ///< behind a face; nothing: not drawn there
};

/// Everything that is to be seen on the bench. The ground is not part of it: the caller clears.
struct BenchLook {
  nets::Pose faces;             ///< [face][corner], counterclockwise from outside
  std::vector<FaceLook> looks;  ///< one a face
  /// Each face's corners in a plane frame that moves with the face (geometry::flat_face), in which hatches run.
  /// Empty: every face gets a frame along its first side.
  std::vector<geometry::Polygon> flat_faces;
  /// [face][side]: the surface goes on there into the next face, so that the side is drawn only where one of both looks
  /// at the eye and the other away. Empty: every side is an edge.
  std::vector<std::vector<bool>> smooth;
  Stroke edge;
  std::optional<Stroke> hidden_edge;
  std::vector<LineLook> lines;
};

struct FillVertex {
  std::array<float, 3> position{};  ///< from Scene::origin, in model units
  std::array<float, 2> flat{};      ///< in the face's plane, in model units
};

/// One face as a run of triangles.
struct SceneFace {
  FaceId face;
  Vec3 normal{};              ///< outward
  std::vector<Vec3> corners;  ///< lifted where the look says so
  Color fill;                 ///< shaded already
  Hatch hatch = Hatch::None;
  Color hatch_ink;  ///< shaded already
  float hatch_period = 1;
  std::size_t first_vertex = 0;
  std::size_t vertex_count = 0;  ///< three a triangle
};

/// A line that becomes a quad on the screen.
struct SceneLine {
  std::array<float, 3> from{}, to{};  ///< from Scene::origin
  Stroke stroke;
};

/// What is to be drawn, in this order: the faces as listed, then the hidden lines, then the visible lines.
struct Scene {
  Camera camera;
  Vec3 origin{};                 ///< the camera's target: floats keep their digits near it
  std::vector<SceneFace> faces;  ///< what lies behind comes first
  std::vector<FillVertex> vertices;
  std::vector<SceneLine> hidden_lines;   ///< drawn only where a face is before them
  std::vector<SceneLine> visible_lines;  ///< drawn only where none is
};

/// Shape:    faces that cover each other come in the right order from this camera, for any pose whose faces do
///           not pass through each other and do not cover each other in a circle.
/// Requires: one look a face, faces of 3 corners or more; flat_faces empty or one a face.
/// Cost:     the square of the number of faces.
[[nodiscard]] Scene bench_scene(const BenchLook& look, const Camera& camera);

/// Of each face the sides that show as lines: all but the smooth ones, and of those the ones on the outline.
[[nodiscard]] std::vector<std::vector<bool>> drawn_sides(const BenchLook& look, const Camera& camera);

/// The color of a face in the light that is fixed to the camera: 0.82 to 1 times the fill, from either side.
/// Labels on a face take their contrast from it.
[[nodiscard]] Color shaded(const Color& color, Vec3 normal, const Camera& camera);

/// A quarter-turn mark at `corner` between two directions: two short lines. Source: common practice, no source.
[[nodiscard]] std::vector<LineLook> right_angle_mark(Vec3 corner, Vec3 one_way, Vec3 other_way, double size,
                                                     const Stroke& stroke, const std::optional<Stroke>& hidden);

}  // namespace fw::render
