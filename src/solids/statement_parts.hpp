#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "solids/catalog.hpp"
#include "solids/statement.hpp"

// Small parts that the statements of kinds and of base shapes are put together from; private to the room.
namespace fw::solids {

using words::message;
using words::Noun;

/// A symbol of the base shape: "base." before its key.
[[nodiscard]] algebra::Symbol base_symbol(const std::string& key, const std::string& letter);
[[nodiscard]] Measure base_measure(const algebra::Symbol& symbol, const std::string& title, const std::string& key,
                                   std::size_t item = 0);
[[nodiscard]] Measure measure(const algebra::Symbol& symbol, const std::string& title, const std::string& key,
                              std::size_t item = 0);
/// "₁₂" for 12.
[[nodiscard]] std::string subscript(std::size_t number);

[[nodiscard]] Field length_field(const std::string& key, const std::string& title, const std::string& symbol);
[[nodiscard]] Field lengths_field(const std::string& key, const std::string& title,
                                  const std::vector<std::string>& symbols, int least, int most);

/// Puts P = perimeter and B = the shape's area at the end of its relations.
void add_perimeter_and_area(ShapeStatement& shape, const algebra::Expression& perimeter, words::Message reason,
                            words::Message area_reason);

/// Of a regular polygon of side s and apothem a; what a class does not derive comes from a table.
[[nodiscard]] Relation apothem_relation(const algebra::Symbol& a, const algebra::Symbol& s, int count);

/// Requires: the symbol is bound.
[[nodiscard]] exact::Number value_of(const algebra::Bindings& bindings, const algebra::Symbol& symbol);
[[nodiscard]] double double_of(const algebra::Bindings& bindings, const algebra::Symbol& symbol);
[[nodiscard]] inline exact::Number whole(long long value) { return exact::Number::whole(value); }
[[nodiscard]] algebra::Expression half(const algebra::Expression& expression);
[[nodiscard]] algebra::Expression square(const algebra::Expression& expression);

// What a description says.
[[nodiscard]] bool has_field(const Description& description, const std::string& key);
/// The value of a length field that is written, in the unit in which it is written.
[[nodiscard]] std::optional<exact::Number> written_length(const Description& description, const std::string& key);
/// One item a list item; nothing written where it is unknown. Empty when there is no such list.
[[nodiscard]] std::vector<std::optional<exact::Number>> written_lengths(const Description& description,
                                                                        const std::string& key);
[[nodiscard]] std::optional<int> count_of(const Description& description, const std::string& key);

/// A length for an example: text such as "6 cm".
[[nodiscard]] LengthEntry length_entry(std::string_view text);
[[nodiscard]] std::vector<LengthEntry> length_entries(const std::vector<std::string>& texts);

[[nodiscard]] Fault impossible(const std::string& measure, words::Message message);
[[nodiscard]] Fault missing(const std::string& measure, words::Message message);

/// A name of several words: {"regular", "hexagonal", "prism"}.
[[nodiscard]] std::string name_of(const std::vector<std::string>& words);
// Names by the number of corners. Source: the Greek numerals of geometry; common practice, no source.
[[nodiscard]] std::string polygon_noun(int corners);       ///< 6 -> "hexagon", 15 -> "15-gon"
[[nodiscard]] std::string polygon_adjective(int corners);  ///< 6 -> "hexagonal", 15 -> "15-gonal"

// Exact polygons.
[[nodiscard]] exact::Number exact_area(const std::vector<ExactPoint>& corners);  ///< positive when counterclockwise
[[nodiscard]] ExactPoint exact_centroid(const std::vector<ExactPoint>& corners);
[[nodiscard]] exact::Number distance(const ExactPoint& a, const ExactPoint& b);
/// Distance of a point from the line through a and b.
[[nodiscard]] exact::Number distance_from_line(const ExactPoint& point, const ExactPoint& a, const ExactPoint& b);
[[nodiscard]] geometry::Vec2 flat(const ExactPoint& point);

}  // namespace fw::solids
