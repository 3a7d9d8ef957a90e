#include "paper/page.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "base/ensure.hpp"
#include "figures/typeset.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::Stroke;
using figures::TextStyle;
using figures::VAlign;

constexpr double gap_of_dash = 0.8;  // as figures::Stroke says

Pen pen_of(const Stroke& stroke) {
  Pen pen{stroke.width, {}};
  if (stroke.dash > 0) {
    pen.pattern = {stroke.dash, gap_of_dash * stroke.dash};
  }
  return pen;
}
std::optional<Pen> pen_of(const std::optional<Stroke>& stroke) {
  return stroke ? std::optional(pen_of(*stroke)) : std::nullopt;
}

// Points of an arc, so near that nobody sees its corners: they lie within a hundredth of a millimeter.
std::vector<Vec2> arc_points(Vec2 center, double radius, double from_rad, double to_rad) {
  constexpr double off = 0.01;
  const double step = radius > off ? 2 * std::acos(1 - off / radius) : std::numbers::pi / 4;
  const int count = std::max(2, static_cast<int>(std::ceil(std::abs(to_rad - from_rad) / step)));
  std::vector<Vec2> points;
  for (int i = 0; i <= count; ++i) {
    const double angle = from_rad + (to_rad - from_rad) * i / count;
    points.push_back(center + Vec2{std::cos(angle), std::sin(angle)} * radius);
  }
  return points;
}

bool is_control(char32_t c) { return c < 0x20 || (c >= 0x7F && c < 0xA0); }
// Marks that steer the direction of a text or join characters, and stand for nothing themselves.
bool is_invisible(char32_t c) {
  return (c >= 0x200B && c <= 0x200F) || (c >= 0x202A && c <= 0x202E) || (c >= 0x2060 && c <= 0x206F) ||
         (c >= 0xFE00 && c <= 0xFE0F) || c == 0xFEFF;
}

}  // namespace

const std::vector<PaperSize>& paper_sizes() {
  constexpr double inch_margin = 12.7;
  static const std::vector<PaperSize> table{{"letter", 215.9, 279.4, inch_margin, true},
                                            {"legal", 215.9, 355.6, inch_margin, true},
                                            {"tabloid", 279.4, 431.8, inch_margin, true},
                                            {"a4", 210, 297, 10, false},
                                            {"a3", 297, 420, 10, false}};
  return table;
}

const PaperSize* find_paper(std::string_view key) {
  const auto& all = paper_sizes();
  const auto found = std::find_if(all.begin(), all.end(), [&](const PaperSize& size) { return size.key == key; });
  return found == all.end() ? nullptr : &*found;
}

PageCanvas::PageCanvas(const Fonts& fonts, double width, double height) : fonts_(&fonts) {
  page_.width = width;
  page_.height = height;
}

void PageCanvas::begin_part(std::string name) { page_.items.emplace_back(PartItem{std::move(name)}); }
void PageCanvas::end_part() { page_.items.emplace_back(EndItem{}); }

void PageCanvas::path(std::vector<Vec2> points, bool closed, const Pen& pen) {
  page_.items.emplace_back(PathItem{std::move(points), closed, std::nullopt, pen});
}

void PageCanvas::line(Vec2 from, Vec2 to, const Stroke& stroke) { path({from, to}, false, pen_of(stroke)); }

void PageCanvas::polyline(const std::vector<Vec2>& points, const Stroke& stroke) {
  path(points, false, pen_of(stroke));
}

void PageCanvas::polygon(const std::vector<Vec2>& points, std::optional<Color> fill, std::optional<Stroke> stroke) {
  page_.items.emplace_back(PathItem{points, true, fill, pen_of(stroke)});
}

void PageCanvas::rounded(const Rect& rect, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) {
  constexpr double quarter = std::numbers::pi / 2;
  const double r = std::min({radius, rect.w / 2, rect.h / 2});
  std::vector<Vec2> points;
  for (int corner = 0; corner < 4; ++corner) {
    const Vec2 center{corner == 0 || corner == 3 ? rect.x + r : rect.right() - r,
                      corner < 2 ? rect.y + r : rect.bottom() - r};
    const std::vector<Vec2> bend = arc_points(center, r, (2 + corner) * quarter, (3 + corner) * quarter);
    points.insert(points.end(), bend.begin(), bend.end());
  }
  polygon(points, fill, stroke);
}

void PageCanvas::circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<Stroke> stroke) {
  page_.items.emplace_back(CircleItem{center, radius, fill, pen_of(stroke)});
}

void PageCanvas::arc(Vec2 center, double radius, double from_rad, double to_rad, const Stroke& stroke) {
  polyline(arc_points(center, radius, from_rad, to_rad), stroke);
}

void PageCanvas::text(Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) {
  const Vec2 size = text_size(text, style);
  const Rect box = figures::text_box(anchor, h, v, size, style.size);
  const Font& font = style.bold ? fonts_->bold : fonts_->regular;
  const std::string printed = printable_text(text);
  for (const char32_t character : characters(printed)) {
    if (!font.glyph(character)) {
      missing_.insert(character);
    }
  }
  if (!printed.empty()) {
    page_.items.emplace_back(
        TextItem{{box.x, box.y + figures::line_baseline * style.size}, printed, style.size, size.x, style.bold});
  }
}

