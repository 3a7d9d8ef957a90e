#include <cmath>

#include "practice/signatures.hpp"

// Word problems: what is covered or filled, counts and costs, and faces that were to be left out.
// Source: Carpenter et al. (1983), the bus item of NAEP, for the rounding of counts (L3), from memory; TIMSS 2019, for
// stopping after the first step (L9); the rest is common practice, no source.
namespace fw::practice {
namespace {

using lessons::Purpose;
using lessons::Rounding;

struct Packs {
  double quotient = 0;  ///< before it is rounded
  bool is_cut = false;  ///< from pieces that cannot be joined
  double count = 0;
  double needed = 0;  ///< what is to be covered or filled, in the unit of one item, all coats
  double each = 0;
  double coats = 1;
  Rounding rounding = Rounding::Up;
  std::optional<double> price;
};
std::optional<Packs> packs_of(const Figure& figure) {
  const auto& answer = figure.question->packs;
  const auto& supply = figure.question->supply;
  if (!answer || !supply || !supply->each) {
    return std::nullopt;
  }
  Packs packs;
  packs.quotient = answer->quotient.to_double();
  packs.count = answer->count.to_double();
  packs.each = supply->each->number.value.to_double();
  packs.needed = packs.quotient * packs.each;
  // More than their length takes: leftover pieces cannot be joined.
  packs.is_cut = supply->purpose == Purpose::Edge && packs.count > std::ceil(packs.quotient - 1e-9);
  packs.coats = supply->coats;
  packs.rounding = supply->rounding;
  if (supply->price) {
    packs.price = supply->price->amount.to_double();
  }
  return packs;
}
// What a count leads to: the count, or its cost.
double paid(const Packs& packs, double count) { return packs.price ? count * *packs.price : count; }
double rounded(const Packs& packs, double quotient) {
  return packs.rounding == Rounding::Up     ? std::ceil(quotient - 1e-9)
         : packs.rounding == Rounding::Down ? std::floor(quotient + 1e-9)
                                            : quotient;
}
double rounded_as_asked(const Packs& packs, double quotient) { return paid(packs, rounded(packs, quotient)); }

void other_purpose(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (!packs) {
    return;
  }
  const Purpose purpose = figure.question->supply->purpose;
  const double amount = purpose == Purpose::Cover ? figure.volume : figure.closed;
  if (purpose != Purpose::Edge) {
    finds.push_back({rounded_as_asked(*packs, amount / packs->each), {}});
  }
}
void open_faces_counted(const Figure& figure, Finds& finds) {
  std::vector<FaceId> left_out;
  for (const FigureFace& face : figure.faces) {
    if (!face.counts) {
      left_out.push_back(face.id);
    }
  }
  if (figure.question->asked != Asked::Count) {
    finds.push_back({left_out.empty() ? 0 : figure.closed, left_out});
    return;
  }
  const auto packs = packs_of(figure);
  if (packs && figure.question->supply->purpose == Purpose::Cover && figure.question->supply->measure != "base_area") {
    double counted = 0;
    for (const FigureFace& face : figure.faces) {
      const bool is_open = !figure.problem->open.empty() && !face.counts;
      const bool is_left_out =
          is_open || (figure.question->supply->measure == "lateral_area" && face.role != solids::FaceRole::Lateral);
      counted += is_left_out ? 0 : face.area;
    }
    if (counted < figure.closed) {
      finds.push_back({rounded_as_asked(*packs, packs->quotient * figure.closed / counted), left_out});
      finds.push_back({rounded(*packs, packs->quotient * figure.closed / counted), left_out});
    }
  }
}
void rounded_down(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (!packs || packs->is_cut) {
    return;
  }
  if (packs->rounding == Rounding::Up) {
    finds.push_back({std::floor(packs->quotient + 1e-9), {}});
  }
}
void rounded_up_to_a_part(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && !packs->is_cut && packs->rounding == Rounding::Down) {
    finds.push_back({std::ceil(packs->quotient - 1e-9), {}});
  }
}
void rounded_for_nothing(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && !packs->is_cut && packs->rounding == Rounding::None) {
    finds.push_back({std::floor(packs->quotient + 1e-9), {}});
    finds.push_back({std::ceil(packs->quotient - 1e-9), {}});
  }
}
void not_rounded(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && !packs->is_cut && packs->rounding != Rounding::None) {
    finds.push_back({packs->quotient, {}});
  }
}
void count_alone(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->price) {
    finds.push_back({packs->count, {}});
  }
}
void cut_as_if_joined(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->is_cut) {
    const double joined = packs->needed / packs->each;
    finds.push_back({paid(*packs, std::ceil(joined - 1e-9)), {}});
    finds.push_back({paid(*packs, joined), {}});
    finds.push_back({paid(*packs, std::floor(joined + 1e-9)), {}});
  }
}
void one_for_each_edge(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  const auto edges = static_cast<double>(figure.problem->solid.body().edge_count());
  if (packs && packs->is_cut && packs->count < edges) {
    finds.push_back({paid(*packs, edges), {}});
  }
}
// The cost of one too few, or of one too many.
void paid_for_another_count(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (!packs || !packs->price || packs->is_cut) {
    return;
  }
  if (packs->rounding != Rounding::Down) {
    finds.push_back({*packs->price * std::floor(packs->quotient + 1e-9), {}});
  }
  if (packs->rounding != Rounding::Up) {
    finds.push_back({*packs->price * std::ceil(packs->quotient - 1e-9), {}});
  }
}
void exact_amount_paid(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->price && !packs->is_cut && std::abs(packs->quotient - packs->count) > 1e-9) {
    finds.push_back({packs->quotient * *packs->price, {}});
  }
}
void multiplied_by_each(const Figure& figure, Finds& finds) {
  if (const auto packs = packs_of(figure)) {
    finds.push_back({packs->needed * packs->each, {}});
  }
}
void one_coat(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->coats > 1) {
    finds.push_back({rounded_as_asked(*packs, packs->quotient / packs->coats), {}});
    finds.push_back({rounded_as_asked(*packs, packs->quotient * packs->coats), {}});
  }
}
void stopped_at_amount(const Figure& figure, Finds& finds) {
  if (const auto packs = packs_of(figure)) {
    finds.push_back({packs->needed, {}});
    finds.push_back({packs->needed / packs->coats, {}});
  }
}

