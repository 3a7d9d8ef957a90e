#include "window/stage.hpp"

#include <gtest/gtest.h>
#include <imgui.h>

#include <cstdlib>
#include <memory>
#include <optional>
#include <type_traits>
#include <utility>

#include "app/state/model_support.hpp"
#include "panels/ids.hpp"
#include "render/gl/headless.hpp"
#include "render/gl/offscreen.hpp"

// The stage with neither window nor display: what it draws lands on a picture.
namespace fw::window::test::stage_gl_test {

using namespace panels;
using namespace state;
using namespace state::test;

namespace {

constexpr Surface surface{1280, 720, 1280, 720};

struct Theater {
  explicit Theater(int width_px = surface.width_px, int height_px = surface.height_px)
      : context(good(render::gl::HeadlessContext::make())),
        target(std::make_unique<render::gl::Offscreen>(good(render::gl::Offscreen::make(width_px, height_px)))),
        session(files, good(tasks::read_lesson(platform::asset("lantern_fair.json"))), "", [] { return 20782; }),
        stage(good(Stage::make(session, context->dialect()))) {}

  template <class T, class E>
  static T good(Result<T, E> result) {
    ensure(result.has_value(), "what the test needs is there");
    return std::move(result).value();
  }
  bool frame(const Surface& on = surface) {
    target->begin({1, 1, 1, 1});
    now += 1.0 / 60;
    return stage.frame(now, on);
  }
  /// Frames until none is wanted; how many.
  int settle() {
    int frames = 0;
    while (stage.wants_frame() && frames < 500) {
      frame();
      ++frames;
    }
    return frames;
  }
  void click(ui::WidgetId id) {
    const ui::ItemRecord* item = stage.ui().item(id);
    ensure(item != nullptr, "the widget is on the screen");
    stage.input().pointer_at(item->rect.center().x, item->rect.center().y);
    stage.input().button(PointerButton::Main, true);
    stage.input().button(PointerButton::Main, false);
    stage.wake();
    settle();
  }

  std::optional<render::gl::HeadlessContext> context;
  std::unique_ptr<render::gl::Offscreen> target;
  platform::MemoryFiles files;
  Session session;
  double now = 100;
  Stage stage;
};

TEST(StageGl, CountsAtAClickAndComesToRest) {
  Theater theater;
  EXPECT_LT(theater.settle(), 500);
  theater.click(ids::lesson_on);
  EXPECT_EQ(theater.session.model().state.desk().counted.size(), 1U);
  EXPECT_FALSE(theater.stage.wants_frame());
}

TEST(StageGl, SavesTwoSecondsAfterAChange) {
  Theater theater;
  theater.settle();
  theater.click(ids::lesson_on);
  const std::string place = theater.files.config_folder().value() + "/place.json";
  theater.stage.save_if_due(theater.now + 1);
  EXPECT_FALSE(theater.files.exists(place));
  EXPECT_LE(theater.stage.sleep(3600).seconds, 2.0);
  theater.stage.save_if_due(theater.now + 2.5);
  EXPECT_TRUE(theater.files.exists(place));
}

TEST(StageGl, DrawsNothingThatIsTooSmallToBeSeen) {
  Theater theater;
  EXPECT_FALSE(theater.frame({16, 700, 16, 700}));
  EXPECT_EQ(theater.stage.frames_drawn(), 0U);
  EXPECT_FALSE(theater.stage.wants_frame());
}

TEST(StageGl, PastesAndCopiesByTheClipboardThatItIsGiven) {
  Theater theater;
  std::string copied;
  theater.stage.use_clipboard({[&](const std::string& text) { copied = text; }, [] { return std::string("12.5"); }});
  ImGui::SetClipboardText("7 cm");
  EXPECT_EQ(copied, "7 cm");
  EXPECT_STREQ(ImGui::GetClipboardText(), "12.5");
}

int queries = 0;

/// Stands in the place of one of OpenGL's functions and counts its calls.
template <auto& slot, class Function = std::remove_reference_t<decltype(slot)>>
class Counted;
template <auto& slot, class R, class... A>
class Counted<slot, R (*)(A...)> {
 public:
  Counted() : real_(slot) {
    real_function = slot;
    slot = [](A... arguments) -> R {
      ++queries;
      return real_function(arguments...);
    };
  }
  Counted(const Counted&) = delete;
  Counted& operator=(const Counted&) = delete;
  ~Counted() { slot = real_; }

 private:
  static inline R (*real_function)(A...) = nullptr;
  R (*real_)(A...);
};

// A question makes a driver finish what it was given; in a browser it is a round trip to another process.
TEST(StageGl, AsksTheDriverNothingInAFrame) {
  Theater theater;
  theater.settle();
  const Counted<glad_glGetIntegerv> integers;
  const Counted<glad_glGetBooleanv> booleans;
  const Counted<glad_glGetFloatv> floats;
  const Counted<glad_glIsEnabled> switches;
  const Counted<glad_glGetError> errors;
  const Counted<glad_glGetString> strings;
  const Counted<glad_glGetUniformLocation> uniforms;
  const Counted<glad_glGetAttribLocation> attributes;
  const Counted<glad_glGetProgramiv> programs;
  const Counted<glad_glCheckFramebufferStatus> framebuffers;
  const Counted<glad_glReadPixels> pixels;
  queries = 0;
  for (int i = 0; i < 10; ++i) {
    theater.session.dispatch({SetFold{i / 10.0}});
    theater.frame();
  }
  theater.frame({1000, 700, 1000, 700});  // another size: the type is drawn anew
  EXPECT_EQ(queries, 0);
  EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
  EXPECT_EQ(queries, 1) << "the count counts";
}

TEST(StageGl, ComesBackAfterALostContextWithNothingLost) {
  Theater theater;
  theater.settle();
  theater.click(ids::lesson_on);
  theater.frame();
  const render::Picture before = theater.target->read_back();

  theater.stage.forget();
  theater.target.reset();
  theater.context.reset();
  theater.stage.wake();
  EXPECT_FALSE(theater.stage.frame(theater.now, surface)) << "nothing is drawn without a context";

  theater.context.emplace(Theater::good(render::gl::HeadlessContext::make()));
  theater.target = std::make_unique<render::gl::Offscreen>(
      Theater::good(render::gl::Offscreen::make(surface.width_px, surface.height_px)));
  EXPECT_EQ(theater.stage.restore(theater.context->dialect()), std::nullopt);
  theater.settle();
  theater.frame();
  EXPECT_EQ(theater.target->read_back(), before);
  EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
  EXPECT_EQ(theater.session.model().state.desk().counted.size(), 1U);
}

TEST(StageGl, DrawsTypeForThePixelsThatThereAre) {
  const auto sizes = [](int width_px, int height_px) {
    Theater theater(width_px, height_px);
    for (int i = 0; i < 3; ++i) theater.frame({1280, 720, width_px, height_px});
    const ui::ItemRecord* text = theater.stage.ui().item(ids::lesson_on);
    ensure(text != nullptr, "the button is there");
    return std::pair(static_cast<double>(ImGui::GetIO().Fonts->Fonts[0]->FontSize), text->text_size.x);
  };
  const auto [once_px, once_wide] = sizes(1280, 720);
  const auto [twice_px, twice_wide] = sizes(2560, 1440);
  EXPECT_NEAR(twice_px, 2 * once_px, 1.0) << "pixels of a line of type";
  EXPECT_NEAR(twice_wide, once_wide, 0.02 * once_wide) << "in units of the window";
}

}  // namespace
}  // namespace fw::window::test::stage_gl_test
