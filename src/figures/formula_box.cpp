#include "figures/formula_box.hpp"

#include <algorithm>
#include <cmath>

#include "algebra/number_notation.hpp"
#include "base/overload.hpp"
#include "figures/typeset.hpp"

namespace fw::figures {
namespace {

using algebra::Notation;
using Kind = Notation::Kind;

// All in ems of the place where they stand.
constexpr double axis = 0.355;  // height of the middle of "=", "+" and of fraction bars over the baseline
constexpr double stroke = 0.06;
constexpr double bold_stroke = 0.09;
constexpr double stacked = 0.88;  // of the em: the parts of a fraction
constexpr double least_stacked = 0.7;
constexpr double bar_gap = 0.09;
constexpr double bar_overhang = 0.1;

struct Setting {
  const Canvas& canvas;
  double em;
  double least_em;
  bool bold = false;

  [[nodiscard]] Setting smaller(double share) const {
    Setting made = *this;
    made.em = std::max(em * share, std::min(em, least_em));
    return made;
  }
  [[nodiscard]] double line() const { return em * (bold ? bold_stroke : stroke); }
};

FormulaBox box_of(const Notation& notation, const Setting& setting);

void shift(FormulaItem& item, Vec2 by) {
  const auto moved = [by](Rect& rect) { rect = rect.moved(by.x, by.y); };
  std::visit(Overload{[&](FormulaText& text) { text.at += by; },
                      [&](FormulaStroke& line) {
                        for (Vec2& point : line.points) point += by;
                      },
                      [&](FormulaArc& arc) { arc.center += by; },
                      [&](FormulaBand& band) {
                        moved(band.behind);
                        moved(band.band);
                      },
                      [&](FormulaGap& gap) { moved(gap.rect); }},
             item);
}

FormulaBox text_box_in(const Setting& setting, std::string_view text) {
  return text_box_of(setting.canvas, text, setting.em, setting.bold);
}

double space_round(const std::string& sign) {
  if (sign == "·") return 0.16;
  return sign == "×" || sign == "÷" ? 0.2 : 0.26;
}

// In ems, between two neighbors that are no signs.
double space_between(const Notation& left, const Notation& right) {
  if (right.kind == Kind::Unit) return 0.2;
  if (algebra::stand_apart(left, right)) return 0.3;
  const bool mixed = left.kind == Kind::Number && right.kind == Kind::Fraction;
  return mixed ? 0.08 : 0.03;
}

FormulaBox row_box(const Notation& row, const Setting& setting) {
  FormulaBox made;
  const Notation* before = nullptr;
  bool after_unary = false;
  for (const Notation& part : row.parts) {
    const bool is_sign = part.kind == Kind::Sign;
    const bool unary = is_sign && (before == nullptr || before->kind == Kind::Sign);
    double space = 0;
    if (before != nullptr && is_sign && !unary) {
      space = space_round(part.text);
    } else if (before != nullptr && before->kind == Kind::Sign) {
      space = after_unary ? 0.04 : space_round(before->text);
    } else if (before != nullptr) {
      space = space_between(*before, part);
    }
    made.put(box_of(part, setting), {made.width + space * setting.em, 0});
    after_unary = unary;
    before = &part;
  }
  return made;
}

FormulaBox fraction_box(const Notation& fraction, const Setting& setting) {
  const Setting inner = setting.smaller(stacked);
  const FormulaBox above = box_of(fraction.parts.at(0), inner);
  const FormulaBox below = box_of(fraction.parts.at(1), inner);
  const double width = std::max(above.width, below.width) + 2 * bar_overhang * setting.em;
  const double bar = -axis * setting.em;
  const double gap = bar_gap * setting.em + setting.line() / 2;
  FormulaBox made;
  made.put(above, {(width - above.width) / 2, bar - gap - above.below});
  made.put(below, {(width - below.width) / 2, bar + gap + below.above});
  made.items.push_back(FormulaStroke{{{0, bar}, {width, bar}}, setting.line()});
  made.width = width;
  return made;
}

FormulaBox power_box(const Notation& power, const Setting& setting) {
  FormulaBox made = box_of(power.parts.at(0), setting);
  Setting inner = setting;
  inner.em *= power_size;
  const FormulaBox degree = text_box_in(inner, std::to_string(power.degree));
  const double rise = std::max(power_rise * setting.em, made.above - 0.4 * setting.em);
  made.put(degree, {made.width + 0.02 * setting.em, -rise});
  return made;
}

FormulaBox root_box(const Notation& root, const Setting& setting) {
  const FormulaBox inside = box_of(root.parts.at(0), setting);
  const double em = setting.em;
  const double top = -inside.above - 0.1 * em;
  const double bottom = std::max(inside.below - 0.08 * em, 0.08 * em);
  const double knee = std::max(-0.36 * em, (top + bottom) / 2 - 0.05 * em);
  FormulaBox made;
  double left = 0;
  if (root.degree != 2) {
    Setting inner = setting;
    inner.em *= 0.6;
    const FormulaBox degree = text_box_in(inner, std::to_string(root.degree));
    made.put(degree, {0, knee - 0.12 * em - degree.below});
    left = std::max(0.0, degree.width - 0.2 * em);
  }
  const double from = left + 0.56 * em;
  const double right = from + inside.width + 0.06 * em;
  made.put(inside, {from, 0});
  const double half = setting.line() / 2;
  made.items.push_back(FormulaStroke{{{left + half, knee + 0.08 * em},
                                      {left + 0.14 * em, knee},
                                      {left + 0.3 * em, bottom},
                                      {left + 0.5 * em, top},
                                      {right, top}},
                                     setting.line()});
  made.width = right + half;
  made.above = std::max(made.above, half - top);
  made.below = std::max(made.below, bottom + half);
  return made;
}

// An arc over the height of the brackets; `direction` 1 opens to the right, -1 to the left.
FormulaArc bracket_arc(double x, double top, double bottom, double depth, int direction, double width) {
  const double half = (bottom - top) / 2;
  const double radius = (half * half + depth * depth) / (2 * depth);
  const double angle = std::asin(std::min(1.0, half / radius));
  constexpr double pi = 3.14159265358979323846;
  const double middle = direction > 0 ? pi : 0.0;
  return {{x + direction * radius, (top + bottom) / 2}, radius, middle - angle, middle + angle, width};
}

FormulaBox brackets_box(const Notation& brackets, const Setting& setting) {
  const FormulaBox inside = box_of(brackets.parts.at(0), setting);
  const double em = setting.em;
  FormulaBox made;
  if (inside.above + inside.below <= 1.25 * em) {
    made.put(text_box_in(setting, "("), {0, 0});
    made.put(inside, {made.width, 0});
    made.put(text_box_in(setting, ")"), {made.width, 0});
    return made;
  }
  const double depth = 0.2 * em;
  const double half = setting.line() / 2;
  made.put(inside, {depth + 0.14 * em, 0});
  made.width += depth + 0.14 * em;
  made.items.push_back(bracket_arc(half, -inside.above, inside.below, depth, 1, setting.line()));
  made.items.push_back(bracket_arc(made.width - half, -inside.above, inside.below, depth, -1, setting.line()));
  made.above += half;
  made.below += half;
  return made;
}

FormulaBox blank_box(const Notation& blank, const Setting& setting) {
  const double em = setting.em;
  FormulaBox made;
  made.width = std::max(1.6 * em, typeset_size(setting.canvas, blank.text, {em, {}, setting.bold}).x + 0.4 * em);
  made.above = 0.92 * em;
  made.below = 0.3 * em;
  made.items.push_back(FormulaGap{made.rect().inset(setting.line() / 2), setting.line()});
  made.blanks.push_back(made.rect());
  return made;
}

FormulaBox number_box(const Notation& number, const Setting& setting) {
  const Notation opened = algebra::opened_number(number.text);
  return opened.kind == Kind::Number ? text_box_in(setting, number.text) : box_of(opened, setting);
}

// Struck from below its left end to above its right end, a little beyond both.
FormulaBox struck(const FormulaBox& part, double em) {
  const double half = 0.035 * em;
  const double beyond = 0.07 * em;
  FormulaBox made;
  made.put(part, {beyond, 0});
  made.width += beyond;
  const double low = std::max(0.1 * em, part.below - 0.16 * em);
  made.items.push_back(FormulaStroke{{{half, low}, {made.width - half, half - part.above}}, 2 * half});
  return made;
}

// The band and its letter under a term: as large as the term, to be read as well as it.
FormulaBox grouped(const Setting& setting, FormulaBox term, std::size_t group) {
  const double em = setting.em;
  Setting inner = setting;
  inner.bold = true;
  const FormulaBox letter = text_box_in(inner, group_letter(solids::GroupId::at(group)));
  const double side = 0.1 * em;
  const double width = std::max({term.width + 2 * side, letter.width, 0.9 * em});
  const double band_top = term.below + 0.06 * em;
  const double band_height = 0.3 * em;
  const double top = term.above + 0.05 * em;
  FormulaBox made;
  made.items.push_back(FormulaBand{{0, -top, width, top + band_top}, {0, band_top, width, band_height}, group});
  made.put(term, {(width - term.width) / 2, 0});
  made.put(letter, {(width - letter.width) / 2, band_top + band_height + 0.05 * em + letter.above});
  made.width = width;
  made.above = top;
  return made;
}

FormulaBox plain_box(const Notation& notation, const Setting& setting) {
  switch (notation.kind) {
    case Kind::Number:
      return number_box(notation, setting);
    case Kind::Letter:
    case Kind::Unit:
    case Kind::Sign:
    case Kind::Words:
      return text_box_in(setting, notation.text);
    case Kind::Row:
      return row_box(notation, setting);
    case Kind::Fraction:
      return fraction_box(notation, setting);
    case Kind::Power:
      return power_box(notation, setting);
    case Kind::Root:
      return root_box(notation, setting);
    case Kind::Brackets:
      return brackets_box(notation, setting);
    case Kind::Blank:
      return blank_box(notation, setting);
  }
  return {};
}

FormulaBox box_of(const Notation& notation, const Setting& setting) {
  Setting inner = setting;
  inner.bold = setting.bold || notation.changed;
  FormulaBox box = plain_box(notation, inner);
  if (notation.source) box.numbers.push_back({box.rect(), *notation.source});
  if (notation.canceled) box = struck(box, setting.em);
  return notation.group ? grouped(inner, std::move(box), *notation.group) : box;
}

}  // namespace

void FormulaBox::put(const FormulaBox& other, Vec2 at) {
  width = std::max(width, at.x + other.width);
  above = std::max(above, other.above - at.y);
  below = std::max(below, other.below + at.y);
  for (FormulaItem item : other.items) {
    shift(item, at);
    items.push_back(std::move(item));
  }
  for (const auto& number : other.numbers) numbers.push_back({number.rect.moved(at.x, at.y), number.source});
  for (const Rect& blank : other.blanks) blanks.push_back(blank.moved(at.x, at.y));
}

FormulaBox text_box_of(const Canvas& canvas, std::string_view text, double em, bool bold) {
  FormulaBox made;
  const auto pieces = text_pieces(text);
  const bool raised = std::any_of(pieces.begin(), pieces.end(), [](const TextPiece& piece) { return piece.raised; });
  made.width = typeset_size(canvas, text, {em, {}, bold}).x;
  made.above = (raised ? power_rise + power_size * ink_above : ink_above) * em;
  made.below = ink_below * em;
  made.items.push_back(FormulaText{{0, 0}, std::string(text), em, bold});
  return made;
}

FormulaBox formula_box(const Canvas& canvas, const Notation& notation, double em) {
  return box_of(notation, {canvas, em, em * least_stacked});
}

}  // namespace fw::figures
