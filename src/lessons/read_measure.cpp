#include "lessons/read_measure.hpp"

#include <cmath>

namespace fw::lessons {
namespace {

using words::Message;
using words::message;

std::string example_of(int dimension) {
  return dimension == 1 ? "\"9 cm\"" : dimension == 2 ? "\"36 cm^2\"" : "\"180 cm^3\"";
}

// The text of a measure; a bare number is met with the text that it should be.
const std::string* measure_text(const JsonNode& node, int dimension, const Context& context) {
  if (node.is(JsonNode::Kind::Number)) {
    const std::string unit = dimension == 1 ? "cm" : "cm^" + std::to_string(dimension);
    context.fault(
        node,
        message("a measure is text with its unit; found {found}, write \"{number} {unit}\"",
                {{"found", found_text(node)}, {"number", node.text.size() > 40 ? "9" : node.text}, {"unit", unit}}));
    return nullptr;
  }
  if (!node.is(JsonNode::Kind::Text)) {
    context.fault(node, message("a measure is text such as {example}; found {found}",
                                {{"example", example_of(dimension)}, {"found", found_text(node)}}));
    return nullptr;
  }
  return &node.text;
}

bool is_within_limits(const units::WrittenQuantity& quantity) {
  const double meters =
      std::pow((quantity.number.value * quantity.unit.factor()).to_double(), 1.0 / quantity.unit.dimension());
  return meters >= limits::length_meters_least && meters <= limits::length_meters_most;
}

}  // namespace

words::Noun noun_of_dimension(int dimension) {
  return {dimension == 1 ? "length" : dimension == 2 ? "area" : "volume"};
}

std::optional<units::WrittenQuantity> read_quantity(const JsonNode& node, int dimension, const Context& context,
                                                    Zero zero) {
  const std::string* text = measure_text(node, dimension, context);
  if (text == nullptr) {
    return std::nullopt;
  }
  if (*text == "?") {
    context.fault(node, message("\"?\" can't go here: write a number and its unit, such as {example}",
                                {{"example", example_of(dimension)}}));
    return std::nullopt;
  }
  const Result<units::WrittenQuantity, exact::NumberError> parsed = units::parse_quantity(*text);
  if (!parsed) {
    context.fault(node, message("{text} is not a measure: {reason}",
                                {{"text", in_quotes(*text)}, {"reason", parsed.error().message}}));
    return std::nullopt;
  }
  units::WrittenQuantity quantity = *parsed;
  if (!quantity.has_unit) {
    // A number alone is in the unnamed unit of what is asked for.
    quantity.unit = units::Unit::none().to_the(dimension);
  }
  if (quantity.unit.dimension() != dimension) {
    context.fault(node, message("{text} is {found:a}; it should be {wanted:a}, such as {example}",
                                {{"text", in_quotes(*text)},
                                 {"found", noun_of_dimension(quantity.unit.dimension())},
                                 {"wanted", noun_of_dimension(dimension)},
                                 {"example", example_of(dimension)}}));
    return std::nullopt;
  }
  if (quantity.number.value.is_zero() && zero == Zero::Allowed) {
    return quantity;
  }
  if (quantity.number.value.sign() <= 0) {
    context.fault(node, message("a measure is more than 0; found {text}", {{"text", in_quotes(*text)}}));
    return std::nullopt;
  }
  if (!is_within_limits(quantity)) {
    context.fault(
        node, message("{text} is out of range: lengths run from 0.001 mm to 1000 km", {{"text", in_quotes(*text)}}));
    return std::nullopt;
  }
  return quantity;
}

std::optional<solids::LengthEntry> read_length(const JsonNode& node, const Context& context, Zero zero) {
  if (node.is(JsonNode::Kind::Text) && node.text == "?") {
    return solids::LengthEntry{};
  }
  std::optional<units::WrittenQuantity> written = read_quantity(node, 1, context, zero);
  if (!written) {
    return std::nullopt;
  }
  return solids::LengthEntry{std::move(written)};
}

std::optional<exact::Written> read_coordinate(const JsonNode& node, const Context& context) {
  if (!node.is(JsonNode::Kind::Text) && !node.is(JsonNode::Kind::Number)) {
    context.fault(node,
                  message("a coordinate is a number, such as 4 or 2.5; found {found}", {{"found", found_text(node)}}));
    return std::nullopt;
  }
  const bool is_negative = !node.text.empty() && node.text.front() == '-';
  Result<exact::Written, exact::NumberError> parsed = exact::parse_number(node.text.substr(is_negative ? 1 : 0));
  if (!parsed) {
    context.fault(node, message("{text} is not a coordinate: {reason}",
                                {{"text", in_quotes(node.text)}, {"reason", parsed.error().message}}));
    return std::nullopt;
  }
  exact::Written written = *parsed;
  if (is_negative) {
    written.text = node.text;
    written.value = -written.value;
  }
  if (std::abs(written.value.to_double()) > limits::length_meters_most) {
    context.fault(node, message("{text} is out of range: coordinates run from -1000000 to 1000000",
                                {{"text", in_quotes(node.text)}}));
    return std::nullopt;
  }
  return written;
}

}  // namespace fw::lessons
