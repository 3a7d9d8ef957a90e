#include <algorithm>

#include "figures/net_sketch.hpp"
#include "paper/sheets/problem_figure.hpp"
#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"
#include "practice/seed.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr std::size_t card_columns = 2;
constexpr std::size_t card_rows = 4;

/// One face of a set of four that belong together.
struct Card {
  enum class Shows { Solid, Net, Name, Numbers };
  Shows shows = Shows::Solid;
  std::size_t set = 0;
};

/// "S = 36 cm²", "S ≈ 20.65 cm²".
std::string equation(const std::string& letter, const std::string& value) {
  return value.rfind("≈", 0) == 0 ? letter + " " + value : letter + " = " + value;
}

/// One problem a kind of solid, so that a name matches one set alone.
std::vector<const lessons::Problem*> card_problems(const lessons::Lesson& lesson) {
  std::vector<const lessons::Problem*> chosen;
  for (const lessons::Problem& problem : lesson.problems) {
    const bool is_known = std::any_of(chosen.begin(), chosen.end(), [&](const lessons::Problem* one) {
      return one->solid.name() == problem.solid.name();
    });
    if (!is_known) {
      chosen.push_back(&problem);
    }
  }
  return chosen;
}

void draw_card(PageCanvas& canvas, const Card& card, const lessons::Problem& problem, std::size_t number,
               const Rect& rect, const PageStyle& style) {
  const Pen cut{points(0.75), {3, 2}};
  canvas.path({{rect.x, rect.y}, {rect.right(), rect.y}, {rect.right(), rect.bottom()}, {rect.x, rect.bottom()}}, true,
              cut);
  canvas.text({rect.x + 2, rect.y + 1}, HAlign::Left, VAlign::Top, std::to_string(number),
              {style.small_em(), black, true});
  const Rect inside = rect.inset(7, 5);
  const solids::Solid& solid = problem.solid;
  const TextStyle text{style.em(), black};
  switch (card.shows) {
    case Card::Shows::Solid: {
      std::vector<std::optional<std::string>> labels;
      for (std::size_t i = 0; i < solid.marks().size(); ++i) {
        const auto id = solids::MarkId::at(i);
        const std::string label = solid.label(id);
        const bool is_given = solid.is_given(solid.marks()[id].symbol) && label != "?";
        labels.push_back(is_given ? std::optional(label) : std::nullopt);
      }
      figures::draw_solid_figure(canvas, solid, labels, inside, style.figure_look());
      break;
    }
    case Card::Shows::Net:
      figures::draw_net_sketch(canvas, solid, solid.classic_net(), inside, style.palette());
      break;
    case Card::Shows::Name: {
      const TextStyle name{style.heading_em(), black, true};
      const std::vector<std::string> lines = lines_of(canvas, solid.name(), name, inside.w);
      const double leading = name.size * figures::line_height;
      const double height = leading * static_cast<double>(lines.size());
      draw_lines(canvas, lines, {inside.x, inside.center().y - height / 2, inside.w, height}, name, leading);
      break;
    }
    case Card::Shows::Numbers: {
      const std::vector<std::string> lines{equation("S", units::text(solid.surface_area(), 2)),
                                           equation("V", units::text(solid.volume(), 2))};
      const double leading = 1.4 * style.leading();
      draw_lines(canvas, lines, {inside.x, inside.center().y - leading, inside.w, 2 * leading}, text, leading);
      break;
    }
  }
}

Printed cards_printed(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  constexpr std::size_t per_page = card_columns * card_rows;
  const PageStyle& style = options.style;
  const Rect box = style.paper.printable();
  const double width = box.w / card_columns;
  const double height = box.h / card_rows;
  const std::vector<const lessons::Problem*> problems = card_problems(lesson);
  std::vector<Card> all;
  for (std::size_t i = 0; i < problems.size(); ++i) {
    for (const auto shows : {Card::Shows::Solid, Card::Shows::Net, Card::Shows::Name, Card::Shows::Numbers}) {
      all.push_back({shows, i});
    }
  }
  practice::Seed seed{options.order};
  practice::shuffle(all, seed);
  Printed printed;
  std::vector<std::vector<std::string>> numbers(problems.size());
  for (std::size_t first = 0; first < all.size(); first += per_page) {
    PageCanvas canvas(fonts, style.paper.width, style.paper.height);
    for (std::size_t i = first; i < std::min(first + per_page, all.size()); ++i) {
      const std::size_t place = i - first;
      const std::size_t row = place / card_columns;
      const Rect cell{box.x + width * static_cast<double>(place % card_columns),
                      box.y + height * static_cast<double>(row), width, height};
      draw_card(canvas, all[i], *problems[all[i].set], i + 1, cell, style);
      numbers[all[i].set].push_back(std::to_string(i + 1));
    }
    printed.missing.insert(canvas.missing().begin(), canvas.missing().end());
    printed.pages.push_back(std::move(canvas).take());
  }
  Packet packet(fonts, style, {said(message("Key: which cards match")), options.version, lesson_code(lesson), false});
  for (std::size_t i = 0; i < problems.size(); ++i) {
    packet.add_text(said(message("{solid}: {cards:,}", {{"solid", problems[i]->solid.name()}, {"cards", numbers[i]}})),
                    style.em());
  }
  printed.add(packet.printed());
  return printed;
}

}  // namespace

void cards(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(cards_printed(fonts, lesson, options)); });
}

}  // namespace fw::paper
