#include "exact/print_number.hpp"

#include <algorithm>
#include <vector>

#include "base/ensure.hpp"
#include "exact/bounds.hpp"
#include "exact/root_sum.hpp"
#include "exact/signs.hpp"

namespace fw::exact {
namespace {

constexpr const char* minus = "−";  // U+2212
constexpr int longest_exact_decimal = 6;
constexpr int greatest_plain_denominator = 12;
constexpr int longest_plain_decimal = 12;
constexpr std::size_t longest_class_form = 24;  // bytes; √ and π take more than one each
constexpr int least_places = 4;                 // of a number that goes on

// A printed term: coefficient x root x π^pi_power.
struct Term {
  Rational coefficient;
  std::string root;
  int pi_power = 0;
};

std::string digits(const Integer& n) { return n.str(); }

std::optional<int> places_of(const Rational& a, int limit) {
  Integer scaled = mp::denominator(a);
  int twos = 0;
  int fives = 0;
  for (; scaled % 2 == 0; scaled /= 2) {
    ++twos;
  }
  for (; scaled % 5 == 0; scaled /= 5) {
    ++fives;
  }
  const int places = std::max(twos, fives);
  return scaled == 1 && places <= limit ? std::optional<int>(places) : std::nullopt;
}

// Requires: a >= 0 is a multiple of 10^-places.
std::string decimal(const Rational& a, int places) {
  const Integer scale = mp::pow(Integer(10), static_cast<unsigned>(places));
  const Integer whole = mp::numerator(a) * scale / mp::denominator(a);
  std::string text = digits(whole);
  if (places == 0) {
    return text;
  }
  const std::size_t decimals = static_cast<std::size_t>(places);
  if (text.size() <= decimals) {
    text.insert(0, decimals + 1 - text.size(), '0');
  }
  text.insert(text.size() - decimals, ".");
  return text;
}

// "5 1/3", "1/3", "7". Requires: a >= 0.
std::string mixed(const Rational& a) {
  const Integer whole = mp::numerator(a) / mp::denominator(a);
  const Integer rest = mp::numerator(a) % mp::denominator(a);
  if (rest == 0) {
    return digits(whole);
  }
  const std::string fraction = digits(rest) + "/" + digits(mp::denominator(a));
  return whole == 0 ? fraction : digits(whole) + " " + fraction;
}

// "49.5", "5 1/3", "1/3". Requires: a >= 0.
std::string plain(const Rational& a) {
  if (const std::optional<int> places = places_of(a, longest_exact_decimal)) {
    return decimal(a, *places);
  }
  return mixed(a);
}

std::string pi_text(int power) { return power == 1 ? "π" : "π" + raised(power); }

std::string joined(const std::vector<Term>& terms);

// √(25 + 10√5) of a radicand outside and a primitive sum inside.
std::string nested_root(const RootTerm& outside, const RootSum& nested) {
  std::vector<Term> inside;
  for (const RootTerm& term : scaled(nested, Rational(outside.radicand))) {
    inside.push_back({term.coefficient, term.radicand == 1 ? "" : "√" + digits(term.radicand), 0});
  }
  return "√(" + joined(inside) + ")";
}

std::vector<Term> terms_of(const Number& a) {
  std::vector<Term> terms;
  for (const Component& component : a.parts().components) {
    for (const RootTerm& term : component.factor) {
      const std::string simple = term.radicand == 1 ? "" : "√" + digits(term.radicand);
      terms.push_back(
          {term.coefficient, component.nested ? nested_root(term, *component.nested) : simple, component.pi_power});
    }
  }
  return terms;
}

// Without its sign. Requires: pi_power >= 0.
std::string term_text(const Term& term) {
  const Rational size = mp::abs(term.coefficient);
  const std::string symbols = term.pi_power > 0 ? term.root + pi_text(term.pi_power) : term.root;
  if (symbols.empty()) {
    return plain(size);
  }
  return size == 1 ? symbols : plain(size) + symbols;
}

// Positive terms first.
std::string joined(const std::vector<Term>& terms) {
  std::vector<Term> ordered = terms;
  std::stable_partition(ordered.begin(), ordered.end(), [](const Term& term) { return term.coefficient > 0; });
  std::string text;
  for (const Term& term : ordered) {
    if (text.empty()) {
      text = term.coefficient < 0 ? minus : "";
    } else {
      text += term.coefficient < 0 ? " " + std::string(minus) + " " : " + ";
    }
    text += term_text(term);
  }
  return text;
}

bool all_end_early(const std::vector<Term>& terms) {
  return std::all_of(terms.begin(), terms.end(),
                     [](const Term& term) { return places_of(term.coefficient, longest_exact_decimal).has_value(); });
}

bool has_root(const std::vector<Term>& terms) {
  return std::any_of(terms.begin(), terms.end(), [](const Term& term) { return !term.root.empty(); });
}

// "(15 + 7√5)/4", "√3/2", "3√2/(2π)"
std::string over_denominator(std::vector<Term> terms, const Integer& denominator, int pi_below) {
  for (Term& term : terms) {
    term.coefficient *= Rational(denominator);
    term.pi_power += pi_below;
  }
  const std::string above = joined(terms);
  const std::string number = denominator == 1 ? "" : digits(denominator);
  const std::string below = pi_below == 0 ? number : number + pi_text(pi_below);
  const bool grouped_below = !number.empty() && pi_below > 0;
  return (terms.size() > 1 ? "(" + above + ")" : above) + "/" + (grouped_below ? "(" + below + ")" : below);
}

/// "12345.5" -> "12,345.5"; four digits stay together, as in class.
std::string with_commas(std::string number) {
  constexpr std::size_t least_digits = 5;
  const std::size_t whole = std::min(number.find('.'), number.size());
  const std::size_t first = std::min(number.find_first_of("0123456789"), whole);
  if (whole - first >= least_digits) {
    for (std::size_t at = whole - 3; at > first; at -= at > 3 ? 3 : at) {
      number.insert(at, ",");
    }
  }
  return number;
}

std::string digits_with_sign(const Number& rounded_value, int places) {
  const Rational value = to_rational(rounded_value).value_or(Rational(0));
  return (value < 0 ? minus : "") + decimal(mp::abs(value), places);
}

}  // namespace

std::string exact_text(const Number& a) {
  if (!a.is_exact()) {
    return "";
  }
  if (const std::optional<Rational> ratio = to_rational(a)) {
    return (*ratio < 0 ? minus : "") + plain(mp::abs(*ratio));
  }
  const std::vector<Term> terms = terms_of(a);
  Integer denominator = 1;
  int pi_below = 0;
  for (const Term& term : terms) {
    denominator = mp::lcm(denominator, mp::denominator(term.coefficient));
    pi_below = std::max(pi_below, -term.pi_power);
  }
  // Halves of a root are read best as a fraction, hundredths and tenths of π as decimals.
  const bool as_decimals = all_end_early(terms) && (!has_root(terms) || denominator > greatest_plain_denominator);
  if (pi_below == 0 && (denominator == 1 || as_decimals)) {
    return joined(terms);
  }
  return over_denominator(terms, denominator, pi_below);
}

bool has_class_form(const Number& a) {
  const std::string form = exact_text(a);
  if (form.empty() || form.size() > longest_class_form) {
    return false;
  }
  const std::size_t bar = form.find('/');
  const bool is_plain = bar == std::string::npos ||
                        form.find_first_not_of("0123456789", bar + 1) != std::string::npos ||
                        Integer(form.substr(bar + 1)) <= greatest_plain_denominator;
  return is_plain && form.find('(') == std::string::npos;  // neither a root within a root nor a sum over a number
}

std::string class_text(const Number& a) {
  if (decimals_needed(a, longest_plain_decimal)) {
    return shown(a, longest_plain_decimal).text;
  }
  if (has_class_form(a)) {
    return exact_text(a);
  }
  const Number size = a.sign() < 0 ? -a : a;
  int places = least_places;
  for (Number least = Number::whole(1); size < least && places < longest_plain_decimal;
       least = least * Number::ratio(1, 10)) {
    ++places;
  }
  // Cut off, not rounded: the digits after these go on.
  const Number scale = power(Number::whole(10), places);
  return (a.sign() < 0 ? minus : "") + fixed_text(floor(size * scale) / scale, places) + "…";
}

std::string fraction_text(const Number& a) {
  constexpr int greatest = 16;
  const std::optional<Rational> ratio = to_rational(a);
  return ratio && mp::denominator(*ratio) <= greatest ? (*ratio < 0 ? minus : "") + mixed(mp::abs(*ratio))
                                                      : class_text(a);
}

std::string fixed_text(const Number& a, int places) {
  return with_commas(digits_with_sign(rounded(a, places), places));
}

std::string digits_text(const Number& a, int places) {
  return digits_with_sign(rounded(a, places), decimals_needed(a, places).value_or(places));
}

int enough_places(const Number& a, int places) {
  const Number size = a.sign() < 0 ? -a : a;
  const auto is_told = [&](int with) { return rounded(size * power(Number::whole(10), with), 0) >= Number::whole(10); };
  if (places < 1 || size.sign() == 0 || decimals_needed(size, places) || is_told(places)) {
    return places;
  }
  if (const std::optional<int> needed = decimals_needed(size, longest_plain_decimal)) {
    return std::max(places, *needed);
  }
  while (!is_told(places)) {
    ++places;
  }
  return places;
}

Shown shown(const Number& a, int places) { return rounded_to(a, enough_places(a, places)); }

Shown rounded_to(const Number& a, int places) {
  if (const std::optional<int> needed = decimals_needed(a, places)) {
    return {fixed_text(a, *needed), true};
  }
  return {fixed_text(a, places), false};  // a rounded number shows all its places: 206.90
}

std::optional<int> decimals_needed(const Number& a, int limit) {
  ensure(limit >= 0, "a negative count of decimals was asked for");
  const std::optional<Rational> ratio = to_rational(a);
  return ratio ? places_of(*ratio, limit) : std::nullopt;
}

}  // namespace fw::exact
