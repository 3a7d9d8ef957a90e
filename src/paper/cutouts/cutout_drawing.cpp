#include "paper/cutouts/cutout_drawing.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "figures/face_style.hpp"
#include "figures/typeset.hpp"
#include "paper/cutouts/course.hpp"
#include "paper/cutouts/teeth.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr double mate_em = points(7);
constexpr double mate_inside = 3.2;

/// Dashes for a short fold, so that it begins and ends with one.
Pen short_fold_pen(const std::vector<Vec2>& line) {
  const double length = Course(line).length();
  const double gaps = std::max(1.0, std::floor(length / 4.5));
  const double unit = length / (3 * (gaps + 1) + 2 * gaps);
  return {fold_pen().width, {3 * unit, 2 * unit}};
}

/// Draws in millimeters of the net, y up.
class CutoutPen {
 public:
  CutoutPen(PageCanvas& canvas, const lessons::Problem& problem, const Cutout& cutout, Vec2 at)
      : canvas_(canvas), solid_(problem.solid), cutout_(cutout), at_(at) {}

  void draw(const CutoutLook& look) {
    canvas_.begin_part("cut");
    each_side([&](const FlatNet::Straight& side, const GluedPair* pair, bool is_fold) {
      if (!is_fold) cut(side.at, pair);
    });
    for (const Rim& rim : cutout_.net.rims) {
      for (const std::vector<Vec2>& stroke : cut_lines(rim)) line(stroke, cut_pen());
    }
    canvas_.end_part();
    fold_lines("fold-away", false);
    fold_lines("fold-toward", true);
    canvas_.begin_part("tab-fold");
    for (const GluedPair& pair : cutout_.net.pairs) {
      if (pair.tab_on) line({pair.tab[1], pair.tab[0]}, fold_pen());
    }
    for (const Rim& rim : cutout_.net.rims) {
      for (const Tooth& tooth : rim.teeth) line(tooth.foot, short_fold_pen(tooth.foot));
    }
    canvas_.end_part();
    canvas_.begin_part("text");
    if (look.has_mates) {
      mates();
      rim_mates();
    }
    faces(look);
    if (look.has_lengths) lengths();
    canvas_.end_part();
  }

 private:
  [[nodiscard]] Vec2 on_page(Vec2 p) const { return {at_.x + p.x, at_.y - p.y}; }
  void line(const std::vector<Vec2>& points, const Pen& pen) {
    std::vector<Vec2> placed;
    placed.reserve(points.size());
    for (const Vec2& p : points) placed.push_back(on_page(p));
    canvas_.path(placed, false, pen);
  }
  [[nodiscard]] const Polygon& polygon(FaceId face) const { return cutout_.net.faces[face.index()]; }
  [[nodiscard]] std::pair<Vec2, Vec2> ends(NetSide side) const {
    const Polygon& face = polygon(side.face);
    return {face[side.side], face[(side.side + 1) % face.size()]};
  }

  template <class F>
  void each_side(const F& f) const {
    for (const FlatNet::Straight& side : cutout_.net.straights) {
      const auto& folds = cutout_.net.folds;
      const bool is_fold = std::find(folds.begin(), folds.end(), side.edge) != folds.end();
      const auto pair = std::find_if(cutout_.net.pairs.begin(), cutout_.net.pairs.end(),
                                     [&](const GluedPair& one) { return one.edge == side.edge; });
      f(side, pair == cutout_.net.pairs.end() ? nullptr : &*pair, is_fold);
    }
  }

  /// A side that is cut: round its tab, if it has one.
  void cut(NetSide side, const GluedPair* pair) {
    const auto [from, to] = ends(side);
    if (pair == nullptr || !(pair->tab_on == side)) {
      line({from, to}, cut_pen());
      return;
    }
    line({from, pair->tab[1], pair->tab[2], pair->tab[3], pair->tab[0], to}, cut_pen());
  }

  void fold_lines(const char* name, bool is_toward) {
    canvas_.begin_part(name);
    each_side([&](const FlatNet::Straight& side, const GluedPair*, bool is_fold) {
      const bool is_other_way = is_fold && solids::opening_angle_rad(solid_.body(), side.edge) < 0;
      if (is_fold && is_other_way == is_toward && solid_.body().faces_at(side.edge).first == side.at.face) {
        const auto [from, to] = ends(side.at);
        line({from, to}, is_toward ? toward_pen() : fold_pen());
      }
    });
    for (const Rim& rim : cutout_.net.rims) {
      if (rim.from && !is_toward) line(bridge_of(rim), short_fold_pen(bridge_of(rim)));
    }
    canvas_.end_part();
  }

