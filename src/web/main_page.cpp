#include <emscripten/html5.h>

#include <cstdlib>
#include <optional>
#include <string>
#include <utility>

#include "base/ensure.hpp"
#include "lessons/read_lesson.hpp"
#include "lessons/write_lesson.hpp"
#include "platform/assets.hpp"
#include "tasks/catalog.hpp"
#include "web/library.hpp"
#include "web/screen_text.hpp"
#include "web/stored_files.hpp"
#include "window/stage.hpp"

// The program as a page calls it: src/web/page.js asks for each frame and hands in what the user does.
namespace fw::web {
namespace {

constexpr const char* demo_lesson = "lantern_fair.json";

struct Page {
  StoredFiles files;
  EMSCRIPTEN_WEBGL_CONTEXT_HANDLE context = 0;
  std::optional<state::Session> session;
  std::optional<window::Stage> stage;
  std::string reply;  ///< what was returned last; the page reads it where it lies
};

Page& page() {
  static Page* the_page = new Page;
  return *the_page;
}

const char* reply(std::string text) {
  page().reply = std::move(text);
  return page().reply.c_str();
}

/// Returns what is wrong; nothing when there is a context.
std::optional<std::string> make_context() {
  EmscriptenWebGLContextAttributes wanted;
  emscripten_webgl_init_context_attributes(&wanted);
  wanted.majorVersion = 2;
  wanted.alpha = EM_FALSE;
  wanted.depth = EM_TRUE;
  wanted.antialias = EM_FALSE;  // lines are smooth by themselves, as in the window
  page().context = emscripten_webgl_create_context("#canvas", &wanted);
  if (page().context <= 0 || emscripten_webgl_make_context_current(page().context) != EMSCRIPTEN_RESULT_SUCCESS) {
    return "This browser doesn't have WebGL 2, and Foldwright needs it to draw. Please try a newer browser, or turn "
           "on hardware acceleration in its settings.";
  }
  return std::nullopt;
}

/// What is wrong with a lesson, one finding a line.
std::string told(const lessons::Reading& reading) {
  std::string text;
  for (const lessons::Finding& finding : reading.findings) {
    if (!finding.is_remark) {
      text += lessons::text(finding, "lesson") + "\n";
    }
  }
  return text;
}

/// Shows the lesson instead of what is shown. Returns what went wrong with the drawing.
std::optional<std::string> show(lessons::Lesson lesson) {
  Page& p = page();
  if (p.stage) {
    p.stage->save();
  }
  p.stage.reset();
  p.session.reset();
  p.session.emplace(p.files, std::move(lesson), "");
  p.session->save_at_last_words();
  p.session->on_full_screen([](bool on) { page_full_screen(on ? 1 : 0); });
  if (p.context <= 0) {
    if (auto fault = make_context()) {
      return fault;
    }
  }
  const auto dialect = render::gl::load_gl(nullptr);
  if (!dialect) {
    return dialect.error();
  }
  auto stage = window::Stage::make(*p.session, dialect.value());
  if (!stage) {
    return stage.error();
  }
  p.stage.emplace(std::move(stage).value());
  p.stage->use_clipboard({[](const std::string& text) { page_copy(text.c_str()); },
                          [] {
                            char* text = page_pasted();
                            std::string pasted = text == nullptr ? "" : text;
                            std::free(text);
                            return pasted;
                          }});
  return std::nullopt;
}

/// The stage, awake: something came in.
window::Stage* awake() {
  if (!page().stage) {
    return nullptr;
  }
  page().stage->wake();
  return &*page().stage;
}

}  // namespace
}  // namespace fw::web

using fw::web::awake;
using fw::web::page;
using fw::web::reply;

// Called from JavaScript. Texts that are returned lie there until the next call; empty means that nothing is wrong.
extern "C" {

/// Opens a lesson, or the demo lesson for an empty text. Returns what is wrong with it, one finding a line; where that
/// begins with a space, nothing was opened.
const char* fw_open(const char* text) {
  const std::string lesson_text = *text == '\0' ? std::string(fw::platform::asset(fw::web::demo_lesson)) : text;
  fw::lessons::Reading reading = fw::tasks::reading_of(lesson_text);
  const std::string findings = fw::web::told(reading);
  std::optional<fw::lessons::Lesson> lesson = reading.lesson ? std::move(reading.lesson) : std::move(reading.others);
  if (!lesson) {
    return reply(" " + findings);
  }
  const auto fault = fw::web::show(std::move(*lesson));
  return reply(fault ? " " + *fault : findings);
}

/// Draws a frame. Returns 1 when another one is wanted at once.
int fw_frame(double now, int width, int height, int width_px, int height_px) {
  return page().stage && page().stage->frame(now, {width, height, width_px, height_px}) ? 1 : 0;
}

/// Seconds until a frame is due by itself; -1 when none is.
double fw_sleep() {
  constexpr double long_time = 3600;
  if (!page().stage) {
    return -1;
  }
  const auto sleep = page().stage->sleep(long_time);
  return sleep.then_frame ? sleep.seconds : -1;
}

void fw_wake() { awake(); }
void fw_resume(double now) {
  if (page().stage) page().stage->resume_at(now);
}
/// Saves what is to be kept. Returns 1 when there is something new to tell about it.
int fw_save() {
  if (!page().stage) return 0;
  const auto before = page().session->model().view.file_news;
  page().stage->save();
  return page().session->model().view.file_news == before ? 0 : 1;
}

void fw_pointer(double x, double y) {
  if (auto* stage = awake()) stage->input().pointer_at(x, y);
}
void fw_pointer_left() {
  if (auto* stage = awake()) stage->input().pointer_left();
}
void fw_button(int button, int down) {
  if (auto* stage = awake()) stage->input().button(static_cast<fw::window::PointerButton>(button), down != 0);
}
void fw_wheel(double notches) {
  if (auto* stage = awake()) stage->input().wheel(notches);
}
void fw_key(int key, int down) {
  if (auto* stage = awake()) stage->input().key(key, down != 0);
}
void fw_text(int character) {
  if (auto* stage = awake()) stage->input().text(static_cast<unsigned>(character));
}
void fw_let_go() {
  if (auto* stage = awake()) stage->input().let_go();
}

/// `at`: as in fw_screen().
void fw_focus(int at) {
  auto* stage = awake();
  if (stage == nullptr || at < 0 || static_cast<std::size_t>(at) >= stage->ui().items().size()) return;
  stage->focus(stage->ui().items()[static_cast<std::size_t>(at)].id);
}

void fw_lost() {
  if (page().stage) page().stage->forget();
}
/// Returns what went wrong.
const char* fw_restored() {
  emscripten_webgl_destroy_context(page().context);
  page().context = 0;
  if (auto fault = fw::web::make_context()) return reply(*fault);
  const auto dialect = fw::render::gl::load_gl(nullptr);
  if (!dialect) return reply(dialect.error());
  const auto fault = page().stage ? page().stage->restore(dialect.value()) : std::nullopt;
  return reply(fault.value_or(""));
}

/// What is on the screen, as JSON: see screen_text.hpp.
const char* fw_screen() { return reply(page().stage ? fw::web::screen_text(page().stage->ui()) : "[]"); }
/// The lesson that is open, as the text of its file.
const char* fw_lesson() {
  return reply(page().session ? fw::lessons::write_lesson(*page().session->model().state.lesson) : "");
}
const char* fw_title() { return reply(page().session ? page().session->model().state.lesson->title : "Foldwright"); }
}

int main() { return 0; }
