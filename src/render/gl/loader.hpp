#pragma once

// The only include of the OpenGL loader in the house.
#include <glad/gl.h>

#include <string>

#include "base/result.hpp"

namespace fw::render::gl {

/// The two languages that the shaders are written for.
enum class Dialect { Core33, Es30 };

/// Finds OpenGL's functions in the current context: `load` is eglGetProcAddress or glfwGetProcAddress.
/// Returns which dialect the context speaks.
/// Errors: a sentence when there is no current context or it is older than OpenGL 3.3 and OpenGL ES 3.0.
[[nodiscard]] Result<Dialect, std::string> load_gl(GLADloadfunc load);

/// Name of the driver and its version, for reports: "llvmpipe (LLVM 15.0.6, 256 bits), 4.5 (Core Profile)".
[[nodiscard]] std::string driver_name();

}  // namespace fw::render::gl
