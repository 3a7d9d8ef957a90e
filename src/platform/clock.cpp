#include "platform/clock.hpp"

#include <chrono>

namespace fw::platform {

double monotonic_seconds() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

}  // namespace fw::platform
