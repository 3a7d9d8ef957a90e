#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "state/worked.hpp"
#include "support/sanitized.hpp"

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
  // An old projector has less room: no longer label than "10 cm" fits beside the solid.
  for (const char* problem : {"candle-box", "sand-box", "paper-cube", "crate", "tea-tin", "cookie-tin"}) {
    EXPECT_THAT(labels_that_are_not_outside(problem, 1024, 768), testing::IsEmpty());
  }
}

// A length that is spoken of is drawn thick, and its label stays where it was: at a thick edge.
TEST(BenchLabels, StayAtAThickEdgeWhileTheirLengthIsSpokenOf) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  program.user().frames(2);
  const std::vector<BenchLabel> before = program.frame().picture.labels;
  program.give(PickFace{FaceId::at(2)});
  const BenchPicture& picture = program.frame().picture;
  std::size_t thick = 0;
  for (std::size_t i = 0; i < before.size(); ++i) {
    const BenchLabel& now = picture.labels[i];
    EXPECT_EQ(now.center, before[i].center) << now.text;
    if (!now.emphasized) {
      continue;
    }
    ++thick;
    double nearest = 1e9;
    for (const render::LineLook& line : picture.look.lines) {
      const auto middle = picture.camera.project((line.from + line.to) * 0.5, picture.viewport).pixel;
      nearest = std::min(nearest, glm::distance(now.center, middle + figures::Vec2{picture.rect.x, picture.rect.y}));
    }
    EXPECT_LT(nearest, 100) << now.text;
  }
  EXPECT_EQ(thick, 2U);
}

// As a problem is worked out, numbers come to the letters, and faces and lengths are told apart: no label moves.
TEST(BenchLabels, StayBetweenTheSteps) {
  const std::vector<const char*> problems{"shade", "tent", "candle-box", "crate", "wax", "planter", "globe"};
  for (std::size_t i = 0; i < fw::test::cases(problems.size(), 2); ++i) {
    const char* problem = problems[i];
    for (const auto& [width, height] : {std::pair{1280.0, 720.0}, {1024.0, 768.0}}) {
      ProgramDriver program(test::after(demo_model(problem), {SetMode{Mode::Work}, ShowSteps{true}}), width, height);
      std::vector<figures::Vec2> places;
      for (std::size_t step = 0; step < worked_for(program.state()).count; ++step) {
        program.give(SelectStep{step});
        std::vector<figures::Vec2> now;
        for (const BenchLabel& label : program.frame().picture.labels) now.push_back(label.center);
        EXPECT_THAT(places, testing::AnyOf(testing::IsEmpty(), testing::ElementsAreArray(now))) << problem << step;
        places = std::move(now);
      }
    }
  }
}

// Seen from straight above, a flat net is true to shape: every edge has the same scale, at every window and theme.
TEST(FlatNet, IsSeenTrueToShape) {
  for (const char* problem : {"candle-box", "shade", "tent", "counter", "snow-ball", "paper-shade"}) {
    for (const figures::Vec2& size : fw::test::some_of<figures::Vec2>({{1280, 720}, {1024, 768}, {700, 900}}, 3)) {
      ProgramDriver program(demo_model(problem), size.x, size.y);
      program.give(SetFold{1});
      program.user().frames(2);
      const BenchPicture& picture = program.frame().picture;
      double least = 1e300;
      double most = 0;
      for (const auto& corners : picture.look.faces) {
        for (std::size_t i = 0; i < corners.size(); ++i) {
          const geometry::Vec3 a = corners[i];
          const geometry::Vec3 b = corners[(i + 1) % corners.size()];
          const double seen = glm::distance(picture.camera.project(a, picture.viewport).pixel,
                                            picture.camera.project(b, picture.viewport).pixel);
          least = std::min(least, seen / glm::distance(a, b));
          most = std::max(most, seen / glm::distance(a, b));
        }
      }
      EXPECT_NEAR(most / least, 1, 1e-6) << problem;
    }
  }
}

// A long net lies along the longer side of the bench.
TEST(FlatNet, IsTurnedToFillTheBench) {
  const auto extent = [](const char* problem, double width, double height) {
    ProgramDriver program(demo_model(problem), width, height);
    program.give(SetPresenting{true});
    program.give(SetFold{1});
    program.user().frames(2);
    const BenchPicture& picture = program.frame().picture;
    figures::Vec2 low{1e300, 1e300};
    figures::Vec2 high{-1e300, -1e300};
    for (const auto& corners : picture.look.faces) {
      for (const geometry::Vec3& corner : corners) {
        low = glm::min(low, picture.camera.project(corner, picture.viewport).pixel);
        high = glm::max(high, picture.camera.project(corner, picture.viewport).pixel);
      }
    }
    const bool is_wide_net = high.x - low.x > high.y - low.y;
    return is_wide_net == (picture.viewport.width_px > picture.viewport.height_px);
  };
  EXPECT_TRUE(extent("tent", 1920, 1080));
  EXPECT_TRUE(extent("tent", 700, 1400));
  EXPECT_TRUE(extent("cookie-tin", 1920, 1080));
  EXPECT_TRUE(extent("cookie-tin", 700, 1400));
}

}  // namespace
}  // namespace fw::panels::bench_labels_test
