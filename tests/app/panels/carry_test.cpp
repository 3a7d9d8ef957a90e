#include "app/panels/frame_driver.hpp"
#include "bench/landing.hpp"
#include "panels/ids.hpp"
#include "solids/body/body_nets.hpp"
#include "support/sanitized.hpp"

// A face of the open net carried to another edge with the mouse.
namespace fw::panels::test::carry_test {
namespace {

TEST(Carry, AFaceHangsWhereItIsLetGo) {
  std::size_t carried = 0;
  for (const char* problem : fw::test::some_of<const char*>({"shade", "candle-box", "bunting-tube"}, 3)) {
    ProgramDriver program(demo_model(problem), 1280, 720);
    program.give(SetFold{1});
    const Model open = program.model();
    for (const solids::Face& face : open.state.desk().solid.faces()) {
      for (const Landing& landing : landings(program.frame().picture, open, face.id)) {
        const figures::Vec2 to = figures::bounding_rect(landing.outline).center();
        if (!program.frame().picture.rect.contains(to)) {
          continue;
        }
        program.user().drag_between(program.place_of(face.id), to);
        EXPECT_TRUE(program.state().desk().net.is_hinge(landing.edge))
            << problem << ": face " << face.id.index() + 1 << " at edge " << landing.edge.index();
        EXPECT_FALSE(program.model().view.dragged);
        ++carried;
        program.show(open);
      }
    }
  }
  EXPECT_GT(carried, fw::test::cases(20, 5));
}

TEST(Carry, AMissIsToldAndChangesNothing) {
  ProgramDriver program(demo_model("candle-box"), 1280, 720);
  program.give(SetFold{1});
  const nets::HingeTree before = program.state().desk().net;
  const solids::Solid& box = program.state().desk().solid;
  for (const solids::Face& face : box.faces()) {
    const figures::Rect rect = program.frame().picture.rect;
    const figures::Vec2 far{rect.x + 8, rect.y + 8};
    const bool moves = !landings(program.frame().picture, program.model(), face.id).empty();
    program.user().drag_between(program.place_of(face.id), far);
    EXPECT_EQ(program.state().desk().net, before);
    ASSERT_TRUE(program.model().view.notice.has_value()) << face.id.index();
    EXPECT_NE(program.model().view.notice->text.find(moves ? "can hang on" : "can't move"), std::string::npos)
        << program.model().view.notice->text;
    EXPECT_FALSE(program.model().view.dragged);
    program.give(DismissNotice{});
  }
}

}  // namespace
}  // namespace fw::panels::test::carry_test
