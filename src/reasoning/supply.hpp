#pragma once

#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "lessons/supply.hpp"
#include "reasoning/amounts.hpp"
#include "reasoning/step.hpp"

namespace fw::reasoning {

using lessons::Purpose;

/// What a word problem's thing does, to be decided before any number.
struct Decision {
  Purpose purpose = Purpose::Cover;
  Message sentence;  ///< why: "A roll covers faces, so the amount is an area, in square units."
};

using Amount = std::variant<units::Length, units::Area, units::Volume>;

/// What a count leaves: of the items that were bought, or of the thing that was shared out.
struct Leftover {
  exact::Number amount;
  units::Unit unit = units::Unit::none();  ///< of one item
  exact::Number share;                     ///< of one item
  Message text;                            ///< "16 ft², about 0.36 of a roll"
};

/// The answer of a word problem.
struct SupplyAnswer {
  exact::Number quotient;             ///< before it is rounded
  exact::Number count;                ///< after; the same where nothing is rounded
  Message text;                       ///< "4 rolls", "≈ 3.64 rolls"
  std::optional<Leftover> leftover;   ///< none: it comes out even, or nothing is rounded
  std::optional<exact::Number> cost;  ///< in whole cents
  std::string cost_text;              ///< "$18.00"; empty without a price
  Message sentence;                   ///< all of it: "4 rolls are needed. About 0.36 of a roll is left over. ..."
};

/// A word problem from its amount to its answer.
struct SupplyWork {
  Decision decision;
  std::vector<FaceId> faces;  ///< that are covered; none to fill or edge
  std::string title;          ///< of the amount: "surface area", "area of the faces that count", "length of all edges"
  Amount amount = units::Area::of(exact::Number{}, units::Unit::none().to_the(2));
  /// How the amount is added up where it is no measure of the closed solid: of an open solid, and of all edges.
  std::optional<Step> amount_step;
  std::vector<Step> steps;             ///< from the amount on; Notation::source is a row of `sources`
  std::vector<Source> sources;         ///< Source::step is one of `steps`
  std::optional<SupplyAnswer> answer;  ///< none: the supply does not say how much an item is for
};

/// The word problem that a supply makes of a problem. Exact all the way; `places` are the decimals that are shown of a
/// number that does not end.
[[nodiscard]] SupplyWork supply_work(const lessons::Problem& problem, const lessons::Supply& supply, int places = 2);

[[nodiscard]] exact::Number amount_number(const Amount& amount);
[[nodiscard]] units::Unit amount_unit(const Amount& amount);
/// "164 ft²", "≈ 21.66 cm²".
[[nodiscard]] std::string amount_text(const Amount& amount, int places);

}  // namespace fw::reasoning
