#include <algorithm>
#include <cmath>

#include "bench/bench_parts.hpp"
#include "geometry/measure.hpp"
#include "geometry/ray.hpp"
#include "solids/body/body_nets.hpp"

// Card on the bench: flat as a task lays it, folded as far as it goes.
namespace fw::bench {

using namespace state;

namespace {

using figures::Rect;
using geometry::Polygon;
using geometry::Vec2;
using geometry::Vec3;
using nets::PieceEdge;
using nets::PieceId;
using tasks::CutoutBench;
using tasks::CutoutPlace;
using tasks::LyingCutout;

// Left free on each side of the card, in label sizes: with lengths round it, and without.
constexpr double card_lengths_room = 1.1;
constexpr double bare_card_room = 0.55;
constexpr double misfit_end = 0.07;  // card that does not close stops short, so that its pieces can be told apart
constexpr float piece_opacity = 0.92F;
constexpr double hatch_lines = 30;  // across what lies there
constexpr double gap_share = 0.16;  // between candidates, of their size
// Of the bench, for the solid beside it, or below it where the bench is upright.
constexpr double solid_share = 0.27;
constexpr double solid_share_below = 0.42;

/// A frame that a rigid polygon carries: its first corner, along its first side, and square to it in and out.
struct Frame {
  Vec3 origin{}, along{}, across{}, normal{};
};

Frame frame_of(const std::vector<Vec3>& polygon) {
  Frame frame;
  frame.origin = polygon[0];
  frame.along = glm::normalize(polygon[1] - polygon[0]);
  Vec3 normal{};
  for (std::size_t i = 0; i < polygon.size(); ++i) {
    normal += glm::cross(polygon[i] - polygon[0], polygon[(i + 1) % polygon.size()] - polygon[0]);
  }
  frame.normal = glm::normalize(normal);
  frame.across = glm::cross(frame.normal, frame.along);
  return frame;
}

std::vector<Vec3> on_table(const Polygon& polygon) {
  std::vector<Vec3> points;
  for (const Vec2& corner : polygon) {
    points.emplace_back(corner.x, corner.y, 0.0);
  }
  return points;
}

/// The pose moved as a whole so that its first piece comes to lie as `first` does.
void carry(nets::Pose& pose, const std::vector<Vec3>& first) {
  const Frame from = frame_of(pose.front());
  const Frame to = frame_of(first);
  for (std::vector<Vec3>& piece : pose) {
    for (Vec3& corner : piece) {
      const Vec3 from_origin = corner - from.origin;
      corner = to.origin + to.along * glm::dot(from_origin, from.along) +
               to.across * glm::dot(from_origin, from.across) + to.normal * glm::dot(from_origin, from.normal);
    }
  }
}

/// Where a cut-out goes on the table.
struct Place {
  Vec2 shift{};
  double scale = 1;  ///< before it is shifted
};

/// A cut-out on the table, folded toward the eye: card can be folded either way.
/// Shape: [piece][corner], corners as in the piece's shape.
nets::Pose placed_card(const LyingCutout& card, const solids::Solid& solid, double amount, const Place& place) {
  const std::vector<Polygon> flat = nets::lying(card.cutout, card.turn_rad, card.flipped);
  nets::Pose pose;
  if (amount >= 1) {
    for (const Polygon& piece : flat) {
      pose.push_back(on_table(piece));
    }
  } else {
    pose = solids::pose(solid.body(), card.cutout, card.test, amount);
    carry(pose, on_table(flat.front()));
    double height = 0;
    for (const Vec3& point : points_of(pose)) {
      height += point.z;
    }
    for (std::vector<Vec3>& piece : pose) {
      for (Vec3& corner : piece) {
        corner.z = height < 0 ? -corner.z : corner.z;
      }
    }
  }
  for (std::vector<Vec3>& piece : pose) {
    for (Vec3& corner : piece) {
      corner = corner * place.scale + Vec3{place.shift.x, place.shift.y, 0};
    }
  }
  return pose;
}

Rect extent(const std::vector<Polygon>& pieces) {
  std::vector<Vec2> points;
  for (const Polygon& piece : pieces) {
    points.insert(points.end(), piece.begin(), piece.end());
  }
  return figures::bounding_rect(points);
}

/// Where each candidate goes: rows of cells of one size, the first row at the top; y up. Each fills its cell, so that
/// none is too small to be read; within itself it is drawn to scale.
std::vector<Place> places(const std::vector<Rect>& extents) {
  double width = 0;
  double height = 0;
  for (const Rect& one : extents) {
    width = std::max(width, one.w);
    height = std::max(height, one.h);
  }
  const auto columns = static_cast<std::size_t>(std::ceil(std::sqrt(static_cast<double>(extents.size()))));
  const double gap = gap_share * std::max(width, height);
  std::vector<Place> all;
  for (std::size_t i = 0; i < extents.size(); ++i) {
    const std::size_t column = i % columns;
    const std::size_t row = i / columns;
    const Vec2 middle{static_cast<double>(column) * (width + gap), -static_cast<double>(row) * (height + gap)};
    const double scale = std::min(width / extents[i].w, height / extents[i].h);
    all.push_back({middle - extents[i].center() * scale, scale});
  }
  return all;
}

/// Which sort a piece is of, by its number of corners: no color tells which of them fit.
solids::GroupId sort_of(const nets::Piece& piece) {
  constexpr std::size_t fewest_corners = 3;
  return solids::GroupId::at(piece.shape.size() - fewest_corners);
}

bool is_bad(const CutoutBench& bench, std::size_t piece) {
  return std::find(bench.bad.begin(), bench.bad.end(), PieceId::at(piece)) != bench.bad.end();
}

render::FaceLook look_of(solids::GroupId sort, bool is_bad, const Theme& theme) {
  const figures::FaceStyle style = figures::face_style(sort, theme.palette());
  render::FaceLook look;
  look.fill = style.fill.with_opacity(piece_opacity);
  look.hatch = style.hatch;
  look.hatch_ink = style.hatch_ink.with_opacity(piece_opacity);
  if (is_bad) {
    look.outline = stroke(theme.bad, theme.sizes.edge * 2.6);
  }
  return look;
}

/// Card on the table, and where what stands beside it goes.
struct Table {
  std::vector<nets::Pose> cards;  ///< one a cut-out, corners as in its shapes
  std::optional<std::vector<Vec3>> missing;
};

Table laid(const CutoutBench& bench, double amount) {
  std::vector<Rect> extents;
  for (const LyingCutout& card : bench.lying) {
    extents.push_back(extent(nets::lying(card.cutout, card.turn_rad, card.flipped)));
  }
  const std::vector<Place> all = places(extents);
  Table table;
  for (std::size_t i = 0; i < bench.lying.size(); ++i) {
    table.cards.push_back(placed_card(bench.lying[i], bench.solid, amount, all[i]));
  }
  if (bench.missing) {  // to the right of the card
    const Rect& card = extents.front();
    const Rect piece = extent({*bench.missing});
    const Vec2 right{all.front().shift.x + card.center().x + card.w / 2 + gap_share * card.w - piece.x,
                     all.front().shift.y + card.center().y - piece.center().y};
    table.missing = on_table(*bench.missing);
    for (Vec3& corner : *table.missing) {
      corner += Vec3{right.x, right.y, 0};
    }
  }
  return table;
}

/// Adds the faces; which way round they run does not matter for card that is seen from both sides.
void add_faces(BenchPicture& picture, const CutoutBench& bench, const Table& table, const Theme& theme) {
  for (std::size_t i = 0; i < bench.lying.size(); ++i) {
    const auto& pieces = bench.lying[i].cutout.pieces();
    for (std::size_t p = 0; p < pieces.size(); ++p) {
      picture.look.faces.push_back(table.cards[i][p]);
      picture.look.looks.push_back(look_of(sort_of(pieces[PieceId::at(p)]), is_bad(bench, p), theme));
    }
  }
  if (table.missing) {
    picture.look.faces.push_back(*table.missing);
    picture.look.looks.push_back(look_of(sort_of({*bench.missing}), false, theme));
    picture.look.looks.back().outline = stroke(theme.ink, theme.sizes.edge * 1.4, theme.sizes.edge * 3);
  }
  for (std::size_t i = 0; i < picture.look.faces.size(); ++i) {
    picture.faces.push_back(FaceId::at(i));
  }
  const double size = geometry::bounding_box(points_of(picture.look.faces)).diagonal();
  for (render::FaceLook& look : picture.look.looks) {
    look.hatch_period = static_cast<float>(size / hatch_lines);
  }
}

Vec2 pixel_of(const BenchPicture& picture, Vec3 point) {
  return picture.camera.project(point, picture.viewport).pixel + Vec2{picture.rect.x, picture.rect.y};
}

/// A point of the piece's plane where the piece is now: by two of its sides, whichever side of the card is seen.
Vec3 carried(const Polygon& shape, const std::vector<Vec3>& now, Vec2 point) {
  std::size_t third = 2;
  double widest = 0;
  const auto cross = [](Vec2 a, Vec2 b) { return a.x * b.y - a.y * b.x; };
  for (std::size_t i = 2; i < shape.size(); ++i) {
    const double size = std::abs(cross(shape[1] - shape[0], shape[i] - shape[0]));
    third = size > widest ? i : third;
    widest = std::max(widest, size);
  }
  const Vec2 along = shape[1] - shape[0];
  const Vec2 across = shape[third] - shape[0];
  const Vec2 way = point - shape[0];
  const double whole = cross(along, across);
  return now[0] + (now[1] - now[0]) * (cross(way, across) / whole) +
         (now[third] - now[0]) * (cross(along, way) / whole);
}

/// The numbers of the pieces of all candidates, in their letters' order: small, since they lie close.
void add_numbers_of_all(BenchPicture& picture, const CutoutBench& bench, const Table& table) {
  for (std::size_t i = 0; i < bench.lying.size(); ++i) {
    const auto& pieces = bench.lying[i].cutout.pieces();
    for (std::size_t p = 0; p < pieces.size(); ++p) {
      const Polygon& shape = pieces[PieceId::at(p)].shape;
      const Vec3 point = carried(shape, table.cards[i][p], geometry::label_point(shape));
      picture.labels.push_back({std::to_string(p + 1), pixel_of(picture, point), {}, false, true});
    }
  }
}

/// The numbers of the pieces that are seen; those that fail are filled.
void add_piece_numbers(BenchPicture& picture, const CutoutBench& bench, const Table& table) {
  const nets::Cutout& cutout = bench.lying.front().cutout;
  for (std::size_t p = 0; p < cutout.pieces().size(); ++p) {
    const Polygon& shape = cutout.pieces()[PieceId::at(p)].shape;
    const Vec3 point = carried(shape, table.cards.front()[p], geometry::label_point(shape));
    const Vec2 pixel = pixel_of(picture, point);
    const geometry::Ray ray =
        picture.camera.ray_through(pixel - Vec2{picture.rect.x, picture.rect.y}, picture.viewport);
    const auto hit = geometry::nearest_hit(picture.look.faces, ray);
    const bool is_free = std::none_of(picture.spots.begin(), picture.spots.end(), [&](const BenchSpot& spot) {
      return glm::length(spot.center - pixel) < 1.6 * picture.spot_radius;
    });
    if (is_free && hit && hit->face == FaceId::at(p)) {
      picture.spots.push_back({pixel, std::to_string(p + 1),
                               is_bad(bench, p) ? BenchSpot::Look::Bad : BenchSpot::Look::Plain, std::nullopt});
    }
  }
}

std::pair<Vec3, Vec3> ends_of(const Table& table, const PieceEdge& edge) {
  const std::vector<Vec3>& piece = table.cards.front()[edge.piece.index()];
  return {piece[edge.edge], piece[(edge.edge + 1) % piece.size()]};
}

void add_differing_edges(BenchPicture& picture, const CutoutBench& bench, const Table& table, const Theme& theme) {
  for (const PieceEdge& edge : bench.differ) {
    const auto [from, to] = ends_of(table, edge);
    const render::Stroke wide = stroke(theme.bad, theme.sizes.edge * 3.2);
    picture.look.lines.push_back({from, to, wide, wide});
  }
}

void add_places(BenchPicture& picture, const CutoutBench& bench, const Table& table) {
  for (std::size_t i = 0; i < bench.places.size(); ++i) {
    const CutoutPlace& place = bench.places[i];
    const auto [from, to] = ends_of(table, place.edge);
    const BenchSpot::Look look = !place.is_right   ? BenchSpot::Look::Plain
                                 : *place.is_right ? BenchSpot::Look::Right
                                                   : BenchSpot::Look::Bad;
    picture.spots.push_back({pixel_of(picture, (from + to) * 0.5), place.letter, look, i});
  }
}

/// The letter of a cut-out, off its upper left.
void add_letter(BenchPicture& picture, const LyingCutout& card, const nets::Pose& pose,
                std::optional<std::size_t> option) {
  std::vector<Vec2> seen;
  for (const Vec3& point : points_of(pose)) {
    seen.push_back(pixel_of(picture, point));
  }
  const Rect around = figures::bounding_rect(seen);
  const double radius = picture.spot_radius;
  const double room = 1.3 * radius;  // to the edge of the bench
  const Rect& rect = picture.rect;
  const Vec2 corner{std::clamp(around.x - radius * 0.3, rect.x + room, rect.right() - room),
                    std::clamp(around.y - radius * 0.3, rect.y + room, rect.bottom() - room)};
  picture.spots.push_back({corner, card.letter, BenchSpot::Look::Plain, option});
}

void add_missing_label(BenchPicture& picture, const std::vector<Vec3>& piece, const Theme& theme) {
  std::vector<Vec2> seen;
  seen.reserve(piece.size());
  for (const Vec3& point : piece) {
    seen.push_back(pixel_of(picture, point));
  }
  const Rect around = figures::bounding_rect(seen);
  picture.labels.push_back(
      {"missing", {around.center().x, around.bottom() + theme.sizes.label * 0.9}, {}, false, false});
}

}  // namespace

BenchPicture cutout_picture(const Model& model, const Derived& derived, const Theme& theme, const Rect& rect,
                            const MeasureText& measure) {
  const CutoutBench& bench = *derived.cutouts;
  BenchPicture picture;
  picture.rect = rect;
  if (bench.shows_solid) {
    if (rect.w > rect.h) {
      picture.rect.w = rect.w * (1 - solid_share);
      picture.beside = Rect{picture.rect.right(), rect.y, rect.w - picture.rect.w, rect.h};
    } else {
      picture.rect.h = rect.h * (1 - solid_share_below);
      picture.beside = Rect{rect.x, picture.rect.bottom(), rect.w, rect.h - picture.rect.h};
    }
  }
  picture.viewport = {std::max(1.0, picture.rect.w), std::max(1.0, picture.rect.h)};
  picture.spot_radius = theme.sizes.label * 0.56;
  const bool is_net = bench.lying.size() > 1 || bench.lying.front().test.is_net();
  const Table table = laid(bench, is_net ? model.view.fold : std::max(model.view.fold, misfit_end));
  add_faces(picture, bench, table, theme);
  // Lengths tell what has to be compared; among candidates there is no room for them, and a name needs none.
  const bool has_lengths = bench.shows_solid && bench.lying.size() == 1 && model.view.fold >= 1;
  const double room = theme.sizes.label * (has_lengths ? card_lengths_room : bare_card_room);
  picture.camera = camera_for(model, derived, picture.look.faces, picture.viewport, {room, room},
                              {model.view.turn, model.view.tilt});
  picture.look.edge = stroke(theme.ink, theme.sizes.edge);
  picture.look.hidden_edge = stroke(theme.ink, theme.sizes.edge * 0.6, theme.sizes.edge * 2.5);
  add_differing_edges(picture, bench, table, theme);
  add_places(picture, bench, table);
  if (bench.has_numbers && bench.lying.size() == 1) {
    add_piece_numbers(picture, bench, table);
  } else if (bench.has_numbers) {
    add_numbers_of_all(picture, bench, table);
  }
  for (std::size_t i = 0; i < bench.lying.size(); ++i) {
    if (!bench.lying[i].letter.empty()) {
      add_letter(picture, bench.lying[i], table.cards[i], bench.lying.size() > 1 ? std::optional(i) : std::nullopt);
    }
  }
  if (has_lengths) {
    add_card_lengths(picture, bench, table.cards.front(), theme, measure);
  }
  if (table.missing) {
    add_missing_label(picture, *table.missing, theme);
  }
  return picture;
}

}  // namespace fw::bench
