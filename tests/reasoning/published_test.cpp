// Worked examples of published books, worked out step by step: the answer is the printed one.
#include <gtest/gtest.h>

#include <cmath>
#include <fstream>

#include "reasoning/solution.hpp"
#include "support/describe_solid.hpp"

namespace fw::reasoning::published_test {
namespace {

struct Row {
  std::string id, source, solid, asked, printed, again, verdict;
};

// Those of one solid; each names its book.
std::vector<Row> rows_of_one_solid() {
  std::ifstream stream(std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/published/examples.tsv");
  std::vector<Row> rows;
  for (std::string line; std::getline(stream, line);) {
    const auto cells = test::parts_of(line, "\t");
    if (line.empty() || line[0] == '#' || cells.size() != 7 || cells[2].find(" + ") != std::string::npos) {
      continue;
    }
    rows.push_back({cells[0], cells[1], cells[2], cells[3], cells[4], cells[5], cells[6]});
  }
  return rows;
}

double half_unit(const std::string& printed) {
  const std::size_t point = printed.find('.');
  return 0.5 * std::pow(10.0, point == std::string::npos ? 0.0 : -static_cast<double>(printed.size() - point - 1));
}

// Rows marked WRONG are slips of the book, from which ours must differ.
TEST(PublishedExamples, AreWorkedOutAsPrintedByFormula) {
  std::size_t worked = 0;
  for (const Row& row : rows_of_one_solid()) {
    SCOPED_TRACE(row.id + ": " + row.source);
    const auto solution = worked_solution(test::solid(row.solid), row.asked);
    ASSERT_TRUE(solution.has_value()) << said(solution.error());
    const double ours = solution->answer.amount.to_double();
    const double again = std::stod(row.again);
    EXPECT_NEAR(ours, again, 2e-5 * again);
    const double off = std::abs(ours - std::stod(row.printed));
    if (row.verdict == "WRONG") {
      EXPECT_GT(off, half_unit(row.printed));
    } else {
      EXPECT_LE(off, half_unit(row.printed) * 1.0001);
    }
    ++worked;
  }
  EXPECT_GE(worked, 70U);
}

TEST(PublishedExamples, SurfacesAddUpFaceByFaceToTheSame) {
  SolutionOptions faces;
  faces.route = Route::FaceByFace;
  std::size_t worked = 0;
  for (const Row& row : rows_of_one_solid()) {
    if (row.asked != "surface_area") {
      continue;
    }
    SCOPED_TRACE(row.id + ": " + row.source);
    const auto solution = worked_solution(test::solid(row.solid), row.asked, faces);
    ASSERT_TRUE(solution.has_value()) << said(solution.error());
    EXPECT_NEAR(solution->answer.amount.to_double(), std::stod(row.again), 2e-5 * std::stod(row.again));
    ++worked;
  }
  EXPECT_GE(worked, 30U);
}

struct TurnedRound {
  std::string id;     // of the printed example
  std::string solid;  // with one printed length open and the printed result given
  std::string asked;
  std::string answer;  // the printed length
};

// The printed examples turned round: the result is given, and a printed length is asked. Sources by id, as in the
// table: PA is Prealgebra 2e, CM Contemporary Mathematics, CL Calculus (all OpenStax), SI Everything Maths Grade 10
// (Siyavula).
TEST(PublishedExamples, TurnedRoundLeadBackToThePrintedLengths) {
  const std::vector<TurnedRound> examples{
      {"PA02a", "rectangular prism | length: 14 cm | width: 9 cm | height: ? | known volume: 2142 cm^3", "height",
       "17 cm"},
      {"PA02b", "rectangular prism | length: 14 cm | width: 9 cm | height: ? | known surface_area: 1034 cm^2", "height",
       "17 cm"},
      {"PA08a", "rectangular prism | length: 2 m | width: ? | height: 3 m | known volume: 9 m^3", "width", "1.5 m"},
      {"PA09b", "rectangular prism | length: ? | width: 2.1 yd | height: 2.4 yd | known surface_area: 41.58 yd^2",
       "length", "3.5 yd"},
      {"PA13a", "cube | edge: ? | known volume: 15.625 in^3", "edge", "2.5 in"},
      {"PA20b", "cube | edge: ? | known surface_area: 648.96 ft^2", "edge", "10.4 ft"},
      {"CM2b",
       "prism | height: ? | base regular polygon | count: 6 | side: 6 cm | apothem: 5.2 cm | known volume: 1872 "
       "cm^3",
       "height", "20 cm"},
      {"CM3",
       "prism | height: ? | base isosceles triangle | base: 12 in | leg: 8.49 in | height: 6 in | known "
       "surface_area: 361.8 in^2",
       "height", "10 in"},
      {"CL5", "pyramid | height: ? | base square | side: 2 cm | known volume: 8 cm^3", "height", "6 cm"},
      {"CL5, base", "pyramid | height: 6 cm | base square | side: ? | known volume: 8 cm^3", "base.side", "2 cm"},
      {"SI02",
       "prism | height: ? | base isosceles triangle | base: 8 cm | height: 3 cm | leg: 5 cm | known "
       "surface_area: 240 cm^2",
       "height", "12 cm"},
      {"SI05", "prism | height: ? | base triangle | base: 8 cm | height: 10 cm | known volume: 800 cm^3", "height",
       "20 cm"},
      {"SI10", "pyramid | height: ? | base square | side: 2 cm | known volume: 4 cm^3", "height", "3 cm"},
      {"SI27", "pyramid | slant_height: ? | base square | side: 6 cm | known surface_area: 180 cm^2", "slant_height",
       "12 cm"},
      {"SI27, base", "pyramid | slant_height: 12 cm | base square | side: ? | known surface_area: 180 cm^2",
       "base.side", "6 cm"},
      {"SI46", "prism | height: 60 cm | base isosceles triangle | base: 24 cm | height: ? | known volume: 6480 cm^3",
       "base.height", "9 cm"}};
  for (const TurnedRound& example : examples) {
    SCOPED_TRACE(example.id);
    const auto solution = worked_solution(test::solid(example.solid), example.asked);
    ASSERT_TRUE(solution.has_value()) << said(solution.error());
    EXPECT_EQ(solution->answer.text, example.answer);
  }
}

// The five regular polyhedra of edge 1. Source: H. S. M. Coxeter, Regular Polytopes, 3rd edition 1973, Table I (from
// memory), worked out again from coordinates; in the table's columns 0, 4 and 5.
TEST(PublishedSolids, RegularPolyhedraAreWorkedOutAndTurnedRound) {
  std::ifstream stream(std::string(FOLDWRIGHT_SOURCE_DIR) + "/tests/published/solids.tsv");
  std::size_t rows = 0;
  for (std::string line; std::getline(stream, line);) {
    const auto cells = test::parts_of(line, "\t");
    if (line.empty() || line[0] == '#') {
      continue;
    }
    ++rows;
    SCOPED_TRACE(cells[1]);
    const std::string figure = "regular polyhedron | faces: " + cells[0] + " | edge: ";
    const auto surface = worked_solution(test::solid(figure + "1 cm"), "surface_area");
    const auto volume = worked_solution(test::solid(figure + "1 cm"), "volume");
    const auto edge = worked_solution(test::solid(figure + "? | known volume: " + cells[5] + " cm^3"), "edge");
    ASSERT_TRUE(surface && volume && edge);
    EXPECT_NEAR(surface->answer.amount.to_double(), std::stod(cells[4]), 1e-11);
    EXPECT_NEAR(volume->answer.amount.to_double(), std::stod(cells[5]), 1e-11);
    EXPECT_NEAR(edge->answer.amount.to_double(), 1, 1e-10);
  }
  EXPECT_EQ(rows, 5U);
}

}  // namespace
}  // namespace fw::reasoning::published_test
