#include "window/window.hpp"

#include <GLFW/glfw3.h>
#include <backends/imgui_impl_glfw.h>
#include <imgui.h>

#include <algorithm>
#include <optional>
#include <vector>

#include "platform/clock.hpp"
#include "render/gl/frame.hpp"
#include "ui/pace.hpp"
#include "window/painter.hpp"

namespace fw::window {

using namespace bench;
using namespace panels;
using namespace state;
using namespace ui;

namespace {

constexpr int least_width = 640;
constexpr int least_height = 480;
constexpr int least_drawn = 64;       // in a smaller one nothing could be seen, and the toolkit draws none of 16
constexpr double longest_tick = 0.1;  // a stall must not make a fold jump to its end
constexpr double save_after = 2.0;    // seconds after a change

std::string last_glfw_error() {
  const char* text = nullptr;
  glfwGetError(&text);
  return text == nullptr ? std::string("no reason was given") : std::string(text);
}

}  // namespace

// What a window consists of, named since Window::Parts holds it.
namespace window_parts {

/// The library itself, started and ended once.
struct Glfw {
  bool started = glfwInit() == GLFW_TRUE;
  Glfw() = default;
  Glfw(const Glfw&) = delete;
  Glfw& operator=(const Glfw&) = delete;
  ~Glfw() {
    if (started) {
      glfwTerminate();
    }
  }
};

struct WindowCloser {
  void operator()(GLFWwindow* window) const { glfwDestroyWindow(window); }
};

/// The toolkit's input from the window. The toolkit sees only which keys are down when a frame begins; a remote
/// presses and lets go between two frames, so a release that comes so soon waits until the frame has been.
class GlfwBackend {
 public:
  explicit GlfwBackend(GLFWwindow* window) {
    ImGui_ImplGlfw_InitForOpenGL(window, true);
    glfwSetWindowUserPointer(window, this);
    glfwSetKeyCallback(window, [](GLFWwindow* from, int key, int scancode, int action, int modifiers) {
      static_cast<GlfwBackend*>(glfwGetWindowUserPointer(from))->on_key(from, {key, scancode, action, modifiers});
    });
  }
  GlfwBackend(const GlfwBackend&) = delete;
  GlfwBackend& operator=(const GlfwBackend&) = delete;
  ~GlfwBackend() { ImGui_ImplGlfw_Shutdown(); }

  /// Hands over what waited. Returns whether anything did, so that another frame must follow.
  bool after_frame(GLFWwindow* window) {
    const std::vector<KeyEvent> events = std::move(waiting_);
    waiting_.clear();
    pressed_.clear();
    for (const KeyEvent& event : events) {
      on_key(window, event);
    }
    return !events.empty();
  }

 private:
  struct KeyEvent {
    int key, scancode, action, modifiers;
  };
  void on_key(GLFWwindow* window, const KeyEvent& event) {
    const bool seen = std::find(pressed_.begin(), pressed_.end(), event.key) != pressed_.end();
    if (seen || !waiting_.empty()) {
      waiting_.push_back(event);
      return;
    }
    if (event.action == GLFW_PRESS) {
      pressed_.push_back(event.key);
    }
    ImGui_ImplGlfw_KeyCallback(window, event.key, event.scancode, event.action, event.modifiers);
  }

  std::vector<int> pressed_;       ///< since the last frame
  std::vector<KeyEvent> waiting_;  ///< in the order that they came
};

}  // namespace window_parts

using namespace window_parts;

// Members in the order in which they must come to life; they go in the reverse one.
struct Window::Parts {
  explicit Parts(Session& open_session) : session(open_session) {}

  Session& session;
  Glfw glfw;
  std::unique_ptr<GLFWwindow, WindowCloser> window;
  std::optional<ToolkitContext> toolkit;
  std::optional<GlfwBackend> backend;
  std::optional<Painter> painter;
  std::optional<Ui> ui;
  std::size_t frames = 0;
  Pace pace;
  double last_time = 0;
  double changed_at = 0;
  bool unsaved = false;
  int windowed_x = 0, windowed_y = 0, windowed_width = 0, windowed_height = 0;

  void set_full_screen(bool on) {
    if (on) {
      glfwGetWindowPos(window.get(), &windowed_x, &windowed_y);
      glfwGetWindowSize(window.get(), &windowed_width, &windowed_height);
      GLFWmonitor* monitor = glfwGetPrimaryMonitor();
      const GLFWvidmode* mode = monitor == nullptr ? nullptr : glfwGetVideoMode(monitor);
      if (mode != nullptr) {
        glfwSetWindowMonitor(window.get(), monitor, 0, 0, mode->width, mode->height, mode->refreshRate);
      }
    } else {
      glfwSetWindowMonitor(window.get(), nullptr, windowed_x, windowed_y, std::max(windowed_width, least_width),
                           std::max(windowed_height, least_height), GLFW_DONT_CARE);
    }
    pace.wake();
  }

