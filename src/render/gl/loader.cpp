#include "render/gl/loader.hpp"

#include <string_view>

namespace fw::render::gl {
namespace {

std::string text_of(GLenum name) {
  const GLubyte* text = glGetString(name);
  return text == nullptr ? std::string("unknown") : std::string(reinterpret_cast<const char*>(text));
}

struct Version {
  int major = 0, minor = 0;
};

#ifdef __EMSCRIPTEN__
Version loaded_version(FindGlFunction) { return {glGetString(GL_VERSION) == nullptr ? 0 : 3, 0}; }
#else
Version loaded_version(FindGlFunction find) {
  const int version = gladLoadGL(find);
  return {GLAD_VERSION_MAJOR(version), GLAD_VERSION_MINOR(version)};
}
#endif

}  // namespace

Result<Dialect, std::string> load_gl(FindGlFunction find) {
  const Version version = loaded_version(find);
  if (version.major == 0) return failure(std::string("There is no OpenGL context to draw with."));
  const std::string named = text_of(GL_VERSION);
  const bool is_es = named.rfind("OpenGL ES", 0) == 0;
  const bool is_enough = is_es ? version.major >= 3 : version.major > 3 || (version.major == 3 && version.minor >= 3);
  if (!is_enough) {
    return failure("The graphics driver offers OpenGL \"" + named +
                   "\"; this program needs OpenGL 3.3 or OpenGL ES 3.0.");
  }
  return is_es ? Dialect::Es30 : Dialect::Core33;
}

std::string driver_name() { return text_of(GL_RENDERER) + ", " + text_of(GL_VERSION); }

}  // namespace fw::render::gl
