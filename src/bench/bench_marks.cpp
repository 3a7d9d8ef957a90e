#include "bench/bench_marks.hpp"

#include <algorithm>
#include <cmath>

#include "geometry/measure.hpp"
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

constexpr double closed_enough = 0.02;  // heights inside stand only while the solid is closed

/// Points nearer than this are the same.
double slack_of(const BenchPicture& picture) { return 1e-6 * picture.camera.distance; }

/// A length of the closed solid and the face that carries it while the net opens.
struct Carried {
  FaceId face;
  Vec3 from{}, to{};
};

/// An edge of this length on the outline of the net, where its label has room; the first in the order of the tree.
std::optional<Carried> on_outline(const MarkedSolid& marked, const Mark& mark, double slack) {
  for (const FaceId face : marked.net.order()) {
    for (const solids::FaceLength& length : marked.solid.faces()[face].lengths) {
      const auto side = length.symbol == mark.symbol && !length.is_height
                            ? marked.solid.body().edge_along(face, length.from, length.to, slack)
                            : std::nullopt;
      if (side && !marked.net.is_hinge(*side)) {
        return Carried{face, length.from, length.to};
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
  for (const FaceId face : marked.net.order()) {
    const auto side = marked.solid.body().edge_along(face, mark.from, mark.to, slack);
    if (side && !marked.net.is_hinge(*side)) {
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
      const Vec3 to = carried.carried(length->to);
      placed.push_back({id, carried.carried(length->from), to, carried.carried(length->to + mark.square_to) - to});
    }
  }
  return placed;
}

void add_lines(BenchPicture& picture, const MarkedSolid& marked, const std::vector<PlacedMark>& marks,
               const MarkWords& words, const Theme& theme) {
  const auto width = static_cast<float>(theme.sizes.edge);
  const double size = geometry::bounding_box({picture.camera.eye(), picture.camera.target}).diagonal() * 0.022;
  for (const PlacedMark& mark : marks) {
    const bool is_edge = marked.solid.marks()[mark.id].place == MarkPlace::Edge;
    const bool emphasized = words.emphasized[mark.id.index()];
    if (!is_edge || emphasized) {
      const float dash = is_edge ? 0 : width * 3;
      const float wide = emphasized ? width * 2.6F : width;
      const render::Stroke line{theme.ink, wide, dash, dash * 0.8F};
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

/// The edges in sight that the same letter stands for: the label may stand there as well, as on a drawing by hand.
/// Only while the solid is closed.
std::vector<Segment> others_in_sight(const BenchPicture& picture, const solids::Solid& solid, const Mark& mark) {
  const solids::Body& body = solid.body();
  const Vec3 eye = picture.camera.eye();
  std::vector<Segment> others;
  for (const solids::Face& face : solid.faces()) {
    for (const solids::FaceLength& length : face.lengths) {
      const auto side = length.symbol == mark.symbol && !length.is_height
                            ? body.edge_along(face.id, length.from, length.to, slack_of(picture))
                            : std::nullopt;
      if (!side) {
        continue;
      }
      const auto [left, right] = body.faces_at(*side);
      if (body.is_before(left, eye) || body.is_before(right, eye)) {
        others.push_back(on_screen(picture, length.from, length.to));
      }
    }
  }
  return others;
}

figures::LabelSurroundings surroundings(const BenchPicture& picture, const Theme& theme) {
  figures::LabelSurroundings around;
  around.viewport = picture.rect.inset(theme.sizes.space);
  around.gap = theme.sizes.space * 0.7;
  Vec2 sum{};
  double corners = 0;
  for (const auto& face : picture.look.faces) {
    around.faces.emplace_back();
    for (std::size_t i = 0; i < face.size(); ++i) {
      const Segment side = on_screen(picture, face[i], face[(i + 1) % face.size()]);
      around.lines.push_back(side);
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
  for (const PlacedMark& mark : marks) {
    const std::string& text = words.labels[mark.id.index()];
    requests.push_back({on_screen(picture, mark.from, mark.to), measure(text)});
    // A length that is spoken of keeps its edge, which is drawn thick.
    const Mark& told = marked.solid.marks()[mark.id];
    if (fold <= closed_enough && told.place == MarkPlace::Edge && !words.emphasized[mark.id.index()]) {
      requests.back().others = others_in_sight(picture, marked.solid, told);
    }
    picture.labels.push_back({text, {}, {}, words.emphasized[mark.id.index()], false});
  }
  const std::vector<figures::PlacedLabel> placed = figures::place_labels(requests, surroundings(picture, theme));
  for (std::size_t i = 0; i < placed.size(); ++i) {
    picture.labels[i].center = placed[i].center;
    picture.labels[i].leader = placed[i].leader;
    const Vec2 half = requests[i].size * 0.5;
    for (const Vec2& corner : {Vec2{-half.x, 0}, Vec2{half.x, 0}, Vec2{0, half.y}, Vec2{0, -half.y}}) {
      picture.labels[i].on_face = picture.labels[i].on_face || face_at(picture, placed[i].center + corner);
    }
  }
}

}  // namespace fw::bench
