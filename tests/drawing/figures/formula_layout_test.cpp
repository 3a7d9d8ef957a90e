#include "figures/formula_layout.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <rapidcheck.h>

#include <algorithm>

#include "figures/column_work_figure.hpp"
#include "figures/recording_canvas.hpp"

namespace fw::figures::formula_layout_test {
namespace {

using algebra::leaf;
using algebra::Notation;
using algebra::NotationLine;
using algebra::row;
using exact::Number;
using Kind = Notation::Kind;

constexpr double em = 40;

Notation made_of(Kind kind, std::vector<Notation> parts, int degree = 2) {
  Notation made = row(std::move(parts));
  made.kind = kind;
  made.degree = degree;
  return made;
}

Notation fraction(Notation above, Notation below) {
  return made_of(Kind::Fraction, {std::move(above), std::move(below)});
}

Notation number(const std::string& text) { return leaf(Kind::Number, text); }
Notation sign(const std::string& text) { return leaf(Kind::Sign, text); }
Notation quantity(const std::string& text, const std::string& unit) {
  return row({number(text), leaf(Kind::Unit, unit)});
}

/// Records what a layout draws at (100, 50).
struct Drawn {
  RecordingCanvas canvas;
  FormulaLayout layout;
  Rect bounds;

  template <class Source>
  explicit Drawn(const Source& source) : layout(canvas, source, em), bounds{100, 50, layout.size().x, layout.size().y} {
    layout.draw(canvas, {100, 50}, Palette{});
  }
};

// What the text covers: from 0.79 em above the baseline to 0.24 em below.
Rect ink(const RecordingCanvas::Text& text) {
  const double baseline = text.box.y + line_baseline * text.style.size;
  return {text.box.x, baseline - 0.79 * text.style.size, text.box.w, 1.03 * text.style.size};
}

// Lines end square at their last points.
Rect rect_of(const RecordingCanvas::Path& path) {
  const Rect rect = bounding_rect(path.points);
  if (!path.stroke) return rect;
  const double half = path.stroke->width / 2;
  return path.points.size() == 2 && rect.h == 0 ? rect.inset(0, -half) : rect.inset(-half);
}

// Level lines of two points: fraction bars.
std::vector<Rect> bars(const RecordingCanvas& canvas) {
  std::vector<Rect> found;
  for (const auto& path : canvas.paths()) {
    if (path.points.size() == 2 && path.points[0].y == path.points[1].y) found.push_back(bounding_rect(path.points));
  }
  return found;
}

std::string words_of(const RecordingCanvas& canvas) {
  std::string all;
  for (const auto& text : canvas.texts()) all += text.text + " ";
  return all;
}

Notation any_notation(int depth) {
  static const std::vector<Notation> leaves{number("49.5"),        number("7 1/2"),         number("3√(25 + 10√5)"),
                                            number("√3/2"),        number("130π"),          leaf(Kind::Letter, "ℓ"),
                                            quantity("36", "cm²"), leaf(Kind::Blank, "144")};
  Notation made = leaves[*rc::gen::inRange<std::size_t>(0, leaves.size())];
  if (depth > 0) {
    const auto part = [depth] { return any_notation(depth - 1); };
    switch (*rc::gen::inRange(0, 6)) {
      case 0:
        made = row({part(), sign("+"), part()});
        break;
      case 1:
        made = row({part(), sign("×"), part(), sign("−"), part()});
        break;
      case 2:
        made = fraction(part(), part());
        break;
      case 3:
        made = made_of(Kind::Power, {made_of(Kind::Brackets, {part()})}, 3);
        break;
      case 4:
        made = made_of(Kind::Root, {part()}, *rc::gen::inRange(2, 4));
        break;
      default:
        made = made_of(Kind::Brackets, {part()});
    }
  }
  if (*rc::gen::inRange(0, 5) == 0) made.group = *rc::gen::inRange<std::size_t>(0, 8);
  made.canceled = *rc::gen::inRange(0, 5) == 0;
  made.changed = *rc::gen::inRange(0, 5) == 0;
  if (*rc::gen::inRange(0, 3) == 0) made.source = 1;
  return made;
}

// Guarantees 1 and 2 of FormulaLayout.
TEST(FormulaLayout, EverythingStandsInsideAndNoTextsOverlap) {
  EXPECT_TRUE(rc::check([] {
    const Drawn drawn(any_notation(*rc::gen::inRange(0, 4)));
    const auto texts = drawn.canvas.texts();
    for (std::size_t i = 0; i < texts.size(); ++i) {
      RC_ASSERT(drawn.bounds.contains(ink(texts[i]), 1e-6));
      for (std::size_t j = 0; j < i; ++j) RC_ASSERT(!ink(texts[i]).overlaps(ink(texts[j]), 1e-6));
    }
    for (const auto& path : drawn.canvas.paths()) RC_ASSERT(drawn.bounds.contains(rect_of(path), 1e-6));
    for (const Rect& bar : bars(drawn.canvas)) {
      for (const auto& text : texts) RC_ASSERT(!ink(text).overlaps(bar.inset(0, -1), 1e-6));
    }
    for (const auto& one : drawn.layout.numbers({100, 50})) RC_ASSERT(drawn.bounds.contains(one.rect, 1e-6));
    for (const Rect& blank : drawn.layout.blanks({100, 50})) RC_ASSERT(drawn.bounds.contains(blank, 1e-6));
  }));
}

// Guarantee 3.
TEST(FormulaLayout, SizesGrowWithTheEm) {
  EXPECT_TRUE(rc::check([] {
    const Notation notation = any_notation(3);
    const RecordingCanvas canvas;
    const Vec2 once = FormulaLayout(canvas, notation, em).size();
    const Vec2 twice = FormulaLayout(canvas, notation, 2 * em).size();
    RC_ASSERT(glm::distance(twice, 2.0 * once) < 1e-6 * (1 + once.x + once.y));
  }));
}

TEST(FormulaLayout, AFractionBarIsAsWideAsTheWiderPart) {
  const Drawn drawn(fraction(row({leaf(Kind::Letter, "P"), sign("·"), leaf(Kind::Letter, "ℓ")}), number("2")));
  const auto found = bars(drawn.canvas);
  ASSERT_EQ(found.size(), 1U);
  const auto texts = drawn.canvas.texts();
  const double above = texts[2].box.right() - texts[0].box.x;
  EXPECT_GT(found[0].w, above);
  EXPECT_LT(found[0].w, above + 0.4 * em);
  EXPECT_LT(ink(texts[0]).bottom(), found[0].y);
  EXPECT_GT(ink(texts[3]).y, found[0].y);
  EXPECT_NEAR(texts[3].box.center().x, found[0].center().x, 1e-6);
}

TEST(FormulaLayout, ACanceledPartIsStruckThroughWithASlant) {
  Notation gone = number("24");
  gone.canceled = true;
  const Drawn drawn(row({gone, sign("×"), number("3")}));
  const auto paths = drawn.canvas.paths();
  ASSERT_EQ(paths.size(), 1U);
  const Rect stroke = bounding_rect(paths[0].points);
  const Rect struck = ink(drawn.canvas.texts()[0]);
  EXPECT_LE(stroke.x, struck.x);
  EXPECT_GE(stroke.right(), struck.right());
  EXPECT_LE(stroke.y, struck.y + 0.1 * em);
  EXPECT_FALSE(stroke.overlaps(ink(drawn.canvas.texts()[1])));
  EXPECT_GT(paths[0].points[0].y, paths[0].points[1].y);
}

TEST(FormulaLayout, EqualsSignsStandUnderEachOther) {
  RecordingCanvas canvas;
  std::vector<FormulaLayout> lines;
  for (const auto& [left, right] : {std::pair{"24ℓ + 36", "384"}, {"24ℓ", "348"}, {"ℓ", "7 1/2"}}) {
    lines.emplace_back(canvas, NotationLine{leaf(Kind::Words, left), "=", number(right)}, em);
  }
  lines.emplace_back(canvas, NotationLine{leaf(Kind::Letter, "ℓ"), "≈", number("14.5")}, 1.5 * em);
  const FormulaPage page = set_down(lines, 12);
  for (std::size_t i = 0; i < lines.size(); ++i) lines[i].draw(canvas, page.places[i], Palette{});
  std::vector<double> middles;
  for (const auto& text : canvas.texts()) {
    if (text.text == "=" || text.text == "≈") middles.push_back(text.box.center().x);
  }
  ASSERT_EQ(middles.size(), 4U);
  for (const double middle : middles) EXPECT_NEAR(middle, middles.front(), 1e-6);
  for (std::size_t i = 1; i < lines.size(); ++i) {
    EXPECT_NEAR(page.places[i].y, page.places[i - 1].y + lines[i - 1].size().y + 12, 1e-6);
  }
  EXPECT_NEAR(page.size.y, page.places.back().y + lines.back().size().y, 1e-6);
}

TEST(FormulaLayout, ALongSumGoesOnUnderItself) {
  RecordingCanvas canvas;
  const NotationLine line{
      leaf(Kind::Letter, "S"), "=",
      row({number("36"), sign("+"), number("27"), sign("+"), number("27"), sign("−"), number("9")})};
  const FormulaLayout one(canvas, line, em);
  const FormulaLayout several(canvas, line, em, one.size().x * 0.6);
  EXPECT_LE(several.size().x, one.size().x * 0.6);
  EXPECT_GT(several.size().y, one.size().y * 1.9);
  several.draw(canvas, {0, 0}, Palette{});
  EXPECT_EQ(words_of(canvas), "S = 36 + 27 + 27 − 9 ");
}

TEST(FormulaLayout, TellsWhereItsNumbersAndBlanksStand) {
  Notation base = number("36");
  base.source = 3;
  Notation lateral = number("7 1/2");
  lateral.source = 5;
  const Drawn drawn(row({base, sign("+"), fraction(lateral, leaf(Kind::Blank, "2"))}));
  const auto numbers = drawn.layout.numbers({100, 50});
  ASSERT_EQ(numbers.size(), 2U);
  EXPECT_EQ(numbers[0].source, 3U);
  EXPECT_TRUE(numbers[0].rect.contains(ink(drawn.canvas.texts()[0]), 1e-6));
  EXPECT_EQ(numbers[1].source, 5U);
  for (std::size_t i = 2; i < 5; ++i) EXPECT_TRUE(numbers[1].rect.contains(ink(drawn.canvas.texts()[i]), 1e-6));
  const auto blanks = drawn.layout.blanks({100, 50});
  ASSERT_EQ(blanks.size(), 1U);
  EXPECT_GE(blanks[0].w, 1.5 * 0.8 * em);
  EXPECT_THAT(words_of(drawn.canvas), testing::Not(testing::HasSubstr("2 2")));
}

// Never color alone, and text of a contrast of 7:1: WCAG 2.2, success criterion 1.4.6.
TEST(FormulaLayout, AGroupsTermHasItsColorHatchAndLetterAndIsReadable) {
  for (const std::uint32_t ground : {0xFBF9F4U, 0x14171FU, 0xFFFFFFU}) {
    Palette palette;
    palette.ground = Color::hex(ground);
    palette.ink = Color::hex(ground == 0x14171FU ? 0xF3F5F9U : 0x1A1D26U);
    for (std::size_t group = 0; group < 6; ++group) {
      RecordingCanvas canvas;
      Notation term = quantity("36", "cm²");
      term.group = group;
      FormulaLayout(canvas, term, em).draw(canvas, {0, 0}, palette);
      const FaceStyle style = face_style(solids::GroupId::at(group), palette);
      EXPECT_EQ(canvas.texts().back().text, style.letter);
      const auto paths = canvas.paths();
      EXPECT_EQ(std::count_if(paths.begin(), paths.end(), [&](const auto& path) { return path.fill == style.fill; }),
                1);
      const std::size_t hatch_marks = canvas.circles().size() + paths.size();
      EXPECT_EQ(hatch_marks > 3, style.hatch != Hatch::None);
      EXPECT_GE(contrast(palette.ink, paths.front().fill.value_or(palette.ground)), 7);
    }
  }
}

TEST(FormulaLayout, AChangedPartIsBold) {
  Notation changed = row({number("36"), sign("+"), number("3√2")});
  changed.changed = true;
  const Drawn drawn(row({number("348"), sign("−"), changed}));
  const auto texts = drawn.canvas.texts();
  EXPECT_FALSE(texts.front().style.bold);
  for (std::size_t i = 2; i < texts.size(); ++i) EXPECT_TRUE(texts[i].style.bold) << texts[i].text;
}

TEST(ColumnWorkFigure, DrawsEveryCellInsideAndDigitsUnderEachOther) {
  const auto decimal = [](const char* text) { return *Number::from_decimal(text); };
  for (const auto& work : {exact::column_addition({decimal("36"), decimal("27.25"), decimal("7.5")}),
                           exact::column_subtraction(decimal("144"), decimal("36.75")),
                           exact::long_multiplication(decimal("23.5"), decimal("7.25")),
                           exact::long_division(decimal("348"), decimal("24"), 2)}) {
    RecordingCanvas canvas;
    const ColumnWorkFigure figure(canvas, work, em);
    figure.draw(canvas, {100, 50}, Palette{});
    const Rect bounds{100, 50, figure.size().x, figure.size().y};
    std::string cells;
    for (const auto& line : work.rows) {
      for (const std::string& cell : line) cells += cell == "²" ? "2" : cell;
    }
    std::string drawn;
    const auto texts = canvas.texts();
    for (std::size_t i = 0; i < texts.size(); ++i) {
      EXPECT_TRUE(bounds.contains(ink(texts[i]), 1e-6)) << texts[i].text;
      if (i > 0) drawn += texts[i].text;
      // A point may touch its digits' boxes: they are wider than what is drawn.
      for (std::size_t j = 0; j < i; ++j) {
        if (texts[i].text == "." || texts[j].text == ".") continue;
        EXPECT_FALSE(ink(texts[i]).overlaps(ink(texts[j]), 1e-6)) << texts[i].text << " on " << texts[j].text;
      }
    }
    EXPECT_EQ(texts.front().text, work.caption);
    EXPECT_EQ(drawn, cells);
    const auto rules = bars(canvas);
    EXPECT_EQ(rules.size(), work.rules.size());
    for (const Rect& rule : rules) {
      EXPECT_TRUE(bounds.contains(rule, 1e-6));
      for (const auto& text : texts) {
        EXPECT_FALSE(ink(text).inset(0, 0.02 * em).overlaps(rule.inset(0, -1), 1e-6)) << text.text;
      }
    }
  }
}

}  // namespace
}  // namespace fw::figures::formula_layout_test
