#include <gtest/gtest.h>

#include <optional>
#include <set>

#include "nets/enumerate.hpp"
#include "nets/layout.hpp"
#include "nets/random_tree.hpp"

namespace fw::nets::overlap_test {
namespace {

// Source: T. Horiyama and W. Shoji, "Edge unfoldings of Platonic solids never overlap", CCCG 2011 (summary seen).
TEST(Overlap, no_net_of_a_regular_solid_overlaps) {
  for (const Polyhedron& solid :
       {test::regular_tetrahedron(), test::cube(), test::octahedron(), test::dodecahedron(), test::icosahedron()}) {
    const NetCount count = count_nets(solid);
    EXPECT_EQ(count.overlapping, 0U);
    EXPECT_GT(count.distinct, 1U);
  }
}

// Computed in another program over all trees; no published source.
TEST(Overlap, boxes_never_and_flat_frusta_sometimes) {
  EXPECT_EQ(count_nets(test::box(1, 1, 50)).overlapping, 0U);
  EXPECT_EQ(count_nets(test::box(1, 10, 50)).overlapping, 0U);
  for (const std::size_t n : {3U, 4U, 5U, 6U}) {
    EXPECT_GT(count_nets(test::frustum(n, 1, 0.5, 0.1)).overlapping, 0U) << n;
    EXPECT_EQ(count_nets(test::frustum(n, 1, 0.5, 1)).overlapping, 0U) << n;
  }
}

// Computed in another program over all trees; no published source.
TEST(Overlap, a_slanted_tetrahedron_of_whole_coordinates_overlaps_itself) {
  const Polyhedron solid = test::tetrahedron({0, 0, 0}, {1, 0, 0}, {10, 1, 0}, {16, 4, 2});
  const auto face_of = [&solid](std::set<std::uint32_t> corners) {
    for (std::size_t f = 0; f < 4; ++f) {
      std::set<std::uint32_t> own;
      for (const geometry::VertexId vertex : solid.faces()[FaceId::at(f)]) {
        own.insert(vertex.value);
      }
      if (own == corners) {
        return FaceId::at(f);
      }
    }
    return FaceId::at(4);
  };
  const std::vector<FaceId> chain = {face_of({3, 1, 0}), face_of({2, 1, 0}), face_of({2, 0, 3}), face_of({3, 1, 2})};
  std::vector<EdgeId> hinges;
  for (std::size_t i = 1; i < 4; ++i) {
    hinges.push_back(*solid.edge_between(chain[i - 1], chain[i]));
  }
  const HingeTree tree = HingeTree::make(solid, chain[0], hinges).value();
  const std::vector<std::pair<FaceId, FaceId>> pairs = overlapping(unfolded(solid, tree));
  EXPECT_NE(std::find(pairs.begin(), pairs.end(), std::pair<FaceId, FaceId>(std::minmax(chain[0], chain[3]))),
            pairs.end());
  EXPECT_GT(count_nets(solid).overlapping, 0U);
}

/// A net in which the first and last face of a path of at most `longest` faces overlap, the first one being the
/// bottom or one side of a prism: the others are like them.
class PathSearch {
 public:
  PathSearch(const Polyhedron& solid, std::size_t longest) : solid_(solid), longest_(longest) {}
  [[nodiscard]] std::optional<HingeTree> run() {
    for (const std::size_t first : {2U, 0U}) {
      if (const auto found = extended({FaceId::at(first)}, {})) {
        return found;
      }
    }
    return std::nullopt;
  }

 private:
  std::optional<HingeTree> extended(const std::vector<FaceId>& path, const std::vector<EdgeId>& hinges) {
    if (path.size() > 3) {
      const HingeTree tree = completed(path.front(), hinges);
      const Layout layout = unfolded(solid_, tree);
      if (geometry::overlap(layout[path.front()], layout[path.back()])) {
        return tree;
      }
    }
    if (path.size() == longest_) {
      return std::nullopt;
    }
    for (const EdgeId edge : solid_.edges_of(path.back())) {
      const FaceId next = solid_.other_face(edge, path.back());
      if (std::find(path.begin(), path.end(), next) != path.end()) {
        continue;
      }
      std::vector<FaceId> longer = path;
      longer.push_back(next);
      std::vector<EdgeId> more = hinges;
      more.push_back(edge);
      if (const auto found = extended(longer, more)) {
        return found;
      }
    }
    return std::nullopt;
  }
  /// Any net that contains the path.
  HingeTree completed(FaceId root, std::vector<EdgeId> hinges) {
    std::vector<bool> joined(solid_.faces().size(), false);
    joined[root.index()] = true;
    for (const EdgeId edge : hinges) {
      joined[solid_.edges()[edge].left.index()] = joined[solid_.edges()[edge].right.index()] = true;
    }
    for (bool grown = true; grown;) {
      grown = false;
      for (std::size_t e = 0; e < solid_.edges().size(); ++e) {
        const geometry::Edge& edge = solid_.edges()[EdgeId::at(e)];
        if (joined[edge.left.index()] != joined[edge.right.index()]) {
          joined[edge.left.index()] = joined[edge.right.index()] = true;
          hinges.push_back(EdgeId::at(e));
          grown = true;
        }
      }
    }
    return HingeTree::make(solid_, root, hinges).value();
  }

  const Polyhedron& solid_;
  std::size_t longest_;
};

// A prism of unit edges has an overlapping net exactly when it has 24 sides or more. Source: T. Shiota and
// T. Saitoh, WALCOM 2023, LNCS 13973, 36-48 (from memory). Here only nets with a short overlapping path are tried.
TEST(Overlap, a_uniform_prism_of_24_sides_has_an_overlapping_net_Slow) {
  const Polyhedron prism = test::prism(24, 1);
  const std::optional<HingeTree> tree = PathSearch(prism, 6).run();
  ASSERT_TRUE(tree.has_value());
  EXPECT_FALSE(overlapping(unfolded(prism, *tree)).empty());
  const Polyhedron prism_of_23 = test::prism(23, 1);
  EXPECT_FALSE(PathSearch(prism_of_23, 6).run().has_value());
}

}  // namespace
}  // namespace fw::nets::overlap_test
