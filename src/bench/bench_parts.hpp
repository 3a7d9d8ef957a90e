#pragma once

#include <vector>

#include "bench/bench_picture.hpp"
#include "tasks/quiz/cutouts.hpp"

// What the pictures of the bench share. Private to its folder.
namespace fw::bench {

[[nodiscard]] std::vector<geometry::Vec3> points_of(const nets::Pose& pose);
/// What stands there fills the bench, at every place of the fold: the eye goes back as the net opens, because the
/// slider leads it and never by itself. `margin`: left free on each side, in pixels. `turn`: how far it is turned and
/// tilted, in radians.
[[nodiscard]] render::Camera camera_for(const Model& model, const Derived& derived, const nets::Pose& pose,
                                        const render::Viewport& viewport, geometry::Vec2 margin, geometry::Vec2 turn);
/// Widths and dashes in pixels.
[[nodiscard]] render::Stroke stroke(const Color& ink, double width, double dash = 0);

/// Card: one cut-out at any place of its fold, or several side by side, with what is asked about them.
/// Requires: derived.cutouts.
[[nodiscard]] BenchPicture cutout_picture(const Model& model, const Derived& derived, const Theme& theme,
                                          const figures::Rect& rect, const MeasureText& measure);
/// Adds to flat card the lengths of its outline, each length once, clear of its edges and of the spots.
/// `card`: the pose of the one cut-out that lies there.
void add_card_lengths(BenchPicture& picture, const tasks::CutoutBench& bench, const nets::Pose& card,
                      const Theme& theme, const MeasureText& measure);

}  // namespace fw::bench
