#include <algorithm>

#include "lessons/open_faces.hpp"
#include "paper/cutouts/cutout_drawing.hpp"
#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr double net_foot = 8;
constexpr double net_gap = 3;

double net_head(const SheetOptions& options) { return options.has_name_line ? 20 : 12; }

/// Where the net lies on a page.
Rect net_room(const PaperSize& paper, const SheetOptions& options) {
  const Rect box = paper.printable();
  const double head = net_head(options);
  return {box.x, box.y + head, box.w, box.h - head - legend_height - ruler_height - net_foot - net_gap};
}

/// One page of a net.
struct Tile {
  std::size_t column = 0, row = 0;
  Rect window{};  ///< of the net, y up
};

/// Whether a face, tab or tooth lies in part on this piece of the plane.
bool reaches_into(const FlatNet& net, const Rect& window) {
  const Polygon sheet{
      {window.x, window.y}, {window.right(), window.y}, {window.right(), window.bottom()}, {window.x, window.bottom()}};
  const auto lies_there = [&](const Polygon& part) { return !part.empty() && geometry::overlap(part, sheet); };
  return std::any_of(net.faces.begin(), net.faces.end(), lies_there) ||
         std::any_of(net.pairs.begin(), net.pairs.end(), [&](const GluedPair& one) { return lies_there(one.tab); }) ||
         std::any_of(net.rims.begin(), net.rims.end(), [&](const Rim& rim) {
           return std::any_of(rim.teeth.begin(), rim.teeth.end(),
                              [&](const Tooth& tooth) { return lies_there(tooth.shape); });
         });
}

std::vector<Tile> tiles_of(const Cutout& cutout, const Rect& room) {
  if (cutout.columns * cutout.rows == 1) {
    return {{}};
  }
  std::vector<Tile> tiles;
  for (std::size_t row = 0; row < cutout.rows; ++row) {
    for (std::size_t column = 0; column < cutout.columns; ++column) {
      const double top = cutout.size.y - static_cast<double>(row) * (room.h - tile_overlap);
      const Rect window{static_cast<double>(column) * (room.w - tile_overlap), top - room.h, room.w, room.h};
      if (reaches_into(cutout.net, window)) {
        tiles.push_back({column, row, window});
      }
    }
  }
  return tiles;
}

std::string tile_name(const Tile& tile) {
  return std::string(1, static_cast<char>('A' + tile.row)) + std::to_string(tile.column + 1);
}

/// The frame of a tile, the strip that is glued under its neighbor, and which of the pages it is.
void draw_tile_marks(PageCanvas& canvas, const Tile& tile, const Cutout& cutout, const Rect& room) {
  const Pen pen{0.25, {}};
  const TextStyle style{points(9), black};
  canvas.begin_part("tile");
  if (tile.column > 0) {
    canvas.path({{room.x + tile_overlap, room.y}, {room.x + tile_overlap, room.bottom()}}, false, pen);
  }
  if (tile.row > 0) {
    canvas.path({{room.x, room.y + tile_overlap}, {room.right(), room.y + tile_overlap}}, false, pen);
  }
  for (const double x : {room.x + (tile.column > 0 ? tile_overlap : 0),
                         room.right() - (tile.column + 1 < cutout.columns ? tile_overlap : 0)}) {
    for (const double y : {room.y + (tile.row > 0 ? tile_overlap : 0),
                           room.bottom() - (tile.row + 1 < cutout.rows ? tile_overlap : 0)}) {
      canvas.path({{std::max(room.x, x - 3), y}, {std::min(room.right(), x + 3), y}}, false, pen);
      canvas.path({{x, std::max(room.y, y - 3)}, {x, std::min(room.bottom(), y + 3)}}, false, pen);
    }
  }
  const double cell = 4;
  const double left = room.right() - cell * static_cast<double>(cutout.columns);
  const double top = room.y - cell * static_cast<double>(cutout.rows) - 1;
  for (std::size_t row = 0; row < cutout.rows; ++row) {
    for (std::size_t column = 0; column < cutout.columns; ++column) {
      const bool is_this = row == tile.row && column == tile.column;
      canvas.polygon({{left + cell * static_cast<double>(column), top + cell * static_cast<double>(row)},
                      {left + cell * static_cast<double>(column + 1), top + cell * static_cast<double>(row)},
                      {left + cell * static_cast<double>(column + 1), top + cell * static_cast<double>(row + 1)},
                      {left + cell * static_cast<double>(column), top + cell * static_cast<double>(row + 1)}},
                     is_this ? std::optional(black) : std::nullopt, figures::Stroke{black, 0.25});
    }
  }
  canvas.text({left - 2, top + 2}, HAlign::Right, VAlign::Middle,
              said(message("sheet {tile}: glue the strips under the lines", {{"tile", tile_name(tile)}})), style);
  canvas.end_part();
}

/// Draws one page of a net with everything round it.
class NetPage {
 public:
  NetPage(const lessons::Problem& problem, const Cutout& cutout, const SheetOptions& options)
      : problem_(problem),
        cutout_(cutout),
        options_(options),
        paper_(cutout.lies ? options.style.paper.lying() : options.style.paper) {}

