#include "window/window.hpp"

#include <GLFW/glfw3.h>

#include <algorithm>
#include <optional>
#include <utility>

#include "platform/clock.hpp"
#include "render/gl/shown_window.hpp"
#include "window/stage.hpp"

namespace fw::window {

using namespace state;

namespace {

constexpr int least_width = 640;
constexpr int least_height = 480;

std::string last_glfw_error() {
  const char* text = nullptr;
  glfwGetError(&text);
  return text == nullptr ? std::string("no reason was given") : std::string(text);
}

Input* input_of(GLFWwindow* window) { return static_cast<Input*>(glfwGetWindowUserPointer(window)); }

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

}  // namespace window_parts

using namespace window_parts;

// Members in the order in which they must come to life; they go in the reverse one.
struct Window::Parts {
  explicit Parts(Session& open_session) : session(open_session) {}

  Session& session;
  Glfw glfw;
  std::unique_ptr<GLFWwindow, WindowCloser> window;
  std::optional<Stage> stage;
  int windowed_x = 0, windowed_y = 0, windowed_width = 0, windowed_height = 0;

  [[nodiscard]] Surface surface() const {
    Surface now;
    glfwGetWindowSize(window.get(), &now.width, &now.height);
    glfwGetFramebufferSize(window.get(), &now.width_px, &now.height_px);
    return now;
  }

  void listen();

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
    stage->wake();
  }
};

void Window::Parts::listen() {
  GLFWwindow* from = window.get();
  glfwSetWindowUserPointer(from, &stage->input());
  glfwSetKeyCallback(from, [](GLFWwindow* one, int key, int, int action, int) {
    if (action != GLFW_REPEAT) {
      input_of(one)->key(key, action == GLFW_PRESS);
    }
  });
  glfwSetCharCallback(from, [](GLFWwindow* one, unsigned character) { input_of(one)->text(character); });
  glfwSetCursorPosCallback(from, [](GLFWwindow* one, double x, double y) { input_of(one)->pointer_at(x, y); });
  glfwSetCursorEnterCallback(from, [](GLFWwindow* one, int entered) {
    if (entered == GLFW_FALSE) {
      input_of(one)->pointer_left();
    }
  });
  glfwSetScrollCallback(from, [](GLFWwindow* one, double, double notches) { input_of(one)->wheel(notches); });
  glfwSetMouseButtonCallback(from, [](GLFWwindow* one, int button, int action, int) {
    if (button <= GLFW_MOUSE_BUTTON_MIDDLE) {
      input_of(one)->button(static_cast<PointerButton>(button), action == GLFW_PRESS);
    }
  });
  stage->use_clipboard({[from](const std::string& text) { glfwSetClipboardString(from, text.c_str()); },
                        [from] {
                          const char* text = glfwGetClipboardString(from);
                          return text == nullptr ? std::string() : std::string(text);
                        }});
}

Window::Window(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Window::Window(Window&&) noexcept = default;
Window& Window::operator=(Window&&) noexcept = default;

Window::~Window() {
  if (parts_ && parts_->stage) {
    parts_->stage->save();
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
  const auto dialect = render::gl::load_gl(glfwGetProcAddress);
  if (!dialect) {
    return failure(dialect.error());
  }
  auto stage = Stage::make(session, dialect.value());
  if (!stage) {
    return failure(stage.error());
  }
  parts->stage.emplace(std::move(stage).value());
  parts->listen();
  Parts* raw = parts.get();
  session.on_full_screen([raw](bool on) { raw->set_full_screen(on); });
  if (session.model().view.settings.full_screen) {
    raw->set_full_screen(true);
  }
  return Window(std::move(parts));
}

bool Window::frame() {
  Stage& stage = *parts_->stage;
  const std::size_t before = stage.frames_drawn();
  const bool wanted = stage.frame(platform::monotonic_seconds(), parts_->surface());
  if (stage.frames_drawn() != before) {
    glfwSwapBuffers(parts_->window.get());
  }
  return wanted;
}

bool Window::wait(double seconds) {
  Stage& stage = *parts_->stage;
  const double until = platform::monotonic_seconds() + seconds;
  while (glfwWindowShouldClose(parts_->window.get()) == GLFW_FALSE) {
    if (stage.wants_frame()) {
      glfwPollEvents();
      frame();
    } else {
      const double before = platform::monotonic_seconds();
      if (before >= until) {
        return true;
      }
      const Stage::Sleep sleep = stage.sleep(until - before);
      glfwWaitEventsTimeout(sleep.seconds);
      const double now = platform::monotonic_seconds();
      stage.save_if_due(now);
      stage.resume_at(now);
      // The time-out to save wakes without an event; only an event, or what changes by itself, is worth a frame.
      if (sleep.then_frame || now - before < sleep.seconds) {
        stage.wake();
      }
    }
  }
  return false;
}

void Window::run() {
  constexpr double long_time = 3600;
  while (wait(long_time)) {
  }
  parts_->stage->save();
}

std::size_t Window::frames_drawn() const { return parts_->stage->frames_drawn(); }

const ui::Ui& Window::ui() const { return parts_->stage->ui(); }

void Window::resize(int width, int height) {
  glfwSetWindowSize(parts_->window.get(), width, height);
  parts_->stage->wake();
}

void Window::ask_to_close() {
  glfwSetWindowShouldClose(parts_->window.get(), GLFW_TRUE);
  glfwPostEmptyEvent();
}

render::Picture Window::screenshot() const {
  const Surface surface = parts_->surface();
  return render::gl::read_shown_window(surface.width_px, surface.height_px);
}

}  // namespace fw::window
