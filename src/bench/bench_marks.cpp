#include "bench/bench_marks.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/measure.hpp"
#include "geometry/ray.hpp"
#include "solids/body/standing.hpp"

namespace fw::bench {

using namespace state;

namespace {

using figures::Segment;
using geometry::Vec2;
using geometry::Vec3;
using solids::Mark;
using solids::MarkId;
using solids::MarkPlace;

constexpr float thicker = 2.6F;         // times as thick
constexpr double closed_enough = 0.02;  // heights inside stand only while the solid is closed

/// Points nearer than this are the same.
double slack_of(const BenchPicture& picture) { return 1e-6 * picture.camera.distance; }

/// A length of the closed solid and the face that carries it while the net opens.
struct Carried {
  FaceId face;
  Vec3 from{}, to{};
  bool is_laid = false;  ///< given on the face laid flat
};

/// An edge of this length on the outline of the net, where its label has room; the first in the order of the tree.
std::optional<Carried> on_outline(const MarkedSolid& marked, const Mark& mark, double slack) {
  const solids::Body& body = marked.solid.body();
  for (const FaceId facet : marked.net.order()) {
    const FaceId face = body.face_of(facet);
    for (const solids::FaceLength& length : marked.solid.faces()[face].lengths) {
      if (!(length.symbol == mark.symbol) || length.is_height) {
        continue;
      }
      const auto side = body.bends(face) ? std::nullopt : body.edge_along(face, length.from, length.to, slack);
      if (body.bends(face) || (side && !marked.net.is_hinge(*side))) {
        return Carried{face, length.from, length.to, true};
      }
    }
  }
  return std::nullopt;
}

/// How a mark moves with the opening net; nothing for a height inside, which stands only in the closed solid.
std::optional<Carried> carrier(const MarkedSolid& marked, const Mark& mark, double slack) {
  if (mark.place == MarkPlace::Inside) {
    return std::nullopt;
  }
  if (mark.face) {
    return Carried{FaceId::at(*mark.face), mark.from, mark.to};
  }
  std::optional<Carried> first;
  for (const FaceId facet : marked.net.order()) {
    const FaceId face = marked.solid.body().face_of(facet);
    const auto side = marked.solid.body().edge_along(face, mark.from, mark.to, slack);
    if (side && !marked.net.is_hinge(*side) && !marked.solid.body().bends(face)) {
      return Carried{face, mark.from, mark.to};
    }
    if (side && !first) {
      first = Carried{face, mark.from, mark.to};
    }
  }
  const std::optional<Carried> outer = on_outline(marked, mark, slack);
  return outer ? outer : first;
}

struct PlacedMark {
  MarkId id;
  Vec3 from{}, to{}, square_to{};
};

std::vector<PlacedMark> placed_marks(const BenchPicture& picture, const MarkedSolid& marked, double fold) {
  const double slack = slack_of(picture);
  std::vector<PlacedMark> placed;
  for (std::size_t i = 0; i < marked.solid.marks().size(); ++i) {
    const MarkId id = MarkId::at(i);
    const Mark& mark = marked.solid.marks()[id];
    if (fold <= closed_enough) {
      placed.push_back({id, mark.from, mark.to, mark.square_to});
      continue;
    }
    if (const auto length = carrier(marked, mark, slack)) {
      const solids::PlacedFace carried(marked.solid.body(), picture.look.faces, length->face);
      if (length->is_laid) {
        placed.push_back({id, carried.laid(length->from), carried.laid(length->to), {}});
        continue;
      }
      const Vec3 to = carried.carried(length->to);
      placed.push_back({id, carried.carried(length->from), to, carried.carried(length->to + mark.square_to) - to});
    }
  }
  return placed;
}

/// Draws the lengths that are not edges, such as heights, and the right-angle marks.
void add_lines(BenchPicture& picture, const MarkedSolid& marked, const std::vector<PlacedMark>& marks,
               const MarkWords& words, const Theme& theme) {
  const auto width = static_cast<float>(theme.sizes.edge);
  const double size = geometry::bounding_box({picture.camera.eye(), picture.camera.target}).diagonal() * 0.022;
  for (const PlacedMark& mark : marks) {
    if (marked.solid.marks()[mark.id].place != MarkPlace::Edge) {
      const float wide = words.emphasized[mark.id.index()] ? width * thicker : width;
      const render::Stroke line{theme.ink, wide, width * 3, width * 2.4F};
      picture.look.lines.push_back({mark.from, mark.to, line, line});
    }
    if (glm::length(mark.square_to) > 0) {
      const render::Stroke thin{theme.ink, width * 0.75F, 0, 0};
      const double reach = std::min(size, glm::length(mark.from - mark.to) * 0.3);
      for (const render::LineLook& line :
           render::right_angle_mark(mark.to, mark.from - mark.to, mark.square_to, reach, thin, thin)) {
        picture.look.lines.push_back(line);
      }
    }
  }
}

Segment on_screen(const BenchPicture& picture, Vec3 from, Vec3 to) {
  const Vec2 shift{picture.rect.x, picture.rect.y};
  return {picture.camera.project(from, picture.viewport).pixel + shift,
          picture.camera.project(to, picture.viewport).pixel + shift};
}

/// A line between two corners, in space.
struct Side {
  Vec3 from{}, to{};
};

bool is_drawn(const BenchPicture& picture, std::size_t facet, std::size_t side) {
  return picture.drawn_sides.empty() || picture.drawn_sides[facet][side];
}

bool is_in_sight(const BenchPicture& picture, const Side& side) {
  constexpr double slack = 1e-6;
  for (const double place : {0.5, 0.07, 0.93, 0.3, 0.7}) {
    const Vec3 point = side.from + (side.to - side.from) * place;
    const geometry::Ray ray =
        picture.camera.ray_through(picture.camera.project(point, picture.viewport).pixel, picture.viewport);
    const auto hit = geometry::nearest_hit(picture.look.faces, ray);
    if (!hit || hit->distance > glm::distance(point, ray.origin) * (1 - slack)) {
      return true;
    }
  }
  return false;
}

/// Whether another letter stands for lines of this length too, so that the length alone does not tell which is meant.
bool is_shared(const solids::Solid& solid, const Mark& mark, double slack) {
  const double length = glm::distance(mark.from, mark.to);
  const auto& marks = solid.marks();
  return std::any_of(marks.begin(), marks.end(), [&](const Mark& other) {
    return !(other.symbol == mark.symbol) && std::abs(glm::distance(other.from, other.to) - length) < slack;
  });
}

/// The edges in sight that are as long: the label may stand there as well, as on a drawing by hand.
std::vector<Side> others_in_sight(const BenchPicture& picture, const solids::Solid& solid, const Mark& mark) {
  const double slack = slack_of(picture);
  const double length = glm::distance(mark.from, mark.to);
  std::vector<Side> others;
  for (const solids::Face& face : solid.faces()) {
    const solids::PlacedFace placed(solid.body(), picture.look.faces, face.id);
    for (const solids::FaceLength& told : face.lengths) {
      const bool is_edge =
          told.symbol == mark.symbol && !told.is_height && solid.body().edge_along(face.id, told.from, told.to, slack);
      const Side side{placed.laid(told.from), placed.laid(told.to)};
      if (is_edge && is_in_sight(picture, side)) {
        others.push_back(side);
      }
    }
  }
  if (is_shared(solid, mark, slack)) {
    return others;
  }
  for (std::size_t facet = 0; facet < picture.look.faces.size(); ++facet) {
    const std::vector<Vec3>& corners = picture.look.faces[facet];
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Side side{corners[i], corners[(i + 1) % corners.size()]};
      if (is_drawn(picture, facet, i) && std::abs(glm::distance(side.from, side.to) - length) < slack &&
          is_in_sight(picture, side)) {
        others.push_back(side);
      }
    }
  }
  return others;
}

bool is_among(const std::vector<Segment>& lines, const Segment& side) {
  constexpr double near = 0.5;
  return std::any_of(lines.begin(), lines.end(), [&](const Segment& other) {
    return (glm::distance(other.from, side.from) < near && glm::distance(other.to, side.to) < near) ||
           (glm::distance(other.from, side.to) < near && glm::distance(other.to, side.from) < near);
  });
}

void add_thick(BenchPicture& picture, const Side& side, const Theme& theme) {
  const render::Stroke line{theme.ink, static_cast<float>(theme.sizes.edge) * thicker, 0, 0};
  picture.look.lines.push_back({side.from, side.to, line, line});
}

/// Whether the first of these lines lies on a face that bends, where nothing is drawn.
bool is_on_smooth_face(const BenchPicture& picture, const std::vector<Side>& sides) {
  const double slack = slack_of(picture);
  const auto joins = [&](Vec3 a, Vec3 b) {
    return glm::distance(a, sides[0].from) < slack && glm::distance(b, sides[0].to) < slack;
  };
  for (std::size_t facet = 0; facet < picture.drawn_sides.size(); ++facet) {
    const std::vector<Vec3>& corners = picture.look.faces[facet];
    for (std::size_t i = 0; i < corners.size(); ++i) {
      const Vec3 next = corners[(i + 1) % corners.size()];
      if (!picture.drawn_sides[facet][i] && (joins(corners[i], next) || joins(next, corners[i]))) {
        return true;
      }
    }
  }
  return false;
}

figures::LabelSurroundings surroundings(const BenchPicture& picture, const Theme& theme) {
  figures::LabelSurroundings around;
  around.viewport = picture.rect.inset(theme.sizes.space);
  around.gap = theme.sizes.space * 0.7;
  Vec2 sum{};
  double corners = 0;
  for (std::size_t facet = 0; facet < picture.look.faces.size(); ++facet) {
    const std::vector<Vec3>& face = picture.look.faces[facet];
    around.faces.emplace_back();
    for (std::size_t i = 0; i < face.size(); ++i) {
      const Side edge{face[i], face[(i + 1) % face.size()]};
      const Segment side = on_screen(picture, edge.from, edge.to);
      if (is_drawn(picture, facet, i) && !is_among(around.lines, side) && is_in_sight(picture, edge)) {
        around.lines.push_back(side);  // once, though two faces have it; a label may cover what is behind a face
      }
      around.faces.back().push_back(side.from);
      sum += side.from;
      corners += 1;
    }
  }
  around.away_from = corners > 0 ? sum / corners : picture.rect.center();
  for (const render::LineLook& line : picture.look.lines) {
    around.lines.push_back(on_screen(picture, line.from, line.to));
  }
  for (const FaceNumber& number : picture.numbers) {
    around.discs.push_back({number.center, number.radius});
  }
  return around;
}

}  // namespace