  void save_if_due(bool now) {
    if (unsaved && (now || platform::monotonic_seconds() - changed_at > save_after)) {
      session.save();
      unsaved = false;
    }
  }
};

Window::Window(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Window::Window(Window&&) noexcept = default;
Window& Window::operator=(Window&&) noexcept = default;

Window::~Window() {
  if (parts_) {
    parts_->save_if_due(true);
    parts_->session.on_full_screen(nullptr);
  }
}

Result<Window, std::string> Window::make(Session& session, const WindowOptions& options) {
  auto parts = std::make_unique<Parts>(session);
  if (!parts->glfw.started) {
    return failure("No window can be opened: there is no display (" + last_glfw_error() +
                   "). Without one, \"foldwright picture\" and \"foldwright measure\" still work.");
  }
  glfwWindowHint(GLFW_CONTEXT_VERSION_MAJOR, 3);
  glfwWindowHint(GLFW_CONTEXT_VERSION_MINOR, 3);
  glfwWindowHint(GLFW_OPENGL_PROFILE, GLFW_OPENGL_CORE_PROFILE);
  glfwWindowHint(GLFW_OPENGL_FORWARD_COMPAT, GLFW_TRUE);
  glfwWindowHint(GLFW_DEPTH_BITS, 24);
  parts->window.reset(glfwCreateWindow(options.width, options.height, "Foldwright", nullptr, nullptr));
  if (!parts->window) {
    return failure("No window can be opened: OpenGL 3.3 is needed, and this machine's driver does not offer it (" +
                   last_glfw_error() + ").");
  }
  glfwSetWindowSizeLimits(parts->window.get(), least_width, least_height, GLFW_DONT_CARE, GLFW_DONT_CARE);
  glfwMakeContextCurrent(parts->window.get());
  glfwSwapInterval(options.wait_for_display ? 1 : 0);
  const auto dialect = render::gl::load_gl(reinterpret_cast<GLADloadfunc>(glfwGetProcAddress));
  if (!dialect) {
    return failure(dialect.error());
  }
  parts->toolkit.emplace();
  parts->backend.emplace(parts->window.get());
  auto painter = Painter::make(dialect.value());
  if (!painter) {
    return failure(painter.error());
  }
  parts->painter.emplace(std::move(painter).value());
  parts->ui.emplace();
  parts->last_time = platform::monotonic_seconds();
  Parts* raw = parts.get();
  session.on_full_screen([raw](bool on) { raw->set_full_screen(on); });
  if (session.model().view.settings.full_screen) {
    raw->set_full_screen(true);
  }
  return Window(std::move(parts));
}

bool Window::frame() {
  Parts& parts = *parts_;
  int width = 0;
  int height = 0;
  int width_px = 0;
  int height_px = 0;
  glfwGetWindowSize(parts.window.get(), &width, &height);
  glfwGetFramebufferSize(parts.window.get(), &width_px, &height_px);
  if (std::min({width, height, width_px, height_px}) < least_drawn) {
    parts.pace.rest();  // minimized, or a sliver: it is drawn once it is larger
    return false;
  }
  const double now = platform::monotonic_seconds();
  const double passed = std::min(now - parts.last_time, longest_tick);
  parts.last_time = now;
  bool changed = false;
  if (is_moving(parts.session.model().view)) {
    changed = parts.session.dispatch({Tick{passed}});
  }
  ImGui_ImplGlfw_NewFrame();
  const double reading = theme::reading_height(width, height);
  parts.painter->begin_frame(reading);
  const Model& model = parts.session.model();
  const Theme theme = Theme::make(model.view.settings.theme, reading);
  const FrameResult frame = draw_frame(*parts.ui, parts.painter->fonts(), model, parts.session.derived(), reading);
  parts.painter->paint(frame, theme, width_px, height_px);
  glfwSwapBuffers(parts.window.get());
  ++parts.frames;
  if (parts.session.dispatch(frame.commands)) {
    changed = true;
    parts.unsaved = true;
    parts.changed_at = now;
  }
  const bool keys_wait = parts.backend->after_frame(parts.window.get());
  parts.pace.drawn(changed, keys_wait, *parts.ui);
  return parts.pace.wants_frame(is_moving(parts.session.model().view));
}

bool Window::wait(double seconds) {
  Parts& parts = *parts_;
  const double until = platform::monotonic_seconds() + seconds;
  while (glfwWindowShouldClose(parts.window.get()) == GLFW_FALSE) {
    if (parts.pace.wants_frame(is_moving(parts.session.model().view))) {
      glfwPollEvents();
      frame();
    } else {
      const double left = until - platform::monotonic_seconds();
      if (left <= 0) {
        return true;
      }
      const double before = platform::monotonic_seconds();
      const double most = std::min(left, parts.unsaved ? save_after : left);
      const double wait = Pace::wait(most, *parts.ui);
      glfwWaitEventsTimeout(wait);
      // The time-out to save wakes without an event; only an event, or what changes by itself, is worth a frame.
      const bool woken = wait < most || platform::monotonic_seconds() - before < wait;
      parts.save_if_due(false);
      parts.last_time = platform::monotonic_seconds();
      if (woken) {
        parts.pace.wake();
      }
    }
  }
  return false;
}

void Window::run() {
  constexpr double long_time = 3600;
  while (wait(long_time)) {
  }
  parts_->save_if_due(true);
}

std::size_t Window::frames_drawn() const { return parts_->frames; }

const Ui& Window::ui() const { return *parts_->ui; }

void Window::resize(int width, int height) {
  glfwSetWindowSize(parts_->window.get(), width, height);
  parts_->pace.wake();
}

void Window::ask_to_close() {
  glfwSetWindowShouldClose(parts_->window.get(), GLFW_TRUE);
  glfwPostEmptyEvent();
}

render::Picture Window::screenshot() const {
  int width = 0;
  int height = 0;
  glfwGetFramebufferSize(parts_->window.get(), &width, &height);
  return render::gl::read_shown_window(width, height);
}

}  // namespace fw::window
