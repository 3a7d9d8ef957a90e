#include "lessons/read_supply.hpp"

#include <algorithm>

#include "lessons/asked.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"

namespace fw::lessons {
namespace {

constexpr int most_coats = 20;
constexpr const char* example = R"({"cover": "surface_area", "each": "40 ft^2", "item": "roll"})";

// Which of cover, fill and edge stands there, and for what measure.
void read_purpose(const JsonNode& node, Supply& supply, const Context& context) {
  for (const char* purpose : {"cover", "fill", "edge"}) {
    const JsonNode* measure = node.find(purpose);
    if (measure == nullptr) {
      continue;
    }
    if (!supply.purpose.empty()) {
      context.fault(*measure, "a supply has one of \"cover\", \"fill\" and \"edge\"; found a second one");
      continue;
    }
    supply.purpose = purpose;
    const std::string* name = text_at(*measure, "the measure that the supply is for", context.at(purpose));
    supply.measure = name == nullptr ? "" : *name;
  }
  if (supply.purpose.empty()) {
    context.fault(node, "a supply says what it is for: \"cover\", \"fill\" or \"edge\", as in " + std::string(example));
  }
}

void read_each(const JsonNode& node, Supply& supply, const Context& context) {
  if (const JsonNode* item = node.find("item")) {
    const std::string* name = text_at(*item, "an item", context.at("item"));
    supply.item = name == nullptr ? "" : *name;
  }
  const JsonNode* each = node.find("each");
  if (each != nullptr && !supply.purpose.empty()) {
    supply.each = read_quantity(*each, dimension_of_purpose(supply.purpose), context.at("each"));
    if (supply.item.empty()) {
      context.fault(node,
                    "a supply that says how much each item is for also says what the item is: "
                    "\"item\": \"roll\"");
    }
  }
}

void read_rounding(const JsonNode& node, Supply& supply, const Context& context) {
  const std::string* word = text_at(node, "how a count is rounded", context);
  if (word == nullptr) {
    return;
  }
  if (*word != "up" && *word != "down" && *word != "none") {
    context.fault(node, in_quotes(*word) + " cannot stand here" + suggestion(*word, {"up", "down", "none"}));
    return;
  }
  supply.rounding = *word == "up" ? Rounding::Up : *word == "down" ? Rounding::Down : Rounding::None;
}

bool is_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), [](char c) { return c >= '0' && c <= '9'; });
}

// Whole, or with two decimals, and at most six digits before the point.
bool is_money(std::string_view number) {
  const std::size_t point = std::min(number.find('.'), number.size());
  const std::string_view decimals = number.substr(std::min(point + 1, number.size()));
  return is_digits(number.substr(0, point)) && point <= 6 &&
         (point == number.size() || (decimals.size() == 2 && is_digits(decimals)));
}

void read_price(const JsonNode& node, Supply& supply, const Context& context) {
  if (!node.is(JsonNode::Kind::Text)) {
    context.fault(node, "a price is text in quotation marks, such as \"4.50\"; found " + found_text(node));
    return;
  }
  Price price;
  price.text = node.text;
  std::string number = node.text;
  for (const char* sign : {"$", "£", "€"}) {
    if (number.rfind(sign, 0) == 0) {
      price.sign = sign;
      number.erase(0, price.sign.size());
      break;
    }
  }
  const std::optional<exact::Number> amount = is_money(number) ? exact::Number::from_decimal(number) : std::nullopt;
  if (!amount || amount->is_zero()) {
    context.fault(node, in_quotes(node.text) +
                            " is no price: write an amount above 0, whole or with two decimals, with $, £ or € before "
                            "it or no sign, such as \"4.50\", \"$4.50\" or \"3\"");
    return;
  }
  price.amount = *amount;
  supply.price = std::move(price);
}

void read_coats(const JsonNode& node, Supply& supply, const Context& context) {
  const bool is_count = node.is(JsonNode::Kind::Number) && is_digits(node.text) && node.text.size() <= 2;
  const int coats = is_count ? std::stoi(node.text) : 0;
  if (coats < 1 || coats > most_coats) {
    context.fault(
        node, "\"coats\" is a whole number from 1 to " + std::to_string(most_coats) + "; found " + found_text(node));
    return;
  }
  if (supply.purpose == "fill" || supply.purpose == "edge") {
    context.fault(node, "coats are laid where something is covered; \"" + supply.purpose + "\" has none");
    return;
  }
  supply.coats = coats;
}

}  // namespace

std::optional<Supply> read_supply(const JsonNode& node, const Context& context) {
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, "\"supply\" is an object such as " + std::string(example) + "; found " + found_text(node));
    return std::nullopt;
  }
  check_keys(node, {"cover", "fill", "edge", "each", "item", "round", "price", "coats"}, "\"supply\"", context);
  Supply supply;
  read_purpose(node, supply, context);
  read_each(node, supply, context);
  if (const JsonNode* rounding = node.find("round")) {
    read_rounding(*rounding, supply, context.at("round"));
  }
  if (const JsonNode* price = node.find("price")) {
    read_price(*price, supply, context.at("price"));
  }
  if (const JsonNode* coats = node.find("coats")) {
    read_coats(*coats, supply, context.at("coats"));
  }
  for (const char* key : {"round", "price"}) {
    const JsonNode* part = node.find(key);
    if (part != nullptr && node.find("each") == nullptr) {
      context.at(key).fault(*part, "\"" + std::string(key) +
                                       "\" speaks of items, so the supply also says how much each is for: "
                                       "\"each\": \"40 ft^2\", \"item\": \"roll\"");
    }
  }
  return supply;
}

void check_supply(const JsonNode& node, const Supply& supply, const solids::Solid& solid, const Context& context) {
  const int dimension = dimension_of_purpose(supply.purpose);
  const std::vector<std::string> measures = measures_of_dimension(solid, dimension);
  if (std::find(measures.begin(), measures.end(), supply.measure) == measures.end()) {
    context.at(supply.purpose)
        .fault(*node.find(supply.purpose), in_quotes(supply.measure) + " is nothing to " + supply.purpose + " on " +
                                               with_article(solid.name()) + suggestion(supply.measure, measures));
  }
  if (supply.each && !supply.each->unit.converts_to(solid.unit().to_the(dimension))) {
    context.at("each").fault(*node.find("each"), in_quotes(supply.each->text) +
                                                     " cannot be compared with a solid "
                                                     "measured in " +
                                                     solid.unit().text());
  }
}

}  // namespace fw::lessons
