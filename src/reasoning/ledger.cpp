#include "reasoning/ledger.hpp"

#include <algorithm>
#include <map>

#include "algebra/print.hpp"
#include "reasoning/worked.hpp"

namespace fw::reasoning {
namespace {

using exact::Number;

// Face ids of each row, in face order; a group stands where its first face stands.
std::vector<std::vector<FaceId>> rows_of(const solids::Solid& solid, Grouping grouping) {
  std::vector<std::vector<FaceId>> rows;
  std::map<solids::GroupId, std::size_t> row_of_group;
  for (const solids::Face& face : solid.faces()) {
    if (grouping == Grouping::EachFace) {
      rows.push_back({face.id});
      continue;
    }
    const auto [entry, is_new] = row_of_group.emplace(face.group, rows.size());
    if (is_new) {
      rows.emplace_back();
    }
    rows[entry->second].push_back(face.id);
  }
  return rows;
}

bool contains(const std::vector<FaceId>& faces, FaceId face) {
  return std::find(faces.begin(), faces.end(), face) != faces.end();
}

Number times_area(std::size_t times, const solids::Face& face) {
  return Number::whole(static_cast<long long>(times)) * face.area.amount();
}

LedgerRow row_of(const solids::Solid& solid, const std::vector<FaceId>& faces,
                 const IdVector<FaceId, std::size_t>& times, const std::vector<FaceId>& open) {
  const solids::Face& first = solid.faces()[faces.front()];
  LedgerRow row;
  row.faces = faces;
  row.group = first.group;
  for (const FaceId face : faces) {
    row.times_counted += times[face];
    if (contains(open, face)) {
      row.open.push_back(face);
    }
  }
  // Before it is counted a row shows what it will be, and once what an open face would be; afterwards what the class
  // did.
  const std::size_t to_count = std::max<std::size_t>(faces.size() - row.open.size(), 1);
  const std::size_t shown_times = row.times_counted == 0 ? to_count : row.times_counted;
  row.work =
      repeated(worked_numbers(solid, first.work, WorkedUnits::Without, {shown_times}), first.work, shown_times, " × ");
  row.symbols = repeated(algebra::formula_text(first.work), first.work, shown_times, " · ");
  row.addend = times_area(row.times_counted, first);
  return row;
}

// One addend a count, or, when alike faces are counted together, one a row in the order first counted.
std::vector<Number> addends_of(const solids::Solid& solid, const std::vector<FaceId>& counted, Grouping grouping) {
  std::vector<Number> addends;
  std::map<solids::GroupId, std::size_t> addend_of_group;
  for (const FaceId id : counted) {
    const solids::Face& face = solid.faces()[id];
    const auto [entry, is_new] = addend_of_group.emplace(face.group, addends.size());
    if (is_new || grouping == Grouping::EachFace) {
      addends.push_back(face.area.amount());
    } else {
      addends[entry->second] = addends[entry->second] + face.area.amount();
    }
  }
  return addends;
}

}  // namespace

Ledger ledger(const solids::Solid& solid, const std::vector<FaceId>& counted, Grouping grouping,
              const std::vector<FaceId>& open) {
  IdVector<FaceId, std::size_t> times(solid.faces().size(), 0);
  Ledger result;
  Number sum;
  for (const FaceId face : counted) {
    ensure(face.index() < solid.faces().size(), "a ledger counts a face that the solid does not have");
    if (++times[face] == 2) {
      result.counted_twice.push_back(face);
    } else if (times[face] == 1 && contains(open, face)) {
      result.counted_open.push_back(face);
    }
    sum = sum + solid.faces()[face].area.amount();
  }
  for (const std::vector<FaceId>& faces : rows_of(solid, grouping)) {
    result.rows.push_back(row_of(solid, faces, times, open));
  }
  for (const solids::Face& face : solid.faces()) {
    const bool counts = !contains(open, face.id);
    result.faces_total += counts ? 1U : 0U;
    result.faces_counted += counts && times[face.id] > 0 ? 1U : 0U;
  }
  std::vector<Number> row_addends;
  for (const LedgerRow& row : result.rows) {
    row_addends.push_back(row.addend);
  }
  result.column = adding_up(row_addends, ledger_places);
  result.addends = addends_of(solid, counted, grouping);
  result.so_far = units::Area::of(sum, solid.unit().to_the(2));
  result.is_surface_area =
      result.faces_counted == result.faces_total && result.counted_twice.empty() && result.counted_open.empty();
  return result;
}

AddendColumn adding_up(const std::vector<Number>& addends, int places) {
  constexpr int most_extra_digits = 4;
  Number exact_sum;
  for (const Number& addend : addends) {
    exact_sum = exact_sum + addend;
  }
  const int sum_places = exact::enough_places(exact_sum, places);
  const auto adds_up = [&](int extra) {
    Number written;
    for (const Number& addend : addends) {
      written = written + exact::rounded(addend, exact::enough_places(addend, places + extra));
    }
    return exact::rounded(written, sum_places) == exact::rounded(exact_sum, sum_places);
  };
  AddendColumn column;
  while (column.extra_digits < most_extra_digits && !adds_up(column.extra_digits)) {
    ++column.extra_digits;
  }
  const auto commas = [](const std::string& text) {
    return static_cast<std::size_t>(std::count(text.begin(), text.end(), ','));
  };
  std::size_t most_digits = 0;
  std::size_t most_commas = 0;
  for (const Number& addend : addends) {
    const exact::Shown shown = exact::shown(addend, places + column.extra_digits);
    const std::size_t point = std::min(shown.text.find('.'), shown.text.size());
    column.addends.push_back({shown.text.substr(0, point), shown.text.substr(point), shown.exact});
    column.is_rounded = column.is_rounded || !shown.exact;
    const std::size_t here = commas(column.addends.back().whole);
    most_commas = std::max(most_commas, here);
    most_digits = std::max(most_digits, point - here);
  }
  for (ColumnNumber& number : column.addends) {
    // The figure space (U+2007) is as wide as a digit, the punctuation space (U+2008) as a comma.
    std::string padding;
    for (std::size_t i = commas(number.whole); i < most_commas; ++i) {
      padding += "\u2008";
    }
    for (std::size_t i = number.whole.size() - commas(number.whole); i < most_digits; ++i) {
      padding += "\u2007";
    }
    number.whole = padding + number.whole;
  }
  return column;
}

}  // namespace fw::reasoning
