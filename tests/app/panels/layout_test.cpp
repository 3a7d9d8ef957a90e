#include <gmock/gmock.h>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "state/worked.hpp"

// Nothing cut off, nothing on top of another, no target too small: at every size, in every mode.
namespace fw::panels::test::layout_test {
namespace {

struct Size {
  double width, height;
};
constexpr Size sizes[] = {{1024, 768}, {1280, 1024}, {960, 1080},  {1280, 720}, {1280, 800},
                          {1366, 768}, {1920, 1080}, {1920, 1200}, {3840, 2160}};

/// The longest that has to be said of files.
FileNews not_saved() {
  return {
      "The file \"/home/classroom/shared documents/grade seven/.local/share/foldwright/progress.json\" cannot be "
      "written: no space is left. Your answers stay in this window until the file can be written. Make room on the "
      "disk or unlock the folder, and keep going.",
      true,
      "The saved place is damaged: an entry is missing or has the wrong type. It was set aside as "
      "place.json.damaged."};
}

/// What stands on the screen.
struct Scene {
  const char* name;
  Model model;
};

std::vector<Scene> scenes(const char* problem) {
  const Model start = demo_model(problem);
  const auto with = [&](const std::vector<Command>& commands) { return after(start, commands); };
  return {
      {"closed", start},
      {"two faces counted", with({CountNext{}, CountNext{}})},
      {"all faces counted, volume shown", with({CountNext{}, CountNext{}, CountNext{}, CountNext{}, CountNext{},
                                                CountNext{}, ShowTotal{true}, ShowVolume{true}})},
      {"a face counted twice", with({CountFace{FaceId{1}}, CountFace{FaceId{1}}, ShowTotal{true}})},
      {"alike faces together", with({SetGrouping{reasoning::Grouping::AlikeTogether}, CountNext{}, CountNext{}})},
      {"open net", with({SetFold{1}, PickFace{FaceId{0}}})},
      {"measures", with({ShowPanel{SidePanel::Measures}})},
      {"refused measure", with({ShowPanel{SidePanel::Measures}, SetMeasure{"slant_height", "1", false}})},
      {"solids", with({ShowPanel{SidePanel::Solids}})},
      {"display", with({ShowPanel{SidePanel::Display}})},
      {"keys", with({ShowKeys{true}})},
      {"presenting", with({SetPresenting{true}, CountNext{}})},
      {"answers not saved", with({TakeFileNews{not_saved()}, CountNext{}})},
      {"answers not saved, progress", with({TakeFileNews{not_saved()}, ShowProgress{true}})},
  };
}

/// Of the mode "Work it out": every step that a problem has, and what else can stand there.
std::vector<Scene> work_scenes(const char* problem) {
  const Model start = after(demo_model(problem), {SetMode{Mode::Work}});
  const auto with = [&](const std::vector<Command>& commands) { return after(start, commands); };
  const std::size_t count = worked_for(start.state).count;
  std::vector<Scene> scenes{
      {"problem", start},
      {"decided", with({StepWork{1}})},
      {"wrong decision", with({Decide{reasoning::Purpose::Edge}})},
      {"all shown", with({ShowSteps{true}})},
      {"last step", with({LastStep{}})},
      {"gaps in all", with({SetFade{Fade::All}, LastStep{}, FillBlank{count - 1, "7"}})},
      {"both ways, begun", with({SetRoute{RouteChoice::Both}, ShowSteps{true}})},
      {"both ways, at the end", with({SetRoute{RouteChoice::Both}, LastStep{}})},
      {"board, all lines open", with({SetDetail{Detail::Board}, LastStep{}, OpenLine{1}, OpenLine{3}, OpenLine{4}})},
      {"face by face", with({SetRoute{RouteChoice::Faces}, LastStep{}})},
      {"ask for", with({ShowWorkPanel{WorkPanel::Ask}})},
      {"missing", with({ShowWorkPanel{WorkPanel::Ask}, AskFor{"slant_height", std::nullopt}})},
      {"missing, steps", with({AskFor{"height", std::nullopt}})},
      {"ways and gaps", with({ShowWorkPanel{WorkPanel::Options}})},
      {"keys", with({ShowKeys{true}})},
      {"presenting", with({SetPresenting{true}, LastStep{}})},
      {"open net", with({SetFold{1}, LastStep{}})},
  };
  const Model shown = with({ShowSteps{true}});
  for (std::size_t i = 0; i < count; ++i) {
    scenes.push_back({"a step", after(shown, {SelectStep{i}, StepNumber{1}})});
    scenes.push_back({"a gap", after(shown, {SelectStep{i}, SetFade{Fade::ThisStep}, FillBlank{i, "1"}})});
  }
  return scenes;
}

class SlowLayout : public testing::TestWithParam<Size> {};

TEST_P(SlowLayout, HoldsInEveryScene) {
  ProgramDriver program(demo_model("shade"), GetParam().width, GetParam().height);
  for (const char* problem : {"shade", "bench-box", "counter", "stall-roof"}) {
    for (const Scene& scene : scenes(problem)) {
      program.show(scene.model);
      for (const std::string& fault : program.user().layout_faults()) {
        ADD_FAILURE() << problem << ", " << scene.name << ": " << fault;
      }
    }
  }
}

// The sizes of most projectors alone: a scene of many steps takes long to draw.
class SlowLayoutOfWork : public testing::TestWithParam<Size> {};

TEST_P(SlowLayoutOfWork, HoldsInEveryScene) {
  ProgramDriver program(demo_model("shade"), GetParam().width, GetParam().height);
  for (const char* problem : {"shade", "planter", "counter", "star-point", "lamp-cube", "globe"}) {
    for (const Scene& scene : work_scenes(problem)) {
      program.show(scene.model);
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

void expect_legible(const std::vector<Scene>& scenes) {
  for (const Size size : sizes) {
    ProgramDriver program(scenes.front().model, size.width, size.height);
    for (const Scene& scene : scenes) {
      program.show(scene.model);
      for (const ItemRecord& item : program.user().ui().items()) {
        if (!item.text.empty() && item.text_size.y > 0) {
          // A line of text is 1.3 times its size high.
          EXPECT_GE(item.text_size.y, 0.035 * theme::reading_height(size.width, size.height) * figures::line_height - 1)
              << item.text << " at " << size.width << "x" << size.height;
        }
      }
    }
  }
}

TEST(SlowLayoutText, NothingToBeReadIsUnderThreeAndAHalfPercent) { expect_legible(scenes("shade")); }

TEST(SlowLayoutText, NothingToBeReadIsUnderThreeAndAHalfPercentWhileItIsWorkedOut) {
  expect_legible(work_scenes("planter"));
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

// Windows of a phone and of a tablet held upright, in the units of a page; as many as a finger is wide, and more.
TEST(LayoutUpright, AFingerCanSetTheFold) {
  for (const Size size : {Size{360, 690}, Size{412, 860}, Size{768, 972}, Size{820, 1128}}) {
    ProgramDriver program(demo_model("shade"), size.width, size.height);
    program.user().frames(2);
    EXPECT_GE(program.user().item(ids::fold_slider).rect.w, 80) << size.width;
    EXPECT_THAT(program.user().layout_faults(), testing::IsEmpty()) << size.width;
  }
}

}  // namespace
}  // namespace fw::panels::test::layout_test
