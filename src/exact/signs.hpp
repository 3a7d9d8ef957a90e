#pragma once

#include <array>
#include <string>
#include <string_view>

// Numbers that Unicode has a sign for, as they are read and printed.
namespace fw::exact {

inline constexpr std::array<std::string_view, 10> raised_digits{"⁰", "¹", "²", "³", "⁴", "⁵", "⁶", "⁷", "⁸", "⁹"};
/// "²", "¹²": as a terminal writes a power. Requires: n >= 0.
[[nodiscard]] std::string raised(int n);

struct FractionSign {
  std::string_view sign;
  int above;
  int below;
  bool is_printed;  ///< in formulas; the others are read only
};
inline constexpr std::array<FractionSign, 15> fraction_signs{{{"½", 1, 2, true},
                                                              {"⅓", 1, 3, true},
                                                              {"⅔", 2, 3, true},
                                                              {"¼", 1, 4, true},
                                                              {"¾", 3, 4, true},
                                                              {"⅕", 1, 5, false},
                                                              {"⅖", 2, 5, false},
                                                              {"⅗", 3, 5, false},
                                                              {"⅘", 4, 5, false},
                                                              {"⅙", 1, 6, true},
                                                              {"⅚", 5, 6, true},
                                                              {"⅛", 1, 8, true},
                                                              {"⅜", 3, 8, true},
                                                              {"⅝", 5, 8, false},
                                                              {"⅞", 7, 8, false}}};

}  // namespace fw::exact
