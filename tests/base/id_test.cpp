#include "base/id.hpp"

#include <gtest/gtest.h>

#include <concepts>
#include <type_traits>
#include <unordered_set>
#include <variant>

#include "base/overload.hpp"

namespace fw {
namespace fw::id_test {
namespace {

using FaceId = Id<struct FaceTag>;
using EdgeId = Id<struct EdgeTag>;

template <class Container, class Index>
concept Indexable = requires(Container container, Index index) {
  container[index];
};

static_assert(Indexable<IdVector<FaceId, int>, FaceId>);
static_assert(!Indexable<IdVector<FaceId, int>, EdgeId>);
static_assert(!Indexable<IdVector<FaceId, int>, int>);
static_assert(!std::is_convertible_v<FaceId, EdgeId>);
static_assert(!std::is_convertible_v<FaceId, int>);
static_assert(!std::equality_comparable_with<FaceId, EdgeId>);
static_assert(std::totally_ordered<FaceId>);
static_assert(std::copyable<IdVector<FaceId, int>> && std::equality_comparable<IdVector<FaceId, int>>);

TEST(Id, KeepsItsIndex) {
  EXPECT_EQ(FaceId::at(7).index(), 7U);
  EXPECT_LT(FaceId::at(2), FaceId::at(3));
  EXPECT_EQ(FaceId{}, FaceId::at(0));
}

TEST(Id, CanBeHashed) {
  const std::unordered_set<FaceId> faces{FaceId::at(1), FaceId::at(1), FaceId::at(2)};
  EXPECT_EQ(faces.size(), 2U);
}

TEST(IdVector, ReadsAndWritesByItsId) {
  IdVector<FaceId, int> sides(3, 4);
  sides[FaceId::at(1)] = 6;
  sides.push_back(8);
  EXPECT_EQ(sides.size(), 4U);
  EXPECT_EQ(sides[FaceId::at(0)], 4);
  EXPECT_EQ(sides[FaceId::at(1)], 6);
  EXPECT_EQ(sides[FaceId::at(3)], 8);
  EXPECT_EQ(sides, (IdVector<FaceId, int>(std::vector<int>{4, 6, 4, 8})));
  EXPECT_TRUE((IdVector<FaceId, int>().empty()));
}

TEST(Overload, ChoosesByType) {
  const auto name = Overload{[](int) { return 'i'; }, [](double) { return 'd'; }};
  EXPECT_EQ(std::visit(name, std::variant<int, double>(1)), 'i');
  EXPECT_EQ(std::visit(name, std::variant<int, double>(1.0)), 'd');
}

}  // namespace
}  // namespace fw::id_test
}  // namespace fw
