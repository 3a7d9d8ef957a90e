#include "paper/sheets/problem_block.hpp"
#include "paper/sheets/problem_text.hpp"

namespace fw::paper {

Printed handout(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  constexpr double gap = 4;
  Packet packet(fonts, options.style, {lesson.title, options.version, lesson_code(lesson), options.has_name_line});
  const std::size_t per_page = options.style.is_large ? 1 : options.per_page;
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    const auto count = static_cast<double>(per_page);
    const double room = i < per_page ? packet.first_room() : packet.room();
    const double height = per_page == 0 ? 0 : (room - gap * (count - 1)) / count - 0.01;
    add_problem(packet, lesson.problems[i], i + 1, height, options);
  }
  return packet.printed();
}

}  // namespace fw::paper
