#include "app/worked.hpp"
#include "frame_driver.hpp"

// Nothing cut off, nothing on top of another, no target too small: at every size, in every mode.
namespace fw::app::test::layout_test {
namespace {

struct Size {
  double width, height;
};
constexpr Size sizes[] = {{1024, 768}, {1280, 720}, {1280, 800}, {1366, 768}, {1920, 1080}, {1920, 1200}, {3840, 2160}};

struct Scene {
  const char* name;
  std::vector<Command> commands;
};

std::vector<Scene> scenes() {
  return {
      {"closed", {}},
      {"two faces counted", {CountNext{}, CountNext{}}},
      {"all faces counted, volume shown",
       {CountNext{}, CountNext{}, CountNext{}, CountNext{}, CountNext{}, CountNext{}, ShowTotal{true},
        ShowVolume{true}}},
      {"a face counted twice", {CountFace{FaceId{1}}, CountFace{FaceId{1}}, ShowTotal{true}}},
      {"alike faces together", {SetGrouping{reasoning::Grouping::AlikeTogether}, CountNext{}, CountNext{}}},
      {"open net", {SetFold{1}, PickFace{FaceId{0}}}},
      {"measures", {ShowPanel{SidePanel::Measures}}},
      {"refused measure", {ShowPanel{SidePanel::Measures}, SetMeasure{"slant_height", "1", false}}},
      {"solids", {ShowPanel{SidePanel::Solids}}},
      {"display", {ShowPanel{SidePanel::Display}}},
      {"keys", {ShowKeys{true}}},
      {"presenting", {SetPresenting{true}, CountNext{}}},
  };
}

/// Of the mode "Work it out": every step that a problem has, and what else can stand there.
std::vector<Scene> work_scenes(const std::string& problem) {
  const Model start = after(demo_model(problem), {SetMode{Mode::Work}});
  const std::size_t count = worked_for(start.state).count;
  std::vector<Scene> scenes{
      {"problem", {}},
      {"decided", {StepWork{1}}},
      {"wrong decision", {Decide{reasoning::Purpose::Edge}}},
      {"all shown", {ShowSteps{true}}},
      {"last step", {LastStep{}}},
      {"gaps in all", {SetFade{Fade::All}, LastStep{}, FillBlank{count - 1, "7"}}},
      {"both ways, begun", {SetRoute{RouteChoice::Both}, ShowSteps{true}}},
      {"both ways, at the end", {SetRoute{RouteChoice::Both}, LastStep{}}},
      {"face by face", {SetRoute{RouteChoice::Faces}, LastStep{}}},
      {"ask for", {ShowWorkPanel{WorkPanel::Ask}}},
      {"missing", {ShowWorkPanel{WorkPanel::Ask}, AskFor{"slant_height", std::nullopt}}},
      {"missing, steps", {AskFor{"height", std::nullopt}}},
      {"ways and gaps", {ShowWorkPanel{WorkPanel::Options}}},
      {"keys", {ShowKeys{true}}},
      {"presenting", {SetPresenting{true}, LastStep{}}},
      {"open net", {SetFold{1}, LastStep{}}},
  };
  for (std::size_t i = 0; i < count; ++i) {
    scenes.push_back({"a step", {ShowSteps{true}, SelectStep{i}, StepNumber{1}}});
    scenes.push_back({"a gap", {ShowSteps{true}, SelectStep{i}, SetFade{Fade::ThisStep}, FillBlank{i, "1"}}});
  }
  return scenes;
}

class SlowLayout : public testing::TestWithParam<Size> {};

TEST_P(SlowLayout, HoldsInEveryScene) {
  const Size size = GetParam();
  for (const char* problem : {"shade", "bench-box", "counter", "stall-roof"}) {
    for (const Scene& scene : scenes()) {
      ProgramDriver program(after(demo_model(problem), scene.commands), size.width, size.height);
      program.user().frames(2);
      for (const std::string& fault : program.user().layout_faults()) {
        ADD_FAILURE() << problem << ", " << scene.name << ": " << fault;
      }
    }
  }
}

// The sizes of most projectors alone: a scene of many steps takes long to draw.
class SlowLayoutOfWork : public testing::TestWithParam<Size> {};

TEST_P(SlowLayoutOfWork, HoldsInEveryScene) {
  const Size size = GetParam();
  for (const char* problem : {"shade", "planter", "counter", "star-point", "lamp-cube", "globe"}) {
    for (const Scene& scene : work_scenes(problem)) {
      ProgramDriver program(after(after(demo_model(problem), {SetMode{Mode::Work}}), scene.commands), size.width,
                            size.height);
      program.user().frames(2);
      for (const std::string& fault : program.user().layout_faults()) {
        ADD_FAILURE() << problem << ", " << scene.name << " " << program.state().desk().work.present << ": " << fault;
      }
    }
  }
}

std::string size_name(const testing::TestParamInfo<Size>& size) {
  return std::to_string(static_cast<int>(size.param.width)) + "x" + std::to_string(static_cast<int>(size.param.height));
}
INSTANTIATE_TEST_SUITE_P(Sizes, SlowLayout, testing::ValuesIn(sizes), size_name);
INSTANTIATE_TEST_SUITE_P(Sizes, SlowLayoutOfWork, testing::Values(Size{1024, 768}, Size{1280, 720}, Size{1920, 1080}),
                         size_name);

TEST(SlowLayoutText, NothingToBeReadIsUnderThreeAndAHalfPercent) {
  for (const Size size : sizes) {
    for (const Scene& scene : scenes()) {
      ProgramDriver program(after(demo_model("shade"), scene.commands), size.width, size.height);
      for (const ItemRecord& item : program.user().ui().items()) {
        if (!item.text.empty() && item.text_size.y > 0) {
          // A line of text is 1.3 times its size high.
          EXPECT_GE(item.text_size.y, 0.035 * size.height * figures::line_height - 1)
              << item.text << " at " << size.width << "x" << size.height;
        }
      }
    }
  }
}

TEST(SlowLayoutText, NothingToBeReadIsUnderThreeAndAHalfPercentWhileItIsWorkedOut) {
  for (const Size size : sizes) {
    for (const Scene& scene : work_scenes("planter")) {
      ProgramDriver program(after(after(demo_model("planter"), {SetMode{Mode::Work}}), scene.commands), size.width,
                            size.height);
      for (const ItemRecord& item : program.user().ui().items()) {
        if (!item.text.empty() && item.text_size.y > 0) {
          EXPECT_GE(item.text_size.y, 0.035 * size.height * figures::line_height - 1)
              << item.text << " at " << size.width << "x" << size.height;
        }
      }
    }
  }
}

TEST(LayoutDraw, APanelDrawnTwiceShowsTheSame) {
  ProgramDriver program(after(demo_model("shade"), {CountNext{}, SetFold{0.5}}), 1280, 720);
  program.user().frames(1);
  const Model before = program.model();
  const std::size_t items = program.user().ui().items().size();
  program.user().frames(1);
  EXPECT_EQ(program.model(), before);
  EXPECT_EQ(program.user().ui().items().size(), items);
}

}  // namespace
}  // namespace fw::app::test::layout_test
