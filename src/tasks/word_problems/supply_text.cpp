#include "tasks/word_problems/supply_text.hpp"

#include <algorithm>

#include "base/utf8.hpp"
#include "lessons/asked.hpp"
#include "lessons/json_text.hpp"
#include "lessons/read_description.hpp"
#include "lessons/read_measure.hpp"
#include "tasks/word_problems/packing.hpp"

namespace fw::tasks {
namespace {

using lessons::in_quotes;
using lessons::Price;
using lessons::Purpose;
using lessons::read_quantity;
using lessons::Rounding;
using lessons::suggestion;
using lessons::Supply;
using lessons::text_at;

constexpr int most_coats = 20;
constexpr const char* example = R"({"cover": "surface_area", "each": "40 ft^2", "item": "roll"})";

// Which of cover, fill and edge stands there, and for what measure.
void read_purpose(const JsonNode& node, SupplyText& supply, const Context& context) {
  for (const char* purpose : {"cover", "fill", "edge", "pack"}) {
    const JsonNode* measure = node.find(purpose);
    if (measure == nullptr) {
      continue;
    }
    if (!supply.purpose.empty()) {
      context.fault(*measure,
                    message("a supply has one of \"cover\", \"fill\", \"edge\" and \"pack\"; found a second one"));
      continue;
    }
    supply.purpose = purpose;
    const std::string* name = text_at(*measure, message("the measure that the supply is for"), context.at(purpose));
    supply.terms.measure = name == nullptr ? "" : *name;
  }
  if (supply.purpose.empty()) {
    context.fault(node,
                  message("a supply says what it is for: \"cover\", \"fill\", \"edge\" or \"pack\", as in {example}",
                          {{"example", example}}));
  }
}

void read_each(const JsonNode& node, SupplyText& supply, const Context& context) {
  const JsonNode* each = node.find("each");
  if (each != nullptr && !supply.purpose.empty()) {
    supply.terms.each = read_quantity(*each, lessons::dimension_of(supply.terms.purpose), context.at("each"));
    if (supply.terms.item.empty()) {
      context.fault(
          node, message("a supply that says how much each item is for also says what the item is: \"item\": \"roll\""));
    }
  }
}

void read_rounding(const JsonNode& node, Supply& supply, const Context& context) {
  const std::string* word = text_at(node, message("how a count is rounded"), context);
  if (word == nullptr) {
    return;
  }
  if (*word != "up" && *word != "down" && *word != "none") {
    context.fault(node,
                  message("{word} can't go here{suggestion}",
                          {{"word", in_quotes(*word)}, {"suggestion", suggestion(*word, {"up", "down", "none"})}}));
    return;
  }
  supply.rounding = *word == "up" ? Rounding::Up : *word == "down" ? Rounding::Down : Rounding::None;
}

bool is_digits(std::string_view text) { return !text.empty() && std::all_of(text.begin(), text.end(), is_ascii_digit); }

// Whole, or with two decimals, and at most six digits before the point.
bool is_money(std::string_view number) {
  const std::size_t point = std::min(number.find('.'), number.size());
  const std::string_view decimals = number.substr(std::min(point + 1, number.size()));
  return is_digits(number.substr(0, point)) && point <= 6 &&
         (point == number.size() || (decimals.size() == 2 && is_digits(decimals)));
}

void read_price(const JsonNode& node, Supply& supply, const Context& context) {
  if (!node.is(JsonNode::Kind::Text)) {
    context.fault(node, message("a price is text in quotation marks, such as \"4.50\"; found {found}",
                                {{"found", found_text(node)}}));
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
    context.fault(node, message("{text} is not a price: write an amount above 0, whole or with two decimals, with $, £ "
                                "or € before it or no sign, such as \"4.50\", \"$4.50\" or \"3\"",
                                {{"text", in_quotes(node.text)}}));
    return;
  }
  price.amount = *amount;
  supply.price = std::move(price);
}

void read_coats(const JsonNode& node, Supply& supply, const Context& context) {
  const bool is_count = node.is(JsonNode::Kind::Number) && is_digits(node.text) && node.text.size() <= 2;
  const int coats = is_count ? std::stoi(node.text) : 0;
  if (coats < 1 || coats > most_coats) {
    context.fault(node, message("\"coats\" is a whole number from 1 to {most}; found {found}",
                                {{"most", most_coats}, {"found", found_text(node)}}));
    return;
  }
  if (supply.purpose != Purpose::Cover) {
    context.fault(node, message("coats are laid where something is covered; \"{purpose}\" has none",
                                {{"purpose", word_of(supply.purpose)}}));
    return;
  }
  supply.coats = coats;
}

void read_joined(const JsonNode& node, const JsonNode& supply_node, SupplyText& supply, const Context& context) {
  supply.joined = lessons::truth_at(node, "\"joined\"", context).value_or(true);
  if (supply.joined) {
    return;
  }
  if (supply.terms.purpose != Purpose::Edge || supply.terms.measure != "edges") {
    context.fault(node, message("pieces are cut for all edges: write \"edge\": \"edges\", or leave \"joined\" out"));
  } else if (supply_node.find("each") == nullptr) {
    context.fault(node, message("to cut pieces the supply also says how long one item is: \"each\": \"20 cm\", "
                                "\"item\": \"straw\""));
  }
  for (const char* key : {"round", "price"}) {
    if (supply_node.find(key) != nullptr) {
      context.fault(node, message("whole items are counted where pieces cannot be joined: leave {key} out",
                                  {{"key", in_quotes(key)}}));
    }
  }
}

// What is said of the items beside how much each is for.
void read_terms(const JsonNode& node, Supply& supply, const Context& context) {
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
      context.at(key).fault(*part, message("\"{key}\" is about items, so the supply also says how much each one is "
                                           "for: \"each\": \"40 ft^2\", \"item\": \"roll\"",
                                           {{"key", key}}));
    }
  }
}

}  // namespace

