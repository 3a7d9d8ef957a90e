#include "algebra/notation.hpp"
#include "algebra/number_notation.hpp"
#include "exact/signs.hpp"

namespace fw::algebra {
namespace {

using Kind = Notation::Kind;

constexpr const char* invisible_times = "<mo>&#x2062;</mo>";
constexpr const char* invisible_plus = "<mo>&#x2064;</mo>";

std::string escaped(const std::string& text) {
  std::string safe;
  for (const char c : text) {
    switch (c) {
      case '&':
        safe += "&amp;";
        break;
      case '<':
        safe += "&lt;";
        break;
      case '>':
        safe += "&gt;";
        break;
      case '"':
        safe += "&quot;";
        break;
      default:
        safe += c;
    }
  }
  return safe;
}

// The classes that a style sheet may strike through, color or make bold.
std::string class_attribute(const Notation& notation) {
  std::string names;
  const auto add = [&names](const std::string& name) { names += (names.empty() ? "" : " ") + name; };
  if (notation.canceled) add("canceled");
  if (notation.changed) add("changed");
  if (notation.group) add("group-" + std::to_string(*notation.group + 1));
  if (notation.kind == Kind::Blank) add("blank");
  return names.empty() ? "" : " class=\"" + names + "\"";
}

std::string element(const char* name, const std::string& attributes, const std::string& content) {
  return std::string("<") + name + attributes + ">" + content + "</" + name + ">";
}

std::string element_of(const Notation& notation);

// "cm²" is cm to the power 2.
std::string unit_element(const Notation& unit) {
  for (int n = 2; n < 10; ++n) {
    const std::string power = exact::raised(n);
    const std::string& text = unit.text;
    if (text.size() > power.size() && text.compare(text.size() - power.size(), power.size(), power) == 0) {
      const std::string base = text.substr(0, text.size() - power.size());
      return element("msup", class_attribute(unit),
                     element("mi", " mathvariant=\"normal\"", escaped(base)) + element("mn", "", std::to_string(n)));
    }
  }
  return element("mi", " mathvariant=\"normal\"" + class_attribute(unit), escaped(unit.text));
}

std::string between(const Notation& left, const Notation& right) {
  if (left.kind == Kind::Sign || right.kind == Kind::Sign) return "";
  if (stand_apart(left, right)) return "<mspace width=\"0.25em\"></mspace>";
  return left.kind == Kind::Number && right.kind == Kind::Fraction ? invisible_plus : invisible_times;
}

std::string row_content(const Notation& row) {
  std::string content;
  for (std::size_t i = 0; i < row.parts.size(); ++i) {
    if (i > 0) content += between(row.parts[i - 1], row.parts[i]);
    content += element_of(row.parts[i]);
  }
  return content;
}

std::string number_element(const Notation& number) {
  Notation opened = opened_number(number.text);
  if (opened.kind == Kind::Number) return element("mn", class_attribute(number), escaped(number.text));
  opened.canceled = number.canceled;
  opened.changed = number.changed;
  opened.group = number.group;
  return element_of(opened);
}

std::string root_element(const Notation& root) {
  const std::string inside = element_of(root.parts.at(0));
  if (root.degree == 2) return element("msqrt", class_attribute(root), inside);
  return element("mroot", class_attribute(root), inside + element("mn", "", std::to_string(root.degree)));
}

std::string element_of(const Notation& notation) {
  const std::string classes = class_attribute(notation);
  switch (notation.kind) {
    case Kind::Number:
      return number_element(notation);
    case Kind::Letter:
      return element("mi", classes, escaped(notation.text));
    case Kind::Unit:
      return unit_element(notation);
    case Kind::Sign:
      return element("mo", classes, escaped(notation.text));
    case Kind::Words:
      return element("mtext", classes, escaped(notation.text));
    case Kind::Row:
      return element("mrow", classes, row_content(notation));
    case Kind::Fraction:
      return element("mfrac", classes, element_of(notation.parts.at(0)) + element_of(notation.parts.at(1)));
    case Kind::Power:
      return element("msup", classes,
                     element_of(notation.parts.at(0)) + element("mn", "", std::to_string(notation.degree)));
    case Kind::Root:
      return root_element(notation);
    case Kind::Brackets:
      return element("mrow", classes, "<mo>(</mo>" + element_of(notation.parts.at(0)) + "<mo>)</mo>");
    case Kind::Blank:
      return element("mtext", classes, "____");
  }
  return {};
}

}  // namespace

std::string mathml(const NotationLine& line) {
  return "<math xmlns=\"http://www.w3.org/1998/Math/MathML\"><mrow>" + element_of(line.left) +
         element("mo", "", escaped(line.sign)) + element_of(line.right) + "</mrow></math>";
}

}  // namespace fw::algebra
