#pragma once

#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <variant>
#include <vector>

#include "figures/canvas.hpp"
#include "paper/font.hpp"

namespace fw::paper {

using figures::Rect;
using figures::Vec2;

/// Millimeters of a size in points.
[[nodiscard]] constexpr double points(double pt) { return pt * 25.4 / 72; }

inline constexpr Color black{0, 0, 0, 1};
inline constexpr Color white{1, 1, 1, 1};

/// A kind of paper that a teacher can ask for; upright, in millimeters.
struct PaperSize {
  std::string key;  ///< "letter"
  double width = 0, height = 0;
  double margin = 0;          ///< kept free on each side, since printers leave it blank
  bool is_in_inches = false;  ///< squared paper and rulers go by inches
  [[nodiscard]] PaperSize lying() const { return {key, height, width, margin, is_in_inches}; }
  /// Everything is drawn inside.
  [[nodiscard]] Rect printable() const { return {margin, margin, width - 2 * margin, height - 2 * margin}; }
};
/// "letter", "legal", "tabloid", "a4", "a3". Source: ANSI/ASME Y14.1 and ISO 216, from memory; the margins: common
/// practice, no source.
[[nodiscard]] const std::vector<PaperSize>& paper_sizes();
[[nodiscard]] const PaperSize* find_paper(std::string_view key);

/// How a line is drawn on paper: black, its width in millimeters, and the lengths of its dashes and gaps in turn.
struct Pen {
  double width = points(1);
  std::vector<double> pattern = {};
  friend bool operator==(const Pen&, const Pen&) = default;
};

// What stands on a page, in the order in which it is drawn. Millimeters from the upper left corner, y down.
struct PathItem {
  std::vector<Vec2> points;
  bool closed = false;
  std::optional<Color> fill;
  std::optional<Pen> pen;
};
struct CircleItem {
  Vec2 center;
  double radius = 0;
  std::optional<Color> fill;
  std::optional<Pen> pen;
};
struct TextItem {
  Vec2 at;  ///< left end of the baseline
  std::string text;
  double size = 0, width = 0;
  bool bold = false;
};
/// All up to the matching EndItem belongs together: the cut lines of a net, a figure. Cutters and readers go by the
/// name.
struct PartItem {
  std::string name;
};
/// Nothing is drawn outside the rectangle up to the matching EndItem.
struct ClipItem {
  Rect rect;
};
struct EndItem {};
using Item = std::variant<PathItem, CircleItem, TextItem, PartItem, ClipItem, EndItem>;

/// A page as data: what is printed, shown before printing, and looked at by tests.
struct Page {
  double width = 0, height = 0;
  std::vector<Item> items;
  std::string summary = {};  ///< a sentence for readers that cannot see it
};

/// Pages are drawn onto this canvas. Its texts are as wide as on paper.
class PageCanvas final : public figures::Canvas {
 public:
  /// `fonts` must outlive the canvas.
  PageCanvas(const Fonts& fonts, double width, double height);

  [[nodiscard]] const Page& page() const { return page_; }
  [[nodiscard]] Page take() && { return std::move(page_); }
  /// Characters that the type does not have; a box stands for each of them.
  [[nodiscard]] const std::set<char32_t>& missing() const { return missing_; }

  void begin_part(std::string name);
  void end_part();
  void path(std::vector<Vec2> points, bool closed, const Pen& pen);

  [[nodiscard]] figures::CanvasUnit unit() const override { return figures::CanvasUnit::Millimeter; }
  void line(Vec2 from, Vec2 to, const figures::Stroke& stroke) override;
  void polyline(const std::vector<Vec2>& points, const figures::Stroke& stroke) override;
  void polygon(const std::vector<Vec2>& points, std::optional<Color> fill,
               std::optional<figures::Stroke> stroke) override;
  void rounded(const Rect& rect, double radius, std::optional<Color> fill,
               std::optional<figures::Stroke> stroke) override;
  void circle(Vec2 center, double radius, std::optional<Color> fill, std::optional<figures::Stroke> stroke) override;
  void arc(Vec2 center, double radius, double from_rad, double to_rad, const figures::Stroke& stroke) override;
  void text(Vec2 anchor, figures::HAlign h, figures::VAlign v, std::string_view text,
            const figures::TextStyle& style) override;
  [[nodiscard]] Vec2 text_size(std::string_view text, const figures::TextStyle& style) const override;
  void push_clip(const Rect& rect) override;
  void pop_clip() override;

 private:
  const Fonts* fonts_;
  Page page_;
  std::set<char32_t> missing_;
};

/// The text without control characters, as it is printed.
[[nodiscard]] std::string printable_text(std::string_view text);
/// The lines of a text that fit `width`, broken at spaces; a word that is wider than a line is broken anywhere.
[[nodiscard]] std::vector<std::string> lines_of(const figures::Canvas& canvas, std::string_view text,
                                                const figures::TextStyle& style, double width);

/// Draws a page on another canvas, such as a window's: a millimeter is `scale` of its units, the page's corner lies at
/// `corner`. Lines have `least_width` or more.
void draw_page(figures::Canvas& canvas, const Page& page, Vec2 corner, double scale, double least_width);

/// The pieces of a line that is drawn with a pattern. Shape: pairs of points.
[[nodiscard]] std::vector<std::pair<Vec2, Vec2>> dashes(const std::vector<Vec2>& points,
                                                        const std::vector<double>& pattern);

}  // namespace fw::paper