Vec2 PageCanvas::text_size(std::string_view text, const TextStyle& style) const {
  const Font& font = style.bold ? fonts_->bold : fonts_->regular;
  double width = 0;
  for (const char32_t character : characters(printable_text(text))) {
    width += font.advance(font.glyph(character).value_or(0));
  }
  return {width * style.size, figures::line_height * style.size};
}

void PageCanvas::push_clip(const Rect& rect) { page_.items.emplace_back(ClipItem{rect}); }
void PageCanvas::pop_clip() { page_.items.emplace_back(EndItem{}); }

std::string printable_text(std::string_view text) {
  if (std::all_of(text.begin(), text.end(), [](char c) { return c >= ' ' && c < '\x7F'; })) {
    return std::string(text);
  }
  std::string printed;
  for (const char32_t character : characters(text)) {
    if (character == '\t') {
      printed += ' ';
    } else if (!is_control(character) && !is_invisible(character)) {
      printed += utf8(character);
    }
  }
  return printed;
}

std::vector<std::string> lines_of(const figures::Canvas& canvas, std::string_view text, const TextStyle& style,
                                  double width) {
  std::vector<std::string> lines;
  for (const std::string& line : figures::wrapped(canvas, text, style, width)) {
    if (figures::typeset_size(canvas, line, style).x <= width) {
      lines.push_back(line);
      continue;
    }
    std::string piece;
    double length = 0;
    for (const char32_t character : characters(line)) {
      const double advance = canvas.text_size(utf8(character), style).x;
      if (!piece.empty() && length + advance > width) {
        lines.push_back(std::exchange(piece, {}));
        length = 0;
      }
      piece += utf8(character);
      length += advance;
    }
    lines.push_back(piece);
  }
  return lines;
}

std::vector<std::pair<Vec2, Vec2>> dashes(const std::vector<Vec2>& points, const std::vector<double>& pattern) {
  std::vector<std::pair<Vec2, Vec2>> pieces;
  std::size_t place = 0;
  double left = pattern.front();
  for (std::size_t i = 0; i + 1 < points.size(); ++i) {
    const double length = glm::length(points[i + 1] - points[i]);
    double done = 0;
    while (done < length) {
      const double part = std::min(left, length - done);
      const auto at = [&](double along) { return points[i] + (points[i + 1] - points[i]) * (along / length); };
      if (place % 2 == 0) {
        pieces.emplace_back(at(done), at(done + part));
      }
      done += part;
      left -= part;
      if (left <= 1e-9) {
        place = (place + 1) % pattern.size();
        left = pattern[place];
      }
    }
  }
  return pieces;
}

namespace {

/// Draws items on another canvas, at another scale.
class Replay {
 public:
  Replay(figures::Canvas& canvas, Vec2 corner, double scale, double least_width)
      : canvas_(canvas), corner_(corner), scale_(scale), least_width_(least_width) {}

  void operator()(const PathItem& path) {
    std::vector<Vec2> points;
    for (const Vec2& point : path.points) {
      points.push_back(at(point));
    }
    if (path.fill) {
      canvas_.polygon(points, path.fill, std::nullopt);
    }
    if (!path.pen) {
      return;
    }
    if (path.closed) {
      points.push_back(points.front());
    }
    const Stroke stroke{black, wide(*path.pen)};
    if (path.pen->pattern.empty()) {
      canvas_.polyline(points, stroke);
      return;
    }
    std::vector<double> pattern = path.pen->pattern;
    for (double& length : pattern) {
      length = std::max(length * scale_, 2 * least_width_);
    }
    for (const auto& [from, to] : dashes(points, pattern)) {
      canvas_.line(from, to, stroke);
    }
  }
  void operator()(const CircleItem& circle) {
    const auto stroke = circle.pen ? std::optional(Stroke{black, wide(*circle.pen)}) : std::nullopt;
    canvas_.circle(at(circle.center), circle.radius * scale_, circle.fill, stroke);
  }
  void operator()(const TextItem& text) {
    canvas_.text(at(text.at), HAlign::Left, VAlign::Baseline, text.text, {text.size * scale_, black, text.bold});
  }
  void operator()(const PartItem&) { clips_.push_back(false); }
  void operator()(const ClipItem& clip) {
    const Vec2 low = at({clip.rect.x, clip.rect.y});
    canvas_.push_clip({low.x, low.y, clip.rect.w * scale_, clip.rect.h * scale_});
    clips_.push_back(true);
  }
  void operator()(const EndItem&) {
    ensure(!clips_.empty(), "a page ends a part that it did not begin");
    if (clips_.back()) {
      canvas_.pop_clip();
    }
    clips_.pop_back();
  }

 private:
  [[nodiscard]] Vec2 at(Vec2 p) const { return corner_ + p * scale_; }
  [[nodiscard]] double wide(const Pen& pen) const { return std::max(least_width_, pen.width * scale_); }

  figures::Canvas& canvas_;
  Vec2 corner_;
  double scale_, least_width_;
  std::vector<bool> clips_;  // of each open part: whether it is a clip
};

}  // namespace

void draw_page(figures::Canvas& canvas, const Page& page, Vec2 corner, double scale, double least_width) {
  Replay replay(canvas, corner, scale, least_width);
  for (const Item& item : page.items) {
    std::visit(replay, item);
  }
}

}  // namespace fw::paper
