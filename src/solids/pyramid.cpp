#include "solids/pyramid.hpp"

#include <algorithm>
#include <memory>

#include "solids/kind_table.hpp"

namespace fw::solids::kind {
namespace {

using algebra::Expression;
using algebra::Symbol;

std::string title_of(const ShapeStatement& base, const Symbol& symbol) {
  const auto found =
      std::find_if(base.measures.begin(), base.measures.end(), [&](const Measure& m) { return m.symbol == symbol; });
  return found == base.measures.end() ? "side" : found->title;
}

/// Which lateral faces have the same slant height: for each side the number of its group.
std::vector<std::size_t> slant_groups(const ShapeStatement& base, bool apex_over) {
  std::vector<std::size_t> groups;
  std::vector<Expression> kinds;
  const bool by_formula = !apex_over && !base.centroid_distances.empty();
  for (std::size_t i = 0; i < base.sides.size(); ++i) {
    if (!by_formula) {
      groups.push_back(i);
      continue;
    }
    const auto found = std::find(kinds.begin(), kinds.end(), base.centroid_distances[i]);
    groups.push_back(static_cast<std::size_t>(found - kinds.begin()));
    if (found == kinds.end()) {
      kinds.push_back(base.centroid_distances[i]);
    }
  }
  return groups;
}

std::size_t group_count(const std::vector<std::size_t>& groups) {
  return 1 + *std::max_element(groups.begin(), groups.end());
}

PyramidPlan planned(const Description& description, const ShapeStatement& base) {
  PyramidPlan plan;
  plan.base = base;
  plan.apex_over = has_field(description, "apex_over");
  const std::vector<std::size_t> groups = slant_groups(base, plan.apex_over);
  const std::size_t count = group_count(groups);
  for (std::size_t i = 0; i < groups.size(); ++i) {
    const std::string number = std::to_string(groups[i] + 1);
    const std::string side = title_of(base, base.sides[i]);
    plan.side_titles.push_back(side);
    if (count == 1) {
      plan.slants.push_back({"slant_height", "ℓ", 1});
      plan.slant_titles.push_back("slant height");
    } else {
      plan.slants.push_back({"slant_heights." + number, "ℓ" + subscript(groups[i] + 1), 1});
      plan.slant_titles.push_back(said(message("slant height on the {side}", {{"side", Noun{side}}})));
    }
  }
  if (!plan.apex_over && base.corner_distance_squared) {
    plan.lateral_edge = Symbol{"lateral_edge", "e", 1};
  }
  return plan;
}

std::vector<Fault> misplaced_fields(const Description& description, const PyramidPlan& plan) {
  const std::size_t count = group_count(slant_groups(plan.base, plan.apex_over));
  std::vector<Fault> faults;
  if (has_field(description, "slant_height") && count != 1) {
    faults.push_back(impossible(
        "slant_height",
        count == 2
            ? message(
                  "the faces of this pyramid have two slant heights: give slant_heights, the one on the {side} first",
                  {{"side", Noun{plan.side_titles[0]}}})
            : message("the faces of this pyramid have different slant heights: "
                      "give the height instead")));
  }
  if (has_field(description, "slant_heights") && count != 2) {
    faults.push_back(impossible("slant_heights", count == 1
                                                     ? message("all lateral faces of this pyramid have the same slant "
                                                               "height: give one slant_height")
                                                     : message("the faces of this pyramid have more than two slant "
                                                               "heights: give the height instead")));
  }
  if (has_field(description, "lateral_edge") && !plan.lateral_edge) {
    faults.push_back(
        impossible("lateral_edge", message("the lateral edges of this pyramid are not all equal: give the height "
                                           "instead")));
  }
  if (!plan.base.is_convex) {
    faults.push_back(impossible("base.vertices", message("a pyramid needs a base with no corner that points inward")));
  }
  return faults;
}

void add_measures(SolidStatement& statement, const PyramidPlan& plan) {
  statement.measures = plan.base.measures;
  statement.measures.push_back(measure(plan.height, "height", "height"));
  const std::size_t count = group_count(slant_groups(plan.base, plan.apex_over));
  std::vector<Symbol> done;
  for (std::size_t i = 0; i < plan.slants.size(); ++i) {
    if (std::find(done.begin(), done.end(), plan.slants[i]) != done.end()) {
      continue;
    }
    const std::string key = count == 1 ? "slant_height" : count == 2 ? "slant_heights" : "";
    statement.measures.push_back(measure(plan.slants[i], plan.slant_titles[i], key, done.size()));
    done.push_back(plan.slants[i]);
  }
  if (plan.lateral_edge) {
    statement.measures.push_back(measure(*plan.lateral_edge, "lateral edge", "lateral_edge"));
  }
  if (plan.apex_over) {
    statement.measures.push_back(measure(plan.over_along, "distance of the apex along the first side", "apex_over", 0));
    statement.measures.back().may_be_zero = true;
    statement.measures.push_back(measure(plan.over_across, "distance of the apex from the first side", "apex_over", 1));
    statement.measures.back().may_be_zero = true;
  }
}

/// The base's corners and the foot of the apex for the numbers asked last: each side asks for the same ones.
class FootMemo {
 public:
  FootMemo(const PyramidPlan& plan, std::vector<Symbol> from) : plan_(plan), from_(std::move(from)) {}

