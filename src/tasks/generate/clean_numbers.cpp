#include "tasks/generate/clean_numbers.hpp"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace fw::tasks {

const std::vector<Triple>& triples() {
  static const std::vector<Triple> table = [] {
    constexpr int longest = 260;
    constexpr int longest_of_any = 65;
    constexpr int least_shared = 5;
    std::vector<Triple> all;
    for (int leg = 3; leg < longest; ++leg) {
      for (int other = 3; leg * leg + other * other <= longest * longest; ++other) {
        const auto hypotenuse = static_cast<int>(std::lround(std::sqrt(leg * leg + other * other)));
        const bool is_right = hypotenuse * hypotenuse == leg * leg + other * other;
        if (is_right && (hypotenuse <= longest_of_any || std::gcd(leg, other) >= least_shared)) {
          all.push_back({leg, other, hypotenuse});
        }
      }
    }
    std::sort(all.begin(), all.end(), [](const Triple& a, const Triple& b) {
      return a.hypotenuse != b.hypotenuse ? a.hypotenuse < b.hypotenuse : a.leg < b.leg;
    });
    return all;
  }();
  return table;
}

std::vector<CleanTriangle> isosceles_triangles(const Form& form) {
  std::vector<CleanTriangle> all;
  for (const Triple& t : triples()) {
    if (form.sizes[0].holds(2 * t.leg) && form.sizes[1].holds(t.other)) {
      all.push_back({2 * t.leg, t.other, t.hypotenuse, t.hypotenuse});
    }
  }
  return all;
}

std::vector<CleanTriangle> right_triangles(const Form& form) {
  std::vector<CleanTriangle> all;
  for (const Triple& t : triples()) {
    if (form.sizes[0].holds(t.leg) && form.sizes[1].holds(t.other)) {
      all.push_back({t.leg, t.other, t.hypotenuse, 0});
    }
  }
  return all;
}

std::vector<CleanTriangle> scalene_triangles(const Form& form) {
  std::vector<CleanTriangle> all;
  for (const Triple& t : triples()) {
    if (!form.sizes[1].holds(t.other)) {
      continue;
    }
    for (const Triple& u : triples()) {
      const int base = t.leg + u.leg;
      const bool is_scalene = t.leg < u.leg && base != t.hypotenuse && base != u.hypotenuse;
      if (u.other == t.other && is_scalene && form.sizes[0].holds(base)) {
        all.push_back({base, t.other, t.hypotenuse, u.hypotenuse});
      }
    }
  }
  return all;
}

std::vector<CleanTrapezoid> trapezoids(const Form& form) {
  std::vector<CleanTrapezoid> all;
  for (const Triple& t : triples()) {
    for (int longer = form.sizes[0].least; form.sizes[1].holds(t.other) && longer <= form.sizes[0].most; ++longer) {
      const int shorter = longer - 2 * t.leg;
      if (form.sizes[0].holds(longer) && 3 * shorter >= longer) {  // flatter ones look like triangles
        all.push_back({longer, shorter, t.other, t.hypotenuse});
      }
    }
  }
  return all;
}

std::vector<CleanRhombus> rhombuses(const Form& form) {
  std::vector<CleanRhombus> all;
  for (const Triple& t : triples()) {
    if (t.leg > t.other && form.sizes[0].holds(2 * t.leg) && form.sizes[1].holds(2 * t.other)) {
      all.push_back({2 * t.leg, 2 * t.other, t.hypotenuse});
    }
  }
  return all;
}

std::vector<CleanSpire> square_spires(const Form& form) {
  std::vector<CleanSpire> all;
  for (const Triple& t : triples()) {
    if (form.sizes[0].holds(2 * t.leg) && form.sizes[1].holds(t.other)) {
      all.push_back({2 * t.leg, 2 * t.leg, t.other, t.hypotenuse, t.hypotenuse});
    }
  }
  return all;
}

std::vector<CleanSpire> rectangular_spires(const Form& form) {
  std::vector<CleanSpire> all;
  for (const Triple& t : triples()) {
    if (!form.sizes[2].holds(t.other) || !form.sizes[0].holds(2 * t.leg)) {
      continue;
    }
    for (const Triple& u : triples()) {
      if (u.other == t.other && u.leg < t.leg && form.sizes[1].holds(2 * u.leg)) {
        all.push_back({2 * t.leg, 2 * u.leg, t.other, u.hypotenuse, t.hypotenuse});
      }
    }
  }
  return all;
}

std::vector<Triple> round_spires(const Form& form) {
  std::vector<Triple> all;
  for (const Triple& t : triples()) {
    if (form.sizes[0].holds(t.leg) && form.sizes[1].holds(t.other)) {
      all.push_back(t);
    }
  }
  return all;
}

std::vector<int> numbers_in(const Range& range, bool easy) {
  constexpr int table_numbers = 20;
  std::vector<int> all, few;
  for (int number = range.least; number <= range.most; number += range.step) {
    all.push_back(number);
    if (number <= table_numbers || number % 10 == 0) {
      few.push_back(number);
    }
  }
  return easy && !few.empty() ? few : all;
}

}  // namespace fw::tasks
