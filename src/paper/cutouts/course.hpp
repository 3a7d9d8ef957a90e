#pragma once

#include <vector>

#include "paper/cutouts/fit.hpp"

namespace fw::paper {

/// A line with the distances along it; the line must outlive it.
class Course {
 public:
  explicit Course(const std::vector<Vec2>& line) : line_(line), at_{0} {
    for (std::size_t i = 0; i + 1 < line.size(); ++i) at_.push_back(at_.back() + glm::length(line[i + 1] - line[i]));
  }
  [[nodiscard]] double length() const { return at_.back(); }
  [[nodiscard]] double at(std::size_t point) const { return at_[point]; }

  /// The part from one distance to another.
  [[nodiscard]] std::vector<Vec2> part(double from, double to) const {
    std::vector<Vec2> points{point(from)};
    for (std::size_t i = 0; i < line_.size(); ++i) {
      if (at_[i] > from + 1e-6 && at_[i] < to - 1e-6) points.push_back(line_[i]);
    }
    points.push_back(point(to));
    return points;
  }
  [[nodiscard]] Vec2 point(double distance) const {
    std::size_t i = 0;
    while (i + 2 < at_.size() && at_[i + 1] < distance) ++i;
    return line_[i] + (line_[i + 1] - line_[i]) * ((distance - at_[i]) / (at_[i + 1] - at_[i]));
  }

 private:
  const std::vector<Vec2>& line_;
  std::vector<double> at_;
};

}  // namespace fw::paper
