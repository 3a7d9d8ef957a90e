#include "tasks/catalog.hpp"

#include <algorithm>

namespace fw::tasks {

// Each states itself in the file of its name.
namespace row {
Row measure();
Row look();
Row word_problem();
Row purpose();
Row packing();
Row net_name();
Row choose_net();
Row is_net();
Row complete_net();
Row copy();
Row factor();
Row in_unit();
Row claim();
Row face_lengths();
Row mistake();
Row interval();
Row same_number();
Row least_surface();
}  // namespace row

const std::vector<Row>& rows() {
  static const std::vector<Row> table{
      row::measure(),  row::look(),        row::word_problem(),  row::purpose(),      row::packing(),
      row::net_name(), row::choose_net(),  row::is_net(),        row::complete_net(), row::copy(),
      row::factor(),   row::in_unit(),     row::claim(),         row::face_lengths(), row::mistake(),
      row::interval(), row::same_number(), row::least_surface(),
  };
  return table;
}

const std::vector<MadeUp>& made_up() {
  static const std::vector<MadeUp> table = [] {
    std::vector<MadeUp> all;
    for (const Row& row : rows()) {
      all.insert(all.end(), row.made.begin(), row.made.end());
    }
    std::sort(all.begin(), all.end(), [](const MadeUp& a, const MadeUp& b) { return a.number < b.number; });
    return all;
  }();
  return table;
}

bool goes_with(const Task& task, const solids::Solid& solid) {
  const std::string key = task->key();
  return std::all_of(rows().begin(), rows().end(), [&](const Row& row) {
    const bool asks_this = std::find(row.finds.begin(), row.finds.end(), key) != row.finds.end();
    return row.unfit == nullptr || !asks_this || row.unfit(solid).empty();
  });
}

}  // namespace fw::tasks
