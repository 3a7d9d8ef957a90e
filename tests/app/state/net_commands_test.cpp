#include "app/state/model_support.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::state::test::net_commands_test {
namespace {

TEST(Fold, StopsAtAnyPlaceAndGoesBack) {
  Model model = after(demo_model("shade"), {PlayFold{Motion::Opening}, Tick{0.4}});
  EXPECT_GT(model.view.fold, 0.0);
  EXPECT_LT(model.view.fold, 1.0);
  const double stopped = model.view.fold;
  model = after(model, {PlayFold{Motion::Still}, Tick{5}});
  EXPECT_EQ(model.view.fold, stopped);
  model = after(model, {PlayFold{Motion::Closing}, Tick{0.3}});
  EXPECT_LT(model.view.fold, stopped);
}

TEST(Fold, ComesToRestFlat) {
  Model model = after(demo_model("shade"), {PlayFold{Motion::Opening}});
  int ticks = 0;
  while (is_moving(model.view) && ticks < 1000) {
    model = after(model, {Tick{1.0 / 60}});
    ++ticks;
  }
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_NEAR(ticks / 60.0, 1.8, 0.4) << "all hinges together take about 1.8 s";
}

TEST(Fold, PlaysSlowlyAndFast) {
  const auto ticks = [](PlaySpeed speed) {
    Model model = after(demo_model("shade"), {SetPlaySpeed{speed}, PlayFold{Motion::Opening}});
    int count = 0;
    while (is_moving(model.view) && count < 1000) {
      model = after(model, {Tick{1.0 / 60}});
      ++count;
    }
    return count;
  };
  EXPECT_GT(ticks(PlaySpeed::Slow), 2 * ticks(PlaySpeed::Usual));
  EXPECT_LT(ticks(PlaySpeed::Fast), ticks(PlaySpeed::Usual) / 2);
}

TEST(Fold, StepsWithoutMotionWhereMotionIsReduced) {
  Model model = after(demo_model("shade"), {SetReducedMotion{true}, PlayFold{Motion::Opening}});
  EXPECT_FALSE(is_moving(model.view));
  EXPECT_EQ(model.view.fold, 0.25);
  model = after(model, {SetFoldOrder{nets::FoldOrder::OneByOne}, SetFold{0}, StepFold{1}});
  EXPECT_EQ(model.view.fold, 0.25) << "one of four hinges";
}

TEST(Net, NextAndPreviousWalkAllDistinctNets) {
  Model model = demo_model("shade");
  const NetChoice first = net_choice(model.state.desk());
  EXPECT_EQ(first.nets->size(), 8U) << "distinct nets of a square pyramid; computed by two methods, no published table";
  EXPECT_EQ(first.current, 0U);
  for (std::size_t i = 0; i < 8; ++i) {
    EXPECT_EQ(net_choice(model.state.desk()).current, i);
    model = after(model, {StepNet{1}});
  }
  EXPECT_EQ(model.state.desk().net, demo_model("shade").state.desk().net);
  EXPECT_EQ(net_choice(after(model, {StepNet{-1}}).state.desk()).current, 7U);
}

TEST(Net, AFaceMovesToAnotherHingeAndSaysWhenItCannot) {
  const Model model = demo_model("shade");
  const Desk& desk = model.state.desk();
  const FaceId face{1};
  const auto edges = solids::possible_hinges(desk.solid.body(), desk.net, face);
  ASSERT_FALSE(edges.empty());
  const Model moved = after(model, {MoveFace{face, edges.front()}});
  EXPECT_TRUE(moved.state.desk().net.is_hinge(edges.front()));
  EXPECT_EQ(moved.history.undo_text(), "move face 2");
  const Model refused = after(model, {MoveFace{face, desk.net.link(face)->hinge}});
  EXPECT_EQ(refused.state, model.state);
  ASSERT_TRUE(refused.view.notice.has_value());
  EXPECT_FALSE(refused.view.notice->text.empty());
}

TEST(Net, ThePickedFaceWalksRoundItsPossibleHinges) {
  Model model = after(demo_model("shade"), {PickFace{FaceId{1}}});
  const nets::HingeTree start = model.state.desk().net;
  std::size_t moves = 0;
  do {
    model = after(model, {MovePicked{}});
    ++moves;
  } while (!(model.state.desk().net == start) && moves < 10);
  EXPECT_EQ(moves, 3U) << "a triangle of the pyramid can hang on the base or on either neighbor";
}

}  // namespace
}  // namespace fw::state::test::net_commands_test
