#pragma once

namespace fw::platform {

/// Seconds since some moment of the past; never runs backward.
[[nodiscard]] double monotonic_seconds();

}  // namespace fw::platform
