#pragma once

namespace fw::cli {

/// The project's version; a test holds it to the one that CMake states.
inline constexpr const char* version = "0.1.0";

}  // namespace fw::cli