  exact::Number distance_from(std::size_t side, const algebra::Bindings& bindings) {
    take(bindings);
    return distance_from_line(*foot_, base_.corners[side], base_.corners[(side + 1) % base_.corners.size()]);
  }
  /// "The foot of the height is at (3, 3) and the side runs from (8, 0) to (8, 6), so they are 8 − 3 apart".
  words::Message distance_worked(std::size_t side, const algebra::Bindings& bindings) {
    take(bindings);
    const ExactPoint& from = base_.corners[side];
    const ExactPoint& to = base_.corners[(side + 1) % base_.corners.size()];
    const words::Message where =
        message("the foot of the height is at {foot} and the side runs from {from} to {to}",
                {{"foot", said_point(*foot_)}, {"from", said_point(from)}, {"to", said_point(to)}});
    const bool is_upright = from.x == to.x;
    if (is_upright || from.y == to.y) {
      const exact::Number& one = is_upright ? from.x : from.y;
      const exact::Number& other = is_upright ? foot_->x : foot_->y;
      return message("{where}, so they are {more} − {less} apart",
                     {{"where", where},
                      {"more", exact::class_text(one < other ? other : one)},
                      {"less", exact::class_text(one < other ? one : other)}});
    }
    const exact::Number length = distance(from, to);
    return message(
        "{where}. They make a triangle with an area of {area}, so they are {twice} ÷ {side} apart: twice the area, "
        "divided "
        "by the side",
        {{"where", where},
         {"area", exact::class_text(distance_from_line(*foot_, from, to) * length / whole(2))},
         {"twice", exact::class_text(distance_from_line(*foot_, from, to) * length)},
         {"side", exact::class_text(length)}});
  }
  [[nodiscard]] const std::vector<Symbol>& from() const { return from_; }

 private:
  static std::string said_point(const ExactPoint& point) {
    return "(" + exact::class_text(point.x) + ", " + exact::class_text(point.y) + ")";
  }

  void take(const algebra::Bindings& bindings) {
    std::vector<exact::Number> key;
    for (const Symbol& symbol : from_) {
      key.push_back(value_of(bindings, symbol));
    }
    if (!foot_ || key != key_) {
      key_ = std::move(key);
      base_ = plan_.base.body(bindings);
      foot_ = foot_of_apex(plan_, base_, bindings);
    }
  }