  void text(Vec2 at, const std::string& words, double em, bool bold = false) {
    canvas_.text(on_page(at), HAlign::Center, VAlign::Middle, words, {em, black, bold});
  }

  /// Equal numbers at sides that meet; in the tab, too.
  void mates() {
    for (std::size_t i = 0; i < cutout_.net.pairs.size(); ++i) {
      const GluedPair& pair = cutout_.net.pairs[i];
      const std::string number = std::to_string(i + 1);
      for (const NetSide side : {pair.a, pair.b}) {
        const auto [from, to] = ends(side);
        const Vec2 along = to - from;
        const Vec2 inward = glm::normalize(Vec2{-along.y, along.x});
        const Vec2 at = from + along * 0.32 + inward * mate_inside;
        const Vec2 other = from + along * 0.5 + inward * std::min(mate_inside, 0.2 * glm::length(along));
        text(geometry::contains(polygon(side.face), at) ? at : other, number, mate_em);
        if (pair.tab_on == side) {
          text((pair.tab[0] + pair.tab[1] + pair.tab[2] + pair.tab[3]) * 0.25, number, mate_em);
        } else if (!pair.tab_on) {
          const bool is_seam = pair.a.face == pair.b.face;  // its sides may lie a hair's breadth apart
          const Vec2 beside = is_seam ? inward * mate_inside : inward * -2.6;
          if (!is_seam || side == pair.a) text(from + along * 0.5 + beside, said(message("tape")), mate_em);
        }
      }
    }
  }

  /// The same number in a tooth and on the disk where that tooth comes.
  void rim_mates() {
    std::size_t number = cutout_.net.pairs.size();
    for (const Rim& rim : cutout_.net.rims) {
      if (!rim.is_glued()) continue;
      const std::string text_of_it = std::to_string(++number);
      if (rim.teeth.empty()) continue;
      // Above or below the middle of the disk, where its area is written.
      const Course course(rim.on_disk);
      const Vec2 middle = geometry::centroid(polygon(rim.disk));
      const auto place = [&](const Tooth& tooth) { return course.point((tooth.from + tooth.to) / 2); };
      const Tooth& tooth = *std::max_element(rim.teeth.begin(), rim.teeth.end(), [&](const Tooth& a, const Tooth& b) {
        return std::abs(place(a).y - middle.y) < std::abs(place(b).y - middle.y) - 1e-6;
      });
      text(geometry::centroid(tooth.shape), text_of_it, mate_em);
      text(place(tooth) + glm::normalize(middle - place(tooth)) * mate_inside, text_of_it, mate_em);
    }
  }

  [[nodiscard]] static double room_at(const Polygon& face, Vec2 p) {
    double room = 1e9;
    for (std::size_t i = 0; i < face.size(); ++i) {
      const Vec2& a = face[i];
      const Vec2 way = face[(i + 1) % face.size()] - a;
      const double share = std::clamp(glm::dot(p - a, way) / glm::dot(way, way), 0.0, 1.0);
      room = std::min(room, glm::length(p - a - way * share));
    }
    return room;
  }

  void faces(const CutoutLook& look) {
    for (const solids::Face& face : solid_.faces()) {
      const Polygon& shape = polygon(face.id);
      if (shape.empty()) continue;
      const Vec2 middle = geometry::label_point(shape);
      const double room = room_at(shape, middle);
      const double em = std::clamp(room * 0.7, points(9), points(14));
      const bool has_room = room > 0.9 * em;
      const std::string unit = solid_.unit().to_the(2).text();
      const std::string area = look.has_areas ? units::text(face.area, 2) : "";
      const TextStyle style{points(10), black};
      const double rule = 20;
      const double width =
          look.has_areas ? canvas_.text_size(area, style).x : rule + 2 + canvas_.text_size("A =  " + unit, style).x;
      const bool has_area = (look.has_areas || look.asks_areas) && std::hypot(width / 2, 1.6 * style.size) < room;
      if (look.has_letters && has_room && !has_area) has_middle_letter_.push_back(face.id);
      if (look.has_letters && has_room) {
        text(middle + Vec2{0, has_area ? 0.8 * em : 0}, figures::group_letter(face.group), em, true);
      }
      if (!has_area) continue;
      const Vec2 at = middle - Vec2{0, 1.0 * style.size};
      area_rows_.push_back(Rect{on_page(at).x, on_page(at).y, 0, 0}.inset(-width / 2, -0.65 * style.size));
      if (look.has_areas) {
        text(at, area, style.size);
        continue;
      }
      const Vec2 left = on_page(at - Vec2{width / 2, 0});
      canvas_.text(left, HAlign::Left, VAlign::Middle, "A =", style);
      const double begin = left.x + canvas_.text_size("A = ", style).x;
      draw_rule(canvas_, begin, left.y + 0.4 * style.size, rule);
      canvas_.text({begin + rule + 1, left.y}, HAlign::Left, VAlign::Middle, unit, style);
    }
  }

