#include "figures/column_work_figure.hpp"

#include <algorithm>

#include "figures/typeset.hpp"

namespace fw::figures {
namespace {

// In ems.
constexpr double column_width = 0.66;
constexpr double spread_width = 0.78;  // where a point stands beside its digit
constexpr double point_width = 0.26;
constexpr double row_height = 1.14;
constexpr double carries_height = 0.78;
constexpr double caption_height = 1.2;  // of a line
constexpr double caption_gap = 0.3;
constexpr double caption_width = 11;  // at least, before it is broken
constexpr double rule_drop = 0.28;    // under a row's baseline
constexpr double rule_width = 0.06;

bool is_raised(const std::string& cell) { return !cell.empty() && text_pieces(cell).front().raised; }

bool is_point(const std::string& cell) { return cell == "." || cell == ","; }

// A digit with its point ("3."): the digit alone stands in the middle.
std::string digit_of(const std::string& cell) {
  return cell.size() == 2 && cell.back() == '.' ? cell.substr(0, 1) : cell;
}

bool is_carries(const std::vector<std::string>& row) { return std::any_of(row.begin(), row.end(), is_raised); }

bool has_point_beside_digit(const exact::ColumnWork& work) {
  return std::any_of(work.rows.begin(), work.rows.end(), [](const std::vector<std::string>& row) {
    return std::any_of(row.begin(), row.end(), [](const std::string& cell) { return digit_of(cell) != cell; });
  });
}

bool is_point_column(const exact::ColumnWork& work, std::size_t column) {
  bool any = false;
  for (const auto& row : work.rows) {
    if (is_point(row[column])) any = true;
    if (!row[column].empty() && !is_point(row[column])) return false;
  }
  return any;
}

}  // namespace

ColumnWorkFigure::ColumnWorkFigure(const Canvas& canvas, exact::ColumnWork work, double em)
    : work_(std::move(work)), em_(em) {
  const double width = has_point_beside_digit(work_) ? spread_width : column_width;
  double x = 0;
  for (std::size_t column = 0; column < work_.columns; ++column) {
    columns_.push_back(x);
    x += (is_point_column(work_, column) ? point_width : width) * em;
  }
  columns_.push_back(x);
  const TextStyle style{em, {}, false};
  double y = 0;
  double widest = x;
  if (!work_.caption.empty()) {
    caption_ = wrapped(canvas, work_.caption, style, std::max(x, caption_width * em));
    for (const std::string& line : caption_) widest = std::max(widest, canvas.text_size(line, style).x);
    y = (static_cast<double>(caption_.size()) * caption_height + caption_gap) * em;
  }
  for (const auto& row : work_.rows) {
    const bool small = is_carries(row);
    rows_.push_back(y + (small ? carries_height - ink_below * power_size : ink_above) * em);
    y += (small ? carries_height : row_height) * em;
  }
  const double bottom = rows_.empty() ? y : rows_.back() + (ink_below + rule_width) * em;
  size_ = {widest, bottom};
}

void ColumnWorkFigure::draw(Canvas& canvas, Vec2 top_left, const Palette& palette) const {
  const TextStyle style{em_, palette.ink, false};
  for (std::size_t i = 0; i < caption_.size(); ++i) {
    const double baseline = top_left.y + (static_cast<double>(i) * caption_height + ink_above) * em_;
    canvas.text({top_left.x, baseline}, HAlign::Left, VAlign::Baseline, caption_[i], style);
  }
  for (std::size_t r = 0; r < work_.rows.size(); ++r) {
    const double baseline = top_left.y + rows_[r];
    for (std::size_t c = 0; c < work_.columns; ++c) {
      const std::string& cell = work_.rows[r][c];
      if (cell.empty()) continue;
      const double middle = top_left.x + (columns_[c] + columns_[c + 1]) / 2;
      if (is_raised(cell)) {
        const TextStyle small{em_ * power_size, palette.ink, false};
        canvas.text({middle, baseline}, HAlign::Center, VAlign::Baseline, text_pieces(cell).front().text, small);
        continue;
      }
      const std::string digit = digit_of(cell);
      canvas.text({middle, baseline}, HAlign::Center, VAlign::Baseline, digit, style);
      if (digit != cell) {
        canvas.text({top_left.x + columns_[c + 1], baseline}, HAlign::Center, VAlign::Baseline, ".", style);
      }
    }
  }
  for (const auto& rule : work_.rules) {
    const double y = top_left.y + rows_[rule.row] + rule_drop * em_;
    canvas.line({top_left.x + columns_[rule.from], y}, {top_left.x + columns_[rule.to], y},
                {palette.ink, rule_width * em_});
  }
}

}  // namespace fw::figures
