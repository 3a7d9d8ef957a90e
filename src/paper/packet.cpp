#include "paper/packet.hpp"

#include <algorithm>

#include "words/message.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr double foot_height = 8;
constexpr double head_gap = 4;
constexpr double version_em = points(24);

}  // namespace

figures::SolidFigureLook PageStyle::figure_look() const {
  figures::SolidFigureLook look;
  look.edge *= thick();
  look.hidden *= thick();
  look.leader *= thick();
  look.text_size = em();
  return look;
}

figures::Palette PageStyle::palette() const {
  figures::Palette palette;
  palette.fills = figures::Fills::HatchOnly;
  palette.line_width = points(1) * thick();
  palette.text_size = em();
  return palette;
}

void Printed::add(Printed other) {
  for (Page& page : other.pages) {
    pages.push_back(std::move(page));
  }
  missing.insert(other.missing.begin(), other.missing.end());
  too_tall.insert(too_tall.end(), other.too_tall.begin(), other.too_tall.end());
  remarks.insert(remarks.end(), other.remarks.begin(), other.remarks.end());
}

Packet::Packet(const Fonts& fonts, PageStyle style, Furniture furniture, double gap)
    : fonts_(&fonts),
      style_(std::move(style)),
      furniture_(std::move(furniture)),
      measure_(fonts, style_.paper.width, style_.paper.height),
      gap_(gap) {}

double Packet::head_height(bool is_first) const {
  const double letter = furniture_.version.empty() ? 0 : version_em * figures::line_height;
  if (!is_first) {
    return letter;
  }
  const TextStyle style{style_.heading_em(), black, true};
  const double title_width = width() - (furniture_.version.empty() ? 0 : 2 * version_em);
  const auto lines = static_cast<double>(lines_of(measure_, furniture_.title, style, title_width).size());
  const double title = lines * style.size * figures::line_height;
  return std::max(letter, title) + (furniture_.has_name_line ? 2.2 * style_.em() : 0) + head_gap;
}

double Packet::room() const { return style_.paper.printable().h - foot_height - head_height(false); }
double Packet::first_room() const { return style_.paper.printable().h - foot_height - head_height(true); }

void Packet::add_text(const std::string& text, double em, bool bold, bool keeps_with_next, double indent) {
  const TextStyle style{em, black, bold};
  const double leading = em * style_.leading() / style_.em();
  std::vector<std::string> lines = lines_of(measure_, text, style, width() - indent);
  // A long text may go on in the next column or on the next page, after any line.
  const std::size_t most = std::max<std::size_t>(1, static_cast<std::size_t>(room() / leading));
  for (std::size_t first = 0; first < lines.size(); first += most) {
    const std::vector<std::string> part(
        lines.begin() + static_cast<std::ptrdiff_t>(first),
        lines.begin() + static_cast<std::ptrdiff_t>(std::min(first + most, lines.size())));
    Block block;
    block.size = {leading * static_cast<double>(part.size()), keeps_with_next, false};
    block.draw = [part, style, leading, indent](PageCanvas& canvas, const Rect& rect) {
      draw_lines(canvas, part, {rect.x + indent, rect.y, rect.w - indent, rect.h}, style, leading);
    };
    add(std::move(block));
  }
}

void Packet::add_space(double height) {
  add({{height, false, false}, [](PageCanvas&, const Rect&) {}, {}, true});
}

void Packet::begin_page() {
  add({{0, true, true}, [](PageCanvas&, const Rect&) {}, {}});
}

void Packet::draw_head(PageCanvas& canvas, bool is_first) const {
  const Rect box = style_.paper.printable();
  if (!furniture_.version.empty()) {
    canvas.text({box.right(), box.y}, HAlign::Right, VAlign::Top, furniture_.version, {version_em, black, true});
  }
  if (!is_first) {
    return;
  }
  const TextStyle title{style_.heading_em(), black, true};
  const double title_width = width() - (furniture_.version.empty() ? 0 : 2 * version_em);
  canvas.begin_part("title");
  draw_lines(canvas, lines_of(canvas, furniture_.title, title, title_width), box, title,
             title.size * figures::line_height);
  canvas.end_part();
  if (!furniture_.has_name_line) {
    return;
  }
  const TextStyle style{style_.em(), black};
  const double y = box.y + head_height(true) - head_gap - 0.6 * style_.em();
  const auto labelled = [&](const std::string& text, double from, double to) {
    canvas.text({from, y}, HAlign::Left, VAlign::Baseline, text, style);
    const double begin = from + canvas.text_size(text, style).x + 2;
    draw_rule(canvas, begin, y + 1, to - begin);
  };
  labelled(said(message("Name")), box.x, box.x + 0.6 * box.w);
  labelled(said(message("Date")), box.x + 0.65 * box.w, box.right());
}

void Packet::draw_foot(PageCanvas& canvas, std::size_t page, std::size_t pages) const {
  const Rect box = style_.paper.printable();
  const TextStyle style{style_.is_large ? style_.em() : points(9), black};
  words::Message text = message("page {page} of {pages}", {{"page", page + 1}, {"pages", pages}});
  if (!furniture_.version.empty()) {
    text = message("version {version} · {text}", {{"version", furniture_.version}, {"text", text}});
  }
  const double y = box.bottom() - 1;
  canvas.text({box.x, y}, HAlign::Left, VAlign::Bottom, said(text), style);
  if (!furniture_.code.empty()) {
    canvas.text({box.right(), y}, HAlign::Right, VAlign::Bottom,
                said(message("code {code}", {{"code", furniture_.code}})), style);
  }
}

Printed Packet::printed() const {
  std::vector<BlockSize> sizes;
  for (const Block& block : blocks_) {
    sizes.push_back(block.size);
  }
  const auto shows_nothing = [](const Block& block) { return block.is_space || block.size.height == 0; };
  for (std::size_t i = blocks_.size(); i > 0 && shows_nothing(blocks_[i - 1]); --i) {
    sizes.pop_back();
  }
  const std::vector<PlacedBlock> placed = flowed(sizes, {first_room(), room()}, gap_);
  const std::size_t pages = placed.empty() ? 1 : placed.back().page + 1;
  const Rect box = style_.paper.printable();
  Printed printed;
  printed.too_tall = too_tall_;
  std::size_t next = 0;
  for (std::size_t page = 0; page < pages; ++page) {
    PageCanvas canvas(*fonts_, style_.paper.width, style_.paper.height);
    draw_head(canvas, page == 0);
    const double top = box.y + head_height(page == 0);
    for (; next < placed.size() && placed[next].page == page; ++next) {
      blocks_[next].draw(canvas, {box.x, top + placed[next].y, box.w, blocks_[next].size.height});
    }
    draw_foot(canvas, page, pages);
    printed.missing.insert(canvas.missing().begin(), canvas.missing().end());
    printed.pages.push_back(std::move(canvas).take());
  }
  return printed;
}

void draw_lines(PageCanvas& canvas, const std::vector<std::string>& lines, const Rect& rect, const TextStyle& style,
                double leading) {
  double y = rect.y + leading / 2;
  for (const std::string& line : lines) {
    canvas.text({rect.x, y}, HAlign::Left, VAlign::Middle, line, style);
    y += leading;
  }
}

void draw_rule(PageCanvas& canvas, double x, double y, double width) {
  canvas.path({{x, y}, {x + width, y}}, false, {points(0.6), {}});
}

}  // namespace fw::paper