// A mistake in the amount, as many times the right one, carried through to the count and to its cost.
void with_amounts(const Figure& figure, const std::vector<double>& times, Finds& finds) {
  if (const auto packs = packs_of(figure)) {
    for (const double one : times) {
      finds.push_back({rounded_as_asked(*packs, packs->quotient * one), {}});
      finds.push_back({rounded(*packs, packs->quotient * one), {}});
    }
  }
}
void edges_too_few(const Figure& figure, Finds& finds) {
  if (figure.question->supply && figure.question->supply->purpose == Purpose::Edge) {
    with_amounts(figure, {0.5, 0.25, 2}, finds);
  }
}
void part_of_the_amount(const Figure& figure, Finds& finds) {
  const auto& supply = figure.question->supply;
  if (!supply || supply->purpose == Purpose::Edge) {
    return;
  }
  if (supply->measure == "volume") {
    const bool is_halved = figure.traits().has_base && figure.faces[0].is_halved;
    with_amounts(figure,
                 figure.traits().has_apex ? std::vector<double>{3, 1.5} : std::vector<double>(is_halved ? 1 : 0, 2.0),
                 finds);
  } else if (supply->measure == "surface_area") {
    double halves = 0;  // of the faces that are worked as half of a product
    for (const FigureFace& face : figure.faces) {
      halves += face.is_halved ? face.area : 0;
    }
    with_amounts(figure, {0.5, (figure.closed + halves) / figure.closed}, finds);
    if (figure.base() > 0) {
      with_amounts(figure, {(figure.closed - figure.base()) / figure.closed}, finds);
    }
  }
}
void amount_converted_as_lengths(const Figure& figure, Finds& finds) {
  const auto& supply = figure.question->supply;
  if (!supply || !supply->each || supply->each->unit.is_capacity()) {
    return;
  }
  const int dimension = supply->each->unit.dimension();
  const double whole =
      units::conversion(figure.problem->solid.unit().to_the(dimension), supply->each->unit).to_double();
  std::vector<double> times;
  for (int power = 1; power < dimension && whole != 1; ++power) {
    times.push_back(std::pow(whole, static_cast<double>(power) / dimension) / whole);
  }
  with_amounts(figure, times, finds);
}

