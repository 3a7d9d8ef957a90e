#include "panels/sheets/key_list.hpp"

#include <iterator>

namespace fw::panels {
namespace {

using state::Mode;

constexpr KeyRow explore_rows[] = {
    {"PgDn  →  Space", "count, unfold, go on"},    {"PgUp  ←", "the same way back"},
    {"Home  End", "problem before, next problem"}, {"1 … 9", "lift out a face and count it"},
    {"T  V", "how many faces; the volume"},        {"N  Shift+N  K", "next net, net before; hidden numbers"},
    {"H", "move the lifted face to another edge"},
};
constexpr KeyRow work_rows[] = {
    {"PgDn  →  Space", "next step, or what goes in the blank"},
    {"PgUp  ←", "step before"},
    {"Home  End", "first step; all steps"},
    {"1 … 9", "cover, fill, edge; then point to a face"},
    {"W  Shift+W", "where does this number come from?"},
    {"D  O", "board or every step; open or close a line"},
    {"G  A  Shift+A", "a blank here; show or hide all steps"},
    {"N  Shift+N  K", "next net, net before; hidden numbers"},
};
constexpr KeyRow quiz_rows[] = {
    {"PgDn  →", "a hint, the solution, the next one"},
    {"PgUp  ←", "the one before; for a class, a stage back"},
    {"Home  End", "the one before, the next one"},
    {"A … F", "choose an option; count a hand"},
};
constexpr KeyRow every_rows[] = {
    {"U  F  P", "unfold, fold a step; play or stop"},
    {"Shift+arrows", "turn and tilt"},
    {"+  −  0", "larger, smaller, fit"},
    {"Ctrl+1  2  3", "Explore, Work it out, Quiz"},
    {"Ctrl+Z  Ctrl+Y", "undo, redo"},
    {"Ctrl+P", "print; PgDn and PgUp turn its pages"},
    {"B  .", "blank the screen, but not while you type"},
    {"F5  F11", "present on the full screen; full screen"},
    {"F1  Esc", "this page; close what is open"},
    {"Tab  Enter", "walk the buttons; press one, or answer"},
};

}  // namespace

std::vector<KeyRow> key_rows(Mode mode) {
  std::vector<KeyRow> rows;
  switch (mode) {
    case Mode::Explore:
      rows.assign(std::begin(explore_rows), std::end(explore_rows));
      break;
    case Mode::Work:
      rows.assign(std::begin(work_rows), std::end(work_rows));
      break;
    case Mode::Quiz:
      rows.assign(std::begin(quiz_rows), std::end(quiz_rows));
      break;
  }
  rows.insert(rows.end(), std::begin(every_rows), std::end(every_rows));
  return rows;
}

}  // namespace fw::panels
