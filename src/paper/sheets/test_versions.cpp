#include <algorithm>
#include <memory>

#include "paper/sheets/problem_text.hpp"
#include "paper/sheets/sheets.hpp"
#include "tasks/generate/versions.hpp"

namespace fw::paper {
namespace {

using words::message;

std::string version_letter(std::size_t version) { return std::string(1, static_cast<char>('A' + version)); }

/// Item by item the answers of all versions.
Printed differences(const Fonts& fonts, const std::vector<lessons::Lesson>& versions, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const std::string title = said(message("All versions: {title}", {{"title", versions.front().title}}));
  Packet packet(fonts, style, {title, "", lesson_code(versions.front()), false}, 1.5);
  std::vector<std::string> codes;
  for (std::size_t v = 0; v < versions.size(); ++v) {
    codes.push_back(version_letter(v) + " " + lesson_code(versions[v]));
  }
  packet.add_text(said(message("Codes: {codes:,}", {{"codes", codes}})), style.em());
  for (std::size_t i = 0; i < versions.front().problems.size(); ++i) {
    std::vector<std::string> cells;
    for (std::size_t v = 0; v < versions.size(); ++v) {
      const lessons::Problem& problem = versions[v].problems[i];
      std::vector<std::string> answers;
      for (const AskedItem& item : asked_items(problem)) {
        answers.push_back(answer_line(problem, item, options.order + v));
      }
      cells.push_back(version_letter(v) + "  " + said(message("{answers:,}", {{"answers", answers}})));
    }
    packet.add_text(std::to_string(i + 1) + ".  " + versions.front().problems[i].solid.name(), style.em(), true, true);
    packet.add_text(said(message("{cells:;}", {{"cells", cells}})), style.em(), false, false, 8);
  }
  return packet.printed();
}

}  // namespace

void test(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  const std::size_t problems = lesson.problems.size();
  const auto versions = std::make_shared<tasks::Versions>();
  versions->lessons.assign(options.versions, lesson);
  const bool has_several = options.versions > 1;
  for (std::size_t i = 0; i < problems && has_several; ++i) {
    work.add([=, &lesson](SheetWork&) { tasks::vary_problem(*versions, lesson, i, options.seed); });
  }
  for (const SheetPlan plan : {handout, key}) {
    for (std::size_t v = 0; v < options.versions; ++v) {
      SheetOptions own = options;
      own.version = has_several ? version_letter(v) : "";
      own.order = options.order + v;
      work.add_part(packet_steps(problems),
                    [=, &fonts](SheetWork& part) { plan(part, fonts, versions->lessons[v], own); });
    }
  }
  if (has_several) {
    work.add([=, &fonts](SheetWork& done) {
      Printed table = differences(fonts, versions->lessons, options);
      table.remarks.insert(table.remarks.end(), versions->unchanged.begin(), versions->unchanged.end());
      done.printed.add(std::move(table));
    });
  }
}

}  // namespace fw::paper
