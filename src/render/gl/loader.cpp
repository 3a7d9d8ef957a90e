#include "render/gl/loader.hpp"

#include <string_view>

namespace fw::render::gl {
namespace {

std::string text_of(GLenum name) {
  const GLubyte* text = glGetString(name);
  return text == nullptr ? std::string("unknown") : std::string(reinterpret_cast<const char*>(text));
}

}  // namespace

Result<Dialect, std::string> load_gl(GLADloadfunc load) {
  const int version = gladLoadGL(load);
  if (version == 0) return failure(std::string("There is no OpenGL context to draw with."));
  const std::string named = text_of(GL_VERSION);
  const bool is_es = named.rfind("OpenGL ES", 0) == 0;
  const int major = GLAD_VERSION_MAJOR(version), minor = GLAD_VERSION_MINOR(version);
  const bool is_enough = is_es ? major >= 3 : major > 3 || (major == 3 && minor >= 3);
  if (!is_enough) {
    return failure("The graphics driver offers OpenGL \"" + named +
                   "\"; this program needs OpenGL 3.3 or OpenGL ES 3.0.");
  }
  return is_es ? Dialect::Es30 : Dialect::Core33;
}

std::string driver_name() { return text_of(GL_RENDERER) + ", " + text_of(GL_VERSION); }

}  // namespace fw::render::gl
