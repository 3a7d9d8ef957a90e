// The six-square shapes, found here square by square, against the eleven nets of a cube.
#include <gtest/gtest.h>

#include <algorithm>
#include <array>
#include <set>

#include "nets/enumerate.hpp"
#include "nets/fold_test.hpp"
#include "support/polyhedra.hpp"

namespace fw::nets::hexomino_test {
namespace {

using Cell = std::pair<int, int>;
using Shape = std::vector<Cell>;
constexpr std::array<Cell, 4> ways{Cell{0, -1}, Cell{1, 0}, Cell{0, 1}, Cell{-1, 0}};  // as the edges of a square run

Shape at_origin(Shape shape) {
  int left = shape[0].first;
  int low = shape[0].second;
  for (const Cell& cell : shape) {
    left = std::min(left, cell.first);
    low = std::min(low, cell.second);
  }
  for (Cell& cell : shape) {
    cell = {cell.first - left, cell.second - low};
  }
  std::sort(shape.begin(), shape.end());
  return shape;
}

Shape turned(Shape shape) {
  for (Cell& cell : shape) {
    cell = {-cell.second, cell.first};
  }
  return shape;
}
Shape mirrored(Shape shape) {
  for (Cell& cell : shape) {
    cell.first = -cell.first;
  }
  return shape;
}

/// The least of its eight positions.
Shape free_form(const Shape& shape) {
  Shape least = at_origin(shape);
  Shape next = shape;
  for (int i = 0; i < 8; ++i) {
    next = i == 4 ? mirrored(next) : turned(next);
    least = std::min(least, at_origin(next));
  }
  return least;
}

std::set<Shape> shapes_of(std::size_t squares) {
  std::set<Shape> shapes{{{0, 0}}};
  for (std::size_t count = 1; count < squares; ++count) {
    std::set<Shape> larger;
    for (const Shape& shape : shapes) {
      for (const Cell& cell : shape) {
        for (const Cell& way : ways) {
          const Cell next{cell.first + way.first, cell.second + way.second};
          if (std::find(shape.begin(), shape.end(), next) == shape.end()) {
            Shape grown = shape;
            grown.push_back(next);
            larger.insert(free_form(grown));
          }
        }
      }
    }
    shapes = std::move(larger);
  }
  return shapes;
}

/// Joined along a tree of its neighbors, found from its cell number `start`.
Cutout cutout_of_shape(const Shape& shape, std::size_t start) {
  Shape order{shape[start]};
  std::vector<Piece> pieces{{{{0, 0}, {1, 0}, {1, 1}, {0, 1}}}};
  for (std::size_t done = 0; done < order.size(); ++done) {
    for (std::size_t way = 0; way < ways.size(); ++way) {
      const Cell next{order[done].first + ways[way].first, order[done].second + ways[way].second};
      const bool is_there = std::find(shape.begin(), shape.end(), next) != shape.end();
      if (is_there && std::find(order.begin(), order.end(), next) == order.end()) {
        order.push_back(next);
        pieces.push_back({pieces[0].shape, std::nullopt, Joint{PieceId::at(done), way, (way + 2) % 4}});
      }
    }
  }
  return Cutout::make(std::move(pieces)).value();
}

/// A die rolled over the squares shows how many of its sides come to lie below: {below, south, east}, opposite sides
/// adding up to 7.
struct Die {
  int below, south, east;
  [[nodiscard]] Die rolled(std::size_t way) const {
    switch (way) {
      case 0:
        return {south, 7 - below, east};
      case 1:
        return {east, south, 7 - below};
      case 2:
        return {7 - south, below, east};
      default:
        return {7 - east, south, below};
    }
  }
};
std::size_t sides_printed(const Shape& shape) {
  std::vector<std::pair<Cell, Die>> reached{{shape[0], {1, 2, 3}}};
  std::set<int> printed;
  for (std::size_t done = 0; done < reached.size(); ++done) {
    printed.insert(reached[done].second.below);
    for (std::size_t way = 0; way < ways.size(); ++way) {
      const Cell next{reached[done].first.first + ways[way].first, reached[done].first.second + ways[way].second};
      const bool is_there = std::find(shape.begin(), shape.end(), next) != shape.end();
      if (is_there &&
          std::none_of(reached.begin(), reached.end(), [&](const auto& one) { return one.first == next; })) {
        reached.push_back({next, reached[done].second.rolled(way)});
      }
    }
  }
  return printed.size();
}

bool has_block(const Shape& shape) {
  const std::set<Cell> cells(shape.begin(), shape.end());
  return std::any_of(shape.begin(), shape.end(), [&](const Cell& cell) {
    return cells.count({cell.first + 1, cell.second}) != 0 && cells.count({cell.first, cell.second + 1}) != 0 &&
           cells.count({cell.first + 1, cell.second + 1}) != 0;
  });
}
int longest_row(const Shape& shape) {
  const std::set<Cell> cells(shape.begin(), shape.end());
  int longest = 0;
  for (const Cell& cell : shape) {
    for (const Cell& way : {Cell{1, 0}, Cell{0, 1}}) {
      int length = 1;
      while (cells.count({cell.first + length * way.first, cell.second + length * way.second}) != 0) {
        ++length;
      }
      longest = std::max(longest, length);
    }
  }
  return longest;
}

TEST(Hexominoes, eleven_of_thirty_five_are_the_nets_of_a_cube) {
  // Source: 35 free hexominoes, OEIS A000105 (seen). 11 nets: D. Hoey, sci.math, 9 September 1994 (seen).
  const std::set<Shape> shapes = shapes_of(6);
  ASSERT_EQ(shapes.size(), 35U);
  const Polyhedron cube = test::cube();
  std::set<std::uint64_t> classes;
  std::size_t nets = 0;
  for (const Shape& shape : shapes) {
    const Cutout cutout = cutout_of_shape(shape, 0);
    const FoldTest test = fold_test(cube, cutout);
    EXPECT_EQ(test.is_net(), sides_printed(shape) == 6);
    for (std::size_t start = 0; start < shape.size(); ++start) {
      EXPECT_EQ(fold_test(cube, cutout_of_shape(shape, start)).is_net(), test.is_net());
      EXPECT_EQ(fold_test(cube, flipped(cutout_of_shape(shape, start))).is_net(), test.is_net());
    }
    if (test.is_net()) {
      ++nets;
      classes.insert(net_class(cube, tree_of(cube, cutout, test)));
    }
  }
  EXPECT_EQ(nets, 11U);
  std::set<std::uint64_t> listed;
  for_each_distinct_net(cube, [&](std::uint64_t hinges) {
    listed.insert(hinges);
    return true;
  });
  EXPECT_EQ(classes, listed);
}

TEST(Hexominoes, the_other_twenty_four_have_two_squares_on_one_side_and_a_side_open) {
  // 8 hold a block of four, 4 have five or more in a row, 12 neither. Computed in another program; no published source.
  const Polyhedron cube = test::cube();
  std::size_t blocks = 0;
  std::size_t rows = 0;
  std::size_t neither = 0;
  std::size_t same_side = 0;
  for (const Shape& shape : shapes_of(6)) {
    const Cutout cutout = cutout_of_shape(shape, 0);
    const FoldTest test = fold_test(cube, cutout);
    if (test.is_net()) {
      continue;
    }
    (has_block(shape) ? blocks : longest_row(shape) >= 5 ? rows : neither) += 1;
    const Finding& finding = *test.finding;
    EXPECT_TRUE(finding.misfit == Misfit::Collision || finding.misfit == Misfit::SameSide);
    EXPECT_EQ(finding.open.size(), 6 - sides_printed(shape));
    EXPECT_GE(finding.pieces.size(), 2U);
    same_side += finding.misfit == Misfit::SameSide && !has_block(shape) ? 1U : 0U;
    const Pose closed = pose(cube, cutout, test, 0);
    for (const PieceId piece : finding.pieces) {
      const FaceId face = test.landings[piece]->face;
      EXPECT_NE(std::find(finding.doubled.begin(), finding.doubled.end(), face), finding.doubled.end());
      for (const geometry::Vec3& corner : closed[piece.index()]) {
        const auto corners = cube.corners(face);
        EXPECT_TRUE(std::any_of(corners.begin(), corners.end(),
                                [&](const geometry::Vec3& one) { return glm::length(one - corner) < 1e-12; }));
      }
    }
  }
  EXPECT_EQ(blocks, 8U);
  EXPECT_EQ(rows, 4U);
  EXPECT_EQ(neither, 12U);
  // Four in a row and two squares on one side of it: on the first and third, on the first and last.
  EXPECT_EQ(same_side, 2U);
}

}  // namespace
}  // namespace fw::nets::hexomino_test
