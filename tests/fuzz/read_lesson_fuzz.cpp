// Whatever bytes come in, the reader answers: a lesson that is written back without loss, or findings that say where.
#include <cstddef>
#include <cstdint>
#include <string_view>

#include "base/ensure.hpp"
#include "lessons/write_lesson.hpp"
#include "tasks/catalog.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const auto lesson = fw::tasks::read_lesson(text);
  if (!lesson) {
    ensure(!lesson.error().empty(), "a lesson that is refused has a finding");
    for (const fw::lessons::Finding& finding : lesson.error()) {
      ensure(!finding.message.empty() && finding.place.line >= 1 && finding.place.column >= 1,
             "a finding says what and where");
    }
    return 0;
  }
  const std::string written = fw::lessons::write_lesson(*lesson);
  const auto again = fw::tasks::read_lesson(written);
  ensure(again.has_value(), "a lesson that was written can be read");
  ensure(*again == *lesson, "a lesson that was written and read is the same");
  ensure(fw::lessons::write_lesson(*again) == written, "writing is stable");
  return 0;
}
