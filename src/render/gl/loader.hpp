#pragma once

// The only include of OpenGL's functions in the house, and the only place that tells a browser from a desktop.
#ifdef __EMSCRIPTEN__
#include <GLES3/gl3.h>
#else
#include <glad/gl.h>
#endif

#include <string>

#include "base/result.hpp"

namespace fw::render::gl {

/// The two languages that the shaders are written for.
enum class Dialect { Core33, Es30 };

/// Finds one of OpenGL's functions by its name: eglGetProcAddress or glfwGetProcAddress.
using GlFunction = void (*)();
using FindGlFunction = GlFunction (*)(const char* name);

/// Finds OpenGL's functions in the current context; in a browser they are linked, and `find` is not called.
/// Returns which dialect the context speaks.
/// Errors: a sentence when there is no current context or it is older than OpenGL 3.3 and OpenGL ES 3.0.
[[nodiscard]] Result<Dialect, std::string> load_gl(FindGlFunction find);

/// Name of the driver and its version, for reports: "llvmpipe (LLVM 15.0.6, 256 bits), 4.5 (Core Profile)".
[[nodiscard]] std::string driver_name();

}  // namespace fw::render::gl
