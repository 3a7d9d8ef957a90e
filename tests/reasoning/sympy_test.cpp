// Answers of worked solutions against SymPy, on random figures with random measures given and taken away.
#include <gtest/gtest.h>
#include <unistd.h>

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <fstream>
#include <set>

#include "exact/print_number.hpp"
#include "reasoning/solution.hpp"
#include "reasoning/unknown.hpp"
#include "support/describe_solid.hpp"
#include "support/random.hpp"

namespace fw::reasoning::sympy_test {
namespace {

using solids::Solid;
using test::Dice;

constexpr int digits_of_answers = 45;

// Figures in one line; each # is a random length. Trapezoids, rhombuses and triangles that cannot be are left out.
const std::vector<std::string>& patterns() {
  static const std::vector<std::string> all{
      "cube | edge: #",
      "rectangular prism | length: # | width: # | height: #",
      "regular polyhedron | faces: 4 | edge: #",
      "regular polyhedron | faces: 6 | edge: #",
      "regular polyhedron | faces: 8 | edge: #",
      "regular polyhedron | faces: 12 | edge: #",
      "regular polyhedron | faces: 20 | edge: #",
      "& | height: # | base square | side: #",
      "& | height: # | base rectangle | length: # | width: #",
      "& | height: # | base right triangle | legs: #, #",
      "& | height: # | base equilateral triangle | side: #",
      "& | height: # | base isosceles triangle | base: # | height: #",
      "& | height: # | base isosceles triangle | base: # | leg: #",
      "& | height: # | base triangle | sides: #, #, #",
      "& | height: # | base triangle | base: # | height: #",
      "& | height: # | base parallelogram | base: # | side: # | height: #",
      "& | height: # | base rhombus | diagonals: #, #",
      "& | height: # | base rhombus | side: # | height: #",
      "& | height: # | base trapezoid | bases: #, # | height: #",
      "& | height: # | base trapezoid | bases: #, # | legs: #",
      "& | height: # | base trapezoid | bases: #, # | legs: #, #",
      "& | height: # | base regular polygon | count: 5 | side: #",
      "& | height: # | base regular polygon | count: 6 | side: #",
      "& | height: # | base regular polygon | count: 7 | side: #",
      "& | height: # | base regular polygon | count: 8 | side: #",
      "& | height: # | base regular polygon | count: 12 | side: #",
      "& | height: # | base polygon | vertices: 0 0, 12 0, 12 7, 6 15, 0 7 | unit: cm",
      "prism | height: # | base polygon | vertices: 0 0, 12 0, 12 5, 5 5, 5 11, 0 11 | unit: cm",
      "pyramid | slant_height: # | base square | side: #",
      "pyramid | lateral_edge: # | base square | side: #",
      "pyramid | slant_height: # | base regular polygon | count: 6 | side: #",
      "pyramid | height: # | apex_over: #, # | base square | side: #",
      "pyramid | height: # | apex_over: #, # | base rectangle | length: # | width: #",
      "pyramid | height: # | apex_over: #, # | base right triangle | legs: #, #"};
  return all;
}

// A length as a lesson writes it, whole, decimal, mixed, or in feet and inches.
std::string random_length(Dice& dice, const std::string& unit) {
  const std::size_t form = dice.below(10);
  const std::string whole = std::to_string(2 + dice.below(28));
  if (unit == "ft" && form < 3) {
    return whole + " ft " + std::to_string(1 + dice.below(11)) + " in";
  }
  if (form < 5) {
    return whole + " " + unit;
  }
  if (form < 8) {
    return whole + "." + std::to_string(1 + dice.below(9)) + " " + unit;
  }
  return form == 8 ? whole + ".25 " + unit : whole + " 1/2 " + unit;
}

std::string random_figure(Dice& dice, const std::string& pattern) {
  static const std::vector<std::string> units{"cm", "cm", "m", "in", "ft", "mm", "yd"};
  const bool has_own_unit = pattern.find("unit: cm") != std::string::npos;
  const std::string unit = has_own_unit ? "cm" : units[dice.below(units.size())];
  std::string text;
  for (const char c : pattern) {
    text += c == '#'   ? random_length(dice, unit)
            : c == '&' ? (dice.below(2) == 0 ? "prism" : "pyramid")
                       : std::string(1, c);
  }
  return text;
}

// ---- what SymPy is told ----

template <class T>
const T* field(const solids::Description& description, const std::string& key) {
  const auto found = description.fields.find(key);
  return found == description.fields.end() ? nullptr : std::get_if<T>(&found->second);
}

std::string figure_line(const Solid& solid) {
  const solids::Description& whole = solid.description();
  const solids::Description& owner = whole.base.empty() ? whole : whole.base.front();
  std::string points;
  if (const auto* corners = field<std::vector<solids::PointEntry>>(owner, "vertices")) {
    for (const solids::PointEntry& corner : *corners) {
      points += (points.empty() ? "" : ";") + corner.x.text + " " + corner.y.text;
    }
  }
  const int* count = field<int>(owner, whole.base.empty() ? "faces" : "count");
  const std::string* unit = field<std::string>(owner, "unit");
  return "figure\t" + whole.kind + "\t" + (whole.base.empty() ? "-" : owner.kind) + "\t" +
         std::to_string(count == nullptr ? 0 : *count) + "\t" + (points.empty() ? "-" : points) + "\t" +
         (unit == nullptr ? "cm" : *unit) + "\n";
}

std::string without_commas(std::string text) {
  text.erase(std::remove(text.begin(), text.end(), ','), text.end());
  return text;
}

std::string given_lines(const Solid& solid) {
  std::string lines;
  const auto add = [&](const algebra::Symbol& symbol) {
    const units::WrittenQuantity* written = solid.is_given(symbol) ? solid.written(symbol) : nullptr;
    lines += written == nullptr ? "" : "given\t" + symbol.name + "\t" + without_commas(written->text) + "\n";
  };
  for (const solids::Measure& measure : solid.statement().measures) {
    add(measure.symbol);
  }
  namespace whole = solids::symbols;
  for (const auto& symbol : {whole::surface_area(), whole::lateral_area(), whole::base_area(), whole::volume()}) {
    add(symbol);
  }
  return lines;
}

std::string answer_line(const std::string& asked, const Answer& answer) {
  const std::string exact = exact::exact_text(answer.amount);
  return "answer\t" + asked + "\t" + answer.unit.ascii() + "\t" +
         (exact.empty() ? "digits\t" + without_commas(exact::fixed_text(answer.amount, digits_of_answers))
                        : "exact\t" + exact) +
         "\t" + without_commas(answer.text) + "\n";
}

struct Problems {
  std::string text;
  std::size_t figures = 0;
  std::size_t answers = 0;
  std::set<std::string> asked;  // measures, with the kind
};

// Everything that is not given is asked.
void add_figure(const Solid& solid, Problems& problems) {
  problems.text += figure_line(solid) + given_lines(solid);
  ++problems.figures;
  for (const Askable& measure : askable_measures(solid)) {
    if (measure.is_given) {
      continue;
    }
    const auto solution = worked_solution(solid, measure.name);
    if (!solution) {
      ADD_FAILURE() << figure_line(solid) << given_lines(solid) << measure.name << ": " << said(solution.error());
      continue;
    }
    problems.text += answer_line(measure.name, solution->answer);
    problems.asked.insert(solid.description().kind + " " + measure.name);
    ++problems.answers;
  }
}

// The figure itself, and with one and then two of its measures replaced by what else fixes it.
void add_figures(const std::string& text, Dice& dice, Problems& problems) {
  const auto made = test::made(text);
  if (!made) {
    return;
  }
  Solid solid = *made;
  add_figure(solid, problems);
  for (int turn = 0; turn < 2; ++turn) {
    std::vector<Askable> given = askable_measures(solid);
    given.erase(std::remove_if(given.begin(), given.end(), [](const Askable& one) { return !one.is_given; }),
                given.end());
    const std::string asked = given[dice.below(given.size())].name;
    std::vector<Askable> others = could_be_given(solid, asked);
    dice.shuffle(others);
    others.resize(std::min<std::size_t>(others.size(), 3));
    const Solid whole = solid;
    for (const Askable& instead : others) {
      const auto figure = asked_for(whole, asked, instead.name);
      ASSERT_TRUE(figure.has_value()) << text << ": " << asked << " from " << instead.name << ": "
                                      << said(figure.error());
      add_figure(*figure, problems);
      solid = *figure;
    }
  }
}

// What the oracle prints on these figures.
std::string judged(const std::string& figures) {
  const std::string path = testing::TempDir() + "figures_for_sympy_" + std::to_string(getpid()) + ".txt";
  std::ofstream(path, std::ios::binary) << figures;
  const std::string command =
      "PYTHONUTF8=1 /usr/bin/python3 '" FOLDWRIGHT_SOURCE_DIR "/tests/oracle/worked_solutions.py' <'" + path + "'";
  std::FILE* pipe = popen(command.c_str(), "r");
  std::string output;
  char buffer[4096];
  while (pipe != nullptr && std::fgets(buffer, sizeof buffer, pipe) != nullptr) {
    output += buffer;
  }
  const bool done = pipe != nullptr && pclose(pipe) == 0;
  std::remove(path.c_str());
  if (!done) {
    return "SymPy gave no verdict: is python3-sympy installed?";
  }
  return output;
}

// Of each figure every measure that is not given is asked. SymPy works all measures out from coordinates, by formulas
// of its own, from the lengths that fix the figure: given ones as given, the others as answered. So what is answered
// for a length must lead back to the S, L, B or V given, and every other answer must be what SymPy finds, both to 30
// digits; what is shown must be that value rounded; and what SymPy finds to be a ratio must be answered as one.
TEST(SymPySlow, FindsEveryAnswerRight) {
  constexpr int rounds = 2;
  constexpr std::uint64_t seed = 20;
  Dice dice(seed);
  Problems problems;
  for (int round = 0; round < rounds; ++round) {
    for (const std::string& pattern : patterns()) {
      // Several tries, since not every random triangle exists.
      const std::size_t before = problems.figures;
      for (int attempt = 0; attempt < 20 && problems.figures == before; ++attempt) {
        add_figures(random_figure(dice, pattern), dice, problems);
      }
      EXPECT_GT(problems.figures, before) << pattern;
    }
  }
  EXPECT_GT(problems.answers, 2000U);
  EXPECT_GT(problems.asked.size(), 40U);
  EXPECT_EQ(judged(problems.text), "checked " + std::to_string(problems.answers) + "\n");
}

}  // namespace
}  // namespace fw::reasoning::sympy_test
