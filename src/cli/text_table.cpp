#include "cli/text_table.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "base/utf8.hpp"

namespace fw::cli {

std::string text_table(const std::vector<std::vector<std::string>>& rows, const std::vector<Align>& aligns,
                       std::size_t indent) {
  std::vector<std::size_t> widths(aligns.size(), 0);
  for (const std::vector<std::string>& row : rows) {
    ensure(row.size() == aligns.size(), "a row of a table has as many cells as the table has columns");
    for (std::size_t i = 0; i < row.size(); ++i) {
      widths[i] = std::max(widths[i], character_count(row[i]));
    }
  }
  std::string text;
  for (const std::vector<std::string>& row : rows) {
    std::string line(indent, ' ');
    for (std::size_t i = 0; i < row.size(); ++i) {
      const std::string padding(widths[i] - character_count(row[i]), ' ');
      line += (i == 0 ? "" : "  ") + (aligns[i] == Align::Left ? row[i] + padding : padding + row[i]);
    }
    line.erase(line.find_last_not_of(' ') + 1);
    text += line + '\n';
  }
  return text;
}

}  // namespace fw::cli
