#include <algorithm>
#include <cmath>

#include "practice/signatures.hpp"

// A copy whose edges are k times as long.
// Source: De Bock et al. (1999, 2002) and Modestou, Gagatsis & Pitta-Pantazi (2004), for areas and volumes that grow
// like lengths (H1, H2); the rest is common practice, no source.
namespace fw::practice {
namespace {

double factor_of(const Figure& figure) { return figure.question->factor->to_double(); }
int dimension_of(const Figure& figure) { return figure.question->asked == Asked::CopyVolume ? 3 : 2; }
double original_of(const Figure& figure) { return figure.truth / std::pow(factor_of(figure), dimension_of(figure)); }

void like_a_length(const Figure& figure, Finds& finds) {
  finds.push_back({original_of(figure) * factor_of(figure), {}});
}
void other_power(const Figure& figure, Finds& finds) {
  finds.push_back({original_of(figure) * std::pow(factor_of(figure), dimension_of(figure) == 3 ? 2 : 3), {}});
}
void times_the_exponent(const Figure& figure, Finds& finds) {
  finds.push_back({original_of(figure) * dimension_of(figure) * factor_of(figure), {}});
}
void not_scaled(const Figure& figure, Finds& finds) { finds.push_back({original_of(figure), {}}); }

// Whether an expression speaks of labels alone, so that changed labels change all of it.
bool is_of_labels(const algebra::Expression& expression, const Figure::Values& labels) {
  const std::vector<algebra::Symbol> letters = algebra::symbols_of(expression);
  return std::all_of(letters.begin(), letters.end(),
                     [&](const algebra::Symbol& letter) { return labels.count(letter.name) != 0; });
}

// Adds k to every label, in place of multiplying it.
void added_to_edges(const Figure& figure, Finds& finds) {
  Figure::Values values;
  for (std::size_t i = 0; i < figure.labels.size(); ++i) {
    values[figure.label_names[i]] = figure.labels[i] + factor_of(figure);
  }
  const std::string& find = figure.question->find;
  if (find == "surface_area" || find == "lateral_area") {
    double area = 0;
    for (const FigureFace& face : figure.faces) {
      const bool counts = find == "surface_area" ? face.counts : face.role == solids::FaceRole::Lateral;
      if (counts && !is_of_labels(figure.face(face).work, values)) {
        return;
      }
      area += counts ? figure.area_with(face, values) : 0;
    }
    finds.push_back({area, {}});
    return;
  }
  const auto& volume = figure.problem->solid.statement().volume;
  if (find == "volume" && volume) {
    if (figure.traits().has_base) {
      if (!is_of_labels(figure.face(figure.faces[0]).work, values)) {
        return;
      }
      values[solids::symbols::base_area().name] = figure.area_with(figure.faces[0], values);
    }
    if (!is_of_labels(volume->right, values)) {
      return;
    }
    finds.push_back({algebra::rough_value(volume->right, values), {}});
  }
}

// ---- the factor is asked for ----

int dimension_known(const Figure& figure) { return figure.question->known_dimension; }
double ratio_of(const Figure& figure) { return std::pow(figure.truth, dimension_known(figure)); }

void ratio_instead(const Figure& figure, Finds& finds) { finds.push_back({ratio_of(figure), {}}); }
void ratio_shared_out(const Figure& figure, Finds& finds) {
  finds.push_back({ratio_of(figure) / dimension_known(figure), {}});
}
void other_root(const Figure& figure, Finds& finds) {
  finds.push_back({std::pow(ratio_of(figure), dimension_known(figure) == 2 ? 1.0 / 3 : 1.0 / 2), {}});
}

}  // namespace

std::vector<Signature> scaling_signatures() {
  const std::vector<Asked> scale{Asked::Scale};
  const std::vector<Asked> copy{Asked::CopyArea, Asked::CopyVolume};
  return {
      {"H1",
       {Asked::CopyArea},
       like_a_length,
       Saying("{n} is what you get if you multiply by the scale factor only once.",
              "In how many dimensions does a face grow?")},
      {"H2",
       {Asked::CopyVolume},
       like_a_length,
       Saying("{n} is what you get if you multiply by the scale factor only once.",
              "In how many dimensions does a solid grow?")},
      {"H3", copy, other_power,
       Saying("{n} is what you get with a different power of the scale factor.",
              "An area has two dimensions. How many does a volume have?")},
      {"H4", copy, times_the_exponent,
       Saying("{n} is what you get if you multiply the scale factor by the exponent.",
              "Area grows by k × k. What does volume grow by?")},
      {"H5", copy, added_to_edges,
       Saying("{n} is what you get if you add the scale factor to each edge.",
              "What happens to each edge of a scaled copy?")},
      {"H8", copy, not_scaled,
       Saying("{n} belongs to the solid itself.", "How many times as large is it on the scaled copy?")},
      {"H7", scale, ratio_instead,
       Saying("{n} is how many times the area or the volume grew.", "Which number, multiplied by itself, gives that?")},
      {"H9", scale, ratio_shared_out, Saying("{n} is what you get if you divide.", "What undoes squaring?")},
      {"H10", scale, other_root,
       Saying("{n} is what you get with the other root.", "In how many dimensions does it grow?")},
  };
}

}  // namespace fw::practice
