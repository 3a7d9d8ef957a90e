#include "figures/label_layout.hpp"

#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <cmath>
#include <numbers>

namespace fw::figures::label_layout_test {
namespace {

Rect box_of(const PlacedLabel& label, Vec2 size) {
  return {label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y};
}

/// A regular polygon of edges, each to be labelled, in the middle of a window.
struct Ring {
  std::vector<LabelRequest> requests;
  LabelSurroundings around;
};
Ring ring_of(std::size_t sides, double radius, Vec2 size) {
  Ring ring;
  ring.around.viewport = {0, 0, 1000, 800};
  ring.around.away_from = {500, 400};
  const auto corner = [&](std::size_t i) {
    const double angle = 2 * std::numbers::pi * static_cast<double>(i) / static_cast<double>(sides) + 0.3;
    return Vec2{500 + radius * std::cos(angle), 400 + radius * std::sin(angle)};
  };
  for (std::size_t i = 0; i < sides; ++i) {
    ring.around.lines.push_back({corner(i), corner(i + 1)});
    ring.requests.push_back({ring.around.lines.back(), size});
  }
  return ring;
}

TEST(PlaceLabels, PutsOneBesideItsEdgeOnTheFarSideFromTheMiddle) {
  const Ring ring = ring_of(4, 250, {80, 40});
  const auto placed = place_labels(ring.requests, ring.around);
  ASSERT_EQ(placed.size(), 4U);
  for (std::size_t i = 0; i < placed.size(); ++i) {
    EXPECT_TRUE(placed[i].clear);
    EXPECT_FALSE(placed[i].leader.has_value());
    const Segment& edge = ring.around.lines[i];
    const Vec2 middle = (edge.from + edge.to) * 0.5;
    EXPECT_GT(glm::distance(placed[i].center, ring.around.away_from), glm::distance(middle, ring.around.away_from));
    EXPECT_LT(glm::distance(placed[i].center, middle), 80);
  }
}

TEST(PlaceLabels, GivesALeaderToALabelThatHasNoRoomAtItsEdge) {
  // A short edge between two that run close by on either side.
  LabelSurroundings around;
  around.viewport = {0, 0, 1000, 800};
  around.away_from = {500, 400};
  around.lines = {{{500, 390}, {500, 410}}, {{490, 300}, {490, 500}}, {{510, 300}, {510, 500}}};
  const auto placed = place_labels({{around.lines[0], {100, 40}}}, around);
  ASSERT_TRUE(placed[0].leader.has_value());
  EXPECT_TRUE(placed[0].clear);
  EXPECT_NEAR(placed[0].leader->to.x, 500, 1e-9);
  EXPECT_GE(placed[0].leader->to.y, 390);
  EXPECT_LE(placed[0].leader->to.y, 410);
}

TEST(PlaceLabels, StandsOutsideOfTheFacesWhereItCan) {
  LabelSurroundings around;
  around.viewport = {0, 0, 1000, 800};
  around.away_from = {500, 700};  // so that the face lies on the side that would come first
  const Segment edge{{300, 400}, {700, 400}};
  around.lines = {edge};
  EXPECT_LT(place_labels({{edge, {100, 40}}}, around)[0].center.y, 400);
  around.faces = {{{300, 100}, {700, 100}, {700, 400}, {300, 400}}};
  EXPECT_GT(place_labels({{edge, {100, 40}}}, around)[0].center.y, 400);
}

// A leader that runs on along its segment would look like a part of it.
TEST(PlaceLabels, LeadsALabelAcrossItsSegment) {
  EXPECT_TRUE(rc::check([] {
    LabelSurroundings around;
    around.viewport = {0, 0, 1000, 800};
    around.away_from = {500, 400};
    const double angle = *rc::gen::inRange(0, 360) * std::numbers::pi / 180;
    const Vec2 along{std::cos(angle), std::sin(angle)};
    const Vec2 across{-along.y, along.x};
    const Vec2 middle{500, 400};
    const Segment own{middle - along * 40.0, middle + along * 40.0};
    around.lines = {own};
    for (const double way : {-14.0, 14.0}) {  // so near on either side that there is no room beside it
      around.lines.push_back({middle + along * -150.0 + across * way, middle + along * 150.0 + across * way});
    }
    const auto placed = place_labels({{own, {90, 30}}}, around)[0];
    RC_ASSERT(placed.leader.has_value());
    const Vec2 led = placed.leader->to - placed.leader->from;
    RC_ASSERT(std::abs(glm::dot(led, along)) <= 0.9 * glm::length(led) + 1e-9);
  }));
}

// Guarantee 4.
TEST(PlaceLabels, MovesALabelToAnotherSegmentOnlyIfThereIsNoPlaceBesideItsOwn) {
  LabelSurroundings around;
  around.viewport = {0, 0, 1000, 800};
  around.away_from = {500, 400};
  const Segment own{{500, 300}, {500, 500}};
  const Segment other{{300, 300}, {300, 500}};
  around.lines = {own, other};
  const auto free = place_labels({{own, {100, 40}, {other}}}, around)[0];
  EXPECT_LT(std::abs(free.center.x - 500), 80);
  around.lines.insert(around.lines.end(), {{{470, 200}, {470, 600}}, {{530, 200}, {530, 600}}});
  const auto moved = place_labels({{own, {100, 40}, {other}}}, around)[0];
  EXPECT_LT(std::abs(moved.center.x - 300), 80);
  EXPECT_TRUE(moved.clear);
  EXPECT_FALSE(moved.leader.has_value());
}

TEST(PlaceLabels, SaysWhenNoPlaceIsFree) {
  LabelSurroundings around;
  around.viewport = {0, 0, 60, 30};
  around.away_from = {30, 15};
  around.lines = {{{10, 15}, {50, 15}}};
  EXPECT_FALSE(place_labels({{around.lines[0], {50, 20}}}, around)[0].clear);
}

// Guarantee 1: with room all round, nothing meets anything.
TEST(PlaceLabels, KeepsLabelsClearOfLinesDiscsAndEachOtherWhereThereIsRoom) {
  EXPECT_TRUE(rc::check([] {
    const auto sides = *rc::gen::inRange<std::size_t>(3, 13);
    const double radius = *rc::gen::inRange(180, 260);
    const double width = *rc::gen::inRange(30, 80);
    const Vec2 size{width, 26};
    Ring ring = ring_of(sides, radius, size);
    ring.around.discs = {{{500, 400}, 40}};
    const auto placed = place_labels(ring.requests, ring.around);
    for (std::size_t i = 0; i < placed.size(); ++i) {
      const Rect box = box_of(placed[i], size);
      RC_ASSERT(placed[i].clear);
      RC_ASSERT(ring.around.viewport.contains(box));
      for (const Segment& line : ring.around.lines) RC_ASSERT(!meets(line, box));
      for (std::size_t k = i + 1; k < placed.size(); ++k) RC_ASSERT(!box.overlaps(box_of(placed[k], size)));
    }
  }));
}

// Whatever the input: a label that says it is clear is clear, and guarantee 2.
TEST(PlaceLabels, NeverCallsALabelClearThatIsNotAndAlwaysChoosesTheSame) {
  EXPECT_TRUE(rc::check([] {
    LabelSurroundings around;
    around.viewport = {0, 0, 600, 400};
    around.away_from = {300, 200};
    const auto point = [] {
      const double x = *rc::gen::inRange(0, 600);
      const double y = *rc::gen::inRange(0, 400);
      return Vec2{x, y};
    };
    std::vector<LabelRequest> requests;
    const int count = *rc::gen::inRange(1, 8);
    for (int i = 0; i < count; ++i) {
      around.lines.push_back({point(), point()});
      const double width = *rc::gen::inRange(20, 140);
      requests.push_back({around.lines.back(), {width, 30}});
    }
    const auto placed = place_labels(requests, around);
    const auto again = place_labels(requests, around);
    for (std::size_t i = 0; i < placed.size(); ++i) {
      RC_ASSERT(placed[i].center == again[i].center);
      if (!placed[i].clear) continue;
      const Rect box = box_of(placed[i], requests[i].size);
      RC_ASSERT(around.viewport.contains(box));
      for (const Segment& line : around.lines) RC_ASSERT(!meets(line, box));
    }
  }));
}

TEST(Meets, KnowsSegmentsThatCrossTouchOrLieInside) {
  const Rect box{10, 10, 20, 10};
  EXPECT_TRUE(meets({{0, 15}, {50, 15}}, box));
  EXPECT_TRUE(meets({{15, 12}, {16, 18}}, box));
  EXPECT_TRUE(meets({{0, 0}, {10, 10}}, box));
  EXPECT_FALSE(meets({{0, 0}, {9, 30}}, box));
  EXPECT_FALSE(meets({{0, 25}, {50, 21}}, box));
  EXPECT_FALSE(meets({{28, 5}, {40, 14}}, box));
}

}  // namespace
}  // namespace fw::figures::label_layout_test