void add_marks(BenchPicture& picture, const MarkedSolid& marked, double fold, const MarkWords& words,
               const Theme& theme, const MeasureText& measure) {
  const std::vector<PlacedMark> marks = placed_marks(picture, marked, fold);
  add_lines(picture, marked, marks, words, theme);
  std::vector<figures::LabelRequest> requests;
  std::vector<std::vector<Side>> sides;  // of each label: its own line, and others that it may stand at
  for (const PlacedMark& mark : marks) {
    const std::string& text = words.labels[mark.id.index()];
    const Mark& told = marked.solid.marks()[mark.id];
    sides.push_back({{mark.from, mark.to}});
    if (told.place == MarkPlace::Edge) {
      const std::vector<Side> others = others_in_sight(picture, marked.solid, told);
      sides.back().insert(sides.back().end(), others.begin(), others.end());
      if (is_on_smooth_face(picture, sides.back()) && sides.back().size() > 1) {
        sides.back().erase(sides.back().begin());  // nothing is drawn there: it stands at the outline
      }
    }
    requests.push_back({on_screen(picture, sides.back()[0].from, sides.back()[0].to), measure(text)});
    for (const std::string& later : words.later[mark.id.index()]) {  // room for all of them, so that none moves it
      requests.back().size = glm::max(requests.back().size, measure(later));
    }
    for (std::size_t i = 1; i < sides.back().size(); ++i) {
      requests.back().others.push_back(on_screen(picture, sides.back()[i].from, sides.back()[i].to));
    }
    picture.labels.push_back({text, {}, {}, words.emphasized[mark.id.index()], false, mark.id});
  }
  const std::vector<figures::PlacedLabel> placed = figures::place_labels(requests, surroundings(picture, theme));
  for (std::size_t i = 0; i < placed.size(); ++i) {
    picture.labels[i].center = placed[i].center;
    picture.labels[i].leader = placed[i].leader;
    if (picture.labels[i].emphasized && marked.solid.marks()[marks[i].id].place == MarkPlace::Edge) {
      // Thick are the edge that is spoken of and the one at which its label stands, so that the label stays there.
      add_thick(picture, sides[i].front(), theme);
      if (placed[i].segment > 0) {
        add_thick(picture, sides[i][placed[i].segment], theme);
      }
    }
    const Vec2 half = requests[i].size * 0.5;
    for (const Vec2& corner : {Vec2{-half.x, 0}, Vec2{half.x, 0}, Vec2{0, half.y}, Vec2{0, -half.y}}) {
      picture.labels[i].on_face = picture.labels[i].on_face || face_at(picture, placed[i].center + corner);
    }
  }
}

}  // namespace fw::bench
