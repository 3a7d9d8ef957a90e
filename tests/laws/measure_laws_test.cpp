// What measures of every solid have to do with each other, whatever the kind and the numbers.
#include <numeric>
#include <set>

#include "exact/print_number.hpp"
#include "geometry/measure.hpp"
#include "made_up.hpp"
#include "reasoning/ledger.hpp"
#include "reasoning/solution.hpp"
#include "reasoning/unknown.hpp"
#include "solids/body/body_nets.hpp"
#include "solids/body/standing.hpp"
#include "words/lexicon.hpp"

namespace fw::laws {
namespace {

using exact::Number;
using geometry::FaceId;

/// The areas of the whole that the solid has.
std::vector<std::string> areas_of(const Solid& solid) {
  std::vector<std::string> names{"surface_area"};
  for (const std::string name : {"lateral_area", "base_area"}) {
    if (solid.values().count(name) != 0) {
      names.push_back(name);
    }
  }
  return names;
}

std::string faces_equal_formula(const Solid& solid, test::Dice&) {
  std::string wrong;
  for (const std::string& area : areas_of(solid)) {
    reasoning::SolutionOptions by_faces;
    by_faces.route = reasoning::Route::FaceByFace;
    const auto formula = reasoning::worked_solution(solid, area);
    const auto faces = reasoning::worked_solution(solid, area, by_faces);
    if (!formula || !faces) {
      return "no way to the " + area + ": " + said(formula ? faces.error() : formula.error());
    }
    wrong += difference(area + " by formula and face by face", formula->answer.amount, faces->answer.amount);
    wrong += difference(area + " worked and of the solid", formula->answer.amount, solid.values().at(area));
  }
  Number sum;
  for (const solids::Face& face : solid.faces()) {
    sum = sum + face.area.amount();
  }
  return wrong + difference("the sum of the faces and S", sum, solid.surface_area().amount());
}

std::string sizes_scale(const Solid& solid, test::Dice& dice) {
  const std::vector<Number> all_factors{Number::whole(2), Number::whole(5), Number::ratio(1, 2), Number::ratio(7, 4)};
  const Number factor = all_factors[dice.below(all_factors.size())];
  const auto copy = Solid::make(scaled(solid.description(), factor, solid.unit().ascii()));
  if (!copy) {
    return "there is no copy: " + words::said(copy.error().front().message);
  }
  std::string wrong =
      difference("S of a copy", copy->surface_area().amount(), solid.surface_area().amount() * factor * factor);
  wrong += difference("V of a copy", copy->volume().amount(), solid.volume().amount() * exact::power(factor, 3));
  for (const solids::Face& face : solid.faces()) {
    const solids::Face& other = copy->faces()[face.id];
    wrong += difference("a face of a copy", other.area.amount(), face.area.amount() * factor * factor);
    wrong += other.group == face.group ? "" : "a face of a copy is congruent to others. ";
    for (std::size_t i = 0; i < face.lengths.size(); ++i) {
      wrong += difference("a length of a copy", other.lengths[i].value, face.lengths[i].value * factor);
    }
  }
  return wrong;
}

std::string units_change_no_truth(const Solid& solid, test::Dice& dice) {
  const auto& all_units = units::Unit::lengths();
  const units::Unit unit = all_units[dice.below(all_units.size())];
  const auto other = Solid::make(solids::in_unit(solid.description(), unit));
  if (!other) {
    return "there is no such solid in " + unit.text() + ": " + words::said(other.error().front().message);
  }
  if (!(other->unit() == unit)) {
    return "the solid is not in " + unit.text() + ". ";
  }
  std::string wrong = difference("S in " + unit.text(), other->surface_area().amount(),
                                 solid.surface_area().in(unit.to_the(2)).amount());
  wrong += difference("V in " + unit.text(), other->volume().amount(), solid.volume().in(unit.to_the(3)).amount());
  const Number factor = units::conversion(solid.unit(), unit);
  for (const solids::Face& face : solid.faces()) {
    for (std::size_t i = 0; i < face.lengths.size(); ++i) {
      wrong += difference("a length in " + unit.text(), other->faces()[face.id].lengths[i].value,
                          face.lengths[i].value * factor);
    }
  }
  return wrong;
}

/// The usual net with some faces moved to other hinges, each wherever it may go.
nets::HingeTree moved_at_random(const Solid& solid, test::Dice& dice) {
  nets::HingeTree tree = solid.classic_net();
  for (int move = 0; move < 4; ++move) {
    const FaceId face = FaceId::at(dice.below(solid.faces().size()));
    const auto hinges = solids::possible_hinges(solid.body(), tree, face);
    if (face != tree.root() && !hinges.empty()) {
      tree = *solids::moved(solid.body(), tree, face, hinges[dice.below(hinges.size())]);
    }
  }
  return tree;
}

/// Twice the area of a flat face in space.
double doubled_area(const std::vector<geometry::Vec3>& corners) {
  geometry::Vec3 sum{};
  for (std::size_t i = 1; i + 1 < corners.size(); ++i) {
    sum += glm::cross(corners[i] - corners[0], corners[i + 1] - corners[0]);
  }
  return glm::length(sum);
}

std::string nets_keep_size(const Solid& solid, test::Dice& dice) {
  const nets::HingeTree tree = moved_at_random(solid, dice);
  double laid = 0;
  for (const geometry::Polygon& polygon : solids::unfolded(solid.body(), tree)) {
    laid += geometry::signed_area(polygon);
  }
  // A disk of 73 corners is a little smaller than its circle.
  const bool is_flat_faced = solid.body().is_flat_faced();
  const auto nearly = [&](double a, double b) { return is_flat_faced ? near(a, b) : std::abs(a / b - 1) < 1e-3; };
  std::string wrong = nearly(laid, solid.surface_area().amount().to_double()) ? "" : "the net's area is not S. ";
  const auto order = dice.below(2) == 0 ? nets::FoldOrder::Together : nets::FoldOrder::OneByOne;
  for (const double amount : {0.0, dice.between(0, 1), 1.0}) {
    const nets::Pose pose = solids::standing(solid.body(), tree, amount, order).corners;
    for (const solids::Face& face : solid.faces()) {
      if (is_flat_faced && !near(doubled_area(pose[face.id.index()]) / 2, face.area.amount().to_double())) {
        wrong += "a face's area is not the one that is told. ";
      }
    }
    for (std::size_t facet = 0; facet < pose.size(); ++facet) {
      const auto& corners = pose[facet];
      const auto closed = solid.body().facets().corners(FaceId::at(facet));
      if (!near(doubled_area(corners), doubled_area(closed))) {
        wrong += "a face's area changes as it folds. ";
      }
      for (std::size_t i = 0; i < corners.size(); ++i) {
        const std::size_t next = (i + 1) % corners.size();
        if (!near(glm::length(corners[next] - corners[i]), glm::length(closed[next] - closed[i]))) {
          wrong += "an edge's length changes as it folds. ";
        }
      }
    }
  }
  return wrong;
}

std::string ledger_adds_up(const Solid& solid, test::Dice& dice) {
  std::vector<FaceId> faces;
  for (const solids::Face& face : solid.faces()) {
    faces.push_back(face.id);
  }
  dice.shuffle(faces);
  std::string wrong;
  for (const auto grouping : {reasoning::Grouping::EachFace, reasoning::Grouping::AlikeTogether}) {
    const reasoning::Ledger ledger = reasoning::ledger(solid, faces, grouping);
    const auto plus = [](const Number& sum, const auto& row) { return sum + row.addend; };
    const Number sum = std::accumulate(ledger.rows.begin(), ledger.rows.end(), Number{}, plus);
    wrong += difference("the sum of the ledger's rows and S", sum, solid.surface_area().amount());
    wrong += difference("the ledger's sum so far and S", ledger.so_far.amount(), solid.surface_area().amount());
    wrong += ledger.is_surface_area ? "" : "the ledger does not see that all faces are counted. ";
  }
  const FaceId last = faces.back();
  faces.pop_back();
  const reasoning::Ledger short_of_one = reasoning::ledger(solid, faces, reasoning::Grouping::EachFace);
  wrong += short_of_one.is_surface_area ? "one face too few is taken for the surface area. " : "";
  wrong += difference("the sum without a face", short_of_one.so_far.amount() + solid.faces()[last].area.amount(),
                      solid.surface_area().amount());
  faces.insert(faces.end(), {last, last});
  const reasoning::Ledger twice = reasoning::ledger(solid, faces, reasoning::Grouping::EachFace);
  wrong += twice.is_surface_area ? "a face counted twice is taken for the surface area. " : "";
  wrong += twice.counted_twice == std::vector<FaceId>{last} ? "" : "the face that is counted twice is not named. ";
  return wrong;
}

/// What stands on the figure at a symbol, read again; nothing where it says "?" or has no label there.
std::optional<units::WrittenQuantity> read_label(const Solid& solid, const std::string& symbol) {
  for (std::size_t i = 0; i < solid.marks().size(); ++i) {
    const solids::MarkId mark = solids::MarkId::at(i);
    if (solid.marks()[mark].symbol.name == symbol && solid.is_given(solid.marks()[mark].symbol)) {
      const auto read = units::parse_quantity(solid.label(mark));
      return read ? std::optional(*read) : std::nullopt;
    }
  }
  return std::nullopt;
}

template <class Row>
void take_labels(const Solid& solid, const Row& row, Description& description, const std::string& prefix,
                 std::string& wrong) {
  for (const solids::Field& field : row.fields) {
    const auto found = description.fields.find(field.key);
    if (found == description.fields.end()) {
      continue;
    }
    const auto take = [&](solids::LengthEntry& entry, const std::string& symbol) {
      auto label = read_label(solid, prefix + symbol);
      label = label ? label : read_label(solid, symbol);
      wrong += label ? "" : symbol + " has no label that can be read. ";
      entry.written = label ? label : entry.written;
    };
    if (auto* entry = std::get_if<solids::LengthEntry>(&found->second)) {
      take(*entry, field.symbols.front());
    } else if (auto* list = std::get_if<std::vector<solids::LengthEntry>>(&found->second)) {
      for (std::size_t i = 0; i < list->size(); ++i) {
        take((*list)[i], field.symbols[i]);
      }
    }
  }
}

std::string labels_give_the_same_solid(const Solid& solid, test::Dice&) {
  Description description = solid.description();
  std::string wrong;
  take_labels(solid, *solids::find_kind(description.kind), description, "", wrong);
  for (Description& base : description.base) {
    take_labels(solid, *solids::find_base_shape(base.kind), base, "base.", wrong);
  }
  const auto again = Solid::make(description);
  if (!again || !wrong.empty()) {
    return wrong + (again ? "" : "its labels make no solid: " + words::said(again.error().front().message));
  }
  wrong += *again == solid ? "" : "its labels make another solid. ";
  return wrong + difference("V of the solid that its labels make", again->volume().amount(), solid.volume().amount());
}

std::string another_given_is_the_same_figure(const Solid& solid, test::Dice& dice) {
  std::vector<reasoning::Askable> given;
  for (const reasoning::Askable& measure : reasoning::askable_measures(solid)) {
    if (measure.is_given) {
      given.push_back(measure);
    }
  }
  if (given.empty()) {
    return "nothing is given";
  }
  const reasoning::Askable unknown = given[dice.below(given.size())];
  const auto instead = reasoning::could_be_given(solid, unknown.name);
  if (instead.empty()) {
    return "";
  }
  const reasoning::Askable other = instead[dice.below(instead.size())];
  const auto figure = reasoning::asked_for(solid, unknown.name, other.name);
  if (!figure) {
    return unknown.name + " cannot be asked for from " + other.name + ": " + said(figure.error());
  }
  // A sum of roots that no label holds is given with four decimals, and what follows from it is as good as that.
  const bool is_rounded = exact::exact_text(solid.values().at(other.name)).empty();
  const double allowed = is_rounded ? 1e-3 : 1e-9;
  std::string wrong;
  for (const auto& [name, value] : solid.values()) {
    const auto found = figure->values().find(name);
    const bool is_there = found != figure->values().end();
    wrong += is_there && near(found->second.to_double(), value.to_double(), allowed)
                 ? ""
                 : name + " is another with " + other.name + " for " + unknown.name + ". ";
  }
  return wrong;
}

void collect_groups(const algebra::Notation& notation, std::set<std::size_t>& groups) {
  if (notation.group) {
    groups.insert(*notation.group);
  }
  for (const algebra::Notation& part : notation.parts) {
    collect_groups(part, groups);
  }
}

/// The line that adds the faces up shows which faces each term stands for: its letter, color and hatch hang on that.
std::string terms_show_their_faces(const Solid& solid, test::Dice&) {
  reasoning::SolutionOptions by_faces;
  by_faces.route = reasoning::Route::FaceByFace;
  const auto solution = reasoning::worked_solution(solid, "surface_area", by_faces);
  if (!solution) {
    return said(solution.error());
  }
  std::size_t most = 0;
  for (const reasoning::Step& step : solution->steps) {
    std::set<std::size_t> groups;
    if (step.line) {
      collect_groups(step.line->right, groups);
    }
    most = std::max(most, groups.size());
  }
  return most == solid.group_count() ? "" : "no line has a term for each group of faces. ";
}

TEST(LawsOfMeasures, FaceByFaceEqualsTheFormula) { expect_law("faces equal formula", &faces_equal_formula); }
TEST(LawsOfMeasures, TermsShowTheirFaces) { expect_law("terms show their faces", &terms_show_their_faces); }
TEST(LawsOfMeasures, LengthsAreasAndVolumesScale) { expect_law("k, k², k³", &sizes_scale); }
TEST(LawsOfMeasures, UnitsChangeNoTruth) { expect_law("units change no truth", &units_change_no_truth); }
TEST(LawsOfMeasures, NetsKeepLengthsAndAreasAsTheyFold) { expect_law("nets keep their size", &nets_keep_size); }
TEST(LawsOfMeasures, TheLedgerAddsUpToTheSurface) { expect_law("the ledger adds up", &ledger_adds_up); }
TEST(LawsOfMeasures, LabelsReadAgainGiveTheSameSolid) { expect_law("labels as givens", &labels_give_the_same_solid); }
TEST(LawsOfMeasures, AnotherGivenIsTheSameFigure) {
  expect_law("another given, the same figure", &another_given_is_the_same_figure);
}

}  // namespace
}  // namespace fw::laws
