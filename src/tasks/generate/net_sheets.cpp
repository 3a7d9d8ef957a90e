#include "tasks/generate/net_sheets.hpp"

#include <algorithm>
#include <cmath>
#include <set>

#include "base/ensure.hpp"
#include "exact/print_number.hpp"
#include "practice/quiz.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::tasks {
namespace {

using geometry::FaceId;
using geometry::Polygon;
using geometry::Vec2;
using nets::Cutout;
using nets::Joint;
using nets::Piece;
using nets::PieceId;

bool is_net(const solids::Solid& solid, const Cutout& cutout) {
  return solids::fold_test(solid.body(), cutout).is_net();
}

// ---- traps ----

// Whether squares of one size form a block of four, or five of them a row: what rules of thumb look for.
bool shows_at_a_glance(const Cutout& cutout) {
  std::vector<Vec2> middles;
  double side = 0;
  for (const Polygon& polygon : nets::laid_flat(cutout)) {
    middles.push_back(geometry::centroid(polygon));
    side = glm::length(polygon[1] - polygon[0]);
  }
  const Vec2 along = nets::laid_flat(cutout)[PieceId::at(0)][1] - nets::laid_flat(cutout)[PieceId::at(0)][0];
  const Vec2 right = along / side;
  std::set<std::pair<long, long>> cells;
  for (const Vec2& middle : middles) {
    const Vec2 from_first = (middle - middles[0]) / side;
    cells.insert(
        {std::lround(glm::dot(from_first, right)), std::lround(from_first.y * right.x - from_first.x * right.y)});
  }
  const auto has = [&](long x, long y) { return cells.count({x, y}) != 0; };
  return std::any_of(cells.begin(), cells.end(), [&](const auto& cell) {
    const auto [x, y] = cell;
    const bool is_block = has(x + 1, y) && has(x, y + 1) && has(x + 1, y + 1);
    const bool is_row = has(x + 1, y) && has(x + 2, y) && has(x + 3, y) && has(x + 4, y);
    const bool is_column = has(x, y + 1) && has(x, y + 2) && has(x, y + 3) && has(x, y + 4);
    return is_block || is_row || is_column;
  });
}

std::optional<Cutout> with_moved_piece(const solids::Solid& solid, bool hard, Seed& seed) {
  const Cutout net = drawn_net(solid, seed);
  std::vector<nets::Move> moves = nets::possible_moves(net);
  shuffle(moves, seed);
  constexpr std::size_t looked_at = 20;
  std::optional<Cutout> other;  // where no two pieces meet on one face, since none has two places that are alike
  for (std::size_t i = 0; i < std::min(moves.size(), looked_at); ++i) {
    Cutout cutout = nets::moved(net, moves[i]);
    if (!nets::overlapping(cutout).empty() || (hard && solid.group_count() == 1 && shows_at_a_glance(cutout))) {
      continue;
    }
    const auto finding = solids::fold_test(solid.body(), cutout).finding;
    if (finding && (finding->misfit == nets::Misfit::Collision || finding->misfit == nets::Misfit::SameSide)) {
      return cutout;
    }
    if (finding && finding->misfit == nets::Misfit::EdgesDiffer) {
      other = std::move(cutout);
    }
  }
  return other;
}

// By half where it shows at once, else by a quarter.
std::optional<Cutout> with_stretched_piece(const solids::Solid& solid, bool hard, Seed& seed) {
  const Cutout net = drawn_net(solid, seed);
  const std::vector<PieceId> leaves = nets::leaves(net);
  const PieceId leaf = leaves[seed.below(leaves.size())];
  std::vector<Piece> pieces(net.pieces().begin(), net.pieces().end());
  Piece& piece = pieces[leaf.index()];
  const std::size_t by = piece.joint->by;
  const Vec2 start = piece.shape[by];
  const Vec2 along = glm::normalize(piece.shape[(by + 1) % piece.shape.size()] - start);
  const Vec2 across{-along.y, along.x};
  const double share = hard ? 0.25 : 0.5;
  const double factor = seed.below(2) == 0 ? 1 - share : 1 + share;
  for (Vec2& corner : piece.shape) {
    corner += across * (glm::dot(corner - start, across) * (factor - 1));
  }
  piece.copy_of.reset();
  auto made = Cutout::make(std::move(pieces));
  if (!made || !nets::overlapping(*made).empty()) {
    return std::nullopt;
  }
  return std::move(made).value();
}

Cutout with_wrong_count(const solids::Solid& solid, Seed& seed) {
  const Cutout net = drawn_net(solid, seed);
  const std::vector<PieceId> leaves = nets::leaves(net);
  const PieceId leaf = leaves[seed.below(leaves.size())];
  if (seed.below(2) == 0) {
    return nets::without(net, leaf);
  }
  // One more of the same, at a place where it does not lie on another.
  const Piece& piece = net.pieces()[leaf];
  std::vector<nets::PieceEdge> outline = nets::free_edges(net);
  shuffle(outline, seed);
  for (const nets::PieceEdge& edge : outline) {
    Cutout more = nets::with(net, {piece.shape, piece.copy_of, Joint{edge.piece, edge.edge, piece.joint->by}});
    if (nets::equally_long(more, edge, {PieceId::at(more.pieces().size() - 1), piece.joint->by}) &&
        nets::overlapping(more).empty()) {
      return more;
    }
  }
  return nets::without(net, leaf);
}

// The face that all corners but one lie in, with triangles all round.
std::optional<FaceId> face_below_apex(const solids::Solid& solid) {
  for (const solids::Face& face : solid.faces()) {
    if (solid.body().side_count(face.id) + 1 == solid.body().vertex_count()) {
      return face.id;
    }
  }
  return std::nullopt;
}

std::optional<Cutout> with_short_triangles(const solids::Solid& solid, Seed& seed) {
  const solids::Body& body = solid.body();
  const std::optional<FaceId> base = face_below_apex(solid);
  if (!base) {
    return std::nullopt;
  }
  const auto star = solids::net_with(body, *base, body.edges_of(*base));
  ensure(star.has_value(), "the sides of a base are the hinges of a net");
  const Cutout net = solids::cutout_of(body, star.value());
  const double height = body.height_over(*base);
  const bool as_high_as_apex = seed.below(2) == 0;
  std::vector<Piece> pieces(net.pieces().begin(), net.pieces().end());
  for (std::size_t p = 1; p < pieces.size(); ++p) {
    Piece& piece = pieces[p];
    const std::size_t by = piece.joint->by;
    const Vec2 start = piece.shape[by];
    const double side = glm::length(piece.shape[(by + 1) % 3] - start);
    const Vec2 along = (piece.shape[(by + 1) % 3] - start) / side;
    const Vec2 apex = piece.shape[(by + 2) % 3] - start;
    const double foot = glm::dot(apex, along);
    const double slant = glm::dot(apex, Vec2{-along.y, along.x});
    const double to_foot = std::sqrt(std::max(slant * slant - height * height, 0.0));
    // Up to the middle and no further would just close flat: stop at four fifths of the way.
    piece.shape = {{0, 0}, {side, 0}, {foot, as_high_as_apex ? height : to_foot * 0.8}};
    piece.joint->by = 0;
    piece.copy_of.reset();
  }
  auto made = Cutout::make(std::move(pieces));
  return made ? std::optional(std::move(made).value()) : std::nullopt;
}

// ---- writing ----

exact::Written coordinate(double value) {
  const long ten_thousandths = std::lround(value * 10000);
  std::string digits = std::to_string(std::labs(ten_thousandths));
  digits.insert(0, digits.size() < 5 ? 5 - digits.size() : 0, '0');
  std::string text = digits.substr(0, digits.size() - 4) + "." + digits.substr(digits.size() - 4);
  while (text.back() == '0') {
    text.pop_back();
  }
  if (text.back() == '.') {
    text.pop_back();
  }
  const auto written = exact::parse_number(text);
  ensure(written.has_value(), "a coordinate that was rounded can be read");
  exact::Written result = *written;
  if (ten_thousandths < 0) {
    result.text = "-" + text;
    result.value = -result.value;
  }
  return result;
}

// The first side from (0, 0) to the right.
std::vector<solids::PointEntry> corners_of(const Polygon& shape) {
  const Vec2 along = glm::normalize(shape[1] - shape[0]);
  std::vector<solids::PointEntry> corners;
  for (const Vec2& corner : shape) {
    const Vec2 from = corner - shape[0];
    corners.push_back({coordinate(glm::dot(from, along)), coordinate(from.y * along.x - from.x * along.y)});
  }
  return corners;
}

}  // namespace

