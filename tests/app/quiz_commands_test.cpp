#include "model_support.hpp"

namespace fw::app::test::quiz_commands_test {
namespace {

Model quiz_at_name(const std::string& name) {
  Model model = after(demo_model("shade"), {SetMode{Mode::Quiz}});
  for (int i = 0; i < 60 && question(model.state).solid.name() != name; ++i) {
    model = after(model, {NextQuestion{}});
  }
  EXPECT_EQ(question(model.state).solid.name(), name);
  return model;
}

TEST(Quiz, ShowsTheNetOpenAndHidesTheFoldUntilTheAnswer) {
  const Model model = after(demo_model("shade"), {SetMode{Mode::Quiz}});
  EXPECT_EQ(model.view.fold, 1.0);
  EXPECT_EQ(after(model, {SetFold{0.2}}).view.fold, 1.0);
  EXPECT_EQ(after(model, {PlayFold{Motion::Closing}}).view.motion, Motion::Still);
}

TEST(Quiz, FoldsUpAfterTheRightName) {
  const Model model = after(quiz_at_name("square pyramid"), {AnswerTyped{"Square pyramid"}});
  EXPECT_TRUE(model.state.quiz.revealed);
  EXPECT_EQ(model.view.motion, Motion::Closing);
  EXPECT_EQ(after(model, {Tick{0.1}, Tick{0.1}, Tick{0.1}}).view.motion, Motion::Closing);
}

TEST(Quiz, AsksPyramidBackForItsBase) {
  const Model model = after(quiz_at_name("square pyramid"), {AnswerTyped{"pyramid"}});
  EXPECT_FALSE(model.state.quiz.revealed);
  ASSERT_TRUE(model.state.quiz.feedback.has_value());
  EXPECT_EQ(model.state.quiz.feedback->verdict, solids::NameVerdict::AskBase);
}

TEST(Quiz, OffersOptionsOfTheSameFaceCount) {
  Model model = after(demo_model("shade"), {SetMode{Mode::Quiz}, SetAnswerStyle{AnswerStyle::Options}});
  const practice::NetQuestion asked = question(model.state);
  ASSERT_GE(asked.options.size(), 2U);
  const std::size_t wrong = asked.right_option == 0 ? 1 : 0;
  model = after(model, {AnswerOption{wrong}});
  EXPECT_FALSE(model.state.quiz.revealed);
  EXPECT_EQ(model.state.quiz.tried_options, std::vector<std::size_t>{wrong});
  EXPECT_TRUE(after(model, {AnswerOption{asked.right_option}}).state.quiz.revealed);
}

TEST(Quiz, AsksAnotherSolidEachTime) {
  Model model = after(demo_model("shade"), {SetMode{Mode::Quiz}});
  for (int i = 0; i < 40; ++i) {
    const std::string name = question(model.state).solid.name();
    model = after(model, {NextQuestion{}});
    EXPECT_NE(question(model.state).solid.name(), name);
  }
}

}  // namespace
}  // namespace fw::app::test::quiz_commands_test
