#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"

namespace fw::panels::bench_labels_test {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using test::demo_model;
using test::ProgramDriver;

/// The problem's labels that lie on a face or need a leader.
std::vector<std::string> labels_that_are_not_outside(const std::string& problem, double width, double height) {
  ProgramDriver program(demo_model(problem), width, height);
  program.user().frames(2);
  std::vector<std::string> found;
  for (const BenchLabel& label : program.frame().picture.labels) {
    if (label.on_face || label.leader) found.push_back(problem + ": " + label.text);
  }
  return found;
}

// Common practice, no source: on a drawing of a box the lengths stand outside of it, each at an edge in sight.
TEST(BenchLabels, StandOutsideOfABoxBesideItsEdges) {
  for (const char* problem : {"candle-box", "sand-box", "paper-cube", "crate", "bench-box", "tea-tin", "cookie-tin"}) {
    EXPECT_THAT(labels_that_are_not_outside(problem, 1280, 720), testing::IsEmpty());
    EXPECT_THAT(labels_that_are_not_outside(problem, 1920, 1080), testing::IsEmpty());
  }
}

/// How far the label of a mark stands from the middle of the edge that the mark lies on, in pixels.
double distance_from_own_edge(const BenchPicture& picture, const solids::Solid& solid, std::size_t mark) {
  const solids::Mark& lies = solid.marks()[solids::MarkId::at(mark)];
  const auto seen = picture.camera.project((lies.from + lies.to) * 0.5, picture.viewport);
  return glm::distance(picture.labels[mark].center, seen.pixel + figures::Vec2{picture.rect.x, picture.rect.y});
}

// A length that is spoken of is drawn thick at its own edge, so its label comes back to it.
TEST(BenchLabels, StandAtTheirOwnEdgeWhileItIsSpokenOf) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  program.user().frames(2);
  const solids::Solid solid = program.state().desk().solid;
  constexpr std::size_t height = 2;  // after length and width
  ASSERT_EQ(solid.marks()[solids::MarkId::at(height)].symbol.letter, "h");
  EXPECT_GT(distance_from_own_edge(program.frame().picture, solid, height), 200);
  program.give(PickFace{FaceId::at(2)});
  EXPECT_LT(distance_from_own_edge(program.frame().picture, solid, height), 100);
}

}  // namespace
}  // namespace fw::panels::bench_labels_test
