#include "exact/written.hpp"

#include <array>

#include "exact/print_number.hpp"
#include "exact/read_number.hpp"

namespace fw::exact {
namespace {

Number half_unit(const Written& number) { return Number::ratio(1, 2) / power(Number::whole(10), number.places); }

}  // namespace

Number Written::lowest() const { return is_fraction ? value : value - half_unit(*this); }
Number Written::highest() const { return is_fraction ? value : value + half_unit(*this); }

Result<Written, NumberError> parse_number(std::string_view text) {
  auto read = NumberReader(text).read();
  if (!read) {
    return failure(read.error());
  }
  return std::move(read).value().written;
}

Written written(const Number& value, int places) {
  const Number near = rounded(value, places);
  const int needed = decimals_needed(near, places).value_or(places);
  return {fixed_text(near, needed), near, needed, false};
}

}  // namespace fw::exact
