#include "render/gl/headless.hpp"

#include <EGL/egl.h>
#include <EGL/eglext.h>

#include <array>
#include <string_view>
#include <utility>

namespace fw::render::gl {
namespace {

std::string without_window(const std::string& reason) {
  return "No picture can be drawn without a window: " + reason + ".";
}

/// The display that needs no screen; EGL's default one where the driver does not know it.
EGLDisplay surfaceless_display() {
  // Null when no driver is installed at all.
  const char* known = eglQueryString(EGL_NO_DISPLAY, EGL_EXTENSIONS);
  const auto has = [known](std::string_view extension) {
    return known != nullptr && std::string_view(known).find(extension) != std::string_view::npos;
  };
  if (has("EGL_EXT_platform_base") && has("EGL_MESA_platform_surfaceless")) {
    const auto find = reinterpret_cast<PFNEGLGETPLATFORMDISPLAYEXTPROC>(eglGetProcAddress("eglGetPlatformDisplayEXT"));
    if (find != nullptr) return find(EGL_PLATFORM_SURFACELESS_MESA, nullptr, nullptr);
  }
  return eglGetDisplay(EGL_DEFAULT_DISPLAY);
}

EGLContext context_on(EGLDisplay display, Dialect dialect) {
  const bool is_es = dialect == Dialect::Es30;
  if (eglBindAPI(is_es ? EGL_OPENGL_ES_API : EGL_OPENGL_API) != EGL_TRUE) return EGL_NO_CONTEXT;
  const std::array<EGLint, 5> wanted{EGL_SURFACE_TYPE, 0, EGL_RENDERABLE_TYPE,
                                     is_es ? EGL_OPENGL_ES3_BIT : EGL_OPENGL_BIT, EGL_NONE};
  EGLConfig config = nullptr;
  EGLint count = 0;
  if (eglChooseConfig(display, wanted.data(), &config, 1, &count) != EGL_TRUE || count < 1) return EGL_NO_CONTEXT;
  const std::array<EGLint, 5> es{EGL_CONTEXT_MAJOR_VERSION, 3, EGL_CONTEXT_MINOR_VERSION, 0, EGL_NONE};
  const std::array<EGLint, 7> core{
      EGL_CONTEXT_MAJOR_VERSION,           3,       EGL_CONTEXT_MINOR_VERSION, 3, EGL_CONTEXT_OPENGL_PROFILE_MASK,
      EGL_CONTEXT_OPENGL_CORE_PROFILE_BIT, EGL_NONE};
  return eglCreateContext(display, config, EGL_NO_CONTEXT, is_es ? es.data() : core.data());
}

}  // namespace

struct HeadlessContext::Handles {
  Handles(EGLDisplay on, EGLContext made, Dialect spoken) : display(on), context(made), dialect(spoken) {}
  Handles(const Handles&) = delete;
  Handles& operator=(const Handles&) = delete;
  ~Handles() {
    // The display stays: it is the process's only one, and another context may be on it.
    eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, EGL_NO_CONTEXT);
    eglDestroyContext(display, context);
  }
  EGLDisplay display;
  EGLContext context;
  Dialect dialect;
};

HeadlessContext::HeadlessContext(std::unique_ptr<Handles> handles) : handles_(std::move(handles)) {}
HeadlessContext::HeadlessContext(HeadlessContext&&) noexcept = default;
HeadlessContext& HeadlessContext::operator=(HeadlessContext&&) noexcept = default;
HeadlessContext::~HeadlessContext() = default;

Dialect HeadlessContext::dialect() const { return handles_->dialect; }

Result<HeadlessContext, std::string> HeadlessContext::make(Dialect dialect) {
  const std::string version = dialect == Dialect::Es30 ? "OpenGL ES 3.0" : "OpenGL 3.3";
  EGLDisplay display = surfaceless_display();
  if (display == EGL_NO_DISPLAY) return failure(without_window("there is no EGL driver (Debian: libegl-mesa0)"));
  if (eglInitialize(display, nullptr, nullptr) != EGL_TRUE) {
    return failure(without_window("the EGL driver does not start (Debian: libegl-mesa0 and libgl1-mesa-dri)"));
  }
  EGLContext context = context_on(display, dialect);
  if (context == EGL_NO_CONTEXT) return failure(without_window("the driver does not offer " + version));
  auto handles = std::make_unique<Handles>(display, context, dialect);
  if (eglMakeCurrent(display, EGL_NO_SURFACE, EGL_NO_SURFACE, context) != EGL_TRUE) {
    return failure(without_window("the driver cannot do without a surface"));
  }
  const auto loaded = load_gl(eglGetProcAddress);
  if (!loaded) return failure(without_window(loaded.error()));
  if (*loaded != dialect) return failure(without_window("the driver does not offer " + version));
  return HeadlessContext(std::move(handles));
}

}  // namespace fw::render::gl
