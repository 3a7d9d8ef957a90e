#include "tasks/generate/draw.hpp"

#include <algorithm>
#include <array>

#include "base/ensure.hpp"
#include "solids/catalog.hpp"
#include "tasks/generate/clean_numbers.hpp"

namespace fw::tasks {
namespace {

using solids::Description;
using solids::FieldValue;
using solids::LengthEntry;

LengthEntry whole(int number, const std::string& unit) { return entry(std::to_string(number), unit); }
std::vector<LengthEntry> wholes(const std::vector<int>& numbers, const std::string& unit) {
  std::vector<LengthEntry> entries;
  entries.reserve(numbers.size());
  for (const int number : numbers) {
    entries.push_back(whole(number, unit));
  }
  return entries;
}
void put_on(Description& description, const std::string& shape, std::map<std::string, FieldValue> fields) {
  Description base;
  base.kind = shape;
  base.fields = std::move(fields);
  description.base = {std::move(base)};
}
// How long a prism is, and how it lies.
void stretch(Description& description, Seed& seed, int level, const Form& form) {
  description.fields["height"] = whole(one_of(numbers_in(form.sizes[2], level == 1), seed), form.unit);
  if (form.lies) {
    description.fields["lies"] = std::string("side");
  }
}
std::size_t count_in(const Range& range) { return numbers_in(range, false).size(); }

void measure_box(Description& description, Seed& seed, int level, Labels, const Form& form) {
  // Edges of three lengths, where the form has them: with easy numbers only, or shrunk to a model, it may not.
  constexpr int most_easy_tries = 12;
  constexpr int most_tries = 60;
  std::array<int, 3> edges{};
  const auto has_equal = [&] { return edges[0] == edges[1] || edges[1] == edges[2] || edges[0] == edges[2]; };
  for (int tries = 0; tries < most_tries && has_equal(); ++tries) {
    for (std::size_t i = 0; i < edges.size(); ++i) {
      edges[i] = one_of(numbers_in(form.sizes[i], level == 1 && tries < most_easy_tries), seed);
    }
  }
  const bool has_half = level == 3 && edges[0] % 2 == 0 && edges[1] % 2 == 0 && edges[2] < form.sizes[2].most;
  description.fields = {{"length", whole(edges[0], form.unit)},
                        {"width", whole(edges[1], form.unit)},
                        {"height", entry(std::to_string(edges[2]) + (has_half ? ".5" : ""), form.unit)}};
}

void measure_block(Description& description, Seed& seed, int level, Labels, const Form& form) {
  description.fields["edge"] = whole(one_of(numbers_in(form.sizes[0], level == 1), seed), form.unit);
}

void on_isosceles(Description& description, Seed& seed, int level, Labels, const Form& form) {
  const CleanTriangle t = one_of(isosceles_triangles(form), seed);
  put_on(description, "isosceles triangle",
         {{"base", whole(t.base, form.unit)},
          {"height", whole(t.height, form.unit)},
          {"leg", whole(t.second, form.unit)}});
  stretch(description, seed, level, form);
}
void on_right_triangle(Description& description, Seed& seed, int level, Labels, const Form& form) {
  const CleanTriangle t = one_of(right_triangles(form), seed);
  put_on(description, "right triangle",
         {{"legs", wholes({t.base, t.height}, form.unit)}, {"hypotenuse", whole(t.second, form.unit)}});
  stretch(description, seed, level, form);
}
void on_triangle(Description& description, Seed& seed, int level, Labels, const Form& form) {
  const CleanTriangle t = one_of(scalene_triangles(form), seed);
  put_on(description, "triangle",
         {{"sides", wholes({t.base, t.second, t.third}, form.unit)}, {"height", whole(t.height, form.unit)}});
  stretch(description, seed, level, form);
}
void on_trapezoid(Description& description, Seed& seed, int level, Labels, const Form& form) {
  const CleanTrapezoid t = one_of(trapezoids(form), seed);
  put_on(description, "trapezoid",
         {{"bases", wholes({t.longer, t.shorter}, form.unit)},
          {"height", whole(t.height, form.unit)},
          {"legs", wholes({t.leg, t.leg}, form.unit)}});
  stretch(description, seed, level, form);
}
void on_rhombus(Description& description, Seed& seed, int level, Labels, const Form& form) {
  const CleanRhombus r = one_of(rhombuses(form), seed);
  put_on(description, "rhombus",
         {{"diagonals", wholes({r.longer, r.shorter}, form.unit)}, {"side", whole(r.side, form.unit)}});
  stretch(description, seed, level, form);
}
void measure_spire(Description& description, Seed& seed, int, Labels labels, const Form& form) {
  const CleanSpire p = one_of(square_spires(form), seed);
  put_on(description, "square", {{"side", whole(p.length, form.unit)}});
  if (labels != Labels::ForVolume) {
    description.fields["slant_height"] = whole(p.on_length, form.unit);
  }
  if (labels != Labels::ForArea) {
    description.fields["height"] = whole(p.height, form.unit);
  }
}
void measure_roof(Description& description, Seed& seed, int, Labels labels, const Form& form) {
  const CleanSpire p = one_of(rectangular_spires(form), seed);
  put_on(description, "rectangle", {{"length", whole(p.length, form.unit)}, {"width", whole(p.width, form.unit)}});
  if (labels != Labels::ForVolume) {
    description.fields["slant_heights"] = wholes({p.on_length, p.on_width}, form.unit);
  }
  if (labels != Labels::ForArea) {
    description.fields["height"] = whole(p.height, form.unit);
  }
}

// From the second level on, the circle may be labeled with its diameter.
void label_circle(Description& description, Seed& seed, int level, int radius, const Form& form) {
  const bool is_by_diameter = level > 1 && seed.below(2) == 0;
  description.fields[is_by_diameter ? "diameter" : "radius"] = whole(is_by_diameter ? 2 * radius : radius, form.unit);
}
void measure_can(Description& description, Seed& seed, int level, Labels, const Form& form) {
  label_circle(description, seed, level, one_of(numbers_in(form.sizes[0], level == 1), seed), form);
  description.fields["height"] = whole(one_of(numbers_in(form.sizes[1], level == 1), seed), form.unit);
  if (form.lies) {
    description.fields["lies"] = std::string("side");
  }
}
void measure_hat(Description& description, Seed& seed, int level, Labels labels, const Form& form) {
  const Triple t = one_of(round_spires(form), seed);
  label_circle(description, seed, level, t.leg, form);
  if (labels != Labels::ForVolume) {
    description.fields["slant_height"] = whole(t.hypotenuse, form.unit);
  }
  if (labels != Labels::ForArea) {
    description.fields["height"] = whole(t.other, form.unit);
  }
}

std::size_t boxes(const Form& form) {
  return count_in(form.sizes[0]) * count_in(form.sizes[1]) * count_in(form.sizes[2]);
}
std::size_t blocks(const Form& form) { return count_in(form.sizes[0]); }
template <class Row, std::vector<Row> (*Rows)(const Form&)>
std::size_t upright_sizes(const Form& form) {
  return Rows(form).size() * count_in(form.sizes[2]);
}
std::size_t spire_sizes(const Form& form) { return square_spires(form).size(); }
std::size_t cans(const Form& form) { return count_in(form.sizes[0]) * count_in(form.sizes[1]); }
std::size_t hats(const Form& form) { return round_spires(form).size(); }
std::size_t roofs(const Form& form) { return rectangular_spires(form).size(); }

}  // namespace

const std::vector<Family>& families() {
  using solids::Use;
  const std::string h = "height";
  static const std::vector<Family> table{
      {Shape::Box, 1, Use::Box, 6, measure_box, boxes, h, h, false},
      {Shape::Block, 1, Use::Block, 6, measure_block, blocks, "edge", "edge", false},
      {Shape::Isosceles, 1, Use::Upright, 5, on_isosceles, upright_sizes<CleanTriangle, isosceles_triangles>, h, h,
       true},
      {Shape::Spire, 1, Use::Pointed, 5, measure_spire, spire_sizes, h, "slant_height", true},
      {Shape::Right, 2, Use::Upright, 5, on_right_triangle, upright_sizes<CleanTriangle, right_triangles>, h, h, true},
      {Shape::Trapezoid, 2, Use::Upright, 6, on_trapezoid, upright_sizes<CleanTrapezoid, trapezoids>, h, h, true},
      {Shape::Roof, 2, Use::Pointed, 5, measure_roof, roofs, h, "", true},
      {Shape::Scalene, 3, Use::Upright, 5, on_triangle, upright_sizes<CleanTriangle, scalene_triangles>, h, h, true},
      {Shape::Rhombus, 3, Use::Upright, 6, on_rhombus, upright_sizes<CleanRhombus, rhombuses>, h, h, true},
      {Shape::Can, 1, Use::Round, 3, measure_can, cans, h, h, false},
      {Shape::Hat, 2, Use::RoundPointed, 2, measure_hat, hats, h, "slant_height", true},
  };
  return table;
}

const Family& family_of(Shape shape) {
  const std::vector<Family>& all = families();
  const auto found = std::find_if(all.begin(), all.end(), [&](const Family& one) { return one.shape == shape; });
  ensure(found != all.end(), "a thing has a shape that no family draws");
  return *found;
}

const std::vector<Subject>& subjects() {
  static const std::vector<Subject> table = [] {
    std::vector<Subject> all;
    for (const Thing& thing : things()) {
      for (const Form& form : thing.forms) {
        all.push_back({&thing, &form, &family_of(form.shape)});
      }
    }
    return all;
  }();
  return table;
}

Description Family::draw(Seed& seed, int at_level, Labels labels, const Form& form) const {
  Description description;
  description.kind = solids::kind_for(use).key;
  measure(description, seed, at_level, labels, form);
  return description;
}

int drawn(Seed& seed, int least, int most) {
  return least + static_cast<int>(seed.below(static_cast<std::size_t>(most - least) + 1));
}

LengthEntry entry(const std::string& number, const std::string& unit) {
  const auto quantity = units::parse_quantity(number + " " + unit);
  ensure(quantity.has_value(), "a drawn length can be read");
  return {*quantity};
}

Description without(Description description, const std::string& key) {
  description.fields[key] = LengthEntry{};
  return description;
}

}  // namespace fw::tasks
