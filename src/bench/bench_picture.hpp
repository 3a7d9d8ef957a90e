#pragma once

#include <functional>
#include <optional>
#include <string>
#include <vector>

#include "figures/label_layout.hpp"
#include "render/bench_scene.hpp"
#include "state/derived.hpp"
#include "theme/theme.hpp"

namespace fw::bench {

using geometry::EdgeId;
using geometry::FaceId;
using state::Derived;
using state::Desk;
using state::Model;
using theme::Theme;

/// A dimension label on the bench, placed.
struct BenchLabel {
  std::string text;
  figures::Vec2 center{};  ///< pixels of the window
  std::optional<figures::Segment> leader;
  bool emphasized = false;               ///< a length of the picked face
  bool on_face = false;                  ///< lies over a face, not beside the figure
  std::optional<solids::MarkId> mark{};  ///< of the solid, that it measures; none on card
};

/// The number of a face, in its circle.
struct FaceNumber {
  FaceId face;
  figures::Vec2 center{};
  double radius = 0;
  std::string text;
  bool counted = false;
  bool is_behind = false;                    ///< of a face out of sight
  std::optional<figures::Segment> leader{};  ///< from the circle to the face, where the circle stands beside the figure
};

/// A mark on card: the letter of a candidate or a place, the number of a piece.
struct BenchSpot {
  figures::Vec2 center{};
  std::string text;
  enum class Look { Plain, Right, Bad } look = Look::Plain;
  std::optional<std::size_t> option;  ///< that a click on it chooses
};

/// Everything that the bench shows, as data: what is drawn in space, and the texts over it.
struct BenchPicture {
  render::BenchLook look;
  std::vector<FaceId> faces;  ///< beside look.faces: the face that each facet belongs to; on card, the piece
  std::vector<std::vector<bool>> drawn_sides;  ///< of look.faces: those that show as lines; empty: all
  render::Camera camera;
  render::Viewport viewport;
  figures::Rect rect;  ///< where it stands in the window
  std::vector<BenchLabel> labels;
  std::vector<FaceNumber> numbers;
  std::vector<BenchSpot> spots;
  double spot_radius = 0;
  std::optional<figures::Rect> beside;  ///< the card, or below it: the solid that it should fold into
};

/// Width and height in pixels of a label with this text, without the empty line space above and below.
using MeasureText = std::function<figures::Vec2(const std::string&)>;
/// Lives no longer than `canvas`.
[[nodiscard]] MeasureText label_measure(const figures::Canvas& canvas, const Theme& theme);

/// Pure: the same model and rectangle give the same picture.
[[nodiscard]] BenchPicture bench_picture(const Model& model, const Derived& derived, const Theme& theme,
                                         const figures::Rect& rect, const MeasureText& measure);

/// The face under a pixel of the window, if any.
[[nodiscard]] std::optional<FaceId> face_at(const BenchPicture& picture, figures::Vec2 pixel);

/// The option whose spot lies under a pixel of the window, if any.
[[nodiscard]] std::optional<std::size_t> option_at(const BenchPicture& picture, figures::Vec2 pixel);

/// Draws the labels, leaders, spots and face numbers.
void draw_bench_texts(figures::Canvas& canvas, const BenchPicture& picture, const Theme& theme);

}  // namespace fw::bench
