#include "practice/signatures.hpp"

#include <algorithm>
#include <cmath>

namespace fw::practice {
namespace {

using words::message;

bool is_same_number(double a, double b) { return std::abs(a - b) <= 1e-9 * std::max(std::abs(a), std::abs(b)); }

}  // namespace

const std::vector<Signature>& signatures() {
  static const std::vector<Signature> table = [] {
    std::vector<Signature> all;
    for (const auto& part :
         {circle_signatures(), circle_unknown_signatures(), quantity_signatures(), factor_signatures(),
          height_signatures(), face_signatures(), base_area_signatures(), unknown_signatures(), supply_signatures(),
          packing_signatures(), scaling_signatures(), unit_signatures(), far_signatures(), far_area_signatures()}) {
      all.insert(all.end(), part.begin(), part.end());
    }
    return all;
  }();
  return table;
}

words::Message about(words::Pattern pattern, const words::Value& number) {
  const bool has_number = pattern.text().find("{n}") != std::string_view::npos;
  return has_number ? words::Message(pattern, {{"n", number}}) : words::Message(pattern, {});
}
words::Message Saying::about(const words::Value& number) const {
  return words::one_after_another({practice::about(says, number), practice::about(asks, number)});
}

const std::vector<SharedNumber>& shared_numbers() {
  static const std::vector<SharedNumber> table{
      {{"O5", "O9", "O21"}, message("What do you multiply the diameter by to get the distance around the circle?")},
      {{"O51", "O19"}, message("What did you multiply by the slant height?")},
      {{"A7", "O13"}, message("What did you multiply by the height, and what does it measure?")},
      {{"O60", "O13"}, message("What did you multiply by the height, and what does it measure?")},
      {{"F7", "E3"}, message("Did you find the area of the circle, or the distance around it?")},
      {{"C2", "E1", "A7"}, message("Which face did you take as the base, and what was its area?")},
      {{"C3", "B2"}, message("How many bases did you add?")},
      {{"B1", "C7"}, message("How many faces did you add?")},
      {{"D6", "E4"}, message("Point to the distance between the two bases. How long is it?")},
      {{"A4", "F7"}, message("What does your first product measure?")},
  };
  return table;
}

std::vector<WrongNumber> all_wrong_numbers(const Figure& figure) {
  std::vector<WrongNumber> all;
  Finds finds;
  for (const Signature& signature : signatures()) {
    const bool is_asked =
        std::find(signature.asked.begin(), signature.asked.end(), figure.question->asked) != signature.asked.end();
    if (!is_asked) {
      continue;
    }
    finds.clear();
    signature.way(figure, finds);
    for (Found& found : finds) {
      const bool is_known = std::any_of(all.begin(), all.end(), [&](const WrongNumber& one) {
        return one.signature->id == signature.id && is_same_number(one.value, found.value);
      });
      if (std::isfinite(found.value) && found.value > 0 && !is_known) {
        all.push_back({&signature, found.value, std::move(found.faces)});
      }
    }
  }
  for (WrongNumber& one : all) {
    one.value *= figure.to_asked;
  }
  return all;
}

std::vector<WrongNumber> wrong_numbers(const Figure& figure) {
  std::vector<WrongNumber> all = all_wrong_numbers(figure);
  all.erase(
      std::remove_if(all.begin(), all.end(),
                     [&](const WrongNumber& one) { return is_same_number(one.value, figure.truth * figure.to_asked); }),
      all.end());
  return all;
}

}  // namespace fw::practice