SupplyText read_supply(const JsonNode& node, const Context& context) {
  SupplyText supply;
  if (!node.is(JsonNode::Kind::Object)) {
    context.fault(node, message("\"supply\" is an object such as {example}; found {found}",
                                {{"example", example}, {"found", found_text(node)}}));
    return supply;
  }
  check_keys(node, {"cover", "fill", "edge", "pack", "each", "box", "item", "round", "price", "coats", "joined"},
             "\"supply\"", context);
  read_purpose(node, supply, context);
  Supply& terms = supply.terms;
  terms.purpose = supply.purpose == "fill" || supply.packs() ? Purpose::Fill
                  : supply.purpose == "edge"                 ? Purpose::Edge
                                                             : Purpose::Cover;
  if (const JsonNode* item = node.find("item")) {
    const std::string* name = text_at(*item, message("an item"), context.at("item"));
    terms.item = name == nullptr ? "" : *name;
  }
  if (supply.packs()) {
    supply.box = read_item_box(node, terms.item, context);
    return supply;
  }
  if (const JsonNode* box = node.find("box")) {
    context.at("box").fault(
        *box, message("\"box\" goes with \"pack\"; otherwise \"each\" says how much one item covers, fills or edges"));
  }
  read_each(node, supply, context);
  read_terms(node, terms, context);
  if (const JsonNode* joined = node.find("joined")) {
    read_joined(*joined, node, supply, context.at("joined"));
  }
  return supply;
}

void check_supply(const JsonNode& node, const Supply& supply, const solids::Solid& solid, const Context& context) {
  const int dimension = lessons::dimension_of(supply.purpose);
  const std::string purpose = word_of(supply.purpose);
  const std::vector<std::string> measures = lessons::measures_of_dimension(solid, dimension);
  if (std::find(measures.begin(), measures.end(), supply.measure) == measures.end()) {
    context.at(purpose).fault(*node.find(purpose), message("{solid:a} has no {measure} to {purpose}{suggestion}",
                                                           {{"measure", in_quotes(supply.measure)},
                                                            {"purpose", purpose},
                                                            {"solid", Noun{solid.name()}},
                                                            {"suggestion", suggestion(supply.measure, measures)}}));
  }
  if (supply.each && !supply.each->unit.converts_to(solid.unit().to_the(dimension))) {
    context.at("each").fault(*node.find("each"), not_comparable(*supply.each, solid));
  }
}

std::string supply_text(const Supply& supply) {
  Members members{{word_of(supply.purpose), lessons::quote(supply.measure)}};
  if (supply.each) {
    members.emplace_back("each", lessons::quote(supply.each->text));
  }
  if (!supply.item.empty()) {
    members.emplace_back("item", lessons::quote(supply.item));
  }
  if (supply.rounding != Rounding::Up) {
    members.emplace_back("round", lessons::quote(supply.rounding == Rounding::Down ? "down" : "none"));
  }
  if (supply.price) {
    members.emplace_back("price", lessons::quote(supply.price->text));
  }
  if (supply.coats != 1) {
    members.emplace_back("coats", std::to_string(supply.coats));
  }
  return lessons::object_in_line(members);
}

}  // namespace fw::tasks