Cutout drawn_net(const solids::Solid& solid, Seed& seed) {
  const FaceId root = FaceId::at(seed.below(solid.faces().size()));
  return solids::cutout_of(solid.body(), practice::random_net(solid.body(), root, seed));
}

std::optional<Cutout> drawn_trap(const solids::Solid& solid, Trap trap, bool hard, Seed& seed) {
  constexpr int draws = 12;
  if (trap == Trap::Short && !face_below_apex(solid)) {
    return std::nullopt;
  }
  for (int i = 0; i < draws; ++i) {
    std::optional<Cutout> cutout;
    switch (trap) {
      case Trap::Moved:
        cutout = with_moved_piece(solid, hard, seed);
        break;
      case Trap::Stretched:
        cutout = with_stretched_piece(solid, hard, seed);
        break;
      case Trap::Count:
        cutout = with_wrong_count(solid, seed);
        break;
      case Trap::Short:
        cutout = with_short_triangles(solid, seed);
        break;
    }
    if (cutout && !is_net(solid, *cutout)) {
      return cutout;
    }
  }
  return std::nullopt;
}

std::optional<lessons::NetSheet> drawn_sheet(const solids::Solid& solid, const Cutout& cutout, int level, Seed& seed) {
  std::vector<lessons::PieceEntry> entries;
  std::vector<Piece> pieces;
  for (const Piece& piece : cutout.pieces()) {
    lessons::PieceEntry entry{piece.copy_of, {}, "", piece.joint};
    if (!piece.copy_of) {
      entry.corners = corners_of(piece.shape);
    }
    pieces.push_back({lessons::shape_of(entry, solid), entry.face, entry.joint});
    entries.push_back(std::move(entry));
  }
  const int step_degrees = level == 1 ? 90 : 15;
  const int turn_degrees = step_degrees * static_cast<int>(seed.below(static_cast<std::size_t>(360 / step_degrees)));
  const bool flipped = seed.below(2) == 1 && level > 1;
  auto written = Cutout::make(std::move(pieces));
  if (!written || !nets::overlapping(*written).empty()) {
    return std::nullopt;
  }
  return lessons::NetSheet{std::move(entries), turn_degrees, flipped, std::move(written).value()};
}

Cutout unmarked(const Cutout& cutout) {
  std::vector<Piece> pieces(cutout.pieces().begin(), cutout.pieces().end());
  for (Piece& piece : pieces) {
    piece.copy_of.reset();
  }
  auto made = Cutout::make(std::move(pieces));
  ensure(made.has_value(), "a cut-out stays one without its marks");
  return std::move(made).value();
}

}  // namespace fw::tasks