  /// Each length once in a group of congruent faces, inside the face.
  void lengths() {
    std::vector<std::pair<solids::GroupId, std::string>> told;
    for (const solids::Face& face : solid_.faces()) {
      const Polygon& shape = polygon(face.id);
      for (const solids::FaceLength& length : face.lengths) {
        if (length.is_height || shape.empty()) continue;
        const std::pair<solids::GroupId, std::string> key{face.group, length.symbol.name};
        if (std::find(told.begin(), told.end(), key) != told.end()) continue;
        const auto side = side_along(solid_.body(), face.id, length.from, length.to);
        if (!side) {
          if (radius_line(face, length)) told.push_back(key);
          continue;
        }
        if (length_label(face.id, *side, length)) told.push_back(key);
      }
    }
  }

  [[nodiscard]] std::string label_of(const solids::FaceLength& length) const {
    return length.mark ? solid_.label(*length.mark) : units::text(units::Length::of(length.value, solid_.unit()), 2);
  }

  /// The radius of a disk, from its middle to the right. Whether it had room.
  bool radius_line(const solids::Face& face, const solids::FaceLength& length) {
    const auto is_here = [&](const Rim& rim) { return rim.disk == face.id; };
    const auto& rims = cutout_.net.rims;
    const bool is_round = std::any_of(rims.begin(), rims.end(), is_here);
    const bool is_taken =
        std::find(has_middle_letter_.begin(), has_middle_letter_.end(), face.id) != has_middle_letter_.end();
    const std::string label = label_of(length);
    if (!is_round || is_taken || label == "?") return false;
    const TextStyle style{points(9), black};
    const Polygon& disk = polygon(face.id);
    const Vec2 middle = geometry::centroid(disk);
    const double radius = geometry::perimeter(disk) / (2 * std::numbers::pi);
    constexpr double letter = 3;  // its room on this side of the middle
    const double width = canvas_.text_size(label, style).x;
    if (letter + width + 2 > radius) return false;
    canvas_.circle(on_page(middle), 0.5, black, std::nullopt);
    line({middle, middle + Vec2{radius, 0}}, {points(0.6), {}});
    text(middle + Vec2{(letter + radius) / 2, 0.75 * style.size}, label, style.size);
    return true;
  }

  /// Whether it had room.
  bool length_label(FaceId face, std::size_t side, const solids::FaceLength& length) {
    const Polygon& shape = polygon(face);
    const TextStyle style{points(9), black};
    const std::string label = label_of(length);
    if (label == "?") return false;
    const Vec2& from = shape[side];
    const Vec2 along = shape[(side + 1) % shape.size()] - from;
    const Vec2 inward = glm::normalize(Vec2{-along.y, along.x});
    const Vec2 half{canvas_.text_size(label, style).x / 2, 0.55 * style.size};
    const double away = std::abs(inward.x) * half.x + std::abs(inward.y) * half.y + 1;
    // Beside the area of a face that is rolled there may be no room for both.
    const bool is_rolled = solid_.body().bends(face);
    for (const double share : is_rolled ? std::vector<double>{0.56, 0.25, 0.75} : std::vector<double>{0.56}) {
      const Vec2 at = from + along * share + inward * away;
      const Rect box{on_page(at).x - half.x, on_page(at).y - half.y, 2 * half.x, 2 * half.y};
      const bool is_taken = is_rolled && std::any_of(area_rows_.begin(), area_rows_.end(),
                                                     [&](const Rect& row) { return row.inset(-1).overlaps(box); });
      const std::vector<Vec2> corners{at + half, at - half, at + Vec2{half.x, -half.y}, at - Vec2{half.x, -half.y}};
      if (is_taken || !std::all_of(corners.begin(), corners.end(),
                                   [&](Vec2 corner) { return geometry::contains(shape, corner); })) {
        continue;
      }
      text(at, label, style.size);
      return true;
    }
    return false;
  }

  PageCanvas& canvas_;
  const solids::Solid& solid_;
  const Cutout& cutout_;
  Vec2 at_;
  std::vector<FaceId> has_middle_letter_;  ///< no room for the area below it
  std::vector<Rect> area_rows_;
};

