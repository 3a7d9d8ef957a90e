#pragma once

#include <functional>
#include <set>
#include <string>
#include <vector>

#include "figures/face_style.hpp"
#include "figures/solid_figure.hpp"
#include "paper/flow.hpp"
#include "paper/page.hpp"
#include "words/message.hpp"

namespace fw::paper {

/// How pages are set, whatever stands on them.
struct PageStyle {
  PaperSize paper = paper_sizes().front();
  bool is_large = false;  ///< large print: 18 points, thicker lines, one problem a page

  [[nodiscard]] double em() const { return points(is_large ? 18 : 12); }
  [[nodiscard]] double small_em() const { return points(is_large ? 18 : 10); }
  [[nodiscard]] double heading_em() const { return points(is_large ? 22 : 16); }
  [[nodiscard]] double leading() const { return em() * (is_large ? 1.5 : 1.35); }
  [[nodiscard]] double thick() const { return is_large ? 1.5 : 1; }
  [[nodiscard]] figures::SolidFigureLook figure_look() const;
  [[nodiscard]] figures::Palette palette() const;  ///< black on white
};

/// What stands at the head and the foot of every page.
struct Furniture {
  std::string title;
  std::string version = {};    ///< "A", large in the corner; empty where there is only one
  std::string code = {};       ///< six letters that go by the content
  bool has_name_line = false;  ///< a line for name and date
};

/// A block: how high it is, and how it is drawn into its place.
struct Block {
  BlockSize size;
  std::function<void(PageCanvas&, const Rect&)> draw;
  std::string id = {};    ///< of the problem that it shows
  bool is_space = false;  ///< nothing is drawn: at the end it needs no page
};

/// What was printed, and what has to be told about it.
struct Printed {
  std::vector<Page> pages;
  std::set<char32_t> missing = {};           ///< characters that the type does not have
  std::vector<std::string> too_tall = {};    ///< ids of problems that have no room on one page
  std::vector<words::Message> remarks = {};  ///< what else a teacher has to know
  void add(Printed other);
};

/// A run of pages of one title: blocks in order, laid out when all are there.
class Packet {
 public:
  /// `fonts` must outlive the packet.
  /// `gap`: between blocks.
  Packet(const Fonts& fonts, PageStyle style, Furniture furniture, double gap = 4);

  [[nodiscard]] const PageStyle& style() const { return style_; }
  [[nodiscard]] double width() const { return style_.paper.printable().w; }
  /// The height for blocks on a page: the first one has the title, too.
  [[nodiscard]] double first_room() const;
  [[nodiscard]] double room() const;
  /// To measure texts with.
  [[nodiscard]] const PageCanvas& measure() const { return measure_; }

  void add(Block block) { blocks_.push_back(std::move(block)); }
  /// Lines of text, broken to the width; the space after it is that between blocks.
  void add_text(const std::string& text, double em, bool bold = false, bool keeps_with_next = false, double indent = 0);
  void add_space(double height);
  void begin_page();
  /// A problem that had to be parted, since it has no room on one page.
  void tell_too_tall(const std::string& id) { too_tall_.push_back(id); }

  [[nodiscard]] Printed printed() const;

 private:
  void draw_head(PageCanvas& canvas, bool is_first) const;
  void draw_foot(PageCanvas& canvas, std::size_t page, std::size_t pages) const;
  [[nodiscard]] double head_height(bool is_first) const;

  const Fonts* fonts_;
  PageStyle style_;
  Furniture furniture_;
  PageCanvas measure_;
  double gap_ = 4;
  std::vector<Block> blocks_;
  std::vector<std::string> too_tall_;
};

/// Draws lines of text down from the upper left corner of the rectangle.
void draw_lines(PageCanvas& canvas, const std::vector<std::string>& lines, const Rect& rect,
                const figures::TextStyle& style, double leading);
/// A rule to write on, at this baseline.
void draw_rule(PageCanvas& canvas, double x, double y, double width);

}  // namespace fw::paper
