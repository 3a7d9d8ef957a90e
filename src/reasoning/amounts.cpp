#include "reasoning/amounts.hpp"

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/ledger.hpp"

namespace fw::reasoning {
namespace {

using algebra::leaf;
using algebra::Notation;
using exact::Number;
using Kind = Notation::Kind;

bool counts(const solids::Face& face, const std::string& measure, const std::vector<FaceId>& open) {
  if (measure == "lateral_area") {
    return face.role == solids::FaceRole::Lateral;
  }
  return measure != "surface_area" || !std::binary_search(open.begin(), open.end(), face.id);
}

// B is the area of one base: the first, where a prism has two.
std::vector<FaceId> one_base(const solids::Solid& solid) {
  for (const solids::Face& face : solid.faces()) {
    if (face.role == solids::FaceRole::Base) {
      return {face.id};
    }
  }
  return {};
}

std::vector<FaceId> counting(const lessons::Problem& problem, const std::string& measure) {
  if (measure == "base_area") {
    return one_base(problem.solid);
  }
  const std::vector<FaceId> open = lessons::open_faces(problem);
  std::vector<FaceId> faces;
  for (const solids::Face& face : problem.solid.faces()) {
    if (counts(face, measure, open)) {
      faces.push_back(face.id);
    }
  }
  return faces;
}

Notation term(const AlikeAddend& addend, const units::Unit& unit, const exact::Shown& shown) {
  std::vector<Notation> parts;
  if (addend.times > 1) {
    parts.push_back(leaf(Kind::Number, std::to_string(addend.times)));
    parts.push_back(leaf(Kind::Sign, "×"));
  }
  parts.push_back(leaf(Kind::Number, shown.text));
  parts.push_back(leaf(Kind::Unit, unit.text()));
  Notation whole = algebra::row(std::move(parts));
  whole.group = addend.group ? std::optional(addend.group->index()) : std::nullopt;
  return whole;
}

void finish(AmountSum& sum, const char* noun, int places) {
  std::vector<Number> each;
  for (const AlikeAddend& addend : sum.addends) {
    each.insert(each.end(), addend.times, addend.each);
  }
  const int extra_digits = adding_up(each, places).extra_digits;
  std::vector<Notation> terms{leaf(Kind::Words, noun), leaf(Kind::Sign, "=")};
  bool exact = true;
  for (const AlikeAddend& addend : sum.addends) {
    if (&addend != &sum.addends.front()) {
      terms.push_back(leaf(Kind::Sign, "+"));
    }
    const exact::Shown shown = exact::shown(addend.each, places + extra_digits);
    exact = exact && shown.exact;
    terms.push_back(term(addend, sum.unit, shown));
    sum.total = sum.total + Number::whole(static_cast<long long>(addend.times)) * addend.each;
  }
  const exact::Shown total = exact::shown(sum.total, places);
  sum.line.left = algebra::row(std::move(terms));
  sum.line.sign = exact && total.exact ? "=" : "≈";
  sum.line.right = algebra::row({leaf(Kind::Number, total.text), leaf(Kind::Unit, sum.unit.text())});
}

bool is_length(double length, const Number& value) { return std::abs(value.to_double() - length) <= 1e-9 * length; }

// The exact number that measures an edge: among the solid's own measures, then among the lengths of its faces.
Number edge_length(const solids::Solid& solid, double length) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const auto value = solid.values().find(measure.symbol.name);
    if (value != solid.values().end() && measure.symbol.dimension == 1 && is_length(length, value->second)) {
      return value->second;
    }
  }
  for (const solids::Face& face : solid.faces()) {
    for (const solids::FaceLength& side : face.lengths) {
      if (!side.is_height && is_length(length, side.value)) {
        return side.value;
      }
    }
  }
  constexpr int places = 9;
  return square_root(rounded(Number::of_double(length * length), places));
}

// Where a length stands among the measures that the kind speaks of, so that a box's length comes before its width.
std::size_t place_of_length(const solids::Solid& solid, const Number& length) {
  const std::vector<solids::Measure>& measures = solid.statement().measures;
  const auto found = std::find_if(measures.begin(), measures.end(), [&](const solids::Measure& measure) {
    const auto value = solid.values().find(measure.symbol.name);
    return value != solid.values().end() && measure.symbol.dimension == 1 && value->second == length;
  });
  return static_cast<std::size_t>(found - measures.begin());
}

}  // namespace

AmountSum faces_that_count(const lessons::Problem& problem, const std::string& measure, int places) {
  AmountSum sum;
  sum.unit = problem.solid.unit().to_the(2);
  sum.faces = counting(problem, measure);
  for (const FaceId id : sum.faces) {
    const solids::Face& face = problem.solid.faces()[id];
    const auto alike = std::find_if(sum.addends.begin(), sum.addends.end(),
                                    [&](const AlikeAddend& addend) { return addend.group == face.group; });
    if (alike == sum.addends.end()) {
      sum.addends.push_back({1, face.area.amount(), face.group, {id}});
    } else {
      ++alike->times;
      alike->faces.push_back(id);
    }
  }
  finish(sum, "area", places);
  return sum;
}

AmountSum all_edges(const solids::Solid& solid, int places) {
  AmountSum sum;
  sum.unit = solid.unit();
  for (const double length : solid.body().edge_lengths()) {
    const auto alike = std::find_if(sum.addends.begin(), sum.addends.end(),
                                    [&](const AlikeAddend& addend) { return is_length(length, addend.each); });
    if (alike == sum.addends.end()) {
      sum.addends.push_back({1, edge_length(solid, length), std::nullopt, {}});
    } else {
      ++alike->times;
    }
  }
  std::stable_sort(sum.addends.begin(), sum.addends.end(), [&](const AlikeAddend& a, const AlikeAddend& b) {
    return place_of_length(solid, a.each) < place_of_length(solid, b.each);
  });
  finish(sum, "all edges", places);
  return sum;
}

}  // namespace fw::reasoning
