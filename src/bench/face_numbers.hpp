#pragma once

#include <optional>
#include <vector>

#include "bench/bench_picture.hpp"

namespace fw::bench {

/// The face that is drawn at a pixel of the viewport.
[[nodiscard]] std::optional<FaceId> face_behind(const BenchPicture& picture, geometry::Vec2 pixel);

/// Adds the numbers of faces that are in sight, each in a circle that takes a third of its face at most; one that would
/// be too small to be read so gets a leader, which lead_face_numbers() lays. `also_hidden`: those of the other faces
/// too, dashed. Of `faces` the places and sizes are set here.
void add_face_numbers(BenchPicture& picture, const solids::Body& body, const std::vector<FaceNumber>& faces,
                      bool also_hidden, const Theme& theme);
/// Puts the numbers with leaders beside the figure, clear of it, of the labels and of each other. Where the bench has
/// no room for one it goes onto its face.
void lead_face_numbers(BenchPicture& picture, const MeasureText& measure, const Theme& theme);

}  // namespace fw::bench
