#include <cmath>
#include <numeric>

#include "practice/signatures.hpp"

// A missing measure, worked back from what is known of the whole.
// Source: common practice, no source.
namespace fw::practice {
namespace {

std::optional<double> known(const Figure& figure, const std::string& name) {
  const auto& all = figure.problem->known;
  return all.find(name) == all.end() ? std::nullopt : figure.value(name);
}
std::optional<double> known_volume(const Figure& figure) { return known(figure, "volume"); }
std::optional<double> known_surface(const Figure& figure) { return known(figure, "surface_area"); }

bool asks_height(const Figure& figure) { return figure.question->find == "height"; }
bool asks_slant(const Figure& figure) { return figure.question->find == "slant_height"; }
bool asks_only_length(const Figure& figure) { return figure.traits().is_all_alike && figure.labels.empty(); }

void one_length_undone(const Figure& figure, Finds& finds) {
  const auto volume = known_volume(figure);
  for (const double label : figure.labels) {
    finds.push_back({volume ? *volume / label : 0, {}});
  }
}
void taken_off(const Figure& figure, Finds& finds) {
  const auto volume = known_volume(figure);
  if (volume && !figure.labels.empty()) {
    finds.push_back({*volume - std::accumulate(figure.labels.begin(), figure.labels.end(), 0.0), {}});
    finds.push_back({asks_height(figure) ? *volume - figure.base() : 0, {}});
  }
}
void divided_by_sum(const Figure& figure, Finds& finds) {
  const auto volume = known_volume(figure);
  if (volume && figure.labels.size() > 1) {
    finds.push_back({*volume / std::accumulate(figure.labels.begin(), figure.labels.end(), 0.0), {}});
  }
}

struct Wrapped {
  double surface = 0, base = 0, perimeter = 0;
};
// The height is asked for, from the surface area of two bases and a rectangle round them.
std::optional<Wrapped> wrapped(const Figure& figure) {
  const auto surface = known_surface(figure);
  const auto perimeter = figure.value("perimeter");
  const bool fits = figure.traits().sides_make_rectangle && asks_height(figure) && surface && perimeter;
  return fits ? std::optional(Wrapped{*surface, figure.base(), *perimeter}) : std::nullopt;
}
void ends_not_taken_off(const Figure& figure, Finds& finds) {
  if (const auto it = wrapped(figure)) {
    finds.push_back({it->surface / it->perimeter, {}});
  }
}
void one_end_taken_off(const Figure& figure, Finds& finds) {
  if (const auto it = wrapped(figure)) {
    finds.push_back({(it->surface - it->base) / it->perimeter, {}});
  }
}
void stopped_at_sides(const Figure& figure, Finds& finds) {
  if (const auto it = wrapped(figure)) {
    finds.push_back({it->surface - 2 * it->base, {}});
  }
}
void half_way_round(const Figure& figure, Finds& finds) {
  if (const auto it = wrapped(figure)) {
    finds.push_back({2 * (it->surface - 2 * it->base) / it->perimeter, {}});
  }
}

void stopped_at_one_face(const Figure& figure, Finds& finds) {
  const auto surface = known_surface(figure);
  if (surface && asks_only_length(figure)) {
    finds.push_back({*surface / static_cast<double>(figure.faces.size()), {figure.faces[0].id}});
  }
}
void halved_for_root(const Figure& figure, Finds& finds) {
  const auto surface = known_surface(figure);
  if (surface && asks_only_length(figure)) {
    finds.push_back({*surface / static_cast<double>(2 * figure.faces.size()), {}});
  }
}
void root_of_all_faces(const Figure& figure, Finds& finds) {
  const auto surface = known_surface(figure);
  if (surface && asks_only_length(figure)) {
    finds.push_back({std::sqrt(*surface), {}});
  }
}
void no_third_root(const Figure& figure, Finds& finds) {
  const auto volume = known_volume(figure);
  if (volume && asks_only_length(figure)) {
    finds.push_back({*volume / 3, {}});
    finds.push_back({std::sqrt(*volume), {}});
  }
}

void third_not_undone(const Figure& figure, Finds& finds) {
  if (figure.traits().has_apex && asks_height(figure) && known_volume(figure)) {
    finds.push_back({figure.truth / 3, {}});
  }
}
void third_done_again(const Figure& figure, Finds& finds) {
  if (figure.traits().has_apex && asks_height(figure) && known_volume(figure)) {
    finds.push_back({figure.truth / 9, {}});
  }
}
void half_not_undone(const Figure& figure, Finds& finds) {
  if (figure.traits().bases_match && figure.faces[0].is_halved && known_volume(figure)) {
    finds.push_back({figure.truth / 2, {}});
  }
}
void slant_from_surface(const Figure& figure, Finds& finds) {
  const auto surface = known_surface(figure);
  const auto perimeter = figure.value("perimeter");
  if (figure.traits().has_apex && asks_slant(figure) && surface && perimeter) {
    finds.push_back({4 * (*surface - figure.base()) / *perimeter, {}});
    finds.push_back({2 * *surface / *perimeter, {}});
  }
}

// The right triangle of height and slant height, where one of the two is asked for from the other.
struct RightTriangle {
  double height = 0, slant = 0, foot = 0;
};
std::optional<RightTriangle> right_triangle(const Figure& figure) {
  const auto height = figure.value("height");
  const auto slant = figure.value("slant_height");
  const bool fits = figure.problem->known.empty() && (asks_height(figure) || asks_slant(figure)) && height && slant;
  return fits ? std::optional(RightTriangle{*height, *slant, std::sqrt(*slant * *slant - *height * *height)})
              : std::nullopt;
}
void lengths_for_squares(const Figure& figure, Finds& finds) {
  if (const auto it = right_triangle(figure)) {
    finds.push_back({asks_slant(figure) ? it->height + it->foot : it->slant - it->foot, {}});
  }
}
void whole_edge_for_half(const Figure& figure, Finds& finds) {
  if (const auto it = right_triangle(figure); it && !figure.traits().has_round_base) {
    const double whole = 4 * it->foot * it->foot;
    finds.push_back({asks_slant(figure) ? std::sqrt(it->height * it->height + whole)
                                        : std::sqrt(std::max(0.0, it->slant * it->slant - whole)),
                     {}});
  }
}
void squares_the_other_way(const Figure& figure, Finds& finds) {
  if (const auto it = right_triangle(figure)) {
    const double given = asks_slant(figure) ? it->height : it->slant;
    const double square = given * given + (asks_slant(figure) ? -1 : 1) * it->foot * it->foot;
    finds.push_back({std::sqrt(std::max(0.0, square)), {}});
  }
}
void root_left_out(const Figure& figure, Finds& finds) {
  if (right_triangle(figure)) {
    finds.push_back({figure.truth * figure.truth, {}});
  }
}

// ---- rarer ----

// The height from the volume, of a base that was worked out another way: its area as part of the right one.
void from_volume(const Figure& figure, std::initializer_list<double> times, Finds& finds) {
  for (const double one : times) {
    finds.push_back({asks_height(figure) && known_volume(figure) ? figure.truth * one : 0, {}});
  }
}
void half_taken_again(const Figure& figure, Finds& finds) { from_volume(figure, {2}, finds); }
void third_for_nothing(const Figure& figure, Finds& finds) {
  if (!figure.traits().has_apex) {
    from_volume(figure, {3, 1.0 / 3}, finds);
  }
}
void multiplied_to_undo(const Figure& figure, Finds& finds) {
  if (figure.base() > 0) {
    from_volume(figure, {figure.base() * figure.base()}, finds);
  }
}
void with_another_base(const Figure& figure, Finds& finds) {
  if (!figure.traits().has_base || !asks_height(figure) || !known_volume(figure)) {
    return;
  }
  const FigureFace& base = figure.faces[0];
  for (const algebra::Symbol& symbol : algebra::symbols_of(figure.face(base).work)) {
    for (const solids::Measure& measure : figure.problem->solid.statement().measures) {
      const auto side = figure.value(measure.symbol.name);
      if (side && measure.in_base && measure.symbol.dimension == 1 && !(measure.symbol == symbol)) {
        const double other = figure.area_with(base, {{symbol.name, *side}});
        from_volume(figure, {base.area / other, base.area / (2 * other)}, finds);
      }
    }
  }
}
void divided_by_base(const Figure& figure, Finds& finds) {
  const auto surface = known_surface(figure);
  if (surface && asks_height(figure) && figure.base() > 0) {
    finds.push_back({*surface / figure.base(), {}});
  }
}
void whole_ends_taken_off(const Figure& figure, Finds& finds) {
  const auto it = wrapped(figure);
  if (it && figure.faces[0].is_halved) {
    finds.push_back({(it->surface - 4 * it->base) / it->perimeter, {}});
  }
}
void other_height(const Figure& figure, Finds& finds) {
  const char* other = asks_height(figure) ? "slant_height" : asks_slant(figure) ? "height" : "";
  const auto value = figure.value(other);
  if (!figure.problem->known.empty() && value) {
    finds.push_back({*value, {}});
  }
}
void half_perimeter_for_slant(const Figure& figure, Finds& finds) {
  if (asks_slant(figure) && known_surface(figure)) {
    finds.push_back({figure.truth / 2, {}});
  }
}
void divided_by_two_added(const Figure& figure, Finds& finds) {
  const auto volume = known_volume(figure);
  for (std::size_t i = 0; volume && i < figure.labels.size(); ++i) {
    for (std::size_t k = i + 1; k < figure.labels.size(); ++k) {
      finds.push_back({*volume / (figure.labels[i] + figure.labels[k]), {}});
    }
  }
}

}  // namespace

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Signature> unknown_signatures() {
  const std::vector<Asked> length{Asked::Length};
  return {
      {"K1", length, one_length_undone,
       Saying("{n} is what you get if you divide by only one length.",
              "Which lengths do you multiply to get the volume?")},
      {"K2", length, taken_off, Saying("{n} is what you get if you subtract.", "What undoes multiplying?")},
      {"K3", length, divided_by_sum,
       Saying("{n} is what you get if you divide by a sum.", "How is the area of the base found?")},
      {"K4", length, ends_not_taken_off,
       Saying("{n} is what you get if you divide the whole surface area by the perimeter.",
              "What do you have to subtract first?")},
      {"K5", length, one_end_taken_off,
       Saying("{n} is what you get if you subtract only one base.", "How many bases are there?")},
      {"K6", length, stopped_at_sides,
       Saying("{n} is the lateral area, and that's a good first step.", "What do you divide it by to get the height?")},
      {"K7", length, half_way_round,
       Saying("{n} is what you get with only half of the perimeter.", "How long is it all the way around the base?")},
      {"K8", length, stopped_at_one_face,
       Saying("{n} is the area of one face. Good so far.", "Which number, squared, gives that area?")},
      {"K9", length, halved_for_root, Saying("{n} is what you get if you take half.", "What undoes squaring?")},
      {"K10", length, root_of_all_faces,
       Saying("{n} is the square root of the whole surface area.", "How many faces share that area?")},
      {"K11", length, no_third_root,
       Saying("{n} is what you get if you divide by 3 or take a square root.",
              "Which number, cubed, gives the volume?")},
      {"K12", length, third_not_undone, Saying("{n} is what you get if you leave out the ⅓.", "What undoes the ⅓?")},
      {"K13", length, third_done_again,
       Saying("{n} is what you get if you divide by 3 when you should multiply.", "What undoes taking a third?")},
      {"K14", length, half_not_undone,
       Saying("{n} is what you get if you leave out the ½.", "What undoes taking half?")},
      {"K15", length, slant_from_surface,
       Saying("{n} is what you get if you skip a step.", "Subtract the base. What do you divide the rest by?")},
      {"K16", length, lengths_for_squares,
       Saying("{n} is what you get if you don't square the lengths.",
              "What does the Pythagorean theorem do with the lengths first?")},
      {"K17", length, whole_edge_for_half,
       Saying("{n} is what you get with the whole base edge.",
              "How far is it from the middle of the base to its side?")},
      {"K18", length, squares_the_other_way,
       Saying("{n} is what you get with the wrong side as the hypotenuse.",
              "Which of the three lengths is across from the right angle?")},
      {"K19", length, root_left_out, Saying("{n} is the square of it.", "Which number, squared, gives that?")},
      {"K20", length, with_another_base,
       Saying("{n} is what you get with another length of the base.", "Which two lengths make the area of the base?"),
       true},
      {"K21", length, half_taken_again,
       Saying("{n} is what you get with half of the base.", "Did you take half where you shouldn't?"), true},
      {"K22", length, third_for_nothing,
       Saying("{n} is what you get with the ⅓ of a solid that has a point.", "Which formula goes with this solid?"),
       true},
      {"K23", length, multiplied_to_undo,
       Saying("{n} is what you get if you multiply.", "What undoes multiplying by the base?"), true},
      {"K24", length, other_height,
       Saying("{n} measures a different line of this solid.", "Which one goes straight up, and which one is slanted?"),
       true},
      {"K25", length, half_perimeter_for_slant,
       Saying("{n} is what you get if you leave out the ½.", "What is the formula for one triangle?"), true},
      {"K27", length, divided_by_base,
       Saying("{n} is what you get if you divide by the base.",
              "The surface area is a sum. What do you subtract first?"),
       true},
      {"K28", length, whole_ends_taken_off,
       Saying("{n} is what you get if each base were a whole rectangle.", "What fraction of it is one base?"), true},
      {"K26", length, divided_by_two_added,
       Saying("{n} is what you get if you divide by a sum.", "How is the area of the base found?"), true},
  };
}

}  // namespace fw::practice
