#pragma once

#include "app/bench/bench_picture.hpp"
#include "geometry/polyhedron.hpp"

namespace fw::app {

/// A face of a solid as it stands in a pose: carries points of the closed solid to where the face took them.
class PlacedFace {
 public:
  PlacedFace(const geometry::Polyhedron& polyhedron, const nets::Pose& pose, FaceId face);
  /// Where a point of the closed solid, moving with this face, stands now.
  [[nodiscard]] geometry::Vec3 carried(geometry::Vec3 point) const;
  /// Where a point of the face's plane (geometry::flat_face) stands now.
  [[nodiscard]] geometry::Vec3 at(geometry::Vec2 point) const;
  /// A point well inside the face, in its plane.
  [[nodiscard]] geometry::Vec2 label_point() const;

 private:
  geometry::FacePlane rest_;
  geometry::Polygon flat_;
  geometry::Vec3 origin_{}, right_{}, up_{}, normal_{};
};

/// What the lengths of the solid are labelled with, and which of them are told apart; one a mark.
struct MarkWords {
  std::vector<std::string> labels;
  std::vector<bool> emphasized;
};
/// Adds the heights, slant heights and their right-angle marks to the picture, and the labels of all lengths.
void add_marks(BenchPicture& picture, const Desk& desk, double fold, const MarkWords& words, const Theme& theme,
               const MeasureText& measure);

}  // namespace fw::app
