#include "figures/typeset.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "base/utf8.hpp"
#include "exact/signs.hpp"
#include "units/unit.hpp"

namespace fw::figures {
namespace {

// Beside the digits.
constexpr std::array<std::pair<std::string_view, std::string_view>, 3> powers{{{"ⁿ", "n"}, {"⁺", "+"}, {"⁻", "−"}}};

/// The raised sign that a text begins with, and what it raises.
std::optional<std::pair<std::string_view, std::string_view>> power_at(std::string_view text) {
  constexpr std::string_view digits = "0123456789";
  const auto begins_with = [&](std::string_view sign) { return text.substr(0, sign.size()) == sign; };
  for (std::size_t n = 0; n < digits.size(); ++n) {
    if (begins_with(exact::raised_digits[n])) return std::pair(exact::raised_digits[n], digits.substr(n, 1));
  }
  const auto* found =
      std::find_if(powers.begin(), powers.end(), [&](const auto& one) { return begins_with(one.first); });
  return found == powers.end() ? std::nullopt : std::optional(*found);
}

TextStyle style_of(const TextPiece& piece, TextStyle style) {
  if (piece.raised) style.size *= power_size;
  return style;
}

bool is_equal_sign(std::string_view word) { return word == "=" || word == "≈"; }

bool is_operator(std::string_view word) {
  return word == "×" || word == "·" || word == "÷" || word == "+" || word == "−";
}

// "w", "ℓ₁"
bool is_letter(std::string_view word) {
  return character_count(word) <= 2 && !word.empty() && word.find_first_of("0123456789 ") == std::string_view::npos;
}

// A number and its unit stay together, a sign and what it is before, and a letter and its value: "w = 9 in" is not
// broken, and a product before its sign of equality, or before another sign.
bool stay_together(std::string_view word, std::string_view next) {
  const std::string_view last = word.substr(word.rfind(' ') + 1);
  if (is_equal_sign(last) || is_operator(last) || (is_equal_sign(next) && is_letter(word))) {
    return true;
  }
  const bool ends_in_digit = !word.empty() && word.back() >= '0' && word.back() <= '9';
  const std::size_t end = next.find_last_not_of(".,;:?)");
  return ends_in_digit && end != std::string_view::npos && units::Unit::find(next.substr(0, end + 1)).has_value();
}

// The first word of a text, which loses it.
std::string take_word(std::string_view& text) {
  const std::size_t space = text.find(' ');
  std::string word(text.substr(0, space));
  text.remove_prefix(space == std::string_view::npos ? text.size() : space + 1);
  return word;
}

void append_wrapped(const Canvas& canvas, std::string_view paragraph, const TextStyle& style, double width,
                    std::vector<std::string>& lines) {
  std::string line;
  while (!paragraph.empty()) {
    std::string word = take_word(paragraph);
    while (!paragraph.empty() && stay_together(word, paragraph.substr(0, paragraph.find(' ')))) {
      const std::string_view before = paragraph;
      const std::string longer = word + ' ' + take_word(paragraph);
      if (typeset_size(canvas, longer, style).x > width) {
        paragraph = before;  // too wide for any line
        break;
      }
      word = longer;
    }
    std::string longer = line;
    if (!line.empty()) longer += ' ';
    longer += word;
    if (!line.empty() && typeset_size(canvas, longer, style).x > width) {
      lines.push_back(std::exchange(line, word));
    } else {
      line = longer;
    }
  }
  lines.push_back(line);
}

}  // namespace

std::vector<TextPiece> text_pieces(std::string_view text) {
  std::vector<TextPiece> pieces;
  const auto append = [&pieces](std::string_view part, bool raised) {
    if (pieces.empty() || pieces.back().raised != raised) pieces.push_back({"", raised});
    pieces.back().text += part;
  };
  while (!text.empty()) {
    if (const auto power = power_at(text)) {
      append(power->second, true);
      text.remove_prefix(power->first.size());
    } else {
      append(text.substr(0, 1), false);
      text.remove_prefix(1);
    }
  }
  return pieces;
}

Vec2 typeset_size(const Canvas& canvas, std::string_view text, const TextStyle& style) {
  double width = 0;
  for (const TextPiece& piece : text_pieces(text)) width += canvas.text_size(piece.text, style_of(piece, style)).x;
  return {width, style.size * line_height};
}

void typeset(Canvas& canvas, Vec2 anchor, HAlign h, VAlign v, std::string_view text, const TextStyle& style) {
  const Rect box = text_box(anchor, h, v, typeset_size(canvas, text, style), style.size);
  double x = box.x;
  const double baseline = box.y + line_baseline * style.size;
  for (const TextPiece& piece : text_pieces(text)) {
    const TextStyle piece_style = style_of(piece, style);
    const double y = baseline - (piece.raised ? power_rise * style.size : 0);
    canvas.text({x, y}, HAlign::Left, VAlign::Baseline, piece.text, piece_style);
    x += canvas.text_size(piece.text, piece_style).x;
  }
}

std::vector<std::string> wrapped(const Canvas& canvas, std::string_view text, const TextStyle& style, double width) {
  std::vector<std::string> lines;
  while (true) {
    const std::size_t feed = text.find('\n');
    append_wrapped(canvas, text.substr(0, feed), style, width, lines);
    if (feed == std::string_view::npos) return lines;
    text.remove_prefix(feed + 1);
  }
}

}  // namespace fw::figures
