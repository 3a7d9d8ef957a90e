// A page as data, and the files that it becomes.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "figures/recording_canvas.hpp"
#include "paper/decimal.hpp"
#include "paper/svg_file.hpp"
#include "printing.hpp"

namespace fw::paper::page_test {
namespace {

using figures::HAlign;
using figures::VAlign;
using testing::HasSubstr;
using testing::Not;

TEST(Decimal, IsRoundedAndShort) {
  EXPECT_EQ(decimal(1), "1");
  EXPECT_EQ(decimal(-0.25), "-0.25");
  EXPECT_EQ(decimal(0.00001), "0");
  EXPECT_EQ(decimal(-0.00001), "0");
  EXPECT_EQ(decimal(12.34567), "12.3457");
  EXPECT_EQ(decimal(100.05, 1), "100.1");
}

TEST(Page, MeasuresTextAsItIsPrinted) {
  const PageCanvas canvas(test_fonts(), 100, 100);
  const double one = canvas.text_size("24 cm", {4, black}).x;
  EXPECT_NEAR(canvas.text_size("24 cm24 cm", {4, black}).x, 2 * one, 1e-9);
  EXPECT_NEAR(canvas.text_size("24 cm", {8, black}).x, 2 * one, 1e-9);
}

TEST(Page, LeavesOutWhatSteersAPrinter) {
  EXPECT_EQ(printable_text("a\x1B[2J\nb\tc\x7F"), "a[2Jb c");
  EXPECT_EQ(printable_text("x\u202Ey\uFEFFz\u0085"), "xyz");
  PageCanvas canvas(test_fonts(), 100, 100);
  canvas.text({10, 10}, HAlign::Left, VAlign::Top, "שלום 🏮", {4, black});
  EXPECT_EQ(canvas.missing().size(), 5U);
}

TEST(Page, BreaksAWordThatIsWiderThanALine) {
  const PageCanvas canvas(test_fonts(), 100, 100);
  const std::string word(4'000, 'w');
  std::string whole;
  for (const std::string& line : lines_of(canvas, word, {4, black}, 90)) {
    EXPECT_LE(canvas.text_size(line, {4, black}).x, 90);
    whole += line;
  }
  EXPECT_EQ(whole, word);
}

TEST(Page, IsDrawnElsewhereAsItIs) {
  PageCanvas canvas(test_fonts(), 100, 100);
  canvas.begin_part("cut");
  canvas.path({{10, 20}, {30, 20}}, false, {0.5, {}});
  canvas.path({{10, 30}, {20, 30}}, false, {0.5, {3, 2}});
  canvas.end_part();
  canvas.text({10, 50}, HAlign::Left, VAlign::Baseline, "24 cm", {4, black});
  figures::RecordingCanvas seen;
  draw_page(seen, canvas.page(), {5, 5}, 2, 1);
  const auto paths = seen.paths();
  ASSERT_EQ(paths.size(), 3U);
  EXPECT_EQ(paths[0].points, (std::vector<Vec2>{{25, 45}, {65, 45}}));
  EXPECT_EQ(paths[1].points, (std::vector<Vec2>{{25, 65}, {31, 65}}));
  EXPECT_EQ(paths[2].points, (std::vector<Vec2>{{35, 65}, {41, 65}}));
  EXPECT_TRUE(seen.shows("24 cm"));
}

TEST(PdfFile, GivesBackItsLinesAtTheirSize) {
  PageCanvas canvas(test_fonts(), 215.9, 279.4);
  canvas.path({{20, 30}, {120, 30}}, false, {0.35, {}});
  canvas.path({{20, 40}, {20, 141.6}}, false, {0.35, {}});
  const PrintedFile file(pdf_file({canvas.page()}, test_fonts(), "Bars"));
  const std::string svg = file.folder() + "/page.svg";
  ASSERT_EQ(ran("pdftocairo -svg " + file.path() + " " + svg).status, 0);
  std::ifstream in(svg);
  std::ostringstream text;
  text << in.rdbuf();
  // Points of the page: d="M x y L x y", transformed by a matrix a of the page.
  const std::string drawing = text.str();
  std::vector<double> lengths;
  for (std::size_t at = drawing.find(" d=\"M "); at != std::string::npos; at = drawing.find(" d=\"M ", at + 1)) {
    double x1 = 0;
    double y1 = 0;
    double x2 = 0;
    double y2 = 0;
    if (std::sscanf(drawing.c_str() + at, " d=\"M %lf %lf L %lf %lf", &x1, &y1, &x2, &y2) == 4) {
      const std::size_t matrix = drawing.find("matrix(", at);
      double scale = 1;
      if (matrix != std::string::npos && matrix < drawing.find("/>", at)) {
        std::sscanf(drawing.c_str() + matrix, "matrix(%lf", &scale);
      }
      lengths.push_back(std::hypot(x2 - x1, y2 - y1) * scale * 25.4 / 72);
    }
  }
  ASSERT_EQ(lengths.size(), 2U) << drawing;
  EXPECT_NEAR(lengths[0], 100, 0.01);
  EXPECT_NEAR(lengths[1], 101.6, 0.01);
}

TEST(PdfFile, AsksForItsOwnSizeAndHoldsNoDate) {
  PageCanvas canvas(test_fonts(), 210, 297);
  canvas.text({20, 30}, HAlign::Left, VAlign::Top, "36√3 cm², ℓ = 9 cm, ≈ 81π, ½ × 4³", {4, black});
  const std::string bytes = pdf_file({canvas.page()}, test_fonts(), "Größe (x)");
  EXPECT_EQ(bytes, pdf_file({canvas.page()}, test_fonts(), "Größe (x)"));
  EXPECT_THAT(bytes, HasSubstr("/PrintScaling /None"));
  EXPECT_THAT(bytes, Not(HasSubstr("CreationDate")));
  const PrintedFile file(bytes);
  EXPECT_EQ(ran("qpdf --check " + file.path()).status, 0) << ran("qpdf --check " + file.path()).out;
  EXPECT_EQ(ran("pdftotext " + file.path() + " -").out, "36√3 cm², ℓ = 9 cm, ≈ 81π, ½ × 4³\n\n\f");
  const std::string info = ran("pdfinfo " + file.path()).out;
  EXPECT_THAT(info, HasSubstr("Größe (x)"));
  EXPECT_THAT(info, HasSubstr("A4"));
}

TEST(SvgFile, IsReadByAnXmlReaderAndKeepsItsTexts) {
  PageCanvas canvas(test_fonts(), 210, 297);
  canvas.begin_part("cut");
  canvas.path({{20, 30}, {120, 30}}, false, {0.35, {3, 2}});
  canvas.end_part();
  canvas.begin_part("cut");
  canvas.push_clip({0, 0, 50, 50});
  canvas.text({20, 30}, HAlign::Left, VAlign::Top, "a < b & \"c\"", {4, black});
  canvas.pop_clip();
  canvas.end_part();
  const std::string svg = svg_file(canvas.page(), "<Lanterns>");
  EXPECT_THAT(svg, HasSubstr("viewBox=\"0 0 210 297\""));
  EXPECT_THAT(svg, HasSubstr("id=\"cut\""));
  EXPECT_THAT(svg, HasSubstr("id=\"cut-2\""));
  EXPECT_THAT(svg, HasSubstr("stroke-dasharray=\"3 2\""));
  const PrintedFile file(svg, ".svg");
  const Ran read = ran("python3 -c \"import xml.etree.ElementTree as t; r = t.parse('" + file.path() +
                       "').getroot(); print([e.text for e in r.iter() if e.tag.endswith('text')], "
                       "[e.text for e in r.iter() if e.tag.endswith('title')])\"");
  EXPECT_EQ(read.out, "['a < b & \"c\"'] ['<Lanterns>']\n");
}

}  // namespace
}  // namespace fw::paper::page_test
