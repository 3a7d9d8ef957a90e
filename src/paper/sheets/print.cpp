#include "paper/sheets/print.hpp"

#include <algorithm>

#include "words/message.hpp"

namespace fw::paper {

using words::message;

const std::vector<SheetKind>& sheet_kinds() {
  static const std::vector<SheetKind> table{
      {"handout", "handout", "numbered problems with figures and space to work", handout, {SheetChoice::Work}},
      {"notes",
       "notes with blanks",
       "worked solutions with blanks to fill",
       notes,
       {SheetChoice::Gaps, SheetChoice::Steps}},
      {"key", "answer key", "answers, with steps and likely mistakes", key, {SheetChoice::Steps}},
      {"nets", "nets to cut out", "a net of each solid with tabs, to scale", nets, {SheetChoice::Cutouts}},
      {"test",
       "test",
       "parallel versions, the key of each, and a table of all answers",
       test,
       {SheetChoice::Versions, SheetChoice::Steps, SheetChoice::Work}},
      {"slips", "exit slips", "two on a page: an area, a volume, and which is which", slips, {}},
      {"cards", "matching cards", "solid, net, name and numbers, to cut apart", cards, {}},
      {"words", "words", "each solid with a picture, a sentence and a line for another language", solid_words, {}},
      {"tally", "tally", "the mistakes to look for, with boxes to mark", tally, {}},
      {"pack",
       "sub pack",
       "for a substitute: a script, the student pages, the key",
       pack,
       {SheetChoice::Steps, SheetChoice::Work}},
  };
  return table;
}

bool SheetKind::has(SheetChoice choice) const {
  return std::find(choices.begin(), choices.end(), choice) != choices.end();
}

const SheetKind* find_sheet(std::string_view key) {
  const auto& all = sheet_kinds();
  const auto found = std::find_if(all.begin(), all.end(), [&](const SheetKind& kind) { return kind.key == key; });
  return found == all.end() ? nullptr : &*found;
}

const PaperSize& usual_paper(const lessons::Lesson& lesson) {
  const bool is_metric = !lesson.problems.empty() && lesson.problems.front().solid.unit().ascii().back() == 'm';
  return *find_paper(is_metric ? "a4" : "letter");
}

std::vector<words::Message> remarks_on(const Printed& printed) {
  std::vector<words::Message> remarks = printed.remarks;
  if (!printed.missing.empty()) {
    constexpr std::size_t most = 10;
    std::vector<std::string> shown;
    for (const char32_t character : printed.missing) {
      if (shown.size() < most) {
        shown.push_back(utf8(character));
      }
    }
    const std::size_t more = printed.missing.size() - shown.size();
    remarks.push_back(
        more == 0 ? message("The font doesn't have {characters:or}. You'll see a box instead.", {{"characters", shown}})
                  : message("The font doesn't have {characters:,} and {more} more. You'll see a box instead.",
                            {{"characters", shown}, {"more", more}}));
  }
  if (!printed.too_tall.empty()) {
    remarks.push_back(
        message("{count:Problem|Problems} {ids:and} {count:does|do} not fit on one page, so {count:it takes|they take} "
                "pages of {count:its|their} own.",
                {{"count", printed.too_tall.size()}, {"ids", printed.too_tall}}));
  }
  return remarks;
}

}  // namespace fw::paper