  /// Requires: the canvas has the size of the paper, upright or lying as the net does.
  void draw(PageCanvas& canvas, const Tile& tile, const std::string& numbers, const std::string& foot) const {
    const Rect box = paper_.printable();
    const Rect room = net_room(paper_, options_);
    draw_head(canvas, box, numbers);
    const CutoutLook look{options_.has_letters, options_.has_lengths, options_.gaps == Gaps::None, options_.has_letters,
                          true};
    if (tile.window.w > 0) {
      canvas.push_clip(room);
      draw_cutout(canvas, problem_, cutout_, {room.x - tile.window.x, room.bottom() + tile.window.y}, look);
      canvas.pop_clip();
      draw_tile_marks(canvas, tile, cutout_, room);
    } else {
      const Vec2 at{room.x + (room.w - cutout_.size.x) / 2, room.bottom() - (room.h - cutout_.size.y) / 2};
      draw_cutout(canvas, problem_, cutout_, at, look);
    }
    const double below = room.bottom() + net_gap;
    draw_cutout_legend(canvas, {box.x, below, box.w, legend_height}, lines_on(problem_, cutout_));
    draw_check_ruler(canvas, {box.x, below + legend_height}, box.w);
    const TextStyle style{points(9), black};
    canvas.text({box.x, box.bottom() - 1}, HAlign::Left, VAlign::Bottom, foot, style);
  }

 private:
  void draw_head(PageCanvas& canvas, const Rect& box, const std::string& numbers) const {
    const TextStyle title{points(14), black, true};
    const TextStyle style{points(10), black};
    const std::string name = options_.has_letters ? ".  " + problem_.solid.name() : ".";
    const double room = 0.8 * box.w;  // the scale stands beside it
    const std::string head = lines_of(canvas, numbers + name, title, room).front();
    canvas.text({box.x, box.y}, HAlign::Left, VAlign::Top, head, title);
    const bool is_true_size = cutout_.scale.paper == cutout_.scale.thing;
    const std::string scale =
        said(is_true_size ? message("true size") : message("scale {scale}", {{"scale", cutout_.scale.text()}}));
    canvas.text({box.right(), box.y + 1}, HAlign::Right, VAlign::Top, scale, style);
    if (!options_.has_name_line) {
      return;
    }
    const double y = box.y + 15;
    const std::string label = said(message("Name"));
    canvas.text({box.x, y}, HAlign::Left, VAlign::Baseline, label, style);
    const double begin = box.x + canvas.text_size(label, style).x + 2;
    draw_rule(canvas, begin, y + 1, 0.45 * box.w - begin + box.x);
  }

  const lessons::Problem& problem_;
  const Cutout& cutout_;
  const SheetOptions& options_;
  PaperSize paper_;
};

CutoutWish wish_for(const SheetOptions& options) {
  const Rect upright = net_room(options.style.paper, options);
  const Rect lying = net_room(options.style.paper.lying(), options);
  return {upright.w, upright.h, lying.w, lying.h, options.only_usual_net, options.scale};
}

/// Problems with the very same net, by their places in the lesson: a page for all of them.
std::vector<std::vector<std::size_t>> same_nets(const lessons::Lesson& lesson) {
  std::vector<std::vector<std::size_t>> groups;
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    const lessons::Problem& problem = lesson.problems[i];
    const auto group = std::find_if(groups.begin(), groups.end(), [&](const std::vector<std::size_t>& one) {
      const lessons::Problem& first = lesson.problems[one.front()];
      return first.solid == problem.solid && lessons::open_faces(first) == lessons::open_faces(problem);
    });
    if (group == groups.end()) {
      groups.push_back({i});
    } else {
      group->push_back(i);
    }
  }
  return groups;
}

/// The pages of a net; `same`: of which problems it is.
Printed net_pages(const Fonts& fonts, const lessons::Lesson& lesson, const std::vector<std::size_t>& same,
                  const SheetOptions& options) {
  Printed printed;
  std::vector<std::string> numbers;
  std::vector<std::string> problems;
  for (const std::size_t number : same) {
    numbers.push_back(std::to_string(number + 1));
    problems.push_back(lesson.problems[number].id);
  }
  const lessons::Problem& problem = lesson.problems[same.front()];
  const auto cutout = best_cutout(problem, wish_for(options));
  if (!cutout) {
    for (const std::string& id : problems) {
      printed.remarks.push_back(message("Problem {id}: {reason}", {{"id", id}, {"reason", cutout.error()}}));
    }
    return printed;
  }
  if (problems.size() > 1) {
    printed.remarks.push_back(
        message("Problems {ids:and} have the same net, so it is printed once. Make {count} copies.",
                {{"ids", problems}, {"count", problems.size()}}));
  }
  const PaperSize paper = cutout->lies ? options.style.paper.lying() : options.style.paper;
  const NetPage page(problem, *cutout, options);
  const std::string foot =
      said(message("{title} · code {code}", {{"title", lesson.title}, {"code", lesson_code(lesson)}}));
  for (const Tile& tile : tiles_of(*cutout, net_room(paper, options))) {
    PageCanvas canvas(fonts, paper.width, paper.height);
    page.draw(canvas, tile, said(message("{numbers:,}", {{"numbers", numbers}})), foot);
    printed.missing.insert(canvas.missing().begin(), canvas.missing().end());
    printed.pages.push_back(std::move(canvas).take());
    printed.pages.back().summary =
        said(message("A net of {solid:a} with tabs, to cut out.", {{"solid", words::Noun{problem.solid.name()}}}));
  }
  return printed;
}

}  // namespace

void nets(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  for (const std::vector<std::size_t>& same : same_nets(lesson)) {
    work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(net_pages(fonts, lesson, same, options)); });
  }
}

}  // namespace fw::paper
