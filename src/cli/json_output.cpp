#include "cli/json_output.hpp"

#include <iostream>

#include "exact/print_number.hpp"

namespace fw::cli {

Json quantity_json(const exact::Number& amount, const units::Unit& unit) {
  const std::string exact = exact::exact_text(amount);
  Json json;
  json["exact"] = exact.empty() ? Json(nullptr) : Json(exact);
  json["value"] = amount.to_double();
  json["unit"] = unit.ascii();
  return json;
}

void print_json(const Json& document) {
  std::cout << document.dump(2, ' ', false, Json::error_handler_t::replace) << '\n';
}

}  // namespace fw::cli
