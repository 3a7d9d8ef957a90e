// Blocks that flow down pages, without anything drawn.
#include "paper/flow.hpp"

#include <gtest/gtest.h>
#include <rapidcheck/gtest.h>

namespace fw::paper::flow_test {
namespace {

TEST(Flow, FillsAPageBeforeTheNext) {
  const auto placed = flowed({{40, false, false}, {40, false, false}, {40, false, false}}, {100, 100}, 5);
  EXPECT_EQ(placed[1].page, 0U);
  EXPECT_DOUBLE_EQ(placed[1].y, 45);
  EXPECT_EQ(placed[2].page, 1U);
  EXPECT_DOUBLE_EQ(placed[2].y, 0);
}

TEST(Flow, GoesDownAColumnBeforeTheNext) {
  const auto placed = flowed({{60, false, false}, {60, false, false}, {60, false, false}}, {100}, 0, 2);
  EXPECT_EQ(placed[1].column, 1U);
  EXPECT_EQ(placed[1].page, 0U);
  EXPECT_EQ(placed[2].page, 1U);
  EXPECT_EQ(placed[2].column, 0U);
}

TEST(Flow, KeepsAHeadingWithWhatItHeads) {
  const auto placed = flowed({{80, false, false}, {10, true, false}, {30, false, false}}, {100}, 0);
  EXPECT_EQ(placed[1].page, 1U);
  EXPECT_EQ(placed[2].page, 1U);
}

TEST(Flow, PutsATallBlockOnAPageOfItsOwn) {
  const auto placed = flowed({{10, false, false}, {300, false, false}, {10, false, false}}, {100}, 5);
  EXPECT_FALSE(placed[0].sticks_out);
  EXPECT_EQ(placed[1].page, 1U);
  EXPECT_TRUE(placed[1].sticks_out);
  EXPECT_EQ(placed[2].page, 2U);
}

TEST(Flow, PassesAFirstPageThatIsTooShort) {
  const auto placed = flowed({{90, false, false}}, {60, 100}, 5);
  EXPECT_EQ(placed[0].page, 1U);
  EXPECT_FALSE(placed[0].sticks_out);
}

// The end of a problem with a page of its own, and the begin of the next one.
TEST(Flow, LeavesNoPageEmptyBetweenTwoMarksOfANewPage) {
  const BlockSize mark{0, true, true};
  const auto placed = flowed({mark, {40, false, false}, mark, mark, {40, false, false}}, {100}, 5);
  EXPECT_EQ(placed[1].page, 0U);
  EXPECT_DOUBLE_EQ(placed[1].y, 0);
  EXPECT_EQ(placed[4].page, 1U);
  EXPECT_DOUBLE_EQ(placed[4].y, 0);
}

RC_GTEST_PROP(Flow, KeepsTheOrderAndTheRoom, ()) {
  std::vector<BlockSize> blocks;
  const auto count = *rc::gen::inRange(1, 40);
  for (int i = 0; i < count; ++i) {
    blocks.push_back(
        {static_cast<double>(*rc::gen::inRange(1, 130)), *rc::gen::inRange(0, 4) == 0, *rc::gen::inRange(0, 12) == 0});
  }
  const std::vector<double> rooms{70, 100};
  const auto columns = static_cast<std::size_t>(*rc::gen::inRange(1, 4));
  const auto placed = flowed(blocks, rooms, 3, columns);
  RC_ASSERT(placed.size() == blocks.size());
  for (std::size_t i = 0; i < placed.size(); ++i) {
    const double room = placed[i].page == 0 ? rooms[0] : rooms[1];
    RC_ASSERT(placed[i].column < columns);
    RC_ASSERT(placed[i].sticks_out || placed[i].y + blocks[i].height <= room + 1e-6);
    RC_ASSERT(!placed[i].sticks_out || (placed[i].y == 0.0 && blocks[i].height > room));
    RC_ASSERT(!blocks[i].begins_page || (placed[i].y == 0.0 && placed[i].column == 0));
    if (i == 0) {
      continue;
    }
    const auto before = std::make_tuple(placed[i - 1].page, placed[i - 1].column, placed[i - 1].y);
    RC_ASSERT(before < std::make_tuple(placed[i].page, placed[i].column, placed[i].y));
    const bool moved_on = placed[i].y == 0.0;
    RC_ASSERT(moved_on || std::abs(placed[i].y - (placed[i - 1].y + blocks[i - 1].height + 3)) < 1e-9);
  }
}

}  // namespace
}  // namespace fw::paper::flow_test