// How many of one item's unit make one of the solid's, of as many dimensions; 0 where the item has no size.
double whole_factor(const Figure& figure) {
  const auto& supply = figure.question->supply;
  return !supply || !supply->each
             ? 0
             : units::conversion(figure.problem->solid.unit().to_the(supply->each->unit.dimension()),
                                 supply->each->unit)
                   .to_double();
}
void amount_not_converted(const Figure& figure, Finds& finds) {
  const double whole = whole_factor(figure);
  if (whole == 0 || whole == 1) {
    return;
  }
  with_amounts(figure, {1 / whole}, finds);
  if (const auto packs = packs_of(figure)) {
    finds.push_back({packs->needed / whole, {}});
    finds.push_back({packs->needed / whole / packs->coats, {}});
  }
}
void amount_converted_by_tens(const Figure& figure, Finds& finds) {
  const double whole = whole_factor(figure);
  if (whole == 0 || whole == 1) {
    return;
  }
  if (figure.question->supply->each->unit.is_capacity()) {
    with_amounts(figure, {0.01, 0.1, 10, 100}, finds);
  } else {
    const double tens = std::pow(10.0, figure.question->supply->each->unit.dimension());
    with_amounts(figure, {(whole < 1 ? 1 / tens : tens) / whole}, finds);
  }
}
// The size of an item taken for one of its unit.
void size_forgotten(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->each != 1) {
    with_amounts(figure, {packs->each}, finds);
  }
}
void covered_or_filled_for_edged(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && figure.question->supply->purpose == Purpose::Edge) {
    const double times = packs->needed > 0 ? whole_factor(figure) / packs->needed : 0;
    with_amounts(figure, {times * figure.closed, times * figure.volume}, finds);
  }
}
void lengths_for_amount(const Figure& figure, Finds& finds) {
  const auto packs = packs_of(figure);
  if (packs && packs->needed > 0 && figure.question->supply->purpose != Purpose::Edge) {
    double sum = 0;
    for (const double label : figure.labels) {
      sum += figure.labels.size() == 1 ? 3 * label : label;  // an edge three times, where it should be cubed
    }
    with_amounts(figure, {sum * whole_factor(figure) / packs->needed}, finds);
  }
}

}  // namespace

// NOLINTNEXTLINE(readability-function-size): a table, one row after another
std::vector<Signature> supply_signatures() {
  const std::vector<Asked> count{Asked::Count};
  const Saying different_amount("{n} comes from a different amount.",
                                "Check the area or the volume. Is every part of the formula there?");
  return {
      {"L1", count, other_purpose,
       Saying("{n} is what you get with the other measure.", "Underline the verb. Does it cover, or does it fill?")},
      {"L2",
       {Asked::Surface, Asked::Lateral, Asked::Count},
       open_faces_counted,
       Saying("{n} is what you get if you cover every face.", "Picture the real thing. Which faces get covered?")},
      {"L3", count, rounded_down, Saying("{n} is the quotient, rounded down.", "Is {n} enough to finish the job?")},
      {"L3", count, rounded_up_to_a_part,
       Saying("{n} is the quotient, rounded up.", "Is there enough for the last one to be full?")},
      {"L3", count, rounded_for_nothing,
       Saying("{n} is the quotient, rounded.", "Can you use part of one here? Then don't round.")},
      {"L3", count, not_rounded,
       Saying("{n} is what you get from the division alone.", "Can there be part of one here?")},
      {"L3", count, paid_for_another_count,
       Saying("{n} pays for a different number of them.", "Did you round the right way for this problem?")},
      {"L4", count, exact_amount_paid,
       Saying("{n} is what you pay if you could buy part of a pack.", "How many whole packs do you have to buy?")},
      {"L5", count, multiplied_by_each,
       Saying("{n} is what you get if you multiply.", "Should the number of packs be more than the amount, or less?")},
      {"L6", count, one_coat,
       Saying("{n} is right for a different number of coats.", "How many coats does the problem ask for?")},
      {"L15", count, cut_as_if_joined,
       Saying("{n} is right if you could join the leftover pieces.",
              "You can't. How many whole edges can you cut from one?")},
      {"L16", count, count_alone,
       Saying("{n} is how many you need, and that's a good step.", "How much do they cost altogether?")},
      {"L17", count, one_for_each_edge, Saying("{n} is one for each edge.", "Can you cut more than one edge from it?")},
      {"L9", count, stopped_at_amount,
       Saying("{n} is the amount, and that's a good first step.",
              "Read the question again. How many does it ask for?")},
      {"L18", count, edges_too_few,
       Saying("{n} comes from a different number of edges.", "How many edges of each length are there?"), true},
      {"L19", count, part_of_the_amount, different_amount, true},
      {"L20", count, amount_converted_as_lengths,
       Saying("{n} is what you get if you convert too few times.", "How many dimensions are you converting?"), true},
      {"L21", count, amount_not_converted,
       Saying("{n} is what you get if you don't convert.", "Are the amount and the size of one in the same unit?"),
       true},
      {"L22", count, amount_converted_by_tens,
       Saying("{n} is what you get if you convert by the wrong factor.", "How many of one unit make one of the other?"),
       true},
      {"L23", count, size_forgotten,
       Saying("{n} is what you get if each one were of size 1.", "How much does one of them really do?"), true},
      {"L24", count, covered_or_filled_for_edged,
       Saying("{n} comes from an area or a volume.", "It goes along the edges. How long are they altogether?"), true},
      {"L19", count, lengths_for_amount, different_amount, true},
  };
}

}  // namespace fw::practice
