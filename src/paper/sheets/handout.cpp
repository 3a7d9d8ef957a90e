#include <memory>

#include "paper/sheets/problem_block.hpp"
#include "paper/sheets/problem_text.hpp"

namespace fw::paper {

void handout(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  constexpr double gap = 4;
  const auto packet = std::make_shared<Packet>(
      fonts, options.style, Furniture{lesson.title, options.version, lesson_code(lesson), options.has_name_line});
  const std::size_t per_page = options.style.is_large ? 1 : options.per_page;
  add_packet(work, packet, lesson.problems.size(), [=, &lesson](Packet& pages, std::size_t i) {
    const auto count = static_cast<double>(per_page);
    const double room = i < per_page ? pages.first_room() : pages.room();
    const double height = per_page == 0 ? 0 : (room - gap * (count - 1)) / count - 0.01;
    add_problem(pages, lesson.problems[i], i + 1, height, options);
  });
}

}  // namespace fw::paper