/// How a face that bends is closed, and its disks put on.
words::Message rolling(const CutoutLines& lines) {
  const words::Message seam = lines.has_tape ? message("Roll the side round and tape the seam")
                                             : message("Roll the side round and glue the seam");
  if (lines.circles > 0 && lines.taped_circles > 0) {
    return message("{seam} first, then fold in the teeth, glue on the circle there, and tape on the other one.",
                   {{"seam", seam}});
  }
  if (lines.circles > 0) {
    return message("{seam} first, then fold in the teeth and glue on the {count:circle|circles}.",
                   {{"seam", seam}, {"count", lines.circles}});
  }
  return lines.taped_circles == 0 ? message("{seam}.", {{"seam", seam}})
                                  : message("{seam} first, then tape on the {count:circle|circles}.",
                                            {{"seam", seam}, {"count", lines.taped_circles}});
}

}  // namespace

Pen cut_pen() { return {points(1), {}}; }
Pen fold_pen() { return {points(0.75), {3, 2}}; }
Pen toward_pen() { return {points(0.75), {5, 1.5, 0.6, 1.5}}; }

CutoutLines lines_on(const lessons::Problem& problem, const Cutout& cutout) {
  CutoutLines lines;
  for (const EdgeId edge : cutout.net.folds) {
    lines.folds_toward = lines.folds_toward || solids::opening_angle_rad(problem.solid.body(), edge) < 0;
  }
  for (const Rim& rim : cutout.net.rims) {
    lines.is_rolled = lines.is_rolled || !rim.on_side.empty();
    if (rim.is_glued()) ++(rim.teeth.empty() ? lines.taped_circles : lines.circles);
  }
  lines.has_tape = cutout.net.taped() > 0;
  lines.has_tabs = cutout.net.taped() < cutout.net.pairs.size();
  return lines;
}

void draw_cutout(PageCanvas& canvas, const lessons::Problem& problem, const Cutout& cutout, Vec2 at,
                 const CutoutLook& look) {
  CutoutPen(canvas, problem, cutout, at).draw(look);
}

void draw_check_ruler(PageCanvas& canvas, Vec2 at, double width) {
  constexpr double inch = 25.4;
  const Pen pen{0.35, {}};
  const TextStyle style{points(9), black};
  canvas.begin_part("ruler");
  const auto bar = [&](double y, double length, double step, double tick) {
    canvas.path({{at.x, y}, {at.x + length, y}}, false, pen);
    for (double x = 0; x < length + 1e-6; x += step) {
      canvas.path({{at.x + x, y}, {at.x + x, y + tick}}, false, pen);
    }
  };
  bar(at.y + 3, 100, 10, -2.5);
  bar(at.y + 5, 4 * inch, inch / 2, 2.5);
  const double beside = at.x + 4 * inch + 3;
  canvas.text({beside, at.y + 2}, HAlign::Left, VAlign::Middle, said(message("100 mm")), style);
  canvas.text({beside, at.y + 6}, HAlign::Left, VAlign::Middle, said(message("4 in")), style);
  canvas.end_part();
  const double text_at = beside + 16;
  const std::vector<std::string> lines =
      lines_of(canvas, said(message("Measure these bars. If they are off, print again at 100%, actual size.")), style,
               at.x + width - text_at);
  draw_lines(canvas, lines, {text_at, at.y - 1, width, ruler_height}, style, 4);
}

void draw_cutout_legend(PageCanvas& canvas, const Rect& rect, const CutoutLines& lines) {
  const TextStyle style{points(10), black};
  double x = rect.x;
  const double y = rect.y + 2.5;
  const auto sample = [&](const Pen& pen, const words::Message& meaning) {
    constexpr double length = 14;
    canvas.path({{x, y}, {x + length, y}}, false, pen);
    const std::string text = said(meaning);
    canvas.text({x + length + 1.5, y}, HAlign::Left, VAlign::Middle, text, style);
    x += length + 1.5 + canvas.text_size(text, style).x + 6;
  };
  canvas.begin_part("legend");
  sample(cut_pen(), message("cut"));
  sample(fold_pen(), message("score, then fold back"));
  if (lines.folds_toward) {
    sample(toward_pen(), message("score, then fold toward you"));
  }
  std::vector<words::Message> what{message("The printed side ends up on the outside.")};
  if (lines.is_rolled) {
    what.push_back(message("Sides with the same number meet."));
    what.push_back(rolling(lines));
  } else if (lines.has_tabs) {
    what.push_back(message("Sides with the same number meet. Glue the tabs, the highest number last."));
  }
  if (lines.has_tape && !lines.is_rolled) {
    what.push_back(message("Tape the sides marked \"tape.\""));
  }
  what.push_back(message("Scissors and knives: follow your school's own safety rules."));
  const double leading = 4.4;
  draw_lines(canvas, lines_of(canvas, said(words::one_after_another(what)), style, rect.w),
             {rect.x, rect.y + 5, rect.w, rect.h}, style, leading);
  canvas.end_part();
}

}  // namespace fw::paper
