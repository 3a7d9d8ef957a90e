#include "platform/clock.hpp"

#include <array>
#include <chrono>
#include <cstdio>
#include <ctime>

namespace fw::platform {

double monotonic_seconds() {
  return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

int local_day() { return local_day_at(std::time(nullptr)); }

int local_day_at(std::int64_t seconds) {
  // A browser's time_t is narrower, until the year 2038 wide enough.
  const std::chrono::system_clock::time_point point{std::chrono::seconds(seconds)};
  const std::time_t moment = std::chrono::system_clock::to_time_t(point);
  std::tm local{};
  ::tzset();
  ::localtime_r(&moment, &local);
  const std::chrono::year_month_day date{std::chrono::year(local.tm_year + 1900),
                                         std::chrono::month(static_cast<unsigned>(local.tm_mon + 1)),
                                         std::chrono::day(static_cast<unsigned>(local.tm_mday))};
  return static_cast<int>(std::chrono::sys_days(date).time_since_epoch().count());
}

std::string date_text(int day) {
  const std::chrono::year_month_day date{std::chrono::sys_days(std::chrono::days(day))};
  std::array<char, 32> text{};
  std::snprintf(text.data(), text.size(), "%04d-%02u-%02u", static_cast<int>(date.year()),
                static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day()));
  return text.data();
}

}  // namespace fw::platform
