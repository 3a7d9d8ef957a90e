#include <algorithm>
#include <set>

#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"
#include "practice/signatures.hpp"

namespace fw::paper {
namespace {

using figures::TextStyle;
using words::message;

constexpr std::size_t tally_boxes = 10;

void add_row(Packet& packet, const std::string& what, const std::string& ask, const std::string& where) {
  const PageStyle style = packet.style();
  const double box = style.is_large ? 7 : 5;
  const double boxes = box * static_cast<double>(tally_boxes);
  const double width = packet.width() - boxes - 4;
  const TextStyle name{style.em(), black};
  const TextStyle hint{style.small_em(), black};
  const double small = style.small_em() * style.leading() / style.em();
  const std::vector<std::string> first = lines_of(packet.measure(), what, name, width);
  const std::vector<std::string> second = lines_of(packet.measure(), ask + " " + where, hint, width);
  const double above = style.leading() * static_cast<double>(first.size());
  const double height = std::max(box + 1, above + small * static_cast<double>(second.size()));
  packet.add({{height, false, false},
              [=](PageCanvas& canvas, const Rect& rect) {
                draw_lines(canvas, first, {rect.x, rect.y, width, above}, name, style.leading());
                draw_lines(canvas, second, {rect.x, rect.y + above, width, rect.h}, hint, small);
                for (std::size_t i = 0; i < tally_boxes; ++i) {
                  const double x = rect.right() - boxes + box * static_cast<double>(i);
                  canvas.path({{x, rect.y}, {x + box, rect.y}, {x + box, rect.y + box}, {x, rect.y + box}}, true,
                              {points(0.6), {}});
                }
              },
              {}});
}

Printed tally_printed(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const std::string title = said(message("Tally: {title}", {{"title", lesson.title}}));
  Packet packet(fonts, style, {title, options.version, lesson_code(lesson), false});
  packet.add_text(said(message("Make a mark for each paper that shows it. A full row is worth ten minutes of class.")),
                  style.em());
  std::map<std::string, std::vector<std::string>> where;  // numbers of problems by mistake
  for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
    for (const AskedItem& item : asked_items(lesson.problems[i])) {
      constexpr std::size_t most = 12;
      for (const LikelyMistake& one : likely_mistakes(lesson.problems[i], item, most)) {
        std::vector<std::string>& numbers = where[one.cause];
        const std::string number = std::to_string(i + 1);
        if (std::find(numbers.begin(), numbers.end(), number) == numbers.end()) {
          numbers.push_back(number);
        }
      }
    }
  }
  std::set<std::string> told;
  const words::Value any = message("The number");
  for (const practice::Signature& signature : practice::signatures()) {
    const auto found = where.find(signature.id);
    if (found == where.end() || !told.insert(signature.id).second) {
      continue;
    }
    constexpr std::size_t most_named = 8;
    std::vector<std::string> named = found->second;
    const bool is_many = named.size() > most_named;
    named.resize(std::min(named.size(), most_named));
    const words::Message places =
        is_many ? message("(problems {numbers:,} and more)", {{"numbers", named}})
                : message("({count:problem|problems} {numbers:and})", {{"count", named.size()}, {"numbers", named}});
    add_row(packet, said(practice::about(signature.saying.says, any)),
            said(practice::about(signature.saying.asks, any)), said(places));
  }
  return packet.printed();
}

}  // namespace

void tally(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(tally_printed(fonts, lesson, options)); });
}

}  // namespace fw::paper
