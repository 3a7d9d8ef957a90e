#pragma once

#include <cstdint>
#include <string>

namespace fw::platform {

/// Seconds since some moment of the past; never runs backward.
[[nodiscard]] double monotonic_seconds();

/// Today where the user is, in days since January 1, 1970.
[[nodiscard]] int local_day();
/// The same of a moment: seconds since the beginning of 1970 in UTC. The zone is that of the environment (TZ).
[[nodiscard]] int local_day_at(std::int64_t seconds);
/// A day as ISO 8601 writes it: "2026-12-01". Requires: within the years 0 to 9999.
[[nodiscard]] std::string date_text(int day);

}  // namespace fw::platform
