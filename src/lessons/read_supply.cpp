#include "lessons/read_supply.hpp"

#include <algorithm>

#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"

namespace fw::lessons {
namespace {

constexpr int most_coats = 20;
constexpr const char* example = R"({"cover": "surface_area", "each": "40 ft^2", "item": "roll"})";

// Which of cover, fill and edge stands there, and for what measure.
void read_purpose(const JsonNode& node, Supply& supply, const Context& context) {
  for (const char* purpose : {"cover", "fill", "edge", "pack"}) {
    const JsonNode* measure = node.find(purpose);
    if (measure == nullptr) {
      continue;
    }
    if (!supply.purpose.empty()) {
      context.fault(*measure, "a supply has one of \"cover\", \"fill\", \"edge\" and \"pack\"; found a second one");
      continue;
    }
    supply.purpose = purpose;
    const std::string* name = text_at(*measure, "the measure that the supply is for", context.at(purpose));
    supply.measure = name == nullptr ? "" : *name;
  }
  if (supply.purpose.empty()) {
    context.fault(
        node, "a supply says what it is for: \"cover\", \"fill\", \"edge\" or \"pack\", as in " + std::string(example));
  }
}

void read_item(const JsonNode& node, Supply& supply, const Context& context) {
  if (const JsonNode* item = node.find("item")) {
    const std::string* name = text_at(*item, "an item", context.at("item"));
    supply.item = name == nullptr ? "" : *name;
  }
}

void read_each(const JsonNode& node, Supply& supply, const Context& context) {
  read_item(node, supply, context);
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

// What is packed: the edges of one item, and nothing that belongs to other purposes.
void read_pack(const JsonNode& node, Supply& supply, const Context& context) {
  for (const char* key : {"each", "round", "price", "coats"}) {
    if (const JsonNode* part = node.find(key)) {
      context.at(key).fault(*part,
                            in_quotes(key) + " does not go with \"pack\": whole items are counted along each edge");
    }
  }
  if (supply.item.empty()) {
    context.fault(node, "a supply that packs also says what is packed: \"item\": \"candle\"");
  }
  const JsonNode* box = node.find("box");
  if (box == nullptr || !box->is(JsonNode::Kind::Object)) {
    context.fault(box == nullptr ? node : *box,
                  "a supply that packs says how large one item is: \"box\": {\"length\": \"5 cm\", \"width\": "
                  "\"3 cm\", \"height\": \"2 cm\"}");
    return;
  }
  check_keys(*box, {"length", "width", "height"}, "\"box\"", context);
  std::vector<units::WrittenQuantity> edges;
  for (const char* key : {"length", "width", "height"}) {
    const Context here = context.at("box").at(key);
    const JsonNode* edge = box->find(key);
    if (edge == nullptr) {
      here.fault(*box, "the key " + in_quotes(key) + " of what is packed is missing: write a length such as \"5 cm\"");
    } else if (const auto quantity = read_quantity(*edge, 1, here)) {
      edges.push_back(*quantity);
    }
  }
  if (edges.size() == 3) {
    supply.box = ItemBox{edges[0], edges[1], edges[2]};
  }
}

void check_pack(const JsonNode& node, const Supply& supply, const Problem& problem, const Context& context) {
  const solids::Solid& solid = problem.solid;
  if (supply.measure != "volume") {
    context.at("pack").fault(*node.find("pack"), in_quotes(supply.measure) + " cannot be packed: write \"volume\"");
    return;
  }
  if (!edges_of_box(solid)) {
    context.at("pack").fault(*node.find("pack"),
                             with_article(solid.name()) +
                                 " has no length, width and height of its own, so nothing can be packed into it in "
                                 "rows: describe a solid by these three");
    return;
  }
  const JsonNode& box = *node.find("box");
  for (const auto& [key, edge] : {std::pair("length", &supply.box->length), std::pair("width", &supply.box->width),
                                  std::pair("height", &supply.box->height)}) {
    if (!edge->unit.converts_to(solid.unit())) {
      context.at("box").at(key).fault(
          *box.find(key),
          in_quotes(edge->text) + " cannot be compared with a solid measured in " + solid.unit().text());
      return;
    }
  }
  constexpr long long most = 1'000'000;
  const long long count = packings(problem).front().count;
  if (count == 0) {
    context.at("box").fault(box, "not even one " + supply.item + " fits into this solid: make the item smaller");
  } else if (count > most) {
    context.at("box").fault(box, "more than a million of them fit into this solid: make the item larger");
  }
}

}  // namespace

std::optional<Supply> read_supply(const JsonNode& node, const Context& context) {
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, "\"supply\" is an object such as " + std::string(example) + "; found " + found_text(node));
    return std::nullopt;
  }
  check_keys(node, {"cover", "fill", "edge", "pack", "each", "box", "item", "round", "price", "coats"}, "\"supply\"",
             context);
  Supply supply;
  read_purpose(node, supply, context);
  if (supply.purpose == "pack") {
    read_item(node, supply, context);
    read_pack(node, supply, context);
    return supply;
  }
  if (const JsonNode* box = node.find("box")) {
    context.at("box").fault(*box, "\"box\" goes with \"pack\": elsewhere \"each\" says how much one item is for");
  }
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

void check_supply(const JsonNode& node, const Problem& problem, const Context& context) {
  const Supply& supply = *problem.supply;
  const solids::Solid& solid = problem.solid;
  if (supply.purpose == "pack") {
    check_pack(node, supply, problem, context);
    return;
  }
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
