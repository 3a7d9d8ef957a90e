#include "figures/formula_layout.hpp"

#include <algorithm>

#include "base/overload.hpp"
#include "figures/formula_box.hpp"
#include "figures/hatch.hpp"
#include "figures/typeset.hpp"

namespace fw::figures {
namespace {

using algebra::Notation;

constexpr double sign_space = 0.34;        // in ems, on both sides of a line's sign
constexpr double continued_gap = 0.3;      // between the lines of a sum that goes on
constexpr double least_text_contrast = 7;  // of text: WCAG 2.2, success criterion 1.4.6
constexpr float softest = 0.08F;           // share of a group's color behind its term, at least

/// A group's color with so much of the ground in it that the ink stands out.
Color soft_ground(const FaceStyle& style, const Palette& palette) {
  float share = 0.3F;
  Color soft = over(style.fill.with_opacity(share), palette.ground);
  while (share > softest && contrast(palette.ink, soft) < least_text_contrast) {
    share -= 0.02F;
    soft = over(style.fill.with_opacity(share), palette.ground);
  }
  return soft;
}

std::vector<Vec2> corners(const Rect& rect) {
  return {{rect.x, rect.y}, {rect.right(), rect.y}, {rect.right(), rect.bottom()}, {rect.x, rect.bottom()}};
}

void draw_band(Canvas& canvas, const FormulaBand& band, Vec2 by, const Palette& palette) {
  const FaceStyle style = face_style(solids::GroupId::at(band.group), palette);
  const Rect below = band.band.moved(by.x, by.y);
  const Color soft = soft_ground(style, palette);
  if (contrast(palette.ink, soft) >= least_text_contrast) {
    canvas.rounded(band.behind.moved(by.x, by.y), below.h * 0.4, soft, std::nullopt);
  }
  const double line = below.h * 0.1;
  canvas.polygon(corners(below), style.fill, std::nullopt);
  draw_hatch(canvas, corners(below.inset(line / 2)), style.hatch, below.h * 0.46, {style.hatch_ink, line});
  canvas.polygon(corners(below.inset(line / 2)), std::nullopt, Stroke{palette.ink, line});
}

void draw_item(Canvas& canvas, const FormulaItem& item, Vec2 by, const Palette& palette) {
  std::visit(
      Overload{
          [&](const FormulaText& text) {
            typeset(canvas, text.at + by, HAlign::Left, VAlign::Baseline, text.text, {text.em, palette.ink, text.bold});
          },
          [&](const FormulaStroke& stroke) {
            std::vector<Vec2> points = stroke.points;
            for (Vec2& point : points) point += by;
            canvas.polyline(points, {palette.ink, stroke.width});
          },
          [&](const FormulaArc& arc) {
            canvas.arc(arc.center + by, arc.radius, arc.from_rad, arc.to_rad, {palette.ink, arc.width});
          },
          [&](const FormulaBand& band) { draw_band(canvas, band, by, palette); },
          [&](const FormulaGap& gap) {
            canvas.rounded(gap.rect.moved(by.x, by.y), gap.rect.h * 0.12, palette.ground,
                           Stroke{palette.ink, gap.width});
          }},
      item);
}

// A sum cut before its signs into pieces that fit beside the line's own sign, where it can be.
std::vector<Notation> pieces_within(const Canvas& canvas, const Notation& side, double em, double width) {
  const auto is_plus = [](const Notation& part) {
    return part.kind == Notation::Kind::Sign && (part.text == "+" || part.text == "−");
  };
  if (side.kind != Notation::Kind::Row || side.canceled || side.group || side.source) return {side};
  std::vector<Notation> pieces{algebra::row({})};
  pieces.front().changed = side.changed;
  for (std::size_t from = 0; from < side.parts.size();) {
    std::size_t to = from + 1;
    while (to < side.parts.size() && !is_plus(side.parts[to])) ++to;
    Notation longer = pieces.back();
    longer.parts.insert(longer.parts.end(), side.parts.begin() + static_cast<std::ptrdiff_t>(from),
                        side.parts.begin() + static_cast<std::ptrdiff_t>(to));
    if (!pieces.back().parts.empty() && formula_box(canvas, longer, em).width > width) {
      // After an empty part the sign is one between terms, not one of a negative number.
      longer.parts.erase(longer.parts.begin(),
                         longer.parts.begin() + static_cast<std::ptrdiff_t>(pieces.back().parts.size()));
      longer.parts.insert(longer.parts.begin(), algebra::row({}));
      pieces.push_back(std::move(longer));
    } else {
      pieces.back() = std::move(longer);
    }
    from = to;
  }
  return pieces;
}

}  // namespace

FormulaLayout::FormulaLayout(const Canvas& canvas, const Notation& notation, double em)
    : box_(std::make_shared<const FormulaBox>(formula_box(canvas, notation, em))) {}

FormulaLayout::FormulaLayout(const Canvas& canvas, const algebra::NotationLine& line, double em, double width) {
  FormulaBox made = formula_box(canvas, line.left, em);
  const FormulaBox sign = text_box_of(canvas, line.sign, em, false);
  const double space = sign_space * em;
  const double sign_at = made.width > 0 ? made.width + space : 0;
  const double right_at = sign_at + sign.width + space;
  sign_middle_ = sign_at + sign.width / 2;
  made.put(sign, {sign_at, 0});
  std::vector<Notation> pieces{line.right};
  if (width > 0) pieces = pieces_within(canvas, line.right, em, width - right_at);
  made.put(formula_box(canvas, pieces.front(), em), {right_at, 0});
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    const FormulaBox next = formula_box(canvas, pieces[i], em);
    made.put(next, {right_at, made.below + continued_gap * em + next.above});
  }
  box_ = std::make_shared<const FormulaBox>(std::move(made));
}

Vec2 FormulaLayout::size() const { return {box_->width, box_->above + box_->below}; }
double FormulaLayout::baseline() const { return box_->above; }

std::vector<FormulaLayout::SourcedNumber> FormulaLayout::numbers(Vec2 top_left) const {
  std::vector<SourcedNumber> placed = box_->numbers;
  for (SourcedNumber& number : placed) number.rect = number.rect.moved(top_left.x, top_left.y + box_->above);
  return placed;
}

std::vector<Rect> FormulaLayout::blanks(Vec2 top_left) const {
  std::vector<Rect> placed = box_->blanks;
  for (Rect& blank : placed) blank = blank.moved(top_left.x, top_left.y + box_->above);
  return placed;
}

void FormulaLayout::draw(Canvas& canvas, Vec2 top_left, const Palette& palette) const {
  const Vec2 origin{top_left.x, top_left.y + box_->above};
  for (const FormulaItem& item : box_->items) draw_item(canvas, item, origin, palette);
}

FormulaPage set_down(const std::vector<FormulaLayout>& lines, double gap) {
  FormulaPage page;
  double sign = 0;
  for (const FormulaLayout& line : lines) sign = std::max(sign, line.sign_middle());
  for (const FormulaLayout& line : lines) {
    const double x = line.sign_middle() > 0 ? sign - line.sign_middle() : 0;
    const double y = page.places.empty() ? 0 : page.size.y + gap;
    page.places.push_back({x, y});
    page.size = {std::max(page.size.x, x + line.size().x), y + line.size().y};
  }
  return page;
}

}  // namespace fw::figures
