#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/quiz_support.hpp"

// The pages of the quiz: nothing cut off, nothing on top of another, nothing too small.
namespace fw::panels::test::quiz_layout_test {
namespace {

struct Size {
  double width, height;
};

struct Scene {
  std::string name;
  Model model;
};

std::vector<Scene> made_scenes() {
  const QuizSetup nets{Audience::Student, QuizSource::Nets, {}, 1, 1};
  const QuizSetup of_class{Audience::Class, QuizSource::Lesson, {}, 1, 1};
  const QuizSetup class_nets{Audience::Class, QuizSource::Nets, {}, 1, 2};
  const Model net = after(at_start(nets), {StartQuiz{}});
  const Model class_net = after(at_start(class_nets), {StartQuiz{}});
  const std::vector<Command> hints{ShowHint{}, ShowHint{}, ShowHint{}, ShowHint{}};
  const std::vector<Command> wrong{AnswerTyped{"7 cm^2"}, AnswerTyped{"108 cm^2"}};
  const std::vector<Command> counted{StepQuiz{1}, SetHands{0, "12"}, SetHands{1, "9"}, SetHands{2, "128"}};
  Model refused = at_start(made_up(1));
  refused.state.quiz.refusal =
      words::Message("Can't make this quiz: these types have too few different figures for 10 problems.");
  std::vector<Scene> all{
      {"start", at_start()},
      {"start, nets", at_start(nets)},
      {"start, made up", at_start(made_up(12))},
      {"start, refused", refused},
      {"start, done", after(at_item("snow-ball"), {StepItem{1}})},
      {"start, presenting", after(at_start(made_up(1)), {SetPresenting{true}})},
      {"keys", after(at_start(), {ShowKeys{true}})},
      {"net, typed", after(net, {AnswerTyped{"pyramid"}})},
      {"net, options", after(net, {SetAnswerStyle{AnswerStyle::Options}, AnswerOption{0}})},
      {"net, answer", after(net, {RevealAnswer{}})},
      {"presenting", after(at_item("shade"), {SetPresenting{true}, ShowHint{}})},
      {"class, net", after(class_net, {StepQuiz{1}})},
      {"class, net, answer", after(after(class_net, counted), {StepQuiz{1}})},
  };
  for (const char* id : {"shade", "bunting-tube", "counter", "crate", "window-star", "tea-bag"}) {
    const std::string name = id;
    all.push_back({name + ", question", at_item(id)});
    all.push_back({name + ", hints", after(at_item(id), hints)});
    all.push_back({name + ", wrong once", after(at_item(id), {wrong.front()})});
    all.push_back({name + ", wrong twice", after(at_item(id), wrong)});
    all.push_back({name + ", right", after(at_item(id), {AnswerTyped{right_answer(at_item(id).state)}})});
    all.push_back({name + ", class", at_item(id, of_class)});
    all.push_back({name + ", class, options", after(at_item(id, of_class), counted)});
    all.push_back({name + ", class, answer", after(after(at_item(id, of_class), counted), {StepQuiz{1}})});
    all.push_back(
        {name + ", class, solution", after(after(at_item(id, of_class), counted), {StepQuiz{1}, RevealAnswer{}})});
  }
  return all;
}

const std::vector<Scene>& scenes() {
  static const std::vector<Scene> all = made_scenes();
  return all;
}

class SlowLayoutOfTheQuiz : public testing::TestWithParam<Size> {};

TEST_P(SlowLayoutOfTheQuiz, HoldsInEveryScene) {
  const Size size = GetParam();
  ProgramDriver program(at_start(), size.width, size.height);
  for (const Scene& scene : scenes()) {
    program.show(scene.model);
    for (const std::string& fault : program.user().layout_faults()) {
      ADD_FAILURE() << scene.name << ": " << fault;
    }
    for (const ItemRecord& item : program.user().ui().items()) {
      if (!item.text.empty() && item.text_size.y > 0) {
        // A line of text is 1.3 times its size high.
        EXPECT_GE(item.text_size.y, 0.035 * size.height * figures::line_height - 1) << scene.name << ": " << item.text;
      }
    }
  }
}

INSTANTIATE_TEST_SUITE_P(Sizes, SlowLayoutOfTheQuiz,
                         testing::Values(Size{1024, 768}, Size{1280, 720}, Size{3840, 2160}),
                         [](const testing::TestParamInfo<Size>& size) {
                           return std::to_string(static_cast<int>(size.param.width)) + "x" +
                                  std::to_string(static_cast<int>(size.param.height));
                         });

}  // namespace
}  // namespace fw::panels::test::quiz_layout_test
