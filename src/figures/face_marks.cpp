#include "figures/face_marks.hpp"

#include "figures/hatch.hpp"

namespace fw::figures {

std::string face_number(solids::FaceId face) { return std::to_string(face.index() + 1); }

void draw_number_circle(Canvas& canvas, Vec2 center, double radius, const std::string& number, const Palette& palette) {
  canvas.circle(center, radius, palette.ground, Stroke{palette.ink, palette.line_width * 0.8});
  const double size = number.size() > 1 ? radius * 1.05 : radius * 1.3;
  canvas.text(center, HAlign::Center, VAlign::Middle, number, {size, palette.ink});
}

void draw_face_chip(Canvas& canvas, const Rect& rect, const FaceStyle& style, const std::string& number,
                    const Palette& palette) {
  const std::vector<Vec2> square{
      {rect.x, rect.y}, {rect.right(), rect.y}, {rect.right(), rect.bottom()}, {rect.x, rect.bottom()}};
  canvas.polygon(square, style.fill, std::nullopt);
  draw_hatch(canvas, square, style.hatch, rect.w / 5, {style.hatch_ink, palette.line_width * 0.5});
  canvas.polygon(square, std::nullopt, Stroke{palette.ink, palette.line_width * 0.8});
  canvas.circle(rect.center(), rect.w * 0.36, palette.ground, std::nullopt);
  const double size = rect.w * (number.size() > 1 ? 0.45 : 0.56);
  canvas.text(rect.center(), HAlign::Center, VAlign::Middle, number, {size, palette.ink});
}

void draw_right_angle(Canvas& canvas, Vec2 corner, Vec2 toward_a, Vec2 toward_b, double size, const Stroke& stroke) {
  const Vec2 a = glm::normalize(toward_a - corner) * size;
  const Vec2 b = glm::normalize(toward_b - corner) * size;
  canvas.polyline({corner + a, corner + a + b, corner + b}, stroke);
}

}  // namespace fw::figures