  PyramidPlan plan_;
  std::vector<Symbol> from_;
  std::vector<exact::Number> key_;
  ShapeBody base_;
  std::optional<ExactPoint> foot_;
};

std::shared_ptr<FootMemo> foot_memo(const PyramidPlan& plan) {
  std::vector<Symbol> from;
  for (const Measure& base_measure : plan.base.measures) {
    from.push_back(base_measure.symbol);
  }
  if (plan.apex_over) {
    from.push_back(plan.over_along);
    from.push_back(plan.over_across);
  }
  return std::make_shared<FootMemo>(plan, std::move(from));
}

/// The distance of the apex's foot from side i, worked out from the corners where no formula of school gives it.
Symbol add_foot_distance(SolidStatement& statement, const std::shared_ptr<FootMemo>& memo, std::size_t i) {
  const std::string number = std::to_string(i + 1);
  Symbol distance_symbol{"foot_distance." + number, "d" + subscript(i + 1), 1};
  Measure foot_distance = measure(distance_symbol, "distance of the foot of the height from a side", "", i);
  foot_distance.may_be_zero = true;
  statement.measures.push_back(foot_distance);
  Derivation derivation;
  derivation.symbol = distance_symbol;
  derivation.from = memo->from();
  derivation.reason = message("find how far the foot of the height is from that side");
  derivation.value = [memo, i](const algebra::Bindings& bindings) -> std::optional<exact::Number> {
    return memo->distance_from(i, bindings);
  };
  derivation.working = [memo, i](const algebra::Bindings& bindings) { return memo->distance_worked(i, bindings); };
  statement.derivations.push_back(derivation);
  return distance_symbol;
}

void add_slants(SolidStatement& statement, const PyramidPlan& plan) {
  const std::shared_ptr<FootMemo> memo = foot_memo(plan);
  const bool by_formula = !plan.apex_over && !plan.base.centroid_distances.empty();
  std::vector<Symbol> done;
  for (std::size_t i = 0; i < plan.slants.size(); ++i) {
    const Symbol& slant = plan.slants[i];
    if (std::find(done.begin(), done.end(), slant) != done.end()) {
      continue;
    }
    done.push_back(slant);
    const Expression across =
        by_formula ? plan.base.centroid_distances[i] : Expression(add_foot_distance(statement, memo, i));
    statement.relations.push_back({{square(slant), square(plan.height) + square(across)},
                                   message("the height, the slant height and the distance between their feet form a "
                                           "right triangle, so use the Pythagorean theorem")});
    if (by_formula) {
      statement.conditions.push_back(
          {slant, across, slant.name,
           message("the {slant} must be longer than {distance}",
                   {{"slant", Noun{plan.slant_titles[i]}}, {"distance", plan.base.centroid_distance_names[i]}})});
      statement.conditions.push_back(
          {slant, plan.height, slant.name,
           message("the {slant} must be longer than the height", {{"slant", Noun{plan.slant_titles[i]}}})});
    }
  }
}

/// Where all lateral edges are equal, each lateral face is an isosceles triangle, halved by its slant height.
void add_lateral_triangles(SolidStatement& statement, const PyramidPlan& plan) {
  std::vector<Symbol> done;
  for (std::size_t i = 0; i < plan.slants.size(); ++i) {
    if (std::find(done.begin(), done.end(), plan.slants[i]) == done.end()) {
      done.push_back(plan.slants[i]);
      statement.relations.push_back(
          {{square(*plan.lateral_edge), square(plan.slants[i]) + square(half(plan.base.sides[i]))},
           message(
               "the slant height splits the lateral face into two right triangles, so use the Pythagorean theorem")});
      statement.conditions.push_back({*plan.lateral_edge, plan.slants[i], plan.lateral_edge->name,
                                      message("the lateral edge must be longer than each slant height")});
    }
  }
}

void add_lateral_edge(SolidStatement& statement, const PyramidPlan& plan) {
  if (!plan.lateral_edge) {
    return;
  }
  const Symbol& e = *plan.lateral_edge;
  if (plan.base.is_regular) {
    statement.relations.push_back(
        {{square(e), square(plan.slants[0]) + square(half(plan.base.sides[0]))},
         message("the slant height splits the lateral face into two right triangles, so use the Pythagorean theorem")});
    statement.conditions.push_back(
        {e, plan.slants[0], e.name, message("the lateral edge must be longer than the slant height")});
    statement.conditions.push_back(
        {e, half(plan.base.sides[0]), e.name, message("the lateral edge must be longer than half the base edge")});
  } else {
    add_lateral_triangles(statement, plan);
  }
  statement.relations.push_back({{square(e), square(plan.height) + *plan.base.corner_distance_squared},
                                 message("the height, the lateral edge and the distance between their feet form a "
                                         "right triangle, so use the Pythagorean theorem")});
  statement.conditions.push_back(
      {e, root(*plan.base.corner_distance_squared), e.name,
       message("the lateral edge must be longer than the distance from the center of the base to "
               "its corners")});
  statement.conditions.push_back({e, plan.height, e.name, message("the lateral edge must be longer than the height")});
}

Expression lateral_area(const PyramidPlan& plan) {
  if (std::all_of(plan.slants.begin(), plan.slants.end(), [&](const Symbol& s) { return s == plan.slants[0]; })) {
    return half(Expression(symbols::perimeter()) * plan.slants[0]);
  }
  std::vector<Expression> terms;
  std::vector<bool> counted(plan.slants.size(), false);
  for (std::size_t i = 0; i < plan.slants.size(); ++i) {
    int alike = 0;
    for (std::size_t j = i; j < plan.slants.size(); ++j) {
      if (!counted[j] && plan.slants[j] == plan.slants[i] && plan.base.sides[j] == plan.base.sides[i]) {
        counted[j] = true;
        ++alike;
      }
    }
    if (alike > 0) {
      const Expression triangle = half(Expression(plan.base.sides[i]) * plan.slants[i]);
      terms.push_back(alike == 1 ? triangle : Expression(alike) * triangle);
    }
  }
  return algebra::sum_of(terms);
}

void add_areas(SolidStatement& statement, const PyramidPlan& plan) {
  const Expression b = symbols::base_area();
  statement.volume = algebra::Equation{symbols::volume(), b * plan.height / 3};
  statement.relations.push_back(
      {{symbols::lateral_area(), lateral_area(plan)},
       message("each lateral face is a triangle: half the base edge times the slant height")});
  statement.relations.push_back({{symbols::surface_area(), b + symbols::lateral_area()},
                                 message("the base and the lateral faces make up the surface")});
  statement.relations.push_back(
      {*statement.volume, message("the volume of a pyramid is one third of the base area times the height")});
  statement.conditions.push_back(
      {symbols::lateral_area(), b, "lateral_area", message("the lateral faces together must be more than the base")});
  statement.conditions.push_back({symbols::surface_area(), Expression(2) * b, "surface_area",
                                  message("the surface area must be more than twice the base area")});
}

void name(SolidStatement& statement, const PyramidPlan& plan, const Description& description) {
  std::vector<std::string> names = plan.base.pyramid_names;
  names.push_back(name_of({plan.apex_over ? "oblique" : "right", plan.base.adjective, "pyramid"}));
  if (plan.base.is_regular && !plan.apex_over) {
    names.push_back(name_of({"regular", plan.base.adjective, "pyramid"}));
  }
  name_after_base(statement, plan.base, "pyramid", names);
  const auto edge = written_length(description, "lateral_edge");
  const bool is_triangular = plan.base.is_regular && plan.base.sides.size() == 3;
  if (is_triangular && edge && written_length(description.base.front(), "side") == edge) {
    statement.other_names.emplace_back("tetrahedron");
    call_it(statement, "regular tetrahedron");
  }
}

StatedSolid stated_pyramid(const Description& description, const ShapeStatement* base) {
  const PyramidPlan plan = planned(description, *base);
  const std::vector<Fault> faults = misplaced_fields(description, plan);
  if (!faults.empty()) {
    return failure(faults);
  }
  SolidStatement statement;
  name(statement, plan, description);
  statement.relations = plan.base.relations;
  statement.conditions = plan.base.conditions;
  statement.assumptions = plan.base.assumptions;
  add_measures(statement, plan);
  add_slants(statement, plan);
  add_lateral_edge(statement, plan);
  add_areas(statement, plan);
  statement.body = [plan](const algebra::Bindings& bindings) { return pyramid_body(plan, bindings); };
  return statement;
}

}  // namespace

Kind pyramid() {
  return {"pyramid",
          {length_field("height", "height", "height"), length_field("slant_height", "slant height", "slant_height"),
           lengths_field("slant_heights", "slant heights", {"slant_heights.1", "slant_heights.2"}, 2, 2),
           length_field("lateral_edge", "lateral edge", "lateral_edge"),
           lengths_field("apex_over", "point under the apex", {"apex_over.1", "apex_over.2"}, 2, 2)},
          true,
          &stated_pyramid,
          {.has_base = true, .has_apex = true},
          example("pyramid", {{"height", length_entry("12 cm")}}),
          {},
          {Use::Pointed}};
}

}  // namespace fw::solids::kind
